/* page.h - lines that the forms for people are made of. Internal to the room. */
#ifndef EAVEMARK_REPORT_PAGE_H
#define EAVEMARK_REPORT_PAGE_H

#include "base/text.h"
#include "judge/finding.h"

enum { PAGE_HEAD = 9, PAGE_LABEL = 16 };

/* Wraps a phrase built up beforehand after a lead of `hang` columns, and
 * releases it. */
void page_phrase(struct text *out, size_t hang, struct text *phrase);

/* "Label    words", wrapped under the words; nothing for NULL. */
void page_head(struct text *out, const char *label, const char *words);

/* "-- the facts it reads", with an empty line before and behind. */
void page_section(struct text *out, const char *title);

/* The same, indented, with the label's words in a column of their own. */
void page_labelled(struct text *out, const char *label, const char *words);
void page_labelled_phrase(struct text *out, const char *label, struct text *phrase);

/* "Job", "Place", "Date", "Law" of a result. */
void page_heading(struct text *out, const struct result *result);

/* "pass", "WARN", "FAIL", "OPEN", "n/a", "BROKEN": as reports print it. */
const char *page_outcome(enum outcome outcome);

#endif
