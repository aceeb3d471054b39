#include "judge/row_silent.h"

#include "judge/row.h"

/* What the figures alone say of a condition; most leave it to the job. */
static enum holds by_figures(const struct rulebook *book, const struct condition *condition);

static enum holds turned(enum holds holds)
{
    return holds == HOLDS ? HOLDS_NOT : holds == HOLDS_NOT ? HOLDS : holds;
}

/* The parts together: one that does not hold decides for all of them; where one is enough,
 * one that holds. */
static enum holds together(const struct rulebook *book, const struct condition *condition,
                           enum holds decides)
{
    bool all_known = true;
    for (size_t i = 0; i < condition->part_count; i++) {
        const enum holds part = by_figures(book, &condition->parts[i]);
        if (part == decides)
            return decides;
        all_known = all_known && part != HOLDS_UNKNOWN;
    }
    return all_known ? turned(decides) : HOLDS_UNKNOWN;
}

/* Conditions are nested no deeper than declare_condition_lua.c lets them be. */
static enum holds by_figures(const struct rulebook *book, const struct condition *condition)
{
    const struct figure *figure = rulebook_figure(book, condition->figure);
    switch (condition->kind) {
    case WHEN_ON:
    case WHEN_OFF:
        if (figure == NULL || figure->value.kind != VALUE_YES_NO)
            return HOLDS_UNKNOWN;
        return figure->value.yes == (condition->kind == WHEN_ON) ? HOLDS : HOLDS_NOT;
    case WHEN_ASKS:
        if (figure == NULL || figure->value.kind != VALUE_SET)
            return HOLDS_UNKNOWN;
        return figure->value.set_count > 0 ? HOLDS : HOLDS_NOT;
    case WHEN_ALL:
        return together(book, condition, HOLDS_NOT);
    case WHEN_EITHER:
        return together(book, condition, HOLDS);
    case WHEN_NO:
        return condition->part_count == 1 ? turned(by_figures(book, condition->parts))
                                          : HOLDS_UNKNOWN;
    /* An item that has all the parts: none has where the figures rule one part out. */
    case WHEN_SOME:
        return together(book, condition, HOLDS_NOT) == HOLDS_NOT ? HOLDS_NOT : HOLDS_UNKNOWN;
    case WHEN_IS:
    case WHEN_MEANT:
    case WHEN_SAID:
    case WHEN_INSPECTED:
    case WHEN_FUNCTION:
        break;
    }
    return HOLDS_UNKNOWN;
}

bool row_silent(const struct rulebook *book, const struct rule *rule)
{
    const struct condition *when = rule->row != NULL ? &rule->row->when : rule->when;
    return when != NULL && by_figures(book, when) == HOLDS_NOT;
}
