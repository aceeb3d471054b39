/* bind_compare.c - the comparisons a rule may make.
 *
 * Each gives a judgement: met or not, what was demanded, what was found. */
#include "judge/judgement.h"

#include "base/number.h"

#include <lauxlib.h>
#include <lua.h>

#include <math.h>
#include <string.h>

static const char JUDGEMENT_KEY = 'j'; /* registry: the metatable of judgements */

/* Pushes what came of a comparison, held to what the place demands beyond its figure.
 * numbers: the measured list it was made of, or NULL. */
static void push_held(lua_State *lua, struct judgement *judgement, const double *numbers,
                      size_t count)
{
    maker_find(judging_of(lua), judgement);
    judgement = judgement_held_to(judging_of(lua), judgement, numbers, count);
    bind_check_arena(lua);
    if (judgement == NULL)
        luaL_error(lua, "the figure's other bound cannot be judged");
    /* The judgement itself is the arena's: it outlives the heap, the userdata does not. */
    struct judgement **kept = lua_newuserdatauv(lua, sizeof(judgement), 0);
    *kept = judgement;
    lua_rawgetp(lua, LUA_REGISTRYINDEX, &JUDGEMENT_KEY);
    lua_setmetatable(lua, -2);
}

void bind_push_judgement(lua_State *lua, struct judgement *judgement)
{
    push_held(lua, judgement, NULL, 0);
}

/* Only the metatable tells whose a userdata is; rules have no way to set one. */
struct judgement *bind_to_judgement(lua_State *lua, int index)
{
    void *data = lua_touserdata(lua, index);
    if (data == NULL || lua_islightuserdata(lua, index) || !lua_getmetatable(lua, index))
        return NULL;
    lua_rawgetp(lua, LUA_REGISTRYINDEX, &JUDGEMENT_KEY);
    const bool same = lua_rawequal(lua, -1, -2);
    lua_pop(lua, 2);
    return same ? *(struct judgement **)data : NULL;
}

static struct judgement *new_judgement(lua_State *lua, enum sense sense)
{
    /* Before anything is allocated: the arena has no limit of its own. */
    bind_charge_output(lua, sizeof(struct judgement));
    struct judgement *judgement = judgement_new(judging_of(lua), sense);
    bind_check_arena(lua);
    return judgement;
}

/* A number that may stand in a finding. NaN and infinity never do. */
static double check_finite(lua_State *lua, int index, const char *what)
{
    const double number = luaL_checknumber(lua, index);
    if (!isfinite(number))
        luaL_error(lua, "%s is not a finite number", what);
    return number;
}

static struct value number_value(double number, const char *unit)
{
    return (struct value){.kind = VALUE_NUMBER, .number = number, .unit = unit};
}

/* What a rule puts into a finding outlives the sandbox's own memory limit, so
 * it is bounded here: in length, and by charging for every piece. */
enum { TEXT_LONGEST = 4000 };

/* A text of Lua's, looked at but not copied. */
static const char *checked_text(lua_State *lua, int index)
{
    size_t length;
    const char *text = luaL_checklstring(lua, index, &length);
    if (length > TEXT_LONGEST)
        luaL_error(lua, "a text of more than %d bytes does not belong in a finding", TEXT_LONGEST);
    sandbox_charge(lua, TEXT_STEPS);
    bind_charge_output(lua, length);
    return text;
}

static const char *keep_text(lua_State *lua, int index)
{
    if (lua_isnoneornil(lua, index))
        return NULL;
    const char *text = arena_copy(judging_of(lua)->arena, checked_text(lua, index));
    bind_check_arena(lua);
    return text;
}

/* The set (list of texts) at index. */
static struct value keep_set(lua_State *lua, int index)
{
    luaL_checktype(lua, index, LUA_TTABLE);
    struct value value = {.kind = VALUE_SET, .set_count = (size_t)lua_rawlen(lua, index)};
    sandbox_charge(lua, value.set_count);
    const char **set = arena_array(judging_of(lua)->arena, value.set_count + 1, sizeof(*set));
    bind_check_arena(lua);
    for (size_t i = 0; i < value.set_count; i++) {
        lua_rawgeti(lua, index, (lua_Integer)i + 1);
        if (lua_type(lua, -1) != LUA_TSTRING)
            luaL_argerror(lua, index, "a set of texts expected");
        set[i] = keep_text(lua, -1);
        lua_pop(lua, 1);
    }
    value.set = set;
    return value;
}

