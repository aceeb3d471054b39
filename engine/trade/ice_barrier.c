#include "trade/ice_barrier.h"

#include "trade/geometry.h"

#include <math.h>

/* A course is not begun for what a tape cannot tell. */
static const double TAPE_IN = 1.0 / 16;

/* False for NAN too. */
static int not_negative(double x)
{
    return x >= 0 && isfinite(x);
}

static int lapped(double width_in, double lap_in)
{
    return not_negative(width_in) && not_negative(lap_in) && lap_in < width_in;
}

double trade_ice_barrier_reach_in(double overhang_in, double wall_in, double inside_in,
                                  double pitch)
{
    if (!not_negative(overhang_in) || !not_negative(wall_in) || !not_negative(inside_in))
        return NAN;
    /* A ratio of lengths: the factor serves inches as well as feet. */
    return trade_sloped_length_ft(overhang_in + wall_in + inside_in, pitch);
}

double trade_ice_barrier_courses(double reach_in, double width_in, double lap_in)
{
    if (!not_negative(reach_in) || !lapped(width_in, lap_in))
        return NAN;
    if (reach_in == 0)
        return 0;
    const double beyond = reach_in - width_in - TAPE_IN;
    return beyond <= 0 ? 1 : 1 + ceil(beyond / (width_in - lap_in));
}

/* The first course shows whole, each further one less its lap. */
double trade_ice_barrier_covers_in(double courses, double width_in, double lap_in)
{
    if (!not_negative(courses) || !lapped(width_in, lap_in))
        return NAN;
    return courses < 1 ? 0 : width_in + (courses - 1) * (width_in - lap_in);
}

double trade_ice_barrier_roll_ft(double courses, double eave_ft)
{
    return not_negative(courses) && not_negative(eave_ft) ? courses * eave_ft : NAN;
}
