#include "judge/judgement.h"

#include "base/number.h"
#include "base/text.h"
#include "trade/spacing.h"

#include <math.h>
#include <string.h>

struct judgement *judgement_new(struct judging *judging, enum sense sense)
{
    struct judgement *judgement = arena_alloc(judging->arena, sizeof(*judgement));
    if (judgement != NULL)
        judgement->sense = sense;
    return judgement;
}

static struct value number_value(double number, const char *unit)
{
    return (struct value){.kind = VALUE_NUMBER, .number = number, .unit = unit};
}

/* Values ----------------------------------------------------------------------------- */

/* Never by < alone: numbers that look the same in reports are the same here. */
static bool numbers_meet(double found, enum sense sense, double limit, const char *unit)
{
    return sense == SENSE_AT_LEAST  ? number_at_least(found, limit, unit)
           : sense == SENSE_AT_MOST ? number_at_most(found, limit, unit)
                                    : number_equals(found, limit, unit);
}

/* How many of the texts found are in the set; a text is a list of one. */
static size_t count_in(const struct value *found, const struct value *set)
{
    size_t count = 0;
    if (found->kind == VALUE_TEXT)
        return profile_set_has(set, found->text);
    for (size_t i = 0; i < found->set_count; i++)
        count += profile_set_has(set, found->set[i]);
    return count;
}

static bool is_number_sense(enum sense sense)
{
    return sense == SENSE_AT_LEAST || sense == SENSE_AT_MOST || sense == SENSE_EQUALS;
}

struct judgement *judgement_of_values(struct judging *judging, const struct value *found,
                                      enum sense sense, const struct value *required)
{
    struct judgement *judgement = judgement_new(judging, sense);
    if (judgement == NULL)
        return NULL;
    judgement->found = *found;
    judgement->required = *required;
    if (found->kind == VALUE_NUMBER && required->kind == VALUE_NUMBER && is_number_sense(sense)) {
        /* Units were checked where the comparison was declared or made. */
        judgement->found.unit = required->unit;
        judgement->met = numbers_meet(found->number, sense, required->number, required->unit);
    } else if (found->kind == VALUE_YES_NO && required->kind == VALUE_YES_NO) {
        judgement->met = found->yes == required->yes;
    } else if (required->kind == VALUE_SET
               && (found->kind == VALUE_TEXT || found->kind == VALUE_SET)) {
        /* One of: all that was found must be in the set. None of: not one may be. */
        const size_t all = found->kind == VALUE_TEXT ? 1 : found->set_count;
        const size_t in = count_in(found, required);
        judgement->met = sense == SENSE_NONE_OF ? in == 0 : in == all;
    } else if (found->kind == VALUE_TEXT && required->kind == VALUE_TEXT) {
        judgement->met = text_same(found->text, required->text);
    } else {
        return NULL;
    }
    return judgement;
}

/* Duties ----------------------------------------------------------------------------- */

struct judgement *judgement_of_duty(struct judging *judging, bool met, const char *what)
{
    struct judgement *judgement = judgement_new(judging, SENSE_EQUALS);
    if (judgement == NULL)
        return NULL;
    judgement->met = met;
    judgement->found = (struct value){.kind = VALUE_YES_NO, .yes = met};
    judgement->required = (struct value){.kind = VALUE_YES_NO, .yes = true};
    judgement->duty = what;
    if (what != NULL)
        /* A yes or no is worth nothing to a reader without what was asked for. */
        judgement->say = arena_format(judging->arena, "Demanded: %s. Found: %s.", what,
                                      met ? "yes" : "no");
    return judgement;
}

struct judgement *judgement_of_all(struct judging *judging, const struct value *found,
                                   const struct value *required, const char *what)
{
    struct text also = TEXT_EMPTY;
    size_t lacking = 0;
    for (size_t i = 0; i < required->set_count; i++) {
        if (profile_set_has(found, required->set[i]))
            continue;
        text_add(&also, lacking++ == 0 ? ", also: " : ", ");
        text_add_spaced(&also, required->set[i], strlen(required->set[i]));
    }
    record_work_line(judging, "%zu asked for, %zu lacking", required->set_count, lacking);
    const char *demand = arena_format(judging->arena, "%s%s", what == NULL ? "all of them" : what,
                                      lacking == 0 ? ", all that the place asks for"
                                                   : text_string(&also));
    /* Whoever ends the call looks at the arena alone. */
    judging->arena->failed |= also.failed;
    text_free(&also);
    return judgement_of_duty(judging, lacking == 0, demand);
}

