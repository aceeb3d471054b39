/* bind_job.c - the job as rules see it.
 *
 * A group, list or item is a userdata that reads the JSON when indexed. What
 * is read is recorded; what is lacking ends the call as open. */
#include "judge/judging.h"

#include "base/nearest.h"
#include "job/path.h"
#include "job/validate.h"
#include "job/slope.h"

#include <lauxlib.h>
#include <lua.h>

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* Each read keeps a pointer in the result's memory: it is charged for. */
enum { READ_STEPS = 20 };

/* Its address, which nothing else has, is the key. */
static const char NODE_KEY = 'n'; /* registry: the metatable of nodes */

struct judging *judging_of(lua_State *lua)
{
    if (sandbox_of(lua)->loading)
        luaL_error(lua, "this may be used only while a rule judges");
    return sandbox_of(lua)->user;
}

/* The total is only counted here; whoever starts the next rule looks at it. */
void count_said(lua_State *lua, size_t bytes)
{
    struct judging *judging = judging_of(lua);
    judging->said += bytes;
    judging->said_by_rule += bytes;
    if (judging->said_by_rule > SAID_BY_RULE_MOST)
        luaL_error(lua, "the rule has said more than %d KB about this job",
                   SAID_BY_RULE_MOST / 1024);
}

void check_arena(lua_State *lua)
{
    if (judging_of(lua)->arena->failed)
        luaL_error(lua, "out of memory");
}

struct node node_child(struct judging *judging, const struct node *parent,
                       const struct field *child)
{
    struct node node = {.field = child};
    node.pointer = path_key(judging->arena, parent->pointer, child->name);
    if (parent->json != NULL)
        node.json = cJSON_GetObjectItemCaseSensitive(parent->json, child->name);
    if (node.json != NULL && !validate_value_fits(node.json, child))
        node.json = NULL;
    return node;
}

/* The first one asked for that is absent is kept: where nothing else was read, that is
 * the fact to ask for. */
void record_known(struct judging *judging, const struct node *node)
{
    record_read(judging, node);
    if (node->json != NULL || judging->record.unsaid != NULL)
        return;
    judging->record.unsaid = node->field;
    judging->record.unsaid_pointer = node->pointer;
}

void record_read(struct judging *judging, const struct node *node)
{
    judging->record.said |= node->json != NULL;
    strings_add_once(&judging->record.reads, judging->arena, node->pointer);
}

/* Ends the call: the job lacks this. */
static int lacks(lua_State *lua, const struct node *node)
{
    struct judging *judging = judging_of(lua);
    judging->record.missing = node->field;
    judging->record.missing_pointer = node->pointer;
    return sandbox_signal(lua);
}

/* The node is copied into Lua's heap. Its pointer stays in the arena, its JSON in the
 * job; both outlive the call. */
void push_node(lua_State *lua, struct node node)
{
    struct node *kept = lua_newuserdatauv(lua, sizeof(node), 0);
    *kept = node;
    lua_rawgetp(lua, LUA_REGISTRYINDEX, &NODE_KEY);
    lua_setmetatable(lua, -2);
}

/* NULL for any other userdata. */
static struct node *to_node(lua_State *lua, int index)
{
    void *data = lua_touserdata(lua, index);
    if (data == NULL || lua_islightuserdata(lua, index) || !lua_getmetatable(lua, index))
        return NULL;
    lua_rawgetp(lua, LUA_REGISTRYINDEX, &NODE_KEY);
    const bool same = lua_rawequal(lua, -1, -2);
    lua_pop(lua, 2);
    return same ? data : NULL;
}

static struct node *check_node(lua_State *lua, int index)
{
    struct node *node = to_node(lua, index);
    if (node == NULL)
        luaL_argerror(lua, index, "a part of the job expected");
    return node;
}

static const char *item_text(const struct node *item, const char *key)
{
    const cJSON *text = cJSON_GetObjectItemCaseSensitive(item->json, key);
    return cJSON_IsString(text) ? text->valuestring : NULL;
}

/* An item without a name goes by its place in the list, counted from one as people count. */
const char *node_name(const struct judging *judging, const struct node *node)
{
    if (!node->item)
        return NULL;
    const char *name = item_text(node, "name");
    if (name != NULL && name[0] != '\0')
        return arena_copy(judging->arena, name); /* findings outlive the job */
    const char *slash = strrchr(node->pointer, '/');
    return arena_format(judging->arena, "%s %lu", node->field->name,
                        slash == NULL ? 0 : strtoul(slash + 1, NULL, 10) + 1);
}

