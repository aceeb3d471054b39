/* sense.h - how a figure binds: what it says of a value held against it. */
#ifndef EAVEMARK_BASE_SENSE_H
#define EAVEMARK_BASE_SENSE_H

#include <stdbool.h>

enum sense {
    SENSE_NONE, /* not said */
    SENSE_AT_LEAST,
    SENSE_AT_MOST,
    SENSE_EQUALS,
    SENSE_ONE_OF,  /* one of the set */
    SENSE_NONE_OF, /* what the set bans */
    SENSE_ALL_OF,  /* all of the set */
    SENSE_AMONG,   /* decides who is meant: those in the set */
    SENSE_FROM,    /* ... those of so much or more */
    SENSE_OVER,    /* ... more than so much */
    SENSE_UNDER,   /* ... less */
    SENSE_COUNT
};

/* Does it demand something? Those after SENSE_ALL_OF only decide who is meant. */
bool sense_binds(enum sense sense);

/* "at_least" ... as files and the JSON contract write it; NULL for SENSE_NONE. */
const char *sense_word(enum sense sense);

/* The sense of a word; SENSE_NONE for NULL and for what is none. */
enum sense sense_of(const char *word);

#endif
