#include "sandbox/sandbox.h"

#include "base/nearest.h"
#include "sandbox/keys.h"
#include "sandbox/slip.h"
#include "sandbox/whitelist.h"

#include <lauxlib.h>
#include <lua.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

/* Lua counts instructions and calls the hook each time so many have run: coarse enough to
 * cost little, fine enough that no limit is missed by much. */
enum { HOOK_STEPS = 500 };

/* Registry keys: their addresses are unique. */
static const char VISIBLE_KEY = 'v';   /* table: name -> what packs see */
static const char CHUNK_ENV_KEY = 'e'; /* the read-only view packs run in */

/* The state's extra space holds our pointer, so that no script can reach it. */
struct sandbox *sandbox_of(lua_State *lua)
{
    struct sandbox *sandbox;
    memcpy(&sandbox, lua_getextraspace(lua), sizeof(sandbox));
    return sandbox;
}

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
    if (sandbox->not_looked >= HOOK_STEPS)
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

bool sandbox_overfull(const struct sandbox *sandbox)
{
    return heap_used(&sandbox->heap) + sandbox->kept > SANDBOX_LOAD_BYTES;
}

size_t sandbox_bytes(const struct sandbox *sandbox)
{
    return heap_used(&sandbox->heap) + sandbox->heap.copy_size + sandbox->kept
           + frozen_bytes(&sandbox->frozen);
}

int sandbox_signal(lua_State *lua)
{
    return sandbox_end(lua, SANDBOX_SIGNAL);
}

static void on_count(lua_State *lua, lua_Debug *about)
{
    (void)about;
    sandbox_charge(lua, HOOK_STEPS);
}

/* A name no pack may use was read: a typo, or something not allowed. */
static int no_such_name(lua_State *lua)
{
    if (lua_type(lua, 2) != LUA_TSTRING)
        return luaL_error(lua, "there are no such names here");
    const char *wanted = lua_tostring(lua, 2);
    struct nearest nearest;
    nearest_start(&nearest, wanted);
    lua_rawgetp(lua, LUA_REGISTRYINDEX, &VISIBLE_KEY);
    const struct keys *names = keys_push(lua, -1);
    for (size_t i = 0; i < names->count; i++)
        nearest_offer(&nearest, names->names[i]);
    if (nearest.name != NULL)
        return luaL_error(lua, "unknown name '%s' (did you mean '%s'?)", wanted, nearest.name);
    return luaL_error(lua, "unknown name '%s'", wanted);
}

/* Names for locals are the usual reason; so that is said first. */
static int no_writing(lua_State *lua)
{
    if (lua_type(lua, 2) == LUA_TSTRING)
        return luaL_error(lua, "'%s' may not be set here (for your own names write 'local')",
                          lua_tostring(lua, 2));
    return luaL_error(lua, "this table may not be changed");
}

/* Upvalue: the table behind the view. */
static int view_length(lua_State *lua)
{
    lua_pushinteger(lua, (lua_Integer)lua_rawlen(lua, lua_upvalueindex(1)));
    return 1;
}

/* Gives the table on top a metatable that refuses writes and hides itself;
 * reads go to the value just below it, which is removed. */
static void make_view(lua_State *lua) /* stack: source view -> view */
{
    lua_createtable(lua, 0, 4);
    lua_pushvalue(lua, -3);
    lua_setfield(lua, -2, "__index");
    lua_pushvalue(lua, -3);
    lua_pushcclosure(lua, view_length, 1);
    lua_setfield(lua, -2, "__len");
    lua_pushcfunction(lua, no_writing);
    lua_setfield(lua, -2, "__newindex");
    lua_pushboolean(lua, 0);
    lua_setfield(lua, -2, "__metatable");
    lua_setmetatable(lua, -2);
    lua_remove(lua, -2);
}

void sandbox_protect(lua_State *lua)
{
    lua_newtable(lua);
    make_view(lua);
}

void sandbox_define(lua_State *lua, const char *name)
{
    lua_rawgetp(lua, LUA_REGISTRYINDEX, &VISIBLE_KEY);
    lua_insert(lua, -2);
    lua_pushstring(lua, name);
    lua_insert(lua, -2);
    lua_rawset(lua, -3);
    lua_pop(lua, 1);
}

