/* card_html.c - the card as two sides of a sheet, see card.h. */
#include "report/card_report.h"

#include "include/eavemark.h"
#include "report/card_row.h"
#include "report/job_drawings.h"
#include "report/html.h"
#include "report/sources.h"

#include <string.h>

struct sheet {
    struct text *out;
    const struct card *card;
    const struct card_section *open; /* whose rows are being added, or NULL */
};

static const char TICK[] = "<span class=\"tick\" role=\"img\" aria-label=\"box to tick\"></span>";

/* Rows -------------------------------------------------------------------------- */

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

static void add_hit(struct text *out, const struct card_row *row)
{
    struct text hit = card_row_hit(row);
    text_add(out,
             hit.length > 0 ? "<td role=\"cell\" data-label=\"To hit:\">" : "<td role=\"cell\">");
    add_span(out, "hit", &hit);
    text_add(out, "</td>");
}

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

/* Is ticking all there is to every row of it? */
static bool is_short(const struct card *card, const struct card_thing *thing)
{
    struct card_row row = card_first_row(card, thing);
    bool all = row.items != NULL;
    for (; all && row.items != NULL; row = card_row_after(card, thing, &row))
        all = row.short_one;
    return all;
}

/* Is there nothing to tell but its title and places? */
static bool is_bare(const struct card *card, const struct card_thing *thing)
{
    const struct card_row row = card_first_row(card, thing);
    struct text hit = card_row_hit(&row), plan = card_row_plan(&row);
    const bool bare = hit.length == 0 && plan.length == 0
                      && card_row_after(card, thing, &row).items == NULL;
    text_free(&hit);
    text_free(&plan);
    return bare;
}

/* How a short row stands on paper. */
enum shape {
    HALF,    /* in half the width: its title, and on a full front what is short beside it */
    COLUMNS, /* in the columns of the others, where it takes one line */
    FLOWING, /* on one line and, where it must be, the next */
};
enum { HALF_WIDTH = 40, WHAT_WIDTH = 36, HIT_WIDTH = 42 }; /* in letters, about */
enum { ROOM_WIDTH = 18 }; /* of the names of two places, each with a line to write on */
enum { SHEET_WIDTH = 88, FAULT_WIDTH = 78 };

/* So many things stand on the front that a line for each would not fit it. */
enum { FULL_FRONT = 42 };

/* Without what earlier stages left, which may go to the back. */
static bool is_full(const struct card *card)
{
    struct card_thing thing = {0};
    size_t count = 0;
    while (card_next(card, &thing))
        count += thing.section->kind != CARD_LEFT;
    return count > FULL_FRONT;
}

/* The figure and the plan. */
static size_t words_beside(const struct card_row *row)
{
    struct text hit = card_row_hit(row), plan = card_row_plan(row);
    const size_t rest = hit.length + (plan.length > 0 ? strlen("plan ") + plan.length : 0);
    text_free(&hit);
    text_free(&plan);
    return rest;
}

/* Judged by the number of letters: the widths of paper and letters are known, those of a
 * screen do not matter. */
static enum shape shape_of(const struct card *card, const struct card_thing *thing)
{
    const struct card_row row = card_first_row(card, thing);
    struct text places = card_row_places(&row);
    const size_t what = strlen(card_title_of(row.items->now)) + places.length;
    const size_t rest = words_beside(&row);
    const bool one = card_row_after(card, thing, &row).items == NULL;
    text_free(&places);
    return one && what + rest <= HALF_WIDTH && (rest == 0 || is_full(card)) ? HALF
           : one && rest > 0 && what <= WHAT_WIDTH && rest <= HIT_WIDTH     ? COLUMNS
                                                                            : FLOWING;
}

/* All of it in one row: "Panel thickness: main deck 15/32 in or more; porch ...". */
static void add_short(const struct sheet *sheet, const struct card_thing *thing, bool alone)
{
    struct text *out = sheet->out;
    struct card_row row = card_first_row(sheet->card, thing);
    const bool several = card_row_after(sheet->card, thing, &row).items != NULL;
    const bool bare = is_bare(sheet->card, thing);
    const enum shape shape = shape_of(sheet->card, thing);
    const bool columns = shape == COLUMNS || (shape == HALF && alone && !bare);
    const bool wide = alone || shape == FLOWING;
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

/* Sections ---------------------------------------------------------------------- */

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
    if (!is_short(sheet->card, thing)) {
        /* What is to be written on has a row to itself; the next half row begins on the
         * left. */
        for (struct card_row row = card_first_row(sheet->card, thing); row.items != NULL;
             row = card_row_after(sheet->card, thing, &row))
            add_row(sheet, thing, &row);
        *left = true;
        return;
    }
    const bool next_too = card_next(sheet->card, &after) && after.section == thing->section
                          && is_short(sheet->card, &after) && shape_of(sheet->card, &after) == HALF;
    const bool half = shape_of(sheet->card, thing) == HALF && (!*left || next_too);
    add_short(sheet, thing, !half);
    *left = !half || !*left;
}

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

