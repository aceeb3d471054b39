#include "judge/row_reads.h"

#include "judge/row.h"
#include "judge/row_limit.h"

#include <stdio.h>
#include <string.h>

/* Facts ------------------------------------------------------------------------------ */

struct fields_told {
    void (*visit)(void *data, const struct field *field);
    void *data;
};

/* The fact, and what leads to it: groups hold nothing of their own. */
static void tell_fact(const struct fields_told *told, const struct fact *fact)
{
    for (size_t i = 0; fact != NULL && i < fact->step_count; i++)
        if (fact->steps[i]->type != FIELD_GROUP)
            told->visit(told->data, fact->steps[i]);
}

static void tell_condition_fact(void *data, const struct condition *condition)
{
    tell_fact(data, condition->fact);
}

/* Where a row measures, either fact may be the one read: both are told. */
static void tell_part_facts(void *data, const struct row *row)
{
    struct fields_told *told = data;
    condition_each(&row->when, tell_condition_fact, told);
    tell_fact(told, row->fact);
    tell_fact(told, row->measured);
    tell_fact(told, row->limit_fact);
    tell_fact(told, row->by);
}

void row_reads_each_field(const struct rule *rule,
                          void (*visit)(void *data, const struct field *field), void *data)
{
    struct fields_told told = {visit, data};
    if (rule->when != NULL)
        condition_each(rule->when, tell_condition_fact, &told);
    if (rule->row == NULL)
        return;
    row_each_part(rule->row, tell_part_facts, &told);
    for (size_t i = 0; i < rule->row->open_count; i++)
        condition_each(&rule->row->opens[i].when, tell_condition_fact, &told);
}

/* Figures ----------------------------------------------------------------------------- */

struct figures_told {
    const struct rulebook *book;
    void (*visit)(void *data, const char *name);
    void *data;
};

static void tell_figure(const struct figures_told *told, const struct figure *figure)
{
    if (figure != NULL)
        told->visit(told->data, figure->name);
}

static void tell_condition_figure(void *data, const struct condition *condition)
{
    tell_figure(data, condition->figure);
}

/* One for each word of the fact that chooses. */
static void tell_table(const struct row *row, const struct figures_told *told)
{
    const struct field *by = row->by->field;
    for (size_t i = 0; i < by->choice_count; i++) {
        char name[256];
        snprintf(name, sizeof(name), "%s%s", row->by_prefix, by->choices[i]);
        tell_figure(told, profile_figure(told->book->profile, name));
    }
}

/* All that it may ask for, whatever the job chooses among. */
static void tell_part_figures(void *data, const struct row *row)
{
    struct figures_told *told = data;
    condition_each(&row->when, tell_condition_figure, told);
    for (size_t i = 0; i < row->meets_count; i++)
        tell_figure(told, row->meets[i]);
    for (size_t i = 0; i < row->among_count; i++)
        tell_figure(told, row->among[i]);
    tell_figure(told, row->share);
    tell_figure(told, row->over);
    tell_figure(told, row->at_counts);
    if (row->by_prefix != NULL)
        tell_table(row, told);
}

void row_reads_each_figure(const struct rulebook *book, const struct rule *rule,
                           void (*visit)(void *data, const char *name), void *data)
{
    struct figures_told told = {book, visit, data};
    const struct row *row = rule->row;
    if (rule->when != NULL)
        condition_each(rule->when, tell_condition_figure, &told);
    if (row == NULL)
        return;
    row_each_part(row, tell_part_figures, &told);
    for (size_t i = 0; i < row->open_count; i++)
        condition_each(&row->opens[i].when, tell_condition_figure, &told);
}

/* Pairs --------------------------------------------------------------------------------- */

struct pairs_told {
    const struct rulebook *book;
    void (*visit)(void *data, const struct row_pair *pair);
    void *data;
    const struct row *row; /* whose figures are told; or NULL */
};

static void tell_pair(const struct pairs_told *told, const struct fact *fact,
                      const struct figure *figure, double factor)
{
    const struct row_pair pair = {fact == NULL ? NULL : fact->field, figure, factor};
    if (fact != NULL && figure != NULL)
        told->visit(told->data, &pair);
}

static void tell_condition_pair(void *data, const struct condition *condition)
{
    /* Whose units are the same. */
    if (condition->kind == WHEN_MEANT)
        tell_pair(data, condition->fact, condition->figure, 1);
}

