/* gloss.h - what stands beside the heading of each part of a screen: how much there is
 * of it, and what it is. Internal to the room.
 *
 * Each text is to be released; its failed is set when out of memory.
 */
#ifndef EAVEMARK_REPORT_GLOSS_H
#define EAVEMARK_REPORT_GLOSS_H

#include "base/text.h"
#include "report/digest.h"

#include <stdbool.h>

/* The head: "Dunmarrow County (example/dunmarrow)"; the book and the day; when the
 * place's page was read, "" where that is not told; the stage asked for, or "". */
struct text gloss_place(const struct result *result);
struct text gloss_book(const struct result *result);
struct text gloss_read(const struct result *result);
struct text gloss_stage(const struct result *result);

/* "2 fail, 5 to look at, 1 to answer ...": everything there is, in one line. */
struct text gloss_counts(const struct result *result, const struct digest *digest);

struct text gloss_broken(const struct digest *digest);
struct text gloss_fix(const struct digest *digest);
struct text gloss_look(const struct digest *digest);
struct text gloss_answer(const struct result *result, const struct digest *digest);
struct text gloss_unknown(const struct digest *digest);
struct text gloss_later(const struct digest *digest);
struct text gloss_met(const struct digest *digest);
struct text gloss_confirm(const struct digest *digest);

/* Is this question among the few that a screen shows, those that decide the most? And
 * "and 3 more, which decide 5 ...", or "". */
bool gloss_is_shown(const struct result *result, size_t index);
struct text gloss_not_shown(const struct result *result);

#endif
