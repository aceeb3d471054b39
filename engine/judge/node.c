/* node.c - places in the job: what is below one, what one is called, what one refers to. */
#include "judge/judging.h"

#include <string.h>

static struct node node_of(struct judging *judging, struct spot *spot)
{
    if (spot == NULL) { /* out of memory, which whoever ends the call sees by the arena */
        judging->arena->failed = true;
        return (struct node){.field = judging->book->fields.root, .pointer = ""};
    }
    const char *pointer = spot->pointer != NULL ? spot->pointer
                                                : spot_pointer(judging->spots, spot);
    return (struct node){spot->json, spot->field, spot->item, pointer, spot, 0};
}

struct node node_root(struct judging *judging)
{
    if (judging->root == NULL)
        judging->root = spot_root(judging->spots, judging->job, &judging->book->fields);
    return node_of(judging, judging->root);
}

struct node node_child(struct judging *judging, const struct node *parent,
                       const struct field *child)
{
    struct node node = node_of(judging, spot_child(judging->spots, parent->spot, child));
    node.field = child;
    trail_touch(&judging->trail, node.spot);
    node.known = trail_step(&judging->trail, trail_to(STEP_CHILD, parent->known, child, 0),
                            node.spot);
    return node;
}

size_t node_count(struct judging *judging, const struct node *list)
{
    trail_step(&judging->trail, trail_to(STEP_COUNT, list->known, NULL, 0), list->spot);
    trail_touch(&judging->trail, list->spot);
    const size_t count = spot_count(judging->spots, list->spot);
    judging->arena->failed = judging->arena->failed || judging->spots->failed;
    return count;
}

struct node node_item(struct judging *judging, const struct node *list, size_t number)
{
    struct node node = node_of(judging, spot_item(judging->spots, list->spot, number));
    node.field = list->field;
    trail_touch(&judging->trail, list->spot);
    trail_touch(&judging->trail, node.spot);
    node.known = trail_step(&judging->trail, trail_to(STEP_ITEM, list->known, NULL, number),
                            node.spot);
    return node;
}

/* What the job itself calls an item; NULL where it does not. */
static const char *own_name(const struct node *item)
{
    const char *name = cJSON_GetStringValue(cJSON_GetObjectItemCaseSensitive(item->json, "name"));
    return name == NULL || name[0] == '\0' ? NULL : name;
}

/* An item without a name goes by its place in the list, counted from one as people count. */
const char *node_name(const struct judging *judging, const struct node *node)
{
    if (!node->item)
        return NULL;
    const char *name = own_name(node);
    if (name != NULL)
        return arena_copy(judging->arena, name); /* findings outlive the job */
    return arena_format(judging->arena, "%s %zu", node->field->name,
                        node->spot == NULL ? 0 : node->spot->number + 1);
}

bool node_referred(struct judging *judging, const struct node *reference, struct node *out)
{
    struct spot *item = reference->spot == NULL || reference->json == NULL
                            ? NULL
                            : spot_referred(judging->spots, reference->spot,
                                            &judging->book->fields);
    trail_touch_referred(&judging->trail, reference->spot, item);
    /* One that names nothing leads nowhere, and that is noted too. */
    const unsigned known = trail_step(&judging->trail,
                                      trail_to(STEP_FOLLOW, reference->known, NULL, 0),
                                      item == NULL ? &judging->trail.nowhere : item);
    if (item == NULL)
        return false;
    *out = node_of(judging, item);
    out->known = known;
    return true;
}

void node_reads_value(struct judging *judging, const struct node *node)
{
    trail_step(&judging->trail, trail_to(STEP_VALUE, node->known, NULL, 0), node->spot);
    ask_figure_derived(judging, node);
}
