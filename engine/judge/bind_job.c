/* bind_job.c - the job as rules see it.
 *
 * A group, list or item is a userdata that reads the JSON when indexed. What
 * is read is recorded; what is lacking ends the call as open. */
#include "judge/bind_reads.h"

#include "base/nearest.h"
#include "job/slope.h"

#include <lauxlib.h>
#include <lua.h>

#include <string.h>

/* Each read keeps a pointer in the result's memory: it is charged for. */
enum { READ_STEPS = 20 };

/* Its address, which nothing else has, is the key. */
static const char NODE_KEY = 'n'; /* registry: the metatable of nodes */

/* A node in Lua's heap. Rules cannot make a userdata, nor write into one: the key in front
 * tells a node from all others, sooner than its metatable would. */
struct node_in_lua {
    const char *key;
    struct node node;
};

struct judging *judging_lacks_job(lua_State *lua)
{
    luaL_error(lua, "this may be used only while a rule judges");
    return NULL;
}

void judging_lacks_memory(lua_State *lua)
{
    luaL_error(lua, "out of memory");
}

/* The total is only counted here; whoever starts the next rule looks at it. */
void bind_charge_output(lua_State *lua, size_t bytes)
{
    struct judging *judging = judging_of(lua);
    judging->output += bytes;
    judging->output_of_rule += bytes;
    if (judging->output_of_rule > OUTPUT_OF_RULE_MOST)
        luaL_error(lua, "the rule has said more than %d KB about this job",
                   OUTPUT_OF_RULE_MOST / 1024);
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
static void push_without_metatable(lua_State *lua, const struct node *node)
{
    struct node_in_lua *kept = lua_newuserdatauv(lua, sizeof(*kept), 0);
    *kept = (struct node_in_lua){&NODE_KEY, *node};
}

void bind_push_node(lua_State *lua, struct node node)
{
    push_without_metatable(lua, &node);
    lua_rawgetp(lua, LUA_REGISTRYINDEX, &NODE_KEY);
    lua_setmetatable(lua, -2);
}

/* Found below the node at index 1, which has the metatable at hand. */
static void push_below(lua_State *lua, const struct node *node)
{
    push_without_metatable(lua, node);
    lua_getmetatable(lua, 1);
    lua_setmetatable(lua, -2);
}

/* Only a userdata of Lua's own has both a length and an address. */
static struct node *check_node(lua_State *lua, int index)
{
    struct node_in_lua *kept = lua_rawlen(lua, index) == sizeof(*kept) ? lua_touserdata(lua, index)
                                                                       : NULL;
    if (kept == NULL || kept->key != &NODE_KEY)
        luaL_argerror(lua, index, "a part of the job expected");
    return &kept->node;
}

/* A reference to an item that the job does not have lacks, like an absent one. */
static int push_referred(lua_State *lua, const struct node *reference)
{
    struct node item;
    if (!node_referred(judging_of(lua), reference, &item))
        return lacks(lua, reference);
    push_below(lua, &item);
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
    if (node->field->type != FIELD_GROUP && node->field->type != FIELD_LIST
        && node->field->type != FIELD_REFERENCE)
        node_reads_value(judging_of(lua), node);
    switch (node->field->type) {
    case FIELD_GROUP:
    case FIELD_LIST:
        push_below(lua, node);
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
static int index_list(lua_State *lua, struct judging *judging, const struct node *list)
{
    if (!lua_isinteger(lua, 2))
        return luaL_error(lua, "%s is a list; it is read by number", list->field->path);
    const lua_Integer at = lua_tointeger(lua, 2);
    if (at < 1 || (size_t)at > node_count(judging, list)) {
        lua_pushnil(lua);
        return 1;
    }
    const struct node item = node_item(judging, list, (size_t)at - 1);
    bind_check_arena(lua);
    judging->output += strlen(item.pointer);
    push_below(lua, &item);
    return 1;
}

/* The pointer's bytes count towards the job's total, not towards the rule's. */
static struct node read_child(lua_State *lua, struct judging *judging, const struct node *node,
                              const struct field *field)
{
    sandbox_charge(lua, READ_STEPS);
    if (field->type != FIELD_GROUP) /* which holds nothing of its own */
        bind_check_fact(lua, judging->reads, field);
    const struct node child = node_child(judging, node, field);
    bind_check_arena(lua);
    judging->output += strlen(child.pointer);
    return child;
}

static int node_index(lua_State *lua)
{
    struct judging *judging = judging_of(lua);
    const struct node *node = check_node(lua, 1);
    if (node->field->type == FIELD_LIST && !node->item)
        return index_list(lua, judging, node);
    if (lua_type(lua, 2) != LUA_TSTRING)
        return luaL_error(lua, "a part of the job is read by name");
    const struct field *field = child_field(lua, node, lua_tostring(lua, 2));
    const struct node child = read_child(lua, judging, node, field);
    if (field->type == FIELD_GROUP) { /* its fields say what is lacking */
        push_below(lua, &child);
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
    lua_pushinteger(lua, (lua_Integer)node_count(judging_of(lua), node));
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
    bind_check_fact(lua, judging->reads, field);
    const struct node child = read_child(lua, judging, node, field);
    record_known(judging, &child);
    bind_check_arena(lua);
    lua_pushboolean(lua, child.json != NULL);
    return 1;
}

/* as_written(part, "field"): a text of the job, as it stands there: "12:3". */
static int as_written(lua_State *lua)
{
    struct judging *judging = judging_of(lua);
    const struct node *node = check_node(lua, 1);
    const struct field *field = child_field(lua, node, luaL_checkstring(lua, 2));
    const struct node child = read_child(lua, judging, node, field);
    record_read(judging, &child);
    bind_check_arena(lua);
    if (child.json == NULL)
        return lacks(lua, &child);
    if (!cJSON_IsString(child.json))
        return luaL_error(lua, "%s is not written as text", field->path);
    node_reads_value(judging, &child);
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
    bind_check_arena(lua);
    return sandbox_signal(lua);
}

/* not_known("what to ask"): open, and for the building department to answer: what
 * this place asks was never read. */
static int not_known(lua_State *lua)
{
    struct judging *judging = judging_of(lua);
    judging->record.ask_place = true;
    judging->record.cannot_tell = arena_format(
        judging->arena, "What this place asks was not read: %.1000s", luaL_checkstring(lua, 1));
    bind_check_arena(lua);
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
