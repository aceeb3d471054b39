#include "support/failing_allocations.h"

#include "base/arena.h"
#include "sandbox/heap.h"

#include <cjson/cJSON.h>

#include <dirent.h>
#include <errno.h>
#include <stdarg.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/types.h>

/* What the linker puts in front of each call, and what stands behind it. */
void *__real_malloc(size_t size);
void *__real_calloc(size_t count, size_t size);
void *__real_realloc(void *block, size_t size);
void __real_free(void *block);
char *__real_strdup(const char *text);
void *__real_big_pages_take(size_t size);
void __real_big_pages_give_back(void *block, size_t size);
char *__real_realpath(const char *path, char *out);
int __real_scandir(const char *path, struct dirent ***names, int (*choose)(const struct dirent *),
                   int (*compare)(const struct dirent **, const struct dirent **));
void *__real_arena_alloc(struct arena *arena, size_t size);
void *__real_arena_array(struct arena *arena, size_t count, size_t size);
void *__real_arena_room(struct arena *arena, size_t count, size_t size);
char *__real_arena_copy(struct arena *arena, const char *text);
char *__real_arena_copy_n(struct arena *arena, const char *text, size_t length);
void *__real_heap_allocate(void *data, void *block, size_t old_size, size_t new_size);

void *__wrap_malloc(size_t size);
void *__wrap_calloc(size_t count, size_t size);
void *__wrap_realloc(void *block, size_t size);
void __wrap_free(void *block);
char *__wrap_strdup(const char *text);
void *__wrap_big_pages_take(size_t size);
void __wrap_big_pages_give_back(void *block, size_t size);
char *__wrap_realpath(const char *path, char *out);
int __wrap_scandir(const char *path, struct dirent ***names, int (*choose)(const struct dirent *),
                   int (*compare)(const struct dirent **, const struct dirent **));
void *__wrap_arena_alloc(struct arena *arena, size_t size);
void *__wrap_arena_array(struct arena *arena, size_t count, size_t size);
void *__wrap_arena_room(struct arena *arena, size_t count, size_t size);
char *__wrap_arena_copy(struct arena *arena, const char *text);
char *__wrap_arena_copy_n(struct arena *arena, const char *text, size_t length);
__attribute__((format(printf, 2, 3))) char *__wrap_arena_format(struct arena *arena,
                                                                const char *format, ...);
void *__wrap_heap_allocate(void *data, void *block, size_t old_size, size_t new_size);

static struct {
    enum from_where from;
    size_t seen, first, count; /* first 0: nothing fails */
    bool counting, failed;
    long held;
} plan;

/* Is it this one's turn to fail? */
static bool fails(enum from_where from)
{
    if (!plan.counting || from != plan.from)
        return false;
    plan.seen++;
    const bool turn = plan.first > 0 && plan.seen >= plan.first
                      && plan.seen - plan.first < plan.count;
    if (turn) {
        plan.failed = true;
        errno = ENOMEM;
        /* For a debugger: where is this allocation? */
        const char *stop = getenv("EAVEMARK_STOP_AT");
        if (stop != NULL && strtoul(stop, NULL, 10) == plan.first)
            abort();
    }
    return turn;
}

static void *held(void *block)
{
    plan.held += block != NULL;
    return block;
}

void allocations_fail(enum from_where from, size_t first, size_t count)
{
    cJSON_Hooks hooks = {__wrap_malloc, __wrap_free};
    cJSON_InitHooks(&hooks);
    const long before = plan.held;
    plan.from = from;
    plan.seen = 0;
    plan.first = first;
    plan.count = count;
    plan.counting = true;
    plan.failed = false;
    plan.held = before;
}

size_t allocations_work(void)
{
    plan.counting = false;
    return plan.seen;
}

bool allocations_failed(void)
{
    return plan.failed;
}

long allocations_held(void)
{
    return plan.held;
}

