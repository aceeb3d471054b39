#include "report/card_sheet.h"

#include "report/card_fit.h"
#include "report/card_words.h"
#include "report/html.h"

struct sheet {
    struct text *out;
    const struct card *card;
    const struct card_section *open; /* whose rows are being added, or NULL */
};

static const char TICK[] = "<span class=\"tick\" role=\"img\" aria-label=\"box to tick\"></span>";

/* Cells --------------------------------------------------------------------- */

/* Releases the words; an empty span is left out. */
static void add_span(struct text *out, const char *kind, struct text *words)
{
    const bool any = words->length > 0 || words->failed;
    if (any)
        text_addf(out, " <span class=\"%s\">", kind);
    html_phrase(out, words);
    if (any)
        text_add(out, "</span>");
}

static void add_places(struct text *out, const struct card_row *row)
{
    struct text places = card_row_places(row);
    add_span(out, "places", &places);
}

static void add_fault(struct text *out, const struct card_row *row)
{
    if (row->wrong == NULL)
        return;
    struct text fault = card_row_fault(row);
    text_add(out, "<span class=\"bad\">");
    html_outcome(out, row->wrong->outcome);
    html_phrase(out, &fault);
    text_add(out, "</span>");
}

/* Short rows of one rule share a cell, which names the places with the figures. */
static void add_what(struct text *out, const struct card_thing *thing, const struct card_row *row,
                     bool places)
{
    text_addf(out, HTML_ROW "<span class=\"name\"><span class=\"number%s\">%zu</span> ",
              row->again ? " unseen" : "", thing->number);
    text_add(out, row->again ? "<span class=\"unseen\">" : "");
    html_text(out, card_title_of(row->items->now));
    text_add(out, row->again ? ": </span>" : "");
    if (places)
        add_places(out, row);
    text_add(out, "</span>");
    add_fault(out, row);
    text_add(out, "</th>");
}

/* An empty cell carries no label, or a telephone would show one with nothing behind it. */
static void add_hit(struct text *out, const struct card_row *row)
{
    struct text hit = card_row_hit(row);
    text_add(out,
             hit.length > 0 ? "<td role=\"cell\" data-label=\"To hit:\">" : "<td role=\"cell\">");
    add_span(out, "hit", &hit);
    text_add(out, "</td>");
}

/* Nothing where the plan is just what is to be hit. */
static void add_plan(struct text *out, const struct card_row *row)
{
    struct text plan = card_row_plan(row), words = TEXT_EMPTY;
    if (plan.length > 0)
        text_addf(&words, "plan %s", text_string(&plan));
    words.failed = words.failed || plan.failed;
    text_free(&plan);
    add_span(out, "plan", &words);
}

/* A line to write on, under its label. */
static void add_line(struct text *out, const char *label)
{
    text_add(out, "<span class=\"write\">");
    html_text(out, label);
    text_add(out, "</span>");
}

/* A line for each place where there are few; else one, for all. */
static void add_lines(struct text *out, const struct card_row *row)
{
    struct text label = TEXT_EMPTY;
    if (row->count > CARD_PLACES_MOST) {
        text_addf(&label, "each of %zu", row->count);
        add_line(out, text_string(&label));
    }
    for (size_t i = 0; row->count <= CARD_PLACES_MOST && i < row->count; i++) {
        const char *where = row->items[i].now->where;
        add_line(out, row->count == 1 || where == NULL ? "" : where);
    }
    out->failed = out->failed || label.failed;
    text_free(&label);
}

/* Few places only: card_row.c gives no boxes to many. */
static void add_boxes(struct text *out, const struct card_row *row)
{
    for (size_t i = 0; i < row->count; i++) {
        text_addf(out, "<span class=\"box\">%s ", TICK);
        html_text(out, row->items[i].now->where);
        text_add(out, "</span>");
    }
}

static void add_room(struct text *out, const struct card_row *row)
{
    struct text found = card_row_measured(row);
    text_add(out, card_room_names(row) && row->count > 2 ? "<td role=\"cell\" class=\"room wide\">"
                                                         : "<td role=\"cell\" class=\"room\">");
    if (!card_room_names(row)) /* lines for several places need all of it */
        add_plan(out, row);
    if (row->room == ROOM_FOUND) {
        text_add(out, "measured ");
        html_text(out, text_string(&found));
    } else if (row->room == ROOM_WRITE) {
        add_lines(out, row);
    } else if (row->room == ROOM_BOXES) {
        add_boxes(out, row);
    }
    text_add(out, "</td>");
    out->failed = out->failed || found.failed;
    text_free(&found);
}

/* Rows ---------------------------------------------------------------------- */

static void start_row(struct text *out, const char *kind)
{
    text_addf(out, "<tr role=\"row\" class=\"row%s\"><td role=\"cell\">%s</td>", kind, TICK);
}

/* "roomless" lets the figure have the room that nothing needs; "again" is a further row
 * of the same rule. */
