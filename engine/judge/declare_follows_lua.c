/* declare_follows_lua.c - follows "path" { ... }: a fact that others tell; together "question"
 * { ... }: facts that are asked for in one line. */
#include "judge/bind_declare.h"

#include "job/follows.h"
#include "job/together.h"

#include <lauxlib.h>

#include <stdio.h>
#include <string.h>

static const char *const FOLLOWS_KEYS[] = {"value",  "same_as", "above", "by",   "values",
                                           "filled", "only",    "items", "plan", "when",
                                           "equal",  "figure",  "usual", NULL};

enum { TABLE_MOST = 100, TOGETHER_MOST = 8, WAITING_MOST = 20, NAME_LONGEST = 512 };

static const char TAKEOFF[] = "takeoff";

static struct fields *catalogue(lua_State *lua)
{
    return &declaring_of(lua)->book->fields;
}

static const struct field *need_field(lua_State *lua, const char *path)
{
    const struct field *field = fields_find(catalogue(lua), path);
    if (field == NULL) {
        const char *near = fields_nearest_path(catalogue(lua), path);
        declare_refuse(lua, "\"%s\" is no field%s%s", path, near == NULL ? "" : "; the nearest is ",
                       near == NULL ? "" : near);
    }
    return field;
}

/* A fact of the house, which is there once. */
static const struct field *need_house_fact(lua_State *lua, const char *path)
{
    const struct field *field = need_field(lua, path);
    for (const struct field *f = field->parent; f != NULL; f = f->parent)
        if (f->type == FIELD_LIST)
            declare_refuse(lua, "\"%s\" is there once for each item", path);
    return field;
}

static const struct field *need_child(lua_State *lua, const struct field *parent, const char *name)
{
    const struct field *field = fields_child(parent, name);
    if (field == NULL)
        declare_refuse(lua, "\"%s\" is no fact of %s", name, parent->path);
    return field;
}

static bool has_choice(const struct field *field, const char *word)
{
    for (size_t i = 0; i < field->choice_count; i++)
        if (strcmp(field->choices[i], word) == 0)
            return true;
    return false;
}

/* The value on top of the stack, which must be one of the field. */
static struct follows_value read_value(lua_State *lua, const struct field *field)
{
    struct follows_value value = {.kind = FOLLOWS_TEXT};
    if (lua_type(lua, -1) == LUA_TSTRING && field->type == FIELD_CHOICE) {
        value.text = declare_keep_text(lua, lua_tostring(lua, -1));
        if (!has_choice(field, value.text))
            declare_refuse(lua, "\"%s\" is no choice of %s", value.text, field->path);
    } else if (lua_type(lua, -1) == LUA_TNUMBER && field->type == FIELD_NUMBER) {
        value = (struct follows_value){FOLLOWS_NUMBER, NULL, lua_tonumber(lua, -1)};
        if ((field->has_least && value.number < field->least)
            || (field->has_most && value.number > field->most))
            declare_refuse(lua, "%s takes no such number", field->path);
    } else if (lua_isboolean(lua, -1) && field->type == FIELD_YES_NO) {
        value = (struct follows_value){FOLLOWS_YES_NO, NULL, lua_toboolean(lua, -1)};
    } else {
        declare_refuse(lua, "%s takes no such value", field->path);
    }
    return value;
}

static void read_plain(lua_State *lua, struct follows *follows)
{
    follows->values = declare_keep(lua, 1, sizeof(*follows->values));
    declare_get(lua, "value");
    follows->values[0] = read_value(lua, follows->field);
    lua_pop(lua, 1);
}

/* The words are those of the fact beside it, each at most once. */
static void read_table(lua_State *lua, struct follows *follows)
{
    follows->words = declare_keep(lua, TABLE_MOST, sizeof(*follows->words));
    follows->values = declare_keep(lua, TABLE_MOST, sizeof(*follows->values));
    declare_get(lua, "values");
    if (!lua_istable(lua, -1))
        declare_refuse(lua, "values is a table: { word = value }");
    for (size_t i = 0; i < follows->fact->choice_count && follows->count < TABLE_MOST; i++) {
        lua_getfield(lua, -1, follows->fact->choices[i]);
        if (!lua_isnil(lua, -1)) {
            follows->words[follows->count] = follows->fact->choices[i];
            follows->values[follows->count++] = read_value(lua, follows->field);
        }
        lua_pop(lua, 1);
    }
    size_t stated = 0;
    for (lua_pushnil(lua); lua_next(lua, -2) != 0; lua_pop(lua, 1))
        stated++;
    if (stated != follows->count || stated == 0)
        declare_refuse(lua, "values has a word that %s does not", follows->fact->path);
    lua_pop(lua, 1);
}

