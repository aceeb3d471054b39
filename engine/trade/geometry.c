#include "trade/geometry.h"

#include <math.h>
#include <stddef.h>

static const double RADIANS = 57.295779513082321; /* degrees in one */

/* False for NAN too. */
static int not_negative(double x)
{
    return x >= 0 && isfinite(x);
}

/* Rise and run are the legs of a right triangle: length along the slope for each unit of
 * run. */
double trade_slope_factor(double pitch)
{
    return not_negative(pitch) ? sqrt(1 + pitch / 12 * (pitch / 12)) : NAN;
}

/* A hip runs 45 degrees in plan: for each unit of the common run it covers sqrt(2) level
 * and the same rise. */
double trade_hip_factor(double pitch)
{
    return not_negative(pitch) ? sqrt(2 + pitch / 12 * (pitch / 12)) : NAN;
}

double trade_pitch_to_degrees(double pitch)
{
    return not_negative(pitch) ? atan(pitch / 12) * RADIANS : NAN;
}

double trade_degrees_to_pitch(double degrees)
{
    return not_negative(degrees) && degrees < 90 ? 12 * tan(degrees / RADIANS) : NAN;
}

double trade_rise_ft(double run_ft, double pitch)
{
    return not_negative(run_ft) && not_negative(pitch) ? run_ft * pitch / 12 : NAN;
}

double trade_sloped_length_ft(double run_ft, double pitch)
{
    return not_negative(run_ft) ? run_ft * trade_slope_factor(pitch) : NAN;
}

double trade_hip_length_ft(double run_ft, double pitch)
{
    return not_negative(run_ft) ? run_ft * trade_hip_factor(pitch) : NAN;
}

/* A trapezoid between two level edges: their mean times the sloped distance between them. */
double trade_slope_area_sqft(double eave_ft, double ridge_ft, double run_ft, double pitch)
{
    if (!not_negative(eave_ft) || !not_negative(ridge_ft))
        return NAN;
    return (eave_ft + ridge_ft) / 2 * trade_sloped_length_ft(run_ft, pitch);
}

double trade_plan_area_sqft(double plan_sqft, double pitch)
{
    return not_negative(plan_sqft) ? plan_sqft * trade_slope_factor(pitch) : NAN;
}

static const char *plane_refusal(const struct roof_plane *plane)
{
    if (!not_negative(plane->eave_ft) || !not_negative(plane->ridge_ft))
        return "the lower and the upper edge need lengths of 0 or more";
    if (plane->eave_ft <= 0 && plane->ridge_ft <= 0)
        return "a plane with neither a lower nor an upper edge has no area";
    if (!not_negative(plane->run_ft) || plane->run_ft <= 0)
        return "the run from lower to upper edge must be more than 0";
    if (!not_negative(plane->pitch))
        return "the pitch must be 0 or more";
    return NULL;
}

static enum plane_shape shape_of(const struct roof_plane *plane)
{
    if (plane->eave_ft <= 0 || plane->ridge_ft <= 0)
        return PLANE_TRIANGLE;
    /* Lengths are measured with a tape: a hundredth of a foot is no taper. */
    return fabs(plane->eave_ft - plane->ridge_ft) < 0.01 ? PLANE_RECTANGLE : PLANE_TRAPEZOID;
}

int trade_plane(struct plane_measure *out, const struct roof_plane *plane, const char **why)
{
    *why = plane_refusal(plane);
    if (*why != NULL)
        return -1;
    const double length = trade_sloped_length_ft(plane->run_ft, plane->pitch);
    *out = (struct plane_measure){
        .shape = shape_of(plane),
        .plan_sqft = (plane->eave_ft + plane->ridge_ft) / 2 * plane->run_ft,
        .area_sqft = trade_slope_area_sqft(plane->eave_ft, plane->ridge_ft, plane->run_ft,
                                           plane->pitch),
        .rise_ft = trade_rise_ft(plane->run_ft, plane->pitch),
        .length_ft = length,
        /* Both sides taken alike: half the taper each. */
        .side_ft = hypot(length, (plane->eave_ft - plane->ridge_ft) / 2),
    };
    return 0;
}
