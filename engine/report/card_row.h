/* card_row.h - the rows of a card, for both its forms. Internal to the room, as are
 * card_words.h, card_cites.h, card_questions.h and card_notes.h, which put them in words. */
#ifndef EAVEMARK_REPORT_CARD_ROW_H
#define EAVEMARK_REPORT_CARD_ROW_H

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
    enum card_places naming;
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

/* Are both of one rule? */
bool card_same_rule(const struct card_item *a, const struct card_item *b);

/* So many places have a line or a box of their own each. */
enum { CARD_PLACES_MOST = 4 };

/* Is there room for each place under its name? Then card_row_places may be left out. */
bool card_room_names(const struct card_row *row);

#endif
