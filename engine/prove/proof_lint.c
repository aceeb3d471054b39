#include "prove/proof.h"

#include "base/nearest.h"
#include "base/text.h"
#include "judge/reads.h"
#include "judge/row_reads.h"

#include <string.h>

/* Entries and drops of a place that do nothing ---------------------------------------- */

static void add_remark(struct proof *proof, struct place_proof *place, struct proof_block *block,
                       const char *file, int line, bool error, const char *says)
{
    proof_remark(proof, place, block, (struct remark){file, line, error, says, NULL});
}

/* A new value without a word of it ends a dispute; a citation alone does not. */
static bool keeps_dispute(const struct entry *entry, const struct figure *from)
{
    return (entry->value.kind == VALUE_NONE && entry->disputed == NULL)
           || text_same(entry->disputed, from->disputed);
}

/* A value given again that the parent gives already. */
static void lint_entry(struct proof *proof, struct place_proof *place, struct proof_block *block,
                       const struct profile *parent, const struct entry *entry)
{
    const struct figure *from = profile_figure(parent, entry->name);
    /* What is not vouched for is vouched for by giving it again. */
    if (from == NULL || block->block->borrowed != NULL || block->block->unsure != NULL)
        return;
    const struct figure *own = profile_figure(block->law->profile, entry->name);
    /* Advice leaves the value, and a word on what is exactly at it says something anew. */
    if (entry->advice || entry->at != AT_AS_SENSE_SAYS)
        return;
    /* Nor is a limit said again whose switch was off: the place turns it on, or is told that
     * it has not. */
    if (!profile_binds(parent, from))
        return;
    const bool same = (entry->value.kind == VALUE_NONE && entry->adds.kind == VALUE_NONE
                       && entry->without.kind == VALUE_NONE)
                      || (own != NULL && profile_same_value(&from->value, &own->value));
    const bool restates = !text_same(entry->cite, from->cite.section)
                          || (entry->status != STATUS_NONE && entry->status != from->cite.status)
                          || (entry->source != NULL && !text_same(entry->source, from->cite.source))
                          || !keeps_dispute(entry, from);
    if (same && !restates)
        add_remark(proof, place, block, entry->file, entry->line, false,
                   arena_format(&proof->arena,
                                "figure \"%s\" changes nothing: it says what is followed "
                                "anyway; take the line out",
                                entry->name));
    /* What a page of the place's own prints stays said when what is followed moves. */
    else if (same && entry->value.kind != VALUE_NONE && keeps_dispute(entry, from)
             && (entry->source == NULL || text_same(entry->source, from->cite.source)))
        add_remark(proof, place, block, entry->file, entry->line, false,
                   arena_format(&proof->arena,
                                "figure \"%s\" changes no value: it is that already; to "
                                "restate only the citation, leave the value out",
                                entry->name));
}

/* A section that what is followed has too, cited as if it stood in an ordinance that
 * goes by no edition of its own: people would look for it in the wrong book. */
static void lint_book(struct proof *proof, struct place_proof *place, struct proof_block *block,
                      const struct profile *parent, const struct entry *entry)
{
    const struct figure *from = profile_figure(parent, entry->name);
    if (from == NULL || entry->book != NULL || block->block->edition != NULL || block->block->model
        || !text_same(entry->cite, from->cite.section)
        || text_same(block->block->code, from->cite.code))
        return;
    add_remark(proof, place, block, entry->file, entry->line, false,
               arena_format(&proof->arena,
                            "figure \"%s\" is cited by a section of what is followed; if "
                            "it stands there, write book = \"%s\"",
                            entry->name, from->cite.code));
}

static void lint_drop(struct proof *proof, struct place_proof *place, struct proof_block *block,
                      const struct profile *parent, const struct entry_drop *drop)
{
    const struct drop *already = profile_drop(parent, drop->rule);
    if (already != NULL)
        add_remark(proof, place, block, block->file, drop->line, false,
                   arena_format(&proof->arena,
                                "drops \"%s\", which %s has dropped already; take the "
                                "line out",
                                drop->rule, already->by));
}

/* Words of sets --------------------------------------------------------------------------- */

/* One of a field's choices, or a field's own name, of which some sets are made. Fields
 * are walked as the tree they are; FIELDS_DEEPEST bounds it. */
static bool is_choice(const struct field *field, const char *word)
{
    bool found = false;
    for (const struct field *f = field->first_child; f != NULL && !found; f = f->next) {
        found = f->name != NULL && strcmp(f->name, word) == 0;
        for (size_t i = 0; i < f->choice_count; i++)
            found = found || strcmp(f->choices[i], word) == 0;
        found = found || is_choice(f, word);
    }
    return found;
}

static void offer_choices(const struct field *field, struct nearest *nearest)
{
    for (const struct field *f = field->first_child; f != NULL; f = f->next) {
        for (size_t i = 0; i < f->choice_count; i++)
            nearest_offer(nearest, f->choices[i]);
        offer_choices(f, nearest);
    }
}

/* Do members of the set say what some field of a job can say? Some do not: lengths of
 * nails, for one. */
static bool holds_choices(const struct field *root, const struct value *set)
{
    for (size_t i = 0; i < set->set_count; i++)
        if (is_choice(root, set->set[i]))
            return true;
    return false;
}

