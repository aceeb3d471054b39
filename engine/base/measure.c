#include "base/measure.h"

#include "base/measure_parts.h"
#include "base/number.h"

#include <ctype.h>
#include <math.h>
#include <stddef.h>
#include <stdio.h>
#include <string.h>
#include <strings.h>

enum { WORD_MOST = 24, TERMS_MOST = 2, LONGEST = 256 };

static const char NO_FIGURE[] =
    "no figure that can be read; write one such as 5.5, 7/16, 1 1/4 or 12'6\"";

/* What people write beside a number (inch and foot marks also as typographic quotes and
 * primes, in UTF-8), and the unit the catalogue has for it. */
/* clang-format off */
static const struct {
    const char *word, *unit;
} WORDS[] = {
    {"\"", "in"},       {"''", "in"},          {"\xE2\x80\xB3", "in"}, {"\xE2\x80\x9D", "in"},
    {"inch", "in"},     {"inches", "in"},      {"'", "ft"},            {"\xE2\x80\xB2", "ft"},
    {"\xE2\x80\x99", "ft"}, {"foot", "ft"},    {"feet", "ft"},         {"sq ft", "sqft"},
    {"sf", "sqft"},     {"square feet", "sqft"}, {"sq in", "sqin"},    {"square inches", "sqin"},
    {"%", "percent"},   {"lbs", "lb"},         {"pounds", "lb"},       {"dollars", "usd"},
    {"$", "usd"},       {"gauge", "gage"},     {"ga", "gage"},         {"deg F", "F"},
    {"square", "squares"}, {"yard", "yd"},     {"yards", "yd"},        {"ounce", "oz"},
    {"ounces", "oz"},   {"cu yd", "cuyd"},     {"cubic yards", "cuyd"},
    {"lb/square", "lb_per_square"},
};
/* clang-format on */

/* How many of the smaller unit make one of the larger. */
static const struct {
    const char *larger, *smaller;
    double factor;
} CONVERSIONS[] = {
    {"ft", "in", 12}, {"sqft", "sqin", 144}, {"yd", "ft", 3},  {"squares", "sqft", 100},
    {"yd", "in", 36}, {"in", "mil", 1000},   {"lb", "oz", 16},
};

struct measured {
    double number;
    bool fraction;
    char unit[WORD_MOST]; /* "" when none was written */
};

/* Numbers ------------------------------------------------------------------- */

const char *measure_skip_spaces(const char *at)
{
    return at + strspn(at, " ");
}

/* Digits, with commas between groups of three when `grouped`. NULL for none. */
const char *measure_whole(const char *at, double *number, int *digits)
{
    const char *from = at;
    *number = 0;
    *digits = 0;
    while (isdigit((unsigned char)*at) || *at == ',') {
        if (*at == ',') {
            const bool group = at - from >= 1 && at - from <= 3 && isdigit((unsigned char)at[1])
                               && isdigit((unsigned char)at[2]) && isdigit((unsigned char)at[3])
                               && !isdigit((unsigned char)at[4]);
            if (!group)
                return NULL;
            from = ++at;
            continue;
        }
        *number = *number * 10 + (*at++ - '0');
        if (++*digits > MEASURE_DIGITS_MOST)
            return NULL;
    }
    return at;
}

/* "12", "1,250", "5.5", ".5"; NULL when there is no number. */
const char *measure_decimal(const char *at, double *number)
{
    int digits = 0;
    at = measure_whole(at, number, &digits);
    if (at == NULL)
        return NULL;
    double scale = 1;
    int decimals = 0;
    if (*at == '.' && isdigit((unsigned char)at[1])) {
        /* The digits are gathered as a whole number and divided once, so that 5.1 is the
         * double nearest to 5.1. */
        for (at++; isdigit((unsigned char)*at); scale *= 10, decimals++)
            *number = *number * 10 + (*at++ - '0');
    }
    if (digits + decimals == 0 || digits + decimals > MEASURE_DIGITS_MOST)
        return NULL;
    *number /= scale;
    return at;
}

/* "7/16" here; NULL when there is none, or it is none that makes sense. */
static const char *read_fraction(const char *at, double *value, bool proper)
{
    double top = 0, bottom = 0;
    int digits = 0;
    at = measure_whole(at, &top, &digits);
    if (at == NULL || digits == 0 || *at != '/')
        return NULL;
    at = measure_whole(at + 1, &bottom, &digits);
    if (at == NULL || digits == 0 || bottom == 0 || (proper && top >= bottom))
        return NULL;
    *value = top / bottom;
    return at;
}

