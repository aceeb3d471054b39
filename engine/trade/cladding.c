#include "trade/cladding.h"

#include <math.h>

static int not_negative(double x)
{
    return x >= 0 && isfinite(x);
}

static int positive(double x)
{
    return x > 0 && isfinite(x);
}

/* The rule for the width a of ASCE 7 chapter 30: the smaller of two shares, never under
 * the larger of two floors. */
double trade_zone_width_ft(double least_width_ft, double height_ft, const struct zone_rule *rule)
{
    if (!positive(least_width_ft) || !positive(height_ft) || !not_negative(rule->width_share)
        || !not_negative(rule->height_share) || !not_negative(rule->least_share)
        || !not_negative(rule->least_ft))
        return NAN;
    const double width = fmin(rule->width_share * least_width_ft, rule->height_share * height_ft);
    return fmax(width, fmax(rule->least_share * least_width_ft, rule->least_ft));
}

/* False for NAN too, as are the two above. */
static int are_lengths(double length_ft, double width_ft, double strip_ft)
{
    return positive(length_ft) && positive(width_ft) && positive(strip_ft);
}

int trade_gable_zones_sqft(struct cladding_zones *out, double length_ft, double width_ft,
                           double strip_ft)
{
    if (!are_lengths(length_ft, width_ft, strip_ft))
        return -1;
    /* Across one slope: eave strip, field, ridge strip. Along it: rake, middle, rake. On a
     * slope too narrow for both strips the ridge's is what the eave's leaves. */
    const double run = width_ft / 2;
    const double eave = fmin(strip_ft, run), ridge = fmin(strip_ft, run - eave);
    const double field = run - eave - ridge;
    const double rake = fmin(strip_ft, length_ft / 2), middle = length_ft - 2 * rake;
    *out = (struct cladding_zones){
        .field = 2 * field * middle,
        .eave = 2 * eave * middle,
        .rake = 4 * field * rake,
        .ridge = 2 * ridge * middle,
        .eave_corner = 4 * eave * rake,
        .ridge_corner = 4 * ridge * rake,
    };
    return 0;
}

/* Field of one hip plane: level lines from y = strip up, each of them base -
 * 2 y - 2 inset long, until top or until they are used up. A strip along a
 * hip, 45 degrees in plan, takes strip x sqrt(2) off each end of them. */
static double hip_field(double base, double top, double strip)
{
    const double inset = strip * sqrt(2);
    const double end = fmin(top, base / 2 - inset);
    if (end <= strip)
        return 0;
    const double first = base - 2 * strip - 2 * inset, last = base - 2 * end - 2 * inset;
    return (first + last) / 2 * (end - strip);
}

int trade_hip_zones_sqft(struct cladding_zones *out, double length_ft, double width_ft,
                         double strip_ft)
{
    if (!are_lengths(length_ft, width_ft, strip_ft))
        return -1;
    const double longer = fmax(length_ft, width_ft), shorter = fmin(length_ft, width_ft);
    /* All areas are seen from above, where a hip roof of one pitch depends on its outline
     * alone. */
    const double strip = fmin(strip_ft, shorter / 2), run = shorter / 2;
    const double inside = (longer - 2 * strip) * (shorter - 2 * strip);
    const double corners = 4 * strip * strip;
    /* The end planes come to a point: no ridge stops them, only their hips. */
    const double field = 2 * hip_field(longer, run - strip, strip)
                         + 2 * hip_field(shorter, run, strip);
    *out = (struct cladding_zones){
        .field = field,
        .eave = longer * shorter - inside - corners,
        .ridge = inside - field,
        .eave_corner = corners,
    };
    return 0;
}

double trade_cladding_psf(double q_psf, double gcp, const struct cladding_load *load)
{
    if (!not_negative(q_psf) || !isfinite(gcp) || !not_negative(load->gcpi)
        || !positive(load->load_factor) || !not_negative(load->least_psf))
        return NAN;
    /* The internal pressure takes the sign that adds to the external one: the worst of
     * the two. */
    const double size = q_psf * (fabs(gcp) + load->gcpi) * load->load_factor;
    return copysign(fmax(size, load->least_psf), gcp > 0 ? 1 : -1);
}

int trade_cladding_pressures(struct cladding_zones *out, double q_psf,
                             const struct cladding_zones *gcp, const struct cladding_load *load)
{
    *out = (struct cladding_zones){
        .field = trade_cladding_psf(q_psf, gcp->field, load),
        .eave = trade_cladding_psf(q_psf, gcp->eave, load),
        .rake = trade_cladding_psf(q_psf, gcp->rake, load),
        .ridge = trade_cladding_psf(q_psf, gcp->ridge, load),
        .eave_corner = trade_cladding_psf(q_psf, gcp->eave_corner, load),
        .ridge_corner = trade_cladding_psf(q_psf, gcp->ridge_corner, load),
    };
    /* One NAN among them makes the sum one. */
    const double sum = out->field + out->eave + out->rake + out->ridge + out->eave_corner
                       + out->ridge_corner;
    return isfinite(sum) ? 0 : -1;
}
