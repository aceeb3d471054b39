#include "report/card_words.h"

#include "base/number.h"
#include "base/text.h"
#include "report/value_words.h"

#include <string.h>

/* As it prints: two figures that read the same stand in one row. Releases both. */
bool card_same_words(struct text a, struct text b)
{
    const bool same = strcmp(text_string(&a), text_string(&b)) == 0;
    text_free(&a);
    text_free(&b);
    return same;
}

/* Of the inspection that it is for. */
const char *card_title(enum stage stage)
{
    static const char *const TITLES[STAGE_COUNT] = {
        [STAGE_PERMIT] = "Card for the permit application",
        [STAGE_DECK] = "Card for the deck inspection",
        [STAGE_DRY_IN] = "Card for the dry-in inspection",
        [STAGE_FINAL] = "Card for the final inspection",
    };
    return TITLES[stage];
}

const char *card_title_of(const struct finding *finding)
{
    return finding->title == NULL ? finding->rule : finding->title;
}

/* "" where all places there are stand in the row. */
struct text card_row_places(const struct card_row *row)
{
    struct text places = TEXT_EMPTY;
    if (row->naming == PLACES_ALL)
        text_addf(&places, "all %zu", row->count);
    else if (row->naming == PLACES_OTHER)
        text_addf(&places, "the other %zu", row->count);
    for (size_t i = 0; row->naming == PLACES_NAMED && i < row->count; i++)
        if (row->items[i].now->where != NULL)
            text_addf(&places, "%s%s", i == 0 ? "" : "; ", row->items[i].now->where);
    return places;
}

/* What is to be hit --------------------------------------------------------- */

/* Inches as a tape can be held against them. */
static struct value on_tape(struct value bound, enum sense sense)
{
    if (bound.kind == VALUE_NUMBER)
        bound.number = number_on_tape(bound.number, sense, bound.unit);
    return bound;
}

/* "a, b or c". */
static void add_choices(struct text *out, const struct value *set)
{
    for (size_t i = 0; i < set->set_count; i++) {
        const struct value one = {.kind = VALUE_TEXT, .text = set->set[i]};
        text_add(out, i == 0 ? "" : i + 1 < set->set_count ? ", " : " or ");
        value_add(out, &one);
    }
    if (set->set_count == 0)
        value_add(out, set);
}

/* The number stands first: it is what the eye looks for. */
static void add_bound(struct text *out, const struct value *bound, enum sense sense)
{
    const struct value taped = on_tape(*bound, sense);
    if (sense == SENSE_AT_MOST && taped.number == 0) {
        text_add(out, "none");
        return;
    }
    value_add(out, &taped);
    text_add(out, sense == SENSE_AT_LEAST ? " or more" : " or less");
}

/* "2 in to 4 in". */
static void add_between(struct text *out, const struct card_item *item)
{
    const bool first = item->sense == SENSE_AT_LEAST;
    const struct value a = on_tape(item->required, item->sense);
    const struct value b = on_tape(item->also, item->also_sense);
    value_add(out, first ? &a : &b);
    text_add(out, " to ");
    value_add(out, first ? &b : &a);
}

/* Of a thing on paper that the job says is there, the title is enough: nothing
 * is hit or measured, it is only ticked. */
static bool title_says(const struct card_item *item)
{
    return item->now->stage == STAGE_PERMIT && !item->to_measure && item->plan->met == MET_YES;
}

/* What is to be hit, as short as can be: it is read on a roof. */
static void add_goal(struct text *out, const struct card_item *item)
{
    const bool bound = item->required.kind == VALUE_NUMBER
                       && (item->sense == SENSE_AT_LEAST || item->sense == SENSE_AT_MOST);
    if (bound && item->also.kind == VALUE_NUMBER)
        add_between(out, item);
    else if (bound)
        add_bound(out, &item->required, item->sense);
    else if (item->required.kind == VALUE_SET && item->sense == SENSE_ONE_OF)
        add_choices(out, &item->required);
    else if (item->required.kind == VALUE_SET && item->sense == SENSE_NONE_OF) {
        text_add(out, "not ");
        add_choices(out, &item->required);
    } else if (item->required.kind == VALUE_YES_NO)
        text_add(out, item->duty == NULL || title_says(item) ? "" : item->duty);
    else
        value_add_demand(out, item->sense, &item->required);
}

