/* drawing_demand.h - one thing to be drawn, with what its findings demand laid over what
 * is planned. Internal to the room. */
#ifndef EAVEMARK_REPORT_DRAWING_DEMAND_H
#define EAVEMARK_REPORT_DRAWING_DEMAND_H

#include "draw/draw.h"
#include "judge/drawn.h"
#include "report/job_drawings.h"

struct drawing_shown {
    const struct drawn *drawn;
    size_t index; /* which of its items */
    const struct drawn_item *item;
    struct draw_amount amounts[DIMENSIONS_MOST]; /* by dimension; NAN where not known */
    bool judged[DIMENSIONS_MOST];                /* its rule has something to say here */
    bool speaks;                                 /* one of the rules has, or there is none */
};

/* Looks up what the findings demand, or the card's rows where there is a card. */
void drawing_demand(const struct drawings *from, const struct drawn *drawn, size_t index,
                    struct drawing_shown *out);

#endif
