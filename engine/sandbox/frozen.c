#include "sandbox/frozen_parts.h"

#include <lauxlib.h>
#include <lua.h>

#include <stdint.h>
#include <stdlib.h>
#include <string.h>

/* A value of Lua: an object by its place, where no other can stand while it is there; what
 * is none by its type and what tells it from others of that type. Texts are objects: one of
 * the same words elsewhere counts as another, which does no harm. */
struct frozen_value {
    const void *object; /* NULL: it is none */
    int type;
    bool whole;    /* of numbers: an integer */
    uint64_t bits; /* of the number, or 1 and 0 */
};

/* A variable that functions share, or a table. */
struct frozen_object {
    size_t place;        /* in the list: of the table, or of one function that has it */
    int upvalue;         /* which of that function's it is; 0: a table */
    size_t first, count; /* of the table's values: keys and what they lead to */
    size_t next;         /* object of its part, counted from 1; 0: it is the last */
};

/* Of a number that is no integer: as different as its bits. */
static uint64_t bits_of(lua_Number number)
{
    uint64_t bits;
    memcpy(&bits, &number, sizeof(bits));
    return bits;
}

static struct frozen_value value_at(lua_State *lua, int index)
{
    struct frozen_value value = {.object = lua_topointer(lua, index), .type = lua_type(lua, index)};
    value.whole = lua_isinteger(lua, index);
    if (value.type == LUA_TBOOLEAN)
        value.bits = (uint64_t)lua_toboolean(lua, index);
    else if (value.whole)
        value.bits = (uint64_t)lua_tointeger(lua, index);
    else if (value.type == LUA_TNUMBER)
        value.bits = bits_of(lua_tonumber(lua, index));
    return value;
}

/* Asks Lua no more than it takes: of most, where the object is. */
static bool is_still_there(lua_State *lua, int index, const struct frozen_value *before)
{
    if (before->object != NULL)
        return lua_topointer(lua, index) == before->object;
    if (before->whole)
        return lua_isinteger(lua, index) && (uint64_t)lua_tointeger(lua, index) == before->bits;
    if (lua_type(lua, index) != before->type)
        return false;
    if (before->type == LUA_TNUMBER)
        return !lua_isinteger(lua, index) && bits_of(lua_tonumber(lua, index)) == before->bits;
    return before->type != LUA_TBOOLEAN || (uint64_t)lua_toboolean(lua, index) == before->bits;
}

/* Writing down ------------------------------------------------------------------------ */

static void add_value(struct frozen *frozen, struct frozen_value value)
{
    void *values = frozen_list_room(frozen->values, frozen->value_count, &frozen->value_capacity,
                                    sizeof(value));
    if (values == NULL) {
        frozen->failed = true;
        return;
    }
    frozen->values = values;
    frozen->values[frozen->value_count++] = value;
}

static struct frozen_object *add_object(struct frozen *frozen, size_t place, int upvalue)
{
    void *objects = frozen_list_room(frozen->objects, frozen->object_count,
                                     &frozen->object_capacity, sizeof(*frozen->objects));
    if (objects == NULL) {
        frozen->failed = true;
        return NULL;
    }
    frozen->objects = objects;
    struct frozen_object *object = &frozen->objects[frozen->object_count++];
    *object = (struct frozen_object){
        .place = place, .upvalue = upvalue, .first = frozen->value_count};
    return object;
}

/* The variables of the function on top of the stack, those that no other before it has. */
static void take_variables(struct frozen *frozen, lua_State *lua, size_t place)
{
    for (int i = 1; lua_getupvalue(lua, -1, i) != NULL; i++) {
        const struct frozen_value value = value_at(lua, -1);
        lua_pop(lua, 1);
        const size_t other = frozen_list_seen(frozen, lua_upvalueid(lua, -1, i), place);
        if (other != 0)
            frozen_list_join(frozen, place, other);
        else if (add_object(frozen, place, i) != NULL)
            add_value(frozen, value);
    }
}

/* The table on top of the stack. What is in it comes in the same order as long as nothing
 * is changed. */
static void take_table(struct frozen *frozen, lua_State *lua, size_t place)
{
    struct frozen_object *object = add_object(frozen, place, 0);
    for (lua_pushnil(lua); lua_next(lua, -2) != 0; lua_pop(lua, 1)) {
        add_value(frozen, value_at(lua, -2));
        add_value(frozen, value_at(lua, -1));
    }
    if (object != NULL)
        object->count = frozen->value_count - object->first;
}

