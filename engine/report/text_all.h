/* text_all.h - what the parts of the full text report share. Internal to the room. */
#ifndef EAVEMARK_REPORT_TEXT_ALL_H
#define EAVEMARK_REPORT_TEXT_ALL_H

#include "base/text.h"
#include "judge/finding.h"

#include <stdbool.h>
#include <stddef.h>

/* Columns where a finding's own lines begin, and what stands behind their labels. */
enum {
    TEXT_WORD_HANG = 8,   /* "BROKEN  " */
    TEXT_LABEL_HANG = 20, /* under the title, after "arithmetic" */
};

/* What the report is written to, and how. */
struct text_page {
    struct text *out;
    bool colour;
};

struct text_look {
    const char *word;   /* as printed before a finding */
    const char *colour; /* ANSI, for those who ask for it */
    const char *gloss;  /* what the outcome means, beside its group's heading */
};

/* How an outcome is shown. */
const struct text_look *text_all_look(enum outcome outcome);

/* The words, in the colour where the page has colours. */
void text_all_coloured(const struct text_page *page, const char *colour, const char *words);

/* A line under a finding's title: its label alone, or with words; nothing for NULL. */
void text_all_label(const struct text_page *page, const char *label);
void text_all_labelled(const struct text_page *page, const char *label, const char *words);

/* What job, where, when and by which law, and how many findings came out how. */
void text_all_heading(const struct text_page *page, const struct result *result);

/* `count` findings from this one on that read the same: in all their lines, or in two. */
void text_all_finding(const struct text_page *page, const struct finding *finding, size_t count);
void text_all_brief(const struct text_page *page, const struct finding *finding, size_t count);

#endif
