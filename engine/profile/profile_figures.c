/* profile_figures.c - the figures of a chain of places, laid over one another. */
#include "profile/profile_making.h"

#include "base/nearest.h"
#include "base/text.h"
#include "profile/figure_value.h"

#include <stdio.h>
#include <stdlib.h>

static void say_figure(struct resolving *r, const struct entry *entry, const char *what,
                       const char *hint)
{
    problem_at_line(r->problems, PROBLEM_RULES, entry->file, entry->line, 0, "figure \"%s\" %s%s",
                    entry->name, what, hint);
}

/* The edition of the model code that the place follows, or NULL. */
const char *profile_edition_of_model(const struct resolving *r)
{
    for (size_t i = 0; i < r->depth; i++)
        if (r->blocks[i]->model && !r->blocks[i]->base_only)
            return r->blocks[i]->edition;
    return NULL;
}

/* The edition that a model's figures are cited by: the one the place goes by, or
 * the model's own where the place only borrows it. */
const char *profile_edition_followed(const struct resolving *r)
{
    size_t nearest = 0;
    for (size_t i = 0; i < r->depth; i++)
        if (r->blocks[i]->borrowed != NULL)
            nearest = i + 1;
    for (size_t i = nearest; nearest > 0 && i < r->depth; i++)
        if (r->blocks[i]->edition != NULL)
            return r->blocks[i]->edition;
    return r->profile->edition;
}

/* The name findings cite: a model's is the edition followed. */
const char *profile_code_name(const struct resolving *r, size_t level)
{
    const struct block *block = r->blocks[level];
    if (block->model && block->code == NULL)
        return profile_edition_followed(r);
    return block->code != NULL ? block->code : block->title;
}

/* A figure nobody below gives: it must say everything. */
static bool figure_is_whole(struct resolving *r, size_t level, const struct entry *entry)
{
    const char *missing = entry->value.kind == VALUE_NONE ? "a value"
                          : entry->sense == SENSE_NONE    ? "a sense"
                          : entry->cite == NULL           ? "a cite"
                          : entry->status == STATUS_NONE  ? "a status"
                          : entry->source == NULL         ? "a source"
                          : entry->value.kind == VALUE_NUMBER && entry->value.unit == NULL
                              ? "a unit"
                              : NULL;
    if (missing == NULL)
        return true;
    struct nearest nearest;
    nearest_start(&nearest, entry->name);
    for (size_t i = 0; i < r->profile->figure_count; i++)
        nearest_offer(&nearest, r->profile->figures[i].name);
    /* At the far end of the chain every figure is new: nothing there is a slip of the
     * pen. */
    char hint[256] = "";
    if (nearest.name != NULL && r->depth > level + 1)
        snprintf(hint, sizeof(hint), "; did you mean \"%s\"?", nearest.name);
    char what[256];
    snprintf(what, sizeof(what), "is not given by what this follows, and to be a new one lacks %s",
             missing);
    say_figure(r, entry, what, hint);
    return false;
}

/* The other bound, and what is said of exactly the figure: those of the value given. Either
 * said by itself leaves the other as it was. */
static void figure_bound(const struct entry *entry, struct figure *figure)
{
    const bool anew = entry->value.kind != VALUE_NONE;
    if (anew || entry->also.kind != VALUE_NONE) {
        figure->also = entry->also;
        figure->also.unit = figure->value.unit;
        figure->also_sense = entry->also_sense;
    }
    if (anew || entry->at != AT_AS_SENSE_SAYS)
        figure->at = entry->at;
}

/* A bound stands on the other side of a limit. */
static bool bound_fits(const struct figure *figure, const struct entry *entry)
{
    const double value = entry->value.kind == VALUE_NUMBER ? entry->value.number
                                                           : figure->value.number;
    if (entry->also.kind == VALUE_NONE)
        return true;
    if (!profile_is_limit(figure) || figure->sense == entry->also_sense)
        return false;
    return figure->sense == SENSE_AT_LEAST ? entry->also.number >= value
                                           : entry->also.number <= value;
}

/* at_counts needs a sense with an edge to be exactly at. */
static bool at_fits(const struct figure *figure, const struct entry *entry)
{
    return entry->at == AT_AS_SENSE_SAYS || profile_is_limit(figure) || figure->sense == SENSE_FROM
           || figure->sense == SENSE_OVER || figure->sense == SENSE_UNDER
           || figure->at_figure != NULL;
}

