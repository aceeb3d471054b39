/* follows.h - facts that need not be asked, since they follow from others.
 *
 * rules/follows.lua declares them. A fact that follows is written where the job, its plan,
 * its shop sheet and its place are silent, marked ORIGIN_DERIVED (origin.h). What is measured
 * never follows.
 */
#ifndef EAVEMARK_JOB_FOLLOWS_H
#define EAVEMARK_JOB_FOLLOWS_H

#include "base/value.h"
#include "job/fields.h"

#include <cjson/cJSON.h>

/* A value as a declaration writes it. */
struct follows_value {
    enum { FOLLOWS_TEXT, FOLLOWS_NUMBER, FOLLOWS_YES_NO } kind;
    const char *text;
    double number; /* of a yes or no: 1 or 0 */
};

/* What it follows from: one of these. */
enum follows_from {
    FOLLOWS_PLAIN,     /* the value, where the condition holds */
    FOLLOWS_USUAL,     /* the value, said nowhere: of the takeoff only (ORIGIN_USUAL) */
    FOLLOWS_SAME,      /* another fact of the house: `fact` */
    FOLLOWS_ABOVE,     /* a fact of the item that this item is in: `fact` */
    FOLLOWS_BY,        /* a table by the word of a fact beside it: `fact`, words, values */
    FOLLOWS_FILLED,    /* yes, if the list `fact` beside it has items */
    FOLLOWS_ONLY,      /* a reference: the list's only item */
    FOLLOWS_ITEMS,     /* a list: as many items as `fact` says */
    FOLLOWS_PLAN_AREA, /* the house between its walls, by the plan, of a list's only item; with
                          it the word of `fact`, which says what area it is */
};

struct follows {
    const struct field *field;
    enum follows_from from;
    const struct field *fact;
    const char **words; /* of a table */
    struct follows_value *values;
    const struct value **told; /* of a table of figures: the law's own, in place of values */
    size_t *figures;           /* and which figures of the law they are, */
    bool *sister;              /* and which of them were read in a sister text only */
    size_t count;
    const struct field *when; /* or NULL: it has this word ... */
    const char *is;
    const struct field *equal[2]; /* ... or these are the same number; NULL: no such condition */
    struct follows *next;
};

/* What to ask for in place of a fact that lacks, though it could follow: the pointer of the
 * one that it would follow from, where that lacks too. The pointer itself otherwise. In the
 * arena; NULL when out of memory. */
const char *follows_asks(const cJSON *job, const struct fields *fields, const char *pointer,
                         struct arena *arena);

/* Writes all that follows into a job whose roof is laid out. False when out of memory. */
bool follows_fill(cJSON *job, const struct fields *fields);

/* Writes anew what was told by figures, for whoever moved one of them since. */
bool follows_fill_again(cJSON *job, const struct fields *fields);

/* Which figure of the law told the field of this object, by the word that stands in it; -1:
 * none. And does the figure tell any fact? */
int follows_figure(const struct fields *fields, const struct field *field, const cJSON *object);
bool follows_uses(const struct fields *fields, size_t figure);

#endif
