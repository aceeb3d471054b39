/* report_html.c - the one screen as a page, see report.h. The content is that of
 * text.c, in the same order. */
#include "report/report.h"

#include "include/eavemark.h"
#include "job/fields.h"
#include "report/confirm.h"
#include "report/digest.h"
#include "report/gloss.h"
#include "report/html.h"
#include "report/sources.h"
#include "report/telling.h"

#include <string.h>

enum { CONFIRM_MOST = 12 /* rows of figures to confirm */ };

struct sheet {
    struct text *out;
    const struct result *result;
    const struct digest *digest;
};

/* <section> with its heading: the word, in a frame of its own, and what it is about;
 * releases the gloss. */
static void start_part(const struct sheet *sheet, const char *id, const char *word,
                       struct text gloss)
{
    text_addf(sheet->out,
              "<section class=\"part\" aria-labelledby=\"%s\">\n<h2 id=\"%s\">"
              "<span class=\"word %s\">%s</span> <span class=\"about\">",
              id, id, id, word);
    html_phrase(sheet->out, &gloss);
    text_add(sheet->out, "</span></h2>\n");
}

static void end_part(const struct sheet *sheet)
{
    text_add(sheet->out, "</section>\n");
}

/* Releases the phrase; open as for html_element. */
static void add_phrase(const struct sheet *sheet, const char *open, struct text phrase)
{
    text_addf(sheet->out, "<%s>", open);
    html_phrase(sheet->out, &phrase);
    text_addf(sheet->out, "</%.*s>\n", (int)strcspn(open, " "), open);
}

/* The heading ------------------------------------------------------------------------------- */

/* Releases the phrase; nothing for an empty one. */
static void add_pair(const struct sheet *sheet, const char *label, struct text phrase)
{
    html_pair_phrase(sheet->out, label, &phrase);
}

static void add_heading(const struct sheet *sheet)
{
    const struct result *result = sheet->result;
    html_start_heading(sheet->out, "Eavemark " EAVEMARK_VERSION ", pre-check of a reroof", result);
    text_add(sheet->out, "<dl class=\"head\">\n");
    add_pair(sheet, "Place", gloss_place(result));
    add_pair(sheet, "Book", gloss_book(result));
    add_pair(sheet, "Read", gloss_read(result));
    for (size_t i = 0; i < result->doubt_count; i++)
        html_pair(sheet->out, "Doubt", result->doubts[i]);
    add_pair(sheet, "Facts", sources_head(result));
    for (size_t i = 0; i < result->differ_count; i++)
        html_pair(sheet->out, "Differs", result->differs[i]);
    add_pair(sheet, "Stage", gloss_stage(result));
    for (size_t i = 0; i < result->about_count; i++)
        html_pair(sheet->out, result->about[i].label, result->about[i].says);
    add_pair(sheet, "Count", gloss_counts(result, sheet->digest));
    text_add(sheet->out, "</dl>\n</header>\n");
}

/* What fails, and what to look at ---------------------------------------------------------- */

/* Findings that read the same: one title, one comparison. */
static void add_paragraph(const struct sheet *sheet, const struct paragraph *paragraph)
{
    struct text title = telling_title(paragraph);
    text_add(sheet->out, "<h3>");
    html_phrase(sheet->out, &title);
    text_add(sheet->out, " <span class=\"rule\">[");
    html_text(sheet->out, paragraph->findings[0]->rule);
    text_add(sheet->out, "]</span></h3>\n");
    add_phrase(sheet, "p", telling_compared(sheet->result, paragraph));
}

/* telling_mend and its like; NULL past the last. */
typedef const char *nth_of_block(const struct finding_block *block, size_t nth);

static void add_labelled(const struct sheet *sheet, const struct finding_block *block,
                         const char *label, nth_of_block *nth_of)
{
    const char *text = nth_of(block, 0);
    if (text == NULL)
        return;
    text_addf(sheet->out, "<div><dt>%s</dt>", label);
    for (size_t i = 0; (text = nth_of(block, i)) != NULL; i++)
        html_element(sheet->out, "dd", text);
    text_add(sheet->out, "</div>\n");
}

/* A block is one thing to mend; it may have several titles. */
static void add_blocks(const struct sheet *sheet, const struct finding_blocks *blocks)
{
    text_add(sheet->out, "<ol class=\"blocks\">\n");
    for (size_t i = 0; i < blocks->count; i++) {
        const struct finding_block *block = &blocks->items[i];
        text_add(sheet->out, "<li>\n");
        for (size_t j = 0; j < block->count; j++)
            add_paragraph(sheet, &block->paragraphs[j]);
        text_add(sheet->out, "<dl>\n");
        add_labelled(sheet, block, "Doubt", telling_dispute);
        add_labelled(sheet, block, "Mend", telling_mend);
        add_labelled(sheet, block, "Care", telling_caution);
        text_add(sheet->out, "</dl>\n</li>\n");
    }
    text_add(sheet->out, "</ol>\n");
}

/* Nothing to fix: the part is left out, and the head says so by its counts. */
static void add_fix(const struct sheet *sheet)
{
    if (sheet->digest->fix.count == 0)
        return;
    start_part(sheet, "fix", "Fix", gloss_fix(sheet->digest));
    add_blocks(sheet, &sheet->digest->fix);
    end_part(sheet);
}

static void add_look(const struct sheet *sheet)
{
    if (sheet->digest->look.count == 0)
        return;
    start_part(sheet, "look", "Look", gloss_look(sheet->digest));
    add_blocks(sheet, &sheet->digest->look);
    end_part(sheet);
}

/* What is open ----------------------------------------------------------------------------- */