/* The objects of each part in one chain, in their order. */
static void chain_parts(struct frozen *frozen)
{
    for (size_t i = 0; i < frozen->place_count; i++)
        frozen->parts[i].up = frozen_list_part(frozen, i);
    for (size_t i = 0; i < frozen->object_count; i++) {
        struct frozen_part *part = &frozen->parts[frozen->parts[frozen->objects[i].place].up];
        if (part->last == 0)
            part->first = i + 1;
        else
            frozen->objects[part->last - 1].next = i + 1;
        part->last = i + 1;
    }
}

/* Two functions may share a variable; it is written down once, by whichever comes first.
 * What was seen while listing were objects, now variables; the addresses cannot meet. */
int frozen_take(struct frozen *frozen, lua_State *lua)
{
    frozen->object_count = frozen->value_count = 0;
    const int top = lua_gettop(lua);
    lua_rawgetp(lua, LUA_REGISTRYINDEX, &FROZEN_LIST_KEY);
    for (size_t i = 1; i < frozen->place_count && !frozen->failed; i++) {
        lua_rawgeti(lua, top + 1, (lua_Integer)i);
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
    if (frozen->failed)
        return -1;
    chain_parts(frozen);
    frozen->entered = calloc(frozen->place_count + 1, sizeof(*frozen->entered));
    return frozen->entered == NULL ? -1 : 0;
}

/* Comparing --------------------------------------------------------------------------- */

/* The table on top of the stack against what was written down of it. */
static bool table_holds(lua_State *lua, const struct frozen_value *values, size_t count)
{
    const int table = lua_gettop(lua);
    size_t at = 0;
    bool holds = true;
    for (lua_pushnil(lua); holds && lua_next(lua, table) != 0; lua_pop(lua, 1), at += 2) {
        holds = at + 1 < count && is_still_there(lua, -2, &values[at])
                && is_still_there(lua, -1, &values[at + 1]);
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
    const bool holds = is_still_there(lua, -1, before);
    lua_pop(lua, 1);
    if (!holds)
        *what = name;
    return holds;
}

/* The objects of one part; the list is on top of the stack. */
static bool part_holds(const struct frozen *frozen, const struct frozen_part *part, lua_State *lua,
                       const char **what)
{
    bool holds = true;
    const int list = lua_gettop(lua);
    size_t place = 0; /* of what is on top of the stack */
    for (size_t i = part->first; i != 0 && holds; i = frozen->objects[i - 1].next) {
        const struct frozen_object *object = &frozen->objects[i - 1];
        const struct frozen_value *values = &frozen->values[object->first];
        if (place != object->place) {
            place = object->place;
            lua_settop(lua, list);
            lua_rawgeti(lua, list, (lua_Integer)place);
        }
        if (object->upvalue > 0)
            holds = variable_holds(lua, object->upvalue, values, what);
        else
            holds = table_holds(lua, values, object->count);
    }
    lua_settop(lua, list);
    return holds;
}

static void enter_part(struct frozen *frozen, size_t place)
{
    struct frozen_part *part = &frozen->parts[frozen->parts[place].up];
    if (part->entered)
        return;
    part->entered = true;
    frozen->entered[frozen->entered_count++] = part;
}

void frozen_enter(struct frozen *frozen, int function)
{
    if (frozen->entered == NULL)
        return;
    enter_part(frozen, FROZEN_COMMON);
    if (function >= 0 && (size_t)function < frozen->root_count)
        enter_part(frozen, frozen->roots[function]);
    else /* it is not known what it reaches */
        for (size_t i = 0; i < frozen->place_count; i++)
            enter_part(frozen, i);
}

void frozen_forget(struct frozen *frozen)
{
    while (frozen->entered_count > 0)
        frozen->entered[--frozen->entered_count]->entered = false;
}

bool frozen_holds(struct frozen *frozen, lua_State *lua, const char **what)
{
    bool holds = true;
    const int top = lua_gettop(lua);
    *what = NULL;
    lua_rawgetp(lua, LUA_REGISTRYINDEX, &FROZEN_LIST_KEY);
    for (size_t i = 0; i < frozen->entered_count && holds; i++)
        holds = part_holds(frozen, frozen->entered[i], lua, what);
    lua_settop(lua, top);
    if (holds)
        frozen_forget(frozen);
    return holds;
}

size_t frozen_bytes(const struct frozen *frozen)
{
    return frozen->object_capacity * sizeof(*frozen->objects)
           + frozen->value_capacity * sizeof(*frozen->values)
           + frozen->root_capacity * sizeof(*frozen->roots)
           + frozen->place_capacity * sizeof(*frozen->parts)
           + (frozen->place_count + 1) * sizeof(*frozen->entered);
}

void frozen_free(struct frozen *frozen)
{
    free(frozen->objects);
    free(frozen->values);
    free(frozen->seen);
    free(frozen->parts);
    free(frozen->roots);
    free(frozen->entered);
    *frozen = (struct frozen){0};
}
