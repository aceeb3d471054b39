#include "judge/row_reads.h"

#include "job/follows.h"
#include "judge/reads.h"
#include "judge/row.h"
#include "judge/row_limit.h"

#include <stdio.h>
#include <string.h>

/* What a row names -------------------------------------------------------------------------- */

struct adding {
    struct rulebook *book;
    struct reads *reads;
};

/* The fact, and what leads to it: groups hold nothing of their own. */
static void add_fact(const struct adding *adding, const struct fact *fact)
{
    for (size_t i = 0; fact != NULL && i < fact->step_count; i++)
        if (fact->steps[i]->type != FIELD_GROUP)
            reads_add_field(adding->reads, fact->steps[i]);
}

static void add_figure(const struct adding *adding, const struct figure_slot *figure)
{
    if (figure != NULL)
        reads_add_figure(adding->reads, figure);
}

static void add_condition(void *data, const struct condition *condition)
{
    add_fact(data, condition->fact);
    add_figure(data, condition->figure);
}

/* Calls visit for the name of the figure of each word of the fact that chooses. A word without
 * a figure of its own is one that no rule speaks of, or that another place adds. */
static void each_of_table(const struct row *row, void (*visit)(void *data, const char *name),
                          void *data)
{
    const struct field *by = row->by->field;
    for (size_t i = 0; i < by->choice_count; i++) {
        char name[256];
        snprintf(name, sizeof(name), "%s%s", row->by_prefix, by->choices[i]);
        visit(data, name);
    }
}

static void add_of_table(void *data, const char *name)
{
    const struct adding *adding = data;
    add_figure(adding, figure_slot_find(adding->book, name, true));
}

/* All that it may ask for, whatever the job chooses among. Where a row measures, either
 * fact may be the one read. */
static void add_part(void *data, const struct row *row)
{
    struct adding *adding = data;
    condition_each(&row->when, add_condition, adding);
    add_fact(adding, row->fact);
    add_fact(adding, row->measured);
    add_fact(adding, row->limit_fact);
    add_fact(adding, row->by);
    for (size_t i = 0; i < row->meets_count; i++)
        add_figure(adding, row->meets[i]);
    for (size_t i = 0; i < row->among_count; i++)
        add_figure(adding, row->among[i]);
    add_figure(adding, row->share);
    add_figure(adding, row->over);
    add_figure(adding, row->at_counts);
    if (row->by_prefix != NULL)
        each_of_table(row, add_of_table, adding);
}

void row_reads_add(struct rulebook *book, const struct rule *rule, struct reads *reads)
{
    struct adding adding = {book, reads};
    /* The lists gone through decide how often it is judged. */
    for (size_t i = 0; i < rule->per_depth; i++)
        reads_add_field(reads, rule->per[i]);
    if (rule->when != NULL)
        condition_each(rule->when, add_condition, &adding);
    if (rule->row == NULL)
        return;
    row_each_part(rule->row, add_part, &adding);
    for (size_t i = 0; i < rule->row->open_count; i++)
        condition_each(&rule->row->opens[i].when, add_condition, &adding);
}

/* All of a rule ----------------------------------------------------------------------------- */

/* Fields are walked as the tree they are; FIELDS_DEEPEST bounds it. */
static void each_field_below(const struct rule *rule, const struct field *parent,
                             void (*visit)(void *data, const struct field *field), void *data)
{
    for (const struct field *f = parent->first_child; f != NULL; f = f->next) {
        if (reads_has_field(rule->reads, f))
            visit(data, f);
        each_field_below(rule, f, visit, data);
    }
}

void row_reads_each_field(const struct rulebook *book, const struct rule *rule,
                          void (*visit)(void *data, const struct field *field), void *data)
{
    each_field_below(rule, book->fields.root, visit, data);
}

void row_reads_each_figure(const struct rulebook *book, const struct rule *rule,
                           void (*visit)(void *data, const char *name), void *data)
{
    const struct profile *profile = book->profile;
    for (size_t i = 0; i < profile->figure_count; i++)
        if (reads_has_figure(book, rule->reads, &profile->figures[i]))
            visit(data, profile->figures[i].name);
}

bool row_reads_ask(const struct rulebook *book, const struct figure *figure)
{
    const size_t index = (size_t)(figure - book->profile->figures);
    bool asked = follows_uses(&book->fields, index);
    for (const struct rule *r = book->rules; r != NULL && !asked; r = r->next)
        asked = reads_has_figure(book, r->reads, figure);
    return asked;
}

bool row_reads_print(const struct rulebook *book, const struct figure *figure)
{
    bool asked = false;
    for (const struct quantity *q = book->quantities; q != NULL && !asked; q = q->next)
        asked = reads_has_figure(book, q->reads, figure);
    for (const struct caution *c = book->cautions; c != NULL && !asked; c = c->next)
        asked = reads_has_figure(book, c->reads, figure);
    return asked;
}

/* Pairs --------------------------------------------------------------------------------- */

struct pairs_told {
    const struct rulebook *book;
    void (*visit)(void *data, const struct row_pair *pair);
    void *data;
    const struct row *row; /* whose figures are told; or NULL */
};

/* A fact that is reckoned, or a limit that is, makes no pair: nothing can be said of their
 * units. */
static void tell_pair_of(const struct pairs_told *told, const struct fact *fact,
                         const struct figure *figure, double factor)
{
    const struct row_pair pair = {fact == NULL ? NULL : fact->field, figure, factor};
    if (fact != NULL && figure != NULL)
        told->visit(told->data, &pair);
}

static void tell_pair(const struct pairs_told *told, const struct fact *fact,
                      const struct figure_slot *figure, double factor)
{
    tell_pair_of(told, fact, rulebook_figure(told->book, figure), factor);
}

static void tell_condition_pair(void *data, const struct condition *condition)
{
    /* Whose units are the same. */
    if (condition->kind == WHEN_MEANT)
        tell_pair(data, condition->fact, condition->figure, 1);
}

static void tell_pair_of_table(void *data, const char *name)
{
    const struct pairs_told *told = data;
    tell_pair_of(told, told->row->fact, profile_figure(told->book->profile, name),
                 told->row->factor);
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
        each_of_table(row, tell_pair_of_table, told);
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
