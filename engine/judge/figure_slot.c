#include "judge/figure_slot.h"

#include "base/text.h"
#include "judge/rulebook.h"

#include <stdint.h>
#include <string.h>

struct slot_table {
    const char *prefix;
    size_t length, count;
    struct slot_table *next;
};

struct slot_excuse {
    const struct lever *levers;
    struct slot_excuse *next;
};

/* A copy: what stands in the profile may be moved to try it out (prove/mutate.c). */
struct slot_whole {
    const struct figure_slot *slot;
    struct figure figure;
    struct slot_whole *next;
};

/* Looking up ------------------------------------------------------------------------------- */

/* Room for the names that functions ask for, by their addresses. */
enum { ASKED_ROOM = 512, ASKED_APART = 16 };

static const struct figure **asked_begin(struct rulebook *book)
{
    return arena_array(&book->arena, ASKED_ROOM, sizeof(const struct figure *));
}

/* A text that stands in a rule file is one object of Lua's: where the last one at its address
 * was of this name, it is the same. */
const struct figure *figure_slots_ask(const struct rulebook *book, const char *name)
{
    const struct figure **asked = &book->slots.asked[(uintptr_t)name / ASKED_APART % ASKED_ROOM];
    if (*asked == NULL || strcmp((*asked)->name, name) != 0)
        *asked = profile_figure(book->profile, name);
    return *asked;
}

bool figure_slots_begin(struct rulebook *book)
{
    struct figure_slots *slots = &book->slots;
    const size_t room = book->profile->figure_count + 1;
    slots->items = arena_array(&book->arena, room, sizeof(*slots->items));
    slots->figures = arena_array(&book->arena, room, sizeof(*slots->figures));
    slots->numbers = arena_array(&book->arena, room, sizeof(*slots->numbers));
    slots->asked = asked_begin(book);
    return !book->arena.failed;
}

static const struct figure_slot *slot_of(struct rulebook *book, const struct figure *figure,
                                         bool compared)
{
    struct figure_slots *slots = &book->slots;
    size_t *number = &slots->numbers[figure - book->profile->figures];
    struct figure_slot *slot = *number > 0 ? slots->items[*number - 1]
                                           : arena_alloc(&book->arena, sizeof(*slot));
    if (slot == NULL)
        return NULL;
    if (*number > 0) {
        slot->compared = slot->compared || compared;
        return slot;
    }
    *slot = (struct figure_slot){figure->name,  figure->value.kind, figure->value.unit,
                                 figure->sense, slots->count,       compared};
    slots->items[slots->count] = slot;
    slots->figures[slots->count] = figure;
    *number = ++slots->count;
    return slot;
}

const struct figure_slot *figure_slot_find(struct rulebook *book, const char *name, bool compared)
{
    const struct figure *figure = profile_figure(book->profile, name);
    if (figure != NULL)
        return slot_of(book, figure, compared);
    /* Not held against those that are there: a hostile file may look for any number. */
    strings_add(&book->slots.lacking, &book->arena, arena_copy(&book->arena, name));
    return NULL;
}

const struct figure_slot *figure_slot_at(struct rulebook *book, size_t place, bool compared)
{
    return slot_of(book, &book->profile->figures[place], compared);
}

size_t figure_slot_table(struct rulebook *book, const char *prefix, size_t length, size_t *place)
{
    size_t count;
    const struct figure *figures = profile_table(book->profile, prefix, length, &count);
    struct slot_table *table = arena_alloc(&book->arena, sizeof(*table));
    const char *kept = arena_copy_n(&book->arena, prefix, length);
    *place = (size_t)(figures - book->profile->figures);
    if (table != NULL && kept != NULL) {
        *table = (struct slot_table){kept, length, count, book->slots.tables};
        book->slots.tables = table;
    }
    return count;
}

