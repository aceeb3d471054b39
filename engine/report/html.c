#include "report/html.h"

#include "base/utf8.h"
#include "include/eavemark.h"
#include "job/stage.h"
#include "report/html_style.h"
#include "report/page.h"
#include "report/sources.h"
#include "report/story.h"
#include "report/value_words.h"

#include <string.h>

enum { PRINT_SHOWN = 16 /* characters of the fingerprint: enough to tell two apart */ };

/* NULL for what stands as it is. */
static const char *escape_of(char letter)
{
    switch (letter) {
    case '&':
        return "&amp;";
    case '<':
        return "&lt;";
    case '>':
        return "&gt;";
    case '"':
        return "&quot;";
    case '\'':
        return "&#39;";
    default:
        return NULL;
    }
}

/* For text and for attributes in double quotes. Printable first: what that writes out holds no
 * markup. */
void html_text(struct text *out, const char *words)
{
    struct text safe = TEXT_EMPTY;
    if (words == NULL)
        return;
    utf8_add_printable(&safe, words);
    for (const char *at = text_string(&safe); *at != '\0';) {
        const size_t plain = strcspn(at, "&<>\"'");
        text_add_n(out, at, plain);
        at += plain;
        if (*at != '\0')
            text_add(out, escape_of(*at++));
    }
    out->failed = out->failed || safe.failed;
    text_free(&safe);
}

void html_phrase(struct text *out, struct text *phrase)
{
    html_text(out, text_string(phrase));
    out->failed = out->failed || phrase->failed;
    text_free(phrase);
}

void html_element(struct text *out, const char *open, const char *words)
{
    if (words == NULL)
        return;
    text_addf(out, "<%s>", open);
    html_text(out, words);
    /* The tag alone closes, without its attributes. */
    text_addf(out, "</%.*s>\n", (int)strcspn(open, " "), open);
}

/* One file: no script, no picture, no address outside it, and the policy says so. */
void html_start(struct text *out, const char *title, const char *kind)
{
    text_add(out, "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n"
                  "<meta http-equiv=\"Content-Security-Policy\" "
                  "content=\"default-src 'none'; style-src 'unsafe-inline'\">\n"
                  "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n"
                  "<meta name=\"generator\" content=\"Eavemark " EAVEMARK_VERSION "\">\n");
    html_element(out, "title", title);
    html_style(out);
    text_addf(out,
              "</head>\n<body class=\"%s\">\n"
              "<a class=\"skip\" href=\"#main\">Skip to the findings</a>\n",
              kind);
}

/* Whatever was opened by html_start. */
void html_end(struct text *out)
{
    text_add(out, "</body>\n</html>\n");
}

/* Nothing to say: no row. */
void html_pair(struct text *out, const char *label, const char *words)
{
    if (words == NULL || words[0] == '\0')
        return;
    text_add(out, "<div>");
    html_element(out, "dt", label);
    html_element(out, "dd", words);
    text_add(out, "</div>\n");
}

void html_pair_phrase(struct text *out, const char *label, struct text *phrase)
{
    html_pair(out, label, text_string(phrase));
    out->failed = out->failed || phrase->failed;
    text_free(phrase);
}

/* Whose law, and how old its reading is. brief: a card has no room for how the law came to
 * be. */
static void add_law(struct text *out, const struct result *result, bool brief)
{
    struct text place = TEXT_EMPTY, chain = TEXT_EMPTY, seen = TEXT_EMPTY;
    text_addf(&place, "%s (%s)", result->jurisdiction_title, result->jurisdiction);
    for (size_t i = 0; !brief && i < result->chain_count; i++)
        text_addf(&chain, "%s%s", i > 0 ? ", then " : "", result->chain[i]);
    if (result->as_seen != NULL)
        text_addf(&seen, "as published on its page on %s; may have changed", result->as_seen);
    html_pair_phrase(out, "Place", &place);
    html_pair(out, "Date", result->date);
    html_pair(out, "Law", result->edition);
    html_pair_phrase(out, "Chain", &chain);
    html_pair_phrase(out, "Read", &seen);
}

