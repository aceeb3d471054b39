#include "sandbox/frozen.h"

#include <lauxlib.h>
#include <lua.h>

#include <stdint.h>
#include <stdlib.h>
#include <string.h>

static const char LIST_KEY = 'f'; /* registry: the list of objects */

/* A value of Lua by its type and what tells it from others of that type. Texts by their
 * place: one of the same words elsewhere counts as another, which does no harm. */
struct frozen_value {
    int type;
    bool whole;    /* of numbers: an integer */
    uint64_t bits; /* of the number, the place, or 1 and 0 */
};

/* A variable that functions share, or a table. */
struct frozen_object {
    lua_Integer place; /* in the list: of the table, or of one function that has it */
    int upvalue;       /* which of that function's it is; 0: a table */
    size_t count;      /* of the table's values: keys and what they lead to */
};

static struct frozen_value value_at(lua_State *lua, int index)
{
    struct frozen_value value = {.type = lua_type(lua, index)};
    lua_Number number;
    switch (value.type) {
    case LUA_TNIL:
        break;
    case LUA_TBOOLEAN:
        value.bits = (uint64_t)lua_toboolean(lua, index);
        break;
    case LUA_TNUMBER:
        value.whole = lua_isinteger(lua, index);
        number = lua_tonumber(lua, index);
        if (value.whole)
            value.bits = (uint64_t)lua_tointeger(lua, index);
        else
            memcpy(&value.bits, &number, sizeof(number));
        break;
    /* Short texts are interned, so equal ones are at one place. */
    case LUA_TSTRING:
        value.bits = (uintptr_t)lua_tostring(lua, index);
        break;
    default:
        value.bits = (uintptr_t)lua_topointer(lua, index);
    }
    return value;
}

static bool same_frozen(const struct frozen_value *a, const struct frozen_value *b)
{
    return a->type == b->type && a->whole == b->whole && a->bits == b->bits;
}

/* Listing --------------------------------------------------------------------------- */

/* Where the pointer is in the hash table of those seen, or the free place for it: open
 * addressing, steps of one. Lua's blocks stand 16 bytes apart, and 2654435761 is Knuth's
 * multiplier. */
static size_t place_of(const struct frozen *frozen, const void *pointer)
{
    size_t at = (size_t)((uintptr_t)pointer / 16 * 2654435761u) % frozen->seen_capacity;
    while (frozen->seen[at] != NULL && frozen->seen[at] != pointer)
        at = (at + 1) % frozen->seen_capacity;
    return at;
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
        if (before.seen[i] != NULL)
            frozen->seen[place_of(frozen, before.seen[i])] = before.seen[i];
    free(before.seen);
    return true;
}

/* True the first time; false also when out of memory. */
static bool mark_seen(struct frozen *frozen, const void *pointer)
{
    if (2 * frozen->seen_count >= frozen->seen_capacity && !more_room(frozen)) {
        frozen->failed = true;
        return false;
    }
    const size_t at = place_of(frozen, pointer);
    if (frozen->seen[at] != NULL)
        return false;
    frozen->seen[at] = pointer;
    frozen->seen_count++;
    return true;
}

/* What the sandbox protects anyway: views, and the parts of a job. */
static bool is_protected(lua_State *lua, int index)
{
    return luaL_getmetafield(lua, index, "__metatable") != LUA_TNIL;
}

/* Pops the value on top, and lists it if it can be changed and was not listed. */
static void list_value(lua_State *lua, struct frozen *frozen, int list, lua_Integer *count)
{
    const int type = lua_type(lua, -1);
    const bool function = type == LUA_TFUNCTION && !lua_iscfunction(lua, -1);
    const int top = lua_gettop(lua);
    if ((function || (type == LUA_TTABLE && !is_protected(lua, -1)))
        && mark_seen(frozen, lua_topointer(lua, top))) {
        lua_pushvalue(lua, top);
        lua_rawseti(lua, list, ++*count);
    }
    lua_settop(lua, top - 1);
}

/* What the object on top of the stack leads to: a function's variables, a table's keys
 * and values. */
static void list_inside(lua_State *lua, struct frozen *frozen, int list, lua_Integer *count)
{
    const int object = lua_gettop(lua);
    if (lua_isfunction(lua, object)) {
        for (int i = 1; lua_getupvalue(lua, object, i) != NULL; i++)
            list_value(lua, frozen, list, count);
        return;
    }
    for (lua_pushnil(lua); lua_next(lua, object) != 0;) {
        list_value(lua, frozen, list, count);
        lua_pushvalue(lua, -1);
        list_value(lua, frozen, list, count); /* a key may be a table too */
    }
}

int frozen_list(lua_State *lua)
{
    struct frozen *frozen = lua_touserdata(lua, 1);
    lua_Integer count = 0;
    lua_settop(lua, 0);
    lua_newtable(lua);
    lua_pushvalue(lua, -1);
    lua_rawsetp(lua, LUA_REGISTRYINDEX, &LIST_KEY);
    /* What rule files handed over stands in the registry under whole numbers. */
    for (lua_pushnil(lua); lua_next(lua, LUA_REGISTRYINDEX) != 0;) {
        if (lua_isinteger(lua, -2) && lua_isfunction(lua, -1))
            list_value(lua, frozen, 1, &count);
        else
            lua_pop(lua, 1);
    }
    /* The list grows while it is walked, until nothing new is found: the whole graph,
     * without recursion. */
    for (lua_Integer i = 1; i <= count; i++) {
        lua_rawgeti(lua, 1, i);
        list_inside(lua, frozen, 1, &count);
        lua_settop(lua, 1);
    }
    return frozen->failed ? luaL_error(lua, "out of memory") : 0;
}

/* Writing down ------------------------------------------------------------------------ */

