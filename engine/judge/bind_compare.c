/* bind_compare.c - the comparisons a rule may make.
 *
 * Each gives a judgement: met or not, what was demanded, what was found. */
#include "judge/judging.h"

#include "base/number.h"
#include "base/text.h"
#include "trade/spacing.h"

#include <lauxlib.h>
#include <lua.h>

#include <math.h>
#include <stdarg.h>
#include <stdio.h>
#include <string.h>

static const char JUDGEMENT_KEY = 'j'; /* registry: the metatable of judgements */

void push_judgement(lua_State *lua, struct judgement *judgement)
{
    judgement_name_makers(judging_of(lua), judgement);
    struct judgement **kept = lua_newuserdatauv(lua, sizeof(judgement), 0);
    *kept = judgement;
    lua_rawgetp(lua, LUA_REGISTRYINDEX, &JUDGEMENT_KEY);
    lua_setmetatable(lua, -2);
}

struct judgement *to_judgement(lua_State *lua, int index)
{
    void *data = lua_touserdata(lua, index);
    if (data == NULL || lua_islightuserdata(lua, index) || !lua_getmetatable(lua, index))
        return NULL;
    lua_rawgetp(lua, LUA_REGISTRYINDEX, &JUDGEMENT_KEY);
    const bool same = lua_rawequal(lua, -1, -2);
    lua_pop(lua, 2);
    return same ? *(struct judgement **)data : NULL;
}

