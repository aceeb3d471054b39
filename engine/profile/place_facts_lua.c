/* place_facts_lua.c - facts = { }: what is one all over a place, read from its file. */
#include "profile/place_reading.h"

#include "base/nearest.h"
#include "sandbox/keys.h"
#include "sandbox/sandbox.h"

#include <lauxlib.h>

#include <math.h>
#include <stdio.h>
#include <string.h>

static const char *const KEYS[] = {"unit", "least",  "most",   "one_of", "cite",
                                   "book", "status", "source", NULL};

/* Of the fact, not of a figure or a gap that names it too: below `facts`. */
static int line_of(lua_State *lua, const char *name)
{
    const struct loading *loading = place_loading(lua);
    char quoted[160];
    /* The text is looked through twice, and a file may state many facts: without the charge a
     * long one would take time that no limit sees. */
    sandbox_charge(lua, 2 * loading->source->length / PLACE_BYTES_A_STEP);
    snprintf(quoted, sizeof(quoted), "[\"%s\"]", name);
    const int facts = home_source_line(loading->source, "facts = ", loading->block->line);
    int line = facts == 0 ? 0 : home_source_line(loading->source, quoted, facts);
    if (line == 0) /* written above its block, in a table of its own */
        line = home_source_line(loading->source, quoted, 1);
    return line > 0 ? line : loading->block->line;
}

static void say(lua_State *lua, const struct entry_fact *fact, const char *what)
{
    place_say(lua, fact->line, "fact \"%s\": %s", fact->name, what);
}

static void check_keys(lua_State *lua, int table, const struct entry_fact *fact)
{
    const struct keys *keys = keys_push(lua, table);
    for (size_t i = 0; i < keys->count; i++) {
        struct nearest nearest;
        if (!nearest_among(&nearest, keys->names[i], KEYS))
            place_say(lua, fact->line, "fact \"%s\": unknown key \"%s\"%s%s%s", fact->name,
                      keys->names[i], nearest.name == NULL ? "" : "; did you mean \"",
                      nearest.name == NULL ? "" : nearest.name, nearest.name == NULL ? "" : "\"?");
    }
    lua_pop(lua, 1);
}

/* The one value, in position 1. */
static struct value read_value(lua_State *lua, int table, const struct entry_fact *fact)
{
    struct value value = {.kind = VALUE_NONE};
    lua_rawgeti(lua, table, 1);
    switch (lua_type(lua, -1)) {
    case LUA_TNIL:
        break;
    case LUA_TNUMBER:
        value.kind = VALUE_NUMBER;
        value.number = lua_tonumber(lua, -1);
        break;
    case LUA_TBOOLEAN:
        value.kind = VALUE_YES_NO;
        value.yes = lua_toboolean(lua, -1);
        break;
    case LUA_TSTRING:
        value.kind = VALUE_TEXT;
        value.text = place_keep_text(lua, lua_tostring(lua, -1));
        /* C would see a shorter word than the file says. */
        if (strlen(value.text) != lua_rawlen(lua, -1))
            say(lua, fact, "holds a zero byte");
        break;
    default:
        say(lua, fact, "is a number, true or false, or a text");
    }
    lua_pop(lua, 1);
    return value;
}

static bool read_bound(lua_State *lua, int table, const char *key, const struct entry_fact *fact,
                       double *bound)
{
    lua_getfield(lua, table, key);
    const bool there = !lua_isnil(lua, -1);
    if (there && lua_type(lua, -1) != LUA_TNUMBER)
        say(lua, fact, "least and most are numbers");
    *bound = lua_tonumber(lua, -1);
    lua_pop(lua, 1);
    return there;
}

static void read_choices(lua_State *lua, int table, struct entry_fact *fact)
{
    lua_getfield(lua, table, "one_of");
    if (lua_istable(lua, -1))
        fact->one_of = place_keep_set(lua, lua_gettop(lua), fact->name, fact->line);
    else if (!lua_isnil(lua, -1))
        say(lua, fact, "one_of is a list of words");
    lua_pop(lua, 1);
}

/* What it says must be one thing, and said by somebody. An invented place vouches for
 * itself. */
static void check_whole(lua_State *lua, struct entry_fact *fact)
{
    const struct block *block = place_loading(lua)->block;
    const bool bounded = fact->has_least || fact->has_most;
    /* A value fills the fact in; bounds and words only say which values a job may have. */
    if ((fact->value.kind != VALUE_NONE) + bounded + (fact->one_of.set_count > 0) != 1)
        say(lua, fact, "says either one value, or least and most, or one_of");
    else if (fact->one_of.set_count == 1)
        say(lua, fact, "is one of a single word: say the one value");
    if (fact->has_least && fact->has_most && !(fact->least < fact->most))
        say(lua, fact, "least is not less than most: say the one value");
    if ((fact->value.kind == VALUE_NUMBER && !isfinite(fact->value.number))
        || (fact->has_least && !isfinite(fact->least)) || (fact->has_most && !isfinite(fact->most)))
        say(lua, fact, "is not a finite number");
    if (block->invented && fact->status == STATUS_NONE)
        fact->status = STATUS_INVENTED;
    if (block->invented && fact->source == NULL)
        fact->source = block->title;
    if (fact->cite == NULL || fact->status == STATUS_NONE || fact->source == NULL)
        say(lua, fact,
            fact->cite == NULL            ? "lacks a cite"
            : fact->status == STATUS_NONE ? "lacks a status"
                                          : "lacks a source");
    /* A model stands nowhere: it has no wind and no zone. */
    if (block->model)
        say(lua, fact, "a model code is no place");
}

static void read_fact(lua_State *lua, int facts, const char *name)
{
    struct loading *loading = place_loading(lua);
    struct entry_fact *fact = place_keep(lua, 1, sizeof(*fact));
    lua_getfield(lua, facts, name);
    const int table = lua_gettop(lua);
    fact->name = place_keep_text(lua, name);
    fact->line = line_of(lua, name);
    if (!lua_istable(lua, table)) {
        say(lua, fact, "is written { value, cite = ... }");
    } else {
        check_keys(lua, table, fact);
        fact->value = read_value(lua, table, fact);
        fact->has_least = read_bound(lua, table, "least", fact, &fact->least);
        fact->has_most = read_bound(lua, table, "most", fact, &fact->most);
        read_choices(lua, table, fact);
        fact->unit = place_text(lua, table, "unit", fact->line);
        fact->cite = place_text(lua, table, "cite", fact->line);
        fact->book = place_text(lua, table, "book", fact->line);
        fact->source = place_text(lua, table, "source", fact->line);
        fact->status = place_status(lua, table, fact->line);
        check_whole(lua, fact);
    }
    /* Last read, first listed: order means nothing among facts. */
    fact->next = loading->block->facts;
    loading->block->facts = fact;
    lua_settop(lua, table - 1);
}

void place_read_facts(lua_State *lua, int index)
{
    static const struct named_entries FACTS = {"facts", "facts: every fact needs a name", "states",
                                               "things", read_fact};
    place_read_named(lua, index, &FACTS);
}