/* A figure enters the profile at the level that first gives it. */
static void figure_new(struct resolving *r, size_t level, const struct entry *entry,
                       size_t capacity)
{
    if (entry->advice) {
        say_figure(r, entry, "is no advice: nothing that is followed demands less of it", "");
        return;
    }
    if (!figure_is_whole(r, level, entry) || r->profile->figure_count == capacity)
        return;
    struct figure *figure = &r->profile->figures[r->profile->figure_count++];
    *figure = (struct figure){.name = entry->name,
                              .value = entry->value,
                              .sense = entry->sense,
                              .disputed = entry->disputed,
                              .rival = entry->rival,
                              .draft = r->blocks[level]->draft,
                              .read_in = entry->read_in.set,
                              .read_count = entry->read_in.set_count,
                              .pages = entry->pages,
                              .unread = entry->pages != NULL,
                              .file = entry->file,
                              .line = entry->line};
    figure->rival.unit = entry->value.unit;
    figure->at_figure = entry->at_figure;
    figure->by = entry->by;
    figure->row = entry->row;
    figure_bound(entry, figure);
    if (!bound_fits(figure, entry))
        say_figure(r, entry, "has a bound that does not fit", "");
    figure->cite = (struct cite){entry->book != NULL ? entry->book : profile_code_name(r, level),
                                 entry->cite, entry->status, entry->source};
}

/* More than a citation. */
static bool says_anew(const struct entry *entry)
{
    return entry->value.kind != VALUE_NONE || entry->also.kind != VALUE_NONE
           || entry->at != AT_AS_SENSE_SAYS;
}

/* What a new value may not change, and what it must say. */
static bool figure_may_move(struct resolving *r, size_t level, const struct entry *entry,
                            const struct figure *figure)
{
    const struct block *block = r->blocks[level];
    if (entry->sense != SENSE_NONE && entry->sense != figure->sense)
        say_figure(r, entry, "changes the sense; leave it out, or write what it is: ",
                   sense_word(figure->sense));
    else if (entry->value.unit != NULL && !text_same(entry->value.unit, figure->value.unit))
        say_figure(r, entry, "changes the unit; leave it out, and give the value in: ",
                   figure->value.unit == NULL ? "none" : figure->value.unit);
    else if (entry->value.kind != VALUE_NONE && entry->value.kind != figure->value.kind)
        say_figure(r, entry, "changes its kind of value", " (number, true/false or set)");
    else if (entry->cite == NULL)
        say_figure(r, entry, "has no citation: write cite = \"...\"", "");
    else if (!bound_fits(figure, entry))
        say_figure(r, entry,
                   "has a bound that does not fit: a figure of the sense at_least takes "
                   "and_most, one of at_most and_least, on the other side of it",
                   "");
    else if (!at_fits(figure, entry))
        say_figure(r, entry, "has at_counts, but nothing is exactly at it", "");
    else if (says_anew(entry) && entry->status == STATUS_NONE && !block->invented)
        say_figure(r, entry, "has no status: write status = \"seen\" (or how it is known)", "");
    else if (says_anew(entry) && entry->source == NULL && !block->invented)
        say_figure(r, entry, "has no source: write source = \"...\"", "");
    else
        return true;
    return false;
}

/* A draft is not law: what it would move stays, and the draft is another reading. */
static void figure_draft(const struct entry *entry, const char *draft, struct figure *figure)
{
    if (entry->value.kind == VALUE_NONE || profile_same_value(&entry->value, &figure->value))
        return;
    figure->disputed = draft;
    figure->rival = entry->value;
    figure->rival.unit = figure->value.unit;
}

/* What a place advises stands beside the law and takes nothing from it: it must ask for
 * more. Who meets the law and not the advice is warned; who does not meet the law fails. */
static void figure_advise(struct resolving *r, const struct block *block, const struct entry *entry,
                          struct figure *figure)
{
    const bool more = figure->sense == SENSE_AT_LEAST ? entry->value.number > figure->value.number
                                                      : entry->value.number < figure->value.number;
    if (entry->value.kind != VALUE_NUMBER || !profile_is_limit(figure) || !more) {
        say_figure(r, entry,
                   "is no advice: that goes with a number at least or at most, and asks for more "
                   "than the law that is followed",
                   "");
        return;
    }
    const char *whose = arena_format(&r->profile->arena,
                                     "%s advises it (%s), and demands it of nobody", block->title,
                                     entry->cite);
    figure_draft(entry, whose, figure);
}

