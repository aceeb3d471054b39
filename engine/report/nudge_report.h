/* nudge_report.h - which figures no case notices, in words. */
#ifndef EAVEMARK_REPORT_NUDGE_REPORT_H
#define EAVEMARK_REPORT_NUDGE_REPORT_H

#include "base/text.h"
#include "check/nudge.h"

/* Lists the figures that go unnoticed, then those of which some steps do, and
 * counts both by topic. Returns how many go unnoticed. Sets out->failed when
 * out of memory. */
size_t report_nudge_text(const struct nudge *nudge, struct text *out);

#endif
