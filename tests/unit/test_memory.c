/* What a batch remembers must not show: each job is answered as if it were the only one. */
#include "include/eavemark.h"
#include "judge/memory.h"
#include "support/house_job.h"

#include <stdarg.h>
#include <setjmp.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cjson/cJSON.h>
#include <cmocka.h>

static const char *const JOBS[] = {
    "tests/houses/cross-gable/job",          "tests/houses/cross-gable/job-final",
    "tests/houses/coastal-hip/job-deck",     "tests/houses/porch-tear-off/job",
    "tests/houses/overlay-gable/job-dry-in",
};
enum { JOB_COUNT = sizeof(JOBS) / sizeof(JOBS[0]) };

static bool may_go(const cJSON *fact)
{
    static const char *const KEPT[] = {"eavemark_job", "job",   "jurisdiction",
                                       "date",         "stage", "name"};
    for (size_t i = 0; i < sizeof(KEPT) / sizeof(KEPT[0]); i++)
        if (strcmp(fact->string, KEPT[i]) == 0)
            return false;
    return true;
}

/* Every so many-th fact, counted through the whole job, is moved: one of three is taken
 * out, turned over, or made a little more. */
static void move_facts(cJSON *node, size_t every, size_t *count)
{
    for (cJSON *child = node->child, *next; child != NULL; child = next) {
        next = child->next;
        if (cJSON_IsObject(child) || cJSON_IsArray(child)) {
            move_facts(child, every, count);
        } else if (child->string != NULL && may_go(child) && ++*count % every == 0) {
            const size_t turn = *count / every % 3;
            if (turn == 1 && cJSON_IsBool(child))
                child->type ^= cJSON_True | cJSON_False;
            else if (turn == 2 && cJSON_IsNumber(child))
                cJSON_SetNumberValue(child, child->valuedouble + 1);
            else
                cJSON_Delete(cJSON_DetachItemViaPointer(node, child));
        }
    }
}

/* The report, or what is wrong with the job. */
static char *answer(eavemark *handle, const char *job)
{
    const struct eavemark_request request = {.name = "job", .text = job, .length = strlen(job)};
    eavemark_result *result = eavemark_check(handle, &request);
    assert_non_null(result);
    char *said = eavemark_result_report(result, EAVEMARK_JSON_LINE, EAVEMARK_ALL);
    if (said == NULL)
        said = strdup(eavemark_result_problems(result));
    assert_non_null(said);
    eavemark_result_free(result);
    return said;
}

/* The second time round most is recalled, the third time what came of the moved facts. */
static void each_job_is_answered_as_if_alone(void **state)
{
    (void)state;
    eavemark *batch = eavemark_open(EAVEMARK_HOME_DIR);
    assert_non_null(batch);
    for (size_t round = 0; round < 4; round++) {
        for (size_t i = 0; i < JOB_COUNT; i++) {
            cJSON *job = house_job(JOBS[i]);
            size_t count = 0;
            if (round > 0)
                move_facts(job, 5 + 2 * (round / 2) + i, &count);
            char *text = cJSON_PrintUnformatted(job);
            eavemark *alone = eavemark_open(EAVEMARK_HOME_DIR);
            char *there = answer(batch, text), *here = answer(alone, text);
            assert_string_equal(there, here);
            free(there);
            free(here);
            eavemark_close(alone);
            free(text);
            cJSON_Delete(job);
        }
    }
    eavemark_close(batch);
}

static void assert_as_alone(eavemark *batch, const cJSON *job)
{
    char *text = cJSON_PrintUnformatted(job);
    eavemark *alone = eavemark_open(EAVEMARK_HOME_DIR);
    assert_non_null(alone);
    char *there = answer(batch, text), *here = answer(alone, text);
    assert_string_equal(there, here);
    free(there);
    free(here);
    eavemark_close(alone);
    free(text);
}

/* Two edges of one plane read its facts once, two of different planes twice, though all are
 * answered alike. */
static void references_that_lead_elsewhere_are_told_apart(void **state)
{
    (void)state;
    eavemark *batch = eavemark_open(EAVEMARK_HOME_DIR);
    cJSON *job = house_job("tests/houses/cross-gable/job-final");
    cJSON *edges = cJSON_GetObjectItemCaseSensitive(cJSON_GetObjectItemCaseSensitive(job, "roof"),
                                                    "edges");
    cJSON *rake = NULL, *slope = NULL, *first = NULL;
    size_t moved = 0;
    assert_non_null(batch);
    for (size_t i = 0; i < 3; i++)
        assert_as_alone(batch, job);
    /* Each rake in turn comes to the plane of the first one, which has the same deck. */
    cJSON_ArrayForEach(rake, edges) {
        if (strcmp(cJSON_GetObjectItemCaseSensitive(rake, "kind")->valuestring, "rake") != 0)
            continue;
        slope = cJSON_GetObjectItemCaseSensitive(rake, "slope");
        first = first == NULL ? slope : first;
        if (strcmp(slope->valuestring, "main front") != 0)
            continue;
        cJSON_SetValuestring(slope, first->valuestring);
        assert_as_alone(batch, job);
        moved++;
    }
    assert_int_equal(moved, 2);
    cJSON_Delete(job);
    eavemark_close(batch);
}

/* What nothing was asked for hangs on whose it is and on the stage alone. A place may have more
 * rules and functions than there is room for at first. */
static void each_has_what_came_of_it(void **state)
{
    (void)state;
    static const struct memory_key KEYS[] = {{0, 0},    {7, 0},  {7, 3},
                                             {9000, 3}, {70, 3}, {30000, 3}};
    enum { KEY_COUNT = sizeof(KEYS) / sizeof(KEYS[0]) };
    struct memory *memory = memory_open();
    struct arena arena = {0};
    struct trail *trail = calloc(1, sizeof(*trail));
    assert_non_null(memory);
    assert_non_null(trail);
    for (size_t i = 0; i < KEY_COUNT; i++) {
        assert_null(memory_find(memory, KEYS[i], &arena, trail, NULL));
        memory_keep(memory, KEYS[i], &arena, trail, &KEYS[i]);
        for (size_t k = 0; k <= i; k++)
            assert_ptr_equal(memory_find(memory, KEYS[k], &arena, trail, NULL), &KEYS[k]);
    }
    assert_null(memory_find(memory, (struct memory_key){9000, 0}, &arena, trail, NULL));
    assert_null(memory_find(memory, (struct memory_key){8, 3}, &arena, trail, NULL));
    free(trail);
    arena_free(&arena);
    memory_free(memory);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(each_job_is_answered_as_if_alone),
        cmocka_unit_test(references_that_lead_elsewhere_are_told_apart),
        cmocka_unit_test(each_has_what_came_of_it),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
