#include "base/number.h"

#include "base/date.h"

#include <math.h>
#include <stdint.h>
#include <stdio.h>
#include <string.h>

struct unit {
    const char *name;
    int decimals;
    const char *written; /* after the number; NULL: as the name */
};

/* Every unit a figure or field may have, its printed decimals, and how it stands in a
 * report. The decimals decide comparisons too (number.h). */
/* clang-format off */
static const struct unit UNITS[] = {
    {"in", 3, "in"},         {"ft", 2, "ft"},        {"sqft", 1, "sq ft"},   {"sqin", 1, "sq in"},
    {"mph", 0, "mph"},       {"psf", 2, "psf"},      {"percent", 1, "%"},
    {"rise_in_12", 2, NULL},
    {"year", 0, ""},         {"sqin_per_ft", 1, "sq in per ft"},             {"nails", 0, "nails"},
    {"layers", 0, "layers"}, {"plies", 0, "plies"},  {"ratio", 0, ""},       {"lb", 1, "lb"},
    {"usd", 0, "USD"},       {"lb_per_square", 1, "lb per square"},          {"days", 0, "days"},
    {"months", 0, "months"},                         {"hours", 0, "hours"},
    {"count", 0, ""},        {"perm", 2, "perm"},    {"squares", 2, "squares"},
    {"cuyd", 2, "cu yd"},    {"cfm", 0, "cfm"},       {"loads", 0, "loads"},
    {"courses", 0, "courses"}, {"date", 0, ""},      {"gage", 0, "gage"},    {"F", 1, "F"},
};
/* clang-format on */

/* NULL for none, and for no unit at all. */
static const struct unit *unit_find(const char *unit)
{
    if (unit != NULL)
        for (size_t i = 0; i < sizeof(UNITS) / sizeof(UNITS[0]); i++)
            if (UNITS[i].name[0] == unit[0] && strcmp(UNITS[i].name, unit) == 0)
                return &UNITS[i];
    return NULL;
}

/* A unit that nobody knows prints as exactly as inches do. */
int number_decimals(const char *unit)
{
    const struct unit *known = unit_find(unit);
    return known == NULL ? 3 : known->decimals;
}

double number_tolerance(const char *unit)
{
    return 0.5 * pow(10, -number_decimals(unit));
}

/* Part of a unit that is told in whole numbers, as somebody wrote it: four and a
 * half nails. 129.73 mph came of arithmetic, 129.5 mph did not. */
static bool is_written_part(double value, const char *unit)
{
    const double hundredths = value * 100;
    return number_decimals(unit) == 0 && value != round(value)
           && fabs(hundredths - round(hundredths)) < 1e-6;
}

double number_rounded(double value, const char *unit)
{
    if (is_written_part(value, unit))
        return value;
    const double scale = pow(10, number_decimals(unit));
    const double rounded = round(value * scale) / scale;
    return rounded == 0 ? 0 : rounded; /* no negative zero */
}

/* The tolerance is closed: a sum that lands a rounding error beyond the half
 * digit must not decide an inspection. A part of a whole unit prints as it is, so
 * it is compared as it is. */
static double slack(double found, double limit, const char *unit)
{
    if (is_written_part(found, unit) || is_written_part(limit, unit))
        return 1e-9 * (1 + fabs(limit));
    return number_tolerance(unit) * (1 + 1e-9);
}

bool number_at_least(double found, double limit, const char *unit)
{
    return found >= limit - slack(found, limit, unit);
}

bool number_at_most(double found, double limit, const char *unit)
{
    return found <= limit + slack(found, limit, unit);
}

bool number_equals(double found, double limit, const char *unit)
{
    return fabs(found - limit) <= slack(found, limit, unit);
}

/* A hand is 4 in. The bound is moved by half a printed digit before it is rounded, so
 * that one which prints as a sixteenth already stays there. */
double number_on_tape(double limit, enum sense sense, const char *unit)
{
    enum { PARTS = 16, HAND_IN = 4 };
    if (unit == NULL || strcmp(unit, "in") != 0 || !(limit >= HAND_IN))
        return limit;
    if (sense == SENSE_AT_LEAST)
        return ceil((limit - number_tolerance(unit)) * PARTS) / PARTS;
    return sense == SENSE_AT_MOST ? floor((limit + number_tolerance(unit)) * PARTS) / PARTS : limit;
}

/* From its least digit; a comma after each three of those before the point. Returns where
 * they begin. */
