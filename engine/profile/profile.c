#include "profile/place_zone.h"
#include "profile/profile.h"

#include "base/date.h"
#include "base/nearest.h"
#include "base/number.h"
#include "profile/figure_value.h"
#include "profile/place_cache.h"
#include "profile/vouch.h"

#include <ctype.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* One profile being made; blocks[i] is what binds of places[i] on the date. */
struct resolving {
    struct place_cache *cache; /* or NULL: places are read for this profile alone */
    const char *home;
    const char *job_file;
    long date;
    struct problems *problems;
    struct profile *profile;
    const struct place *places[PROFILE_LONGEST_CHAIN]; /* nearest first */
    const struct block *blocks[PROFILE_LONGEST_CHAIN];
    size_t depth;
};

/* An id is a path below jurisdictions/: nothing in it may climb out or differ by case. */
bool profile_is_id(const char *id)
{
    if (id[0] == '\0' || id[0] == '/' || id[strlen(id) - 1] == '/' || strlen(id) > 120
        || strstr(id, "..") != NULL || strstr(id, "//") != NULL)
        return false;
    for (const char *at = id; *at != '\0'; at++)
        if (!islower((unsigned char)*at) && !isdigit((unsigned char)*at)
            && strchr("/-_", *at) == NULL)
            return false;
    return true;
}

bool profile_exists(const char *home, const char *id)
{
    char path[256];
    if (!profile_is_id(id))
        return false;
    snprintf(path, sizeof(path), "jurisdictions/%s.lua", id);
    return home_has(home, path);
}

/* Near names ---------------------------------------------------------------- */

enum { NEAR_NAMES = 5, NEAR_BYTES = PROFILE_NEAR_BYTES / NEAR_NAMES };

struct near {
    const char *wanted;
    char names[NEAR_NAMES][NEAR_BYTES];
    size_t distances[NEAR_NAMES];
    size_t count;
};

/* Only the last part was typed, or is what was meant. */
static const char *last_part(const char *id)
{
    const char *slash = strrchr(id, '/');
    return slash == NULL ? id : slash + 1;
}

static void near_offer(void *data, const char *path)
{
    struct near *near = data;
    char id[NEAR_BYTES];
    size_t length;
    const char *from = home_place_id(path, &length);
    if (from == NULL || length >= sizeof(id))
        return;
    memcpy(id, from, length);
    id[length] = '\0';
    const size_t whole = nearest_distance(near->wanted, id);
    const size_t part = nearest_distance(last_part(near->wanted), last_part(id));
    const size_t distance = whole < part ? whole : part;
    if (near->count == NEAR_NAMES && distance >= near->distances[NEAR_NAMES - 1])
        return;
    /* Insertion into the few nearest so far. */
    size_t at = near->count < NEAR_NAMES ? near->count++ : NEAR_NAMES - 1;
    for (; at > 0 && near->distances[at - 1] > distance; at--) {
        memcpy(near->names[at], near->names[at - 1], NEAR_BYTES);
        near->distances[at] = near->distances[at - 1];
    }
    memcpy(near->names[at], id, length + 1);
    near->distances[at] = distance;
}

void profile_near_names(const char *home, const char *wanted, char *text, size_t size)
{
    struct near near = {.wanted = wanted};
    text[0] = '\0';
    home_each(home, "jurisdictions", ".lua", 6, near_offer, &near);
    for (size_t i = 0; i < near.count; i++) {
        const size_t used = strlen(text);
        snprintf(text + used, size - used, "%s%s", i == 0 ? "" : ", ", near.names[i]);
    }
}

static void say_unknown(struct resolving *r, const char *id)
{
    char names[PROFILE_NEAR_BYTES];
    profile_near_names(r->home, id, names, sizeof(names));
    problem_at(r->problems, PROBLEM_JOB, r->job_file, "/jurisdiction",
               "no jurisdiction is named \"%s\"; the nearest are: %s", id,
               names[0] == '\0' ? "(none found: is this the right --home?)" : names);
}

/* The chain ------------------------------------------------------------------ */

/* "example/a -> us-xx -> next" */
static void chain_text(const struct resolving *r, const char *next, char *text, size_t size)
{
    text[0] = '\0';
    for (size_t i = 0; i < r->depth; i++) {
        const size_t used = strlen(text);
        snprintf(text + used, size - used, "%s -> ", r->blocks[i]->id);
    }
    const size_t used = strlen(text);
    snprintf(text + used, size - used, "%s", next);
}

