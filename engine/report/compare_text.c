#include "report/compare_report.h"

#include "base/text.h"
#include "report/grid.h"
#include "report/page.h"
#include "report/value_words.h"
#include "report/wrap.h"

#include <stdio.h>
#include <string.h>

enum { NARROWEST_CELL = 10, LETTERS = 26 };

/* A finding that is on one side only is news as well. */
static const char *outcome_of(const struct finding *finding)
{
    return finding == NULL ? "no such finding" : page_outcome(finding->outcome);
}

/* Heading --------------------------------------------------------------------- */

/* "A", "B" ... ; after the 26th, numbers. */
static void side_letter(size_t index, char out[24])
{
    if (index < LETTERS)
        snprintf(out, 24, "%c", (char)('A' + (int)index));
    else
        snprintf(out, 24, "%zu", index + 1);
}

/* Which letter stands for which check. */
static void add_sides(const struct comparison *c, struct text *out)
{
    for (size_t i = 0; i < c->side_count; i++) {
        const struct result *result = &c->sides[i].checked.result;
        struct text line = TEXT_EMPTY;
        char letter[24];
        side_letter(i, letter);
        text_addf(&line, "%s (%s): %s (%s), %s, %s%s", result->job, c->sides[i].file,
                  result->jurisdiction_title, result->jurisdiction, result->edition, result->date,
                  result->invented ? " - INVENTED PLACE" : "");
        text_addf(out, "%-*s", 4, letter);
        page_phrase(out, 4, &line);
    }
}

/* Two sides -------------------------------------------------------------------- */

static void add_title(const struct change *change, struct text *out)
{
    const struct finding *any = change->findings[0] != NULL ? change->findings[0]
                                                            : change->findings[1];
    struct text title = TEXT_EMPTY;
    text_addf(&title, "%s%s%s [%s]", any->title == NULL ? any->rule : any->title,
              any->where == NULL ? "" : ": ", any->where == NULL ? "" : any->where, any->rule);
    text_add(out, "\n");
    page_phrase(out, 2, &title);
}

/* The same outcome may still stand for another demand. */
static void add_outcomes(const struct change *change, struct text *out)
{
    struct text line = TEXT_EMPTY;
    const char *left = outcome_of(change->findings[0]), *right = outcome_of(change->findings[1]);
    if (strcmp(left, right) == 0)
        text_addf(&line, "%s in both", left);
    else
        text_addf(&line, "%s -> %s", left, right);
    page_labelled_phrase(out, "outcome", &line);
}

static bool same_words(struct text *left, struct text *right)
{
    return strcmp(text_string(left), text_string(right)) == 0;
}

/* "left -> right", or one of them when they are alike; releases both. */
static void add_pair(const char *label, struct text *left, struct text *right, struct text *out)
{
    struct text line = TEXT_EMPTY;
    text_add(&line, text_string(left));
    if (!same_words(left, right))
        text_addf(&line, " -> %s", text_string(right));
    line.failed = line.failed || left->failed || right->failed;
    text_free(left);
    text_free(right);
    page_labelled_phrase(out, label, &line);
}

/* Sides without a comparison say their sentence below (add_says). */
static void add_demand(struct text *out, const struct finding *finding)
{
    if (finding != NULL && finding->compared)
        value_add_demand(out, finding->sense, &finding->required);
    else
        text_add(out, "nothing");
}

/* What each side's job has there, as it was judged. */
static void add_found(struct text *out, const struct finding *finding)
{
    if (finding != NULL && finding->compared)
        value_add(out, &finding->found);
    else
        text_add(out, "nothing");
}

static void add_compared(const struct change *change, struct text *out)
{
    struct text demands[2] = {TEXT_EMPTY, TEXT_EMPTY}, found[2] = {TEXT_EMPTY, TEXT_EMPTY};
    const struct finding *left = change->findings[0], *right = change->findings[1];
    if ((left == NULL || !left->compared) && (right == NULL || !right->compared))
        return;
    for (size_t i = 0; i < 2; i++) {
        add_demand(&demands[i], change->findings[i]);
        add_found(&found[i], change->findings[i]);
    }
    add_pair("demanded", &demands[0], &demands[1], out);
    add_pair("found", &found[0], &found[1], out);
}

