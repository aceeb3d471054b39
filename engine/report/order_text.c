#include "report/report.h"

#include "base/number.h"
#include "include/eavemark.h"
#include "report/order.h"
#include "report/page.h"
#include "report/takeoff_part.h"
#include "report/wrap.h"

#include <string.h>

enum {
    UNIT_WIDTH = 9,  /* "bundles" and the like */
    COUNT_WIDTH = 7, /* "  1,200" */
    ITEM_HANG = COUNT_WIDTH + 2 + UNIT_WIDTH + 1,
    OPEN_HANG = 4,
};

/* "     55  bundles  Laminated shingles: all planes" */
static void add_line(struct text *out, const struct order_line *line)
{
    char count[96];
    struct text words = TEXT_EMPTY;
    number_write(line->count, "count", count);
    text_addf(out, "%*s  %-*s ", COUNT_WIDTH, count, UNIT_WIDTH, order_unit(line));
    /* A long unit has the line to itself; the item begins below, in its own column. */
    if (strlen(order_unit(line)) > UNIT_WIDTH)
        text_addf(out, "\n%*s", ITEM_HANG, "");
    text_add(&words, line->item);
    if (line->goes_on != NULL)
        text_addf(&words, ": %s", line->goes_on);
    page_phrase(out, ITEM_HANG, &words);
}

/* A heading once, before its first line. */
static void add_lines(struct text *out, const struct order *order)
{
    const char *heading = NULL;
    for (size_t i = 0; i < order->line_count; i++) {
        const struct order_line *line = &order->lines[i];
        if (heading == NULL || strcmp(heading, line->heading) != 0)
            text_addf(out, "\n%s\n", line->heading);
        heading = line->heading;
        add_line(out, line);
    }
    if (order->line_count == 0)
        text_add(out, "\nNothing to order.\n");
}

/* A list that lacks something says so: nobody should find out on the roof. */
static void add_lacking(struct text *out, const struct takeoff *takeoff, enum outcome outcome,
                        const char *heading)
{
    bool any = false;
    for (size_t i = 0; i < takeoff->line_count; i++) {
        const struct quantity_line *line = &takeoff->lines[i];
        if (line->heading == NULL || line->finding.outcome != outcome)
            continue;
        if (!any)
            text_addf(out, "\n%s\n", heading);
        any = true;
        struct text words = TEXT_EMPTY;
        text_add(&words, line->finding.title);
        if (line->finding.where != NULL)
            text_addf(&words, ", %s", line->finding.where);
        text_addf(&words, ": %s", line->finding.says);
        text_addf(out, "%*s", OPEN_HANG, "");
        page_phrase(out, OPEN_HANG, &words);
    }
}

/* Broken and open before the end: what the list lacks must not be turned over unread. */
void report_order_text(const struct takeoff *takeoff, struct text *out)
{
    struct order order;
    out->failed = order_make(takeoff, &order) != 0 || out->failed;
    text_add(out, "Eavemark " EAVEMARK_VERSION ", order for a reroof\n\n");
    takeoff_add_head(out, &takeoff->head);
    if (!out->failed)
        add_lines(out, &order);
    add_lacking(out, takeoff, OUTCOME_BROKEN, "Broken: the quantity itself erred");
    add_lacking(out, takeoff, OUTCOME_OPEN, "Not counted yet, and nothing is guessed");
    text_addf(out, "\nWaste is counted in, as %s; --work shows the sums.\n\n",
              takeoff->head.facts[ORIGIN_USUAL] > 0 ? "is usual where a job states none"
                                                    : "the job states it");
    wrap_add(out, 0, takeoff->head.caution == NULL ? "" : takeoff->head.caution);
    order_free(&order);
}
