/* footprint.h - a whole roof from the plan of the house.
 *
 * Lengths in feet, areas in square feet, pitch in inches of rise over 12 in.
 * Walls are as built; overhangs are given, measured level, and added to them.
 * All planes of a roof have the one pitch, but for a porch's. The lengths
 * follow from the right triangles of geometry.h and hold at any size.
 */
#ifndef EAVEMARK_TRADE_FOOTPRINT_H
#define EAVEMARK_TRADE_FOOTPRINT_H

enum roof_form {
    ROOF_GABLE,       /* ridge along length_ft */
    ROOF_HIP,         /* four planes; ridge along the longer side, none if square */
    ROOF_GABLE_PORCH, /* a gable, and a lower shed roof along one of its eaves */
    ROOF_SHED,        /* one plane that climbs across width_ft */
    ROOF_CROSS_GABLE, /* a gable, and a wing square to it, ridge no higher */
};

struct footprint {
    enum roof_form form;
    double length_ft, width_ft; /* of the walls */
    double pitch;
    double eave_overhang_ft; /* beyond the wall at every eave, and a shed's top */
    double rake_overhang_ft; /* beyond the wall at every rake; 0 for a hip */
    double porch_length_ft, porch_depth_ft, porch_pitch; /* ROOF_GABLE_PORCH */
    double wing_width_ft, wing_out_ft; /* ROOF_CROSS_GABLE: its walls, out from the main wall */
};

struct footprint_measure {
    double plan_sqft; /* sum of all planes seen from above; a porch's part that
                          lies under the main eave counts in both */
    double area_sqft; /* on the slope */
    double eave_ft, rake_ft, ridge_ft, hip_ft, valley_ft;
    double top_ft; /* upper edges that are no ridge: a shed's top, a porch's wall */
    int planes;
};

/* Measures the roof over a footprint. Returns 0, or -1 for one that cannot be
 * (a wing wider than the house, say), with a text that says why in *why
 * (static, never NULL then). */
int trade_footprint(struct footprint_measure *out, const struct footprint *roof, const char **why);

#endif