/* A sentence for a side that compared nothing. */
static void add_says(const struct change *change, struct text *out)
{
    static const char *const LABELS[2] = {"A says", "B says"};
    for (size_t i = 0; i < 2; i++) {
        const struct finding *f = change->findings[i];
        if (f != NULL && !f->compared)
            page_labelled(out, LABELS[i], f->says);
    }
}

/* Not held: the place has no such figure. */
static void add_figure_side(struct text *line, const struct figure *figure)
{
    if (figure == NULL) {
        text_add(line, "not held");
        return;
    }
    value_add(line, &figure->value);
    text_add(line, " (");
    value_add_cite(line, &figure->cite);
    text_addf(line, ", %s%s)", value_cite_status(&figure->cite),
              figure->disputed == NULL ? "" : ", disputed");
}

static void add_figures(const struct change *change, struct text *out)
{
    for (size_t i = 0; i < change->figure_count; i++) {
        const struct moved_figure *figure = &change->figures[i];
        struct text line = TEXT_EMPTY;
        text_addf(&line, "%s: ", figure->name);
        add_figure_side(&line, figure->values[0]);
        text_add(&line, " -> ");
        add_figure_side(&line, figure->values[1]);
        page_labelled_phrase(out, i == 0 ? "figure moved" : "", &line);
    }
}

static void add_facts(const struct change *change, struct text *out)
{
    for (size_t i = 0; i < change->fact_count; i++) {
        const struct moved_fact *fact = &change->facts[i];
        struct text line = TEXT_EMPTY;
        text_addf(&line, "%s: %s -> %s", fact->path, fact->values[0], fact->values[1]);
        page_labelled_phrase(out, i == 0 ? "fact moved" : "", &line);
    }
}

/* The finding stands on one side only. */
static void add_lone(const struct change *change, struct text *out)
{
    const bool left = change->findings[0] != NULL;
    page_labelled(
        out, "moved by",
        change->no_such_rule
            ? (left ? "the rule is only in the law of A" : "the rule is only in the law of B")
            : (left ? "only the job of A has this" : "only the job of B has this"));
}

/* Why it changed: the figures and facts it rests on that are not the same. */
static void add_cause(const struct change *change, struct text *out)
{
    if (change->findings[0] == NULL || change->findings[1] == NULL) {
        add_lone(change, out);
        return;
    }
    add_figures(change, out);
    add_facts(change, out);
    if (change->figure_count == 0 && change->fact_count == 0)
        page_labelled(out, "moved by",
                      "no figure and no fact that was read: the rules or the "
                      "stage of the work differ");
}

/* What moved, and last how much did and how much did not. */
static void add_changes(const struct comparison *c, struct text *out)
{
    for (size_t i = 0; i < c->change_count; i++) {
        add_title(&c->changes[i], out);
        add_outcomes(&c->changes[i], out);
        add_compared(&c->changes[i], out);
        add_says(&c->changes[i], out);
        add_cause(&c->changes[i], out);
    }
    text_addf(out, "\n%zu differ, %zu are the same", c->differing, c->row_count - c->differing);
    if (c->otherwise > 0)
        text_addf(out, " (%zu of them by another figure, citation or fact)", c->otherwise);
    text_add(out, "\n");
}

/* Many sides -------------------------------------------------------------------- */

/* The findings may differ in all else: a cell shows the outcome only. */
static bool same_cells(const struct comparison *c, const struct compare_row *a,
                       const struct compare_row *b)
{
    for (size_t i = 0; i < c->side_count; i++)
        if (strcmp(outcome_of(a->findings[i]), outcome_of(b->findings[i])) != 0)
            return false;
    return text_same(a->rule, b->rule);
}

/* The table as grid_add wants it: heads by side, names by row, cells row by row. */
struct matrix {
    struct arena arena;
    const char **heads, **names, **cells;
    size_t rows;
};

