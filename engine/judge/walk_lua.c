/* walk_lua.c - see walk.h. */
#include "judge/walk.h"

#include "judge/memory.h"
#include "judge/survey.h"

#include <lauxlib.h>
#include <lua.h>

#include <string.h>

/* After this much of the heap is used up, it is put back between calls. */
enum { HEAP_HIGH = SANDBOX_HEAP_BYTES / 2 };

/* What jobs may leave for the next before that. */
enum { HEAP_LEFT = 1024 * 1024 };

/* The order that rule files are written for: the house, figure, then the item itself and
 * what it is in. */
int call_push(lua_State *lua, const struct call *call, int function)
{
    sandbox_push_kept(lua, function);
    bind_push_node(lua, node_root(call->judging));
    if (!call->facts_only)
        bind_push_figure_function(lua);
    for (size_t i = call->depth; i-- > 0;)
        bind_push_node(lua, call->items[i]);
    return (call->facts_only ? 1 : 2) + (int)call->depth;
}

const char *call_kept_text(lua_State *lua, const struct call *call, int index)
{
    if (lua_type(lua, index) != LUA_TSTRING)
        return NULL;
    const char *text = arena_format(call->judging->arena, "%.4000s", lua_tostring(lua, index));
    bind_check_arena(lua);
    return text;
}

void call_applies(lua_State *lua, struct call *call, int applies)
{
    call->applies = true;
    if (applies == RULE_NO_FUNCTION)
        return;
    lua_call(lua, call_push(lua, call, applies), 2);
    if (!lua_isboolean(lua, -2))
        luaL_error(lua, "applies must give true or false");
    call->applies = lua_toboolean(lua, -2);
    /* The second value: why it does not apply. Without one it is nil. */
    call->reason = call_kept_text(lua, call, -1);
    lua_pop(lua, 2);
    call->judging->record.work = (struct strings){0}; /* what follows shows its own */
}

int call_for_condition(lua_State *lua)
{
    struct call *call = lua_touserdata(lua, 1);
    call_applies(lua, call, call->function);
    return 0;
}

/* The list of texts on top of the stack. */
static struct value kept_set(lua_State *lua, const struct call *call)
{
    struct value value = {.kind = VALUE_SET, .set_count = (size_t)lua_rawlen(lua, -1)};
    sandbox_charge(lua, value.set_count);
    bind_charge_output(lua, value.set_count * sizeof(*value.set));
    const char **set = arena_array(call->judging->arena, value.set_count + 1, sizeof(*set));
    bind_check_arena(lua);
    for (size_t i = 0; i < value.set_count; i++) {
        lua_rawgeti(lua, -1, (lua_Integer)i + 1);
        set[i] = call_kept_text(lua, call, -1);
        if (set[i] == NULL)
            luaL_error(lua, "a set holds texts only");
        bind_charge_output(lua, strlen(set[i]));
        lua_pop(lua, 1);
    }
    value.set = set;
    return value;
}

int call_for_value(lua_State *lua)
{
    struct call *call = lua_touserdata(lua, 1);
    lua_call(lua, call_push(lua, call, call->function), 1);
    const int type = lua_type(lua, -1);
    if (type == LUA_TBOOLEAN)
        call->value = (struct value){.kind = VALUE_YES_NO, .yes = lua_toboolean(lua, -1)};
    else if (type == LUA_TSTRING)
        call->value = (struct value){.kind = VALUE_TEXT, .text = call_kept_text(lua, call, -1)};
    else if (type == LUA_TTABLE)
        call->value = kept_set(lua, call);
    else if (type == LUA_TNUMBER)
        call->value = (struct value){.kind = VALUE_NUMBER, .number = lua_tonumber(lua, -1)};
    else
        return luaL_error(lua, "what is reckoned is a number, a word, yes or no, or a set");
    return 0;
}

int call_for_text(lua_State *lua)
{
    struct call *call = lua_touserdata(lua, 1);
    lua_call(lua, call_push(lua, call, call->function), 1);
    call->text = call_kept_text(lua, call, -1);
    if (call->must_say && call->text == NULL)
        return luaL_error(lua, "this function must give a text");
    return 0;
}

int call_for_words(lua_State *lua)
{
    struct call *call = lua_touserdata(lua, 1);
    lua_call(lua, call_push(lua, call, call->function), 1);
    call->text = call_kept_text(lua, call, -1);
    if (call->text == NULL && !lua_isnil(lua, -1))
        return luaL_error(lua, "a text must be given, or nothing");
    bind_charge_output(lua, call->text == NULL ? 0 : strlen(call->text));
    return 0;
}

