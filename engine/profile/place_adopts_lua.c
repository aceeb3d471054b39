/* place_adopts_lua.c - adopts: which book, or topics of it, a place has read for itself.
 *
 *   adopts = { "IRC 2021", topics = { "deck" }, cite = "Ord. 2026-4", as_seen = "2026-05-01" }
 *
 * or a list of such.
 */
#include "profile/place_reading.h"

#include "base/date.h"

#include <lauxlib.h>
#include <lua.h>

#include <string.h>

enum { ADOPTS_MOST = 50 };

/* A misspelt key would vouch for more than was meant: without its topics, for all. */
static void refuse_others(lua_State *lua, int index, int line)
{
    static const char *const KNOWN[] = {"topics", "cite", "as_seen"};
    for (lua_pushnil(lua); lua_next(lua, index) != 0; lua_pop(lua, 1)) {
        bool known = lua_type(lua, -2) == LUA_TNUMBER && lua_tonumber(lua, -2) == 1;
        for (size_t i = 0; !known && lua_type(lua, -2) == LUA_TSTRING && i < 3; i++)
            known = strcmp(lua_tostring(lua, -2), KNOWN[i]) == 0;
        if (!known)
            place_say(lua, line,
                      "adopts is written { \"IRC 2021\", cite = ..., as_seen = ... }, with topics "
                      "= { ... } for a part of the book, and nothing else");
    }
}

/* The table at index: one book. */
static void read_one(lua_State *lua, int index)
{
    struct loading *loading = place_loading(lua);
    struct block *block = loading->block;
    const int line = block->line;
    struct entry_adopt *adopt = place_keep(lua, 1, sizeof(*adopt));
    refuse_others(lua, index, line);
    lua_rawgeti(lua, index, 1);
    if (lua_type(lua, -1) == LUA_TSTRING)
        adopt->book = place_keep_text(lua, lua_tostring(lua, -1));
    else
        place_say(lua, line, "adopts names no book: write { \"IRC 2021\", cite = ... }");
    lua_pop(lua, 1);
    lua_getfield(lua, index, "topics");
    if (lua_istable(lua, -1) && lua_rawlen(lua, -1) > 0)
        adopt->topics = place_keep_set(lua, lua_gettop(lua), "adopts", line);
    else if (!lua_isnil(lua, -1))
        place_say(lua, line, "adopts: topics is a list of topics, { \"deck\" }");
    lua_pop(lua, 1);
    adopt->cite = place_text(lua, index, "cite", line);
    adopt->as_seen = place_text(lua, index, "as_seen", line);
    if (adopt->cite == NULL)
        place_say(lua, line, "adopts: write cite = \"...\", the section that adopts the book");
    if (adopt->as_seen == NULL || date_parse(adopt->as_seen) == 0)
        place_say(lua, line,
                  "adopts: write as_seen = \"YYYY-MM-DD\", the day on which the book was "
                  "read for this place");
    adopt->line = line;
    struct entry_adopt **last = &block->adopts;
    while (*last != NULL)
        last = &(*last)->next;
    *last = adopt;
}

void place_adopts_read(lua_State *lua, int index)
{
    struct loading *loading = place_loading(lua);
    lua_getfield(lua, index, "adopts");
    const int table = lua_gettop(lua);
    if (!lua_isnil(lua, table) && !lua_istable(lua, table)) {
        place_say(lua, loading->block->line,
                  "adopts is written { \"IRC 2021\", cite = ..., as_seen = ... }");
    } else if (lua_istable(lua, table)) {
        lua_rawgeti(lua, table, 1);
        const bool several = lua_istable(lua, -1);
        const size_t count = several ? (size_t)lua_rawlen(lua, table) : 1;
        if (count > ADOPTS_MOST)
            luaL_error(lua, "adopts more than %d books", ADOPTS_MOST);
        lua_pop(lua, 1);
        if (!several)
            read_one(lua, table);
        for (size_t i = 1; several && i <= count; i++) {
            lua_rawgeti(lua, table, (lua_Integer)i);
            luaL_checktype(lua, -1, LUA_TTABLE);
            read_one(lua, lua_gettop(lua));
            lua_pop(lua, 1);
        }
    }
    lua_settop(lua, table - 1);
}
