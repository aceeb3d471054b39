/* One finding of the full report, in all its lines or in two. */
#include "report/text_all.h"

#include "report/page.h"
#include "report/sources.h"
#include "report/story.h"
#include "report/value_words.h"
#include "report/wrap.h"

#include <string.h>

static const struct text_look LOOKS[OUTCOME_COUNT] = {
    [OUTCOME_PASS] = {"pass", "\033[32m", "shown to meet the figure"},
    [OUTCOME_WARN] = {"WARN", "\033[33m", "met on a weak figure, risky, or not common practice"},
    [OUTCOME_FAIL] = {"FAIL", "\033[1;31m", "shown not to meet the figure"},
    [OUTCOME_OPEN] = {"OPEN", "\033[36m", "cannot be told yet: a fact is missing"},
    [OUTCOME_NOT_APPLICABLE] = {"n/a", "", "nothing to say about this job"},
    [OUTCOME_BROKEN] = {"BROKEN", "\033[1;35m", "the rule itself erred, so nothing is shown"},
};

const struct text_look *text_all_look(enum outcome outcome)
{
    return &LOOKS[outcome];
}

void text_all_coloured(const struct text_page *page, const char *colour, const char *words)
{
    const bool on = page->colour && colour[0] != '\0';
    text_addf(page->out, "%s%s%s", on ? colour : "", words, on ? "\033[0m" : "");
}

void text_all_label(const struct text_page *page, const char *label)
{
    text_addf(page->out, "%*s%-*s", TEXT_WORD_HANG, "", TEXT_LABEL_HANG - TEXT_WORD_HANG, label);
}

void text_all_labelled(const struct text_page *page, const char *label, const char *words)
{
    if (words == NULL)
        return;
    text_all_label(page, label);
    wrap_add(page->out, TEXT_LABEL_HANG, words);
}

/* Its parts ----------------------------------------------------------------- */

/* count findings that read the same share one title that names every
 * place. */
static void add_title(const struct text_page *page, const struct finding *finding, size_t count)
{
    const struct text_look *look = text_all_look(finding->outcome);
    struct text title = TEXT_EMPTY;
    text_add(&title, finding->title == NULL ? finding->rule : finding->title);
    for (size_t i = 0; i < count; i++)
        if (finding[i].where != NULL)
            text_addf(&title, "%s%s", i == 0 ? ": " : "; ", finding[i].where);
    text_addf(&title, " [%s]", finding->rule);
    text_all_coloured(page, look->colour, look->word);
    text_addf(page->out, "%*s", TEXT_WORD_HANG - (int)strlen(look->word), "");
    page_phrase(page->out, TEXT_WORD_HANG, &title);
}

/* A sentence below the title, without a label. */
static void add_plain(const struct text_page *page, const char *words)
{
    if (words == NULL || words[0] == '\0')
        return;
    text_addf(page->out, "%*s", TEXT_WORD_HANG, "");
    wrap_add(page->out, TEXT_WORD_HANG, words);
}

static void add_compared(const struct text_page *page, const struct finding *finding)
{
    if (!finding->compared)
        return;
    struct text demand = TEXT_EMPTY, found = TEXT_EMPTY;
    if (finding->required.kind != VALUE_NONE) {
        value_add_demands(&demand, finding);
        text_all_label(page, "demanded");
        page_phrase(page->out, TEXT_LABEL_HANG, &demand);
    }
    if (finding->found.kind != VALUE_NONE) {
        value_add(&found, &finding->found);
        text_all_label(page, "found");
        page_phrase(page->out, TEXT_LABEL_HANG, &found);
    }
}

/* With sources: the same section read in two sources stands twice. */
static void add_cites(const struct text_page *page, const struct finding *finding)
{
    for (size_t i = 0; i < finding->cite_count; i++) {
        if (story_cited_before(finding, i, true))
            continue;
        struct text cite = TEXT_EMPTY;
        value_add_cited(&cite, &finding->cites[i]);
        text_all_label(page, i == 0 ? "cited" : "");
        page_phrase(page->out, TEXT_LABEL_HANG, &cite);
    }
}

/* Whoever knows the model's figure must see that it does not hold here. */
static void add_amended(const struct text_page *page, const struct amended *amended)
{
    if (amended == NULL)
        return;
    struct text moved = TEXT_EMPTY;
    value_add_amended(&moved, amended);
    text_all_label(page, "amended");
    page_phrase(page->out, TEXT_LABEL_HANG, &moved);
}

/* Of all findings told together: which facts are not the job's own. */
static void add_sources(const struct text_page *page, const struct finding *finding, size_t count)
{
    struct text sources = TEXT_EMPTY;
    for (size_t i = 0; i < count && sources.length == 0; i++) {
        const struct finding *one = &finding[i];
        text_free(&sources);
        sources = sources_of(&one, 1);
    }
    if (sources.length > 0)
        text_all_labelled(page, "facts", text_string(&sources));
    page->out->failed = page->out->failed || sources.failed;
    text_free(&sources);
}

/* The whole ----------------------------------------------------------------- */

/* Everything there is to say of it, in the order of an argument: what, how much, by which law,
 * what to do. */
void text_all_finding(const struct text_page *page, const struct finding *finding, size_t count)
{
    text_add(page->out, "\n");
    add_title(page, finding, count);
    /* What was demanded and found stands in its own lines below. */
    add_plain(page, finding->compared ? finding->note : finding->says);
    add_compared(page, finding);
    for (size_t i = 0; i < finding->work_count; i++)
        text_all_labelled(page, i == 0 ? "arithmetic" : "", finding->work[i]);
    add_sources(page, finding, count);
    add_cites(page, finding);
    add_amended(page, finding->amended);
    text_all_labelled(page, "mend", finding->mend);
    text_all_labelled(page, "caution", finding->caution);
}

/* In two lines: nothing is to be done. */
void text_all_brief(const struct text_page *page, const struct finding *finding, size_t count)
{
    struct text brief = TEXT_EMPTY;
    add_title(page, finding, count);
    text_add(&brief, finding->says);
    for (size_t i = 0; i < finding->cite_count; i++) {
        if (story_cited_before(finding, i, false))
            continue;
        text_add(&brief, i == 0 ? " (" : "; ");
        value_add_cite(&brief, &finding->cites[i]);
        text_addf(&brief, ", %s", value_cite_status(&finding->cites[i]));
    }
    if (finding->cite_count > 0)
        text_add(&brief, ")");
    text_addf(page->out, "%*s", TEXT_WORD_HANG, "");
    page_phrase(page->out, TEXT_WORD_HANG, &brief);
    add_sources(page, finding, count);
    add_amended(page, finding->amended);
    text_all_labelled(page, "caution", finding->caution);
}
