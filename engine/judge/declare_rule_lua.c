/* declare_rule_lua.c - rule, quantity and impossible: what is made of functions. */
#include "judge/declare_reads.h"
#include "judge/row_reads.h"

#include <lauxlib.h>

#include <stdio.h>
#include <string.h>

/* rule "topic.thing" { ... } ---------------------------------------------------- */

/* Any other key is refused with the nearest of these: a misspelled `mend` or `caution` would
 * be lost unseen. */
static const char *const RULE_KEYS[] = {"title", "stage", "per",     "when",      "applies",
                                        "judge", "mend",  "caution", "asks_only", "advice",
                                        "cause", "reads", NULL};

static void check_rule_id(lua_State *lua, const char *id)
{
    const char *dot = strchr(id, '.');
    if (dot == NULL || dot == id || dot[1] == '\0' || strlen(id) > 80)
        declare_refuse(lua, "a rule is named topic.thing");
    /* Against Lua's own length: a zero byte in the name would cut it short in C. */
    if (strspn(id, "abcdefghijklmnopqrstuvwxyz0123456789_.") != lua_rawlen(lua, lua_upvalueindex(1))
        || strchr(dot + 1, '.') != NULL)
        declare_refuse(lua, "a rule's name holds a-z, 0-9, _ and one dot");
    const struct rule *same = rulebook_rule(declaring_of(lua)->book, id);
    if (same != NULL)
        declare_refuse(lua, "is already a rule, in %s", same->file);
}

/* What every rule says, whatever it judges by. */
struct rule *declare_new_rule(lua_State *lua)
{
    struct declaring *declaring = declaring_of(lua);
    check_rule_id(lua, declare_name(lua));
    if (declaring->book->rule_count == RULES_MOST)
        luaL_error(lua, "more than %d rules", RULES_MOST);
    struct rule *rule = declare_keep(lua, 1, sizeof(*rule));
    rule->id = declare_keep_text(lua, declare_name(lua));
    rule->title = declare_need_text(lua, "title");
    rule->stage = declare_stage(lua, declare_need_text(lua, "stage"));
    rule->caution = declare_text(lua, "caution");
    rule->cause = declare_text(lua, "cause");
    rule->asks_only = declare_flag(lua, "asks_only");
    rule->advice = declare_flag(lua, "advice");
    rule->per_depth = declare_per(lua, rule->per);
    rule->applies = rule->judge = RULE_NO_FUNCTION;
    rule->mend_function = declare_function_or_text(lua, "mend", &rule->mend);
    /* Who is told that it is not met is told what to do. */
    if (rule->mend_function == RULE_NO_FUNCTION && rule->mend == NULL)
        declare_refuse(lua, "has no mend: say what would put it right");
    rule->file = declaring->file;
    rule->line = declare_line(lua);
    return rule;
}

void declare_rule_reads(lua_State *lua, struct rule *rule, const struct lever *levers)
{
    const struct reads_of of = {"rule", rule->id, rule->file, rule->line};
    struct reads *reads = declare_reads(lua, levers, of);
    row_reads_add(declaring_of(lua)->book, rule, reads);
    rule->reads = reads;
}

void declare_add_rule(lua_State *lua, struct rule *rule)
{
    if (!rulebook_add(declaring_of(lua)->book, rule))
        luaL_error(lua, "out of memory");
}

static int finish_rule(lua_State *lua)
{
    struct rule *rule = declare_new_rule(lua);
    const struct lever *levers = NULL;
    rule->when = declare_when(lua, rule, &levers);
    rule->applies = declare_function(lua, "applies");
    rule->judge = declare_function(lua, "judge");
    /* Two answers to one question: which of them went first would have to be known. */
    if (rule->when != NULL && rule->applies != RULE_NO_FUNCTION)
        return declare_refuse(lua, "says both when and applies: a function may stand among the "
                                   "conditions of when");
    if (rule->judge == RULE_NO_FUNCTION)
        return declare_refuse(lua, "has no judge function");
    /* Last, for what the conditions name is part of what it reads. */
    declare_rule_reads(lua, rule, levers);
    declare_add_rule(lua, rule);
    return 0;
}

/* quantity "..." { ... } ---------------------------------------------------------- */

static const char *const QUANTITY_KEYS[] = {"title", "per",    "applies", "amount",
                                            "order", "serves", "habit",   NULL};