/* "A: example/dunmarrow"; NULL when out of memory (the arena remembers it). */
static const char *head_of(struct matrix *m, const struct comparison *c, size_t side)
{
    char letter[24];
    const struct result *result = &c->sides[side].checked.result;
    side_letter(side, letter);
    return arena_format(&m->arena, "%s: %s", letter, result->jurisdiction);
}

/* Rows of one rule that come out alike are one row that names all the places. */
static size_t add_matrix_row(struct matrix *m, const struct comparison *c, size_t start)
{
    const struct compare_row *row = &c->rows[start];
    /* Places are added to it one by one: "deck.gap: main deck, porch deck". */
    const char *name = row->rule;
    size_t count = 0;
    for (; start + count < c->row_count && same_cells(c, row, &c->rows[start + count]); count++) {
        const char *where = c->rows[start + count].where;
        if (where != NULL && name != NULL)
            name = arena_format(&m->arena, "%s%s %s", name, count == 0 ? ":" : ",", where);
    }
    m->names[m->rows] = name == NULL ? "" : name;
    for (size_t i = 0; i < c->side_count; i++)
        m->cells[m->rows * c->side_count + i] = row->findings[i] == NULL
                                                    ? NULL
                                                    : page_outcome(row->findings[i]->outcome);
    m->rows++;
    return count;
}

static void add_matrix(const struct comparison *c, struct text *out)
{
    struct matrix m = {.rows = 0};
    m.heads = arena_array(&m.arena, c->side_count, sizeof(*m.heads));
    m.names = arena_array(&m.arena, c->row_count + 1, sizeof(*m.names));
    m.cells = arena_array(&m.arena, (c->row_count + 1) * c->side_count, sizeof(*m.cells));
    for (size_t i = 0; i < c->side_count && !m.arena.failed; i++)
        m.heads[i] = head_of(&m, c, i);
    /* A row may take in several of the comparison's. */
    for (size_t i = 0, step; i < c->row_count && !m.arena.failed; i += step)
        step = c->rows[i].differs ? add_matrix_row(&m, c, i) : 1;
    const struct grid grid = {m.heads, c->side_count, m.names, m.cells, m.rows, NARROWEST_CELL};
    text_add(out, "\n");
    if (!m.arena.failed && m.rows > 0)
        grid_add(out, &grid);
    out->failed = out->failed || m.arena.failed;
    arena_free(&m.arena);
}

/* A line a side; broken ones only where there are any. */
static void add_counts(const struct comparison *c, struct text *out)
{
    static const enum outcome ORDER[] = {OUTCOME_BROKEN, OUTCOME_FAIL, OUTCOME_OPEN,
                                         OUTCOME_WARN,   OUTCOME_PASS, OUTCOME_NOT_APPLICABLE};
    text_add(out, "\n");
    for (size_t i = 0; i < c->side_count; i++) {
        struct text line = TEXT_EMPTY;
        char letter[24];
        side_letter(i, letter);
        for (size_t j = 0; j < sizeof(ORDER) / sizeof(ORDER[0]); j++) {
            const size_t count = c->sides[i].checked.result.counts[ORDER[j]];
            if (count > 0 || ORDER[j] != OUTCOME_BROKEN)
                text_addf(&line, "%s%zu %s", line.length > 0 ? ", " : "", count,
                          page_outcome(ORDER[j]));
        }
        text_addf(out, "%-*s", 4, letter);
        page_phrase(out, 4, &line);
    }
    text_addf(out, "\n%zu differ in outcome, %zu come out the same\n", c->differing,
              c->row_count - c->differing);
}

void report_compare_text(const struct comparison *c, struct text *out)
{
    add_sides(c, out);
    if (c->side_count == 2) {
        add_changes(c, out);
    } else {
        add_matrix(c, out);
        add_counts(c, out);
    }
    text_add(out, "\n");
    /* The same for all sides. */
    wrap_add(out, 0, c->sides[0].checked.result.caution);
}
