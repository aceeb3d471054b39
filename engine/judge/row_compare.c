#include "judge/row_compare.h"

#include "base/number.h"
#include "judge/repeat.h"
#include "judge/row_demand.h"
#include "judge/row_limit.h"

#include <math.h>
#include <string.h>

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
    const struct rulebook *book;
    const struct record *record;
    const struct figure *figures[8];
    size_t count;
};

static void add_switch(void *data, const struct condition *condition)
{
    struct switches *switches = data;
    /* Only those that were asked for: a switch behind one that did not hold switched
     * nothing. */
    if (condition->kind != WHEN_ON || switches->count == 8)
        return;
    const struct figure *figure = rulebook_figure(switches->book, condition->figure);
    if (figure == NULL || !figure->value.yes)
        return;
    for (size_t i = 0; i < switches->record->figure_count; i++)
        if (switches->record->figures[i] == figure) {
            switches->figures[switches->count++] = figure;
            return;
        }
}

/* What decides who is meant asks for a duty where no switch does. */
static void add_meant(void *data, const struct condition *condition)
{
    struct switches *switches = data;
    if (condition->kind == WHEN_MEANT && switches->count < 8)
        switches->figures[switches->count++] = rulebook_figure(switches->book, condition->figure);
}

/* Of what is compared beside others, the switch is that of the whole rule; where a
 * function asks for it, it is told from what was asked for. */
static void made_by_switches(const struct call *call, const struct row *row,
                             struct judgement *judgement)
{
    struct judging *judging = call->judging;
    struct switches switches = {.book = judging->book, .record = &judging->record};
    condition_each(&row->when, add_switch, &switches);
    /* A part has its own `when`, but the duty is due because the whole rule is. */
    if (row != call->rule->row)
        condition_each(&call->rule->row->when, add_switch, &switches);
    else if (switches.count == 0)
        condition_each(&row->when, add_meant, &switches);
    if (switches.count > 0)
        judgement_made_by(judging, judgement, switches.figures, switches.count);
    else if (judgement != NULL) /* a function looked at the switch */
        maker_find(judging, judgement);
}

/* The words of a duty, with what was looked at before in their holes. */
static const char *filled(struct judging *judging, const char *words,
                          const struct judgement *before)
{
    static const char *const HOLES[] = {"{found}", "{limit}"};
    for (size_t i = 0; before != NULL && i < 2; i++) {
        const struct value *value = i == 0 ? &before->found : &before->required;
        const char *hole = strstr(words, HOLES[i]);
        char written[96];
        if (hole == NULL || value->kind != VALUE_NUMBER)
            continue;
        number_write_unit(value->number, value->unit, written);
        words = arena_format(judging->arena, "%.*s%s%s", (int)(hole - words), words, written,
                             hole + strlen(HOLES[i]));
        if (words == NULL)
            return NULL;
    }
    return words;
}

static bool duty_done(const struct row *row, const struct value *found)
{
    /* wants_no: what must not be, "bare panel edges". */
    if (row->wants == NULL)
        return found->yes != row->wants_no;
    for (size_t i = 0; i < row->wants_count; i++)
        if (strcmp(row->wants[i], found->text) == 0)
            return true;
    return false;
}

static struct judgement *judge_duty(const struct call *call, const struct row *row,
                                    const struct value *found, const struct judgement *before)
{
    struct judgement *judgement = judgement_of_duty(call->judging, duty_done(row, found),
                                                    filled(call->judging, row->shown, before));
    made_by_switches(call, row, judgement);
    return judgement;
}

static struct judgement *judge_list(struct judging *judging, const struct row *row,
                                    const struct node *node, const struct row_limit *limit)
{
    const struct value *bound = row_limit_value(judging, limit);
    const struct value *share = row->share == NULL ? NULL : ask_figure_of(judging, row->share);
    const struct value *over = row->over == NULL ? NULL : ask_figure_of(judging, row->over);
    size_t count = 0;
    node_reads_value(judging, node);
    double *numbers = arena_array(judging->arena, (size_t)cJSON_GetArraySize(node->json) + 1,
                                  sizeof(*numbers));
    const cJSON *item = NULL;
    cJSON_ArrayForEach(item, node->json)
        if (numbers != NULL)
            numbers[count++] = item->valuedouble * row->factor;
    /* An empty list is not "all within the limit": nothing was looked at. */
    if (count == 0) {
        judging->record.cannot_tell = JUDGEMENT_NOTHING_MEASURED;
        return NULL;
    }
    struct judgement *judgement = share != NULL
                                      ? judgement_of_spread(judging, numbers, count, bound,
                                                            share->number,
                                                            over == NULL ? 0 : over->number)
                                      : judgement_of_each(judging, numbers, count, bound,
                                                          limit->sense == SENSE_AT_LEAST);
    row_limit_made(judging, row, limit, judgement);
    return judgement_held_to(judging, judgement, numbers, count);
}

/* What is looked at: a fact where it stands in the job, or what was reckoned. */
struct looked_at {
    struct node node;
    struct value value;
    bool reckoned;
};

/* Exactly as much as is free may be too much already. */
static void look_at_exactly(struct judging *judging, const struct row *row,
                            struct judgement *judgement)
{
    if (judgement != NULL && row->at_counts != NULL && ask_figure_of(judging, row->at_counts)->yes
        && number_equals(judgement->found.number, judgement->required.number,
                         judgement->required.unit))
        judgement->met = false;
}

