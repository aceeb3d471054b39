/* declare_row_lua.c - demand "topic.thing" { ... }: a rule that is one comparison.
 *
 * Everything it names is looked up here, once: a misspelled fact or figure, inches held
 * against miles an hour, a word that the field cannot say are errors of the file, with
 * the line of the demand. */
#include "judge/bind_declare.h"

#include "base/nearest.h"
#include "base/number.h"
#include "judge/row.h"

#include <lauxlib.h>

#include <string.h>

/* row_each_condition walks all conditions of one row with a stack that holds these and
 * more. */
enum { CONDITIONS_OF_ONE = 64, CONDITIONS_DEEPEST = 8, ALSO_MOST = 8 };

/* A demand being read. Past a switch that the place leaves off nothing is ever looked
 * at: the figures named there stand with the places that turn it on, and may lack. */
struct reading_row {
    struct scope scope;
    size_t conditions;
    int depth;
    bool optional; /* inside of what need not hold: either, no, some */
    bool dormant;
};

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
static const struct figure *find_figure(lua_State *lua, const struct reading_row *reading,
                                        const char *name)
{
    const struct profile *profile = declaring_of(lua)->book->profile;
    const struct figure *figure = profile_figure(profile, name);
    struct nearest nearest;
    if (figure != NULL || reading->dormant)
        return figure;
    nearest_start(&nearest, name);
    for (size_t i = 0; i < profile->figure_count; i++)
        nearest_offer(&nearest, profile->figures[i].name);
    if (nearest.name == NULL)
        declare_refuse(lua, "no figure is named \"%s\"", name);
    declare_refuse(lua, "no figure is named \"%s\" (did you mean \"%s\"?)", name, nearest.name);
}

static const char *kind_words(enum value_kind kind)
{
    return kind == VALUE_NUMBER ? "a number" : kind == VALUE_SET ? "a set" : "true or false";
}

static const struct figure *find_figure_of(lua_State *lua, const struct reading_row *reading,
                                           const char *name, enum value_kind kind)
{
    const struct figure *figure = find_figure(lua, reading, name);
    if (figure != NULL && figure->value.kind != kind)
        declare_refuse(lua, "figure \"%s\" is %s; here one that is %s is wanted", name,
                       kind_words(figure->value.kind), kind_words(kind));
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

static const char *need_text_at(lua_State *lua, int at, const char *what)
{
    const char *text = text_at(lua, at);
    if (text == NULL)
        declare_refuse(lua, "a condition lacks %s", what);
    return text;
}

/* Units and senses ---------------------------------------------------------------------- */

static bool same_text(const char *a, const char *b)
{
    return a == b || (a != NULL && b != NULL && strcmp(a, b) == 0);
}

static bool is_number(const struct field *field)
{
    return field->type == FIELD_NUMBER || field->type == FIELD_INTEGER || field->type == FIELD_SLOPE
           || field->type == FIELD_NUMBERS;
}

/* What one of the field's unit is in the figure's: inches and feet change into one
 * another exactly, nothing else does; what counts things may leave its unit out. */
static double factor_between(lua_State *lua, const char *what, const char *from,
                             const struct figure *figure)
{
    const char *to = figure->value.unit;
    if (same_text(from, to) || (from == NULL && number_decimals(to) == 0))
        return 1;
    if (same_text(from, "ft") && same_text(to, "in"))
        return 12;
    if (same_text(from, "in") && same_text(to, "ft"))
        return 1.0 / 12;
    declare_refuse(lua, "%s is in %s, and figure \"%s\" in %s", what,
                   from == NULL ? "no unit" : from, figure->name, to == NULL ? "no unit" : to);
}

static double factor_of(lua_State *lua, const struct field *field, const struct figure *figure)
{
    return factor_between(lua, field->path, fact_unit(field), figure);
}

/* Does the figure bind? One that only decides who is meant demands nothing. */
static void check_binds(lua_State *lua, const struct figure *figure)
{
    if (!sense_binds(figure->sense))
        declare_refuse(lua,
                       "figure \"%s\" has the sense \"%s\": it decides who is meant, and "
                       "cannot be met",
                       figure->name, sense_word(figure->sense));
}

/* Can the fact be held against the figure at all? */
static double check_pair(lua_State *lua, const struct field *field, const struct figure *figure)
{
    const enum value_kind kind = figure->value.kind;
    check_binds(lua, figure);
    if (is_number(field) && kind == VALUE_NUMBER) {
        if (field->type == FIELD_NUMBERS && figure->sense == SENSE_EQUALS)
            declare_refuse(lua,
                           "a list of measurements is held against at_least or at_most, and "
                           "figure \"%s\" is equals",
                           figure->name);
        return factor_of(lua, field, figure);
    }
    const bool words = field->type == FIELD_CHOICE || field->type == FIELD_TEXT;
    const bool sets = field->type == FIELD_CHOICES;
    if ((kind == VALUE_YES_NO && field->type == FIELD_YES_NO)
        || (kind == VALUE_SET && words && figure->sense != SENSE_ALL_OF)
        || (kind == VALUE_SET && sets))
        return 1;
    declare_refuse(lua, "%s is %s, and figure \"%s\" is %s: they cannot be compared", field->path,
                   field_type_said(field->type), figure->name, kind_words(kind));
}

/* What the row looks at, a fact or a number that is reckoned, against the figure. */
static double check_row_pair(lua_State *lua, const struct row *row, const struct figure *figure)
{
    if (row->fact != NULL)
        return check_pair(lua, row->fact->field, figure);
    check_binds(lua, figure);
    if (figure->value.kind != VALUE_NUMBER)
        declare_refuse(lua, "found is a number, and figure \"%s\" is %s: they cannot be compared",
                       figure->name, kind_words(figure->value.kind));
    return factor_between(lua, "found", row->found_unit, figure);
}

/* Conditions ----------------------------------------------------------------------------- */

static void read_condition(lua_State *lua, struct reading_row *reading,
                           struct condition *condition);

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
    struct condition *parts = declare_keep(lua, (size_t)count + 1, sizeof(*parts));
    for (int i = 0; i < count; i++) {
        lua_geti(lua, -1, from + i);
        read_condition(lua, reading, &parts[i]);
        lua_pop(lua, 1);
    }
    condition->parts = parts;
    condition->part_count = (size_t)count;
}

