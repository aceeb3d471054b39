/* sandbox.h - a Lua state that survives whatever a rule pack does.
 *
 * A pack gets a short list of functions (whitelist.c), read-only, and nothing
 * else: no files, no loading, no coroutines, no metatables, no way to catch
 * an error, so that a limit, once hit, ends the call. Lua is entered only
 * through sandbox_run and sandbox_call, which arm three limits:
 *
 *   steps   counted in Lua instructions, plus what C functions charge for the
 *           work they are about to do (sandbox_charge); the same on every
 *           machine
 *   time    processor time of the thread, looked at every few thousand steps, and every
 *           few hundred where texts are long: a machine that is busy or asleep costs a
 *           pack nothing
 *   memory  bytes taken from the heap during the call, and while loading those that
 *           binders keep outside it (sandbox_charge_kept)
 *
 * Each call has its own, and all calls since sandbox_begin have a total of steps and
 * time between them: a thousand rules that each stay below their limit are bounded too.
 *
 * Text chunks only. Errors: a sandbox_stop and a message that names file and
 * line where Lua gave them.
 *
 * Only files of this room, and binders (bind_*.c, *_lua.c), include lua.h.
 */
#ifndef EAVEMARK_SANDBOX_SANDBOX_H
#define EAVEMARK_SANDBOX_SANDBOX_H

#include "sandbox/frozen.h"
#include "sandbox/heap.h"

#include <lua.h>
#include <stdbool.h>
#include <stddef.h>
#include <string.h>

/* A page in a browser, which has little memory, is built with less. */
#ifndef EAVEMARK_HEAP_MB
#define EAVEMARK_HEAP_MB 64
#endif

/* Every limit in one place. */
enum {
    SANDBOX_HEAP_BYTES = EAVEMARK_HEAP_MB * 1024 * 1024,
    SANDBOX_LOAD_BYTES = 24 * 1024 * 1024, /* for loading all packs */
    SANDBOX_CALL_BYTES = 4 * 1024 * 1024,  /* for judging one thing */
    SANDBOX_KEPT_BYTES = 16 * 1024 * 1024, /* of one file, outside the heap */
    SANDBOX_LOAD_STEPS = 5 * 1000 * 1000,  /* of one file */
    SANDBOX_CALL_STEPS = 400 * 1000,
    SANDBOX_LOAD_MS = 2000,
    SANDBOX_CALL_MS = 500,
    /* Totals: of all files of one kind, and of a whole check, which takes about a
     * hundred thousand steps. */
    SANDBOX_FILES_STEPS = 2 * SANDBOX_LOAD_STEPS,
    SANDBOX_FILES_MS = 2 * SANDBOX_LOAD_MS,
    SANDBOX_CHECK_STEPS = 40 * 1000 * 1000,
    SANDBOX_CHECK_MS = 10 * 1000,
    SANDBOX_SOURCE_BYTES = 512 * 1024, /* of one file */
    SANDBOX_MESSAGE_BYTES = 512,
    SANDBOX_SORT_LONGEST = 10000, /* items of a list that may be sorted */
};

enum sandbox_stop {
    SANDBOX_DONE,
    SANDBOX_ERROR, /* the pack's own error, or a syntax error */
    SANDBOX_STEPS,
    SANDBOX_TIME,
    SANDBOX_SPENT, /* the total, most of it by calls before */
    SANDBOX_MEMORY,
    SANDBOX_TOUCHED, /* the call changed what outlasts it: sandbox_touch */
    SANDBOX_SIGNAL,  /* a binder ended the call on purpose: sandbox_signal */
};

struct sandbox {
    struct heap heap;
    struct frozen frozen;
    lua_State *lua;
    void *user;             /* for binders */
    bool loading;           /* in sandbox_run or sandbox_setup, not in sandbox_call */
    enum sandbox_stop stop; /* why the running call is ending */
    long steps_left;        /* of the running call */
    long total_left;        /* of all calls, the running one's taken off */
    long long taken;        /* by all calls ever */
    long not_looked;        /* steps since the clock was looked at */
    int call_ms;            /* of the running call */
    long long call_ends_ns; /* thread's processor time; 0: not looked at yet */
    long long total_ends_ns;
    bool seen_untouched; /* after loading or the last job, and no call was made since */
    size_t kept_left;    /* of the file being loaded */
    size_t kept;         /* by all files so far */
    size_t tidied;       /* bytes the heap held when it was last tidied */
    char message[SANDBOX_MESSAGE_BYTES];
};

/* A state with the whitelist in place. NULL when out of memory. */
struct sandbox *sandbox_open(void);
void sandbox_close(struct sandbox *sandbox);

