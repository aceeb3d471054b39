/* card_html.c - the card as two sides of a sheet, see card_report.h. */
#include "report/card_report.h"

#include "report/card_cites.h"
#include "report/card_fit.h"
#include "report/card_notes.h"
#include "report/card_questions.h"
#include "report/card_sheet.h"
#include "report/card_words.h"
#include "report/html.h"
#include "report/job_drawings.h"
#include "report/sources.h"

/* Questions ----------------------------------------------------------------- */

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

/* Front and back ------------------------------------------------------------ */

/* As few words as the front of a sheet has room for. */
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
                notes = card_notes(card, card_left_in_front(card).in_front);
    /* The front is what is taken up the roof; all else is the back. */
    text_add(out, "<section class=\"front\" aria-labelledby=\"look\">\n"
                  "<h2 id=\"look\">What will be looked at</h2>\n");
    card_sheet_table(card, false,
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

/* For card_all_cites: the rows' numbers, and what they rest on. */
static void add_cited(void *data, const char *numbers, const char *cites)
{
    struct text *out = data;
    text_add(out, "<li><strong>");
    html_text(out, numbers);
    text_add(out, "</strong> ");
    html_text(out, cites);
    text_add(out, "</li>\n");
}

/* Facts that the place, the shop sheet or the plan says; nothing when there are none. */
static void add_facts(const struct card *card, struct text *out)
{
    struct text facts = sources_head(&card->now), words = TEXT_EMPTY;
    if (facts.length > 0)
        text_addf(&words, "Facts not of the job itself: %s", text_string(&facts));
    if (words.length > 0)
        html_element(out, "p", text_string(&words));
    out->failed = out->failed || facts.failed || words.failed;
    text_free(&facts);
    text_free(&words);
}

/* The sections as a list, each with the numbers of the rows that rest on it. */
static void add_cite_list(const struct card *card, struct text *out)
{
    struct text list = TEXT_EMPTY;
    if (!card_all_cites(card, add_cited, &list))
        list.failed = true;
    if (list.length > 0) {
        text_add(out, "<ul>\n");
        text_add(out, text_string(&list));
        text_add(out, "</ul>\n");
    }
    out->failed = out->failed || list.failed;
    text_free(&list);
}

static void add_cites(const struct card *card, struct text *out)
{
    struct text signs = card_signs(card);
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
    add_facts(card, out);
    add_cite_list(card, out);
    text_add(out, "</section>\n");
}

static void add_back(const struct card *card, struct text *out)
{
    text_add(out, "<div class=\"back\">\n");
    card_sheet_table(card, true, "What an earlier look left open.", out);
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

/* Out of memory shows in out->failed only: the page is then not to be used. */
void report_card_html(const struct card *card, struct text *out)
{
    struct text title = TEXT_EMPTY;
    text_addf(&title, "%s - %s", card->now.job, card_title(card->stage));
    html_start(out, text_string(&title), card_is_roomy(card) ? "card roomy" : "card");
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
