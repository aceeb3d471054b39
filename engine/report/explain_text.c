#include "report/explain_report.h"

#include "base/date.h"
#include "base/text.h"
#include "include/eavemark.h"
#include "job/field_words.h"
#include "job/path.h"
#include "report/grid.h"
#include "report/page.h"
#include "report/value_words.h"
#include "report/wrap.h"

#include <string.h>

/* In columns: a section's name fits. */
enum { NARROWEST_CELL = 9 };

static void add_section(struct text *out, const char *title)
{
    text_addf(out, "\n-- %s\n\n", title);
}

/* Places that could not be looked at: silence would hide what they change. */
static void add_skipped(const struct explanation *x, struct text *out)
{
    struct text line = TEXT_EMPTY;
    if (x->places.skipped.count == 0)
        return;
    text_add(&line, "Not looked at, because they do not load or have no edition on that day: ");
    for (size_t i = 0; i < x->places.skipped.count; i++)
        text_addf(&line, "%s%s", i > 0 ? ", " : "", x->places.skipped.items[i]);
    text_add(out, "\n");
    page_phrase(out, 0, &line);
}

/* The list of all rules ------------------------------------------------------- */

/* What stands before the dot. */
static size_t topic_length(const char *rule)
{
    return strcspn(rule, ".");
}

/* By topic; ids are sorted, so a topic's rules stand together. */
static void add_list(const struct explanation *x, struct text *out)
{
    const char *topic = "";
    if (x->word == NULL)
        text_addf(out, "%zu rules. eavemark explain RULE says more of one.\n", x->rule_count);
    else
        text_addf(out,
                  "%zu rules and %zu figures with \"%s\". eavemark explain NAME says more of "
                  "one.\n",
                  x->rule_count, x->figures.count, x->word);
    for (size_t i = 0; i < x->rule_count; i++) {
        const struct listed_rule *rule = &x->rules[i];
        const size_t length = topic_length(rule->id);
        struct text line = TEXT_EMPTY;
        if (topic_length(topic) != length || strncmp(topic, rule->id, length) != 0)
            text_addf(out, "\n%.*s\n", (int)length, rule->id);
        topic = rule->id;
        text_addf(&line, "%s", rule->title);
        if (rule->place != NULL)
            text_addf(&line, " (only in %s)", rule->place);
        text_addf(out, "  %-30s ", rule->id);
        page_phrase(out, 33, &line);
    }
    if (x->figures.count > 0)
        text_add(out, "\n-- figures\n\n");
    for (size_t i = 0; i < x->figures.count; i++)
        text_addf(out, "  %s\n", x->figures.items[i]);
}

/* The rule in words ----------------------------------------------------------- */

static void add_per(const struct rule *rule, struct text *out)
{
    struct text per = TEXT_EMPTY;
    if (rule->per_depth == 0)
        text_add(&per, "once for the whole job");
    else
        text_addf(&per, "once for each of %s", rule->per[rule->per_depth - 1]->path);
    text_addf(out, "%-*s", PAGE_HEAD, "Judges");
    page_phrase(out, PAGE_HEAD, &per);
}

static void add_rule(const struct explanation *x, struct text *out)
{
    const struct rule *rule = x->rule;
    struct text title = TEXT_EMPTY, from = TEXT_EMPTY;
    text_addf(&title, "%s: %s", rule->id, rule->title);
    page_phrase(out, 0, &title);
    text_add(out, "\n");
    page_head(out, "Stage", stage_word(rule->stage));
    add_per(rule, out);
    page_head(out, "Mend", rule->mend != NULL ? rule->mend : "worded by the rule for each job");
    page_head(out, "Caution", rule->caution);
    text_addf(&from, "%s, line %d%s%s", rule->file, rule->line,
              x->only_in == NULL ? "" : "; not a rule everywhere: shown as it stands in ",
              x->only_in == NULL ? "" : x->only_in);
    text_addf(out, "%-*s", PAGE_HEAD, "Written");
    page_phrase(out, PAGE_HEAD, &from);
}

/* Figures --------------------------------------------------------------------- */

/* A model is known by its edition, a place by its name. */
static const char *column_head(const struct profile *profile)
{
    return profile->model ? profile->edition : profile->title;
}

/* The figure in the first place that has it: they share sense and unit. */
static const struct figure *some_figure(const struct explanation *x, const char *name)
{
    const struct figure *figure = NULL;
    for (size_t i = 0; figure == NULL && i < x->column_count; i++)
        figure = profile_figure(x->columns[i], name);
    for (size_t i = 0; figure == NULL && i < x->places.count; i++)
        figure = profile_figure(x->places.items[i].profile, name);
    return figure;
}

/* Into the arena; releases the text. */
static const char *keep_text(struct arena *arena, struct text *text)
{
    const char *copy = text->failed ? NULL : arena_copy(arena, text_string(text));
    if (text->failed)
        arena->failed = true;
    text_free(text);
    return copy == NULL ? "" : copy;
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
    return keep_text(arena, &cell);
}

