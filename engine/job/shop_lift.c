/* shop_lift.c - a shop sheet made of the habits in a job, see shop.h. */
#include "job/shop.h"

#include "job/json.h"

#include <string.h>

/* A lift that memory lacked for is given up whole. */
struct lifting {
    bool failed;
};

static cJSON *lift_group(struct lifting *l, const cJSON *group, const struct field *parent);

/* What could not be had is remembered: the lift goes on, and is given up at its end. */
static cJSON *needed(struct lifting *l, cJSON *node)
{
    l->failed |= node == NULL;
    return node;
}

static char *needed_copy(struct lifting *l, const char *text)
{
    const size_t size = strlen(text) + 1;
    char *copy = cJSON_malloc(size);
    l->failed |= copy == NULL;
    return copy == NULL ? NULL : memcpy(copy, text, size);
}

/* Keeps what both say alike: of several decks the shop's way is what holds for each. */
static void keep_alike(cJSON *a, const cJSON *b)
{
    cJSON *next = NULL;
    for (cJSON *node = a->child; node != NULL; node = next) {
        const cJSON *other = cJSON_GetObjectItemCaseSensitive(b, node->string);
        next = node->next;
        if (cJSON_IsObject(node) && cJSON_IsObject(other))
            keep_alike(node, other);
        else if (!cJSON_Compare(node, other, true))
            cJSON_Delete(cJSON_DetachItemViaPointer(a, node));
    }
}

static cJSON *lift_alike(struct lifting *l, const cJSON *list, const struct field *field)
{
    cJSON *alike = NULL;
    const cJSON *item = NULL;
    cJSON_ArrayForEach(item, list) {
        if (shop_passes_over(item, field))
            continue;
        cJSON *lifted = lift_group(l, item, field);
        if (alike != NULL && lifted != NULL)
            keep_alike(alike, lifted);
        if (alike == NULL)
            alike = lifted;
        else
            cJSON_Delete(lifted);
    }
    return alike;
}

/* Each with a name, and something beside it. */
static cJSON *lift_materials(struct lifting *l, const cJSON *list, const struct field *field)
{
    cJSON *array = needed(l, cJSON_CreateArray());
    const cJSON *item = NULL;
    cJSON_ArrayForEach(item, list) {
        cJSON *lifted = shop_passes_over(item, field) ? NULL : lift_group(l, item, field);
        const bool named = cJSON_GetObjectItemCaseSensitive(lifted, "name") != NULL
                           && cJSON_GetArraySize(lifted) >= 2;
        if (!named || !cJSON_AddItemToArray(array, lifted))
            cJSON_Delete(lifted);
    }
    return array;
}

/* NULL for what is no habit. */
static cJSON *lift(struct lifting *l, const cJSON *node, const struct field *field)
{
    if (field->type == FIELD_GROUP)
        return lift_group(l, node, field);
    if (field->type == FIELD_LIST)
        return fields_is_material(field) ? lift_materials(l, node, field)
                                         : lift_alike(l, node, field);
    return field->habit == HABIT_NONE ? NULL : needed(l, cJSON_Duplicate(node, true));
}

/* In the order of the job; what comes to nothing is left out. Recursion is bounded by the
 * catalogue. */
static cJSON *lift_group(struct lifting *l, const cJSON *group, const struct field *parent)
{
    cJSON *into = needed(l, cJSON_CreateObject());
    const cJSON *node = NULL;
    cJSON_ArrayForEach(node, group) {
        const struct field *field = fields_child(parent, node->string);
        cJSON *lifted = field == NULL || cJSON_IsNull(node) ? NULL : lift(l, node, field);
        const bool holds = cJSON_IsObject(lifted) || cJSON_IsArray(lifted);
        if (lifted != NULL && holds && lifted->child == NULL)
            cJSON_Delete(lifted);
        else if (lifted != NULL)
            l->failed |= !json_set(into, node->string, lifted);
    }
    return into;
}

cJSON *shop_lift(const cJSON *job, const struct fields *fields)
{
    struct lifting l = {false};
    cJSON *sheet = lift_group(&l, job, fields->root);
    cJSON *form = needed(&l, cJSON_CreateNumber(1));
    if (!l.failed)
        form->string = needed_copy(&l, "eavemark_shop");
    if (l.failed) {
        cJSON_Delete(sheet);
        cJSON_Delete(form);
        return NULL;
    }
    if (sheet->child == NULL)
        cJSON_AddItemToArray(sheet, form);
    else
        cJSON_InsertItemInArray(sheet, 0, form);
    return sheet;
}
