#include "base/status.h"

#include <stddef.h>
#include <string.h>

/* STATUS_NONE has no word: a figure without one says nothing of how it is known. */
static const char *const WORDS[STATUS_COUNT] = {
    [STATUS_SEEN] = "seen",         [STATUS_PARALLEL] = "parallel", [STATUS_MEMORY] = "memory",
    [STATUS_PRACTICE] = "practice", [STATUS_INVENTED] = "invented",
};

const char *status_word(enum status status)
{
    return WORDS[status];
}

enum status status_of(const char *word)
{
    for (int i = STATUS_NONE + 1; word != NULL && i < STATUS_COUNT; i++)
        if (strcmp(WORDS[i], word) == 0)
            return (enum status)i;
    return STATUS_NONE;
}
