#include "trade/ventilation.h"

#include <math.h>

static const double SQIN_PER_SQFT = 144;

double trade_vent_area_needed_sqin(double area_sqft, double ratio)
{
    if (!(area_sqft >= 0) || !(ratio > 0) || isinf(area_sqft) || isinf(ratio))
        return NAN;
    return area_sqft / ratio * SQIN_PER_SQFT;
}

static double product(double a, double b)
{
    return a >= 0 && b >= 0 && isfinite(a) && isfinite(b) ? a * b : NAN;
}

double trade_vent_strip_sqin(double length_ft, double sqin_per_ft)
{
    return product(length_ft, sqin_per_ft);
}

double trade_vent_units_sqin(double count, double each_sqin)
{
    return product(count, each_sqin);
}

double trade_share_percent(double part, double whole)
{
    if (!(part >= 0) || !(whole > 0) || isinf(part) || isinf(whole))
        return NAN;
    return part / whole * 100;
}
