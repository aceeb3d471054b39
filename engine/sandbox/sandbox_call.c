/* The ways into Lua: every call is protected, and its end told by our own flags. */
#include "sandbox/sandbox_parts.h"

#include "sandbox/slip.h"

#include <lauxlib.h>
#include <stdio.h>
#include <string.h>

/* Why a protected call ended: by our own flags, never by the message. */
static enum sandbox_stop classify(struct sandbox *sandbox, int status)
{
    if (status == LUA_OK)
        return SANDBOX_DONE;
    if (sandbox->stop != SANDBOX_DONE)
        return sandbox->stop;
    if (status == LUA_ERRMEM || heap_refused(&sandbox->heap))
        return SANDBOX_MEMORY;
    return SANDBOX_ERROR;
}

/* Copied out before the heap is put back. */
static void keep_message(struct sandbox *sandbox)
{
    lua_State *lua = sandbox->lua;
    if (lua_type(lua, -1) == LUA_TSTRING) /* no metamethod is consulted */
        snprintf(sandbox->message, sizeof(sandbox->message), "%s", lua_tostring(lua, -1));
    else
        snprintf(sandbox->message, sizeof(sandbox->message), "an error that is a %s, not a text",
                 lua_typename(lua, lua_type(lua, -1)));
}

/* Runs function(data) protected. The function and its argument are pushed
 * without allocating, so nothing can raise outside the protected call. */
static enum sandbox_stop run_protected(struct sandbox *sandbox, lua_CFunction function, void *data)
{
    lua_State *lua = sandbox->lua;
    lua_pushcfunction(lua, function);
    lua_pushlightuserdata(lua, data);
    const int status = lua_pcall(lua, 1, 0, 0);
    const enum sandbox_stop stop = classify(sandbox, status);
    sandbox->total_left += sandbox->steps_left;
    sandbox->taken -= sandbox->steps_left;
    if (status != LUA_OK) {
        if (stop == SANDBOX_ERROR)
            keep_message(sandbox);
        lua_pop(lua, 1);
    }
    return stop;
}

enum sandbox_stop sandbox_setup(struct sandbox *sandbox, lua_CFunction function, void *data)
{
    sandbox->loading = true;
    sandbox_arm(sandbox, SANDBOX_LOAD_STEPS, SANDBOX_LOAD_MS, SANDBOX_LOAD_BYTES);
    return run_protected(sandbox, function, data);
}

enum sandbox_stop sandbox_call(struct sandbox *sandbox, lua_CFunction function, void *data)
{
    sandbox->loading = false;
    sandbox_arm(sandbox, SANDBOX_CALL_STEPS, SANDBOX_CALL_MS, SANDBOX_CALL_BYTES);
    return run_protected(sandbox, function, data);
}

/* For C functions that try a call of their own: an error is theirs to handle, a limit
 * goes on up. */
int sandbox_try(lua_State *lua, int arguments)
{
    const int status = lua_pcall(lua, arguments, 0, 0);
    if (status == LUA_OK)
        return 0;
    return classify(sandbox_of(lua), status) == SANDBOX_ERROR ? -1 : lua_error(lua);
}

/* Sources ------------------------------------------------------------------- */

struct chunk {
    const char *text;
    size_t length;
    const char *name;
    const char *mode; /* "t": source text only; "b": a compiled chunk */
};

static int run_source(lua_State *lua)
{
    const struct chunk *source = lua_touserdata(lua, 1);
    const char *chunk = lua_pushfstring(lua, "@%s", source->name);
    if (luaL_loadbufferx(lua, source->text, source->length, chunk, source->mode) != LUA_OK)
        return lua_error(lua);
    sandbox_push_view(lua);
    lua_setupvalue(lua, -2, 1); /* _ENV */
    lua_call(lua, 0, 0);
    return 0;
}

/* In plain words, where Lua's own are for programmers. */
static void say_slip(struct sandbox *sandbox, const struct chunk *source)
{
    char words[SLIP_WORDS];
    int line = 0;
    if (slip_find(source->text, source->length, sandbox->message, &line, words))
        snprintf(sandbox->message, sizeof(sandbox->message), "%s:%d: %s", source->name, line,
                 words);
}

enum sandbox_stop sandbox_run(struct sandbox *sandbox, const char *source, size_t length,
                              const char *name)
{
    if (length > SANDBOX_SOURCE_BYTES) {
        snprintf(sandbox->message, sizeof(sandbox->message), "%s: larger than %d KB", name,
                 SANDBOX_SOURCE_BYTES / 1024);
        return SANDBOX_ERROR;
    }
    /* Editors of some systems begin a file with this mark, which is no word of Lua. */
    if (length >= 3 && memcmp(source, "\xEF\xBB\xBF", 3) == 0) {
        source += 3;
        length -= 3;
    }
    /* Compiled chunks from outside could break the interpreter. */
    struct chunk about = {source, length, name, "t"};
    const enum sandbox_stop stop = sandbox_setup(sandbox, run_source, &about);
    if (stop == SANDBOX_ERROR)
        say_slip(sandbox, &about);
    return stop;
}

enum sandbox_stop sandbox_run_compiled(struct sandbox *sandbox, const char *code, size_t length,
                                       const char *name)
{
    struct chunk about = {code, length, name, "b"};
    return sandbox_setup(sandbox, run_source, &about);
}
