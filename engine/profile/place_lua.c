#include "profile/place.h"
#include "profile/place_made.h"
#include "profile/place_reading.h"
#include "profile/place_traps.h"

#include "base/date.h"
#include "base/nearest.h"
#include "base/strings.h"
#include "sandbox/keys.h"
#include "sandbox/sandbox.h"

#include <lauxlib.h>
#include <lua.h>

#include <math.h>
#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

struct loading *place_loading(lua_State *lua)
{
    return sandbox_of(lua)->user;
}

void place_say(lua_State *lua, int line, const char *format, ...)
{
    struct loading *loading = place_loading(lua);
    char message[512];
    if (++loading->said > PLACE_PROBLEMS_MOST)
        luaL_error(lua, "more than %d things are wrong", PLACE_PROBLEMS_MOST);
    va_list arguments;
    va_start(arguments, format);
    vsnprintf(message, sizeof(message), format, arguments);
    va_end(arguments);
    problem_at_line(loading->problems, PROBLEM_RULES, loading->source->path, line, 0, "%s",
                    message);
}

/* Raises when out of memory: half a place must not be read further. */
void *place_keep(lua_State *lua, size_t count, size_t size)
{
    sandbox_charge_kept(lua, count * size);
    void *kept = arena_array(place_loading(lua)->arena, count, size);
    if (kept == NULL)
        luaL_error(lua, "out of memory");
    return kept;
}

/* Likewise. */
const char *place_keep_text(lua_State *lua, const char *text)
{
    const size_t length = strlen(text);
    return memcpy(place_keep(lua, length + 1, 1), text, length);
}

/* The text at index, which is one. */
static const char *copy_string(lua_State *lua, int index)
{
    return place_keep_text(lua, lua_tostring(lua, index));
}

/* The text under key of the table at index, or NULL; another type is a problem. */
const char *place_text(lua_State *lua, int index, const char *key, int line)
{
    const char *text = NULL;
    lua_getfield(lua, index, key);
    if (lua_type(lua, -1) == LUA_TSTRING && strlen(lua_tostring(lua, -1)) != lua_rawlen(lua, -1))
        place_say(lua, line, "%s must not hold a zero byte", key);
    else if (lua_type(lua, -1) == LUA_TSTRING && lua_rawlen(lua, -1) == 0)
        place_say(lua, line, "%s is empty: say it in words, or leave it out", key);
    else if (lua_type(lua, -1) == LUA_TSTRING)
        text = copy_string(lua, -1);
    else if (!lua_isnil(lua, -1))
        place_say(lua, line, "%s must be a text", key);
    lua_pop(lua, 1);
    return text;
}

/* Absent is false. */
static bool flag_of(lua_State *lua, int index, const char *key)
{
    lua_getfield(lua, index, key);
    if (!lua_isnil(lua, -1) && !lua_isboolean(lua, -1))
        place_say(lua, place_loading(lua)->block->line, "%s must be true or false", key);
    const bool set = lua_toboolean(lua, -1);
    lua_pop(lua, 1);
    return set;
}

/* 0 for none: the beginning, or no end. */
static long date_of(lua_State *lua, int index, const char *key)
{
    struct loading *loading = place_loading(lua);
    const char *text = place_text(lua, index, key, loading->block->line);
    const long date = text == NULL ? 0 : date_parse(text);
    if (text != NULL && date == 0)
        place_say(lua, loading->block->line, "%s: \"%s\" is not a date (YYYY-MM-DD)", key, text);
    return date;
}

/* Refuses keys outside a closed list, naming the nearest. index is absolute. */
static void closed_keys(lua_State *lua, int index, const char *const *known, int line)
{
    const struct keys *keys = keys_push(lua, index);
    for (size_t i = 0; i < keys->count; i++) {
        const char *key = keys->names[i];
        const char *const *name = known;
        while (*name != NULL && strcmp(*name, key) != 0)
            name++;
        if (*name != NULL)
            continue;
        struct nearest nearest;
        nearest_start(&nearest, key);
        for (name = known; *name != NULL; name++)
            nearest_offer(&nearest, *name);
        if (nearest.name != NULL)
            place_say(lua, line, "unknown key \"%s\"; did you mean \"%s\"?", key, nearest.name);
        else
            place_say(lua, line, "unknown key \"%s\"", key);
    }
    lua_pop(lua, 1);
}

static void say_unknown_word(lua_State *lua, const char *key, const char *word, int line)
{
    place_say(lua, line, "%s: \"%s\" is not one of the known words (jurisdictions/README.md)", key,
              word);
}

