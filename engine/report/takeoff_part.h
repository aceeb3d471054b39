/* takeoff_part.h - what the order and the sums of a takeoff share. */
#ifndef EAVEMARK_REPORT_TAKEOFF_PART_H
#define EAVEMARK_REPORT_TAKEOFF_PART_H

#include "base/text.h"
#include "judge/finding.h"

#include <stddef.h>

/* Job, place, date and book, a line each. */
void takeoff_add_head(struct text *out, const struct result *head);

#endif
