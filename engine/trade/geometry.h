/* geometry.h - lengths and areas of roof planes.
 *
 * pitch is rise in inches over 12 in of level run; lengths are in feet, areas
 * in square feet. Pure functions; NAN when an argument is negative or not
 * finite. Sources: the right triangles of roof framing, as the Navy's builder
 * manual (NAVEDTRA 14044, roof framing) teaches them.
 */
#ifndef EAVEMARK_TRADE_GEOMETRY_H
#define EAVEMARK_TRADE_GEOMETRY_H

/* Sloped length per level length: sqrt(1 + (pitch/12)^2), from the right
 * triangle of run, rise and rafter; the "slope factor" of carpentry tables. */
double trade_slope_factor(double pitch);

/* Length of a hip or valley per level length of the common run: sqrt(2 +
 * (pitch/12)^2). For equal pitches that meet at 90 degrees in plan. It
 * multiplies the run of the common rafter, not the hip's own longer run. */
double trade_hip_factor(double pitch);

/* The angle from level, 0 to under 90 degrees, and back. The way back is NAN
 * from 90 degrees on: a wall has no pitch. */
double trade_pitch_to_degrees(double pitch);
double trade_degrees_to_pitch(double degrees);

/* How far a plane climbs over a level run. */
double trade_rise_ft(double run_ft, double pitch);

/* Length along the slope over a level run. */
double trade_sloped_length_ft(double run_ft, double pitch);

/* Length of a hip or valley that crosses a level common run. */
double trade_hip_length_ft(double run_ft, double pitch);

/* Area of a plane between two level edges: a rectangle (ridge = eave), a
 * trapezoid, or a triangle (ridge 0). run_ft is measured level. */
double trade_slope_area_sqft(double eave_ft, double ridge_ft, double run_ft, double pitch);

/* Area of a plane of any shape, from what it covers seen from above. */
double trade_plan_area_sqft(double plan_sqft, double pitch);

/* A plane between two level edges. */
struct roof_plane {
    double eave_ft, ridge_ft; /* lower and upper edge; one of them may be 0 */
    double run_ft;            /* between them, measured level */
    double pitch;
};

enum plane_shape { PLANE_RECTANGLE, PLANE_TRIANGLE, PLANE_TRAPEZOID };

struct plane_measure {
    enum plane_shape shape;
    double plan_sqft; /* seen from above */
    double area_sqft; /* on the slope */
    double rise_ft;
    double length_ft; /* up the slope, square to the eave */
    double side_ft;   /* each of its two sides, when both lean alike */
};

/* Measures a plane. Returns 0, or -1 for one that cannot be, with a text that
 * says why in *why (static, never NULL then). */
int trade_plane(struct plane_measure *out, const struct roof_plane *plane, const char **why);

#endif
