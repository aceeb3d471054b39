#include "base/utf8.h"

#include <stdbool.h>
#include <string.h>

static bool is_tail(unsigned char byte)
{
    return (byte & 0xC0) == 0x80;
}

/* The well-formed sequences of the Unicode standard (table 3-7): no overlong forms, no
 * surrogates, nothing above U+10FFFF. 0 for anything else. */
size_t utf8_length(const unsigned char *s, size_t n)
{
    if (n >= 1 && s[0] < 0x80)
        return 1;
    if (n >= 2 && s[0] >= 0xC2 && s[0] <= 0xDF && is_tail(s[1]))
        return 2;
    if (n >= 3 && s[0] >= 0xE0 && s[0] <= 0xEF && is_tail(s[1]) && is_tail(s[2])) {
        if ((s[0] == 0xE0 && s[1] < 0xA0) || (s[0] == 0xED && s[1] > 0x9F))
            return 0;
        return 3;
    }
    if (n >= 4 && s[0] >= 0xF0 && s[0] <= 0xF4 && is_tail(s[1]) && is_tail(s[2]) && is_tail(s[3])) {
        if ((s[0] == 0xF0 && s[1] < 0x90) || (s[0] == 0xF4 && s[1] > 0x8F))
            return 0;
        return 4;
    }
    return 0;
}

/* Counts code points: a lead byte each. Wide and combining characters are not told apart;
 * job texts seldom have any. */
size_t utf8_columns(const char *text)
{
    size_t columns = 0;
    for (; *text != '\0'; text++)
        if (!is_tail((unsigned char)*text))
            columns++;
    return columns;
}

static unsigned long code_point(const unsigned char *s, size_t length)
{
    static const unsigned char lead_mask[5] = {0, 0x7F, 0x1F, 0x0F, 0x07};
    unsigned long code = s[0] & lead_mask[length];
    for (size_t i = 1; i < length; i++)
        code = code << 6 | (s[i] & 0x3F);
    return code;
}

/* Controls, and the marks that reorder or hide text (Unicode general
 * categories Cc and the bidirectional and zero-width part of Cf). */
static bool is_unprintable(unsigned long code)
{
    return code < 0x20 || (code >= 0x7F && code < 0xA0) || code == 0x061C
           || (code >= 0x200B && code <= 0x200F) || (code >= 0x2028 && code <= 0x202E)
           || (code >= 0x2060 && code <= 0x206F) || code == 0xFEFF;
}

/* How many bytes from here on are printable ASCII: mostly all are. */
static size_t plain_length(const unsigned char *s, size_t n)
{
    size_t length = 0;
    while (length < n && s[length] >= 0x20 && s[length] < 0x7F)
        length++;
    return length;
}

void utf8_add_printable(struct text *out, const char *text)
{
    const unsigned char *s = (const unsigned char *)text;
    size_t left = strlen(text);
    while (left > 0) {
        const size_t plain = plain_length(s, left);
        text_add_n(out, (const char *)s, plain);
        s += plain;
        left -= plain;
        if (left == 0)
            break;
        const size_t length = utf8_length(s, left);
        /* A byte that begins no character is shown by its number, so that nothing raw
         * reaches a terminal. */
        if (length == 0) {
            text_addf(out, "\\x%02x", s[0]);
            s++, left--;
            continue;
        }
        const unsigned long code = code_point(s, length);
        if (!is_unprintable(code))
            text_add_n(out, (const char *)s, length);
        else if (code < 0x80)
            text_addf(out, "\\x%02lx", code);
        else
            text_addf(out, "\\u{%04lx}", code);
        s += length, left -= length;
    }
}
