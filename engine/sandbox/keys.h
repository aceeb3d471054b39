/* keys.h - the names in a table, in one order.
 *
 * Lua's own order of keys changes from run to run; what is read from a
 * declaration, and every message about it, may not.
 */
#ifndef EAVEMARK_SANDBOX_KEYS_H
#define EAVEMARK_SANDBOX_KEYS_H

#include <lua.h>
#include <stdbool.h>
#include <stddef.h>

struct keys {
    bool others; /* the table has keys that are no texts */
    size_t count;
    const char *names[]; /* sorted byte by byte; held by the table */
};

/* Pushes a value that holds the keys of the table at index, and returns what
 * it holds: good while both stay where they are. Raises when out of memory. */
const struct keys *keys_push(lua_State *lua, int index);

#endif
