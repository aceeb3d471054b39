#include "job/follows.h"

#include "job/footprint_facts.h"
#include "job/json.h"
#include "job/origin.h"
#include "job/path.h"
#include "job/tree.h"

#include <string.h>

/* The way down to the object that a fact is written into: the job, then groups and items. */
enum { WAY_MOST = FIELDS_DEEPEST * 2 };

struct filling {
    cJSON *job;
    const struct fields *fields;
    const struct follows *rule;
    cJSON *above[WAY_MOST]; /* items on the way, the nearest last */
    size_t depth;
    bool again; /* only what figures told, anew */
    bool failed;
};

/* NULL also for what is no group: items of a list have no names. */
static cJSON *member(const cJSON *object, const char *name)
{
    return cJSON_GetObjectItemCaseSensitive(object, name);
}

static bool condition_holds(const cJSON *job, const struct follows *rule)
{
    if (rule->when != NULL) {
        const cJSON *said = tree_at(job, rule->when);
        return cJSON_IsString(said) && strcmp(said->valuestring, rule->is) == 0;
    }
    if (rule->equal[0] == NULL)
        return true;
    const cJSON *a = tree_at(job, rule->equal[0]), *b = tree_at(job, rule->equal[1]);
    return cJSON_IsNumber(a) && cJSON_IsNumber(b) && a->valuedouble == b->valuedouble;
}

/* The caller's; NULL when out of memory, which put() notes. */
static cJSON *value_node(const struct follows_value *value)
{
    return value->kind == FOLLOWS_TEXT     ? cJSON_CreateString(value->text)
           : value->kind == FOLLOWS_NUMBER ? cJSON_CreateNumber(value->number)
                                           : cJSON_CreateBool(value->number != 0);
}

/* Takes the value over, NULL included: that is out of memory. */
static void put(struct filling *f, cJSON *into, const char *name, cJSON *value)
{
    origin_mark(value, f->rule->from == FOLLOWS_USUAL ? ORIGIN_USUAL : ORIGIN_DERIVED);
    if (!json_set(into, name, value))
        f->failed = true;
}

/* Sources ------------------------------------------------------------------------- */

/* No is not carried along: that there is none of a thing says nothing of another. Groups follow
 * fact by fact. */
static void put_copy(struct filling *f, cJSON *into, const cJSON *said)
{
    if (!json_is_absent(said) && !cJSON_IsFalse(said) && !cJSON_IsObject(said))
        put(f, into, f->rule->field->name, cJSON_Duplicate(said, true));
}

/* The row of the word beside it, or -1. */
static int row_of(const struct follows *rule, const cJSON *object)
{
    const cJSON *word = tree_member(object, rule->fact);
    for (size_t i = 0; cJSON_IsString(word) && i < rule->count; i++)
        if (strcmp(word->valuestring, rule->words[i]) == 0)
            return (int)i;
    return -1;
}

static void put_by_table(struct filling *f, cJSON *into)
{
    const struct follows *rule = f->rule;
    const int row = row_of(rule, into);
    if (row < 0)
        return;
    cJSON *value = rule->told != NULL ? cJSON_CreateNumber(rule->told[row]->number)
                                      : value_node(&rule->values[row]);
    if (value != NULL && rule->told != NULL && rule->sister[row])
        origin_doubt(value);
    put(f, into, rule->field->name, value);
}

/* The list's one item, by its name. */
static void put_only(struct filling *f, cJSON *into)
{
    const struct field *list = fields_find(f->fields, f->rule->field->refers);
    const cJSON *items = list == NULL ? NULL : tree_at(f->job, list);
    if (!cJSON_IsArray(items) || cJSON_GetArraySize(items) != 1)
        return;
    const cJSON *name = member(items->child, "name");
    if (cJSON_IsString(name))
        put(f, into, f->rule->field->name, cJSON_CreateString(name->valuestring));
}

/* A count that is out of range is left alone: validation refuses it. */
static void put_items(struct filling *f, cJSON *into)
{
    const cJSON *count = tree_at(f->job, f->rule->fact);
    const struct field *field = f->rule->field;
    if (!cJSON_IsNumber(count) || count->valuedouble < 0
        || (field->has_most && count->valuedouble > field->most))
        return;
    cJSON *list = cJSON_CreateArray();
    for (int i = 0; i < (int)count->valuedouble; i++)
        if (!cJSON_AddItemToArray(list, cJSON_CreateObject()))
            f->failed = true;
    put(f, into, field->name, list);
}

/* Between the walls no attic has more floor, so no less vent area can be asked than it needs. */
static void put_plan_area(struct filling *f, cJSON *into)
{
    struct footprint_facts facts;
    double area = 0;
    const char *basis = f->rule->fact->name;
    footprint_facts_read(f->job, f->fields, &facts);
    const cJSON *items = tree_at(f->job, f->rule->field->parent);
    if (cJSON_GetArraySize(items) != 1 || !json_is_absent(member(into, basis))
        || !footprint_floor_sqft(&facts, &area))
        return;
    put(f, into, f->rule->field->name, cJSON_CreateNumber(area));
    put(f, into, basis, value_node(&f->rule->values[0]));
}

