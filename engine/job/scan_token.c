#include "job/scan.h"

#include "base/utf8.h"
#include "job/scan_plain.h"

#include <ctype.h>
#include <float.h>
#include <locale.h>
#include <math.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

/* cJSON holds a number in 63 characters and cuts longer ones. */
enum { NUMBER_LONGEST = 63 };

/* RFC 8259 section 6: integers beyond +-(2^53 - 1) are not held alike by all;
 * 2^53 itself is also what 2^53 + 1 rounds to. */
static const double NUMBER_MOST = 9007199254740991.0;

/* The code of the four hexadecimal digits at a place; -1 when they are not. */
static long hex_four(const struct scan *scan, size_t at)
{
    if (scan->length - at < 4)
        return -1;
    long code = 0;
    for (size_t i = at; i < at + 4; i++) {
        const int c = tolower((unsigned char)scan->text[i]);
        if (!isxdigit(c))
            return -1;
        code = code * 16 + (c <= '9' ? c - '0' : c - 'a' + 10);
    }
    return code;
}

/* UTF-16 writes a character past U+FFFF as a high half and a low half. */
static bool is_high(long code)
{
    return code >= 0xD800 && code <= 0xDBFF;
}

static bool is_low(long code)
{
    return code >= 0xDC00 && code <= 0xDFFF;
}

/* A backslash, u and four digits, or a pair of them; the backslash is next. */
static bool scan_unicode(struct scan *scan)
{
    const size_t at = scan->at;
    const long code = hex_four(scan, at + 2);
    scan->at += 2;
    if (code < 0) {
        scan_report(scan, at, "\\u needs four hexadecimal digits");
        return false;
    }
    scan->at += 4;
    /* C texts end at a zero: what stands after it would be unseen. */
    if (code == 0) {
        scan_report(scan, at, "\\u0000 is not allowed in a text");
        return false;
    }
    const bool pair = scan->length - scan->at >= 6 && memcmp(scan->text + scan->at, "\\u", 2) == 0
                      && is_low(hex_four(scan, scan->at + 2));
    if (is_low(code) || (is_high(code) && !pair)) {
        scan_report(scan, at, "\\u%.4s is half of a character; its other half is missing",
                    scan->text + at + 2);
        return false;
    }
    if (is_high(code))
        scan->at += 6;
    return true;
}

/* True when it was sound; past it in any case, unless the text ends. */
static bool scan_escape(struct scan *scan)
{
    if (scan->at + 1 == scan->length) {
        scan->at++; /* the text ends here, which the caller reports */
        return false;
    }
    const char c = scan->text[scan->at + 1];
    if (c == 'u')
        return scan_unicode(scan);
    if (c != '\0' && strchr("\"\\/bfnrt", c) != NULL) {
        scan->at += 2;
        return true;
    }
    scan_report(scan, scan->at, "a backslash in a text must be written twice");
    scan->at++;
    return false;
}

/* One character of a text that is neither quote, escape nor line break. */
static bool scan_character(struct scan *scan)
{
    const unsigned char c = (unsigned char)scan->text[scan->at];
    const size_t length = utf8_length((const unsigned char *)scan->text + scan->at,
                                      scan->length - scan->at);
    if (length == 0) {
        scan_report(scan, scan->at, "byte 0x%02X is not UTF-8", c);
        scan->at++;
        return false;
    }
    if (c < 0x20)
        scan_report(scan, scan->at, "control character 0x%02X in a text; write it as \\u%04x", c,
                    c);
    scan->at += length;
    return c >= 0x20;
}

/* Where the run of characters that need no look ends: by far the most are such. */
static size_t past_plain(const struct scan *scan)
{
    size_t at = scan->at;
    for (; scan->length - at >= 8; at += 8) {
        const uint64_t special = scan_special(scan->text + at);
        if (special != 0)
            return at + (size_t)__builtin_ctzll(special) / 8;
    }
    while (at < scan->length && scan->text[at] >= ' ' && scan->text[at] < 0x7F
           && scan->text[at] != '"' && scan->text[at] != '\\')
        at++;
    return at;
}

/* Goes on after a bad character, so that all of a text's faults are listed; a line break
 * is taken for a forgotten quote, and ends the scan. */
