/* takeoff_part.h - what the order and the sums of a takeoff share. */
#ifndef EAVEMARK_REPORT_TAKEOFF_PART_H
#define EAVEMARK_REPORT_TAKEOFF_PART_H

#include "base/text.h"
#include "judge/finding.h"

#include <stddef.h>

/* Wraps a phrase built up beforehand, and releases it. */
void takeoff_add_phrase(struct text *out, size_t hang, struct text *phrase);

/* Job, place, date and book, a line each. */
void takeoff_add_head(struct text *out, const struct result *head);

#endif
