/* bind_reads.c - a function reads a fact or a figure: may it? What is not declared stops it,
 * and the message says what to add, and where. */
#include "judge/bind_reads.h"

#include "judge/declare_reads.h"

#include <lauxlib.h>

/* What was read, and how it would be declared. */
struct undeclared {
    const char *kind, *key, *name; /* "fact", "facts", "decks[].kind" */
    const struct field *field;     /* or NULL: */
    const struct figure *figure;
};

/* Of the functions that are running: the outermost helper that declares it; else, of those
 * that declare something, the innermost. */
struct running {
    const struct reads_part *declares, *innermost;
};

static struct running running_helpers(lua_State *lua, const struct undeclared *what)
{
    struct running running = {NULL, NULL};
    lua_Debug about;
    for (int level = 1; lua_getstack(lua, level, &about); level++) {
        lua_getinfo(lua, "f", &about);
        const struct reads_part *part = declare_reads_of(lua, -1);
        lua_pop(lua, 1);
        if (part == NULL)
            continue;
        if (running.innermost == NULL)
            running.innermost = part;
        if (reads_part_has(judging_of(lua)->book, part, what->field, what->figure))
            running.declares = part;
    }
    return running;
}

static int refuse(lua_State *lua, const struct undeclared *what)
{
    const struct reads_of *of = &judging_of(lua)->reads->of;
    const struct running helpers = running_helpers(lua, what);
    lua_pushfstring(lua, "reads the %s \"%s\", which %s \"%s\" (%s:%d) does not declare",
                    what->kind, what->name, of->kind, of->name, of->file, of->line);
    const char *said = lua_tostring(lua, -1);
    if (helpers.declares != NULL && helpers.declares->name != NULL)
        return luaL_error(lua, "%s: add the helper to it, reads = { %s }", said,
                          helpers.declares->name);
    if (helpers.declares != NULL)
        return luaL_error(lua, "%s: add the helper of line %d of %s to it, reads = { helper }",
                          said, helpers.declares->line, helpers.declares->file);
    if (helpers.innermost != NULL)
        return luaL_error(
            lua, "%s: add it to the helper's at %s:%d, reads({ %s = { \"%s\" } }, ...)", said,
            helpers.innermost->file, helpers.innermost->line, what->key, what->name);
    if (judging_of(lua)->reads->any_fact)
        return luaL_error(lua,
                          "%s: add it to those of the file, quantities_read { %s = { \"%s\" } }",
                          said, what->key, what->name);
    return luaL_error(lua, "%s: add it, reads = { %s = { \"%s\" } }", said, what->key, what->name);
}

void bind_check_fact(lua_State *lua, const struct reads *reads, const struct field *field)
{
    if (reads != NULL && !reads->any_fact && !reads_has_field(reads, field))
        refuse(lua, &(struct undeclared){"fact", "facts", field->path, field, NULL});
}

void bind_check_figure(lua_State *lua, const struct reads *reads, const struct figure *figure)
{
    if (reads != NULL && !reads_has_figure(judging_of(lua)->book, reads, figure))
        refuse(lua, &(struct undeclared){"figure", "figures", figure->name, NULL, figure});
}

void bind_reads(lua_State *lua)
{
    lua_pushcfunction(lua, declare_reads_of_helper);
    sandbox_define(lua, "reads");
    lua_pushcfunction(lua, declare_reads_of_quantities);
    sandbox_define(lua, "quantities_read");
}
