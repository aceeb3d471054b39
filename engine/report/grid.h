/* grid.h - a small table of words for a terminal 80 columns wide.
 *
 * The first column names the rows; the others are as wide as each other. Words
 * too wide for a cell go on in the line below it. When there are more columns
 * than fit, the table goes on in a further one under the first.
 */
#ifndef EAVEMARK_REPORT_GRID_H
#define EAVEMARK_REPORT_GRID_H

#include "base/text.h"

#include <stddef.h>

struct grid {
    const char *const *heads; /* one for each column after the first */
    size_t columns;
    const char *const *names; /* one for each row */
    const char *const *cells; /* rows times columns; NULL stands for "-" */
    size_t rows;
    size_t narrowest; /* width of a cell, in characters, at least */
};

/* Adds the table, each line indented by two. What it holds is made printable.
 * Sets out->failed when out of memory. */
void grid_add(struct text *out, const struct grid *grid);

#endif
