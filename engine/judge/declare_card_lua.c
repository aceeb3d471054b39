/* declare_card_lua.c - cards. */
#include "judge/bind_declare.h"

#include <lauxlib.h>

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

/* A table with a title, and the names in its list. */
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

/* Cards are read as they are laid out: parts in order, names in order. */
static int finish_card(lua_State *lua)
{
    luaL_checktype(lua, 1, LUA_TTABLE);
    struct card_part **at = &declaring_of(lua)->book->cards[declare_stage(lua, declare_name(lua))];
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

const struct declaration DECLARE_CARDS[] = {
    {"card", NULL, finish_card, false},
    {NULL, NULL, NULL, false},
};
