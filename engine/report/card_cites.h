/* card_cites.h - the sections that the rows of a card rest on. */
#ifndef EAVEMARK_REPORT_CARD_CITES_H
#define EAVEMARK_REPORT_CARD_CITES_H

#include "base/text.h"
#include "report/card_row.h"

/* "R905.2.2, Table R602.3(1) (seen); local 15.04", of all that the thing's items
 * rest on: see card_signs; cut short when many. */
struct text card_cites(const struct card *card, const struct card_thing *thing);

/* Calls visit for each different wording of card_cites, with the numbers of its
 * things: "3, 5 to 7". False when out of memory. */
bool card_all_cites(const struct card *card,
                    void (*visit)(void *data, const char *numbers, const char *cites), void *data);

/* What sections without a code, "local" and the words behind them mean. */
struct text card_signs(const struct card *card);

#endif
