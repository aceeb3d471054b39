/* weight.h - what coverings weigh on the roof, in a trailer and in a stack.
 *
 * psf is pounds per square foot, lb_per_square pounds per 100 sq ft as wrappers
 * give it, both along the slope unless a name says plan; cuyd cubic yards (27
 * cu ft). Pure functions; NAN when an argument is negative or not finite, or
 * zero where something is divided by it.
 */
#ifndef EAVEMARK_TRADE_WEIGHT_H
#define EAVEMARK_TRADE_WEIGHT_H

#include <stddef.h>

/* Load of one layer from its weight per square, and back. */
double trade_psf(double lb_per_square);
double trade_lb_per_square(double psf);

/* Load of a sheet of board or panel from that of one inch of it: loads of wood
 * decking go by thickness (0.4 psf per 1/8 in in load standards' tables). */
double trade_deck_psf(double thickness_in, double psf_per_in);

/* Layers on top of one another. NAN when any is negative or not finite; 0 for
 * none. */
double trade_dead_load_psf(const double *layers_psf, size_t count);

/* Load over the level area below a plane: load along the slope x slope factor
 * (geometry.h: the rafter is longer than its run). pitch is rise in 12. */
double trade_plan_load_psf(double slope_psf, double pitch);

/* Weight of a layer over an area. */
double trade_layer_lb(double area_sqft, double lb_per_square);

/* Volume of a heap of this weight, and of a bed with straight sides. */
double trade_heap_cuyd(double weight_lb, double lb_per_cuyd);
double trade_bed_cuyd(double length_ft, double width_ft, double side_ft);

struct trade_loads {
    double by_volume, by_weight; /* whole loads */
    double loads;                /* the larger of the two */
};

/* Trips of a trailer or bin that may carry so much volume and weight. 0, or -1
 * when an argument is out of range. */
int trade_haul(struct trade_loads *out, double heap_cuyd, double weight_lb, double bed_cuyd,
               double payload_lb);

/* Load under a stack of bundles that lies on so much deck. */
double trade_stack_psf(double bundles, double bundle_lb, double area_sqft);

/* Most whole bundles in a stack on so much deck under a limit. */
double trade_stack_most(double bundle_lb, double area_sqft, double limit_psf);

#endif
