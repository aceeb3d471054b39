#include "judge/bind_marks.h"

#include "base/number.h"
#include "base/text.h"
#include "judge/fact.h"
#include "judge/judging.h"

#include <lauxlib.h>

#include <math.h>
#include <stdio.h>
#include <string.h>

/* Marking ------------------------------------------------------------------------------ */

/* A share of the number below a ten-millionth, each mark its own and none the sum of
 * two others: multiples of an irrational, of which only the fraction counts. */
static double marked(double number, size_t index)
{
    /* The golden ratio less one: its multiples keep farthest from one another. */
    const double part = fmod((double)(index + 1) * 0.6180339887498949, 1.0);
    /* At least 2^-25 of the number: far above rounding, far below what any comparison tells
     * apart. */
    const double share = ldexp(0.25 + part / 2, -23);
    /* Zero has no share: it is given the mark itself. */
    return number == 0 ? share : number * (1 + share);
}

/* The same fact read again is given the same. Past the last mark a number is given as
 * it is, and cannot be told. */
static double give_marked(struct marks *marks, const struct field *field,
                          const struct figure *figure, double number)
{
    for (size_t i = 0; i < marks->count; i++)
        if (marks->all[i].field == field && marks->all[i].figure == figure
            && marks->all[i].number == marked(number, i))
            return marks->all[i].number;
    if (marks->count == MARKS_MOST)
        return number;
    const size_t index = marks->count++;
    marks->all[index].field = field;
    marks->all[index].figure = figure;
    marks->all[index].number = marked(number, index);
    return marks->all[index].number;
}

double marks_give_fact(lua_State *lua, const struct field *field, double number)
{
    struct judging *judging = judging_of(lua);
    struct given *given = &judging->given;
    if (judging->marks != NULL)
        return give_marked(judging->marks, field, NULL, number);
    /* The last GIVEN_MOST of them: comparisons mostly follow right on what was read. */
    const size_t at = given->fact_count++ % GIVEN_MOST;
    given->facts[at].number = number;
    given->facts[at].field = field;
    return number;
}

double marks_give_figure(lua_State *lua, const struct figure *figure, double number)
{
    struct judging *judging = judging_of(lua);
    return judging->marks == NULL ? number : give_marked(judging->marks, NULL, figure, number);
}

/* Sets are told by the table's address, which the second argument of the comparison still
 * has. Past the last entry none is told. */
void marks_give_set(lua_State *lua, const struct figure *figure)
{
    struct given *given = &judging_of(lua)->given;
    if (given->set_count == GIVEN_MOST)
        return;
    given->sets[given->set_count].table = lua_topointer(lua, -1);
    given->sets[given->set_count++].figure = figure;
}

/* Agreeing ------------------------------------------------------------------------------- */

enum { WHY_BYTES = 400 };

static const char *or_none(const char *unit)
{
    return unit == NULL ? "no unit" : unit;
}

/* A count needs no unit. */
static bool fact_agrees(const struct field *field, const char *unit, char *why)
{
    const char *own = fact_unit(field);
    if (text_same(own, unit) || (own == NULL && number_decimals(unit) == 0))
        return true;
    snprintf(why, WHY_BYTES, "%s is in %s, and is compared in %s", field->path, or_none(own),
             or_none(unit));
    return false;
}

static bool figure_agrees(const struct figure *figure, const char *unit, char *why)
{
    if (text_same(figure->value.unit, unit))
        return true;
    snprintf(why, WHY_BYTES, "figure \"%s\" is in %s, and is compared in %s", figure->name,
             or_none(figure->value.unit), or_none(unit));
    return false;
}

/* A figure that decides who is meant (from, over, under) binds from neither side. */
static bool verb_agrees(const struct figure *figure, enum sense verb, char *why)
{
    if (!sense_binds(figure->sense) || figure->sense == verb)
        return true;
    snprintf(why, WHY_BYTES, "figure \"%s\" is %s, and is compared by %s", figure->name,
             sense_word(figure->sense), verb == SENSE_ALL_OF ? "has_all" : sense_word(verb));
    return false;
}

