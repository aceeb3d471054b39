/* drawing.h - which finding's demand, and which figure, is which dimension of
 * which drawing: what rules/drawings.lua declares.
 *
 * The drawings themselves know no rule; here is what ties the two together.
 */
#ifndef EAVEMARK_JUDGE_DRAWING_H
#define EAVEMARK_JUDGE_DRAWING_H

#include "job/stage.h"

#include <stdbool.h>
#include <stddef.h>

struct drawing_part {
    const char *dimension; /* "edge" */
    const char *rule;      /* whose demand it is; or NULL */
    const char *figure;    /* its name; or NULL */
    double number;         /* of neither: given; of a figure: its value once judged, 1 or 0 for
                              yes or no, NAN when there is none */
};

struct drawing {
    const char *name;         /* "nailing" */
    bool stages[STAGE_COUNT]; /* whose card shows it */
    struct drawing_part *parts;
    size_t part_count;
    const char *file;
    int line;
    struct drawing *next;
};

/* The dimensions that the drawing of this name takes, ended by NULL; NULL when
 * there is no such drawing. */
const char *const *drawing_dimensions(const char *name);

#endif
