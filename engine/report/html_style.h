/* html_style.h - how pages look. Internal to the room.
 *
 * A paper sheet: black on white, rules instead of boxes, outcomes as framed
 * words that differ by frame as well as by color, so that a black and white
 * print loses nothing. On a narrow screen the rows of tables stand as blocks.
 */
#ifndef EAVEMARK_REPORT_HTML_STYLE_H
#define EAVEMARK_REPORT_HTML_STYLE_H

#include "base/text.h"

void html_style(struct text *out);

#endif
