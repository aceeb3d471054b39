/* judge_caution_lua.c - see judge_caution.h. */
#include "judge/judge_caution.h"

#include <lua.h>

static int call_for_flag(lua_State *lua)
{
    struct call *call = lua_touserdata(lua, 1);
    lua_call(lua, call_push(lua, call, call->function), 1);
    /* As Lua has it: anything but nil and false is a danger. */
    call->present = lua_toboolean(lua, -1);
    return 0;
}

static void caution_broken(struct run *run, const struct caution *caution, enum stage stage,
                           enum sandbox_stop stop)
{
    const struct part part = {.kind = "caution",
                              .name = caution->name,
                              .title = "A caution for people's safety",
                              .file = caution->file,
                              .line = caution->line,
                              .stage = stage};
    run_part_broken(run, &part, sandbox_message(run->judging.book->sandbox, stop));
}

/* What a function says, or the text where there is none; NULL where it fails, and *stop
 * then says how, unless something failed before. */
static const char *caution_words(struct run *run, const struct caution *caution, int function,
                                 const char *text, enum sandbox_stop *stop)
{
    if (function == RULE_NO_FUNCTION)
        return text;
    if (*stop != SANDBOX_DONE && *stop != SANDBOX_SIGNAL)
        return NULL;
    struct call call = {
        .judging = &run->judging, .reads = caution->reads, .function = function, .must_say = true};
    *stop = run_enter_or_recall(run, call_for_text, &call);
    return call.text;
}

/* A danger that a missing fact or a broken caution cannot rule out is present; its name
 * then stands for the words. */
static void judge_caution(struct run *run, const struct caution *caution, enum stage stage,
                          struct safety *safety)
{
    /* What stops before it could answer leaves the danger standing. */
    struct call call = {.judging = &run->judging,
                        .reads = caution->reads,
                        .function = caution->when,
                        .present = true};
    enum sandbox_stop stop = SANDBOX_DONE;
    if (caution->when != RULE_NO_FUNCTION)
        stop = run_enter_or_recall(run, call_for_flag, &call);
    if (stop == SANDBOX_DONE && !call.present)
        return;
    const char *says = caution_words(run, caution, caution->says_function, caution->says, &stop);
    const char *brief = caution_words(run, caution, caution->brief_function, caution->brief, &stop);
    /* There is room: the cautions were counted before. */
    safety[run->result->safety_count++] = (struct safety){.name = caution->name,
                                                          .cite = caution->cite,
                                                          .says = says == NULL ? caution->name
                                                                               : says,
                                                          .brief = brief};
    if (stop != SANDBOX_DONE && stop != SANDBOX_SIGNAL)
        caution_broken(run, caution, stage, stop);
}

void judge_cautions(struct run *run, enum stage stage)
{
    size_t count = 0;
    for (const struct caution *c = run->judging.book->cautions; c != NULL; c = c->next)
        count++;
    struct safety *safety = arena_array(&run->result->arena, count + 1, sizeof(*safety));
    if (safety == NULL)
        return;
    run->result->safety = safety;
    for (const struct caution *c = run->judging.book->cautions; c != NULL; c = c->next)
        if (c->stages[stage])
            judge_caution(run, c, stage, safety);
}
