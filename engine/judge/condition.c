#include "judge/condition.h"

#include "base/number.h"
#include "judge/repeat.h"

#include <string.h>

/* The conditions of one row being asked, for one thing. */
struct asking {
    const struct call *call;
    struct node items[FACT_DEEPEST_SCOPE]; /* the rule's, then those of WHEN_SOME */
    size_t depth;
    struct condition_told told;
};

/* Conditions nest no deeper than they were written, which declare_condition_lua.c bounds. */
static enum holds holds_now(struct asking *asking, const struct condition *condition);

static bool has_word(const char *const *words, size_t count, const char *word)
{
    for (size_t i = 0; i < count; i++)
        if (strcmp(words[i], word) == 0)
            return true;
    return false;
}

/* Of a list of choices one is enough. */
static bool shares_word(const char *const *words, size_t count, const struct value *value)
{
    if (value->kind == VALUE_TEXT)
        return has_word(words, count, value->text);
    for (size_t i = 0; i < value->set_count; i++)
        if (has_word(words, count, value->set[i]))
            return true;
    return false;
}

/* Senses that bind are looked at the way they bind; over and under leave the bound out. */
static bool is_meant(const struct figure *figure, const struct value *limit,
                     const struct value *fact)
{
    const char *unit = limit->unit;
    /* A set of words: whether it says "one of" or "among", one word in common is enough. */
    if (limit->kind == VALUE_SET)
        return shares_word(limit->set, limit->set_count, fact);
    if (figure->sense == SENSE_OVER)
        return !number_at_most(fact->number, limit->number, unit);
    if (figure->sense == SENSE_UNDER)
        return !number_at_least(fact->number, limit->number, unit);
    if (figure->sense == SENSE_AT_MOST)
        return number_at_most(fact->number, limit->number, unit);
    return number_at_least(fact->number, limit->number, unit);
}

static enum holds fact_holds(struct asking *asking, const struct condition *condition)
{
    struct judging *judging = asking->call->judging;
    struct node node;
    /* Asked only whether it is there: what it says is not looked at, and not lacking. */
    if (condition->kind == WHEN_SAID)
        return fact_known(judging, condition->fact, asking->items) ? HOLDS : HOLDS_NOT;
    /* The record then has the fact as missing. */
    if (!fact_read(judging, condition->fact, asking->items, &node))
        return HOLDS_UNKNOWN;
    const struct value value = fact_value(judging, &node);
    if (condition->kind == WHEN_MEANT) {
        const struct figure *figure = rulebook_figure(judging->book, condition->figure);
        return is_meant(figure, ask_figure(judging, figure), &value) ? HOLDS : HOLDS_NOT;
    }
    if (value.kind == VALUE_YES_NO)
        return value.yes != condition->wants_no ? HOLDS : HOLDS_NOT;
    return shares_word(condition->words, condition->word_count, &value) ? HOLDS : HOLDS_NOT;
}

/* Figures are always known: a place that lacks one was stopped before. */
static enum holds figure_holds(struct asking *asking, const struct condition *condition)
{
    const struct value *value = ask_figure_of(asking->call->judging, condition->figure);
    const bool on = condition->kind == WHEN_ASKS ? value->set_count > 0
                                                 : value->yes == (condition->kind == WHEN_ON);
    return on ? HOLDS : HOLDS_NOT;
}

/* In the order written: what follows one that does not hold is never asked for, and so
 * never lacking. */
static enum holds all_hold(struct asking *asking, const struct condition *condition)
{
    for (size_t i = 0; i < condition->part_count; i++) {
        const enum holds holds = holds_now(asking, &condition->parts[i]);
        if (holds != HOLDS)
            return holds;
    }
    return HOLDS;
}

/* Likewise; one that cannot be told stops here, though a later one might hold: what is
 * lacking is asked for. */
static enum holds one_holds(struct asking *asking, const struct condition *condition)
{
    for (size_t i = 0; i < condition->part_count; i++) {
        const enum holds holds = holds_now(asking, &condition->parts[i]);
        if (holds != HOLDS_NOT)
            return holds;
    }
    return HOLDS_NOT;
}

