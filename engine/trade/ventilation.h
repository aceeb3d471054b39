/* ventilation.h - net free area of attic vents.
 *
 * Areas of attics in square feet, of vents in square inches (144 to the
 * square foot). Pure functions; NAN when an argument is out of range: negative
 * or not finite, or zero where something is divided by it.
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

/* Net free area left of a gross opening behind a screen or louver: gross over
 * the multiplier (gross needed for 1 of net, at least 1). And the gross opening
 * that a net area calls for. Source: the table of screen and louver
 * multipliers that trade journals and federal housing handbooks print. */
double trade_vent_net_sqin(double gross_sqin, double multiplier);
double trade_vent_gross_sqin(double net_sqin, double multiplier);

/* part of whole in percent. */
double trade_share_percent(double part, double whole);

/* An area divided between high and low vents. */
struct vent_split {
    double high_sqin, low_sqin;
};

/* Divides needed_sqin so that high_percent (0 to 100) of it is high. 0, or -1
 * when an argument is out of range. */
int trade_vent_split(struct vent_split *out, double needed_sqin, double high_percent);

/* Least whole feet of strip, and least whole count of units, that give at least
 * short_sqin more; 0 when nothing is short (short_sqin 0 or negative). NAN when
 * the vent's own area is not positive. */
double trade_vent_more_feet(double short_sqin, double sqin_per_ft);
double trade_vent_more_units(double short_sqin, double each_sqin);

/* A powered attic fan: air moved, cfm, for an attic's floor, and the net free
 * intake, sq in, that lets it in. boost is 1, or more for dark or steep roofs.
 * Source: the form of a ventilating-products trade association's guide, area x
 * cfm per sq ft x boost and cfm over cfm per sq ft of intake. */
double trade_fan_cfm(double area_sqft, double cfm_per_sqft, double boost);
double trade_fan_intake_sqin(double cfm, double cfm_per_intake_sqft);

#endif
