#include "sandbox/sort.h"

#include <lauxlib.h>

#include <stdbool.h>
#include <string.h>

/* Numbers come before texts, texts by their bytes: one order on every machine, whatever
 * its locale. */
static int is_before(lua_State *lua, int a, int b)
{
    const int a_type = lua_type(lua, a);
    if (a_type != lua_type(lua, b))
        return a_type == LUA_TNUMBER;
    if (a_type == LUA_TNUMBER)
        return lua_compare(lua, a, b, LUA_OPLT);
    size_t a_length, b_length;
    const char *a_text = lua_tolstring(lua, a, &a_length);
    const char *b_text = lua_tolstring(lua, b, &b_length);
    const int order = memcmp(a_text, b_text, a_length < b_length ? a_length : b_length);
    return order < 0 || (order == 0 && a_length < b_length);
}

/* Does the item on top of the stack come before the one below it? */
static bool top_before_below(lua_State *lua, int comes_before)
{
    if (comes_before == 0)
        return is_before(lua, -1, -2);
    lua_pushvalue(lua, comes_before);
    lua_pushvalue(lua, -2);
    lua_pushvalue(lua, -4);
    lua_call(lua, 2, 1);
    const bool before = lua_toboolean(lua, -1);
    lua_pop(lua, 1);
    return before;
}

/* Merges items [from, middle) and [middle, to) of one table, each in order, into another. */
static void merge(lua_State *lua, int source, int target, size_t from, size_t middle, size_t to,
                  int comes_before)
{
    size_t left = from, right = middle;
    for (size_t at = from; at < to; at++) {
        lua_rawgeti(lua, source, (lua_Integer)left);
        lua_rawgeti(lua, source, (lua_Integer)right);
        if (left < middle && (right >= to || !top_before_below(lua, comes_before))) {
            lua_pop(lua, 1);
            left++;
        } else {
            lua_remove(lua, -2);
            right++;
        }
        lua_rawseti(lua, target, (lua_Integer)at);
    }
}

/* A function that contradicts itself leaves neighbours the wrong way round. */
static void check_order(lua_State *lua, int list, size_t count, int comes_before)
{
    for (size_t i = 1; i < count; i++) {
        lua_rawgeti(lua, list, (lua_Integer)i);
        lua_rawgeti(lua, list, (lua_Integer)i + 1);
        if (top_before_below(lua, comes_before))
            luaL_error(lua, "sort: invalid order function: of two items each comes before "
                            "the other");
        lua_pop(lua, 2);
    }
}

/* Items 1 to count; raw, so that no metamethod runs. */
static void copy(lua_State *lua, int source, int target, size_t count)
{
    for (size_t i = 1; i <= count; i++) {
        lua_rawgeti(lua, source, (lua_Integer)i);
        lua_rawseti(lua, target, (lua_Integer)i);
    }
}

/* Bottom-up merge sort: stable, and its comparisons depend on nothing but the items.
 * comes_before is the stack index of the script's function, 0 for the order of
 * is_before. */
void sort_list(lua_State *lua, int index, size_t count, int comes_before)
{
    const int list = lua_absindex(lua, index), top = lua_gettop(lua);
    luaL_checkstack(lua, 8, "sort");
    lua_createtable(lua, (int)count, 0);
    lua_createtable(lua, (int)count, 0);
    int source = top + 1, target = top + 2;
    copy(lua, list, source, count);
    for (size_t width = 1; width < count; width *= 2) {
        for (size_t from = 1; from <= count; from += 2 * width) {
            const size_t middle = from + width <= count + 1 ? from + width : count + 1;
            const size_t to = middle + width <= count + 1 ? middle + width : count + 1;
            merge(lua, source, target, from, middle, to, comes_before);
        }
        const int swap = source;
        source = target;
        target = swap;
    }
    if (comes_before != 0)
        check_order(lua, source, count, comes_before);
    copy(lua, source, list, count);
    lua_settop(lua, top);
}
