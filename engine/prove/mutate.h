/* mutate.h - is every figure watched by a case?
 *
 * Each figure of every law that cases use is moved by its smallest step, in
 * memory, and the cases that judged by it are judged again. A step after which
 * every finding comes out as before, met or not, could be a slip of the pen that
 * nobody notices.
 */
#ifndef EAVEMARK_PROVE_MUTATE_H
#define EAVEMARK_PROVE_MUTATE_H

#include "base/arena.h"
#include "base/problem.h"
#include "base/strings.h"
#include "law/law.h"

enum mutate_state {
    MUTATE_NOTICED,   /* every step changes some case's outcome */
    MUTATE_PARTLY,    /* some do */
    MUTATE_UNNOTICED, /* none does */
    MUTATE_UNASKED,   /* no case asks for the figure at all */
    MUTATE_NO_RULE,   /* nor does any rule name it */
    MUTATE_PRINTED,   /* only cautions, quantities or a mend: no outcome hangs on it */
    MUTATE_STATE_COUNT
};

/* A figure with one value; laws that share both share it. */
struct mutated {
    const struct figure *figure;
    enum mutate_state state;
    size_t tried, noticed;
    struct strings missed; /* the steps that changed nothing, in words */
    /* While figures are moved: */
    const struct law *law; /* whose the figure is, perhaps at rest */
    struct value set;      /* the value as it was first met with */
    bool *seen;            /* of each of its steps (mutate_step.h): some case noticed it */
    bool judged, asked;    /* some case judged by it; asked for it at all */
    bool can_grow;         /* there are words to add to the set */
    struct mutated *next;
};

struct mutation {
    struct arena arena;
    struct problems problems;
    struct mutated *first; /* by name */
    size_t counts[MUTATE_STATE_COUNT];
    size_t case_count;
};

/* Moves the figures of a topic, whose names begin with "NAME."; or, where name is a place,
 * those that its own files give, watched by the cases under it; or with NULL all. The laws
 * are as before when it returns. */
void mutate_run(struct laws *laws, const char *name, struct mutation *mutation);

void mutate_free(struct mutation *mutation);

#endif
