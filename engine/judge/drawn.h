/* drawn.h - what the drawings of one job are made of: the facts that rules/drawings.lua
 * declares, read from the job, and the place's figures. What findings demand is laid
 * over it by whoever draws.
 *
 * Everything is in the result's arena; names and words belong to the rulebook.
 */
#ifndef EAVEMARK_JUDGE_DRAWN_H
#define EAVEMARK_JUDGE_DRAWN_H

#include "judge/drawing.h"

enum drawn_answer { DRAWN_NOT_SAID, DRAWN_NO, DRAWN_YES };

struct drawn_dimension {
    double number;            /* planned, or the place's; NAN when neither says it */
    enum drawn_answer answer; /* to what is yes or no */
    const char *rule;         /* whose demand it is; or NULL */
    const char *item;         /* JSON pointer of what that rule judges here; NULL: the house */
};

struct drawn_item {
    const char *name; /* or NULL */
    bool left_out;    /* it is not drawn ... */
    const char *why;  /* ... for this; or NULL: nothing is said of it */
    size_t of;        /* in a list: the place of what it belongs to, in the drawing's
                             items or in the list before; DRAWN_OF_NONE */
    const struct drawn_dimension *dimensions; /* as those of the form */
};

#define DRAWN_OF_NONE ((size_t)-1)

struct drawn_items {
    const struct drawn_item *items;
    size_t count;
};

struct drawn {
    const struct drawing *drawing;
    struct drawn_items itself; /* what is drawn: each once */
    struct drawn_items lists[DRAWING_LISTS_MOST];
    const struct drawn *next;
};

struct judging;

/* The drawings of the job being judged, as declared; NULL where there are none, or when
 * the arena ran out. */
const struct drawn *drawn_of_job(struct judging *judging);

#endif