/* The list that a reference points into: a path of plain names. */
static struct node referred_list(struct judging *judging, const char *path)
{
    struct node node = {.json = judging->job, .field = judging->book->fields.root, .pointer = ""};
    char part[128];
    while (*path != '\0') {
        const size_t length = strcspn(path, ".");
        /* A name that is cut short here is no field's. */
        snprintf(part, sizeof(part), "%.*s", (int)length, path);
        const struct field *child = fields_child(node.field, part);
        if (child == NULL)
            return (struct node){0};
        node = node_child(judging, &node, child);
        path += length + (path[length] == '.');
    }
    return node;
}

bool node_referred(struct judging *judging, const struct node *reference, struct node *out)
{
    const struct node list = referred_list(judging, reference->field->refers);
    size_t index = 0;
    const cJSON *item = NULL;
    cJSON_ArrayForEach(item, list.json) {
        const cJSON *name = cJSON_GetObjectItemCaseSensitive(item, "name");
        if (cJSON_IsString(name) && strcmp(name->valuestring, reference->json->valuestring) == 0) {
            *out = (struct node){item, list.field, true,
                                 path_item(judging->arena, list.pointer, index)};
            return true;
        }
        index++;
    }
    return false;
}

/* A reference to an item that the job does not have lacks, like an absent one. */
static int push_referred(lua_State *lua, const struct node *reference)
{
    struct node item;
    if (!node_referred(judging_of(lua), reference, &item))
        return lacks(lua, reference);
    push_node(lua, item);
    return 1;
}

static int push_array(lua_State *lua, const struct node *node)
{
    const cJSON *item = NULL;
    lua_Integer index = 0;
    lua_createtable(lua, cJSON_GetArraySize(node->json), 0);
    cJSON_ArrayForEach(item, node->json) {
        if (cJSON_IsNumber(item))
            lua_pushnumber(lua, marks_give_fact(lua, node->field, item->valuedouble));
        else
            lua_pushstring(lua, item->valuestring);
        lua_rawseti(lua, -2, ++index);
    }
    return 1;
}

/* A marked number is no whole one. */
static void push_whole(lua_State *lua, double number)
{
    const lua_Integer whole = (lua_Integer)number;
    if ((double)whole == number)
        lua_pushinteger(lua, whole);
    else
        lua_pushnumber(lua, number);
}

/* Pushes the value of a field that the job has. */
static int push_value(lua_State *lua, const struct node *node)
{
    double rise = 0;
    switch (node->field->type) {
    case FIELD_GROUP:
    case FIELD_LIST:
        push_node(lua, *node);
        return 1;
    case FIELD_TEXT:
    case FIELD_CHOICE:
    case FIELD_DATE:
        lua_pushstring(lua, node->json->valuestring);
        return 1;
    case FIELD_NUMBER:
        lua_pushnumber(lua, marks_give_fact(lua, node->field, node->json->valuedouble));
        return 1;
    case FIELD_INTEGER:
        push_whole(lua, marks_give_fact(lua, node->field, node->json->valuedouble));
        return 1;
    case FIELD_YES_NO:
        lua_pushboolean(lua, cJSON_IsTrue(node->json));
        return 1;
    case FIELD_SLOPE:
        /* Validated before; were it not, it would not be guessed at. */
        if (!slope_parse(node->json->valuestring, &rise))
            return lacks(lua, node);
        lua_pushnumber(lua, marks_give_fact(lua, node->field, rise));
        return 1;
    case FIELD_NUMBERS:
    case FIELD_CHOICES:
        return push_array(lua, node);
    case FIELD_REFERENCE:
        return push_referred(lua, node);
    }
    return 0;
}

/* A misspelled field is an error of the rule; it is not the same as a fact that the job
 * lacks. */
static const struct field *child_field(lua_State *lua, const struct node *node, const char *key)
{
    const struct field *child = fields_child(node->field, key);
    if (child != NULL)
        return child;
    const char *path = node->field->path[0] == '\0' ? "the job" : node->field->path;
    const char *near = fields_nearest_child(node->field, key);
    if (near == NULL)
        luaL_error(lua, "%s has no field \"%s\"", path, key);
    luaL_error(lua, "%s has no field \"%s\" (did you mean \"%s\"?)", path, key, near);
    return NULL;
}

/* Rules count from one, pointers from zero. Past the end there is nil, so that loops end. */
static int index_list(lua_State *lua, const struct node *list)
{
    struct judging *judging = judging_of(lua);
    if (!lua_isinteger(lua, 2))
        return luaL_error(lua, "%s is a list; it is read by number", list->field->path);
    const lua_Integer at = lua_tointeger(lua, 2);
    if (at < 1 || at > cJSON_GetArraySize(list->json)) {
        lua_pushnil(lua);
        return 1;
    }
    const char *pointer = path_item(judging->arena, list->pointer, (size_t)at - 1);
    check_arena(lua);
    judging->said += strlen(pointer);
    push_node(lua, (struct node){cJSON_GetArrayItem(list->json, (int)at - 1), list->field, true,
                                 pointer});
    return 1;
}

