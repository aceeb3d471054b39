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

/* By decimals. */
static const double SCALES[] = {1, 10, 100, 1000}, LAST_DIGITS[] = {1, 0.1, 0.01, 0.001};

/* A unit that nobody knows prints as exactly as inches do. */
static int decimals_of(const struct unit *known)
{
    return known == NULL ? 3 : known->decimals;
}

int number_decimals(const char *unit)
{
    return decimals_of(unit_find(unit));
}

static double tolerance_of(int decimals)
{
    return 0.5 * LAST_DIGITS[decimals];
}

double number_tolerance(const char *unit)
{
    return tolerance_of(number_decimals(unit));
}

/* Part of a unit that is told in whole numbers, as somebody wrote it: four and a
 * half nails. 129.73 mph came of arithmetic, 129.5 mph did not. */
static bool is_written_part(double value, int decimals)
{
    const double hundredths = value * 100;
    return decimals == 0 && value != round(value) && fabs(hundredths - round(hundredths)) < 1e-6;
}

static double rounded_to(double value, int decimals)
{
    if (is_written_part(value, decimals))
        return value;
    const double rounded = round(value * SCALES[decimals]) / SCALES[decimals];
    return rounded == 0 ? 0 : rounded; /* no negative zero */
}

double number_rounded(double value, const char *unit)
{
    return rounded_to(value, number_decimals(unit));
}

/* The tolerance is closed: a sum that lands a rounding error beyond the half
 * digit must not decide an inspection. A part of a whole unit prints as it is, so
 * it is compared as it is. */
static double slack(double found, double limit, const char *unit)
{
    const int decimals = number_decimals(unit);
    if (is_written_part(found, decimals) || is_written_part(limit, decimals))
        return 1e-9 * (1 + fabs(limit));
    return tolerance_of(decimals) * (1 + 1e-9);
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

/* Digits end there; cut off where they do not fit. Returns how many bytes were written. */
static size_t put(char *out, size_t room, const char *text, size_t length)
{
    const size_t fits = length < room ? length : room - 1;
    memcpy(out, text, fits);
    out[fits] = '\0';
    return fits;
}

static size_t write_number(double value, const struct unit *known, char out[64])
{
    const int usual = decimals_of(known);
    const double rounded = rounded_to(value, usual);
    const int decimals = is_written_part(rounded, usual) ? 2 : usual;
    /* Past 15 digits a double's last ones are not the writer's. */
    if (!isfinite(rounded) || fabs(rounded) >= 1e15)
        return (size_t)snprintf(out, 64, "%g", rounded);
    const uint64_t scale = (uint64_t)SCALES[decimals];
    double whole;
    const double part = modf(fabs(rounded), &whole) * (double)scale;
    const uint64_t all = (uint64_t)whole * scale + (uint64_t)llrint(part);
    char digits[64], *const end = digits + sizeof(digits);
    /* A year is a number without separators. */
    const bool grouped = known == NULL || strcmp(known->name, "year") != 0;
    char *start = write_parts(all % scale, decimals, end);
    start = write_whole(all / scale, grouped, start);
    if (rounded < 0)
        *--start = '-';
    return put(out, 64, start, (size_t)(end - start));
}

void number_write(double value, const char *unit, char out[64])
{
    write_number(value, unit_find(unit), out);
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

/* Inches on a tape come in halves down to 32nds: 0.4375 is written 7/16. 0 when the value is
 * no such fraction, to within what prints; else how many bytes were written. */
static size_t write_fraction(double value, char out[64])
{
    const double parts = round(fabs(value) * 32);
    /* Not for lengths that no tape has, nor where the last printed digit would change; and 0 is
     * "0". */
    if (!(parts < 32 * 10000) || fabs(fabs(value) * 32 - parts) > 32 * 0.0005 || parts == 0)
        return 0;
    unsigned whole = (unsigned)parts / 32, top = (unsigned)parts % 32, bottom = 32;
    if (top == 0)
        return 0;
    for (; top % 2 == 0; top /= 2)
        bottom /= 2;
    char digits[64], *const end = digits + sizeof(digits);
    char *start = write_whole(bottom, false, end);
    *--start = '/';
    start = write_whole(top, false, start);
    if (whole > 0) {
        *--start = ' ';
        start = write_whole(whole, false, start);
    }
    if (value < 0)
        *--start = '-';
    return put(out, 64, start, (size_t)(end - start));
}

static void write_slope(double value, const struct unit *known, char out[96])
{
    /* Low slopes are named by the eighth, 1/8:12, which two decimals cut. */
    size_t length = fabs(value) < 1 && value * 8 == round(value * 8) ? write_fraction(value, out)
                                                                     : 0;
    if (length == 0)
        length = write_number(value, known, out);
    put(out + length, 96 - length, ":12", 3);
}

void number_write_unit(double value, const char *unit, char out[96])
{
    const struct unit *known = unit_find(unit);
    const char *written = known != NULL && known->written != NULL ? known->written : unit;
    if (unit != NULL && strcmp(unit, "rise_in_12") == 0) {
        write_slope(value, known, out);
        return;
    }
    if (unit != NULL && strcmp(unit, "date") == 0) {
        date_write((long)value, out);
        return;
    }
    size_t length = unit != NULL && strcmp(unit, "in") == 0 ? write_fraction(value, out) : 0;
    if (length == 0)
        length = write_number(value, known, out);
    if (written == NULL || written[0] == '\0')
        return;
    size_t unit_length = strlen(written);
    if (length == 1 && out[0] == '1' && counts_things(unit)) {
        written = strcmp(unit, "plies") == 0 ? "ply" : written;
        unit_length = strcmp(unit, "plies") == 0 ? 3 : unit_length - 1;
    }
    out[length++] = ' ';
    put(out + length, 96 - length, written, unit_length);
}
