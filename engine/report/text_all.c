/* text_all.c - every finding in full, see report.h. */
#include "report/report.h"

#include "base/utf8.h"
#include "include/eavemark.h"
#include "report/confirm.h"
#include "report/sources.h"
#include "report/story.h"
#include "report/value_words.h"
#include "report/wrap.h"

#include <string.h>

enum {
    HEAD_HANG = 9,    /* "Place    " */
    WORD_HANG = 8,    /* "BROKEN  " */
    LABEL_HANG = 20,  /* under the title, after "arithmetic" */
    PRINT_SHOWN = 16, /* characters of the fingerprint: enough to tell two apart */
};

/* What the report is written to, and how. */
struct page {
    struct text *out;
    bool colour;
};

struct look {
    const char *word;   /* as printed before a finding */
    const char *colour; /* ANSI, for those who ask for it */
    const char *gloss;  /* what the outcome means, beside its group's heading */
};

static const struct look LOOKS[OUTCOME_COUNT] = {
    [OUTCOME_PASS] = {"pass", "\033[32m", "shown to meet the figure"},
    [OUTCOME_WARN] = {"WARN", "\033[33m", "met on a weak figure, risky, or not common practice"},
    [OUTCOME_FAIL] = {"FAIL", "\033[1;31m", "shown not to meet the figure"},
    [OUTCOME_OPEN] = {"OPEN", "\033[36m", "cannot be told yet: a fact is missing"},
    [OUTCOME_NOT_APPLICABLE] = {"n/a", "", "nothing to say about this job"},
    [OUTCOME_BROKEN] = {"BROKEN", "\033[1;35m", "the rule itself erred, so nothing is shown"},
};

static void add_coloured(const struct page *page, const char *colour, const char *words)
{
    const bool on = page->colour && colour[0] != '\0';
    text_addf(page->out, "%s%s%s", on ? colour : "", words, on ? "\033[0m" : "");
}

/* Wraps a phrase built up beforehand, and releases it. */
static void add_phrase(const struct page *page, size_t hang, struct text *phrase)
{
    if (phrase->failed)
        page->out->failed = true;
    else
        wrap_add(page->out, hang, text_string(phrase));
    text_free(phrase);
}

/* The heading ------------------------------------------------------------- */

static void add_head(const struct page *page, const char *label, const char *words)
{
    if (words == NULL)
        return;
    text_addf(page->out, "%-*s", HEAD_HANG, label);
    wrap_add(page->out, HEAD_HANG, words);
}

static void add_place(const struct page *page, const struct result *result)
{
    struct text place = TEXT_EMPTY;
    text_addf(&place, "%s (%s)", result->jurisdiction_title, result->jurisdiction);
    text_addf(page->out, "%-*s", HEAD_HANG, "Place");
    add_phrase(page, HEAD_HANG, &place);
    if (result->invented) {
        text_addf(page->out, "%-*s", HEAD_HANG, "");
        add_coloured(page, "\033[1;33m", "INVENTED PLACE");
        text_add(page->out, ": no real county, and not the law anywhere\n");
    }
}

/* A real place's rules are as old as the day its pages were read. */
static void add_as_seen(const struct page *page, const struct result *result)
{
    if (result->as_seen == NULL)
        return;
    struct text seen = TEXT_EMPTY;
    text_addf(&seen, "as published on its page on %s; may have changed", result->as_seen);
    text_addf(page->out, "%-*s", HEAD_HANG, "Read");
    add_phrase(page, HEAD_HANG, &seen);
}

/* From the place to what it rests on in the end. */
static void add_chain(const struct page *page, const struct result *result)
{
    if (result->chain_count == 0)
        return;
    struct text chain = TEXT_EMPTY;
    for (size_t i = 0; i < result->chain_count; i++)
        text_addf(&chain, "%s%s", i > 0 ? ", then " : "", result->chain[i]);
    text_addf(page->out, "%-*s", HEAD_HANG, "Chain");
    add_phrase(page, HEAD_HANG, &chain);
}

static void add_facts(const struct page *page, const struct result *result)
{
    struct text facts = sources_head(result);
    if (facts.length > 0)
        text_addf(page->out, "%-*s", HEAD_HANG, "Facts");
    if (facts.length > 0)
        wrap_add(page->out, HEAD_HANG, text_string(&facts));
    page->out->failed = page->out->failed || facts.failed;
    text_free(&facts);
}

static void add_counts(const struct page *page, const struct result *result)
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
    add_phrase(page, HEAD_HANG, &counts);
}

static void add_heading(const struct page *page, const struct result *result)
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

