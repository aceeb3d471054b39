/* verdict_decide.c - pass, warn or fail: by what was met, and by how sure the figures are. */
#include "judge/verdict_parts.h"

/* Read in its own code, or the invented place's own: nothing to confirm. */
static bool is_well_known(const struct figure *figure)
{
    return figure->cite.status == STATUS_SEEN || figure->cite.status == STATUS_INVENTED;
}

/* A duty that a code has switched on binds, be its measure common practice. */
static bool is_switched_on(const struct record *record)
{
    for (size_t i = 0; i < record->figure_count; i++) {
        const struct figure *figure = record->figures[i];
        if (figure->value.kind == VALUE_YES_NO && figure->value.yes && figure->draft == NULL
            && figure->cite.status != STATUS_PRACTICE)
            return true;
    }
    return false;
}

/* Every maker counts: one that was not read makes the demand unsure. Only a draft must be
 * all there is. */
struct surety verdict_surety(const struct judgement *judgement)
{
    struct surety surety = {.draft = judgement->maker_count > 0};
    for (size_t i = 0; i < judgement->maker_count; i++) {
        const struct figure *maker = judgement->makers[i];
        surety.read |= is_well_known(maker);
        surety.parallel |= maker->cite.status == STATUS_PARALLEL;
        /* Without a status nothing is known of where it stands: no better than memory. */
        surety.memory |= maker->cite.status == STATUS_MEMORY || maker->cite.status == STATUS_NONE;
        surety.practice |= maker->cite.status == STATUS_PRACTICE;
        surety.unsure |= maker->unsure != NULL;
        surety.draft &= maker->draft != NULL;
    }
    return surety;
}

/* Met: a pass, unless a figure that made the demand was not read, another source
 * would have it otherwise, or the rule calls it risky. */
void verdict_decide_met(struct finding *finding, const struct judgement *judgement,
                        const struct surety *surety, bool disputed)
{
    finding->met = MET_YES;
    if (surety->practice)
        finding->why |= WHY_PRACTICE;
    if (surety->memory || surety->parallel)
        finding->why |= WHY_UNCONFIRMED;
    if (disputed)
        finding->why |= WHY_DISPUTED;
    if (judgement->warn != NULL)
        finding->why |= WHY_ADVICE;
    /* Practice that is met is no cause for a warning. */
    finding->outcome = (finding->why & ~(unsigned)WHY_PRACTICE) == 0 ? OUTCOME_PASS : OUTCOME_WARN;
}

/* Not met: a fail, unless nothing but practice, a draft or advice asks for it. One
 * whose every code figure is recalled, or whose book may not bind here, says so. */
void verdict_decide_unmet(struct finding *finding, const struct rule *rule,
                          const struct record *record, const struct surety *surety)
{
    const bool code = surety->read || surety->parallel || surety->memory || is_switched_on(record);
    finding->met = MET_NO;
    finding->outcome = OUTCOME_WARN;
    if (rule->advice || surety->draft) {
        finding->why |= WHY_ADVICE;
    } else if (!code) {
        finding->why |= WHY_PRACTICE;
    } else {
        finding->outcome = OUTCOME_FAIL;
        if (surety->unsure || (surety->memory && !surety->read && !surety->parallel))
            finding->why |= WHY_UNCONFIRMED;
    }
}
