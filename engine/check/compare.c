#include "check/compare.h"

#include "base/date.h"
#include "base/number.h"
#include "base/text.h"
#include "job/field_words.h"
#include "job/path.h"

#include <string.h>

/* In their order: sets come from one list of choices. */
static bool same_set(const struct value *a, const struct value *b)
{
    if (a->set_count != b->set_count)
        return false;
    for (size_t i = 0; i < a->set_count; i++)
        if (!text_same(a->set[i], b->set[i]))
            return false;
    return true;
}

/* Numbers by what prints, so that no difference is told that nobody can see. */
static bool same_value(const struct value *a, const struct value *b)
{
    if (a->kind != b->kind)
        return false;
    switch (a->kind) {
    case VALUE_NONE:
        return true;
    case VALUE_NUMBER:
        return text_same(a->unit, b->unit) && number_equals(a->number, b->number, a->unit);
    case VALUE_YES_NO:
        return a->yes == b->yes;
    case VALUE_TEXT:
        return text_same(a->text, b->text);
    case VALUE_SET:
        return same_set(a, b);
    }
    return false;
}

/* Rows ------------------------------------------------------------------------ */

/* Number `nth` of the findings of this rule and place. */
static const struct finding *finding_of(const struct result *result, const char *rule,
                                        const char *where, size_t nth)
{
    for (size_t i = 0; i < result->finding_count; i++) {
        const struct finding *f = &result->findings[i];
        if (strcmp(f->rule, rule) == 0 && text_same(f->where, where) && nth-- == 0)
            return f;
    }
    return NULL;
}

/* How many findings before this one have its rule and place. */
static size_t nth_of(const struct result *result, const struct finding *finding)
{
    size_t nth = 0;
    for (const struct finding *f = result->findings; f < finding; f++)
        nth += strcmp(f->rule, finding->rule) == 0 && text_same(f->where, finding->where);
    return nth;
}

static bool has_row(const struct comparison *c, size_t side, const struct finding *finding)
{
    for (size_t i = 0; i < c->row_count; i++)
        if (c->rows[i].findings[side] == finding)
            return true;
    return false;
}

/* Findings of one rule and place go together by their number: a rule may have several
 * there. */
static void add_row(struct comparison *c, const struct side *from, const struct finding *finding)
{
    const size_t nth = nth_of(&from->checked.result, finding);
    struct compare_row *row = &c->rows[c->row_count];
    row->findings = arena_array(&c->arena, c->side_count, sizeof(*row->findings));
    if (row->findings == NULL)
        return;
    row->rule = finding->rule;
    row->where = finding->where;
    for (size_t i = 0; i < c->side_count; i++)
        row->findings[i] = finding_of(&c->sides[i].checked.result, finding->rule, finding->where,
                                      nth);
    c->row_count++;
}

static int row_order(const void *a, const void *b)
{
    return strcmp(((const struct compare_row *)a)->rule, ((const struct compare_row *)b)->rule);
}

/* Insertion keeps rows of one rule in the order they came in. */
static void sort_rows(struct comparison *c)
{
    for (size_t i = 1; i < c->row_count; i++) {
        const struct compare_row row = c->rows[i];
        size_t at = i;
        for (; at > 0 && row_order(&c->rows[at - 1], &row) > 0; at--)
            c->rows[at] = c->rows[at - 1];
        c->rows[at] = row;
    }
}

/* Every finding of every side stands in one row; those of the first side come first. */
static void add_rows(struct comparison *c)
{
    size_t most = 0;
    for (size_t i = 0; i < c->side_count; i++)
        most += c->sides[i].checked.result.finding_count;
    c->rows = arena_array(&c->arena, most + 1, sizeof(*c->rows));
    for (size_t i = 0; i < c->side_count && c->rows != NULL; i++) {
        const struct result *result = &c->sides[i].checked.result;
        for (size_t j = 0; j < result->finding_count && !c->arena.failed; j++)
            if (!has_row(c, i, &result->findings[j]))
                add_row(c, &c->sides[i], &result->findings[j]);
    }
    sort_rows(c);
}

