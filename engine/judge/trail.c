#include "judge/trail.h"

#include <string.h>

static bool is_same_step(const struct step *a, const struct step *b)
{
    return a->kind == b->kind && a->from == b->from && a->number == b->number
           && a->field == b->field;
}

unsigned trail_note(struct trail *trail, struct step step, struct spot *to)
{
    /* No step led to a spot before it was known. */
    const size_t first = to == NULL || to->known_by != trail->number ? trail->count
                         : to->known_as < trail->start               ? 0
                                                                     : to->known_as - trail->start;
    for (size_t i = first; i < trail->count; i++)
        if (is_same_step(&trail->steps[i], &step))
            return (unsigned)(trail->start + i);
    if (trail->start + trail->count == TRAIL_MOST || to == NULL) {
        trail->unfit = true;
        return 0;
    }
    trail->steps[trail->count] = step;
    trail_know(trail, trail->start + trail->count, to);
    return (unsigned)(trail->start + trail->count++);
}

void trail_copy(struct trail *to, const struct trail *from)
{
    const size_t known = from->start + from->count;
    to->on = from->on;
    to->unfit = from->unfit;
    to->number = from->number;
    to->start = from->start;
    to->count = from->count;
    to->nowhere = from->nowhere;
    to->touch = from->touch;
    to->slipped = from->slipped;
    to->touched_count = from->touched_count;
    memcpy(to->steps, from->steps, from->count * sizeof(*to->steps));
    memcpy(to->asked, from->asked, from->count * sizeof(*to->asked));
    memcpy(to->known, from->known, known * sizeof(struct spot *));
    memcpy(to->touched, from->touched, from->touched_count * sizeof(struct spot *));
}

int trail_known(const struct trail *trail, const char *pointer)
{
    for (size_t i = 0; i < trail->start + trail->count; i++)
        if (trail->known[i]->pointer == pointer)
            return (int)i;
    return -1;
}
