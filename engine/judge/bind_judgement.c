/* bind_judgement.c - a judgement in a rule's hands: what came of a comparison, which may be
 * joined to others and have sentences added. */
#include "judge/judgement.h"

#include <lauxlib.h>
#include <lua.h>

#include <string.h>

static const char JUDGEMENT_KEY = 'j'; /* registry: the metatable of judgements */

void bind_push_held(lua_State *lua, struct judgement *judgement, const double *numbers,
                    size_t count)
{
    maker_find(judging_of(lua), judgement);
    judgement = judgement_held_to(judging_of(lua), judgement, numbers, count);
    bind_check_arena(lua);
    if (judgement == NULL)
        luaL_error(lua, "the figure's other bound cannot be judged");
    /* The judgement itself is the arena's: it outlives the heap, the userdata does not. */
    struct judgement **kept = lua_newuserdatauv(lua, sizeof(judgement), 0);
    *kept = judgement;
    lua_rawgetp(lua, LUA_REGISTRYINDEX, &JUDGEMENT_KEY);
    lua_setmetatable(lua, -2);
}

void bind_push_judgement(lua_State *lua, struct judgement *judgement)
{
    bind_push_held(lua, judgement, NULL, 0);
}

/* Only the metatable tells whose a userdata is; rules have no way to set one. */
struct judgement *bind_to_judgement(lua_State *lua, int index)
{
    void *data = lua_touserdata(lua, index);
    if (data == NULL || lua_islightuserdata(lua, index) || !lua_getmetatable(lua, index))
        return NULL;
    lua_rawgetp(lua, LUA_REGISTRYINDEX, &JUDGEMENT_KEY);
    const bool same = lua_rawequal(lua, -1, -2);
    lua_pop(lua, 2);
    return same ? *(struct judgement **)data : NULL;
}

/* What a rule puts into a finding outlives the sandbox's own memory limit, so
 * it is bounded here: in length, and by charging for every piece. */
enum { TEXT_LONGEST = 4000 };

/* A text of Lua's, looked at but not copied. */
const char *bind_checked_text(lua_State *lua, int index)
{
    size_t length;
    const char *text = luaL_checklstring(lua, index, &length);
    if (length > TEXT_LONGEST)
        luaL_error(lua, "a text of more than %d bytes does not belong in a finding", TEXT_LONGEST);
    sandbox_charge(lua, TEXT_STEPS);
    bind_charge_output(lua, length);
    return text;
}

/* Folded two by two: the first that is not met, or else the last. */
static int all_of(lua_State *lua)
{
    const int count = lua_gettop(lua);
    luaL_argcheck(lua, count > 0, 1, "a judgement expected");
    int chosen = 1;
    for (int i = 1; i <= count; i++)
        luaL_argcheck(lua, bind_to_judgement(lua, i) != NULL, i, "a judgement expected");
    for (int i = 2; i <= count; i++) {
        struct judgement *before = bind_to_judgement(lua, chosen);
        struct judgement *next = bind_to_judgement(lua, i);
        if (judgement_of_both(judging_of(lua), before, next) == next)
            chosen = i;
    }
    bind_check_arena(lua);
    lua_pushvalue(lua, chosen);
    return 1;
}

/* The first that is met, or else the last. A part may be a function that gives one: it
 * is called only if none before it is met, so that what it reads is not read in vain. */
static int any_of(lua_State *lua)
{
    const int count = lua_gettop(lua);
    luaL_argcheck(lua, count > 0, 1, "a judgement expected");
    for (int i = 1; i <= count; i++) {
        lua_pushvalue(lua, i);
        if (lua_isfunction(lua, -1))
            lua_call(lua, 0, 1);
        const struct judgement *judgement = bind_to_judgement(lua, -1);
        luaL_argcheck(lua, judgement != NULL, i, "a judgement expected");
        if (judgement->met || i == count)
            return 1;
        lua_pop(lua, 1);
    }
    return 1;
}

static struct judgement *check_judgement(lua_State *lua)
{
    struct judgement *judgement = bind_to_judgement(lua, 1);
    luaL_argcheck(lua, judgement != NULL, 1, "a judgement expected");
    return judgement;
}

/* Appends to what was said before. That text is copied again each time, so it is charged
 * again. */
static const char *join(lua_State *lua, const char *before, const char *more)
{
    struct arena *arena = judging_of(lua)->arena;
    if (before != NULL && strlen(before) > TEXT_LONGEST)
        luaL_error(lua, "a text of more than %d bytes does not belong in a finding", TEXT_LONGEST);
    bind_charge_output(lua, before == NULL ? 0 : strlen(before));
    const char *text = before == NULL ? arena_copy(arena, more)
                                      : arena_format(arena, "%s %s", before, more);
    bind_check_arena(lua);
    return text;
}

/* judgement:warn "why": met, but risky. Gives the judgement back, so that calls may be
 * chained. */
static int add_warn(lua_State *lua)
{
    struct judgement *judgement = check_judgement(lua);
    judgement->warn = join(lua, judgement->warn, bind_checked_text(lua, 2));
    lua_settop(lua, 1);
    return 1;
}

static int add_say(lua_State *lua)
{
    struct judgement *judgement = check_judgement(lua);
    judgement->say = join(lua, judgement->say, bind_checked_text(lua, 2));
    lua_settop(lua, 1);
    return 1;
}

/* work "...": a line of arithmetic in the rule's own words. */
static int work(lua_State *lua)
{
    record_work(lua, "%s", bind_checked_text(lua, 1));
    return 0;
}

static const struct luaL_Reg NAMES[] = {
    {"all_of", all_of},
    {"any_of", any_of},
    {"work", work},
    {NULL, NULL},
};

void bind_judgement(lua_State *lua)
{
    lua_createtable(lua, 0, 2);
    lua_createtable(lua, 0, 2);
    lua_pushcfunction(lua, add_warn);
    lua_setfield(lua, -2, "warn");
    lua_pushcfunction(lua, add_say);
    lua_setfield(lua, -2, "say");
    sandbox_protect(lua);
    lua_setfield(lua, -2, "__index");
    /* getmetatable gives false: rules cannot reach what is behind a judgement. */
    lua_pushboolean(lua, 0);
    lua_setfield(lua, -2, "__metatable");
    lua_rawsetp(lua, LUA_REGISTRYINDEX, &JUDGEMENT_KEY);
    for (const struct luaL_Reg *reg = NAMES; reg->name != NULL; reg++) {
        lua_pushcfunction(lua, reg->func);
        sandbox_define(lua, reg->name);
    }
}