static enum sense read_sense(lua_State *lua, int table, int line)
{
    const char *word = place_text(lua, table, "sense", line);
    const enum sense sense = sense_of(word);
    if (word != NULL && sense == SENSE_NONE)
        say_unknown_word(lua, "sense", word, line);
    return sense;
}

enum status place_status(lua_State *lua, int table, int line)
{
    const char *word = place_text(lua, table, "status", line);
    const enum status status = status_of(word);
    if (word != NULL && status == STATUS_NONE)
        say_unknown_word(lua, "status", word, line);
    return status;
}

/* The list at index. A member that is no text is reported and stands as "", so that the
 * count holds. */
struct value place_keep_set(lua_State *lua, int index, const char *name, int line)
{
    struct value value = {.kind = VALUE_SET};
    value.set_count = (size_t)lua_rawlen(lua, index);
    if (value.set_count > PLACE_SET_MOST)
        luaL_error(lua, "figure \"%s\": a set has more than %d members", name, PLACE_SET_MOST);
    const char **set = place_keep(lua, value.set_count + 1, sizeof(*set));
    for (size_t i = 0; i < value.set_count; i++) {
        lua_rawgeti(lua, index, (lua_Integer)i + 1);
        if (lua_type(lua, -1) != LUA_TSTRING)
            place_say(lua, line, "figure \"%s\": a set holds texts only", name);
        else if (strlen(lua_tostring(lua, -1)) != lua_rawlen(lua, -1))
            place_say(lua, line, "figure \"%s\": a member of a set holds a zero byte", name);
        set[i] = lua_type(lua, -1) == LUA_TSTRING ? copy_string(lua, -1) : "";
        lua_pop(lua, 1);
    }
    value.set = set;
    return value;
}

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
        value.text = copy_string(lua, -1);
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

/* The line to report for a name: Lua keeps no lines of table entries, so it is looked for
 * in the text. */
static int line_of_name(lua_State *lua, const char *name)
{
    struct loading *loading = place_loading(lua);
    if (loading->line > 0)
        return loading->line;
    sandbox_charge(lua, loading->source->length / PLACE_BYTES_A_STEP);
    char quoted[160];
    snprintf(quoted, sizeof(quoted), "[\"%s\"]", name);
    const bool own = loading->source == loading->place->source;
    int line = home_source_line(loading->source, quoted, own ? loading->block->line : 1);
    if (line == 0) /* written above its block, in a table of its own */
        line = home_source_line(loading->source, quoted, 1);
    if (line == 0) {
        snprintf(quoted, sizeof(quoted), "['%s']", name);
        line = home_source_line(loading->source, quoted, own ? loading->block->line : 1);
    }
    return line > 0 ? line : loading->block->line;
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

void place_read_figure(lua_State *lua, const char *name)
{
    struct loading *loading = place_loading(lua);
    if (++loading->figures > PLACE_FIGURES_MOST)
        luaL_error(lua, "more than %d figures", PLACE_FIGURES_MOST);
    struct entry *entry = place_keep(lua, 1, sizeof(*entry));
    const int line = line_of_name(lua, name);
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
    closed_keys(lua, table, FIGURE_KEYS, line);
    if (lua_rawlen(lua, table) > 1)
        refuse_more(lua, name, line);
    entry->value = read_value(lua, name, line);
    entry->adds = read_members(lua, table, "adds", name, line);
    entry->without = read_members(lua, table, "without", name, line);
    entry->advice = figure_flag(lua, table, "advice", entry);
    entry->instead = figure_flag(lua, table, "instead", entry);
    entry->value.unit = place_text(lua, table, "unit", line);
    entry->sense = read_sense(lua, table, line);
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
        place_read_figure(lua, names->names[i]);
        lua_pop(lua, 1);
    }
    lua_pop(lua, 1);
}

static void read_figures(lua_State *lua, int index)
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
static int part_figures(lua_State *lua)
{
    if (place_loading(lua)->source == place_loading(lua)->place->source)
        return luaL_error(lua, "figures { } belongs in a part; here write figures = { }");
    luaL_checktype(lua, 1, LUA_TTABLE);
    lua_settop(lua, 1);
    read_figure_table(lua, 1);
    return 0;
}

