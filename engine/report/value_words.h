/* value_words.h - figures and citations in words, for every form that people read.
 *
 * The texts are not escaped: what came from a job still has to be.
 */
#ifndef EAVEMARK_REPORT_VALUE_WORDS_H
#define EAVEMARK_REPORT_VALUE_WORDS_H

#include "base/text.h"
#include "judge/finding.h"

/* What was demanded: "at least 6 in", "one of a, b", "exactly 4 nails", "yes". */
void value_add_demand(struct text *out, enum sense sense, const struct value *required);

/* What a figure demands, with its other bound, and what it says of exactly so much:
 * "at least 1/8 in and at most 1/4 in", "over 50 %, or exactly so much". */
struct figure;
void report_add_figure(struct text *out, const struct figure *figure);

/* The same of a finding, with the other bound where there are two: "at least 1/8 in and
 * at most 1/4 in". */
void value_add_demands(struct text *out, const struct finding *finding);

/* "IRC 2021 R905.2.2". */
void value_add_cite(struct text *out, const struct cite *cite);

/* How well the figure is known, in a word: "seen", "status not stated". */
const char *value_cite_status(const struct cite *cite);

/* How well the figure is known, spelled out with its source: "read in a
 * public source: city handouts". */
void value_add_cite_status(struct text *out, const struct cite *cite);

/* Both: "IRC 2021 R905.2.2 (seen: city handouts)". */
void value_add_cited(struct text *out, const struct cite *cite);

/* "by Dunmarrow County: from 2 layers to 1 layer". */
void value_add_amended(struct text *out, const struct amended *amended);

#endif
