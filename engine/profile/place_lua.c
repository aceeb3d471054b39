#include "profile/place.h"

#include "base/date.h"
#include "base/nearest.h"
#include "sandbox/sandbox.h"

#include <lauxlib.h>
#include <lua.h>

#include <math.h>
#include <stdio.h>
#include <string.h>

struct loading {
    struct arena *arena;
    struct problems *problems;
    struct place *place;
    const char *id;
    struct block *block; /* being read */
};

static struct loading *loading_of(lua_State *lua)
{
    return sandbox_of(lua)->user;
}

/* Adds a problem at the line where `needle` stands in the file. */
static void say(struct loading *loading, int line, const char *format, const char *a, const char *b)
{
    char message[512];
    /* Formats here are literals of this file with at most two %s. */
#pragma GCC diagnostic push
#pragma GCC diagnostic ignored "-Wformat-nonliteral"
    snprintf(message, sizeof(message), format, a, b);
#pragma GCC diagnostic pop
    problem_at_line(loading->problems, PROBLEM_RULES, loading->place->source->path, line, 0, "%s",
                    message);
}

static const char *copy_string(lua_State *lua, int index)
{
    return arena_copy(loading_of(lua)->arena, lua_tostring(lua, index));
}

/* The text under key of the table at index, or NULL; another type is a problem. */
static const char *text_of(lua_State *lua, int index, const char *key, int line)
{
    const char *text = NULL;
    lua_getfield(lua, index, key);
    if (lua_type(lua, -1) == LUA_TSTRING)
        text = copy_string(lua, -1);
    else if (!lua_isnil(lua, -1))
        say(loading_of(lua), line, "%s must be a text%s", key, "");
    lua_pop(lua, 1);
    return text;
}

static bool flag_of(lua_State *lua, int index, const char *key)
{
    lua_getfield(lua, index, key);
    if (!lua_isnil(lua, -1) && !lua_isboolean(lua, -1))
        say(loading_of(lua), loading_of(lua)->block->line, "%s must be true or false%s", key, "");
    const bool set = lua_toboolean(lua, -1);
    lua_pop(lua, 1);
    return set;
}

static long date_of(lua_State *lua, int index, const char *key)
{
    struct loading *loading = loading_of(lua);
    const char *text = text_of(lua, index, key, loading->block->line);
    const long date = text == NULL ? 0 : date_parse(text);
    if (text != NULL && date == 0)
        say(loading, loading->block->line, "%s: \"%s\" is not a date (YYYY-MM-DD)", key, text);
    return date;
}

/* Refuses keys outside a closed list, naming the nearest. index is absolute. */
static void closed_keys(lua_State *lua, int index, const char *const *known, int line)
{
    for (lua_pushnil(lua); lua_next(lua, index) != 0; lua_pop(lua, 1)) {
        if (lua_type(lua, -2) != LUA_TSTRING)
            continue;
        const char *key = lua_tostring(lua, -2);
        struct nearest nearest;
        nearest_start(&nearest, key);
        bool found = false;
        for (const char *const *name = known; *name != NULL; name++) {
            found = found || strcmp(*name, key) == 0;
            nearest_offer(&nearest, *name);
        }
        if (found)
            continue;
        if (nearest.name != NULL)
            say(loading_of(lua), line, "unknown key \"%s\"; did you mean \"%s\"?", key, nearest.name);
        else
            say(loading_of(lua), line, "unknown key \"%s\"%s", key, "");
    }
}

static const char *const SENSES[] = {"at_least", "at_most", "equals", "one_of", "none_of",
                                     "from", "over", "under", NULL};
static const char *const STATUSES[] = {"seen", "parallel", "memory", "practice", "invented", NULL};

static void one_of_words(struct loading *loading, const char *key, const char *word,
                         const char *const *words, int line)
{
    if (word == NULL)
        return;
    for (const char *const *w = words; *w != NULL; w++)
        if (strcmp(*w, word) == 0)
            return;
    say(loading, line, "%s: \"%s\" is not one of the known words (jurisdictions/README.md)", key,
        word);
}

static struct value read_set(lua_State *lua, int index, const char *name, int line)
{
    struct loading *loading = loading_of(lua);
    struct value value = {.kind = VALUE_SET};
    value.set_count = (size_t)lua_rawlen(lua, index);
    const char **set = arena_array(loading->arena, value.set_count + 1, sizeof(*set));
    if (set == NULL)
        luaL_error(lua, "out of memory");
    for (size_t i = 0; i < value.set_count; i++) {
        lua_rawgeti(lua, index, (lua_Integer)i + 1);
        if (lua_type(lua, -1) != LUA_TSTRING)
            say(loading, line, "figure \"%s\": a set holds texts only%s", name, "");
        set[i] = lua_type(lua, -1) == LUA_TSTRING ? copy_string(lua, -1) : "";
        lua_pop(lua, 1);
    }
    value.set = set;
    return value;
}

