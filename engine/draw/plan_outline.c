/* The outline of one plane seen from above, from its edges. */
#include "draw/plan_parts.h"

#include "trade/geometry.h"

#include <math.h>

/* Lengths that a tape would call the same. */
static const double ALIKE_FT = 0.05;

bool plan_alike(double a, double b)
{
    return fabs(a - b) <= ALIKE_FT;
}

bool plan_is_known(const struct plan_plane *plane)
{
    return isfinite(plane->eave_ft) && isfinite(plane->ridge_ft) && isfinite(plane->run_ft)
           && plane->run_ft > 0 && plane->eave_ft + plane->ridge_ft > 0;
}

/* A wing that runs into a plane leaves two valleys, two rakes and an eave in two pieces,
 * which add up to what is left of it. */
bool plan_is_notched(const struct plan_plane *plane)
{
    return plane->valleys == 2 && plane->rakes == 2 && plane->eaves == 2
           && plane->ridge_ft > plane->eave_ft
           && fabs(plane->eave_pieces_ft[0] + plane->eave_pieces_ft[1] - plane->eave_ft) < 0.5;
}

/* A stated plan area wins: a notched plane's edges do not give its area. */
double plan_area_sqft(const struct plan_plane *plane)
{
    return isfinite(plane->plan_sqft) && plane->plan_sqft > 0
               ? trade_plan_area_sqft(plane->plan_sqft, plane->pitch)
               : trade_slope_area_sqft(plane->eave_ft, plane->ridge_ft, plane->run_ft,
                                       plane->pitch);
}

/* How far up a wing cuts into the plane, measured level: to its ridge, unless
 * what is left of the plane tells otherwise. */
static double notch_run_ft(const struct plan_plane *plane)
{
    const double run = plane->run_ft, base = plane->ridge_ft - plane->eave_ft;
    const double cut = 2 * (plane->ridge_ft * run - plane->plan_sqft) / base;
    return plane->plan_sqft > 0 && cut > 0 && cut < run ? cut : run;
}

/* Around from the ridge's left end: ridge, right rake, right piece of the eave, up one
 * valley to the tip and down the other, left piece, left rake. */
static void notched_outline(const struct plan_plane *plane, struct plan_outline *out)
{
    const double run = plane->run_ft, tip = run - notch_run_ft(plane);
    const double first = plane->eave_pieces_ft[0];
    const double second = plane->ridge_ft - (plane->eave_ft - first);
    *out = (struct plan_outline){
        .corners = {{0, 0},
                    {plane->ridge_ft, 0},
                    {plane->ridge_ft, run},
                    {second, run},
                    {(first + second) / 2, tip},
                    {first, run},
                    {0, run}},
        .sides = {PEN_LINE, PEN_LINE, PEN_LINE, PEN_HEAVY_DASH, PEN_HEAVY_DASH, PEN_LINE, PEN_LINE},
        .count = 7};
}

/* How far the left lower corner lies outside the left upper one. A hip on one side and a
 * valley on the other lean the same way, 45 degrees in plan; a rake stands square; else
 * both sides share. */
double plan_lean_left_ft(const struct plan_plane *plane)
{
    const double more = plane->eave_ft - plane->ridge_ft;
    if (plane->hips == 1 && plane->valleys == 1)
        return plane->run_ft;
    if (plane->rakes == 1 && plane->hips + plane->valleys == 1)
        return 0;
    return more / 2;
}

/* Which side is listed as what is seen by the way it leans. */
static enum draw_pen side_pen(const struct plan_plane *plane, double lean)
{
    if (lean > ALIKE_FT && plane->hips > 0)
        return PEN_HEAVY;
    if (lean < -ALIKE_FT && plane->valleys > 0)
        return PEN_HEAVY_DASH;
    return PEN_LINE;
}

/* The ridge at the top with its left end at the origin; y grows down the slope. */
void plan_outline_of(const struct plan_plane *plane, struct plan_outline *out)
{
    if (plan_is_notched(plane)) {
        notched_outline(plane, out);
        return;
    }
    const double left = plan_lean_left_ft(plane), right = plane->eave_ft - plane->ridge_ft - left;
    *out = (struct plan_outline){
        .corners = {{0, 0},
                    {plane->ridge_ft, 0},
                    {plane->ridge_ft + right, plane->run_ft},
                    {-left, plane->run_ft}},
        .sides = {PEN_LINE, side_pen(plane, right), PEN_LINE, side_pen(plane, left)},
        .count = 4};
}
