/* card_html.c - the card as one page, see card.h. */
#include "report/card.h"

#include "include/eavemark.h"
#include "report/card_row.h"
#include "report/drawings.h"
#include "report/html.h"

struct sheet {
    struct text *out;
    const struct card *card;
    const cJSON *job; /* what drawings are made from */
    bool room;        /* something is to be written down */
};

static void add_bad(struct text *out, const struct finding *finding)
{
    if (finding == NULL)
        return;
    text_add(out, "<span class=\"bad\">");
    html_outcome(out, finding->outcome);
    struct text fault = card_row_fault(finding);
    html_phrase(out, &fault);
    text_add(out, "</span>");
}

static void add_what(struct text *out, const struct card_row *row)
{
    struct text places = card_row_places(row);
    text_add(out, HTML_ROW);
    text_add(out, row->again ? "<span class=\"unseen\">" : "");
    html_text(out, card_row_title(row));
    text_add(out, row->again ? ": </span>" : "");
    if (places.length > 0) {
        /* Beside lines to write on, each for a place, paper has no room to say it twice. */
        const bool twice = row->to_write && row->count <= CARD_PLACES_MOST && row->count > 1;
        text_addf(out, " <span class=\"places%s\">", twice ? " twice" : "");
        html_text(out, text_string(&places));
        text_add(out, "</span>");
    }
    out->failed = out->failed || places.failed;
    text_free(&places);
    text_add(out, "</th>");
}

static void add_hit(const struct sheet *sheet, const struct card_row *row)
{
    struct text *out = sheet->out;
    struct text hit = card_row_hit(row), cites = TEXT_EMPTY;
    if (!row->cited)
        cites = card_row_cites(sheet->card, row);
    text_add(out, "<td role=\"cell\" data-label=\"To hit:\"><span class=\"hit\">");
    if (hit.length == 0)
        text_add(&hit, "as it says");
    html_phrase(out, &hit);
    text_add(out, "</span>");
    const bool cited = cites.length > 0;
    text_add(out, cited ? " <span class=\"cite\">" : "");
    html_phrase(out, &cites);
    text_add(out, cited ? "</span>" : "");
    add_bad(out, row->failed);
    add_bad(out, row->broken);
    text_add(out, "</td>");
}

/* A duty that is planned as it must be: on paper its short row says no more. */
static bool plan_goes_without_saying(const struct card_row *row)
{
    const struct finding *plan = row->items->plan;
    return row->short_one && plan->compared && plan->required.kind == VALUE_YES_NO
        && plan->found.kind == VALUE_YES_NO && plan->found.yes == plan->required.yes;
}

static void add_plan(struct text *out, const struct card_row *row)
{
    struct text plan = card_row_plan(row);
    text_addf(out, "<td role=\"cell\"%s%s>", plan.length > 0 ? " data-label=\"Planned:\"" : "",
              plan_goes_without_saying(row) ? " class=\"unsaid\"" : "");
    html_phrase(out, &plan);
    text_add(out, "</td>");
}

/* A line to write on, under its label; half: two of them share the width. */
static void add_line(struct text *out, const char *label, bool half)
{
    text_add(out, half ? "<span class=\"write half\">" : "<span class=\"write\">");
    html_text(out, label);
    text_add(out, "</span>");
}

static void add_room(struct text *out, const struct card_row *row)
{
    struct text words = card_row_measured(row);
    const bool any = row->to_write || row->items->measured;
    text_add(out, any ? "<td role=\"cell\" data-label=\"Measured:\">" : "<td role=\"cell\">");
    html_text(out, text_string(&words));
    if (row->to_write && row->count > CARD_PLACES_MOST) {
        text_addf(&words, "all %zu", row->count);
        add_line(out, text_string(&words), false);
    } else if (row->to_write) {
        for (size_t i = 0; i < row->count; i++) {
            const char *where = row->items[i].now->where;
            add_line(out, row->count == 1 || where == NULL ? "" : where, row->count > 2);
        }
    }
    text_add(out, "</td>");
    out->failed = out->failed || words.failed;
    text_free(&words);
}

/* alone: on paper no other short row stands beside it. */
static void add_row(const struct sheet *sheet, const struct card_row *row, bool alone)
{
    struct text *out = sheet->out;
    text_addf(out, "<tr role=\"row\" class=\"row%s%s\"><td role=\"cell\"><span class=\"tick\" "
                   "role=\"img\" aria-label=\"box to tick\"></span></td>",
              row->short_one ? " short" : "", alone ? " alone" : "");
    add_what(out, row);
    add_hit(sheet, row);
    add_plan(out, row);
    if (sheet->room)
        add_room(out, row);
    text_add(out, "</tr>\n");
}

/* The next row from item number `start` on that is to be ticked; one without
 * items when there is none. */