bool sandbox_defines(lua_State *lua, const char *name)
{
    lua_rawgetp(lua, LUA_REGISTRYINDEX, &VISIBLE_KEY);
    lua_pushstring(lua, name);
    lua_rawget(lua, -2);
    const bool defined = !lua_isnil(lua, -1);
    lua_pop(lua, 2);
    return defined;
}

static int prepare_state(lua_State *lua)
{
    whitelist_push(lua);
    lua_pushvalue(lua, -1);
    lua_rawsetp(lua, LUA_REGISTRYINDEX, &VISIBLE_KEY); /* visible */
    lua_createtable(lua, 0, 1);
    lua_pushcfunction(lua, no_such_name);
    lua_setfield(lua, -2, "__index");
    lua_setmetatable(lua, -2); /* visible, now strict */
    lua_newtable(lua);
    make_view(lua);
    lua_rawsetp(lua, LUA_REGISTRYINDEX, &CHUNK_ENV_KEY);
    return 0;
}

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
static void arm_limits(struct sandbox *sandbox, long steps, int ms, size_t bytes)
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

/* For C functions that try a call of their own: an error is theirs to handle, a limit
 * goes on up. */
int sandbox_try(lua_State *lua, int arguments)
{
    const int status = lua_pcall(lua, arguments, 0, 0);
    if (status == LUA_OK)
        return 0;
    return classify(sandbox_of(lua), status) == SANDBOX_ERROR ? -1 : lua_error(lua);
}

struct source {
    const char *text;
    size_t length;
    const char *name;
    const char *mode; /* "t": source text only; "b": a compiled chunk */
};

static int run_source(lua_State *lua)
{
    const struct source *source = lua_touserdata(lua, 1);
    const char *chunk = lua_pushfstring(lua, "@%s", source->name);
    if (luaL_loadbufferx(lua, source->text, source->length, chunk, source->mode) != LUA_OK)
        return lua_error(lua);
    lua_rawgetp(lua, LUA_REGISTRYINDEX, &CHUNK_ENV_KEY);
    lua_setupvalue(lua, -2, 1); /* _ENV */
    lua_call(lua, 0, 0);
    return 0;
}

/* In plain words, where Lua's own are for programmers. */
static void say_slip(struct sandbox *sandbox, const struct source *source)
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
    struct source about = {source, length, name, "t"};
    const enum sandbox_stop stop = sandbox_setup(sandbox, run_source, &about);
    if (stop == SANDBOX_ERROR)
        say_slip(sandbox, &about);
    return stop;
}

enum sandbox_stop sandbox_run_compiled(struct sandbox *sandbox, const char *code, size_t length,
                                       const char *name)
{
    struct source about = {code, length, name, "b"};
    return sandbox_setup(sandbox, run_source, &about);
}

enum sandbox_stop sandbox_setup(struct sandbox *sandbox, lua_CFunction function, void *data)
{
    sandbox->loading = true;
    arm_limits(sandbox, SANDBOX_LOAD_STEPS, SANDBOX_LOAD_MS, SANDBOX_LOAD_BYTES);
    return run_protected(sandbox, function, data);
}

enum sandbox_stop sandbox_call(struct sandbox *sandbox, lua_CFunction function, void *data)
{
    sandbox->loading = false;
    arm_limits(sandbox, SANDBOX_CALL_STEPS, SANDBOX_CALL_MS, SANDBOX_CALL_BYTES);
    return run_protected(sandbox, function, data);
}

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
        lua_sethook(sandbox->lua, on_count, LUA_MASKCOUNT, HOOK_STEPS);
    }
    if (sandbox->lua == NULL || sandbox_setup(sandbox, prepare_state, NULL) != SANDBOX_DONE) {
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

int sandbox_keep(struct sandbox *sandbox)
{
    return heap_snapshot(&sandbox->heap);
}

int sandbox_freeze(struct sandbox *sandbox)
{
    sandbox_begin(sandbox, SANDBOX_FILES_STEPS, SANDBOX_FILES_MS);
    if (sandbox_setup(sandbox, frozen_list, &sandbox->frozen) != SANDBOX_DONE
        || frozen_take(&sandbox->frozen, sandbox->lua) != 0)
        return -1;
    return sandbox_keep(sandbox);
}

bool sandbox_untouched(const struct sandbox *sandbox, const char **what)
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

void sandbox_reset(struct sandbox *sandbox)
{
    heap_restore(&sandbox->heap);
}

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
