/* card_words.h - what stands in the rows of a card. The texts are not escaped; each is the
 * caller's to free. */
#ifndef EAVEMARK_REPORT_CARD_WORDS_H
#define EAVEMARK_REPORT_CARD_WORDS_H

#include "base/text.h"
#include "report/card_row.h"

/* "Card for the deck inspection". */
const char *card_title(enum stage stage);

/* "Nail spacing along panel edges". */
const char *card_title_of(const struct finding *finding);

/* "main deck; porch deck", "all 9", "the other 4"; "" for the house and for all there is. */
struct text card_row_places(const struct card_row *row);

/* "6 in or less", "2 in to 4 in", "drip edge"; "" when ticking says it. With "*"
 * where the place has moved the figure, or "question 2", after it. */
struct text card_row_hit(const struct card_row *row);

/* "6 in", when it tells more than the figure to hit does; else "", and where the
 * places differ in it. */
struct text card_row_plan(const struct card_row *row);

/* The same of what was measured or seen, "so" or "not so" too. */
struct text card_row_measured(const struct card_row *row);

/* What is wrong, and what mends it: "Found 8 in. Add nails ..."; the report says
 * more. */
struct text card_row_fault(const struct card_row *row);

/* Do both read the same? Releases both. */
bool card_same_words(struct text a, struct text b);

#endif
