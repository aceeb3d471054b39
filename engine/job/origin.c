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
    if (json_type(node) != cJSON_Object && json_type(node->child) != cJSON_Object) {
        if (json_type(node) != cJSON_NULL)
            counts[origin_of(node)]++;
        return;
    }
    for (const cJSON *child = node->child; child != NULL; child = child->next) {
        /* Most are a plain value: that takes no call. */
        if (child->child == NULL && json_type(child) < cJSON_Array
            && json_type(child) != cJSON_NULL)
            counts[origin_of(child)]++;
        else
            origin_count(child, counts);
    }
}
