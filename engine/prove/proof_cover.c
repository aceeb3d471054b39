/* proof_cover.c - whether the figures that a place gives otherwise than what it follows are
 * shown by cases under it: at least one is judged by each. */
#include "prove/proof.h"

#include <string.h>

bool proof_watches(const struct proof *proof, const struct law *law)
{
    for (const struct proof_probe *p = proof->probes; p != NULL; p = p->next)
        if (p->law == law)
            return true;
    return false;
}

void proof_watch(struct proof *proof, const struct law *law)
{
    struct proof_probe *probe = arena_alloc(&proof->arena, sizeof(*probe));
    if (probe == NULL)
        return;
    *probe = (struct proof_probe){.law = law, .next = proof->probes};
    probe->cased = arena_array(&proof->arena, law->profile->figure_count + 1, sizeof(bool));
    probe->of_case.asked = arena_array(&proof->arena, law->profile->figure_count + 1, sizeof(bool));
    probe->of_case.facts = arena_array(&proof->arena, law->book->fields.count + 1, sizeof(bool));
    if (probe->cased == NULL || probe->of_case.asked == NULL || probe->of_case.facts == NULL)
        return;
    proof->probes = probe;
}

static bool is_proved(const struct proof *proof, const struct law *law)
{
    for (const struct place_proof *place = proof->places; place != NULL; place = place->next)
        if (strcmp(place->id, law->profile->id) == 0)
            return true;
    return false;
}

const struct probe *proof_cover_probe(void *data, const struct law *law)
{
    struct proof *proof = data;
    /* Of the place, perhaps another edition than those proved (--date). */
    if (!proof_watches(proof, law) && is_proved(proof, law))
        proof_watch(proof, law);
    for (struct proof_probe *p = proof->probes; p != NULL; p = p->next) {
        if (p->law != law)
            continue;
        /* Wherever the case stands, it would notice. */
        p->of_case.decides = p->cased;
        memset(p->of_case.asked, 0, law->profile->figure_count * sizeof(bool));
        memset(p->of_case.facts, 0, (law->book->fields.count + 1) * sizeof(bool));
        return &p->of_case;
    }
    return NULL;
}

/* An edition that says what the one before said is shown by the cases of that one. */
static bool is_shown(const struct proof *proof, const struct place_proof *place,
                     const struct figure *figure)
{
    for (const struct proof_probe *p = proof->probes; p != NULL; p = p->next) {
        const struct profile *profile = p->law->profile;
        const struct figure *found = strcmp(profile->id, place->id) == 0
                                         ? profile_figure(profile, figure->name)
                                         : NULL;
        if (found != NULL && p->cased != NULL && p->cased[found - profile->figures]
            && profile_same_demand(found, figure))
            return true;
    }
    return false;
}

static const struct figure *moved_by(const struct proof_block *block, const struct entry *entry)
{
    const struct profile *profile = block->law->profile;
    const struct figure *own = profile_figure(profile, entry->name);
    const struct figure *from = block->parent == NULL ? NULL
                                                      : profile_figure(block->parent, entry->name);
    const bool moved = own != NULL && own->borrowed == NULL && own->draft == NULL
                       && (from == NULL || entry->advice || !profile_same_demand(from, own)
                           || !profile_binds(block->parent, from));
    return moved && profile_binds(profile, own) ? own : NULL;
}

static void say_unshown(struct proof *proof, struct place_proof *place, struct proof_block *block,
                        const struct entry *entry)
{
    proof_remark(proof, place, block,
                 (struct remark){entry->file, entry->line, false,
                                 arena_format(&proof->arena,
                                              "figure \"%s\" is moved, and no case under this "
                                              "place is judged by it: write one at the figure "
                                              "and one just past it in %s.cases.lua",
                                              entry->name, place->id),
                                 NULL});
}

void proof_cover(struct proof *proof, struct place_proof *place, struct proof_block *block)
{
    const struct block *written = block->block;
    if (block->parent == NULL || written->model || written->base_only)
        return;
    for (const struct entry *e = written->entries; e != NULL; e = e->next) {
        const struct figure *figure = moved_by(block, e);
        if (figure == NULL)
            continue;
        block->moved++;
        if (is_shown(proof, place, figure))
            block->shown++;
        /* Of many places only how many there are is told. */
        else if (!proof->of_all)
            say_unshown(proof, place, block, e);
    }
}
