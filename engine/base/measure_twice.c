/* Figures that could be read in two ways: refused with both. */
#include "base/measure_parts.h"

#include <math.h>
#include <stdio.h>
#include <string.h>
#include <strings.h>

/* "11/4" where "1 1/4" may be meant: some first digits of the top are a whole number, and
 * what is left of it is a proper fraction. */
static bool may_be_mixed(const char *at, char why[MEASURE_WHY])
{
    double top = 0, bottom = 0, whole = 0;
    int digits = 0, left = 0;
    const char *slash = measure_whole(at, &top, &digits);
    if (slash == NULL || *slash != '/' || digits < 2)
        return false;
    const char *end = measure_whole(slash + 1, &bottom, &left);
    if (end == NULL || left == 0 || bottom == 0 || top < bottom)
        return false;
    /* "115/16" splits into 1 and 15, since its bottom has two digits; "11/4" into 1 and 1. */
    const double split = digits > 2 && bottom > 10 ? 100 : 10;
    whole = floor(top / split);
    const double rest = top - whole * split;
    /* "10/4" or "19/4" leave no proper fraction: there is one reading only. */
    if (rest < 1 || rest >= bottom)
        return false;
    snprintf(why, MEASURE_WHY,
             "two readings, %.0f %.0f/%.0f or %.6g; write the one that is meant so", whole, rest,
             bottom, top / bottom);
    return true;
}

/* "5/12" alone is no inch or foot that a tape shows, but may be a slope. */
static bool may_be_slope(const char *at, const char *unit, char why[MEASURE_WHY])
{
    double top = 0, bottom = 0;
    int digits = 0;
    const char *end = measure_whole(at, &top, &digits);
    if (unit == NULL || (strcmp(unit, "in") != 0 && strcmp(unit, "ft") != 0) || end == NULL
        || digits == 0 || *end != '/')
        return false;
    end = measure_whole(end + 1, &bottom, &digits);
    if (end == NULL || bottom != 12 || *end != '\0')
        return false;
    snprintf(why, MEASURE_WHY,
             "two readings, a slope of %.0f:12 or %.6g %s; write the length as \"%.0f/12 %s\"", top,
             top / bottom, unit, top, unit);
    return true;
}

/* "1,5" is no group of three digits: a point may be meant, or two numbers. */
static bool may_be_two_numbers(const char *at, const char *unit, char why[MEASURE_WHY])
{
    /* "12-6" and "12 6" are feet and inches on a drawing, a range or a list elsewhere. */
    const bool length = unit != NULL && (strcmp(unit, "ft") == 0 || strcmp(unit, "in") == 0);
    const size_t first = strspn(at, "0123456789");
    const char *rest = at + first + 1;
    const size_t second = first > 0 && at[first] != '\0' ? strspn(rest, "0123456789") : 0;
    if (second == 0 || first + second > MEASURE_DIGITS_MOST || rest[second] != '\0')
        return false;
    const int f = (int)first, s = (int)second;
    if (at[first] == ',' && second != 3)
        snprintf(why, MEASURE_WHY,
                 "two readings, %.*s.%.*s or %.*s and %.*s; write a point for the "
                 "one, a comma and a space for the other",
                 f, at, s, rest, f, at, s, rest);
    else if (length && (at[first] == '-' || at[first] == ' '))
        snprintf(why, MEASURE_WHY,
                 "two readings, %.*s ft %.*s in or %.*s and %.*s; write the feet "
                 "as %.*s'%.*s\"",
                 f, at, s, rest, f, at, s, rest, f, at, s, rest);
    else
        return false;
    return true;
}

/* "30 sq": squares and square feet are both written so. */
static bool may_be_squares(const char *at, const char *unit, char why[MEASURE_WHY])
{
    double number = 0;
    const char *end = measure_decimal(at, &number);
    if (unit == NULL || (strcmp(unit, "sqft") != 0 && strcmp(unit, "squares") != 0) || end == NULL)
        return false;
    end = measure_skip_spaces(end);
    if (strcasecmp(end, "sq") != 0 && strcasecmp(end, "sq.") != 0)
        return false;
    snprintf(why, MEASURE_WHY,
             "two readings, %.15g squares or %.15g sq ft; write \"squares\" or \"sq ft\"", number,
             number);
    return true;
}

bool measure_has_two_readings(const char *at, const char *unit, char why[MEASURE_WHY])
{
    return may_be_mixed(at, why) || may_be_slope(at, unit, why) || may_be_two_numbers(at, unit, why)
           || may_be_squares(at, unit, why);
}
