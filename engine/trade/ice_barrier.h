/* ice_barrier.h - how far up the slope an ice barrier must reach, and how much
 * sheet that takes.
 *
 * Pure functions; NAN when an argument is negative or not finite.
 */
#ifndef EAVEMARK_TRADE_ICE_BARRIER_H
#define EAVEMARK_TRADE_ICE_BARRIER_H

/* Inches along the slope, from the roof edge, that lie over a level distance
 * of overhang + wall + inside inches: (overhang + wall + inside) x slope
 * factor. wall_in is the wall's thickness when the distance counts from its
 * inner face, 0 when from its outer face. The level measure follows the
 * worked examples of trade journals on IRC R905.1.2. */
double trade_ice_barrier_reach_in(double overhang_in, double wall_in, double inside_in,
                                  double pitch);

/* Courses of a roll, each lapping the one below by `lap` (less than the
 * width), whose last edge lies at least `reach` up the slope: 0 for no reach,
 * else the first covers its width and each further one width - lap. What is
 * short by less than a 16th of an inch counts as reached: a tape reads no
 * finer. */
double trade_ice_barrier_courses(double reach_in, double width_in, double lap_in);

/* How far that many courses reach. */
double trade_ice_barrier_covers_in(double courses, double width_in, double lap_in);

/* Feet of roll for that many courses along an eave. */
double trade_ice_barrier_roll_ft(double courses, double eave_ft);

#endif
