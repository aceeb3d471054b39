/* place_figure_lua.c - one figure as a place writes it, and a table of them. */
#include "profile/place_reading.h"

#include "sandbox/keys.h"

#include <lauxlib.h>

#include <math.h>
#include <stdio.h>
#include <string.h>

/* The value on top of the stack, which is popped. */
static struct value take_value(lua_State *lua, const char *name, int line)
{
    struct value value = {.kind = VALUE_NONE};
    switch (lua_type(lua, -1)) {
    case LUA_TNIL:
        break;
    case LUA_TNUMBER:
        value.kind = VALUE_NUMBER;
        value.number = lua_tonumber(lua, -1);
        if (isfinite(value.number) && fabs(value.number) > PLACE_NUMBER_MOST)
            place_say(lua, line, "figure \"%s\" is out of range: no figure of a code is so large",
                      name);
        if (!isfinite(value.number))
            place_say(lua, line, "figure \"%s\" is not a finite number", name);
        break;
    case LUA_TBOOLEAN:
        value.kind = VALUE_YES_NO;
        value.yes = lua_toboolean(lua, -1);
        break;
    case LUA_TTABLE:
        value = place_keep_set(lua, lua_gettop(lua), name, line);
        break;
    case LUA_TSTRING: /* "1-1/2 in": what it is in the figure's unit is seen later */
        value.kind = VALUE_TEXT;
        if (strlen(lua_tostring(lua, -1)) != lua_rawlen(lua, -1))
            place_say(lua, line, "figure \"%s\" holds a zero byte", name);
        value.text = place_copied(lua, -1);
        break;
    default:
        place_say(lua, line, "figure \"%s\" must be a number, true or false, or a set", name);
    }
    lua_pop(lua, 1);
    return value;
}

/* The value in position 1 of the figure's table, on top of the stack. */
static struct value read_value(lua_State *lua, const char *name, int line)
{
    lua_rawgeti(lua, -1, 1);
    return take_value(lua, name, line);
}

/* "1,5" and "15,000" are two values, of which only the first would count; so are words of a
 * set without braces of their own. */
static void refuse_more(lua_State *lua, const char *name, int line)
{
    char first[40], second[40];
    const int table = lua_gettop(lua);
    lua_rawgeti(lua, table, 1);
    lua_rawgeti(lua, table, 2);
    const bool words = lua_type(lua, -2) == LUA_TSTRING;
    /* Copies are shown: Lua would make texts of the numbers themselves. */
    snprintf(first, sizeof(first), "%s", luaL_tolstring(lua, -2, NULL));
    snprintf(second, sizeof(second), "%s", luaL_tolstring(lua, -2, NULL));
    lua_settop(lua, table);
    if (words)
        place_say(lua, line,
                  "figure \"%s\" has two bare values, \"%s\" and \"%s\"; a set stands in braces "
                  "of its own: { { \"%s\", \"%s\" }, cite = ... }",
                  name, first, second, first, second);
    else
        place_say(lua, line,
                  "figure \"%s\" has two bare values, %s and %s: a comma parts values here. Write "
                  "one value, with a point for a part of one (1.5) and thousands without a comma "
                  "(15000)",
                  name, first, second);
}

/* What is added to the set followed, or left out of it. */
static struct value read_members(lua_State *lua, int table, const char *key, const char *name,
                                 int line)
{
    struct value set = {.kind = VALUE_NONE};
    lua_getfield(lua, table, key);
    if (lua_istable(lua, -1) && lua_rawlen(lua, -1) > 0)
        set = place_keep_set(lua, lua_gettop(lua), name, line);
    else if (!lua_isnil(lua, -1))
        place_say(lua, line, "figure \"%s\": %s is a list of members, { \"...\" }", name, key);
    lua_pop(lua, 1);
    return set;
}

/* The value that another source gives. */
static struct value read_rival(lua_State *lua, int table, const struct entry *entry, int line)
{
    lua_getfield(lua, table, "rival");
    return take_value(lua, entry->name, line);
}

static const char *const FIGURE_KEYS[] = {
    "unit",    "sense", "cite",     "status",    "source",    "disputed",  "rival",    "book",
    "read_in", "pages", "and_most", "and_least", "at_counts", "at_figure", "stricter", "by",
    "behind",  "adds",  "without",  "instead",   "advice",    "words",     NULL};

