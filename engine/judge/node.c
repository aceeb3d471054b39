/* node.c - places in the job: what is below one, what one is called, what one refers to. */
#include "job/path.h"
#include "job/validate.h"
#include "judge/judging.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

struct node node_child(struct judging *judging, const struct node *parent,
                       const struct field *child)
{
    struct node node = {.field = child};
    node.pointer = path_key(judging->arena, parent->pointer, child->name);
    if (parent->json != NULL)
        node.json = cJSON_GetObjectItemCaseSensitive(parent->json, child->name);
    if (node.json != NULL && !validate_value_fits(node.json, child))
        node.json = NULL;
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
    const char *slash = strrchr(node->pointer, '/');
    return arena_format(judging->arena, "%s %lu", node->field->name,
                        slash == NULL ? 0 : strtoul(slash + 1, NULL, 10) + 1);
}

/* The list that a reference points into: a path of plain names. */
static struct node referred_list(struct judging *judging, const char *path)
{
    struct node node = {.json = judging->job, .field = judging->book->fields.root, .pointer = ""};
    char part[128];
    while (*path != '\0') {
        const size_t length = strcspn(path, ".");
        /* A name that is cut short here is no field's. */
        snprintf(part, sizeof(part), "%.*s", (int)length, path);
        const struct field *child = fields_child(node.field, part);
        if (child == NULL)
            return (struct node){0};
        node = node_child(judging, &node, child);
        path += length + (path[length] == '.');
    }
    return node;
}

bool node_referred(struct judging *judging, const struct node *reference, struct node *out)
{
    const struct node list = referred_list(judging, reference->field->refers);
    size_t index = 0;
    const cJSON *item = NULL;
    cJSON_ArrayForEach(item, list.json) {
        const cJSON *name = cJSON_GetObjectItemCaseSensitive(item, "name");
        if (cJSON_IsString(name) && strcmp(name->valuestring, reference->json->valuestring) == 0) {
            *out = (struct node){item, list.field, true,
                                 path_item(judging->arena, list.pointer, index)};
            return true;
        }
        index++;
    }
    return false;
}
