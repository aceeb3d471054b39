/* What a row says will be demanded of a fact that the job does not say, held against what it
 * demands once the job does say it: each fact that a finding read is taken out of a whole job
 * in its turn. */
#include "job/json.h"
#include "job/path.h"
#include "judge/judge.h"
#include "judge/row.h"
#include "law/prepare.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <string.h>

#include <cmocka.h>

struct trying {
    struct rulebook *book;
    const cJSON *job;
    size_t told, silent;
};

static const struct finding *same_place(const struct result *result, const struct finding *of)
{
    for (size_t i = 0; i < result->finding_count; i++)
        if ((of->where == NULL) == (result->findings[i].where == NULL)
            && (of->where == NULL || strcmp(result->findings[i].where, of->where) == 0))
            return &result->findings[i];
    return NULL;
}

static bool same_number(const struct value *a, const struct value *b)
{
    return a->kind == b->kind && a->number == b->number;
}

/* Of two bounds either may be the one that was held against the fact. */
static bool same_demand(const struct finding *a, const struct finding *b)
{
    if (a->also.kind != VALUE_NONE && same_number(&a->required, &b->also)
        && same_number(&a->also, &b->required))
        return true;
    return a->sense == b->sense && profile_same_value(&a->required, &b->required)
           && profile_same_value(&a->also, &b->also);
}

/* Has it another way, or more than one comparison, to be met by? */
static void note_more(void *data, const struct row *part)
{
    bool *more = data;
    *more = *more || part->instead_count > 0 || part->also_count > 0;
}

static bool is_simple(const struct rule *rule)
{
    bool more = false;
    if (rule != NULL && rule->row != NULL)
        row_each_part(rule->row, note_more, &more);
    return !more;
}

static void take_out(struct trying *trying, const struct finding *whole, const char *at)
{
    cJSON *job = cJSON_Duplicate(trying->job, true);
    struct result result = {.only_stage = -1};
    const struct probe probe = {.only_rule = whole->rule, .demands = true};
    assert_true(path_set(job, at, cJSON_CreateNull()));
    assert_int_equal(judge(trying->book, job, -1, STAGE_FINAL, &probe, &result), 0);
    const struct finding *lacking = same_place(&result, whole);
    if (lacking != NULL && lacking->outcome == OUTCOME_OPEN) {
        const bool told = lacking->required.kind != VALUE_NONE;
        trying->told += told;
        trying->silent += !told;
        if (told && !same_demand(lacking, whole))
            fail_msg("%s without %s demands another thing than with it", whole->rule, at);
    }
    result_free(&result);
    cJSON_Delete(job);
}

static void try_findings(struct trying *trying)
{
    struct result result = {.only_stage = -1};
    assert_int_equal(judge(trying->book, trying->job, -1, STAGE_FINAL, NULL, &result), 0);
    for (size_t i = 0; i < result.finding_count; i++) {
        const struct finding *finding = &result.findings[i];
        for (size_t r = 0; r < finding->read_count; r++)
            if (finding->compared && is_simple(rulebook_rule(trying->book, finding->rule))
                && cJSON_IsObject(path_find(trying->job, finding->reads[r].at)) == 0
                && path_find(trying->job, finding->reads[r].at) != NULL)
                take_out(trying, finding, finding->reads[r].at);
    }
    result_free(&result);
}

static void what_is_told_is_what_is_demanded(void **state)
{
    (void)state;
    static const char *const PLACES[] = {"example/frostmere", "us-fl"};
    struct laws laws = {.home = EAVEMARK_HOME_DIR};
    struct trying trying = {.told = 0};
    for (size_t p = 0; p < sizeof(PLACES) / sizeof(PLACES[0]); p++) {
        struct problems problems = {0};
        const struct overrides overrides = {.jurisdiction = PLACES[p], .date = "2026-05-04"};
        cJSON *job = NULL;
        json_read_file(&job, EAVEMARK_HOME_DIR "/tests/houses/coastal-hip/job-final.json",
                       &problems);
        assert_non_null(job);
        const struct prepared ready = prepare_job(&laws, job, &overrides, "job", &problems);
        assert_non_null(ready.law);
        trying.book = ready.law->book;
        trying.job = job;
        try_findings(&trying);
        problems_free(&problems);
        cJSON_Delete(job);
    }
    laws_free(&laws);
    assert_true(trying.told > 200);
}

int main(void)
{
    const struct CMUnitTest tests[] = {cmocka_unit_test(what_is_told_is_what_is_demanded)};
    return cmocka_run_group_tests(tests, NULL, NULL);
}
