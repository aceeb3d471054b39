/* figure_table_report.h - figures by edition as a table: tab-separated lines under a head, which
 * a spreadsheet opens, or JSON. */
#ifndef EAVEMARK_REPORT_FIGURE_TABLE_REPORT_H
#define EAVEMARK_REPORT_FIGURE_TABLE_REPORT_H

#include "base/text.h"
#include "prove/figure_table.h"

#include <stdbool.h>

/* Both set out->failed when out of memory. */
void report_figure_table_text(const struct figure_table *table, struct text *out);
void report_figure_table_json(const struct figure_table *table, bool pretty, struct text *out);

#endif
