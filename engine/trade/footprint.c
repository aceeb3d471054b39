#include "trade/footprint.h"

#include "trade/geometry.h"

#include <math.h>
#include <stddef.h>

/* False for NAN too. */
static int not_negative(double x)
{
    return x >= 0 && isfinite(x);
}

static int positive(double x)
{
    return x > 0 && isfinite(x);
}

/* The roof's outline: walls and overhangs. */
struct outline {
    double length, width;
};

static struct outline outline_of(const struct footprint *roof)
{
    const double ends = roof->form == ROOF_HIP ? roof->eave_overhang_ft : roof->rake_overhang_ft;
    return (struct outline){.length = roof->length_ft + 2 * ends,
                            .width = roof->width_ft + 2 * roof->eave_overhang_ft};
}

/* How far a wing's rake lies out from the main eave, and half its outline. */
static double wing_beyond_eave(const struct footprint *roof)
{
    return roof->wing_out_ft + roof->rake_overhang_ft - roof->eave_overhang_ft;
}

/* Half a wing's outline across its ridge, eave overhang included. */
static double wing_half(const struct footprint *roof)
{
    return roof->wing_width_ft / 2 + roof->eave_overhang_ft;
}

static const char *porch_refusal(const struct footprint *roof)
{
    if (!positive(roof->porch_length_ft) || !positive(roof->porch_depth_ft))
        return "a porch needs a length and a depth of more than 0";
    if (!not_negative(roof->porch_pitch))
        return "the porch's pitch must be 0 or more";
    if (roof->porch_length_ft > roof->length_ft)
        return "the porch is longer than the eave wall it leans on";
    return NULL;
}

static const char *wing_refusal(const struct footprint *roof)
{
    if (!positive(roof->wing_width_ft) || !positive(roof->wing_out_ft))
        return "a wing needs a width and must stand out from the main wall";
    if (roof->wing_width_ft > roof->width_ft)
        return "the wing is wider than the house: its ridge would pass over the main ridge";
    if (roof->wing_width_ft > roof->length_ft)
        return "the wing is wider than the wall it stands out from";
    if (2 * wing_half(roof) > outline_of(roof).length)
        return "the wing's eaves reach past both ends of the main eave";
    if (wing_beyond_eave(roof) < 0)
        return "the wing ends under the main eave";
    return NULL;
}

/* NULL when the roof can be. Only what contradicts geometry is refused; what is unusual
 * is the rules' affair. */
static const char *refusal(const struct footprint *roof)
{
    if (!positive(roof->length_ft) || !positive(roof->width_ft))
        return "the house needs a length and a width of more than 0";
    if (!not_negative(roof->pitch))
        return "the pitch must be 0 or more";
    if (!not_negative(roof->eave_overhang_ft) || !not_negative(roof->rake_overhang_ft))
        return "an overhang must be 0 or more";
    switch (roof->form) {
    case ROOF_HIP:
        return roof->rake_overhang_ft > 0 ? "a hip roof has no rakes to overhang" : NULL;
    case ROOF_GABLE_PORCH:
        return porch_refusal(roof);
    case ROOF_CROSS_GABLE:
        return wing_refusal(roof);
    case ROOF_GABLE:
    case ROOF_SHED:
        return NULL;
    }
    return "there is no such form of roof";
}

/* Both slopes together are as long as the ridge and, measured along the slope, as wide as
 * the outline climbed once. */
static void add_gable(struct footprint_measure *out, struct outline plan, double pitch)
{
    out->plan_sqft += plan.length * plan.width;
    out->area_sqft += plan.length * trade_sloped_length_ft(plan.width, pitch);
    out->eave_ft += 2 * plan.length;
    out->rake_ft += 4 * trade_sloped_length_ft(plan.width / 2, pitch);
    out->ridge_ft += plan.length;
    out->planes += 2;
}

/* All four planes have one pitch, so the whole area is the outline's by the slope factor;
 * the ridge is what the longer side has over the shorter. A square ends in a point, with
 * a ridge of 0. */
static void add_hip(struct footprint_measure *out, struct outline plan, double pitch)
{
    const double longer = fmax(plan.length, plan.width), shorter = fmin(plan.length, plan.width);
    out->plan_sqft += longer * shorter;
    out->area_sqft += longer * trade_sloped_length_ft(shorter, pitch);
    out->eave_ft += 2 * (longer + shorter);
    out->ridge_ft += longer - shorter;
    out->hip_ft += 4 * trade_hip_length_ft(shorter / 2, pitch);
    out->planes += 4;
}

/* One plane, climbing across the width. */
static void add_shed(struct footprint_measure *out, struct outline plan, double pitch)
{
    const double rake = trade_sloped_length_ft(plan.width, pitch);
    out->plan_sqft += plan.length * plan.width;
    out->area_sqft += plan.length * rake;
    out->eave_ft += plan.length;
    out->top_ft += plan.length;
    out->rake_ft += 2 * rake;
    out->planes += 1;
}

/* The wing's ridge runs into the main slope until it is as high as the slope:
 * as far in from the main eave as half the wing's width. The triangle it
 * covers there comes off the main plane. */
static void add_wing(struct footprint_measure *out, const struct footprint *roof)
{
    const double half = wing_half(roof), beyond = wing_beyond_eave(roof);
    out->plan_sqft += 2 * half * beyond;
    out->area_sqft += 2 * beyond * trade_sloped_length_ft(half, roof->pitch);
    /* The wing brings two eaves and takes from the main eave the length of its own width. */
    out->eave_ft += 2 * beyond - 2 * half;
    out->rake_ft += 2 * trade_sloped_length_ft(half, roof->pitch);
    out->ridge_ft += beyond + half;
    out->valley_ft += 2 * trade_hip_length_ft(half, roof->pitch);
    out->planes += 2;
}

int trade_footprint(struct footprint_measure *out, const struct footprint *roof, const char **why)
{
    *why = refusal(roof);
    if (*why != NULL)
        return -1;
    *out = (struct footprint_measure){0};
    switch (roof->form) {
    case ROOF_GABLE:
        add_gable(out, outline_of(roof), roof->pitch);
        break;
    case ROOF_HIP:
        add_hip(out, outline_of(roof), roof->pitch);
        break;
    case ROOF_SHED:
        add_shed(out, outline_of(roof), roof->pitch);
        break;
    case ROOF_GABLE_PORCH:
        add_gable(out, outline_of(roof), roof->pitch);
        add_shed(out,
                 (struct outline){.length = roof->porch_length_ft + 2 * roof->rake_overhang_ft,
                                  .width = roof->porch_depth_ft + roof->eave_overhang_ft},
                 roof->porch_pitch);
        break;
    case ROOF_CROSS_GABLE:
        add_gable(out, outline_of(roof), roof->pitch);
        add_wing(out, roof);
        break;
    }
    return 0;
}
