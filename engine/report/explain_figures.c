#include "report/explain_figures.h"

#include "report/grid.h"
#include "report/page.h"
#include "report/value_words.h"

#include <string.h>

/* In columns: a section's name fits. */
enum { NARROWEST_CELL = 9 };

/* A model is known by its edition, a place by its name. */
static const char *column_head(const struct profile *profile)
{
    return profile->model ? profile->edition : profile->title;
}

/* NULL where the place has no such figure: the grid shows a dash. */
static const char *cell_of(struct arena *arena, const struct profile *profile, const char *name)
{
    const struct figure *figure = profile_figure(profile, name);
    struct text cell = TEXT_EMPTY;
    if (figure == NULL)
        return NULL;
    value_add(&cell, &figure->value);
    if (figure->amended != NULL)
        text_add(&cell, " *");
    return text_keep(&cell, arena);
}

/* Editions side by side that say the same of all the figures are one column. */
struct span {
    size_t first, last;
};

static bool same_figures(const struct explanation *x, size_t a, size_t b)
{
    /* A place stands by itself: it is the one asked for. */
    if (!x->columns[a]->model || !x->columns[b]->model)
        return false;
    for (size_t r = 0; r < x->figures.count; r++) {
        const struct figure *one = profile_figure(x->columns[a], x->figures.items[r]);
        const struct figure *other = profile_figure(x->columns[b], x->figures.items[r]);
        if ((one == NULL) != (other == NULL)
            || (one != NULL && !profile_same_value(&one->value, &other->value)))
            return false;
    }
    return true;
}

static size_t find_spans(const struct explanation *x, struct span *spans)
{
    size_t count = 0;
    for (size_t c = 0; c < x->column_count; c++) {
        if (count > 0 && same_figures(x, spans[count - 1].first, c))
            spans[count - 1].last = c;
        else
            spans[count++] = (struct span){c, c};
    }
    return count;
}

/* "IRC 2012 to 2018" */
static const char *span_head(struct arena *arena, const struct explanation *x,
                             const struct span *span)
{
    const char *first = column_head(x->columns[span->first]);
    const char *last = column_head(x->columns[span->last]);
    const char *year = strrchr(last, ' ');
    /* Only within one book: "IRC 2012 to 2018", never from one code to another. */
    const size_t book = year == NULL ? 0 : (size_t)(year - last);
    if (span->first == span->last)
        return first;
    return arena_format(arena, "%s to %s", first,
                        year != NULL && strncmp(first, last, book + 1) == 0 ? year + 1 : last);
}

static void add_table(const struct explanation *x, struct text *out)
{
    struct arena arena = {0};
    const size_t rows = x->figures.count;
    struct span *spans = arena_array(&arena, x->column_count + 1, sizeof(*spans));
    const size_t columns = spans == NULL ? 0 : find_spans(x, spans);
    const char **heads = arena_array(&arena, columns + 1, sizeof(*heads));
    const char **cells = arena_array(&arena, rows * columns + 1, sizeof(*cells));
    bool moved = false;
    for (size_t c = 0; heads != NULL && cells != NULL && c < columns; c++) {
        const struct profile *profile = x->columns[spans[c].first];
        heads[c] = span_head(&arena, x, &spans[c]);
        for (size_t r = 0; r < rows; r++) {
            const struct figure *figure = profile_figure(profile, x->figures.items[r]);
            cells[r * columns + c] = cell_of(&arena, profile, x->figures.items[r]);
            moved = moved || (figure != NULL && figure->amended != NULL);
        }
    }
    const struct grid grid = {heads, columns, x->figures.items, cells, rows, NARROWEST_CELL};
    if (!arena.failed)
        grid_add(out, &grid);
    if (moved)
        text_add(out, "\n  * moved away from the code the place follows\n");
    out->failed = out->failed || arena.failed;
    arena_free(&arena);
}

