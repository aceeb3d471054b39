/* heap.h - the memory of one Lua state: one mapped arena that can be copied
 * aside and put back.
 *
 * Everything a lua_State owns lives in the arena, and so does the allocator's
 * own bookkeeping; nothing in it points outside except to C code. Putting a
 * copy of the used part back therefore returns the whole state to the moment
 * the copy was taken: a job starts from exactly the heap that loading the
 * rules left behind, whatever the job before it did.
 *
 * The arena's size is the cap on a state's memory. A second, smaller cap
 * bounds what may be taken, in total, between two calls of heap_allow.
 */
#ifndef EAVEMARK_SANDBOX_HEAP_H
#define EAVEMARK_SANDBOX_HEAP_H

#include <stdbool.h>
#include <stddef.h>

struct heap_head;

struct heap {
    struct heap_head *head; /* start of the arena; NULL when closed */
    size_t size;            /* bytes mapped */
    void *copy;             /* the snapshot, or NULL */
    size_t copy_size;
};

/* Maps an arena. Pages cost nothing until used. -1 when refused. */
int heap_open(struct heap *heap, size_t size);
void heap_close(struct heap *heap);

/* A lua_Alloc; data is the struct heap. */
void *heap_allocate(void *data, void *block, size_t old_size, size_t new_size);

/* Allows at most bytes more to be taken from now on, counting every block
 * handed out and never crediting one given back. */
void heap_allow(struct heap *heap, size_t bytes);

/* True if a request was refused since the last heap_allow. */
bool heap_refused(const struct heap *heap);

/* Bytes of the arena in use or once used. */
size_t heap_used(const struct heap *heap);

/* Bytes of the longest text that Lua has made, its head included; 0: none. */
size_t heap_longest_text(const struct heap *heap);

/* Copies the used part aside, replacing an earlier copy. -1 when out of memory. */
int heap_snapshot(struct heap *heap);

/* Puts the copy back. Does nothing without one. */
void heap_restore(struct heap *heap);

#endif
