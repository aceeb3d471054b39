/* shop_fill.c - a shop sheet's facts written into a job that is silent on them, see shop.h and
 * shop_filling.h. */
#include "job/shop_filling.h"

#include "job/json.h"
#include "job/origin.h"
#include "job/path.h"

#include <string.h>

/* Materials ------------------------------------------------------------------------- */

/* Another product than the sheet's, by what the job says of its own. */
static bool is_another(const cJSON *own, const cJSON *sheet, const struct field *parent)
{
    for (const struct field *f = parent->first_child; f != NULL; f = f->next) {
        const cJSON *here = shop_member(own, f->name), *there = shop_member(sheet, f->name);
        if (f->habit == HABIT_PRODUCT && !json_is_absent(here) && !json_is_absent(there)
            && !cJSON_Compare(here, there, true))
            return true;
    }
    return false;
}

/* The one of several that the job names. A job that names none has no sheet's: the name is
 * left as a mark that it is to be asked for. */
static const cJSON *picked(struct shop_filling *filling, cJSON *own, const cJSON *several)
{
    const char *name = json_name(own);
    if (name == NULL && cJSON_GetArraySize(several) == 1)
        return several->child;
    if (name == NULL) {
        if (json_is_absent(shop_member(own, "name")))
            shop_put(filling, own, "name", cJSON_CreateNull());
        return NULL;
    }
    return shop_find_named(several, name);
}

/* A name in the job picks: there must be one that bears it. */
static void must_be_there(struct shop_filling *filling, const cJSON *own, const cJSON *sheet)
{
    const size_t length = shop_step_in(filling, "name");
    shop_report_name(filling, json_name(own), NULL, sheet);
    path_cut(&filling->pointer, length);
}

/* Groups and lists ------------------------------------------------------------------ */

static void fill_group(struct shop_filling *filling, cJSON *own, const cJSON *sheet,
                       const struct field *parent);

/* A material named is taken as the job changes it; one not named only if nothing that the
 * job says of it makes it another. */
static void fill_material(struct shop_filling *filling, cJSON *own, const cJSON *sheet,
                          const struct field *field)
{
    const char *name = json_name(own);
    const cJSON *one = cJSON_IsArray(sheet)                         ? picked(filling, own, sheet)
                       : name == NULL || shop_is_named(sheet, name) ? sheet
                                                                    : NULL;
    if (one == NULL && name != NULL)
        must_be_there(filling, own, sheet);
    else if (one != NULL && (name != NULL || !is_another(own, one, field)))
        fill_group(filling, own, one, field);
}

static void fill_holder(struct shop_filling *filling, cJSON *own, const cJSON *sheet,
                        const struct field *field)
{
    if (fields_is_material(field))
        fill_material(filling, own, sheet, field);
    else if (!is_another(own, sheet, field))
        fill_group(filling, own, sheet, field);
}

/* An item that says nothing of its product is meant to be one of the sheet's. */
static bool says_product(const cJSON *item, const struct field *list)
{
    for (const struct field *f = list->first_child; f != NULL; f = f->next)
        if (f->habit == HABIT_PRODUCT && !json_is_absent(shop_member(item, f->name)))
            return true;
    return false;
}

bool shop_passes_over(const cJSON *item, const struct field *list)
{
    for (const struct field *f = list->first_child; f != NULL; f = f->next)
        if (f->stays && cJSON_IsTrue(shop_member(item, f->name)))
            return true;
    return false;
}

/* Items that the job names as the sheet does. One of a name of its own is the job's, unless
 * that is a slip. */
static void fill_named(struct shop_filling *filling, cJSON *list, const cJSON *sheet,
                       const struct field *field)
{
    const size_t length = filling->pointer.length;
    size_t index = 0;
    cJSON *item = NULL;
    cJSON_ArrayForEach(item, list) {
        const char *name = shop_passes_over(item, field) ? NULL : json_name(item);
        const cJSON *material = name == NULL ? NULL : shop_find_named(sheet, name);
        path_add_item(&filling->pointer, index++);
        if (material != NULL)
            fill_group(filling, item, material, field);
        else if (name != NULL && !says_product(item, field) && shop_has_near(sheet, name))
            must_be_there(filling, item, sheet);
        path_cut(&filling->pointer, length);
    }
}