/* A word that no job can say lets nothing pass and asks for nothing: a slip. */
static void lint_words(struct proof *proof, struct place_proof *place, struct proof_block *block,
                       const struct profile *parent, const struct entry *entry)
{
    const struct field *root = block->law->book->fields.root;
    const struct figure *from = profile_figure(parent, entry->name);
    const struct figure *own = profile_figure(block->law->profile, entry->name);
    const struct value none = {.kind = VALUE_SET};
    const struct value *old = from == NULL || from->value.kind != VALUE_SET ? &none : &from->value;
    /* Those that say whose words they hold are held against just those. */
    if (own == NULL || own->value.kind != VALUE_SET || own->words != NULL
        || (old->set_count > 0 && !holds_choices(root, old)))
        return;
    for (size_t i = 0; i < own->value.set_count; i++) {
        const char *word = own->value.set[i];
        struct nearest nearest;
        if (profile_set_has(old, word) || is_choice(root, word))
            continue;
        nearest_start(&nearest, word);
        offer_choices(root, &nearest);
        add_remark(proof, place, block, entry->file, entry->line, true,
                   arena_format(&proof->arena,
                                "figure \"%s\": no field of a job can say \"%s\"%s%s%s",
                                entry->name, word,
                                nearest.name == NULL ? "; `eavemark fields` lists what they can"
                                                     : "; did you mean \"",
                                nearest.name == NULL ? "" : nearest.name,
                                nearest.name == NULL ? "" : "\"?"));
    }
}

/* Figures that no rule asks for ---------------------------------------------------------- */

/* By a rule, or for a list to buy from, a caution, or a fact that follows from others. */
static bool law_asks(const struct law *law, const struct figure *figure)
{
    return row_reads_ask(law->book, figure) || row_reads_print(law->book, figure);
}

/* The figure that something asks for whose name is nearest to this one. */
static const char *nearest_asked(const struct proof_block *block, const char *name)
{
    struct nearest nearest;
    const struct profile *profile = block->law->profile;
    nearest_start(&nearest, name);
    for (size_t i = 0; i < profile->figure_count; i++)
        if (law_asks(block->law, &profile->figures[i]))
            nearest_offer(&nearest, profile->figures[i].name);
    return nearest.name;
}

static void lint_reach(struct proof *proof, struct place_proof *place, struct proof_block *block,
                       const struct entry *entry)
{
    const struct profile *profile = block->law->profile;
    const struct figure *figure = profile_figure(profile, entry->name);
    if (figure == NULL || law_asks(block->law, figure))
        return;
    const char *near = nearest_asked(block, entry->name);
    /* A model code may hold figures before there are rules for them. */
    add_remark(proof, place, block, entry->file, entry->line, !block->block->model,
               arena_format(&proof->arena,
                            "figure \"%s\" reaches no rule: no rule asks for it, so it "
                            "decides nothing%s%s%s",
                            entry->name,
                            near == NULL ? "; write a rule that does, or take the line out"
                                         : "; did you mean \"",
                            near == NULL ? "" : near, near == NULL ? "" : "\"?"));
}

/* A map by which nothing is judged asks every job in vain. */
static void lint_zone(struct proof *proof, struct place_proof *place, struct proof_block *block,
                      const struct entry_zone *zone)
{
    const struct rulebook *book = block->law->book;
    const struct field *field = fields_find(&book->fields, zone->name);
    for (const struct rule *r = book->rules; field != NULL && r != NULL; r = r->next)
        if (reads_has_field(r->reads, field))
            return;
    add_remark(proof, place, block, block->file, zone->line, true,
               arena_format(&proof->arena,
                            "zone \"%s\" decides nothing: no rule asks for it; write "
                            "site.local_wind_zone, site.local_fire_zone or site.local_ice_zone, "
                            "or a rule that does",
                            zone->name));
}

/* The whole ------------------------------------------------------------------------------ */

/* Nobody can be told which way a new yes or no went. */
static void lint_way(struct proof *proof, struct place_proof *place, struct proof_block *block,
                     const struct law *parent, const struct entry *entry)
{
    const struct figure *own = profile_figure(block->law->profile, entry->name);
    if (own == NULL || own->value.kind != VALUE_YES_NO || own->stricter != STRICTER_UNSAID
        || (parent != NULL && profile_figure(parent->profile, entry->name) != NULL))
        return;
    add_remark(proof, place, block, entry->file, entry->line, false,
               arena_format(&proof->arena,
                            "figure \"%s\" is yes or no, and does not say which asks for "
                            "more: write stricter = true, false or \"neither\"",
                            entry->name));
}

/* A model is not asked for cases of its figures, nor are they looked through as a place's. */
static void lint_model(struct proof *proof, struct place_proof *place, struct proof_block *block,
                       const struct profile *parent)
{
    if (block->block->model && !parent->base_only)
        add_remark(proof, place, block, block->file, block->block->line, true,
                   "says model = true, which is of model codes, and follows one that jobs are "
                   "judged by: take it out");
}

void proof_lint(struct proof *proof, struct place_proof *place, struct proof_block *block,
                const struct law *parent)
{
    if (parent != NULL)
        lint_model(proof, place, block, parent->profile);
    for (const struct entry *e = block->block->entries; parent != NULL && e != NULL; e = e->next) {
        lint_entry(proof, place, block, parent->profile, e);
        lint_words(proof, place, block, parent->profile, e);
        lint_book(proof, place, block, parent->profile, e);
    }
    for (const struct entry *e = block->block->entries; e != NULL; e = e->next)
        lint_way(proof, place, block, parent, e);
    for (const struct entry *e = block->block->entries; e != NULL; e = e->next)
        lint_reach(proof, place, block, e);
    for (const struct entry_zone *z = block->block->zones; z != NULL; z = z->next)
        lint_zone(proof, place, block, z);
    for (const struct entry_drop *d = block->block->drops; parent != NULL && d != NULL; d = d->next)
        lint_drop(proof, place, block, parent->profile, d);
}
