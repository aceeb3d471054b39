/* trail.h - what is asked of a job, step by step, while one thing of it is judged.
 *
 * What a rule says of a thing follows from the answers alone, in the order in which it
 * asks: so it can be remembered by them (memory.h). Each step starts at a spot that is
 * known: the job, an item being judged, or where a step before led. Internal to the room.
 */
#ifndef EAVEMARK_JUDGE_TRAIL_H
#define EAVEMARK_JUDGE_TRAIL_H

#include "judge/spot.h"

enum step_kind {
    STEP_CHILD,  /* to a field: is it there? */
    STEP_ITEM,   /* to an item of a list, by its number; asks nothing */
    STEP_FOLLOW, /* to the item that a reference names: is there one? */
    STEP_VALUE,  /* what does it hold? */
    STEP_COUNT,  /* how many items has it? */
};

struct step {
    enum step_kind kind;
    unsigned from; /* which of the known spots */
    size_t number; /* of the item */
    const struct field *field;
};

enum { TRAIL_MOST = 200 };

struct trail {
    bool on;      /* steps are being noted */
    bool unfit;   /* what came of it does not follow from the answers alone */
    size_t start; /* spots known at the start; step i leads to known[start + i] */
    size_t count;
    struct step steps[TRAIL_MOST];
    struct spot *known[TRAIL_MOST];
};

/* Notes a step, once, if steps are noted. Returns which of the known spots it leads to. */
unsigned trail_step(struct trail *trail, struct step step, struct spot *to);

/* Which of the known spots has this very pointer; -1: none. */
int trail_known(const struct trail *trail, const char *pointer);

#endif