/* The value in position 1 of the figure's table, on top of the stack. */
static struct value read_value(lua_State *lua, const char *name, int line)
{
    struct value value = {.kind = VALUE_NONE};
    lua_rawgeti(lua, -1, 1);
    switch (lua_type(lua, -1)) {
    case LUA_TNIL:
        break;
    case LUA_TNUMBER:
        value.kind = VALUE_NUMBER;
        value.number = lua_tonumber(lua, -1);
        if (!isfinite(value.number))
            say(loading_of(lua), line, "figure \"%s\" is not a finite number%s", name, "");
        break;
    case LUA_TBOOLEAN:
        value.kind = VALUE_YES_NO;
        value.yes = lua_toboolean(lua, -1);
        break;
    case LUA_TTABLE:
        value = read_set(lua, lua_gettop(lua), name, line);
        break;
    default:
        say(loading_of(lua), line, "figure \"%s\" must be a number, true or false, or a set%s",
            name, "");
    }
    lua_pop(lua, 1);
    return value;
}

static int line_of_name(struct loading *loading, const char *name)
{
    char quoted[160];
    snprintf(quoted, sizeof(quoted), "[\"%s\"]", name);
    const int line = source_line(loading->place->source, quoted);
    return line > 0 ? line : loading->block->line;
}

static const char *const FIGURE_KEYS[] = {"unit", "sense", "cite", "status", "source", "disputed", NULL};

/* Reads the figure on top of the stack. */
static void read_figure(lua_State *lua, const char *name)
{
    struct loading *loading = loading_of(lua);
    struct entry *entry = arena_alloc(loading->arena, sizeof(*entry));
    if (entry == NULL)
        luaL_error(lua, "out of memory");
    const int line = line_of_name(loading, name);
    const int table = lua_gettop(lua);
    entry->name = arena_copy(loading->arena, name);
    entry->line = line;
    entry->next = loading->block->entries;
    loading->block->entries = entry;
    if (!lua_istable(lua, table)) {
        say(loading, line, "figure \"%s\" must be written { value, cite = ... }%s", name, "");
        return;
    }
    closed_keys(lua, table, FIGURE_KEYS, line);
    entry->value = read_value(lua, name, line);
    entry->value.unit = text_of(lua, table, "unit", line);
    entry->sense = text_of(lua, table, "sense", line);
    entry->cite = text_of(lua, table, "cite", line);
    entry->status = text_of(lua, table, "status", line);
    entry->source = text_of(lua, table, "source", line);
    entry->disputed = text_of(lua, table, "disputed", line);
    one_of_words(loading, "sense", entry->sense, SENSES, line);
    one_of_words(loading, "status", entry->status, STATUSES, line);
}

static void read_figures(lua_State *lua, int index)
{
    struct loading *loading = loading_of(lua);
    lua_getfield(lua, index, "figures");
    if (lua_istable(lua, -1)) {
        const int figures = lua_gettop(lua);
        for (lua_pushnil(lua); lua_next(lua, figures) != 0; lua_pop(lua, 1)) {
            if (lua_type(lua, -2) != LUA_TSTRING)
                say(loading, loading->block->line, "figures: every figure needs a name%s%s", "", "");
            else
                read_figure(lua, lua_tostring(lua, -2));
        }
    } else if (!lua_isnil(lua, -1)) {
        say(loading, loading->block->line, "figures must be a table%s%s", "", "");
    }
    lua_pop(lua, 1);
}

static void read_drops(lua_State *lua, int index)
{
    struct loading *loading = loading_of(lua);
    lua_getfield(lua, index, "drop");
    const int drops = lua_gettop(lua);
    if (!lua_isnil(lua, drops) && !lua_istable(lua, drops))
        say(loading, loading->block->line, "drop must be a table%s%s", "", "");
    for (lua_pushnil(lua); lua_istable(lua, drops) && lua_next(lua, drops) != 0; lua_pop(lua, 1)) {
        if (lua_type(lua, -2) != LUA_TSTRING || lua_type(lua, -1) != LUA_TSTRING) {
            say(loading, loading->block->line, "drop is written [\"rule\"] = \"why\"%s%s", "", "");
            continue;
        }
        struct entry_drop *drop = arena_alloc(loading->arena, sizeof(*drop));
        if (drop == NULL)
            luaL_error(lua, "out of memory");
        *drop = (struct entry_drop){copy_string(lua, -2), copy_string(lua, -1),
                                    line_of_name(loading, lua_tostring(lua, -2)),
                                    loading->block->drops};
        loading->block->drops = drop;
    }
    lua_settop(lua, drops - 1);
}

