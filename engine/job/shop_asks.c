/* shop_asks.c - which of a sheet's materials a job is asked for, see shop.h. */
#include "job/shop_filling.h"

#include "job/origin.h"
#include "job/path.h"

/* A name that the sheet left empty marks that the job names none of several: the mark
 * nearest the fact is asked for. */
const char *shop_asks(const cJSON *job, const char *pointer, struct arena *arena)
{
    const char *rest = pointer, *asks = NULL;
    char step[PATH_LONGEST_STEP];
    for (const cJSON *at = job; at != NULL && path_step(&rest, step);) {
        at = path_child(at, step);
        const cJSON *name = cJSON_IsObject(at) ? shop_member(at, "name") : NULL;
        if (cJSON_IsNull(name) && origin_of(name) == ORIGIN_SHOP)
            asks = rest;
    }
    return asks == NULL ? NULL : arena_format(arena, "%.*s/name", (int)(asks - pointer), pointer);
}

/* The sheet has one object for the items of a list of the house: their steps are left out. */
const cJSON *shop_materials(const struct shop *shop, const struct fields *fields,
                            const char *pointer)
{
    const struct field *field = path_field(fields, pointer);
    const cJSON *at = shop->tree, *before = NULL;
    char step[PATH_LONGEST_STEP];
    if (field == NULL)
        return NULL;
    if (field->type == FIELD_REFERENCE) {
        const cJSON *list = shop_member(shop->tree, field->refers);
        return cJSON_IsArray(list) ? list : NULL;
    }
    while (path_step_length(pointer) > 0) {
        const bool item = path_step_is_item(pointer);
        if (!path_step(&pointer, step))
            break;
        before = at;
        if (!item)
            at = shop_member(at, step);
    }
    return cJSON_IsArray(before) ? before : NULL;
}
