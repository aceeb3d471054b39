/* A rule of which nothing changed since the job before is not gone through, and what comes of
 * it is as if it had been: to the step. */
#include "judge/judge.h"
#include "judge/survey.h"
#include "support/small_batch.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cjson/cJSON.h>
#include <cmocka.h>

enum { PITCHES = 0, VENTS = 1 };

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

/* Each outcome, and how many do not apply; to be freed. */
static char *told_outcomes(struct rulebook *book, const cJSON *job)
{
    struct result result = {.only_stage = -1, .wanted = WANTED_OUTCOMES};
    struct text text = TEXT_EMPTY;
    judge_begin(book);
    assert_int_equal(judge(book, job, -1, STAGE_PERMIT, NULL, &result), 0);
    for (size_t i = 0; i < result.finding_count; i++)
        text_addf(&text, "%s %d %d, ", result.findings[i].rule, (int)result.findings[i].outcome,
                  (int)result.findings[i].met);
    text_addf(&text, "%zu do not apply", result.counts[OUTCOME_NOT_APPLICABLE]);
    result_free(&result);
    assert_false(text.failed);
    return text.bytes;
}

/* The same, and how many steps it took. */
static char *told(struct rulebook *book, const cJSON *job)
{
    const long long before = book->sandbox->taken;
    struct text text = TEXT_EMPTY;
    char *outcomes = told_outcomes(book, job);
    text_addf(&text, "%s, %lld steps", outcomes, book->sandbox->taken - before);
    free(outcomes);
    assert_false(text.failed);
    return text.bytes;
}

/* Remembered, kept, seen to stand, and taken. */
static void settle(struct small_batch *batch)
{
    for (int i = 0; i < 6; i++)
        small_batch_assert_as_alone(batch, told);
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
    struct small_batch batch;
    small_batch_begin(&batch, RULES);
    cJSON *const job = batch.job;
    settle(&batch);
    assert_true(is_settled(batch.book, PITCHES) && is_settled(batch.book, VENTS));
    /* It was of use: so it is settled again at once. */
    cJSON_ReplaceItemInObjectCaseSensitive(slope_of(job, 1), "pitch", cJSON_CreateString("6:12"));
    small_batch_assert_as_alone(&batch, told);
    assert_true(is_settled(batch.book, PITCHES) && is_settled(batch.book, VENTS));
    /* It was not of use, being changed at once: so it has to stand for a job first. */
    cJSON_ReplaceItemInObjectCaseSensitive(slope_of(job, 1), "pitch", cJSON_CreateString("2:12"));
    small_batch_assert_as_alone(&batch, told);
    assert_true(!is_settled(batch.book, PITCHES) && is_settled(batch.book, VENTS));
    settle(&batch);
    assert_true(is_settled(batch.book, PITCHES));
    small_batch_end(&batch);
}

/* A list that was empty, one that is there no more, and is again. */
static void a_list_that_changes_unsettles_what_goes_through_it(void **state)
{
    (void)state;
    struct small_batch batch;
    small_batch_begin(&batch, RULES);
    cJSON *const job = batch.job;
    settle(&batch);
    cJSON *vent = cJSON_Duplicate(cJSON_GetArrayItem(vents_of(job, 0), 1), true);
    cJSON_AddItemToArray(vents_of(job, 1), vent);
    settle(&batch);
    cJSON *attics = cJSON_DetachItemFromObjectCaseSensitive(job, "attics");
    settle(&batch);
    assert_true(is_settled(batch.book, VENTS));
    cJSON_AddItemToObject(job, "attics", attics);
    settle(&batch);
    for (int i = 0; i < 2; i++)
        while (cJSON_GetArraySize(vents_of(job, i)) > 0)
            cJSON_DeleteItemFromArray(vents_of(job, i), 0);
    settle(&batch);
    assert_true(is_settled(batch.book, VENTS));
    small_batch_end(&batch);
}

static void what_is_broken_is_told_each_time(void **state)
{
    (void)state;
    struct small_batch batch;
    small_batch_begin(&batch, ERRING);
    settle(&batch);
    assert_false(is_settled(batch.book, PITCHES));
    small_batch_end(&batch);
}

/* Another job from first to last. */
static void change_all(cJSON *job, int round)
{
    char pitch[16];
    snprintf(pitch, sizeof(pitch), "%d:12", 2 + round % 9);
    for (int i = 0; slope_of(job, i) != NULL; i++)
        cJSON_ReplaceItemInObjectCaseSensitive(slope_of(job, i), "pitch",
                                               cJSON_CreateString(pitch));
    for (int i = 0; i < 2; i++) {
        cJSON *vent = NULL;
        cJSON_ArrayForEach(vent, vents_of(job, i))
            cJSON_ReplaceItemInObjectCaseSensitive(vent, "count", cJSON_CreateNumber(round % 7));
    }
}

/* Without the steps: those of what is judged are counted by the thousand, wherever in it that
 * is full. */
static void where_hardly_anything_stands_nothing_is_carried_for_a_while(void **state)
{
    enum { LONGEST_REST = 64, COUNTED = 4, LEAST_RESTED = 2 * (LONGEST_REST - 2 * COUNTED) };
    (void)state;
    struct small_batch batch;
    int rested = 0;
    small_batch_begin(&batch, RULES);
    for (int i = 0; i < 3 * LONGEST_REST; i++) {
        change_all(batch.job, i);
        small_batch_assert_as_alone(&batch, told_outcomes);
        if (i >= LONGEST_REST && batch.book->survey->worth.resting)
            rested++;
    }
    assert_in_range(rested, LEAST_RESTED, 2 * LONGEST_REST);
    /* Alike ones are found to be so after the longest rest, and it stays. */
    for (int i = 0; i < LONGEST_REST + 2 * COUNTED; i++)
        small_batch_assert_as_alone(&batch, told_outcomes);
    for (int i = 0; i < LONGEST_REST; i++) {
        small_batch_assert_as_alone(&batch, told_outcomes);
        assert_false(batch.book->survey->worth.resting);
        assert_true(is_settled(batch.book, PITCHES) && is_settled(batch.book, VENTS));
    }
    small_batch_end(&batch);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(a_place_that_changes_unsettles_what_rests_on_it),
        cmocka_unit_test(a_list_that_changes_unsettles_what_goes_through_it),
        cmocka_unit_test(what_is_broken_is_told_each_time),
        cmocka_unit_test(where_hardly_anything_stands_nothing_is_carried_for_a_while),
    };
    return cmocka_run_group_tests(tests, small_home_make, small_home_remove);
}
