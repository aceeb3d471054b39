#include "sandbox/whitelist.h"

#include "sandbox/sandbox.h"
#include "sandbox/sort.h"

#include <lauxlib.h>
#include <lua.h>
#include <lualib.h>

#include <stdbool.h>
#include <stdio.h>
#include <string.h>

/* What packs see of Lua's own libraries, unchanged. Each of these does work
 * bounded by memory already paid for, or by the number of its arguments. */
static const char *const FROM_BASE[] = {"assert",   "error", "ipairs", "select",
                                        "tonumber", "type",  NULL};
static const char *const FROM_MATH[] = {"abs",        "ceil", "floor",      "fmod", "huge", "max",
                                        "maxinteger", "min",  "mininteger", "modf", "pi",   "sqrt",
                                        "tointeger",  "type", "exp",        "log",  "sin",  "cos",
                                        "tan",        "atan", NULL};
static const char *const FROM_STRING[] = {"byte", "len", "lower", "sub", "upper", NULL};
/* Left out, and why: load, loadfile, dofile, require, string.dump (code from
 * outside); pcall, xpcall, coroutine (would catch a limit or dodge it);
 * rawget, rawset, rawequal, rawlen, getmetatable, setmetatable (lead around
 * the read-only views); collectgarbage, debug, io, os, package (reach the
 * host); string.rep, patterns, string.pack (unbounded work); math.random,
 * print, warn (not deterministic, or output). */

static void copy_names(lua_State *lua, const char *const *names) /* stack: from to */
{
    for (; *names != NULL; names++) {
        lua_getfield(lua, -2, *names);
        lua_setfield(lua, -2, *names);
    }
}

/* Addresses must not reach a report: a table is "table", no more. */
static int plain_tostring(lua_State *lua)
{
    luaL_checkany(lua, 1);
    switch (lua_type(lua, 1)) {
    case LUA_TSTRING:
        lua_settop(lua, 1);
        return 1;
    case LUA_TNUMBER:
        if (lua_isinteger(lua, 1)) {
            lua_pushfstring(lua, "%I", (LUAI_UACINT)lua_tointeger(lua, 1));
        } else {
            char digits[64];
            snprintf(digits, sizeof(digits), "%.14g", lua_tonumber(lua, 1));
            lua_pushstring(lua, digits);
        }
        return 1;
    case LUA_TBOOLEAN:
        lua_pushstring(lua, lua_toboolean(lua, 1) ? "true" : "false");
        return 1;
    default:
        lua_pushstring(lua, luaL_typename(lua, 1));
        return 1;
    }
}

static bool is_flag(char c)
{
    return c != '\0' && strchr("-+ #0123456789.", c) != NULL;
}

/* string.format without what prints addresses (%p, %s of a table) or quotes
 * source (%q). Widths are Lua's own: at most two digits. */
static int plain_format(lua_State *lua)
{
    size_t length;
    const char *format = luaL_checklstring(lua, 1, &length);
    sandbox_charge(lua, length / 16 + 1);
    int argument = 1;
    /* By length: a zero byte does not end a format. */
    for (const char *at = format; at < format + length; at++) {
        if (*at != '%')
            continue;
        at++;
        if (*at == '%')
            continue;
        while (is_flag(*at))
            at++;
        argument++;
        if (*at == '\0' || strchr("cdiouxXeEfFgGs", *at) == NULL)
            return luaL_error(lua, "format: '%%%c' is not to be had here", *at == '\0' ? ' ' : *at);
        if (*at == 's' && lua_type(lua, argument) > LUA_TSTRING)
            return luaL_argerror(lua, argument, "text, number or true/false expected");
        if (*at == 's' && lua_type(lua, argument) == LUA_TLIGHTUSERDATA)
            return luaL_argerror(lua, argument, "text, number or true/false expected");
    }
    lua_pushvalue(lua, lua_upvalueindex(1));
    lua_insert(lua, 1);
    lua_call(lua, lua_gettop(lua) - 1, 1);
    return 1;
}

/* Calls the library's own function (upvalue 1) with the arguments at hand. */
static int call_wrapped(lua_State *lua)
{
    lua_pushvalue(lua, lua_upvalueindex(1));
    lua_insert(lua, 1);
    lua_call(lua, lua_gettop(lua) - 1, LUA_MULTRET);
    return lua_gettop(lua);
}

static int charged_concat(lua_State *lua)
{
    luaL_checktype(lua, 1, LUA_TTABLE);
    sandbox_charge(lua, lua_rawlen(lua, 1));
    return call_wrapped(lua);
}

