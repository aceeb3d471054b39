/* row_reads.h - what a rule reads, told by its structure alone: no job is judged and
 * no case is run. */
#ifndef EAVEMARK_JUDGE_ROW_READS_H
#define EAVEMARK_JUDGE_ROW_READS_H

#include "judge/rulebook.h"

/* Adds what the rule's row and conditions name, and the lists it goes through, to what its
 * functions declare. */
void row_reads_add(struct rulebook *book, const struct rule *rule, struct reads *reads);

/* Calls visit for every field, and for the name of every figure of the rulebook's profile,
 * that the rule may read. */
void row_reads_each_field(const struct rulebook *book, const struct rule *rule,
                          void (*visit)(void *data, const struct field *field), void *data);
void row_reads_each_figure(const struct rulebook *book, const struct rule *rule,
                           void (*visit)(void *data, const char *name), void *data);

/* May some rule be judged by the figure of the rulebook's profile, which it asks for, or by
 * which a fact follows that a job does not say? Or else some quantity or caution say it,
 * which judge nothing? */
bool row_reads_ask(const struct rulebook *book, const struct figure *figure);
bool row_reads_print(const struct rulebook *book, const struct figure *figure);

/* A fact held against a figure; factor turns the fact into the figure's unit. */
struct row_pair {
    const struct field *field;
    const struct figure *figure;
    double factor;
};

/* Calls visit for each such pair of the rule's row and conditions. */
void row_reads_each_pair(const struct rulebook *book, const struct rule *rule,
                         void (*visit)(void *data, const struct row_pair *pair), void *data);

#endif
