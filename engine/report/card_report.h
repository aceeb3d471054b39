/* card_report.h - the card of a stage, to be printed and ticked off. */
#ifndef EAVEMARK_REPORT_CARD_REPORT_H
#define EAVEMARK_REPORT_CARD_REPORT_H

#include "base/text.h"
#include "ask/card.h"

/* At most 80 columns wide; sets out->failed when out of memory. */
void report_card_text(const struct card *card, struct text *out);

/* One HTML page, on paper two sheets at most for a usual house. */
void report_card_html(const struct card *card, struct text *out);

#endif
