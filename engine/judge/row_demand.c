#include "judge/row_demand.h"

#include "base/text.h"
#include "judge/judge.h"

/* "photographs of the deck: each plane, deck nails": what is lacking of the set is not known,
 * so all of it is named. */
static struct judgement *demand_of_set(struct judging *judging, const struct row *row,
                                       const struct value *set)
{
    struct text duty = TEXT_EMPTY;
    text_add(&duty, row->shown == NULL ? "all of these" : row->shown);
    text_add(&duty, ": ");
    value_add(&duty, set);
    return judgement_of_duty(judging, false, text_keep(&duty, judging->arena));
}

/* The place's own figure may bind from the other side as well. */
static void add_further(struct judgement *demand)
{
    for (size_t i = 0; i < demand->maker_count; i++) {
        const struct figure *figure = demand->makers[i];
        if (figure->also.kind == VALUE_NONE
            || !profile_same_value(&figure->value, &demand->required))
            continue;
        demand->also = figure->also;
        demand->also_sense = figure->also_sense;
        return;
    }
}

static struct judgement *demand_of_limit(struct judging *judging, const struct row *row,
                                         const struct row_limit *limit)
{
    const struct value *bound = row_limit_value(judging, limit);
    if (bound->kind == VALUE_SET && limit->sense == SENSE_ALL_OF)
        return demand_of_set(judging, row, bound);
    struct judgement *demand = judgement_new(judging, limit->sense);
    if (demand == NULL)
        return NULL;
    demand->required = *bound;
    row_limit_made(judging, row, limit, demand);
    add_further(demand);
    return demand;
}

/* Two figures bound one fact from both sides; each made its part. */
static struct judgement *demand_of_limits(struct judging *judging, const struct row *row,
                                          const struct row_limit *limits, size_t count)
{
    struct judgement *demand = demand_of_limit(judging, row, &limits[0]);
    if (demand == NULL || count == 1)
        return demand;
    const struct figure *both[] = {limits[0].figure, limits[1].figure};
    demand->also = *row_limit_value(judging, &limits[1]);
    demand->also_sense = limits[1].sense;
    judgement_made_by(judging, demand, both, 2);
    return demand;
}

bool row_demand_wanted(const struct judging *judging)
{
    return judging->probe != NULL && judging->probe->demands;
}

void row_demand(struct call *call, const struct row *row, const struct judgement *before,
                const struct row_limit *limits, size_t count)
{
    struct judging *judging = call->judging;
    struct record *record = &judging->record;
    if (!row_demand_wanted(judging) || record->missing == NULL || before != NULL)
        return;
    /* What the limit reads and lacks is no part of the finding: it goes on asking for the
     * fact of the row itself. */
    const struct record lacking = *record;
    struct row_limit looked_for[2];
    struct judgement *demand = NULL;
    if (row->shown != NULL && row_is_duty(row)) {
        demand = judgement_of_duty(judging, false, row->shown);
    } else {
        /* Whatever keeps it from being told: it is then not told. */
        enum sandbox_stop stop = SANDBOX_DONE;
        const char *why = NULL;
        if (count == 0) {
            count = row_limit_find(call, row, looked_for, &stop, &why);
            limits = looked_for;
        }
        demand = count == 0 ? NULL : demand_of_limits(judging, row, limits, count);
    }
    /* The figures asked for meanwhile are cited beside the demand. */
    const struct record with = *record;
    *record = lacking;
    record->figures = with.figures;
    record->figure_count = with.figure_count;
    record->figure_capacity = with.figure_capacity;
    record->demand = demand;
}

static bool is_one_demand(const struct judgement *a, const struct judgement *b)
{
    return a->sense == b->sense && a->also_sense == b->also_sense
           && profile_same_value(&a->required, &b->required)
           && profile_same_value(&a->also, &b->also)
           && text_same(a->required.text, b->required.text)
           && text_same(a->required.unit, b->required.unit);
}

static bool are_two_bounds(const struct judgement *a, const struct judgement *b)
{
    return a->required.kind == VALUE_NUMBER && b->required.kind == VALUE_NUMBER
           && a->also.kind == VALUE_NONE && b->also.kind == VALUE_NONE && a->sense != b->sense
           && text_same(a->required.unit, b->required.unit);
}

struct judgement *row_demand_both(struct judgement *demand, const struct judgement *other,
                                  bool of_one_fact)
{
    if (other == NULL)
        return NULL;
    if (of_one_fact && are_two_bounds(demand, other)) {
        demand->also = other->required;
        demand->also_sense = other->sense;
        return demand;
    }
    if (!is_one_demand(demand, other))
        return NULL;
    if (!text_same(demand->duty, other->duty))
        demand->duty = NULL; /* the title of the rule stands for both */
    return demand;
}
