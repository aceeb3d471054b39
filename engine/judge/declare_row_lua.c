/* declare_row_lua.c - demand "topic.thing" { ... }: a rule that is one comparison.
 *
 * Everything it names is looked up here, once: a misspelled fact or figure, inches held
 * against miles an hour, a word that the field cannot say are errors of the file, with
 * the line of the demand. */
#include "judge/declare_row.h"

#include "base/nearest.h"
#include "base/number.h"

#include <lauxlib.h>

#include <string.h>

enum { AMONG_MOST = 64, PARTS_MOST = 12, PARTS_DEEPEST = 4 };

/* Does the figure bind? One that only decides who is meant demands nothing. */
static void check_binds(lua_State *lua, const struct figure *figure, bool up_to)
{
    if (up_to && figure->sense != SENSE_OVER)
        declare_refuse(lua, "up_to: figure \"%s\" is %s; one that says over how much is wanted",
                       figure->name, sense_word(figure->sense));
    if (!up_to && !sense_binds(figure->sense))
        declare_refuse(lua,
                       "figure \"%s\" has the sense \"%s\": it decides who is meant, and "
                       "cannot be met",
                       figure->name, sense_word(figure->sense));
}

static double factor_of(lua_State *lua, const struct field *field, const struct figure *figure)
{
    return declare_factor(lua, field->path, fact_unit(field), figure);
}

/* Can the fact be held against the figure at all? */
static double check_pair(lua_State *lua, const struct field *field, const struct figure *figure)
{
    const enum value_kind kind = figure->value.kind;
    if (declare_is_number(field) && kind == VALUE_NUMBER) {
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
                   field_type_said(field->type), figure->name, declare_kind_words(kind));
}

