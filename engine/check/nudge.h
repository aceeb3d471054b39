/* nudge.h - is every figure watched by a case?
 *
 * Each figure of every law that cases use is moved by its smallest step, in
 * memory, and the cases that judged by it are judged again. A step after which
 * every finding comes out as before, met or not, could be a slip of the pen that
 * nobody notices.
 */
#ifndef EAVEMARK_CHECK_NUDGE_H
#define EAVEMARK_CHECK_NUDGE_H

#include "base/arena.h"
#include "base/problem.h"
#include "base/strings.h"
#include "check/law.h"

enum nudge_state {
    NUDGE_NOTICED,     /* every step changes some case's outcome */
    NUDGE_PARTLY,      /* some do */
    NUDGE_UNNOTICED,   /* none does */
    NUDGE_UNASKED,     /* no case asks for the figure at all */
    NUDGE_NO_RULE,     /* nor does any rule name it */
    NUDGE_PRINTED,     /* only cautions, quantities or a mend: no outcome hangs on it */
    NUDGE_STATE_COUNT
};

/* A figure with one value; laws that share both share it. */
struct nudged {
    const struct figure *figure;
    enum nudge_state state;
    size_t tried, noticed;
    struct strings missed; /* the steps that changed nothing, in words */
    struct nudged *next;
};

struct nudge {
    struct arena arena;
    struct problems problems;
    struct nudged *first; /* by name */
    size_t counts[NUDGE_STATE_COUNT];
    size_t case_count;
};

/* Nudges the figures whose names begin with "topic." (NULL: all). The laws are
 * as before when it returns. */
void nudge_run(struct laws *laws, const char *topic, struct nudge *nudge);

void nudge_free(struct nudge *nudge);

#endif