/* Figures --------------------------------------------------------------------- */

/* Known otherwise: by another value, or in another way. The name of the code
 * alone says nothing, it changes with every edition. */
bool compare_same_figure(const struct figure *a, const struct figure *b)
{
    return same_value(&a->value, &b->value) && text_same(a->cite.section, b->cite.section)
           && a->cite.status == b->cite.status && text_same(a->disputed, b->disputed);
}

static bool has_figure(const struct change *change, const char *name)
{
    for (size_t i = 0; i < change->figure_count; i++)
        if (strcmp(change->figures[i].name, name) == 0)
            return true;
    return false;
}

static void add_figure(const struct comparison *c, struct change *change, const char *name)
{
    const struct figure *left = profile_figure(c->sides[0].law->profile, name);
    const struct figure *right = profile_figure(c->sides[1].law->profile, name);
    if (has_figure(change, name)
        || (left != NULL && right != NULL && compare_same_figure(left, right)))
        return;
    change->figures[change->figure_count++] = (struct moved_figure){name, {left, right}};
}

static void find_figures(struct comparison *c, struct change *change)
{
    const struct finding *left = change->findings[0], *right = change->findings[1];
    const size_t most = left->figure_count + right->figure_count;
    change->figures = arena_array(&c->arena, most + 1, sizeof(*change->figures));
    if (change->figures == NULL)
        return;
    for (size_t i = 0; i < left->figure_count; i++)
        add_figure(c, change, left->figures[i]->name);
    for (size_t i = 0; i < right->figure_count; i++)
        add_figure(c, change, right->figures[i]->name);
}

/* Facts ----------------------------------------------------------------------- */

static bool has_fact(const struct change *change, const char *path)
{
    for (size_t i = 0; i < change->fact_count; i++)
        if (strcmp(change->facts[i].path, path) == 0)
            return true;
    return false;
}

/* Adds the fact read at pointer of one side's job, if the jobs differ there.
 * A list of groups is only looked through: what counts in it is read by itself. */
static void add_fact(struct comparison *c, struct change *change, size_t side, const char *pointer)
{
    const struct side *from = &c->sides[side], *to = &c->sides[1 - side];
    struct text path = TEXT_EMPTY, values[2] = {TEXT_EMPTY, TEXT_EMPTY};
    const struct path_pair spots = path_pair(from->job, to->job, pointer, &path);
    const char *name = text_keep(&path, &c->arena);
    const struct field *field = path_field(&from->law->book->fields, pointer);
    /* A list of groups that is as long on both sides. */
    const bool listed = cJSON_IsArray(spots.a) && cJSON_IsObject(cJSON_GetArrayItem(spots.a, 0))
                        && cJSON_GetArraySize(spots.a) == cJSON_GetArraySize(spots.b);
    const bool same = spots.a == spots.b || listed
                      || (spots.a != NULL && spots.b != NULL
                          && cJSON_Compare(spots.a, spots.b, true));
    if (same || has_fact(change, name))
        return;
    field_words_add(&values[side], spots.a, field);
    field_words_add(&values[1 - side], spots.b, field);
    struct moved_fact *fact = &change->facts[change->fact_count++];
    fact->path = name;
    fact->values[0] = text_keep(&values[0], &c->arena);
    fact->values[1] = text_keep(&values[1], &c->arena);
}

/* What either side read: a fact that one side's rule did not come to may still be why. */
static void find_facts(struct comparison *c, struct change *change)
{
    const struct finding *left = change->findings[0], *right = change->findings[1];
    const size_t most = left->read_count + right->read_count;
    change->facts = arena_array(&c->arena, most + 1, sizeof(*change->facts));
    if (change->facts == NULL)
        return;
    for (size_t i = 0; i < left->read_count; i++)
        add_fact(c, change, 0, left->reads[i].at);
    for (size_t i = 0; i < right->read_count; i++)
        add_fact(c, change, 1, right->reads[i].at);
}

