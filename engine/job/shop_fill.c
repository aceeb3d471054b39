/* shop_fill.c - a shop sheet's facts written into a job that is silent on them, see shop.h. */
#include "job/shop.h"

#include "base/nearest.h"
#include "base/text.h"
#include "job/json.h"
#include "job/origin.h"
#include "job/path.h"
#include "job/validate.h"

#include <string.h>

struct filling {
    const struct shop *shop;
    cJSON *job;
    const struct fields *fields;
    const char *file;
    struct problems *problems;
    struct text pointer; /* of the place in the job that is being filled */
    bool laid;           /* the roof is laid out: what the plan brings is filled now */
};

/* null counts as absent everywhere in a job. */
static bool is_absent(const cJSON *node)
{
    return node == NULL || cJSON_IsNull(node);
}

static cJSON *member(const cJSON *group, const char *key)
{
    return cJSON_GetObjectItemCaseSensitive(group, key);
}

static const char *name_of(const cJSON *item)
{
    return cJSON_GetStringValue(member(item, "name"));
}

static bool is_named(const cJSON *item, const char *name)
{
    return name_of(item) != NULL && strcmp(name_of(item), name) == 0;
}

static const cJSON *find_named(const cJSON *list, const char *name)
{
    const cJSON *item = NULL;
    cJSON_ArrayForEach(item, list) {
        if (is_named(item, name))
            return item;
    }
    return NULL;
}

static void put(struct filling *filling, cJSON *group, const char *key, cJSON *value)
{
    origin_mark(value, ORIGIN_SHOP);
    if (!json_set(group, key, value))
        problem_out_of_memory(filling->problems);
}

/* Steps into a member of the job; the length to cut the pointer back to. */
static size_t step_in(struct filling *filling, const char *key)
{
    const size_t length = filling->pointer.length;
    path_add(&filling->pointer, key, strlen(key));
    return length;
}

/* Materials ------------------------------------------------------------------------- */

/* Another product than the sheet's, by what the job says of its own. */
static bool is_another(const cJSON *own, const cJSON *sheet, const struct field *parent)
{
    for (const struct field *f = parent->first_child; f != NULL; f = f->next) {
        const cJSON *here = member(own, f->name), *there = member(sheet, f->name);
        if (f->habit == HABIT_PRODUCT && !is_absent(here) && !is_absent(there)
            && !cJSON_Compare(here, there, true))
            return true;
    }
    return false;
}

static void offer_name(struct nearest *nearest, struct text *known, const char *name)
{
    if (name == NULL)
        return;
    nearest_offer(nearest, name);
    text_addf(known, "%s\"%.*s\"", known->length == 0 ? "" : ", ",
              (int)path_quotable(name, strlen(name), 60), name);
}

/* Of one material, or of several. */
static void offer_names(struct nearest *nearest, struct text *known, const cJSON *materials)
{
    const cJSON *item = NULL;
    if (cJSON_IsObject(materials))
        offer_name(nearest, known, name_of(materials));
    else
        cJSON_ArrayForEach(item, materials)
            offer_name(nearest, known, name_of(item));
}

/* At the pointer: a name that nothing has, with the nearest. own may be NULL. */
static void report_name(struct filling *filling, const char *name, const cJSON *own,
                        const cJSON *sheet)
{
    struct nearest nearest;
    struct text known = TEXT_EMPTY;
    nearest_start(&nearest, name);
    offer_names(&nearest, &known, own);
    offer_names(&nearest, &known, sheet);
    problem_at(filling->problems, PROBLEM_JOB, filling->file, text_string(&filling->pointer),
               "\"%.*s\" is none of those that the job and its shop sheet %s have (%s)%s%s%s",
               (int)path_quotable(name, strlen(name), 60), name, filling->shop->file,
               known.length == 0 ? "none" : text_string(&known),
               nearest.name == NULL ? "" : "; did you mean \"",
               nearest.name == NULL ? "" : nearest.name, nearest.name == NULL ? "" : "\"?");
    if (known.failed)
        problem_out_of_memory(filling->problems);
    text_free(&known);
}

/* The one of several that the job names. A job that names none has no sheet's: the name is
 * left as a mark that it is to be asked for. */
static const cJSON *picked(struct filling *filling, cJSON *own, const cJSON *several)
{
    const char *name = name_of(own);
    if (name == NULL && cJSON_GetArraySize(several) == 1)
        return several->child;
    if (name == NULL) {
        if (is_absent(member(own, "name")))
            put(filling, own, "name", cJSON_CreateNull());
        return NULL;
    }
    return find_named(several, name);
}

/* A name in the job picks: there must be one that bears it. */
static void must_be_there(struct filling *filling, const cJSON *own, const cJSON *sheet)
{
    const size_t length = step_in(filling, "name");
    report_name(filling, name_of(own), NULL, sheet);
    path_cut(&filling->pointer, length);
}

