/* spans.h - numbers in words, in ascending order: "4", "4, 5" or "4 to 6, 9". */
#ifndef EAVEMARK_REPORT_SPANS_H
#define EAVEMARK_REPORT_SPANS_H

#include "base/text.h"

struct spans {
    struct text words;  /* the caller's to free */
    size_t first, last; /* the span that is not told yet; 0: none */
};

void spans_add(struct spans *spans, size_t number);

/* Tells the last span: `words` is whole then. */
void spans_end(struct spans *spans);

#endif