/* A number, a fraction, or a whole number and a fraction. */
static const char *read_number(const char *at, struct measured *quantity)
{
    double part = 0;
    const char *after = read_fraction(at, &quantity->number, false);
    if (after != NULL) {
        quantity->fraction = true;
        return after;
    }
    at = measure_decimal(at, &quantity->number);
    if (at == NULL || floor(quantity->number) != quantity->number)
        return at;
    /* "1 1/4" and "1-1/4" are one number; "11/4" was read as a fraction above. */
    const char *next = *at == '-' ? at + 1 : measure_skip_spaces(at);
    after = next == at ? NULL : read_fraction(next, &part, true);
    if (after == NULL)
        return at;
    quantity->number += part;
    quantity->fraction = true;
    return after;
}

/* Units --------------------------------------------------------------------- */

/* The unit by what was written for it; the word itself when it is not known. */
static void settle_unit(struct measured *quantity, const char *word, size_t length)
{
    if (length >= WORD_MOST)
        length = WORD_MOST - 1;
    snprintf(quantity->unit, WORD_MOST, "%.*s", (int)length, word);
    for (size_t i = 0; i < sizeof(WORDS) / sizeof(WORDS[0]); i++)
        if (strcasecmp(quantity->unit, WORDS[i].word) == 0)
            snprintf(quantity->unit, WORD_MOST, "%s", WORDS[i].unit);
}

/* What stands up to the next digit, without spaces at its ends. */
static const char *read_unit(const char *at, struct measured *quantity)
{
    const char *word = measure_skip_spaces(at);
    size_t length = strcspn(word, "0123456789");
    const char *after = word + length;
    if (length > 0 && word[length - 1] == '.' && *after != '\0')
        length--, after--; /* of ".5" */
    while (length > 0
           && (word[length - 1] == ' ' || word[length - 1] == ',' || word[length - 1] == '-'
               || word[length - 1] == '.'))
        length--;
    settle_unit(quantity, word, length);
    return after;
}

/* The same unit as written, a trailing s apart. */
static bool same_unit(const char *a, const char *b)
{
    const size_t la = strlen(a), lb = strlen(b);
    const size_t na = la - (la > 1 && a[la - 1] == 's'), nb = lb - (lb > 1 && b[lb - 1] == 's');
    return na == nb && strncasecmp(a, b, na) == 0;
}

/* What one of `from` is in `to`; 0 when they measure different things. */
static double factor_between(const char *from, const char *to)
{
    if (same_unit(from, to))
        return 1;
    for (size_t i = 0; i < sizeof(CONVERSIONS) / sizeof(CONVERSIONS[0]); i++) {
        if (strcmp(from, CONVERSIONS[i].larger) == 0 && strcmp(to, CONVERSIONS[i].smaller) == 0)
            return CONVERSIONS[i].factor;
        if (strcmp(from, CONVERSIONS[i].smaller) == 0 && strcmp(to, CONVERSIONS[i].larger) == 0)
            return 1 / CONVERSIONS[i].factor;
    }
    return 0;
}

/* The unit as reports print it: "1 sq ft" without its 1. */
static void unit_said(const char *unit, char out[96])
{
    char text[96];
    number_write_unit(2, unit, text);
    snprintf(out, 96, "%s", strncmp(text, "2 ", 2) == 0 ? text + 2 : unit);
}

static bool convert_to_unit(const struct measured *quantity, const char *unit, double *value,
                            char why[MEASURE_WHY])
{
    char wanted[96];
    if (quantity->unit[0] == '\0') {
        *value = quantity->number;
        return true;
    }
    if (unit == NULL) {
        snprintf(why, MEASURE_WHY, "\"%s\" after the number; a plain number is asked for",
                 quantity->unit);
        return false;
    }
    unit_said(unit, wanted);
    double factor = factor_between(quantity->unit, unit);
    if (factor == 0 && same_unit(quantity->unit, wanted))
        factor = 1;
    if (factor == 0) {
        const bool gage = strcmp(quantity->unit, "gage") == 0;
        snprintf(why, MEASURE_WHY, "\"%s\" after the number; it is asked for in %s%s",
                 quantity->unit, wanted,
                 gage ? ": a gage is one thickness of wire and another of sheet" : "");
        return false;
    }
    /* Dividing by 12 rounds once, where multiplying by a twelfth rounds twice. */
    *value = factor < 1 ? quantity->number / round(1 / factor) : quantity->number * factor;
    return true;
}

