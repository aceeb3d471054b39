/* A rule of which nothing changed since the job before is not gone through, and what comes of
 * it is as if it had been: to the step. */
#include "judge/judge.h"
#include "judge/survey.h"
#include "law/law.h"
#include "support/small_law.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cjson/cJSON.h>
#include <cmocka.h>

enum { DAY = 20260504, PITCHES = 0, VENTS = 1 };

/* By their order among the ids. */
static const char RULES[] =
    "rule 'a.pitch' {\n"
    "  title = 'Pitch', stage = 'permit', per = 'roof.slopes', mend = 'Steepen it.',\n"
    "  judge = function(job, figure, slope)\n"
    "    return at_least(slope.pitch, figure 'test.pitch_least', 'rise_in_12') end," SMALL_READS
    "\n"
    "}\n"
    "rule 'b.vents' {\n"
    "  title = 'Vents', stage = 'permit', per = 'attics.vents', mend = 'Take some out.',\n"
    "  judge = function(job, figure, vent)\n"
    "    return at_most(vent.count, figure 'test.most', 'layers') end," SMALL_READS "\n"
    "}\n";

/* It errs on one of the planes. */
static const char ERRING[] =
    "rule 'a.pitch' {\n"
    "  title = 'Pitch', stage = 'permit', per = 'roof.slopes', mend = 'Steepen it.',\n"
    "  judge = function(job, figure, slope)\n"
    "    if slope.name == 'back' then error 'the back is not thought of' end\n"
    "    return at_least(slope.pitch, figure 'test.pitch_least', 'rise_in_12') end," SMALL_READS
    "\n"
    "}\n";

static struct temporary_home home;

static int make_home(void **state)
{
    (void)state;
    home_make(&home);
    small_law_write(&home);
    return 0;
}

static int remove_home(void **state)
{
    (void)state;
    home_remove(&home);
    return 0;
}

static struct rulebook *book_of(struct laws *laws)
{
    struct problems problems = {0};
    laws->home = home.path;
    const struct law *law = laws_find(laws, "model/test", DAY, "", &problems);
    assert_int_equal(problems.count, 0);
    assert_non_null(law);
    problems_free(&problems);
    return law->book;
}

/* Each outcome, how many do not apply, and how many steps it took; to be freed. */
static char *told(struct rulebook *book, const cJSON *job)
{
    struct result result = {.only_stage = -1, .wanted = WANTED_OUTCOMES};
    struct text text = TEXT_EMPTY;
    const long long before = book->sandbox->taken;
    judge_begin(book);
    assert_int_equal(judge(book, job, -1, STAGE_PERMIT, NULL, &result), 0);
    for (size_t i = 0; i < result.finding_count; i++)
        text_addf(&text, "%s %d %d, ", result.findings[i].rule, (int)result.findings[i].outcome,
                  (int)result.findings[i].met);
    text_addf(&text, "%zu do not apply, %lld steps", result.counts[OUTCOME_NOT_APPLICABLE],
              book->sandbox->taken - before);
    result_free(&result);
    assert_false(text.failed);
    return text.bytes;
}

static void assert_told_as_alone(struct rulebook *book, const cJSON *job)
{
    struct laws laws = {0};
    char *here = told(book, job), *alone = told(book_of(&laws), job);
    assert_string_equal(here, alone);
    free(here);
    free(alone);
    laws_free(&laws);
}

/* Remembered, kept, seen to stand, and taken. */
static void settle(struct rulebook *book, const cJSON *job)
{
    for (int i = 0; i < 6; i++)
        assert_told_as_alone(book, job);
}

static bool is_settled(const struct rulebook *book, size_t rule)
{
    assert_non_null(book->survey);
    return survey_is_settled(book->survey, rule);
}

static cJSON *slope_of(cJSON *job, int number)
{
    const cJSON *roof = cJSON_GetObjectItemCaseSensitive(job, "roof");
    return cJSON_GetArrayItem(cJSON_GetObjectItemCaseSensitive(roof, "slopes"), number);
}

static cJSON *vents_of(cJSON *job, int attic)
{
    cJSON *attics = cJSON_GetObjectItemCaseSensitive(job, "attics");
    return cJSON_GetObjectItemCaseSensitive(cJSON_GetArrayItem(attics, attic), "vents");
}

static void a_place_that_changes_unsettles_what_rests_on_it(void **state)
{
    (void)state;
    home_write(&home, "rules/test.lua", RULES);
    struct laws laws = {0};
    struct rulebook *book = book_of(&laws);
    cJSON *job = cJSON_Parse(SMALL_JOB);
    settle(book, job);
    assert_true(is_settled(book, PITCHES) && is_settled(book, VENTS));
    /* It was of use: so it is settled again at once. */
    cJSON_ReplaceItemInObjectCaseSensitive(slope_of(job, 1), "pitch", cJSON_CreateString("6:12"));
    assert_told_as_alone(book, job);
    assert_true(is_settled(book, PITCHES) && is_settled(book, VENTS));
    /* It was not of use, being changed at once: so it has to stand for a job first. */
    cJSON_ReplaceItemInObjectCaseSensitive(slope_of(job, 1), "pitch", cJSON_CreateString("2:12"));
    assert_told_as_alone(book, job);
    assert_true(!is_settled(book, PITCHES) && is_settled(book, VENTS));
    settle(book, job);
    assert_true(is_settled(book, PITCHES));
    cJSON_Delete(job);
    laws_free(&laws);
}

/* A list that was empty, one that is there no more, and is again. */
static void a_list_that_changes_unsettles_what_goes_through_it(void **state)
{
    (void)state;
    home_write(&home, "rules/test.lua", RULES);
    struct laws laws = {0};
    struct rulebook *book = book_of(&laws);
    cJSON *job = cJSON_Parse(SMALL_JOB);
    settle(book, job);
    cJSON *vent = cJSON_Duplicate(cJSON_GetArrayItem(vents_of(job, 0), 1), true);
    cJSON_AddItemToArray(vents_of(job, 1), vent);
    settle(book, job);
    cJSON *attics = cJSON_DetachItemFromObjectCaseSensitive(job, "attics");
    settle(book, job);
    assert_true(is_settled(book, VENTS));
    cJSON_AddItemToObject(job, "attics", attics);
    settle(book, job);
    for (int i = 0; i < 2; i++)
        while (cJSON_GetArraySize(vents_of(job, i)) > 0)
            cJSON_DeleteItemFromArray(vents_of(job, i), 0);
    settle(book, job);
    assert_true(is_settled(book, VENTS));
    cJSON_Delete(job);
    laws_free(&laws);
}

static void what_is_broken_is_told_each_time(void **state)
{
    (void)state;
    home_write(&home, "rules/test.lua", ERRING);
    struct laws laws = {0};
    struct rulebook *book = book_of(&laws);
    cJSON *job = cJSON_Parse(SMALL_JOB);
    settle(book, job);
    assert_false(is_settled(book, PITCHES));
    cJSON_Delete(job);
    laws_free(&laws);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(a_place_that_changes_unsettles_what_rests_on_it),
        cmocka_unit_test(a_list_that_changes_unsettles_what_goes_through_it),
        cmocka_unit_test(what_is_broken_is_told_each_time),
    };
    return cmocka_run_group_tests(tests, make_home, remove_home);
}
