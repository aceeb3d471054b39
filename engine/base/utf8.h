/* utf8.h - checking and printing UTF-8. */
#ifndef EAVEMARK_BASE_UTF8_H
#define EAVEMARK_BASE_UTF8_H

#include "base/text.h"

#include <stddef.h>

/* Length in bytes (1-4) of the well-formed character at bytes (Unicode
 * standard, table 3-7: no overlong forms, no surrogates, nothing past
 * U+10FFFF); 0 when the bytes there are not one. */
size_t utf8_length(const unsigned char *bytes, size_t available);

/* Columns the text takes on a terminal, one per character. */
size_t utf8_columns(const char *text);

/* Adds text with control characters (C0, DEL, C1), bidirectional marks and
 * broken bytes written as \xNN or \u{NNNN}: nothing a job says can move the
 * cursor or reorder the line it stands in. Newline and tab are escaped too. */
void utf8_add_printable(struct text *out, const char *text);

#endif
