/* declare_condition_lua.c - the conditions of rows, looked up when the file is loaded: a
 * misspelled fact or figure, a word that the field cannot say are errors of the file. */
#include "judge/declare_row.h"

#include "base/nearest.h"
#include "base/number.h"
#include "base/text.h"
#include "judge/declare_reads.h"

#include <lauxlib.h>

#include <string.h>

/* condition_each walks all conditions of one row with a stack that holds these and
 * more. */
enum { CONDITIONS_OF_ONE = 64, CONDITIONS_DEEPEST = 8 };

/* Names ------------------------------------------------------------------------------ */

const struct fact *declare_fact(lua_State *lua, const struct scope *scope, const char *path)
{
    const char *why = "out of memory";
    const struct fact *fact = fact_find(declare_arena(lua), &declaring_of(lua)->book->fields, scope,
                                        path, &why);
    if (fact == NULL)
        declare_refuse(lua, "%s", why);
    sandbox_charge_kept(lua, sizeof(*fact));
    return fact;
}

/* NULL only in a dormant demand. */
const struct figure_slot *declare_figure(lua_State *lua, const struct reading_row *reading,
                                         const char *name)
{
    struct rulebook *book = declaring_of(lua)->book;
    const struct profile *profile = book->profile;
    const struct figure_slot *figure = figure_slot_find(book, name, true);
    struct nearest nearest;
    if (figure != NULL)
        return figure;
    if (figure_slot_excused(book, reading->levers)) {
        declare_reads_elsewhere(lua, name);
        return NULL;
    }
    nearest_start(&nearest, name);
    for (size_t i = 0; i < profile->figure_count; i++)
        nearest_offer(&nearest, profile->figures[i].name);
    if (nearest.name == NULL)
        declare_refuse(lua, "no figure is named \"%s\"", name);
    declare_refuse(lua, "no figure is named \"%s\" (did you mean \"%s\"?)", name, nearest.name);
}

const struct lever *declare_lever(lua_State *lua, const struct lever *before,
                                  const struct figure_slot *figure)
{
    struct lever *lever = declare_keep(lua, 1, sizeof(*lever));
    *lever = (struct lever){figure, before};
    return lever;
}

const char *declare_kind_words(enum value_kind kind)
{
    return kind == VALUE_NUMBER ? "a number" : kind == VALUE_SET ? "a set" : "true or false";
}

const struct figure_slot *declare_figure_of(lua_State *lua, const struct reading_row *reading,
                                            const char *name, enum value_kind kind)
{
    const struct figure_slot *figure = declare_figure(lua, reading, name);
    if (figure != NULL && figure->kind != kind)
        declare_refuse(lua, "figure \"%s\" is %s; here one that is %s is wanted", name,
                       declare_kind_words(figure->kind), declare_kind_words(kind));
    return figure;
}

/* The text in position `at` of the table on top of the stack; NULL when there is none. */
static const char *text_at(lua_State *lua, int at)
{
    lua_geti(lua, -1, at);
    const char *text = lua_type(lua, -1) == LUA_TSTRING ? lua_tostring(lua, -1) : NULL;
    lua_pop(lua, 1); /* the table holds it */
    return text;
}

const char *declare_need_text_at(lua_State *lua, int at, const char *what)
{
    const char *text = text_at(lua, at);
    if (text == NULL)
        declare_refuse(lua, "a condition lacks %s", what);
    return text;
}

/* Units and senses ---------------------------------------------------------------------- */

bool declare_is_number(const struct field *field)
{
    return field->type == FIELD_NUMBER || field->type == FIELD_INTEGER || field->type == FIELD_SLOPE
           || field->type == FIELD_NUMBERS;
}

/* What one of the field's unit is in the figure's: inches and feet change into one
 * another exactly, nothing else does; what counts things may leave its unit out. */