/* Written at the same place, and known alike: told once for several columns. */
static bool same_standing(const struct figure *a, const struct figure *b)
{
    return text_same(a->cite.section, b->cite.section) && a->cite.status == b->cite.status
           && text_same(a->cite.source, b->cite.source) && text_same(a->disputed, b->disputed)
           && text_same(a->file, b->file) && a->line == b->line;
}

/* Said already, of an earlier column. */
static bool said_before(const struct explanation *x, const char *name, size_t column)
{
    const struct figure *figure = profile_figure(x->columns[column], name);
    for (size_t i = 0; i < column; i++) {
        const struct figure *other = profile_figure(x->columns[i], name);
        if (other != NULL && same_standing(other, figure))
            return true;
    }
    return false;
}

/* Where it is written: " [jurisdictions/model/irc.lua:45]". */
static void add_place(struct text *line, const struct figure *figure)
{
    if (figure->file != NULL)
        text_addf(line, " [%s:%d]", figure->file, figure->line);
}

/* "IRC 2018, IRC 2021: R905.2.2; read in a public source: ..." */
static void add_cite(const struct explanation *x, const char *name, size_t column, struct text *out)
{
    const struct figure *figure = profile_figure(x->columns[column], name);
    struct text line = TEXT_EMPTY;
    if (figure == NULL || said_before(x, name, column))
        return;
    text_add(&line, column_head(x->columns[column]));
    for (size_t i = column + 1; i < x->column_count; i++) {
        const struct figure *other = profile_figure(x->columns[i], name);
        if (other != NULL && same_standing(other, figure))
            text_addf(&line, ", %s", column_head(x->columns[i]));
    }
    text_add(&line, ": ");
    /* The head named the edition already. */
    if (x->columns[column]->model)
        text_add(&line, figure->cite.section);
    else
        value_add_cite(&line, &figure->cite);
    text_add(&line, "; ");
    value_add_cite_status(&line, &figure->cite);
    if (figure->disputed != NULL)
        text_addf(&line, "; sources disagree: %s", figure->disputed);
    add_place(&line, figure);
    text_add(out, "    ");
    page_phrase(out, 6, &line);
}

/* How a place knows its figure: "; invented place", or status, source and who
 * disagrees. */
static void add_knowledge(struct text *line, const struct profile *profile,
                          const struct figure *figure)
{
    text_add(line, "; ");
    if (profile->invented) {
        text_add(line, "invented place");
        return;
    }
    value_add_cite_status(line, &figure->cite);
    if (figure->disputed != NULL)
        text_addf(line, "; sources disagree: %s", figure->disputed);
}

/* "moved by Tamarack County to 1 layer (Tamarack County Code 15.04.020; ...)"; what
 * a place has from the one it follows is told in full there. */
static void add_move(const struct standing *standing, const struct figure *figure, struct text *out)
{
    struct text line = TEXT_EMPTY;
    const struct profile *profile = standing->profile;
    const bool own = text_same(figure->amended->by, profile->title);
    if (own)
        text_addf(&line, "moved by %s to ", profile->title);
    else
        text_addf(&line, "in %s, by %s, ", profile->title, figure->amended->by);
    value_add(&line, &figure->value);
    text_add(&line, " (");
    value_add_cite(&line, &figure->cite);
    if (own || profile->invented)
        add_knowledge(&line, profile, figure);
    text_add(&line, ")");
    if (own)
        add_place(&line, figure);
    text_add(out, "    ");
    page_phrase(out, 6, &line);
}

/* Every place that moved the figure, by title; and places that have one the model lacks. */
static void add_moves(const struct explanation *x, const char *name, struct text *out)
{
    for (size_t i = 0; i < x->places.count; i++) {
        const struct figure *figure = profile_figure(x->places.items[i].profile, name);
        /* Told under the place that moved it; those that follow it only name that one. */
        if (figure != NULL && figure->amended != NULL)
            add_move(&x->places.items[i], figure, out);
        else if (figure != NULL && x->column_count > 0
                 && profile_figure(x->columns[0], name) == NULL
                 && !x->places.items[i].profile->model) {
            /* A figure that no model gives: the place's own. */
            struct text line = TEXT_EMPTY;
            text_addf(&line, "given by %s: ", x->places.items[i].profile->title);
            value_add(&line, &figure->value);
            text_add(&line, " (");
            value_add_cite(&line, &figure->cite);
            add_knowledge(&line, x->places.items[i].profile, figure);
            text_add(&line, ")");
            add_place(&line, figure);
            text_add(out, "    ");
            page_phrase(out, 6, &line);
        }
    }
}

