/* case_base.h - the whole jobs that cases start from, rules/cases/NAME.json, each read once.
 * Internal to the room. */
#ifndef EAVEMARK_PROVE_CASE_BASE_H
#define EAVEMARK_PROVE_CASE_BASE_H

#include "base/problem.h"
#include "profile/home.h"

#include <cjson/cJSON.h>

struct case_base {
    const char *path;
    size_t length; /* of its text */
    cJSON *job;
    struct case_base *next;
};

/* Begins as all zero. */
struct case_bases {
    struct arena arena;
    struct sources sources;
    struct case_base *first;
};

/* The one of that name, NULL for "base". NULL, with problems, when it cannot be used; then it is
 * read again the next time. */
const struct case_base *case_base_find(struct case_bases *bases, const char *home, const char *from,
                                       struct problems *problems);

/* Copies of their jobs share names with them, and must be gone. */
void case_base_free_all(struct case_bases *bases);

#endif
