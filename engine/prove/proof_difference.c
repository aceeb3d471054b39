#include "prove/proof.h"

#include "judge/row_silent.h"

#include <string.h>

const char *proof_difference_word(enum difference_kind kind)
{
    static const char *const WORDS[DIFFERENCE_KIND_COUNT] = {
        [DIFFERENCE_STRICTER] = "stricter",   [DIFFERENCE_LOOSER] = "looser",
        [DIFFERENCE_BOTH_WAYS] = "both ways", [DIFFERENCE_CHANGED] = "changed",
        [DIFFERENCE_REMOVED] = "removed",     [DIFFERENCE_ADDED] = "added",
        [DIFFERENCE_ENDED] = "ended",
    };
    return WORDS[kind];
}

/* A bound that only lets less pass when it rises, falls; a trigger that bites
 * sooner when it falls. */
static enum difference_kind number_kind(enum sense sense, double from, double to)
{
    const bool up = to > from;
    if (sense == SENSE_AT_LEAST || sense == SENSE_UNDER)
        return up ? DIFFERENCE_STRICTER : DIFFERENCE_LOOSER;
    if (sense == SENSE_AT_MOST || sense == SENSE_FROM || sense == SENSE_OVER)
        return up ? DIFFERENCE_LOOSER : DIFFERENCE_STRICTER;
    /* Exactly so much: what did before does no more, and something else does. */
    return sense == SENSE_EQUALS ? DIFFERENCE_BOTH_WAYS : DIFFERENCE_CHANGED;
}

/* Every member of the one is in the other. */
static bool set_within(const struct value *inner, const struct value *outer)
{
    for (size_t i = 0; i < inner->set_count; i++)
        if (!profile_set_has(outer, inner->set[i]))
            return false;
    return true;
}

/* Fewer choices let less in; fewer things banned or asked for ask for less. Sets that
 * only overlap go both ways. */
static enum difference_kind set_kind(enum sense sense, const struct value *from,
                                     const struct value *to)
{
    const bool fewer = set_within(to, from), more = set_within(from, to);
    const bool lets_in = sense == SENSE_ONE_OF;
    const bool asks = sense == SENSE_NONE_OF || sense == SENSE_ALL_OF;
    if (!lets_in && !asks)
        return DIFFERENCE_CHANGED;
    if (fewer == more)
        return DIFFERENCE_BOTH_WAYS;
    return fewer == lets_in ? DIFFERENCE_STRICTER : DIFFERENCE_LOOSER;
}

/* True and false say nothing of which way they go: the figure does. */
static enum difference_kind flag_kind(const struct figure *figure)
{
    if (figure->stricter == STRICTER_UNSAID)
        return DIFFERENCE_CHANGED;
    if (figure->stricter == STRICTER_NEITHER)
        return DIFFERENCE_BOTH_WAYS;
    return figure->value.yes == (figure->stricter == STRICTER_YES) ? DIFFERENCE_STRICTER
                                                                   : DIFFERENCE_LOOSER;
}

/* The value is the same; a bound was added or taken away, or exactly so much moved to
 * the other side. */
static enum difference_kind edge_kind(const struct figure *from, const struct figure *to)
{
    if (from->at == to->at) {
        const bool fewer = to->also.kind == VALUE_NONE;
        return from->also.kind == VALUE_NONE ? DIFFERENCE_STRICTER
               : fewer                       ? DIFFERENCE_LOOSER
                       : number_kind(to->also_sense, from->also.number, to->also.number);
    }
    const bool limit = to->sense == SENSE_AT_LEAST || to->sense == SENSE_AT_MOST;
    /* Whether exactly the figure is now on the side that passes. */
    const bool counts = to->at == AT_COUNTS
                        || (to->at == AT_AS_SENSE_SAYS && (limit || to->sense == SENSE_FROM));
    return counts == limit ? DIFFERENCE_LOOSER : DIFFERENCE_STRICTER;
}

static enum difference_kind figure_kind(const struct figure *from, const struct figure *to)
{
    if (profile_same_value(&from->value, &to->value))
        return edge_kind(from, to);
    switch (to->value.kind) {
    case VALUE_NUMBER:
        return number_kind(to->sense, from->value.number, to->value.number);
    case VALUE_SET:
        return set_kind(to->sense, &from->value, &to->value);
    case VALUE_YES_NO:
        return flag_kind(to);
    case VALUE_NONE:
    case VALUE_TEXT:
        break;
    }
    return DIFFERENCE_CHANGED;
}

