/* measure_parts.h - what the files of measure.h share.
 *
 * The readers return the place after what they read, and NULL when it is not there.
 */
#ifndef EAVEMARK_BASE_MEASURE_PARTS_H
#define EAVEMARK_BASE_MEASURE_PARTS_H

#include "base/measure.h"

/* Fifteen digits are exact in a double. */
enum { MEASURE_DIGITS_MOST = 15 };

const char *measure_skip_spaces(const char *at);

/* Digits, with commas between groups of three. */
const char *measure_whole(const char *at, double *number, int *digits);

/* "12", "1,250", "5.5", ".5". */
const char *measure_decimal(const char *at, double *number);

/* Can the figure be read in two ways? Then why names both. */
bool measure_has_two_readings(const char *at, const char *unit, char why[MEASURE_WHY]);

#endif