/* The block that binds on the date, or NULL. */
static const struct block *block_on(const struct place *place, long date)
{
    for (const struct block *b = place->blocks; b != NULL; b = b->next)
        if (b->from <= date && (b->to == 0 || date < b->to))
            return b;
    return NULL;
}

static void say_no_edition(struct resolving *r, const struct place *place)
{
    char day[16], dates[512] = "";
    for (const struct block *b = place->blocks; b != NULL; b = b->next) {
        char from[16] = "the beginning", to[16] = "no end";
        if (b->from != 0)
            date_write(b->from, from);
        if (b->to != 0)
            date_write(b->to, to);
        const size_t used = strlen(dates);
        snprintf(dates + used, sizeof(dates) - used, "%sfrom %s to %s", used == 0 ? "" : "; ", from,
                 to);
    }
    date_write(r->date, day);
    problem_at(r->problems, PROBLEM_JOB, r->job_file, "/date",
               "no edition of %s covers %s; it has: %s", place->blocks->id, day, dates);
}

/* Checks that a parent may be followed: it exists and is not already in the chain. */
static bool may_follow(struct resolving *r, const char *id)
{
    char chain[1024];
    const struct block *child = r->blocks[r->depth - 1];
    const struct place *place = r->places[r->depth - 1];
    chain_text(r, id, chain, sizeof(chain));
    for (size_t i = 0; i < r->depth; i++) {
        if (strcmp(r->blocks[i]->id, id) == 0) {
            problem_at_line(r->problems, PROBLEM_RULES, place->source->path, child->line, 0,
                            "follows itself in a circle: %s", chain);
            return false;
        }
    }
    if (r->depth == PROFILE_LONGEST_CHAIN) {
        problem_at_line(r->problems, PROBLEM_RULES, place->source->path, child->line, 0,
                        "follows too long a chain: %s", chain);
        return false;
    }
    if (!profile_exists(r->home, id)) {
        char names[PROFILE_NEAR_BYTES];
        profile_near_names(r->home, id, names, sizeof(names));
        problem_at_line(r->problems, PROBLEM_RULES, place->source->path, child->line, 0,
                        "follows \"%s\", which does not exist (%s); the nearest are: %s", id, chain,
                        names);
        return false;
    }
    return true;
}

/* The profile holds as long as all of its blocks do. */
static void intersect_dates(struct profile *profile, const struct block *block)
{
    if (block->from > profile->from)
        profile->from = block->from;
    if (block->to != 0 && (profile->to == 0 || block->to < profile->to))
        profile->to = block->to;
}

/* Follows the chain from id to its end. */
static bool resolve_chain(struct resolving *r, const char *id)
{
    while (id != NULL) {
        if (r->depth > 0 && !may_follow(r, id))
            return false;
        struct profile *profile = r->profile;
        const struct place *place = r->cache == NULL
                                        ? place_load(r->home, id, &profile->arena,
                                                     &profile->sources, r->problems)
                                        : place_cache_get(r->cache, r->home, id, &profile->arena,
                                                          &profile->sources, r->problems);
        if (place == NULL)
            return false;
        const struct block *block = block_on(place, r->date);
        if (block == NULL) {
            say_no_edition(r, place);
            return false;
        }
        r->places[r->depth] = place;
        r->blocks[r->depth] = block;
        r->depth++;
        intersect_dates(profile, block);
        id = block->follows;
    }
    return true;
}

/* Figures -------------------------------------------------------------------- */

static int figure_order(const void *a, const void *b)
{
    return strcmp(((const struct figure *)a)->name, ((const struct figure *)b)->name);
}

/* Among the first `sorted` figures. */
static struct figure *figure_find(const struct profile *profile, size_t sorted, const char *name)
{
    const struct figure wanted = {.name = name};
    return bsearch(&wanted, profile->figures, sorted, sizeof(struct figure), figure_order);
}

/* Both NULL, or the same words. */
static bool same_text(const char *a, const char *b)
{
    return a == b || (a != NULL && b != NULL && strcmp(a, b) == 0);
}

