#include "report/spans.h"

/* "4", "4, 5" or "4 to 6". */
void spans_end(struct spans *spans)
{
    if (spans->first == 0)
        return;
    text_addf(&spans->words, "%s%zu", spans->words.length > 0 ? ", " : "", spans->first);
    if (spans->last > spans->first)
        text_addf(&spans->words, "%s%zu", spans->last > spans->first + 1 ? " to " : ", ",
                  spans->last);
}

/* Only a number that follows the last directly goes into the span. */
void spans_add(struct spans *spans, size_t number)
{
    if (spans->first > 0 && number == spans->last + 1) {
        spans->last = number;
        return;
    }
    spans_end(spans);
    spans->first = spans->last = number;
}