/* What is said once goes for each item. */
static void fill_each(struct shop_filling *filling, cJSON *list, const cJSON *sheet,
                      const struct field *field)
{
    const size_t length = filling->pointer.length;
    size_t index = 0;
    cJSON *item = NULL;
    cJSON_ArrayForEach(item, list) {
        path_add_item(&filling->pointer, index++);
        if (cJSON_IsObject(item) && !shop_passes_over(item, field))
            fill_holder(filling, item, sheet, field);
        path_cut(&filling->pointer, length);
    }
}

/* The job's group, made when there is none; NULL for what is no group. A footprint is not
 * made: it would be another roof. */
static cJSON *group_of(struct shop_filling *filling, cJSON *own, const struct field *field)
{
    cJSON *group = shop_member(own, field->name);
    if (json_is_absent(group) && strcmp(field->path, "roof.footprint") != 0) {
        shop_put(filling, own, field->name, cJSON_CreateObject());
        group = shop_member(own, field->name);
    }
    return cJSON_IsObject(group) ? group : NULL;
}

/* Lists written as one object wait until the plan has brought their items. */
static void fill_member(struct shop_filling *filling, cJSON *own, const cJSON *node,
                        const struct field *field)
{
    if (field->type == FIELD_GROUP) {
        cJSON *group = group_of(filling, own, field);
        if (group != NULL)
            fill_holder(filling, group, node, field);
    } else if (field->type == FIELD_LIST) {
        cJSON *list = shop_member(own, field->name);
        if (cJSON_IsArray(list) && cJSON_IsArray(node))
            fill_named(filling, list, node, field);
        else if (cJSON_IsArray(list) && filling->laid)
            fill_each(filling, list, node, field);
    } else if (json_is_absent(shop_member(own, field->name)) && !json_is_absent(node)) {
        shop_put(filling, own, field->name, cJSON_Duplicate(node, true));
    }
}

/* Recursion is bounded by the catalogue. */
static void fill_group(struct shop_filling *filling, cJSON *own, const cJSON *sheet,
                       const struct field *parent)
{
    const cJSON *node = NULL;
    cJSON_ArrayForEach(node, sheet) {
        const struct field *field = fields_child(parent, node->string);
        if (field == NULL || json_is_absent(node))
            continue;
        const size_t length = shop_step_in(filling, field->name);
        fill_member(filling, own, node, field);
        path_cut(&filling->pointer, length);
    }
}

/* Edges ----------------------------------------------------------------------------- */

/* Without a plan, what the sheet says of all eaves and rakes goes to each by its kind. */
static void fill_edges(struct shop_filling *filling)
{
    static const char *const KINDS[][2] = {{"eaves", "eave"}, {"rakes", "rake"}};
    const cJSON *roof = shop_member(filling->job, "roof");
    const cJSON *said = shop_member(shop_member(filling->shop->tree, "roof"), "footprint");
    const struct field *field = fields_find(filling->fields, "roof.edges");
    cJSON *edge = NULL;
    cJSON_ArrayForEach(edge, shop_member(roof, "edges")) {
        const char *kind = cJSON_GetStringValue(shop_member(edge, "kind"));
        for (size_t i = 0; i < 2 && kind != NULL && field != NULL; i++)
            if (strcmp(kind, KINDS[i][1]) == 0 && shop_member(said, KINDS[i][0]) != NULL)
                fill_group(filling, edge, shop_member(said, KINDS[i][0]), field);
    }
}

static void finish(struct shop_filling *filling)
{
    if (filling->pointer.failed)
        problem_out_of_memory(filling->problems);
    text_free(&filling->pointer);
}

void shop_fill(const struct shop *shop, cJSON *job, const struct fields *fields, const char *file,
               struct problems *problems)
{
    struct shop_filling filling = {
        .shop = shop, .job = job, .fields = fields, .file = file, .problems = problems};
    if (shop->tree == NULL || !cJSON_IsObject(job))
        return;
    shop_fetch(&filling);
    fill_group(&filling, job, shop->tree, fields->root);
    finish(&filling);
}

/* Groups that stand alone were filled before: only what was silent then is looked at. */
void shop_fill_laid(const struct shop *shop, cJSON *job, const struct fields *fields,
                    const char *file, struct problems *problems)
{
    struct shop_filling filling = {.shop = shop,
                                   .job = job,
                                   .fields = fields,
                                   .file = file,
                                   .problems = problems,
                                   .laid = true};
    if (shop->tree == NULL || !cJSON_IsObject(job) || problems->count > 0)
        return;
    fill_group(&filling, job, shop->tree, fields->root);
    if (json_is_absent(shop_member(shop_member(job, "roof"), "footprint")))
        fill_edges(&filling);
    finish(&filling);
}