/* Room for one more of what list holds; NULL when out of memory. */
static void *one_more(void *list, size_t count, size_t *capacity, size_t size)
{
    if (count < *capacity)
        return list;
    const size_t more = *capacity == 0 ? 256 : *capacity * 2;
    void *grown = realloc(list, more * size);
    if (grown != NULL)
        *capacity = more;
    return grown;
}

static void add_value(struct frozen *frozen, struct frozen_value value)
{
    void *values = one_more(frozen->values, frozen->value_count, &frozen->value_capacity,
                            sizeof(value));
    if (values == NULL) {
        frozen->failed = true;
        return;
    }
    frozen->values = values;
    frozen->values[frozen->value_count++] = value;
}

static struct frozen_object *add_object(struct frozen *frozen, lua_Integer place, int upvalue)
{
    void *objects = one_more(frozen->objects, frozen->object_count, &frozen->object_capacity,
                             sizeof(*frozen->objects));
    if (objects == NULL) {
        frozen->failed = true;
        return NULL;
    }
    frozen->objects = objects;
    struct frozen_object *object = &frozen->objects[frozen->object_count++];
    *object = (struct frozen_object){.place = place, .upvalue = upvalue};
    return object;
}

/* The variables of the function on top of the stack, those that no other before it has. */
static void take_variables(struct frozen *frozen, lua_State *lua, lua_Integer place)
{
    for (int i = 1; lua_getupvalue(lua, -1, i) != NULL; i++) {
        const struct frozen_value value = value_at(lua, -1);
        lua_pop(lua, 1);
        if (mark_seen(frozen, lua_upvalueid(lua, -1, i)) && add_object(frozen, place, i) != NULL)
            add_value(frozen, value);
    }
}

/* The table on top of the stack. What is in it comes in the same order as long as nothing
 * is changed. */
static void take_table(struct frozen *frozen, lua_State *lua, lua_Integer place)
{
    const size_t before = frozen->value_count;
    struct frozen_object *object = add_object(frozen, place, 0);
    for (lua_pushnil(lua); lua_next(lua, -2) != 0; lua_pop(lua, 1)) {
        add_value(frozen, value_at(lua, -2));
        add_value(frozen, value_at(lua, -1));
    }
    if (object != NULL)
        object->count = frozen->value_count - before;
}

/* Two functions may share a variable; it is written down once, by whichever comes first.
 * What was seen while listing were objects, now variables; the addresses cannot meet. */
int frozen_take(struct frozen *frozen, lua_State *lua)
{
    frozen->object_count = frozen->value_count = 0;
    const int top = lua_gettop(lua);
    lua_rawgetp(lua, LUA_REGISTRYINDEX, &LIST_KEY);
    const lua_Integer count = lua_istable(lua, -1) ? (lua_Integer)lua_rawlen(lua, -1) : 0;
    for (lua_Integer i = 1; i <= count && !frozen->failed; i++) {
        lua_rawgeti(lua, top + 1, i);
        if (lua_isfunction(lua, -1))
            take_variables(frozen, lua, i);
        else
            take_table(frozen, lua, i);
        lua_pop(lua, 1);
    }
    lua_settop(lua, top);
    free(frozen->seen);
    frozen->seen = NULL;
    frozen->seen_count = frozen->seen_capacity = 0;
    return frozen->failed ? -1 : 0;
}

/* Comparing --------------------------------------------------------------------------- */

/* The table on top of the stack against what was written down of it. */
static bool table_holds(lua_State *lua, const struct frozen_value *values, size_t count)
{
    const int table = lua_gettop(lua);
    size_t at = 0;
    bool holds = true;
    for (lua_pushnil(lua); holds && lua_next(lua, table) != 0; lua_pop(lua, 1), at += 2) {
        const struct frozen_value key = value_at(lua, -2), value = value_at(lua, -1);
        holds = at + 1 < count && same_frozen(&values[at], &key)
                && same_frozen(&values[at + 1], &value);
    }
    lua_settop(lua, table);
    return holds && at == count;
}

/* The variable of the function on top of the stack; *what is its name where it differs. */
static bool variable_holds(lua_State *lua, int upvalue, const struct frozen_value *before,
                           const char **what)
{
    const char *name = lua_getupvalue(lua, -1, upvalue);
    if (name == NULL)
        return false;
    const struct frozen_value value = value_at(lua, -1);
    lua_pop(lua, 1);
    if (same_frozen(before, &value))
        return true;
    *what = name;
    return false;
}

bool frozen_holds(const struct frozen *frozen, lua_State *lua, const char **what)
{
    bool holds = true;
    const int top = lua_gettop(lua);
    lua_Integer place = 0; /* of what is on top of the stack */
    const struct frozen_value *values = frozen->values;
    *what = NULL;
    lua_rawgetp(lua, LUA_REGISTRYINDEX, &LIST_KEY);
    for (size_t i = 0; i < frozen->object_count && holds; i++) {
        const struct frozen_object *object = &frozen->objects[i];
        if (place != object->place) {
            place = object->place;
            lua_settop(lua, top + 1);
            lua_rawgeti(lua, top + 1, place);
        }
        if (object->upvalue > 0)
            holds = variable_holds(lua, object->upvalue, values++, what);
        else
            holds = table_holds(lua, values, object->count);
        values += object->count;
    }
    lua_settop(lua, top);
    return holds;
}

size_t frozen_bytes(const struct frozen *frozen)
{
    return frozen->object_capacity * sizeof(*frozen->objects)
           + frozen->value_capacity * sizeof(*frozen->values)
           + frozen->seen_capacity * sizeof(*frozen->seen);
}

void frozen_free(struct frozen *frozen)
{
    free(frozen->objects);
    free(frozen->values);
    free(frozen->seen);
    *frozen = (struct frozen){0};
}