/* Groups and lists ------------------------------------------------------------------ */

static void fill_group(struct filling *filling, cJSON *own, const cJSON *sheet,
                       const struct field *parent);

/* A material named is taken as the job changes it; one not named only if nothing that the
 * job says of it makes it another. */
static void fill_material(struct filling *filling, cJSON *own, const cJSON *sheet,
                          const struct field *field)
{
    const char *name = name_of(own);
    const cJSON *one = cJSON_IsArray(sheet)                    ? picked(filling, own, sheet)
                       : name == NULL || is_named(sheet, name) ? sheet
                                                               : NULL;
    if (one == NULL && name != NULL)
        must_be_there(filling, own, sheet);
    else if (one != NULL && (name != NULL || !is_another(own, one, field)))
        fill_group(filling, own, one, field);
}

static void fill_holder(struct filling *filling, cJSON *own, const cJSON *sheet,
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
        if (f->habit == HABIT_PRODUCT && !is_absent(member(item, f->name)))
            return true;
    return false;
}

static bool is_near_one(const char *name, const cJSON *sheet)
{
    struct nearest nearest;
    struct text known = TEXT_EMPTY;
    nearest_start(&nearest, name);
    offer_names(&nearest, &known, sheet);
    text_free(&known);
    return nearest.name != NULL;
}

bool shop_passes_over(const cJSON *item, const struct field *list)
{
    for (const struct field *f = list->first_child; f != NULL; f = f->next)
        if (f->stays && cJSON_IsTrue(member(item, f->name)))
            return true;
    return false;
}

/* Items that the job names as the sheet does. One of a name of its own is the job's, unless
 * that is a slip. */
static void fill_named(struct filling *filling, cJSON *list, const cJSON *sheet,
                       const struct field *field)
{
    const size_t length = filling->pointer.length;
    size_t index = 0;
    cJSON *item = NULL;
    cJSON_ArrayForEach(item, list) {
        const char *name = shop_passes_over(item, field) ? NULL : name_of(item);
        const cJSON *material = name == NULL ? NULL : find_named(sheet, name);
        path_add_item(&filling->pointer, index++);
        if (material != NULL)
            fill_group(filling, item, material, field);
        else if (name != NULL && !says_product(item, field) && is_near_one(name, sheet))
            must_be_there(filling, item, sheet);
        path_cut(&filling->pointer, length);
    }
}

