#include "judge/memory.h"

#include "judge/finding.h"

#include <stdint.h>
#include <stdlib.h>
#include <string.h>

struct branch {
    unsigned answer; /* yes or no, a count, the number of a word */
    bool ends;       /* with the outcome of the way up to here; else the next question follows */
    union {
        struct fork *next; /* NULL: nothing is known yet */
        const void *outcome;
    };
};

/* A question, and what follows each answer to it; side by side, for they are looked through
 * for every job. */
struct fork {
    struct step step;
    struct branch first;
    struct branch *others;
    unsigned count, capacity; /* the first is counted too */
};

/* The beginnings of the trees of one stage, by whose they are; their answer is nobody's. Rules
 * are gone through in order, and most of what each is asked first stands beside that. */
struct trees {
    struct branch *begin;
    size_t count;
};

/* A value that some way asked for: whatever job has it, it goes by its number. */
struct word {
    struct spot_value value;
    unsigned number;
    struct word *other;
};

enum {
    WORDS = 4096, /* values of all facts, thinly; a power of two */
    WORD_UNKNOWN = 1,
    STANDINGS = 16, /* more than spot_standing gives */
};

struct memory {
    struct arena arena;
    size_t used;
    bool closed;
    struct trees trees[MEMORY_STAGES];
    struct word *words[WORDS];
    unsigned last_word;
    struct text room; /* for the value of a list */
};

struct memory *memory_open(void)
{
    struct memory *memory = calloc(1, sizeof(*memory));
    if (memory != NULL)
        memory->last_word = WORD_UNKNOWN;
    return memory;
}

void memory_free(struct memory *memory)
{
    if (memory == NULL)
        return;
    arena_free(&memory->arena);
    text_free(&memory->room);
    free(memory);
}

void memory_close(struct memory *memory)
{
    if (memory != NULL)
        memory->closed = true;
}

bool memory_full(const struct memory *memory)
{
    return memory->closed || memory->used > MEMORY_MOST || memory->arena.failed;
}

size_t memory_bytes(const struct memory *memory)
{
    return memory == NULL ? 0 : memory->used;
}

void *memory_alloc(struct memory *memory, size_t size)
{
    if (memory_full(memory) || size > MEMORY_MOST)
        return NULL;
    memory->used += size + 16;
    return arena_alloc(&memory->arena, size);
}

const char *memory_copy(struct memory *memory, const char *text)
{
    const size_t length = text == NULL ? 0 : strlen(text);
    char *copy = text == NULL ? NULL : memory_alloc(memory, length + 1);
    return copy == NULL ? NULL : memcpy(copy, text, length);
}

void memory_lend(struct memory *memory, struct kept_json *kept, bool said_anew)
{
    kept->said_anew = said_anew;
    kept->arena = &memory->arena;
    kept->used = &memory->used;
    kept->most = MEMORY_MOST;
}

/* Trees ---------------------------------------------------------------------------------- */

/* NULL: none begins there. */
static struct branch *tree_find(struct memory *memory, struct memory_key key)
{
    const struct trees *trees = &memory->trees[key.stage];
    return key.of < trees->count ? &trees->begin[key.of] : NULL;
}

/* NULL when there is no room. */
static struct branch *tree_make(struct memory *memory, struct memory_key key)
{
    enum { AT_FIRST = 1024 };
    struct trees *trees = &memory->trees[key.stage];
    if (key.of >= trees->count) {
        const size_t count = key.of < AT_FIRST ? AT_FIRST : 2 * key.of;
        struct branch *more = memory_alloc(memory, count * sizeof(*more));
        if (more == NULL)
            return NULL;
        if (trees->count > 0)
            memcpy(more, trees->begin, trees->count * sizeof(*more));
        *trees = (struct trees){more, count};
    }
    return &trees->begin[key.of];
}

/* Words ---------------------------------------------------------------------------------- */

/* FNV-1a, of Fowler, Noll and Vo. */
static struct word **word_slot(struct memory *memory, const struct spot_value *value)
{
    uint32_t hash = 2166136261u ^ (unsigned char)value->kind;
    for (size_t i = 0; i < value->length; i++)
        hash = (hash ^ (unsigned char)value->bytes[i]) * 16777619u;
    return &memory->words[(hash ^ hash >> 15) % WORDS];
}

static bool is_same_value(const struct spot_value *a, const struct spot_value *b)
{
    return a->kind == b->kind && a->length == b->length
           && (a->length == 0 || memcmp(a->bytes, b->bytes, a->length) == 0);
}

static unsigned word_add(struct memory *memory, struct word **slot, const struct spot_value *value)
{
    struct word *word = memory_alloc(memory, sizeof(*word));
    char *bytes = value->length == 0 ? NULL : memory_alloc(memory, value->length);
    if (word == NULL || (value->length > 0 && bytes == NULL))
        return WORD_UNKNOWN;
    *word = (struct word){.value = *value, .number = ++memory->last_word, .other = *slot};
    if (bytes != NULL)
        word->value.bytes = memcpy(bytes, value->bytes, value->length);
    *slot = word;
    return word->number;
}

/* The number of what a spot holds, found once; one that no way asked for is unknown until
 * one that is kept does. */
static unsigned word_find(struct memory *memory, struct spot *spot, bool keeping)
{
    const struct spot_value value = spot_value(&memory->room, spot->json);
    if (memory->room.failed) {
        text_free(&memory->room);
        return WORD_UNKNOWN;
    }
    struct word **slot = word_slot(memory, &value);
    const struct word *word = *slot;
    while (word != NULL && !is_same_value(&word->value, &value))
        word = word->other;
    spot->word = word != NULL ? word->number
                 : keeping    ? word_add(memory, slot, &value)
                              : WORD_UNKNOWN;
    return spot->word;
}

