/* wrap.h - lines for a terminal: word wrapping with a hanging indent.
 *
 * Widths are counted in characters, not bytes. What is wrapped may come from
 * a job, so it is made harmless first (utf8_add_printable).
 */
#ifndef EAVEMARK_REPORT_WRAP_H
#define EAVEMARK_REPORT_WRAP_H

#include "base/text.h"

#include <stddef.h>

enum { WRAP_COLUMNS = 80 };

/* Adds words and a newline. The caller has just written a lead of `hang`
 * columns (less than WRAP_COLUMNS / 2); further lines are indented as far.
 * Runs of spaces count as one; a word too long for a line is cut. Sets
 * out->failed when out of memory. */
void wrap_add(struct text *out, size_t hang, const char *words);

#endif
