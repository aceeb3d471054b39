#include "trade/spacing.h"

#include "base/number.h"

#include <math.h>

/* What prints as the limit is taken as the limit, each value for itself: a tape is read to a
 * fraction. */
int trade_spread(struct spread *out, const double *values, size_t count, double limit,
                 const char *unit)
{
    if (count == 0)
        return -1;
    *out = (struct spread){.least = values[0], .most = values[0], .count = count};
    for (size_t i = 0; i < count; i++) {
        if (!isfinite(values[i]))
            return -1;
        out->least = fmin(out->least, values[i]);
        out->most = fmax(out->most, values[i]);
        out->over += !number_at_most(values[i], limit, unit);
    }
    out->over_percent = 100.0 * (double)out->over / (double)count;
    return 0;
}
