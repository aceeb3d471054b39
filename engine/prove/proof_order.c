/* proof_order.c - in which order all places are proved: what a place is held against is then
 * proved already, and its law need not be loaded for that alone. */
#include "prove/proof.h"

#include "profile/places.h"

#include <string.h>

struct ordering {
    struct laws *laws;
    struct proof *proof;
    struct place_proof **places; /* as ids has them */
    bool *begun;
    size_t count; /* of those in order */
};

static size_t index_of(const struct proof *proof, const char *id)
{
    size_t at = 0;
    while (at < proof->ids.count && strcmp(proof->ids.items[at], id) != 0)
        at++;
    return at;
}

/* As deep as places follow one another, which is bounded; a circle ends where it began. */
static void put_in_order(struct ordering *ordering, size_t at, int depth)
{
    struct proof *proof = ordering->proof;
    struct problems ignored = {0};
    if (at == proof->ids.count || ordering->begun[at] || depth > PROFILE_LONGEST_CHAIN)
        return;
    ordering->begun[at] = true;
    const struct place *place = place_cache_get(&ordering->laws->cache, ordering->laws->home,
                                                proof->ids.items[at], &proof->arena,
                                                &proof->sources, &ignored);
    for (const struct block *b = place == NULL ? NULL : place->blocks; b != NULL; b = b->next)
        if (b->follows != NULL)
            put_in_order(ordering, index_of(proof, b->follows), depth + 1);
    laws_drop_problems(ordering->laws, &ignored);
    proof->order[ordering->count++] = ordering->places[at];
}

void proof_order(struct laws *laws, struct proof *proof)
{
    struct ordering ordering = {.laws = laws, .proof = proof};
    places_ids(laws->home, &proof->ids, &proof->arena);
    const size_t count = proof->ids.count;
    proof->order = arena_array(&proof->arena, count + 1, sizeof(*proof->order));
    ordering.places = arena_array(&proof->arena, count + 1, sizeof(*ordering.places));
    ordering.begun = arena_array(&proof->arena, count + 1, sizeof(bool));
    if (proof->order == NULL || ordering.places == NULL || ordering.begun == NULL)
        proof->ids.count = 0;
    for (size_t i = 0; i < proof->ids.count; i++)
        ordering.places[i] = proof_place_new(proof, proof->ids.items[i]);
    if (proof->arena.failed)
        proof->ids.count = 0;
    for (size_t i = 0; i < proof->ids.count; i++)
        put_in_order(&ordering, i, 0);
}

size_t proof_order_rank(const struct proof *proof, const char *id)
{
    size_t at = 0;
    while (at < proof->ids.count && strcmp(proof->order[at]->id, id) != 0)
        at++;
    return at;
}
