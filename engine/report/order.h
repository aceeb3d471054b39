/* order.h - what a takeoff buys, as a list to hand to the supplier.
 *
 * Lines stand under their headings, in the order in which the quantities are declared.
 * What is of one kind is one line, measured together and rounded up once, so that it may
 * be fewer than the takeoff's quantities come to each for itself. Texts belong to the
 * takeoff or to the order's arena; order_free releases it.
 */
#ifndef EAVEMARK_REPORT_ORDER_H
#define EAVEMARK_REPORT_ORDER_H

#include "base/arena.h"
#include "judge/quantities.h"

struct order_line {
    const char *heading; /* "Metal" */
    const char *item;    /* as the counter calls it */
    double measured;     /* without waste, in the unit of the first one's amount */
    double count;
    const char *unit; /* "pieces", or of one "piece" */
    const char *one;
    const char *goes_on;               /* planes or edges, or NULL for the whole roof */
    const struct quantity_line *first; /* the quantity it comes from, or the first of them */
};

struct order {
    struct arena arena;
    struct order_line *lines;
    size_t line_count;
};

/* Returns 0, or -1 when out of memory. */
int order_make(const struct takeoff *takeoff, struct order *out);

/* The unit for how many there are. */
const char *order_unit(const struct order_line *line);

void order_free(struct order *order);

#endif