double declare_factor(lua_State *lua, const char *what, const char *from,
                      const struct figure_slot *figure)
{
    const char *to = figure->unit;
    if (text_same(from, to) || (from == NULL && number_decimals(to) == 0))
        return 1;
    if (text_same(from, "ft") && text_same(to, "in"))
        return 12;
    if (text_same(from, "in") && text_same(to, "ft"))
        return 1.0 / 12;
    declare_refuse(lua, "%s is in %s, and figure \"%s\" in %s", what,
                   from == NULL ? "no unit" : from, figure->name, to == NULL ? "no unit" : to);
}

static double factor_of(lua_State *lua, const struct field *field, const struct figure_slot *figure)
{
    return declare_factor(lua, field->path, fact_unit(field), figure);
}

/* Conditions ----------------------------------------------------------------------------- */

static const char *otherwise_of(lua_State *lua)
{
    const char *text = NULL;
    lua_getfield(lua, -1, "otherwise");
    if (lua_type(lua, -1) == LUA_TSTRING)
        text = declare_keep_text(lua, lua_tostring(lua, -1));
    else if (!lua_isnil(lua, -1))
        declare_refuse(lua, "otherwise is a text: why the rule does not apply");
    lua_pop(lua, 1);
    return text;
}

/* The parts from position `from` on of the table on top of the stack. */
static void read_parts(lua_State *lua, struct reading_row *reading, struct condition *condition,
                       int from)
{
    const int count = (int)luaL_len(lua, -1) - from + 1;
    if (count < 0 || count > CONDITIONS_OF_ONE)
        declare_refuse(lua, "too many conditions for one rule");
    struct condition *parts = count == 0 ? NULL : declare_keep(lua, (size_t)count, sizeof(*parts));
    for (int i = 0; i < count; i++) {
        lua_geti(lua, -1, from + i);
        declare_read_condition(lua, reading, &parts[i]);
        lua_pop(lua, 1);
    }
    condition->parts = parts;
    condition->part_count = (size_t)count;
}

void declare_check_word(lua_State *lua, const struct field *field, const char *word)
{
    for (size_t i = 0; i < field->choice_count; i++)
        if (strcmp(field->choices[i], word) == 0)
            return;
    struct nearest nearest;
    nearest_start(&nearest, word);
    for (size_t i = 0; i < field->choice_count; i++)
        nearest_offer(&nearest, field->choices[i]);
    declare_refuse(lua, "%s is never \"%s\"; the nearest is \"%s\"", field->path, word,
                   nearest.name == NULL ? "none" : nearest.name);
}

/* is { "fact", "word", ... }; of a yes or no: is "fact", is { "fact", false }. */
static void read_is(lua_State *lua, struct condition *condition)
{
    const struct field *field = condition->fact->field;
    const int count = (int)luaL_len(lua, -1) - 1;
    if (field->type == FIELD_YES_NO) {
        lua_geti(lua, -1, 2);
        condition->wants_no = lua_isboolean(lua, -1) && !lua_toboolean(lua, -1);
        if (count > 1 || (count == 1 && !lua_isboolean(lua, -1)))
            declare_refuse(lua, "%s is yes or no: is \"%s\", or is { \"%s\", false }", field->path,
                           field->path, field->path);
        lua_pop(lua, 1);
        return;
    }
    if (field->type != FIELD_CHOICE && field->type != FIELD_CHOICES)
        declare_refuse(lua, "is: %s has no choices; a number is meant by a figure", field->path);
    if (count < 1)
        declare_refuse(lua, "is: which of its words must %s be?", field->path);
    const char **words = declare_keep(lua, (size_t)count + 1, sizeof(*words));
    for (int i = 0; i < count; i++) {
        const char *word = declare_need_text_at(lua, i + 2, "a word");
        declare_check_word(lua, field, word);
        words[i] = declare_keep_text(lua, word);
    }
    condition->words = words;
    condition->word_count = (size_t)count;
}

