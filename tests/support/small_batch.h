/* small_batch.h - jobs of the small law (small_law.h) one after another, each held against
 * being the only one. */
#ifndef EAVEMARK_TESTS_SMALL_BATCH_H
#define EAVEMARK_TESTS_SMALL_BATCH_H

#include "law/law.h"
#include "support/small_law.h"

#include <cjson/cJSON.h>

/* The home that the jobs are judged in: set up and removed for a group of tests. Each test
 * writes its rules/test.lua. */
extern struct temporary_home small_home;
int small_home_make(void **state);
int small_home_remove(void **state);

/* A batch: the law loaded, and the job to begin with. */
struct small_batch {
    struct laws laws;
    struct rulebook *book;
    cJSON *job;
};
void small_batch_begin(struct small_batch *batch, const char *rules);
void small_batch_end(struct small_batch *batch);

/* What a test looks at of a job judged by the book, in a text; to be freed. */
typedef char *small_told(struct rulebook *book, const cJSON *job);

/* It is the same for the batch's job as if it were the only one. */
void small_batch_assert_as_alone(struct small_batch *batch, small_told *told);

#endif
