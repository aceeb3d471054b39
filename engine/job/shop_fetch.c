/* shop_fetch.c - materials that a job refers to, brought from its shop sheet, see
 * shop_filling.h. */
#include "job/shop_filling.h"

#include "job/json.h"
#include "job/origin.h"
#include "job/path.h"
#include "job/tree.h"

/* The material that a reference of the job names comes from the sheet if the job's own
 * list has none of that name. */
static void fetch(struct shop_filling *filling, cJSON *group, const char *key,
                  const struct field *reference)
{
    const cJSON *sheet = shop_member(filling->shop->tree, reference->refers);
    cJSON *own = shop_member(filling->job, reference->refers);
    const char *name = cJSON_GetStringValue(shop_member(group, key));
    if (name == NULL || !cJSON_IsArray(sheet) || shop_find_named(own, name) != NULL
        || !(json_is_absent(own) || cJSON_IsArray(own)))
        return;
    const cJSON *material = shop_find_named(sheet, name);
    if (material == NULL) {
        shop_report_name(filling, name, own, sheet);
        tree_drop(group, key);
        return;
    }
    if (json_is_absent(own)) {
        shop_put(filling, filling->job, reference->refers, cJSON_CreateArray());
        own = shop_member(filling->job, reference->refers);
    }
    cJSON *copy = cJSON_Duplicate(material, true);
    origin_mark(copy, ORIGIN_SHOP);
    if (!cJSON_AddItemToArray(own, copy)) {
        cJSON_Delete(copy);
        problem_out_of_memory(filling->problems);
    }
}

/* Only lists of the job itself are materials to refer to: "underlayments". */
static void fetch_below(struct shop_filling *filling, cJSON *group, const struct field *parent)
{
    cJSON *item = NULL;
    for (const struct field *f = parent->first_child; f != NULL; f = f->next) {
        cJSON *node = shop_member(group, f->name);
        const size_t length = shop_step_in(filling, f->name);
        size_t index = 0;
        if (f->type == FIELD_GROUP && cJSON_IsObject(node)) {
            fetch_below(filling, node, f);
        } else if (f->type == FIELD_LIST) {
            cJSON_ArrayForEach(item, node) {
                const size_t list = filling->pointer.length;
                path_add_item(&filling->pointer, index++);
                fetch_below(filling, item, f);
                path_cut(&filling->pointer, list);
            }
        } else if (f->type == FIELD_REFERENCE && node != NULL) {
            fetch(filling, group, f->name, f);
        }
        path_cut(&filling->pointer, length);
    }
}

/* The sheet's only one of a list is the one, if the job speaks of none. */
static void take_only(struct shop_filling *filling)
{
    for (const struct field *f = filling->fields->root->first_child; f != NULL; f = f->next) {
        const cJSON *sheet = shop_member(filling->shop->tree, f->name);
        if (f->type == FIELD_LIST && fields_is_material(f) && cJSON_GetArraySize(sheet) == 1
            && json_is_absent(shop_member(filling->job, f->name)))
            shop_put(filling, filling->job, f->name, cJSON_Duplicate(sheet, true));
    }
}

void shop_fetch(struct shop_filling *filling)
{
    fetch_below(filling, filling->job, filling->fields->root);
    take_only(filling);
}
