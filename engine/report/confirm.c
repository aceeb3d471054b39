#include "report/confirm.h"

#include "base/utf8.h"
#include "report/html.h"
#include "report/telling.h"
#include "report/wrap.h"

#include <string.h>

enum { LIST_HANG = 2, NAME_MOST = 40, DEMAND_FEWEST = 20 /* columns */ };

/* Words in so many columns, cut where they are too long. */
static size_t add_cut(struct text *out, const struct text *phrase, size_t columns)
{
    struct text safe = TEXT_EMPTY;
    utf8_add_printable(&safe, text_string(phrase));
    const char *at = text_string(&safe);
    const size_t all = utf8_columns(at);
    /* Three columns for the dots that say it was cut. */
    const bool cut = all > columns;
    for (size_t i = 0; i < (cut ? columns - 3 : all); i++) {
        const size_t bytes = utf8_length((const unsigned char *)at, strlen(at));
        text_add_n(out, at, bytes == 0 ? 1 : bytes);
        at += bytes == 0 ? 1 : bytes;
    }
    text_add(out, cut ? "..." : "");
    out->failed = out->failed || phrase->failed || safe.failed;
    text_free(&safe);
    return cut ? columns : all;
}

/* One line: figure, what it says, where, and how it is known. What it says gives way. */
static void add_line(struct text *out, const struct result *result, const struct doubtful *doubtful)
{
    const struct maker *maker = doubtful->maker;
    struct text name = TEXT_EMPTY, source = TEXT_EMPTY;
    struct text demand = telling_demand(doubtful);
    struct text section = telling_section(result, maker->cite);
    text_addf(&name, "%s:", maker->figure);
    text_addf(&source, " (%s%s%s)", telling_known(maker->cite), section.length > 0 ? ", " : "",
              text_string(&section));
    text_addf(out, "%*s", LIST_HANG, "");
    size_t left = WRAP_COLUMNS - LIST_HANG;
    left -= add_cut(out, &name, NAME_MOST) + 1;
    text_add(out, " ");
    /* Name and source keep their room; the demand has what is left, but never less than
     * 20 columns. */
    const size_t wanted = utf8_columns(text_string(&source));
    left -= add_cut(out, &demand, left > wanted + DEMAND_FEWEST ? left - wanted : DEMAND_FEWEST);
    add_cut(out, &source, left);
    text_add(out, "\n");
    out->failed = out->failed || section.failed;
    text_free(&name);
    text_free(&source);
    text_free(&demand);
    text_free(&section);
}

/* No heading and no count: those are the report's own. */
void confirm_text(struct text *out, const struct result *result, const struct digest *digest,
                  size_t most)
{
    for (size_t i = 0; i < digest->confirm_count && i < most; i++)
        add_line(out, result, &digest->confirm[i]);
}

/* The same four columns as the line in text, none of them cut. */
static void add_row(struct text *out, const struct result *result, const struct doubtful *doubtful)
{
    struct text demand = telling_demand(doubtful);
    struct text section = telling_section(result, doubtful->maker->cite);
    text_add(out, "<tr role=\"row\">" HTML_ROW);
    html_text(out, doubtful->maker->figure);
    text_add(out, "</th><td role=\"cell\">");
    html_phrase(out, &demand);
    text_add(out, "</td><td role=\"cell\">");
    html_phrase(out, &section);
    text_add(out, "</td><td role=\"cell\">");
    html_text(out, telling_known(doubtful->maker->cite));
    text_add(out, "</td></tr>\n");
}

/* Columns by class: the style gives their widths, and turns the table to blocks on a
 * telephone. */
void confirm_html(struct text *out, const struct result *result, const struct digest *digest,
                  size_t most)
{
    text_add(out,
             "<table class=\"figures stack\" role=\"table\">\n"
             "<caption class=\"unseen\">Figures to confirm</caption>\n"
             "<colgroup><col><col><col><col></colgroup>\n"
             "<thead role=\"rowgroup\"><tr role=\"row\">" HTML_COLUMN "Figure</th>" HTML_COLUMN
             "Demands</th>" HTML_COLUMN "Written in</th>" HTML_COLUMN "Known</th></tr></thead>\n"
             "<tbody role=\"rowgroup\">\n");
    for (size_t i = 0; i < digest->confirm_count && i < most; i++)
        add_row(out, result, &digest->confirm[i]);
    text_add(out, "</tbody>\n</table>\n");
}