/* Can a value be on the figure's side, or among its words? */
static bool has_side(enum sense sense)
{
    return sense == SENSE_AT_LEAST || sense == SENSE_AT_MOST || sense == SENSE_ONE_OF
           || !sense_binds(sense);
}

/* meant { "fact", "figure" }: on the figure's side, or among its words. */
static void read_meant(lua_State *lua, const struct reading_row *reading,
                       struct condition *condition)
{
    const struct field *field = condition->fact->field;
    condition->figure = declare_figure(lua, reading, declare_need_text_at(lua, 2, "a figure"));
    const struct figure_slot *figure = condition->figure;
    if (figure == NULL)
        return;
    const bool words = field->type == FIELD_CHOICE || field->type == FIELD_CHOICES;
    if (!has_side(figure->sense)
        || !((declare_is_number(field) && field->type != FIELD_NUMBERS
              && figure->kind == VALUE_NUMBER)
             || (words && figure->kind == VALUE_SET)))
        declare_refuse(lua, "meant: figure \"%s\" (%s, %s) cannot say whether %s is meant",
                       figure->name, declare_kind_words(figure->kind), sense_word(figure->sense),
                       field->path);
    if (declare_is_number(field) && factor_of(lua, field, figure) != 1)
        declare_refuse(lua, "meant: %s and figure \"%s\" differ in unit", field->path,
                       figure->name);
}

static void read_some(lua_State *lua, struct reading_row *reading, struct condition *condition)
{
    const struct field *list = condition->fact->field;
    if (list->type != FIELD_LIST)
        declare_refuse(lua, "some: %s is no list", list->path);
    if (reading->scope.depth == FACT_DEEPEST_SCOPE)
        declare_refuse(lua, "some: too many lists within lists");
    /* While the parts are read, their paths may go through this list. */
    reading->scope.lists[reading->scope.depth++] = list;
    read_parts(lua, reading, condition, 2);
    reading->scope.depth--;
}

static const struct {
    const char *word;
    enum condition_kind kind;
    bool fact;              /* names a fact first */
    enum value_kind figure; /* names a figure of this kind first; or VALUE_NONE */
} KINDS[] = {
    {"on", WHEN_ON, false, VALUE_YES_NO},
    {"off", WHEN_OFF, false, VALUE_YES_NO},
    {"asks", WHEN_ASKS, false, VALUE_SET},
    {"is", WHEN_IS, true, VALUE_NONE},
    {"meant", WHEN_MEANT, true, VALUE_NONE},
    {"said", WHEN_SAID, true, VALUE_NONE},
    {"some", WHEN_SOME, true, VALUE_NONE},
    {"all", WHEN_ALL, false, VALUE_NONE},
    {"either", WHEN_EITHER, false, VALUE_NONE},
    {"no", WHEN_NO, false, VALUE_NONE},
    {"inspected", WHEN_INSPECTED, false, VALUE_NONE},
};

/* The words are functions that give tables { condition = word, ... }: see
 * bind_condition.c. */