/* Only the names: parts run after the file, each for the block that names it. */
static void read_parts(lua_State *lua, int index)
{
    struct loading *loading = place_loading(lua);
    lua_getfield(lua, index, "parts");
    if (lua_type(lua, -1) == LUA_TSTRING)
        loading->block->part_folder = copy_string(lua, -1);
    else if (!lua_isnil(lua, -1) && !lua_istable(lua, -1))
        place_say(lua, loading->block->line, "parts must be a list of file names, or a folder");
    if (lua_istable(lua, -1)) {
        const size_t count = (size_t)lua_rawlen(lua, -1);
        loading->parts += count;
        if (loading->parts > PLACE_PARTS_MOST)
            luaL_error(lua, "more than %d parts", PLACE_PARTS_MOST);
        loading->block->parts = place_keep(lua, count + 1, sizeof(char *));
        for (size_t i = 1; i <= count; i++) {
            lua_rawgeti(lua, -1, (lua_Integer)i);
            luaL_checkstring(lua, -1);
            loading->block->parts[loading->block->part_count++] = copy_string(lua, -1);
            lua_pop(lua, 1);
        }
    }
    lua_pop(lua, 1);
}

/* The editions that its figures may have columns for. */
static void read_columns(lua_State *lua, int index)
{
    struct block *block = place_loading(lua)->block;
    lua_getfield(lua, index, "columns");
    if (lua_istable(lua, -1))
        block->columns = place_keep_set(lua, lua_gettop(lua), "columns", block->line);
    else if (!lua_isnil(lua, -1))
        place_say(lua, block->line, "columns is a list of editions");
    lua_pop(lua, 1);
}

/* Which pages of its own the place goes by: { "visits", "papers" }. */
static void read_pages(lua_State *lua, int index)
{
    struct block *block = place_loading(lua)->block;
    lua_getfield(lua, index, "read");
    if (lua_istable(lua, -1))
        block->read = place_keep_set(lua, lua_gettop(lua), "read", block->line);
    else if (!lua_isnil(lua, -1))
        place_say(lua, block->line, "read is a list of the pages that were read");
    lua_pop(lua, 1);
}

/* Which cities and towns it is the department of, to be found by: { "Elm", "Oak" }. */
static void read_covers(lua_State *lua, int index)
{
    struct block *block = place_loading(lua)->block;
    lua_getfield(lua, index, "covers");
    if (lua_istable(lua, -1))
        block->covers = place_keep_set(lua, lua_gettop(lua), "covers", block->line);
    else if (!lua_isnil(lua, -1))
        place_say(lua, block->line, "covers is a list of cities");
    lua_pop(lua, 1);
}

/* Puts one drop before those already read. */
static void read_drop(lua_State *lua, int drops, const char *rule)
{
    struct loading *loading = place_loading(lua);
    lua_getfield(lua, drops, rule);
    if (lua_type(lua, -1) != LUA_TSTRING) {
        place_say(lua, loading->block->line, "drop is written [\"rule\"] = \"why\"");
    } else {
        struct entry_drop *drop = place_keep(lua, 1, sizeof(*drop));
        *drop = (struct entry_drop){place_keep_text(lua, rule), copy_string(lua, -1),
                                    line_of_name(lua, rule), loading->block->drops};
        loading->block->drops = drop;
    }
    lua_pop(lua, 1);
}

void place_read_named(lua_State *lua, int index, const struct named_entries *entries)
{
    struct loading *loading = place_loading(lua);
    lua_getfield(lua, index, entries->key);
    const int table = lua_gettop(lua);
    if (!lua_isnil(lua, table) && !lua_istable(lua, table))
        place_say(lua, loading->block->line, "%s must be a table", entries->key);
    if (lua_istable(lua, table)) {
        const struct keys *names = keys_push(lua, table);
        if (names->others && entries->nameless != NULL)
            place_say(lua, loading->block->line, "%s", entries->nameless);
        loading->drops += names->count;
        if (loading->drops > PLACE_DROPS_MOST)
            luaL_error(lua, "%s more than %d %s", entries->verb, PLACE_DROPS_MOST, entries->things);
        for (size_t i = names->count; i-- > 0;)
            entries->read(lua, table, names->names[i]);
    }
    lua_settop(lua, table - 1);
}

static void read_drops(lua_State *lua, int index)
{
    static const struct named_entries DROPS = {"drop", "drop is written [\"rule\"] = \"why\"",
                                               "drops", "rules", read_drop};
    place_read_named(lua, index, &DROPS);
}

