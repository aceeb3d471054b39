/* figure_columns_lua.c - figures written once, with a column for each edition that has
 * them otherwise:
 *
 *   figure "deck.nail_field_most.thin" { 6, "Table R602.3(1)", unit = "in", sense = "at_most",
 *     seen = "a text", ["2018"] = { 12, "Table R602.3(1)", seen = "another" } }
 *   figure "slope.least" { unit = "rise_in_12", sense = "at_least", by = "covering.kind",
 *     rows = { asphalt_shingle = { 2, "R905.2.2", seen = "a text" } } }
 *
 * Each is turned into the table that figures { } would hold, and read like it.
 */
#include "profile/place_reading.h"

#include "base/nearest.h"
#include "sandbox/keys.h"
#include "sandbox/sandbox.h"

#include <lauxlib.h>
#include <lua.h>

#include <string.h>

/* Where the parts of one figure are on the stack. */
struct layers {
    int figure; /* the table behind its name */
    int row;    /* one of its rows, or 0 */
    int column; /* an edition's column of either, or 0 */
    int line;   /* of the figure */
    bool alone; /* no edition has it in common: each column is all there is */
};

/* What an edition's column may say; the first of them say how it is known. */
static const char *const COLUMN_KEYS[] = {
    "seen",  "parallel", "memory",   "practice",  "invented",  "cite",  "read_in", "disputed",
    "rival", "book",     "and_most", "and_least", "at_counts", "sense", NULL};
enum { STATUS_KEYS = 5 };

/* What the figure says besides, once for all editions. */
static const char *const SHARED_KEYS[] = {"unit",      "sense", "stricter", "behind", "pages",
                                          "at_figure", "by",    "rows",     "words",  NULL};

static bool is_among(const char *key, const char *const *keys)
{
    while (*keys != NULL && strcmp(*keys, key) != 0)
        keys++;
    return *keys != NULL;
}

/* An edition's column is named by its year. */
static bool is_column(const char *key)
{
    return strlen(key) == 4 && strspn(key, "0123456789") == 4;
}

static void offer(struct nearest *nearest, const char *const *keys)
{
    for (; *keys != NULL; keys++)
        nearest_offer(nearest, *keys);
}

static bool is_edition(const struct block *block, const char *column)
{
    for (size_t i = 0; i < block->columns.set_count; i++)
        if (strcmp(block->columns.set[i], column) == 0)
            return true;
    return block->columns.kind == VALUE_NONE;
}

/* Refuses what the table at index may not say. shared: it is no edition's column. */
static void check_keys(lua_State *lua, int index, const char *name, bool shared)
{
    const struct loading *loading = place_loading(lua);
    const struct keys *keys = keys_push(lua, index);
    for (size_t i = 0; i < keys->count; i++) {
        const char *key = keys->names[i];
        if (is_among(key, COLUMN_KEYS) || (shared && is_among(key, SHARED_KEYS)))
            continue;
        if (shared && is_column(key)) {
            if (!is_edition(loading->block, key))
                place_say(lua, loading->line, "figure \"%s\": %s is no edition of this place", name,
                          key);
            continue;
        }
        struct nearest nearest;
        nearest_start(&nearest, key);
        offer(&nearest, COLUMN_KEYS);
        if (shared)
            offer(&nearest, SHARED_KEYS);
        place_say(lua, loading->line, "figure \"%s\": unknown key \"%s\"%s%s%s", name, key,
                  nearest.name == NULL ? "" : "; did you mean \"",
                  nearest.name == NULL ? "" : nearest.name, nearest.name == NULL ? "" : "\"?");
    }
    lua_pop(lua, 1);
}

/* Pushes what the nearest of the layers says under key; nil when none does. A column
 * says all of what is its own: of the others only what the figure says once for all. */
static void push_said(lua_State *lua, const struct layers *at, const char *key, bool shared)
{
    const int layers[] = {at->column, at->row, at->figure};
    lua_pushnil(lua);
    for (int i = 0; i < 3 && lua_isnil(lua, -1); i++) {
        if (layers[i] == 0 || (i > 0 && at->column != 0 && !shared))
            continue;
        lua_pop(lua, 1);
        lua_getfield(lua, layers[i], key);
    }
}

/* Copies it into the table on top of the stack. */
static void copy(lua_State *lua, const struct layers *at, const char *key, bool shared)
{
    push_said(lua, at, key, shared);
    lua_setfield(lua, -2, key);
}

/* seen = "a text" is status = "seen", source = "a text"; and read_in goes with it. */
static void copy_status(lua_State *lua, const struct layers *at, const char *name)
{
    const int layers[] = {at->column, at->row, at->figure};
    int said = 0;
    for (int i = 0; i < 3 && said == 0; i++) {
        for (int k = 0; layers[i] != 0 && k < STATUS_KEYS; k++) {
            lua_getfield(lua, layers[i], COLUMN_KEYS[k]);
            if (lua_isnil(lua, -1)) {
                lua_pop(lua, 1);
                continue;
            }
            if (++said > 1)
                place_say(lua, place_loading(lua)->line, "figure \"%s\" says twice how it is known",
                          name);
            lua_setfield(lua, -2, "source");
            lua_pushstring(lua, COLUMN_KEYS[k]);
            lua_setfield(lua, -2, "status");
        }
        if (said > 0) {
            lua_getfield(lua, layers[i], "read_in");
            lua_setfield(lua, -2, "read_in");
        }
        if (at->column != 0)
            break;
    }
}

