/* node.c - places in the job: what is below one, what one is called, what one refers to. */
#include "judge/judging.h"

#include <string.h>

static struct node node_of(struct judging *judging, struct spot *spot)
{
    if (spot == NULL) /* out of memory, which whoever ends the call sees by the arena */
        return (struct node){.field = judging->book->fields.root, .pointer = ""};
    return (struct node){spot->json, spot->field, spot->item, spot_pointer(judging->arena, spot),
                         spot};
}

struct node node_root(struct judging *judging)
{
    if (judging->root == NULL)
        judging->root = spot_root(judging->arena, judging->job, &judging->book->fields);
    return node_of(judging, judging->root);
}

struct node node_child(struct judging *judging, const struct node *parent,
                       const struct field *child)
{
    struct node node = node_of(judging, spot_child(judging->arena, parent->spot, child));
    node.field = child;
    return node;
}

size_t node_count(struct judging *judging, const struct node *list)
{
    return spot_count(judging->arena, list->spot);
}

struct node node_item(struct judging *judging, const struct node *list, size_t number)
{
    struct node node = node_of(judging, spot_item(judging->arena, list->spot, number));
    node.field = list->field;
    return node;
}

static const char *item_text(const struct node *item, const char *key)
{
    const cJSON *text = cJSON_GetObjectItemCaseSensitive(item->json, key);
    return cJSON_IsString(text) ? text->valuestring : NULL;
}

/* An item without a name goes by its place in the list, counted from one as people count. */
const char *node_name(const struct judging *judging, const struct node *node)
{
    if (!node->item)
        return NULL;
    const char *name = item_text(node, "name");
    if (name != NULL && name[0] != '\0')
        return arena_copy(judging->arena, name); /* findings outlive the job */
    return arena_format(judging->arena, "%s %zu", node->field->name,
                        node->spot == NULL ? 0 : node->spot->number + 1);
}

/* The list that a reference points into: a path of plain names. */
static struct spot *referred_list(struct judging *judging, const char *path)
{
    const struct field *list = fields_find(&judging->book->fields, path);
    const struct field *way[FIELDS_DEEPEST];
    size_t count = 0;
    for (const struct field *f = list; f != NULL && f->parent != NULL; f = f->parent) {
        if (count == FIELDS_DEEPEST)
            return NULL;
        way[count++] = f;
    }
    struct spot *spot = node_root(judging).spot;
    while (count > 0)
        spot = spot_child(judging->arena, spot, way[--count]);
    return spot;
}

/* Looked for once, however many ask. */
static struct spot *referred(struct judging *judging, struct spot *reference)
{
    if (reference->followed)
        return reference->referred;
    reference->followed = true;
    struct spot *list = referred_list(judging, reference->field->refers);
    const size_t count = spot_count(judging->arena, list);
    for (size_t i = 0; i < count; i++) {
        struct spot *item = spot_item(judging->arena, list, i);
        const cJSON *name = cJSON_GetObjectItemCaseSensitive(item->json, "name");
        if (cJSON_IsString(name) && strcmp(name->valuestring, reference->json->valuestring) == 0)
            return reference->referred = item;
    }
    return NULL;
}

bool node_referred(struct judging *judging, const struct node *reference, struct node *out)
{
    struct spot *item = reference->spot == NULL || reference->json == NULL
                            ? NULL
                            : referred(judging, reference->spot);
    if (item != NULL)
        *out = node_of(judging, item);
    return item != NULL;
}
