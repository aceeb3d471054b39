/* text.c - the report on one screen, see report.h. */
#include "report/report.h"

#include "include/eavemark.h"
#include "job/fields.h"
#include "report/confirm.h"
#include "report/digest.h"
#include "report/gloss.h"
#include "report/page.h"
#include "report/sources.h"
#include "report/telling.h"
#include "report/wrap.h"

#include <string.h>

enum {
    SCREEN_LINES = 60,
    CONFIRM_FEWEST = 6, /* lines of figures to confirm, however full the screen */
    NUMBER_HANG = 4,    /* " 12 " */
    DETAIL_HANG = 6,
    MEND_HANG = 12, /* "    mend    " */
    LIST_HANG = 2,
    PRINT_SHOWN = 16, /* characters of the fingerprint: enough to tell two apart */
};

/* What the report is written to, and how. */
struct screen {
    struct text *out;
    const struct result *result;
    const struct digest *digest;
    bool colour;
};

/* What a line begins with, filled up to so many columns. */
static void start_line(const struct screen *screen, size_t columns, const char *words)
{
    text_addf(screen->out, "%-*s", (int)columns, words);
}

/* The rest of a line that leads in with so many columns; releases the phrase. */
static void print_phrase(const struct screen *screen, size_t hang, struct text phrase)
{
    page_phrase(screen->out, hang, &phrase);
}

/* "FIX  2 fail": the word is what tells one part from another. */
static void start_part(const struct screen *screen, const char *word, const char *colour,
                       struct text gloss)
{
    text_addf(screen->out, "\n%s%s%s  ", screen->colour ? colour : "", word,
              screen->colour ? "\033[0m" : "");
    print_phrase(screen, strlen(word) + 2, gloss);
}

/* The heading ------------------------------------------------------------------------- */

/* Releases the phrase; nothing for an empty one. */
static void add_head(const struct screen *screen, const char *label, struct text phrase)
{
    if (phrase.length > 0) {
        start_line(screen, PAGE_HEAD, label);
        print_phrase(screen, PAGE_HEAD, phrase);
    } else {
        screen->out->failed = screen->out->failed || phrase.failed;
        text_free(&phrase);
    }
}

/* In the order in which a reader doubts: whose job, where, by which book, read when. */
static void add_heading(const struct screen *screen)
{
    const struct result *result = screen->result;
    text_add(screen->out, "Eavemark " EAVEMARK_VERSION ", pre-check of a reroof\n\n");
    page_head(screen->out, "Job", result->job);
    add_head(screen, "Place", gloss_place(result));
    if (result->invented)
        page_head(screen->out, "", "INVENTED PLACE: no real county, and not the law anywhere");
    add_head(screen, "Book", gloss_book(result));
    add_head(screen, "Read", gloss_read(result));
    for (size_t i = 0; i < result->doubt_count; i++)
        page_head(screen->out, i == 0 ? "Doubt" : "", result->doubts[i]);
    add_head(screen, "Facts", sources_head(result));
    for (size_t i = 0; i < result->differ_count; i++)
        page_head(screen->out, i == 0 ? "Differs" : "", result->differs[i]);
    add_head(screen, "Stage", gloss_stage(result));
    add_head(screen, "Count", gloss_counts(result, screen->digest));
}

/* What fails, and what to look at ---------------------------------------------------------- */

/* Numbered when it begins a block. */
static void add_paragraph(const struct screen *screen, const struct paragraph *paragraph,
                          size_t number)
{
    struct text title = telling_title(paragraph);
    text_addf(&title, " [%s]", paragraph->findings[0]->rule);
    if (number > 0)
        text_addf(screen->out, "%3zu ", number);
    else
        start_line(screen, NUMBER_HANG, "");
    print_phrase(screen, NUMBER_HANG, title);
    start_line(screen, DETAIL_HANG, "");
    print_phrase(screen, DETAIL_HANG, telling_compared(screen->result, paragraph));
}

/* telling_mend and its like; NULL past the last. */
typedef const char *nth_of_block(const struct finding_block *block, size_t nth);

/* Has a block before this one the same text? */
static bool is_said_before(const struct finding_blocks *blocks, size_t index, nth_of_block *nth_of,
                           const char *text)
{
    const char *other;
    for (size_t i = 0; i < index; i++)
        for (size_t j = 0; (other = nth_of(&blocks->items[i], j)) != NULL; j++)
            if (strcmp(other, text) == 0)
                return true;
    return false;
}

