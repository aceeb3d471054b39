/* declare_caution_lua.c - safety cautions, and lines about the house. */
#include "judge/declare_reads.h"

#include <lauxlib.h>

#include <string.h>

/* caution "..." { ... } ------------------------------------------------------------ */

static const char *const CAUTION_KEYS[] = {"stages", "when",  "says", "brief",
                                           "cite",   "reads", NULL};

static const char *cite_part(lua_State *lua, const char *key)
{
    lua_getfield(lua, -1, key);
    if (lua_type(lua, -1) != LUA_TSTRING)
        declare_refuse(lua, "cite has no %s", key);
    const char *text = declare_keep_text(lua, lua_tostring(lua, -1));
    lua_pop(lua, 1);
    return text;
}

/* A caution cites in its own words: it stands in no jurisdiction, for it holds in all of
 * them. */
static void read_cite(lua_State *lua, struct cite *cite)
{
    declare_get(lua, "cite");
    if (!lua_istable(lua, -1))
        declare_refuse(lua, "cite is a table of code, section, status and source");
    cite->code = cite_part(lua, "code");
    cite->section = cite_part(lua, "section");
    cite->status = status_of(cite_part(lua, "status"));
    if (cite->status == STATUS_NONE)
        declare_refuse(lua, "cite: status is one of seen, parallel, memory, practice, invented");
    cite->source = cite_part(lua, "source");
    lua_pop(lua, 1);
}

static int finish_caution(lua_State *lua)
{
    declare_count(lua, &declaring_of(lua)->cautions, CAUTIONS_MOST, "cautions");
    struct caution *caution = declare_keep(lua, 1, sizeof(*caution));
    caution->name = declare_keep_text(lua, declare_name(lua));
    caution->file = declaring_of(lua)->file;
    caution->line = declare_line(lua);
    declare_stages(lua, caution->stages);
    read_cite(lua, &caution->cite);
    caution->when = declare_function(lua, "when");
    caution->says_function = declare_function_or_text(lua, "says", &caution->says);
    caution->brief_function = declare_function_or_text(lua, "brief", &caution->brief);
    if (caution->says == NULL && caution->says_function == RULE_NO_FUNCTION)
        return declare_refuse(lua, "has no says");
    caution->reads = declare_reads(
        lua, false, (struct reads_of){"caution", caution->name, caution->file, caution->line});
    /* At the end: cautions are told in the order written. */
    struct caution **at = &declaring_of(lua)->book->cautions;
    while (*at != NULL)
        at = &(*at)->next;
    *at = caution;
    return 0;
}

/* about "..." { ... } -------------------------------------------------------------- */

static const char *const ABOUT_KEYS[] = {"says", NULL};

static int finish_about(lua_State *lua)
{
    declare_count(lua, &declaring_of(lua)->abouts, ABOUTS_MOST, "lines about the house");
    struct about *about = declare_keep(lua, 1, sizeof(*about));
    about->label = declare_keep_text(lua, declare_name(lua));
    about->file = declaring_of(lua)->file;
    about->line = declare_line(lua);
    about->says = declare_function(lua, "says");
    if (about->says == RULE_NO_FUNCTION)
        return declare_refuse(lua, "has no says function");
    struct about **at = &declaring_of(lua)->book->abouts;
    while (*at != NULL)
        at = &(*at)->next;
    *at = about;
    return 0;
}

const struct declaration DECLARE_CAUTIONS[] = {
    {"caution", CAUTION_KEYS, finish_caution, false},
    {"about", ABOUT_KEYS, finish_about, false},
    {NULL, NULL, NULL, false},
};
