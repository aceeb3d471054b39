/* The head of the full report: what job, where, when, by which law. */
#include "report/text_all.h"

#include "include/eavemark.h"
#include "report/sources.h"
#include "report/wrap.h"

/* After "Place    ". */
enum { HEAD_HANG = 9 };

/* Nothing for NULL: a place without a page read has no such line. */
static void add_head(const struct text_page *page, const char *label, const char *words)
{
    if (words == NULL)
        return;
    text_addf(page->out, "%-*s", HEAD_HANG, label);
    wrap_add(page->out, HEAD_HANG, words);
}

/* An invented place is marked at once: its figures are nobody's law. */
static void add_place(const struct text_page *page, const struct result *result)
{
    struct text place = TEXT_EMPTY;
    text_addf(&place, "%s (%s)", result->jurisdiction_title, result->jurisdiction);
    text_addf(page->out, "%-*s", HEAD_HANG, "Place");
    text_all_phrase(page, HEAD_HANG, &place);
    if (result->invented) {
        text_addf(page->out, "%-*s", HEAD_HANG, "");
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
    text_addf(page->out, "%-*s", HEAD_HANG, "Read");
    text_all_phrase(page, HEAD_HANG, &seen);
}

/* From the place to what it rests on in the end. */
static void add_chain(const struct text_page *page, const struct result *result)
{
    if (result->chain_count == 0)
        return;
    struct text chain = TEXT_EMPTY;
    for (size_t i = 0; i < result->chain_count; i++)
        text_addf(&chain, "%s%s", i > 0 ? ", then " : "", result->chain[i]);
    text_addf(page->out, "%-*s", HEAD_HANG, "Chain");
    text_all_phrase(page, HEAD_HANG, &chain);
}

static void add_facts(const struct text_page *page, const struct result *result)
{
    struct text facts = sources_head(result);
    if (facts.length > 0)
        text_addf(page->out, "%-*s", HEAD_HANG, "Facts");
    if (facts.length > 0)
        wrap_add(page->out, HEAD_HANG, text_string(&facts));
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
    text_addf(page->out, "%-*s", HEAD_HANG, "Count");
    text_all_phrase(page, HEAD_HANG, &counts);
}

/* Doubt and what differs stand above all findings: they bear on each of them. */
void text_all_heading(const struct text_page *page, const struct result *result)
{
    text_add(page->out, "Eavemark " EAVEMARK_VERSION ", pre-check of a reroof\n\n");
    add_head(page, "Job", result->job);
    add_place(page, result);
    add_head(page, "Date", result->date);
    add_head(page, "Law", result->edition);
    add_chain(page, result);
    add_as_seen(page, result);
    for (size_t i = 0; i < result->doubt_count; i++)
        add_head(page, i == 0 ? "Doubt" : "", result->doubts[i]);
    add_facts(page, result);
    for (size_t i = 0; i < result->differ_count; i++)
        add_head(page, i == 0 ? "Differs" : "", result->differs[i]);
    if (result->only_stage >= 0 && result->only_stage < STAGE_COUNT) {
        text_addf(page->out, "%-*sonly what is looked at at this stage: %s\n", HEAD_HANG, "Stage",
                  stage_word((enum stage)result->only_stage));
    }
    add_counts(page, result);
}
