/* trail.h - what is asked of a job, step by step, while one thing of it is judged.
 *
 * What a rule says of a thing follows from the answers alone, in the order in which it
 * asks: so it can be remembered by them (memory.h). Each step starts at a spot that is
 * known: the job, an item being judged, or where a step before led. Internal to the room.
 */
#ifndef EAVEMARK_JUDGE_TRAIL_H
#define EAVEMARK_JUDGE_TRAIL_H

#include "judge/spot.h"

#include <limits.h>

enum step_kind {
    STEP_CHILD,  /* to a field: is it there? */
    STEP_ITEM,   /* to an item of a list, by its number: is it one that is known? */
    STEP_FOLLOW, /* to the item that a reference names: is there one, and one that is known? */
    STEP_VALUE,  /* what does it hold? */
    STEP_COUNT,  /* how many items has it? */
};

enum { TRAIL_MOST = 200, TOUCHED_MOST = 512 };

/* Small, for many are remembered. */
struct step {
    const struct field *field;
    unsigned number;    /* of the item */
    unsigned char from; /* which of the known spots */
    unsigned char kind; /* enum step_kind */
};

_Static_assert(TRAIL_MOST <= UCHAR_MAX, "each of the known spots has a number that fits");

/* field: of a child; number: of an item, which fits, as texts of jobs are short enough. */
static inline struct step trail_to(enum step_kind kind, unsigned from, const struct field *field,
                                   size_t number)
{
    return (struct step){field, (unsigned)number, (unsigned char)from, (unsigned char)kind};
}

struct trail {
    bool on;       /* steps are being noted */
    bool unfit;    /* what came of it does not follow from the answers alone */
    size_t number; /* no other trail over the same spots has it */
    size_t start;  /* spots known at the start; step i leads to known[start + i] */
    size_t count;
    struct spot nowhere; /* where a reference leads that names nothing */
    struct step steps[TRAIL_MOST];
    struct spot *known[TRAIL_MOST];
    const struct step *asked[TRAIL_MOST]; /* what led there, of one that was found (memory.h) */
    size_t touch; /* of a survey: the number of what is being judged; 0: nobody asks */
    bool slipped; /* it rests on more than the places touched */
    size_t touched_count;
    struct spot *touched[TOUCHED_MOST];
};

/* What is being judged rests on this place; each is noted once. */
static inline void trail_touch(struct trail *trail, struct spot *spot)
{
    if (trail->touch == 0 || spot == NULL || spot->seen.touched == trail->touch)
        return;
    spot->seen.touched = trail->touch;
    if (trail->touched_count == TOUCHED_MOST)
        trail->slipped = true;
    else
        trail->touched[trail->touched_count++] = spot;
}

/* A reference led to this item, or to none: that hangs on the list's names. */
static inline void trail_touch_referred(struct trail *trail, const struct spot *reference,
                                        struct spot *item)
{
    if (item != NULL)
        trail_touch(trail, item->parent);
    else if (reference != NULL && reference->json != NULL)
        trail->slipped = true;
    trail_touch(trail, item);
}

/* The trail comes to a spot, as the index-th of those known. */
static inline void trail_know(struct trail *trail, size_t index, struct spot *spot)
{
    trail->known[index] = spot;
    if (spot == NULL || spot->known_by == trail->number)
        return;
    spot->known_by = trail->number;
    spot->known_as = (unsigned)index;
}

/* From 1, which of the spots before the index-th this one is; 0: none of them. */
static inline size_t trail_is(const struct trail *trail, size_t index, const struct spot *spot)
{
    return spot->known_by == trail->number && spot->known_as < index ? spot->known_as + 1 : 0;
}

/* Notes a step, once. Returns which of the known spots it leads to. */
unsigned trail_note(struct trail *trail, struct step step, struct spot *to);

/* The same if steps are noted; else 0. */
static inline unsigned trail_step(struct trail *trail, struct step step, struct spot *to)
{
    return trail->on ? trail_note(trail, step, to) : 0;
}

/* Puts one trail where another was, of its lists only what is in use. */
void trail_copy(struct trail *to, const struct trail *from);

/* Which of the known spots has this very pointer; -1: none. */
int trail_known(const struct trail *trail, const char *pointer);

#endif