/* Each of a block's texts of a kind, under one label. */
static void add_labelled(const struct screen *screen, const struct finding_block *block,
                         const char *label, nth_of_block *nth_of)
{
    const char *text;
    for (size_t i = 0; (text = nth_of(block, i)) != NULL; i++) {
        text_addf(screen->out, "%*s%-*s", NUMBER_HANG, "", MEND_HANG - NUMBER_HANG,
                  i == 0 ? label : "");
        wrap_add(screen->out, MEND_HANG, text);
    }
}

/* A caution is said once on a screen. */
static void add_cautions(const struct screen *screen, const struct finding_blocks *blocks,
                         size_t index)
{
    const char *text, *label = "care";
    for (size_t i = 0; (text = telling_caution(&blocks->items[index], i)) != NULL; i++) {
        if (is_said_before(blocks, index, telling_caution, text))
            continue;
        text_addf(screen->out, "%*s%-*s", NUMBER_HANG, "", MEND_HANG - NUMBER_HANG, label);
        wrap_add(screen->out, MEND_HANG, text);
        label = "";
    }
}

/* Cautions only of what is to be mended: whoever only looks does not get hurt. */
static void add_blocks(const struct screen *screen, const struct finding_blocks *blocks,
                       bool cautions)
{
    for (size_t i = 0; i < blocks->count; i++) {
        const struct finding_block *block = &blocks->items[i];
        for (size_t j = 0; j < block->count; j++)
            add_paragraph(screen, &block->paragraphs[j], j == 0 ? i + 1 : 0);
        add_labelled(screen, block, "doubt", telling_dispute);
        add_labelled(screen, block, "mend", telling_mend);
        if (cautions)
            add_cautions(screen, blocks, i);
    }
}

static void add_fix(const struct screen *screen)
{
    if (screen->digest->fix.count == 0)
        return;
    start_part(screen, "FIX", "\033[1;31m", gloss_fix(screen->digest));
    add_blocks(screen, &screen->digest->fix, true);
}

static void add_look(const struct screen *screen)
{
    if (screen->digest->look.count == 0)
        return;
    start_part(screen, "LOOK", "\033[1;33m", gloss_look(screen->digest));
    add_blocks(screen, &screen->digest->look, false);
}

/* Rules that broke, and what is open ------------------------------------------------------- */

/* "Gap: deck.lua:12: no figure ..." */
static void add_pendings(const struct screen *screen, const struct pendings *pendings)
{
    for (size_t i = 0; i < pendings->count; i++) {
        struct text line = telling_waiting(&pendings->items[i]);
        text_addf(&line, ": %s", pendings->items[i].says);
        start_line(screen, LIST_HANG, "");
        print_phrase(screen, LIST_HANG + 2, line);
    }
}

static void add_broken(const struct screen *screen)
{
    if (screen->digest->broken.count == 0)
        return;
    start_part(screen, "BROKEN", "\033[1;35m", gloss_broken(screen->digest));
    add_pendings(screen, &screen->digest->broken);
}

/* The questions that can be answered in one place. */
static void add_asked_of(const struct screen *screen, const char *answer)
{
    const struct result *result = screen->result;
    bool any = false;
    for (size_t i = 0; i < result->asked_count; i++) {
        const struct asked *asked = &result->asked[i];
        if (strcmp(asked->answer, answer) != 0 || !gloss_is_shown(result, i))
            continue;
        if (!any)
            text_addf(screen->out, "%*s%s\n", LIST_HANG, "", telling_answer(answer));
        any = true;
        start_line(screen, NUMBER_HANG, "");
        print_phrase(screen, NUMBER_HANG + 2, telling_question(asked));
    }
}

/* Questions by the place where they can be answered, so that nobody climbs twice. */
static void add_answer(const struct screen *screen)
{
    const struct digest *digest = screen->digest;
    struct text more = gloss_not_shown(screen->result);
    if (digest->asked + digest->unasked.findings > 0) {
        start_part(screen, "ANSWER", "\033[1;36m", gloss_answer(screen->result, digest));
        for (const char *const *answer = FIELD_ANSWERS; *answer != NULL; answer++)
            add_asked_of(screen, *answer);
        if (more.length > 0)
            text_addf(screen->out, "%*s%s\n", LIST_HANG, "", text_string(&more));
        if (digest->unasked.count > 0)
            text_addf(screen->out, "%*sCannot be told from the job\n", LIST_HANG, "");
        add_pendings(screen, &digest->unasked);
    }
    screen->out->failed = screen->out->failed || more.failed;
    text_free(&more);
}

