/* card_text.c - the card for a printer that knows letters only, see card.h. */
#include "report/card.h"

#include "include/eavemark.h"
#include "report/card_row.h"
#include "report/page.h"
#include "report/value.h"
#include "report/wrap.h"

#include <string.h>

enum { TICK = 4, LABEL = 14, PRINT_SHOWN = 16 };

static const char LINE[] = "____________";

static void start_label(struct text *out, const char *label)
{
    text_addf(out, "%*s%-*s", TICK, "", LABEL - TICK, label);
}

/* A labelled line of a phrase, which is released; nothing for an empty one. */
static void add_phrase(struct text *out, const char *label, struct text phrase)
{
    if (phrase.length == 0 && !phrase.failed)
        return;
    start_label(out, label);
    page_phrase(out, LABEL, &phrase);
}

static struct text title_of(const struct card_row *row)
{
    struct text title = TEXT_EMPTY, places = card_row_places(row);
    if (row->again)
        text_addf(&title, "the same: %s", text_string(&places));
    else
        text_addf(&title, "%s%s%s [%s]", card_row_title(row), places.length > 0 ? ": " : "",
                  text_string(&places), row->items->now->rule);
    title.failed = title.failed || places.failed;
    text_free(&places);
    return title;
}

/* The figure and, beside it, what is planned. */
static struct text hit_of(const struct card *card, const struct card_row *row)
{
    struct text hit = card_row_hit(row), plan = card_row_plan(row);
    if (hit.length == 0)
        text_add(&hit, "as it says");
    if (plan.length > 0)
        text_addf(&hit, " (planned: %s)", text_string(&plan));
    text_free(&plan);
    struct text cites = card_row_cites(card, row);
    if (cites.length > 0 && !row->cited)
        text_addf(&hit, " - %s", text_string(&cites));
    text_free(&cites);
    return hit;
}

static void add_room(struct text *out, const struct card_row *row)
{
    struct text room = card_row_measured(row);
    if (row->to_write && row->count > CARD_PLACES_MOST) {
        text_addf(&room, "all %zu: %s", row->count, LINE);
    } else if (row->to_write) {
        for (size_t i = 0; i < row->count; i++) {
            const char *where = row->items[i].now->where;
            text_addf(&room, "%s%s%s%s", i > 0 ? "  " : "", where == NULL ? "" : where,
                      where == NULL ? "" : " ", LINE);
        }
    }
    add_phrase(out, "measured", room);
}

static void add_bad(struct text *out, const struct finding *finding)
{
    if (finding == NULL)
        return;
    add_phrase(out, page_outcome(finding->outcome), card_row_fault(finding));
}

static void add_row(const struct card *card, struct text *out, const struct card_row *row)
{
    struct text title = title_of(row), hit = hit_of(card, row);
    text_add(out, "[ ] ");
    if (row->short_one) { /* nothing to write or mend: a paragraph will do */
        text_addf(&title, ": %s", text_string(&hit));
        title.failed = title.failed || hit.failed;
        page_phrase(out, TICK, &title);
        text_free(&hit);
        return;
    }
    page_phrase(out, TICK, &title);
    add_phrase(out, "to hit", hit);
    add_room(out, row);
    add_bad(out, row->failed);
    add_bad(out, row->broken);
}

static void add_section(const struct card *card, const struct card_section *section,
                        struct text *out)
{
    if (card_section_waits(section))
        return;
    text_add(out, "\n-- ");
    wrap_add(out, 3, section->title);
    for (size_t i = 0; i < section->count;) {
        const struct card_row row = card_row(card, section, i);
        if (!card_item_waits(row.items))
            add_row(card, out, &row);
        i += row.count;
    }
}

static void add_question(void *data, size_t number, const char *says, const char *waiting)
{
    struct text *out = data, line = TEXT_EMPTY;
    if (number == 1)
        text_add(out, "\n-- Questions still open\n");
    text_addf(&line, "%s %s", says, LINE);
    text_addf(out, "%2zu. ", number);
    page_phrase(out, TICK, &line);
    if (waiting[0] == '\0')
        return;
    start_label(out, "waiting");
    wrap_add(out, LABEL, waiting);
}

static void add_safety(struct text *out, const struct result *result)
{
    if (result->safety_count > 0)
        text_add(out, "\n-- At this stage, take care\n");
    for (size_t i = 0; i < result->safety_count; i++) {
        const struct safety *safety = &result->safety[i];
        struct text care = TEXT_EMPTY;
        text_addf(&care, "%s [", safety->says);
        cite_add(&care, &safety->cite);
        text_addf(&care, ", %s]", safety->cite.status == NULL ? "" : safety->cite.status);
        text_add(out, "  * ");
        page_phrase(out, TICK, &care);
    }
}

void report_card_text(const struct card *card, struct text *out)
{
    const struct result *result = &card->now;
    text_addf(out, "%s - Eavemark " EAVEMARK_VERSION ", pre-check of a reroof\n\n",
              card_title(card->stage));
    page_heading(out, result);
    for (size_t i = 0; i < result->about_count; i++) {
        text_addf(out, "%-*.*s", PAGE_HEAD, PAGE_HEAD - 1, result->about[i].label);
        wrap_add(out, PAGE_HEAD, result->about[i].says);
    }
    struct text signs = card_signs(card);
    text_add(out, "\n");
    page_phrase(out, 0, &signs);
    for (size_t i = 0; i < card->section_count; i++)
        add_section(card, &card->sections[i], out);
    card_questions(card, add_question, out);
    add_safety(out, result);
    text_add(out, "\nLooked over by ________________________   Date ______________\n\n");
    wrap_add(out, 0, result->caution == NULL ? "" : result->caution);
    text_addf(out, "\nRules and figures used: %.*s\n", PRINT_SHOWN, result->fingerprint);
}
