#include "base/arena.h"

#include "base/format.h"

#include <stdarg.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

/* Blocks hang in a list, newest first; only the newest is filled further. The bytes
 * follow the head, aligned for any type. */
struct arena_block {
    struct arena_block *next;
    size_t used;
    size_t size;
    max_align_t bytes[];
};

/* What a block holds unless one allocation needs more: a small job's whole result fits in
 * a few. */
enum { BLOCK_BYTES = 16 * 1024 };

static struct arena_block *block_new(struct arena *arena, size_t size)
{
    if (size > SIZE_MAX - sizeof(struct arena_block))
        return NULL;
    struct arena_block *block = malloc(sizeof(*block) + size);
    if (block == NULL)
        return NULL;
    block->used = 0;
    block->size = size;
    block->next = arena->blocks;
    arena->blocks = block;
    arena->bytes += sizeof(*block) + size;
    return block;
}

/* Not zeroed. */
static void *take(struct arena *arena, size_t size)
{
    const size_t align = sizeof(max_align_t);
    if (size > SIZE_MAX - align) {
        arena->failed = true;
        return NULL;
    }
    /* Rounded up, so that what comes after stands aligned too. */
    size = (size + align - 1) / align * align;
    struct arena_block *block = arena->blocks;
    /* What is left in the block before is given up: less than was asked for. */
    if (block == NULL || block->size - block->used < size)
        block = block_new(arena, size > BLOCK_BYTES ? size : BLOCK_BYTES);
    if (block == NULL) {
        arena->failed = true;
        return NULL;
    }
    void *at = (char *)block->bytes + block->used;
    block->used += size;
    return at;
}

void *arena_alloc(struct arena *arena, size_t size)
{
    void *at = take(arena, size);
    return at == NULL ? NULL : memset(at, 0, size);
}

void *arena_room(struct arena *arena, size_t count, size_t size)
{
    if (size != 0 && count > SIZE_MAX / size) {
        arena->failed = true;
        return NULL;
    }
    return take(arena, count * size);
}

/* Zeroed; arena_room is for what is filled whole. */
void *arena_array(struct arena *arena, size_t count, size_t size)
{
    void *at = arena_room(arena, count, size);
    return at == NULL ? NULL : memset(at, 0, count * size);
}

char *arena_copy_n(struct arena *arena, const char *text, size_t length)
{
    /* So that the terminator's byte cannot wrap the length to 0. */
    char *copy = length == SIZE_MAX ? NULL : take(arena, length + 1);
    if (copy == NULL) {
        arena->failed = true;
        return NULL;
    }
    memcpy(copy, text, length);
    copy[length] = '\0';
    return copy;
}

char *arena_copy(struct arena *arena, const char *text)
{
    return text == NULL ? NULL : arena_copy_n(arena, text, strlen(text));
}

/* Most are short and written once; a longer one is written anew where it has room. */
char *arena_format(struct arena *arena, const char *format, ...)
{
    char brief[256];
    va_list args;
    va_start(args, format);
    const int length = format_list(brief, sizeof(brief), format, args);
    va_end(args);
    if (length >= 0 && (size_t)length < sizeof(brief))
        return arena_copy_n(arena, brief, (size_t)length);
    char *text = length < 0 ? NULL : arena_alloc(arena, (size_t)length + 1);
    if (text == NULL) {
        arena->failed = true;
        return NULL;
    }
    va_start(args, format);
    format_list(text, (size_t)length + 1, format, args);
    va_end(args);
    return text;
}

/* The failed flag falls too: the arena may be used again. */
void arena_free(struct arena *arena)
{
    while (arena->blocks != NULL) {
        struct arena_block *block = arena->blocks;
        arena->blocks = block->next;
        free(block);
    }
    arena->bytes = 0;
    arena->failed = false;
}