/* The set of this name in the table on top of the stack; VALUE_NONE without one. */
static struct value set_named(lua_State *lua, const char *fact, const char *key)
{
    struct value set = {.kind = VALUE_NONE};
    lua_getfield(lua, -1, key);
    if (lua_istable(lua, -1))
        set = place_keep_set(lua, lua_gettop(lua), fact, line_of_name(lua, fact));
    else if (!lua_isnil(lua, -1))
        place_say(lua, line_of_name(lua, fact), "not_carried: %s is a list of names", key);
    lua_pop(lua, 1);
    return set;
}

/* What a place says it does not carry: for which fact, which rules, and why. */
static void read_gap(lua_State *lua, int gaps, const char *fact)
{
    static const char *const KEYS[] = {"rules", "but", "orders", "why", NULL};
    struct loading *loading = place_loading(lua);
    const int line = line_of_name(lua, fact);
    lua_getfield(lua, gaps, fact);
    if (!lua_istable(lua, -1)) {
        place_say(lua, line, "not_carried is written [\"fact\"] = { rules = ..., why = \"...\" }");
    } else {
        struct entry_gap *gap = place_keep(lua, 1, sizeof(*gap));
        closed_keys(lua, lua_gettop(lua), KEYS, line);
        *gap = (struct entry_gap){.fact = place_keep_text(lua, fact),
                                  .line = line,
                                  .why = place_text(lua, lua_gettop(lua), "why", line),
                                  .rules = set_named(lua, fact, "rules"),
                                  .but = set_named(lua, fact, "but"),
                                  .orders = set_named(lua, fact, "orders"),
                                  .next = loading->block->gaps};
        if (gap->why == NULL)
            place_say(lua, line, "not_carried: \"%s\" does not say why", fact);
        loading->block->gaps = gap;
    }
    lua_pop(lua, 1);
}

/* not_carried = { ["fact"] = { rules = {...}, but = {...}, orders = {...}, why = "" } } */
static void read_gaps(lua_State *lua, int index)
{
    static const struct named_entries GAPS = {"not_carried", NULL, "leaves", "things to others",
                                              read_gap};
    place_read_named(lua, index, &GAPS);
}

static const char *const BLOCK_KEYS[] = {
    "title",   "invented", "model",  "base_only", "follows", "from",        "to",
    "code",    "borrowed", "unsure", "draft",     "read",    "not_carried", "edition",
    "as_seen", "figures",  "parts",  "drop",      "rules",   "column",      "columns",
    "covers",  "facts",    "adopts", "zones",     NULL};

static void read_block(lua_State *lua, int index)
{
    struct loading *loading = place_loading(lua);
    struct block *block = loading->block;
    const int line = block->line;
    closed_keys(lua, index, BLOCK_KEYS, line);
    block->title = place_text(lua, index, "title", line);
    block->follows = place_text(lua, index, "follows", line);
    block->code = place_text(lua, index, "code", line);
    block->edition = place_text(lua, index, "edition", line);
    block->as_seen = place_text(lua, index, "as_seen", line);
    if (block->as_seen != NULL && date_parse(block->as_seen) == 0)
        place_say(lua, line, "as_seen: \"%s\" is not a date (YYYY-MM-DD)", block->as_seen);
    block->rules = place_text(lua, index, "rules", line);
    block->borrowed = place_text(lua, index, "borrowed", line);
    block->unsure = place_text(lua, index, "unsure", line);
    block->draft = place_text(lua, index, "draft", line);
    block->invented = flag_of(lua, index, "invented");
    block->base_only = flag_of(lua, index, "base_only");
    block->model = flag_of(lua, index, "model");
    block->from = date_of(lua, index, "from");
    block->to = date_of(lua, index, "to");
    if (block->title == NULL)
        place_say(lua, line, "jurisdiction \"%s\" has no title", block->id);
    if (block->from != 0 && block->to != 0 && block->to <= block->from)
        place_say(lua, line,
                  "jurisdiction \"%s\" ends before it begins: `to` must be later than `from`",
                  block->id);
    block->column = place_text(lua, index, "column", line);
    read_columns(lua, index);
    read_pages(lua, index);
    read_covers(lua, index);
    read_figures(lua, index);
    read_parts(lua, index);
    read_drops(lua, index);
    place_read_facts(lua, index);
    place_zones_read(lua, index);
    read_gaps(lua, index);
    place_adopts_read(lua, index);
}

/* New entries go after those the block has: its parts come one by one. */
static void start_block(struct loading *loading, struct block *block)
{
    loading->block = block;
    loading->last = &block->entries;
    while (*loading->last != NULL)
        loading->last = &(*loading->last)->next;
    loading->last_way = &block->ways;
    while (*loading->last_way != NULL)
        loading->last_way = &(*loading->last_way)->next;
}

