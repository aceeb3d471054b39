#include "trade/wind.h"

#include <math.h>

double trade_vult_to_vasd(double vult_mph)
{
    return vult_mph >= 0 && isfinite(vult_mph) ? vult_mph * sqrt(0.6) : NAN;
}
