#include "trade/takeoff.h"

#include <math.h>

static const double SQFT_PER_SQUARE = 100;
static const double SQIN_PER_SQUARE = 100 * 144;
static const double ROUNDING_ERROR = 1e-9;

/* False for NAN too. */
static int not_negative(double x)
{
    return x >= 0 && isfinite(x);
}

static int divides(double x)
{
    return x > 0 && isfinite(x);
}

double trade_squares(double area_sqft)
{
    return not_negative(area_sqft) ? area_sqft / SQFT_PER_SQUARE : NAN;
}

double trade_with_waste(double exact, double waste_percent)
{
    return not_negative(exact) && not_negative(waste_percent) ? exact * (1 + waste_percent / 100)
                                                              : NAN;
}

/* Rounded up to whole ones, but not for a rounding error above a whole number. */
double trade_purchase(double exact, double waste_percent, double each)
{
    const double amount = trade_with_waste(exact, waste_percent);
    if (!isfinite(amount) || !divides(each))
        return NAN;
    const double units = amount / each, below = floor(units);
    if (!isfinite(units))
        return NAN;
    /* Above 2^53 every double is whole; the slack then adds nothing. */
    return units - below <= ROUNDING_ERROR * fmax(1, below) ? below : below + 1;
}

double trade_strips_per_square(double length_in, double exposure_in)
{
    return divides(length_in) && divides(exposure_in) ? SQIN_PER_SQUARE / (length_in * exposure_in)
                                                      : NAN;
}

/* Each course shows its width less the lap: so much more goes on than shows. */
double trade_lapped_sqft(double net_sqft, double width_in, double lap_in)
{
    if (!not_negative(net_sqft) || !not_negative(lap_in) || !divides(width_in)
        || lap_in >= width_in)
        return NAN;
    return net_sqft * (width_in / (width_in - lap_in));
}

/* Of each piece the lap is lost; the first piece of a run, which loses none, is on the safe
 * side. */
double trade_lapped_piece_ft(double length_ft, double lap_in)
{
    if (!not_negative(lap_in) || !divides(length_ft) || lap_in / 12 >= length_ft)
        return NAN;
    return length_ft - lap_in / 12;
}

/* Nails on a line of this length, one at each end. */
static double nails_on_line(double length_in, double spacing_in)
{
    return trade_purchase(length_in, 0, spacing_in) + 1;
}

double trade_panel_nails(double length_in, double width_in, double support_in, double edge_in,
                         double field_in)
{
    if (!divides(length_in) || !divides(width_in) || !divides(support_in) || !divides(edge_in)
        || !divides(field_in) || support_in > length_in)
        return NAN;
    /* n bays have n + 1 lines of nails: the outer two at the edge spacing, n - 1 between. */
    const double bays = trade_purchase(length_in, 0, support_in);
    return 2 * nails_on_line(width_in, edge_in) + (bays - 1) * nails_on_line(width_in, field_in);
}

double trade_work_days(double amount, double per_day)
{
    return trade_purchase(amount, 0, per_day);
}
