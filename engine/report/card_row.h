/* card_row.h - the rows of a card in words, for both its forms. Internal to the
 * room. The texts are not escaped. */
#ifndef EAVEMARK_REPORT_CARD_ROW_H
#define EAVEMARK_REPORT_CARD_ROW_H

#include "base/text.h"
#include "ask/card.h"

/* What a card numbers: a rule, at the places that stand together in a section.
 * They make one row or, where they differ, several. */
struct card_thing {
    const struct card_section *section; /* NULL before the first */
    size_t start, count;                /* its items */
    size_t number;                      /* from 1 */
    bool opens;                         /* the first of its section */
};

/* From one thing to the next, from a zeroed one to the first: what is wrong, the
 * walk, what earlier stages left. Leaves out what card_item_waits. False when
 * there is none left. */
bool card_next(const struct card *card, struct card_thing *thing);

/* What a row has room for. */
enum card_room {
    ROOM_NONE,  /* ticking is all */
    ROOM_WRITE, /* a line to write on */
    ROOM_BOXES, /* a box for each place */
    ROOM_FOUND, /* what was measured: card_row_measured */
};

/* How a row names its places. */
enum card_places { PLACES_NAMED, PLACES_UNSAID, PLACES_ALL, PLACES_OTHER };

/* Neighboring places of one rule of which everything on the card is the same. */
struct card_row {
    const struct card_item *items;
    size_t count;
    const struct finding *wrong; /* that which is not met, or NULL */
    enum card_room room;
    bool short_one; /* no room and nothing wrong */
    enum card_places told;
    bool again; /* not the first of its thing */
};

/* The first row of a thing, and the one after another: one without items when
 * there is none. */
struct card_row card_first_row(const struct card *card, const struct card_thing *thing);
struct card_row card_row_after(const struct card *card, const struct card_thing *thing,
                               const struct card_row *row);

/* There is nothing to hit before a question is answered: the row is told with
 * the question, not among those to tick. */
bool card_item_waits(const struct card_item *item);

/* So many places have a line or a box of their own each. */
enum { CARD_PLACES_MOST = 4 };

/* "Nail spacing along panel edges". */
const char *card_title_of(const struct finding *finding);

/* "main deck; porch deck", "all 9", "the other 4"; "" for the house and for all there is. */
struct text card_row_places(const struct card_row *row);

/* Is there room for each place under its name? Then card_row_places may be left out. */
bool card_room_names(const struct card_row *row);

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

/* "R905.2.2, Table R602.3(1) (seen); local 15.04", of all that the thing's items
 * rest on: see card_signs; cut short when many. */
struct text card_cites(const struct card *card, const struct card_thing *thing);

/* Calls visit for each different wording of card_cites, with the numbers of its
 * things: "3, 5 to 7". False when out of memory. */
bool card_all_cites(const struct card *card,
                    void (*visit)(void *data, const char *numbers, const char *cites), void *data);

/* What sections without a code, "local" and the words behind them mean. */
struct text card_signs(const struct card *card);

/* What has to be said beside the numbers: which are not confirmed, what "*" is,
 * and what stands on the back. Questions and what earlier stages left are told by
 * their count; left_in_front: so many of these stand in front too. */
struct text card_notes(const struct card *card, size_t left_in_front);

/* "Title; Title", of what only the building department can tell; "" when there is none.
 * in_front: "papers 31, permit 2: see the back" when they are many, or where to find
 * them when the back has no room for them either. */
struct text card_to_ask(const struct card *card, bool in_front);
bool card_to_ask_in_back(const struct card *card);

/* So few questions that they stand on the front. */
bool card_asks_in_front(const struct card *card);

/* Calls visit for each question that is open, once each, from 1, with what it is
 * asked of before it: "porch; main front: How thick is it?". waiting names
 * the first that have no figure before it is answered: "Width of the caps; 2 more",
 * how many there are ("3 rules") where there are many questions, or "". */
void card_questions(const struct card *card,
                    void (*visit)(void *data, size_t number, const char *says, const char *waiting),
                    void *data);

/* "Card for the deck inspection". */
const char *card_title(enum stage stage);

#endif
