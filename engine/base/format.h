/* format.h - vsnprintf for the formats that reports and findings are made of: texts and whole
 * numbers, thousands of them in a job, put together by hand; all others as vsnprintf does it.
 *
 * Like vsnprintf they write what fits, end it by a NUL where room is not 0, and return the
 * length that the whole has, or a negative number for what cannot be written.
 */
#ifndef EAVEMARK_BASE_FORMAT_H
#define EAVEMARK_BASE_FORMAT_H

#include <stdarg.h>
#include <stddef.h>

int format_to(char *out, size_t room, const char *format, ...)
    __attribute__((format(printf, 3, 4)));
int format_list(char *out, size_t room, const char *format, va_list args)
    __attribute__((format(printf, 3, 0)));

#endif