/* One item for which all parts hold is enough. */
static enum holds some_item_holds(struct asking *asking, const struct condition *condition)
{
    struct judging *judging = asking->call->judging;
    struct node list;
    if (!fact_read(judging, condition->fact, asking->items, &list))
        return HOLDS_UNKNOWN;
    const size_t count = node_count(judging, &list);
    for (size_t i = 0; i < count; i++) {
        /* Its facts are then found by the list's own path, as those of the rule's items are. */
        asking->items[asking->depth++] = node_item(judging, &list, i);
        const enum holds holds = all_hold(asking, condition);
        asking->depth--;
        if (holds != HOLDS_NOT)
            return holds;
    }
    return HOLDS_NOT;
}

static enum holds function_holds(struct asking *asking, const struct condition *condition)
{
    struct call call = {.judging = asking->call->judging,
                        .rule = asking->call->rule,
                        .items = asking->call->items,
                        .depth = asking->call->depth,
                        .function = condition->function};
    asking->told.stop = repeat_enter(call.judging, call_for_condition, &call);
    if (asking->told.stop == SANDBOX_SIGNAL)
        return HOLDS_UNKNOWN;
    if (asking->told.stop != SANDBOX_DONE)
        return HOLDS_STOPPED;
    /* Why not is told; why so nobody asks. */
    if (!call.applies)
        asking->told.reason = call.reason;
    return call.applies ? HOLDS : HOLDS_NOT;
}

static enum holds kind_holds(struct asking *asking, const struct condition *condition)
{
    switch (condition->kind) {
    case WHEN_ON:
    case WHEN_OFF:
    case WHEN_ASKS:
        return figure_holds(asking, condition);
    case WHEN_IS:
    case WHEN_MEANT:
    case WHEN_SAID:
        return fact_holds(asking, condition);
    case WHEN_SOME:
        return some_item_holds(asking, condition);
    case WHEN_ALL:
        return all_hold(asking, condition);
    case WHEN_EITHER:
        return one_holds(asking, condition);
    case WHEN_NO: {
        const enum holds holds = holds_now(asking, condition->parts);
        /* What is unknown stays so. */
        return holds == HOLDS ? HOLDS_NOT : holds == HOLDS_NOT ? HOLDS : holds;
    }
    case WHEN_INSPECTED:
        return asking->call->judging->inspecting ? HOLDS : HOLDS_NOT;
    case WHEN_FUNCTION:
        return function_holds(asking, condition);
    }
    return HOLDS_STOPPED;
}

static bool needs_figure(const struct condition *condition)
{
    return condition->kind == WHEN_ON || condition->kind == WHEN_OFF || condition->kind == WHEN_ASKS
           || condition->kind == WHEN_MEANT;
}

/* What a condition says goes before what its parts say. */
static enum holds holds_now(struct asking *asking, const struct condition *condition)
{
    if (needs_figure(condition) && condition->figure == NULL) {
        asking->told.lacks_figure = true;
        return HOLDS_STOPPED;
    }
    /* The outermost that says `otherwise` has the last word: it was written for this rule, what
     * its parts say for any. */
    const enum holds holds = kind_holds(asking, condition);
    if (holds == HOLDS_NOT && condition->otherwise != NULL)
        asking->told.reason = condition->otherwise;
    return holds;
}

void condition_each(const struct condition *when,
                    void (*visit)(void *data, const struct condition *condition), void *data)
{
    /* Depth first, in the order written, without recursion. */
    const struct condition *open[RULES_MOST]; /* far more than a row may hold: declare_row_lua.c */
    size_t count = 0;
    open[count++] = when;
    while (count > 0) {
        const struct condition *condition = open[--count];
        visit(data, condition);
        for (size_t i = condition->part_count; i-- > 0 && count < RULES_MOST;)
            open[count++] = &condition->parts[i];
    }
}

enum holds condition_holds(const struct call *call, const struct condition *condition,
                           struct condition_told *told)
{
    struct asking asking = {.call = call, .depth = call->depth, .told = {.stop = SANDBOX_DONE}};
    /* A copy: WHEN_SOME adds items of its own behind those of the rule. */
    for (size_t i = 0; i < call->depth; i++)
        asking.items[i] = call->items[i];
    const enum holds holds = holds_now(&asking, condition);
    *told = asking.told;
    return holds;
}
