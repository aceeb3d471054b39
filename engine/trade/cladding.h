/* cladding.h - wind pressure on small pieces of a roof, zone by zone.
 *
 * Components and cladding of low-rise gable and hip roofs, effective area 10
 * sq ft or less (a nail, a shingle). Lengths in feet, pressures in psf.
 * Coefficients are figures of the edition and come in as arguments; none is
 * held here. Sources: the method of ASCE 7-10 and 7-16 chapter 30, status
 * memory; checked against two published tables (tests/published).
 */
#ifndef EAVEMARK_TRADE_CLADDING_H
#define EAVEMARK_TRADE_CLADDING_H

/* One value for each place of a roof. ASCE 7-10 calls the field zone 1, the
 * three strips zone 2 and the corners zone 3; 7-16 calls them 1, 2e, 2n, 2r,
 * 3e, 3r on gables, and 1, 2e, 2r, 3 on hips (which have no rake). */
struct cladding_zones {
    double field;
    double eave, rake, ridge;         /* strips; a hip's ridge strip includes its hips */
    double eave_corner, ridge_corner; /* where a rake meets them; a hip has only the first */
};

/* How wide the strips are: the smaller of two shares, but not under the least. */
struct zone_rule {
    double width_share;  /* of the least width of the plan: 0.10 */
    double height_share; /* of the mean roof height: 0.4 */
    double least_share;  /* of the least width: 0.04 */
    double least_ft;     /* 3 */
};

/* Width a of the strips. NAN when an argument is negative or not finite, or
 * width or height is 0. */
double trade_zone_width_ft(double least_width_ft, double height_ft, const struct zone_rule *rule);

/* Plan areas, square feet, of the zones of a gable roof (ridge along length)
 * and of a hip roof, whose outline is length x width, with strips of width_ft.
 * Strips that do not fit share what there is, the eave's before the ridge's.
 * The areas add up to length x width. Return 0, or -1 when a length is not
 * positive and finite. */
int trade_gable_zones_sqft(struct cladding_zones *out, double length_ft, double width_ft,
                           double strip_ft);
int trade_hip_zones_sqft(struct cladding_zones *out, double length_ft, double width_ft,
                         double strip_ft);

/* How pressures are stated. */
struct cladding_load {
    double gcpi;        /* internal pressure coefficient, either sign: 0.18 enclosed */
    double load_factor; /* 1 for strength, 0.6 for allowable stress */
    double least_psf;   /* floor of the result: 16 strength, 10 allowable stress */
};

/* Worst pressure on a place with external coefficient gcp: p = q (GCp -
 * GCpi), with the sign of the internal pressure that makes it worse, times
 * the load factor, and no nearer to 0 than the floor. Negative is suction, as
 * gcp is; gcp 0 counts as suction. NAN when q, a coefficient or the load is
 * out of range. */
double trade_cladding_psf(double q_psf, double gcp, const struct cladding_load *load);

/* The same for all places at once. Returns 0, or -1 when any is out of range. */
int trade_cladding_pressures(struct cladding_zones *out, double q_psf,
                             const struct cladding_zones *gcp, const struct cladding_load *load);

#endif
