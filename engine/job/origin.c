#include "job/origin.h"

#include "job/json.h"

#include <stdbool.h>
#include <stddef.h>

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

/* A list of numbers or words is one fact. Recursion is bounded by JSON_DEEPEST. */
void origin_count(const cJSON *node, size_t counts[ORIGIN_COUNT])
{
    const bool holds = json_type(node) == cJSON_Object || json_type(node->child) == cJSON_Object;
    if (!holds && !json_is_absent(node))
        counts[origin_of(node)]++;
    for (const cJSON *child = holds ? node->child : NULL; child != NULL; child = child->next)
        origin_count(child, counts);
}