static struct judgement *judge_against(struct judging *judging, const struct row *row,
                                       const struct looked_at *at, const struct row_limit *limit)
{
    if (!at->reckoned && at->node.field->type == FIELD_NUMBERS)
        return judge_list(judging, row, &at->node, limit);
    const struct value *bound = row_limit_value(judging, limit);
    const struct value found = in_figure_unit(judging, row, at->value, bound->unit);
    if (found.kind == VALUE_SET && found.set_count == 0
        && limit->sense != SENSE_ALL_OF) { /* of all of a set, some is then lacking */
        judging->record.cannot_tell = JUDGEMENT_NOTHING_LISTED;
        return NULL;
    }
    if (bound->kind == VALUE_SET && limit->sense == SENSE_ALL_OF)
        return judgement_of_all(judging, &found, bound, row->shown);
    struct judgement *judgement = judgement_of_values(judging, &found, limit->sense, bound);
    look_at_exactly(judging, row, judgement);
    row_limit_made(judging, row, limit, judgement);
    return judgement_held_to(judging, judgement, NULL, 0);
}

/* The fact, or what the row's function reckons in place of one. */
static bool look(struct call *call, const struct row *row, struct looked_at *at,
                 enum sandbox_stop *stop)
{
    struct judging *judging = call->judging;
    const bool measured = row->measured != NULL && judging->inspecting;
    struct call reckoning;
    at->reckoned = row->found != RULE_NO_FUNCTION && !measured;
    if (!at->reckoned) {
        if (!fact_read(judging, measured ? row->measured : row->fact, call->items, &at->node))
            return false;
        at->value = fact_value(judging, &at->node);
        return true;
    }
    if (!repeat_run(call, row->found, call_for_value, &reckoning, stop))
        return false;
    at->value = reckoning.value;
    at->value.unit = row->found_unit;
    return true;
}

/* Held against all that it must meet, of which one or two are there. */
static struct judgement *judge_limits(struct call *call, const struct row *row,
                                      const struct looked_at *at, const struct row_limit *limits,
                                      size_t count)
{
    struct judging *judging = call->judging;
    struct judgement *judgement = judge_against(judging, row, at, &limits[0]);
    if (judgement == NULL)
        return NULL;
    if (judgement->duty != NULL) { /* to have all of a set */
        row_limit_made(judging, row, &limits[0], judgement);
        made_by_switches(call, row, judgement);
    }
    if (count == 1)
        return judgement;
    struct judgement *second = judge_against(judging, row, at, &limits[1]);
    return second == NULL ? NULL : judgement_of_both(judging, judgement, second);
}

/* A function may give what its row does not say it gives. */
static bool found_is_right(const struct row *row, const struct value *found, const char **why)
{
    const bool number = found->kind == VALUE_NUMBER && isfinite(found->number);
    if (row->found_unit != NULL && !number)
        *why = "found must give a finite number";
    else if (row_is_duty(row) && found->kind != VALUE_YES_NO)
        *why = "found must give yes or no: whether the duty is done";
    return *why == NULL;
}

/* Of a limit that is no figure nobody has looked yet whether it can be met that way. */
static bool sense_fits(enum sense sense, enum value_kind found, enum value_kind limit)
{
    switch (limit) {
    case VALUE_NUMBER:
        return sense == SENSE_AT_LEAST || sense == SENSE_AT_MOST
               || (sense == SENSE_EQUALS && found == VALUE_NUMBER);
    case VALUE_SET:
        return sense == SENSE_ONE_OF || sense == SENSE_NONE_OF
               || (sense == SENSE_ALL_OF && found == VALUE_SET);
    case VALUE_TEXT:
    case VALUE_YES_NO:
        return sense == SENSE_EQUALS;
    case VALUE_NONE:
        break;
    }
    return false;
}

/* A list of measurements is no one value. */
static bool may_compare(const struct value *found, const struct row_limit *limit,
                        const struct value *bound, const char **why)
{
    const bool words = found->kind == VALUE_TEXT || found->kind == VALUE_SET;
    const bool list = found->kind == VALUE_NONE;
    if (bound->kind == VALUE_NUMBER && !isfinite(bound->number))
        *why = "limit must give a finite number";
    else if (list ? bound->kind != VALUE_NUMBER
                  : found->kind != bound->kind && !(words && bound->kind == VALUE_SET))
        *why = "what is found cannot be compared with what it must meet";
    else if (limit->figure == NULL && !sense_fits(limit->sense, found->kind, bound->kind))
        *why = "its limit cannot be met in the way that sense says";
    return *why == NULL;
}

struct judgement *row_compare(struct call *call, const struct row *row,
                              const struct judgement *before, enum sandbox_stop *stop,
                              const char **why)
{
    struct row_limit limits[2];
    struct looked_at at = {.reckoned = false};
    size_t count = 0;
    const bool first = row_limit_is_first(row);
    if (first && (count = row_limit_find(call, row, limits, stop, why)) == 0)
        return NULL;
    /* What is measured is known last: while it is not, the finding cites who asks. */
    for (size_t i = 0; row->measured != NULL && i < row->meets_count; i++)
        if (row->meets[i] != NULL)
            ask_figure_of(call->judging, row->meets[i]);
    if (!look(call, row, &at, stop)) {
        row_demand(call, row, before, limits, count);
        return NULL;
    }
    if (at.reckoned && !found_is_right(row, &at.value, why))
        return NULL;
    if (row->shown != NULL && row_is_duty(row))
        return judge_duty(call, row, &at.value, before);
    if (!first && (count = row_limit_find(call, row, limits, stop, why)) == 0)
        return NULL;
    if (!may_compare(&at.value, &limits[0], row_limit_value(call->judging, &limits[0]), why))
        return NULL;
    return judge_limits(call, row, &at, limits, count);
}
