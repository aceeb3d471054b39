/* Plain helpers that rules of most topics need: what is in a list, and what a
 * number prints as. They compare nothing for the finding and record nothing of
 * their own. */
#include "judge/judging.h"

#include "base/number.h"
#include "sandbox/sandbox.h"

#include <lauxlib.h>
#include <lua.h>

#include <stdbool.h>

/* has(list, wanted): true when one of the list is it. A set of the place, a table
 * of the rule's own or a list of the job, whose members then count as read. */
static int has(lua_State *lua)
{
    luaL_checkany(lua, 1);
    luaL_checkany(lua, 2);
    const lua_Integer length = luaL_len(lua, 1);
    bool found = false;
    for (lua_Integer i = 1; !found && i <= length; i++) {
        sandbox_charge(lua, 1);
        lua_geti(lua, 1, i);
        found = lua_rawequal(lua, -1, 2);
        lua_pop(lua, 1);
    }
    lua_pushboolean(lua, found);
    return 1;
}

/* as_printed(value, unit): the number that reports write, so that a rule sorts a
 * fact as the engine compares it. */
static int as_printed(lua_State *lua)
{
    lua_pushnumber(lua, number_rounded(luaL_checknumber(lua, 1), luaL_checkstring(lua, 2)));
    return 1;
}

void bind_plain(lua_State *lua)
{
    lua_pushcfunction(lua, has);
    sandbox_define(lua, "has");
    lua_pushcfunction(lua, as_printed);
    sandbox_define(lua, "as_printed");
}