/* Exact: a figure was typed, not computed. Sets are compared in their order. */
bool profile_same_value(const struct value *a, const struct value *b)
{
    if (a->kind != b->kind || a->set_count != b->set_count)
        return false;
    for (size_t i = 0; i < a->set_count; i++)
        if (strcmp(a->set[i], b->set[i]) != 0)
            return false;
    return a->number == b->number && a->yes == b->yes;
}

bool profile_set_has(const struct value *set, const char *member)
{
    for (size_t i = 0; i < set->set_count; i++)
        if (strcmp(set->set[i], member) == 0)
            return true;
    return false;
}

static void say_figure(struct resolving *r, const struct entry *entry, const char *what,
                       const char *hint)
{
    problem_at_line(r->problems, PROBLEM_RULES, entry->file, entry->line, 0, "figure \"%s\" %s%s",
                    entry->name, what, hint);
}

/* The edition of the model code that the place follows, or NULL. */
static const char *edition_of_model(const struct resolving *r)
{
    for (size_t i = 0; i < r->depth; i++)
        if (r->blocks[i]->model && !r->blocks[i]->base_only)
            return r->blocks[i]->edition;
    return NULL;
}

/* The edition that a model's figures are cited by: the one the place goes by, or
 * the model's own where the place only borrows it. */
