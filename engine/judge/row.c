#include "judge/row.h"

#include "base/text.h"
#include "judge/judgement.h"
#include "judge/repeat.h"
#include "judge/row_compare.h"
#include "judge/row_demand.h"
#include "judge/row_limit.h"

static const char *joined(struct judging *judging, const char *before, const char *more)
{
    return before == NULL ? more : arena_format(judging->arena, "%s %s", before, more);
}

/* A sentence written out, or worked out. False when a function did not come to its end. */
static bool add_sentence(struct call *call, const char *text, int function, const char **to,
                         enum sandbox_stop *stop)
{
    struct call saying = {.text = text};
    if (function != RULE_NO_FUNCTION && !repeat_run(call, function, call_for_words, &saying, stop))
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
    struct judgement *judgement = row_compare(call, row, before, stop, why);
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
    /* The last of a choice is written without a `when`; where it has one, a job may come past
     * all. */
    *why = "none of what choose lists holds";
    return NULL;
}

/* The row lacks a fact of which something is demanded: is it all that the row demands? Not
 * where what is compared as well may demand another thing. */
static void demand_of_all(struct call *call, const struct row *row)
{
    struct record *record = &call->judging->record;
    /* Looked at as if the fact were there: each part from the record as it was. */
    const struct record before = *record;
    struct judgement *demand = before.demand;
    for (size_t i = 0; demand != NULL && i < row->also_count; i++) {
        enum sandbox_stop stop = SANDBOX_DONE;
        const char *why = NULL;
        record->missing = NULL;
        record->demand = NULL;
        const enum holds holds = part_holds(call, &row->also[i].when, &stop, &why);
        const bool judged = holds == HOLDS
                            && judge_all(call, &row->also[i], NULL, &stop, &why) != NULL;
        if (holds != HOLDS_NOT && !judged)
            demand = row_demand_both(demand, record->demand,
                                     text_same(record->missing_pointer, before.missing_pointer));
        *record = before;
    }
    record->demand = demand;
}

/* Also what must be met besides: each is looked at, and all must be met. */
static struct judgement *judge_also(struct call *call, const struct row *row,
                                    const struct judgement *before, enum sandbox_stop *stop,
                                    const char **why)
{
    struct judgement *judgement = judge_chosen(call, row, before, stop, why);
    if (judgement == NULL)
        demand_of_all(call, row);
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
    /* What is met is not held against the others: they would only ask for more facts. */
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

/* What would leave it open looks at the very fact that the row is about, and that is lacking:
 * what the row demands of it can be told all the same. */
static void demand_behind_open(struct call *call, const struct row *row)
{
    struct record *record = &call->judging->record;
    const struct record before = *record;
    enum sandbox_stop stop = SANDBOX_DONE;
    const char *why = NULL;
    if (!row_demand_wanted(call->judging) || before.missing == NULL)
        return;
    record->missing = NULL;
    judge_all(call, row, NULL, &stop, &why);
    const bool same = record->missing == before.missing
                      && text_same(record->missing_pointer, before.missing_pointer);
    const struct record behind = *record;
    *record = before;
    if (!same)
        return;
    record->demand = behind.demand;
    record->figures = behind.figures;
    record->figure_count = behind.figure_count;
    record->figure_capacity = behind.figure_capacity;
}

enum row_end row_judge(struct call *call, enum sandbox_stop *stop, const char **why)
{
    const struct row *row = call->rule->row;
    const enum row_end applies = row_applies(call, &row->when, stop, why);
    if (applies != ROW_JUDGED)
        return applies;
    const bool open = is_open(call, row, stop, why);
    struct judgement *judgement = open ? NULL : judge_all(call, row, NULL, stop, why);
    if (open)
        demand_behind_open(call, row);
    /* Without a figure there is nothing to cite, and nobody could change it. */
    if (judgement != NULL && call->judging->record.figure_count == 0) {
        *why = "compared without asking for a figure";
        return ROW_STOPPED;
    }
    /* Lacking a fact is no fault of the row; all else that ends it early is. */
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
           && !row_limit_is_own(row) && row->choose_count == 0;
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
