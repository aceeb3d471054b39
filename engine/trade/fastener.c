#include "trade/fastener.h"

#include "base/number.h"

#include <math.h>

/* False for NAN too. */
static int not_negative(double x)
{
    return x >= 0 && isfinite(x);
}

static double product(double a, double b)
{
    return not_negative(a) && not_negative(b) ? a * b : NAN;
}

double trade_nail_penetration_in(double length_in, double through_in)
{
    return not_negative(length_in) && not_negative(through_in) ? length_in - through_in : NAN;
}

/* In a deck thinner than the bite asked for, the point comes out below instead. */
double trade_nail_length_in(double through_in, double deck_in, double into_in, double past_in)
{
    if (!not_negative(through_in) || !not_negative(deck_in) || !not_negative(into_in)
        || !not_negative(past_in))
        return NAN;
    return through_in + (deck_in < into_in ? deck_in + past_in : into_in);
}

/* The shortest that does; NAN where none is long enough. */
double trade_stocked_length_in(double length_in, const double *stocked_in, size_t count)
{
    double best = NAN;
    if (!not_negative(length_in))
        return NAN;
    for (size_t i = 0; i < count; i++) {
        if (!not_negative(stocked_in[i]))
            return NAN;
        if (number_at_least(stocked_in[i], length_in, "in") && !(stocked_in[i] >= best))
            best = stocked_in[i];
    }
    return best;
}

double trade_nails_per_square(double strips_per_square, double nails_per_strip)
{
    return product(strips_per_square, nails_per_strip);
}

double trade_nails(double squares, double strips_per_square, double nails_per_strip)
{
    return product(squares, trade_nails_per_square(strips_per_square, nails_per_strip));
}
