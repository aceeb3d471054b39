/* card_notes.h - what stands beside the rows of a card: notes, and what only the building
 * department knows. */
#ifndef EAVEMARK_REPORT_CARD_NOTES_H
#define EAVEMARK_REPORT_CARD_NOTES_H

#include "base/text.h"
#include "ask/card.h"

#include <stdbool.h>

/* What has to be said beside the numbers: which are not confirmed, what "*" is,
 * and what stands on the back. Questions and what earlier stages left are told by
 * their count; left_in_front: so many of these stand in front too. */
struct text card_notes(const struct card *card, size_t left_in_front);

/* "Title; Title", of what only the building department can tell; "" when there is none.
 * in_front: "papers 31, permit 2: see the back" when they are many, or where to find
 * them when the back has no room for them either. */
struct text card_to_ask(const struct card *card, bool in_front);
bool card_to_ask_in_back(const struct card *card);

#endif
