/* measure.h - figures as people write them: fractions, feet and inches. */
#ifndef EAVEMARK_BASE_MEASURE_H
#define EAVEMARK_BASE_MEASURE_H

#include <stdbool.h>

enum { MEASURE_WHY = 240 };

/* Reads "5.5", "1,250", "7/16", "1 1/4", "1-1/4", "12'6\"", "12 ft 6 in",
 * "6 in", "30 %", "30 squares" into *value in `unit` (NULL: a plain number).
 * Without a unit of its own the figure is in `unit`; units of one kind are turned
 * into each other where that is exact (feet and inches, squares and square feet).
 * A fraction or a conversion is rounded to six decimals. False when the words are
 * no such figure, one of another kind, or can be read in two ways ("1,5", "11/4",
 * "30 sq", "5/12" for a length): why then says so, in words that follow
 * "found ...:". */
bool measure_read(const char *words, const char *unit, double *value, char why[MEASURE_WHY]);

#endif
