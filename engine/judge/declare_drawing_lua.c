/* declare_drawing_lua.c - drawing "name" { ... }: where its dimensions come from.
 *
 * Facts, conditions and figures are looked up here, once: a fact that is no field or of
 * another unit, a word that a field cannot say, a dimension that the drawing does not
 * have are errors of the file, with the line of the drawing. Rules may stand in files
 * that are yet to be run: drawing_check.c. */
#include "judge/bind_declare.h"

#include "base/nearest.h"
#include "judge/row.h"
#include "sandbox/keys.h"

#include <lauxlib.h>

#include <math.h>
#include <stdio.h>
#include <string.h>

/* The drawing or the list within it that is being read: its table is on top of the
 * stack. */
struct reading_drawing {
    struct drawing_of *of;
    struct scope scope;
    const char *within; /* "planes: " in messages; or "" */
};

/* Of what it is drawn --------------------------------------------------------------- */

/* The text under a key of the table on top of the stack, held by that table; or NULL. */
static const char *text_under(lua_State *lua, const struct reading_drawing *reading,
                              const char *key)
{
    lua_getfield(lua, -1, key);
    if (!lua_isnil(lua, -1) && lua_type(lua, -1) != LUA_TSTRING)
        declare_refuse(lua, "%s%s must be a text", reading->within, key);
    const char *text = lua_tostring(lua, -1);
    if (text != NULL)
        declare_check_zero(lua, key);
    lua_pop(lua, 1);
    return text;
}

/* Without `of` the house itself is drawn. */
static void read_of(lua_State *lua, struct reading_drawing *reading)
{
    const struct fields *fields = &declaring_of(lua)->book->fields;
    const char *path = text_under(lua, reading, "of");
    if (path == NULL)
        return;
    const struct field *list = fields_find(fields, path);
    if (list == NULL || list->type != FIELD_LIST) {
        const char *near = fields_nearest_path(fields, path);
        declare_refuse(lua, "%sof: \"%s\" is not a list of the job (the nearest field: %s)",
                       reading->within, path, near == NULL ? "none" : near);
    }
    for (const struct field *f = list; f != NULL; f = f->parent)
        reading->of->per_depth += f->type == FIELD_LIST;
    if (reading->of->per_depth > 2)
        declare_refuse(lua, "%sof: \"%s\" is too deep", reading->within, path);
    size_t at = reading->of->per_depth;
    for (const struct field *f = list; f != NULL; f = f->parent)
        if (f->type == FIELD_LIST)
            reading->of->per[--at] = f;
    for (size_t i = 0; i < reading->of->per_depth; i++)
        reading->scope.lists[reading->scope.depth++] = reading->of->per[i];
}

/* Items lie in what they belong to, or one reference of theirs names it. */
static void find_owner(lua_State *lua, const struct reading_drawing *reading,
                       const struct drawing_of *owner)
{
    struct drawing_of *of = reading->of;
    const struct field *list = of->per[of->per_depth - 1];
    if (owner->per_depth == 0 && of->per_depth == 1)
        return;
    const struct field *owners = owner->per_depth == 0 ? NULL : owner->per[owner->per_depth - 1];
    if (of->per_depth == 2 && of->per[0] == owners)
        return;
    if (owners == NULL || of->per_depth == 2)
        declare_refuse(lua, "%sof: \"%s\" lies in \"%s\", which is not what is drawn",
                       reading->within, list->path, of->per[0]->path);
    of->belongs = drawing_reference(list, owners->path);
    if (of->belongs == NULL)
        declare_refuse(lua, "%sof: no one field of \"%s\" says which of \"%s\" it belongs to",
                       reading->within, list->path, owners->path);
}

/* Dimensions ------------------------------------------------------------------------------ */

static struct drawing_part *part_of(lua_State *lua, const struct reading_drawing *reading,
                                    const char *name, const struct dimension **dimension)
{
    struct nearest nearest;
    const struct dimension *known = reading->of->form->dimensions;
    for (size_t i = 0; i < DIMENSIONS_MOST && known[i].name != NULL; i++) {
        *dimension = &known[i];
        if (strcmp(known[i].name, name) == 0)
            return &reading->of->parts[i];
    }
    nearest_start(&nearest, name);
    for (size_t i = 0; i < DIMENSIONS_MOST && known[i].name != NULL; i++)
        nearest_offer(&nearest, known[i].name);
    declare_refuse(lua, "%sit has no dimension \"%s\"; the nearest is %s", reading->within, name,
                   nearest.name == NULL ? "none" : nearest.name);
}

static const char *kind_said(enum dimension_kind kind)
{
    return kind == DIMENSION_NAME ? "a text" : kind == DIMENSION_NUMBER ? "a number" : "yes or no";
}

/* To the letter: a drawing converts nothing. */
static bool same_unit(const char *unit, const struct dimension *dimension)
{
    return unit == dimension->unit
           || (unit != NULL && dimension->unit != NULL && strcmp(unit, dimension->unit) == 0);
}

static const char *unit_said(const char *unit)
{
    return unit == NULL ? "no unit" : unit;
}