/* Answers -------------------------------------------------------------------------------- */

static inline unsigned answer_of(struct memory *memory, struct arena *arena,
                                 const struct trail *trail, size_t index, const struct step *step,
                                 struct spot *spot, bool keeping)
{
    switch (step->kind) {
    case STEP_ITEM:
        return (unsigned)trail_is(trail, index, spot);
    case STEP_CHILD:
        return spot->stands;
    case STEP_FOLLOW:
        return spot == NULL || spot->stands == 0
                   ? 0
                   : spot->stands + STANDINGS * (unsigned)trail_is(trail, index, spot);
    case STEP_COUNT:
        return (unsigned)spot_count(arena, spot);
    case STEP_VALUE:
        return spot->word > WORD_UNKNOWN || (spot->word == WORD_UNKNOWN && !keeping)
                   ? spot->word
                   : word_find(memory, spot, keeping);
    }
    return 0;
}

static inline struct branch *branch_find(struct fork *fork, unsigned answer)
{
    if (fork->count > 0 && fork->first.answer == answer)
        return &fork->first;
    for (size_t i = 0; i + 1 < fork->count; i++)
        if (fork->others[i].answer == answer)
            return &fork->others[i];
    return NULL;
}

/* Where a step leads from a spot that is known; *answer: what is answered there. false when
 * out of memory. Of spots that a step led to, only items can be come to again as others. */
static inline bool take_step(struct memory *memory, const struct step *step, struct spot *from,
                             struct trail *trail, size_t index, struct arena *arena,
                             const struct fields *fields, unsigned *answer)
{
    struct spot *to = from;
    switch (step->kind) {
    case STEP_CHILD:
        to = spot_child(arena, from, step->field);
        break;
    case STEP_ITEM:
        to = spot_item(arena, from, step->number);
        trail_know(trail, index, to);
        break;
    case STEP_FOLLOW:
        to = spot_referred(arena, from, fields);
        trail_know(trail, index, to);
        break;
    case STEP_VALUE:
    case STEP_COUNT:
        break;
    }
    trail->known[index] = to;
    if (to == NULL && step->kind != STEP_FOLLOW)
        return false;
    *answer = answer_of(memory, arena, trail, index, step, to, false);
    return true;
}

const void *memory_find(struct memory *memory, struct memory_key key, struct arena *arena,
                        struct trail *trail, const struct fields *fields)
{
    const struct branch *branch = memory->closed ? NULL : tree_find(memory, key);
    size_t count = 0;
    unsigned answer;
    while (branch != NULL && !branch->ends && branch->next != NULL) {
        struct fork *fork = branch->next;
        struct spot *from = trail->known[fork->step.from];
        trail->asked[count] = &fork->step;
        if (from == NULL
            || !take_step(memory, &fork->step, from, trail, trail->start + count, arena, fields,
                          &answer))
            break;
        count++;
        branch = branch_find(fork, answer);
    }
    trail->count = count;
    return branch == NULL || !branch->ends ? NULL : branch->outcome;
}

/* Where the next branch goes; NULL when there is no room. */
static struct branch *branch_room(struct memory *memory, struct fork *fork)
{
    if (fork->count == 0)
        return &fork->first;
    if (fork->count > fork->capacity) {
        const unsigned capacity = fork->capacity == 0 ? 2 : 2 * fork->capacity;
        struct branch *more = memory_alloc(memory, capacity * sizeof(*more));
        if (more == NULL)
            return NULL;
        if (fork->count > 1)
            memcpy(more, fork->others, (fork->count - 1) * sizeof(*more));
        fork->others = more;
        fork->capacity = capacity;
    }
    return &fork->others[fork->count - 1];
}

/* The branch of the answer, made where there is none. */
static struct branch *branch_make(struct memory *memory, struct fork *fork, unsigned answer)
{
    struct branch *branch = branch_find(fork, answer);
    if (branch != NULL || fork->count == MEMORY_ANSWERS_MOST)
        return branch;
    branch = branch_room(memory, fork);
    if (branch == NULL)
        return NULL;
    *branch = (struct branch){.answer = answer};
    fork->count++;
    return branch;
}

static bool asks(const struct fork *fork, const struct step *step)
{
    return fork->step.kind == step->kind && fork->step.from == step->from
           && fork->step.number == step->number && fork->step.field == step->field;
}

bool memory_keep(struct memory *memory, struct memory_key key, struct arena *arena,
                 const struct trail *trail, const void *outcome)
{
    struct branch *branch = tree_make(memory, key);
    struct fork *fresh = NULL;
    for (size_t i = 0; branch != NULL && i < trail->count; i++) {
        const struct step *step = &trail->steps[i];
        if (!branch->ends && branch->next == NULL) {
            /* From here on each is a new one. */
            if (fresh == NULL)
                fresh = memory_alloc(memory, (trail->count - i) * sizeof(*fresh));
            if (fresh == NULL)
                return false;
            fresh->step = *step;
            branch->next = fresh++;
        }
        /* The same answers, and it asked otherwise: it goes by something else. */
        if (branch->ends || branch->next == NULL || !asks(branch->next, step))
            return false;
        const size_t index = trail->start + i;
        struct spot *to = trail->known[index];
        const unsigned answer = answer_of(memory, arena, trail, index, step, to, true);
        /* No memory for the value: what comes of it cannot be kept. */
        const bool kept = step->kind != STEP_VALUE || answer != WORD_UNKNOWN;
        branch = kept ? branch_make(memory, branch->next, answer) : NULL;
    }
    if (branch == NULL || (!branch->ends && branch->next != NULL))
        return false;
    branch->ends = true;
    branch->outcome = outcome;
    return true;
}
