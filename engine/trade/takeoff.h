/* takeoff.h - from what a roof measures to what has to be bought.
 *
 * Lengths in feet or inches as named, areas in square feet (100 to the
 * square), waste in percent of the exact amount. What is exact is never
 * rounded; only what is bought is, upwards and once. Pure functions; NAN when an
 * argument is negative or not finite, or zero where something is divided by
 * it.
 */
#ifndef EAVEMARK_TRADE_TAKEOFF_H
#define EAVEMARK_TRADE_TAKEOFF_H

/* Squares of 100 sq ft. Source: the trade's definition of a square, as Army and
 * Navy builder manuals give it. */
double trade_squares(double area_sqft);

/* exact with waste added. */
double trade_with_waste(double exact, double waste_percent);

/* Whole purchase units that hold exact plus waste, `each` to the unit. What
 * lies over a whole unit by no more than a billionth of it is a rounding error
 * and buys nothing. */
double trade_purchase(double exact, double waste_percent, double each);

/* Strips that cover a square, each `length` long and showing `exposure`. */
double trade_strips_per_square(double length_in, double exposure_in);

/* Square feet of sheet laid over a net area in courses of `width` that lap
 * the one below by `lap` (less than the width): net x width / (width - lap).
 * End laps are waste. */
double trade_lapped_sqft(double net_sqft, double width_in, double lap_in);

/* What one piece covers of a run in which pieces lap: length less lap (which
 * is less than the length). */
double trade_lapped_piece_ft(double length_ft, double lap_in);

/* Nails in a panel `length` across the supports and `width` along them: the
 * two outer lines at the edge spacing, those between at the field spacing, a
 * nail at both ends of each. The way carpenters count a sheet. NAN also when
 * the panel does not span whole supports (length over support less than 1). */
double trade_panel_nails(double length_in, double width_in, double support_in, double edge_in,
                         double field_in);

/* Working days for an amount at an amount per day: whole days. */
double trade_work_days(double amount, double per_day);

#endif
