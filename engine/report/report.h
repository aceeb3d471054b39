/* report.h - a result as something to read or to pass on. */
#ifndef EAVEMARK_REPORT_REPORT_H
#define EAVEMARK_REPORT_REPORT_H

#include "base/text.h"
#include "judge/finding.h"
#include "judge/quantities.h"

#include <stdbool.h>

/* For people, on one screen: what to fix, to look at, to answer, and of what is met
 * only how much (digest.h); 80 columns wide. What fails or is not met is never left out
 * to make it fit. colour adds ANSI colours; the part of the report is always also a
 * word. Sets out->failed when out of memory. */
void report_text(const struct result *result, bool colour, struct text *out);

/* Every finding in full: failures first, then open, warnings, passes. Widths, colours
 * and errors as above. */
void report_text_all(const struct result *result, bool colour, struct text *out);

/* Both for people as one HTML page: no script, nothing fetched, to be read
 * on a screen of any width, heard, or printed; the full one with drawings. */
void report_html(const struct result *result, struct text *out);
void report_html_all(const struct result *result, struct text *out);

/* Of the full page only its section of drawings; nothing when there are none. */
void report_drawings(const struct result *result, struct text *out);

/* The JSON contract (design of `check --form json`), with a final newline.
 * pretty: indented over many lines; otherwise all on one. all: with the findings
 * that do not apply, of which otherwise only the number by topic is given. The
 * same result gives the same bytes. */
void report_json(const struct result *result, bool pretty, bool all, struct text *out);

/* One short line of JSON: the job, its place and day, how many findings came out how, and
 * the rules that failed, each once. */
void report_brief(const struct result *result, struct text *out);

/* What a takeoff buys, for the supplier: as plain text for one page, or comma-separated
 * (RFC 4180) with a line of headings. Widths and errors as above. */
void report_order_text(const struct takeoff *takeoff, struct text *out);
void report_order_csv(const struct takeoff *takeoff, struct text *out);

/* The sums of a takeoff, for people: what to buy, then what is only good to know, then the
 * questions that are open. Widths and errors as above. */
void report_takeoff_text(const struct takeoff *takeoff, struct text *out);

/* A takeoff to pass on; form and errors as of report_json. */
void report_takeoff_json(const struct takeoff *takeoff, bool pretty, struct text *out);

#endif
