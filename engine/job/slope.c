#include "job/slope.h"

#include <ctype.h>
#include <math.h>
#include <stddef.h>
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

/* After "5": ":12", "/12" or " in 12". */
static bool read_run(const char *at, double *run)
{
    if (*at == ':' || *at == '/')
        at++;
    else if (strncmp(at, " in ", 4) == 0)
        at += 4;
    else
        return false;
    at = read_number(at, run);
    return at != NULL && *at == '\0' && *run >= 1;
}

bool slope_parse(const char *text, double *rise)
{
    const double pi = 3.14159265358979323846;
    double number = 0, run = 0;
    const char *at = read_number(text, &number);
    if (at == NULL)
        return false;
    if (read_run(at, &run)) {
        /* As written when in 12: 1.9 * 12 / 12 would come out a hair below 1.9. */
        *rise = run == 12 ? number : number * 12 / run;
        return true;
    }
    at += *at == ' ';
    if (strcmp(at, "%") == 0) {
        *rise = number * 12 / 100;
        return true;
    }
    if ((strcmp(at, "deg") != 0 && strcmp(at, "degrees") != 0) || number >= 90)
        return false;
    *rise = 12 * tan(number * pi / 180);
    return true;
}
