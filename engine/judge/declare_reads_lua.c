/* declare_reads_lua.c - what functions read, as rule files declare it:
 *
 *   reads = { is_windy, facts = { "decks[].kind" }, figures = { "deck.gap_least" } }
 *
 * in a rule, where helpers that are listed lend what they read; and, of a helper,
 *
 *   local is_windy = reads({ facts = { ... }, figures = { ... } }, function(job, figure) ... end)
 *
 * which gives the function back. What it reads is kept by the function itself: so a helper
 * that a rule is made of need not be listed. Facts and figures are looked up at once. */
#include "judge/declare_reads.h"

#include <lauxlib.h>

#include <stdio.h>
#include <string.h>

/* Its address is the key. */
static const char HELPERS = 'h'; /* registry: the part of each function that has one */

/* Helpers ---------------------------------------------------------------------------------- */

struct reads_part *declare_reads_of(lua_State *lua, int index)
{
    lua_pushvalue(lua, index);
    if (lua_rawgetp(lua, LUA_REGISTRYINDEX, &HELPERS) != LUA_TTABLE) {
        lua_pop(lua, 2);
        return NULL;
    }
    lua_insert(lua, -2);
    lua_rawget(lua, -2);
    struct reads_part *part = lua_touserdata(lua, -1);
    lua_pop(lua, 2);
    return part;
}

/* The function on top of the stack is the helper. */
static void keep_part(lua_State *lua, struct reads_part *part)
{
    if (lua_rawgetp(lua, LUA_REGISTRYINDEX, &HELPERS) != LUA_TTABLE) {
        lua_pop(lua, 1);
        lua_newtable(lua);
        lua_pushvalue(lua, -1);
        lua_rawsetp(lua, LUA_REGISTRYINDEX, &HELPERS);
    }
    lua_pushvalue(lua, -2);
    lua_pushlightuserdata(lua, part);
    lua_rawset(lua, -3);
    lua_pop(lua, 1);
}

/* The table at index 1 of a call that stands outside of all declarations. */
static struct reads_part *part_of_call(lua_State *lua)
{
    lua_Debug about;
    int line = 0;
    if (lua_getstack(lua, 1, &about) && lua_getinfo(lua, "l", &about))
        line = about.currentline;
    luaL_checktype(lua, 1, LUA_TTABLE);
    lua_pushvalue(lua, 1);
    struct reads_part *part = declare_reads_table(lua, true, NULL, line);
    lua_pop(lua, 1);
    return part;
}

/* reads({ ... }, function): the function, which from now on lends what it reads. */
int declare_reads_of_helper(lua_State *lua)
{
    luaL_checktype(lua, 2, LUA_TFUNCTION);
    lua_settop(lua, 2);
    if (!declaring_of(lua)->fields_only)
        keep_part(lua, part_of_call(lua));
    return 1;
}

int declare_reads_of_quantities(lua_State *lua)
{
    struct declaring *declaring = declaring_of(lua);
    lua_settop(lua, 1);
    if (!declaring->fields_only)
        declaring->quantities_read = part_of_call(lua);
    return 0;
}

void declare_reads_shared(lua_State *lua, const char *name)
{
    struct reads_part *part = lua_isfunction(lua, -1) ? declare_reads_of(lua, -1) : NULL;
    if (part != NULL && part->name == NULL)
        part->name = declare_keep_text(lua, name);
}

/* Of a declaration -------------------------------------------------------------------------- */

void declare_reads_note(lua_State *lua)
{
    struct declaring *declaring = declaring_of(lua);
    const struct reads_part *part = declare_reads_of(lua, -1);
    if (part == NULL)
        return;
    for (size_t i = 0; i < declaring->part_count; i++)
        if (declaring->parts[i] == part)
            return;
    if (declaring->part_count == DECLARE_PARTS_MOST)
        declare_refuse(lua, "is made of more than %d helpers", DECLARE_PARTS_MOST);
    declaring->parts[declaring->part_count++] = part;
}

void declare_reads_elsewhere(lua_State *lua, const char *name)
{
    strings_add_once(&declaring_of(lua)->elsewhere, declare_arena(lua), name);
}

/* What a row names and only other places have. */
static const struct reads_part *part_elsewhere(lua_State *lua, struct reads_of of)
{
    const struct strings *names = &declaring_of(lua)->elsewhere;
    struct reads_part *part = declare_keep(lua, 1, sizeof(*part));
    const char **elsewhere = declare_keep(lua, names->count, sizeof(*elsewhere));
    for (size_t i = 0; i < names->count; i++)
        elsewhere[i] = names->items[i];
    *part = (struct reads_part){
        .file = of.file, .line = of.line, .elsewhere = elsewhere, .elsewhere_count = names->count};
    if (!reads_part_close(declare_arena(lua), part))
        luaL_error(lua, "out of memory");
    return part;
}

/* own: what the declaration says itself, or NULL; with what its functions lend. */
static struct reads *made_of(lua_State *lua, const struct reads_part *own, struct reads_of of)
{
    struct declaring *declaring = declaring_of(lua);
    const struct reads_part *parts[DECLARE_PARTS_MOST + 2];
    size_t count = 0;
    if (own != NULL)
        parts[count++] = own;
    for (size_t i = 0; i < declaring->part_count; i++)
        parts[count++] = declaring->parts[i];
    if (declaring->elsewhere.count > 0)
        parts[count++] = part_elsewhere(lua, of);
    struct reads *made = reads_new(declaring->book, parts, count);
    if (made == NULL)
        luaL_error(lua, "out of memory");
    made->of = of;
    return made;
}

struct reads *declare_reads(lua_State *lua, const struct lever *levers, struct reads_of of)
{
    const struct reads_part *own = NULL;
    declare_get(lua, "reads");
    if (lua_istable(lua, -1))
        own = declare_reads_table(lua, false, levers, of.line);
    else if (!lua_isnil(lua, -1))
        declare_refuse(lua, "reads is written { helper, facts = { }, figures = { } }");
    lua_pop(lua, 1);
    return made_of(lua, own, of);
}

struct reads *declare_reads_of_quantity(lua_State *lua, struct reads_of of)
{
    const struct declaring *declaring = declaring_of(lua);
    const struct reads_part *own = declaring->quantities_read;
    struct reads *made = made_of(
        lua, own != NULL && strcmp(own->file, declaring->file) == 0 ? own : NULL, of);
    made->any_fact = true;
    return made;
}