static char *write_whole(uint64_t whole, bool grouped, char *end)
{
    for (int digits = 0; digits == 0 || whole > 0; digits++, whole /= 10) {
        if (grouped && digits > 0 && digits % 3 == 0)
            *--end = ',';
        *--end = (char)('0' + whole % 10);
    }
    return end;
}

/* With its point, and no zeros at the end: "22.5", "6". */
static char *write_parts(uint64_t parts, int decimals, char *end)
{
    char *at = end;
    for (int i = 0; i < decimals; i++, parts /= 10) {
        if (at < end || parts % 10 > 0)
            *--at = (char)('0' + parts % 10);
    }
    if (at < end)
        *--at = '.';
    return at;
}

static const uint64_t SCALES[] = {1, 10, 100, 1000}; /* by decimals */

void number_write(double value, const char *unit, char out[64])
{
    const double rounded = number_rounded(value, unit);
    const int decimals = is_written_part(rounded, unit) ? 2 : number_decimals(unit);
    /* Past 15 digits a double's last ones are not the writer's. */
    if (!isfinite(rounded) || fabs(rounded) >= 1e15) {
        snprintf(out, 64, "%g", rounded);
        return;
    }
    double whole;
    const double part = modf(fabs(rounded), &whole) * (double)SCALES[decimals];
    const uint64_t all = (uint64_t)whole * SCALES[decimals] + (uint64_t)llrint(part);
    char digits[64], *const end = digits + sizeof(digits);
    /* A year is a number without separators. */
    const bool grouped = unit == NULL || strcmp(unit, "year") != 0;
    char *start = write_parts(all % SCALES[decimals], decimals, end);
    start = write_whole(all / SCALES[decimals], grouped, start);
    if (rounded < 0)
        *--start = '-';
    memcpy(out, start, (size_t)(end - start));
    out[end - start] = '\0';
}

/* Units that are nouns in the plural, and lose their s at 1. */
static bool counts_things(const char *unit)
{
    static const char *const COUNTED[] = {"layers", "nails",   "plies", "days",   "months",
                                          "hours",  "squares", "loads", "courses"};
    for (size_t i = 0; i < sizeof(COUNTED) / sizeof(COUNTED[0]); i++)
        if (strcmp(COUNTED[i], unit) == 0)
            return true;
    return false;
}

/* Inches on a tape come in halves down to 32nds: 0.4375 is written 7/16. False
 * when the value is no such fraction, to within what prints. */
static bool write_fraction(double value, char out[64])
{
    const double parts = round(fabs(value) * 32);
    /* Not for lengths that no tape has, nor where the last printed digit would change; and 0 is
     * "0". */
    if (!(parts < 32 * 10000) || fabs(fabs(value) * 32 - parts) > 32 * 0.0005 || parts == 0)
        return false;
    int whole = (int)parts / 32, top = (int)parts % 32, bottom = 32;
    if (top == 0)
        return false;
    for (; top % 2 == 0; top /= 2)
        bottom /= 2;
    const char *sign = value < 0 ? "-" : "";
    if (whole > 0)
        snprintf(out, 64, "%s%d %d/%d", sign, whole, top, bottom);
    else
        snprintf(out, 64, "%s%d/%d", sign, top, bottom);
    return true;
}

void number_write_unit(double value, const char *unit, char out[96])
{
    char digits[64];
    if (unit == NULL || strcmp(unit, "in") != 0 || !write_fraction(value, digits))
        number_write(value, unit, digits);
    if (unit != NULL && strcmp(unit, "rise_in_12") == 0) {
        /* Low slopes are named by the eighth, 1/8:12, which two decimals cut. */
        if (fabs(value) < 1 && value * 8 == round(value * 8))
            write_fraction(value, digits);
        snprintf(out, 96, "%s:12", digits);
        return;
    }
    if (unit != NULL && strcmp(unit, "date") == 0) {
        date_write((long)value, out);
        return;
    }
    const struct unit *known = unit_find(unit);
    const char *written = known != NULL && known->written != NULL ? known->written : unit;
    if (written == NULL || written[0] == '\0') {
        snprintf(out, 96, "%s", digits);
    } else if (strcmp(digits, "1") == 0 && unit != NULL && counts_things(unit)) {
        if (strcmp(unit, "plies") == 0)
            snprintf(out, 96, "1 ply");
        else
            snprintf(out, 96, "1 %.*s", (int)strlen(written) - 1, written);
    } else {
        snprintf(out, 96, "%s %s", digits, written);
    }
}