/* The editions in whose text the figure at index was read. */
static struct value read_editions(lua_State *lua, int index, const struct entry *entry)
{
    struct value editions = {.kind = VALUE_NONE};
    lua_getfield(lua, index, "read_in");
    if (lua_istable(lua, -1))
        editions = place_keep_set(lua, lua_gettop(lua), entry->name, entry->line);
    else if (!lua_isnil(lua, -1))
        place_say(lua, entry->line, "figure \"%s\": read_in is a list of editions", entry->name);
    lua_pop(lua, 1);
    if (editions.kind == VALUE_NONE)
        return editions;
    /* What was read in some editions is seen in those and no more. */
    if (entry->status != STATUS_SEEN)
        place_say(lua, entry->line, "figure \"%s\": read_in goes with status = \"seen\"",
                  entry->name);
    if (!place_loading(lua)->block->model)
        place_say(lua, entry->line, "figure \"%s\": read_in is for the figures of a model code",
                  entry->name);
    return editions;
}

/* and_least, and_most: the other bound of a limit. */
static void read_bounds(lua_State *lua, int table, struct entry *entry)
{
    static const struct {
        const char *key;
        enum sense sense;
    } BOUNDS[] = {{"and_least", SENSE_AT_LEAST}, {"and_most", SENSE_AT_MOST}};
    for (size_t i = 0; i < 2; i++) {
        lua_getfield(lua, table, BOUNDS[i].key);
        const struct value bound = take_value(lua, entry->name, entry->line);
        if (bound.kind == VALUE_NONE)
            continue;
        const bool number = bound.kind == VALUE_NUMBER || bound.kind == VALUE_TEXT;
        if (!number || entry->also.kind != VALUE_NONE)
            place_say(lua, entry->line, "figure \"%s\": %s is one number, the other bound",
                      entry->name, BOUNDS[i].key);
        entry->also = bound;
        entry->also_sense = BOUNDS[i].sense;
    }
}

/* true or left out. */
static bool figure_flag(lua_State *lua, int table, const char *key, const struct entry *entry)
{
    lua_getfield(lua, table, key);
    const bool said = lua_isboolean(lua, -1) && lua_toboolean(lua, -1);
    if (!lua_isnil(lua, -1) && !said)
        place_say(lua, entry->line, "figure \"%s\": %s is true, or left out", entry->name, key);
    lua_pop(lua, 1);
    return said;
}

/* What the place says of exactly the figure. */
static enum at_counts read_at(lua_State *lua, int table, const struct entry *entry)
{
    enum at_counts at = AT_AS_SENSE_SAYS;
    lua_getfield(lua, table, "at_counts");
    if (lua_isboolean(lua, -1))
        at = lua_toboolean(lua, -1) ? AT_COUNTS : AT_COUNTS_NOT;
    else if (!lua_isnil(lua, -1))
        place_say(lua, entry->line, "figure \"%s\": at_counts is true or false", entry->name);
    lua_pop(lua, 1);
    return at;
}

/* Says it of a figure, after what is said already. */
static void add_way(lua_State *lua, struct entry_way said)
{
    struct loading *loading = place_loading(lua);
    struct entry_way *way = place_keep(lua, 1, sizeof(*way));
    *way = said;
    way->file = loading->source->path;
    *loading->last_way = way;
    loading->last_way = &way->next;
}

/* stricter = true, false or "neither"; behind = "switch"; words = "covering.kind". */
static void read_way(lua_State *lua, int table, const struct entry *entry)
{
    enum stricter stricter = STRICTER_UNSAID;
    const char *behind = place_text(lua, table, "behind", entry->line);
    const char *words = place_text(lua, table, "words", entry->line);
    lua_getfield(lua, table, "stricter");
    if (lua_isboolean(lua, -1))
        stricter = lua_toboolean(lua, -1) ? STRICTER_YES : STRICTER_NO;
    else if (lua_type(lua, -1) == LUA_TSTRING && strcmp(lua_tostring(lua, -1), "neither") == 0)
        stricter = STRICTER_NEITHER;
    else if (!lua_isnil(lua, -1))
        place_say(lua, entry->line, "figure \"%s\": stricter is true, false or \"neither\"",
                  entry->name);
    lua_pop(lua, 1);
    if (stricter != STRICTER_UNSAID || behind != NULL || words != NULL)
        add_way(lua, (struct entry_way){.name = entry->name,
                                        .stricter = stricter,
                                        .behind = behind,
                                        .words = words,
                                        .line = entry->line});
}

