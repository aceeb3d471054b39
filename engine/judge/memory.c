#include "judge/memory.h"

#include "job/origin.h"
#include "judge/finding.h"

#include <stdint.h>
#include <stdlib.h>
#include <string.h>

/* What a spot answered. */
struct answer {
    size_t number; /* yes or no, a count, a kind of value */
    const char *bytes;
    size_t length;
};

struct branch;

/* A question, and what follows each answer to it. */
struct fork {
    struct step step;
    struct branch *branches;
    size_t branch_count;
};

struct branch {
    struct answer answer;
    struct fork *next;
    const void *outcome; /* of the way up to here; then there is no next */
    struct branch *other;
};

struct tree {
    struct memory_key key;
    struct branch begin; /* its answer is nobody's */
    struct tree *other;
};

enum { TREES = 4096 }; /* a power of two: rules and functions times stages, thinly */

struct memory {
    struct arena arena;
    size_t used;
    bool closed;
    struct tree *trees[TREES];
};

struct memory *memory_open(void)
{
    return calloc(1, sizeof(struct memory));
}

void memory_free(struct memory *memory)
{
    if (memory == NULL)
        return;
    arena_free(&memory->arena);
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

void memory_lend(struct memory *memory, struct kept_json *kept)
{
    kept->arena = &memory->arena;
    kept->used = &memory->used;
    kept->most = MEMORY_MOST;
}

/* Trees ---------------------------------------------------------------------------------- */

static size_t slot_of(struct memory_key key)
{
    const size_t mixed = (size_t)(uintptr_t)key.of / 16 + (size_t)(key.function + 1) * 8
                         + key.stage;
    return mixed % TREES;
}

static struct tree *tree_find(struct memory *memory, struct memory_key key)
{
    struct tree *tree = memory->trees[slot_of(key)];
    while (tree != NULL
           && (tree->key.of != key.of || tree->key.function != key.function
               || tree->key.stage != key.stage))
        tree = tree->other;
    return tree;
}

static struct tree *tree_make(struct memory *memory, struct memory_key key)
{
    struct tree *tree = tree_find(memory, key);
    if (tree != NULL)
        return tree;
    tree = memory_alloc(memory, sizeof(*tree));
    if (tree != NULL) {
        struct tree **slot = &memory->trees[slot_of(key)];
        *tree = (struct tree){.key = key, .other = *slot};
        *slot = tree;
    }
    return tree;
}

/* Answers -------------------------------------------------------------------------------- */

/* A fact of the place, or one that it states otherwise, stands otherwise than the same of
 * the job: what came of it is surer or less sure. */
static size_t standing_of(const cJSON *node)
{
    return (origin_of(node) == ORIGIN_PLACE ? 1u : 0u) + (origin_is_denied(node) ? 2u : 0u);
}

static struct answer answer_of(struct arena *arena, const struct step *step, struct spot *spot)
{
    switch (step->kind) {
    case STEP_ITEM:
        break;
    case STEP_CHILD:
    case STEP_FOLLOW:
        return (struct answer){
            .number = spot == NULL || spot->json == NULL ? 0 : 1 + standing_of(spot->json)};
    case STEP_COUNT:
        return (struct answer){.number = spot_count(arena, spot)};
    case STEP_VALUE:
        spot_value(arena, spot);
        return (struct answer){(size_t)spot->value_kind, spot->value, spot->value_length};
    }
    return (struct answer){.number = 0};
}

static bool is_same_answer(const struct answer *a, const struct answer *b)
{
    return a->number == b->number && a->length == b->length
           && (a->length == 0 || memcmp(a->bytes, b->bytes, a->length) == 0);
}

static struct branch *branch_find(const struct fork *fork, const struct answer *answer)
{
    struct branch *branch = fork->branches;
    while (branch != NULL && !is_same_answer(&branch->answer, answer))
        branch = branch->other;
    return branch;
}

/* Where a step leads from the spots known. */
static struct spot *step_to(struct arena *arena, const struct step *step, struct spot *from,
                            const struct fields *fields)
{
    switch (step->kind) {
    case STEP_CHILD:
        return spot_child(arena, from, step->field);
    case STEP_ITEM:
        return spot_item(arena, from, step->number);
    case STEP_FOLLOW:
        return spot_referred(arena, from, fields);
    case STEP_VALUE:
    case STEP_COUNT:
        break;
    }
    return from;
}

const void *memory_find(struct memory *memory, struct memory_key key, struct arena *arena,
                        struct trail *trail, const struct fields *fields)
{
    const struct tree *tree = memory->closed ? NULL : tree_find(memory, key);
    const struct branch *branch = tree == NULL ? NULL : &tree->begin;
    trail->count = 0;
    while (branch != NULL && branch->next != NULL) {
        const struct fork *fork = branch->next;
        struct spot *from = trail->known[fork->step.from];
        struct spot *to = from == NULL ? NULL : step_to(arena, &fork->step, from, fields);
        if (from == NULL || (to == NULL && fork->step.kind != STEP_FOLLOW))
            return NULL; /* out of memory */
        trail->known[trail->start + trail->count++] = to;
        const struct answer answer = answer_of(arena, &fork->step, to);
        branch = branch_find(fork, &answer);
    }
    return branch == NULL ? NULL : branch->outcome;
}

/* The branch of the answer, made where there is none. */
static struct branch *branch_make(struct memory *memory, struct fork *fork,
                                  const struct answer *answer)
{
    struct branch *branch = branch_find(fork, answer);
    if (branch != NULL || fork->branch_count == MEMORY_ANSWERS_MOST)
        return branch;
    char *bytes = answer->length == 0 ? NULL : memory_alloc(memory, answer->length);
    branch = memory_alloc(memory, sizeof(*branch));
    if (branch == NULL || (answer->length > 0 && bytes == NULL))
        return NULL;
    *branch = (struct branch){.answer = *answer, .other = fork->branches};
    if (bytes != NULL)
        branch->answer.bytes = memcpy(bytes, answer->bytes, answer->length);
    fork->branches = branch;
    fork->branch_count++;
    return branch;
}

static bool asks(const struct fork *fork, const struct step *step)
{
    return fork->step.kind == step->kind && fork->step.from == step->from
           && fork->step.number == step->number && fork->step.field == step->field;
}

void memory_keep(struct memory *memory, struct memory_key key, struct arena *arena,
                 const struct trail *trail, const void *outcome)
{
    struct tree *tree = tree_make(memory, key);
    struct branch *branch = tree == NULL ? NULL : &tree->begin;
    for (size_t i = 0; branch != NULL && i < trail->count; i++) {
        const struct step *step = &trail->steps[i];
        if (branch->next == NULL && branch->outcome == NULL) {
            branch->next = memory_alloc(memory, sizeof(*branch->next));
            if (branch->next != NULL)
                branch->next->step = *step;
        }
        /* The same answers, and it asked otherwise: it goes by something else. */
        if (branch->next == NULL || !asks(branch->next, step))
            return;
        const struct answer answer = answer_of(arena, step, trail->known[trail->start + i]);
        branch = branch_make(memory, branch->next, &answer);
    }
    if (branch != NULL && branch->next == NULL && branch->outcome == NULL)
        branch->outcome = outcome;
}
