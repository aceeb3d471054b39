#include "trade/nail.h"

#include <math.h>
#include <stddef.h>

static const double PI = 3.14159265358979324;
static const double SQIN_PER_SQFT = 144;

static int positive(double x)
{
    return x > 0 && isfinite(x);
}

/* No wood used in framing or panels is as heavy as water. */
static int is_gravity(double x)
{
    return x > 0 && x <= 1;
}

/* Pounds per inch of shank: constant x gravity^exponent x diameter (nail.h names the
 * equations). */
static double withdrawal(double constant, double exponent, double gravity, double shank_in)
{
    if (!is_gravity(gravity) || !positive(shank_in))
        return NAN;
    return constant * pow(gravity, exponent) * shank_in;
}

double trade_withdrawal_smooth(double gravity, double shank_in)
{
    return withdrawal(1380, 2.5, gravity, shank_in);
}

double trade_withdrawal_stainless(double gravity, double shank_in)
{
    return withdrawal(465, 1.5, gravity, shank_in);
}

double trade_withdrawal_ring(double gravity, double shank_in)
{
    return withdrawal(1800, 2, gravity, shank_in);
}

double trade_pull_through_lb(double panel_gravity, double head_in, double thickness_in)
{
    if (!is_gravity(panel_gravity) || !positive(head_in) || !positive(thickness_in))
        return NAN;
    /* 1725 is 690 x 2.5: past that thickness more panel holds no more. */
    const double counts = fmin(thickness_in, 2.5 * head_in);
    return 690 * PI * head_in * panel_gravity * panel_gravity * counts;
}

static const char *refusal(const struct nail *nail, const struct nailing *nailing)
{
    if (!positive(nail->length_in) || !positive(nail->shank_in) || !positive(nail->head_in))
        return "a nail needs a length, a shank and a head";
    if (nail->head_in <= nail->shank_in)
        return "a nail's head is wider than its shank";
    if (!(nail->ring_in >= 0) || nail->ring_in > nail->length_in)
        return "the ringed part is no longer than the nail";
    if (!is_gravity(nailing->framing_gravity) || !is_gravity(nailing->panel_gravity))
        return "the specific gravity of wood is more than 0 and at most 1";
    if (!positive(nailing->panel_in))
        return "the panel needs a thickness";
    if (nail->length_in <= nailing->panel_in)
        return "the nail does not reach through the panel";
    if (!positive(nailing->duration) || !positive(nailing->wet_withdrawal)
        || !positive(nailing->wet_pull_through))
        return "the factors for duration and wet wood must be more than 0";
    return NULL;
}

int trade_nail_capacity(struct nail_capacity *out, const struct nail *nail,
                        const struct nailing *nailing, const char **why)
{
    *why = refusal(nail, nailing);
    if (*why != NULL)
        return -1;
    /* Only what is in the framing holds; of a ringed nail only its rings do. */
    double held = nail->length_in - nailing->panel_in;
    double per_in = trade_withdrawal_smooth(nailing->framing_gravity, nail->shank_in);
    if (nail->ring_in > 0) {
        held = fmin(held, nail->ring_in);
        per_in = trade_withdrawal_ring(nailing->framing_gravity, nail->shank_in);
    }
    const double out_lb = per_in * held * nailing->duration * nailing->wet_withdrawal;
    const double head_lb = trade_pull_through_lb(nailing->panel_gravity, nail->head_in,
                                                 nailing->panel_in)
                           * nailing->duration * nailing->wet_pull_through;
    /* The nail gives way where it is weaker: out of the framing, or its head through the
     * panel. */
    *out = (struct nail_capacity){
        .penetration_in = held,
        .withdrawal_lb = out_lb,
        .pull_through_lb = head_lb,
        .lb = fmin(out_lb, head_lb),
        .head_governs = head_lb < out_lb,
    };
    return 0;
}

double trade_nail_spacing_in(double capacity_lb, double support_spacing_in, double pressure_psf)
{
    if (!positive(capacity_lb) || !positive(support_spacing_in) || !positive(pressure_psf))
        return NAN;
    /* Each nail holds spacing x support spacing square inches of panel. */
    return capacity_lb / (support_spacing_in * pressure_psf) * SQIN_PER_SQFT;
}
