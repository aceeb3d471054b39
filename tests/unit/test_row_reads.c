/* What a rule says that it reads is all it reads, whether a row names it or a function
 * declares it: held against what was recorded when the base jobs of the cases were judged
 * under invented places and model editions. */
#include "check/check.h"
#include "job/json.h"
#include "job/path.h"
#include "judge/row_reads.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <string.h>

#include <cmocka.h>

struct told {
    const struct field *field;
    const char *figure;
    bool found;
};

static void is_field(void *data, const struct field *field)
{
    struct told *told = data;
    told->found = told->found || field == told->field;
}

static void is_figure(void *data, const char *name)
{
    struct told *told = data;
    told->found = told->found || strcmp(name, told->figure) == 0;
}

static void hold(const struct law *law, const struct finding *finding, size_t *looked)
{
    const struct rule *rule = rulebook_rule(law->book, finding->rule);
    for (size_t i = 0; i < finding->read_count; i++) {
        struct told told = {path_field(&law->book->fields, finding->reads[i].at), NULL, false};
        row_reads_each_field(law->book, rule, is_field, &told);
        const struct law_gap *gap = profile_gap(law->profile, rule->id);
        const bool by_place = gap != NULL
                              && fields_find(&law->book->fields, gap->fact) == told.field;
        if (!told.found && !by_place)
            fail_msg("%s reads %s, which it does not tell", rule->id, finding->reads[i].at);
        ++*looked;
    }
    for (size_t i = 0; i < finding->figure_count; i++) {
        struct told told = {NULL, finding->figures[i]->name, false};
        row_reads_each_figure(law->book, rule, is_figure, &told);
        if (!told.found)
            fail_msg("%s asks for %s, which it does not tell", rule->id, told.figure);
        ++*looked;
    }
}

static void a_rule_tells_all_it_reads(void **state)
{
    (void)state;
    static const char *const JOBS[] = {"rules/cases/base.json", "rules/cases/paperwork.json",
                                       "tests/houses/porch-tear-off/job-final.json",
                                       "tests/houses/overlay-gable/job.json"};
    static const char *const PLACES[] = {"model/irc-2018", "model/irc-2024", "example/quillbank",
                                         "example/emberlow", "us-fl"};
    struct laws laws = {.home = EAVEMARK_HOME_DIR};
    size_t looked = 0;
    for (size_t j = 0; j < sizeof(JOBS) / sizeof(JOBS[0]); j++)
        for (size_t p = 0; p < sizeof(PLACES) / sizeof(PLACES[0]); p++) {
            char path[300];
            struct checked checked = {0};
            const struct overrides overrides = {.jurisdiction = PLACES[p], .date = "2026-05-04"};
            cJSON *job = NULL;
            snprintf(path, sizeof(path), "%s/%s", EAVEMARK_HOME_DIR, JOBS[j]);
            json_read_file(&job, path, &checked.problems);
            assert_non_null(job);
            check_job(&laws, job, &overrides, path, &checked);
            for (size_t i = 0; checked.judged && i < checked.result.finding_count; i++)
                hold(laws_find(&laws, PLACES[p], 20260504, "", &checked.problems),
                     &checked.result.findings[i], &looked);
            checked_free(&checked);
            cJSON_Delete(job);
        }
    laws_free(&laws);
    assert_true(looked > 10000);
}

int main(void)
{
    const struct CMUnitTest tests[] = {cmocka_unit_test(a_rule_tells_all_it_reads)};
    return cmocka_run_group_tests(tests, NULL, NULL);
}