/* What is said once goes for each item. */
static void fill_each(struct filling *filling, cJSON *list, const cJSON *sheet,
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
static cJSON *group_of(struct filling *filling, cJSON *own, const struct field *field)
{
    cJSON *group = member(own, field->name);
    if (is_absent(group) && strcmp(field->path, "roof.footprint") != 0) {
        put(filling, own, field->name, cJSON_CreateObject());
        group = member(own, field->name);
    }
    return cJSON_IsObject(group) ? group : NULL;
}

/* Lists written as one object wait until the plan has brought their items. */
static void fill_member(struct filling *filling, cJSON *own, const cJSON *node,
                        const struct field *field)
{
    if (field->type == FIELD_GROUP) {
        cJSON *group = group_of(filling, own, field);
        if (group != NULL)
            fill_holder(filling, group, node, field);
    } else if (field->type == FIELD_LIST) {
        cJSON *list = member(own, field->name);
        if (cJSON_IsArray(list) && cJSON_IsArray(node))
            fill_named(filling, list, node, field);
        else if (cJSON_IsArray(list) && filling->laid)
            fill_each(filling, list, node, field);
    } else if (is_absent(member(own, field->name)) && !is_absent(node)) {
        put(filling, own, field->name, cJSON_Duplicate(node, true));
    }
}

/* Recursion is bounded by the catalogue. */
static void fill_group(struct filling *filling, cJSON *own, const cJSON *sheet,
                       const struct field *parent)
{
    const cJSON *node = NULL;
    cJSON_ArrayForEach(node, sheet) {
        const struct field *field = fields_child(parent, node->string);
        if (field == NULL || is_absent(node))
            continue;
        const size_t length = step_in(filling, field->name);
        fill_member(filling, own, node, field);
        path_cut(&filling->pointer, length);
    }
}

/* References ------------------------------------------------------------------------ */

/* The material that a reference of the job names comes from the sheet if the job's own
 * list has none of that name. */
static void fetch(struct filling *filling, cJSON *group, const char *key,
                  const struct field *reference)
{
    const cJSON *sheet = member(filling->shop->tree, reference->refers);
    cJSON *own = member(filling->job, reference->refers);
    const char *name = cJSON_GetStringValue(member(group, key));
    if (name == NULL || !cJSON_IsArray(sheet) || find_named(own, name) != NULL
        || !(is_absent(own) || cJSON_IsArray(own)))
        return;
    const cJSON *material = find_named(sheet, name);
    if (material == NULL) {
        report_name(filling, name, own, sheet);
        cJSON_DeleteItemFromObjectCaseSensitive(group, key);
        return;
    }
    if (is_absent(own)) {
        put(filling, filling->job, reference->refers, cJSON_CreateArray());
        own = member(filling->job, reference->refers);
    }
    cJSON *copy = cJSON_Duplicate(material, true);
    origin_mark(copy, ORIGIN_SHOP);
    if (!cJSON_AddItemToArray(own, copy)) {
        cJSON_Delete(copy);
        problem_out_of_memory(filling->problems);
    }
}

/* Only lists of the job itself are materials to refer to: "underlayments". */
static void fetch_below(struct filling *filling, cJSON *group, const struct field *parent)
{
    cJSON *item = NULL;
    for (const struct field *f = parent->first_child; f != NULL; f = f->next) {
        cJSON *node = member(group, f->name);
        const size_t length = step_in(filling, f->name);
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
static void take_only(struct filling *filling)
{
    for (const struct field *f = filling->fields->root->first_child; f != NULL; f = f->next) {
        const cJSON *sheet = member(filling->shop->tree, f->name);
        if (f->type == FIELD_LIST && fields_is_material(f) && cJSON_GetArraySize(sheet) == 1
            && is_absent(member(filling->job, f->name)))
            put(filling, filling->job, f->name, cJSON_Duplicate(sheet, true));
    }
}

/* Edges ----------------------------------------------------------------------------- */

/* Without a plan, what the sheet says of all eaves and rakes goes to each by its kind. */
static void fill_edges(struct filling *filling)
{
    static const char *const KINDS[][2] = {{"eaves", "eave"}, {"rakes", "rake"}};
    const cJSON *roof = member(filling->job, "roof");
    const cJSON *said = member(member(filling->shop->tree, "roof"), "footprint");
    const struct field *field = fields_find(filling->fields, "roof.edges");
    cJSON *edge = NULL;
    cJSON_ArrayForEach(edge, member(roof, "edges")) {
        const char *kind = cJSON_GetStringValue(member(edge, "kind"));
        for (size_t i = 0; i < 2 && kind != NULL && field != NULL; i++)
            if (strcmp(kind, KINDS[i][1]) == 0 && member(said, KINDS[i][0]) != NULL)
                fill_group(filling, edge, member(said, KINDS[i][0]), field);
    }
}

static void finish(struct filling *filling)
{
    if (filling->pointer.failed)
        problem_out_of_memory(filling->problems);
    text_free(&filling->pointer);
}

void shop_fill(const struct shop *shop, cJSON *job, const struct fields *fields, const char *file,
               struct problems *problems)
{
    struct filling filling = {
        .shop = shop, .job = job, .fields = fields, .file = file, .problems = problems};
    if (shop->tree == NULL || !cJSON_IsObject(job))
        return;
    fetch_below(&filling, job, fields->root);
    take_only(&filling);
    fill_group(&filling, job, shop->tree, fields->root);
    finish(&filling);
}

/* Groups that stand alone were filled before: only what was silent then is looked at. */
void shop_fill_laid(const struct shop *shop, cJSON *job, const struct fields *fields,
                    const char *file, struct problems *problems)
{
    struct filling filling = {.shop = shop,
                              .job = job,
                              .fields = fields,
                              .file = file,
                              .problems = problems,
                              .laid = true};
    if (shop->tree == NULL || !cJSON_IsObject(job) || problems->count > 0)
        return;
    fill_group(&filling, job, shop->tree, fields->root);
    if (is_absent(member(member(job, "roof"), "footprint")))
        fill_edges(&filling);
    finish(&filling);
}

/* Asking ---------------------------------------------------------------------------- */

const char *shop_asks(const cJSON *job, const char *pointer, struct arena *arena)
{
    const char *rest = pointer, *asks = NULL;
    char step[PATH_LONGEST_STEP];
    for (const cJSON *at = job; at != NULL && path_step(&rest, step);) {
        at = path_child(at, step);
        const cJSON *name = cJSON_IsObject(at) ? member(at, "name") : NULL;
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
        const cJSON *list = member(shop->tree, field->refers);
        return cJSON_IsArray(list) ? list : NULL;
    }
    while (path_step_length(pointer) > 0) {
        const bool item = path_step_is_item(pointer);
        if (!path_step(&pointer, step))
            break;
        before = at;
        if (!item)
            at = member(at, step);
    }
    return cJSON_IsArray(before) ? before : NULL;
}
