#include "report/drawing_demand.h"

#include "base/number.h"

#include <math.h>
#include <string.h>

/* What one rule demands of one thing drawn. */
struct demand {
    bool judged;
    bool known; /* and it demands this number */
    double number;
    enum sense sense;
    const char *unit;
};

/* A finding about the whole house is about every item. */
static bool is_about(const struct finding *finding, const char *rule, const char *item)
{
    return strcmp(finding->rule, rule) == 0
           && (finding->item == NULL || (item != NULL && strcmp(finding->item, item) == 0));
}

/* The last finding that demands a number wins; any that was judged counts as judged. */
static void take_demand(struct demand *demand, const struct finding *finding, bool known,
                        const struct value *required, enum sense sense)
{
    demand->judged = demand->judged || finding->outcome != OUTCOME_NOT_APPLICABLE;
    if (!known || required->kind != VALUE_NUMBER)
        return;
    demand->known = true;
    demand->number = required->number;
    demand->sense = sense;
    demand->unit = required->unit;
}

static struct demand demand_of(const struct drawings *from, const char *rule, const char *item)
{
    struct demand demand = {.number = NAN};
    const struct card *card = from->card;
    const struct result *result = card == NULL ? from->result : &card->now;
    for (size_t i = 0; i < result->finding_count; i++)
        if (is_about(&result->findings[i], rule, item))
            take_demand(&demand, &result->findings[i], result->findings[i].compared,
                        &result->findings[i].required, result->findings[i].sense);
    /* A plan shows what is demanded where nothing is measured yet. */
    for (size_t i = 0; card != NULL && !demand.known && i < card->plan.finding_count; i++)
        if (is_about(&card->plan.findings[i], rule, item))
            take_demand(&demand, &card->plan.findings[i], card->plan.findings[i].compared,
                        &card->plan.findings[i].required, card->plan.findings[i].sense);
    for (size_t s = 0; card != NULL && s < card->section_count; s++)
        for (size_t i = 0; i < card->sections[s].count; i++) {
            const struct card_item *shown = &card->sections[s].items[i];
            if (is_about(shown->now, rule, item))
                take_demand(&demand, shown->now, shown->demanded, &shown->required, shown->sense);
        }
    if (card != NULL && demand.known) /* as the card's rows have it */
        demand.number = number_on_tape(demand.number, demand.sense, demand.unit);
    return demand;
}

void drawing_demand(const struct drawings *from, const struct drawn *drawn, size_t index,
                    struct drawing_shown *out)
{
    const struct dimension *known = drawn->drawing->itself.form->dimensions;
    const struct drawn_item *item = &drawn->itself.items[index];
    bool ruled = false, judged = false;
    *out = (struct drawing_shown){.drawn = drawn, .index = index, .item = item};
    for (size_t i = 0; i < DIMENSIONS_MOST && known[i].name != NULL; i++) {
        const struct drawn_dimension *dimension = &item->dimensions[i];
        struct demand demand = {.number = NAN};
        if (dimension->rule != NULL)
            demand = demand_of(from, dimension->rule, dimension->item);
        ruled = ruled || dimension->rule != NULL;
        judged = judged || demand.judged;
        out->judged[i] = demand.judged;
        out->amounts[i] = (struct draw_amount){dimension->number, demand.number, demand.sense};
    }
    /* A drawing that no rule is behind speaks for itself. */
    out->speaks = judged || !ruled;
}