static void add_row(const struct sheet *sheet, const struct card_thing *thing,
                    const struct card_row *row)
{
    start_row(sheet->out, row->again ? row->room == ROOM_NONE ? " again roomless" : " again"
                          : row->room == ROOM_NONE ? " roomless"
                                                   : "");
    add_what(sheet->out, thing, row, !card_room_names(row));
    add_hit(sheet->out, row);
    add_room(sheet->out, row);
    text_add(sheet->out, "</tr>\n");
}

/* All of it in one row: "Panel thickness: main deck 15/32 in or more; porch ...". */
static void add_short(const struct sheet *sheet, const struct card_thing *thing, bool alone)
{
    struct text *out = sheet->out;
    struct card_row row = card_first_row(sheet->card, thing);
    const bool several = card_row_after(sheet->card, thing, &row).items != NULL;
    const bool bare = card_is_bare(sheet->card, thing);
    const enum card_shape shape = card_shape_of(sheet->card, thing);
    const bool columns = shape == SHAPE_COLUMNS || (shape == SHAPE_HALF && alone && !bare);
    const bool wide = alone || shape == SHAPE_FLOWING;
    start_row(out, columns        ? " roomless"
                   : bare && wide ? " short bare alone"
                   : bare         ? " short bare"
                   : wide         ? " short alone"
                                  : " short");
    add_what(out, thing, &row, !several);
    text_add(out, bare ? "<td role=\"cell\">" : "<td role=\"cell\" data-label=\"To hit:\">");
    for (; row.items != NULL; row = card_row_after(sheet->card, thing, &row)) {
        struct text hit = card_row_hit(&row);
        text_add(out, row.again ? "; " : "");
        if (several)
            add_places(out, &row);
        add_span(out, "hit", &hit);
        add_plan(out, &row);
    }
    text_add(out, "</td><td role=\"cell\" class=\"room\"></td></tr>\n");
}

/* Sections ------------------------------------------------------------------ */

/* Of the section that is open, if any is. */
static void end_section(struct sheet *sheet)
{
    if (sheet->open != NULL)
        text_add(sheet->out, "</tbody>\n");
    sheet->open = NULL;
}

static void start_section(struct sheet *sheet, const struct card_section *section)
{
    end_section(sheet);
    text_addf(sheet->out,
              "<tbody role=\"rowgroup\"%s>\n<tr role=\"row\" class=\"head\">"
              "<th scope=\"rowgroup\" role=\"rowheader\" colspan=\"4\">",
              section->kind == CARD_WRONG ? " class=\"wrong\"" : "");
    html_text(sheet->out, section->title);
    text_add(sheet->out, "</th></tr>\n");
    sheet->open = section;
}

/* left: no half row stands to its left; so may the next one. */
static void add_thing(struct sheet *sheet, const struct card_thing *thing, bool *left)
{
    struct card_thing after = *thing;
    if (!card_is_short(sheet->card, thing)) {
        /* What is to be written on has a row to itself; the next half row begins on the
         * left. */
        for (struct card_row row = card_first_row(sheet->card, thing); row.items != NULL;
             row = card_row_after(sheet->card, thing, &row))
            add_row(sheet, thing, &row);
        *left = true;
        return;
    }
    const bool next_too = card_next(sheet->card, &after) && after.section == thing->section
                          && card_is_short(sheet->card, &after)
                          && card_shape_of(sheet->card, &after) == SHAPE_HALF;
    const bool half = card_shape_of(sheet->card, thing) == SHAPE_HALF && (!*left || next_too);
    add_short(sheet, thing, !half);
    *left = !half || !*left;
}

/* The whole ----------------------------------------------------------------- */

/* Roles by hand: on paper the style takes the display of tables away, and with it their
 * roles. */
static void start_table(struct text *out, const char *caption)
{
    text_addf(out,
              "<table class=\"look stack\" role=\"table\">\n<caption>%s</caption>\n"
              "<colgroup><col><col><col><col></colgroup>\n"
              "<thead role=\"rowgroup\"><tr role=\"row\">" HTML_COLUMN
              "<span class=\"unseen\">Tick</span></th>" HTML_COLUMN "Looked at</th>" HTML_COLUMN
              "To hit</th>" HTML_COLUMN "Planned, measured</th></tr></thead>\n",
              caption);
}

/* The things of the front, or those of the back. */
void card_sheet_table(const struct card *card, bool back, const char *caption, struct text *out)
{
    const size_t in_front = card_left_in_front(card).in_front;
    size_t left_things = 0;
    struct sheet sheet = {.out = out, .card = card};
    struct card_thing thing = {0};
    bool any = false, left = true; /* two short rows stand abreast */
    while (card_next(card, &thing)) {
        if ((thing.section->kind == CARD_LEFT && left_things++ >= in_front) != back)
            continue;
        if (!any)
            start_table(out, caption);
        if (thing.opens || !any) {
            start_section(&sheet, thing.section);
            left = true;
        }
        any = true;
        add_thing(&sheet, &thing, &left);
    }
    end_section(&sheet);
    text_add(out, any ? "</table>\n" : "");
}