/* How long a nail of a name is says a standard; but one that was recalled, only drafted, or is
 * had otherwise by another source does not speak for the job: then it is asked. */
static bool may_tell(const struct figure *figure)
{
    return figure->cite.status != STATUS_NONE && figure->cite.status != STATUS_MEMORY
           && figure->draft == NULL && figure->disputed == NULL;
}

/* Only what has a sense of its own, not a limit: what a place demands must not raise what a
 * job is taken to say. */
static void check_telling(lua_State *lua, const struct follows *follows,
                          const struct figure *figure)
{
    const struct field *field = follows->field;
    if (figure->value.kind != VALUE_NUMBER || figure->sense != SENSE_EQUALS || figure->by == NULL
        || strcmp(figure->by, follows->fact->path) != 0 || field->type != FIELD_NUMBER
        || field->unit == NULL || figure->value.unit == NULL
        || strcmp(figure->value.unit, field->unit) != 0)
        declare_refuse(lua, "figure \"%s\" is no number of %s by %s, of the sense equals",
                       figure->name, field->path, follows->fact->path);
    if ((field->has_least && figure->value.number < field->least)
        || (field->has_most && figure->value.number > field->most))
        declare_refuse(lua, "%s:%d: figure \"%s\" is no value that %s can have", figure->file,
                       figure->line, figure->name, field->path);
}

/* The rows of a figure by the words of the fact beside it; a law need not give all. */
static void read_figures(lua_State *lua, struct follows *follows, const char *name)
{
    struct rulebook *book = declaring_of(lua)->book;
    const struct profile *profile = book->profile;
    follows->words = declare_keep(lua, TABLE_MOST, sizeof(*follows->words));
    follows->told = declare_keep(lua, TABLE_MOST, sizeof(*follows->told));
    follows->figures = declare_keep(lua, TABLE_MOST, sizeof(*follows->figures));
    follows->sister = declare_keep(lua, TABLE_MOST, sizeof(*follows->sister));
    size_t rows = 0;
    for (size_t i = 0; i < follows->fact->choice_count && follows->count < TABLE_MOST; i++) {
        char row[NAME_LONGEST];
        snprintf(row, sizeof(row), "%s.%s", name, follows->fact->choices[i]);
        const struct figure_slot *slot = profile == NULL ? NULL : figure_slot_find(book, row, true);
        if (slot == NULL)
            continue;
        const struct figure *figure = figure_slot_whole(book, slot);
        rows++;
        check_telling(lua, follows, figure);
        if (!may_tell(figure))
            continue;
        follows->words[follows->count] = follows->fact->choices[i];
        follows->told[follows->count] = &figure->value;
        follows->sister[follows->count] = figure->cite.status == STATUS_PARALLEL;
        follows->figures[follows->count++] = (size_t)(figure - profile->figures);
    }
    if (profile != NULL && rows == 0)
        declare_refuse(lua, "the law has no figure \"%s\" by %s", name, follows->fact->path);
}

static void read_plan(lua_State *lua, struct follows *follows, const char *basis)
{
    const struct field *field = follows->field;
    follows->fact = need_child(lua, field->parent, "area_basis");
    follows->values = declare_keep(lua, 1, sizeof(*follows->values));
    follows->values[0] = (struct follows_value){FOLLOWS_TEXT, basis, 0};
    if (field->parent->type != FIELD_LIST || !has_choice(follows->fact, basis)
        || field->unit == NULL || strcmp(field->unit, "sqft") != 0)
        declare_refuse(lua, "plan is of an area in square feet, and says of which basis");
}

