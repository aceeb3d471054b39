/* geometry.h - lengths and areas of roof planes.
 *
 * pitch is rise in inches over 12 in of level run; lengths are in feet, areas
 * in square feet. Pure functions; NAN when an argument is negative or not
 * finite.
 */
#ifndef EAVEMARK_TRADE_GEOMETRY_H
#define EAVEMARK_TRADE_GEOMETRY_H

/* Sloped length per level length: sqrt(1 + (pitch/12)^2), from the right
 * triangle of run, rise and rafter; the "slope factor" of carpentry tables. */
double trade_slope_factor(double pitch);

/* Length along the slope over a level run. */
double trade_sloped_length_ft(double run_ft, double pitch);

/* Area of a plane between two level edges: a rectangle (ridge = eave), a
 * trapezoid, or a triangle (ridge 0). run_ft is measured level. */
double trade_slope_area_sqft(double eave_ft, double ridge_ft, double run_ft, double pitch);

#endif