/* Differences ------------------------------------------------------------------- */

/* Same outcome by the same measure. */
static bool same_finding(const struct finding *a, const struct finding *b)
{
    return a->outcome == b->outcome && a->compared == b->compared
           && (!a->compared
               || (a->sense == b->sense && same_value(&a->required, &b->required)
                   && same_value(&a->found, &b->found)));
}

/* Nothing is judged on this side. */
static bool is_idle(const struct finding *finding)
{
    return finding == NULL || finding->outcome == OUTCOME_NOT_APPLICABLE;
}

/* Not applicable on one side and absent on the other says the same of both. */
static bool row_differs(const struct comparison *c, const struct compare_row *row)
{
    const struct finding *first = row->findings[0];
    for (size_t i = 1; i < c->side_count; i++) {
        const struct finding *other = row->findings[i];
        if (is_idle(first) && is_idle(other))
            continue;
        if (first == NULL || other == NULL || first->outcome != other->outcome)
            return true;
        /* Two are looked at more closely: by another measure is a difference. */
        if (c->side_count == 2 && !same_finding(first, other))
            return true;
    }
    return false;
}

/* Of a row with a finding on both sides, what it rests on and is not alike; of
 * one with a single finding, why it stands alone. */
static void find_change(struct comparison *c, struct compare_row *row)
{
    struct change change = {.findings = {row->findings[0], row->findings[1]}};
    const bool both = change.findings[0] != NULL && change.findings[1] != NULL;
    if (both) {
        find_figures(c, &change);
        find_facts(c, &change);
        row->rests_otherwise = change.figure_count > 0 || change.fact_count > 0;
    } else {
        const size_t without = change.findings[0] == NULL ? 0 : 1;
        change.no_such_rule = rulebook_rule(c->sides[without].law->book, row->rule) == NULL;
    }
    if (row->differs)
        c->changes[c->change_count++] = change;
}

static void find_changes(struct comparison *c)
{
    c->changes = arena_array(&c->arena, c->row_count + 1, sizeof(*c->changes));
    for (size_t i = 0; i < c->row_count && c->changes != NULL; i++) {
        struct compare_row *row = &c->rows[i];
        if (!is_idle(row->findings[0]) || !is_idle(row->findings[1]))
            find_change(c, row);
        /* Comes out alike, though it rests on something else. */
        c->otherwise += row->rests_otherwise && !row->differs;
    }
}

/* The law was loaded by the check; this only finds it again. */
static void check_side(struct laws *laws, struct side *side)
{
    struct problems unsaid = {0};
    if (side->job == NULL)
        return;
    check_job(laws, side->job, &side->overrides, side->file, &side->checked);
    if (!side->checked.judged)
        return;
    const struct result *result = &side->checked.result;
    const long date = date_parse(result->date);
    side->law = laws_find(laws, result->jurisdiction, date, side->file, &unsaid);
    if (unsaid.out_of_memory)
        problem_out_of_memory(&side->checked.problems);
    problems_free(&unsaid);
}

void compare(struct laws *laws, struct comparison *c)
{
    c->compared = true;
    for (size_t i = 0; i < c->side_count; i++) {
        check_side(laws, &c->sides[i]);
        c->compared = c->compared && c->sides[i].law != NULL;
    }
    if (!c->compared)
        return;
    add_rows(c);
    for (size_t i = 0; i < c->row_count; i++)
        c->rows[i].differs = row_differs(c, &c->rows[i]);
    if (c->side_count == 2)
        find_changes(c);
    for (size_t i = 0; i < c->row_count; i++)
        c->differing += c->rows[i].differs;
    if (c->arena.failed)
        problem_out_of_memory(&c->problems);
}

void compare_free(struct comparison *c)
{
    for (size_t i = 0; i < c->side_count; i++) {
        cJSON_Delete(c->sides[i].job);
        checked_free(&c->sides[i].checked);
    }
    problems_free(&c->problems);
    arena_free(&c->arena);
}
