/* fact.h - a fact of the job by its path, found once when a rule is loaded and read
 * for each job without Lua. Internal to the judge room.
 *
 * Paths are those of the catalogue: "house.year_built", "decks[].nails.kind". A list
 * on the way must be in scope: the item being judged stands for it. A reference
 * leads on into the item that it names: "roof.slopes[].deck.kind".
 */
#ifndef EAVEMARK_JUDGE_FACT_H
#define EAVEMARK_JUDGE_FACT_H

#include "judge/judging.h"

enum { FACT_DEEPEST_SCOPE = RULE_DEEPEST_PER + 2, FACT_STEPS_MOST = 12 };

/* The lists whose items are at hand, outermost first. */
struct scope {
    const struct field *lists[FACT_DEEPEST_SCOPE];
    size_t depth;
};

struct fact {
    const struct field *field;                  /* what is read in the end */
    int base;                                   /* index into the scope; -1: the job */
    const struct field *steps[FACT_STEPS_MOST]; /* from there down to the field */
    size_t step_count;
};

/* Finds the path. NULL when it names no field that can be read from here; *why is
 * then said in words (arena text). The fact is in the arena. */
const struct fact *fact_find(struct arena *arena, const struct fields *fields,
                             const struct scope *scope, const char *path, const char **why);

/* Reads it; items are those of the scope. Every fact on the way is recorded. False
 * when the job lacks one of them, which the record then names. */
bool fact_read(struct judging *judging, const struct fact *fact, const struct node *items,
               struct node *out);

/* Does the job say it? Recorded as read, never as lacking. */
bool fact_known(struct judging *judging, const struct fact *fact, const struct node *items);

/* What the field is measured in: of a slope, its rise in 12; or NULL. */
const char *fact_unit(const struct field *field);

/* What a node of a value's field holds, in the judging arena: a number (a slope as
 * its rise in 12), yes or no, text, or set of texts. */
struct value fact_value(struct judging *judging, const struct node *node);

#endif
