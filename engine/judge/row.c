#include "judge/row.h"

#include "base/number.h"
#include "judge/judgement.h"
#include "judge/row_limit.h"

#include <math.h>
#include <string.h>

/* The comparison --------------------------------------------------------------------- */

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

/* What decides who is meant asks for a duty where no switch does. */
static void add_meant(void *data, const struct condition *condition)
{
    struct switches *switches = data;
    if (condition->kind == WHEN_MEANT && switches->count < 8)
        switches->figures[switches->count++] = condition->figure;
}

/* Of what is compared beside others, the switch is that of the whole rule; where a
 * function asks for it, it is told from what was asked for. */
static void made_by_switches(const struct call *call, const struct row *row,
                             struct judgement *judgement)
{
    struct judging *judging = call->judging;
    struct switches switches = {.record = &judging->record};
    condition_each(&row->when, add_switch, &switches);
    if (row != call->rule->row)
        condition_each(&call->rule->row->when, add_switch, &switches);
    else if (switches.count == 0)
        condition_each(&row->when, add_meant, &switches);
    if (switches.count > 0)
        judgement_made_by(judging, judgement, switches.figures, switches.count);
    else if (row != call->rule->row && judgement != NULL)
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
    if (judgement != NULL && row->at_counts != NULL && ask_figure(judging, row->at_counts)->yes
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
    if (!call_run(call, row->found, call_for_value, &reckoning, stop))
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
static bool is_right(const struct row *row, const struct value *found, const char **why)
{
    if (row->found == RULE_NO_FUNCTION || row->found_unit == NULL
        || (found->kind == VALUE_NUMBER && isfinite(found->number)))
        return true;
    *why = "found must give a finite number";
    return false;
}

static bool may_compare(const struct value *found, const struct value *bound, const char **why)
{
    const bool words = found->kind == VALUE_TEXT || found->kind == VALUE_SET;
    if (bound->kind == VALUE_NUMBER && !isfinite(bound->number))
        *why = "limit must give a finite number";
    else if (found->kind != bound->kind && !(words && bound->kind == VALUE_SET)
             && found->kind != VALUE_NONE)
        *why = "what is found cannot be compared with what it must meet";
    return *why == NULL;
}

/* One comparison. NULL when it is open, or *stop or *why says what is wrong. */
static struct judgement *judge_comparison(struct call *call, const struct row *row,
                                          const struct judgement *before, enum sandbox_stop *stop,
                                          const char **why)
{
    struct row_limit limits[2];
    struct looked_at at = {.reckoned = false};
    size_t count = 0;
    const bool first = row_limit_is_first(row);
    if (first && (count = row_limit_find(call, row, limits, stop, why)) == 0)
        return NULL;
    if (!look(call, row, &at, stop))
        return NULL;
    if (at.reckoned && !is_right(row, &at.value, why))
        return NULL;
    if (row->shown != NULL && row_is_duty(row))
        return judge_duty(call, row, &at.value, before);
    if (!first && (count = row_limit_find(call, row, limits, stop, why)) == 0)
        return NULL;
    if (!may_compare(&at.value, row_limit_value(call->judging, &limits[0]), why))
        return NULL;
    return judge_limits(call, row, &at, limits, count);
}

/* Parts ---------------------------------------------------------------------------------- */

static const char *joined(struct judging *judging, const char *before, const char *more)
{
    return before == NULL ? more : arena_format(judging->arena, "%s %s", before, more);
}

/* A sentence written out, or worked out. False when a function did not come to its end. */
static bool add_sentence(struct call *call, const char *text, int function, const char **to,
                         enum sandbox_stop *stop)
{
    struct call saying = {.text = text};
    if (function != RULE_NO_FUNCTION && !call_run(call, function, call_for_words, &saying, stop))
        return false;
    if (saying.text != NULL)
        *to = joined(call->judging, *to, saying.text);
    return true;
}

static struct judgement *judge_all(struct call *call, const struct row *row,
                                   const struct judgement *before, enum sandbox_stop *stop,
                                   const char **why);

static struct judgement *judge_said(struct call *call, const struct row *row,
                                    const struct judgement *before, enum sandbox_stop *stop,
                                    const char **why)
{
    struct judgement *judgement = judge_comparison(call, row, before, stop, why);
    if (judgement == NULL || !add_sentence(call, row->say, row->say_function, &judgement->say, stop)
        || !add_sentence(call, row->warn, row->warn_function, &judgement->warn, stop))
        return NULL;
    return judgement;
}

/* Does a part's own `when` hold? It says nothing of whether the rule applies, and takes no
 * arithmetic away. */
static enum holds part_holds(struct call *call, const struct condition *when,
                             enum sandbox_stop *stop, const char **why)
{
    struct condition_told told;
    const struct strings work = call->judging->record.work;
    const enum holds holds = condition_holds(call, when, &told);
    call->judging->record.work = work;
    if (holds == HOLDS_STOPPED) {
        *stop = told.stop;
        *why = told.lacks_figure ? ROW_LACKS_FIGURE : NULL;
    }
    return holds;
}

/* The row itself, or the first of its choices that holds. */
static struct judgement *judge_chosen(struct call *call, const struct row *row,
                                      const struct judgement *before, enum sandbox_stop *stop,
                                      const char **why)
{
    if (row->choose_count == 0)
        return judge_said(call, row, before, stop, why);
    for (size_t i = 0; i < row->choose_count; i++) {
        const enum holds holds = part_holds(call, &row->choose[i].when, stop, why);
        if (holds == HOLDS)
            return judge_all(call, &row->choose[i], before, stop, why);
        if (holds != HOLDS_NOT)
            return NULL;
    }
    *why = "none of what choose lists holds";
    return NULL;
}

/* Also what must be met besides: each is looked at, and all must be met. */
static struct judgement *judge_also(struct call *call, const struct row *row,
                                    const struct judgement *before, enum sandbox_stop *stop,
                                    const char **why)
{
    struct judgement *judgement = judge_chosen(call, row, before, stop, why);
    for (size_t i = 0; judgement != NULL && i < row->also_count; i++) {
        const enum holds holds = part_holds(call, &row->also[i].when, stop, why);
        if (holds == HOLDS_NOT)
            continue;
        struct judgement *next = holds == HOLDS ? judge_all(call, &row->also[i], before, stop, why)
                                                : NULL;
        judgement = next == NULL ? NULL : judgement_of_both(call->judging, judgement, next);
    }
    return judgement;
}

/* All that the row compares. What is not met may be made good by what stands instead: the
 * first that is met, or else the last. */
static struct judgement *judge_all(struct call *call, const struct row *row,
                                   const struct judgement *before, enum sandbox_stop *stop,
                                   const char **why)
{
    struct judgement *judgement = judge_also(call, row, before, stop, why);
    const struct judgement *first = judgement;
    for (size_t i = 0; judgement != NULL && !judgement->met && i < row->instead_count; i++) {
        const struct row *instead = &row->instead[i];
        const enum holds holds = part_holds(call, &instead->when, stop, why);
        if (holds == HOLDS_NOT)
            continue;
        if (holds == HOLDS && instead->open != NULL)
            call->judging->record.cannot_tell = instead->open;
        judgement = holds == HOLDS && instead->open == NULL
                        ? judge_all(call, instead, first, stop, why)
                        : NULL;
    }
    return judgement;
}

enum row_end row_applies(struct call *call, const struct condition *when, enum sandbox_stop *stop,
                         const char **why)
{
    struct condition_told told;
    const enum holds holds = condition_holds(call, when, &told);
    *stop = told.stop;
    *why = told.lacks_figure ? ROW_LACKS_FIGURE : NULL;
    call->reason = told.reason;
    if (holds != HOLDS)
        return holds == HOLDS_NOT       ? ROW_NOT_APPLICABLE
               : holds == HOLDS_UNKNOWN ? ROW_OPEN
                                        : ROW_STOPPED;
    call->judging->record.work = (struct strings){0}; /* what follows shows its own */
    return ROW_JUDGED;
}

/* Is there something that leaves it open before anything is compared? */
static bool is_open(struct call *call, const struct row *row, enum sandbox_stop *stop,
                    const char **why)
{
    struct record *record = &call->judging->record;
    for (size_t i = 0; i < row->open_count; i++) {
        const struct row_open *open = &row->opens[i];
        const enum holds holds = part_holds(call, &open->when, stop, why);
        const char *says = NULL;
        if (holds == HOLDS_NOT)
            continue;
        if (holds != HOLDS || !add_sentence(call, open->says, open->says_function, &says, stop))
            return true;
        if (says == NULL)
            continue;
        record->ask_place = open->asks_place;
        record->cannot_tell = open->asks_place
                                  ? arena_format(call->judging->arena,
                                                 "What this place asks was not read: %s", says)
                                  : says;
        return true;
    }
    return false;
}

enum row_end row_judge(struct call *call, enum sandbox_stop *stop, const char **why)
{
    const struct row *row = call->rule->row;
    const enum row_end applies = row_applies(call, &row->when, stop, why);
    if (applies != ROW_JUDGED)
        return applies;
    struct judgement *judgement = is_open(call, row, stop, why)
                                      ? NULL
                                      : judge_all(call, row, NULL, stop, why);
    if (judgement == NULL)
        return *why != NULL || (*stop != SANDBOX_DONE && *stop != SANDBOX_SIGNAL) ? ROW_STOPPED
                                                                                  : ROW_OPEN;
    call->applies = true;
    call->judgement = judgement;
    return ROW_JUDGED;
}

bool row_is_duty(const struct row *row)
{
    return row->meets_count == 0 && row->by_prefix == NULL && row->which == RULE_NO_FUNCTION
           && !row_limit_is_first(row) && row->choose_count == 0;
}

void row_each_part(const struct row *row, void (*visit)(void *data, const struct row *part),
                   void *data)
{
    visit(data, row);
    for (size_t i = 0; i < row->choose_count; i++)
        row_each_part(&row->choose[i], visit, data);
    for (size_t i = 0; i < row->also_count; i++)
        row_each_part(&row->also[i], visit, data);
    for (size_t i = 0; i < row->instead_count; i++)
        row_each_part(&row->instead[i], visit, data);
}