/* What the row looks at, a fact or what is reckoned, against the figure. */
static double check_row_pair(lua_State *lua, const struct row *row, const struct figure *figure)
{
    check_binds(lua, figure, row->up_to);
    if (row->fact != NULL)
        return check_pair(lua, row->fact->field, figure);
    if (row->found_unit == NULL && figure->value.kind == VALUE_NUMBER)
        declare_refuse(lua, "found is reckoned in place of a fact, and a number says its unit");
    /* Without a unit it is a word, or yes or no, which only judging can tell apart. */
    if ((row->found_unit == NULL) != (figure->value.kind != VALUE_NUMBER))
        declare_refuse(lua, "found is %s, and figure \"%s\" is %s: they cannot be compared",
                       row->found_unit == NULL ? "a word, or yes or no" : "a number", figure->name,
                       declare_kind_words(figure->value.kind));
    return row->found_unit == NULL ? 1 : declare_factor(lua, "found", row->found_unit, figure);
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
    if (row->by != NULL || count < 2 || count > AMONG_MOST)
        declare_refuse(lua, "which chooses among the figures that meets lists, and there is no by");
    const struct figure **among = declare_keep(lua, count, sizeof(*among));
    for (size_t i = 0; i < count; i++) {
        among[i] = declare_figure(lua, reading, declare_need_text_at(lua, (int)i + 1, "a figure"));
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

/* What the row looks at is in the unit of what it must meet. */
static void check_limit_unit(lua_State *lua, const struct row *row)
{
    const char *own = row->fact != NULL ? fact_unit(row->fact->field) : row->found_unit;
    if (!declare_same_text(own, row->limit_unit)
        && !(own == NULL && row->limit_unit != NULL && number_decimals(row->limit_unit) == 0))
        declare_refuse(lua, "what is looked at is in %s, and what it must meet in %s",
                       own == NULL ? "no unit" : own,
                       row->limit_unit == NULL ? "no unit" : row->limit_unit);
}

/* The sense of a limit that is no figure: said, or that of the figures it is reckoned from. */
static enum sense limit_sense(lua_State *lua, const struct row *row)
{
    lua_getfield(lua, -1, "sense");
    const char *word = lua_type(lua, -1) == LUA_TSTRING ? lua_tostring(lua, -1) : NULL;
    const enum sense sense = word == NULL ? SENSE_NONE : sense_of(word);
    if (word != NULL && !sense_binds(sense))
        declare_refuse(lua, "sense: \"%s\" binds nothing", word);
    lua_pop(lua, 1);
    if (word == NULL && (row->among_count == 0 || row->among[0] == NULL))
        declare_refuse(lua, "how must it be met? sense = \"at_least\", or the like");
    return word == NULL ? row->among[0]->sense : sense;
}

/* "topic.table.*": all of a table of figures. */
static size_t add_table(lua_State *lua, const char *name, const struct figure **among, size_t count)
{
    const struct profile *profile = declaring_of(lua)->book->profile;
    const size_t length = strlen(name) - 1;
    for (size_t i = 0; i < profile->figure_count; i++) {
        if (strncmp(profile->figures[i].name, name, length) != 0)
            continue;
        if (count == AMONG_MOST)
            declare_refuse(lua, "a limit is reckoned from more than %d figures", AMONG_MOST);
        among[count++] = &profile->figures[i];
    }
    return count;
}

/* The figures that a limit is reckoned from: they differ as they may. */
static void read_sources(lua_State *lua, const struct reading_row *reading, struct row *row)
{
    const size_t named = (size_t)luaL_len(lua, -1);
    const struct figure **among = declare_keep(lua, AMONG_MOST, sizeof(*among));
    size_t count = 0;
    for (size_t i = 0; i < named; i++) {
        const char *name = declare_need_text_at(lua, (int)i + 1, "a figure");
        const size_t before = count, length = strlen(name);
        if (count == AMONG_MOST)
            declare_refuse(lua, "a limit is reckoned from more than %d figures", AMONG_MOST);
        if (length > 2 && strcmp(name + length - 2, ".*") == 0)
            count = add_table(lua, name, among, count);
        else
            among[count++] = declare_figure(lua, reading, name);
        if (count == before && !reading->dormant)
            declare_refuse(lua, "no figure's name begins with \"%.*s\"", (int)length - 1, name);
    }
    row->among = among;
    row->among_count = count;
}

static const char *kept_text(lua_State *lua, const char *key)
{
    lua_getfield(lua, -1, key);
    const char *text = lua_type(lua, -1) == LUA_TSTRING
                           ? declare_keep_text(lua, lua_tostring(lua, -1))
                           : NULL;
    lua_pop(lua, 1);
    return text;
}

static const char *const LIMIT_KEYS[] = {"limit", "fact", "sense", "unit", NULL};

static void check_limit_keys(lua_State *lua)
{
    lua_pushnil(lua);
    while (lua_next(lua, -2) != 0) {
        bool known = lua_type(lua, -2) == LUA_TNUMBER;
        for (size_t i = 0; !known && LIMIT_KEYS[i] != NULL; i++)
            known = lua_type(lua, -2) == LUA_TSTRING
                    && strcmp(lua_tostring(lua, -2), LIMIT_KEYS[i]) == 0;
        if (!known)
            declare_refuse(lua,
                           "meets = { \"figure\", ..., limit = function, unit =, sense = } has no "
                           "other keys");
        lua_pop(lua, 1);
    }
}

/* meets = { "a", "b", limit = function(job, figure, item) return number end, unit = "in" },
 * or meets = { fact = "path", sense = "at_most" }. False when it is neither. */
static bool reads_limit(lua_State *lua, const struct reading_row *reading, struct row *row)
{
    const char *path = kept_text(lua, "fact");
    lua_getfield(lua, -1, "limit");
    if (lua_isfunction(lua, -1))
        row->limit = luaL_ref(lua, LUA_REGISTRYINDEX);
    else
        lua_pop(lua, 1);
    if (path == NULL && row->limit == RULE_NO_FUNCTION)
        return false;
    check_limit_keys(lua);
    read_sources(lua, reading, row);
    row->limit_sense = limit_sense(lua, row);
    row->limit_unit = kept_text(lua, "unit");
    if (path != NULL) {
        row->limit_fact = declare_fact(lua, &reading->scope, path);
        row->limit_unit = fact_unit(row->limit_fact->field);
    }
    check_limit_unit(lua, row);
    return true;
}

static void read_up_to(lua_State *lua, const struct reading_row *reading, struct row *row)
{
    const char *name = declare_text(lua, "up_to");
    const char *at = declare_text(lua, "at_counts");
    if (name == NULL && at != NULL)
        declare_refuse(lua, "at_counts is of up_to");
    if (name == NULL)
        return;
    row->up_to = true;
    row->meets[row->meets_count++] = declare_figure_of(lua, reading, name, VALUE_NUMBER);
    if (at != NULL)
        row->at_counts = declare_figure_of(lua, reading, at, VALUE_YES_NO);
}

static void read_meets(lua_State *lua, const struct reading_row *reading, struct row *row)
{
    row->by = fact_of(lua, &reading->scope, "by");
    read_up_to(lua, reading, row);
    lua_getfield(lua, 1, "meets");
    if (row->up_to && !lua_isnil(lua, -1))
        declare_refuse(lua, "meets, or up_to: not both");
    if (row->by != NULL && lua_type(lua, -1) == LUA_TSTRING) {
        row->by_prefix = arena_format(declare_arena(lua), "%s.", lua_tostring(lua, -1));
        if (row->by_prefix == NULL)
            luaL_error(lua, "out of memory");
        check_table(lua, reading, row);
    } else if (lua_type(lua, -1) == LUA_TSTRING) {
        row->meets[row->meets_count++] = declare_figure(lua, reading, lua_tostring(lua, -1));
    } else if (lua_istable(lua, -1) && names_which(lua, row)) {
        read_among(lua, reading, row);
    } else if (lua_istable(lua, -1) && row->by == NULL && reads_limit(lua, reading, row)) {
        /* its unit and sense are its own */
    } else if (lua_istable(lua, -1) && luaL_len(lua, -1) == 2 && row->by == NULL) {
        for (int i = 1; i <= 2; i++)
            row->meets[row->meets_count++] = declare_figure(
                lua, reading, declare_need_text_at(lua, i, "a figure"));
    } else if (!lua_isnil(lua, -1)) {
        declare_refuse(lua, "meets names a figure, or two: { \"least\", \"most\" }, or those that "
                            "a function chooses among: { \"a\", \"b\", which = function ... end }, "
                            "or what is reckoned: { \"a\", limit = function ... end }");
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
    return name == NULL ? NULL : declare_figure_of(lua, reading, name, VALUE_NUMBER);
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
    if (!declare_same_text(fact_unit(measured),
                           row->fact == NULL ? row->found_unit : fact_unit(row->fact->field)))
        declare_refuse(lua, "%s and %s differ in unit", measured->path,
                       row->fact == NULL ? "found" : row->fact->field->path);
    for (size_t i = 0; i < row->meets_count; i++)
        if (row->meets[i] != NULL)
            check_pair(lua, measured, row->meets[i]);
}

static void note_switch(void *data, const struct condition *condition)
{
    bool *any = data;
    *any = *any || condition->kind == WHEN_ON || condition->kind == WHEN_MEANT;
}

/* A duty: the fact says whether it is done, and a figure asks for it. What is compared
 * beside others has the figure of the whole rule. */
static void check_duty(lua_State *lua, const struct row *row, bool beside)
{
    bool any = beside;
    if (row->fact == NULL && (row->found == RULE_NO_FUNCTION || row->found_unit != NULL))
        declare_refuse(lua, "meets which figure?");
    if (row->fact != NULL && row->wants == NULL && row->fact->field->type != FIELD_YES_NO)
        declare_refuse(lua, "meets which figure? %s is not yes or no", row->fact->field->path);
    if (row->shown == NULL)
        declare_refuse(lua, "meets which figure? or, for a duty, shown: what must be shown");
    condition_each(&row->when, note_switch, &any);
    if (!any)
        declare_refuse(lua, "no figure asks for this duty: when = { on \"...\" }");
}

/* The words of a choice that do: wants = { "applied", "issued" }. */
static void read_wanted_words(lua_State *lua, struct row *row)
{
    const struct field *field = row->fact == NULL ? NULL : row->fact->field;
    const size_t count = (size_t)luaL_len(lua, -1);
    if (field == NULL || field->type != FIELD_CHOICE || count == 0 || count > AMONG_MOST)
        declare_refuse(lua, "wants lists words of a fact that is a choice");
    const char **words = declare_keep(lua, count, sizeof(*words));
    for (size_t i = 0; i < count; i++) {
        const char *word = declare_need_text_at(lua, (int)i + 1, "a word");
        declare_check_word(lua, field, word);
        words[i] = declare_keep_text(lua, word);
    }
    row->wants = words;
    row->wants_count = count;
}

/* wants = false: the duty is done when the fact is no. */
static void read_wants(lua_State *lua, struct row *row)
{
    lua_getfield(lua, 1, "wants");
    row->wants_no = lua_isboolean(lua, -1) && !lua_toboolean(lua, -1);
    if (lua_istable(lua, -1))
        read_wanted_words(lua, row);
    else if (!lua_isnil(lua, -1) && !row->wants_no)
        declare_refuse(lua, "wants is false, or a list of words, or left out");
    lua_pop(lua, 1);
}

/* found = function ..., unit = "psf": a number that is reckoned, in place of a fact; a word,
 * or yes or no, has no unit. */
static void read_found(lua_State *lua, struct row *row)
{
    row->found = declare_function(lua, "found");
    row->found_unit = declare_text(lua, "unit");
    if (row->found == RULE_NO_FUNCTION && row->fact == NULL)
        declare_refuse(lua, "has no fact: which one is looked at?");
    if (row->found == RULE_NO_FUNCTION && row->found_unit != NULL)
        declare_refuse(lua, "unit is that of found; a fact has its own");
    if (row->found != RULE_NO_FUNCTION && row->fact != NULL)
        declare_refuse(lua, "unit is that of found: found is reckoned in place of a fact");
}

static void read_parts(lua_State *lua, struct reading_row *reading, const char *key,
                       const struct row **parts, size_t *count);

static const char *const COMPARED_KEYS[] = {"fact",      "measured", "meets", "by",    "up_to",
                                            "at_counts", "share",    "over",  "shown", "wants",
                                            "say",       "warn",     "found", "unit",  NULL};

/* What is chosen among compares nothing of its own. */
static void check_only_chooses(lua_State *lua)
{
    for (size_t i = 0; COMPARED_KEYS[i] != NULL; i++) {
        lua_getfield(lua, 1, COMPARED_KEYS[i]);
        if (!lua_isnil(lua, -1))
            declare_refuse(lua, "choose says what is compared: %s goes into each of it",
                           COMPARED_KEYS[i]);
        lua_pop(lua, 1);
    }
}

/* What the table at index 1 compares; its `when` is read. */
static void read_comparison(lua_State *lua, struct reading_row *reading, struct row *row,
                            bool beside)
{
    row->which = row->limit = row->found = RULE_NO_FUNCTION;
    row->say_function = row->warn_function = RULE_NO_FUNCTION;
    row->factor = 1;
    read_parts(lua, reading, "choose", &row->choose, &row->choose_count);
    if (row->choose_count > 0) {
        check_only_chooses(lua);
        return;
    }
    row->fact = fact_of(lua, &reading->scope, "fact");
    read_found(lua, row);
    row->measured = fact_of(lua, &reading->scope, "measured");
    row->share = figure_of(lua, reading, "share");
    row->over = figure_of(lua, reading, "over");
    row->shown = declare_text(lua, "shown");
    row->say_function = declare_function_or_text(lua, "say", &row->say);
    row->warn_function = declare_function_or_text(lua, "warn", &row->warn);
    read_wants(lua, row);
    read_meets(lua, reading, row);
    check_measured(lua, row);
    if (row_is_duty(row))
        check_duty(lua, row, beside);
}

static const char *const PART_KEYS[] = {"when",  "fact",      "measured", "meets",  "by",
                                        "up_to", "at_counts", "share",    "over",   "shown",
                                        "wants", "say",       "warn",     "found",  "unit",
                                        "open",  "also",      "instead",  "choose", NULL};

static void read_when_of_part(lua_State *lua, struct reading_row *reading, struct condition *when)
{
    when->kind = WHEN_ALL;
    lua_getfield(lua, 1, "when");
    if (!lua_isnil(lua, -1))
        declare_read_condition(lua, reading, when);
    lua_pop(lua, 1);
}

/* One of those under also, instead or choose, which is the table at index 1. Upvalues: as of
 * a declaration, the part, what is being read. */
static int finish_part(lua_State *lua)
{
    struct row *row = lua_touserdata(lua, lua_upvalueindex(4));
    struct reading_row *whole = lua_touserdata(lua, lua_upvalueindex(5));
    struct reading_row reading = *whole;
    declare_keys(lua, PART_KEYS);
    read_when_of_part(lua, &reading, &row->when);
    row->open = declare_text(lua, "open");
    if (row->open == NULL) {
        read_comparison(lua, &reading, row, true);
        read_parts(lua, &reading, "also", &row->also, &row->also_count);
        read_parts(lua, &reading, "instead", &row->instead, &row->instead_count);
    }
    whole->conditions = reading.conditions;
    return 0;
}

/* also = { { fact = ..., meets = ... }, ... } */
static void read_parts(lua_State *lua, struct reading_row *reading, const char *key,
                       const struct row **parts, size_t *count)
{
    lua_getfield(lua, 1, key);
    if (!lua_isnil(lua, -1) && !lua_istable(lua, -1))
        declare_refuse(lua, "%s is a list of what is compared: { { fact = ... } }", key);
    *count = lua_isnil(lua, -1) ? 0 : (size_t)luaL_len(lua, -1);
    if (*count > PARTS_MOST || ++reading->parts_deep > PARTS_DEEPEST)
        declare_refuse(lua, "%s compares more than %d things, or too many within one another", key,
                       PARTS_MOST);
    struct row *rows = declare_keep(lua, *count + 1, sizeof(*rows));
    luaL_checkstack(lua, 10, "parts");
    for (size_t i = 0; i < *count; i++) {
        for (int upvalue = 1; upvalue <= 3; upvalue++)
            lua_pushvalue(lua, lua_upvalueindex(upvalue));
        lua_pushlightuserdata(lua, &rows[i]);
        lua_pushlightuserdata(lua, reading);
        lua_pushcclosure(lua, finish_part, 5);
        lua_geti(lua, -2, (lua_Integer)i + 1);
        if (!lua_istable(lua, -1))
            declare_refuse(lua, "%s is a list of what is compared: { { fact = ... } }", key);
        lua_call(lua, 1, 0);
    }
    reading->parts_deep--;
    *parts = rows;
    lua_pop(lua, 1);
}

static const char *const OPEN_KEYS[] = {"when", "says", "asks_place", NULL};

/* One of those under open: a table, or a function that gives the words. Upvalues: as above. */
static int finish_open(lua_State *lua)
{
    struct row_open *open = lua_touserdata(lua, lua_upvalueindex(4));
    struct reading_row *reading = lua_touserdata(lua, lua_upvalueindex(5));
    declare_keys(lua, OPEN_KEYS);
    read_when_of_part(lua, reading, &open->when);
    open->says_function = declare_function_or_text(lua, "says", &open->says);
    open->asks_place = declare_flag(lua, "asks_place");
    if (open->says == NULL && open->says_function == RULE_NO_FUNCTION)
        declare_refuse(lua, "open: says what?");
    return 0;
}

/* open = { { when = ..., says = "why" }, ... } */
static void read_opens(lua_State *lua, struct reading_row *reading, struct row *row)
{
    lua_getfield(lua, 1, "open");
    if (!lua_isnil(lua, -1) && !lua_istable(lua, -1))
        declare_refuse(lua, "open is a list of what leaves it open: { { when = ..., says = } }");
    const size_t count = lua_isnil(lua, -1) ? 0 : (size_t)luaL_len(lua, -1);
    if (count > PARTS_MOST)
        declare_refuse(lua, "open lists more than %d things", PARTS_MOST);
    struct row_open *opens = declare_keep(lua, count + 1, sizeof(*opens));
    for (size_t i = 0; i < count; i++) {
        for (int upvalue = 1; upvalue <= 3; upvalue++)
            lua_pushvalue(lua, lua_upvalueindex(upvalue));
        lua_pushlightuserdata(lua, &opens[i]);
        lua_pushlightuserdata(lua, reading);
        lua_pushcclosure(lua, finish_open, 5);
        lua_geti(lua, -2, (lua_Integer)i + 1);
        if (!lua_istable(lua, -1))
            declare_refuse(lua, "open is a list: { { when = ..., says = \"why\" } }");
        lua_call(lua, 1, 0);
    }
    row->opens = opens;
    row->open_count = count;
    lua_pop(lua, 1);
}

static const char *const ROW_KEYS[] = {
    "title", "stage", "per",       "when",      "fact",   "measured", "meets",
    "by",    "up_to", "at_counts", "share",     "over",   "shown",    "wants",
    "say",   "warn",  "found",     "unit",      "also",   "instead",  "choose",
    "open",  "mend",  "caution",   "asks_only", "advice", "cause",    NULL};

static int finish_demand(lua_State *lua)
{
    struct reading_row reading = {.conditions = 0};
    struct rule *rule = declare_new_rule(lua);
    struct row *row = declare_keep(lua, 1, sizeof(*row));
    declare_read_when(lua, &reading, rule, &row->when);
    read_comparison(lua, &reading, row, false);
    read_parts(lua, &reading, "also", &row->also, &row->also_count);
    read_parts(lua, &reading, "instead", &row->instead, &row->instead_count);
    read_opens(lua, &reading, row);
    rule->row = row;
    declare_add_rule(lua, rule);
    return 0;
}

const struct declaration DECLARE_ROWS[] = {
    {"demand", ROW_KEYS, finish_demand, false},
    {NULL, NULL, NULL, false},
};