/* The first judgement --------------------------------------------------------------------- */

/* Does something that was given have this very number in another unit? That may be
 * chance: a number of the same size, reckoned from something else. It is doubt only. */
static bool number_doubtful(const struct judging *judging, double number, const char *unit)
{
    char why[WHY_BYTES];
    const struct given *given = &judging->given;
    for (size_t i = 0; i < given->fact_count && i < GIVEN_MOST; i++)
        if (given->facts[i].number == number && !fact_agrees(given->facts[i].field, unit, why))
            return true;
    for (size_t i = 0; i < judging->record.figure_count; i++) {
        const struct figure *figure = judging->record.figures[i];
        if (figure->value.kind == VALUE_NUMBER && figure->value.number == number
            && !figure_agrees(figure, unit, why))
            return true;
    }
    return false;
}

static bool verb_doubtful(const struct judging *judging, enum sense verb, double limit)
{
    char why[WHY_BYTES];
    for (size_t i = 0; i < judging->record.figure_count; i++) {
        const struct figure *figure = judging->record.figures[i];
        if (figure->value.kind == VALUE_NUMBER && figure->value.number == limit
            && !verb_agrees(figure, verb, why))
            return true;
    }
    return false;
}

/* The second ------------------------------------------------------------------------------ */

/* MARKS_MOST when the number carries none. */
static size_t mark_of(const struct marks *marks, double number)
{
    size_t i = 0;
    while (i < marks->count && marks->all[i].number != number)
        i++;
    return i < marks->count ? i : MARKS_MOST;
}

struct text_of_why {
    char text[3 * WHY_BYTES];
};

static void add_why(struct text_of_why *out, const char *why)
{
    const size_t length = strlen(out->text);
    snprintf(out->text + length, sizeof(out->text) - length, "%s%s", length == 0 ? "" : "; ", why);
}

static void check_side(const struct marks *marks, size_t mark, const char *unit,
                       struct text_of_why *out)
{
    char why[WHY_BYTES];
    if (mark == MARKS_MOST)
        return;
    const struct field *field = marks->all[mark].field;
    if (field != NULL ? !fact_agrees(field, unit, why)
                      : !figure_agrees(marks->all[mark].figure, unit, why))
        add_why(out, why);
}

static void check_marked(lua_State *lua, struct marks *marks, enum sense verb, double found,
                         double limit, const char *unit)
{
    struct text_of_why out = {""};
    char why[WHY_BYTES];
    const size_t limit_mark = mark_of(marks, limit);
    check_side(marks, mark_of(marks, found), unit, &out);
    check_side(marks, limit_mark, unit, &out);
    if (limit_mark != MARKS_MOST && marks->all[limit_mark].figure != NULL
        && !verb_agrees(marks->all[limit_mark].figure, verb, why))
        add_why(&out, why);
    if (out.text[0] == '\0')
        return;
    /* Tells this error from any other that judging twice may raise. */
    marks->refused = true;
    luaL_error(lua, "%s", out.text);
}

void marks_check(lua_State *lua, enum sense verb, double found, double limit, const char *unit)
{
    struct judging *judging = judging_of(lua);
    if (judging->marks != NULL)
        check_marked(lua, judging->marks, verb, found, limit, unit);
    else if (!judging->given.doubtful)
        judging->given.doubtful = number_doubtful(judging, found, unit)
                                  || number_doubtful(judging, limit, unit)
                                  || verb_doubtful(judging, verb, limit);
}

/* Addresses tell for certain: no second judgement is needed. */
void marks_check_set(lua_State *lua, int index, enum sense verb)
{
    char why[WHY_BYTES];
    const struct given *given = &judging_of(lua)->given;
    const void *table = lua_topointer(lua, index);
    for (size_t i = 0; i < given->set_count; i++)
        if (given->sets[i].table == table && !verb_agrees(given->sets[i].figure, verb, why))
            luaL_error(lua, "%s", why);
}
