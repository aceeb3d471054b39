/* confirm.h - the figures that were not read, and that what is met rests on: a line or
 * row each. Internal to the room. */
#ifndef EAVEMARK_REPORT_CONFIRM_H
#define EAVEMARK_REPORT_CONFIRM_H

#include "base/text.h"
#include "report/digest.h"

#include <stddef.h>

/* The first `most` of them, an indented line of 80 columns each. What is too long for
 * its line is cut, the section before what the figure says. */
void confirm_text(struct text *out, const struct result *result, const struct digest *digest,
                  size_t most);

/* The same as a table. */
void confirm_html(struct text *out, const struct result *result, const struct digest *digest,
                  size_t most);

#endif