/* Where less is asked than before, somebody should look twice. */
static const char *caution_of(enum difference_kind kind)
{
    if (kind == DIFFERENCE_LOOSER)
        return "a job that fails where this place follows may pass here; be sure that the "
               "citation says so";
    if (kind == DIFFERENCE_BOTH_WAYS)
        return "stricter for some jobs and looser for others: one that fails where this place "
               "follows may pass here";
    if (kind == DIFFERENCE_REMOVED)
        return "nothing checks this here any more; what the rule guarded against is still there";
    return NULL;
}

/* Adds after the last, so that they stay in order. */
static void add_difference(struct proof *proof, struct proof_block *block,
                           struct difference difference)
{
    struct difference *kept = arena_alloc(&proof->arena, sizeof(*kept));
    if (kept == NULL)
        return;
    if (difference.caution == NULL)
        difference.caution = caution_of(difference.kind);
    /* A figure and a drop stay with the profile; a rule and a field go when their law rests. */
    if (difference.is == NULL) {
        difference.name = arena_copy(&proof->arena, difference.name);
        difference.says = arena_copy(&proof->arena, difference.says);
    }
    *kept = difference;
    struct difference **at = &block->differences;
    while (*at != NULL)
        at = &(*at)->next;
    *at = kept;
}

/* A limit that bound nobody before did not move: it is new. */
static enum difference_kind kind_between(const struct profile *parent, const struct figure *from,
                                         const struct profile *own, const struct figure *to)
{
    if (!profile_binds(own, to))
        return from == NULL ? DIFFERENCE_ADDED : DIFFERENCE_CHANGED;
    if (from == NULL || !profile_binds(parent, from))
        return DIFFERENCE_ADDED;
    return figure_kind(from, to);
}

/* A limit left as it was, whose switch was turned: it binds now, or no longer. */
static void compare_switched(struct proof *proof, struct proof_block *block,
                             const struct profile *parent, const struct figure *from,
                             const struct figure *to)
{
    const bool bound = profile_binds(parent, from), binds = profile_binds(block->law->profile, to);
    if (bound == binds)
        return;
    add_difference(
        proof, block,
        (struct difference){.of = DIFFERENCE_FIGURE,
                            .kind = binds ? DIFFERENCE_ADDED : DIFFERENCE_REMOVED,
                            .name = to->name,
                            .says = to->behind,
                            .from = binds ? (struct value){.kind = VALUE_NONE} : from->value,
                            .to = to->value,
                            .sense = to->sense,
                            .is = to,
                            .was = binds ? NULL : from,
                            .cite = &to->cite,
                            .caution = binds ? NULL
                                             : "this limit binds nobody here any "
                                               "more; what it guarded against is "
                                               "still there"});
}

/* The same demand, but what was common practice, and only warned, is law here; or the other
 * way about. */
static void compare_status(struct proof *proof, struct proof_block *block,
                           const struct figure *from, const struct figure *to)
{
    const bool law = to->cite.status != STATUS_PRACTICE;
    if (law == (from->cite.status != STATUS_PRACTICE) || block->block->model)
        return;
    add_difference(proof, block,
                   (struct difference){.of = DIFFERENCE_FIGURE,
                                       .kind = law ? DIFFERENCE_STRICTER : DIFFERENCE_LOOSER,
                                       .name = to->name,
                                       .from = from->value,
                                       .to = to->value,
                                       .sense = to->sense,
                                       .is = to,
                                       .was = from,
                                       .cite = &to->cite,
                                       .caution = law ? "the same value, but common practice "
                                                        "before: a house that does not meet it "
                                                        "only warned, and fails here"
                                                      : NULL});
}

/* Beside a law that stays, the place advises more, or drafts another. */
static void compare_advice(struct proof *proof, struct proof_block *block,
                           const struct figure *from, const struct figure *to)
{
    if (to->rival.kind != VALUE_NONE && to->disputed != NULL && !block->block->model
        && !profile_same_value(&from->rival, &to->rival))
        add_difference(proof, block,
                       (struct difference){.of = DIFFERENCE_ADVICE,
                                           .kind = DIFFERENCE_ADDED,
                                           .name = to->name,
                                           .says = to->disputed,
                                           .from = to->value,
                                           .to = to->rival,
                                           .sense = to->sense,
                                           .was = to,
                                           .is = to,
                                           .cite = &to->cite});
}