bool scan_string(struct scan *scan)
{
    const size_t from = scan->at++;
    bool sound = true;
    while (!scan->stopped && (scan->at = past_plain(scan)) < scan->length) {
        const char c = scan->text[scan->at];
        if (c == '"') {
            scan->at++;
            return sound;
        }
        if (c == '\n' || c == '\r')
            break;
        if (!(c == '\\' ? scan_escape(scan) : scan_character(scan)))
            sound = false;
    }
    if (!scan->stopped)
        scan_report(scan, from, "this text is not closed before the end of the %s",
                    scan->at < scan->length ? "line" : "file");
    scan->stopped = true;
    return false;
}

/* Where the digits end that begin at `at`: `at` itself when there are none. */
static size_t digits_from(const char *word, size_t at)
{
    while (isdigit((unsigned char)word[at]))
        at++;
    return at;
}

/* RFC 8259 section 6: [ minus ] int [ frac ] [ exp ] */
static bool is_number(const char *word)
{
    size_t at = word[0] == '-';
    size_t end = digits_from(word, at);
    /* No leading zeros: "007" is octal to some readers. */
    if (end == at || (word[at] == '0' && end > at + 1))
        return false;
    if (word[end] == '.') {
        at = end + 1;
        end = digits_from(word, at);
        if (end == at)
            return false;
    }
    if (word[end] == 'e' || word[end] == 'E') {
        at = end + 1;
        at += word[at] == '+' || word[at] == '-';
        end = digits_from(word, at);
        if (end == at)
            return false;
    }
    return word[end] == '\0';
}

/* strtod expects the decimal point of the locale the caller may have set. */
static double number_of(const char *word)
{
    char local[NUMBER_LONGEST + 1];
    size_t i = 0;
    for (; word[i] != '\0'; i++)
        local[i] = word[i] == '.' ? localeconv()->decimal_point[0] : word[i];
    local[i] = '\0';
    return strtod(local, NULL);
}

/* A number that would be held as another one is refused: huge ones, and ones
 * so small that nothing, or next to nothing, is left of them. */
static void read_number(struct scan *scan, size_t at, const char *word)
{
    const double number = number_of(word), value = fabs(number);
    /* A zero is one whatever its exponent. */
    const char *digit = word + strcspn(word, "123456789eE");
    const bool zero = *digit == '\0' || *digit == 'e' || *digit == 'E';
    if (value > NUMBER_MOST)
        scan_report(scan, at, "%s is too large; numbers go up to 9007199254740991", word);
    else if (!zero && value < DBL_MIN)
        scan_report(scan, at, "%s is too small to be told from 0", word);
    else
        scan_tree_number(scan, number);
}

/* Slips that are plain enough to name the cure; "" when not. */
static const char *word_hint(const char *word)
{
    static const char *const SAID[][2] = {
        {"true", "; write true"}, {"false", "; write false"}, {"null", "; write null"},
        {"yes", "; write true"},  {"no", "; write false"},    {"none", "; write null"},
    };
    char lower[8] = "";
    for (size_t i = 0; word[i] != '\0' && i + 1 < sizeof(lower); i++)
        lower[i] = (char)tolower((unsigned char)word[i]);
    for (size_t i = 0; i < sizeof(SAID) / sizeof(SAID[0]); i++)
        if (strcmp(lower, SAID[i][0]) == 0)
            return SAID[i][1];
    const bool number = word[strcspn(word, "0123456789")] != '\0';
    return number ? "; write numbers as 5, 0.5 or -2, and dates and slopes in double quotes"
                  : "; texts stand in double quotes";
}

/* A word that is too long is passed over whole, so that one slip is one problem. */
void scan_word(struct scan *scan)
{
    const size_t at = scan->at;
    const char *const text = scan->text + at, *const end = scan->text + scan->length;
    double value;
    size_t length = scan_plain_word(text, end);
    if (length > 0) {
        scan->at += length;
        scan_tree_word(scan, text[0]);
        return;
    }
    length = scan_plain_number(text, end, &value);
    if (length > 0) {
        scan->at += length;
        scan_tree_number(scan, value);
        return;
    }
    while (scan->at < scan->length && scan_is_word(scan->text[scan->at]))
        scan->at++;
    length = scan->at - at;
    if (length > NUMBER_LONGEST) {
        scan_report(scan, at, "%.20s... is not a value; numbers have at most %d characters", text,
                    NUMBER_LONGEST);
        return;
    }
    char word[NUMBER_LONGEST + 1] = "";
    memcpy(word, text, length);
    if (is_number(word))
        read_number(scan, at, word);
    else
        scan_report(scan, at, "%s is not a value%s", word, word_hint(word));
}
