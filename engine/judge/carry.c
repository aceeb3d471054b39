#include "judge/carry.h"

#include "judge/recall.h"
#include "judge/survey.h"
#include "judge/written.h"

#include <string.h>

struct carried {
    struct survey *survey;
    size_t round;            /* it was judged in; 0: nothing is kept */
    const struct spot *item; /* it is of */
    struct spot **rests_on;
    size_t count, room;
    bool asks; /* it asks for a fact that is lacking: see survey.ask_changed */
    unsigned stage;
    struct charge charge;
    enum outcome outcome;
    enum met met;
    unsigned why;
    bool measured;
    char *json;                    /* as written; */
    size_t json_length, json_room; /* 0: not yet */
    enum sandbox_stop stop;        /* of a call: how it ended, and what it said */
    bool present;
};

/* Of one rule or function, by the order in which its items are visited. */
struct carried_list {
    struct carried **items;
    size_t count;
};

/* Functions stand after the rules. */
static size_t list_of_call(const struct judging *judging, const struct call *call)
{
    return judging->book->rule_count + (size_t)call->function;
}

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
    carried->round = 0;
    carried->item = item;
    judging->carried = carried;
    trail->touch = ++judging->survey->touch;
    trail->touched_count = 0;
    trail->slipped = trail->unfit = false;
}

/* False when it rests on more than places of the job, or there is no memory. */
static bool keep(struct judging *judging, struct carried *carried)
{
    const struct trail *trail = &judging->trail;
    const size_t count = trail->touched_count;
    struct arena *arena = &judging->survey->arena;
    if (trail->slipped || trail->unfit || judging->arena->failed || arena->failed)
        return false;
    if (count > carried->room) {
        carried->rests_on = arena_room(arena, 2 * count, sizeof(struct spot *));
        carried->room = carried->rests_on == NULL ? 0 : 2 * count;
    }
    if (count > carried->room)
        return false;
    if (count > 0)
        memcpy(carried->rests_on, trail->touched, count * sizeof(struct spot *));
    carried->count = count;
    carried->stage = recall_stage(judging);
    carried->charge = judging->cost;
    carried->round = judging->survey->round;
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

/* Of some only the outcome is wanted. */
static bool wants_json(const struct judging *judging, const struct carried *carried)
{
    return judging->wanted != WANTED_OUTCOMES && carried->outcome != OUTCOME_NOT_APPLICABLE;
}

static void take_finding(struct run *run, const struct carried *carried)
{
    struct judging *judging = &run->judging;
    if (run_only_counts(run, carried->outcome)) {
        run_count(run);
        return;
    }
    struct finding *finding = run_finding(run);
    if (finding == NULL)
        return;
    finding->outcome = carried->outcome;
    finding->met = carried->met;
    finding->why = carried->why;
    finding->measured = carried->measured;
    if (!wants_json(judging, carried))
        return;
    /* The result may be asked for after other jobs. */
    finding->json = arena_copy_n(judging->arena, carried->json, carried->json_length);
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
    if (judging->survey == NULL || judging->apart)
        return false;
    struct carried *carried = carried_at(judging->survey, run->rule_number, walk->visited - 1);
    judging->carried = carried;
    if (carried == NULL || !stands(judging, carried, spot_of(judging, walk, missing))
        || (carried->json_length == 0 && wants_json(judging, carried))
        || !recall_charge(judging, &carried->charge))
        return false;
    take_finding(run, carried);
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

void carry_keep_finding(struct run *run, struct finding *finding)
{
    struct judging *judging = &run->judging;
    struct carried *carried = noted(judging);
    if (carried == NULL || finding->outcome == OUTCOME_BROKEN || !keep(judging, carried))
        return;
    carried->asks = finding->outcome == OUTCOME_OPEN;
    carried->outcome = finding->outcome;
    carried->met = finding->met;
    carried->why = finding->why;
    carried->measured = finding->measured;
    carried->json_length = 0;
    finding->carried = carried;
    finding->carried_round = carried->round;
}

void carry_written(const struct finding *finding, const char *json, size_t length)
{
    struct carried *carried = finding->carried;
    /* It may be another's by now. */
    if (carried == NULL || carried->round != finding->carried_round || carried->survey->closed)
        return;
    if (length > carried->json_room) {
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
    if (judging->survey == NULL || judging->apart)
        return false;
    const struct spot *item = call->depth == 0 ? judging->survey->root
                                               : call->items[call->depth - 1].spot;
    struct carried *carried = carried_at(judging->survey, list_of_call(judging, call), visit);
    if (carried == NULL)
        return false;
    if (stands(judging, carried, item) && recall_charge(judging, &carried->charge)) {
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
