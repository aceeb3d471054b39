#include "judge/row.h"

#include "job/path.h"

#include "base/number.h"
#include "judge/judgement.h"

#include <string.h>

/* Conditions ----------------------------------------------------------------------- */

enum holds { HOLDS, HOLDS_NOT, HOLDS_UNKNOWN, HOLDS_STOPPED };

/* The conditions of one row being asked, for one thing. */
struct asking {
    struct call *call;
    struct node items[FACT_DEEPEST_SCOPE]; /* the rule's, then those of WHEN_SOME */
    size_t depth;
    const char *reason; /* of the innermost that did not hold */
    enum sandbox_stop stop;
    bool lacks_figure; /* the row names one that this place does not have */
};

/* What a row says of a figure that stands only with places that turn it on (see
 * declare_row_lua.c), where this one has been turned on without it. */
static const char LACKS_FIGURE[] = "names a figure that this place does not have";

static enum holds condition_holds(struct asking *asking, const struct condition *condition);

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
    if (condition->kind == WHEN_SAID)
        return fact_known(judging, condition->fact, asking->items) ? HOLDS : HOLDS_NOT;
    if (!fact_read(judging, condition->fact, asking->items, &node))
        return HOLDS_UNKNOWN;
    const struct value value = fact_value(judging, &node);
    if (condition->kind == WHEN_MEANT)
        return is_meant(condition->figure, ask_figure(judging, condition->figure), &value)
                   ? HOLDS
                   : HOLDS_NOT;
    if (value.kind == VALUE_YES_NO)
        return value.yes != condition->wants_no ? HOLDS : HOLDS_NOT;
    return shares_word(condition->words, condition->word_count, &value) ? HOLDS : HOLDS_NOT;
}

static enum holds figure_holds(struct asking *asking, const struct condition *condition)
{
    const struct value *value = ask_figure(asking->call->judging, condition->figure);
    const bool on = condition->kind == WHEN_ASKS ? value->set_count > 0
                                                 : value->yes == (condition->kind == WHEN_ON);
    return on ? HOLDS : HOLDS_NOT;
}

/* In the order written: what follows one that does not hold is never asked for, and so
 * never lacking. */
static enum holds all_hold(struct asking *asking, const struct condition *condition)
{
    for (size_t i = 0; i < condition->part_count; i++) {
        const enum holds holds = condition_holds(asking, &condition->parts[i]);
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
        const enum holds holds = condition_holds(asking, &condition->parts[i]);
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
        asking->items[asking->depth++] = node_item(judging, &list, i);
        const enum holds holds = all_hold(asking, condition);
        asking->depth--;
        if (holds != HOLDS_NOT)
            return holds;
    }
    return HOLDS_NOT;
}

static int call_for_condition(lua_State *lua)
{
    struct call *call = lua_touserdata(lua, 1);
    call_applies(lua, call, call->function);
    return 0;
}

