/* declare_card_lua.c - cards, and the drawings on them. */
#include "judge/bind_declare.h"

#include "base/nearest.h"
#include "sandbox/keys.h"

#include <lauxlib.h>

#include <string.h>

/* card "stage" { { title = ..., "rule", "topic" ... } ... } -------------------------- */

static void read_card_names(lua_State *lua, struct card_part *part)
{
    const size_t count = (size_t)lua_rawlen(lua, -1);
    for (size_t i = 1; i <= count; i++) {
        declare_count(lua, &declaring_of(lua)->card_names, CARD_NAMES_MOST, "names on cards");
        lua_rawgeti(lua, -1, (lua_Integer)i);
        if (lua_type(lua, -1) != LUA_TSTRING)
            declare_refuse(lua, "a part lists rules and topics by name");
        strings_add(&part->names, declare_arena(lua),
                    declare_keep_text(lua, lua_tostring(lua, -1)));
        lua_pop(lua, 1);
    }
    if (count == 0)
        declare_refuse(lua, "the part \"%s\" lists nothing", part->title);
}

static struct card_part *read_card_part(lua_State *lua)
{
    if (!lua_istable(lua, -1))
        declare_refuse(lua, "each part is a table: a title, and rules or topics");
    struct card_part *part = declare_keep(lua, 1, sizeof(*part));
    lua_getfield(lua, -1, "title");
    if (lua_type(lua, -1) != LUA_TSTRING)
        declare_refuse(lua, "a part has no title");
    part->title = declare_keep_text(lua, lua_tostring(lua, -1));
    lua_pop(lua, 1);
    part->file = declaring_of(lua)->file;
    part->line = declare_line(lua);
    read_card_names(lua, part);
    return part;
}

static int finish_card(lua_State *lua)
{
    luaL_checktype(lua, 1, LUA_TTABLE);
    struct card_part **at =
        &declaring_of(lua)->book->cards[declare_stage(lua, declare_name(lua))];
    if (*at != NULL)
        return declare_refuse(lua, "is laid out twice");
    const size_t count = (size_t)lua_rawlen(lua, 1);
    for (size_t i = 1; i <= count; i++) {
        declare_count(lua, &declaring_of(lua)->card_parts, CARD_PARTS_MOST, "parts of cards");
        lua_rawgeti(lua, 1, (lua_Integer)i);
        *at = read_card_part(lua);
        at = &(*at)->next;
        lua_pop(lua, 1);
    }
    return 0;
}

/* drawing "..." { stages = ..., rules = ..., figures = ... } ------------------------------ */

static const char *const DRAWING_KEYS[] = {"stages", "rules", "figures", "numbers", NULL};

/* How many names the table under this key has. */
static size_t count_parts(lua_State *lua, const char *key)
{
    lua_getfield(lua, 1, key);
    size_t count = 0;
    if (lua_istable(lua, -1)) {
        count = keys_push(lua, -1)->count;
        lua_pop(lua, 1);
    } else if (!lua_isnil(lua, -1)) {
        declare_refuse(lua, "%s is a table: dimension = \"name\"", key);
    }
    lua_pop(lua, 1);
    return count;
}

static void check_dimension(lua_State *lua, const char *drawing, const char *dimension)
{
    struct nearest nearest;
    nearest_start(&nearest, dimension);
    for (const char *const *at = drawing_dimensions(drawing); *at != NULL; at++) {
        if (strcmp(*at, dimension) == 0)
            return;
        nearest_offer(&nearest, *at);
    }
    declare_refuse(lua, "it has no dimension \"%s\"; the nearest is %s", dimension,
           nearest.name == NULL ? "none" : nearest.name);
}

static void read_parts(lua_State *lua, struct drawing *drawing, const char *key)
{
    lua_getfield(lua, 1, key);
    if (lua_isnil(lua, -1)) {
        lua_pop(lua, 1);
        return;
    }
    const struct keys *keys = keys_push(lua, -1);
    for (size_t i = 0; i < keys->count; i++) {
        check_dimension(lua, drawing->name, keys->names[i]);
        struct drawing_part *part = &drawing->parts[drawing->part_count++];
        lua_getfield(lua, -2, keys->names[i]);
        const bool number = strcmp(key, "numbers") == 0;
        if (lua_type(lua, -1) != (number ? LUA_TNUMBER : LUA_TSTRING))
            declare_refuse(lua, number ? "%s: %s must be a number" : "%s: %s must be a name", key,
                   keys->names[i]);
        part->dimension = declare_keep_text(lua, keys->names[i]);
        if (number)
            part->number = lua_tonumber(lua, -1);
        else if (strcmp(key, "figures") == 0)
            part->figure = declare_keep_text(lua, lua_tostring(lua, -1));
        else
            part->rule = declare_keep_text(lua, lua_tostring(lua, -1));
        lua_pop(lua, 1);
    }
    lua_pop(lua, 2);
}

static int finish_drawing(lua_State *lua)
{
    if (drawing_dimensions(declare_name(lua)) == NULL)
        return declare_refuse(lua, "there is no such drawing");
    struct drawing **at = &declaring_of(lua)->book->drawings;
    for (; *at != NULL; at = &(*at)->next)
        if (strcmp((*at)->name, declare_name(lua)) == 0)
            return declare_refuse(lua, "is already a drawing, in %s", (*at)->file);
    struct drawing *drawing = declare_keep(lua, 1, sizeof(*drawing));
    const size_t count = count_parts(lua, "rules") + count_parts(lua, "figures")
                         + count_parts(lua, "numbers");
    drawing->parts = declare_keep(lua, count + 1, sizeof(*drawing->parts));
    drawing->name = declare_keep_text(lua, declare_name(lua));
    drawing->file = declaring_of(lua)->file;
    drawing->line = declare_line(lua);
    declare_stages(lua, drawing->stages);
    read_parts(lua, drawing, "rules");
    read_parts(lua, drawing, "figures");
    read_parts(lua, drawing, "numbers");
    *at = drawing;
    return 0;
}


const struct declaration DECLARE_CARDS[] = {
    {"card", NULL, finish_card, false},
    {"drawing", DRAWING_KEYS, finish_drawing, false},
    {NULL, NULL, NULL, false},
};
