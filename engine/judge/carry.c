#include "judge/carry.h"

#include "judge/carried.h"
#include "judge/written.h"

#include <string.h>

static bool more_lists(struct survey *survey, size_t least)
{
    const size_t count = least < 1024 ? 1024 : 2 * least;
    struct carried_list *lists = arena_array(&survey->arena, count, sizeof(*lists));
    if (lists == NULL)
        return false;
    if (survey->list_count > 0)
        memcpy(lists, survey->lists, survey->list_count * sizeof(*lists));
    survey->lists = lists;
    survey->list_count = count;
    return true;
}

static bool more_items(struct survey *survey, struct carried_list *list, size_t least)
{
    const size_t count = least == 1 ? 1 : 2 * least;
    struct carried **items = arena_array(&survey->arena, count, sizeof(struct carried *));
    if (items == NULL)
        return false;
    if (list->count > 0)
        memcpy(items, list->items, list->count * sizeof(struct carried *));
    list->items = items;
    list->count = count;
    return true;
}

/* NULL when out of memory. */
static struct carried *carried_at(struct survey *survey, size_t number, size_t visit)
{
    if (number >= survey->list_count && !more_lists(survey, number + 1))
        return NULL;
    struct carried_list *list = &survey->lists[number];
    if (visit >= list->count && !more_items(survey, list, visit + 1))
        return NULL;
    if (list->items[visit] == NULL) {
        list->items[visit] = arena_alloc(&survey->arena, sizeof(struct carried));
        if (list->items[visit] != NULL)
            list->items[visit]->survey = survey;
    }
    return list->items[visit];
}

static bool stands(const struct judging *judging, const struct carried *carried,
                   const struct spot *item)
{
    const size_t round = carried->round;
    if (round == 0 || carried->item != item || carried->stage != recall_stage(judging)
        || (carried->asks && carried->survey->ask_changed > round))
        return false;
    for (size_t i = 0; i < carried->count; i++)
        if (carried->rests_on[i]->seen.changed > round)
            return false;
    return true;
}

/* What is judged from here on is noted. */
static void note(struct judging *judging, struct carried *carried, const struct spot *item)
{
    struct trail *trail = &judging->trail;
    carried->round = carried->stood = 0;
    carried->item = item;
    judging->carried = carried;
    trail->touch = ++judging->survey->touch;
    trail->touched_count = 0;
    trail->slipped = trail->unfit = false;
}

static bool has_room(struct survey *survey, struct carried *carried, size_t count)
{
    if (count > carried->room) {
        carried->rests_on = arena_array(&survey->arena, 2 * count, sizeof(struct spot *));
        carried->room = carried->rests_on == NULL ? 0 : 2 * count;
        carried->told = 0;
    }
    return count <= carried->room;
}

/* Mostly it is the place that was there before. */
static void rest_on(struct carried *carried, struct spot *spot)
{
    const size_t number = carried->count++;
    if (carried->rests_on[number] == spot)
        return;
    carried->rests_on[number] = spot;
    if (carried->told > number)
        carried->told = number;
}

static void is_kept(const struct judging *judging, struct carried *carried)
{
    carried->stage = recall_stage(judging);
    carried->charge = judging->cost;
    carried->round = carried->stood = judging->survey->round;
}

/* False when it rests on more than places of the job, or there is no memory. */
static bool keep(struct judging *judging, struct carried *carried)
{
    const struct trail *trail = &judging->trail;
    if (trail->slipped || trail->unfit || judging->arena->failed || judging->survey->arena.failed
        || !has_room(judging->survey, carried, trail->touched_count))
        return false;
    carried->count = 0;
    for (size_t i = 0; i < trail->touched_count; i++)
        rest_on(carried, trail->touched[i]);
    is_kept(judging, carried);
    return true;
}

/* What is being judged, which ends here. */
static struct carried *noted(struct judging *judging)
{
    struct carried *carried = judging->carried;
    judging->carried = NULL;
    judging->trail.touch = 0;
    return carried;
}

