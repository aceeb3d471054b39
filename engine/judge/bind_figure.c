/* bind_figure.c - figures as rules ask for them. */
#include "judge/judging.h"

#include "base/nearest.h"

#include <lauxlib.h>
#include <lua.h>

#include <string.h>

static void record_figure(struct judging *judging, const struct figure *figure)
{
    struct record *record = &judging->record;
    for (size_t i = 0; i < record->figure_count; i++)
        if (record->figures[i] == figure)
            return;
    if (record->figure_count == record->figure_capacity) {
        const size_t capacity = record->figure_capacity == 0 ? 8 : record->figure_capacity * 2;
        const struct figure **figures = arena_array(judging->arena, capacity, sizeof(*figures));
        if (figures == NULL)
            return;
        if (record->figure_count > 0)
            memcpy(figures, record->figures, record->figure_count * sizeof(*figures));
        record->figures = figures;
        record->figure_capacity = capacity;
    }
    record->figures[record->figure_count++] = figure;
}

static int no_such_figure(lua_State *lua, const char *name)
{
    const struct profile *profile = judging_of(lua)->book->profile;
    struct nearest nearest;
    nearest_start(&nearest, name);
    for (size_t i = 0; i < profile->figure_count; i++)
        nearest_offer(&nearest, profile->figures[i].name);
    if (nearest.name == NULL)
        return luaL_error(lua, "no figure is named \"%s\"", name);
    return luaL_error(lua, "no figure is named \"%s\" (did you mean \"%s\"?)", name, nearest.name);
}

static void watch_figure(const struct judging *judging, size_t index)
{
    const struct watch *watch = &judging->book->watch;
    if (watch->asked != NULL)
        watch->asked[index] = true;
    if (watch->decides != NULL && !judging->mending)
        watch->decides[index] = true;
}

/* figure "name": its number, true or false, or set. */
static int figure(lua_State *lua)
{
    struct judging *judging = judging_of(lua);
    const char *name = luaL_checkstring(lua, 1);
    const struct figure *found = profile_figure(judging->book->profile, name);
    if (found == NULL)
        return no_such_figure(lua, name);
    record_figure(judging, found);
    watch_figure(judging, (size_t)(found - judging->book->profile->figures));
    check_arena(lua);
    const bool rival = judging->reading != NULL && found->disputed != NULL
        && found->rival.kind != VALUE_NONE && strcmp(found->disputed, judging->reading) == 0;
    const struct value *value = rival ? &found->rival : &found->value;
    switch (value->kind) {
    case VALUE_NUMBER:
        lua_pushnumber(lua, value->number);
        return 1;
    case VALUE_YES_NO:
        lua_pushboolean(lua, value->yes);
        return 1;
    case VALUE_SET:
        lua_createtable(lua, (int)value->set_count, 0);
        for (size_t i = 0; i < value->set_count; i++) {
            lua_pushstring(lua, value->set[i]);
            lua_rawseti(lua, -2, (lua_Integer)i + 1);
        }
        return 1;
    case VALUE_NONE:
    case VALUE_TEXT:
        break;
    }
    return luaL_error(lua, "figure \"%s\" has no value", name);
}

void push_figure_function(lua_State *lua)
{
    lua_pushcfunction(lua, figure);
}

/* dropped("rule"): who drops it here and why, in words; nil where it stands. */
static int dropped(lua_State *lua)
{
    const struct judging *judging = judging_of(lua);
    const char *id = luaL_checkstring(lua, 1);
    if (rulebook_rule(judging->book, id) == NULL)
        return luaL_error(lua, "no rule is named \"%s\"", id);
    const struct drop *drop = profile_drop(judging->book->profile, id);
    if (drop == NULL)
        lua_pushnil(lua);
    else
        lua_pushfstring(lua, "%s is dropped by %s: %s", id, drop->by, drop->reason);
    return 1;
}

void bind_figure(lua_State *lua)
{
    lua_pushcfunction(lua, dropped); /* figures are handed to each function, not defined */
    sandbox_define(lua, "dropped");
}