/* How much fits ------------------------------------------------------------------- */

/* About how high things stand on paper, in points, with words as long as these. */
enum {
    FRONT_HIGH = 615, /* what head, notes and names leave of the front */
    HEAD_HIGH = 16,
    ROW_HIGH = 15,
    LINE_HIGH = 13,
    QUESTION_HIGH = 26,
    ROOMY_PERCENT = 175, /* of that, when set larger */
};

static size_t names_length(const struct card_row *row)
{
    size_t length = 0;
    for (size_t i = 0; i < row->count; i++)
        length += row->items[i].now->where == NULL ? 0 : strlen(row->items[i].now->where);
    return length;
}

static size_t fault_height(const struct card_row *row)
{
    if (row->wrong == NULL)
        return 0;
    struct text fault = card_row_fault(row);
    const size_t lines = 1 + (strlen("[FAIL] ") + fault.length) / FAULT_WIDTH;
    text_free(&fault);
    return LINE_HIGH * lines;
}

/* An estimate, on the high side: what does not fit goes to the back. */
static size_t row_height(const struct card *card, const struct card_thing *thing,
                         const struct card_row *row)
{
    struct text places = card_row_places(row);
    const size_t what = strlen(card_title_of(row->items->now))
                        + (card_room_names(row) ? 0 : places.length);
    text_free(&places);
    size_t height = ROW_HIGH;
    if (is_short(card, thing))
        return height
               + (shape_of(card, thing) == FLOWING
                      ? LINE_HIGH * ((what + words_beside(row)) / SHEET_WIDTH)
                      : 0);
    /* Two places' lines stand one below the other beside the words, those of more below. */
    const size_t more = what > WHAT_WIDTH ? what / WHAT_WIDTH : 0;
    const bool two_lines = row->room == ROOM_WRITE && row->count == 2
                           && names_length(row) > ROOM_WIDTH;
    height += LINE_HIGH * (card_room_names(row) && more == 0 && two_lines ? 1 : more);
    if (card_room_names(row) && row->count > 2)
        height += LINE_HIGH;
    return height + fault_height(row);
}

static size_t thing_height(const struct card *card, const struct card_thing *thing)
{
    size_t height = thing->opens ? HEAD_HIGH : 0;
    for (struct card_row row = card_first_row(card, thing); row.items != NULL;
         row = card_row_after(card, thing, &row))
        height += row_height(card, thing, &row);
    return height;
}

/* Without what earlier stages left open. */
static size_t front_height(const struct card *card)
{
    struct card_thing thing = {0};
    size_t height = card_asks_in_front(card) ? card->question_count * QUESTION_HIGH : 0;
    while (card_next(card, &thing))
        height += thing.section->kind == CARD_LEFT ? 0 : thing_height(card, &thing);
    /* About 90 letters to a line. */
    struct text asked = card_to_ask(card, true);
    height += asked.length > 0 ? LINE_HIGH * (1 + asked.length / 90) : 0;
    text_free(&asked);
    return height;
}

/* What earlier stages left open stands on the front as far as there is room for it. */
struct left {
    size_t in_front; /* so many things of it */
    size_t height;   /* of the front with them */
};

static struct left left_in_front(const struct card *card)
{
    struct card_thing thing = {0};
    struct left left = {.height = front_height(card)};
    while (card_next(card, &thing)) {
        if (thing.section->kind != CARD_LEFT)
            continue;
        const size_t height = left.height + thing_height(card, &thing);
        if (height > FRONT_HIGH)
            break;
        left = (struct left){.in_front = left.in_front + 1, .height = height};
    }
    return left;
}

/* So few things that they may be set larger. */
static bool is_roomy(const struct card *card)
{
    return left_in_front(card).height * ROOMY_PERCENT / 100 <= FRONT_HIGH;
}

/* Tables -------------------------------------------------------------------------- */

