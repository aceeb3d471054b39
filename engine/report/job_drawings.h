/* job_drawings.h - the drawings of a job on its pages, made from what is declared of it
 * (judge/drawn.h) and from what its findings demand. Internal to the room. */
#ifndef EAVEMARK_REPORT_JOB_DRAWINGS_H
#define EAVEMARK_REPORT_JOB_DRAWINGS_H

#include "base/text.h"
#include "ask/card.h"
#include "judge/finding.h"

struct drawings {
    const struct result *result; /* its drawings and, without a card, its findings */
    const struct card *card;     /* or NULL: demands come from it, and only its stage is drawn */
};

/* Adds a section of figures, each with its caption; a sentence for what cannot
 * be drawn; nothing when there is neither. Returns 0, or -1 when out of memory
 * (out->failed is set too). */
int job_drawings_add(const struct drawings *drawings, struct text *out);

#endif
