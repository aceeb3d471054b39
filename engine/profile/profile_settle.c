/* profile_settle.c - what hangs on all figures once they are laid: doubts, vouching, ways. */
#include "profile/profile_making.h"

#include "base/nearest.h"
#include "base/text.h"
#include "profile/vouch.h"

/* What a block follows but does not vouch for, and no nearer block restates.
 * Common practice is no code: whose code binds does not touch it. */
void profile_mark_unverified(struct resolving *r, const struct block *block)
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
           && (text_same(figure->cite.code, adopt->book)
               || (text_same(profile_edition_of_model(r), adopt->book)
                   && text_same(figure->cite.code, profile_edition_followed(r))));
}

/* The place's own reading of what it follows: it lifts how badly a figure is known and
 * whether its book binds, never what it demands nor that sources differ. */
static void vouch_for(struct resolving *r, const struct block *block,
                      const struct entry_adopt *adopt, struct figure *figure)
{
    const bool doubted = figure->cite.status != STATUS_SEEN || figure->read_in != NULL
                         || figure->unsure != NULL || figure->borrowed != NULL;
    if (figure->cite.status == STATUS_PRACTICE || !doubted)
        return;
    figure->cite.status = block->invented ? STATUS_INVENTED : STATUS_SEEN;
    figure->cite.source = arena_format(&r->profile->arena, "%s's own reading of %s, %s, %s",
                                       block->title, adopt->book, adopt->cite, adopt->as_seen);
    figure->read_in = NULL;
    figure->read_count = 0;
    figure->unsure = figure->borrowed = NULL;
}

static void say_adopts(struct resolving *r, size_t level, const struct entry_adopt *adopt,
                       const char *what)
{
    problem_at_line(
        r->problems, PROBLEM_RULES, r->places[level]->source->path, adopt->line, 0,
        "adopts: nothing that is followed stands in \"%s\" under \"%s\"; write the book "
        "as findings cite it (%s) and topics as `eavemark explain` lists them",
        adopt->book, what,
        profile_edition_of_model(r) == NULL ? "IRC 2021" : profile_edition_of_model(r));
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

void profile_lay_adopts(struct resolving *r, size_t level)
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
void profile_settle_doubts(struct resolving *r)
{
    struct profile *profile = r->profile;
    size_t kept = 0;
    for (size_t i = 0; i < profile->doubt_count; i++) {
        bool rests = false, adopted = false;
        for (size_t level = 0; level < r->depth; level++) {
            adopted = adopted || r->blocks[level]->adopts != NULL;
            rests = rests || text_same(r->blocks[level]->draft, profile->doubts[i]);
        }
        for (size_t k = 0; k < profile->figure_count && !rests; k++)
            rests = text_same(profile->figures[k].unsure, profile->doubts[i])
                    || text_same(profile->figures[k].borrowed, profile->doubts[i]);
        if (rests || !adopted)
            profile->doubts[kept++] = profile->doubts[i];
    }
    profile->doubt_count = kept;
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
    struct figure *figure = profile_figure_among(r->profile, r->profile->figure_count, way->name);
    const struct figure *lever = way->behind == NULL
                                     ? NULL
                                     : profile_figure_among(r->profile, r->profile->figure_count,
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
void profile_settle_ways(struct resolving *r)
{
    for (size_t i = r->depth; i-- > 0;)
        for (const struct entry_way *w = r->blocks[i]->ways; w != NULL; w = w->next)
            settle_way(r, w);
}

/* What a place was seen to say nothing of is known to be as its model has it; an
 * invented place has no pages beside its file. */
void profile_settle_pages(struct resolving *r)
{
    const struct block *nearest = r->blocks[0];
    for (size_t page = 0; page < nearest->read.set_count; page++) {
        bool told = false;
        for (size_t i = 0; i < r->profile->figure_count; i++) {
            struct figure *figure = &r->profile->figures[i];
            if (!text_same(figure->pages, nearest->read.set[page]))
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

/* Where a figure of its own says whether exactly so much counts, a place that says so
 * beside the number means that figure. */
void profile_settle_at(struct resolving *r)
{
    for (size_t i = 0; i < r->profile->figure_count; i++) {
        struct figure *figure = &r->profile->figures[i];
        if (figure->at_figure == NULL || figure->at == AT_AS_SENSE_SAYS)
            continue;
        struct figure *says = profile_figure_among(r->profile, r->profile->figure_count,
                                                   figure->at_figure);
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

/* What was read in other editions than the one followed is no more than a sister
 * text's here, and must not pass for what was read. */
void profile_settle_readings(struct resolving *r)
{
    const char *edition = profile_edition_of_model(r);
    for (size_t i = 0; edition != NULL && i < r->profile->figure_count; i++) {
        struct figure *figure = &r->profile->figures[i];
        const struct value read = {
            .kind = VALUE_SET, .set = figure->read_in, .set_count = figure->read_count};
        if (figure->read_in != NULL && !profile_set_has(&read, edition))
            figure->cite.status = STATUS_PARALLEL;
    }
}
