/* sandbox_parts.h - what the files of sandbox.h share. */
#ifndef EAVEMARK_SANDBOX_SANDBOX_PARTS_H
#define EAVEMARK_SANDBOX_SANDBOX_PARTS_H

#include "sandbox/sandbox.h"

/* Lua counts instructions and calls the hook each time so many have run: coarse enough to
 * cost little, fine enough that no limit is missed by much. */
enum { SANDBOX_HOOK_STEPS = 500 };

/* After so many steps the clock is looked at, which is a call into the system: as long as
 * no text is longer than SANDBOX_SHORT_TEXT. One step may compare two texts, or read one
 * as a number, from end to end. */
enum { SANDBOX_LOOK_STEPS = 5000, SANDBOX_SHORT_TEXT = 4096 };

/* Lua's count hook: charges those instructions. */
void sandbox_on_count(lua_State *lua, lua_Debug *about);

/* Begins the limits of one call, which may take all that is left of the total. */
void sandbox_arm(struct sandbox *sandbox, long steps, int ms, size_t bytes);

/* For sandbox_setup: fills a new state with the whitelist and the view of it. */
int sandbox_prepare(lua_State *lua);

/* Inside a call: pushes the view of all names that packs run in. */
void sandbox_push_view(lua_State *lua);

#endif
