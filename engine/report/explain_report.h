/* explain_report.h - an explanation as something to read or to pass on. */
#ifndef EAVEMARK_REPORT_EXPLAIN_REPORT_H
#define EAVEMARK_REPORT_EXPLAIN_REPORT_H

#include "base/text.h"
#include "prove/explain.h"

#include <stdbool.h>

/* At most 80 columns wide. Both set out->failed when out of memory. */
void report_explain_text(const struct explanation *explanation, struct text *out);
void report_explain_json(const struct explanation *explanation, bool pretty, struct text *out);

#endif