int call_for_name(lua_State *lua)
{
    struct call *call = lua_touserdata(lua, 1);
    lua_call(lua, call_push(lua, call, call->function), 1);
    call->text = call_kept_text(lua, call, -1);
    if (call->text == NULL)
        return luaL_error(lua, "which must give the name of a figure");
    return 0;
}

/* What is about to be wiped out was there for the calls before. */
static void put_back(struct judging *judging)
{
    const char *what;
    struct sandbox *sandbox = judging->book->sandbox;
    if (!judging->apart)
        judging->touched = judging->touched || !sandbox_untouched(sandbox, &what);
    sandbox_reset(sandbox);
}

/* What the job before left was looked at when it was done: garbage, which need not be
 * cleared away each time. */
static void enter_first(struct judging *judging)
{
    struct sandbox *sandbox = judging->book->sandbox;
    if (judging->apart || !sandbox->seen_untouched
        || heap_used(&sandbox->heap) > sandbox->heap.copy_size + HEAP_LEFT)
        sandbox_reset(sandbox);
    sandbox->seen_untouched = false;
    judging->entered = true;
}

enum sandbox_stop call_enter(struct judging *judging, lua_CFunction function, struct call *call)
{
    struct sandbox *sandbox = judging->book->sandbox;
    if (!judging->entered)
        enter_first(judging);
    else if (heap_used(&sandbox->heap) > HEAP_HIGH)
        put_back(judging);
    judging->given.fact_count = judging->given.set_count = 0; /* its tables may go */
    judging->given.doubtful = false;
    judging->reads = call->rule != NULL ? call->rule->reads : call->reads;
    enum sandbox_stop stop = sandbox_call(sandbox, function, call);
    if (judging->apart && (stop == SANDBOX_DONE || stop == SANDBOX_SIGNAL))
        stop = sandbox_touch(sandbox, stop);
    if (stop != SANDBOX_DONE && stop != SANDBOX_SIGNAL)
        judging->trail.unfit = true; /* how far it came is not told by what it asked */
    /* Whatever tripped a limit may have left a mess behind. */
    if (judging->apart || (stop != SANDBOX_DONE && stop != SANDBOX_SIGNAL))
        put_back(judging);
    return stop;
}

void call_begin_all(struct judging *judging)
{
    judging->entered = false;
    judging->book->sandbox->user = judging;
}

bool call_end_all(struct judging *judging)
{
    const char *what;
    struct sandbox *sandbox = judging->book->sandbox;
    sandbox->user = NULL;
    if (judging->apart || !judging->entered)
        return true;
    sandbox->seen_untouched = sandbox_untouched(sandbox, &what);
    if (!judging->touched && sandbox->seen_untouched)
        return true;
    /* What it said may have gone by more than the answers that were noted. */
    memory_close(judging->book->memory);
    survey_close(judging->book->survey);
    return false;
}

/* The list `field` below a node, through the groups between. */
static struct node list_below(struct judging *judging, const struct node *from,
                              const struct field *list)
{
    /* A field has at most FIELDS_DEEPEST parts. */
    const struct field *path[32];
    size_t count = 0;
    for (const struct field *f = list; f != from->field && count < 32; f = f->parent)
        path[count++] = f;
    struct node node = *from;
    while (count > 0)
        node = node_child(judging, &node, path[--count]);
    return node;
}

/* The items of outer levels stay in walk->items while the inner ones are visited. */
static void walk_level(struct walk *walk, size_t level, const struct node *from)
{
    if (level >= walk->depth || level >= RULE_DEEPEST_PER) {
        walk->visited++;
        walk->visit(walk, NULL);
        return;
    }
    const struct node list = list_below(walk->judging, from, walk->per[level]);
    if (walk->settles && list.spot != NULL)
        survey_rest_on(walk->judging->survey, list.spot, walk->whole);
    /* An absent list is visited once, so that the question for it is asked; an empty one
     * is not. */
    if (list.json == NULL) {
        walk->visited++;
        walk->visit(walk, &list);
        return;
    }
    const size_t count = node_count(walk->judging, &list);
    for (size_t i = 0; i < count; i++) {
        walk->items[level] = node_item(walk->judging, &list, i);
        walk->items[level].known = (unsigned)level + 1;
        walk_level(walk, level + 1, &walk->items[level]);
    }
}

void walk_per(struct walk *walk)
{
    const struct node root = node_root(walk->judging);
    walk_level(walk, 0, &root);
}

const char *walk_where(const struct walk *walk)
{
    const char *where = NULL;
    for (size_t i = 0; i < walk->depth; i++) {
        const char *name = node_name(walk->judging, &walk->items[i]);
        where = where == NULL ? name : arena_format(walk->judging->arena, "%s, %s", where, name);
    }
    return where;
}
