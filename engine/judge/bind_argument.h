/* bind_argument.h - what the binders of the trade's arithmetic share: reading named
 * arguments, giving a number back, and writing numbers into the arithmetic.
 *
 * For bind_trade*.c only. All but in_unit and as_factor raise Lua errors: they are for
 * functions that rules call.
 */
#ifndef EAVEMARK_JUDGE_BIND_ARGUMENT_H
#define EAVEMARK_JUDGE_BIND_ARGUMENT_H

#include <lua.h>

#include <stdbool.h>

/* The named argument of the table at 1, which must be a number. */
double argument(lua_State *lua, const char *key);

/* The same, or `otherwise` when it is not given. */
double argument_or(lua_State *lua, const char *key, double otherwise);

/* Is there such an argument, of any kind? */
bool argument_given(lua_State *lua, const char *key);

/* Pushes the result; raises when it is not finite, so that none reaches a finding. */
int give_number(lua_State *lua, double value);

/* A number as the arithmetic shows it, passed by value so that several fit in one call. */
struct written {
    char text[96];
};
struct written in_unit(double value, const char *unit); /* "12 in"; NULL: no unit */
struct written as_factor(double value); /* four decimals, as tables of factors have them */

#endif
