#include "judge/trail.h"

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

int trail_known(const struct trail *trail, const char *pointer)
{
    for (size_t i = 0; i < trail->start + trail->count; i++)
        if (trail->known[i]->pointer == pointer)
            return (int)i;
    return -1;
}
