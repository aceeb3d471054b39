#include "base/sense.h"

#include <stddef.h>
#include <string.h>

static const char *const WORDS[SENSE_COUNT] = {
    [SENSE_AT_LEAST] = "at_least", [SENSE_AT_MOST] = "at_most", [SENSE_EQUALS] = "equals",
    [SENSE_ONE_OF] = "one_of",     [SENSE_NONE_OF] = "none_of", [SENSE_ALL_OF] = "all_of",
    [SENSE_AMONG] = "among",       [SENSE_FROM] = "from",       [SENSE_OVER] = "over",
    [SENSE_UNDER] = "under",
};

/* By their order in the enum. */
bool sense_binds(enum sense sense)
{
    return sense >= SENSE_AT_LEAST && sense <= SENSE_ALL_OF;
}

const char *sense_word(enum sense sense)
{
    return WORDS[sense];
}

enum sense sense_of(const char *word)
{
    for (int i = SENSE_NONE + 1; word != NULL && i < SENSE_COUNT; i++)
        if (strcmp(WORDS[i], word) == 0)
            return (enum sense)i;
    return SENSE_NONE;
}
