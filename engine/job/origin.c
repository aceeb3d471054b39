#include "job/origin.h"

#include <stdbool.h>
#include <stddef.h>

/* Above cJSON_StringIsConst (1 << 9), the highest bit that cJSON uses. */
enum { ORIGIN_SHIFT = 12, ORIGIN_MASK = 7, ORIGIN_DENIED = 1 << 15, ORIGIN_DOUBTFUL = 1 << 16 };

const char *origin_word(enum origin origin)
{
    static const char *const WORDS[ORIGIN_COUNT] = {
        [ORIGIN_JOB] = "job",     [ORIGIN_PLAN] = "plan",       [ORIGIN_SHOP] = "shop",
        [ORIGIN_PLACE] = "place", [ORIGIN_DERIVED] = "derived", [ORIGIN_USUAL] = "usual",
    };
    return WORDS[origin];
}

/* Recursion is bounded by JSON_DEEPEST. What was marked before is marked anew. */
void origin_mark(cJSON *node, enum origin origin)
{
    if (node == NULL)
        return;
    node->type = (node->type & ~(ORIGIN_MASK << ORIGIN_SHIFT)) | ((int)origin << ORIGIN_SHIFT);
    for (cJSON *child = node->child; child != NULL; child = child->next)
        origin_mark(child, origin);
}

enum origin origin_of(const cJSON *node)
{
    return node == NULL ? ORIGIN_JOB : (enum origin)((node->type >> ORIGIN_SHIFT) & ORIGIN_MASK);
}

/* Kept in the tree and not beside it: a copy of the job carries it along. */
void origin_deny(cJSON *node)
{
    node->type |= ORIGIN_DENIED;
}

bool origin_is_denied(const cJSON *node)
{
    return node != NULL && (node->type & ORIGIN_DENIED) != 0;
}

void origin_doubt(cJSON *node)
{
    node->type |= ORIGIN_DOUBTFUL;
}

bool origin_is_doubtful(const cJSON *node)
{
    return node != NULL && (node->type & ORIGIN_DOUBTFUL) != 0;
}

/* A list of numbers or words is one fact. Recursion is bounded by JSON_DEEPEST. */
void origin_count(const cJSON *node, size_t counts[ORIGIN_COUNT])
{
    const bool holds = cJSON_IsObject(node) || cJSON_IsObject(node->child);
    if (!holds && !cJSON_IsNull(node))
        counts[origin_of(node)]++;
    for (const cJSON *child = holds ? node->child : NULL; child != NULL; child = child->next)
        origin_count(child, counts);
}
