/* declare_row_lua.c - demand "topic.thing" { ... }: a rule that is one comparison.
 *
 * Everything it names is looked up here, once: a misspelled fact or figure, inches held
 * against miles an hour, a word that the field cannot say are errors of the file, with
 * the line of the demand. */
#include "judge/declare_row.h"

#include "base/text.h"
#include "judge/reads.h"

#include <lauxlib.h>

enum { WORDS_MOST = 64, PARTS_MOST = 12, PARTS_DEEPEST = 4 };

const struct fact *declare_fact_at(lua_State *lua, const struct scope *scope, const char *key)
{
    const char *path = declare_text(lua, key);
    return path == NULL ? NULL : declare_fact(lua, scope, path);
}

static const struct figure_slot *figure_of(lua_State *lua, const struct reading_row *reading,
                                           const char *key)
{
    const char *name = declare_text(lua, key);
    return name == NULL ? NULL : declare_figure_of(lua, reading, name, VALUE_NUMBER);
}

/* How many may stray is said of spacings that are too wide. */
static void check_share(lua_State *lua, const struct row *row)
{
    bool most = row->limit_sense == SENSE_NONE || row->limit_sense == SENSE_AT_MOST;
    for (size_t i = 0; i < row->meets_count; i++)
        most = most && (row->meets[i] == NULL || row->meets[i]->sense == SENSE_AT_MOST);
    for (size_t i = 0; row->which != RULE_NO_FUNCTION && i < row->among_count; i++)
        most = most && (row->among[i] == NULL || row->among[i]->sense == SENSE_AT_MOST);
    if (row->share != NULL && !most)
        declare_refuse(lua, "share is of spacings that are held at_most");
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
    if (!text_same(fact_unit(measured),
                   row->fact == NULL ? row->found_unit : fact_unit(row->fact->field)))
        declare_refuse(lua, "%s and %s differ in unit", measured->path,
                       row->fact == NULL ? "found" : row->fact->field->path);
    for (size_t i = 0; i < row->meets_count; i++)
        if (row->meets[i] != NULL)
            declare_check_pair(lua, measured, row->meets[i]);
    check_share(lua, row);
}

static void note_switch(void *data, const struct condition *condition)
{
    bool *any = data;
    *any = *any || condition->kind == WHEN_ON || condition->kind == WHEN_MEANT;
}

/* A duty: the fact says whether it is done, and a figure asks for it. What is compared
 * beside others has the figure of the whole rule. */
static void check_duty(lua_State *lua, struct reading_row *reading, const struct row *row,
                       bool beside)
{
    bool any = beside;
    if (row->fact == NULL && (row->found == RULE_NO_FUNCTION || row->found_unit != NULL))
        declare_refuse(lua, "meets which figure?");
    if (row->fact != NULL && row->wants == NULL && row->fact->field->type != FIELD_YES_NO)
        declare_refuse(lua, "meets which figure? %s is not yes or no", row->fact->field->path);
    if (row->shown == NULL)
        declare_refuse(lua, "meets which figure? or, for a duty, shown: what must be shown");
    condition_each(&row->when, note_switch, &any);
    reading->lacks_switch = !any;
}

/* The switch of a duty may be looked at by a function, which then declares it. */
static void check_switch(lua_State *lua, const struct reading_row *reading, const struct rule *rule)
{
    bool any = !reading->lacks_switch;
    for (size_t i = 0; i < rule->reads->part_count; i++)
        for (size_t j = 0; j < rule->reads->parts[i]->figure_count; j++)
            any = any || rule->reads->parts[i]->figures[j].figure->kind == VALUE_YES_NO;
    if (!any)
        declare_refuse(lua, "no figure asks for this duty: when = { on \"...\" }");
}

/* The words of a choice that do: wants = { "applied", "issued" }. */
static void read_wanted_words(lua_State *lua, struct row *row)
{
    const struct field *field = row->fact == NULL ? NULL : row->fact->field;
    const size_t count = (size_t)luaL_len(lua, -1);
    if (field == NULL || field->type != FIELD_CHOICE || count == 0 || count > WORDS_MOST)
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
    declare_get(lua, "wants");
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
        declare_get(lua, COMPARED_KEYS[i]);
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
    row->fact = declare_fact_at(lua, &reading->scope, "fact");
    read_found(lua, row);
    row->measured = declare_fact_at(lua, &reading->scope, "measured");
    row->share = figure_of(lua, reading, "share");
    row->over = figure_of(lua, reading, "over");
    row->shown = declare_text(lua, "shown");
    row->say_function = declare_function_or_text(lua, "say", &row->say);
    row->warn_function = declare_function_or_text(lua, "warn", &row->warn);
    read_wants(lua, row);
    declare_read_meets(lua, reading, row);
    check_measured(lua, row);
    if (row_is_duty(row))
        check_duty(lua, reading, row, beside);
}

static const char *const PART_KEYS[] = {"when",  "fact",      "measured", "meets",  "by",
                                        "up_to", "at_counts", "share",    "over",   "shown",
                                        "wants", "say",       "warn",     "found",  "unit",
                                        "open",  "also",      "instead",  "choose", NULL};

static void read_when_of_part(lua_State *lua, struct reading_row *reading, struct condition *when)
{
    when->kind = WHEN_ALL;
    declare_get(lua, "when");
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
    declare_get(lua, key);
    if (!lua_isnil(lua, -1) && !lua_istable(lua, -1))
        declare_refuse(lua, "%s is a list of what is compared: { { fact = ... } }", key);
    *count = lua_isnil(lua, -1) ? 0 : (size_t)luaL_len(lua, -1);
    if (*count > PARTS_MOST || ++reading->parts_deep > PARTS_DEEPEST)
        declare_refuse(lua, "%s compares more than %d things, or too many within one another", key,
                       PARTS_MOST);
    struct row *rows = *count == 0 ? NULL : declare_keep(lua, *count, sizeof(*rows));
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
    declare_get(lua, "open");
    if (!lua_isnil(lua, -1) && !lua_istable(lua, -1))
        declare_refuse(lua, "open is a list of what leaves it open: { { when = ..., says = } }");
    const size_t count = lua_isnil(lua, -1) ? 0 : (size_t)luaL_len(lua, -1);
    if (count > PARTS_MOST)
        declare_refuse(lua, "open lists more than %d things", PARTS_MOST);
    struct row_open *opens = count == 0 ? NULL : declare_keep(lua, count, sizeof(*opens));
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
    "title",     "stage",     "per",   "when",    "fact",   "measured", "meets", "by",
    "up_to",     "at_counts", "share", "over",    "shown",  "wants",    "say",   "warn",
    "found",     "unit",      "also",  "instead", "choose", "open",     "mend",  "caution",
    "asks_only", "advice",    "cause", "reads",   NULL};

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
    declare_rule_reads(lua, rule, reading.levers);
    check_switch(lua, &reading, rule);
    declare_add_rule(lua, rule);
    return 0;
}

const struct declaration DECLARE_ROWS[] = {
    {"demand", ROW_KEYS, finish_demand, false},
    {NULL, NULL, NULL, false},
};
