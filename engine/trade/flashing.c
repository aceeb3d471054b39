#include "trade/flashing.h"

#include <math.h>

static const double RUN = 12; /* a pitch is rise in this */

static int positive(double x)
{
    return x > 0 && isfinite(x);
}

double trade_cricket_height_in(double width_in, double pitch)
{
    if (!positive(width_in) || !positive(pitch))
        return NAN;
    return width_in / 2 * pitch / RUN;
}
