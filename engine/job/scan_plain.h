/* scan_plain.h - values as nearly all are, read without a call each: texts of plain characters,
 * numbers of few digits, true, false and null. What is otherwise is left to scan_token.c.
 */
#ifndef EAVEMARK_JOB_SCAN_PLAIN_H
#define EAVEMARK_JOB_SCAN_PLAIN_H

#include "job/scan.h"

#include <stdint.h>
#include <string.h>

/* The highest bit of each of the eight bytes there that is no plain character: a control
 * character, a quote, a backslash, DEL or no ASCII. Only the lowest such bit is sure. The first
 * byte is the lowest, whatever the machine's own order. */
static inline uint64_t scan_special(const char *text)
{
    const unsigned char *at = (const unsigned char *)text;
    const uint64_t eight = (uint64_t)at[0] | (uint64_t)at[1] << 8 | (uint64_t)at[2] << 16
                           | (uint64_t)at[3] << 24 | (uint64_t)at[4] << 32 | (uint64_t)at[5] << 40
                           | (uint64_t)at[6] << 48 | (uint64_t)at[7] << 56;
    const uint64_t ones = UINT64_MAX / 0xFF, highest = ones * 0x80;
    const uint64_t quote = eight ^ (ones * '"'), slash = eight ^ (ones * '\\');
    /* A byte less n borrows into its highest bit where it was smaller; what it borrowed from
     * those behind makes them doubtful. */
    const uint64_t smaller = ((eight - ones * ' ') & ~eight) | ((quote - ones) & ~quote)
                             | ((slash - ones) & ~slash);
    return (smaller | eight | (eight + ones)) & highest;
}

/* The length of true, false or null; 0 for anything else. */
static inline size_t scan_plain_word(const char *at, const char *end)
{
    const size_t length = *at == 'f' ? 5 : 4;
    const char *const ending = *at == 't' ? "true" : *at == 'f' ? "alse" : "null";
    if ((size_t)(end - at) < length || memcmp(at + length - 4, ending, 4) != 0
        || ((size_t)(end - at) > length && scan_is_word(at[length])))
        return 0;
    return length;
}

static inline bool scan_is_digit(char c)
{
    return c >= '0' && c <= '9';
}

/* Up to 15 digits fit exactly, and so do the powers of ten: one division then rounds once, as
 * strtod does. 0 for what has more digits, an exponent, or is no number; else its length. */
static inline size_t scan_plain_number(const char *at, const char *end, double *value)
{
    static const double TENS[] = {1e0, 1e1, 1e2,  1e3,  1e4,  1e5,  1e6,  1e7,
                                  1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15};
    const char *const begin = at;
    const bool minus = *at == '-';
    const char *const first = at += minus;
    const char *const stop = end - at > 17 ? at + 17 : end;
    int64_t digits = 0;
    for (; at < stop && scan_is_digit(*at); at++)
        digits = digits * 10 + (*at - '0');
    const size_t whole = (size_t)(at - first);
    size_t broken = 0;
    if (at < stop && *at == '.') {
        for (at++; at < stop && scan_is_digit(*at); at++, broken++)
            digits = digits * 10 + (*at - '0');
        if (broken == 0)
            return 0;
    }
    if (whole == 0 || whole + broken > 15 || (*first == '0' && whole > 1)
        || (at < end && scan_is_word(*at)))
        return 0;
    *value = broken == 0 ? (double)digits : (double)digits / TENS[broken];
    if (minus)
        *value = -*value;
    return (size_t)(at - begin);
}

#endif
