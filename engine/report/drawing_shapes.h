/* drawing_shapes.h - hands each drawing of draw/ its numbers. Internal to the room. */
#ifndef EAVEMARK_REPORT_DRAWING_SHAPES_H
#define EAVEMARK_REPORT_DRAWING_SHAPES_H

#include "report/drawing_demand.h"

struct drawing_shape {
    const char *name;    /* as declared: "panel" */
    const char *caption; /* "A panel and its nails" */
    const char *called;  /* what one without a name is called, where those that look alike
                            share a drawing; NULL: each has its own */
    const char *empty;   /* said instead where the first list within holds nothing; or NULL */
    void (*draw)(const struct drawing_shown *shown, const struct draw_sheet *sheet,
                 struct text *out);
};

/* The shape of this name; every drawing that can be declared has one. */
const struct drawing_shape *drawing_shapes_find(const char *name);

/* Would the two look alike, their names aside? */
bool drawing_shapes_alike(const struct drawing_shown *a, const struct drawing_shown *b);

#endif