/* The texts listed under `serves`, ended by NULL. */
static const char **read_serves(lua_State *lua)
{
    const int type = declare_get(lua, "serves");
    if (type != LUA_TNIL && type != LUA_TTABLE)
        declare_refuse(lua, "serves must be a list of rules");
    const size_t count = type == LUA_TTABLE ? lua_rawlen(lua, -1) : 0;
    const char **serves = declare_keep(lua, count + 1, sizeof(*serves));
    for (size_t i = 0; i < count; i++) {
        if (lua_rawgeti(lua, -1, (lua_Integer)i + 1) != LUA_TSTRING)
            declare_refuse(lua, "serves must be a list of rules");
        serves[i] = declare_keep_text(lua, lua_tostring(lua, -1));
        lua_pop(lua, 1);
    }
    lua_pop(lua, 1);
    return serves;
}

static int finish_quantity(lua_State *lua)
{
    struct declaring *reading = declaring_of(lua);
    struct quantity **at = &reading->book->quantities;
    for (; *at != NULL; at = &(*at)->next)
        /* The walk to the end finds the place for it too: the order of the files is the order on
         * paper. */
        if (strcmp((*at)->name, declare_name(lua)) == 0)
            return declare_refuse(lua, "is already a quantity, in %s", (*at)->file);
    declare_count(lua, &reading->quantities, QUANTITIES_MOST, "quantities");
    struct quantity *quantity = declare_keep(lua, 1, sizeof(*quantity));
    quantity->name = declare_keep_text(lua, declare_name(lua));
    quantity->title = declare_need_text(lua, "title");
    quantity->heading = declare_text(lua, "order");
    quantity->by_habit = declare_text(lua, "habit");
    quantity->serves = read_serves(lua);
    quantity->per_depth = declare_per(lua, quantity->per);
    quantity->applies = declare_function(lua, "applies");
    quantity->amount = declare_function(lua, "amount");
    if (quantity->amount == RULE_NO_FUNCTION)
        return declare_refuse(lua, "has no amount function");
    quantity->file = reading->file;
    quantity->line = declare_line(lua);
    quantity->reads = declare_reads_of_quantity(
        lua, (struct reads_of){"quantity", quantity->name, quantity->file, quantity->line});
    *at = quantity;
    return 0;
}

/* impossible "..." { ... } -------------------------------------------------------- */

static const char *const IMPOSSIBLE_KEYS[] = {"at", "per", "when", "ask_back", NULL};

static int finish_impossible(lua_State *lua)
{
    declare_count(lua, &declaring_of(lua)->impossibles, IMPOSSIBLES_MOST, "impossible");
    struct impossible *check = declare_keep(lua, 1, sizeof(*check));
    check->name = declare_keep_text(lua, declare_name(lua));
    check->file = declaring_of(lua)->file;
    check->line = declare_line(lua);
    check->at = declare_need_text(lua, "at");
    check->asks_back = declare_flag(lua, "ask_back");
    check->per_depth = declare_per(lua, check->per);
    check->when = declare_function(lua, "when");
    if (check->when == RULE_NO_FUNCTION)
        return declare_refuse(lua, "has no when function");
    const struct rulebook *book = declaring_of(lua)->book;
    char path[256];
    snprintf(path, sizeof(path), "%s%s%s",
             check->per_depth > 0 ? check->per[check->per_depth - 1]->path : "",
             check->per_depth > 0 ? "[]." : "", check->at);
    /* Looked up now: a check that points nowhere would be found out only when it strikes. */
    if (fields_find(&book->fields, path) == NULL)
        return declare_refuse(lua, "at: there is no field \"%s\"", path);
    if (check->asks_back && fields_find(&book->fields, "as_meant[].at") == NULL)
        return declare_refuse(lua, "ask_back needs a field as_meant[].at");
    struct impossible **at = &declaring_of(lua)->book->impossibles;
    while (*at != NULL)
        at = &(*at)->next;
    *at = check;
    return 0;
}

const struct declaration DECLARE_RULES[] = {
    {"rule", RULE_KEYS, finish_rule, false},
    {"quantity", QUANTITY_KEYS, finish_quantity, false},
    {"impossible", IMPOSSIBLE_KEYS, finish_impossible, false},
    {NULL, NULL, NULL, false},
};
