/* bind_marks.h - do the unit and the verb of a comparison agree with what is compared?
 *
 * A row names its fact and figure, and is checked when it is loaded. A function holds
 * bare numbers against one another: which fact or figure one is cannot be seen from it.
 * So what a function was given is remembered, and a comparison that would disagree with
 * a fact or figure of the very number makes it doubtful. A doubtful judgement is made a
 * second time with every number that is read marked: moved by a share of its own, too
 * small to print. A compared number that carries a mark is that fact or figure and no
 * other, and the comparison is refused, with the line it stands on; a number that was
 * reckoned carries none, and is left alone. The second judgement is thrown away.
 *
 * Sets are tables, each its own, and are known without marks. Internal to the room.
 */
#ifndef EAVEMARK_JUDGE_BIND_MARKS_H
#define EAVEMARK_JUDGE_BIND_MARKS_H

#include "job/fields.h"
#include "profile/profile.h"

#include <lua.h>
#include <stdbool.h>
#include <stddef.h>

enum { GIVEN_MOST = 48, MARKS_MOST = 400 };

/* What the running function was given: of facts the last few, of sets the first. */
struct given {
    struct {
        double number;
        const struct field *field;
    } facts[GIVEN_MOST];
    struct {
        const void *table;
        const struct figure *figure;
    } sets[GIVEN_MOST];
    size_t fact_count, set_count;
    bool doubtful;
};

/* The marks handed out in a second judgement. */
struct marks {
    struct {
        double number;
        const struct field *field; /* or NULL: */
        const struct figure *figure;
    } all[MARKS_MOST];
    size_t count;
    bool refused; /* a comparison disagreed: the call ended with why */
};

/* A number of a fact, of a figure, about to be given: as it is to be given. */
double marks_give_fact(lua_State *lua, const struct field *field, double number);
double marks_give_figure(lua_State *lua, const struct figure *figure, double number);

/* The set of a figure, on top of the stack, is about to be given. */
void marks_give_set(lua_State *lua, const struct figure *figure);

/* Numbers are compared: at least, at most or equals, in the unit stated or NULL.
 * May raise. */
void marks_check(lua_State *lua, enum sense verb, double found, double limit, const char *unit);

/* The set at index is what one of, none of or all of is asked of. May raise. */
void marks_check_set(lua_State *lua, int index, enum sense verb);

#endif
