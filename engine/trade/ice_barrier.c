#include "trade/ice_barrier.h"

#include "trade/geometry.h"

#include <math.h>

double trade_ice_barrier_reach_in(double overhang_in, double wall_in, double inside_in,
                                  double pitch)
{
    if (!(overhang_in >= 0) || !(wall_in >= 0) || !(inside_in >= 0))
        return NAN;
    /* A ratio of lengths: the factor serves inches as well as feet. */
    return trade_sloped_length_ft(overhang_in + wall_in + inside_in, pitch);
}
