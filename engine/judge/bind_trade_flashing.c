/* bind_trade_flashing.c - the arithmetic of flashing as rules call it. */
#include "judge/judging.h"

#include "base/number.h"
#include "trade/flashing.h"

#include <lauxlib.h>
#include <lua.h>

#include <math.h>

static double argument(lua_State *lua, const char *key)
{
    luaL_checktype(lua, 1, LUA_TTABLE);
    lua_getfield(lua, 1, key);
    if (lua_type(lua, -1) != LUA_TNUMBER)
        luaL_error(lua, "%s must be a number", key);
    const double value = lua_tonumber(lua, -1);
    lua_pop(lua, 1);
    return value;
}

/* trade.cricket_height_in { width_in, pitch } */
static int cricket_height_in(lua_State *lua)
{
    char width_text[96], pitch_text[96], height_text[96];
    const double width = argument(lua, "width_in"), pitch = argument(lua, "pitch");
    const double height = trade_cricket_height_in(width, pitch);
    if (!isfinite(height))
        return luaL_error(lua, "the arithmetic was given a value out of range");
    number_write_unit(width, "in", width_text);
    number_write_unit(pitch, "rise_in_12", pitch_text);
    number_write_unit(height, "in", height_text);
    lua_pushnumber(lua, height);
    record_work(lua, "half of %s wide, rising at %s = %s high", width_text, pitch_text,
                height_text);
    return 1;
}

static const struct luaL_Reg NAMES[] = {
    {"cricket_height_in", cricket_height_in},
    {NULL, NULL},
};

void bind_trade_flashing(lua_State *lua)
{
    luaL_setfuncs(lua, NAMES, 0);
}
