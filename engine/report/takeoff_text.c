#include "base/text.h"
#include "report/report.h"
#include "report/sources.h"

#include "base/number.h"
#include "include/eavemark.h"
#include "report/page.h"
#include "report/takeoff_part.h"
#include "report/value_words.h"
#include "report/wrap.h"

#include <string.h>

enum {
    LINE_HANG = 8,    /* below a title */
    LABEL_HANG = 20,  /* after "arithmetic" */
    PRINT_SHOWN = 16, /* characters of the fingerprint: enough to tell two apart */
};

/* How many facts are not the job's own, and whose they are; nothing when all are. */
static void add_facts(struct text *out, const struct result *head)
{
    struct text facts = sources_head(head);
    page_head(out, "Facts", facts.length > 0 ? text_string(&facts) : NULL);
    out->failed = out->failed || facts.failed;
    text_free(&facts);
}

void takeoff_add_head(struct text *out, const struct result *head)
{
    struct text place = TEXT_EMPTY;
    page_head(out, "Job", head->job);
    text_addf(&place, "%s (%s)%s", head->jurisdiction_title, head->jurisdiction,
              head->invented ? " - INVENTED PLACE: no real county, and not the law anywhere" : "");
    text_addf(out, "%-*s", PAGE_HEAD, "Place");
    page_phrase(out, PAGE_HEAD, &place);
    page_head(out, "Date", head->date);
    page_head(out, "Law", head->edition);
    page_head(out, "Read", head->as_seen);
    add_facts(out, head);
    for (size_t i = 0; i < head->differ_count; i++)
        page_head(out, i == 0 ? "Differs" : "", head->differs[i]);
}

static void add_heading(struct text *out, const struct takeoff *takeoff)
{
    const size_t *counts = takeoff->head.counts;
    struct text count = TEXT_EMPTY;
    text_add(out, "Eavemark " EAVEMARK_VERSION ", takeoff of a reroof\n\n");
    takeoff_add_head(out, &takeoff->head);
    if (counts[OUTCOME_BROKEN] > 0)
        text_addf(&count, "%zu broken, ", counts[OUTCOME_BROKEN]);
    text_addf(&count, "%zu given, %zu open, %zu not applicable", counts[OUTCOME_PASS],
              counts[OUTCOME_OPEN], counts[OUTCOME_NOT_APPLICABLE]);
    text_addf(out, "%-*s", PAGE_HEAD, "Count");
    page_phrase(out, PAGE_HEAD, &count);
}

/* One line ---------------------------------------------------------------- */

/* count lines that read the same share one title that names every place. */
static void add_title(struct text *out, const struct quantity_line *lines, size_t count)
{
    struct text title = TEXT_EMPTY;
    text_add(&title, lines->finding.title);
    for (size_t i = 0; i < count; i++)
        if (lines[i].finding.where != NULL)
            text_addf(&title, "%s%s", i == 0 ? ": " : "; ", lines[i].finding.where);
    text_addf(&title, " [%s]", lines->finding.rule);
    text_add(out, "\n");
    page_phrase(out, 0, &title);
}

static void start_label(struct text *out, const char *label)
{
    text_addf(out, "%*s%-*s", LINE_HANG, "", LABEL_HANG - LINE_HANG, label);
}

static void add_labelled(struct text *out, const char *label, const char *words)
{
    if (words == NULL || words[0] == '\0')
        return;
    start_label(out, label);
    wrap_add(out, LABEL_HANG, words);
}

/* What to buy first, then the exact amount it was rounded up from. */
static void add_amount(struct text *out, const struct amount *amount)
{
    char number[96];
    struct text words = TEXT_EMPTY;
    if (amount->bought) {
        number_write(amount->count, "count", number);
        text_addf(&words, "%s %s", number, amount->count == 1 ? amount->one : amount->buy);
        /* "12 bundles of 33.3 sq ft"; a piece is just a piece. */
        if (amount->each != 1) {
            number_write_unit(amount->each, amount->unit, number);
            text_addf(&words, " of %s", number);
        }
        start_label(out, "buy");
        page_phrase(out, LABEL_HANG, &words);
    }
    number_write_unit(amount->exact, amount->unit, number);
    text_add(&words, number);
    if (amount->has_waste) {
        number_write_unit(amount->waste_percent, "percent", number);
        text_addf(&words, ", and %s for waste", number);
    }
    start_label(out, amount->bought ? "exact" : "amount");
    page_phrase(out, LABEL_HANG, &words);
}

/* A common figure is known by where it comes from: it has no section. */
static bool is_practice(const struct cite *cite)
{
    return cite->status == STATUS_PRACTICE;
}

/* Several figures may rest on one source; it is named once. */
static bool cited_before(const struct finding *finding, size_t index)
{
    const struct cite *cite = &finding->cites[index];
    for (const struct cite *old = finding->cites; old < cite; old++)
        if (old->status == cite->status && text_same(old->source, cite->source)
            && (is_practice(cite)
                || (text_same(old->code, cite->code) && text_same(old->section, cite->section))))
            return true;
    return false;
}

