#include "trade/weight.h"

#include "trade/geometry.h"
#include "trade/takeoff.h"

#include <math.h>

static const double SQFT_PER_SQUARE = 100;
static const double CUFT_PER_CUYD = 27;

/* False for NAN too. */
static int not_negative(double x)
{
    return x >= 0 && isfinite(x);
}

static double product(double a, double b)
{
    return not_negative(a) && not_negative(b) ? a * b : NAN;
}

/* Nothing is divided by 0: NAN. */
static double quotient(double a, double b)
{
    return not_negative(a) && b > 0 && isfinite(b) ? a / b : NAN;
}

double trade_psf(double lb_per_square)
{
    return quotient(lb_per_square, SQFT_PER_SQUARE);
}

double trade_lb_per_square(double psf)
{
    return product(psf, SQFT_PER_SQUARE);
}

double trade_deck_psf(double thickness_in, double psf_per_in)
{
    return product(thickness_in, psf_per_in);
}

double trade_dead_load_psf(const double *layers_psf, size_t count)
{
    double total = 0;
    for (size_t i = 0; i < count; i++) {
        if (!not_negative(layers_psf[i]))
            return NAN;
        total += layers_psf[i];
    }
    return total;
}

/* The slope's own weight on the level foot below it: a steep roof weighs more there. */
double trade_plan_load_psf(double slope_psf, double pitch)
{
    return product(slope_psf, trade_slope_factor(pitch));
}

double trade_layer_lb(double area_sqft, double lb_per_square)
{
    return product(area_sqft, trade_psf(lb_per_square));
}

/* Loose, as it lies in the truck: torn-off covering takes more room than it did on the roof. */
double trade_heap_cuyd(double weight_lb, double lb_per_cuyd)
{
    return quotient(weight_lb, lb_per_cuyd);
}

double trade_bed_cuyd(double length_ft, double width_ft, double side_ft)
{
    return quotient(product(product(length_ft, width_ft), side_ft), CUFT_PER_CUYD);
}

/* Loads by room and by weight; the truck makes the larger number of trips. */
int trade_haul(struct trade_loads *out, double heap_cuyd, double weight_lb, double bed_cuyd,
               double payload_lb)
{
    const double by_volume = trade_purchase(heap_cuyd, 0, bed_cuyd);
    const double by_weight = trade_purchase(weight_lb, 0, payload_lb);
    if (!isfinite(by_volume) || !isfinite(by_weight))
        return -1;
    *out = (struct trade_loads){by_volume, by_weight, fmax(by_volume, by_weight)};
    return 0;
}

/* Spread over the deck that it lies on: what the rafters below feel. */
double trade_stack_psf(double bundles, double bundle_lb, double area_sqft)
{
    return quotient(product(bundles, bundle_lb), area_sqft);
}

double trade_stack_most(double bundle_lb, double area_sqft, double limit_psf)
{
    const double most = quotient(product(area_sqft, limit_psf), bundle_lb);
    /* Rounded down, but a rounding error under a whole bundle does not cost one. */
    return isfinite(most) ? floor(most * (1 + 1e-9)) : NAN;
}