/* One finding ------------------------------------------------------------- */

/* count findings that read the same share one title that names every
 * place. */
static void add_title(const struct page *page, const struct finding *finding, size_t count)
{
    const struct look *look = &LOOKS[finding->outcome];
    struct text title = TEXT_EMPTY;
    text_add(&title, finding->title == NULL ? finding->rule : finding->title);
    for (size_t i = 0; i < count; i++)
        if (finding[i].where != NULL)
            text_addf(&title, "%s%s", i == 0 ? ": " : "; ", finding[i].where);
    text_addf(&title, " [%s]", finding->rule);
    add_coloured(page, look->colour, look->word);
    text_addf(page->out, "%*s", WORD_HANG - (int)strlen(look->word), "");
    add_phrase(page, WORD_HANG, &title);
}

static void start_label(const struct page *page, const char *label)
{
    text_addf(page->out, "%*s%-*s", WORD_HANG, "", LABEL_HANG - WORD_HANG, label);
}

static void add_labelled(const struct page *page, const char *label, const char *words)
{
    if (words == NULL)
        return;
    start_label(page, label);
    wrap_add(page->out, LABEL_HANG, words);
}

static void add_plain(const struct page *page, const char *words)
{
    if (words == NULL || words[0] == '\0')
        return;
    text_addf(page->out, "%*s", WORD_HANG, "");
    wrap_add(page->out, WORD_HANG, words);
}

static void add_compared(const struct page *page, const struct finding *finding)
{
    if (!finding->compared)
        return;
    struct text demand = TEXT_EMPTY, found = TEXT_EMPTY;
    if (finding->required.kind != VALUE_NONE) {
        value_add_demands(&demand, finding);
        start_label(page, "demanded");
        add_phrase(page, LABEL_HANG, &demand);
    }
    if (finding->found.kind != VALUE_NONE) {
        value_add(&found, &finding->found);
        start_label(page, "found");
        add_phrase(page, LABEL_HANG, &found);
    }
}

/* With sources: the same section read in two sources stands twice. */
static void add_cites(const struct page *page, const struct finding *finding)
{
    for (size_t i = 0; i < finding->cite_count; i++) {
        if (story_cited_before(finding, i, true))
            continue;
        struct text cite = TEXT_EMPTY;
        value_add_cite(&cite, &finding->cites[i]);
        text_add(&cite, " (");
        value_add_cite_status(&cite, &finding->cites[i]);
        text_add(&cite, ")");
        start_label(page, i == 0 ? "cited" : "");
        add_phrase(page, LABEL_HANG, &cite);
    }
}

static void add_amended(const struct page *page, const struct amended *amended)
{
    if (amended == NULL)
        return;
    struct text moved = TEXT_EMPTY;
    text_addf(&moved, "by %s: from ", amended->by);
    value_add(&moved, &amended->from);
    text_add(&moved, " to ");
    value_add(&moved, &amended->to);
    start_label(page, "amended");
    add_phrase(page, LABEL_HANG, &moved);
}

/* Of all findings told together: which facts are not the job's own. */
static void add_sources(const struct page *page, const struct finding *finding, size_t count)
{
    struct text sources = TEXT_EMPTY;
    for (size_t i = 0; i < count && sources.length == 0; i++) {
        const struct finding *one = &finding[i];
        text_free(&sources);
        sources = sources_of(&one, 1);
    }
    if (sources.length > 0)
        add_labelled(page, "facts", text_string(&sources));
    page->out->failed = page->out->failed || sources.failed;
    text_free(&sources);
}

static void add_finding(const struct page *page, const struct finding *finding, size_t count)
{
    text_add(page->out, "\n");
    add_title(page, finding, count);
    /* What was demanded and found stands in its own lines below. */
    add_plain(page, finding->compared ? finding->note : finding->says);
    add_compared(page, finding);
    for (size_t i = 0; i < finding->work_count; i++)
        add_labelled(page, i == 0 ? "arithmetic" : "", finding->work[i]);
    add_sources(page, finding, count);
    add_cites(page, finding);
    add_amended(page, finding->amended);
    add_labelled(page, "mend", finding->mend);
    add_labelled(page, "caution", finding->caution);
}

/* In two lines: nothing is to be done. */
static void add_brief(const struct page *page, const struct finding *finding, size_t count)
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
    text_addf(page->out, "%*s", WORD_HANG, "");
    add_phrase(page, WORD_HANG, &brief);
    add_sources(page, finding, count);
    add_amended(page, finding->amended);
    add_labelled(page, "caution", finding->caution);
}

