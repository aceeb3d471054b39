/* sources.h - where the facts of a job come from, in words, where that is not the job. */
#ifndef EAVEMARK_REPORT_SOURCES_H
#define EAVEMARK_REPORT_SOURCES_H

#include "base/text.h"
#include "judge/finding.h"

/* "41 facts from the shop sheet (shop.json), 8 from the place"; "" where all are the job's
 * or its plan's. */
struct text sources_head(const struct result *result);

/* "from the shop sheet: plies, head_lap_in": the facts that count findings rest on; "" where
 * all are the job's or its plan's. */
struct text sources_of(const struct finding *const *findings, size_t count);

#endif