void place_figure_read(lua_State *lua, const char *name)
{
    struct loading *loading = place_loading(lua);
    if (++loading->figures > PLACE_FIGURES_MOST)
        luaL_error(lua, "more than %d figures", PLACE_FIGURES_MOST);
    struct entry *entry = place_keep(lua, 1, sizeof(*entry));
    const int line = place_line_of(lua, name);
    const int table = lua_gettop(lua);
    entry->name = place_keep_text(lua, name);
    entry->file = loading->source->path;
    entry->line = line;
    *loading->last = entry;
    loading->last = &entry->next;
    if (!lua_istable(lua, table)) {
        place_say(lua, line, "figure \"%s\" must be written { value, cite = ... }", name);
        return;
    }
    place_closed_keys(lua, table, FIGURE_KEYS, line);
    if (lua_rawlen(lua, table) > 1)
        refuse_more(lua, name, line);
    entry->value = read_value(lua, name, line);
    entry->adds = read_members(lua, table, "adds", name, line);
    entry->without = read_members(lua, table, "without", name, line);
    entry->advice = figure_flag(lua, table, "advice", entry);
    entry->instead = figure_flag(lua, table, "instead", entry);
    entry->value.unit = place_text(lua, table, "unit", line);
    entry->sense = place_sense(lua, table, line);
    entry->cite = place_text(lua, table, "cite", line);
    entry->status = place_status(lua, table, line);
    entry->source = place_text(lua, table, "source", line);
    entry->disputed = place_text(lua, table, "disputed", line);
    entry->read_in = read_editions(lua, table, entry);
    entry->pages = place_text(lua, table, "pages", line);
    entry->book = place_text(lua, table, "book", line);
    entry->rival = read_rival(lua, table, entry, line);
    read_bounds(lua, table, entry);
    entry->at = read_at(lua, table, entry);
    entry->at_figure = place_text(lua, table, "at_figure", line);
    entry->by = place_text(lua, table, "by", line);
    if (loading->row != NULL)
        entry->row = place_keep_text(lua, loading->row);
    if (entry->by != NULL && entry->row == NULL)
        place_say(lua, line, "figure \"%s\": by goes with rows", name);
    read_way(lua, table, entry);
    if (entry->rival.kind != VALUE_NONE && entry->disputed == NULL)
        place_say(lua, line,
                  "figure \"%s\" has a rival value, but no disputed = \"...\" that says "
                  "whose it is",
                  name);
    if (entry->rival.kind != VALUE_NONE && entry->value.kind != VALUE_NONE
        && entry->rival.kind != entry->value.kind && entry->rival.kind != VALUE_TEXT
        && entry->value.kind != VALUE_TEXT)
        place_say(lua, line, "figure \"%s\": rival is another kind of value than the figure", name);
}

/* Reads the table of figures at index (absolute). */
static void read_figure_table(lua_State *lua, int index)
{
    struct loading *loading = place_loading(lua);
    const struct keys *names = keys_push(lua, index);
    if (names->others)
        place_say(lua, loading->block->line, "figures: every figure needs a name");
    for (size_t i = 0; i < names->count; i++) {
        lua_getfield(lua, index, names->names[i]);
        place_figure_read(lua, names->names[i]);
        lua_pop(lua, 1);
    }
    lua_pop(lua, 1);
}

void place_figures_read(lua_State *lua, int index)
{
    struct loading *loading = place_loading(lua);
    lua_getfield(lua, index, "figures");
    if (lua_istable(lua, -1))
        read_figure_table(lua, lua_gettop(lua));
    else if (!lua_isnil(lua, -1))
        place_say(lua, loading->block->line, "figures must be a table");
    lua_pop(lua, 1);
}

/* figures { ... }: what a part file says, for the block that names it. */
int place_figures_of_part(lua_State *lua)
{
    if (place_loading(lua)->source == place_loading(lua)->place->source)
        return luaL_error(lua, "figures { } belongs in a part; here write figures = { }");
    luaL_checktype(lua, 1, LUA_TTABLE);
    lua_settop(lua, 1);
    read_figure_table(lua, 1);
    return 0;
}
