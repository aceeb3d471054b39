#include "job/stage.h"

#include <string.h>

/* Numbered in the order of the work: a later stage is the greater. */
static const char *const WORDS[STAGE_COUNT] = {"permit", "deck", "dry-in", "final"};

int stage_by_word(const char *word)
{
    for (int i = 0; i < STAGE_COUNT; i++)
        if (strcmp(WORDS[i], word) == 0)
            return i;
    return -1;
}

const char *stage_word(enum stage stage)
{
    return WORDS[stage];
}
