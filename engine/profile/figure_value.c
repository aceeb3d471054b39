#include "profile/figure_value.h"

#include "base/date.h"
#include "base/measure.h"
#include "base/number.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

/* What a unit can hold, whatever is measured in it. Sizes of things, not figures of a code:
 * a speed of 1,150 mph is a slip, whoever demands it. */
/* clang-format off */
static const struct {
    const char *unit;
    bool whole;
    double least, most;
} UNITS[] = {
    {"nails", true, 0, 1e6},  {"layers", true, 0, 20},   {"plies", true, 0, 20},
    {"count", true, 0, 1e6},  {"courses", true, 0, 1e4}, {"loads", true, 0, 1e4},
    {"days", true, 0, 36525}, {"months", true, 0, 1200}, {"years", true, 0, 200},
    {"hours", false, 0, 8784}, {"year", true, 1700, 2199}, {"gage", true, 1, 50},
    {"date", true, 0, 99991231},
    {"mph", false, 0, 400},   {"psf", false, 0, 1000},   {"in", false, 0, 3600},
    {"ft", false, 0, 30000},  {"percent", false, 0, 1000}, {"rise_in_12", false, 0, 120},
    {"ratio", false, 1, 1e5}, {"reflectance", false, 0, 1}, {"emittance", false, 0, 1},
    {"F", false, -100, 1000}, {"degrees", false, -180, 360},
    {"coefficient", false, -100, 1e6}, {"exponent", false, -100, 100},
};
/* clang-format on */

/* Days are written as numbers, 20260302; 0 is none. */
static bool is_no_day(double number)
{
    char written[16];
    if (number == 0)
        return false;
    if (!(number >= 10000101 && number <= 99991231))
        return true;
    date_write((long)number, written);
    return (double)date_parse(written) != number;
}

static bool number_fits(double number, const char *unit, char why[FIGURE_WHY])
{
    if (unit != NULL && strcmp(unit, "date") == 0 && is_no_day(number)) {
        snprintf(why, FIGURE_WHY,
                 "is no day: write 20260302, or \"2026-03-02\", for the second of March 2026");
        return false;
    }
    for (size_t i = 0; unit != NULL && i < sizeof(UNITS) / sizeof(UNITS[0]); i++) {
        if (strcmp(unit, UNITS[i].unit) != 0)
            continue;
        if (UNITS[i].whole && number != floor(number)) {
            snprintf(why, FIGURE_WHY,
                     "is %.6g, but %s are whole: write the whole number that "
                     "the section says",
                     number, unit);
            return false;
        }
        if (number >= UNITS[i].least && number <= UNITS[i].most)
            return true;
        snprintf(why, FIGURE_WHY,
                 "is %.10g, which in the unit %s cannot be meant: it goes from %.10g to %.10g",
                 number, unit, UNITS[i].least, UNITS[i].most);
        return false;
    }
    if (number >= 0)
        return true;
    snprintf(why, FIGURE_WHY,
             "is %.10g, less than nothing: for no limit, drop the rule or turn "
             "its switch off",
             number);
    return false;
}

/* "4:12", also "4 in 12" and "4/12". */
static bool read_slope(const char *words, double *rise)
{
    static const char *const RUNS[] = {":12", " in 12", "/12"};
    const size_t length = strlen(words);
    char copy[64], why[MEASURE_WHY];
    for (size_t i = 0; i < sizeof(RUNS) / sizeof(RUNS[0]); i++) {
        const size_t run = strlen(RUNS[i]);
        if (length <= run || length - run >= sizeof(copy)
            || strcmp(words + length - run, RUNS[i]) != 0)
            continue;
        snprintf(copy, sizeof(copy), "%.*s", (int)(length - run), words);
        return measure_read(copy, NULL, rise, why);
    }
    return false;
}

/* Rounding to a millionth shows where a conversion did not come out even: 4 in are no exact
 * part of a foot. Sixty-fourths are. */
static bool came_out_even(double number)
{
    return fabs(number * 1e5 - round(number * 1e5)) < 1e-6 || number * 64 == floor(number * 64);
}

