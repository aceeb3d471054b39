/* origin.h - where a fact of a job comes from.
 *
 * A job's tree is one cJSON tree whoever filled it in. The origin of a value
 * stands in a part of its `type` that cJSON leaves alone (it looks at the
 * lowest ten bits only); cJSON_Duplicate carries it along. What nobody has
 * marked is the job's own.
 */
#ifndef EAVEMARK_JOB_ORIGIN_H
#define EAVEMARK_JOB_ORIGIN_H

#include <cjson/cJSON.h>
#include <stdbool.h>
#include <stddef.h>

enum origin {
    ORIGIN_JOB,     /* written in the job, or asked by its writer */
    ORIGIN_PLAN,    /* laid out from the plan of the house (lay_out.h) */
    ORIGIN_SHOP,    /* the shop sheet */
    ORIGIN_PLACE,   /* one all over the place */
    ORIGIN_DERIVED, /* follows from other facts */
    ORIGIN_USUAL,   /* said nowhere: what is usual, where no code is concerned */
    ORIGIN_COUNT
};

/* "job", "plan" ... as in the JSON contract. */
const char *origin_word(enum origin origin);

/* Marks a value and all below it. */
void origin_mark(cJSON *node, enum origin origin);

/* Above cJSON_StringIsConst (1 << 9), the highest bit that cJSON uses. Kept in the tree and
 * not beside it: a copy of the job carries it along. */
enum { ORIGIN_SHIFT = 12, ORIGIN_MASK = 7, ORIGIN_DENIED = 1 << 15, ORIGIN_DOUBTFUL = 1 << 16 };

/* Of NULL: the job's. */
static inline enum origin origin_of(const cJSON *node)
{
    return node == NULL ? ORIGIN_JOB
                        : (enum origin)(((unsigned)node->type >> ORIGIN_SHIFT) & ORIGIN_MASK);
}

/* Marks the job's own word on a fact that its place states otherwise. */
static inline void origin_deny(cJSON *node)
{
    node->type |= ORIGIN_DENIED;
}

static inline bool origin_is_denied(const cJSON *node)
{
    return node != NULL && (node->type & ORIGIN_DENIED) != 0;
}

/* Marks a fact that follows by a figure which was read in a sister text only. */
static inline void origin_doubt(cJSON *node)
{
    node->type |= ORIGIN_DOUBTFUL;
}

static inline bool origin_is_doubtful(const cJSON *node)
{
    return node != NULL && (node->type & ORIGIN_DOUBTFUL) != 0;
}

/* Adds up the facts of a tree by where they are from: values, not the groups and lists that
 * hold them, and no null. */
void origin_count(const cJSON *node, size_t counts[ORIGIN_COUNT]);

#endif
