#include "report/card_row.h"

#include "report/card_words.h"

#include <string.h>

/* Things -------------------------------------------------------------------- */

/* Nothing to hit and nothing wrong: only its question is told. */
bool card_item_waits(const struct card_item *item)
{
    return item->question > 0 && !item->demanded && item->wrong == NULL;
}

bool card_same_rule(const struct card_item *a, const struct card_item *b)
{
    return strcmp(a->now->rule, b->now->rule) == 0;
}

/* Makes the thing that starts with item number `start`. False when all of it waits. */
static bool thing_at(struct card_thing *thing, const struct card_section *section, size_t start)
{
    bool any = false;
    thing->section = section;
    thing->start = start;
    for (thing->count = 0; start + thing->count < section->count; thing->count++) {
        const struct card_item *item = &section->items[start + thing->count];
        /* Items of one rule stand together: the thing ends where another rule begins. */
        if (!card_same_rule(&section->items[start], item))
            break;
        any = any || !card_item_waits(item);
    }
    return any;
}

/* The next rule of the card that has anything to show; numbers run through all sections.
 * What only the department knows has a line of its own. */
bool card_next(const struct card *card, struct card_thing *thing)
{
    const struct card_section *last = thing->section;
    size_t s = last == NULL ? 0 : (size_t)(last - card->sections);
    size_t start = last == NULL ? 0 : thing->start + thing->count;
    for (; s < card->section_count; s++, start = 0) {
        const struct card_section *section = &card->sections[s];
        if (section->kind == CARD_PLACE)
            continue;
        for (; start < section->count; start += thing->count)
            if (thing_at(thing, section, start)) {
                thing->number++;
                thing->opens = section != last;
                return true;
            }
    }
    return false;
}

/* Rows ---------------------------------------------------------------------- */

/* A line or box for each of a few places, with its name at it. */
bool card_room_names(const struct card_row *row)
{
    return (row->room == ROOM_WRITE || row->room == ROOM_BOXES) && row->count > 1
           && row->count <= CARD_PLACES_MOST;
}

/* What is only looked at is ticked; for several places, place by place. */
static enum card_room room_of(const struct card *card, const struct card_item *item, size_t count)
{
    const bool number = item->demanded && item->required.kind == VALUE_NUMBER
                        && !(count == 1 && item->asks_number && item->question > 0);
    if (item->measured)
        return item->wrong == item->now ? ROOM_NONE : ROOM_FOUND; /* the fault says it */
    if (item->to_measure && item->demanded && item->required.kind == VALUE_YES_NO)
        return count > 1 && count <= CARD_PLACES_MOST ? ROOM_BOXES : ROOM_NONE;
    if (item->to_measure
        || (card->stage != STAGE_PERMIT && number && item->now->stage == card->stage))
        return ROOM_WRITE;
    return ROOM_NONE;
}

static struct card_row row_of(const struct card *card, const struct card_item *item, size_t count)
{
    struct card_row row = {
        .items = item, .count = count, .wrong = item->wrong, .room = room_of(card, item, count)};
    row.short_one = row.room == ROOM_NONE && row.wrong == NULL;
    return row;
}

static bool same_fault(const struct card_row *a, const struct card_row *b)
{
    if (a->wrong == NULL || b->wrong == NULL)
        return a->wrong == b->wrong;
    return a->wrong->outcome == b->wrong->outcome
           && card_same_words(card_row_fault(a), card_row_fault(b));
}

/* Two places share a row when everything said of them reads the same. */
static bool belong_together(const struct card *card, const struct card_item *a,
                            const struct card_item *b)
{
    const struct card_row left = row_of(card, a, 1), right = row_of(card, b, 1);
    return card_same_rule(a, b) && a->to_measure == b->to_measure && a->measured == b->measured
           && a->question == b->question && same_fault(&left, &right)
           && card_same_words(card_row_measured(&left), card_row_measured(&right))
           && card_same_words(card_row_hit(&left), card_row_hit(&right));
}

/* Do the places have to be named? All of those that the rule could speak of go
 * without saying; of those that it does speak of, the rest beside what is wrong
 * and told above it can be counted. Anything else is told place by place: its
 * figure would be taken for another place's. */
static void set_naming(const struct card *card, struct card_row *row)
{
    const char *rule = row->items->now->rule;
    size_t all = 0, meant = 0, wrong = 0;
    for (size_t i = 0; i < card->now.finding_count; i++)
        if (strcmp(card->now.findings[i].rule, rule) == 0) {
            all++;
            meant += card->now.findings[i].outcome != OUTCOME_NOT_APPLICABLE
                     || card->plan.findings[i].outcome != OUTCOME_NOT_APPLICABLE;
        }
    const struct card_section *first = card->sections;
    for (size_t i = 0; first->kind == CARD_WRONG && row->wrong == NULL && i < first->count; i++)
        wrong += strcmp(first->items[i].now->rule, rule) == 0;
    row->naming = row->count == all                                            ? PLACES_UNSAID
                  : row->count > 1 && wrong > 0 && row->count + wrong == meant ? PLACES_OTHER
                  : row->count > CARD_PLACES_MOST - 1 && row->count == meant   ? PLACES_ALL
                                                                               : PLACES_NAMED;
}

/* The row from item number `start` of the thing on. */
static struct card_row row_from(const struct card *card, const struct card_thing *thing,
                                size_t start)
{
    const struct card_item *items = &thing->section->items[thing->start];
    while (start < thing->count && card_item_waits(&items[start]))
        start++;
    if (start >= thing->count)
        return (struct card_row){.items = NULL};
    size_t count = 1;
    while (start + count < thing->count
           && belong_together(card, &items[start], &items[start + count]))
        count++;
    struct card_row row = row_of(card, &items[start], count);
    set_naming(card, &row);
    return row;
}

/* A thing that card_next gave has one: not all of it waits. */
struct card_row card_first_row(const struct card *card, const struct card_thing *thing)
{
    return row_from(card, thing, 0);
}

/* No items: there is none. */
struct card_row card_row_after(const struct card *card, const struct card_thing *thing,
                               const struct card_row *row)
{
    const struct card_item *items = &thing->section->items[thing->start];
    struct card_row after = row_from(card, thing, (size_t)(row->items - items) + row->count);
    after.again = after.items != NULL;
    return after;
}
