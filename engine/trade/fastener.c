#include "trade/fastener.h"

#include <math.h>

double trade_nail_penetration_in(double length_in, double through_in)
{
    if (!(length_in >= 0) || !(through_in >= 0) || isinf(length_in) || isinf(through_in))
        return NAN;
    return length_in - through_in;
}