/* The number that the words say in the unit. */
static bool read_words(const char *words, const char *unit, double *number, char why[FIGURE_WHY])
{
    char reason[MEASURE_WHY];
    if (unit != NULL && strcmp(unit, "date") == 0) {
        *number = (double)date_parse(words);
        if (*number != 0)
            return true;
        snprintf(why, FIGURE_WHY, "is \"%.40s\", no day: write \"2026-03-02\"", words);
        return false;
    }
    if (unit != NULL && strcmp(unit, "rise_in_12") == 0) {
        if (read_slope(words, number))
            return true;
        snprintf(why, FIGURE_WHY, "is \"%.40s\", no slope: write \"4:12\"", words);
        return false;
    }
    if (!measure_read(words, unit, number, reason)) {
        snprintf(why, FIGURE_WHY, "is \"%.40s\", %s", words, reason);
        return false;
    }
    if (came_out_even(*number))
        return true;
    snprintf(why, FIGURE_WHY,
             "is \"%.40s\", which does not come out even in the unit %s: write "
             "it in that unit",
             words, unit == NULL ? "asked for" : unit);
    return false;
}

/* One value; its kind as the figure's, where there is one followed. */
static bool settle_value(struct value *value, const struct figure *followed, const char *unit,
                         char why[FIGURE_WHY])
{
    const enum value_kind wanted = followed == NULL ? VALUE_NUMBER : followed->value.kind;
    if (value->kind == VALUE_TEXT && wanted == VALUE_SET) {
        snprintf(why, FIGURE_WHY, "is a set: write it in braces of its own, { { \"%.40s\" }, ... }",
                 value->text);
        return false;
    }
    if (value->kind == VALUE_TEXT && wanted == VALUE_YES_NO) {
        snprintf(why, FIGURE_WHY, "is yes or no: write true or false, without quotes");
        return false;
    }
    if (value->kind == VALUE_TEXT) {
        if (!read_words(value->text, unit, &value->number, why))
            return false;
        value->kind = VALUE_NUMBER;
        value->text = NULL;
    }
    return value->kind != VALUE_NUMBER || wanted != VALUE_NUMBER
           || number_fits(value->number, unit, why);
}

/* "a, b, c" as far as it goes. */
static void list_members(const struct value *set, char out[160])
{
    out[0] = '\0';
    for (size_t i = 0; i < set->set_count && strlen(out) < 120; i++) {
        const size_t used = strlen(out);
        snprintf(out + used, 160 - used, "%s%.30s", i == 0 ? "" : ", ", set->set[i]);
    }
}

/* What is there already is not added, and what is not there is not left out: either way the
 * writer thinks of another set. */
static bool members_fit(const struct entry *entry, const struct value *old, char why[FIGURE_WHY])
{
    char holds[160];
    list_members(old, holds);
    for (size_t i = 0; i < entry->adds.set_count; i++) {
        if (!profile_set_has(old, entry->adds.set[i]))
            continue;
        snprintf(why, FIGURE_WHY, "adds \"%.60s\", which it holds already: %s", entry->adds.set[i],
                 holds);
        return false;
    }
    for (size_t i = 0; i < entry->without.set_count; i++) {
        if (profile_set_has(old, entry->without.set[i]))
            continue;
        snprintf(why, FIGURE_WHY,
                 "is to be without \"%.60s\", which it does not hold; it holds: %s",
                 entry->without.set[i], holds);
        return false;
    }
    return true;
}

/* The set followed, with what is added and without what is left out. */
static bool settle_set(struct entry *entry, const struct figure *followed, struct arena *arena,
                       char why[FIGURE_WHY])
{
    if (entry->value.kind != VALUE_NONE || followed == NULL || followed->value.kind != VALUE_SET) {
        snprintf(why, FIGURE_WHY,
                 "says adds or without, which go with a set that is followed, "
                 "and in place of a value");
        return false;
    }
    const struct value *old = &followed->value;
    if (!members_fit(entry, old, why))
        return false;
    const char **set = arena_array(arena, old->set_count + entry->adds.set_count + 1, sizeof(*set));
    if (set == NULL)
        return true; /* out of memory, which the arena keeps */
    entry->value = (struct value){.kind = VALUE_SET, .set = set};
    for (size_t i = 0; i < old->set_count; i++)
        if (!profile_set_has(&entry->without, old->set[i]))
            set[entry->value.set_count++] = old->set[i];
    for (size_t i = 0; i < entry->adds.set_count; i++)
        set[entry->value.set_count++] = entry->adds.set[i];
    return true;
}

bool figure_value_settle(struct entry *entry, const struct figure *followed, struct arena *arena,
                         char why[FIGURE_WHY])
{
    const char *unit = entry->value.unit != NULL || followed == NULL ? entry->value.unit
                                                                     : followed->value.unit;
    if ((entry->adds.kind == VALUE_SET || entry->without.kind == VALUE_SET)
        && !settle_set(entry, followed, arena, why))
        return false;
    return settle_value(&entry->value, followed, unit, why)
           && settle_value(&entry->rival, followed, unit, why)
           && settle_value(&entry->also, followed, unit, why);
}
