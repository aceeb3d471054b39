/* changes.h - what the last edit changed: one check of a job beside the check before. */
#ifndef EAVEMARK_REPORT_CHANGES_H
#define EAVEMARK_REPORT_CHANGES_H

#include "base/text.h"
#include "judge/finding.h"

#include <stdbool.h>

/* May the two be told by what changed? Not when place, book, day or stage are others:
 * then everything is new. */
bool report_is_comparable(const struct result *before, const struct result *after);

/* Each finding that came to stand in another part of the screen, or differs in a part
 * where something is to be done, then the counts; "Nothing changed" where there is none.
 * What fails or is not met is never left out. Widths, colours and errors as of
 * report_text. */
void report_changes_text(const struct result *before, const struct result *after, bool colour,
                         struct text *out);

#endif
