/* check.h - what the two ways of `eavemark check` share. */
#ifndef EAVEMARK_COMMAND_CHECK_H
#define EAVEMARK_COMMAND_CHECK_H

#include "include/eavemark.h"

#include <stdbool.h>

struct check {
    const char *home, *jurisdiction, *date, *stage, *form, *output;
    bool strict, lines;
    const char *job; /* a path, or "-" */
};

/* Checks every job of an NDJSON file, a result line each, in the same order;
 * what cannot be used gives a line that says why. Returns the worst status. */
int check_lines(const struct check *check, eavemark *handle);

#endif