/* The system's ---------------------------------------------------------------- */

void *__wrap_malloc(size_t size)
{
    return fails(FROM_SYSTEM) ? NULL : held(__real_malloc(size));
}

void *__wrap_calloc(size_t count, size_t size)
{
    return fails(FROM_SYSTEM) ? NULL : held(__real_calloc(count, size));
}

void *__wrap_realloc(void *block, size_t size)
{
    if (fails(FROM_SYSTEM))
        return NULL;
    void *moved = __real_realloc(block, size);
    return block == NULL ? held(moved) : moved;
}

void __wrap_free(void *block)
{
    plan.held -= block != NULL;
    __real_free(block);
}

char *__wrap_strdup(const char *text)
{
    return fails(FROM_SYSTEM) ? NULL : held(__real_strdup(text));
}

void *__wrap_big_pages_take(size_t size)
{
    return fails(FROM_SYSTEM) ? NULL : held(__real_big_pages_take(size));
}

void __wrap_big_pages_give_back(void *block, size_t size)
{
    plan.held -= block != NULL;
    __real_big_pages_give_back(block, size);
}

char *__wrap_realpath(const char *path, char *out)
{
    if (out == NULL && fails(FROM_SYSTEM))
        return NULL;
    char *full = __real_realpath(path, out);
    return out == NULL ? held(full) : full;
}

int __wrap_scandir(const char *path, struct dirent ***names, int (*choose)(const struct dirent *),
                   int (*compare)(const struct dirent **, const struct dirent **))
{
    if (fails(FROM_SYSTEM))
        return -1;
    const int count = __real_scandir(path, names, choose, compare);
    if (count >= 0)
        plan.held += count + (*names != NULL);
    return count;
}

/* An arena's -------------------------------------------------------------------- */

static bool arena_fails(struct arena *arena)
{
    const bool turn = fails(FROM_ARENA);
    arena->failed = arena->failed || turn;
    return turn;
}

void *__wrap_arena_alloc(struct arena *arena, size_t size)
{
    return arena_fails(arena) ? NULL : __real_arena_alloc(arena, size);
}

void *__wrap_arena_room(struct arena *arena, size_t count, size_t size)
{
    return arena_fails(arena) ? NULL : __real_arena_room(arena, count, size);
}

void *__wrap_arena_array(struct arena *arena, size_t count, size_t size)
{
    return arena_fails(arena) ? NULL : __real_arena_array(arena, count, size);
}

char *__wrap_arena_copy(struct arena *arena, const char *text)
{
    return text == NULL || arena_fails(arena) ? NULL : __real_arena_copy(arena, text);
}

char *__wrap_arena_copy_n(struct arena *arena, const char *text, size_t length)
{
    return arena_fails(arena) ? NULL : __real_arena_copy_n(arena, text, length);
}

__attribute__((format(printf, 2, 3))) char *__wrap_arena_format(struct arena *arena,
                                                                const char *format, ...)
{
    va_list args;
    if (arena_fails(arena))
        return NULL;
    va_start(args, format);
    const int length = vsnprintf(NULL, 0, format, args);
    va_end(args);
    char *text = length < 0 ? NULL : __real_arena_alloc(arena, (size_t)length + 1);
    if (text == NULL)
        return NULL;
    va_start(args, format);
    vsnprintf(text, (size_t)length + 1, format, args);
    va_end(args);
    return text;
}

/* Lua's --------------------------------------------------------------------------- */

/* Asking for more than any heap holds is how the heap itself is made to refuse. */
void *__wrap_heap_allocate(void *data, void *block, size_t old_size, size_t new_size)
{
    const bool takes = new_size > 0 && (block == NULL || new_size > old_size);
    if (takes && fails(FROM_LUA))
        return __real_heap_allocate(data, block, old_size, SIZE_MAX / 2);
    return __real_heap_allocate(data, block, old_size, new_size);
}
