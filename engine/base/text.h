/* text.h - a growable, always terminated string for building output.
 *
 * Start from TEXT_EMPTY. A refused allocation sets failed, after which every
 * further addition does nothing: test failed once, when the text is complete.
 * text_free releases it.
 */
#ifndef EAVEMARK_BASE_TEXT_H
#define EAVEMARK_BASE_TEXT_H

#include "base/arena.h"

#include <stdbool.h>
#include <stddef.h>

struct text {
    char *bytes; /* NULL until something was added */
    size_t length;
    size_t capacity;
    bool failed;
};

#define TEXT_EMPTY ((struct text){0})

void text_add(struct text *text, const char *more);
void text_add_n(struct text *text, const char *more, size_t length);
/* The same with blanks for underscores: "wood_shake" is a word for files, people say "wood
 * shake". */
void text_add_spaced(struct text *text, const char *word, size_t length);
/* Makes room for so many bytes and the terminator; false when refused. */
bool text_grow(struct text *text, size_t length);

/* Adds length bytes for the caller to write, which is done before anything else is added:
 * what was in that memory stands there. NULL when refused. */
static inline char *text_room(struct text *text, size_t length)
{
    /* Strictly less: one byte is the terminator's. */
    const bool fits = !text->failed && length < text->capacity - text->length;
    if (!fits && !text_grow(text, length))
        return NULL;
    char *room = text->bytes + text->length;
    text->length += length;
    text->bytes[text->length] = '\0';
    return room;
}
/* So much is likely to be added: room for it is taken at once, and not by and by. */
void text_expect(struct text *text, size_t length);
void text_addf(struct text *text, const char *format, ...) __attribute__((format(printf, 2, 3)));

/* The string so far, "" when empty; valid until the next addition. */
const char *text_string(const struct text *text);

void text_free(struct text *text);

/* The length that is left without blanks at both ends; *at then stands after the first ones. */
size_t text_trim(const char **at, size_t length);

/* Is it longer than the ending, and ends so? */
bool text_ends_in(const char *string, const char *ending);

/* Its letters in the arena; frees the text. "" when out of memory, which the arena remembers. */
const char *text_keep(struct text *text, struct arena *arena);

/* Equal, or both NULL. */
bool text_same(const char *a, const char *b);

#endif
