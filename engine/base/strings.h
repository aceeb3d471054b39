/* strings.h - a growing list of texts in an arena. */
#ifndef EAVEMARK_BASE_STRINGS_H
#define EAVEMARK_BASE_STRINGS_H

#include "base/arena.h"

#include <stdbool.h>
#include <stddef.h>

struct strings {
    const char **items; /* not copied: the caller's arena or constants */
    size_t count, capacity;
};

/* Adds text; when it cannot, arena->failed says so. NULL, as a refused copy
 * gives, is left out. */
void strings_add(struct strings *list, struct arena *arena, const char *text);

/* Adds text unless it is there. */
void strings_add_once(struct strings *list, struct arena *arena, const char *text);

bool strings_have(const struct strings *list, const char *text);

#endif
