/* telling.h - the parts of a digest in words, without markup and without line breaks.
 * Internal to the room.
 *
 * Each text is to be released; its failed is set when out of memory. How well a figure
 * is known is not said, but for a fail whose figure was not read: that comes first.
 */
#ifndef EAVEMARK_REPORT_TELLING_H
#define EAVEMARK_REPORT_TELLING_H

#include "base/text.h"
#include "report/digest.h"

/* "Drip edge: front eave; porch eave". The places are left out where the value found
 * differs from one to the next: then telling_compared names them. */
struct text telling_title(const struct paragraph *paragraph);

/* "found 1 ply; demanded at least 2 plies (R905.2.2)", and what is to be known beside it. */
struct text telling_compared(const struct result *result, const struct paragraph *paragraph);

/* "at most 6 in"; "Table R602.3(1)", with its book where it is not that of the result. */
struct text telling_demand(const struct doubtful *doubtful);
struct text telling_section(const struct result *result, const struct cite *cite);

/* How a figure is known that was not read: "recalled", "sister text". */
const char *telling_known(const struct cite *cite);

/* The nth of the block's mends that differ; of how sources disagree; of its cautions.
 * NULL when there are no more. */
const char *telling_mend(const struct finding_block *block, size_t nth);
const char *telling_dispute(const struct finding_block *block, size_t nth);
const char *telling_caution(const struct finding_block *block, size_t nth);

/* "Gap between new panels, porch deck; Slope, porch": what waits, each once. */
struct text telling_waiting(const struct pending *pending);

/* "deck 12 (4), drip edge 8": in brackets how many are unconfirmed. */
struct text telling_topics(const struct digest *digest);

/* "Which deck? main front; main back and 3 more (12)". */
struct text telling_question(const struct asked *asked);

/* "On the roof" of "roof". */
const char *telling_answer(const char *answer);

#endif
