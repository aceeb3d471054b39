/* spacing.h - judging a list of measurements by its worst and by its share
 * out of bounds. */
#ifndef EAVEMARK_TRADE_SPACING_H
#define EAVEMARK_TRADE_SPACING_H

#include <stddef.h>

struct spread {
    double least, most; /* of the list */
    size_t count;
    size_t over; /* how many are over the limit, by more than the tolerance */
    double over_percent;
};

/* Sums up values[0..count), count at least 1, against an upper limit in the
 * given unit (number.h: it fixes the tolerance). Returns 0, or -1 when the
 * list is empty or holds a number that is not finite. */
int trade_spread(struct spread *out, const double *values, size_t count, double limit,
                 const char *unit);

#endif
