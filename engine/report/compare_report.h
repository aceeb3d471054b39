/* compare_report.h - a comparison as something to read or to pass on. */
#ifndef EAVEMARK_REPORT_COMPARE_REPORT_H
#define EAVEMARK_REPORT_COMPARE_REPORT_H

#include "base/text.h"
#include "check/compare.h"

#include <stdbool.h>

/* At most 80 columns wide. Both set out->failed when out of memory. */
void report_compare_text(const struct comparison *comparison, struct text *out);
void report_compare_json(const struct comparison *comparison, bool pretty, struct text *out);

#endif