static const char *edition_followed(const struct resolving *r)
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
static const char *code_name(const struct resolving *r, size_t level)
{
    const struct block *block = r->blocks[level];
    if (block->model && block->code == NULL)
        return edition_followed(r);
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

/* The other bound, and what is said of exactly the figure: those of the value given. */
static void figure_bound(const struct entry *entry, struct figure *figure)
{
    figure->also = entry->also;
    figure->also.unit = figure->value.unit;
    figure->also_sense = entry->also_sense;
    figure->at = entry->at;
}

static bool is_limit(const struct figure *figure)
{
    return figure->sense == SENSE_AT_LEAST || figure->sense == SENSE_AT_MOST;
}

/* A bound stands on the other side of a limit. */
static bool bound_fits(const struct figure *figure, const struct entry *entry)
{
    const double value = entry->value.kind == VALUE_NUMBER ? entry->value.number
                                                           : figure->value.number;
    if (entry->also.kind == VALUE_NONE)
        return true;
    if (!is_limit(figure) || figure->sense == entry->also_sense)
        return false;
    return figure->sense == SENSE_AT_LEAST ? entry->also.number >= value
                                           : entry->also.number <= value;
}

/* at_counts needs a sense with an edge to be exactly at. */
static bool at_fits(const struct figure *figure, const struct entry *entry)
{
    return entry->at == AT_AS_SENSE_SAYS || is_limit(figure) || figure->sense == SENSE_FROM
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
                              .read_in = entry->read_in,
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
    figure->cite = (struct cite){entry->book != NULL ? entry->book : code_name(r, level),
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
    else if (entry->value.unit != NULL && !same_text(entry->value.unit, figure->value.unit))
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
    if (entry->value.kind != VALUE_NUMBER || !is_limit(figure) || !more) {
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
            figure->moved = true;
            figure->amended.by = block->title;
            figure->amended.from = figure->value;
            figure->amended.to = entry->value;
            figure->amended.to.unit = unit;
        }
        figure->value = entry->value;
        figure->value.unit = unit;
        figure->disputed = entry->disputed;
        figure->rival = (struct value){0};
        figure->read_in = (struct value){.kind = VALUE_NONE};
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
    if (says_anew(entry))
        figure->vouched = false; /* its own status stands beside it */
    if (entry->disputed != NULL) {
        figure->disputed = entry->disputed;
        figure->rival = entry->rival;
        figure->rival.unit = figure->value.unit;
    }
    if (entry->status != STATUS_NONE) {
        figure->cite.status = entry->status;
        figure->read_in = entry->read_in;
    }
    if (entry->source != NULL)
        figure->cite.source = entry->source;
    figure->cite.code = entry->book != NULL ? entry->book : code_name(r, level);
    figure->cite.section = entry->cite;
}

/* What a block follows but does not vouch for, and no nearer block restates.
 * Common practice is no code: whose code binds does not touch it. */
static void mark_unverified(struct resolving *r, const struct block *block)
{
    for (size_t i = 0; i < r->profile->figure_count; i++) {
        struct figure *figure = &r->profile->figures[i];
        if (figure->cite.status == STATUS_PRACTICE)
            continue;
        if (block->borrowed != NULL)
            figure->borrowed = block->borrowed;
        if (block->unsure != NULL)
            figure->unsure = block->unsure;
    }
}

/* Does the book of an adoption hold the figure? A place may call it by another name, as
 * amended; then its model's name for it counts too. */
static bool adopt_holds(const struct resolving *r, const struct entry_adopt *adopt,
                        const struct figure *figure)
{
    bool named = adopt->topics.kind == VALUE_NONE;
    for (size_t i = 0; i < adopt->topics.set_count && !named; i++)
        named = vouch_names(adopt->topics.set[i], figure->name);
    return named
           && (same_text(figure->cite.code, adopt->book)
               || (same_text(edition_of_model(r), adopt->book)
                   && same_text(figure->cite.code, edition_followed(r))));
}

/* The place's own reading of what it follows: it lifts how badly a figure is known and
 * whether its book binds, never what it demands nor that sources differ. */
static void vouch_for(struct resolving *r, const struct block *block,
                      const struct entry_adopt *adopt, struct figure *figure)
{
    const bool doubted = figure->cite.status != STATUS_SEEN || figure->read_in.kind == VALUE_SET
                         || figure->unsure != NULL || figure->borrowed != NULL;
    if (figure->cite.status == STATUS_PRACTICE || !doubted)
        return;
    figure->cite.status = block->invented ? STATUS_INVENTED : STATUS_SEEN;
    figure->cite.source = arena_format(&r->profile->arena, "%s's own reading of %s, %s, %s",
                                       block->title, adopt->book, adopt->cite, adopt->as_seen);
    figure->read_in = (struct value){.kind = VALUE_NONE};
    figure->unsure = figure->borrowed = NULL;
    figure->vouched = true;
}

static void say_adopts(struct resolving *r, size_t level, const struct entry_adopt *adopt,
                       const char *what)
{
    problem_at_line(
        r->problems, PROBLEM_RULES, r->places[level]->source->path, adopt->line, 0,
        "adopts: nothing that is followed stands in \"%s\" under \"%s\"; write the book "
        "as findings cite it (%s) and topics as `eavemark explain` lists them",
        adopt->book, what, edition_of_model(r) == NULL ? "IRC 2021" : edition_of_model(r));
}

/* A topic that holds nothing is a slip, and would leave what was meant unvouched. */
static void check_topics(struct resolving *r, size_t level, const struct entry_adopt *adopt)
{
    for (size_t t = 0; t < adopt->topics.set_count; t++) {
        bool found = false;
        for (size_t i = 0; i < r->profile->figure_count && !found; i++)
            found = vouch_names(adopt->topics.set[t], r->profile->figures[i].name)
                    && adopt_holds(r, adopt, &r->profile->figures[i]);
        if (!found)
            say_adopts(r, level, adopt, adopt->topics.set[t]);
    }
}

static void lay_adopts(struct resolving *r, size_t level)
{
    for (const struct entry_adopt *a = r->blocks[level]->adopts; a != NULL; a = a->next) {
        bool held = false;
        check_topics(r, level, a);
        for (size_t i = 0; i < r->profile->figure_count; i++) {
            if (!adopt_holds(r, a, &r->profile->figures[i]))
                continue;
            held = true;
            vouch_for(r, r->blocks[level], a, &r->profile->figures[i]);
        }
        if (!held && a->topics.set_count == 0)
            say_adopts(r, level, a, "any topic");
    }
}

/* Why a book may not bind is no longer said once no figure rests on it. */
static void settle_doubts(struct resolving *r)
{
    struct profile *profile = r->profile;
    size_t kept = 0;
    for (size_t i = 0; i < profile->doubt_count; i++) {
        bool rests = false, adopted = false;
        for (size_t level = 0; level < r->depth; level++) {
            adopted = adopted || r->blocks[level]->adopts != NULL;
            rests = rests || same_text(r->blocks[level]->draft, profile->doubts[i]);
        }
        for (size_t k = 0; k < profile->figure_count && !rests; k++)
            rests = same_text(profile->figures[k].unsure, profile->doubts[i])
                    || same_text(profile->figures[k].borrowed, profile->doubts[i]);
        if (rests || !adopted)
            profile->doubts[kept++] = profile->doubts[i];
    }
    profile->doubt_count = kept;
}

/* Lays the blocks over one another, the farthest first. None gives a figure twice, so
 * each looks only among what was there before it. */
static void overlay_figures(struct resolving *r)
{
    struct profile *profile = r->profile;
    size_t capacity = 0;
    for (size_t i = 0; i < r->depth; i++)
        for (const struct entry *e = r->blocks[i]->entries; e != NULL; e = e->next)
            capacity++;
    profile->figures = arena_array(&profile->arena, capacity + 1, sizeof(struct figure));
    if (profile->figures == NULL)
        return;
    /* The farthest block first; what it doubts is marked before it adds its own. */
    for (size_t i = r->depth; i-- > 0;) {
        mark_unverified(r, r->blocks[i]);
        lay_adopts(r, i);
        const size_t before = profile->figure_count;
        for (const struct entry *e = r->blocks[i]->entries; e != NULL; e = e->next) {
            struct figure *figure = figure_find(profile, before, e->name);
            char why[FIGURE_WHY];
            struct entry said = *e; /* with the value that the words mean here */
            if (!figure_value_settle(&said, figure, &profile->arena, why))
                say_figure(r, e, why, "");
            else if (figure == NULL)
                figure_new(r, i, &said, capacity);
            else
                figure_move(r, i, &said, figure);
        }
        qsort(profile->figures, profile->figure_count, sizeof(struct figure), figure_order);
    }
}

static void say_way(struct resolving *r, const struct entry_way *way, const char *what)
{
    problem_at_line(r->problems, PROBLEM_RULES, way->file, way->line, 0, "figure \"%s\" %s",
                    way->name, what);
}

/* Those of one model's editions may lack in what they all follow. */
static void say_no_figure(struct resolving *r, const struct entry_way *way, const char *name)
{
    struct nearest nearest;
    if (r->blocks[0]->base_only)
        return;
    nearest_start(&nearest, name);
    for (size_t i = 0; i < r->profile->figure_count; i++)
        nearest_offer(&nearest, r->profile->figures[i].name);
    problem_at_line(r->problems, PROBLEM_RULES, way->file, way->line, 0,
                    "no figure is named \"%s\"; the nearest is %s", name,
                    nearest.name == NULL ? "none" : nearest.name);
}

/* Direction (which of yes and no is stricter) and switch are facts of the rule that reads
 * a figure: a nearer block may add them, not change them. */
static void settle_way(struct resolving *r, const struct entry_way *way)
{
    struct figure *figure = figure_find(r->profile, r->profile->figure_count, way->name);
    const struct figure *lever = way->behind == NULL
                                     ? NULL
                                     : figure_find(r->profile, r->profile->figure_count,
                                                   way->behind);
    if (figure == NULL) {
        say_no_figure(r, way, way->name);
    } else if (way->behind != NULL && lever == NULL) {
        say_no_figure(r, way, way->behind);
    } else if (lever != NULL && (lever->value.kind != VALUE_YES_NO || lever == figure)) {
        say_way(r, way, "stands behind what is no switch: another figure that is yes or no");
    } else if (way->stricter != STRICTER_UNSAID && figure->value.kind != VALUE_YES_NO) {
        say_way(r, way, "is no yes or no: its sense says which way it binds");
    } else if (way->stricter != STRICTER_UNSAID && figure->stricter != STRICTER_UNSAID
               && figure->stricter != way->stricter) {
        say_way(r, way, "changes which of yes and no is stricter");
    } else {
        if (way->stricter != STRICTER_UNSAID)
            figure->stricter = way->stricter;
        if (way->behind != NULL)
            figure->behind = way->behind;
        if (way->words != NULL)
            figure->words = way->words;
    }
}

/* What each block says of figures beside their values, the farthest first. */
static void settle_ways(struct resolving *r)
{
    for (size_t i = r->depth; i-- > 0;)
        for (const struct entry_way *w = r->blocks[i]->ways; w != NULL; w = w->next)
            settle_way(r, w);
}

/* What a place was seen to say nothing of is known to be as its model has it; an
 * invented place has no pages beside its file. */
static void read_pages(struct resolving *r)
{
    const struct block *nearest = r->blocks[0];
    for (size_t page = 0; page < nearest->read.set_count; page++) {
        bool told = false;
        for (size_t i = 0; i < r->profile->figure_count; i++) {
            struct figure *figure = &r->profile->figures[i];
            if (!same_text(figure->pages, nearest->read.set[page]))
                continue;
            told = true;
            figure->unread = false;
        }
        if (!told)
            problem_at_line(r->problems, PROBLEM_RULES, r->places[0]->source->path, nearest->line,
                            0, "read: no figure is told by pages on \"%s\"",
                            nearest->read.set[page]);
    }
    for (size_t i = 0; nearest->invented && i < r->profile->figure_count; i++)
        r->profile->figures[i].unread = false;
}

/* "deck" names all rules of the topic deck; "deck.gap" that one. */
bool profile_set_names(const struct value *set, const char *rule)
{
    const size_t topic = strcspn(rule, ".");
    for (size_t i = 0; i < set->set_count; i++)
        if (strcmp(set->set[i], rule) == 0
            || (strlen(set->set[i]) == topic && strncmp(set->set[i], rule, topic) == 0))
            return true;
    return false;
}

const struct law_gap *profile_gap(const struct profile *profile, const char *rule)
{
    for (size_t i = 0; i < profile->gap_count; i++)
        if (profile_set_names(&profile->gaps[i].rules, rule)
            && !profile_set_has(&profile->gaps[i].but, rule))
            return &profile->gaps[i];
    return NULL;
}

const struct law_gap *profile_gap_in_order(const struct profile *profile, const char *quantity)
{
    for (size_t i = 0; i < profile->gap_count; i++)
        if (profile_set_has(&profile->gaps[i].orders, quantity))
            return &profile->gaps[i];
    return NULL;
}

/* From the last, which is the nearest place: whose reason counts. */
const struct drop *profile_drop(const struct profile *profile, const char *rule)
{
    for (size_t i = profile->drop_count; i-- > 0;)
        if (strcmp(profile->drops[i].rule, rule) == 0)
            return &profile->drops[i];
    return NULL;
}

/* Where a figure of its own says whether exactly so much counts, a place that says so
 * beside the number means that figure. */
static void settle_at(struct resolving *r)
{
    for (size_t i = 0; i < r->profile->figure_count; i++) {
        struct figure *figure = &r->profile->figures[i];
        if (figure->at_figure == NULL || figure->at == AT_AS_SENSE_SAYS)
            continue;
        struct figure *says = figure_find(r->profile, r->profile->figure_count, figure->at_figure);
        if (says == NULL || says->value.kind != VALUE_YES_NO) {
            problem_at_line(r->problems, PROBLEM_RULES, figure->file, figure->line, 0,
                            "figure \"%s\": at_figure \"%s\" is no yes or no of this place",
                            figure->name, figure->at_figure);
            continue;
        }
        says->value.yes = figure->at == AT_COUNTS;
        says->cite = figure->cite;
        figure->at = AT_AS_SENSE_SAYS;
    }
}

double profile_threshold(const struct figure *figure)
{
    /* Less than the half of a printed digit that comparisons allow. */
    const double little = 0.8 * number_tolerance(figure->value.unit);
    const double value = figure->value.number;
    if (figure->sense == SENSE_OVER && figure->at == AT_COUNTS)
        return value - little;
    if ((figure->sense == SENSE_FROM && figure->at == AT_COUNTS_NOT)
        || (figure->sense == SENSE_UNDER && figure->at == AT_COUNTS))
        return value + little;
    return value;
}

/* Past what its sense alone compares. */
bool profile_is_held_further(const struct figure *figure)
{
    return is_limit(figure) && (figure->also.kind != VALUE_NONE || figure->at == AT_COUNTS_NOT);
}

bool profile_same_demand(const struct figure *a, const struct figure *b)
{
    return profile_same_value(&a->value, &b->value) && profile_same_value(&a->also, &b->also)
           && a->at == b->at;
}

/* What was read in other editions than the one followed is no more than a sister
 * text's here, and must not pass for what was read. */
static void settle_readings(struct resolving *r)
{
    const char *edition = edition_of_model(r);
    for (size_t i = 0; edition != NULL && i < r->profile->figure_count; i++) {
        struct figure *figure = &r->profile->figures[i];
        if (figure->read_in.kind == VALUE_SET && !profile_set_has(&figure->read_in, edition))
            figure->cite.status = STATUS_PARALLEL;
    }
}

const struct figure *profile_figure(const struct profile *profile, const char *name)
{
    return figure_find(profile, profile->figure_count, name);
}

bool profile_binds(const struct profile *profile, const struct figure *figure)
{
    const struct figure *lever = figure->behind == NULL ? NULL
                                                        : profile_figure(profile, figure->behind);
    return lever == NULL || lever->value.yes;
}

/* The rest ------------------------------------------------------------------- */

static bool has_gap(const struct profile *profile, const char *fact)
{
    for (size_t i = 0; i < profile->gap_count; i++)
        if (strcmp(profile->gaps[i].fact, fact) == 0)
            return true;
    return false;
}

/* A nearer place that speaks of the fact knows better. */
static void lay_gaps(struct resolving *r)
{
    struct profile *profile = r->profile;
    size_t capacity = 0;
    for (size_t i = 0; i < r->depth; i++)
        for (const struct entry_gap *g = r->blocks[i]->gaps; g != NULL; g = g->next)
            capacity++;
    profile->gaps = arena_array(&profile->arena, capacity + 1, sizeof(struct law_gap));
    if (profile->gaps == NULL)
        return;
    for (size_t i = 0; i < r->depth; i++)
        for (const struct entry_gap *g = r->blocks[i]->gaps; g != NULL; g = g->next)
            if (!has_gap(profile, g->fact))
                profile->gaps[profile->gap_count++] = (struct law_gap){
                    .fact = g->fact,
                    .rules = g->rules,
                    .but = g->but,
                    .orders = g->orders,
                    .why = g->why,
                    .file = r->places[i]->source->path,
                    .line = g->line};
}

const struct place_fact *profile_fact(const struct profile *profile, const char *name)
{
    for (size_t i = 0; i < profile->fact_count; i++)
        if (strcmp(profile->facts[i].name, name) == 0)
            return &profile->facts[i];
    return NULL;
}

/* A nearer place that speaks of it knows better. What a block follows without being sure
 * that it binds here is no word on the place; a draft's word is none either. */
static void lay_facts(struct resolving *r)
{
    struct profile *profile = r->profile;
    size_t capacity = 0;
    for (size_t i = 0; i < r->depth; i++)
        for (const struct entry_fact *f = r->blocks[i]->facts; f != NULL; f = f->next)
            capacity++;
    profile->facts = arena_array(&profile->arena, capacity + 1, sizeof(struct place_fact));
    for (size_t i = 0; i < r->depth && profile->facts != NULL; i++) {
        const struct block *block = r->blocks[i];
        for (const struct entry_fact *f = block->facts; f != NULL; f = f->next)
            if (block->draft == NULL && profile_fact(profile, f->name) == NULL)
                profile->facts[profile->fact_count++] = (struct place_fact){
                    .name = f->name,
                    .value = f->value,
                    .has_least = f->has_least,
                    .has_most = f->has_most,
                    .least = f->least,
                    .most = f->most,
                    .one_of = f->one_of,
                    .unit = f->unit,
                    .cite = {f->book != NULL ? f->book : code_name(r, i), f->cite, f->status,
                             f->source},
                    .by = block->title,
                    .file = r->places[i]->source->path,
                    .line = f->line};
        if (block->borrowed != NULL || block->unsure != NULL)
            break;
    }
}

/* Nearest last, as profile_drop looks for them. */
static void lay_drops(struct resolving *r)
{
    struct profile *profile = r->profile;
    size_t capacity = 0;
    for (size_t i = 0; i < r->depth; i++)
        for (const struct entry_drop *d = r->blocks[i]->drops; d != NULL; d = d->next)
            capacity++;
    profile->drops = arena_array(&profile->arena, capacity + 1, sizeof(struct drop));
    if (profile->drops == NULL)
        return;
    for (size_t i = r->depth; i-- > 0;)
        for (const struct entry_drop *d = r->blocks[i]->drops; d != NULL; d = d->next)
            profile->drops[profile->drop_count++] = (struct drop){
                d->rule, d->reason, r->blocks[i]->title, r->places[i]->source->path, d->line};
}

/* "tamarack.rules.lua" beside jurisdictions/example/tamarack.lua. */
static const char *path_beside(struct arena *arena, const char *file, const char *name)
{
    const char *slash = strrchr(file, '/');
    return arena_format(arena, "%.*s/%s", (int)(slash - file), file, name);
}

/* The farthest first: a nearer place's rules may rest on what those declare. */
static void lay_rule_files(struct resolving *r)
{
    struct profile *profile = r->profile;
    profile->rule_files = arena_array(&profile->arena, r->depth + 1, sizeof(char *));
    if (profile->rule_files == NULL)
        return;
    for (size_t i = r->depth; i-- > 0;)
        if (r->blocks[i]->rules != NULL)
            profile->rule_files[profile->rule_file_count++] = path_beside(
                &profile->arena, r->places[i]->source->path, r->blocks[i]->rules);
}

/* Each reason once: a city often repeats its state's. */
static void add_doubt(struct profile *profile, const char *doubt)
{
    for (size_t i = 0; i < profile->doubt_count && doubt != NULL; i++)
        if (strcmp(profile->doubts[i], doubt) == 0)
            return;
    if (doubt != NULL)
        profile->doubts[profile->doubt_count++] = doubt;
}

static void lay_doubts(struct resolving *r)
{
    struct profile *profile = r->profile;
    /* Three reasons a block at most. */
    profile->doubts = arena_array(&profile->arena, 3 * r->depth + 1, sizeof(char *));
    if (profile->doubts == NULL)
        return;
    for (size_t i = 0; i < r->depth; i++) {
        add_doubt(profile, r->blocks[i]->draft);
        add_doubt(profile, r->blocks[i]->unsure);
        add_doubt(profile, r->blocks[i]->borrowed);
    }
}

/* The nearest place names the profile; edition and wording come from the nearest that has
 * one. */
static void lay_heading(struct resolving *r)
{
    struct profile *profile = r->profile;
    const struct block *nearest = r->blocks[0];
    profile->id = nearest->id;
    profile->title = nearest->title;
    profile->invented = nearest->invented;
    profile->base_only = nearest->base_only;
    profile->model = nearest->model;
    profile->chain = arena_array(&profile->arena, r->depth, sizeof(char *));
    if (profile->chain == NULL)
        return;
    for (size_t i = 0; i < r->depth; i++) {
        profile->chain[i] = r->blocks[i]->id;
        if (profile->edition == NULL)
            profile->edition = r->blocks[i]->edition;
        if (profile->as_seen == NULL)
            profile->as_seen = r->blocks[i]->as_seen;
    }
    profile->chain_count = r->depth;
    lay_doubts(r);
    if (profile->edition == NULL)
        profile->edition = nearest->title;
    profile->own_code = code_name(r, 0);
}

struct profile *profile_resolve(const char *home, const char *id, long date, const char *job_file,
                                struct problems *problems)
{
    return profile_resolve_from(NULL, home, id, date, job_file, problems);
}

struct profile *profile_resolve_from(struct place_cache *cache, const char *home, const char *id,
                                     long date, const char *job_file, struct problems *problems)
{
    struct resolving r = {
        .cache = cache, .home = home, .job_file = job_file, .date = date, .problems = problems};
    if (!profile_exists(home, id)) {
        say_unknown(&r, id);
        return NULL;
    }
    const size_t before = problems->count;
    r.profile = calloc(1, sizeof(*r.profile));
    if (r.profile == NULL) {
        problem_out_of_memory(problems);
        return NULL;
    }
    /* Everything below ends up in the profile's arena, so that it stands alone; or, with
     * a cache, in the cache's. */
    char *own_id = arena_copy(&r.profile->arena, id);
    if (own_id != NULL && resolve_chain(&r, own_id)) {
        lay_heading(&r);
        overlay_figures(&r);
        settle_readings(&r);
        settle_doubts(&r);
        read_pages(&r);
        settle_at(&r);
        settle_ways(&r);
        lay_drops(&r);
        lay_gaps(&r);
        lay_facts(&r);
        place_zones_lay(r.profile, r.blocks, r.places, r.depth);
        lay_rule_files(&r);
    }
    if (r.profile->arena.failed)
        problem_out_of_memory(problems);
    if (problems->count != before || problems->out_of_memory) {
        profile_free(r.profile);
        return NULL;
    }
    return r.profile;
}

void profile_free(struct profile *profile)
{
    if (profile == NULL)
        return;
    arena_free(&profile->arena);
    free(profile);
}
