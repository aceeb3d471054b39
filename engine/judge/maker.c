/* maker.c - which of the figures a rule asked for made what it demands.
 *
 * A rule asks for more figures than it demands: switches that say whether it
 * speaks, thresholds that choose among limits. Only what made the demanded value
 * says how sure that value is. A figure that has the demanded value, with the
 * sense of the comparison, is one; a value that no figure has was reckoned, and
 * then all the limits that were asked for are, for want of knowing better. */
#include "judge/judging.h"

#include <string.h>

/* How close a figure comes to being a maker; the closest there are win. */
enum closeness { NOT_AT_ALL, ANY, LIMIT, SAME_VALUE };

/* It only decides who is meant, or which limit. */
static bool is_threshold(const struct figure *figure)
{
    return !sense_binds(figure->sense);
}

/* A figure of the demanded value whose sense is the comparison's is the maker itself. One
 * of the same kind may have been reckoned with. */
static enum closeness closeness_of(const struct figure *figure, const struct judgement *judgement)
{
    const struct value *demanded = &judgement->required, *value = &figure->value;
    if (demanded->kind == VALUE_YES_NO) /* a duty: made by what switches it on */
        return value->kind == VALUE_YES_NO ? (value->yes == demanded->yes ? SAME_VALUE : LIMIT)
               : is_threshold(figure)      ? NOT_AT_ALL
                                           : ANY;
    if (value->kind == VALUE_YES_NO || is_threshold(figure))
        return NOT_AT_ALL;
    if (value->kind == demanded->kind && profile_same_value(value, demanded)
        && (judgement->sense == SENSE_NONE || figure->sense == judgement->sense
            || figure->sense == SENSE_EQUALS))
        return SAME_VALUE;
    return value->kind == demanded->kind ? LIMIT : ANY;
}

void maker_find(struct judging *judging, struct judgement *judgement)
{
    const struct record *record = &judging->record;
    if (judgement->makers != NULL || record->figure_count == 0)
        return;
    judgement->makers = arena_array(judging->arena, record->figure_count,
                                    sizeof(*judgement->makers));
    if (judgement->makers == NULL)
        return;
    enum closeness best = NOT_AT_ALL;
    for (size_t i = 0; i < record->figure_count; i++) {
        /* What comes closest wins; with equals all of them are makers. */
        const enum closeness now = closeness_of(record->figures[i], judgement);
        if (now > best)
            best = now;
    }
    for (size_t i = 0; i < record->figure_count; i++)
        if (closeness_of(record->figures[i], judgement) == best)
            judgement->makers[judgement->maker_count++] = record->figures[i];
}