static void put_what_follows(struct filling *f, cJSON *into)
{
    const struct follows *rule = f->rule;
    const cJSON *said = tree_member(into, rule->field);
    /* Anew only what was derived before: what a person said since stays. */
    const bool open = f->again ? said != NULL && origin_of(said) == ORIGIN_DERIVED
                               : json_is_absent(said);
    if (!open || !condition_holds(f->job, rule))
        return;
    switch (rule->from) {
    case FOLLOWS_PLAIN:
    case FOLLOWS_USUAL:
        put(f, into, rule->field->name, value_node(&rule->values[0]));
        break;
    case FOLLOWS_SAME:
        put_copy(f, into, tree_at(f->job, rule->fact));
        break;
    case FOLLOWS_ABOVE:
        if (f->depth > 1)
            put_copy(f, into, tree_member(f->above[f->depth - 2], rule->fact));
        break;
    case FOLLOWS_BY:
        put_by_table(f, into);
        break;
    case FOLLOWS_FILLED:
        if (cJSON_GetArraySize(tree_member(into, rule->fact)) > 0)
            put(f, into, rule->field->name, cJSON_CreateTrue());
        break;
    case FOLLOWS_ONLY:
        put_only(f, into);
        break;
    case FOLLOWS_ITEMS:
        put_items(f, into);
        break;
    case FOLLOWS_PLAN_AREA:
        put_plan_area(f, into);
        break;
    }
}

/* Walking -------------------------------------------------------------------------- */

/* Down to each object that the field stands in. A group that is not there says nothing that
 * something in it could follow from. Recursion is
 * bounded by FIELDS_DEEPEST. */
static void walk(struct filling *f, cJSON *at, const struct field *const *way, size_t left)
{
    if (left == 0) {
        put_what_follows(f, at);
        return;
    }
    const struct field *step = *way;
    cJSON *child = tree_member(at, step), *item = NULL;
    /* What is usual is so also where a group is not mentioned at all. */
    if (child == NULL && f->rule->from == FOLLOWS_USUAL) {
        child = cJSON_CreateObject();
        f->failed |= !json_set(at, step->name, child);
    }
    if (step->type == FIELD_GROUP && cJSON_IsObject(child)) {
        walk(f, child, way + 1, left - 1);
    } else if (step->type == FIELD_LIST && cJSON_IsArray(child)) {
        cJSON_ArrayForEach(item, child) {
            if (!cJSON_IsObject(item))
                continue;
            f->above[f->depth++] = item;
            walk(f, item, way + 1, left - 1);
            f->depth--;
        }
    }
}

/* Asking ---------------------------------------------------------------------------- */

/* "/existing/layers" of a fact of the house. */
static const char *house_pointer(struct arena *arena, const struct field *field)
{
    return field->parent->parent == NULL
               ? path_key(arena, "", field->name)
               : path_key(arena, house_pointer(arena, field->parent), field->name);
}

/* The pointer with its last `steps` steps cut off. */
static const char *up(struct arena *arena, const char *pointer, int steps)
{
    size_t length = strlen(pointer);
    for (; steps > 0 && length > 0; steps--)
        do
            length--;
        while (length > 0 && pointer[length] != '/');
    return arena_copy_n(arena, pointer, length);
}

/* NULL where there is no one fact to ask for in its place. */
static const char *asked_instead(const struct follows *rule, const char *pointer,
                                 struct arena *arena)
{
    switch (rule->from) {
    case FOLLOWS_SAME:
    case FOLLOWS_ITEMS:
        return house_pointer(arena, rule->fact);
    case FOLLOWS_FILLED:
        return path_key(arena, up(arena, pointer, 1), rule->fact->name);
    case FOLLOWS_ABOVE: /* the fact, its place in the list, the list */
        return path_key(arena, up(arena, pointer, 3), rule->fact->name);
    case FOLLOWS_PLAIN:
    case FOLLOWS_USUAL:
    case FOLLOWS_BY:
    case FOLLOWS_ONLY:
    case FOLLOWS_PLAN_AREA:
        break;
    }
    return NULL;
}

const char *follows_asks(const cJSON *job, const struct fields *fields, const char *pointer,
                         struct arena *arena)
{
    const struct field *field = path_field(fields, pointer);
    for (const struct follows *rule = fields->follows; rule != NULL; rule = rule->next) {
        if (rule->field != field || !condition_holds(job, rule))
            continue;
        const char *instead = asked_instead(rule, pointer, arena);
        if (instead != NULL && json_is_absent(path_find(job, instead)))
            return instead;
    }
    return arena_copy(arena, pointer);
}

int follows_figure(const struct fields *fields, const struct field *field, const cJSON *object)
{
    for (const struct follows *rule = fields->follows; rule != NULL; rule = rule->next) {
        const int row = rule->field == field && rule->told != NULL ? row_of(rule, object) : -1;
        if (row >= 0)
            return (int)rule->figures[row];
    }
    return -1;
}

bool follows_uses(const struct fields *fields, size_t figure)
{
    for (const struct follows *rule = fields->follows; rule != NULL; rule = rule->next)
        for (size_t i = 0; rule->told != NULL && i < rule->count; i++)
            if (rule->figures[i] == figure)
                return true;
    return false;
}

static bool fill(cJSON *job, const struct fields *fields, bool again)
{
    struct filling f = {.job = job, .fields = fields, .again = again};
    for (f.rule = fields->follows; f.rule != NULL; f.rule = f.rule->next) {
        if (again && f.rule->told == NULL)
            continue;
        const struct field *way[FIELDS_DEEPEST];
        size_t depth = 0;
        /* From the field up to the root: the way is filled from its end, so that it reads
         * downwards. */
        for (const struct field *p = f.rule->field->parent; p->parent != NULL; p = p->parent)
            way[FIELDS_DEEPEST - ++depth] = p;
        walk(&f, job, way + FIELDS_DEEPEST - depth, depth);
    }
    return !f.failed;
}

bool follows_fill(cJSON *job, const struct fields *fields)
{
    return fill(job, fields, false);
}

bool follows_fill_again(cJSON *job, const struct fields *fields)
{
    return fill(job, fields, true);
}
