/* declare_row.h - what the declaration of a row and those of its conditions share. All of
 * this may raise: only for use inside the sandbox. Internal to the judge room.
 */
#ifndef EAVEMARK_JUDGE_DECLARE_ROW_H
#define EAVEMARK_JUDGE_DECLARE_ROW_H

#include "judge/bind_declare.h"
#include "judge/row.h"

/* A demand being read. Past a switch that the place leaves off nothing is ever looked
 * at: it is then dormant, and the figures named there stand with the places that turn it on,
 * and may lack. */
struct reading_row {
    struct scope scope;
    size_t conditions;
    int depth, parts_deep;
    bool optional;              /* inside of what need not hold: either, no, some */
    const struct lever *levers; /* the switches that must be on, the last named first */
    bool lacks_switch;          /* a duty for which no condition names a figure */
};

/* NULL only in a dormant demand; refused when it is not of the kind. */
const struct figure_slot *declare_figure(lua_State *lua, const struct reading_row *reading,
                                         const char *name);
const struct figure_slot *declare_figure_of(lua_State *lua, const struct reading_row *reading,
                                            const char *name, enum value_kind kind);

/* "a number", "a set", "true or false". */
const char *declare_kind_words(enum value_kind kind);

/* The text in position `at` of the table on top of the stack. */
const char *declare_need_text_at(lua_State *lua, int at, const char *what);

/* Refused when the field never is the word. */
void declare_check_word(lua_State *lua, const struct field *field, const char *word);

bool declare_is_number(const struct field *field);

/* What one of the unit `from` is in the figure's: inches and feet change into one another
 * exactly, nothing else does; what counts things may leave its unit out. */
double declare_factor(lua_State *lua, const char *what, const char *from,
                      const struct figure_slot *figure);

/* The fact under a key of the table at index 1, or NULL. */
const struct fact *declare_fact_at(lua_State *lua, const struct scope *scope, const char *key);

/* Can the fact be held against the figure at all? What one of its unit is in the figure's. */
double declare_check_pair(lua_State *lua, const struct field *field,
                          const struct figure_slot *figure);

/* What stands under `by`, `up_to` and `meets` of the table at index 1; its fact is read. */
void declare_read_meets(lua_State *lua, const struct reading_row *reading, struct row *row);

/* The value on top of the stack: a condition, a list of them, or a function. */
void declare_read_condition(lua_State *lua, struct reading_row *reading,
                            struct condition *condition);

/* What stands under `when` of the declaration at index 1. */
void declare_read_when(lua_State *lua, struct reading_row *reading, const struct rule *rule,
                       struct condition *when);

#endif