static struct card_row row_from(const struct sheet *sheet, const struct card_section *section,
                                size_t start)
{
    while (start < section->count) {
        const struct card_row row = card_row(sheet->card, section, start);
        if (!card_item_waits(row.items))
            return row;
        start += row.count;
    }
    return (struct card_row){.items = NULL};
}

static void add_section(const struct sheet *sheet, const struct card_section *section)
{
    struct text *out = sheet->out;
    if (card_section_waits(section))
        return;
    text_addf(out, "<tbody role=\"rowgroup\">\n<tr role=\"row\" class=\"head\">"
                   "<th scope=\"rowgroup\" role=\"rowheader\" colspan=\"%d\">",
              sheet->room ? 5 : 4);
    html_text(out, section->title);
    text_add(out, "</th></tr>\n");
    bool left = true; /* two short rows stand abreast */
    for (struct card_row row = row_from(sheet, section, 0); row.items != NULL;) {
        const size_t next = (size_t)(row.items - section->items) + row.count;
        const struct card_row after = row_from(sheet, section, next);
        add_row(sheet, &row, row.short_one && left && !after.short_one);
        left = !row.short_one || !left;
        row = after;
    }
    text_add(out, "</tbody>\n");
}

/* Is there anything to write down, or that was? Papers are only looked at. */
static bool needs_room(const struct card *card)
{
    for (size_t s = 0; s < card->section_count; s++)
        for (size_t i = 0; i < card->sections[s].count; i++) {
            const struct card_row row = card_row(card, &card->sections[s], i);
            if (row.to_write || row.items->measured)
                return true;
        }
    return false;
}

static void add_sections(const struct sheet *sheet)
{
    struct text *out = sheet->out;
    text_addf(out, "<section aria-labelledby=\"look\">\n<h2 id=\"look\">What will be looked "
                   "at</h2>\n<table class=\"look stack%s\" role=\"table\">\n"
                   "<caption>In the order of a walk over the job. What is on the roof counts, "
                   "not the plan. ",
              sheet->room ? "" : " plain");
    struct text signs = card_signs(sheet->card);
    html_phrase(out, &signs);
    text_addf(out, "</caption>\n<colgroup><col><col><col><col>%s</colgroup>\n"
                   "<thead role=\"rowgroup\"><tr role=\"row\">" HTML_COLUMN
                   "<span class=\"unseen\">Tick</span></th>" HTML_COLUMN "Looked at</th>"
                   HTML_COLUMN "To hit</th>" HTML_COLUMN "Planned</th>%s</tr></thead>\n",
              sheet->room ? "<col>" : "",
              sheet->room ? HTML_COLUMN "Measured</th>" : "");
    for (size_t s = 0; s < sheet->card->section_count; s++)
        add_section(sheet, &sheet->card->sections[s]);
    text_add(out, "</table>\n</section>\n");
}

static void add_question(void *data, size_t number, const char *says, const char *waiting)
{
    struct text *out = data;
    if (number == 1)
        text_add(out, "<section class=\"ask\" aria-labelledby=\"ask\">\n"
                      "<h2 id=\"ask\">Questions still open</h2>\n<ol>\n");
    text_add(out, "<li>");
    html_text(out, says);
    if (waiting[0] != '\0') {
        text_add(out, " <span class=\"cite\">Waiting: ");
        html_text(out, waiting);
        text_add(out, ".</span>");
    }
    text_add(out, "<span class=\"write\"></span></li>\n");
}

static void add_questions(const struct sheet *sheet)
{
    const size_t before = sheet->out->length;
    card_questions(sheet->card, add_question, sheet->out);
    if (sheet->out->length > before)
        text_add(sheet->out, "</ol>\n</section>\n");
}

void report_card_html(const struct card *card, const cJSON *job, struct text *out)
{
    const struct sheet sheet = {.out = out, .card = card, .job = job, .room = needs_room(card)};
    struct text title = TEXT_EMPTY, what = TEXT_EMPTY;
    text_addf(&title, "%s - %s", card->now.job, card_title(card->stage));
    text_addf(&what, "%s. Eavemark " EAVEMARK_VERSION ", pre-check of a reroof",
              card_title(card->stage));
    html_start(out, text_string(&title), "card");
    html_heading(out, text_string(&what), &card->now, true);
    text_add(out, "<main id=\"main\" tabindex=\"-1\">\n");
    add_sections(&sheet);
    add_questions(&sheet);
    drawings_add(&(struct drawings){.job = job, .result = &card->now, .card = card}, out);
    html_safety(out, &card->now, false);
    text_add(out, "<div class=\"names\"><span class=\"write\">Looked over by</span>"
                  "<span class=\"write\">Date</span></div>\n</main>\n");
    html_close(out, &card->now);
    html_end(out);
    out->failed = out->failed || title.failed || what.failed;
    text_free(&title);
    text_free(&what);
}
