/* row_law.h - a place for tests of rows: the small law, an invented place "example/r" that
 * gives figures of each kind, and one demand "test.it" made of what a test says. */
#ifndef EAVEMARK_TESTS_ROW_LAW_H
#define EAVEMARK_TESTS_ROW_LAW_H

#include "support/small_law.h"

/* All that a demand of tests may read besides what it names. */
#define ROW_READS                                                                        \
    "reads = { facts = { 'existing.condition', 'existing.layers', 'existing.slippery', " \
    "'decks[].spacing_in', 'roof.slopes[].pitch' }, figures = { 'r.table.b' } },"

/* As setup and teardown of a cmocka test. */
int row_law_make(void **state);
int row_law_remove(void **state);

/* The home of the running test. */
const struct temporary_home *row_law_home(void);

/* A demand of these keys is judged: the report on a job, in full, or NULL; *problems is
 * what was said beside it. Both to be freed. */
char *row_report(const char *body, const char *job, const char *stage, char **problems);

/* Fails unless SMALL_JOB, or another, then gives this outcome with these words. */
void assert_row_found(const char *body, const char *outcome, const char *says);
void assert_row_of(const char *body, const char *job, const char *outcome, const char *says);

/* Fails unless the file is refused with these words, and the line of the demand. */
void assert_row_refused(const char *body, const char *says);

#endif