/* A figure of a table is told by its name alone. */
static void tell_named_pair(void *data, const char *name)
{
    const struct pairs_told *told = data;
    tell_pair(told, told->row->fact, profile_figure(told->book->profile, name), told->row->factor);
}

static void tell_part_pairs(void *data, const struct row *row)
{
    struct pairs_told *told = data;
    condition_each(&row->when, tell_condition_pair, told);
    for (size_t i = 0; i < row->meets_count; i++)
        tell_pair(told, row->fact, row->meets[i], row->factor);
    for (size_t i = 0; i < row->among_count; i++)
        tell_pair(told, row->fact, row->among[i], row->factor);
    told->row = row;
    if (row->by_prefix != NULL)
        tell_table(row, &(struct figures_told){told->book, tell_named_pair, told});
}

void row_reads_each_pair(const struct rulebook *book, const struct rule *rule,
                         void (*visit)(void *data, const struct row_pair *pair), void *data)
{
    struct pairs_told told = {book, visit, data, NULL};
    if (rule->when != NULL)
        condition_each(rule->when, tell_condition_pair, &told);
    if (rule->row == NULL)
        return;
    row_each_part(rule->row, tell_part_pairs, &told);
    for (size_t i = 0; i < rule->row->open_count; i++)
        condition_each(&rule->row->opens[i].when, tell_condition_pair, &told);
}

struct naming {
    const char *name;
    bool named;
};

static void note_name(void *data, const char *name)
{
    struct naming *naming = data;
    naming->named = naming->named || strcmp(naming->name, name) == 0;
}

bool row_reads_names_figure(const struct rulebook *book, const char *name)
{
    struct naming naming = {name, false};
    for (const struct rule *rule = book->rules; rule != NULL && !naming.named; rule = rule->next)
        row_reads_each_figure(book, rule, note_name, &naming);
    return naming.named;
}

/* Plain ------------------------------------------------------------------------------- */

static void note_function(void *data, const struct condition *condition)
{
    bool *plain = data;
    *plain = *plain && condition->kind != WHEN_FUNCTION;
}

static void note_part(void *data, const struct row *row)
{
    bool *plain = data;
    const int functions[] = {row->found, row->which, row->limit, row->say_function,
                             row->warn_function};
    /* What is chosen among has nothing of its own. */
    for (size_t i = 0; row->choose_count == 0 && i < sizeof(functions) / sizeof(*functions); i++)
        *plain = *plain && (functions[i] == RULE_NO_FUNCTION || row->open != NULL);
    condition_each(&row->when, note_function, plain);
}

static bool row_is_plain(const struct row *row)
{
    bool plain = true;
    row_each_part(row, note_part, &plain);
    for (size_t i = 0; i < row->open_count; i++) {
        plain = plain && row->opens[i].says_function == RULE_NO_FUNCTION;
        condition_each(&row->opens[i].when, note_function, &plain);
    }
    return plain;
}

/* The mend may be a function though the comparison is not: that reads as well. */
bool row_reads_is_plain(const struct rule *rule)
{
    return rule->row != NULL && rule->mend_function == RULE_NO_FUNCTION && row_is_plain(rule->row);
}

/* What a demand hangs on ------------------------------------------------------------------ */

struct hanging {
    const struct field *field;
    bool hangs;
};

static void note_hanging(void *data, const struct condition *condition)
{
    struct hanging *hanging = data;
    hanging->hangs = hanging->hangs || condition->kind == WHEN_FUNCTION
                     || (condition->fact != NULL && condition->fact->field == hanging->field);
}

bool row_reads_demand_hangs_on(const struct rule *rule, const struct field *field)
{
    const struct row *row = rule->row;
    struct hanging hanging = {field, false};
    if (row == NULL || row->fact == NULL || row->also_count > 0 || row->instead_count > 0
        || row->open_count > 0 || row_limit_is_own(row) || row->which != RULE_NO_FUNCTION
        || field->type == FIELD_CHOICES /* of a list, what is lacking is named */
        || (row->by != NULL && row->by->field == field))
        return true;
    if (row->fact->field != field && (row->measured == NULL || row->measured->field != field))
        return true;
    condition_each(&row->when, note_hanging, &hanging);
    return hanging.hangs;
}
