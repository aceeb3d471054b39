#include "report/page.h"

#include "report/wrap.h"

/* Releases the phrase. */
void page_phrase(struct text *out, size_t hang, struct text *phrase)
{
    if (phrase->failed)
        out->failed = true;
    else
        wrap_add(out, hang, text_string(phrase));
    text_free(phrase);
}

void page_section(struct text *out, const char *title)
{
    text_addf(out, "\n-- %s\n\n", title);
}

/* The label is not wrapped: every one fits its column. */
void page_head(struct text *out, const char *label, const char *words)
{
    if (words == NULL)
        return;
    text_addf(out, "%-*s", PAGE_HEAD, label);
    wrap_add(out, PAGE_HEAD, words);
}

/* Two columns in, so that labels stand apart from the heads above. */
static void start_label(struct text *out, const char *label)
{
    text_addf(out, "  %-*s", PAGE_LABEL - 2, label);
}

void page_labelled(struct text *out, const char *label, const char *words)
{
    if (words == NULL)
        return;
    start_label(out, label);
    wrap_add(out, PAGE_LABEL, words);
}

void page_labelled_phrase(struct text *out, const char *label, struct text *phrase)
{
    start_label(out, label);
    page_phrase(out, PAGE_LABEL, phrase);
}

/* What every report in text says first. */
void page_heading(struct text *out, const struct result *result)
{
    struct text place = TEXT_EMPTY;
    text_addf(&place, "%s (%s)", result->jurisdiction_title, result->jurisdiction);
    if (result->invented)
        text_add(&place, " - INVENTED PLACE: no real county, and not the law anywhere");
    page_head(out, "Job", result->job);
    text_addf(out, "%-*s", PAGE_HEAD, "Place");
    page_phrase(out, PAGE_HEAD, &place);
    page_head(out, "Date", result->date);
    page_head(out, "Law", result->edition);
}

/* Capitals for what asks to be looked at. */
const char *page_outcome(enum outcome outcome)
{
    static const char *const WORDS[OUTCOME_COUNT] = {
        [OUTCOME_PASS] = "pass", [OUTCOME_WARN] = "WARN",     [OUTCOME_FAIL] = "FAIL",
        [OUTCOME_OPEN] = "OPEN", [OUTCOME_BROKEN] = "BROKEN", [OUTCOME_NOT_APPLICABLE] = "n/a",
    };
    return WORDS[outcome];
}
