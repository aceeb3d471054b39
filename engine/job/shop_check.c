/* shop_check.c - a shop sheet held against the catalogue, see shop.h. */
#include "job/shop.h"

#include "base/nearest.h"
#include "job/json.h"
#include "job/path.h"
#include "job/validate_check.h"

#include <string.h>

static const char FORM[] = "eavemark_shop";

enum { MATERIALS_MOST = 200 }; /* of one kind; each is looked for among all */

static void check_group(struct validation *check, const cJSON *group, const struct field *parent);

/* The nearest habit of this group, or group that holds some; then the same name elsewhere. */
static const char *nearest_habit(const struct validation *check, const struct field *parent,
                                 const char *name)
{
    struct nearest nearest;
    nearest_start(&nearest, name);
    for (const struct field *f = parent->first_child; f != NULL; f = f->next)
        if (fields_hold_habits(f))
            nearest_offer(&nearest, f->name);
    if (parent == check->fields->root)
        nearest_offer(&nearest, FORM);
    return fields_plausible(name, nearest.distance) ? nearest.name : NULL;
}

/* What a shop sheet does not say, and why. */
static const char *why_not(const struct field *field)
{
    if (field->type == FIELD_GROUP || field->type == FIELD_LIST)
        return "is of one house or place";
    if (field->measured)
        return "is measured on the roof";
    return field->type == FIELD_DATE ? "is of one day" : "is of one house or place";
}

static void report_key(struct validation *check, const struct field *parent,
                       const struct field *field, const char *name)
{
    if (field != NULL)
        validate_report(check, "%s: a shop sheet says habits only; it belongs in the job",
                        why_not(field));
    else
        validate_report(check, "unknown field %s%s", validate_quoted(check, name),
                        validate_hint(check, nearest_habit(check, parent, name)));
}

/* Without a name a job could not pick one of several; with one name for two, neither. */
static void check_named(struct validation *check, const cJSON *list, const cJSON *item)
{
    const cJSON *name = cJSON_GetObjectItemCaseSensitive(item, "name"), *other = NULL;
    if (json_is_absent(name)) {
        validate_report(check, "has no name for jobs to pick it by");
        return;
    }
    cJSON_ArrayForEach(other, list) {
        const cJSON *twin = cJSON_GetObjectItemCaseSensitive(other, "name");
        if (other == item)
            return;
        if (cJSON_IsString(name) && cJSON_IsString(twin)
            && strcmp(name->valuestring, twin->valuestring) == 0) {
            validate_report(check, "has the same name %s as one before it",
                            validate_quoted(check, name->valuestring));
            return;
        }
    }
}

/* Several of one material. */
static void check_materials(struct validation *check, const cJSON *list, const struct field *field)
{
    struct validate_step step = {.above = check->at};
    const cJSON *item = NULL;
    if (list->child == NULL)
        validate_report(check, "is empty; leave it out");
    if (cJSON_GetArraySize(list) > MATERIALS_MOST) {
        validate_report(check, "has %d materials; %d at most", cJSON_GetArraySize(list),
                        MATERIALS_MOST);
        return;
    }
    cJSON_ArrayForEach(item, list) {
        if (validate_full(check))
            break;
        check->at = &step;
        if (cJSON_IsObject(item)) {
            check_named(check, list, item);
            check_group(check, item, field);
        } else {
            validate_report(check, "each of several is an object { ... }");
        }
        step.item++;
    }
    check->at = step.above;
}

static void check_holder(struct validation *check, const cJSON *node, const struct field *field)
{
    const bool material = fields_is_material(field);
    if (cJSON_IsArray(node) && material)
        check_materials(check, node, field);
    else if (cJSON_IsObject(node) && !(material && field->type == FIELD_LIST))
        check_group(check, node, field);
    else if (material && field->type == FIELD_LIST)
        validate_report(check, "is a list [ ... ] of objects, each with a name");
    else
        validate_report(check, material ? "is an object { ... }, or a list of several, each "
                                          "with a name"
                                        : "is one object { ... } that goes for each of the job's");
}

static void check_group(struct validation *check, const cJSON *group, const struct field *parent)
{
    const struct validate_step *here = check->at;
    const cJSON *node = NULL;
    cJSON_ArrayForEach(node, group) {
        const struct field *field = fields_child(parent, node->string);
        if (validate_full(check))
            return;
        if (parent == check->fields->root && strcmp(node->string, FORM) == 0)
            continue;
        const struct validate_step step = validate_step_to(check, node->string);
        check->at = &step;
        if (field == NULL || !fields_hold_habits(field))
            report_key(check, parent, field, node->string);
        else if (json_is_absent(node))
            ;
        else if (field->type == FIELD_GROUP || field->type == FIELD_LIST)
            check_holder(check, node, field);
        else
            validate_value(check, node, field);
        check->at = here;
    }
}

/* The form's own word first: a job handed over for a sheet is told as one. */
static bool is_sheet(struct validation *check, const cJSON *tree)
{
    const cJSON *form = cJSON_GetObjectItemCaseSensitive(tree, FORM);
    if (cJSON_IsNumber(form) && form->valuedouble == 1)
        return true;
    if (form == NULL && cJSON_GetObjectItemCaseSensitive(tree, "eavemark_job") != NULL)
        validate_report(check, "is a job, not a shop sheet");
    else
        validate_report(check, "is no shop sheet: that begins with \"%s\": 1", FORM);
    return false;
}

int shop_validate(const struct shop *shop, const struct fields *fields, struct problems *problems)
{
    struct validation check = {
        .fields = fields, .reached = STAGE_PERMIT, .file = shop->file, .problems = problems};
    if (shop->tree == NULL)
        return 0;
    if (is_sheet(&check, shop->tree))
        check_group(&check, shop->tree, fields->root);
    const bool out_of_memory = check.arena.failed;
    if (out_of_memory)
        problem_out_of_memory(problems);
    arena_free(&check.arena);
    return out_of_memory || problems->out_of_memory || check.found > 0 ? -1 : 0;
}