/* table.insert and remove move what stands at and after the place given, if
 * one is: when there are `count` arguments or more. */
static void charge_moved(lua_State *lua, int count)
{
    luaL_checktype(lua, 1, LUA_TTABLE);
    const lua_Integer length = (lua_Integer)lua_rawlen(lua, 1);
    const lua_Integer place = lua_gettop(lua) < count ? length : lua_tointeger(lua, 2);
    sandbox_charge(lua, place >= 1 && place < length ? (size_t)(length - place) : 1);
}

static int charged_insert(lua_State *lua)
{
    charge_moved(lua, 3);
    return call_wrapped(lua);
}

static int charged_remove(lua_State *lua)
{
    charge_moved(lua, 2);
    return call_wrapped(lua);
}

/* table.unpack(list, from, to) pushes every item, there or not. A range that
 * no stack holds is left to the library to refuse. */
static int charged_unpack(lua_State *lua)
{
    const lua_Integer from = luaL_optinteger(lua, 2, 1);
    const lua_Integer to = lua_isnoneornil(lua, 3) ? luaL_len(lua, 1) : luaL_checkinteger(lua, 3);
    if (from <= to && (lua_Unsigned)to - (lua_Unsigned)from < LUAI_MAXSTACK)
        sandbox_charge(lua, (size_t)(to - from));
    return call_wrapped(lua);
}

enum { SORT_LONGEST_TEXT = 256 };

/* Bounds the number of items and what one comparison costs. */
static int own_sort(lua_State *lua)
{
    luaL_checktype(lua, 1, LUA_TTABLE);
    if (luaL_getmetafield(lua, 1, "__metatable") != LUA_TNIL)
        return luaL_error(lua, "sort: this table may not be changed");
    const bool ordered = !lua_isnoneornil(lua, 2);
    if (ordered)
        luaL_checktype(lua, 2, LUA_TFUNCTION);
    lua_settop(lua, 2);
    const size_t count = lua_rawlen(lua, 1);
    if (count > SANDBOX_SORT_LONGEST)
        return luaL_error(lua, "sort: a list of more than %d items", SANDBOX_SORT_LONGEST);
    for (size_t i = 1; !ordered && i <= count; i++) {
        lua_rawgeti(lua, 1, (lua_Integer)i);
        const int type = lua_type(lua, -1);
        if (type == LUA_TSTRING && lua_rawlen(lua, -1) > SORT_LONGEST_TEXT)
            return luaL_error(lua, "sort: a text of more than %d bytes", SORT_LONGEST_TEXT);
        if (type != LUA_TSTRING && type != LUA_TNUMBER)
            return luaL_error(lua, "sort: numbers or texts expected");
        lua_pop(lua, 1);
    }
    size_t log = 1;
    for (size_t n = count; n > 1; n /= 2)
        log++;
    sandbox_charge(lua, count * log);
    sort_list(lua, 1, count, ordered ? 2 : 0);
    return 0;
}

/* Pushes the sorted list of the keys of the table at index 1. */
static void push_sorted_keys(lua_State *lua)
{
    luaL_checktype(lua, 1, LUA_TTABLE);
    lua_newtable(lua);
    lua_Integer count = 0;
    for (lua_pushnil(lua); lua_next(lua, 1) != 0; lua_pop(lua, 1)) {
        if (++count > SANDBOX_SORT_LONGEST)
            luaL_error(lua, "a table of more than %d keys", SANDBOX_SORT_LONGEST);
        const int type = lua_type(lua, -2);
        if (type != LUA_TSTRING && type != LUA_TNUMBER)
            luaL_error(lua, "a table whose keys are not texts or numbers has no order");
        lua_pushvalue(lua, -2);
        lua_rawseti(lua, -4, count);
    }
    sandbox_charge(lua, (size_t)count * 4 + 1);
    sort_list(lua, -1, (size_t)count, 0);
}

/* Upvalues: which key comes after each, and the first. A script may keep this function and
 * give it what it likes. */
static int next_sorted(lua_State *lua)
{
    luaL_checktype(lua, 1, LUA_TTABLE);
    lua_settop(lua, 2);
    if (lua_isnil(lua, 2))
        lua_pushvalue(lua, lua_upvalueindex(2));
    else
        lua_rawget(lua, lua_upvalueindex(1));
    if (lua_isnil(lua, -1))
        return 1;
    lua_pushvalue(lua, -1);
    lua_rawget(lua, 1);
    return 2;
}

