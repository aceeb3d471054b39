#include "sandbox/sandbox.h"

#include "sandbox/sandbox_parts.h"

#include <lua.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { TIDY_BYTES = 256 * 1024 };

struct sandbox *sandbox_open(void)
{
    struct sandbox *sandbox = calloc(1, sizeof(*sandbox));
    if (sandbox == NULL)
        return NULL;
    if (heap_open(&sandbox->heap, SANDBOX_HEAP_BYTES) != 0) {
        free(sandbox);
        return NULL;
    }
    heap_allow(&sandbox->heap, SANDBOX_LOAD_BYTES);
    sandbox_begin(sandbox, SANDBOX_FILES_STEPS, SANDBOX_FILES_MS);
    sandbox->lua = lua_newstate(heap_allocate, &sandbox->heap);
    if (sandbox->lua != NULL) {
        memcpy(lua_getextraspace(sandbox->lua), &sandbox, sizeof(sandbox));
        /* No collector: the heap is put back instead. */
        lua_gc(sandbox->lua, LUA_GCSTOP);
        /* The hook is set before any pack code can run. */
        lua_sethook(sandbox->lua, sandbox_on_count, LUA_MASKCOUNT, SANDBOX_HOOK_STEPS);
    }
    if (sandbox->lua == NULL || sandbox_setup(sandbox, sandbox_prepare, NULL) != SANDBOX_DONE) {
        sandbox_close(sandbox);
        return NULL;
    }
    return sandbox;
}

void sandbox_close(struct sandbox *sandbox)
{
    if (sandbox == NULL)
        return;
    /* No lua_close: nothing in the heap owns anything outside it. */
    frozen_free(&sandbox->frozen);
    heap_close(&sandbox->heap);
    free(sandbox);
}

bool sandbox_overfull(const struct sandbox *sandbox)
{
    return heap_used(&sandbox->heap) + sandbox->kept > SANDBOX_LOAD_BYTES;
}

size_t sandbox_bytes(const struct sandbox *sandbox)
{
    return heap_used(&sandbox->heap) + sandbox->heap.copy_size + sandbox->kept
           + frozen_bytes(&sandbox->frozen);
}

static int collect(lua_State *lua)
{
    lua_gc(lua, LUA_GCCOLLECT);
    return 0;
}

/* Blocks given back do not refill any allowance: the limits are those of a heap that is never
 * tidied. */
void sandbox_tidy(struct sandbox *sandbox)
{
    if (heap_used(&sandbox->heap) < sandbox->tidied + TIDY_BYTES)
        return;
    sandbox_setup(sandbox, collect, NULL);
    sandbox->tidied = heap_used(&sandbox->heap);
}

/* What calls leave behind --------------------------------------------------- */

int sandbox_keep(struct sandbox *sandbox)
{
    return heap_snapshot(&sandbox->heap);
}

void sandbox_reset(struct sandbox *sandbox)
{
    heap_restore(&sandbox->heap);
    frozen_forget(&sandbox->frozen);
}

int sandbox_freeze(struct sandbox *sandbox)
{
    sandbox_begin(sandbox, SANDBOX_FILES_STEPS, SANDBOX_FILES_MS);
    if (sandbox_setup(sandbox, frozen_list, &sandbox->frozen) != SANDBOX_DONE
        || frozen_take(&sandbox->frozen, sandbox->lua) != 0 || sandbox_keep(sandbox) != 0)
        return -1;
    sandbox->seen_untouched = true;
    return 0;
}

void sandbox_push_kept(lua_State *lua, int function)
{
    frozen_enter(&sandbox_of(lua)->frozen, function);
    lua_rawgeti(lua, LUA_REGISTRYINDEX, function);
}

bool sandbox_untouched(struct sandbox *sandbox, const char **what)
{
    return frozen_holds(&sandbox->frozen, sandbox->lua, what);
}

/* A call that went wrong otherwise but also left something behind is told by what it
 * left: that would mislead all that follow. */
enum sandbox_stop sandbox_touch(struct sandbox *sandbox, enum sandbox_stop stop)
{
    const char *what;
    if (sandbox_untouched(sandbox, &what))
        return stop;
    if (what == NULL)
        snprintf(sandbox->message, sizeof(sandbox->message),
                 "changed a table of its file: what a rule leaves behind must not reach others");
    else
        snprintf(sandbox->message, sizeof(sandbox->message),
                 "set '%.60s', a local of its file: what a rule leaves behind must not reach "
                 "others",
                 what);
    return SANDBOX_TOUCHED;
}

/* In words ------------------------------------------------------------------ */

const char *sandbox_message(struct sandbox *sandbox, enum sandbox_stop stop)
{
    switch (stop) {
    case SANDBOX_DONE:
        return "done";
    case SANDBOX_STEPS:
        return "took too many steps and was stopped";
    case SANDBOX_TIME:
        return "took too long and was stopped";
    case SANDBOX_SPENT:
        return "was stopped: this and what ran before it took all the steps or time there are";
    case SANDBOX_MEMORY:
        return "took too much memory and was stopped";
    case SANDBOX_SIGNAL:
        return "stopped";
    case SANDBOX_TOUCHED:
    case SANDBOX_ERROR:
        break;
    }
    return sandbox->message;
}

const char *sandbox_place(struct sandbox *sandbox, enum sandbox_stop stop, const char *name)
{
    /* Lua puts "file:line:" before messages; then the place is told already. */
    const bool told = strncmp(sandbox_message(sandbox, stop), name, strlen(name)) == 0;
    return told ? NULL : name;
}
