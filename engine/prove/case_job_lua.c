#include "prove/case_job.h"

#include "sandbox/keys.h"
#include "sandbox/sandbox.h"

#include <lauxlib.h>
#include <lua.h>

#include <math.h>
#include <stdbool.h>
#include <string.h>

enum { DEEPEST_VALUE = 8 }; /* deeper than any job's field */

static cJSON *from_lua(lua_State *lua, int depth);

/* A value with a part that cannot be is none at all, not one with a gap. */
static cJSON *drop(cJSON *node, cJSON *part)
{
    cJSON_Delete(node);
    cJSON_Delete(part);
    return NULL;
}

/* A table with a first item, or nothing in it, is a list. */
static cJSON *from_table(lua_State *lua, int depth)
{
    const int table = lua_gettop(lua);
    lua_pushnil(lua);
    const bool empty = lua_next(lua, table) == 0;
    lua_settop(lua, table);
    const size_t count = (size_t)lua_rawlen(lua, table);
    cJSON *node = empty || count > 0 ? cJSON_CreateArray() : cJSON_CreateObject();
    for (size_t i = 1; i <= count; i++) {
        lua_rawgeti(lua, table, (lua_Integer)i);
        cJSON *item = from_lua(lua, depth + 1);
        if (!cJSON_AddItemToArray(node, item))
            return drop(node, item);
        lua_pop(lua, 1);
    }
    if (count > 0)
        return node;
    /* In no certain order, which a job's groups do not need. */
    for (lua_pushnil(lua); lua_next(lua, table) != 0; lua_pop(lua, 1)) {
        if (lua_type(lua, -2) != LUA_TSTRING)
            continue;
        cJSON *item = from_lua(lua, depth + 1);
        if (!cJSON_AddItemToObject(node, lua_tostring(lua, -2), item))
            return drop(node, item);
    }
    return node;
}

/* The value on top of the stack, which was weighed and stays there; NULL when out of
 * memory. Never raises. */
static cJSON *from_lua(lua_State *lua, int depth)
{
    switch (lua_type(lua, -1)) {
    case LUA_TBOOLEAN:
        return cJSON_CreateBool(lua_toboolean(lua, -1));
    case LUA_TNUMBER:
        return cJSON_CreateNumber(lua_tonumber(lua, -1));
    case LUA_TSTRING:
        return cJSON_CreateString(lua_tostring(lua, -1));
    case LUA_TTABLE:
        return from_table(lua, depth);
    default:
        return NULL;
    }
}

enum { VALUE_STEPS = 8 };

/* Looks through the value on top of the stack, which stays there, before anything is
 * built that raising would leave behind: charges what it takes (a table may stand in
 * another any number of times, and costs Lua nothing), and raises at what JSON has not. */
static void check_value(lua_State *lua, const char *path, int depth)
{
    sandbox_charge(lua, VALUE_STEPS);
    sandbox_charge_kept(lua, sizeof(cJSON));
    const int type = lua_type(lua, -1);
    if (type == LUA_TSTRING) {
        sandbox_charge_kept(lua, lua_rawlen(lua, -1));
        /* The job would say less than the case. */
        if (strlen(lua_tostring(lua, -1)) != lua_rawlen(lua, -1))
            luaL_error(lua, "%s: a text with a zero byte is no value for a job", path);
        return;
    }
    const bool number = type == LUA_TNUMBER && isfinite(lua_tonumber(lua, -1));
    if (depth > DEEPEST_VALUE || (type != LUA_TTABLE && type != LUA_TBOOLEAN && !number))
        luaL_error(lua, "%s: that is no value for a job", path);
    if (type != LUA_TTABLE)
        return;
    luaL_checkstack(lua, 4, NULL);
    for (lua_pushnil(lua); lua_next(lua, -2) != 0; lua_pop(lua, 1)) {
        if (lua_type(lua, -2) == LUA_TSTRING)
            sandbox_charge_kept(lua, lua_rawlen(lua, -2));
        check_value(lua, path, depth + 1);
    }
}