void html_start_heading(struct text *out, const char *what, const struct result *result)
{
    text_add(out, "<header>\n");
    html_element(out, "p class=\"what\"", what);
    html_element(out, "h1", result->job);
    if (result->invented)
        text_add(out, "<p class=\"invented\"><strong>INVENTED PLACE</strong>: no real county, and "
                      "not the law anywhere</p>\n");
}

void html_heading(struct text *out, const char *what, const struct result *result, bool brief)
{
    html_start_heading(out, what, result);
    text_add(out, "<dl class=\"head\">\n");
    add_law(out, result, brief);
    for (size_t i = 0; !brief && i < result->doubt_count; i++)
        html_pair(out, "Doubt", result->doubts[i]);
    struct text facts = sources_head(result);
    html_pair_phrase(out, "Facts", &facts);
    for (size_t i = 0; i < result->differ_count; i++)
        html_pair(out, "Differs", result->differs[i]);
    if (!brief && result->only_stage >= 0 && result->only_stage < STAGE_COUNT)
        html_pair(out, "Stage", stage_word((enum stage)result->only_stage));
    for (size_t i = 0; i < result->about_count; i++)
        html_pair(out, result->about[i].label, result->about[i].says);
    text_add(out, "</dl>\n</header>\n");
}

void html_outcome(struct text *out, enum outcome outcome)
{
    /* The class gives the frame, the word the meaning: nothing is told by color alone. */
    static const char *const CLASSES[OUTCOME_COUNT] = {
        [OUTCOME_PASS] = "pass", [OUTCOME_WARN] = "warn",     [OUTCOME_FAIL] = "fail",
        [OUTCOME_OPEN] = "open", [OUTCOME_BROKEN] = "broken", [OUTCOME_NOT_APPLICABLE] = "na",
    };
    text_addf(out, "<span class=\"mark %s\">%s</span> ", CLASSES[outcome], page_outcome(outcome));
}

/* Each section once, in short. */
struct text html_cites(const struct finding *finding)
{
    struct text cites = TEXT_EMPTY;
    for (size_t i = 0; i < finding->cite_count; i++) {
        if (story_cited_before(finding, i, false))
            continue;
        text_add(&cites, cites.length == 0 ? "" : "; ");
        value_add_cite(&cites, &finding->cites[i]);
        text_addf(&cites, ", %s", value_cite_status(&finding->cites[i]));
    }
    return cites;
}

/* Cautions and where they come from; on a card without the sources. */
void html_safety(struct text *out, const struct result *result, bool sources)
{
    if (result->safety_count == 0)
        return;
    text_add(out, "<section class=\"care\" aria-labelledby=\"care\">\n"
                  "<h2 id=\"care\">At this stage, take care</h2>\n<ul>\n");
    for (size_t i = 0; i < result->safety_count; i++) {
        struct text cite = TEXT_EMPTY;
        value_add_cite(&cite, &result->safety[i].cite);
        text_add(&cite, sources ? "; " : ", ");
        if (sources)
            value_add_cite_status(&cite, &result->safety[i].cite);
        else
            text_add(&cite, value_cite_status(&result->safety[i].cite));
        text_add(out, "<li>");
        html_text(out, result->safety[i].says);
        text_add(out, " <span class=\"cite\">[");
        html_phrase(out, &cite);
        text_add(out, "]</span></li>\n");
    }
    text_add(out, "</ul>\n</section>\n");
}

void html_close(struct text *out, const struct result *result)
{
    struct text print = TEXT_EMPTY;
    text_addf(&print, "Rules and figures used: %.*s. Eavemark " EAVEMARK_VERSION ".", PRINT_SHOWN,
              result->fingerprint);
    text_add(out, "<footer>\n");
    html_element(out, "p", result->caution);
    text_add(out, "<p class=\"print\">");
    html_phrase(out, &print);
    text_add(out, "</p>\n</footer>\n");
}
