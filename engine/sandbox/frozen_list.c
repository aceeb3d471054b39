/* frozen_list.c - finds what packs keep, as frozen.h tells. */
#include "sandbox/frozen_parts.h"

#include "sandbox/sandbox_parts.h"

#include <lauxlib.h>
#include <lua.h>

#include <stdint.h>
#include <stdlib.h>

const char FROZEN_LIST_KEY = 'f';

enum { NAMES_DEEPEST = 16 };

struct frozen_seen {
    const void *pointer; /* NULL: a free place of the hash table */
    size_t place;
};

void *frozen_list_room(void *list, size_t count, size_t *capacity, size_t size)
{
    if (count < *capacity)
        return list;
    const size_t more = *capacity == 0 ? 256 : *capacity * 2;
    void *grown = realloc(list, more * size);
    if (grown != NULL)
        *capacity = more;
    return grown;
}

/* What was seen ----------------------------------------------------------------------- */

/* Where the pointer is in the hash table of those seen, or the free place for it: open
 * addressing, steps of one. Lua's blocks stand 16 bytes apart, and 2654435761 is Knuth's
 * multiplier. */
static struct frozen_seen *place_of(const struct frozen *frozen, const void *pointer)
{
    size_t at = (size_t)((uintptr_t)pointer / 16 * 2654435761u) % frozen->seen_capacity;
    while (frozen->seen[at].pointer != NULL && frozen->seen[at].pointer != pointer)
        at = (at + 1) % frozen->seen_capacity;
    return &frozen->seen[at];
}

/* Never more than half full, so that place_of always ends. */
static bool more_room(struct frozen *frozen)
{
    const struct frozen before = *frozen;
    frozen->seen_capacity = before.seen_capacity == 0 ? 1024 : before.seen_capacity * 2;
    frozen->seen = calloc(frozen->seen_capacity, sizeof(*frozen->seen));
    if (frozen->seen == NULL) {
        *frozen = before;
        return false;
    }
    for (size_t i = 0; i < before.seen_capacity; i++)
        if (before.seen[i].pointer != NULL)
            *place_of(frozen, before.seen[i].pointer) = before.seen[i];
    free(before.seen);
    return true;
}

size_t frozen_list_seen(struct frozen *frozen, const void *pointer, size_t place)
{
    if (2 * frozen->seen_count >= frozen->seen_capacity && !more_room(frozen)) {
        frozen->failed = true;
        return 0;
    }
    struct frozen_seen *seen = place_of(frozen, pointer);
    if (seen->pointer != NULL)
        return seen->place;
    *seen = (struct frozen_seen){pointer, place};
    frozen->seen_count++;
    return 0;
}

/* Parts ------------------------------------------------------------------------------- */

size_t frozen_list_part(struct frozen *frozen, size_t place)
{
    struct frozen_part *parts = frozen->parts;
    for (; parts[place].up != place; place = parts[place].up)
        parts[place].up = parts[parts[place].up].up;
    return place;
}

/* What leads to something common stays a part of its own: whatever is called, the common
 * part is looked at. */
void frozen_list_join(struct frozen *frozen, size_t a, size_t b)
{
    a = frozen_list_part(frozen, a);
    b = frozen_list_part(frozen, b);
    if (a != FROZEN_COMMON && b != FROZEN_COMMON)
        frozen->parts[a].up = b;
}

/* The next place: common until those that packs see by name are gone through, and then a part
 * of its own. */
static void add_place(struct frozen *frozen)
{
    void *parts = frozen_list_room(frozen->parts, frozen->place_count, &frozen->place_capacity,
                                   sizeof(*frozen->parts));
    if (parts == NULL) {
        frozen->failed = true;
        return;
    }
    frozen->parts = parts;
    const size_t up = frozen->common_listed ? frozen->place_count : FROZEN_COMMON;
    frozen->parts[frozen->place_count++] = (struct frozen_part){.up = up};
}

/* Listing ----------------------------------------------------------------------------- */

/* What the sandbox protects anyway: views, and the parts of a job. */
static bool is_protected(lua_State *lua, int index)
{
    return luaL_getmetafield(lua, index, "__metatable") != LUA_TNIL;
}

/* Pops the value on top, and lists it if it can be changed and was not listed. Its place;
 * 0 for what cannot be changed. */