/* Measured lists ---------------------------------------------------------------------- */

struct judgement *judgement_of_spread(struct judging *judging, const double *numbers, size_t count,
                                      const struct value *limit, double share, double over)
{
    struct spread spread;
    char worst[96], most[96], over_share[96];
    struct judgement *judgement = judgement_new(judging, SENSE_AT_MOST);
    if (judgement == NULL || trade_spread(&spread, numbers, count, limit->number, limit->unit) != 0)
        return NULL;
    judgement->required = *limit;
    judgement->found = number_value(spread.most, limit->unit);
    judgement->met = spread.over == 0;
    number_write_unit(spread.most, limit->unit, worst);
    number_write_unit(limit->number, limit->unit, most);
    number_write_unit(spread.over_percent, "percent", over_share);
    record_work_line(judging, "%zu measured: widest %s; %zu over %s (%s of them)", spread.count,
                     worst, spread.over, most, over_share);
    /* The allowance: no more than this share of them over, and none by more than `over`.
     * Zero for both allows nothing. */
    if (!judgement->met && number_at_most(spread.over_percent, share, "percent")
        && number_at_most(spread.most, limit->number + over, limit->unit)) {
        judgement->met = true;
        judgement->warn = "Some are over the figure, within the allowance given for stray ones.";
    }
    return judgement;
}

struct judgement *judgement_of_each(struct judging *judging, const double *numbers, size_t count,
                                    const struct value *limit, bool least)
{
    struct judgement *judgement = judgement_new(judging, least ? SENSE_AT_LEAST : SENSE_AT_MOST);
    if (judgement == NULL)
        return NULL;
    /* The worst one is what is shown as found. */
    double worst = numbers[0];
    size_t bad = 0;
    for (size_t i = 0; i < count; i++) {
        worst = least ? fmin(worst, numbers[i]) : fmax(worst, numbers[i]);
        bad += !numbers_meet(numbers[i], judgement->sense, limit->number, limit->unit);
    }
    char written[96];
    number_write_unit(worst, limit->unit, written);
    record_work_line(judging, "%zu measured: the worst %s; %zu out of bounds (%.1f %% of them)",
                     count, written, bad, 100.0 * (double)bad / (double)count);
    judgement->met = bad == 0;
    judgement->found = number_value(worst, limit->unit);
    judgement->required = *limit;
    return judgement;
}

/* Two together ------------------------------------------------------------------------- */

/* Do the two bound one number from both sides? */
static bool is_other_bound(const struct judgement *a, const struct judgement *b)
{
    return a->found.kind == VALUE_NUMBER && b->found.kind == VALUE_NUMBER
           && a->required.kind == VALUE_NUMBER && b->required.kind == VALUE_NUMBER
           && a->found.number == b->found.number && a->sense != b->sense
           && text_same(a->found.unit, b->found.unit);
}

/* The makers of both: what is met is met by the figures of each. */
static void add_makers(struct judging *judging, struct judgement *to, const struct judgement *from)
{
    const size_t count = to->maker_count + from->maker_count;
    const struct figure **makers = arena_array(judging->arena, count + 1, sizeof(*makers));
    size_t kept = 0;
    for (size_t i = 0; makers != NULL && i < count; i++) {
        const struct figure *maker = i < to->maker_count ? to->makers[i]
                                                         : from->makers[i - to->maker_count];
        bool told = false;
        for (size_t j = 0; j < kept; j++)
            told = told || makers[j] == maker;
        if (!told)
            makers[kept++] = maker;
    }
    to->makers = makers;
    to->maker_count = kept;
}

