#include "sandbox/keys.h"

#include "sandbox/sandbox.h"

#include <stdlib.h>
#include <string.h>

static int by_bytes(const void *a, const void *b)
{
    return strcmp(*(const char *const *)a, *(const char *const *)b);
}

const struct keys *keys_push(lua_State *lua, int index)
{
    const int table = lua_absindex(lua, index);
    size_t count = 0;
    for (lua_pushnil(lua); lua_next(lua, table) != 0; lua_pop(lua, 1))
        count++;
    sandbox_charge(lua, count);
    struct keys *keys = lua_newuserdatauv(lua, sizeof(*keys) + count * sizeof(char *), 0);
    keys->others = false;
    keys->count = 0;
    for (lua_pushnil(lua); lua_next(lua, table) != 0; lua_pop(lua, 1)) {
        if (lua_type(lua, -2) == LUA_TSTRING)
            keys->names[keys->count++] = lua_tostring(lua, -2);
        else
            keys->others = true;
    }
    qsort(keys->names, keys->count, sizeof(keys->names[0]), by_bytes);
    return keys;
}
