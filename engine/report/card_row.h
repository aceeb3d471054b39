/* card_row.h - the rows of a card in words, for both its forms. Internal to the
 * room. The texts are not escaped. */
#ifndef EAVEMARK_REPORT_CARD_ROW_H
#define EAVEMARK_REPORT_CARD_ROW_H

#include "base/text.h"
#include "check/card.h"

/* Neighboring places of one rule of which everything on the card is the same. */
struct card_row {
    const struct card_item *items;
    size_t count;
    const struct finding *failed; /* planned or measured so that it fails, or NULL */
    const struct finding *broken; /* or NULL */
    bool to_write;                /* there is something to measure or see */
    bool short_one;               /* nothing is written, measured or wrong: ticking is all */
    bool everywhere;              /* all places of the rule that the card tells of */
    bool again;                   /* of the same rule as the row before it */
    bool cited;                   /* in the row before it, word for word */
};

/* The row that starts with item number `start` of the section. */
struct card_row card_row(const struct card *card, const struct card_section *section,
                         size_t start);

/* There is nothing to hit before a question is answered: the row is told with
 * the question, not among those to tick. */
bool card_item_waits(const struct card_item *item);
bool card_section_waits(const struct card_section *section);

/* Places a row lists one by one where it says them; above that only how many. */
enum { CARD_PLACES_MOST = 4 };

/* "Nail spacing along panel edges". */
const char *card_row_title(const struct card_row *row);

/* "main deck; porch deck", "all 9 places"; "" for the house. */
struct text card_row_places(const struct card_row *row);

/* "at most 6 in", "drip edge", "must be so"; with "*" where the place has moved
 * the figure, or "see question 2", after it. */
struct text card_row_hit(const struct card_row *row);

/* "6 in"; "so" or "not so" of what must be so; "" when nothing is planned. */
struct text card_row_plan(const struct card_row *row);

/* The same of what was measured or seen; "" when nothing was. */
struct text card_row_measured(const struct card_row *row);

/* What is wrong, and what mends it: "found 8 in. Mend: ..."; the report says
 * more. */
struct text card_row_fault(const struct finding *finding);

/* "R905.2.2, Table R602.3(1) (seen); local 15.04": see card_signs; cut
 * short when many. */
struct text card_row_cites(const struct card *card, const struct card_row *row);

/* What the "*", sections without a code and "local" mean. */
struct text card_signs(const struct card *card);

/* Calls visit for each question that is open, once each, from 1, with what it is
 * asked of before it: "porch; main front: How thick is it?". waiting names
 * the first that have no figure before it is answered: "Width of the caps; 2 more",
 * or "". */
void card_questions(const struct card *card,
                    void (*visit)(void *data, size_t number, const char *says,
                                  const char *waiting), void *data);

/* "Card for the deck inspection". */
const char *card_title(enum stage stage);

#endif
