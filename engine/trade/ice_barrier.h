/* ice_barrier.h - how far up the slope an ice barrier must reach. */
#ifndef EAVEMARK_TRADE_ICE_BARRIER_H
#define EAVEMARK_TRADE_ICE_BARRIER_H

/* Inches along the slope, from the roof edge, that lie over a level distance
 * of overhang + wall + inside inches: (overhang + wall + inside) x slope
 * factor. wall_in is the wall's thickness when the distance counts from its
 * inner face, 0 when from its outer face. The level measure follows the
 * worked examples of trade journals on IRC R905.1.2. NAN when an argument is
 * negative or not finite. */
double trade_ice_barrier_reach_in(double overhang_in, double wall_in, double inside_in,
                                  double pitch);

#endif