static void read_kind(lua_State *lua, struct reading_row *reading, struct condition *condition,
                      const char *word)
{
    size_t k = 0;
    while (k < sizeof(KINDS) / sizeof(KINDS[0]) && strcmp(KINDS[k].word, word) != 0)
        k++;
    if (k == sizeof(KINDS) / sizeof(KINDS[0]))
        declare_refuse(lua, "\"%s\" is no condition", word);
    condition->kind = KINDS[k].kind;
    condition->otherwise = otherwise_of(lua);
    if (KINDS[k].fact)
        condition->fact = declare_fact(lua, &reading->scope,
                                       declare_need_text_at(lua, 1, "a fact"));
    if (KINDS[k].figure != VALUE_NONE)
        condition->figure = declare_figure_of(
            lua, reading, declare_need_text_at(lua, 1, "a figure"), KINDS[k].figure);
    const bool optional = reading->optional;
    reading->optional = optional || condition->kind == WHEN_SOME || condition->kind == WHEN_EITHER
                        || condition->kind == WHEN_NO;
    switch (condition->kind) {
    case WHEN_IS:
        read_is(lua, condition);
        break;
    case WHEN_MEANT:
        read_meant(lua, reading, condition);
        break;
    case WHEN_SOME:
        read_some(lua, reading, condition);
        break;
    case WHEN_ALL:
    case WHEN_EITHER:
    case WHEN_NO:
        read_parts(lua, reading, condition, 1);
        if (condition->part_count == 0)
            declare_refuse(lua, "%s { } holds no condition", word);
        if (condition->kind == WHEN_NO && condition->part_count != 1)
            declare_refuse(lua, "no takes one condition");
        break;
    /* Off here with no source that has it on: what follows can never be asked. */
    case WHEN_ON:
        if (!optional && condition->figure != NULL)
            reading->levers = declare_lever(lua, reading->levers, condition->figure);
        break;
    case WHEN_OFF:
    case WHEN_ASKS:
    case WHEN_SAID:
    case WHEN_INSPECTED:
    case WHEN_FUNCTION:
        break;
    }
    reading->optional = optional;
}

/* The value on top of the stack: a condition, a list of them, or a function. */
void declare_read_condition(lua_State *lua, struct reading_row *reading,
                            struct condition *condition)
{
    if (++reading->conditions > CONDITIONS_OF_ONE || ++reading->depth > CONDITIONS_DEEPEST)
        declare_refuse(lua, "too many conditions for one rule");
    /* For each level of conditions within conditions. */
    luaL_checkstack(lua, 6, "conditions");
    if (lua_isfunction(lua, -1)) {
        condition->kind = WHEN_FUNCTION;
        declare_reads_note(lua);
        lua_pushvalue(lua, -1);
        condition->function = luaL_ref(lua, LUA_REGISTRYINDEX);
    } else if (lua_istable(lua, -1)) {
        lua_getfield(lua, -1, "condition");
        const char *word = lua_type(lua, -1) == LUA_TSTRING ? lua_tostring(lua, -1) : NULL;
        lua_pop(lua, 1);
        if (word != NULL) {
            read_kind(lua, reading, condition, word);
        } else {
            condition->kind = WHEN_ALL;
            read_parts(lua, reading, condition, 1);
        }
    } else {
        declare_refuse(lua,
                       "a condition is written on \"figure\", is { \"fact\", \"word\" } "
                       "or the like, not %s",
                       luaL_typename(lua, -1));
    }
    reading->depth--;
}

void declare_read_when(lua_State *lua, struct reading_row *reading, const struct rule *rule,
                       struct condition *when)
{
    for (size_t i = 0; i < rule->per_depth; i++)
        reading->scope.lists[reading->scope.depth++] = rule->per[i];
    declare_count(lua, &declaring_of(lua)->conditions, CONDITIONS_MOST, "conditions");
    when->kind = WHEN_ALL;
    declare_get(lua, "when");
    if (!lua_isnil(lua, -1))
        declare_read_condition(lua, reading, when);
    lua_pop(lua, 1);
}

const struct condition *declare_when(lua_State *lua, const struct rule *rule,
                                     const struct lever **levers)
{
    struct reading_row reading = {.conditions = 0};
    declare_get(lua, "when");
    const bool none = lua_isnil(lua, -1);
    lua_pop(lua, 1);
    if (none)
        return NULL;
    struct condition *when = declare_keep(lua, 1, sizeof(*when));
    declare_read_when(lua, &reading, rule, when);
    *levers = reading.levers;
    return when;
}

const struct condition *declare_condition(lua_State *lua, const struct scope *scope)
{
    struct reading_row reading = {.scope = *scope};
    struct condition *condition = declare_keep(lua, 1, sizeof(*condition));
    declare_count(lua, &declaring_of(lua)->conditions, CONDITIONS_MOST, "conditions");
    declare_read_condition(lua, &reading, condition);
    return condition;
}
