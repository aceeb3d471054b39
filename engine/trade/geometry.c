#include "trade/geometry.h"

#include <math.h>

/* False for NAN too. */
static int usable(double x)
{
    return x >= 0 && isfinite(x);
}

double trade_slope_factor(double pitch)
{
    return usable(pitch) ? sqrt(1 + pitch / 12 * (pitch / 12)) : NAN;
}

double trade_sloped_length_ft(double run_ft, double pitch)
{
    return usable(run_ft) ? run_ft * trade_slope_factor(pitch) : NAN;
}

double trade_slope_area_sqft(double eave_ft, double ridge_ft, double run_ft, double pitch)
{
    if (!usable(eave_ft) || !usable(ridge_ft))
        return NAN;
    return (eave_ft + ridge_ft) / 2 * trade_sloped_length_ft(run_ft, pitch);
}