/* jurisdiction "id" { ... }: the second call, with the table. Upvalue: line. */
static int take_block(lua_State *lua)
{
    struct loading *loading = place_loading(lua);
    luaL_checktype(lua, 1, LUA_TTABLE);
    lua_settop(lua, 1);
    if (++loading->editions > PLACE_EDITIONS_MOST)
        return luaL_error(lua, "more than %d editions", PLACE_EDITIONS_MOST);
    struct block *block = place_keep(lua, 1, sizeof(*block));
    block->id = loading->id;
    block->line = (int)lua_tointeger(lua, lua_upvalueindex(1));
    start_block(loading, block);
    read_block(lua, 1);
    struct block **at = &loading->place->blocks;
    /* Blocks are kept by their first day, whatever their order in the file. */
    while (*at != NULL && (*at)->from <= block->from)
        at = &(*at)->next;
    block->next = *at;
    *at = block;
    return 0;
}

/* The first call, with the id; the line is asked for here, as the second may stand many
 * lines on. */
static int jurisdiction(lua_State *lua)
{
    struct loading *loading = place_loading(lua);
    const char *id = luaL_checkstring(lua, 1);
    if (strcmp(id, loading->id) != 0)
        return luaL_error(lua, "this file is \"%s\", but it says jurisdiction \"%s\"", loading->id,
                          id);
    lua_Debug about;
    lua_Integer line = 0;
    if (lua_getstack(lua, 1, &about) && lua_getinfo(lua, "l", &about))
        line = about.currentline;
    lua_pushinteger(lua, line);
    lua_pushcclosure(lua, take_block, 1);
    return 1;
}

/* All that a place's file may call. The same four words serve blocks' files and parts. */
static int define(lua_State *lua)
{
    lua_pushcfunction(lua, jurisdiction);
    sandbox_define(lua, "jurisdiction");
    lua_pushcfunction(lua, part_figures);
    sandbox_define(lua, "figures");
    figure_columns_define(lua);
    return 0;
}

/* By name, then file, so that a double is reported at the same place each time. */
static int entry_order(const void *a, const void *b)
{
    const struct entry *left = *(struct entry *const *)a, *right = *(struct entry *const *)b;
    const int order = strcmp(left->name, right->name);
    return order != 0 ? order : strcmp(left->file, right->file);
}

/* A table cannot name a figure twice, but a block and its parts may. */
static void find_doubles(struct loading *loading, const struct block *block)
{
    size_t count = 0;
    for (const struct entry *e = block->entries; e != NULL; e = e->next)
        count++;
    struct entry **sorted = arena_array(loading->arena, count + 1, sizeof(struct entry *));
    if (sorted == NULL)
        return;
    count = 0;
    for (struct entry *e = block->entries; e != NULL; e = e->next)
        sorted[count++] = e;
    qsort(sorted, count, sizeof(struct entry *), entry_order);
    for (size_t i = 1; i < count; i++)
        if (strcmp(sorted[i - 1]->name, sorted[i]->name) == 0)
            problem_at_line(loading->problems, PROBLEM_RULES, sorted[i]->file, sorted[i]->line, 0,
                            "figure \"%s\" is given twice; the other is in %s", sorted[i]->name,
                            sorted[i - 1]->file);
}

/* A block without an end runs to where the next begins; two that cover one
 * day have no answer for it. */
static void settle_dates(struct loading *loading)
{
    for (struct block *b = loading->place->blocks; b != NULL && b->next != NULL; b = b->next) {
        if (b->to == 0)
            b->to = b->next->from;
        if (b->next->from < b->to || b->next->from == b->from) {
            char day[16];
            date_write(b->next->from, day);
            problem_at_line(loading->problems, PROBLEM_RULES, loading->source->path, b->next->line,
                            0,
                            "jurisdiction \"%s\": two editions both cover %s; give the "
                            "earlier one a `to`, the first day it no longer binds",
                            b->id, day);
        }
    }
}

static bool run_source(struct loading *loading, struct sandbox *sandbox,
                       const struct source *source)
{
    loading->source = source;
    const enum sandbox_stop stop = sandbox_run(sandbox, source->text, source->length, source->path);
    if (stop != SANDBOX_DONE)
        problem_at_line(loading->problems, PROBLEM_RULES,
                        sandbox_place(sandbox, stop, source->path), 0, 0, "%s",
                        sandbox_message(sandbox, stop));
    /* A model's parts are many, long, and read for every edition: the proof looks through
     * those. */
    else if ((loading->block == NULL || !loading->block->model)
             && !strings_have(&loading->looked_through, source->path)) {
        strings_add(&loading->looked_through, loading->arena, source->path);
        place_traps(source, loading->problems);
    }
    return stop == SANDBOX_DONE;
}

