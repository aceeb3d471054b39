/* slope.h - reading the values that a job writes as text. */
#ifndef EAVEMARK_JOB_SLOPE_H
#define EAVEMARK_JOB_SLOPE_H

#include <stdbool.h>

/* Reads a slope: "5:12", "5/12", "5 in 12", "5 on 12", "4 1/2:12", "1/4:12", another run
 * ("2.5:6"), "22.6 deg", "42 %" (rise over run). Sets *rise to inches of rise in 12 of
 * run. False when the text is not a slope: a number has up to 4 digits before and 6
 * after the point, a fraction is of halves to sixteenths and in its lowest terms; a run
 * is 1 or more, behind a bar 12; degrees are under 90. Nothing is negative, and nothing
 * may stand before or after. */
bool slope_parse(const char *text, double *rise);

/* What a text that is no slope could be, when it could be two things: "5" (5:12 or 5
 * degrees), "1/4" (a quarter inch to the foot or 1:4). False when it could not. */
enum { SLOPE_WHY = 160 };
bool slope_has_two_readings(const char *text, char why[SLOPE_WHY]);

/* The same as a regular expression (ECMA-262, for the JSON Schema): it matches
 * exactly the texts that slope_parse reads. */
#define SLOPE_NUMBER "(0|[1-9][0-9]{0,3})"
#define SLOPE_RUN "(:| in | on )[1-9][0-9]{0,3}([.][0-9]{1,6})?"
#define SLOPE_FRACTION "(1/2|[13]/4|[1357]/8|(1[135]?|[3579])/16)"
#define SLOPE_PATTERN                                           \
    "^(" SLOPE_NUMBER "([.][0-9]{1,6})?(" SLOPE_RUN "|/12| ?%)" \
    "|(" SLOPE_NUMBER "[ -])?" SLOPE_FRACTION SLOPE_RUN         \
    "|([0-9]|[1-8][0-9])([.][0-9]{1,6})? ?(deg|degrees|\xC2\xB0))$"

/* Likewise for the dates that date_parse reads: days from 1900 to 2199. */
#define DATE_PATTERN                                                  \
    "^((19|20|21)[0-9]{2}-((0[13578]|1[02])-(0[1-9]|[12][0-9]|3[01])" \
    "|(0[469]|11)-(0[1-9]|[12][0-9]|30)|02-(0[1-9]|1[0-9]|2[0-8]))"   \
    "|(2000|(19|20|21)(0[48]|[2468][048]|[13579][26]))-02-29)$"

#endif
