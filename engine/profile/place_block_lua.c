/* place_block_lua.c - one edition of a place: the table after jurisdiction "id". */
#include "profile/place_reading.h"

#include "base/date.h"
#include "sandbox/keys.h"

#include <lauxlib.h>

#include <string.h>

/* Only the names: parts run after the file, each for the block that names it. */
static void read_parts(lua_State *lua, int index)
{
    struct loading *loading = place_loading(lua);
    lua_getfield(lua, index, "parts");
    if (lua_type(lua, -1) == LUA_TSTRING)
        loading->block->part_folder = place_copied(lua, -1);
    else if (!lua_isnil(lua, -1) && !lua_istable(lua, -1))
        place_say(lua, loading->block->line, "parts must be a list of file names, or a folder");
    if (lua_istable(lua, -1)) {
        /* Of a list with a hole rawlen may give either end; checkstring refuses the hole. */
        const size_t count = (size_t)lua_rawlen(lua, -1);
        /* Of all blocks of the file together: a part is run once for each that names it. */
        loading->parts += count;
        if (loading->parts > PLACE_PARTS_MOST)
            luaL_error(lua, "more than %d parts", PLACE_PARTS_MOST);
        loading->block->parts = place_keep(lua, count + 1, sizeof(char *));
        for (size_t i = 1; i <= count; i++) {
            lua_rawgeti(lua, -1, (lua_Integer)i);
            luaL_checkstring(lua, -1);
            loading->block->parts[loading->block->part_count++] = place_copied(lua, -1);
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
        /* A rule is never dropped without a reason: the finding shows it to whoever wonders. */
        place_say(lua, loading->block->line, "drop is written [\"rule\"] = \"why\"");
    } else if (place_is_blank(lua, -1)) {
        place_say(lua, place_line_of(lua, rule), "drop: \"%s\" does not say why", rule);
    } else {
        struct entry_drop *drop = place_keep(lua, 1, sizeof(*drop));
        *drop = (struct entry_drop){place_keep_text(lua, rule), place_copied(lua, -1),
                                    place_line_of(lua, rule), loading->block->drops};
        loading->block->drops = drop;
    }
    lua_pop(lua, 1);
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
        set = place_keep_set(lua, lua_gettop(lua), fact, place_line_of(lua, fact));
    else if (!lua_isnil(lua, -1))
        place_say(lua, place_line_of(lua, fact), "not_carried: %s is a list of names", key);
    lua_pop(lua, 1);
    return set;
}

static const char GAP_FORM[] = "not_carried is written [\"fact\"] = { rules = ..., why = \"...\" }";

/* What a place says it does not carry: for which fact, which rules, and why. */
static void read_gap(lua_State *lua, int gaps, const char *fact)
{
    static const char *const KEYS[] = {"rules", "but", "orders", "why", NULL};
    struct loading *loading = place_loading(lua);
    const int line = place_line_of(lua, fact);
    lua_getfield(lua, gaps, fact);
    if (!lua_istable(lua, -1)) {
        place_say(lua, line, "%s", GAP_FORM);
    } else {
        struct entry_gap *gap = place_keep(lua, 1, sizeof(*gap));
        place_closed_keys(lua, lua_gettop(lua), KEYS, line);
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
    static const struct named_entries GAPS = {"not_carried", GAP_FORM, "leaves", "things to others",
                                              read_gap};
    place_read_named(lua, index, &GAPS);
}

static const char *const BLOCK_KEYS[] = {
    "title",   "invented", "model",  "base_only", "follows", "from",        "to",
    "code",    "borrowed", "unsure", "draft",     "read",    "not_carried", "edition",
    "as_seen", "figures",  "parts",  "drop",      "rules",   "column",      "columns",
    "covers",  "facts",    "adopts", "zones",     NULL};

void place_block_read(lua_State *lua, int index)
{
    struct loading *loading = place_loading(lua);
    struct block *block = loading->block;
    const int line = block->line;
    place_closed_keys(lua, index, BLOCK_KEYS, line);
    block->title = place_text(lua, index, "title", line);
    block->follows = place_text(lua, index, "follows", line);
    block->code = place_text(lua, index, "code", line);
    block->edition = place_text(lua, index, "edition", line);
    /* Kept as text: it is only shown. What is compared with a job's day is from and to. */
    block->as_seen = place_text(lua, index, "as_seen", line);
    if (block->as_seen != NULL && date_parse(block->as_seen) == 0)
        place_say(lua, line, "as_seen: \"%s\" is not a date (YYYY-MM-DD)", block->as_seen);
    block->rules = place_text(lua, index, "rules", line);
    block->borrowed = place_text(lua, index, "borrowed", line);
    block->unsure = place_text(lua, index, "unsure", line);
    block->draft = place_text(lua, index, "draft", line);
    block->invented = place_flag(lua, index, "invented");
    block->base_only = place_flag(lua, index, "base_only");
    block->model = place_flag(lua, index, "model");
    block->from = place_date(lua, index, "from");
    block->to = place_date(lua, index, "to");
    if (block->title == NULL)
        place_say(lua, line, "jurisdiction \"%s\" has no title", block->id);
    if (block->from != 0 && block->to != 0 && block->to <= block->from)
        place_say(lua, line,
                  "jurisdiction \"%s\" ends before it begins: `to` must be later than `from`",
                  block->id);
    /* The column comes before the figures: it says which of a figure's editions is read. */
    block->column = place_text(lua, index, "column", line);
    if (block->column != NULL && !block->model)
        place_say(lua, line,
                  "column is of model codes, which have their figures in columns: take "
                  "it out");
    read_columns(lua, index);
    read_pages(lua, index);
    read_covers(lua, index);
    place_figures_read(lua, index);
    read_parts(lua, index);
    read_drops(lua, index);
    place_read_facts(lua, index);
    place_zones_read(lua, index);
    read_gaps(lua, index);
    place_adopts_read(lua, index);
}
