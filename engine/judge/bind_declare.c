/* bind_declare.c - what every declaration of a rule file is read with. */
#include "judge/bind_declare.h"

#include "base/nearest.h"
#include "judge/declare_reads.h"
#include "judge/fields_made.h"
#include "sandbox/keys.h"

#include <lauxlib.h>

#include <stdarg.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

struct declaring *declaring_of(lua_State *lua)
{
    if (!sandbox_of(lua)->loading)
        luaL_error(lua, "this may be used only while the file is loaded");
    return sandbox_of(lua)->user;
}

struct arena *declare_arena(lua_State *lua)
{
    return &declaring_of(lua)->book->arena;
}

static const struct declaration *declaration_of(lua_State *lua, int upvalue)
{
    return lua_touserdata(lua, lua_upvalueindex(upvalue));
}

/* The second call, with the table. Upvalues: name, line, declaration. */
static int declare_finish(lua_State *lua)
{
    const struct declaration *declaration = declaration_of(lua, 3);
    if (declaring_of(lua)->fields_only && !declaration->is_field)
        return 0;
    luaL_checktype(lua, 1, LUA_TTABLE);
    if (declaration->is_field && fields_made_has(lua))
        return 0;
    lua_settop(lua, 1);
    declaring_of(lua)->keyed = NULL;
    if (declaration->keys != NULL)
        declare_keys(lua, declaration->keys);
    declaring_of(lua)->part_count = 0;
    declaring_of(lua)->elsewhere = (struct strings){0};
    return declaration->finish(lua);
}

/* Declarations read "word 'name' { ... }": two calls. The first keeps the name and
 * the line. Upvalue: declaration. */
static int declare_start(lua_State *lua)
{
    luaL_checkstring(lua, 1);
    declaring_of(lua); /* only while a file is loaded */
    lua_settop(lua, 1);
    lua_Debug about;
    lua_Integer line = 0;
    /* The caller's line, where the declaration begins; that of the second call may be its
     * last. */
    if (lua_getstack(lua, 1, &about) && lua_getinfo(lua, "l", &about))
        line = about.currentline;
    lua_pushinteger(lua, line);
    lua_pushvalue(lua, lua_upvalueindex(1));
    lua_pushcclosure(lua, declare_finish, 3);
    return 1;
}

void declare_words(lua_State *lua, const struct declaration *declarations)
{
    for (const struct declaration *d = declarations; d->word != NULL; d++) {
        const union {
            const void *held;
            void *pushed;
        } pointer = {d}; /* Lua keeps no const */
        lua_pushlightuserdata(lua, pointer.pushed);
        lua_pushcclosure(lua, declare_start, 1);
        sandbox_define(lua, d->word);
    }
}

const char *declare_name(lua_State *lua)
{
    return lua_tostring(lua, lua_upvalueindex(1));
}

int declare_line(lua_State *lua)
{
    return (int)lua_tointeger(lua, lua_upvalueindex(2));
}

/* Names the declaration: the line alone may be that of a helper. */
int declare_refuse(lua_State *lua, const char *format, ...)
{
    char message[400];
    va_list args;
    va_start(args, format);
    vsnprintf(message, sizeof(message), format, args);
    va_end(args);
    lua_pushfstring(lua, "%s:%d: \"%s\": %s", declaring_of(lua)->file, declare_line(lua),
                    declare_name(lua), message);
    lua_error(lua);
    abort(); /* lua_error does not return, but is not declared so */
}

/* In the order of their names: which of several is told of must not hang on where Lua has
 * them. */
static void refuse_keys(lua_State *lua, const char *const *known)
{
    const struct keys *keys = keys_push(lua, -1);
    if (keys->others)
        declare_refuse(lua, "every part needs a name");
    for (size_t i = 0; i < keys->count; i++) {
        const char *key = keys->names[i];
        struct nearest nearest;
        if (nearest_among(&nearest, key, known))
            continue;
        if (nearest.name != NULL)
            declare_refuse(lua, "unknown key \"%s\"; did you mean \"%s\"?", key, nearest.name);
        declare_refuse(lua, "unknown key \"%s\"", key);
    }
    lua_pop(lua, 1);
}

/* One of 64, by the first letters of the key. */
static uint64_t bit_of(const char *key)
{
    unsigned mixed = (unsigned char)key[0];
    if (key[0] != '\0' && key[1] != '\0')
        mixed += (unsigned char)key[1] * 7U + (unsigned char)key[2] * 29U;
    return UINT64_C(1) << (mixed & 63);
}

/* A view (sandbox_protect) holds nothing itself: its keys cannot be looked through. */
static bool is_view(lua_State *lua)
{
    const bool is = lua_getmetatable(lua, -1) != 0;
    lua_pop(lua, is ? 1 : 0);
    return is;
}

void declare_keys(lua_State *lua, const char *const *known)
{
    struct declaring *declaring = declaring_of(lua);
    size_t count = 0;
    bool all = true;
    uint64_t bits = 0;
    struct nearest nearest;
    for (lua_pushnil(lua); all && lua_next(lua, -2) != 0; lua_pop(lua, 1), count++) {
        const char *key = lua_type(lua, -2) == LUA_TSTRING ? lua_tostring(lua, -2) : NULL;
        all = key != NULL && nearest_among(&nearest, key, known);
        bits |= all ? bit_of(key) : 0;
    }
    if (!all) {
        lua_pop(lua, 1); /* the key at which the walk ended */
        refuse_keys(lua, known);
    }
    sandbox_charge(lua, count);
    declaring->keyed = is_view(lua) ? NULL : lua_topointer(lua, -1);
    declaring->key_bits = bits;
}

