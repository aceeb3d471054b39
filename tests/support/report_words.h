/* report_words.h - what a report says and does not, for tests of reports as text. Each fails
 * the test with the report. */
#ifndef EAVEMARK_TESTS_REPORT_WORDS_H
#define EAVEMARK_TESTS_REPORT_WORDS_H

#include <stddef.h>

void assert_has(const char *report, const char *words);
void assert_has_not(const char *report, const char *words);

/* All of them, one after the other. */
void assert_order(const char *report, const char *const *words, size_t count);

/* No line over 80 characters, and nothing that could move a cursor. */
void assert_tame(const char *report);

#endif
