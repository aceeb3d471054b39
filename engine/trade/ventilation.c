#include "trade/ventilation.h"

#include "trade/takeoff.h"

#include <math.h>

static const double SQIN_PER_SQFT = 144;

/* False for NAN too. */
static int not_negative(double x)
{
    return x >= 0 && isfinite(x);
}

static int divides(double x)
{
    return x > 0 && isfinite(x);
}

double trade_vent_area_needed_sqin(double area_sqft, double ratio)
{
    return not_negative(area_sqft) && divides(ratio) ? area_sqft / ratio * SQIN_PER_SQFT : NAN;
}

static double product(double a, double b)
{
    return not_negative(a) && not_negative(b) ? a * b : NAN;
}

double trade_vent_strip_sqin(double length_ft, double sqin_per_ft)
{
    return product(length_ft, sqin_per_ft);
}

double trade_vent_units_sqin(double count, double each_sqin)
{
    return product(count, each_sqin);
}

/* A screen or louver lets through the gross opening divided by its multiplier, which is 1
 * or more. */
double trade_vent_net_sqin(double gross_sqin, double multiplier)
{
    return not_negative(gross_sqin) && multiplier >= 1 && isfinite(multiplier)
               ? gross_sqin / multiplier
               : NAN;
}

double trade_vent_gross_sqin(double net_sqin, double multiplier)
{
    return multiplier >= 1 ? product(net_sqin, multiplier) : NAN;
}

double trade_share_percent(double part, double whole)
{
    return not_negative(part) && divides(whole) ? part / whole * 100 : NAN;
}

int trade_vent_split(struct vent_split *out, double needed_sqin, double high_percent)
{
    if (!not_negative(needed_sqin) || !not_negative(high_percent) || high_percent > 100)
        return -1;
    out->high_sqin = needed_sqin * high_percent / 100;
    /* By difference, so that the two always add up. */
    out->low_sqin = needed_sqin - out->high_sqin;
    return 0;
}

/* How many more (feet or units) make up what is lacking: whole ones, none when nothing is
 * lacking. */
static double more(double short_sqin, double each_sqin)
{
    if (!isfinite(short_sqin) || !divides(each_sqin))
        return NAN;
    return short_sqin <= 0 ? 0 : trade_purchase(short_sqin, 0, each_sqin);
}

double trade_vent_more_feet(double short_sqin, double sqin_per_ft)
{
    return more(short_sqin, sqin_per_ft);
}

double trade_vent_more_units(double short_sqin, double each_sqin)
{
    return more(short_sqin, each_sqin);
}

/* boost is what a steep or dark roof adds: a factor of 1 or more. */
double trade_fan_cfm(double area_sqft, double cfm_per_sqft, double boost)
{
    return boost >= 1 ? product(product(area_sqft, cfm_per_sqft), boost) : NAN;
}

double trade_fan_intake_sqin(double cfm, double cfm_per_intake_sqft)
{
    return not_negative(cfm) && divides(cfm_per_intake_sqft)
               ? cfm / cfm_per_intake_sqft * SQIN_PER_SQFT
               : NAN;
}
