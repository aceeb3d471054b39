#include "judge/fact.h"

#include "job/slope.h"

#include <stdio.h>

/* Finding ------------------------------------------------------------------------- */

static const struct fact *no_such(struct arena *arena, const struct fields *fields,
                                  const char *path, const char **why)
{
    const char *near = fields_nearest_path(fields, path);
    *why = near == NULL
               ? arena_format(arena, "there is no field \"%s\"", path)
               : arena_format(arena, "there is no field \"%s\" (did you mean \"%s\"?)", path, near);
    return NULL;
}

/* Which of the lists gone through is this one; -1 for none. From the innermost out: some
 * { } may go through a list again. */
static int in_scope(const struct scope *scope, const struct field *list)
{
    for (size_t i = scope->depth; i-- > 0;)
        if (scope->lists[i] == list)
            return (int)i;
    return -1;
}

/* The field whose children follow: of a reference, the list that it refers to. */
static const struct field *leads_to(const struct fields *fields, const struct field *field)
{
    return field->type == FIELD_REFERENCE ? fields_find(fields, field->refers) : field;
}

/* "attics[].vents[].kind": groups and references are steps, and each list with brackets
 * starts over from the item of it that is being judged. */
const struct fact *fact_find(struct arena *arena, const struct fields *fields,
                             const struct scope *scope, const char *path, const char **why)
{
    struct fact *fact = arena_alloc(arena, sizeof(*fact));
    const struct field *at = fields->root;
    if (fact == NULL)
        return NULL;
    fact->base = -1;
    for (const char *rest = path; *rest != '\0';) {
        const struct field *child = at == NULL ? NULL : fields_step(at, &rest);
        if (child == NULL || fact->step_count == FACT_STEPS_MOST)
            return no_such(arena, fields, path, why);
        const bool listed = child->type == FIELD_LIST && *rest != '\0';
        if (!listed) {
            fact->steps[fact->step_count++] = child;
        } else {
            /* What led to the list was walked already. */
            fact->base = in_scope(scope, child);
            fact->step_count = 0;
            if (fact->base < 0) {
                *why = arena_format(arena, "\"%s\" is in the list \"%s\": say per = \"%s\"", path,
                                    child->path, child->path);
                return NULL;
            }
        }
        fact->field = child;
        /* NULL where a reference dangles; the catalogue is checked for that only once all
         * files are loaded. */
        at = leads_to(fields, child);
    }
    if (fact->step_count == 0)
        return no_such(arena, fields, path, why);
    return fact;
}

/* Reading ------------------------------------------------------------------------- */

/* Always false: returned by whoever could not read. */
static bool lacks(struct judging *judging, const struct node *node)
{
    judging->record.missing = node->field;
    judging->record.missing_pointer = node->pointer;
    return false;
}

/* Reads the way as rules in Lua would: the same reads are recorded, in the same order. */
bool fact_read(struct judging *judging, const struct fact *fact, const struct node *items,
               struct node *out)
{
    struct node node = fact->base < 0 ? node_root(judging) : items[fact->base];
    for (size_t i = 0; i < fact->step_count; i++) {
        node = node_child(judging, &node, fact->steps[i]);
        if (node.field->type == FIELD_GROUP && i + 1 < fact->step_count)
            continue; /* its fields say what is lacking */
        record_read(judging, &node);
        if (node.json == NULL)
            return lacks(judging, &node);
        if (node.field->type == FIELD_REFERENCE && i + 1 < fact->step_count) {
            const struct node reference = node;
            if (!node_referred(judging, &reference, &node))
                return lacks(judging, &reference);
        }
    }
    *out = node;
    return true;
}

/* Asking whether the job says something must not make it lacking, as reading it does. */
bool fact_known(struct judging *judging, const struct fact *fact, const struct node *items)
{
    struct node node;
    const struct field *missing = judging->record.missing;
    const char *pointer = judging->record.missing_pointer;
    const bool known = fact_read(judging, fact, items, &node);
    if (!known && judging->record.unsaid == NULL) {
        judging->record.unsaid = judging->record.missing;
        judging->record.unsaid_pointer = judging->record.missing_pointer;
    }
    judging->record.missing = missing;
    judging->record.missing_pointer = pointer;
    return known;
}

/* Copied: findings outlive the job. */
static struct value set_of(struct judging *judging, const struct node *node)
{
    const size_t count = (size_t)cJSON_GetArraySize(node->json);
    const char **set = arena_array(judging->arena, count + 1, sizeof(*set));
    const cJSON *item = NULL;
    struct value value = {.kind = VALUE_SET, .set = set};
    cJSON_ArrayForEach(item, node->json)
        if (set != NULL)
            set[value.set_count++] = arena_copy(judging->arena, item->valuestring);
    return value;
}

const char *fact_unit(const struct field *field)
{
    return field->type == FIELD_SLOPE ? "rise_in_12" : field->unit;
}

struct value fact_value(struct judging *judging, const struct node *node)
{
    struct value value = {.kind = VALUE_NONE, .unit = node->field->unit};
    node_reads_value(judging, node);
    switch (node->field->type) {
    case FIELD_TEXT:
    case FIELD_CHOICE:
    case FIELD_DATE:
    case FIELD_REFERENCE:
        value.kind = VALUE_TEXT;
        value.text = arena_copy(judging->arena, node->json->valuestring);
        break;
    case FIELD_NUMBER:
    case FIELD_INTEGER:
        value.kind = VALUE_NUMBER;
        value.number = node->json->valuedouble;
        break;
    case FIELD_YES_NO:
        value.kind = VALUE_YES_NO;
        value.yes = cJSON_IsTrue(node->json);
        break;
    case FIELD_SLOPE:
        value.kind = VALUE_NUMBER;
        value.unit = "rise_in_12";
        slope_parse(node->json->valuestring, &value.number); /* the job was validated */
        break;
    case FIELD_CHOICES:
        return set_of(judging, node);
    case FIELD_NUMBERS:
    case FIELD_GROUP:
    case FIELD_LIST:
        break;
    }
    return value;
}
