/* place_reading_lua.c - what the files that read a place share: texts, flags, days, sets,
 * and the lines to report. */
#include "profile/place_reading.h"

#include "base/date.h"
#include "base/nearest.h"
#include "sandbox/keys.h"
#include "sandbox/sandbox.h"

#include <lauxlib.h>

#include <stdarg.h>
#include <stdio.h>
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
const char *place_copied(lua_State *lua, int index)
{
    return place_keep_text(lua, lua_tostring(lua, index));
}

bool place_is_blank(lua_State *lua, int index)
{
    return strspn(lua_tostring(lua, index), " \t\r\n") == lua_rawlen(lua, index);
}

/* The text under key of the table at index, or NULL; another type is a problem. */
const char *place_text(lua_State *lua, int index, const char *key, int line)
{
    const char *text = NULL;
    lua_getfield(lua, index, key);
    if (lua_type(lua, -1) == LUA_TSTRING && strlen(lua_tostring(lua, -1)) != lua_rawlen(lua, -1))
        place_say(lua, line, "%s must not hold a zero byte", key);
    else if (lua_type(lua, -1) == LUA_TSTRING && place_is_blank(lua, -1))
        place_say(lua, line, "%s is empty: say it in words, or leave it out", key);
    else if (lua_type(lua, -1) == LUA_TSTRING)
        text = place_copied(lua, -1);
    else if (!lua_isnil(lua, -1))
        place_say(lua, line, "%s must be a text", key);
    lua_pop(lua, 1);
    return text;
}

/* Absent is false. */
bool place_flag(lua_State *lua, int index, const char *key)
{
    lua_getfield(lua, index, key);
    if (!lua_isnil(lua, -1) && !lua_isboolean(lua, -1))
        place_say(lua, place_loading(lua)->block->line, "%s must be true or false", key);
    const bool set = lua_toboolean(lua, -1);
    lua_pop(lua, 1);
    return set;
}

/* 0 for none: the beginning, or no end. */
long place_date(lua_State *lua, int index, const char *key)
{
    struct loading *loading = place_loading(lua);
    const char *text = place_text(lua, index, key, loading->block->line);
    const long date = text == NULL ? 0 : date_parse(text);
    if (text != NULL && date == 0)
        place_say(lua, loading->block->line, "%s: \"%s\" is not a date (YYYY-MM-DD)", key, text);
    return date;
}

/* Refuses keys outside a closed list, naming the nearest. index is absolute. */
void place_closed_keys(lua_State *lua, int index, const char *const *known, int line)
{
    const struct keys *keys = keys_push(lua, index);
    for (size_t i = 0; i < keys->count; i++) {
        const char *key = keys->names[i];
        struct nearest nearest;
        if (nearest_among(&nearest, key, known))
            continue;
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

enum sense place_sense(lua_State *lua, int table, int line)
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
        set[i] = lua_type(lua, -1) == LUA_TSTRING ? place_copied(lua, -1) : "";
        for (size_t k = 0; k < i; k++)
            if (set[i][0] != '\0' && strcmp(set[k], set[i]) == 0)
                place_say(lua, line, "%s: \"%s\" stands there twice", name, set[i]);
        lua_pop(lua, 1);
    }
    value.set = set;
    return value;
}

/* The line to report for a name: Lua keeps no lines of table entries, so it is looked for
 * in the text. */
int place_line_of(lua_State *lua, const char *name)
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