static void check_fact(lua_State *lua, const struct reading_drawing *reading,
                       const struct dimension *dimension, const struct field *field)
{
    const bool number = field->type == FIELD_NUMBER || field->type == FIELD_INTEGER
                        || field->type == FIELD_SLOPE;
    if (dimension->kind == DIMENSION_YES_NO)
        declare_refuse(lua, "%s%s is yes or no: say under conditions when it is", reading->within,
                       dimension->name);
    if (dimension->kind == DIMENSION_NAME ? field->type != FIELD_TEXT : !number)
        declare_refuse(lua, "%s%s is %s, and %s is %s", reading->within, dimension->name,
                       kind_said(dimension->kind), field->path, field_type_said(field->type));
    if (number && !same_unit(fact_unit(field), dimension))
        declare_refuse(lua, "%s%s is in %s, and %s in %s", reading->within, dimension->name,
                       unit_said(dimension->unit), field->path, unit_said(fact_unit(field)));
}

static void check_figure(lua_State *lua, const struct reading_drawing *reading,
                         const struct dimension *dimension, const char *name)
{
    const struct figure_slot *figure = figure_slot_find(declaring_of(lua)->book, name, true);
    if (figure == NULL)
        declare_refuse(lua, "%s%s: \"%s\" is no figure", reading->within, dimension->name, name);
    const bool number = figure->kind == VALUE_NUMBER;
    if ((dimension->kind == DIMENSION_NUMBER && !number)
        || (dimension->kind == DIMENSION_YES_NO && figure->kind != VALUE_YES_NO)
        || dimension->kind == DIMENSION_NAME)
        declare_refuse(lua, "%s%s is %s, and figure \"%s\" is not", reading->within,
                       dimension->name, kind_said(dimension->kind), name);
    if (number && !same_unit(figure->unit, dimension))
        declare_refuse(lua, "%s%s is in %s, and figure \"%s\" in %s", reading->within,
                       dimension->name, unit_said(dimension->unit), name, unit_said(figure->unit));
}

/* What comes of a drawing must not hang on what runs after it is judged. */
static void refuse_kind(void *data, const struct condition *condition)
{
    if (condition->kind == WHEN_FUNCTION || condition->kind == WHEN_INSPECTED)
        *(bool *)data = true;
}

/* The condition on top of the stack. */
static const struct condition *read_condition(lua_State *lua, const struct reading_drawing *reading)
{
    bool refused = false;
    const struct condition *condition = declare_condition(lua, &reading->scope);
    condition_each(condition, refuse_kind, &refused);
    if (refused)
        declare_refuse(lua,
                       "%sa drawing's condition is of facts and figures: no function, no "
                       "inspected",
                       reading->within);
    return condition;
}

static const char *need_name(lua_State *lua, const struct reading_drawing *reading, const char *key,
                             const char *name)
{
    if (lua_type(lua, -1) != LUA_TSTRING)
        declare_refuse(lua, "%s%s: %s must be a name", reading->within, key, name);
    declare_check_zero(lua, key);
    return lua_tostring(lua, -1);
}

/* Where the dimension of this name comes from; the value is on top of the stack. */
static void read_part(lua_State *lua, const struct reading_drawing *reading, const char *key,
                      const char *name)
{
    const struct dimension *dimension;
    struct drawing_part *part = part_of(lua, reading, name, &dimension);
    /* A rule's demand may stand beside any of them: it is laid over what is planned. */
    const bool taken = part->fact != NULL || part->condition != NULL || part->figure != NULL
                       || !isnan(part->number);
    if (strcmp(key, "rules") == 0) {
        part->rule = declare_keep_text(lua, need_name(lua, reading, key, name));
        return;
    }
    if (taken)
        declare_refuse(lua, "%s%s comes from two places", reading->within, name);
    if (strcmp(key, "facts") == 0) {
        part->fact = declare_fact(lua, &reading->scope, need_name(lua, reading, key, name));
        check_fact(lua, reading, dimension, part->fact->field);
    } else if (strcmp(key, "figures") == 0) {
        part->figure = declare_keep_text(lua, need_name(lua, reading, key, name));
        check_figure(lua, reading, dimension, part->figure);
    } else if (dimension->kind
               != (strcmp(key, "numbers") == 0 ? DIMENSION_NUMBER : DIMENSION_YES_NO)) {
        declare_refuse(lua, "%s%s is %s", reading->within, name, kind_said(dimension->kind));
    } else if (dimension->kind == DIMENSION_YES_NO) {
        part->condition = read_condition(lua, reading);
    } else if (lua_type(lua, -1) != LUA_TNUMBER) {
        declare_refuse(lua, "%s%s: %s must be a number", reading->within, key, name);
    } else {
        part->number = lua_tonumber(lua, -1);
    }
}

