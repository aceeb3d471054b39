/* value.h - the values that figures demand and jobs hold, and where a figure comes
 * from. Texts belong to whoever the value was taken from.
 */
#ifndef EAVEMARK_BASE_VALUE_H
#define EAVEMARK_BASE_VALUE_H

#include "base/sense.h"
#include "base/status.h"
#include "base/text.h"

#include <stdbool.h>
#include <stddef.h>

enum value_kind { VALUE_NONE, VALUE_NUMBER, VALUE_YES_NO, VALUE_TEXT, VALUE_SET };

struct value {
    enum value_kind kind;
    bool yes;
    double number;
    const char *text;
    const char *const *set; /* VALUE_SET: set_count texts */
    size_t set_count;
    const char *unit; /* of numbers; or NULL */
};

/* Where a figure comes from. */
struct cite {
    const char *code;    /* "IRC 2021" */
    const char *section; /* "R905.2.2" */
    enum status status;
    const char *source; /* short name of what was read */
};

/* A county moved the figure. */
struct amended {
    const char *by; /* title of the jurisdiction that moved it */
    struct value from, to;
};

/* "6 in", "yes", "wood shake" (of wood_shake), "D226 II, D1970"; "nothing" for no value,
 * "none" for an empty set. */
void value_add(struct text *out, const struct value *value);

#endif
