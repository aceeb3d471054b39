/* arena.h - memory that is released all at once.
 *
 * An arena hands out zeroed blocks, but for arena_room, and frees them together. Strings and
 * records that live as long as one profile, one rulebook or one check belong
 * to such an arena, so no caller frees them one by one.
 *
 * Errors: a failed allocation returns NULL and sets arena.failed, which stays
 * set; a builder may therefore test the flag once, at its end.
 */
#ifndef EAVEMARK_BASE_ARENA_H
#define EAVEMARK_BASE_ARENA_H

#include <stdbool.h>
#include <stddef.h>

struct arena_block;

struct arena {
    struct arena_block *blocks; /* newest first */
    size_t bytes;               /* taken so far, of all blocks */
    bool failed;                /* an allocation was refused */
};

/* A zeroed block of size bytes, aligned for any type; NULL when out of memory. */
void *arena_alloc(struct arena *arena, size_t size);

/* A zeroed array of count elements; NULL on overflow or when out of memory. */
void *arena_array(struct arena *arena, size_t count, size_t size);

/* The same, but not zeroed: for what is written anyway. */
void *arena_room(struct arena *arena, size_t count, size_t size);

/* Copies of text; a NULL text gives NULL without setting failed. */
char *arena_copy(struct arena *arena, const char *text);
char *arena_copy_n(struct arena *arena, const char *text, size_t length);

/* A formatted string. */
char *arena_format(struct arena *arena, const char *format, ...)
    __attribute__((format(printf, 2, 3)));

/* Frees every block; the arena may be used again. */
void arena_free(struct arena *arena);

#endif