static void add_pendings(const struct sheet *sheet, const struct pendings *pendings)
{
    text_add(sheet->out, "<ul class=\"lines\">\n");
    for (size_t i = 0; i < pendings->count; i++) {
        struct text line = telling_waiting(&pendings->items[i]);
        text_addf(&line, ": %s", pendings->items[i].says);
        add_phrase(sheet, "li", line);
    }
    text_add(sheet->out, "</ul>\n");
}

/* Releases the gloss, used or not. */
static void add_pending_part(const struct sheet *sheet, const struct pendings *pendings,
                             const char *id, const char *word, struct text gloss)
{
    if (pendings->count == 0) {
        text_free(&gloss);
        return;
    }
    start_part(sheet, id, word, gloss);
    add_pendings(sheet, pendings);
    end_part(sheet);
}

/* The questions that can be answered in one place, so that nobody climbs twice. */
static void add_asked_of(const struct sheet *sheet, const char *answer)
{
    const struct result *result = sheet->result;
    bool any = false;
    for (size_t i = 0; i < result->asked_count; i++) {
        if (strcmp(result->asked[i].answer, answer) != 0 || !gloss_is_shown(result, i))
            continue;
        if (!any) {
            html_element(sheet->out, "h3", telling_answer(answer));
            text_add(sheet->out, "<ul class=\"lines\">\n");
        }
        any = true;
        add_phrase(sheet, "li", telling_question(&result->asked[i]));
    }
    text_add(sheet->out, any ? "</ul>\n" : "");
}

/* Grouped by where the answer is found; questions past the most are only counted. */
static void add_answer(const struct sheet *sheet)
{
    const struct digest *digest = sheet->digest;
    struct text more = gloss_not_shown(sheet->result);
    if (digest->asked + digest->unasked.findings > 0) {
        start_part(sheet, "answer", "Answer", gloss_answer(sheet->result, digest));
        for (const char *const *answer = FIELD_ANSWERS; *answer != NULL; answer++)
            add_asked_of(sheet, *answer);
        if (more.length > 0)
            html_element(sheet->out, "p", text_string(&more));
        if (digest->unasked.count > 0) {
            html_element(sheet->out, "h3", "Cannot be told from the job");
            add_pendings(sheet, &digest->unasked);
        }
        end_part(sheet);
    }
    sheet->out->failed = sheet->out->failed || more.failed;
    text_free(&more);
}

/* Only how many, by stage: nobody can answer them today. */
static void add_later(const struct sheet *sheet)
{
    if (sheet->digest->later == 0)
        return;
    start_part(sheet, "later", "Later", gloss_later(sheet->digest));
    end_part(sheet);
}

/* What is met ------------------------------------------------------------------------------- */

/* By topic, since each by itself asks for nothing. */
static void add_met(const struct sheet *sheet)
{
    const struct digest *digest = sheet->digest;
    if (digest->met == 0)
        return;
    start_part(sheet, "met", "Met", gloss_met(digest));
    add_phrase(sheet, "p", telling_topics(digest));
    end_part(sheet);
}

static void add_confirm(const struct sheet *sheet)
{
    const struct digest *digest = sheet->digest;
    if (digest->confirm_count == 0)
        return;
    start_part(sheet, "confirm", "Confirm", gloss_confirm(digest));
    confirm_html(sheet->out, sheet->result, digest, CONFIRM_MOST);
    if (digest->confirm_count > CONFIRM_MOST)
        text_addf(sheet->out, "<p>and %zu more: check --all</p>\n",
                  digest->confirm_count - CONFIRM_MOST);
    end_part(sheet);
}

/* In brief; the full text with its source is in --all. */
static void add_care(const struct sheet *sheet)
{
    const struct result *result = sheet->result;
    struct text gloss = TEXT_EMPTY;
    if (result->safety_count == 0)
        return;
    text_add(&gloss, "what can hurt the crew at this stage");
    start_part(sheet, "care", "Care", gloss);
    text_add(sheet->out, "<ul class=\"lines\">\n");
    for (size_t i = 0; i < result->safety_count; i++)
        html_element(sheet->out, "li",
                     result->safety[i].brief != NULL ? result->safety[i].brief
                                                     : result->safety[i].says);
    text_add(sheet->out, "</ul>\n");
    end_part(sheet);
}

/* Worst first, as on the screen in text. */
static void add_page(const struct sheet *sheet)
{
    const struct digest *digest = sheet->digest;
    struct text title = TEXT_EMPTY;
    text_addf(&title, "%s - pre-check of a reroof", sheet->result->job);
    html_start(sheet->out, text_string(&title), "screen");
    sheet->out->failed = sheet->out->failed || title.failed;
    text_free(&title);
    add_heading(sheet);
    text_add(sheet->out, "<main id=\"main\" tabindex=\"-1\">\n");
    add_pending_part(sheet, &digest->broken, "broken", "Broken", gloss_broken(digest));
    add_fix(sheet);
    add_look(sheet);
    add_answer(sheet);
    add_pending_part(sheet, &digest->unknown, "unknown", "Not known here", gloss_unknown(digest));
    add_later(sheet);
    add_met(sheet);
    add_confirm(sheet);
    add_care(sheet);
    text_add(sheet->out, "<p class=\"gloss\">check --all prints every finding, with sources, "
                         "arithmetic and drawings.</p>\n</main>\n");
    html_close(sheet->out, sheet->result);
    html_end(sheet->out);
}

void report_html(const struct result *result, struct text *out)
{
    struct digest digest;
    digest_make(result, &digest);
    const struct sheet sheet = {out, result, &digest};
    if (digest.arena.failed)
        out->failed = true;
    else
        add_page(&sheet);
    digest_free(&digest);
}