/* Which of the ways it is told; exactly one. */
static void read_from(lua_State *lua, struct follows *follows)
{
    const struct field *field = follows->field;
    const char *same = declare_text(lua, "same_as"), *above = declare_text(lua, "above"),
               *by = declare_text(lua, "by"), *filled = declare_text(lua, "filled"),
               *items = declare_text(lua, "items"), *plan = declare_text(lua, "plan");
    declare_get(lua, "value");
    const bool plain = !lua_isnil(lua, -1);
    lua_pop(lua, 1);
    const bool only = declare_flag(lua, "only");
    if (declare_flag(lua, "usual") && (!plain || strcmp(field->parent->path, TAKEOFF) != 0))
        declare_refuse(lua, "usual is a plain value of the takeoff, where no code is concerned");
    if (plain + only + (same != NULL) + (above != NULL) + (by != NULL) + (filled != NULL)
            + (items != NULL) + (plan != NULL)
        != 1)
        declare_refuse(lua, "follows from one of value, same_as, above, by, filled, only, items "
                            "and plan");
    if (plain) {
        follows->from = declare_flag(lua, "usual") ? FOLLOWS_USUAL : FOLLOWS_PLAIN;
        read_plain(lua, follows);
    } else if (same != NULL) {
        follows->from = FOLLOWS_SAME;
        follows->fact = need_house_fact(lua, same);
    } else if (above != NULL) {
        follows->from = FOLLOWS_ABOVE;
        if (field->parent->type != FIELD_LIST || field->parent->parent->type != FIELD_LIST)
            declare_refuse(lua, "above is of an item within an item");
        follows->fact = need_child(lua, field->parent->parent, above);
    } else if (by != NULL) {
        follows->from = FOLLOWS_BY;
        follows->fact = need_child(lua, field->parent, by);
        const char *figure = declare_text(lua, "figure");
        if (figure == NULL)
            read_table(lua, follows);
        else
            read_figures(lua, follows, figure);
    } else if (filled != NULL) {
        follows->from = FOLLOWS_FILLED;
        follows->fact = need_child(lua, field->parent, filled);
    } else if (only) {
        follows->from = FOLLOWS_ONLY;
    } else if (items != NULL) {
        follows->from = FOLLOWS_ITEMS;
        follows->fact = need_house_fact(lua, items);
    } else {
        follows->from = FOLLOWS_PLAN_AREA;
        read_plan(lua, follows, plan);
    }
}

/* A copied fact must be of the same kind; an only one a reference, and so on. */
static void check_types(lua_State *lua, const struct follows *follows)
{
    const struct field *field = follows->field, *fact = follows->fact;
    const bool copied = follows->from == FOLLOWS_SAME || follows->from == FOLLOWS_ABOVE;
    if (copied
        && (fact->type != field->type || (fact->unit == NULL) != (field->unit == NULL)
            || (fact->unit != NULL && strcmp(fact->unit, field->unit) != 0)))
        declare_refuse(lua, "%s is of another kind than %s", fact->path, field->path);
    if ((follows->from == FOLLOWS_ONLY && field->type != FIELD_REFERENCE)
        || (follows->from == FOLLOWS_FILLED
            && (field->type != FIELD_YES_NO || fact->type != FIELD_LIST))
        || (follows->from == FOLLOWS_ITEMS
            && (field->type != FIELD_LIST || fact->type != FIELD_INTEGER)))
        declare_refuse(lua, "%s cannot follow so", field->path);
    if (field->measured || field->required)
        declare_refuse(lua, "what is measured, or no job can do without, never follows");
}

/* when = { "fact", "word" }; equal = { "fact", "fact" }. */
static const char *pair_member(lua_State *lua, const char *key, lua_Integer index)
{
    lua_rawgeti(lua, -1, index);
    if (lua_type(lua, -1) != LUA_TSTRING)
        declare_refuse(lua, "%s is written { \"fact\", \"...\" }", key);
    const char *text = declare_keep_text(lua, lua_tostring(lua, -1));
    lua_pop(lua, 1);
    return text;
}

