#include "judge/bind_argument.h"

#include "base/number.h"

#include <lauxlib.h>

#include <math.h>
#include <stdio.h>

double argument(lua_State *lua, const char *key)
{
    luaL_checktype(lua, 1, LUA_TTABLE);
    /* lua_tonumber leaves the stack as it is: the value is popped once it is copied. */
    lua_getfield(lua, 1, key);
    /* lua_isnumber would take "12" for a number. */
    if (lua_type(lua, -1) != LUA_TNUMBER)
        luaL_error(lua, "%s must be a number", key);
    const double value = lua_tonumber(lua, -1);
    lua_pop(lua, 1);
    return value;
}

bool argument_given(lua_State *lua, const char *key)
{
    luaL_checktype(lua, 1, LUA_TTABLE);
    const bool there = lua_getfield(lua, 1, key) != LUA_TNIL;
    lua_pop(lua, 1);
    return there;
}

double argument_or(lua_State *lua, const char *key, double otherwise)
{
    return argument_given(lua, key) ? argument(lua, key) : otherwise;
}

int give_number(lua_State *lua, double value)
{
    if (!isfinite(value))
        return luaL_error(lua, "the arithmetic was given a value out of range");
    lua_pushnumber(lua, value);
    return 1;
}

struct written in_unit(double value, const char *unit)
{
    struct written written;
    number_write_unit(value, unit, written.text);
    return written;
}

struct written as_factor(double value)
{
    struct written written;
    snprintf(written.text, sizeof(written.text), "%.4f", value);
    return written;
}
