#include "prove/case_job.h"

#include "base/nearest.h"
#include "job/json.h"
#include "sandbox/keys.h"
#include "sandbox/sandbox.h"

#include <lauxlib.h>
#include <lua.h>

#include <math.h>
#include <stdbool.h>
#include <stdlib.h>
#include <string.h>

/* Deeper than any job's field; more digits than a list has items; longer than any path. */
enum { DEEPEST_VALUE = 8, DIGITS_MOST = 5, PATH_LONGEST = 500 };

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

/* One step of a path: a name, or [number]. */
struct step {
    char name[80];
    int index; /* from 0; -1 for a name */
};

/* Reads a step off the path; NULL at its end. */
static const char *next_step(lua_State *lua, const char *path, struct step *step)
{
    if (*path == '\0')
        return NULL;
    step->index = -1;
    if (*path == '[') {
        const size_t digits = strspn(path + 1, "0123456789");
        step->index = digits > DIGITS_MOST ? -1 : (int)strtol(path + 1, NULL, 10) - 1;
        if (path[1 + digits] != ']' || step->index < 0)
            luaL_error(lua, "no such place in a job: %s", path);
        return path + digits + 2;
    }
    path += *path == '.';
    const size_t length = strcspn(path, ".[");
    if (length == 0 || length >= sizeof(step->name))
        luaL_error(lua, "no such place in a job: %s", path);
    memcpy(step->name, path, length);
    step->name[length] = '\0';
    return path + length;
}

static cJSON *child_of(const cJSON *parent, const struct step *step)
{
    if (step->index >= 0)
        return cJSON_IsArray(parent) ? cJSON_GetArrayItem(parent, step->index) : NULL;
    return cJSON_GetObjectItemCaseSensitive(parent, step->name);
}

/* Finds the parent of the path's last step, making groups on the way if asked. A path
 * is no deeper than a job: what walks down jobs goes as deep as they are. */
static cJSON *find_parent(lua_State *lua, cJSON *job, const char *path, struct step *last,
                          bool make)
{
    cJSON *parent = job;
    if (*path == '\0')
        luaL_error(lua, "no such place in a job: an empty path");
    if (strlen(path) > PATH_LONGEST)
        luaL_error(lua, "no such place in a job: a path of more than %d bytes", PATH_LONGEST);
    path = next_step(lua, path, last);
    for (int steps = 1; path != NULL && *path != '\0'; steps++) {
        if (steps == JSON_DEEPEST)
            luaL_error(lua, "no such place in a job: more than %d steps", JSON_DEEPEST);
        cJSON *child = child_of(parent, last);
        if (child == NULL && make && last->index < 0 && cJSON_IsObject(parent)) {
            child = cJSON_AddObjectToObject(parent, last->name);
            if (child == NULL)
                case_out_of_memory(lua);
        }
        if (child == NULL)
            luaL_error(lua, "the base job has no such place: %s", last->name);
        parent = child;
        path = next_step(lua, path, last);
    }
    return parent;
}

void case_job_set(lua_State *lua, cJSON *job, const char *path)
{
    struct step last;
    cJSON *parent = find_parent(lua, job, path, &last, true);
    const int top = lua_gettop(lua);
    check_value(lua, path, 0);
    cJSON *value = from_lua(lua, 0);
    lua_settop(lua, top - 1);
    if (value == NULL)
        case_out_of_memory(lua);
    cJSON *old = child_of(parent, &last);
    /* From here to the end nothing may raise while value belongs to nobody. */
    if (last.index < 0 && cJSON_IsObject(parent)) {
        if (!json_set(parent, last.name, value))
            case_out_of_memory(lua);
        return;
    }
    bool done = false;
    if (last.index >= 0)
        done = old != NULL ? cJSON_ReplaceItemInArray(parent, last.index, value)
                           : last.index == cJSON_GetArraySize(parent)
                                 && cJSON_AddItemToArray(parent, value);
    if (!done) {
        cJSON_Delete(value);
        luaL_error(lua, "%s: cannot be set", path);
    }
}

/* Taking out what is not there would test nothing. */
static void say_lacking(lua_State *lua, const cJSON *parent, const struct step *last,
                        const char *path)
{
    struct nearest nearest;
    const cJSON *child = NULL;
    nearest_start(&nearest, last->index < 0 ? last->name : "");
    cJSON_ArrayForEach(child, parent)
        if (last->index < 0 && child->string != NULL)
            nearest_offer(&nearest, child->string);
    if (nearest.name != NULL)
        luaL_error(lua, "without \"%s\": the base job does not have it; did you mean \"%s\"?", path,
                   nearest.name);
    luaL_error(lua, "without \"%s\": the base job does not have it", path);
}

/* The whole of it: a fact, a group, an item of a list. */
static void remove_place(lua_State *lua, cJSON *job, const char *path)
{
    struct step last;
    cJSON *parent = find_parent(lua, job, path, &last, false);
    cJSON *old = child_of(parent, &last);
    if (old == NULL)
        say_lacking(lua, parent, &last, path);
    cJSON_Delete(cJSON_DetachItemViaPointer(parent, old));
}

/* The changes in the order of their places' names, so that lists grow in order. */
static void with_sorted(lua_State *lua, cJSON *job)
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
        case_job_set(lua, job, places->names[i]);
    }
    lua_settop(lua, table);
}

void case_job_with(lua_State *lua, cJSON *job, int index)
{
    lua_getfield(lua, index, "with");
    if (lua_istable(lua, -1))
        with_sorted(lua, job);
    else if (!lua_isnil(lua, -1))
        luaL_error(lua, "with must be a table");
    lua_pop(lua, 1);
    lua_getfield(lua, index, "without");
    for (size_t i = 1; lua_istable(lua, -1) && i <= (size_t)lua_rawlen(lua, -1); i++) {
        lua_rawgeti(lua, -1, (lua_Integer)i);
        remove_place(lua, job, luaL_checkstring(lua, -1));
        lua_pop(lua, 1);
    }
    lua_pop(lua, 1);
}
