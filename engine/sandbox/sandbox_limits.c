/* The limits of the calls into Lua, see sandbox.h: counted here, and nowhere else. */
#include "sandbox/sandbox_parts.h"

#include <stdint.h>
#include <time.h>

/* The thread's own processor time: a loaded machine must not fail a rule. */
static long long now_ns(void)
{
    struct timespec now;
    clock_gettime(CLOCK_THREAD_CPUTIME_ID, &now);
    return (long long)now.tv_sec * 1000000000LL + now.tv_nsec;
}

/* Ends the running call. Nothing in a pack can catch it. */
static int sandbox_end(lua_State *lua, enum sandbox_stop stop)
{
    sandbox_of(lua)->stop = stop;
    lua_pushnil(lua);
    return lua_error(lua);
}

/* Asking for a thread's time is a call into the system: it is not done at each charge. A
 * call that never comes so far has no time limit, and needs none. */
static void look_at_clock(lua_State *lua)
{
    struct sandbox *sandbox = sandbox_of(lua);
    const long long now = now_ns();
    sandbox->not_looked = 0;
    if (sandbox->call_ends_ns == 0)
        sandbox->call_ends_ns = now + sandbox->call_ms * 1000000LL;
    if (now > sandbox->total_ends_ns) {
        sandbox->total_left = sandbox->steps_left = 0;
        sandbox_end(lua, SANDBOX_SPENT);
    }
    if (now > sandbox->call_ends_ns)
        sandbox_end(lua, SANDBOX_TIME);
}

/* With texts ten times as long, ten times as often. */
static bool clock_is_due(const struct sandbox *sandbox)
{
    const size_t longest = heap_longest_text(&sandbox->heap);
    const uint64_t length = longest > SANDBOX_SHORT_TEXT ? longest : SANDBOX_SHORT_TEXT;
    return (uint64_t)sandbox->not_looked * length
           >= (uint64_t)SANDBOX_LOOK_STEPS * SANDBOX_SHORT_TEXT;
}

/* C functions that do the work of many instructions pay for it here; the hook pays for
 * plain Lua. */
void sandbox_charge(lua_State *lua, size_t steps)
{
    struct sandbox *sandbox = sandbox_of(lua);
    if (steps >= (size_t)sandbox->steps_left) {
        sandbox->steps_left = 0;
        sandbox_end(lua, sandbox->total_left > 0 ? SANDBOX_STEPS : SANDBOX_SPENT);
    }
    sandbox->steps_left -= (long)steps;
    sandbox->not_looked += (long)steps;
    if (clock_is_due(sandbox))
        look_at_clock(lua);
}

void sandbox_charge_kept(lua_State *lua, size_t bytes)
{
    struct sandbox *sandbox = sandbox_of(lua);
    if (bytes > sandbox->kept_left)
        sandbox_end(lua, SANDBOX_MEMORY);
    sandbox->kept_left -= bytes;
    sandbox->kept += bytes;
}

int sandbox_signal(lua_State *lua)
{
    return sandbox_end(lua, SANDBOX_SIGNAL);
}

void sandbox_on_count(lua_State *lua, lua_Debug *about)
{
    (void)about;
    sandbox_charge(lua, SANDBOX_HOOK_STEPS);
}

void sandbox_begin(struct sandbox *sandbox, long steps, int ms)
{
    sandbox->total_left = steps;
    sandbox->total_ends_ns = now_ns() + ms * 1000000LL;
}

bool sandbox_spent(const struct sandbox *sandbox)
{
    return sandbox->total_left <= 0;
}

/* A call that may take all that is left of the total ends it. */
void sandbox_arm(struct sandbox *sandbox, long steps, int ms, size_t bytes)
{
    sandbox->stop = SANDBOX_DONE;
    sandbox->message[0] = '\0';
    sandbox->steps_left = steps < sandbox->total_left ? steps : sandbox->total_left;
    sandbox->total_left -= sandbox->steps_left;
    sandbox->taken += sandbox->steps_left;
    sandbox->call_ms = ms;
    sandbox->call_ends_ns = 0;
    sandbox->kept_left = SANDBOX_KEPT_BYTES;
    heap_allow(&sandbox->heap, bytes);
}
