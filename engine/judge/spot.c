#include "judge/spot.h"

#include "job/path.h"
#include "job/validate.h"

#include <string.h>

struct spot *spot_root(struct arena *arena, const cJSON *job, const struct fields *fields)
{
    struct spot *root = arena_alloc(arena, sizeof(*root));
    if (root != NULL)
        *root = (struct spot){.json = job, .field = fields->root, .pointer = ""};
    return root;
}

/* Jobs are mostly written in the catalogue's order: the field after the last one is
 * looked at first. */
static const struct field *field_of(const struct field *parent, const struct field *guess,
                                    const char *name)
{
    return guess != NULL && strcmp(guess->name, name) == 0 ? guess : fields_child(parent, name);
}

/* A field of another place's, or one of two of a name, is passed over. */
static void fill_fields(struct spot *spot)
{
    const struct field *guess = spot->field->first_child;
    for (const cJSON *node = spot->json->child; node != NULL; node = node->next) {
        const struct field *field = node->string == NULL
                                        ? NULL
                                        : field_of(spot->field, guess, node->string);
        if (field == NULL)
            continue;
        struct spot *below = &spot->below[field->index];
        if (below->json == NULL && validate_value_fits(node, field))
            below->json = node;
        guess = field->next;
    }
}

static void open_fields(struct arena *arena, struct spot *spot)
{
    spot->below = arena_array(arena, spot->field->child_count + 1, sizeof(*spot->below));
    if (spot->below == NULL)
        return;
    spot->below_count = spot->field->child_count;
    for (const struct field *field = spot->field->first_child; field != NULL; field = field->next) {
        spot->below[field->index].field = field;
        spot->below[field->index].parent = spot;
    }
    if (spot->json != NULL)
        fill_fields(spot);
}

struct spot *spot_child(struct arena *arena, struct spot *spot, const struct field *child)
{
    if (spot == NULL)
        return NULL;
    if (spot->below == NULL)
        open_fields(arena, spot);
    return spot->below == NULL ? NULL : &spot->below[child->index];
}

static void open_items(struct arena *arena, struct spot *list)
{
    const size_t count = list->json == NULL ? 0 : (size_t)cJSON_GetArraySize(list->json);
    const cJSON *item = NULL;
    list->below = arena_array(arena, count + 1, sizeof(*list->below));
    if (list->below == NULL)
        return;
    cJSON_ArrayForEach(item, list->json) {
        const size_t number = list->below_count++;
        list->below[number] = (struct spot){
            .json = item, .field = list->field, .item = true, .parent = list, .number = number};
    }
}

size_t spot_count(struct arena *arena, struct spot *list)
{
    if (list != NULL && list->below == NULL)
        open_items(arena, list);
    return list == NULL ? 0 : list->below_count;
}

struct spot *spot_item(struct arena *arena, struct spot *list, size_t number)
{
    return number < spot_count(arena, list) ? &list->below[number] : NULL;
}

const char *spot_pointer(struct arena *arena, struct spot *spot)
{
    if (spot == NULL)
        return "";
    if (spot->pointer == NULL) {
        const char *above = spot_pointer(arena, spot->parent);
        spot->pointer = spot->item ? path_item(arena, above, spot->number)
                                   : path_key(arena, above, spot->field->name);
    }
    return spot->pointer == NULL ? "" : spot->pointer;
}
