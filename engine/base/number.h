/* number.h - how a figure is printed, and when two figures count as equal.
 *
 * Every unit has a last printed decimal. Comparisons take half of that digit
 * as their tolerance, so that what prints alike is judged alike: this is the
 * only place where either is stated.
 */
#ifndef EAVEMARK_BASE_NUMBER_H
#define EAVEMARK_BASE_NUMBER_H

#include "base/sense.h"

#include <stdbool.h>

/* Decimals printed for a unit ("in" 3, "sqin" 1 ...); 3 for a unit not listed. */
int number_decimals(const char *unit);

/* Half the last printed digit of the unit. */
double number_tolerance(const char *unit);

/* value rounded to the unit's last printed decimal. A part of a unit that is told in
 * whole numbers (4.5 nails, 129.25 mph: to the hundredth, as people write) is kept,
 * printed and compared as it is. */
double number_rounded(double value, const char *unit);

/* found >= limit, found <= limit, found == limit, within the tolerance. */
bool number_at_least(double found, double limit, const char *unit);
bool number_at_most(double found, double limit, const char *unit);
bool number_equals(double found, double limit, const char *unit);

/* A bound as a tape can be held against it: inches of a hand or more that are no
 * sixteenth go to the next one on the safe side of "at_least" or "at_most".
 * Anything else is as it was: thin stuff is gauged, not taped. */
double number_on_tape(double limit, enum sense sense, const char *unit);

/* Writes the value in the unit's decimals with trailing zeros dropped and
 * thousands separated by commas: "1,152", "0.438", "22.5". */
void number_write(double value, const char *unit, char out[64]);

/* The same with the unit as the trade writes it: "1,152 sq in", "6 in",
 * "1 1/4 in" (inches that are 32nds, to within what prints), "0.105 in",
 * "4:12" (rise_in_12), "17.5 %". A count's noun loses its s at 1: "1 layer". */
void number_write_unit(double value, const char *unit, char out[96]);

#endif
