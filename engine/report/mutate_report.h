/* mutate_report.h - which figures no case notices, in words. */
#ifndef EAVEMARK_REPORT_MUTATE_REPORT_H
#define EAVEMARK_REPORT_MUTATE_REPORT_H

#include "base/text.h"
#include "prove/mutate.h"

/* Lists the figures that go unnoticed, then those of which some steps do, and
 * counts both by topic. Returns how many go unnoticed. Sets out->failed when
 * out of memory. */
size_t report_mutate_text(const struct mutation *mutation, struct text *out);

#endif