/* The things of the front, or those of the back. */
static void add_table(const struct card *card, bool back, const char *caption, struct text *out)
{
    const size_t in_front = left_in_front(card).in_front;
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

/* Questions --------------------------------------------------------------------- */

static void add_question(void *data, size_t number, const char *says, const char *waiting)
{
    struct text *out = data;
    /* The list begins with the first, so that without questions there is none. */
    if (number == 1)
        text_add(out, "<section class=\"ask\" aria-labelledby=\"ask\">\n"
                      "<h2 id=\"ask\">Questions still open</h2>\n<ol>\n");
    text_add(out, "<li>");
    html_text(out, says);
    if (waiting[0] != '\0') {
        text_add(out, " <span class=\"waiting\">Waiting: ");
        html_text(out, waiting);
        text_add(out, ".</span>");
    }
    text_add(out, "<span class=\"write\"></span></li>\n");
}

static void add_questions(const struct card *card, struct text *out)
{
    card_questions(card, add_question, out);
    if (card->question_count > 0)
        text_add(out, "</ol>\n</section>\n");
}

/* Front and back ------------------------------------------------------------------ */

static void add_head(const struct card *card, struct text *out)
{
    const struct result *result = &card->now;
    struct text place = TEXT_EMPTY;
    text_add(&place, result->jurisdiction_title);
    text_add(out, "<header>\n");
    html_element(out, "p class=\"what\"", card_title(card->stage));
    if (result->invented)
        text_add(out, "<p class=\"invented\"><strong>INVENTED PLACE</strong>: no real county, and "
                      "not the law anywhere</p>\n");
    html_element(out, "h1", result->job);
    text_add(out, "<dl class=\"head\">\n");
    for (size_t i = 0; i < result->about_count; i++)
        html_pair(out, result->about[i].label, result->about[i].says);
    html_pair_phrase(out, "Place", &place);
    text_add(out, "</dl>\n</header>\n");
}

/* Releases what is to be asked. */
static void add_department(struct text asked, struct text *out)
{
    const bool any = asked.length > 0;
    if (any)
        text_add(out, "<p class=\"department\"><strong>Ask the building department</strong>: ");
    html_phrase(out, &asked);
    if (any)
        text_add(out, ".</p>\n");
}

static void add_front(const struct card *card, struct text *out)
{
    struct text asked = card_to_ask(card, true),
                notes = card_notes(card, left_in_front(card).in_front);
    /* The front is what is taken up the roof; all else is the back. */
    text_add(out, "<section class=\"front\" aria-labelledby=\"look\">\n"
                  "<h2 id=\"look\">What will be looked at</h2>\n");
    add_table(card, false,
              "In the order of a walk over the job. What is on the roof counts, "
              "not the plan.",
              out);
    add_department(asked, out);
    if (card_asks_in_front(card))
        add_questions(card, out);
    text_add(out, "<p class=\"notes\">");
    html_phrase(out, &notes);
    text_add(out, "</p>\n<div class=\"names\"><span class=\"write\">Looked over by</span>"
                  "<span class=\"write\">Date</span></div>\n</section>\n");
}

static void add_cited(void *data, const char *numbers, const char *cites)
{
    struct text *out = data;
    text_add(out, "<li><strong>");
    html_text(out, numbers);
    text_add(out, "</strong> ");
    html_text(out, cites);
    text_add(out, "</li>\n");
}

static void add_cites(const struct card *card, struct text *out)
{
    struct text signs = card_signs(card), list = TEXT_EMPTY;
    if (!card_all_cites(card, add_cited, &list))
        list.failed = true;
    text_add(out, "<section class=\"cited\" aria-labelledby=\"cited\">\n"
                  "<h2 id=\"cited\">Sections, by the number of the row</h2>\n<p>");
    text_add(out, "Law of ");
    html_text(out, card->now.jurisdiction);
    text_addf(out, " on %s. ", card->now.date);
    html_phrase(out, &signs);
    text_add(out, "</p>\n");
    for (size_t i = 0; i < card->now.doubt_count; i++)
        html_element(out, "p", card->now.doubts[i]);
    for (size_t i = 0; i < card->now.differ_count; i++)
        html_element(out, "p", card->now.differs[i]);
    struct text facts = sources_head(&card->now), words = TEXT_EMPTY;
    if (facts.length > 0)
        text_addf(&words, "Facts not of the job itself: %s", text_string(&facts));
    if (words.length > 0)
        html_element(out, "p", text_string(&words));
    out->failed = out->failed || facts.failed || words.failed;
    text_free(&facts);
    text_free(&words);
    if (list.length > 0) {
        text_add(out, "<ul>\n");
        text_add(out, text_string(&list));
        text_add(out, "</ul>\n");
    }
    text_add(out, "</section>\n");
    out->failed = out->failed || list.failed;
    text_free(&list);
}

static void add_back(const struct card *card, struct text *out)
{
    text_add(out, "<div class=\"back\">\n");
    add_table(card, true, "What an earlier look left open.", out);
    if (!card_asks_in_front(card))
        add_questions(card, out);
    if (card_to_ask_in_back(card))
        add_department(card_to_ask(card, false), out);
    add_cites(card, out);
    /* Cautions of the stage stand on the card itself: there is no report beside it on the
     * roof. */
    html_safety(out, &card->now, false);
    job_drawings_add(&(struct drawings){.result = &card->now, .card = card}, out);
    text_add(out, "</div>\n");
}

void report_card_html(const struct card *card, struct text *out)
{
    struct text title = TEXT_EMPTY;
    text_addf(&title, "%s - %s", card->now.job, card_title(card->stage));
    html_start(out, text_string(&title), is_roomy(card) ? "card roomy" : "card");
    add_head(card, out);
    text_add(out, "<main id=\"main\" tabindex=\"-1\">\n");
    add_front(card, out);
    add_back(card, out);
    text_add(out, "</main>\n");
    html_close(out, &card->now);
    html_end(out);
    out->failed = out->failed || title.failed;
    text_free(&title);
}
