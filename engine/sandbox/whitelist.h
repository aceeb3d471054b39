/* whitelist.h - the functions that packs may use. */
#ifndef EAVEMARK_SANDBOX_WHITELIST_H
#define EAVEMARK_SANDBOX_WHITELIST_H

#include <lua.h>

/* Pushes the table of everything packs see, and closes the way through the
 * string metatable. Lua's libraries must not have been opened in this state:
 * they are opened here, copied from, and dropped. */
void whitelist_push(lua_State *lua);

#endif