static enum holds function_holds(struct asking *asking, const struct condition *condition)
{
    struct call call = {.judging = asking->call->judging,
                        .rule = asking->call->rule,
                        .items = asking->call->items,
                        .depth = asking->call->depth,
                        .function = condition->function};
    asking->stop = call_enter(call.judging, call_for_condition, &call);
    if (asking->stop == SANDBOX_SIGNAL)
        return HOLDS_UNKNOWN;
    if (asking->stop != SANDBOX_DONE)
        return HOLDS_STOPPED;
    if (!call.applies)
        asking->reason = call.reason;
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
        const enum holds holds = condition_holds(asking, condition->parts);
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

static bool condition_needs_figure(const struct condition *condition)
{
    return condition->kind == WHEN_ON || condition->kind == WHEN_OFF || condition->kind == WHEN_ASKS
           || condition->kind == WHEN_MEANT;
}

/* What a condition says goes before what its parts say. */
static enum holds condition_holds(struct asking *asking, const struct condition *condition)
{
    if (condition_needs_figure(condition) && condition->figure == NULL) {
        asking->lacks_figure = true;
        return HOLDS_STOPPED;
    }
    const enum holds holds = kind_holds(asking, condition);
    if (holds == HOLDS_NOT && condition->otherwise != NULL)
        asking->reason = condition->otherwise;
    return holds;
}

void row_each_condition(const struct condition *when,
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

/* The comparison --------------------------------------------------------------------- */

/* The figure of the fact's word, or NULL. */
static const struct figure *figure_by(struct judging *judging, const struct row *row,
                                      const char *word)
{
    const char *id = arena_format(judging->arena, "%s%s", row->by_prefix, word);
    return id == NULL ? NULL : profile_figure(judging->book->profile, id);
}

static struct value in_figure_unit(struct judging *judging, const struct row *row,
                                   struct value found, const char *unit)
{
    if (row->factor == 1 || found.kind != VALUE_NUMBER)
        return found;
    char from[96], to[96];
    number_write_unit(found.number, found.unit, from);
    found.number *= row->factor;
    found.unit = unit;
    number_write_unit(found.number, unit, to);
    /* Whoever checks by hand sees why inches stand where the job has feet. */
    record_work_line(judging, "%s = %s", from, to);
    return found;
}

/* A duty is asked for by what switched it on. */
struct switches {
    const struct record *record;
    const struct figure *figures[8];
    size_t count;
};

static void add_switch(void *data, const struct condition *condition)
{
    struct switches *switches = data;
    /* Only those that were asked for: a switch behind one that did not hold switched
     * nothing. */
    if (condition->kind != WHEN_ON || switches->count == 8 || !condition->figure->value.yes)
        return;
    for (size_t i = 0; i < switches->record->figure_count; i++)
        if (switches->record->figures[i] == condition->figure) {
            switches->figures[switches->count++] = condition->figure;
            return;
        }
}

/* Of what is compared beside others, the switch is that of the whole rule; where a
 * function asks for it, it is told from what was asked for. */
static void made_by_switches(const struct call *call, const struct row *row,
                             struct judgement *judgement)
{
    struct judging *judging = call->judging;
    struct switches switches = {.record = &judging->record};
    row_each_condition(&row->when, add_switch, &switches);
    if (row != call->rule->row)
        row_each_condition(&call->rule->row->when, add_switch, &switches);
    if (switches.count > 0)
        judgement_made_by(judging, judgement, switches.figures, switches.count);
    else if (row != call->rule->row && judgement != NULL)
        maker_find(judging, judgement);
}

static struct judgement *judge_duty(const struct call *call, const struct row *row,
                                    const struct node *node)
{
    const struct value found = fact_value(call->judging, node);
    struct judgement *judgement = judgement_of_duty(call->judging, found.yes != row->wants_no,
                                                    row->shown);
    made_by_switches(call, row, judgement);
    return judgement;
}

static struct judgement *judge_list(struct judging *judging, const struct row *row,
                                    const struct node *node, const struct figure *figure)
{
    const struct value *limit = ask_figure(judging, figure);
    const struct value *share = row->share == NULL ? NULL : ask_figure(judging, row->share);
    const struct value *over = row->over == NULL ? NULL : ask_figure(judging, row->over);
    size_t count = 0;
    node_reads_value(judging, node);
    double *numbers = arena_array(judging->arena, (size_t)cJSON_GetArraySize(node->json) + 1,
                                  sizeof(*numbers));
    const cJSON *item = NULL;
    cJSON_ArrayForEach(item, node->json)
        if (numbers != NULL)
            numbers[count++] = item->valuedouble * row->factor;
    if (count == 0) {
        judging->record.cannot_tell = JUDGEMENT_NOTHING_MEASURED;
        return NULL;
    }
    struct judgement *judgement = share != NULL
                                      ? judgement_of_spread(judging, numbers, count, limit,
                                                            share->number,
                                                            over == NULL ? 0 : over->number)
                                      : judgement_of_each(judging, numbers, count, limit,
                                                          figure->sense == SENSE_AT_LEAST);
    judgement_made_by(judging, judgement, &figure, 1);
    return judgement_held_to(judging, judgement, numbers, count);
}

/* What is looked at: a fact where it stands in the job, or a number that was reckoned. */
struct looked_at {
    struct node node;
    struct value reckoned; /* VALUE_NONE: the fact */
};

static struct judgement *judge_against(struct judging *judging, const struct row *row,
                                       const struct looked_at *at, const struct figure *figure)
{
    const bool reckoned = at->reckoned.kind != VALUE_NONE;
    if (!reckoned && at->node.field->type == FIELD_NUMBERS)
        return judge_list(judging, row, &at->node, figure);
    const struct value *limit = ask_figure(judging, figure);
    const struct value found = in_figure_unit(
        judging, row, reckoned ? at->reckoned : fact_value(judging, &at->node), limit->unit);
    if (found.kind == VALUE_SET && found.set_count == 0
        && figure->sense != SENSE_ALL_OF) { /* of all of a set, some is then lacking */
        judging->record.cannot_tell = JUDGEMENT_NOTHING_LISTED;
        return NULL;
    }
    if (limit->kind == VALUE_SET && figure->sense == SENSE_ALL_OF)
        return judgement_of_all(judging, &found, limit, row->shown);
    struct judgement *judgement = judgement_of_values(judging, &found, figure->sense, limit);
    judgement_made_by(judging, judgement, &figure, 1);
    return judgement_held_to(judging, judgement, NULL, 0);
}

/* Calls one of the row's functions. False when it did not come to its end: *stop says
 * how. */
static bool run_function(struct call *call, int function, int (*entry)(lua_State *lua),
                         struct call *out, enum sandbox_stop *stop)
{
    *out = (struct call){.judging = call->judging,
                         .rule = call->rule,
                         .items = call->items,
                         .depth = call->depth,
                         .function = function};
    *stop = call_enter(call->judging, entry, out);
    return *stop == SANDBOX_DONE;
}

/* The one that the row's function names. */
static const struct figure *figure_named(struct call *call, const struct row *row,
                                         enum sandbox_stop *stop, const char **why)
{
    struct call named;
    if (!run_function(call, row->which, call_for_name, &named, stop))
        return NULL;
    for (size_t i = 0; i < row->among_count; i++)
        if (row->among[i] != NULL && strcmp(row->among[i]->name, named.text) == 0)
            return row->among[i];
    *why = arena_format(call->judging->arena, "which gives \"%s\", which meets does not list",
                        named.text);
    return NULL;
}

/* Those met: one or two. 0 when there is none to judge by, and *why or *stop says so, or
 * the record what is lacking. */
static size_t figures_met(struct call *call, const struct row *row, const struct figure *figures[2],
                          enum sandbox_stop *stop, const char **why)
{
    struct judging *judging = call->judging;
    if (row->which != RULE_NO_FUNCTION) {
        figures[0] = figure_named(call, row, stop, why);
        return figures[0] != NULL;
    }
    if (row->by_prefix != NULL) {
        struct node word;
        if (!fact_read(judging, row->by, call->items, &word))
            return 0;
        node_reads_value(judging, &word);
        figures[0] = figure_by(judging, row, word.json->valuestring);
        if (figures[0] == NULL)
            *why = arena_format(judging->arena, "no figure is named \"%s%s\"", row->by_prefix,
                                word.json->valuestring);
        return figures[0] != NULL;
    }
    for (size_t i = 0; i < row->meets_count; i++) {
        figures[i] = row->meets[i];
        /* The place turned on a demand whose figure it does not have: an error of the
         * place. */
        if (figures[i] == NULL) {
            *why = LACKS_FIGURE;
            return 0;
        }
    }
    return row->meets_count;
}

static struct judgement *judge_figures(struct call *call, const struct row *row,
                                       const struct looked_at *at, enum sandbox_stop *stop,
                                       const char **why)
{
    struct judging *judging = call->judging;
    const struct figure *figures[2] = {NULL, NULL};
    const size_t count = figures_met(call, row, figures, stop, why);
    if (count == 0)
        return NULL;
    struct judgement *judgement = judge_against(judging, row, at, figures[0]);
    if (judgement == NULL)
        return NULL;
    judgement_made_by(judging, judgement, figures, 1);
    if (judgement->duty != NULL) /* to have all of a set */
        made_by_switches(call, row, judgement);
    if (count == 1)
        return judgement;
    struct judgement *second = judge_against(judging, row, at, figures[1]);
    if (second == NULL)
        return NULL;
    judgement_made_by(judging, second, &figures[1], 1);
    return judgement_of_both(judging, judgement, second);
}

static bool is_duty(const struct row *row)
{
    return row->meets_count == 0 && row->by_prefix == NULL && row->which == RULE_NO_FUNCTION;
}

/* One comparison. NULL as judge_figures gives it. */
static struct judgement *judge_comparison(struct call *call, const struct row *row,
                                          enum sandbox_stop *stop, const char **why)
{
    struct judging *judging = call->judging;
    struct looked_at at = {.reckoned = {.kind = VALUE_NONE}};
    const struct fact *fact = row->measured != NULL && judging->inspecting ? row->measured
                                                                           : row->fact;
    struct call reckoning;
    if (row->found != RULE_NO_FUNCTION) {
        if (!run_function(call, row->found, call_for_number, &reckoning, stop))
            return NULL;
        at.reckoned = (struct value){
            .kind = VALUE_NUMBER, .number = reckoning.number, .unit = row->found_unit};
    } else if (!fact_read(judging, fact, call->items, &at.node)) {
        return NULL;
    }
    struct judgement *judgement = is_duty(row) ? judge_duty(call, row, &at.node)
                                               : judge_figures(call, row, &at, stop, why);
    if (judgement != NULL && row->say != NULL)
        judgement->say = judgement->say == NULL
                             ? row->say
                             : arena_format(judging->arena, "%s %s", judgement->say, row->say);
    return judgement;
}

/* Does what stands under `also` hold here? Its own conditions say nothing of whether the
 * rule applies, and take no arithmetic away. */
static enum holds also_holds(struct call *call, const struct row *also, enum sandbox_stop *stop,
                             const char **why)
{
    struct asking asking = {.call = call, .depth = call->depth, .stop = SANDBOX_DONE};
    const struct strings work = call->judging->record.work;
    for (size_t i = 0; i < call->depth; i++)
        asking.items[i] = call->items[i];
    const enum holds holds = condition_holds(&asking, &also->when);
    call->judging->record.work = work;
    if (holds == HOLDS_STOPPED) {
        *stop = asking.stop;
        *why = asking.lacks_figure ? LACKS_FIGURE : NULL;
    }
    return holds;
}

/* All that the row compares: each is looked at, and all must be met. */
static struct judgement *judge_all(struct call *call, const struct row *row,
                                   enum sandbox_stop *stop, const char **why)
{
    struct judgement *judgement = judge_comparison(call, row, stop, why);
    for (size_t i = 0; judgement != NULL && i < row->also_count; i++) {
        const enum holds holds = also_holds(call, &row->also[i], stop, why);
        if (holds == HOLDS_NOT)
            continue;
        struct judgement *next = holds == HOLDS ? judge_comparison(call, &row->also[i], stop, why)
                                                : NULL;
        judgement = next == NULL ? NULL : judgement_of_both(call->judging, judgement, next);
    }
    return judgement;
}

enum row_end row_applies(struct call *call, const struct condition *when, enum sandbox_stop *stop,
                         const char **why)
{
    struct asking asking = {.call = call, .depth = call->depth, .stop = SANDBOX_DONE};
    for (size_t i = 0; i < call->depth; i++)
        asking.items[i] = call->items[i];
    const enum holds holds = condition_holds(&asking, when);
    *stop = asking.stop;
    *why = asking.lacks_figure ? LACKS_FIGURE : NULL;
    call->reason = asking.reason;
    if (holds != HOLDS)
        return holds == HOLDS_NOT       ? ROW_NOT_APPLICABLE
               : holds == HOLDS_UNKNOWN ? ROW_OPEN
                                        : ROW_STOPPED;
    call->judging->record.work = (struct strings){0}; /* what follows shows its own */
    return ROW_JUDGED;
}

enum row_end row_judge(struct call *call, enum sandbox_stop *stop, const char **why)
{
    const enum row_end applies = row_applies(call, &call->rule->row->when, stop, why);
    if (applies != ROW_JUDGED)
        return applies;
    struct judgement *judgement = judge_all(call, call->rule->row, stop, why);
    if (judgement == NULL)
        return *why != NULL || (*stop != SANDBOX_DONE && *stop != SANDBOX_SIGNAL) ? ROW_STOPPED
                                                                                  : ROW_OPEN;
    call->applies = true;
    call->judgement = judgement;
    return ROW_JUDGED;
}