static size_t list_value(lua_State *lua, struct frozen *frozen, int list)
{
    const int type = lua_type(lua, -1), top = lua_gettop(lua);
    const bool function = type == LUA_TFUNCTION && !lua_iscfunction(lua, -1);
    const bool table = type == LUA_TTABLE && !is_protected(lua, -1);
    size_t place = 0;
    lua_settop(lua, top);
    if (function || table)
        place = frozen_list_seen(frozen, lua_topointer(lua, top), frozen->place_count);
    if ((function || table) && place == 0 && !frozen->failed) {
        place = frozen->place_count;
        add_place(frozen);
        lua_pushvalue(lua, top);
        lua_rawseti(lua, list, (lua_Integer)place);
    }
    lua_settop(lua, top - 1);
    return frozen->failed ? 0 : place;
}

/* The same of what the object at this place leads to. */
static void list_led_to(lua_State *lua, struct frozen *frozen, int list, size_t from)
{
    const size_t place = list_value(lua, frozen, list);
    if (place != 0)
        frozen_list_join(frozen, from, place);
}

/* What the object on top of the stack leads to: a function's variables, a table's keys
 * and values. */
static void list_inside(lua_State *lua, struct frozen *frozen, int list, size_t from)
{
    const int object = lua_gettop(lua);
    if (lua_isfunction(lua, object)) {
        for (int i = 1; lua_getupvalue(lua, object, i) != NULL; i++)
            list_led_to(lua, frozen, list, from);
        return;
    }
    for (lua_pushnil(lua); lua_next(lua, object) != 0;) {
        list_led_to(lua, frozen, list, from);
        lua_pushvalue(lua, -1);
        list_led_to(lua, frozen, list, from); /* a key may be a table too */
    }
}

/* Pops a table of names that packs see and none can change; in it, and in those behind
 * views in it, may be functions of a pack. */
static void list_names(lua_State *lua, struct frozen *frozen, int list, int depth)
{
    const int names = lua_gettop(lua);
    if (depth > NAMES_DEEPEST)
        luaL_error(lua, "names within names within names");
    luaL_checkstack(lua, 8, "names");
    for (lua_pushnil(lua); lua_next(lua, names) != 0; lua_settop(lua, names + 1)) {
        if (!lua_istable(lua, names + 2) || !is_protected(lua, names + 2))
            list_value(lua, frozen, list);
        else if (luaL_getmetafield(lua, names + 2, "__index") == LUA_TTABLE)
            list_names(lua, frozen, list, depth + 1);
    }
    lua_settop(lua, names - 1);
}

/* Pops a function that a file handed over under this number. */
static void list_root(lua_State *lua, struct frozen *frozen, int list, lua_Integer number)
{
    const size_t place = list_value(lua, frozen, list);
    while ((lua_Integer)frozen->root_count <= number && !frozen->failed) {
        void *roots = frozen_list_room(frozen->roots, frozen->root_count, &frozen->root_capacity,
                                       sizeof(*frozen->roots));
        if (roots == NULL) {
            frozen->failed = true;
            return;
        }
        frozen->roots = roots;
        frozen->roots[frozen->root_count++] = FROZEN_COMMON;
    }
    if (!frozen->failed)
        frozen->roots[number] = place;
}

/* The list grows while it is walked from this place on, until nothing new is found: the
 * whole graph, without recursion. */
static void list_all_inside(lua_State *lua, struct frozen *frozen, int list, size_t from)
{
    for (size_t i = from; i < frozen->place_count && !frozen->failed; i++) {
        lua_rawgeti(lua, list, (lua_Integer)i);
        list_inside(lua, frozen, list, i);
        lua_settop(lua, list);
    }
}

int frozen_list(lua_State *lua)
{
    struct frozen *frozen = lua_touserdata(lua, 1);
    lua_settop(lua, 0);
    lua_newtable(lua);
    lua_pushvalue(lua, -1);
    lua_rawsetp(lua, LUA_REGISTRYINDEX, &FROZEN_LIST_KEY);
    add_place(frozen); /* FROZEN_COMMON, where nothing stands in the list */
    sandbox_push_view(lua);
    if (luaL_getmetafield(lua, -1, "__index") == LUA_TTABLE)
        list_names(lua, frozen, 1, 0);
    lua_settop(lua, 1);
    list_all_inside(lua, frozen, 1, 1);
    frozen->common_listed = true;
    const size_t common = frozen->place_count;
    /* What rule files handed over stands in the registry under whole numbers. */
    for (lua_pushnil(lua); lua_next(lua, LUA_REGISTRYINDEX) != 0;) {
        if (lua_isinteger(lua, -2) && lua_isfunction(lua, -1))
            list_root(lua, frozen, 1, lua_tointeger(lua, -2));
        else
            lua_pop(lua, 1);
    }
    list_all_inside(lua, frozen, 1, common);
    return frozen->failed ? luaL_error(lua, "out of memory") : 0;
}