static void read_conditions(lua_State *lua, struct follows *follows)
{
    declare_get(lua, "when");
    if (!lua_isnil(lua, -1)) {
        luaL_checktype(lua, -1, LUA_TTABLE);
        follows->when = need_house_fact(lua, pair_member(lua, "when", 1));
        follows->is = pair_member(lua, "when", 2);
        if (!has_choice(follows->when, follows->is))
            declare_refuse(lua, "when: \"%s\" is no choice of %s", follows->is,
                           follows->when->path);
    }
    declare_get(lua, "equal");
    if (!lua_isnil(lua, -1)) {
        luaL_checktype(lua, -1, LUA_TTABLE);
        for (int i = 0; i < 2; i++)
            follows->equal[i] = need_house_fact(lua, pair_member(lua, "equal", i + 1));
    }
    lua_pop(lua, 2);
}

/* In the order of the file: what follows may have others follow from it. */
static void add_follows(lua_State *lua, struct follows *follows)
{
    struct follows **at = &catalogue(lua)->follows;
    while (*at != NULL)
        at = &(*at)->next;
    *at = follows;
}

static int finish_follows(lua_State *lua)
{
    luaL_checktype(lua, 1, LUA_TTABLE);
    struct follows *follows = declare_keep(lua, 1, sizeof(*follows));
    follows->field = need_field(lua, declare_name(lua));
    if (follows->field->parent == NULL)
        return declare_refuse(lua, "the job itself follows from nothing");
    read_from(lua, follows);
    check_types(lua, follows);
    read_conditions(lua, follows);
    add_follows(lua, follows);
    return 0;
}

static int finish_together(lua_State *lua)
{
    luaL_checktype(lua, 1, LUA_TTABLE);
    struct together *together = declare_keep(lua, 1, sizeof(*together));
    together->ask = declare_keep_text(lua, declare_name(lua));
    together->count = (size_t)lua_rawlen(lua, 1);
    declare_get(lua, "those_waiting");
    together->those_waiting = lua_toboolean(lua, -1);
    lua_pop(lua, 1);
    const size_t most = together->those_waiting ? WAITING_MOST : TOGETHER_MOST;
    if (together->count < 2 || together->count > most)
        return declare_refuse(lua, "2 to %d facts are asked for together", (int)most);
    together->facts = declare_keep(lua, together->count, sizeof(*together->facts));
    for (size_t i = 0; i < together->count; i++) {
        lua_rawgeti(lua, 1, (lua_Integer)i + 1);
        if (lua_type(lua, -1) != LUA_TSTRING)
            return declare_refuse(lua, "lists facts by their paths");
        const struct field *field = need_field(lua, lua_tostring(lua, -1));
        together->facts[i] = field;
        if (field->parent != together->facts[0]->parent || field->measured
            || field->type == FIELD_LIST || field->type == FIELD_GROUP
            || field->type == FIELD_NUMBERS || field->type == FIELD_CHOICES)
            return declare_refuse(lua, "\"%s\" is not a single fact beside the others",
                                  field->path);
        lua_pop(lua, 1);
    }
    together->next = catalogue(lua)->together;
    catalogue(lua)->together = together;
    return 0;
}

/* order "interview" { "path" ... }: what is asked first, each with all that is in it. */
static int finish_order(lua_State *lua)
{
    luaL_checktype(lua, 1, LUA_TTABLE);
    struct fields *fields = catalogue(lua);
    const size_t count = (size_t)lua_rawlen(lua, 1);
    if (fields->first != NULL || count == 0 || count > TABLE_MOST)
        return declare_refuse(lua, "one order, of 1 to 100 parts of the job");
    fields->first = declare_keep(lua, count, sizeof(*fields->first));
    for (size_t i = 0; i < count; i++) {
        lua_rawgeti(lua, 1, (lua_Integer)i + 1);
        if (lua_type(lua, -1) != LUA_TSTRING)
            return declare_refuse(lua, "lists parts of the job by their paths");
        fields->first[i] = need_field(lua, lua_tostring(lua, -1));
        fields->first_count = i + 1;
        lua_pop(lua, 1);
    }
    return 0;
}

const struct declaration DECLARE_FOLLOWS[] = {
    {"follows", FOLLOWS_KEYS, finish_follows, false},
    {"together", NULL, finish_together, false},
    {"order", NULL, finish_order, false},
    {NULL, NULL, NULL, false},
};