/* Pops the list of keys on top; pushes the table of which comes after each, and the first. */
static void link_keys(lua_State *lua)
{
    const lua_Integer count = (lua_Integer)lua_rawlen(lua, -1);
    lua_createtable(lua, 0, (int)count);
    for (lua_Integer i = 1; i < count; i++) {
        lua_rawgeti(lua, -2, i);
        lua_rawgeti(lua, -3, i + 1);
        lua_rawset(lua, -3);
    }
    lua_rawgeti(lua, -2, 1);
    lua_remove(lua, -3);
}

/* Lua's own order of keys changes from run to run; a report may not. */
static int sorted_pairs(lua_State *lua)
{
    lua_settop(lua, 1);
    push_sorted_keys(lua);
    link_keys(lua);
    lua_pushcclosure(lua, next_sorted, 2);
    lua_pushvalue(lua, 1);
    return 2;
}

static int sorted_next(lua_State *lua)
{
    lua_settop(lua, 2);
    push_sorted_keys(lua);
    lua_Integer at = 1;
    if (!lua_isnil(lua, 2)) {
        for (;; at++) {
            lua_rawgeti(lua, 3, at);
            if (lua_isnil(lua, -1))
                return luaL_error(lua, "next: no such key");
            const bool here = lua_rawequal(lua, -1, 2);
            lua_pop(lua, 1);
            if (here)
                break;
        }
        at++;
    }
    lua_rawgeti(lua, 3, at);
    if (lua_isnil(lua, -1))
        return 1;
    lua_pushvalue(lua, -1);
    lua_rawget(lua, 1);
    return 2;
}

static void push_library(lua_State *lua, lua_CFunction open)
{
    lua_pushcfunction(lua, open);
    lua_call(lua, 0, 1);
}

/* Adds function(upvalue: the field of the library below) under a name. */
static void add_wrapped(lua_State *lua, const char *name, const char *wraps, lua_CFunction function)
{ /* stack: library target */
    lua_getfield(lua, -2, wraps);
    lua_pushcclosure(lua, function, 1);
    lua_setfield(lua, -2, name);
}

static void push_math(lua_State *lua)
{
    push_library(lua, luaopen_math);
    lua_newtable(lua);
    copy_names(lua, FROM_MATH);
    lua_remove(lua, -2);
}

static void push_table(lua_State *lua)
{
    push_library(lua, luaopen_table);
    lua_newtable(lua);
    add_wrapped(lua, "concat", "concat", charged_concat);
    add_wrapped(lua, "unpack", "unpack", charged_unpack);
    add_wrapped(lua, "insert", "insert", charged_insert);
    add_wrapped(lua, "remove", "remove", charged_remove);
    lua_pushcfunction(lua, own_sort);
    lua_setfield(lua, -2, "sort");
    lua_remove(lua, -2);
}

/* ("x"):method goes through the metatable that all strings share; it must
 * lead to the same short list, not to Lua's own. */
static void push_string(lua_State *lua)
{
    push_library(lua, luaopen_string); /* also sets the shared metatable */
    lua_newtable(lua);
    copy_names(lua, FROM_STRING);
    add_wrapped(lua, "format", "format", plain_format);
    lua_remove(lua, -2);
    lua_pushliteral(lua, "");
    lua_getmetatable(lua, -1);
    lua_pushvalue(lua, -3);
    lua_setfield(lua, -2, "__index");
    lua_pushboolean(lua, 0);
    lua_setfield(lua, -2, "__metatable");
    lua_pop(lua, 2);
}

void whitelist_push(lua_State *lua)
{
    lua_newtable(lua);               /* visible */
    push_library(lua, luaopen_base); /* leaves _G as its value */
    lua_pushvalue(lua, -2);
    copy_names(lua, FROM_BASE);
    lua_pop(lua, 2);
    lua_pushcfunction(lua, sorted_pairs);
    lua_setfield(lua, -2, "pairs"); /* Lua's own order changes from run to run */
    lua_pushcfunction(lua, sorted_next);
    lua_setfield(lua, -2, "next");
    lua_pushcfunction(lua, plain_tostring);
    lua_setfield(lua, -2, "tostring");
    push_math(lua);
    sandbox_protect(lua);
    lua_setfield(lua, -2, "math");
    push_table(lua);
    sandbox_protect(lua);
    lua_setfield(lua, -2, "table");
    push_string(lua);
    sandbox_protect(lua);
    lua_setfield(lua, -2, "string");
    /* Drop what opening the libraries left behind. */
    lua_pushnil(lua);
    lua_setfield(lua, LUA_REGISTRYINDEX, LUA_LOADED_TABLE);
    lua_newtable(lua);
    lua_rawseti(lua, LUA_REGISTRYINDEX, LUA_RIDX_GLOBALS);
}
