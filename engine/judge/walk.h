/* walk.h - calling the functions that rules and quantities are made of, once
 * for each thing that `per` names. Internal to the judge room. */
#ifndef EAVEMARK_JUDGE_WALK_H
#define EAVEMARK_JUDGE_WALK_H

#include "judge/judging.h"

#include <lua.h>

/* One entry into the sandbox. The first six members are set by the caller, the
 * rest by the function called. */
struct call {
    struct judging *judging;
    const struct rule *rule;
    const struct node *items; /* outermost first */
    size_t depth;
    const struct reads *reads; /* of what is no rule; NULL: any fact */
    bool facts_only;           /* the function is not given figures */
    int function;              /* registry reference */
    bool applies;
    const char *reason; /* why it does not apply, or NULL */
    struct judgement *judgement;
    const struct amount *amount; /* what a quantity came to */
    bool must_say;               /* a text is due: none is an error */
    const char *text;            /* mend, safety caution or impossibility; a figure's name */
    struct value value;          /* what was reckoned */
    bool present;                /* a caution's danger */
};

/* Inside an entry: pushes function(job, figure, item, outer item...) and
 * returns its number of arguments. */
int call_push(lua_State *lua, const struct call *call, int function);

/* Inside an entry: the text at index copied into the judging arena, or NULL. */
const char *call_kept_text(lua_State *lua, const struct call *call, int index);

/* Inside an entry: asks the function `applies` (which may be
 * RULE_NO_FUNCTION: it does), sets applies and reason, and drops the
 * arithmetic done on the way. */
void call_applies(lua_State *lua, struct call *call, int applies);

/* Entries that call call->function: for whether a condition holds; for a value; for a name;
 * for a text, which must_say demands; for a text or nil, counted as output. */
int call_for_condition(lua_State *lua);
int call_for_value(lua_State *lua);
int call_for_name(lua_State *lua);
int call_for_text(lua_State *lua);
int call_for_words(lua_State *lua);

/* Every entry while judging: puts the heap back when it is due. function finds
 * the call as its light userdata. With judging->apart a call that changed what outlasts
 * it ends with SANDBOX_TOUCHED. */
enum sandbox_stop call_enter(struct judging *judging, lua_CFunction function, struct call *call);

/* Before the first entry, and after the last. What one rule leaves behind must not reach
 * the next, but looking after each takes longer than judging: it is looked once. False
 * when something was left behind: everything is then to be done again with
 * judging->apart set. */
void call_begin_all(struct judging *judging);
bool call_end_all(struct judging *judging);

struct walk {
    struct judging *judging;
    const struct field *const *per; /* lists, outermost first */
    size_t depth;
    struct node items[RULE_DEEPEST_PER];
    void *data;
    /* Called for each item; and with missing set for a list the job lacks. */
    void (*visit)(struct walk *walk, const struct node *missing);
    size_t visited;
    bool settles; /* it goes through this whole (settle.h), which rests on the lists */
    size_t whole;
};

/* Visits everything that `per` names; for depth 0, the house. */
void walk_per(struct walk *walk);

/* "porch" or "main attic, ridge vent"; NULL for the house. */
const char *walk_where(const struct walk *walk);

#endif
