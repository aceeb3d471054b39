/* card_style.h - how a card looks, beside what every page has. Internal to the room.
 *
 * Two sides of a Letter sheet. The front is set in 11 points or more, in black:
 * the numbers to hit are its largest words, what is wrong stands in a frame. On
 * a narrow screen its rows stand as blocks.
 */
#ifndef EAVEMARK_REPORT_CARD_STYLE_H
#define EAVEMARK_REPORT_CARD_STYLE_H

#include "base/text.h"

void card_style(struct text *out);

#endif
