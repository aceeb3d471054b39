/* declare_meets_lua.c - what a row's fact must meet: a figure, two of them, one of a table,
 * one that a function names, or what is reckoned from some. Each is looked up and held
 * against the fact when the file is loaded. */
#include "judge/declare_row.h"

#include "base/number.h"
#include "base/text.h"
#include "judge/declare_reads.h"

#include <lauxlib.h>

#include <string.h>

enum { AMONG_MOST = 64 };

/* Does the figure bind? One that only decides who is meant demands nothing. */
static void check_binds(lua_State *lua, const struct figure_slot *figure, bool up_to)
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

static double factor_of(lua_State *lua, const struct field *field, const struct figure_slot *figure)
{
    return declare_factor(lua, field->path, fact_unit(field), figure);
}

double declare_check_pair(lua_State *lua, const struct field *field,
                          const struct figure_slot *figure)
{
    const enum value_kind kind = figure->kind;
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
static double check_row_pair(lua_State *lua, const struct row *row,
                             const struct figure_slot *figure)
{
    check_binds(lua, figure, row->up_to);
    if (row->fact != NULL)
        return declare_check_pair(lua, row->fact->field, figure);
    if (row->found_unit == NULL && figure->kind == VALUE_NUMBER)
        declare_refuse(lua, "found is reckoned in place of a fact, and a number says its unit");
    /* Without a unit it is a word, or yes or no, which only judging can tell apart. */
    if ((row->found_unit == NULL) != (figure->kind != VALUE_NUMBER))
        declare_refuse(lua, "found is %s, and figure \"%s\" is %s: they cannot be compared",
                       row->found_unit == NULL ? "a word, or yes or no" : "a number", figure->name,
                       declare_kind_words(figure->kind));
    return row->found_unit == NULL ? 1 : declare_factor(lua, "found", row->found_unit, figure);
}

/* The comparison --------------------------------------------------------------------------- */

/* Every choice of the fact must have its figure, or nobody could say what is asked. */
static void check_table(lua_State *lua, const struct reading_row *reading, struct row *row)
{
    const struct field *by = row->by->field;
    if (by->type != FIELD_CHOICE)
        declare_refuse(lua, "by: %s has no choices", by->path);
    struct rulebook *book = declaring_of(lua)->book;
    bool any = false;
    for (size_t i = 0; i < by->choice_count; i++) {
        const char *id = arena_format(declare_arena(lua), "%s%s", row->by_prefix, by->choices[i]);
        const struct figure_slot *figure = id == NULL ? NULL : figure_slot_find(book, id, true);
        if (figure == NULL)
            continue;
        row->factor = check_row_pair(lua, row, figure);
        any = true;
    }
    if (!any && !figure_slot_excused(book, reading->levers))
        declare_refuse(lua, "no figure is named \"%s%s\", nor of any other choice of %s",
                       row->by_prefix, by->choices[0], by->path);
}

/* meets = { "a", "b", which = function(job, figure, item) return "a" end }. */
static bool names_which(lua_State *lua, struct row *row)
{
    lua_getfield(lua, -1, "which");
    const bool is = lua_isfunction(lua, -1);
    lua_pop(lua, 1);
    if (is)
        row->which = declare_function_within(lua, "which");
    return is;
}

static void read_among(lua_State *lua, const struct reading_row *reading, struct row *row)
{
    const size_t count = (size_t)luaL_len(lua, -1);
    if (row->by != NULL || count < 2 || count > AMONG_MOST)
        declare_refuse(lua, "which chooses among the figures that meets lists, and there is no by");
    const struct figure_slot **among = declare_keep(lua, count, sizeof(*among));
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
    if (!text_same(own, row->limit_unit)
        && !(own == NULL && row->limit_unit != NULL && number_decimals(row->limit_unit) == 0))
        declare_refuse(lua, "what is looked at is in %s, and what it must meet in %s",
                       own == NULL ? "no unit" : own,
                       row->limit_unit == NULL ? "no unit" : row->limit_unit);
}

/* The sense of a limit that is no figure: said, or that of the figures it is reckoned from,
 * which must then agree. */
static enum sense limit_sense(lua_State *lua, const struct reading_row *reading,
                              const struct row *row)
{
    enum sense sense = SENSE_NONE;
    lua_getfield(lua, -1, "sense");
    if (lua_type(lua, -1) == LUA_TSTRING) {
        sense = sense_of(lua_tostring(lua, -1));
        if (!sense_binds(sense))
            declare_refuse(lua, "sense: \"%s\" binds nothing", lua_tostring(lua, -1));
    } else if (!lua_isnil(lua, -1)) {
        declare_refuse(lua, "sense is a word: \"at_least\", \"at_most\" or the like");
    }
    lua_pop(lua, 1);
    for (size_t i = 0, said = sense != SENSE_NONE; i < row->among_count && !said; i++) {
        const struct figure_slot *figure = row->among[i];
        if (figure == NULL || !sense_binds(figure->sense) || figure->kind == VALUE_YES_NO)
            continue;
        if (sense != SENSE_NONE && figure->sense != sense)
            declare_refuse(lua, "its figures bind in two ways, and figure \"%s\" is %s: say sense",
                           figure->name, sense_word(figure->sense));
        sense = figure->sense;
    }
    if (sense == SENSE_NONE && !figure_slot_excused(declaring_of(lua)->book, reading->levers))
        declare_refuse(lua, "how must it be met? sense = \"at_least\", or the like");
    return sense;
}

/* "topic.table.*": all of a table of figures. */
static size_t add_table(lua_State *lua, const char *name, const struct figure_slot **among,
                        size_t count)
{
    struct rulebook *book = declaring_of(lua)->book;
    size_t place;
    const size_t rows = figure_slot_table(book, name, strlen(name) - 1, &place);
    for (size_t i = 0; i < rows; i++) {
        if (count == AMONG_MOST)
            declare_refuse(lua, "a limit is reckoned from more than %d figures", AMONG_MOST);
        among[count++] = figure_slot_at(book, place + i, true);
    }
    return count;
}

/* The figures that the list on top of the stack names from position `from` on. */
static void add_sources(lua_State *lua, const struct reading_row *reading, struct row *row,
                        const struct figure_slot **among, size_t from)
{
    const size_t named = (size_t)luaL_len(lua, -1);
    size_t count = row->among_count;
    for (size_t i = from; i <= named; i++) {
        const char *name = declare_need_text_at(lua, (int)i, "a figure");
        const size_t before = count, length = strlen(name);
        if (count == AMONG_MOST)
            declare_refuse(lua, "a limit is reckoned from more than %d figures", AMONG_MOST);
        if (length > 2 && strcmp(name + length - 2, ".*") == 0)
            count = add_table(lua, name, among, count);
        else
            among[count++] = declare_figure(lua, reading, name);
        if (count == before && !figure_slot_excused(declaring_of(lua)->book, reading->levers))
            declare_refuse(lua, "no figure's name begins with \"%.*s\"", (int)length - 1, name);
        if (count == before)
            declare_reads_elsewhere(lua, name);
    }
    row->among_count = count;
}

/* behind = { { "switch", "figure", ... } }: figures that stand only with places that have
 * the switch on. */
static void add_behind(lua_State *lua, const struct reading_row *reading, struct row *row,
                       const struct figure_slot **among)
{
    static const char WANTED[] = "behind is a list: { { \"switch\", \"figure\", ... } }";
    lua_getfield(lua, -1, "behind");
    if (!lua_isnil(lua, -1) && !lua_istable(lua, -1))
        declare_refuse(lua, "%s", WANTED);
    const int count = lua_isnil(lua, -1) ? 0 : (int)luaL_len(lua, -1);
    for (int i = 1; i <= count; i++) {
        struct reading_row beyond = *reading;
        lua_geti(lua, -1, i);
        if (!lua_istable(lua, -1) || luaL_len(lua, -1) < 2)
            declare_refuse(lua, "%s", WANTED);
        const struct figure_slot *lever = declare_figure_of(
            lua, reading, declare_need_text_at(lua, 1, "a figure"), VALUE_YES_NO);
        beyond.levers = declare_lever(lua, NULL, lever);
        add_sources(lua, &beyond, row, among, 2);
        lua_pop(lua, 1);
    }
    lua_pop(lua, 1);
}

/* The figures that a limit is reckoned from: they differ as they may. */
static void read_sources(lua_State *lua, const struct reading_row *reading, struct row *row)
{
    const struct figure_slot **among = declare_keep(lua, AMONG_MOST, sizeof(*among));
    add_sources(lua, reading, row, among, 1);
    add_behind(lua, reading, row, among);
    row->among = among;
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

static const char *const LIMIT_KEYS[] = {"limit", "fact", "sense", "unit", "behind", NULL};

static void check_limit_keys(lua_State *lua)
{
    lua_pushnil(lua);
    while (lua_next(lua, -2) != 0) {
        bool known = lua_type(lua, -2) == LUA_TNUMBER;
        for (size_t i = 0; !known && LIMIT_KEYS[i] != NULL; i++)
            known = lua_type(lua, -2) == LUA_TSTRING
                    && strcmp(lua_tostring(lua, -2), LIMIT_KEYS[i]) == 0;
        if (!known)
            declare_refuse(lua, "meets = { \"figure\", ..., limit = function, unit =, sense =, "
                                "behind = } has no other keys");
        lua_pop(lua, 1);
    }
}

/* meets = { "a", "b", limit = function(job, figure, item) return number end, unit = "in" },
 * or meets = { fact = "path", sense = "at_most" }. False when it is neither. */
static bool reads_limit(lua_State *lua, const struct reading_row *reading, struct row *row)
{
    const char *path = kept_text(lua, "fact");
    row->limit = declare_function_within(lua, "limit");
    if (path == NULL && row->limit == RULE_NO_FUNCTION)
        return false;
    check_limit_keys(lua);
    read_sources(lua, reading, row);
    row->limit_sense = limit_sense(lua, reading, row);
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

void declare_read_meets(lua_State *lua, const struct reading_row *reading, struct row *row)
{
    row->by = declare_fact_at(lua, &reading->scope, "by");
    read_up_to(lua, reading, row);
    declare_get(lua, "meets");
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