/* A value moved, and with it what only warned became law: NULL where it did not. */
static const char *caution_of_status(struct proof *proof, const struct proof_block *block,
                                     const struct figure *from, const struct figure *to,
                                     enum difference_kind kind)
{
    static const char FAILS[] = "common practice before: a house that does not meet it only "
                                "warned, and fails here";
    if (from == NULL || from->cite.status != STATUS_PRACTICE || to->cite.status == STATUS_PRACTICE
        || block->block->model)
        return NULL;
    const char *also = caution_of(kind);
    return also == NULL ? FAILS : arena_format(&proof->arena, "%s; and %s", FAILS, also);
}

static void compare_figures(struct proof *proof, struct proof_block *block,
                            const struct profile *parent)
{
    const struct profile *own = block->law->profile;
    for (size_t i = 0; i < own->figure_count; i++) {
        const struct figure *to = &own->figures[i];
        const struct figure *from = profile_figure(parent, to->name);
        if (from != NULL && profile_same_demand(from, to)) {
            compare_status(proof, block, from, to);
            compare_switched(proof, block, parent, from, to);
            compare_advice(proof, block, from, to);
            continue;
        }
        const enum difference_kind kind = kind_between(parent, from, own, to);
        add_difference(
            proof, block,
            (struct difference){
                .of = DIFFERENCE_FIGURE,
                .kind = kind,
                .name = to->name,
                .from = kind == DIFFERENCE_ADDED ? (struct value){.kind = VALUE_NONE} : from->value,
                .to = to->value,
                .sense = to->sense,
                .is = to,
                .was = kind == DIFFERENCE_ADDED ? NULL : from,
                .cite = &to->cite,
                .caution = caution_of_status(proof, block, from, to, kind)});
    }
}

/* Rules dropped, and rules of the place's own. */
static void compare_rules(struct proof *proof, struct proof_block *block,
                          const struct law_digest *parent)
{
    bool silent;
    const struct profile *own = block->law->profile;
    /* What the parent dropped already is no difference. */
    for (size_t i = 0; i < own->drop_count; i++)
        if (profile_drop(parent->law->profile, own->drops[i].rule) == NULL)
            add_difference(proof, block,
                           (struct difference){.of = DIFFERENCE_RULE,
                                               .kind = DIFFERENCE_REMOVED,
                                               .name = own->drops[i].rule,
                                               .says = own->drops[i].reason});
    for (const struct rule *r = block->law->book->rules; r != NULL; r = r->next)
        if (!proof_digest_rule(parent, r->id, &silent) && profile_drop(own, r->id) == NULL)
            add_difference(proof, block,
                           (struct difference){.of = DIFFERENCE_RULE,
                                               .kind = DIFFERENCE_ADDED,
                                               .name = r->id,
                                               .says = r->title});
}

/* A rule of both that only one of them lets speak. */
static void compare_duty(struct proof *proof, struct proof_block *block, bool spoke,
                         const struct rule *is)
{
    const bool speaks = !row_silent(block->law->book, is);
    if (spoke != speaks)
        add_difference(proof, block,
                       (struct difference){.of = DIFFERENCE_DUTY,
                                           .kind = speaks ? DIFFERENCE_ADDED : DIFFERENCE_REMOVED,
                                           .name = is->id,
                                           .says = is->title});
}

static void compare_duties(struct proof *proof, struct proof_block *block,
                           const struct law_digest *parent)
{
    bool silent;
    const struct profile *own = block->law->profile;
    for (const struct rule *r = block->law->book->rules; r != NULL; r = r->next) {
        if (profile_drop(own, r->id) == NULL && profile_drop(parent->law->profile, r->id) == NULL
            && proof_digest_rule(parent, r->id, &silent))
            compare_duty(proof, block, !silent, r);
    }
}

/* Fields are walked as the tree they are; FIELDS_DEEPEST bounds it. */
static void compare_fields(struct proof *proof, struct proof_block *block,
                           const struct law_digest *parent, const struct field *field)
{
    for (const struct field *f = field->first_child; f != NULL; f = f->next) {
        if (!proof_digest_field(parent, f->path))
            add_difference(proof, block,
                           (struct difference){.of = DIFFERENCE_FIELD,
                                               .kind = DIFFERENCE_ADDED,
                                               .name = f->path,
                                               .says = f->ask});
        compare_fields(proof, block, parent, f);
    }
}

void proof_differences(struct proof *proof, struct proof_block *block,
                       const struct law_digest *parent)
{
    compare_figures(proof, block, parent->law->profile);
    compare_rules(proof, block, parent);
    compare_duties(proof, block, parent);
    compare_fields(proof, block, parent, block->law->book->fields.root);
}