int declare_get(lua_State *lua, const char *key)
{
    const struct declaring *declaring = declaring_of(lua);
    const bool keyed = declaring->keyed != NULL && declaring->keyed == lua_topointer(lua, 1);
    if (!keyed || (declaring->key_bits & bit_of(key)) != 0)
        return lua_getfield(lua, 1, key);
    lua_pushnil(lua);
    return LUA_TNIL;
}

/* Zeroed memory that outlives the call; raises when out of memory. */
void *declare_keep(lua_State *lua, size_t count, size_t size)
{
    sandbox_charge_kept(lua, count * size);
    void *kept = arena_array(declare_arena(lua), count, size);
    if (kept == NULL)
        luaL_error(lua, "out of memory");
    return kept;
}

/* A copy that does; likewise. */
const char *declare_keep_text(lua_State *lua, const char *text)
{
    const size_t length = strlen(text);
    return memcpy(declare_keep(lua, length + 1, 1), text, length);
}

/* Raises when the text on top of the stack would be cut short in C. */
void declare_check_zero(lua_State *lua, const char *key)
{
    if (strlen(lua_tostring(lua, -1)) != lua_rawlen(lua, -1))
        declare_refuse(lua, "%s must not hold a zero byte", key);
}

const char *declare_text(lua_State *lua, const char *key)
{
    const char *text = NULL;
    const int type = declare_get(lua, key);
    if (type == LUA_TSTRING) {
        declare_check_zero(lua, key);
        text = declare_keep_text(lua, lua_tostring(lua, -1));
    } else if (type != LUA_TNIL) {
        declare_refuse(lua, "%s must be a text", key);
    }
    lua_pop(lua, 1);
    return text;
}

const char *declare_need_text(lua_State *lua, const char *key)
{
    const char *text = declare_text(lua, key);
    if (text == NULL)
        declare_refuse(lua, "has no %s", key);
    return text;
}

/* Counts one more of these; raises when there are too many. */
void declare_count(lua_State *lua, size_t *count, size_t most, const char *what)
{
    if (++*count > most)
        luaL_error(lua, "more than %d %s", (int)most, what);
}

bool declare_flag(lua_State *lua, const char *key)
{
    declare_get(lua, key);
    const bool set = lua_toboolean(lua, -1);
    lua_pop(lua, 1);
    return set;
}

int declare_function(lua_State *lua, const char *key)
{
    const int type = declare_get(lua, key);
    if (type == LUA_TNIL) {
        lua_pop(lua, 1);
        return RULE_NO_FUNCTION;
    }
    if (type != LUA_TFUNCTION)
        declare_refuse(lua, "%s must be a function", key);
    declare_reads_note(lua);
    return luaL_ref(lua, LUA_REGISTRYINDEX);
}

int declare_function_within(lua_State *lua, const char *key)
{
    if (lua_getfield(lua, -1, key) != LUA_TFUNCTION) {
        lua_pop(lua, 1);
        return RULE_NO_FUNCTION;
    }
    declare_reads_note(lua);
    return luaL_ref(lua, LUA_REGISTRYINDEX);
}

int declare_function_or_text(lua_State *lua, const char *key, const char **text)
{
    const bool computed = declare_get(lua, key) == LUA_TFUNCTION;
    lua_pop(lua, 1);
    if (computed)
        return declare_function(lua, key);
    *text = declare_text(lua, key);
    return RULE_NO_FUNCTION;
}

enum stage declare_stage(lua_State *lua, const char *word)
{
    const int stage = stage_by_word(word);
    if (stage < 0)
        declare_refuse(lua, "stage \"%s\" is not one of permit, deck, dry-in, final", word);
    return (enum stage)stage;
}

void declare_stages(lua_State *lua, bool stages[STAGE_COUNT])
{
    declare_get(lua, "stages");
    if (!lua_istable(lua, -1))
        declare_refuse(lua, "stages is a list of stages");
    const size_t count = (size_t)lua_rawlen(lua, -1);
    if (count > STAGE_COUNT)
        declare_refuse(lua, "stages is a list of stages, each once");
    for (size_t i = 1; i <= count; i++) {
        lua_rawgeti(lua, -1, (lua_Integer)i);
        stages[declare_stage(lua, luaL_checkstring(lua, -1))] = true;
        lua_pop(lua, 1);
    }
    lua_pop(lua, 1);
}

/* `per` ------------------------------------------------------------------------ */

/* Sets per[] to the lists that path ("attics[].vents") goes through. */
size_t declare_per(lua_State *lua, const struct field *per[RULE_DEEPEST_PER])
{
    const char *path = declare_text(lua, "per");
    if (path == NULL)
        return 0;
    const struct field *found = fields_find(&declaring_of(lua)->book->fields, path);
    if (found == NULL || found->type != FIELD_LIST) {
        const char *near = fields_nearest_path(&declaring_of(lua)->book->fields, path);
        declare_refuse(lua, "per: \"%s\" is not a list of the job (the nearest field: %s)", path,
                       near == NULL ? "none" : near);
    }
    size_t depth = 0;
    for (const struct field *f = found; f != NULL; f = f->parent)
        depth += f->type == FIELD_LIST;
    if (depth > RULE_DEEPEST_PER)
        declare_refuse(lua, "per: \"%s\" is too deep", path);
    size_t at = depth;
    for (const struct field *f = found; f != NULL; f = f->parent)
        if (f->type == FIELD_LIST)
            per[--at] = f;
    return depth;
}
