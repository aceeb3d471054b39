/* bind_condition.c - the words that conditions of rows are written with.
 *
 * on "figure", is { "fact", "word", otherwise = "why not" } and their like give plain
 * tables that say which they are; what they name is looked up where they are used
 * (declare_row_lua.c), for only there is it known which lists are in scope. A
 * condition may therefore be kept under a name, and shared. */
#include "judge/bind_declare.h"

#include <lauxlib.h>

static const char *const WORDS[] = {"on",   "off", "asks",   "is", "meant",     "said",
                                    "some", "all", "either", "no", "inspected", NULL};

static bool is_condition(lua_State *lua, int index)
{
    if (!lua_istable(lua, index))
        return false;
    lua_getfield(lua, index, "condition");
    const bool is = !lua_isnil(lua, -1);
    lua_pop(lua, 1);
    return is;
}

/* Upvalue: the word. A table that is not yet a condition becomes one; whatever else is
 * given is the first thing in a new one. */
static int make(lua_State *lua)
{
    declaring_of(lua); /* only while a file is loaded */
    if (lua_gettop(lua) > 1)
        return luaL_error(lua, "%s takes one thing; several are written %s { a, b }",
                          lua_tostring(lua, lua_upvalueindex(1)),
                          lua_tostring(lua, lua_upvalueindex(1)));
    if (lua_gettop(lua) == 0 || !lua_istable(lua, 1) || is_condition(lua, 1)) {
        lua_createtable(lua, 1, 1);
        if (lua_gettop(lua) == 2) {
            lua_pushvalue(lua, 1);
            lua_rawseti(lua, -2, 1);
        }
    } else {
        lua_pushvalue(lua, 1);
    }
    lua_pushvalue(lua, lua_upvalueindex(1));
    lua_setfield(lua, -2, "condition");
    return 1;
}

void bind_condition(lua_State *lua)
{
    for (const char *const *word = WORDS; *word != NULL; word++) {
        lua_pushstring(lua, *word);
        lua_pushcclosure(lua, make, 1);
        sandbox_define(lua, *word);
    }
}
