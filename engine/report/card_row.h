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
    size_t question;              /* which one it waits for, from 1; or 0 */
    bool to_write;                /* there is something to measure or see */
};

/* The row that starts with item number `start` of the section. */
struct card_row card_row(const struct card *card, const struct card_section *section,
                         size_t start);

/* Places a row lists one by one where it says them; above that only how many. */
enum { CARD_PLACES_MOST = 4 };

/* "Nail spacing along panel edges". */
const char *card_row_title(const struct card_row *row);

/* "main deck; porch deck", or "9 places: front eave; ..."; "" for the house. */
struct text card_row_places(const struct card_row *row);

/* "at most 6 in", "drip edge", "see question 2"; "amended by ..." after it. */
struct text card_row_hit(const struct card_row *row);

/* "6 in"; "" when nothing is planned. */
struct text card_row_plan(const struct card_row *row);

/* "IRC 2021 R905.2.2, Table R602.3(1) (seen); ..."; cut short when many. */
struct text card_row_cites(const struct card_row *row);

/* Calls visit for each question that is open, once each, from 1. */
void card_questions(const struct card *card,
                    void (*visit)(void *data, size_t number, const char *says), void *data);

/* "Card for the deck inspection". */
const char *card_title(enum stage stage);

#endif
