#include "job/slope.h"

#include <ctype.h>
#include <math.h>
#include <stddef.h>
#include <stdio.h>
#include <string.h>

enum { WHOLE_DIGITS = 4, DECIMALS = 6 };

/* Reads digits with at most WHOLE_DIGITS before and DECIMALS after the point,
 * no needless leading zero. Ten digits and a power of ten are both exact, so
 * the division rounds once; and no locale has a say, as in strtod it would. */
static const char *read_number(const char *at, double *number)
{
    const char *from = at;
    double digits = 0, scale = 1;
    while (isdigit((unsigned char)*at))
        digits = digits * 10 + (*at++ - '0');
    const ptrdiff_t whole = at - from;
    if (whole < 1 || whole > WHOLE_DIGITS || (whole > 1 && from[0] == '0'))
        return NULL;
    if (*at == '.') {
        from = ++at;
        for (; isdigit((unsigned char)*at); scale *= 10)
            digits = digits * 10 + (*at++ - '0');
        if (at - from < 1 || at - from > DECIMALS)
            return NULL;
    }
    *number = digits / scale;
    return at;
}

/* A number without a point. */
static const char *read_whole(const char *at, double *number)
{
    const char *after = read_number(at, number);
    const bool whole = after != NULL && memchr(at, '.', (size_t)(after - at)) == NULL;
    return whole ? after : NULL;
}

/* "1/2" to "15/16", in lowest terms: what a rule or a square shows. */
static const char *read_fraction(const char *at, double *part)
{
    double top = 0, bottom = 0;
    at = read_whole(at, &top);
    if (at == NULL || *at != '/')
        return NULL;
    at = read_whole(at + 1, &bottom);
    const bool shown = at != NULL && fmod(top, 2) == 1 && top < bottom
                       && (bottom == 2 || bottom == 4 || bottom == 8 || bottom == 16);
    *part = shown ? top / bottom : 0;
    return shown ? at : NULL;
}

/* "1/4" or "4 1/2"; NULL when it is neither. */
static const char *read_mixed(const char *at, double *rise)
{
    double whole = 0, part = 0;
    const char *after = read_fraction(at, rise);
    if (after != NULL)
        return after;
    at = read_whole(at, &whole);
    if (at == NULL || (*at != ' ' && *at != '-'))
        return NULL;
    after = read_fraction(at + 1, &part);
    *rise = whole + part;
    return after;
}

/* After "5": ":12", " in 12" or " on 12". */
static bool read_run(const char *at, double *run)
{
    if (*at == ':')
        at++;
    else if (strncmp(at, " in ", 4) == 0 || strncmp(at, " on ", 4) == 0)
        at += 4;
    else
        return false;
    at = read_number(at, run);
    return at != NULL && *at == '\0' && *run >= 1;
}

/* As written when in 12: 1.9 * 12 / 12 would come out a hair below 1.9. */
static double in_12(double rise, double run)
{
    return run == 12 ? rise : rise * 12 / run;
}

static bool is_degrees(const char *word)
{
    return strcmp(word, "deg") == 0 || strcmp(word, "degrees") == 0
           || strcmp(word, "\xC2\xB0") == 0;
}

bool slope_parse(const char *text, double *rise)
{
    const double pi = 3.14159265358979323846;
    double number = 0, run = 0;
    /* Mixed numbers first: "4 1/2:12" would else stop at its space. */
    const char *at = read_mixed(text, &number);
    if (at != NULL && read_run(at, &run)) {
        *rise = in_12(number, run);
        return true;
    }
    at = read_number(text, &number);
    if (at == NULL)
        return false;
    if (strcmp(at, "/12") == 0 || read_run(at, &run)) {
        *rise = in_12(number, run == 0 ? 12 : run);
        return true;
    }
    /* One space before the sign, as the catalogue's pattern allows. */
    at += *at == ' ';
    if (strcmp(at, "%") == 0) {
        *rise = number * 12 / 100;
        return true;
    }
    if (!is_degrees(at) || number >= 90)
        return false;
    *rise = 12 * tan(number * pi / 180);
    return true;
}

bool slope_has_two_readings(const char *text, char why[SLOPE_WHY])
{
    double number = 0, run = 0;
    const char *at = read_number(text, &number);
    if (at != NULL && *at == '\0' && number < 90) {
        snprintf(why, SLOPE_WHY, "could be %s:12, %s degrees or %s percent; write which", text,
                 text, text);
        return true;
    }
    if (at == NULL || *at != '/' || (at = read_number(at + 1, &run)) == NULL || *at != '\0')
        return false;
    /* "12/4" is no rise in a longer run: there is one reading, and it is no slope. */
    if (number >= run)
        return false;
    snprintf(why, SLOPE_WHY,
             "could be %s inch in 12 (%s:12) or %.6g in %.6g (%.6g:12); write which", text, text,
             number, run, in_12(number, run));
    return true;
}
