/* html.h - what every page is made of. Internal to the room.
 *
 * A page is one file: no script, nothing fetched, its styles inside. Whatever
 * a job, a rule or a profile says goes through html_text or html_phrase.
 */
#ifndef EAVEMARK_REPORT_HTML_H
#define EAVEMARK_REPORT_HTML_H

#include "base/text.h"
#include "judge/finding.h"

/* Headers of a table that a narrow screen shows as blocks: its roles are said
 * outright, since some browsers forget them then. */
#define HTML_COLUMN "<th scope=\"col\" role=\"columnheader\">"
#define HTML_ROW "<th scope=\"row\" role=\"rowheader\">"

/* Words as text or as the value of a quoted attribute: markup escaped, and
 * what steers a terminal or reorders a line written out (utf8_add_printable).
 * NULL adds nothing. */
void html_text(struct text *out, const char *words);

/* Adds a phrase built up beforehand, escaped, and releases it. */
void html_phrase(struct text *out, struct text *phrase);

/* <tag>words</tag>; open is the whole of what stands between the brackets:
 * "p class=\"note\"". Nothing for NULL. */
void html_element(struct text *out, const char *open, const char *words);

/* From the doctype to the opened body, with a link past what is repeated to
 * #main. */
void html_start(struct text *out, const char *title, const char *kind);
void html_end(struct text *out);

/* <dt>label</dt><dd>words</dd>; nothing for NULL. */
void html_pair(struct text *out, const char *label, const char *words);
void html_pair_phrase(struct text *out, const char *label, struct text *phrase);

/* "<header>", what the page is, whose job, and a warning of an invented place: the
 * beginning of any head. */
void html_start_heading(struct text *out, const char *what, const struct result *result);

/* The head of a page: what it is, whose job, under which law, about the house.
 * brief: without the places the law was put together from, and the stage. */
void html_heading(struct text *out, const char *what, const struct result *result, bool brief);

/* The outcome as a word in a frame. */
void html_outcome(struct text *out, enum outcome outcome);

/* "IRC 2021 R905.2.2, seen; ...", each section once. */
struct text html_cites(const struct finding *finding);

/* Safety cautions as a section; sources: with what was read. */
void html_safety(struct text *out, const struct result *result, bool sources);

/* The closing caution and the fingerprint. */
void html_close(struct text *out, const struct result *result);

#endif
