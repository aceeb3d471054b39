/* declare_field_lua.c - field "path" { ... }: a fact that a job may state. */
#include "judge/bind_declare.h"

#include <string.h>

static const char *const FIELD_KEYS[] = {"type",  "unit",  "range",    "choices",  "refers",
                                         "stage", "ask",   "answer",   "required", "measured",
                                         "habit", "stays", "of_place", NULL};

static void read_range(lua_State *lua, struct field *spec)
{
    declare_get(lua, "range");
    if (lua_istable(lua, -1)) {
        lua_rawgeti(lua, -1, 1);
        lua_rawgeti(lua, -2, 2);
        if (!lua_isnumber(lua, -2) || !lua_isnumber(lua, -1))
            declare_refuse(lua, "range is written { least, most }");
        spec->has_least = spec->has_most = true;
        spec->least = lua_tonumber(lua, -2);
        spec->most = lua_tonumber(lua, -1);
        lua_pop(lua, 2);
    } else if (!lua_isnil(lua, -1)) {
        declare_refuse(lua, "range is written { least, most }");
    }
    lua_pop(lua, 1);
}

static void read_choices(lua_State *lua, struct field *spec)
{
    declare_get(lua, "choices");
    if (lua_istable(lua, -1)) {
        spec->choice_count = (size_t)lua_rawlen(lua, -1);
        if (spec->choice_count > CHOICES_MOST)
            declare_refuse(lua, "has more than 200 choices");
        spec->choices = declare_keep(lua, spec->choice_count + 1, sizeof(char *));
        for (size_t i = 0; i < spec->choice_count; i++) {
            lua_rawgeti(lua, -1, (lua_Integer)i + 1);
            if (lua_type(lua, -1) != LUA_TSTRING)
                declare_refuse(lua, "choices are texts");
            declare_check_zero(lua, "a choice");
            if (lua_rawlen(lua, -1) > CHOICE_LONGEST)
                declare_refuse(lua, "a choice is longer than 200 bytes");
            spec->choices[i] = declare_keep_text(lua, lua_tostring(lua, -1));
            lua_pop(lua, 1);
        }
    }
    lua_pop(lua, 1);
}

/* habit = true, or "product". Only the common fields: what one place asks is not the same
 * from house to house. */
static enum habit read_habit(lua_State *lua, const char *file)
{
    enum habit habit = HABIT_NONE;
    declare_get(lua, "habit");
    if (lua_type(lua, -1) == LUA_TSTRING && strcmp(lua_tostring(lua, -1), "product") == 0)
        habit = HABIT_PRODUCT;
    else if (lua_isboolean(lua, -1))
        habit = lua_toboolean(lua, -1) ? HABIT_WAY : HABIT_NONE;
    else if (!lua_isnil(lua, -1))
        declare_refuse(lua, "habit is true or \"product\"");
    if (habit != HABIT_NONE && strncmp(file, "rules/", strlen("rules/")) != 0)
        declare_refuse(lua, "only fields of rules/ are habits, which go from place to place");
    lua_pop(lua, 1);
    return habit;
}

static int finish_field(lua_State *lua)
{
    struct declaring *reading = declaring_of(lua);
    struct field spec = {0};
    declare_count(lua, &reading->field_count, FIELDS_MOST, "fields");
    const char *type = declare_need_text(lua, "type");
    const int known = field_type_by_word(type);
    if (known < 0)
        return declare_refuse(lua, "type \"%s\" is not known", type);
    spec.type = (enum field_type)known;
    spec.unit = declare_text(lua, "unit");
    spec.refers = declare_text(lua, "refers");
    spec.ask = declare_need_text(lua, "ask");
    spec.answer = declare_text(lua, "answer");
    if (strlen(spec.ask) > ASK_LONGEST)
        return declare_refuse(lua, "the question is longer than 1000 bytes");
    spec.stage = declare_stage(lua, declare_need_text(lua, "stage"));
    spec.file = reading->file;
    spec.required = declare_flag(lua, "required");
    spec.measured = declare_flag(lua, "measured");
    spec.habit = read_habit(lua, spec.file);
    spec.stays = declare_flag(lua, "stays");
    spec.of_place = declare_flag(lua, "of_place");
    read_range(lua, &spec);
    read_choices(lua, &spec);
    const char *why = "out of memory";
    /* fields_add copies name and file; what the spec points to was charged for when it
     * was kept. */
    sandbox_charge_kept(lua, sizeof(spec) + 2 * strlen(declare_name(lua)) + strlen(spec.file) + 3);
    if (declare_beside(reading, declare_name(lua), &spec))
        return 0;
    if (fields_add(&reading->book->fields, declare_name(lua), &spec, &why) == NULL)
        return declare_refuse(lua, "%s", why);
    return 0;
}

const struct declaration DECLARE_FIELDS[] = {
    {"field", FIELD_KEYS, finish_field, true},
    {NULL, NULL, NULL, false},
};
