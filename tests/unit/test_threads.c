/* Several threads, a handle each: they share nothing, and each gets the report that one
 * alone gets. tests/run.sh builds this under the thread sanitizer too. */
#include "include/eavemark.h"

#include <pthread.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

enum { THREADS = 4, ROUNDS = 2 };

static const char *const JOBS[] = {"cross-gable", "porch-tear-off", "overlay-gable", "coastal-hip"};

/* The JSON of one check; to be freed. NULL when anything goes wrong: threads do not assert. */
static char *report_of(eavemark *handle, const char *job)
{
    char name[512];
    snprintf(name, sizeof(name), "%s/examples/%s/job.json", EAVEMARK_HOME_DIR, job);
    const struct eavemark_request request = {.name = name};
    eavemark_result *result = eavemark_check(handle, &request);
    char *report = result == NULL ? NULL : eavemark_result_report(result, EAVEMARK_JSON, 0);
    eavemark_result_free(result);
    return report;
}

struct work {
    const char *home;
    char *reports[THREADS];
};

/* Opens, checks each job, and closes. */
static void *work(void *data)
{
    struct work *mine = data;
    for (int round = 0; round < ROUNDS; round++) {
        eavemark *handle = eavemark_open(mine->home);
        for (size_t i = 0; i < THREADS; i++) {
            free(mine->reports[i]);
            mine->reports[i] = report_of(handle, JOBS[i]);
        }
        eavemark_close(handle);
    }
    return NULL;
}

static void threads_with_a_handle_each_share_nothing(void **state)
{
    (void)state;
    static const char *const HOMES[] = {EAVEMARK_HOME_INSIDE, EAVEMARK_HOME_DIR};
    struct work alone = {.home = EAVEMARK_HOME_DIR}, together[THREADS] = {0};
    pthread_t threads[THREADS];
    work(&alone);
    for (size_t i = 0; i < THREADS; i++) {
        together[i].home = HOMES[i % 2];
        assert_int_equal(pthread_create(&threads[i], NULL, work, &together[i]), 0);
    }
    for (size_t i = 0; i < THREADS; i++)
        assert_int_equal(pthread_join(threads[i], NULL), 0);
    for (size_t i = 0; i < THREADS; i++)
        for (size_t j = 0; j < THREADS; j++) {
            assert_non_null(together[i].reports[j]);
            assert_string_equal(together[i].reports[j], alone.reports[j]);
            free(together[i].reports[j]);
        }
    for (size_t j = 0; j < THREADS; j++)
        free(alone.reports[j]);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(threads_with_a_handle_each_share_nothing),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
