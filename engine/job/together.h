/* together.h - facts that are read off one thing, such as a wrapper or a box, and are
 * asked for in one line: all of them with the first, or, of facts that do not lead to one
 * another, those of them that wait.
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
    bool those_waiting; /* whichever comes up brings those that wait, a few at a time */
    const struct together *next;
};

#endif
