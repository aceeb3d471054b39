/* frozen.h - what the functions of loaded packs keep between calls, and whether a call
 * has changed any of it.
 *
 * A local at the top of a file, and a table that such a local leads to, outlast every
 * call: a rule that writes there speaks to the rules after it. Lua can forbid neither,
 * so what was there after loading is written down, every variable and every member of
 * every table that the functions of the packs can reach, and held against what is there
 * now. Nothing is taken from Lua's heap for that.
 *
 * A function changes nothing but what it reaches. So all is written down in parts: what
 * every function reaches by name, and others that reach it but not one another - a file is
 * one, as its functions share the names they see. Held against what is there now are the
 * first, and those of which a function was called.
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
struct frozen_part;
struct frozen_seen;

struct frozen {
    struct frozen_object *objects; /* functions and tables */
    size_t object_count, object_capacity;
    struct frozen_value *values; /* of objects, in their order */
    size_t value_count, value_capacity;
    struct frozen_part *parts; /* by the places of what is listed */
    size_t place_count, place_capacity;
    size_t *roots; /* by the registry's numbers, the places of the functions handed over */
    size_t root_count, root_capacity;
    struct frozen_part **entered; /* since all of it was last there still */
    size_t entered_count;
    bool common_listed;
    struct frozen_seen *seen; /* while listing */
    size_t seen_count, seen_capacity;
    bool failed; /* out of memory */
};

/* A lua_CFunction, run protected: lists in the registry what the functions of the
 * registry, and those that packs see by name, reach. Its argument is the struct frozen. */
int frozen_list(lua_State *lua);

/* Writes down what is there now. -1 when out of memory, or frozen_list was. */
int frozen_take(struct frozen *frozen, lua_State *lua);

/* The function that stands in the registry under this number is about to be called. */
void frozen_enter(struct frozen *frozen, int function);

/* True if all of it is there still: what was called since left nothing behind. Otherwise
 * *what is the name of the variable that was set, or NULL when it was a table. Takes no
 * memory and raises nothing. */
bool frozen_holds(struct frozen *frozen, lua_State *lua, const char **what);

/* All of it is as it was: the heap was put back. */
void frozen_forget(struct frozen *frozen);

/* Bytes taken to write it down. */
size_t frozen_bytes(const struct frozen *frozen);

void frozen_free(struct frozen *frozen);

#endif