/* The value is first, its section second; a column may restate the section alone. */
static void copy_value(lua_State *lua, const struct layers *at)
{
    const int own = at->column != 0 ? at->column : at->row != 0 ? at->row : at->figure;
    lua_rawgeti(lua, own, 1);
    lua_rawseti(lua, -2, 1);
    lua_rawgeti(lua, own, 2);
    if (lua_isnil(lua, -1)) {
        lua_pop(lua, 1);
        push_said(lua, at, "cite", false);
    }
    lua_setfield(lua, -2, "cite");
}

/* Reads one figure, of which the layers speak, under its whole name. */
static void read_layers(lua_State *lua, const struct layers *at, const char *name)
{
    lua_createtable(lua, 1, 12);
    copy_value(lua, at);
    copy_status(lua, at, name);
    static const char *const OWN[] = {"disputed",  "rival",     "book", "and_most",
                                      "and_least", "at_counts", NULL};
    for (const char *const *key = OWN; *key != NULL; key++)
        copy(lua, at, *key, false);
    const bool shared = at->column == 0 || at->alone;
    for (const char *const *key = SHARED_KEYS; *key != NULL; key++)
        if (strcmp(*key, "rows") != 0)
            copy(lua, at, *key, shared);
    place_figure_read(lua, name);
    lua_pop(lua, 1);
}

/* The line of the key, from that of what is being read on. */
static int line_below(lua_State *lua, const char *key)
{
    const struct loading *loading = place_loading(lua);
    sandbox_charge(lua, loading->source->length / PLACE_BYTES_A_STEP);
    const int line = home_source_line(loading->source, key, loading->line);
    return line > 0 ? line : loading->line;
}

/* Reads the figure, or row of one, as the block's edition has it; none when its column
 * says nothing of it. */
static void read_one(lua_State *lua, struct layers at, const char *name)
{
    struct loading *loading = place_loading(lua);
    const char *column = loading->block->column;
    const int own = at.row != 0 ? at.row : at.figure;
    check_keys(lua, own, name, true);
    lua_rawgeti(lua, own, 1);
    at.alone = lua_isnil(lua, -1);
    lua_pop(lua, 1);
    if (column == NULL) {
        if (!at.alone)
            read_layers(lua, &at, name);
        return;
    }
    lua_getfield(lua, own, column);
    if (lua_isnil(lua, -1) && at.row != 0) { /* as the whole table has it */
        lua_pop(lua, 1);
        lua_getfield(lua, at.figure, column);
        loading->line = at.line;
    }
    if (lua_istable(lua, -1)) {
        at.column = lua_gettop(lua);
        loading->line = line_below(lua, column);
        check_keys(lua, at.column, name, false);
        read_layers(lua, &at, name);
    } else if (!lua_isnil(lua, -1)) {
        place_say(lua, loading->line,
                  "figure \"%s\": a column is written { value, \"section\", seen = \"...\" }",
                  name);
    }
    lua_pop(lua, 1);
}

static void read_rows(lua_State *lua, int figure, const char *name)
{
    check_keys(lua, figure, name, true);
    lua_getfield(lua, figure, "rows");
    const int rows = lua_gettop(lua);
    luaL_checktype(lua, rows, LUA_TTABLE);
    struct loading *loading = place_loading(lua);
    const int line = loading->line;
    const struct keys *keys = keys_push(lua, rows);
    if (keys->others)
        place_say(lua, line, "figure \"%s\": every row needs a name", name);
    for (size_t i = 0; i < keys->count; i++) {
        const int top = lua_gettop(lua);
        loading->line = line;
        loading->line = line_below(lua, keys->names[i]);
        loading->row = keys->names[i];
        const char *whole = lua_pushfstring(lua, "%s.%s", name, keys->names[i]);
        lua_getfield(lua, rows, keys->names[i]);
        if (lua_istable(lua, -1))
            read_one(lua, (struct layers){figure, lua_gettop(lua), 0, line, false}, whole);
        else
            place_say(lua, loading->line, "figure \"%s\": a row is written { value, \"section\" }",
                      whole);
        lua_settop(lua, top);
    }
    loading->row = NULL;
    lua_settop(lua, rows - 1);
}

/* figure "name" { ... }: the second call. Upvalues: the name, its line. */
static int take_figure(lua_State *lua)
{
    struct loading *loading = place_loading(lua);
    const char *name = lua_tostring(lua, lua_upvalueindex(1));
    luaL_checktype(lua, 1, LUA_TTABLE);
    lua_settop(lua, 1);
    loading->line = (int)lua_tointeger(lua, lua_upvalueindex(2));
    lua_getfield(lua, 1, "rows");
    const bool many = !lua_isnil(lua, -1);
    lua_settop(lua, 1);
    if (many)
        read_rows(lua, 1, name);
    else
        read_one(lua, (struct layers){1, 0, 0, loading->line, false}, name);
    loading->line = 0;
    return 0;
}

static int figure(lua_State *lua)
{
    luaL_checkstring(lua, 1);
    lua_settop(lua, 1);
    if (place_loading(lua)->source == place_loading(lua)->place->source)
        return luaL_error(lua, "figure \"...\" { } belongs in a part; here write figures = { }");
    lua_Debug about;
    lua_Integer line = 0;
    if (lua_getstack(lua, 1, &about) && lua_getinfo(lua, "l", &about))
        line = about.currentline;
    lua_pushinteger(lua, line);
    lua_pushcclosure(lua, take_figure, 2);
    return 1;
}

void figure_columns_define(lua_State *lua)
{
    lua_pushcfunction(lua, figure);
    sandbox_define(lua, "figure");
}
