#include "report/report.h"

#include "base/number.h"
#include "base/utf8.h"
#include "report/order.h"

#include <string.h>

/* A spreadsheet takes what begins so for a formula, and may run it. */
static bool is_formula(const char *words)
{
    return words[0] != '\0' && strchr("=+-@\t\r", words[0]) != NULL;
}

/* RFC 4180: in quotes, a quote doubled. What does not print is written out, since the table is
 * looked at in a terminal too. */
static void add_cell(struct text *out, const char *words, const char *end)
{
    struct text safe = TEXT_EMPTY;
    utf8_add_printable(&safe, words);
    text_add(out, is_formula(words) ? "\"'" : "\"");
    for (const char *at = text_string(&safe); *at != '\0'; at++)
        text_add(out, *at == '"' ? "\"\"" : (const char[]){*at, '\0'});
    text_addf(out, "\"%s", end);
    out->failed = out->failed || safe.failed;
    text_free(&safe);
}

/* Ten digits: all that a rounded figure has, and no thousands mark that a spreadsheet would
 * stumble on. */
static void add_figure(struct text *out, double value, const char *unit)
{
    text_addf(out, "%.10g,", number_rounded(value, unit));
}

/* In the order of the heading, as all who read it by its columns rely on. */
static void add_line(struct text *out, const struct order_line *line)
{
    const struct amount *amount = line->first->amount;
    add_cell(out, line->heading, ",");
    add_cell(out, line->item, ",");
    add_figure(out, line->count, "count");
    add_cell(out, order_unit(line), ",");
    add_cell(out, line->goes_on == NULL ? "" : line->goes_on, ",");
    add_figure(out, line->measured, amount->unit);
    add_cell(out, amount->unit, ",");
    if (amount->has_waste)
        add_figure(out, amount->waste_percent, "percent");
    else
        text_add(out, ",");
    add_cell(out, line->first->finding.rule, "\r\n");
}

/* What is not counted stands there without a number: a list that lacks it looks whole. */
static void add_open(struct text *out, const struct quantity_line *line)
{
    add_cell(out, line->heading, ",");
    add_cell(out, line->finding.title, ",,");
    add_cell(out, takeoff_word(line->finding.outcome), ",");
    add_cell(out, line->finding.where == NULL ? "" : line->finding.where, ",,,,");
    add_cell(out, line->finding.rule, "\r\n");
}

void report_order_csv(const struct takeoff *takeoff, struct text *out)
{
    struct order order;
    out->failed = order_make(takeoff, &order) != 0 || out->failed;
    text_add(out, "heading,item,count,unit,for,measured,measured_unit,waste_percent,quantity\r\n");
    for (size_t i = 0; !out->failed && i < order.line_count; i++)
        add_line(out, &order.lines[i]);
    for (size_t i = 0; i < takeoff->line_count; i++) {
        const struct quantity_line *line = &takeoff->lines[i];
        if (line->heading != NULL
            && (line->finding.outcome == OUTCOME_OPEN || line->finding.outcome == OUTCOME_BROKEN))
            add_open(out, line);
    }
    order_free(&order);
}