/* The table under a key of the table on top of the stack, if there is one. */
static void read_parts(lua_State *lua, const struct reading_drawing *reading, const char *key)
{
    lua_getfield(lua, -1, key);
    if (!lua_isnil(lua, -1)) {
        if (!lua_istable(lua, -1))
            declare_refuse(lua, "%s%s is a table: dimension = ...", reading->within, key);
        const struct keys *keys = keys_push(lua, -1);
        for (size_t i = 0; i < keys->count; i++) {
            lua_getfield(lua, -2, keys->names[i]);
            read_part(lua, reading, key, keys->names[i]);
            lua_pop(lua, 1);
        }
        lua_pop(lua, 1);
    }
    lua_pop(lua, 1);
}

/* NAN: not given. */
static void start_parts(lua_State *lua, struct drawing_of *of, const struct drawing_form *form)
{
    of->form = form;
    of->parts = declare_keep(lua, DIMENSIONS_MOST, sizeof(*of->parts));
    for (size_t i = 0; i < DIMENSIONS_MOST; i++)
        of->parts[i].number = NAN;
}

/* Lists within ------------------------------------------------------------------------------ */

static const char *const LIST_KEYS[] = {"of", "facts", "conditions", NULL};

/* The table of the list in position `at` is on top of the stack. */
static void read_list(lua_State *lua, struct drawing *drawing, size_t at,
                      const struct drawing_form *form)
{
    char within[40];
    struct reading_drawing reading = {.of = &drawing->lists[at], .within = within};
    const struct drawing_of *owner = at == 0 ? &drawing->itself : &drawing->lists[at - 1];
    snprintf(within, sizeof(within), "%s: ", form->name);
    if (!lua_istable(lua, -1))
        declare_refuse(lua, "%sa list is a table: of, facts, conditions", within);
    if (owner->form == NULL)
        declare_refuse(lua, "%swhat they belong to is not declared", within);
    declare_keys(lua, LIST_KEYS);
    start_parts(lua, reading.of, form);
    read_of(lua, &reading);
    if (reading.of->per_depth == 0)
        declare_refuse(lua, "%shas no of: which list of the job?", within);
    find_owner(lua, &reading, owner);
    read_parts(lua, &reading, "facts");
    read_parts(lua, &reading, "conditions");
}

static void read_lists(lua_State *lua, struct drawing *drawing, const struct drawing_forms *forms)
{
    const char *names[DRAWING_LISTS_MOST + 1] = {NULL};
    for (size_t i = 0; i < DRAWING_LISTS_MOST; i++)
        names[i] = forms->lists[i].name;
    declare_get(lua, "lists");
    if (lua_isnil(lua, -1)) {
        lua_pop(lua, 1);
        return;
    }
    if (!lua_istable(lua, -1))
        declare_refuse(lua, "lists is a table: name = { of = ..., facts = ... }");
    declare_keys(lua, names);
    for (size_t i = 0; names[i] != NULL; i++) {
        lua_getfield(lua, -1, names[i]);
        if (!lua_isnil(lua, -1))
            read_list(lua, drawing, i, &forms->lists[i]);
        lua_pop(lua, 1);
    }
    lua_pop(lua, 1);
}

/* drawing "..." { ... } ------------------------------------------------------------------------ */

static const char *const DRAWING_KEYS[] = {"stages",  "of",         "when",  "unjudged",
                                           "facts",   "conditions", "rules", "figures",
                                           "numbers", "lists",      NULL};

static const char *const DRAWING_PARTS[] = {"facts",   "conditions", "rules",
                                            "figures", "numbers",    NULL};

static void read_when(lua_State *lua, const struct reading_drawing *reading,
                      struct drawing *drawing)
{
    declare_get(lua, "when");
    if (!lua_isnil(lua, -1))
        drawing->when = read_condition(lua, reading);
    lua_pop(lua, 1);
}

static int finish_drawing(lua_State *lua)
{
    const struct drawing_forms *forms = drawing_forms(declare_name(lua));
    if (forms == NULL)
        return declare_refuse(lua, "there is no such drawing");
    struct drawing **at = &declaring_of(lua)->book->drawings;
    for (; *at != NULL; at = &(*at)->next)
        if (strcmp((*at)->name, declare_name(lua)) == 0)
            return declare_refuse(lua, "is already a drawing, in %s", (*at)->file);
    struct drawing *drawing = declare_keep(lua, 1, sizeof(*drawing));
    struct reading_drawing reading = {.of = &drawing->itself, .within = ""};
    drawing->name = forms->itself.name;
    drawing->file = declaring_of(lua)->file;
    drawing->line = declare_line(lua);
    declare_stages(lua, drawing->stages);
    drawing->unjudged = declare_text(lua, "unjudged");
    start_parts(lua, &drawing->itself, &forms->itself);
    lua_pushvalue(lua, 1);
    read_of(lua, &reading);
    if (drawing->itself.per_depth > 1)
        return declare_refuse(lua, "of: \"%s\" lies in another list", drawing->itself.per[1]->path);
    read_when(lua, &reading, drawing);
    for (const char *const *key = DRAWING_PARTS; *key != NULL; key++)
        read_parts(lua, &reading, *key);
    read_lists(lua, drawing, forms);
    *at = drawing;
    return 0;
}

const struct declaration DECLARE_DRAWINGS[] = {
    {"drawing", DRAWING_KEYS, finish_drawing, false},
    {NULL, NULL, NULL, false},
};
