/* proof_ends.c - what an edition of a place gave and the one after it does not: what is followed
 * binds again from that day on, which a line forgotten brings about too. */
#include "prove/proof.h"

#include <string.h>

static bool gives(const struct block *block, const char *name)
{
    for (const struct entry *e = block->entries; e != NULL; e = e->next)
        if (strcmp(e->name, name) == 0)
            return true;
    return false;
}

static void add_ended(struct proof *proof, struct proof_block *block, const struct figure *was,
                      const struct figure *is)
{
    struct difference **at = &block->differences;
    struct difference *ended = arena_alloc(&proof->arena, sizeof(*ended));
    if (ended == NULL)
        return;
    *ended = (struct difference){.of = DIFFERENCE_FIGURE,
                                 .kind = DIFFERENCE_ENDED,
                                 .name = is->name,
                                 .from = was->value,
                                 .to = is->value,
                                 .sense = is->sense,
                                 .was = was,
                                 .is = is,
                                 .cite = &is->cite};
    while (*at != NULL)
        at = &(*at)->next;
    *at = ended;
}

/* One that moves beside what is followed too is told there. */
static bool is_told(const struct proof_block *block, const char *name)
{
    for (const struct difference *d = block->differences; d != NULL; d = d->next)
        if (d->of == DIFFERENCE_FIGURE && strcmp(d->name, name) == 0)
            return true;
    return false;
}

void proof_ends(struct proof *proof, struct place_proof *place)
{
    const struct proof_block *before = NULL;
    for (struct proof_block *b = place->blocks; b != NULL; b = b->next) {
        if (b->law == NULL)
            continue;
        const bool next_edition = before != NULL && before->block != b->block
                                  && before->to == b->from && !b->block->model;
        for (const struct entry *e = next_edition ? before->block->entries : NULL; e != NULL;
             e = e->next) {
            const struct figure *was = profile_figure(before->law->profile, e->name);
            const struct figure *is = profile_figure(b->law->profile, e->name);
            if (was != NULL && is != NULL && !gives(b->block, e->name) && !is_told(b, e->name)
                && !profile_same_demand(was, is))
                add_ended(proof, b, was, is);
        }
        before = b;
    }
}