static const char *const BLOCK_KEYS[] = {"title", "invented", "model", "follows", "from", "to", "code",
                                         "edition", "as_seen", "figures", "drop", "rules", NULL};

static void read_block(lua_State *lua, int index)
{
    struct loading *loading = loading_of(lua);
    struct block *block = loading->block;
    const int line = block->line;
    closed_keys(lua, index, BLOCK_KEYS, line);
    block->title = text_of(lua, index, "title", line);
    block->follows = text_of(lua, index, "follows", line);
    block->code = text_of(lua, index, "code", line);
    block->edition = text_of(lua, index, "edition", line);
    block->as_seen = text_of(lua, index, "as_seen", line);
    block->rules = text_of(lua, index, "rules", line);
    block->invented = flag_of(lua, index, "invented");
    block->model = flag_of(lua, index, "model");
    block->from = date_of(lua, index, "from");
    block->to = date_of(lua, index, "to");
    if (block->title == NULL)
        say(loading, line, "jurisdiction \"%s\" has no title%s", block->id, "");
    if (block->from != 0 && block->to != 0 && block->to <= block->from)
        say(loading, line, "jurisdiction \"%s\" ends before it begins%s", block->id, "");
    read_figures(lua, index);
    read_drops(lua, index);
}

/* jurisdiction "id" { ... }: the second call, with the table. Upvalue: line. */
static int take_block(lua_State *lua)
{
    struct loading *loading = loading_of(lua);
    luaL_checktype(lua, 1, LUA_TTABLE);
    lua_settop(lua, 1);
    struct block *block = arena_alloc(loading->arena, sizeof(*block));
    if (block == NULL)
        return luaL_error(lua, "out of memory");
    block->id = loading->id;
    block->line = (int)lua_tointeger(lua, lua_upvalueindex(1));
    loading->block = block;
    read_block(lua, 1);
    struct block **at = &loading->place->blocks;
    while (*at != NULL && (*at)->from <= block->from)
        at = &(*at)->next;
    block->next = *at;
    *at = block;
    return 0;
}

static int jurisdiction(lua_State *lua)
{
    struct loading *loading = loading_of(lua);
    const char *id = luaL_checkstring(lua, 1);
    if (strcmp(id, loading->id) != 0)
        return luaL_error(lua, "this file is \"%s\", but it says jurisdiction \"%s\"", loading->id, id);
    lua_Debug about;
    lua_Integer line = 0;
    if (lua_getstack(lua, 1, &about) && lua_getinfo(lua, "l", &about))
        line = about.currentline;
    lua_pushinteger(lua, line);
    lua_pushcclosure(lua, take_block, 1);
    return 1;
}

static int define(lua_State *lua)
{
    lua_pushcfunction(lua, jurisdiction);
    sandbox_define(lua, "jurisdiction");
    return 0;
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
            say(loading, b->next->line, "jurisdiction \"%s\": two editions both cover %s", b->id, day);
        }
    }
}

static void run_file(struct loading *loading)
{
    const struct source *source = loading->place->source;
    struct sandbox *sandbox = sandbox_open();
    if (sandbox == NULL) {
        problem_out_of_memory(loading->problems);
        return;
    }
    sandbox->user = loading;
    enum sandbox_stop stop = sandbox_setup(sandbox, define, NULL);
    if (stop == SANDBOX_DONE)
        stop = sandbox_run(sandbox, source->text, source->length, source->path);
    if (loading->arena->failed)
        problem_out_of_memory(loading->problems);
    else if (stop == SANDBOX_ERROR) /* the message begins with FILE:LINE: */
        problem_at_line(loading->problems, PROBLEM_RULES, NULL, 0, 0, "%s",
                        sandbox_message(sandbox, stop));
    else if (stop != SANDBOX_DONE)
        problem_at_line(loading->problems, PROBLEM_RULES, source->path, 0, 0, "%s",
                        sandbox_message(sandbox, stop));
    sandbox_close(sandbox);
}

struct place *place_load(const char *home, const char *id, struct arena *arena,
                         struct sources *sources, struct problems *problems)
{
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
    struct loading loading = {arena, problems, place, id, NULL};
    run_file(&loading);
    settle_dates(&loading);
    if (place->blocks == NULL && problems->count == before && !problems->out_of_memory)
        problem_at_line(problems, PROBLEM_RULES, path, 1, 0, "declares no jurisdiction");
    return problems->count == before && !problems->out_of_memory ? place : NULL;
}
