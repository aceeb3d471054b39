#include "base/format.h"

#include <limits.h>
#include <stdbool.h>
#include <stdint.h>
#include <stdio.h>
#include <string.h>

/* What does not fit is counted only. */
struct target {
    char *out;
    size_t room, length;
};

static void put(struct target *to, const char *bytes, size_t length)
{
    const size_t left = to->length < to->room ? to->room - to->length : 0;
    const size_t fits = length < left ? length : left;
    if (fits > 0)
        memcpy(to->out + to->length, bytes, fits);
    to->length += length;
}

static void put_whole(struct target *to, uintmax_t number, bool negative)
{
    char digits[32], *const end = digits + sizeof(digits), *at = end;
    do
        *--at = (char)('0' + number % 10);
    while ((number /= 10) > 0);
    if (negative)
        *--at = '-';
    put(to, at, (size_t)(end - at));
}

static void put_signed(struct target *to, intmax_t number)
{
    const bool negative = number < 0;
    put_whole(to, negative ? 0 - (uintmax_t)number : (uintmax_t)number, negative);
}

/* At most most bytes of the text, which need not end sooner; all of it where most is
 * negative. */
static void put_text(struct target *to, const char *text, int most)
{
    if (text == NULL) /* as glibc has it */
        text = most < 0 || most >= 6 ? "(null)" : "";
    put(to, text, most < 0 ? strlen(text) : strnlen(text, (size_t)most));
}

/* One conversion, after its percent sign; how long it is, or 0 of one that is not known here. */
static size_t convert(struct target *to, const char *at, va_list *args)
{
    if (at[0] == 's') {
        put_text(to, va_arg(*args, const char *), -1);
        return 1;
    }
    if (at[0] == 'd') {
        put_signed(to, va_arg(*args, int));
        return 1;
    }
    if (at[0] == '%') {
        put(to, "%", 1);
        return 1;
    }
    if (strncmp(at, ".*s", 3) == 0) {
        const int most = va_arg(*args, int);
        put_text(to, va_arg(*args, const char *), most);
        return 3;
    }
    if (at[0] == 'z' && at[1] == 'u') {
        put_whole(to, va_arg(*args, size_t), false);
        return 2;
    }
    if (at[0] == 'l' && at[1] == 'u') {
        put_whole(to, va_arg(*args, unsigned long), false);
        return 2;
    }
    if (at[0] == 'l' && at[1] == 'd') {
        put_signed(to, va_arg(*args, long));
        return 2;
    }
    return 0;
}

/* False when the format has a conversion that is not known here. */
static bool put_all(struct target *to, const char *format, va_list *args)
{
    for (const char *at = format; *at != '\0';) {
        if (*at != '%') {
            const size_t plain = strcspn(at, "%");
            put(to, at, plain);
            at += plain;
            continue;
        }
        const size_t known = convert(to, at + 1, args);
        if (known == 0)
            return false;
        at += 1 + known;
    }
    return true;
}

int format_list(char *out, size_t room, const char *format, va_list args)
{
    struct target to = {.out = out, .room = room};
    va_list again;
    va_copy(again, args);
    const bool known = put_all(&to, format, &again);
    va_end(again);
    if (!known)
        return vsnprintf(out, room, format, args);
    if (room > 0)
        out[to.length < room ? to.length : room - 1] = '\0';
    return to.length > INT_MAX ? -1 : (int)to.length;
}

int format_to(char *out, size_t room, const char *format, ...)
{
    va_list args;
    va_start(args, format);
    const int length = format_list(out, room, format, args);
    va_end(args);
    return length;
}
