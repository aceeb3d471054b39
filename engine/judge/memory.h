/* memory.h - what came of asking a job, remembered by its answers, for one law.
 *
 * A tree for each rule and each function: which question comes first, what follows each
 * answer to it, and what came of it in the end. A rule or function that changes nothing
 * outside itself says the same whenever it gets the same answers; one that does change
 * something makes all of the memory void (memory_close). Jobs of a batch are much alike,
 * and most of their findings are met again. Internal to the room.
 *
 * Ownership: memory_free releases all that was remembered. Bounded by MEMORY_MOST bytes:
 * what comes after is judged, and not remembered.
 */
#ifndef EAVEMARK_JUDGE_MEMORY_H
#define EAVEMARK_JUDGE_MEMORY_H

#include "base/value.h"
#include "job/stage.h"
#include "judge/trail.h"

enum {
    MEMORY_MOST = 24 * 1024 * 1024,
    MEMORY_ANSWERS_MOST = 64, /* to one question: areas and lengths are seldom met again */
    MEMORY_STAGES = 2 * STAGE_COUNT,
};

struct memory;

/* One tree's beginning. */
struct memory_key {
    size_t of;      /* which rule or function (rulebook_function_number) */
    unsigned stage; /* what else the outcome depends on: how far the work has come; below
                       MEMORY_STAGES */
};

/* NULL when out of memory; everything then goes on without one. */
struct memory *memory_open(void);
void memory_free(struct memory *memory);

/* Remembers nothing more, and recalls nothing; what was handed out stays. */
void memory_close(struct memory *memory);

/* What came of it when all was answered as this job answers; NULL when that is not known.
 * trail->known begins with trail->start spots, and then holds all that the way led to. */
const void *memory_find(struct memory *memory, struct memory_key key, struct arena *arena,
                        struct trail *trail, const struct fields *fields);

/* Remembers what came of the trail; it stays the memory's to free. False when there is no room,
 * or the trail leads elsewhere than others did that were answered the same. */
bool memory_keep(struct memory *memory, struct memory_key key, struct arena *arena,
                 const struct trail *trail, const void *outcome);

/* Room in the memory: as arena_alloc and its kin, NULL also when it is full. Strings and
 * blocks of what is to be kept. */
void *memory_alloc(struct memory *memory, size_t size);
const char *memory_copy(struct memory *memory, const char *text);
const void *memory_copy_array(struct memory *memory, const void *array, size_t count, size_t size);
const char *const *memory_copy_texts(struct memory *memory, const char *const *texts, size_t count);

/* What the value points to. */
void memory_copy_value(struct memory *memory, struct value *value);
bool memory_full(const struct memory *memory);

/* Bytes remembered so far; 0 of none. */
size_t memory_bytes(const struct memory *memory);

/* Lets whoever writes a finding keep what is written in the memory; said_anew: but for what
 * is said of it. */
struct kept_json;
void memory_lend(struct memory *memory, struct kept_json *kept, bool said_anew);

#endif