static struct judgement *judgement_new(lua_State *lua, const char *sense)
{
    count_said(lua, sizeof(struct judgement));
    struct judgement *judgement = arena_alloc(judging_of(lua)->arena, sizeof(*judgement));
    check_arena(lua);
    judgement->sense = sense;
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
enum { TEXT_LONGEST = 4000, TEXT_STEPS = 100 };

static const char *checked_text(lua_State *lua, int index)
{
    size_t length;
    const char *text = luaL_checklstring(lua, index, &length);
    if (length > TEXT_LONGEST)
        luaL_error(lua, "a text of more than %d bytes does not belong in a finding", TEXT_LONGEST);
    sandbox_charge(lua, TEXT_STEPS);
    count_said(lua, length);
    return text;
}

static const char *keep_text(lua_State *lua, int index)
{
    if (lua_isnoneornil(lua, index))
        return NULL;
    const char *text = arena_copy(judging_of(lua)->arena, checked_text(lua, index));
    check_arena(lua);
    return text;
}

/* The set (list of texts) at index. */
static struct value keep_set(lua_State *lua, int index)
{
    luaL_checktype(lua, index, LUA_TTABLE);
    struct value value = {.kind = VALUE_SET, .set_count = (size_t)lua_rawlen(lua, index)};
    sandbox_charge(lua, value.set_count);
    const char **set = arena_array(judging_of(lua)->arena, value.set_count + 1, sizeof(*set));
    check_arena(lua);
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

static int compare_numbers(lua_State *lua, const char *sense,
                           bool (*met)(double, double, const char *))
{
    const double found = check_finite(lua, 1, "the value found");
    const double limit = check_finite(lua, 2, "the limit");
    const char *unit = keep_text(lua, 3);
    struct judgement *judgement = judgement_new(lua, sense);
    judgement->met = met(found, limit, unit);
    judgement->found = number_value(found, unit);
    judgement->required = number_value(limit, unit);
    push_judgement(lua, judgement);
    return 1;
}

static int at_least(lua_State *lua)
{
    return compare_numbers(lua, "at_least", number_at_least);
}

static int at_most(lua_State *lua)
{
    return compare_numbers(lua, "at_most", number_at_most);
}

static int equals(lua_State *lua)
{
    if (lua_type(lua, 1) == LUA_TNUMBER && lua_type(lua, 2) == LUA_TNUMBER)
        return compare_numbers(lua, "equals", number_equals);
    if (lua_type(lua, 1) != lua_type(lua, 2))
        return luaL_error(lua, "equals: a %s cannot equal a %s", luaL_typename(lua, 1),
                          luaL_typename(lua, 2));
    struct judgement *judgement = judgement_new(lua, "equals");
    judgement->found = keep_value(lua, 1, NULL);
    judgement->required = keep_value(lua, 2, NULL);
    if (judgement->found.kind == VALUE_SET)
        return luaL_error(lua, "equals: sets are compared with one_of or none_of");
    judgement->met = lua_rawequal(lua, 1, 2);
    push_judgement(lua, judgement);
    return 1;
}

static int one_of(lua_State *lua)
{
    const char *found = luaL_checkstring(lua, 1);
    struct judgement *judgement = judgement_new(lua, "one_of");
    judgement->required = keep_set(lua, 2);
    judgement->found = keep_value(lua, 1, NULL);
    judgement->met = set_has(&judgement->required, found);
    push_judgement(lua, judgement);
    return 1;
}

static int none_of(lua_State *lua)
{
    struct judgement *judgement = judgement_new(lua, "none_of");
    const struct value banned = keep_set(lua, 2);
    judgement->found = keep_value(lua, 1, NULL);
    judgement->met = true;
    if (judgement->found.kind == VALUE_TEXT)
        judgement->met = !set_has(&banned, judgement->found.text);
    else if (judgement->found.kind == VALUE_SET)
        for (size_t i = 0; i < judgement->found.set_count; i++)
            judgement->met = judgement->met && !set_has(&banned, judgement->found.set[i]);
    else
        return luaL_argerror(lua, 1, "a text or a list of texts expected");
    judgement->required = banned;
    push_judgement(lua, judgement);
    return 1;
}

/* shown(true or false, "what"): the duty is met when true. */
static int shown(lua_State *lua)
{
    luaL_checktype(lua, 1, LUA_TBOOLEAN);
    struct judgement *judgement = judgement_new(lua, "equals");
    judgement->met = lua_toboolean(lua, 1);
    judgement->found = (struct value){.kind = VALUE_YES_NO, .yes = judgement->met};
    judgement->required = (struct value){.kind = VALUE_YES_NO, .yes = true};
    const char *what = keep_text(lua, 2);
    judgement->duty = what;
    if (what != NULL)
        judgement->say = arena_format(judging_of(lua)->arena, "Demanded: %s. Found: %s.", what,
                                      judgement->met ? "yes" : "no");
    check_arena(lua);
    push_judgement(lua, judgement);
    return 1;
}

/* Copies the list of numbers at index 1; an empty one cannot show anything. */
static double *keep_numbers(lua_State *lua, size_t *count)
{
    struct judging *judging = judging_of(lua);
    luaL_checktype(lua, 1, LUA_TTABLE);
    *count = (size_t)lua_rawlen(lua, 1);
    if (*count == 0) {
        judging->record.cannot_tell = "Nothing was measured: the list is empty.";
        sandbox_signal(lua);
    }
    sandbox_charge(lua, *count);
    count_said(lua, *count * sizeof(double));
    double *numbers = arena_array(judging->arena, *count, sizeof(*numbers));
    check_arena(lua);
    for (size_t i = 0; i < *count; i++) {
        lua_rawgeti(lua, 1, (lua_Integer)i + 1);
        numbers[i] = check_finite(lua, -1, "a measured value");
        lua_pop(lua, 1);
    }
    return numbers;
}

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

static void work_spread(lua_State *lua, const struct spread *spread, double limit, const char *unit)
{
    char worst[96], most[96], share[96];
    number_write_unit(spread->most, unit, worst);
    number_write_unit(limit, unit, most);
    number_write_unit(spread->over_percent, "percent", share);
    record_work(lua, "%zu measured: widest %s; %zu over %s (%s of them)", spread->count, worst,
                spread->over, most, share);
}

/* spacings_at_most(list, limit, unit, { share =, over = }). */
static int spacings_at_most(lua_State *lua)
{
    size_t count;
    const double *numbers = keep_numbers(lua, &count);
    const double limit = check_finite(lua, 2, "the limit");
    const char *unit = keep_text(lua, 3);
    const double share = option(lua, 4, "share"), over = option(lua, 4, "over");
    struct spread spread;
    if (trade_spread(&spread, numbers, count, limit, unit) != 0)
        return luaL_error(lua, "the measured list cannot be judged");
    struct judgement *judgement = judgement_new(lua, "at_most");
    judgement->required = number_value(limit, unit);
    judgement->found = number_value(spread.most, unit);
    judgement->met = spread.over == 0;
    work_spread(lua, &spread, limit, unit);
    if (!judgement->met && number_at_most(spread.over_percent, share, "percent")
        && number_at_most(spread.most, limit + over, unit)) {
        judgement->met = true;
        judgement->warn = "Some are over the figure, within the allowance given for stray ones.";
    }
    push_judgement(lua, judgement);
    return 1;
}

static int each_compare(lua_State *lua, bool least)
{
    size_t count;
    const double *numbers = keep_numbers(lua, &count);
    const double limit = check_finite(lua, 2, "the limit");
    const char *unit = keep_text(lua, 3);
    struct judgement *judgement = judgement_new(lua, least ? "at_least" : "at_most");
    double worst = numbers[0];
    size_t bad = 0;
    for (size_t i = 0; i < count; i++) {
        worst = least ? fmin(worst, numbers[i]) : fmax(worst, numbers[i]);
        bad += least ? !number_at_least(numbers[i], limit, unit)
                     : !number_at_most(numbers[i], limit, unit);
    }
    char written[96];
    number_write_unit(worst, unit, written);
    record_work(lua, "%zu measured: the worst %s; %zu out of bounds (%.1f %% of them)", count,
                written,
                bad, 100.0 * (double)bad / (double)count);
    judgement->met = bad == 0;
    judgement->found = number_value(worst, unit);
    judgement->required = number_value(limit, unit);
    push_judgement(lua, judgement);
    return 1;
}

static int each_at_least(lua_State *lua)
{
    return each_compare(lua, true);
}

static int each_at_most(lua_State *lua)
{
    return each_compare(lua, false);
}

/* The first judgement that is met (or not), or else the last. */
static int choose(lua_State *lua, bool met)
{
    const int count = lua_gettop(lua);
    luaL_argcheck(lua, count > 0, 1, "a judgement expected");
    for (int i = 1; i <= count; i++) {
        const struct judgement *judgement = to_judgement(lua, i);
        luaL_argcheck(lua, judgement != NULL, i, "a judgement expected");
        if (judgement->met == met) {
            lua_pushvalue(lua, i);
            return 1;
        }
    }
    lua_settop(lua, count);
    return 1;
}

/* Do the two bound one number from both sides? */
static bool is_other_bound(const struct judgement *a, const struct judgement *b)
{
    return a != b && a->found.kind == VALUE_NUMBER && b->found.kind == VALUE_NUMBER
        && a->required.kind == VALUE_NUMBER && b->required.kind == VALUE_NUMBER
        && a->found.number == b->found.number && strcmp(a->sense, b->sense) != 0
        && (a->found.unit == b->found.unit
            || (a->found.unit != NULL && b->found.unit != NULL
                && strcmp(a->found.unit, b->found.unit) == 0));
}

/* The makers of both: what is met is met by the figures of each. */
static void add_makers(lua_State *lua, struct judgement *to, const struct judgement *from)
{
    const size_t count = to->maker_count + from->maker_count;
    const struct figure **makers =
        arena_array(judging_of(lua)->arena, count + 1, sizeof(*makers));
    check_arena(lua);
    size_t kept = 0;
    for (size_t i = 0; i < count; i++) {
        const struct figure *maker =
            i < to->maker_count ? to->makers[i] : from->makers[i - to->maker_count];
        bool told = false;
        for (size_t j = 0; j < kept; j++)
            told = told || makers[j] == maker;
        if (!told)
            makers[kept++] = maker;
    }
    to->makers = makers;
    to->maker_count = kept;
}

/* A warning on any part is a warning on the whole; when all are met, all that
 * demanded something made what is met; a number held from both sides shows both
 * bounds, whichever part decides. */
static int all_of(lua_State *lua)
{
    const char *warn = NULL;
    const int count = lua_gettop(lua);
    for (int i = 1; i <= count; i++) {
        const struct judgement *judgement = to_judgement(lua, i);
        if (judgement != NULL && judgement->warn != NULL)
            warn = judgement->warn;
    }
    choose(lua, false);
    struct judgement *chosen = to_judgement(lua, -1);
    for (int i = 1; i <= count; i++) {
        const struct judgement *other = to_judgement(lua, i);
        if (other == NULL || other == chosen)
            continue;
        if (chosen->also.kind == VALUE_NONE && is_other_bound(chosen, other)) {
            chosen->also = other->required;
            chosen->also_sense = other->sense;
        }
        if (chosen->met)
            add_makers(lua, chosen, other);
    }
    if (warn != NULL && chosen->warn == NULL)
        chosen->warn = warn;
    return 1;
}

static int any_of(lua_State *lua)
{
    return choose(lua, true);
}

static struct judgement *check_judgement(lua_State *lua)
{
    struct judgement *judgement = to_judgement(lua, 1);
    luaL_argcheck(lua, judgement != NULL, 1, "a judgement expected");
    return judgement;
}

static const char *join(lua_State *lua, const char *before, const char *more)
{
    struct arena *arena = judging_of(lua)->arena;
    if (before != NULL && strlen(before) > TEXT_LONGEST)
        luaL_error(lua, "a text of more than %d bytes does not belong in a finding", TEXT_LONGEST);
    count_said(lua, before == NULL ? 0 : strlen(before));
    const char *text = before == NULL ? arena_copy(arena, more)
                                      : arena_format(arena, "%s %s", before, more);
    check_arena(lua);
    return text;
}

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

void record_work(lua_State *lua, const char *format, ...)
{
    char line[1024];
    struct judging *judging = judging_of(lua);
    va_list args;
    va_start(args, format);
    vsnprintf(line, sizeof(line), format, args);
    va_end(args);
    sandbox_charge(lua, TEXT_STEPS);
    count_said(lua, strlen(line));
    strings_add(&judging->record.work, judging->arena, arena_copy(judging->arena, line));
    check_arena(lua);
}

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
    lua_pushboolean(lua, 0);
    lua_setfield(lua, -2, "__metatable");
    lua_rawsetp(lua, LUA_REGISTRYINDEX, &JUDGEMENT_KEY);
    for (const struct luaL_Reg *reg = NAMES; reg->name != NULL; reg++) {
        lua_pushcfunction(lua, reg->func);
        sandbox_define(lua, reg->name);
    }
}