/* Groups ------------------------------------------------------------------ */

static void start_group(const struct page *page, const struct result *result, enum outcome outcome)
{
    text_addf(page->out, "\n-- %zu %s: %s\n", result->counts[outcome], outcome_word(outcome),
              LOOKS[outcome].gloss);
    if (outcome != OUTCOME_PASS || result->unmeasured_passes == 0)
        return;
    struct text words = story_unmeasured(result);
    text_add(page->out, "   ");
    wrap_add(page->out, 3, text_string(&words));
    page->out->failed = page->out->failed || words.failed;
    text_free(&words);
}

static void add_group(const struct page *page, const struct result *result, enum outcome outcome)
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
            add_brief(page, finding, count);
        else
            add_finding(page, finding, count);
    }
}

/* The facts the job lacks, each asked once, with all that waits for it. */

/* From the first on: earlier findings ask something else. */
static void add_waiting(const struct page *page, const struct result *result, size_t index)
{
    const char *says = result->findings[index].says;
    struct text waiting = TEXT_EMPTY;
    for (size_t i = index; i < result->finding_count; i++) {
        const struct finding *finding = &result->findings[i];
        if (finding->outcome != OUTCOME_OPEN || !story_same_text(finding->says, says))
            continue;
        text_addf(&waiting, "%s%s", waiting.length > 0 ? "; " : "",
                  finding->title == NULL ? finding->rule : finding->title);
        if (finding->where != NULL)
            text_addf(&waiting, ", %s", finding->where);
        text_addf(&waiting, " [%s]", finding->rule);
    }
    start_label(page, "waiting");
    add_phrase(page, LABEL_HANG, &waiting);
}

static void add_open(const struct page *page, const struct result *result)
{
    const struct look *look = &LOOKS[OUTCOME_OPEN];
    if (result->counts[OUTCOME_OPEN] > 0)
        text_addf(page->out, "\n-- %zu open: %s\n", result->counts[OUTCOME_OPEN], look->gloss);
    for (size_t i = 0; i < result->finding_count; i++) {
        const struct finding *finding = &result->findings[i];
        if (finding->outcome != OUTCOME_OPEN || story_asked_before(result, i))
            continue;
        text_add(page->out, "\n");
        add_coloured(page, look->colour, look->word);
        text_addf(page->out, "%*s", WORD_HANG - (int)strlen(look->word), "");
        wrap_add(page->out, WORD_HANG, finding->says == NULL ? "" : finding->says);
        add_waiting(page, result, i);
        add_labelled(page, "caution", finding->caution);
    }
}

/* One list of names for what does not apply. What the place itself has
 * dropped gets its sentence: under other law it might bind. */
static void add_not_applicable(const struct page *page, const struct result *result)
{
    const size_t count = result->counts[OUTCOME_NOT_APPLICABLE];
    struct text names = TEXT_EMPTY;
    story_count_inapplicable(result, &names);
    if (names.length > 0)
        text_add(&names, " (rules by topic; --form json names each and says why)");
    if (count > 0)
        text_addf(page->out, "\n-- %zu not applicable to this job\n\n", count);
    if (names.length > 0 || names.failed) {
        text_addf(page->out, "%*s", WORD_HANG, "");
        add_phrase(page, WORD_HANG, &names);
    }
    for (size_t i = 0; i < result->finding_count; i++) {
        const struct finding *finding = &result->findings[i];
        if (finding->outcome != OUTCOME_NOT_APPLICABLE || story_is_inapplicable(finding))
            continue;
        struct text dropped = TEXT_EMPTY;
        text_addf(&dropped, "%s: %s", finding->rule, finding->says);
        text_addf(page->out, "%*s", WORD_HANG, "");
        add_phrase(page, WORD_HANG, &dropped);
    }
}

/* What a screen has no room for: all the figures to confirm. */
static void add_confirm(const struct page *page, const struct result *result)
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

/* The end ----------------------------------------------------------------- */

/* With the full source: this report is for whoever checks. */
static void add_safety(const struct page *page, const struct result *result)
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
        add_phrase(page, 4, &care);
    }
}

static void add_close(const struct page *page, const struct result *result)
{
    text_add(page->out, "\n");
    wrap_add(page->out, 0, result->caution == NULL ? "" : result->caution);
    text_addf(page->out, "\nRules and figures used: %.*s\n", PRINT_SHOWN, result->fingerprint);
}

void report_text_all(const struct result *result, bool colour, struct text *out)
{
    const struct page page = {.out = out, .colour = colour};
    add_heading(&page, result);
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