void carry_begin(struct judging *judging)
{
    struct survey *survey = judging->book->survey;
    /* The memory notes what is asked. */
    if (judging->probe != NULL || judging->wanted < WANTED_APPLYING || judging->book->memory == NULL
        || !survey_go_over(survey, judging->job))
        return;
    judging->survey = survey;
    judging->spots = &survey->arena;
    judging->root = survey->root;
    judging->records = survey->records;
}

void carry_end(struct judging *judging)
{
    struct survey *survey = judging->survey;
    if (survey == NULL)
        return;
    survey->records = judging->records;
    /* Places that could not be made were read as if they were not there. */
    judging->arena->failed = judging->arena->failed || survey->arena.failed;
}

/* Findings -------------------------------------------------------------------------------- */

static void borrow(struct result *result, struct survey *survey)
{
    if (result->borrowers == NULL)
        survey->borrowers++;
    result->borrowers = &survey->borrowers;
}

void carry_take(struct run *run, const struct carried *carried)
{
    struct judging *judging = &run->judging;
    if (run_only_counts(run, carried->outcome)) {
        run_count(run, 1);
        return;
    }
    struct finding *finding = run_brief_finding(run);
    if (finding == NULL)
        return;
    finding->outcome = carried->outcome;
    finding->met = carried->met;
    finding->why = carried->why;
    finding->measured = carried->measured;
    if (!judging_tells(judging, carried->outcome))
        return;
    borrow(run->result, judging->survey);
    finding->json = carried->json;
    finding->json_length = carried->json_length;
}

/* What a finding is of. */
static struct spot *spot_of(const struct judging *judging, const struct walk *walk,
                            const struct node *missing)
{
    return missing != NULL    ? missing->spot
           : walk->depth == 0 ? judging->root
                              : walk->items[walk->depth - 1].spot;
}

bool carry_finding(struct run *run, const struct walk *walk, const struct node *missing)
{
    struct judging *judging = &run->judging;
    judging->carried = NULL;
    if (!carries(judging))
        return false;
    struct carried *carried = carried_at(judging->survey, run->rule_number, walk->visited - 1);
    judging->carried = carried;
    if (carried == NULL || !stands(judging, carried, spot_of(judging, walk, missing))
        || !carried_is_written(judging, carried) || !recall_charge(judging, &carried->charge)) {
        judging->survey->worth.fell++;
        return false;
    }
    judging->survey->worth.stood++;
    carried->stood = judging->survey->round;
    carry_take(run, carried);
    return true;
}

void carry_note_finding(struct run *run, const struct walk *walk, const struct node *missing)
{
    struct judging *judging = &run->judging;
    struct spot *of = spot_of(judging, walk, missing);
    if (judging->carried == NULL)
        return;
    note(judging, judging->carried, of);
    if (missing != NULL)
        judging->cost = (struct charge){.steps = 0};
    /* By name, it says where it is. */
    trail_touch(&judging->trail, of);
    for (size_t i = 0; missing == NULL && i < walk->depth; i++)
        trail_touch(&judging->trail, walk->items[i].spot);
}

static void keep_outcome(struct carried *carried, enum outcome outcome, enum met met, unsigned why,
                         bool measured)
{
    carried->asks = outcome == OUTCOME_OPEN;
    carried->outcome = outcome;
    carried->met = met;
    carried->why = why;
    carried->measured = measured;
    carried->json_length = 0; /* what was written before says something else */
}

void carry_keep_finding(struct run *run, struct finding *finding)
{
    struct judging *judging = &run->judging;
    struct carried *carried = noted(judging);
    if (carried == NULL || finding->outcome == OUTCOME_BROKEN || !keep(judging, carried))
        return;
    keep_outcome(carried, finding->outcome, finding->met, finding->why, finding->measured);
    finding->carried = carried;
    finding->carried_round = carried->round;
}

/* The places that what was recalled rests on, in the order in which they were asked: a value
 * or a count is of a place that was come to before. False when it rests on more. */
