#include "job/tree.h"

cJSON *tree_node(struct arena *arena, int type)
{
    struct tree_node *node = arena_room(arena, 1, sizeof(*node));
    return node == NULL ? NULL : tree_node_at(node, type);
}

/* Recursion is bounded by JSON_DEEPEST. */
cJSON *tree_copy(struct arena *arena, const cJSON *node)
{
    cJSON *copy = tree_node(arena, node->type);
    if (copy == NULL)
        return NULL;
    copy->string = arena_copy(arena, node->string);
    copy->valuestring = arena_copy(arena, node->valuestring);
    copy->valuedouble = node->valuedouble;
    copy->valueint = node->valueint;
    for (const cJSON *child = node->child; child != NULL && !arena->failed; child = child->next)
        cJSON_AddItemToArray(copy, tree_copy(arena, child));
    return arena->failed ? NULL : copy;
}

/* Recursion is bounded by JSON_DEEPEST. */
void tree_free(cJSON *node)
{
    while (node != NULL) {
        cJSON *next = node->next;
        tree_free(node->child);
        node->child = node->next = NULL;
        if (!tree_is_of_arena(node))
            cJSON_Delete(node);
        node = next;
    }
}

void tree_drop(cJSON *object, const char *key)
{
    tree_free(cJSON_DetachItemFromObjectCaseSensitive(object, key));
}

/* As cJSON_ReplaceItemViaPointer does it, which would free old: the first child's prev is the
 * last. */
void tree_replace(cJSON *parent, cJSON *old, cJSON *value)
{
    value->next = old->next;
    value->prev = old->prev == old ? value : old->prev;
    if (parent->child == old)
        parent->child = value;
    else
        value->prev->next = value;
    if (value->next != NULL)
        value->next->prev = value;
    else
        parent->child->prev = value;
    old->next = old->prev = NULL;
    tree_free(old);
}

/* Recursion is bounded by FIELDS_DEEPEST. */
const cJSON *tree_at(const cJSON *job, const struct field *field)
{
    return field->parent == NULL ? job : tree_member(tree_at(job, field->parent), field);
}