/* Feet, then inches: 12'6", 12 ft 6 in, 12'6. */
static bool join(struct measured terms[TERMS_MOST], const char *unit, double *value,
                 char why[MEASURE_WHY])
{
    struct measured inches = {.fraction = true};
    const bool fits = strcmp(terms[0].unit, "ft") == 0 && terms[1].number < 12
                      && (terms[1].unit[0] == '\0' || strcmp(terms[1].unit, "in") == 0);
    if (!fits) {
        snprintf(why, MEASURE_WHY, "%s", NO_FIGURE);
        return false;
    }
    inches.number = terms[0].number * 12 + terms[1].number;
    snprintf(inches.unit, sizeof(inches.unit), "in");
    return convert_to_unit(&inches, unit, value, why);
}

/* The whole ----------------------------------------------------------------- */

/* Money is written with its sign in front: "$12,000". Before anything but dollars it
 * stays, and is refused as no figure. */
static const char *past_dollar(const char *at, const char *unit)
{
    const bool money = *at == '$' && unit != NULL && strcmp(unit, "usd") == 0;
    return money ? measure_skip_spaces(at + 1) : at;
}

/* Fractions of one letter, as they are pasted: "1\xC2\xBD". False when there is no room. */
static bool spell_fractions(const char *words, char out[LONGEST])
{
    static const struct {
        const char *letter, *spelled;
    } LETTERS[] = {
        {"\xC2\xBC", " 1/4"},     {"\xC2\xBD", " 1/2"},     {"\xC2\xBE", " 3/4"},
        {"\xE2\x85\x9B", " 1/8"}, {"\xE2\x85\x9C", " 3/8"}, {"\xE2\x85\x9D", " 5/8"},
        {"\xE2\x85\x9E", " 7/8"},
    };
    size_t length = 0;
    while (*words != '\0' && length < LONGEST - 5) {
        size_t i = 0, taken = 1;
        while (i < sizeof(LETTERS) / sizeof(LETTERS[0])
               && strncmp(words, LETTERS[i].letter, strlen(LETTERS[i].letter)) != 0)
            i++;
        if (i < sizeof(LETTERS) / sizeof(LETTERS[0])) {
            memcpy(out + length, LETTERS[i].spelled, 4);
            length += 4;
            taken = strlen(LETTERS[i].letter);
        } else {
            out[length++] = *words;
        }
        words += taken;
    }
    out[length] = '\0';
    return *words == '\0';
}

bool measure_read(const char *given, const char *unit, double *value, char why[MEASURE_WHY])
{
    char words[LONGEST];
    struct measured terms[TERMS_MOST] = {{0}};
    if (!spell_fractions(given, words)) {
        snprintf(why, MEASURE_WHY, "%s", NO_FIGURE);
        return false;
    }
    const char *at = past_dollar(measure_skip_spaces(words), unit);
    if (measure_has_two_readings(at, unit, why))
        return false;
    const bool negative = *at == '-' && at[1] != '\0';
    /* A number and its unit, twice at most: 12 ft 6 in. */
    size_t count = 0;
    at += negative;
    while (at != NULL && *at != '\0' && count < TERMS_MOST) {
        at = read_number(at, &terms[count]);
        if (at != NULL)
            at = read_unit(at, &terms[count++]);
    }
    if (at == NULL || *at != '\0' || count == 0) {
        snprintf(why, MEASURE_WHY, "%s", NO_FIGURE);
        return false;
    }
    if (!(count == 1 ? convert_to_unit(&terms[0], unit, value, why)
                     : join(terms, unit, value, why)))
        return false;
    /* What was converted or divided is kept to a millionth; what was typed as a plain
     * number is kept as typed. */
    if (terms[0].fraction || terms[0].unit[0] != '\0')
        *value = round(*value * 1e6) / 1e6;
    if (negative)
        *value = *value == 0 ? 0 : -*value;
    return true;
}