static void add_unknown(const struct screen *screen)
{
    if (screen->digest->unknown.count == 0)
        return;
    start_part(screen, "NOT KNOWN HERE", "\033[1;36m", gloss_unknown(screen->digest));
    add_pendings(screen, &screen->digest->unknown);
}

/* Only how many and when: there is nothing to do about them yet. */
static void add_later(const struct screen *screen)
{
    if (screen->digest->later > 0)
        start_part(screen, "LATER", "\033[1m", gloss_later(screen->digest));
}

/* What is met ------------------------------------------------------------------------------- */

/* One paragraph for all that is met, by topic. */
static void add_met(const struct screen *screen)
{
    if (screen->digest->met == 0)
        return;
    start_part(screen, "MET", "\033[1;32m", gloss_met(screen->digest));
    start_line(screen, LIST_HANG, "");
    print_phrase(screen, LIST_HANG, telling_topics(screen->digest));
}

/* In so many lines, heading and all. */
static void add_confirm(const struct screen *screen, size_t lines)
{
    const struct digest *digest = screen->digest;
    const size_t most = lines < CONFIRM_FEWEST ? CONFIRM_FEWEST : lines;
    const size_t head = 2; /* an empty line and the heading */
    if (digest->confirm_count == 0)
        return;
    start_part(screen, "CONFIRM", "\033[1m", gloss_confirm(digest));
    /* One line less where another says how many are not shown. */
    const size_t shown = digest->confirm_count + head <= most ? digest->confirm_count
                                                              : most - head - 1;
    confirm_text(screen->out, screen->result, digest, shown);
    if (shown < digest->confirm_count)
        text_addf(screen->out, "%*sand %zu more: check --all\n", LIST_HANG, "",
                  digest->confirm_count - shown);
}

/* The end -------------------------------------------------------------------------------------- */

/* In brief, as it is read on the way to the roof; --all has the source. */
static void add_care(const struct screen *screen)
{
    const struct result *result = screen->result;
    struct text gloss = TEXT_EMPTY;
    if (result->safety_count == 0)
        return;
    text_add(&gloss, "what can hurt the crew at this stage");
    start_part(screen, "CARE", "\033[1m", gloss);
    for (size_t i = 0; i < result->safety_count; i++) {
        const struct safety *safety = &result->safety[i];
        start_line(screen, LIST_HANG, "");
        wrap_add(screen->out, LIST_HANG, safety->brief != NULL ? safety->brief : safety->says);
    }
}

static void add_close(const struct screen *screen)
{
    const struct result *result = screen->result;
    text_add(screen->out, "\n");
    wrap_add(screen->out, 0, result->caution == NULL ? "" : result->caution);
    text_addf(screen->out,
              "check --all prints every finding, with sources and arithmetic.\n"
              "Rules and figures used: %.*s\n",
              PRINT_SHOWN, result->fingerprint);
}

/* Every line ends in one: parts are whole lines. */
static size_t lines_of(const struct text *text)
{
    size_t lines = 0;
    for (const char *at = text_string(text); *at != '\0'; at++)
        lines += *at == '\n';
    return lines;
}

/* A part that could not be built makes the report fail, not shorter. */
static void add_released(struct text *out, struct text *part)
{
    text_add(out, text_string(part));
    out->failed = out->failed || part->failed;
    text_free(part);
}

/* Figures to confirm get the lines that all the rest leaves free. */
static void add_screen(const struct result *result, const struct digest *digest, bool colour,
                       struct text *out)
{
    /* Three parts, as what stands below is needed to know how much room is between. */
    struct text above = TEXT_EMPTY, below = TEXT_EMPTY, confirm = TEXT_EMPTY;
    struct screen screen = {&above, result, digest, colour};
    add_heading(&screen);
    add_broken(&screen);
    add_fix(&screen);
    add_look(&screen);
    add_answer(&screen);
    add_unknown(&screen);
    add_later(&screen);
    add_met(&screen);
    screen.out = &below;
    add_care(&screen);
    add_close(&screen);
    screen.out = &confirm;
    const size_t taken = lines_of(&above) + lines_of(&below);
    add_confirm(&screen, taken < SCREEN_LINES ? SCREEN_LINES - taken : 0);
    add_released(out, &above);
    add_released(out, &confirm);
    add_released(out, &below);
}

void report_text(const struct result *result, bool colour, struct text *out)
{
    struct digest digest;
    digest_make(result, &digest);
    if (digest.arena.failed)
        out->failed = true;
    else
        add_screen(result, &digest, colour, out);
    digest_free(&digest);
}