static struct value keep_value(lua_State *lua, int index, const char *unit)
{
    switch (lua_type(lua, index)) {
    case LUA_TNUMBER:
        return number_value(check_finite(lua, index, "a compared value"), unit);
    case LUA_TBOOLEAN:
        return (struct value){.kind = VALUE_YES_NO, .yes = lua_toboolean(lua, index)};
    case LUA_TSTRING:
        return (struct value){.kind = VALUE_TEXT, .text = keep_text(lua, index)};
    case LUA_TTABLE:
        return keep_set(lua, index);
    default:
        luaL_argerror(lua, index, "a number, text, true or false, or set expected");
        return (struct value){0};
    }
}

static bool set_has(const struct value *set, const char *text)
{
    for (size_t i = 0; i < set->set_count; i++)
        if (strcmp(set->set[i], text) == 0)
            return true;
    return false;
}

/* compare(found, limit, "unit"). The unit decides by how much two numbers may differ and
 * still be the same (base/number.h). */
static int compare_numbers(lua_State *lua, enum sense sense,
                           bool (*met)(double, double, const char *))
{
    const double found = check_finite(lua, 1, "the value found");
    const double limit = check_finite(lua, 2, "the limit");
    const char *unit = keep_text(lua, 3);
    marks_check(lua, sense, found, limit, unit);
    struct judgement *judgement = new_judgement(lua, sense);
    judgement->met = met(found, limit, unit);
    judgement->found = number_value(found, unit);
    judgement->required = number_value(limit, unit);
    bind_push_judgement(lua, judgement);
    return 1;
}

static int at_least(lua_State *lua)
{
    return compare_numbers(lua, SENSE_AT_LEAST, number_at_least);
}

static int at_most(lua_State *lua)
{
    return compare_numbers(lua, SENSE_AT_MOST, number_at_most);
}

/* A yes is never "yes": kinds are not converted. */
static int equals(lua_State *lua)
{
    if (lua_type(lua, 1) == LUA_TNUMBER && lua_type(lua, 2) == LUA_TNUMBER)
        return compare_numbers(lua, SENSE_EQUALS, number_equals);
    if (lua_type(lua, 1) != lua_type(lua, 2))
        return luaL_error(lua, "equals: a %s cannot equal a %s", luaL_typename(lua, 1),
                          luaL_typename(lua, 2));
    struct judgement *judgement = new_judgement(lua, SENSE_EQUALS);
    judgement->found = keep_value(lua, 1, NULL);
    judgement->required = keep_value(lua, 2, NULL);
    if (judgement->found.kind == VALUE_SET)
        return luaL_error(lua, "equals: sets are compared with one_of or none_of");
    judgement->met = lua_rawequal(lua, 1, 2);
    bind_push_judgement(lua, judgement);
    return 1;
}

static int one_of(lua_State *lua)
{
    const char *found = luaL_checkstring(lua, 1);
    marks_check_set(lua, 2, SENSE_ONE_OF);
    struct judgement *judgement = new_judgement(lua, SENSE_ONE_OF);
    judgement->required = keep_set(lua, 2);
    judgement->found = keep_value(lua, 1, NULL);
    judgement->met = set_has(&judgement->required, found);
    bind_push_judgement(lua, judgement);
    return 1;
}

/* Of a list nothing may be in the set. An empty list says nothing about the roof. */
static int none_of(lua_State *lua)
{
    marks_check_set(lua, 2, SENSE_NONE_OF);
    struct judgement *judgement = new_judgement(lua, SENSE_NONE_OF);
    const struct value banned = keep_set(lua, 2);
    judgement->found = keep_value(lua, 1, NULL);
    if (judgement->found.kind == VALUE_SET && judgement->found.set_count == 0) {
        judging_of(lua)->record.cannot_tell = JUDGEMENT_NOTHING_LISTED;
        return sandbox_signal(lua);
    }
    judgement->met = true;
    if (judgement->found.kind == VALUE_TEXT)
        judgement->met = !set_has(&banned, judgement->found.text);
    else if (judgement->found.kind == VALUE_SET)
        for (size_t i = 0; i < judgement->found.set_count; i++)
            judgement->met = judgement->met && !set_has(&banned, judgement->found.set[i]);
    else
        return luaL_argerror(lua, 1, "a text or a list of texts expected");
    judgement->required = banned;
    bind_push_judgement(lua, judgement);
    return 1;
}

