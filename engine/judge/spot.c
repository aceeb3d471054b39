#include "judge/spot.h"

#include "base/text.h"
#include "job/origin.h"
#include "job/path.h"
#include "job/tree.h"
#include "job/validate.h"

#include <string.h>

struct spot *spot_root(struct arena *arena, const cJSON *job, const struct fields *fields)
{
    struct spot *root = arena_alloc(arena, sizeof(*root));
    if (root != NULL)
        *root = (struct spot){.json = job, .field = fields->root, .pointer = ""};
    return root;
}

/* A fact of the place, one that it states otherwise, or one that follows by a figure nobody
 * read, stands otherwise than the same of the job: what came of it is surer or less
 * sure. */
unsigned char spot_standing(const cJSON *node)
{
    return (unsigned char)(1 + (origin_of(node) == ORIGIN_PLACE ? 1 : 0)
                           + (origin_is_denied(node) ? 2 : 0) + (origin_is_doubtful(node) ? 4 : 0));
}

/* A field of another place's, or one of two of a name, is passed over. */
static void fill_fields(struct spot *spot)
{
    const struct field *field = NULL;
    for (const cJSON *node = spot->json->child; node != NULL; node = node->next) {
        field = node->string == NULL ? NULL : tree_field(node, spot->field, field);
        if (field == NULL)
            continue;
        struct spot *below = &spot->below[field->index];
        if (below->json != NULL || !validate_value_fits(node, field))
            continue;
        below->json = node;
        below->stands = spot_standing(node);
    }
}

struct spot *spot_open(struct arena *arena, struct spot *spot)
{
    spot->below = arena_array(arena, spot->field->child_count + 1, sizeof(*spot->below));
    if (spot->below == NULL)
        return NULL;
    spot->below_count = spot->field->child_count;
    for (const struct field *field = spot->field->first_child; field != NULL; field = field->next) {
        spot->below[field->index].field = field;
        spot->below[field->index].parent = spot;
    }
    if (spot->json != NULL)
        fill_fields(spot);
    return spot->below;
}

static void open_items(struct arena *arena, struct spot *list)
{
    const size_t count = list->json == NULL ? 0 : (size_t)cJSON_GetArraySize(list->json);
    const cJSON *item = NULL;
    list->below = arena_array(arena, count + 1, sizeof(*list->below));
    if (list->below == NULL)
        return;
    list->below_room = count + 1;
    cJSON_ArrayForEach(item, list->json) {
        const size_t number = list->below_count++;
        list->below[number] = (struct spot){.json = item,
                                            .field = list->field,
                                            .item = true,
                                            .parent = list,
                                            .number = number,
                                            .stands = spot_standing(item)};
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

/* The list that a reference points into: a path of plain names. */
static struct spot *referred_list(struct arena *arena, struct spot *root,
                                  const struct fields *fields, const char *path)
{
    const struct field *way[FIELDS_DEEPEST];
    size_t count = 0;
    for (const struct field *f = fields_find(fields, path); f != NULL && f->parent != NULL;
         f = f->parent) {
        if (count == FIELDS_DEEPEST)
            return NULL;
        way[count++] = f;
    }
    struct spot *spot = root;
    while (count > 0)
        spot = spot_child(arena, spot, way[--count]);
    return spot;
}

struct spot *spot_referred(struct arena *arena, struct spot *reference, const struct fields *fields)
{
    struct spot *root = reference;
    if (reference->followed || reference->json == NULL || reference->field->refers == NULL)
        return reference->referred;
    while (root->parent != NULL)
        root = root->parent;
    struct spot *list = referred_list(arena, root, fields, reference->field->refers);
    const size_t count = spot_count(arena, list);
    for (size_t i = 0; i < count && reference->referred == NULL; i++) {
        struct spot *item = spot_item(arena, list, i);
        const cJSON *name = cJSON_GetObjectItemCaseSensitive(item->json, "name");
        if (cJSON_IsString(name) && strcmp(name->valuestring, reference->json->valuestring) == 0)
            reference->referred = item;
    }
    reference->followed = true;
    return reference->referred;
}

/* Every item with its type and length before it: no two lists have the same bytes. */
static struct spot_value value_of_list(struct text *room, const cJSON *list)
{
    const cJSON *item = NULL;
    room->length = 0;
    cJSON_ArrayForEach(item, list) {
        const char type = cJSON_IsString(item) ? 's' : cJSON_IsNumber(item) ? '#' : '-';
        const size_t length = type == 's' ? strlen(item->valuestring) : sizeof(item->valuedouble);
        text_add_n(room, &type, 1);
        text_add_n(room, (const char *)&length, sizeof(length));
        text_add_n(room, type == 's' ? item->valuestring : (const char *)&item->valuedouble,
                   length);
    }
    return (struct spot_value){'l', text_string(room), room->length};
}

struct spot_value spot_value(struct text *room, const cJSON *json)
{
    if (cJSON_IsString(json))
        return (struct spot_value){'s', json->valuestring, strlen(json->valuestring)};
    if (cJSON_IsNumber(json))
        return (struct spot_value){'#', (const char *)&json->valuedouble,
                                   sizeof(json->valuedouble)};
    if (cJSON_IsBool(json))
        return (struct spot_value){.kind = cJSON_IsTrue(json) ? 'y' : 'o'};
    if (cJSON_IsArray(json))
        return value_of_list(room, json);
    return (struct spot_value){.kind = '-'};
}
