/* The head of the full report: what job, where, when, by which law. */
#include "report/text_all.h"

#include "include/eavemark.h"
#include "report/page.h"
#include "report/sources.h"

/* An invented place is marked at once: its figures are nobody's law. */
static void add_place(const struct text_page *page, const struct result *result)
{
    struct text place = TEXT_EMPTY;
    text_addf(&place, "%s (%s)", result->jurisdiction_title, result->jurisdiction);
    text_addf(page->out, "%-*s", PAGE_HEAD, "Place");
    page_phrase(page->out, PAGE_HEAD, &place);
    if (result->invented) {
        text_addf(page->out, "%-*s", PAGE_HEAD, "");
        text_all_coloured(page, "\033[1;33m", "INVENTED PLACE");
        text_add(page->out, ": no real county, and not the law anywhere\n");
    }
}

/* A real place's rules are as old as the day its pages were read. */
static void add_as_seen(const struct text_page *page, const struct result *result)
{
    if (result->as_seen == NULL)
        return;
    struct text seen = TEXT_EMPTY;
    text_addf(&seen, "as published on its page on %s; may have changed", result->as_seen);
    text_addf(page->out, "%-*s", PAGE_HEAD, "Read");
    page_phrase(page->out, PAGE_HEAD, &seen);
}

/* From the place to what it rests on in the end. */
static void add_chain(const struct text_page *page, const struct result *result)
{
    if (result->chain_count == 0)
        return;
    struct text chain = TEXT_EMPTY;
    for (size_t i = 0; i < result->chain_count; i++)
        text_addf(&chain, "%s%s", i > 0 ? ", then " : "", result->chain[i]);
    text_addf(page->out, "%-*s", PAGE_HEAD, "Chain");
    page_phrase(page->out, PAGE_HEAD, &chain);
}

static void add_facts(const struct text_page *page, const struct result *result)
{
    struct text facts = sources_head(result);
    page_head(page->out, "Facts", facts.length > 0 ? text_string(&facts) : NULL);
    page->out->failed = page->out->failed || facts.failed;
    text_free(&facts);
}

/* The worst first, as the groups below stand. */
static void add_counts(const struct text_page *page, const struct result *result)
{
    static const struct {
        enum outcome outcome;
        const char *word;
    } ORDER[] = {
        {OUTCOME_BROKEN, "broken"}, {OUTCOME_FAIL, "fail"},
        {OUTCOME_OPEN, "open"},     {OUTCOME_WARN, "warn"},
        {OUTCOME_PASS, "pass"},     {OUTCOME_NOT_APPLICABLE, "not applicable"},
    };
    struct text counts = TEXT_EMPTY;
    for (size_t i = 0; i < sizeof(ORDER) / sizeof(ORDER[0]); i++) {
        const size_t count = result->counts[ORDER[i].outcome];
        /* A broken rule is news; that none is broken is not. */
        if (ORDER[i].outcome == OUTCOME_BROKEN && count == 0)
            continue;
        text_addf(&counts, "%s%zu %s", counts.length > 0 ? ", " : "", count, ORDER[i].word);
    }
    text_addf(page->out, "%-*s", PAGE_HEAD, "Count");
    page_phrase(page->out, PAGE_HEAD, &counts);
}

/* Doubt and what differs stand above all findings: they bear on each of them. */
void text_all_heading(const struct text_page *page, const struct result *result)
{
    text_add(page->out, "Eavemark " EAVEMARK_VERSION ", pre-check of a reroof\n\n");
    page_head(page->out, "Job", result->job);
    add_place(page, result);
    page_head(page->out, "Date", result->date);
    page_head(page->out, "Law", result->edition);
    add_chain(page, result);
    add_as_seen(page, result);
    for (size_t i = 0; i < result->doubt_count; i++)
        page_head(page->out, i == 0 ? "Doubt" : "", result->doubts[i]);
    add_facts(page, result);
    for (size_t i = 0; i < result->differ_count; i++)
        page_head(page->out, i == 0 ? "Differs" : "", result->differs[i]);
    if (result->only_stage >= 0 && result->only_stage < STAGE_COUNT) {
        text_addf(page->out, "%-*sonly what is looked at at this stage: %s\n", PAGE_HEAD, "Stage",
                  stage_word((enum stage)result->only_stage));
    }
    add_counts(page, result);
}