struct judgement *judgement_of_both(struct judging *judging, struct judgement *first,
                                    struct judgement *second)
{
    /* What is not met decides, and of two such the first. Of two that are met the second
     * is shown. */
    struct judgement *chosen = !first->met || second->met ? first : second;
    chosen = first->met && second->met ? second : chosen;
    struct judgement *other = chosen == first ? second : first;
    /* Bounds of one number from both sides are shown together: at least 4 in and at most
     * 6 in. */
    if (chosen->also.kind == VALUE_NONE && is_other_bound(chosen, other)) {
        chosen->also = other->required;
        chosen->also_sense = other->sense;
    }
    if (chosen->met)
        add_makers(judging, chosen, other);
    if (chosen->warn == NULL)
        chosen->warn = other->warn;
    return chosen;
}

void judgement_made_by(struct judging *judging, struct judgement *judgement,
                       const struct figure *const *figures, size_t count)
{
    if (judgement == NULL)
        return;
    judgement->makers = arena_array(judging->arena, count + 1, sizeof(*judgement->makers));
    judgement->maker_count = judgement->makers == NULL ? 0 : count;
    for (size_t i = 0; i < judgement->maker_count; i++)
        judgement->makers[i] = figures[i];
}

/* Further demands ---------------------------------------------------------------------- */

void judgement_note_held(struct judging *judging, const struct figure *figure)
{
    struct record *record = &judging->record;
    bool told = false;
    for (size_t i = 0; i < record->held_count; i++)
        told = told || record->held[i] == figure;
    if (told)
        return;
    const struct figure **held = arena_array(judging->arena, record->held_count + 1, sizeof(*held));
    if (held == NULL)
        return;
    for (size_t i = 0; i < record->held_count; i++)
        held[i] = record->held[i];
    held[record->held_count++] = figure;
    record->held = held;
}

/* The place's own other bound on what was found: of the whole list, or of the one number. */
static struct judgement *other_bound(struct judging *judging, const struct judgement *judgement,
                                     const struct figure *figure, const double *numbers,
                                     size_t count)
{
    const bool least = figure->also_sense == SENSE_AT_LEAST;
    struct judgement *other = numbers != NULL
                                  ? judgement_of_each(judging, numbers, count, &figure->also, least)
                                  : judgement_of_values(judging, &judgement->found,
                                                        figure->also_sense, &figure->also);
    judgement_made_by(judging, other, &figure, 1);
    return other;
}

/* Exactly the figure is not enough, where the place says so. */
static void hold_off_exactly(struct judging *judging, struct judgement *judgement)
{
    const bool least = judgement->sense == SENSE_AT_LEAST;
    char limit[96];
    if (judgement->met
        && number_equals(judgement->found.number, judgement->required.number,
                         judgement->required.unit))
        judgement->met = false;
    number_write_unit(judgement->required.number, judgement->required.unit, limit);
    judgement->say = arena_format(judging->arena,
                                  "%s%sExactly %s is not enough here: it must be "
                                  "%s.",
                                  judgement->say == NULL ? "" : judgement->say,
                                  judgement->say == NULL ? "" : " ", limit,
                                  least ? "more" : "less");
}

struct judgement *judgement_held_to(struct judging *judging, struct judgement *judgement,
                                    const double *numbers, size_t count)
{
    if (judgement == NULL || judgement->required.kind != VALUE_NUMBER)
        return judgement;
    /* The count of before: folding two judgements adds to it. */
    const size_t makers = judgement->maker_count;
    for (size_t i = 0; i < makers && judgement != NULL; i++) {
        const struct figure *figure = judgement->makers[i];
        if (!profile_is_held_further(figure)
            || !profile_same_value(&figure->value, &judgement->required))
            continue;
        judgement_note_held(judging, figure);
        if (figure->at == AT_COUNTS_NOT)
            hold_off_exactly(judging, judgement);
        if (figure->also.kind == VALUE_NONE)
            continue;
        struct judgement *other = other_bound(judging, judgement, figure, numbers, count);
        return other == NULL ? NULL : judgement_of_both(judging, judgement, other);
    }
    return judgement;
}

/* A figure whose further demands no comparison looked at, or NULL: what was met is then
 * not all that is asked for. */
const struct figure *judgement_not_held(const struct record *record)
{
    for (size_t i = 0; i < record->figure_count; i++) {
        bool held = !profile_is_held_further(record->figures[i]);
        for (size_t j = 0; j < record->held_count && !held; j++)
            held = record->held[j] == record->figures[i];
        if (!held)
            return record->figures[i];
    }
    return NULL;
}
