/* bind_trade.c - the trade's arithmetic as rules call it.
 *
 * Thin: reads named arguments, calls the pure function, and writes the
 * arithmetic it did into the finding. */
#include "judge/bind_argument.h"
#include "judge/judging.h"

#include "base/number.h"
#include "trade/fastener.h"
#include "trade/geometry.h"
#include "trade/ice_barrier.h"
#include "trade/ventilation.h"
#include "trade/wind.h"

#include <lauxlib.h>
#include <lua.h>

#include <stdio.h>
#include <string.h>

static int slope_factor(lua_State *lua)
{
    return give_number(lua, trade_slope_factor(luaL_checknumber(lua, 1)));
}

static int sloped_length_ft(lua_State *lua)
{
    const double run = argument(lua, "run_ft"), pitch = argument(lua, "pitch");
    const double length = trade_sloped_length_ft(run, pitch);
    give_number(lua, length);
    record_work(lua, "%s of run x %s (slope factor at %s) = %s along the slope",
                in_unit(run, "ft").text, as_factor(trade_slope_factor(pitch)).text,
                in_unit(pitch, "rise_in_12").text, in_unit(length, "ft").text);
    return 1;
}

/* A plane whose edges do not tell its area. */
static int plan_area_sqft(lua_State *lua)
{
    const double plan = argument(lua, "plan_sqft"), pitch = argument(lua, "pitch");
    const double area = trade_plan_area_sqft(plan, pitch);
    give_number(lua, area);
    record_work(lua, "%s seen from above x %s (slope factor at %s) = %s",
                in_unit(plan, "sqft").text, as_factor(trade_slope_factor(pitch)).text,
                in_unit(pitch, "rise_in_12").text, in_unit(area, "sqft").text);
    return 1;
}

static int slope_area_sqft(lua_State *lua)
{
    luaL_checktype(lua, 1, LUA_TTABLE);
    if (argument_given(lua, "plan_sqft"))
        return plan_area_sqft(lua);
    const double eave = argument(lua, "eave_ft"), ridge = argument(lua, "ridge_ft");
    const double run = argument(lua, "run_ft"), pitch = argument(lua, "pitch");
    const double area = trade_slope_area_sqft(eave, ridge, run, pitch);
    give_number(lua, area);
    record_work(lua, "(%s + %s) / 2 x %s x %s (slope factor at %s) = %s", in_unit(eave, "ft").text,
                in_unit(ridge, "ft").text, in_unit(run, "ft").text,
                as_factor(trade_slope_factor(pitch)).text, in_unit(pitch, "rise_in_12").text,
                in_unit(area, "sqft").text);
    return 1;
}

static int vent_area_needed_sqin(lua_State *lua)
{
    const double area = argument(lua, "area_sqft"), ratio = argument(lua, "ratio");
    const double needed = trade_vent_area_needed_sqin(area, ratio);
    give_number(lua, needed);
    record_work(lua, "%s / %s x 144 sq in per sq ft = %s needed", in_unit(area, "sqft").text,
                in_unit(ratio, "ratio").text, in_unit(needed, "sqin").text);
    return 1;
}

/* Vents are sold by the foot or by the piece. */
static int vent_area_sqin(lua_State *lua)
{
    double area;
    if (argument_given(lua, "length_ft")) {
        const double length = argument(lua, "length_ft"), each = argument(lua, "sqin_per_ft");
        area = trade_vent_strip_sqin(length, each);
        give_number(lua, area);
        record_work(lua, "%s x %s = %s", in_unit(length, "ft").text,
                    in_unit(each, "sqin_per_ft").text, in_unit(area, "sqin").text);
    } else {
        const double count = argument(lua, "count"), each = argument(lua, "each_sqin");
        area = trade_vent_units_sqin(count, each);
        give_number(lua, area);
        record_work(lua, "%s vents x %s each = %s", in_unit(count, "count").text,
                    in_unit(each, "sqin").text, in_unit(area, "sqin").text);
    }
    return 1;
}

/* unit = "in" of the arguments, for the arithmetic's lines; NULL writes bare numbers. */
static const char *optional_unit(lua_State *lua)
{
    lua_getfield(lua, 1, "unit");
    const char *name = lua_tostring(lua, -1); /* held by the argument table */
    lua_pop(lua, 1);
    return name;
}

static int share_percent(lua_State *lua)
{
    const double part = argument(lua, "part"), whole = argument(lua, "whole");
    const char *name = optional_unit(lua);
    const double share = trade_share_percent(part, whole);
    give_number(lua, share);
    record_work(lua, "%s of %s = %s", in_unit(part, name).text, in_unit(whole, name).text,
                in_unit(share, "percent").text);
    return 1;
}