static void check_word(lua_State *lua, const struct field *field, const char *word)
{
    struct nearest nearest;
    nearest_start(&nearest, word);
    for (size_t i = 0; i < field->choice_count; i++) {
        if (strcmp(field->choices[i], word) == 0)
            return;
        nearest_offer(&nearest, field->choices[i]);
    }
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
        const char *word = need_text_at(lua, i + 2, "a word");
        check_word(lua, field, word);
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
    condition->figure = find_figure(lua, reading, need_text_at(lua, 2, "a figure"));
    const struct figure *figure = condition->figure;
    if (figure == NULL)
        return;
    const bool words = field->type == FIELD_CHOICE || field->type == FIELD_CHOICES;
    if (!has_side(figure->sense)
        || !(
            (is_number(field) && field->type != FIELD_NUMBERS && figure->value.kind == VALUE_NUMBER)
            || (words && figure->value.kind == VALUE_SET)))
        declare_refuse(lua, "meant: figure \"%s\" (%s, %s) cannot say whether %s is meant",
                       figure->name, kind_words(figure->value.kind), sense_word(figure->sense),
                       field->path);
    if (is_number(field) && factor_of(lua, field, figure) != 1)
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
        condition->fact = declare_fact(lua, &reading->scope, need_text_at(lua, 1, "a fact"));
    if (KINDS[k].figure != VALUE_NONE)
        condition->figure = find_figure_of(lua, reading, need_text_at(lua, 1, "a figure"),
                                           KINDS[k].figure);
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
        reading->dormant |= !optional && condition->figure != NULL && !condition->figure->value.yes
                            && condition->figure->rival.kind == VALUE_NONE;
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
static void read_condition(lua_State *lua, struct reading_row *reading, struct condition *condition)
{
    if (++reading->conditions > CONDITIONS_OF_ONE || ++reading->depth > CONDITIONS_DEEPEST)
        declare_refuse(lua, "too many conditions for one rule");
    /* For each level of conditions within conditions. */
    luaL_checkstack(lua, 6, "conditions");
    if (lua_isfunction(lua, -1)) {
        condition->kind = WHEN_FUNCTION;
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

static void read_when(lua_State *lua, struct reading_row *reading, const struct rule *rule,
                      struct condition *when)
{
    for (size_t i = 0; i < rule->per_depth; i++)
        reading->scope.lists[reading->scope.depth++] = rule->per[i];
    declare_count(lua, &declaring_of(lua)->conditions, CONDITIONS_MOST, "conditions");
    when->kind = WHEN_ALL;
    lua_getfield(lua, 1, "when");
    if (!lua_isnil(lua, -1))
        read_condition(lua, reading, when);
    lua_pop(lua, 1);
}

const struct condition *declare_when(lua_State *lua, const struct rule *rule)
{
    struct reading_row reading = {.conditions = 0};
    lua_getfield(lua, 1, "when");
    const bool none = lua_isnil(lua, -1);
    lua_pop(lua, 1);
    if (none)
        return NULL;
    struct condition *when = declare_keep(lua, 1, sizeof(*when));
    read_when(lua, &reading, rule, when);
    return when;
}

const struct condition *declare_condition(lua_State *lua, const struct scope *scope)
{
    struct reading_row reading = {.scope = *scope};
    struct condition *condition = declare_keep(lua, 1, sizeof(*condition));
    declare_count(lua, &declaring_of(lua)->conditions, CONDITIONS_MOST, "conditions");
    read_condition(lua, &reading, condition);
    return condition;
}

/* The comparison --------------------------------------------------------------------------- */

static const struct fact *fact_of(lua_State *lua, const struct scope *scope, const char *key)
{
    const char *path = declare_text(lua, key);
    return path == NULL ? NULL : declare_fact(lua, scope, path);
}

/* Every choice of the fact must have its figure, or nobody could say what is asked. */
static void check_table(lua_State *lua, const struct reading_row *reading, struct row *row)
{
    const struct field *by = row->by->field;
    if (by->type != FIELD_CHOICE)
        declare_refuse(lua, "by: %s has no choices", by->path);
    const struct profile *profile = declaring_of(lua)->book->profile;
    bool any = false;
    for (size_t i = 0; i < by->choice_count; i++) {
        const char *id = arena_format(declare_arena(lua), "%s%s", row->by_prefix, by->choices[i]);
        const struct figure *figure = id == NULL ? NULL : profile_figure(profile, id);
        if (figure == NULL)
            continue;
        row->factor = check_row_pair(lua, row, figure);
        any = true;
    }
    if (!any && !reading->dormant)
        declare_refuse(lua, "no figure is named \"%s%s\", nor of any other choice of %s",
                       row->by_prefix, by->choices[0], by->path);
}

/* meets = { "a", "b", which = function(job, figure, item) return "a" end }. */
static bool names_which(lua_State *lua, struct row *row)
{
    lua_getfield(lua, -1, "which");
    const bool is = lua_isfunction(lua, -1);
    if (is)
        row->which = luaL_ref(lua, LUA_REGISTRYINDEX);
    else
        lua_pop(lua, 1);
    return is;
}

static void read_among(lua_State *lua, const struct reading_row *reading, struct row *row)
{
    const size_t count = (size_t)luaL_len(lua, -1);
    if (row->by != NULL || count < 2 || count > CONDITIONS_OF_ONE)
        declare_refuse(lua, "which chooses among the figures that meets lists, and there is no by");
    const struct figure **among = declare_keep(lua, count, sizeof(*among));
    for (size_t i = 0; i < count; i++) {
        among[i] = find_figure(lua, reading, need_text_at(lua, (int)i + 1, "a figure"));
        if (among[i] == NULL)
            continue;
        const double factor = check_row_pair(lua, row, among[i]);
        if (row->among_count > 0 && factor != row->factor)
            declare_refuse(lua, "the figures that which chooses among differ in unit");
        row->factor = factor;
        row->among_count = i + 1;
    }
    row->among = among;
    row->among_count = count;
}

static void read_meets(lua_State *lua, const struct reading_row *reading, struct row *row)
{
    row->factor = 1;
    row->by = fact_of(lua, &reading->scope, "by");
    lua_getfield(lua, 1, "meets");
    if (row->by != NULL && lua_type(lua, -1) == LUA_TSTRING) {
        row->by_prefix = arena_format(declare_arena(lua), "%s.", lua_tostring(lua, -1));
        if (row->by_prefix == NULL)
            luaL_error(lua, "out of memory");
        check_table(lua, reading, row);
    } else if (lua_type(lua, -1) == LUA_TSTRING) {
        row->meets[row->meets_count++] = find_figure(lua, reading, lua_tostring(lua, -1));
    } else if (lua_istable(lua, -1) && names_which(lua, row)) {
        read_among(lua, reading, row);
    } else if (lua_istable(lua, -1) && luaL_len(lua, -1) == 2 && row->by == NULL) {
        for (int i = 1; i <= 2; i++)
            row->meets[row->meets_count++] = find_figure(lua, reading,
                                                         need_text_at(lua, i, "a figure"));
    } else if (!lua_isnil(lua, -1)) {
        declare_refuse(lua, "meets names a figure, or two: { \"least\", \"most\" }, or those that "
                            "a function chooses among: { \"a\", \"b\", which = function ... end }");
    }
    lua_pop(lua, 1);
    for (size_t i = 0; i < row->meets_count; i++)
        if (row->meets[i] != NULL)
            row->factor = check_row_pair(lua, row, row->meets[i]);
}

static const struct figure *figure_of(lua_State *lua, const struct reading_row *reading,
                                      const char *key)
{
    const char *name = declare_text(lua, key);
    return name == NULL ? NULL : find_figure_of(lua, reading, name, VALUE_NUMBER);
}

static void check_measured(lua_State *lua, const struct row *row)
{
    const struct field *measured = row->measured == NULL ? NULL : row->measured->field;
    if (measured == NULL) {
        if (row->share != NULL || row->over != NULL)
            declare_refuse(lua, "share and over are of measured spacings: say measured");
        return;
    }
    if (!measured->measured)
        declare_refuse(lua, "%s is not a measured fact", measured->path);
    if (!same_text(fact_unit(measured), fact_unit(row->fact->field)))
        declare_refuse(lua, "%s and %s differ in unit", measured->path, row->fact->field->path);
    for (size_t i = 0; i < row->meets_count; i++)
        if (row->meets[i] != NULL)
            check_pair(lua, measured, row->meets[i]);
}

static void note_switch(void *data, const struct condition *condition)
{
    bool *any = data;
    *any = *any || condition->kind == WHEN_ON;
}

/* A duty: the fact says whether it is done, and a figure asks for it. What is compared
 * beside others has the figure of the whole rule. */
static void check_duty(lua_State *lua, const struct row *row, bool beside)
{
    bool any = beside;
    if (row->fact == NULL)
        declare_refuse(lua, "meets which figure?");
    if (row->fact->field->type != FIELD_YES_NO)
        declare_refuse(lua, "meets which figure? %s is not yes or no", row->fact->field->path);
    if (row->shown == NULL)
        declare_refuse(lua, "meets which figure? or, for a duty, shown: what must be shown");
    row_each_condition(&row->when, note_switch, &any);
    if (!any)
        declare_refuse(lua, "no figure asks for this duty: when = { on \"...\" }");
}

static const char *const ROW_KEYS[] = {"title",     "stage",  "per",   "when", "fact",  "measured",
                                       "meets",     "by",     "share", "over", "shown", "wants",
                                       "say",       "found",  "unit",  "also", "mend",  "caution",
                                       "asks_only", "advice", "cause", NULL};

/* wants = false: the duty is done when the fact is no. */
static bool wants_no(lua_State *lua)
{
    lua_getfield(lua, 1, "wants");
    const bool no = lua_isboolean(lua, -1) && !lua_toboolean(lua, -1);
    if (!lua_isnil(lua, -1) && !no)
        declare_refuse(lua, "wants is false, or left out");
    lua_pop(lua, 1);
    return no;
}

/* found = function ..., unit = "psf": a number that is reckoned, in place of a fact. */
static void read_found(lua_State *lua, struct row *row)
{
    row->found = declare_function(lua, "found");
    row->found_unit = declare_text(lua, "unit");
    if (row->found == RULE_NO_FUNCTION && row->fact == NULL)
        declare_refuse(lua, "has no fact: which one is looked at?");
    if (row->found == RULE_NO_FUNCTION && row->found_unit != NULL)
        declare_refuse(lua, "unit is that of found; a fact has its own");
    if (row->found != RULE_NO_FUNCTION && (row->fact != NULL || row->found_unit == NULL))
        declare_refuse(lua, "found is reckoned in place of a fact, and says its unit");
}

/* What the table at index 1 compares; its `when` is read. */
static void read_comparison(lua_State *lua, const struct reading_row *reading, struct row *row,
                            bool beside)
{
    row->which = RULE_NO_FUNCTION;
    row->fact = fact_of(lua, &reading->scope, "fact");
    read_found(lua, row);
    row->measured = fact_of(lua, &reading->scope, "measured");
    if (row->measured != NULL && row->fact == NULL)
        declare_refuse(lua, "measured counts instead of a fact: which one?");
    row->share = figure_of(lua, reading, "share");
    row->over = figure_of(lua, reading, "over");
    row->shown = declare_text(lua, "shown");
    row->say = declare_text(lua, "say");
    row->wants_no = wants_no(lua);
    read_meets(lua, reading, row);
    check_measured(lua, row);
    if (row->meets_count == 0 && row->by_prefix == NULL && row->which == RULE_NO_FUNCTION)
        check_duty(lua, row, beside);
}

static const char *const ALSO_KEYS[] = {"when",  "fact", "measured", "meets", "by",
                                        "share", "over", "shown",    "wants", "say",
                                        "found", "unit", NULL};

/* One of those under `also`, which is the table at index 1. Upvalues: as of a declaration,
 * the row, what is being read. */
static int finish_also(lua_State *lua)
{
    struct row *row = lua_touserdata(lua, lua_upvalueindex(4));
    struct reading_row *whole = lua_touserdata(lua, lua_upvalueindex(5));
    struct reading_row reading = *whole;
    declare_keys(lua, ALSO_KEYS);
    row->when.kind = WHEN_ALL;
    lua_getfield(lua, 1, "when");
    if (!lua_isnil(lua, -1))
        read_condition(lua, &reading, &row->when);
    lua_pop(lua, 1);
    whole->conditions = reading.conditions;
    read_comparison(lua, &reading, row, true);
    return 0;
}

/* also = { { fact = ..., meets = ... }, ... } */
static void read_also(lua_State *lua, struct reading_row *reading, struct row *row)
{
    lua_getfield(lua, 1, "also");
    if (!lua_isnil(lua, -1) && !lua_istable(lua, -1))
        declare_refuse(lua, "also is a list of what is compared as well: { { fact = ... } }");
    const size_t count = lua_isnil(lua, -1) ? 0 : (size_t)luaL_len(lua, -1);
    if (count > ALSO_MOST)
        declare_refuse(lua, "also compares more than %d things", ALSO_MOST);
    struct row *also = declare_keep(lua, count + 1, sizeof(*also));
    for (size_t i = 0; i < count; i++) {
        for (int upvalue = 1; upvalue <= 3; upvalue++)
            lua_pushvalue(lua, lua_upvalueindex(upvalue));
        lua_pushlightuserdata(lua, &also[i]);
        lua_pushlightuserdata(lua, reading);
        lua_pushcclosure(lua, finish_also, 5);
        lua_geti(lua, -2, (lua_Integer)i + 1);
        if (!lua_istable(lua, -1))
            declare_refuse(lua, "also is a list of what is compared as well: { { fact = ... } }");
        lua_call(lua, 1, 0);
    }
    row->also = also;
    row->also_count = count;
    lua_pop(lua, 1);
}

static int finish_demand(lua_State *lua)
{
    struct reading_row reading = {.conditions = 0};
    struct rule *rule = declare_new_rule(lua);
    struct row *row = declare_keep(lua, 1, sizeof(*row));
    read_when(lua, &reading, rule, &row->when);
    read_comparison(lua, &reading, row, false);
    read_also(lua, &reading, row);
    rule->row = row;
    declare_add_rule(lua, rule);
    return 0;
}

const struct declaration DECLARE_ROWS[] = {
    {"demand", ROW_KEYS, finish_demand, false},
    {NULL, NULL, NULL, false},
};