/* shown(true or false, "what"): the duty is met when true. */
static int shown(lua_State *lua)
{
    luaL_checktype(lua, 1, LUA_TBOOLEAN);
    const char *what = keep_text(lua, 2);
    struct judgement *judgement = judgement_of_duty(judging_of(lua), lua_toboolean(lua, 1), what);
    bind_check_arena(lua);
    bind_charge_output(lua, sizeof(*judgement));
    bind_push_judgement(lua, judgement);
    return 1;
}

/* has_all(list, set, "what"): the duty to have all of the set; what is lacking is named. */
static int has_all(lua_State *lua)
{
    marks_check_set(lua, 2, SENSE_ALL_OF);
    const struct value found = keep_set(lua, 1), required = keep_set(lua, 2);
    const char *what = keep_text(lua, 3);
    /* Each of one is looked for in all of the other. */
    sandbox_charge(lua, found.set_count * required.set_count);
    struct judgement *judgement = judgement_of_all(judging_of(lua), &found, &required, what);
    bind_check_arena(lua);
    bind_charge_output(lua, sizeof(*judgement) + 2 * strlen(judgement->duty));
    bind_push_judgement(lua, judgement);
    return 1;
}

/* Copies the list of numbers at index 1; an empty one cannot show anything. */
static double *keep_numbers(lua_State *lua, size_t *count)
{
    struct judging *judging = judging_of(lua);
    luaL_checktype(lua, 1, LUA_TTABLE);
    *count = (size_t)lua_rawlen(lua, 1);
    if (*count == 0) {
        judging->record.cannot_tell = JUDGEMENT_NOTHING_MEASURED;
        sandbox_signal(lua);
    }
    sandbox_charge(lua, *count);
    bind_charge_output(lua, *count * sizeof(double));
    double *numbers = arena_array(judging->arena, *count, sizeof(*numbers));
    bind_check_arena(lua);
    for (size_t i = 0; i < *count; i++) {
        lua_rawgeti(lua, 1, (lua_Integer)i + 1);
        numbers[i] = check_finite(lua, -1, "a measured value");
        lua_pop(lua, 1);
    }
    return numbers;
}

/* An entry of the last argument, a table that may be left out. */
static double option(lua_State *lua, int index, const char *key)
{
    if (lua_isnoneornil(lua, index))
        return 0;
    luaL_checktype(lua, index, LUA_TTABLE);
    lua_getfield(lua, index, key);
    const double value = lua_isnil(lua, -1) ? 0 : check_finite(lua, -1, key);
    lua_pop(lua, 1);
    return value;
}

/* Charges for what a comparison of a list keeps, and pushes what came of it. */
static int push_compared(lua_State *lua, struct judgement *judgement, const double *numbers,
                         size_t count)
{
    enum { KEPT = 1024 }; /* the judgement, and its line of arithmetic */
    bind_check_arena(lua);
    if (judgement == NULL)
        return luaL_error(lua, "the measured list cannot be judged");
    sandbox_charge(lua, TEXT_STEPS);
    bind_charge_output(lua, KEPT);
    push_held(lua, judgement, numbers, count);
    return 1;
}

/* spacings_at_most(list, limit, unit, { share =, over = }). */
static int spacings_at_most(lua_State *lua)
{
    size_t count;
    const double *numbers = keep_numbers(lua, &count);
    const struct value limit = number_value(check_finite(lua, 2, "the limit"), keep_text(lua, 3));
    marks_check(lua, SENSE_AT_MOST, numbers[0], limit.number, limit.unit);
    return push_compared(lua,
                         judgement_of_spread(judging_of(lua), numbers, count, &limit,
                                             option(lua, 4, "share"), option(lua, 4, "over")),
                         numbers, count);
}

/* The units are checked at the first number: all are of one field. */
static int each_compare(lua_State *lua, bool least)
{
    size_t count;
    const double *numbers = keep_numbers(lua, &count);
    const struct value limit = number_value(check_finite(lua, 2, "the limit"), keep_text(lua, 3));
    marks_check(lua, least ? SENSE_AT_LEAST : SENSE_AT_MOST, numbers[0], limit.number, limit.unit);
    return push_compared(lua, judgement_of_each(judging_of(lua), numbers, count, &limit, least),
                         numbers, count);
}

static int each_at_least(lua_State *lua)
{
    return each_compare(lua, true);
}

static int each_at_most(lua_State *lua)
{
    return each_compare(lua, false);
}

