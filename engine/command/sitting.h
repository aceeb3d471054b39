/* sitting.h - questions asked at a terminal and what comes of them written: a job, or a shop
 * sheet. Answers come from standard input, questions go to standard error. */
#ifndef EAVEMARK_COMMAND_SITTING_H
#define EAVEMARK_COMMAND_SITTING_H

#include "include/eavemark.h"

#include <stdbool.h>

/* As the options of `new` say them; NULL where nothing was said. */
struct sitting_options {
    const char *home, *jurisdiction, *date, *fill, *output, *form, *shop, *like, *stage;
    bool list, ahead;
    bool habits; /* a shop's habits are asked, and a sheet is written */
};

/* A file is written over only when it is the one that is filled in. The exit status to end
 * with, or COMMAND_GOES_ON. */
int sitting_refuse_overwriting(const struct sitting_options *options);

/* The exit status. */
int sitting_run(const struct sitting_options *options, eavemark *handle);

#endif
