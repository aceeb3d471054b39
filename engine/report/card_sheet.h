/* card_sheet.h - the table of what is looked at, on a printed card. */
#ifndef EAVEMARK_REPORT_CARD_SHEET_H
#define EAVEMARK_REPORT_CARD_SHEET_H

#include "ask/card.h"
#include "base/text.h"

#include <stdbool.h>

/* Adds the table of the front, or that of the back: what earlier stages left and the front
 * has no room for. Nothing when there is none of it. */
void card_sheet_table(const struct card *card, bool back, const char *caption, struct text *out);

#endif
