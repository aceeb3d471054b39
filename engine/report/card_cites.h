/* card_cites.h - the sections that the rows of a card rest on. */
#ifndef EAVEMARK_REPORT_CARD_CITES_H
#define EAVEMARK_REPORT_CARD_CITES_H

#include "ask/card.h"
#include "base/text.h"

#include <stdbool.h>
#include <stddef.h>

/* Calls visit for each different wording of what things rest on, "R905.2.2, Table R602.3(1)
 * (seen); local 15.04", with the numbers of its things: "3, 5 to 7". See card_signs; cut
 * short when many. False when out of memory. */
bool card_all_cites(const struct card *card,
                    void (*visit)(void *data, const char *numbers, const char *cites), void *data);

/* What sections without a code, "local" and the words behind them mean. */
struct text card_signs(const struct card *card);

#endif
