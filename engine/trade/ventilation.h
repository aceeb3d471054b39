/* ventilation.h - net free area of attic vents.
 *
 * Areas of attics in square feet, of vents in square inches (144 to the
 * square foot). Pure functions; NAN when an argument is out of range.
 */
#ifndef EAVEMARK_TRADE_VENTILATION_H
#define EAVEMARK_TRADE_VENTILATION_H

/* Net free area demanded: the attic's area over the ratio (150 for 1/150).
 * Source: the form of IRC R806.2, an area ratio. */
double trade_vent_area_needed_sqin(double area_sqft, double ratio);

/* Net free area of a run of strip vent, and of a number of like units, from
 * the figure on their label. */
double trade_vent_strip_sqin(double length_ft, double sqin_per_ft);
double trade_vent_units_sqin(double count, double each_sqin);

/* part of whole in percent. */
double trade_share_percent(double part, double whole);

#endif
