#include "sandbox/heap.h"

#include "base/big_pages.h"

#include <lua.h>
#include <stdlib.h>
#include <string.h>

/* Blocks come in classes: multiples of 16 up to 512 bytes, then powers of two
 * up to 2^30. A freed block goes to its class's list, inside the arena. */
enum {
    SMALL_STEP = 16,
    SMALL_CLASSES = 32,
    LARGE_CLASSES = 21, /* 1024 = 2^10 ... 2^30 */
    CLASSES = SMALL_CLASSES + LARGE_CLASSES
};

struct free_block {
    struct free_block *next;
};

/* Stands at the start of the arena: putting the arena back puts the bookkeeping back with
 * it, the free lists included. */
struct heap_head {
    size_t used; /* from the start of the arena, this head included */
    size_t left; /* of the current allowance */
    size_t longest_text;
    bool refused;
    struct free_block *free[CLASSES];
};

/* The class that holds size bytes, and the bytes it takes; CLASSES if none. */
static size_t class_of(size_t size, size_t *bytes)
{
    if (size <= (size_t)SMALL_STEP * SMALL_CLASSES) {
        const size_t index = (size + SMALL_STEP - 1) / SMALL_STEP;
        *bytes = index * SMALL_STEP;
        return index - 1;
    }
    size_t power = 1024;
    for (size_t i = SMALL_CLASSES; i < CLASSES; i++, power *= 2) {
        if (size <= power) {
            *bytes = power;
            return i;
        }
    }
    return CLASSES;
}

int heap_open(struct heap *heap, size_t size)
{
    *heap = (struct heap){0};
    void *arena = big_pages_take(size);
    if (arena == NULL)
        return -1;
    heap->head = arena;
    heap->size = size;
    heap->head->used = (sizeof(struct heap_head) + SMALL_STEP - 1) / SMALL_STEP * SMALL_STEP;
    return 0;
}

void heap_close(struct heap *heap)
{
    big_pages_give_back(heap->head, heap->size);
    free(heap->copy);
    *heap = (struct heap){0};
}

/* A freed block of the class first, else from the end. Refusals are remembered: a script
 * may catch the error, but not hide it. */
static void *heap_take(struct heap *heap, size_t size)
{
    struct heap_head *head = heap->head;
    size_t bytes;
    const size_t class = class_of(size, &bytes);
    if (class == CLASSES || bytes > head->left) {
        head->refused = true;
        return NULL;
    }
    void *block = head->free[class];
    if (block != NULL) {
        head->free[class] = head->free[class]->next;
    } else if (bytes <= heap->size - head->used) {
        block = (char *)head + head->used;
        head->used += bytes;
    } else {
        head->refused = true;
        return NULL;
    }
    /* Blocks given back do not refill the allowance: it limits all that a call allocates,
     * not what it holds at once. */
    head->left -= bytes;
    return block;
}

static void heap_give_back(struct heap *heap, void *block, size_t size)
{
    size_t bytes;
    const size_t class = class_of(size, &bytes);
    struct free_block *freed = block;
    freed->next = heap->head->free[class];
    heap->head->free[class] = freed;
}

void *heap_allocate(void *data, void *block, size_t old_size, size_t new_size)
{
    struct heap *heap = data;
    if (new_size == 0) {
        if (block != NULL && old_size > 0)
            heap_give_back(heap, block, old_size);
        return NULL;
    }
    /* Without a block, old_size is a type tag, not a size. */
    if (block == NULL) {
        if (old_size == LUA_TSTRING && new_size > heap->head->longest_text)
            heap->head->longest_text = new_size;
        return heap_take(heap, new_size);
    }
    size_t old_bytes, new_bytes;
    if (class_of(old_size, &old_bytes) == class_of(new_size, &new_bytes))
        return block;
    void *moved = heap_take(heap, new_size);
    if (moved == NULL) /* Lua counts on a shrink never failing */
        return new_size < old_size ? block : NULL;
    memcpy(moved, block, old_size < new_size ? old_size : new_size);
    heap_give_back(heap, block, old_size);
    return moved;
}

void heap_allow(struct heap *heap, size_t bytes)
{
    heap->head->left = bytes;
    heap->head->refused = false;
}

bool heap_refused(const struct heap *heap)
{
    return heap->head->refused;
}

size_t heap_longest_text(const struct heap *heap)
{
    return heap->head->longest_text;
}

size_t heap_used(const struct heap *heap)
{
    return heap->head->used;
}

int heap_snapshot(struct heap *heap)
{
    void *copy = malloc(heap->head->used);
    if (copy == NULL)
        return -1;
    memcpy(copy, heap->head, heap->head->used);
    free(heap->copy);
    heap->copy = copy;
    heap->copy_size = heap->head->used;
    return 0;
}

/* Only what was in use then is copied back; what lies behind is free again, whatever is
 * in it. */
void heap_restore(struct heap *heap)
{
    if (heap->copy != NULL)
        memcpy(heap->head, heap->copy, heap->copy_size);
}