/* Nothing that the reading holds is lost: it has the job. */
static void need_done(lua_State *lua, enum case_change_end end, const struct case_change_why *why)
{
    if (end == CHANGE_NO_MEMORY)
        case_out_of_memory(lua);
    if (end == CHANGE_CANNOT)
        luaL_error(lua, "%s", why->text);
}

/* A text of the change, charged, in the arena. */
static const char *keep(lua_State *lua, struct case_building *building, const char *text)
{
    sandbox_charge_kept(lua, strlen(text) + 1);
    building->bytes += strlen(text);
    const char *kept = arena_copy(building->arena, text);
    if (kept == NULL)
        case_out_of_memory(lua);
    return kept;
}

static void note_change(lua_State *lua, struct case_building *building, const char *path,
                        const char *json)
{
    sandbox_charge_kept(lua, sizeof(struct case_change));
    struct case_change *change = arena_alloc(building->arena, sizeof(*change));
    if (change == NULL)
        case_out_of_memory(lua);
    change->path = path;
    change->json = json;
    *building->last = change;
    building->last = &change->next;
}

void case_job_set(lua_State *lua, struct case_building *building, const char *path)
{
    struct case_place place;
    struct case_change_why why;
    need_done(lua, case_change_find(building->job, path, true, &place, &why), &why);
    check_value(lua, path, 0);
    cJSON *value = from_lua(lua, 0);
    building->json = value == NULL ? NULL : cJSON_PrintUnformatted(value);
    if (building->json == NULL) {
        cJSON_Delete(value);
        case_out_of_memory(lua);
    }
    lua_pop(lua, 1);
    need_done(lua, case_change_put(&place, path, value, &why), &why);
    note_change(lua, building, keep(lua, building, path), keep(lua, building, building->json));
    cJSON_free(building->json);
    building->json = NULL;
}

static void remove_place(lua_State *lua, struct case_building *building, const char *path)
{
    struct case_change_why why;
    need_done(lua, case_change_remove(building->job, path, &why), &why);
    note_change(lua, building, keep(lua, building, path), NULL);
}

/* The changes in the order of their places' names, so that lists grow in order. */
static void with_sorted(lua_State *lua, struct case_building *building)
{
    const int table = lua_gettop(lua);
    const struct keys *places = keys_push(lua, table);
    if (places->others)
        luaL_error(lua, "with: every change names a place");
    if (places->count > CASE_CHANGES_MOST)
        luaL_error(lua, "with: more than %d changes", CASE_CHANGES_MOST);
    for (size_t i = 0; i < places->count; i++) {
        if (lua_getfield(lua, table, places->names[i]) == LUA_TNIL)
            luaL_error(lua, "with: a place's name must not hold a zero byte");
        case_job_set(lua, building, places->names[i]);
    }
    lua_settop(lua, table);
}

void case_job_with(lua_State *lua, struct case_building *building, int index)
{
    lua_getfield(lua, index, "with");
    if (lua_istable(lua, -1))
        with_sorted(lua, building);
    else if (!lua_isnil(lua, -1))
        luaL_error(lua, "with must be a table");
    lua_pop(lua, 1);
    lua_getfield(lua, index, "without");
    if (!lua_isnil(lua, -1) && (!lua_istable(lua, -1) || lua_rawlen(lua, -1) == 0))
        luaL_error(lua, "without is a list of places, { \"...\" }");
    for (size_t i = 1; lua_istable(lua, -1) && i <= (size_t)lua_rawlen(lua, -1); i++) {
        lua_rawgeti(lua, -1, (lua_Integer)i);
        remove_place(lua, building, luaL_checkstring(lua, -1));
        lua_pop(lua, 1);
    }
    lua_pop(lua, 1);
}