/* trade.sum { { "what", value }, ..., unit = "in" } */
static int sum(lua_State *lua)
{
    luaL_checktype(lua, 1, LUA_TTABLE);
    const char *name = optional_unit(lua);
    const size_t count = (size_t)lua_rawlen(lua, 1);
    /* One step for each part, as a loop of the rule's own would take. */
    sandbox_charge(lua, count);
    double total = 0;
    /* Longer than any rule needs; snprintf cuts the rest, and the total is right all the
     * same. */
    char line[900] = "";
    for (size_t i = 1; i <= count; i++) {
        lua_rawgeti(lua, 1, (lua_Integer)i);
        luaL_checktype(lua, -1, LUA_TTABLE);
        lua_rawgeti(lua, -1, 1);
        lua_rawgeti(lua, -2, 2);
        const double value = luaL_checknumber(lua, -1);
        const size_t used = strlen(line);
        snprintf(line + used, sizeof(line) - used, "%s%s %s", i == 1 ? "" : " + ",
                 luaL_checkstring(lua, -2), in_unit(value, name).text);
        total += value;
        lua_pop(lua, 3);
    }
    give_number(lua, total);
    record_work(lua, "%s = %s", line, in_unit(total, name).text);
    return 1;
}

static int ice_barrier_reach_in(lua_State *lua)
{
    const double overhang = argument(lua, "overhang_in"), wall = argument(lua, "wall_in");
    const double inside = argument(lua, "inside_in"), pitch = argument(lua, "pitch");
    const double reach = trade_ice_barrier_reach_in(overhang, wall, inside, pitch);
    give_number(lua, reach);
    record_work(lua,
                "(overhang %s + wall %s + inside %s) x %s (slope factor at %s) = %s up the slope",
                in_unit(overhang, "in").text, in_unit(wall, "in").text, in_unit(inside, "in").text,
                as_factor(trade_slope_factor(pitch)).text, in_unit(pitch, "rise_in_12").text,
                in_unit(reach, "in").text);
    return 1;
}

static int vult_to_vasd(lua_State *lua)
{
    const double vult = luaL_checknumber(lua, 1);
    const double vasd = trade_vult_to_vasd(vult);
    give_number(lua, vasd);
    record_work(lua, "Vult %s x square root of 0.6 = Vasd %s", in_unit(vult, "mph").text,
                in_unit(vasd, "mph").text);
    return 1;
}

static int nails_penetration_in(lua_State *lua)
{
    const double length = argument(lua, "length_in"), through = argument(lua, "through_in");
    const double left = trade_nail_penetration_in(length, through);
    give_number(lua, left);
    record_work(lua, "nail %s - layers above the deck %s = %s for the deck",
                in_unit(length, "in").text, in_unit(through, "in").text, in_unit(left, "in").text);
    return 1;
}

/* number(value, unit): as reports write it. */
static int number(lua_State *lua)
{
    const double value = luaL_checknumber(lua, 1);
    lua_pushstring(lua, in_unit(value, luaL_optstring(lua, 2, NULL)).text);
    return 1;
}

static const struct luaL_Reg NAMES[] = {
    {"slope_factor", slope_factor},
    {"sloped_length_ft", sloped_length_ft},
    {"slope_area_sqft", slope_area_sqft},
    {"vent_area_needed_sqin", vent_area_needed_sqin},
    {"vent_area_sqin", vent_area_sqin},
    {"share_percent", share_percent},
    {"sum", sum},
    {"ice_barrier_reach_in", ice_barrier_reach_in},
    {"vult_to_vasd", vult_to_vasd},
    {"nails_penetration_in", nails_penetration_in},
    {NULL, NULL},
};

/* A name that is not there is a typo, not nil. */
static int no_such_trade(lua_State *lua)
{
    return luaL_error(lua, "trade has no \"%s\"", lua_tostring(lua, 2));
}

void bind_trade(lua_State *lua)
{
    lua_newtable(lua);
    luaL_setfuncs(lua, NAMES, 0);
    bind_trade_wind(lua);
    bind_trade_flashing(lua);
    bind_trade_takeoff(lua);
    lua_createtable(lua, 0, 1);
    lua_pushcfunction(lua, no_such_trade);
    lua_setfield(lua, -2, "__index");
    lua_setmetatable(lua, -2);
    sandbox_protect(lua);
    sandbox_define(lua, "trade");
    lua_pushcfunction(lua, number);
    sandbox_define(lua, "number");
}
