/* shop_lift.c - a shop sheet made of the habits in a job, see shop.h. */
#include "job/shop.h"

#include "job/json.h"

#include <string.h>

static cJSON *lift_group(const cJSON *group, const struct field *parent);

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

static cJSON *lift_alike(const cJSON *list, const struct field *field)
{
    cJSON *alike = NULL;
    const cJSON *item = NULL;
    cJSON_ArrayForEach(item, list) {
        if (shop_passes_over(item, field))
            continue;
        cJSON *lifted = lift_group(item, field);
        if (alike != NULL) {
            keep_alike(alike, lifted);
            cJSON_Delete(lifted);
        } else {
            alike = lifted;
        }
    }
    return alike;
}

/* Each with a name, and something beside it. */
static cJSON *lift_materials(const cJSON *list, const struct field *field)
{
    cJSON *array = cJSON_CreateArray();
    const cJSON *item = NULL;
    cJSON_ArrayForEach(item, list) {
        cJSON *lifted = shop_passes_over(item, field) ? NULL : lift_group(item, field);
        if (cJSON_GetObjectItemCaseSensitive(lifted, "name") == NULL
            || cJSON_GetArraySize(lifted) < 2 || !cJSON_AddItemToArray(array, lifted))
            cJSON_Delete(lifted);
    }
    return array;
}

static cJSON *lift(const cJSON *node, const struct field *field)
{
    if (field->type == FIELD_GROUP)
        return lift_group(node, field);
    if (field->type == FIELD_LIST)
        return fields_is_material(field) ? lift_materials(node, field) : lift_alike(node, field);
    return field->habit == HABIT_NONE ? NULL : cJSON_Duplicate(node, true);
}

/* In the order of the job; what comes to nothing is left out. Recursion is bounded by the
 * catalogue. */
static cJSON *lift_group(const cJSON *group, const struct field *parent)
{
    cJSON *into = cJSON_CreateObject();
    const cJSON *node = NULL;
    cJSON_ArrayForEach(node, group) {
        const struct field *field = fields_child(parent, node->string);
        cJSON *lifted = field == NULL || cJSON_IsNull(node) ? NULL : lift(node, field);
        const bool holds = cJSON_IsObject(lifted) || cJSON_IsArray(lifted);
        if (lifted != NULL && holds && lifted->child == NULL)
            cJSON_Delete(lifted);
        else if (lifted != NULL)
            json_set(into, node->string, lifted);
    }
    return into;
}

cJSON *shop_lift(const cJSON *job, const struct fields *fields)
{
    cJSON *sheet = lift_group(job, fields->root);
    cJSON *form = cJSON_CreateNumber(1);
    if (sheet == NULL || form == NULL || !(form->string = cJSON_malloc(sizeof("eavemark_shop")))) {
        cJSON_Delete(sheet);
        cJSON_Delete(form);
        return NULL;
    }
    memcpy(form->string, "eavemark_shop", sizeof("eavemark_shop"));
    if (sheet->child == NULL)
        cJSON_AddItemToArray(sheet, form);
    else
        cJSON_InsertItemInArray(sheet, 0, form);
    return sheet;
}
