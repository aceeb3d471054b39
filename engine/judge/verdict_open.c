/* verdict_open.c - the job lacks a fact, or the rule could not tell. */
#include "job/lay_out.h"
#include "job/path.h"
#include "job/shop.h"
#include "job/stage.h"
#include "judge/verdict_parts.h"

#include <stdint.h>

/* The pointer of the missing fact, or of what a roof laid out from its footprint
 * lacks in its place: there is no plane yet that could be measured. *field is that of
 * the missing one before, of this after. */
static const char *asked_for(const struct judging *judging, const struct field **field)
{
    const struct fields *fields = &judging->book->fields;
    const char *missing = judging->record.missing_pointer;
    const char *asked = shop_asks(judging->job, missing, judging->arena);
    if (asked == NULL)
        asked = lay_out_asks(judging->job, fields, missing, judging->arena);
    if (asked == missing)
        return missing;
    const struct field *instead = asked == NULL ? NULL : path_field(fields, asked);
    if (instead == NULL)
        return missing;
    *field = instead;
    return asked;
}

/* The stage at which the fact can be known has not come. */
static bool is_known_later(const struct field *field, enum stage reached)
{
    return field->stage > reached;
}

const struct lacking *verdict_lacking(struct judging *judging)
{
    const struct record *record = &judging->record;
    const char *missing = record->missing_pointer;
    struct lacking *lacking = &judging->lacking[(uintptr_t)missing / 16 % LACKING_KEPT];
    if (lacking->missing == missing && lacking->field == record->missing)
        return lacking;
    const struct field *asked = record->missing;
    const char *lacks = asked_for(judging, &asked);
    *lacking = (struct lacking){
        missing, record->missing, lacks, asked,
        arena_format(judging->arena, "The job does not say %s: %s", lacks, asked->ask)};
    return lacking;
}

static bool is_maker(const struct judgement *demand, const struct figure *figure)
{
    for (size_t i = 0; i < demand->maker_count; i++)
        if (demand->makers[i] == figure)
            return true;
    return false;
}

/* Another's law demands nothing here, and what a figure demands besides has to be part of
 * what is told. */
static bool is_whole(const struct record *record, const struct judgement *demand)
{
    for (size_t i = 0; i < record->figure_count; i++)
        if (record->figures[i]->borrowed != NULL
            || (profile_is_held_further(record->figures[i])
                && !is_maker(demand, record->figures[i])))
            return false;
    return true;
}

void verdict_open(struct finding *finding, struct judging *judging)
{
    const struct judgement *demand = judging->record.demand;
    verdict_take_record(finding, judging);
    finding->outcome = OUTCOME_OPEN;
    verdict_asks(finding, judging);
    if (demand != NULL && !judging->record.ask_place && is_whole(&judging->record, demand))
        verdict_take_demand(finding, judging, demand);
}

void verdict_asks(struct finding *finding, struct judging *judging)
{
    const struct record *record = &judging->record;
    const struct lacking *lacking = record->missing == NULL ? NULL : verdict_lacking(judging);
    const struct field *field = lacking == NULL ? NULL : lacking->asked;
    finding->why |= record->ask_place ? WHY_PLACE : 0u;
    if (lacking != NULL)
        finding->lacks = lacking->lacks;
    finding->ask = record->ask_place ? ASK_PLACE
                   /* Not yet, rather than not at all: nobody need look for it today. */
                   : field != NULL && is_known_later(field, judging->reached) ? ASK_LATER
                                                                              : ASK_JOB;
    if (lacking != NULL)
        finding->says = lacking->says;
    /* A fact that is lacking is worth more than the rule's words: it says what to do. */
    else if (record->cannot_tell != NULL)
        finding->says = record->cannot_tell;
    else
        finding->says = "The rule could not tell.";
    if (finding->says == NULL)
        finding->says = "";
}
