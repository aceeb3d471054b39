/* bind_compare.c - the comparisons a rule may make.
 *
 * Each gives a judgement: met or not, what was demanded, what was found. */
#include "judge/judgement.h"

#include "base/number.h"

#include <lauxlib.h>
#include <lua.h>

#include <math.h>
#include <string.h>

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

static const char *keep_text(lua_State *lua, int index)
{
    if (lua_isnoneornil(lua, index))
        return NULL;
    const char *text = arena_copy(judging_of(lua)->arena, bind_checked_text(lua, index));
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
    bind_push_held(lua, judgement, numbers, count);
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
    {NULL, NULL},
};

void bind_compare(lua_State *lua)
{
    for (const struct luaL_Reg *reg = NAMES; reg->name != NULL; reg++) {
        lua_pushcfunction(lua, reg->func);
        sandbox_define(lua, reg->name);
    }
}