/* The pointer's bytes count towards the job's total, not towards the rule's. */
static struct node read_child(lua_State *lua, const struct node *node, const struct field *field)
{
    sandbox_charge(lua, READ_STEPS);
    struct judging *judging = judging_of(lua);
    const struct node child = node_child(judging, node, field);
    check_arena(lua);
    judging->said += strlen(child.pointer);
    return child;
}

static int node_index(lua_State *lua)
{
    struct judging *judging = judging_of(lua);
    const struct node *node = check_node(lua, 1);
    if (node->field->type == FIELD_LIST && !node->item)
        return index_list(lua, node);
    if (lua_type(lua, 2) != LUA_TSTRING)
        return luaL_error(lua, "a part of the job is read by name");
    const struct field *field = child_field(lua, node, lua_tostring(lua, 2));
    const struct node child = read_child(lua, node, field);
    if (field->type == FIELD_GROUP) { /* its fields say what is lacking */
        push_node(lua, child);
        return 1;
    }
    record_read(judging, &child);
    return child.json == NULL ? lacks(lua, &child) : push_value(lua, &child);
}

static int node_length(lua_State *lua)
{
    const struct node *node = check_node(lua, 1);
    if (node->field->type != FIELD_LIST || node->item)
        return luaL_error(lua, "%s is not a list", node->field->path);
    lua_pushinteger(lua, cJSON_GetArraySize(node->json));
    return 1;
}

static int node_sealed(lua_State *lua)
{
    return luaL_error(lua, "a rule may not change the job");
}

/* known(part, "field"): true when the job says it. */
static int known(lua_State *lua)
{
    struct judging *judging = judging_of(lua);
    const struct node *node = check_node(lua, 1);
    const struct field *field = child_field(lua, node, luaL_checkstring(lua, 2));
    const struct node child = read_child(lua, node, field);
    record_known(judging, &child);
    check_arena(lua);
    lua_pushboolean(lua, child.json != NULL);
    return 1;
}

/* as_written(part, "field"): a text of the job, as it stands there: "12:3". */
static int as_written(lua_State *lua)
{
    struct judging *judging = judging_of(lua);
    const struct node *node = check_node(lua, 1);
    const struct field *field = child_field(lua, node, luaL_checkstring(lua, 2));
    const struct node child = read_child(lua, node, field);
    record_read(judging, &child);
    check_arena(lua);
    if (child.json == NULL)
        return lacks(lua, &child);
    if (!cJSON_IsString(child.json))
        return luaL_error(lua, "%s is not written as text", field->path);
    lua_pushstring(lua, child.json->valuestring);
    return 1;
}

/* inspecting(): has the work come to the stage of this rule? Until then what is planned
 * is judged, not what was found. */
static int inspecting(lua_State *lua)
{
    lua_pushboolean(lua, judging_of(lua)->inspecting);
    return 1;
}

/* cannot_tell("why"): open, in the rule's own words. */
static int cannot_tell(lua_State *lua)
{
    struct judging *judging = judging_of(lua);
    judging->record.cannot_tell = arena_format(judging->arena, "%.1000s", luaL_checkstring(lua, 1));
    check_arena(lua);
    return sandbox_signal(lua);
}

/* not_known("what to ask"): open, and for the building department to answer: what
 * this place asks was never read. */
static int not_known(lua_State *lua)
{
    struct judging *judging = judging_of(lua);
    judging->record.ask_place = true;
    judging->record.cannot_tell =
        arena_format(judging->arena, "What this place asks was not read: %.1000s",
                     luaL_checkstring(lua, 1));
    check_arena(lua);
    return sandbox_signal(lua);
}

void bind_job(lua_State *lua)
{
    lua_createtable(lua, 0, 4);
    lua_pushcfunction(lua, node_index);
    lua_setfield(lua, -2, "__index");
    lua_pushcfunction(lua, node_length);
    lua_setfield(lua, -2, "__len");
    lua_pushcfunction(lua, node_sealed);
    lua_setfield(lua, -2, "__newindex");
    lua_pushboolean(lua, 0);
    lua_setfield(lua, -2, "__metatable");
    lua_rawsetp(lua, LUA_REGISTRYINDEX, &NODE_KEY);
    lua_pushcfunction(lua, known);
    sandbox_define(lua, "known");
    lua_pushcfunction(lua, as_written);
    sandbox_define(lua, "as_written");
    lua_pushcfunction(lua, inspecting);
    sandbox_define(lua, "inspecting");
    lua_pushcfunction(lua, cannot_tell);
    sandbox_define(lua, "cannot_tell");
    lua_pushcfunction(lua, not_known);
    sandbox_define(lua, "not_known");
}