static void amend(struct arena *arena, const struct block *block, const struct entry *entry,
                  struct figure *figure)
{
    struct amended *amended = arena_alloc(arena, sizeof(*amended));
    if (amended == NULL)
        return;
    *amended = (struct amended){block->title, figure->value, entry->value};
    amended->to.unit = figure->value.unit;
    figure->amended = amended;
}

/* A nearer place restates a figure: value, citation, or both. What the restated line does
 * not say stays as the farther one has it, except doubts, which end with it. */
static void figure_move(struct resolving *r, size_t level, const struct entry *entry,
                        struct figure *figure)
{
    if (!figure_may_move(r, level, entry, figure))
        return;
    const struct block *block = r->blocks[level];
    if (block->draft != NULL) {
        figure_draft(entry, block->draft, figure);
        return;
    }
    if (entry->advice) {
        figure_advise(r, block, entry, figure);
        return;
    }
    if (entry->value.kind != VALUE_NONE) {
        const char *unit = figure->value.unit;
        /* An edition of the model is no amendment; a place that repeats the model's value
         * is none either. */
        if (!block->model && !profile_same_value(&entry->value, &figure->value)) {
            amend(&r->profile->arena, block, entry, figure);
        }
        figure->value = entry->value;
        figure->value.unit = unit;
        figure->disputed = entry->disputed;
        figure->rival = (struct value){0};
        figure->read_in = NULL;
        figure->read_count = 0;
    }
    /* A line that only cites again keeps how well the value is known. */
    if (says_anew(entry)) {
        figure_bound(entry, figure);
        figure->cite.status = block->invented ? STATUS_INVENTED : entry->status;
        figure->cite.source = entry->source != NULL ? entry->source : block->title;
    }
    if (!block->model)
        figure->unread = false; /* the place says so itself */
    figure->file = entry->file;
    figure->line = entry->line;
    figure->borrowed = NULL;
    figure->unsure = NULL;
    figure->draft = NULL;
    if (entry->disputed != NULL) {
        figure->disputed = entry->disputed;
        figure->rival = entry->rival;
        figure->rival.unit = figure->value.unit;
    }
    if (entry->status != STATUS_NONE) {
        figure->cite.status = entry->status;
        figure->read_in = entry->read_in.set;
        figure->read_count = entry->read_in.set_count;
    }
    if (entry->source != NULL)
        figure->cite.source = entry->source;
    figure->cite.code = entry->book != NULL ? entry->book : profile_code_name(r, level);
    figure->cite.section = entry->cite;
}

/* Mostly they are in order: a place gives few figures that are new. */
static void sort_figures(struct profile *profile)
{
    size_t i = 1;
    while (i < profile->figure_count
           && profile_figure_order(&profile->figures[i - 1], &profile->figures[i]) < 0)
        i++;
    if (i < profile->figure_count)
        qsort(profile->figures, profile->figure_count, sizeof(struct figure), profile_figure_order);
}

/* Lays the blocks over one another, the farthest first. None gives a figure twice, so
 * each looks only among what was there before it. */
void profile_figures_lay(struct resolving *r)
{
    struct profile *profile = r->profile;
    size_t capacity = 0;
    for (size_t i = 0; i < r->depth; i++)
        for (const struct entry *e = r->blocks[i]->entries; e != NULL; e = e->next)
            capacity++;
    profile->figures = arena_room(&profile->arena, capacity + 1, sizeof(struct figure));
    if (profile->figures == NULL)
        return;
    /* The farthest block first; what it doubts is marked before it adds its own. */
    for (size_t i = r->depth; i-- > 0;) {
        profile_mark_unverified(r, r->blocks[i]);
        profile_lay_adopts(r, i);
        const size_t before = profile->figure_count;
        for (const struct entry *e = r->blocks[i]->entries; e != NULL; e = e->next) {
            struct figure *figure = profile_figure_among(profile, before, e->name);
            char why[FIGURE_WHY];
            struct entry said = *e; /* with the value that the words mean here */
            if (!figure_value_settle(&said, figure, &profile->arena, why))
                say_figure(r, e, why, "");
            else if (figure == NULL)
                figure_new(r, i, &said, capacity);
            else
                figure_move(r, i, &said, figure);
        }
        sort_figures(profile);
    }
}
