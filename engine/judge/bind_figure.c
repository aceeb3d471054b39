/* bind_figure.c - figures as rules ask for them. */
#include "judge/bind_reads.h"

#include "base/nearest.h"

#include <lauxlib.h>
#include <lua.h>

#include <string.h>

/* A misspelled name is an error of the rule, wherever it is asked: it must not pass for a
 * duty left off. */
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

/* figure "name": its number, true or false, or set. */
static int figure(lua_State *lua)
{
    struct judging *judging = judging_of(lua);
    const char *name = luaL_checkstring(lua, 1);
    const struct figure *found = figure_slots_ask(judging->book, name);
    if (found == NULL)
        return no_such_figure(lua, name);
    bind_check_figure(lua, judging->reads, found);
    const struct value *value = ask_figure(judging, found);
    bind_check_arena(lua);
    switch (value->kind) {
    case VALUE_NUMBER:
        lua_pushnumber(lua, marks_give_figure(lua, found, value->number));
        return 1;
    case VALUE_YES_NO:
        lua_pushboolean(lua, value->yes);
        return 1;
    /* A fresh table each time: what a rule does to it must not reach the next one. */
    case VALUE_SET:
        lua_createtable(lua, (int)value->set_count, 0);
        for (size_t i = 0; i < value->set_count; i++) {
            lua_pushstring(lua, value->set[i]);
            lua_rawseti(lua, -2, (lua_Integer)i + 1);
        }
        marks_give_set(lua, found);
        return 1;
    case VALUE_NONE:
    case VALUE_TEXT:
        break;
    }
    return luaL_error(lua, "figure \"%s\" has no value", name);
}

/* Handed to each function as its second argument. Functions that may read facts only are
 * not given it. */
void bind_push_figure_function(lua_State *lua)
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