/* Which way a figure binds. */
static const char *sense_words(enum sense sense)
{
    static const char *const WORDS[SENSE_COUNT] = {
        [SENSE_NONE] = "",
        [SENSE_AT_LEAST] = "found must be at least this",
        [SENSE_AT_MOST] = "found must be at most this",
        [SENSE_EQUALS] = "found must be this",
        [SENSE_ONE_OF] = "found must be one of these",
        [SENSE_NONE_OF] = "found must be none of these",
        [SENSE_ALL_OF] = "each of these is asked for",
        [SENSE_AMONG] = "decides for these",
        [SENSE_FROM] = "decides from this on",
        [SENSE_OVER] = "decides over this",
        [SENSE_UNDER] = "decides under this",
    };
    return WORDS[sense];
}

/* Which of its yes and no asks for more. */
static const char *stricter_words(const struct figure *figure)
{
    static const char *const WORDS[] = {
        [STRICTER_UNSAID] = "",
        [STRICTER_YES] = "; yes asks for more",
        [STRICTER_NO] = "; no asks for more",
        [STRICTER_NEITHER] = "; neither yes nor no asks for more",
    };
    return WORDS[figure->stricter];
}

/* Name and sense; then where each column has it from, and who moves it. */
static void add_figure_words(const struct explanation *x, const char *name, struct text *out)
{
    const struct figure *figure = explain_figure(x, name);
    struct text line = TEXT_EMPTY;
    if (figure == NULL)
        return;
    text_addf(&line, "%s (%s%s%s%s)", name, sense_words(figure->sense), stricter_words(figure),
              figure->behind == NULL ? "" : "; behind ",
              figure->behind == NULL ? "" : figure->behind);
    text_add(out, "  ");
    page_phrase(out, 4, &line);
    for (size_t i = 0; i < x->column_count; i++)
        add_cite(x, name, i, out);
    add_moves(x, name, out);
}

static void add_drops(const struct explanation *x, struct text *out)
{
    for (size_t i = 0; x->rule != NULL && i < x->places.count; i++) {
        const struct profile *profile = x->places.items[i].profile;
        for (size_t j = 0; j < profile->drop_count; j++) {
            struct text line = TEXT_EMPTY;
            if (strcmp(profile->drops[j].rule, x->rule->id) != 0)
                continue;
            text_addf(&line, "The rule is dropped in %s: %s.", profile->title,
                      profile->drops[j].reason);
            text_add(out, "  ");
            page_phrase(out, 4, &line);
        }
    }
}

/* Of a figure by itself: who asks for it. */
static void add_askers(const struct explanation *x, struct text *out)
{
    if (x->rule != NULL)
        return;
    page_section(out, "the rules that ask for it");
    for (size_t i = 0; i < x->asker_count; i++) {
        struct text line = TEXT_EMPTY;
        text_addf(&line, "%s", x->askers[i].title);
        text_addf(out, "  %-30s ", x->askers[i].id);
        page_phrase(out, 33, &line);
    }
    if (x->asker_count == 0)
        text_add(out, "  None: a quantity or caution does, or a fact follows from it.\n");
}

void explain_figures(const struct explanation *x, struct text *out)
{
    if (x->rule != NULL)
        page_section(out, "the figures it asks for");
    if (x->figures.count == 0)
        text_add(out, "  None is known.\n");
    else
        add_table(x, out);
    page_section(out, "where they are written, and who moves them");
    for (size_t i = 0; i < x->figures.count; i++)
        add_figure_words(x, x->figures.items[i], out);
    add_drops(x, out);
    add_askers(x, out);
}
