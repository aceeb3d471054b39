/* checking.h - what `eavemark check`, its batches and `eavemark watch` share. */
#ifndef EAVEMARK_COMMAND_CHECKING_H
#define EAVEMARK_COMMAND_CHECKING_H

#include "include/eavemark.h"

#include <stdbool.h>

struct check {
    const char *home, *jurisdiction, *date, *stage, *form, *output, *shop;
    const char *jobs; /* how many processes a batch may take; or NULL */
    bool strict, lines, all, brief;
    const char *job; /* a path, or "-" */
};

/* Checks every job of an NDJSON file, a result line each, in the same order;
 * what cannot be used gives a line that says why. Returns the worst status. */
int lines_check(const struct check *check, eavemark *handle);

/* One check of check->job. report is NULL when there is none; problems is NULL
 * only when there was no memory even for the message. handle and result are what the
 * report was made of, or NULL. */
struct check_outcome {
    int status;
    char *report, *problems;
    eavemark *handle;
    eavemark_result *result;
};

void check_run(const struct check *check, struct check_outcome *out);
void check_outcome_free(struct check_outcome *outcome);

/* How the report is written: flags of eavemark_report_option. Colours are for a
 * terminal that shows them. */
unsigned check_options(const struct check *check);

/* Is it a text, for people to read? */
bool check_is_text(const struct check *check);

#endif
