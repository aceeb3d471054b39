/* temporary_home.h - a home folder made for one test and removed after it.
 *
 * Every function fails the running test when it cannot do its work. Paths are
 * below the home: "rules/attack.lua".
 */
#ifndef EAVEMARK_TESTS_TEMPORARY_HOME_H
#define EAVEMARK_TESTS_TEMPORARY_HOME_H

#include "support/report_words.h"

#include "include/eavemark.h"

#include <stddef.h>

struct temporary_home {
    char path[64];
};

/* Makes a folder with empty rules/ and jurisdictions/. */
void home_make(struct temporary_home *home);
void home_remove(struct temporary_home *home);

/* Writes a file, making the folders it stands in. */
void home_write(const struct temporary_home *home, const char *path, const char *text);
void home_write_n(const struct temporary_home *home, const char *path, const char *text,
                  size_t length);
void home_delete(const struct temporary_home *home, const char *path);

/* Copies a file of the source tree to the same path of the home. */
void home_copy(const struct temporary_home *home, const char *path);

/* Copies a folder of the source tree with all in it ("rules"). */
void home_copy_all(const struct temporary_home *home, const char *path);

/* The full path of a file; valid until the next call from the same thread. */
const char *home_path(const struct temporary_home *home, const char *path);

/* A whole file, terminated; to be freed. length may be NULL. */
char *file_text(const char *path, size_t *length);

/* A job checked, with what a test looks at. */
struct outcome_of_check {
    enum eavemark_status status;
    char *problems;
    char *json; /* the report, on one line; NULL when there is none */
};

struct outcome_of_check home_check(eavemark *handle, const char *job, const char *jurisdiction,
                                   const char *date, const char *stage);
void outcome_free(struct outcome_of_check *outcome);

/* The findings' texts: finding number `which` (from 0) of this rule in a JSON
 * report; the member's text, "null" for null, or printed JSON for the rest.
 * To be freed; NULL when there is no such finding. */
char *finding_member(const char *json, const char *rule, int which, const char *member);

/* Fails unless that member is exactly, or holds, the words. */
void assert_member(const char *json, const char *rule, int which, const char *member,
                   const char *wanted);
void assert_member_has(const char *json, const char *rule, int which, const char *member,
                       const char *words);

#endif
