/* explain_figures.h - the figures of an explanation: what each edition says, where that is
 * written, who moves it. Internal to the room. */
#ifndef EAVEMARK_REPORT_EXPLAIN_FIGURES_H
#define EAVEMARK_REPORT_EXPLAIN_FIGURES_H

#include "base/text.h"
#include "prove/explain.h"

/* Of a rule; or of a figure, and then which rules ask for it. */
void explain_figures(const struct explanation *explanation, struct text *out);

#endif
