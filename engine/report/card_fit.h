/* card_fit.h - what fits on the front of a printed card, and how its rows stand there. */
#ifndef EAVEMARK_REPORT_CARD_FIT_H
#define EAVEMARK_REPORT_CARD_FIT_H

#include "ask/card.h"
#include "report/card_row.h"

#include <stdbool.h>
#include <stddef.h>

/* Is ticking all there is to every row of it? */
bool card_is_short(const struct card *card, const struct card_thing *thing);

/* Is there nothing to tell but its title and places? */
bool card_is_bare(const struct card *card, const struct card_thing *thing);

/* How a short row stands on paper. */
enum card_shape {
    SHAPE_HALF,    /* in half the width: its title, and on a full front what is short beside it */
    SHAPE_COLUMNS, /* in the columns of the others, where it takes one line */
    SHAPE_FLOWING, /* on one line and, where it must be, the next */
};

enum card_shape card_shape_of(const struct card *card, const struct card_thing *thing);

/* What earlier stages left open stands on the front as far as there is room for it. */
struct card_left {
    size_t in_front; /* so many things of it */
    size_t height;   /* of the front with them */
};

struct card_left card_left_in_front(const struct card *card);

/* So few things that they may be set larger. */
bool card_is_roomy(const struct card *card);

#endif