static bool rest_on_trail(const struct trail *trail, struct carried *carried)
{
    for (size_t i = 0; i < trail->count; i++) {
        const struct step *step = trail->asked[i];
        struct spot *to = trail->known[trail->start + i];
        if (step->kind == STEP_VALUE || step->kind == STEP_COUNT)
            continue;
        /* A reference hangs on the names of a list. */
        if (step->kind == STEP_FOLLOW && to == NULL) {
            if (trail->known[step->from]->json != NULL)
                return false;
            continue;
        }
        if (step->kind == STEP_FOLLOW)
            rest_on(carried, to->parent);
        rest_on(carried, to);
    }
    return true;
}

static void keep_recalled(struct judging *judging, const struct walk *walk, struct carried *carried)
{
    const struct trail *trail = &judging->trail;
    struct survey *survey = judging->survey;
    carried->round = carried->stood = carried->count = 0;
    carried->item = spot_of(judging, walk, NULL);
    if (!has_room(survey, carried, walk->depth + 2 * trail->count))
        return;
    /* By name, it says where it is. */
    for (size_t i = 0; i < walk->depth; i++)
        rest_on(carried, walk->items[i].spot);
    if (rest_on_trail(trail, carried))
        is_kept(judging, carried);
}

bool carry_recalled(struct run *run, const struct walk *walk, const struct kept_finding *kept)
{
    struct judging *judging = &run->judging;
    struct carried *carried = judging->carried;
    if (carried == NULL)
        return false;
    keep_recalled(judging, walk, carried);
    keep_outcome(carried, kept->outcome, kept->met, kept->why, kept->measured);
    if (judging_tells(judging, carried->outcome)) {
        judging->trail.unfit = false;
        return false;
    }
    judging->carried = NULL;
    carry_take(run, carried);
    return true;
}

void carry_keep_told(struct run *run, struct finding *finding)
{
    struct judging *judging = &run->judging;
    struct carried *carried = noted(judging);
    if (carried == NULL)
        return;
    if (judging->trail.unfit || judging->arena->failed)
        carried->round = carried->stood = 0;
    finding->carried = carried;
    finding->carried_round = carried->round;
}

/* A result may be asked for after other jobs: what some other borrows is not written over. */
static bool is_borrowed(const struct survey *survey, const struct result *by_other_than)
{
    return survey->borrowers > (by_other_than->borrowers == NULL ? 0 : 1);
}

void carry_written(const struct result *result, const struct finding *finding, const char *json,
                   size_t length)
{
    struct carried *carried = finding->carried;
    /* It may be another's by now. */
    if (carried == NULL || carried->round == 0 || carried->round != finding->carried_round
        || carried->survey->closed)
        return;
    if (length > carried->json_room || is_borrowed(carried->survey, result)) {
        const size_t room = length + length / 4;
        carried->json = arena_room(&carried->survey->arena, room, 1);
        carried->json_room = carried->json == NULL ? 0 : room;
    }
    if (length > carried->json_room)
        return;
    memcpy(carried->json, json, length);
    carried->json_length = length;
}

/* Calls ----------------------------------------------------------------------------------- */

bool carry_call(struct judging *judging, struct call *call, size_t visit, enum sandbox_stop *stop)
{
    judging->carried = NULL;
    if (!carries(judging))
        return false;
    const struct spot *item = call->depth == 0 ? judging->survey->root
                                               : call->items[call->depth - 1].spot;
    struct carried *carried = carried_at(
        judging->survey, rulebook_function_number(judging->book, call->function), visit);
    if (carried == NULL)
        return false;
    if (stands(judging, carried, item) && recall_charge(judging, &carried->charge)) {
        carried->stood = judging->survey->round;
        *stop = carried->stop;
        call->present = carried->stop == SANDBOX_DONE ? carried->present : call->present;
        return true;
    }
    note(judging, carried, item);
    return false;
}

void carry_keep_call(struct judging *judging, const struct call *call, enum sandbox_stop stop)
{
    struct carried *carried = noted(judging);
    if (carried == NULL || call->text != NULL || (stop != SANDBOX_DONE && stop != SANDBOX_SIGNAL)
        || !keep(judging, carried))
        return;
    carried->asks = false;
    carried->stop = stop;
    carried->present = call->present;
}