struct part_paths {
    struct strings paths;
    struct arena *arena;
};

static void take_path(void *data, const char *path)
{
    struct part_paths *parts = data;
    strings_add(&parts->paths, parts->arena, arena_copy(parts->arena, path));
}

/* Every file of the folder that a block names, by name. */
static void list_folder(struct loading *loading, struct block *block, const char *home,
                        const char *own)
{
    struct part_paths parts = {.arena = loading->arena};
    const char *folder = arena_format(loading->arena, "%.*s/%s", (int)(strrchr(own, '/') - own),
                                      own, block->part_folder);
    if (folder == NULL || home_each(home, folder, ".lua", 0, take_path, &parts) != 0
        || parts.paths.count == 0 || parts.paths.count > PLACE_PARTS_MOST) {
        problem_at_line(loading->problems, PROBLEM_RULES, own, block->line, 0,
                        "parts: \"%s\" is no folder beside this file with 1 to %d .lua files",
                        block->part_folder, PLACE_PARTS_MOST);
        return;
    }
    block->parts = arena_array(loading->arena, parts.paths.count, sizeof(char *));
    const size_t beside = (size_t)(strrchr(own, '/') - own) + 1;
    for (size_t i = 0; block->parts != NULL && i < parts.paths.count; i++)
        block->parts[block->part_count++] = parts.paths.items[i] + beside;
}

/* The parts a block names lie beside its own file. */
static void run_parts(struct loading *loading, struct sandbox *sandbox, const char *home,
                      struct sources *sources)
{
    const char *own = loading->place->source->path;
    for (struct block *b = loading->place->blocks; b != NULL; b = b->next) {
        if (b->part_folder != NULL)
            list_folder(loading, b, home, own);
        for (size_t i = 0; i < b->part_count; i++) {
            const char *path = arena_format(loading->arena, "%.*s/%s",
                                            (int)(strrchr(own, '/') - own), own, b->parts[i]);
            const struct source *source = path == NULL ? NULL
                                                       : home_read(home, path, loading->arena,
                                                                   sources, loading->problems);
            start_block(loading, b);
            if (source == NULL || !run_source(loading, sandbox, source))
                return;
        }
    }
    loading->source = loading->place->source;
}

/* One sandbox for the file and its parts, closed before anybody looks at what was read:
 * all of it was copied. */
static void run_files(struct loading *loading, const char *home, struct sources *sources)
{
    struct sandbox *sandbox = sandbox_open();
    if (sandbox == NULL) {
        problem_out_of_memory(loading->problems);
        return;
    }
    sandbox->user = loading;
    if (sandbox_setup(sandbox, define, NULL) != SANDBOX_DONE)
        problem_out_of_memory(loading->problems);
    else if (run_source(loading, sandbox, loading->place->source))
        run_parts(loading, sandbox, home, sources);
    if (loading->arena->failed)
        problem_out_of_memory(loading->problems);
    sandbox_close(sandbox);
}

struct place *place_load(const char *home, const char *id, struct arena *arena,
                         struct sources *sources, struct problems *problems)
{
    /* Problems of other files may be in the list already. */
    const size_t before = problems->count;
    char *path = arena_format(arena, "jurisdictions/%s.lua", id);
    struct place *place = arena_alloc(arena, sizeof(*place));
    if (path == NULL || place == NULL) {
        problem_out_of_memory(problems);
        return NULL;
    }
    place->source = home_read(home, path, arena, sources, problems);
    if (place->source == NULL)
        return NULL;
    if (place_made_read(place, home, arena, sources))
        return place;
    struct loading loading = {
        .arena = arena, .problems = problems, .place = place, .id = id, .source = place->source};
    run_files(&loading, home, sources);
    loading.source = place->source;
    for (const struct block *b = place->blocks; b != NULL; b = b->next)
        if (b->part_count > 0)
            find_doubles(&loading, b);
    settle_dates(&loading);
    if (place->blocks == NULL && problems->count == before && !problems->out_of_memory)
        problem_at_line(problems, PROBLEM_RULES, path, 1, 0, "declares no jurisdiction");
    return problems->count == before && !problems->out_of_memory ? place : NULL;
}
