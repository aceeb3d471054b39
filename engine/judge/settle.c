#include "judge/settle.h"

#include "judge/carried.h"

struct whole {
    size_t round;  /* in which it was settled */
    size_t visits; /* it took */
    unsigned stage;
    bool asks;            /* one of its things does: see survey.ask_changed */
    struct charge charge; /* of all */
    bool taken;           /* the last time it was settled, it was of use */
};

size_t settle_count(const struct rulebook *book)
{
    size_t count = book->rule_count;
    for (const struct impossible *c = book->impossibles; c != NULL; c = c->next)
        count++;
    return count;
}

/* The survey's, made for the first to be settled; NULL when out of memory. */
static struct whole *whole_of(struct survey *survey, size_t number)
{
    if (survey->wholes == NULL)
        survey->wholes = arena_array(&survey->arena, survey->whole_count, sizeof(struct whole));
    return survey->wholes == NULL ? NULL : &survey->wholes[number];
}

void settle_begin(struct judging *judging, struct walk *walk, size_t number)
{
    walk->settles = carries(judging);
    walk->whole = number;
}

static bool tell_places(struct survey *survey, struct carried *carried, size_t number)
{
    for (; carried->told < carried->count; carried->told++)
        if (!survey_rest_on(survey, carried->rests_on[carried->told], number))
            return false;
    return true;
}

/* Where hardly a job leaves it alone it is not worth settling: then what it came to has to have
 * stood for a job already. */
static bool is_worth_it(const struct survey *survey, const struct carried *carried,
                        const struct whole *before)
{
    return before->taken || carried->round < survey->round;
}

static bool add_all(struct survey *survey, const struct walk *walk, size_t list, size_t missing,
                    const struct whole *before, struct whole *whole)
{
    const struct carried_list *things = list < survey->list_count ? &survey->lists[list] : NULL;
    size_t stood = 0;
    for (size_t i = 0; things != NULL && i < walk->visited && i < things->count; i++) {
        struct carried *carried = things->items[i];
        if (carried == NULL || carried->stood != survey->round)
            continue;
        if (!is_worth_it(survey, carried, before) || !tell_places(survey, carried, walk->whole))
            return false;
        stood++;
        whole->asks = whole->asks || carried->asks;
        whole->charge.steps += carried->charge.steps;
        whole->charge.output += carried->charge.output;
        whole->charge.output_of_rule += carried->charge.output_of_rule;
    }
    return stood + missing == walk->visited;
}

void settle(struct judging *judging, const struct walk *walk, size_t list, size_t missing)
{
    struct survey *survey = judging->survey;
    struct whole *whole = walk->settles ? whole_of(survey, walk->whole) : NULL;
    if (whole == NULL)
        return;
    struct whole now = {
        .round = survey->round, .visits = walk->visited, .stage = recall_stage(judging)};
    survey_settle(survey, walk->whole,
                  add_all(survey, walk, list, missing, whole, &now) && !survey->arena.failed);
    *whole = now;
}

/* All of it stands, and there is enough left to charge it: what it is; else NULL. */
static struct whole *standing(struct judging *judging, size_t number)
{
    const struct survey *survey = judging->survey;
    if (!carries(judging) || !survey_is_settled(survey, number) || run_spent(judging))
        return NULL;
    struct whole *whole = &survey->wholes[number];
    const bool stands = whole->stage == recall_stage(judging)
                        && (!whole->asks || survey->ask_changed <= whole->round)
                        && judging->output + whole->charge.output <= OUTPUT_MOST;
    return stands ? whole : NULL;
}

bool settle_take_rule(struct run *run)
{
    struct judging *judging = &run->judging;
    struct whole *whole = standing(judging, run->rule_number);
    if (whole == NULL)
        return false;
    struct carried *const *things = judging->survey->lists[run->rule_number].items;
    for (size_t i = 0; i < whole->visits; i++)
        if (!carried_is_written(judging, things[i]))
            return false;
    if (!recall_charge(judging, &whole->charge))
        return false;
    /* Of a rule that visits nothing it is counted that it does not apply. */
    size_t counted = whole->visits == 0;
    for (size_t i = 0; i < whole->visits; i++) {
        if (run_only_counts(run, things[i]->outcome))
            counted++;
        else
            carry_take(run, things[i]);
    }
    run_count(run, counted);
    judging->survey->worth.stood += whole->visits;
    whole->taken = true;
    return true;
}

bool settle_take_check(struct judging *judging, size_t number)
{
    struct whole *whole = standing(judging, number);
    if (whole == NULL || !recall_charge(judging, &whole->charge))
        return false;
    whole->taken = true;
    return true;
}
