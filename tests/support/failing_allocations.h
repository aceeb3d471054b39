/* failing_allocations.h - every way of the library to take memory, made to fail
 * on purpose.
 *
 * Link with the options FAILING_ALLOCATIONS names in tests/CMakeLists.txt: they
 * put these in front of malloc and its kin, big_pages_take, realpath and scandir (which
 * take memory inside libc), of every taking from an arena, and of the heap of
 * Lua. cJSON is handed the same malloc.
 *
 * One test program, one thread: what is counted is counted for the process.
 */
#ifndef EAVEMARK_TESTS_FAILING_ALLOCATIONS_H
#define EAVEMARK_TESTS_FAILING_ALLOCATIONS_H

#include <stdbool.h>
#include <stddef.h>

enum from_where {
    FROM_SYSTEM, /* malloc, calloc, realloc, strdup, big_pages_take, realpath, scandir, cJSON */
    FROM_ARENA,  /* a piece of an arena, whether or not it needed a new block */
    FROM_LUA,    /* new and growing blocks of the Lua heap */
};

/* The `first`th allocation from there fails, counted from 1 and from now on,
 * and the next count - 1 after it. Lua, refused, collects its garbage and asks
 * again: a count of 1 makes it do that, a count of 2 makes it give up. */
void allocations_fail(enum from_where from, size_t first, size_t count);

/* Nothing fails any more. Returns how many were asked for since. */
size_t allocations_work(void);

/* True if an allocation was refused since allocations_fail. */
bool allocations_failed(void);

/* Blocks taken from the system and not given back, counted from the start. */
long allocations_held(void);

#endif