static void add_table(const struct explanation *x, struct text *out)
{
    struct arena arena = {0};
    const size_t rows = x->figures.count, columns = x->column_count;
    const char **heads = arena_array(&arena, columns + 1, sizeof(*heads));
    const char **cells = arena_array(&arena, rows * columns + 1, sizeof(*cells));
    bool moved = false;
    for (size_t c = 0; heads != NULL && cells != NULL && c < columns; c++) {
        heads[c] = column_head(x->columns[c]);
        for (size_t r = 0; r < rows; r++) {
            const struct figure *figure = profile_figure(x->columns[c], x->figures.items[r]);
            cells[r * columns + c] = cell_of(&arena, x->columns[c], x->figures.items[r]);
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

/* Name, sense and unit; then where each column has it from, and who moves it. */
static void add_figure_words(const struct explanation *x, const char *name, struct text *out)
{
    const struct figure *figure = some_figure(x, name);
    struct text line = TEXT_EMPTY;
    if (figure == NULL)
        return;
    text_addf(&line, "%s (%s%s%s%s%s%s)", name, sense_words(figure->sense),
              figure->value.unit == NULL ? "" : ", in ",
              figure->value.unit == NULL ? "" : figure->value.unit, stricter_words(figure),
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

static void add_figures(const struct explanation *x, struct text *out)
{
    if (x->rule != NULL)
        add_section(out, "the figures it asks for");
    if (x->figures.count == 0)
        text_add(out, "  None is known.\n");
    else
        add_table(x, out);
    add_section(out, "where they are written, and who moves them");
    for (size_t i = 0; i < x->figures.count; i++)
        add_figure_words(x, x->figures.items[i], out);
    add_drops(x, out);
}

/* Facts ------------------------------------------------------------------------ */

static void add_fields(const struct explanation *x, struct text *out)
{
    add_section(out, "the facts it reads");
    for (size_t i = 0; i < x->field_count; i++) {
        text_addf(out, "  %s\n    ", x->fields[i]->path);
        wrap_add(out, 4, x->fields[i]->ask);
    }
    if (x->field_count == 0)
        text_add(out, "  None.\n");
    text_add(out, "\n");
    wrap_add(out, 0, "Figures and facts are those that the rule declares: all there are.");
}

/* How a job was judged ---------------------------------------------------------- */

static void add_facts_read(const struct explanation *x, const struct finding *finding,
                           struct text *out)
{
    for (size_t i = 0; i < finding->read_count; i++) {
        const struct field *field = path_field(&x->law->book->fields, finding->reads[i].at);
        struct text line = TEXT_EMPTY;
        text_addf(&line, "%s = ", finding->reads[i].at);
        field_words_add(&line, path_find(x->job, finding->reads[i].at), field);
        page_labelled_phrase(out, i == 0 ? "1 facts" : "", &line);
    }
    if (finding->read_count == 0)
        page_labelled(out, "1 facts", "none read");
}

static void add_figures_asked(const struct finding *finding, struct text *out)
{
    for (size_t i = 0; i < finding->figure_count; i++) {
        const struct figure *figure = finding->figures[i];
        struct text line = TEXT_EMPTY;
        text_addf(&line, "%s = ", figure->name);
        value_add(&line, &figure->value);
        text_add(&line, " (");
        value_add_cite(&line, &figure->cite);
        text_addf(&line, ", %s", value_cite_status(&figure->cite));
        if (figure->amended != NULL) {
            text_addf(&line, "; %s moved it from ", figure->amended->by);
            value_add(&line, &figure->amended->from);
        }
        text_add(&line, ")");
        page_labelled_phrase(out, i == 0 ? "2 figures" : "", &line);
    }
    if (finding->figure_count == 0)
        page_labelled(out, "2 figures", "none asked for");
}

static void add_comparison(const struct finding *finding, struct text *out)
{
    struct text line = TEXT_EMPTY;
    if (!finding->compared) {
        text_add(&line, "not come to");
    } else {
        text_add(&line, "found ");
        value_add(&line, &finding->found);
        text_add(&line, ", demanded ");
        value_add_demand(&line, finding->sense, &finding->required);
    }
    page_labelled_phrase(out, "4 compared", &line);
}

/* In the order of judging: facts, figures, arithmetic, comparison, outcome. */
static void add_steps(const struct explanation *x, const struct finding *finding, struct text *out)
{
    struct text outcome = TEXT_EMPTY;
    text_add(out, "\n");
    if (finding->where != NULL) {
        text_add(out, "  ");
        wrap_add(out, 2, finding->where);
    }
    add_facts_read(x, finding, out);
    add_figures_asked(finding, out);
    for (size_t i = 0; i < finding->work_count; i++)
        page_labelled(out, i == 0 ? "3 arithmetic" : "", finding->work[i]);
    if (finding->work_count == 0)
        page_labelled(out, "3 arithmetic", "none needed");
    add_comparison(finding, out);
    text_addf(&outcome, "%s. %s", page_outcome(finding->outcome), finding->says);
    page_labelled_phrase(out, "5 outcome", &outcome);
    page_labelled(out, "mend", finding->mend);
}

/* The findings of this rule alone, under the heading of the whole check. */
static void add_judged(const struct explanation *x, struct text *out)
{
    size_t count = 0;
    add_section(out, "how this job is judged by it");
    page_heading(out, &x->checked.result);
    for (size_t i = 0; i < x->checked.result.finding_count; i++) {
        if (strcmp(x->checked.result.findings[i].rule, x->rule->id) != 0)
            continue;
        add_steps(x, &x->checked.result.findings[i], out);
        count++;
    }
    if (count == 0)
        text_add(out, "\n  It is not: the rule is no rule of that place, or of another stage.\n");
    text_add(out, "\n");
    wrap_add(out, 0, x->checked.result.caution);
}

void report_explain_text(const struct explanation *x, struct text *out)
{
    if (x->rules != NULL) {
        add_list(x, out);
        add_skipped(x, out);
        return;
    }
    if (x->rule != NULL)
        add_rule(x, out);
    else
        text_addf(out, "%s: a figure\n\n", x->figures.items[0]);
    add_figures(x, out);
    add_skipped(x, out);
    if (x->rule == NULL)
        return;
    add_fields(x, out);
    if (x->job != NULL)
        add_judged(x, out);
}
