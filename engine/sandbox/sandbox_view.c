/* What packs see: names that can be read and never set. */
#include "sandbox/sandbox_parts.h"

#include "base/nearest.h"
#include "sandbox/keys.h"
#include "sandbox/whitelist.h"

#include <lauxlib.h>

/* Registry keys: their addresses are unique. */
static const char VISIBLE_KEY = 'v';   /* table: name -> what packs see */
static const char CHUNK_ENV_KEY = 'e'; /* the read-only view packs run in */

/* A name no pack may use was read: a typo, or something not allowed. */
static int no_such_name(lua_State *lua)
{
    if (lua_type(lua, 2) != LUA_TSTRING)
        return luaL_error(lua, "there are no such names here");
    const char *wanted = lua_tostring(lua, 2);
    struct nearest nearest;
    nearest_start(&nearest, wanted);
    lua_rawgetp(lua, LUA_REGISTRYINDEX, &VISIBLE_KEY);
    const struct keys *names = keys_push(lua, -1);
    for (size_t i = 0; i < names->count; i++)
        nearest_offer(&nearest, names->names[i]);
    if (nearest.name != NULL)
        return luaL_error(lua, "unknown name '%s' (did you mean '%s'?)", wanted, nearest.name);
    return luaL_error(lua, "unknown name '%s'", wanted);
}

/* Names for locals are the usual reason; so that is said first. */
static int no_writing(lua_State *lua)
{
    if (lua_type(lua, 2) == LUA_TSTRING)
        return luaL_error(lua, "'%s' may not be set here (for your own names write 'local')",
                          lua_tostring(lua, 2));
    return luaL_error(lua, "this table may not be changed");
}

/* Upvalue: the table behind the view. */
static int view_length(lua_State *lua)
{
    lua_pushinteger(lua, (lua_Integer)lua_rawlen(lua, lua_upvalueindex(1)));
    return 1;
}

/* Gives the table on top a metatable that refuses writes and hides itself;
 * reads go to the value just below it, which is removed. */
static void make_view(lua_State *lua) /* stack: source view -> view */
{
    lua_createtable(lua, 0, 4);
    lua_pushvalue(lua, -3);
    lua_setfield(lua, -2, "__index");
    lua_pushvalue(lua, -3);
    lua_pushcclosure(lua, view_length, 1);
    lua_setfield(lua, -2, "__len");
    lua_pushcfunction(lua, no_writing);
    lua_setfield(lua, -2, "__newindex");
    lua_pushboolean(lua, 0);
    lua_setfield(lua, -2, "__metatable");
    lua_setmetatable(lua, -2);
    lua_remove(lua, -2);
}

void sandbox_protect(lua_State *lua)
{
    lua_newtable(lua);
    make_view(lua);
}

void sandbox_define(lua_State *lua, const char *name)
{
    lua_rawgetp(lua, LUA_REGISTRYINDEX, &VISIBLE_KEY);
    lua_insert(lua, -2);
    lua_pushstring(lua, name);
    lua_insert(lua, -2);
    lua_rawset(lua, -3);
    lua_pop(lua, 1);
}

bool sandbox_defines(lua_State *lua, const char *name)
{
    lua_rawgetp(lua, LUA_REGISTRYINDEX, &VISIBLE_KEY);
    lua_pushstring(lua, name);
    lua_rawget(lua, -2);
    const bool defined = !lua_isnil(lua, -1);
    lua_pop(lua, 2);
    return defined;
}

int sandbox_prepare(lua_State *lua)
{
    whitelist_push(lua);
    lua_pushvalue(lua, -1);
    lua_rawsetp(lua, LUA_REGISTRYINDEX, &VISIBLE_KEY); /* visible */
    lua_createtable(lua, 0, 1);
    lua_pushcfunction(lua, no_such_name);
    lua_setfield(lua, -2, "__index");
    lua_setmetatable(lua, -2); /* visible, now strict */
    lua_newtable(lua);
    make_view(lua);
    lua_rawsetp(lua, LUA_REGISTRYINDEX, &CHUNK_ENV_KEY);
    return 0;
}

void sandbox_push_view(lua_State *lua)
{
    lua_rawgetp(lua, LUA_REGISTRYINDEX, &CHUNK_ENV_KEY);
}
