/* bind_common.c - common { name = value, ... }: what the rule files share.
 *
 * Only rules/common.lua may say it, which is run before all others; so no file
 * depends on the order of the rest. What is shared can be read by every file and
 * changed by none: a county's file is loaded among the others. */
#include "judge/declare_reads.h"

#include "sandbox/keys.h"

#include <lauxlib.h>

#include <string.h>

enum { COMMON_DEEPEST = 8 };

/* Replaces the table on top of the stack by a view that cannot be written to, and
 * the tables in it likewise. */
static void protect(lua_State *lua, int depth)
{
    if (depth > COMMON_DEEPEST)
        luaL_error(lua, "common: tables within tables within tables");
    luaL_checkstack(lua, 8, "common");
    const int table = lua_gettop(lua);
    lua_newtable(lua);
    lua_pushnil(lua);
    while (lua_next(lua, table) != 0) {
        if (lua_istable(lua, -1))
            protect(lua, depth + 1);
        lua_pushvalue(lua, -2);
        lua_insert(lua, -2);
        lua_rawset(lua, table + 1);
    }
    lua_replace(lua, table);
    sandbox_protect(lua);
}

/* Whoever lacks a helper is told its name: "is_windy", "permit_triggers.area". */
static void name_helpers(lua_State *lua, const char *name)
{
    declare_reads_shared(lua, name);
    if (!lua_istable(lua, -1))
        return;
    lua_pushnil(lua);
    while (lua_next(lua, -2) != 0) {
        if (lua_isfunction(lua, -1) && lua_type(lua, -2) == LUA_TSTRING) {
            lua_pushfstring(lua, "%s.%s", name, lua_tostring(lua, -2));
            lua_insert(lua, -2);
            declare_reads_shared(lua, lua_tostring(lua, -2));
            lua_remove(lua, -2);
        }
        lua_pop(lua, 1);
    }
}

static int common(lua_State *lua)
{
    if (strcmp(declaring_of(lua)->file, DECLARE_COMMON_FILE) != 0)
        return luaL_error(lua, "common { } belongs in %s", DECLARE_COMMON_FILE);
    luaL_checktype(lua, 1, LUA_TTABLE);
    lua_settop(lua, 1);
    const struct keys *names = keys_push(lua, 1);
    if (names->others)
        return luaL_error(lua, "common: everything shared needs a name");
    for (size_t i = 0; i < names->count; i++) {
        if (sandbox_defines(lua, names->names[i]))
            return luaL_error(lua, "common: there is a \"%s\" already", names->names[i]);
        lua_getfield(lua, 1, names->names[i]);
        name_helpers(lua, names->names[i]);
        if (lua_istable(lua, -1))
            protect(lua, 0);
        sandbox_define(lua, names->names[i]);
    }
    return 0;
}

void bind_common(lua_State *lua)
{
    lua_pushcfunction(lua, common);
    sandbox_define(lua, "common");
}