/* Code sections by name, and common figures by where they come from. */
static void add_cites(struct text *out, const struct finding *finding)
{
    struct text code = TEXT_EMPTY, practice = TEXT_EMPTY;
    for (size_t i = 0; i < finding->cite_count; i++) {
        const struct cite *cite = &finding->cites[i];
        if (cited_before(finding, i))
            continue;
        if (is_practice(cite)) {
            text_add(&practice, practice.length == 0 ? "common practice, not code: " : "; ");
            text_add(&practice, cite->source == NULL ? "source not stated" : cite->source);
            continue;
        }
        text_add(&code, code.length == 0 ? "" : "; ");
        value_add_cite(&code, cite);
        text_addf(&code, " (%s%s%s)", value_cite_status(cite), cite->source == NULL ? "" : ": ",
                  cite->source == NULL ? "" : cite->source);
    }
    add_labelled(out, "figures", text_string(&code));
    add_labelled(out, code.length == 0 ? "figures" : "", text_string(&practice));
    out->failed = out->failed || code.failed || practice.failed;
    text_free(&code);
    text_free(&practice);
}

static void add_amended(struct text *out, const struct amended *amended)
{
    if (amended == NULL)
        return;
    struct text moved = TEXT_EMPTY;
    value_add_amended(&moved, amended);
    start_label(out, "amended");
    page_phrase(out, LABEL_HANG, &moved);
}

/* Arithmetic that two planes share is shown once. */
static bool worked_before(const struct finding *finding, size_t index)
{
    for (size_t i = 0; i < index; i++)
        if (strcmp(finding->work[i], finding->work[index]) == 0)
            return true;
    return false;
}

/* A quantity with its arithmetic, so that it can be done again by hand. */
static void add_given(struct text *out, const struct quantity_line *line)
{
    const struct finding *finding = &line->finding;
    add_title(out, line, 1);
    add_amount(out, line->amount);
    for (size_t i = 0; i < finding->work_count; i++)
        if (!worked_before(finding, i))
            add_labelled(out, i == 0 ? "arithmetic" : "", finding->work[i]);
    add_labelled(out, "note", finding->says);
    add_cites(out, finding);
    add_amended(out, finding->amended);
}

/* Open, broken or not applicable: a sentence. */
static void add_said(struct text *out, const struct quantity_line *lines, size_t count)
{
    add_title(out, lines, count);
    text_addf(out, "%*s", LINE_HANG, "");
    wrap_add(out, LINE_HANG, lines->finding.says);
}

/* Groups ------------------------------------------------------------------ */

/* What is to know comes without a count to buy. */
static bool is_given(const struct quantity_line *line, bool bought)
{
    return line->amount != NULL && line->amount->bought == bought;
}

/* The heading only when something stands under it. */
static void add_group(struct text *out, const struct takeoff *takeoff, bool bought,
                      const char *heading)
{
    bool any = false;
    for (size_t i = 0; i < takeoff->line_count; i++) {
        if (!is_given(&takeoff->lines[i], bought))
            continue;
        if (!any)
            text_addf(out, "\n-- %s\n", heading);
        any = true;
        add_given(out, &takeoff->lines[i]);
    }
}

/* How many lines from this one on say the same of the same quantity. */
static size_t alike_count(const struct takeoff *takeoff, size_t start)
{
    const struct finding *first = &takeoff->lines[start].finding;
    size_t count = 1;
    for (; start + count < takeoff->line_count; count++) {
        const struct finding *next = &takeoff->lines[start + count].finding;
        if (next->outcome != first->outcome || next->rule != first->rule
            || strcmp(next->says, first->says) != 0)
            break;
    }
    return count;
}

/* Those that say the same are told once, with all their places. */
static void add_outcome(struct text *out, const struct takeoff *takeoff, enum outcome outcome,
                        const char *heading)
{
    bool any = false;
    for (size_t i = 0, count = 1; i < takeoff->line_count; i += count) {
        count = alike_count(takeoff, i);
        if (takeoff->lines[i].finding.outcome != outcome)
            continue;
        if (!any)
            text_addf(out, "\n-- %s\n", heading);
        any = true;
        add_said(out, &takeoff->lines[i], count);
    }
}

void report_takeoff_text(const struct takeoff *takeoff, struct text *out)
{
    add_heading(out, takeoff);
    add_outcome(out, takeoff, OUTCOME_BROKEN, "broken: the quantity itself erred");
    add_group(out, takeoff, true, "to buy");
    add_group(out, takeoff, false, "to know");
    add_outcome(out, takeoff, OUTCOME_OPEN, "open: a fact is missing, and nothing is guessed");
    add_outcome(out, takeoff, OUTCOME_NOT_APPLICABLE, "not applicable to this job");
    text_add(out, "\n");
    wrap_add(out, 0, takeoff->head.caution == NULL ? "" : takeoff->head.caution);
    text_addf(out, "\nRules and figures used: %.*s\n", PRINT_SHOWN, takeoff->head.fingerprint);
}