/* The sandbox a state belongs to: in the state's extra space, where no script can reach it. */
static inline struct sandbox *sandbox_of(lua_State *lua)
{
    struct sandbox *sandbox;
    memcpy(&sandbox, lua_getextraspace(lua), sizeof(sandbox));
    return sandbox;
}

/* Begins a total of steps and processor time for all calls until the next begins: that
 * of a check, or of all files of one kind. A state is opened with SANDBOX_FILES_STEPS
 * and SANDBOX_FILES_MS begun. Calls and begin belong to one thread. */
void sandbox_begin(struct sandbox *sandbox, long steps, int ms);

/* What was begun was seen to have come to its end: no call would get anywhere. */
bool sandbox_spent(const struct sandbox *sandbox);

/* Runs one source text. name appears in messages ("rules/deck.lua"). */
enum sandbox_stop sandbox_run(struct sandbox *sandbox, const char *source, size_t length,
                              const char *name);

/* Runs what the build's own Lua compiled of such a text (profile/made.h). Lua does not
 * look a compiled chunk over, and a wrong one could break the interpreter: none is ever
 * read from a file, only from the program itself. */
enum sandbox_stop sandbox_run_compiled(struct sandbox *sandbox, const char *code, size_t length,
                                       const char *name);

/* Runs a C function under the loading limits: for setting things up where
 * Lua may raise. data is its first and only argument, a light userdata. */
enum sandbox_stop sandbox_setup(struct sandbox *sandbox, lua_CFunction function, void *data);

/* Calls function(data) under the limits of one judgement. */
enum sandbox_stop sandbox_call(struct sandbox *sandbox, lua_CFunction function, void *data);

/* Between calls, after packs were run: lets go of what they left lying, when it has come to be
 * much. What is judged then has less to copy. No text of Lua's may be held outside. */
void sandbox_tidy(struct sandbox *sandbox);

/* Inside a call: makes the value on top of the stack a name that packs see;
 * pops it. */
void sandbox_define(lua_State *lua, const char *name);

/* Inside a call: do packs see this name already? */
bool sandbox_defines(lua_State *lua, const char *name);

/* Inside a call: replaces the table on top of the stack with a read-only view. */
void sandbox_protect(lua_State *lua);

/* Inside a call: charges steps for work about to be done in C; ends the call
 * when they, or its time, run out. */
void sandbox_charge(lua_State *lua, size_t steps);

/* Inside a call: charges bytes about to be kept outside the heap, where no limit of
 * Lua's sees them: one text of a megabyte may stand in a table a hundred thousand
 * times, and each place of it is copied. Ends the call when they run out. */
void sandbox_charge_kept(lua_State *lua, size_t bytes);

/* More than all files together may take: what the heap holds, and what was kept. */
bool sandbox_overfull(const struct sandbox *sandbox);

/* Bytes it takes: the heap and its copy, what was kept and what was written down. */
size_t sandbox_bytes(const struct sandbox *sandbox);

/* Inside a call: calls the C function below its arguments on the stack, which are
 * popped. 0, or -1 when it raised an error of its own, with the message on top. A
 * limit that is hit ends the whole call all the same. */
int sandbox_try(lua_State *lua, int arguments);

/* Inside a call: ends it for a reason the binder has kept for itself. */
int sandbox_signal(lua_State *lua);

/* The heap as it is now is what sandbox_reset returns to. -1: out of memory. */
int sandbox_keep(struct sandbox *sandbox);
void sandbox_reset(struct sandbox *sandbox);

/* The same, once all is loaded, and what packs keep for themselves is written down. -1:
 * out of memory. */
int sandbox_freeze(struct sandbox *sandbox);

/* Inside a call: pushes the function of a pack that stands in the registry under this number.
 * The only way to one, so that it is known whose variables may be changed. */
void sandbox_push_kept(lua_State *lua, int function);

/* True if no call since has changed what packs keep. Otherwise *what is the name of the
 * variable that was set (good until the next call), or NULL for a table. */
bool sandbox_untouched(struct sandbox *sandbox, const char **what);

/* After a call that ended with this stop: that stop, or SANDBOX_TOUCHED. */
enum sandbox_stop sandbox_touch(struct sandbox *sandbox, enum sandbox_stop stop);

/* What a stop other than SANDBOX_DONE means, with the pack's message where
 * there is one; valid until the next call. */
const char *sandbox_message(struct sandbox *sandbox, enum sandbox_stop stop);

/* What to print before that message: the name of the source that was run, or
 * NULL when the message begins with it, as Lua's own mostly do. */
const char *sandbox_place(struct sandbox *sandbox, enum sandbox_stop stop, const char *name);

#endif
