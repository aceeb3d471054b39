/* text_all.c - every finding in full, see report.h. */
#include "report/report.h"

#include "base/text.h"
#include "report/confirm.h"
#include "report/page.h"
#include "report/story.h"
#include "report/text_all.h"
#include "report/value_words.h"
#include "report/wrap.h"

#include <string.h>

/* Characters of the fingerprint: enough to tell two apart. */
enum { PRINT_SHOWN = 16 };

/* Groups -------------------------------------------------------------------- */

static void start_group(const struct text_page *page, const struct result *result,
                        enum outcome outcome)
{
    text_addf(page->out, "\n-- %zu %s: %s\n", result->counts[outcome], outcome_word(outcome),
              text_all_look(outcome)->gloss);
    if (outcome != OUTCOME_PASS || result->unmeasured_passes == 0)
        return;
    struct text words = story_unmeasured(result);
    text_add(page->out, "   ");
    wrap_add(page->out, 3, text_string(&words));
    page->out->failed = page->out->failed || words.failed;
    text_free(&words);
}

static void add_group(const struct text_page *page, const struct result *result,
                      enum outcome outcome)
{
    bool any = false, was_brief = false;
    for (size_t i = 0, count = 1; i < result->finding_count; i += count) {
        const struct finding *finding = &result->findings[i];
        count = 1;
        if (finding->outcome != outcome)
            continue;
        count = story_group_size(result, i);
        if (!any)
            start_group(page, result, outcome);
        const bool brief = story_is_brief(finding);
        /* Brief ones stand close together; an empty line parts them from the rest. */
        if (brief && !(any && was_brief))
            text_add(page->out, "\n");
        any = true;
        was_brief = brief;
        if (brief)
            text_all_brief(page, finding, count);
        else
            text_all_finding(page, finding, count);
    }
}

/* The facts the job lacks, each asked once, with all that waits for it. */

/* From the first on: earlier findings ask something else. */
static void add_waiting(const struct text_page *page, const struct result *result, size_t index)
{
    const char *says = result->findings[index].says;
    struct text waiting = TEXT_EMPTY;
    for (size_t i = index; i < result->finding_count; i++) {
        const struct finding *finding = &result->findings[i];
        if (finding->outcome != OUTCOME_OPEN || !text_same(finding->says, says))
            continue;
        text_addf(&waiting, "%s%s", waiting.length > 0 ? "; " : "",
                  finding->title == NULL ? finding->rule : finding->title);
        if (finding->where != NULL)
            text_addf(&waiting, ", %s", finding->where);
        text_addf(&waiting, " [%s]", finding->rule);
    }
    text_all_label(page, "waiting");
    page_phrase(page->out, TEXT_LABEL_HANG, &waiting);
}

/* By question, since one answer may close many findings. */
static void add_open(const struct text_page *page, const struct result *result)
{
    const struct text_look *look = text_all_look(OUTCOME_OPEN);
    if (result->counts[OUTCOME_OPEN] > 0)
        text_addf(page->out, "\n-- %zu open: %s\n", result->counts[OUTCOME_OPEN], look->gloss);
    for (size_t i = 0; i < result->finding_count; i++) {
        const struct finding *finding = &result->findings[i];
        if (finding->outcome != OUTCOME_OPEN || story_asked_before(result, i))
            continue;
        text_add(page->out, "\n");
        text_all_coloured(page, look->colour, look->word);
        text_addf(page->out, "%*s", TEXT_WORD_HANG - (int)strlen(look->word), "");
        wrap_add(page->out, TEXT_WORD_HANG, finding->says == NULL ? "" : finding->says);
        add_waiting(page, result, i);
        text_all_labelled(page, "caution", finding->caution);
    }
}

/* One list of names for what does not apply. What the place itself has
 * dropped gets its sentence: under other law it might bind. */
static void add_not_applicable(const struct text_page *page, const struct result *result)
{
    const size_t count = result->counts[OUTCOME_NOT_APPLICABLE];
    struct text names = TEXT_EMPTY;
    story_count_inapplicable(result, &names);
    if (names.length > 0)
        text_add(&names, " (rules by topic; --form json names each and says why)");
    if (count > 0)
        text_addf(page->out, "\n-- %zu not applicable to this job\n\n", count);
    if (names.length > 0 || names.failed) {
        text_addf(page->out, "%*s", TEXT_WORD_HANG, "");
        page_phrase(page->out, TEXT_WORD_HANG, &names);
    }
    for (size_t i = 0; i < result->finding_count; i++) {
        const struct finding *finding = &result->findings[i];
        if (finding->outcome != OUTCOME_NOT_APPLICABLE || story_is_inapplicable(finding))
            continue;
        struct text dropped = TEXT_EMPTY;
        text_addf(&dropped, "%s: %s", finding->rule, finding->says);
        text_addf(page->out, "%*s", TEXT_WORD_HANG, "");
        page_phrase(page->out, TEXT_WORD_HANG, &dropped);
    }
}

/* What a screen has no room for: all the figures to confirm. */
static void add_confirm(const struct text_page *page, const struct result *result)
{
    struct digest digest;
    digest_make(result, &digest);
    if (digest.confirm_count > 0)
        text_addf(page->out, "\n-- %zu to confirm: figures that what is met rests on, not read\n\n",
                  digest.confirm_count);
    confirm_text(page->out, result, &digest, digest.confirm_count);
    page->out->failed = page->out->failed || digest.arena.failed;
    digest_free(&digest);
}

/* The end ------------------------------------------------------------------- */

/* With the full source: this report is for whoever checks. */
static void add_safety(const struct text_page *page, const struct result *result)
{
    if (result->safety_count > 0)
        text_add(page->out, "\nAt this stage, take care\n");
    for (size_t i = 0; i < result->safety_count; i++) {
        const struct safety *safety = &result->safety[i];
        struct text care = TEXT_EMPTY;
        text_addf(&care, "%s [", safety->says);
        value_add_cite(&care, &safety->cite);
        text_add(&care, "; ");
        value_add_cite_status(&care, &safety->cite);
        text_add(&care, "]");
        text_add(page->out, "  * ");
        page_phrase(page->out, 4, &care);
    }
}

/* The caution is the law of the house: no report goes without it. */
static void add_close(const struct text_page *page, const struct result *result)
{
    text_add(page->out, "\n");
    wrap_add(page->out, 0, result->caution == NULL ? "" : result->caution);
    text_addf(page->out, "\nRules and figures used: %.*s\n", PRINT_SHOWN, result->fingerprint);
}

/* Worst first, so that what is cut off by a screen is what is met. */
void report_text_all(const struct result *result, bool colour, struct text *out)
{
    const struct text_page page = {.out = out, .colour = colour};
    text_all_heading(&page, result);
    add_group(&page, result, OUTCOME_BROKEN);
    add_group(&page, result, OUTCOME_FAIL);
    add_open(&page, result);
    add_group(&page, result, OUTCOME_WARN);
    add_group(&page, result, OUTCOME_PASS);
    add_not_applicable(&page, result);
    add_confirm(&page, result);
    add_safety(&page, result);
    add_close(&page, result);
}