struct text card_row_hit(const struct card_row *row)
{
    const struct card_item *item = row->items;
    struct text hit = TEXT_EMPTY;
    if (item->demanded)
        add_goal(&hit, item);
    /* The note below the card says what the star is. */
    if (hit.length > 0 && item->amended != NULL)
        text_add(&hit, "*");
    /* Sources that differ are both said: which one binds is not ours to choose. */
    if (item->now->rival.kind == VALUE_NUMBER) {
        const struct card_item other = {.required = item->now->rival, .sense = item->sense};
        text_add(&hit, " (another source: ");
        add_goal(&hit, &other);
        text_add(&hit, ")");
    }
    if (item->question > 0)
        text_addf(&hit, "%squestion %zu", hit.length > 0 ? "; " : "", item->question);
    return hit;
}

/* What is planned, found and wrong ------------------------------------------ */

static const char SO[] = "so", NOT_SO[] = "not so";

/* Where a thing must be so, "found no" would be misread: it may be as it must. */
static struct text found_words(const struct finding *finding)
{
    struct text found = TEXT_EMPTY;
    if (!finding->compared || finding->found.kind == VALUE_NONE)
        return found;
    if (finding->found.kind == VALUE_YES_NO && finding->required.kind == VALUE_YES_NO)
        text_add(&found, finding->found.yes == finding->required.yes ? SO : NOT_SO);
    else
        value_add(&found, &finding->found);
    return found;
}

/* Does it say what is to be hit, only once more? */
static bool goes_without_saying(const struct card_item *item)
{
    const struct value *required = &item->required, *found = &item->plan->found;
    if (found->kind == VALUE_YES_NO)
        return true;
    if (!item->demanded)
        return false;
    const bool one = required->kind == VALUE_SET && required->set_count == 1;
    const char *word = one ? required->set[0] : required->text;
    return found->kind == VALUE_NUMBER
               ? required->kind == VALUE_NUMBER
                     && number_equals(found->number, required->number, found->unit)
           : found->kind == VALUE_TEXT ? text_same(found->text, word)
           : found->kind == VALUE_SET
               ? one && found->set_count == 1 && text_same(found->set[0], word)
               : false;
}

/* A plan is worth saying when it is met and not just what is demanded. */
static struct text plan_of(const struct card_item *item)
{
    if (item->measured || item->plan->met != MET_YES || goes_without_saying(item))
        return TEXT_EMPTY;
    return found_words(item->plan);
}

/* Only where all places have the same plan. */
struct text card_row_plan(const struct card_row *row)
{
    struct text plan = plan_of(row->items);
    for (size_t i = 1; i < row->count; i++)
        if (!card_same_words(plan_of(&row->items[0]), plan_of(&row->items[i]))) {
            text_free(&plan);
            plan = TEXT_EMPTY;
        }
    return plan;
}

struct text card_row_measured(const struct card_row *row)
{
    return row->items->measured ? found_words(row->items->now) : TEXT_EMPTY;
}

struct text card_row_fault(const struct card_row *row)
{
    const struct finding *wrong = row->wrong;
    struct text fault = TEXT_EMPTY, found = TEXT_EMPTY;
    if (wrong == NULL)
        return fault;
    if (wrong->outcome != OUTCOME_BROKEN)
        found = found_words(wrong);
    /* A fault by a figure nobody read is a question first. */
    if (wrong->why & WHY_UNCONFIRMED)
        text_add(&fault, "Figure not confirmed. ");
    else if (wrong->why & WHY_PRACTICE)
        text_add(&fault, "Common practice, not code. ");
    if (found.length == 0)
        text_add(&fault, wrong->says == NULL ? "" : wrong->says);
    else if (strcmp(text_string(&found), NOT_SO) == 0)
        text_add(&fault, wrong->measured ? "Not so." : "Not so in the plan.");
    else
        text_addf(&fault, "%s %s.", wrong->measured ? "Found" : "Planned", text_string(&found));
    if (wrong->mend != NULL)
        text_addf(&fault, " %s", wrong->mend);
    fault.failed = fault.failed || found.failed;
    text_free(&found);
    return fault;
}