/* Folded two by two: the first that is not met, or else the last. */
static int all_of(lua_State *lua)
{
    const int count = lua_gettop(lua);
    luaL_argcheck(lua, count > 0, 1, "a judgement expected");
    int chosen = 1;
    for (int i = 1; i <= count; i++)
        luaL_argcheck(lua, bind_to_judgement(lua, i) != NULL, i, "a judgement expected");
    for (int i = 2; i <= count; i++) {
        struct judgement *before = bind_to_judgement(lua, chosen);
        struct judgement *next = bind_to_judgement(lua, i);
        if (judgement_of_both(judging_of(lua), before, next) == next)
            chosen = i;
    }
    bind_check_arena(lua);
    lua_pushvalue(lua, chosen);
    return 1;
}

/* The first that is met, or else the last. A part may be a function that gives one: it
 * is called only if none before it is met, so that what it reads is not read in vain. */
static int any_of(lua_State *lua)
{
    const int count = lua_gettop(lua);
    luaL_argcheck(lua, count > 0, 1, "a judgement expected");
    for (int i = 1; i <= count; i++) {
        lua_pushvalue(lua, i);
        if (lua_isfunction(lua, -1))
            lua_call(lua, 0, 1);
        const struct judgement *judgement = bind_to_judgement(lua, -1);
        luaL_argcheck(lua, judgement != NULL, i, "a judgement expected");
        if (judgement->met || i == count)
            return 1;
        lua_pop(lua, 1);
    }
    return 1;
}

static struct judgement *check_judgement(lua_State *lua)
{
    struct judgement *judgement = bind_to_judgement(lua, 1);
    luaL_argcheck(lua, judgement != NULL, 1, "a judgement expected");
    return judgement;
}

/* Appends to what was said before. That text is copied again each time, so it is charged
 * again. */
static const char *join(lua_State *lua, const char *before, const char *more)
{
    struct arena *arena = judging_of(lua)->arena;
    if (before != NULL && strlen(before) > TEXT_LONGEST)
        luaL_error(lua, "a text of more than %d bytes does not belong in a finding", TEXT_LONGEST);
    bind_charge_output(lua, before == NULL ? 0 : strlen(before));
    const char *text = before == NULL ? arena_copy(arena, more)
                                      : arena_format(arena, "%s %s", before, more);
    bind_check_arena(lua);
    return text;
}

/* judgement:warn "why": met, but risky. Gives the judgement back, so that calls may be
 * chained. */
static int add_warn(lua_State *lua)
{
    struct judgement *judgement = check_judgement(lua);
    judgement->warn = join(lua, judgement->warn, checked_text(lua, 2));
    lua_settop(lua, 1);
    return 1;
}

static int add_say(lua_State *lua)
{
    struct judgement *judgement = check_judgement(lua);
    judgement->say = join(lua, judgement->say, checked_text(lua, 2));
    lua_settop(lua, 1);
    return 1;
}

/* work "...": a line of arithmetic in the rule's own words. */
static int work(lua_State *lua)
{
    record_work(lua, "%s", checked_text(lua, 1));
    return 0;
}

static const struct luaL_Reg NAMES[] = {
    {"at_least", at_least},
    {"at_most", at_most},
    {"equals", equals},
    {"one_of", one_of},
    {"none_of", none_of},
    {"shown", shown},
    {"has_all", has_all},
    {"spacings_at_most", spacings_at_most},
    {"each_at_least", each_at_least},
    {"each_at_most", each_at_most},
    {"all_of", all_of},
    {"any_of", any_of},
    {"work", work},
    {NULL, NULL},
};

void bind_compare(lua_State *lua)
{
    lua_createtable(lua, 0, 2);
    lua_createtable(lua, 0, 2);
    lua_pushcfunction(lua, add_warn);
    lua_setfield(lua, -2, "warn");
    lua_pushcfunction(lua, add_say);
    lua_setfield(lua, -2, "say");
    sandbox_protect(lua);
    lua_setfield(lua, -2, "__index");
    /* getmetatable gives false: rules cannot reach what is behind a judgement. */
    lua_pushboolean(lua, 0);
    lua_setfield(lua, -2, "__metatable");
    lua_rawsetp(lua, LUA_REGISTRYINDEX, &JUDGEMENT_KEY);
    for (const struct luaL_Reg *reg = NAMES; reg->name != NULL; reg++) {
        lua_pushcfunction(lua, reg->func);
        sandbox_define(lua, reg->name);
    }
}
