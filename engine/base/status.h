/* status.h - how well a figure is known. */
#ifndef EAVEMARK_BASE_STATUS_H
#define EAVEMARK_BASE_STATUS_H

enum status {
    STATUS_NONE,     /* not said: no better than memory */
    STATUS_SEEN,     /* read in the code itself or in a public text of it */
    STATUS_PARALLEL, /* read in a sister text only */
    STATUS_MEMORY,   /* recalled */
    STATUS_PRACTICE, /* common practice, not code */
    STATUS_INVENTED, /* of an invented place */
    STATUS_COUNT
};

/* "seen" ... as files and the JSON contract write it; NULL for STATUS_NONE. */
const char *status_word(enum status status);

/* The status of a word; STATUS_NONE for NULL and for what is none. */
enum status status_of(const char *word);

#endif
