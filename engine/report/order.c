#include "report/order.h"

#include "base/text.h"

#include <string.h>

/* Bought from the supplier, and some of it. */
static bool is_ordered(const struct quantity_line *line)
{
    return line->heading != NULL && line->amount != NULL && line->amount->bought
           && line->amount->count > 0;
}

static const char *item_of(const struct quantity_line *line)
{
    return line->amount->item != NULL ? line->amount->item : line->finding.title;
}

/* One kind: what one holds and what is added for waste are the same too. */
static bool same_kind(const struct order_line *old, const struct quantity_line *line)
{
    const struct amount *a = old->first->amount, *b = line->amount;
    return text_same(old->item, item_of(line)) && text_same(a->buy, b->buy)
           && text_same(a->unit, b->unit) && text_same(old->heading, line->heading)
           && a->each == b->each && a->waste_percent == b->waste_percent;
}

/* Measured together, three half bundles are two and not three. */
static struct order_line *of_same_kind(struct order *order, const struct quantity_line *line)
{
    for (size_t i = 0; i < order->line_count; i++)
        if (same_kind(&order->lines[i], line))
            return &order->lines[i];
    return NULL;
}

/* "porch, garage": NULL on either side is the whole roof, and says no more than the other. */
static const char *both_places(struct arena *arena, const char *a, const char *b)
{
    if (a == NULL || b == NULL || strcmp(a, b) == 0)
        return a == NULL ? b : a;
    return arena_format(arena, "%s, %s", a, b);
}

static void add_line(struct order *order, const struct quantity_line *line)
{
    const struct amount *amount = line->amount;
    /* What the rule says it is for; else the item it was counted for. */
    const char *goes_on = amount->goes_on != NULL ? amount->goes_on : line->finding.where;
    struct order_line *old = of_same_kind(order, line);
    if (old != NULL) {
        old->measured += amount->exact;
        old->count = takeoff_count(amount, old->measured);
        old->goes_on = both_places(&order->arena, old->goes_on, goes_on);
        return;
    }
    order->lines[order->line_count++] = (struct order_line){.heading = line->heading,
                                                            .item = item_of(line),
                                                            .measured = amount->exact,
                                                            .count = amount->count,
                                                            .unit = amount->buy,
                                                            .one = amount->one,
                                                            .goes_on = goes_on,
                                                            .first = line};
}

static bool stands_under(const struct quantity_line *line, const char *heading)
{
    return line->heading != NULL && text_same(line->heading, heading);
}

/* All lines under the heading that stands there first, whether or not of that one anything
 * is bought: the headings of all orders come in one order. */
static void add_heading(struct order *order, const struct takeoff *takeoff, size_t from)
{
    const char *heading = takeoff->lines[from].heading;
    for (size_t i = 0; i < from; i++)
        if (stands_under(&takeoff->lines[i], heading))
            return;
    for (size_t i = from; i < takeoff->line_count; i++)
        if (stands_under(&takeoff->lines[i], heading) && is_ordered(&takeoff->lines[i]))
            add_line(order, &takeoff->lines[i]);
}

/* One line a quantity at most; none is added twice. */
int order_make(const struct takeoff *takeoff, struct order *out)
{
    *out = (struct order){0};
    out->lines = arena_array(&out->arena, takeoff->line_count + 1, sizeof(*out->lines));
    for (size_t i = 0; out->lines != NULL && i < takeoff->line_count; i++)
        if (takeoff->lines[i].heading != NULL)
            add_heading(out, takeoff, i);
    return out->arena.failed ? -1 : 0;
}

const char *order_unit(const struct order_line *line)
{
    return line->count == 1 ? line->one : line->unit;
}

void order_free(struct order *order)
{
    arena_free(&order->arena);
    *order = (struct order){0};
}
