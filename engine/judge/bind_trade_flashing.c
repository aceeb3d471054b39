/* bind_trade_flashing.c - the arithmetic of flashing as rules call it. */
#include "judge/bind_argument.h"
#include "judge/judging.h"

#include "trade/flashing.h"

#include <lauxlib.h>
#include <lua.h>

/* trade.cricket_height_in { width_in, pitch } */
static int cricket_height_in(lua_State *lua)
{
    const double width = argument(lua, "width_in"), pitch = argument(lua, "pitch");
    const double height = trade_cricket_height_in(width, pitch);
    give_number(lua, height);
    record_work(lua, "half of %s wide, rising at %s = %s high", in_unit(width, "in").text,
                in_unit(pitch, "rise_in_12").text, in_unit(height, "in").text);
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
