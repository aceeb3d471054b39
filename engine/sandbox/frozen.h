/* frozen.h - what the functions of loaded packs keep between calls, and whether a call
 * has changed any of it.
 *
 * A local at the top of a file, and a table that such a local leads to, outlast every
 * call: a rule that writes there speaks to the rules after it. Lua can forbid neither,
 * so what was there after loading is written down, every variable and every member of
 * every table that the functions of the packs can reach, and held against what is there
 * now. Nothing is taken from Lua's heap for that.
 *
 * Internal to the sandbox.
 */
#ifndef EAVEMARK_SANDBOX_FROZEN_H
#define EAVEMARK_SANDBOX_FROZEN_H

#include <lua.h>
#include <stdbool.h>
#include <stddef.h>

struct frozen_value;
struct frozen_object;

struct frozen {
    struct frozen_object *objects; /* functions and tables */
    size_t object_count, object_capacity;
    struct frozen_value *values; /* of objects, in their order */
    size_t value_count, value_capacity;
    const void **seen; /* while listing */
    size_t seen_count, seen_capacity;
    bool failed; /* out of memory */
};

/* A lua_CFunction, run protected: lists in the registry what the functions of the
 * registry reach. Its argument is the struct frozen. */
int frozen_list(lua_State *lua);

/* Writes down what is there now. -1 when out of memory, or frozen_list was. */
int frozen_take(struct frozen *frozen, lua_State *lua);

/* True if all of it is there still. Otherwise *what is the name of the variable that was
 * set, or NULL when it was a table. Takes no memory and raises nothing. */
bool frozen_holds(const struct frozen *frozen, lua_State *lua, const char **what);

/* Bytes taken to write it down. */
size_t frozen_bytes(const struct frozen *frozen);

void frozen_free(struct frozen *frozen);

#endif
