/* together.h - facts that are read off one thing, such as a wrapper or a box, and are
 * asked for in one line.
 *
 * rules/follows.lua declares them. Nothing else knows of it: each fact stands in the job by
 * itself.
 */
#ifndef EAVEMARK_JOB_TOGETHER_H
#define EAVEMARK_JOB_TOGETHER_H

#include "job/fields.h"

struct together {
    const char *ask;
    const struct field **facts; /* in one group or item, in the order of the answer */
    size_t count;
    const struct together *next;
};

#endif