const struct figure *figure_slot_whole(struct rulebook *book, const struct figure_slot *slot)
{
    const struct figure *figure = book->slots.figures[slot->number];
    struct slot_whole *whole = arena_alloc(&book->arena, sizeof(*whole));
    if (whole != NULL) {
        *whole = (struct slot_whole){slot, *figure, book->slots.wholes};
        book->slots.wholes = whole;
    }
    return figure;
}

/* Levers ------------------------------------------------------------------------------------ */

bool figure_slot_off(const struct rulebook *book, const struct lever *levers)
{
    for (; levers != NULL; levers = levers->before) {
        const struct figure *figure = levers->figure == NULL
                                          ? NULL
                                          : book->slots.figures[levers->figure->number];
        if (figure == NULL
            || (figure->value.kind == VALUE_YES_NO && !figure->value.yes
                && figure->rival.kind == VALUE_NONE))
            return true;
    }
    return false;
}

bool figure_slot_excused(struct rulebook *book, const struct lever *levers)
{
    if (!figure_slot_off(book, levers))
        return false;
    if (book->slots.excuses != NULL && book->slots.excuses->levers == levers)
        return true;
    struct slot_excuse *excuse = arena_alloc(&book->arena, sizeof(*excuse));
    if (excuse != NULL) {
        *excuse = (struct slot_excuse){levers, book->slots.excuses};
        book->slots.excuses = excuse;
    }
    return true;
}

/* Another profile -------------------------------------------------------------------------- */

static bool looks_the_same(const struct figure_slot *slot, const struct figure *figure)
{
    return figure != NULL && figure->value.kind == slot->kind
           && (!slot->compared
               || (text_same(figure->value.unit, slot->unit) && figure->sense == slot->sense));
}

static bool is_the_same(const struct figure *a, const struct figure *b)
{
    return profile_same_value(&a->value, &b->value) && text_same(a->value.unit, b->value.unit)
           && a->sense == b->sense && text_same(a->by, b->by) && a->cite.status == b->cite.status
           && (a->draft == NULL) == (b->draft == NULL)
           && (a->disputed == NULL) == (b->disputed == NULL);
}

static bool fit_found(struct rulebook *book, const struct figure_slots *of)
{
    struct figure_slots *slots = &book->slots;
    for (size_t i = 0; i < of->count; i++) {
        const struct figure *figure = profile_figure(book->profile, of->items[i]->name);
        if (!looks_the_same(of->items[i], figure))
            return false;
        slots->figures[i] = figure;
        slots->numbers[figure - book->profile->figures] = i + 1;
    }
    return true;
}

/* What was looked for in vain lacks here too; and of tables all rows there are were found. */
static bool fit_lacking(const struct rulebook *book, const struct figure_slots *of)
{
    for (size_t i = 0; i < of->lacking.count; i++)
        if (profile_figure(book->profile, of->lacking.items[i]) != NULL)
            return false;
    for (const struct slot_table *t = of->tables; t != NULL; t = t->next) {
        size_t count;
        profile_table(book->profile, t->prefix, t->length, &count);
        if (count != t->count)
            return false;
    }
    return true;
}

bool figure_slots_fit(struct rulebook *book, const struct rulebook *of)
{
    const struct figure_slots *slots = &of->slots;
    book->slots = *slots;
    book->slots.figures = arena_array(&book->arena, slots->count + 1, sizeof(*book->slots.figures));
    book->slots.numbers = arena_array(&book->arena, book->profile->figure_count + 1,
                                      sizeof(*book->slots.numbers));
    book->slots.asked = asked_begin(book);
    if (book->arena.failed || !fit_found(book, slots) || !fit_lacking(book, slots))
        return false;
    for (const struct slot_excuse *e = slots->excuses; e != NULL; e = e->next)
        if (!figure_slot_off(book, e->levers))
            return false;
    for (const struct slot_whole *w = slots->wholes; w != NULL; w = w->next)
        if (!is_the_same(&w->figure, book->slots.figures[w->slot->number]))
            return false;
    return true;
}
