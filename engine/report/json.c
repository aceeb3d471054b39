#include "report/report.h"

#include "base/format.h"
#include "include/eavemark.h"
#include "report/json_finding.h"
#include "report/value_words.h"

#include <string.h>

static void topic_of(const char *rule, char topic[80])
{
    format_to(topic, 80, "%.*s", (int)strcspn(rule, "."), rule);
}

/* "deck": 4 ... findings that do not apply, counted by topic. */
static void add_not_applicable(struct json_out *out, const struct result *result)
{
    char topic[80] = "";
    size_t count = 0;
    json_out_open(out, "not_applicable", '{');
    for (size_t i = 0; i < result->left_out_count; i++) {
        topic_of(result->left_out[i].rule, topic);
        json_out_count(out, topic, result->left_out[i].count);
    }
    /* Findings stand by topic; one past the end closes the last. */
    for (size_t i = 0; i <= result->finding_count; i++) {
        const struct finding *finding = i < result->finding_count ? &result->findings[i] : NULL;
        if (finding != NULL && finding->outcome != OUTCOME_NOT_APPLICABLE)
            continue;
        const size_t length = finding == NULL ? 0 : strcspn(finding->rule, ".");
        if (finding == NULL || strlen(topic) != length
            || strncmp(topic, finding->rule, length) != 0) {
            if (count > 0)
                json_out_count(out, topic, count);
            count = 0;
            topic_of(finding == NULL ? "" : finding->rule, topic);
        }
        count++;
    }
    json_out_close(out, '}');
}

static void add_counts(struct json_out *out, const struct result *result)
{
    json_out_open(out, "counts", '{');
    json_out_count(out, "met_unconfirmed", result->met_unconfirmed);
    json_out_count(out, "disputed", result->disputed);
    json_out_count(out, "not_met", result->not_met);
    json_out_close(out, '}');
}

/* How many facts, by where they are from. */
static void add_facts(struct json_out *out, const struct result *result)
{
    json_out_open(out, "facts", '{');
    for (int i = 0; i < ORIGIN_COUNT; i++)
        json_out_count(out, origin_word((enum origin)i), result->facts[i]);
    json_out_close(out, '}');
    json_out_texts(out, "differs", result->differs, result->differ_count);
}

static void add_jurisdiction(struct json_out *out, const struct result *result)
{
    json_out_open(out, "jurisdiction", '{');
    json_out_text(out, "id", result->jurisdiction);
    json_out_text(out, "title", result->jurisdiction_title);
    json_out_bool(out, "invented", result->invented);
    json_out_texts(out, "chain", result->chain, result->chain_count);
    json_out_texts(out, "doubts", result->doubts, result->doubt_count);
    json_out_text(out, "edition", result->edition);
    json_out_close(out, '}');
}

static void add_summary(struct json_out *out, const struct result *result)
{
    static const enum outcome ORDER[OUTCOME_COUNT] = {
        OUTCOME_PASS, OUTCOME_WARN,           OUTCOME_FAIL,
        OUTCOME_OPEN, OUTCOME_NOT_APPLICABLE, OUTCOME_BROKEN,
    };
    json_out_open(out, "summary", '{');
    for (size_t i = 0; i < OUTCOME_COUNT; i++)
        json_out_count(out, outcome_word(ORDER[i]), result->counts[ORDER[i]]);
    json_out_close(out, '}');
}

/* The closing caution, then a line for each safety caution of the stage. */
static void add_caution(struct json_out *out, const struct result *result)
{
    struct text lines = TEXT_EMPTY;
    text_add(&lines, result->caution == NULL ? "" : result->caution);
    for (size_t i = 0; i < result->safety_count; i++) {
        const struct safety *safety = &result->safety[i];
        text_addf(&lines, "%s%s (", lines.length > 0 ? "\n" : "", safety->says);
        value_add_cite(&lines, &safety->cite);
        text_add(&lines, "; ");
        value_add_cite_status(&lines, &safety->cite);
        text_add(&lines, ")");
    }
    out->text->failed = out->text->failed || lines.failed;
    json_out_text(out, "caution", text_string(&lines));
    text_free(&lines);
}

void report_json(const struct result *result, bool pretty, bool all, struct text *text)
{
    struct json_out out = json_out_to(text, pretty);
    json_out_open(&out, NULL, '{');
    json_out_text(&out, "eavemark", EAVEMARK_VERSION);
    json_out_text(&out, "job", result->job);
    json_out_text(&out, "date", result->date);
    add_jurisdiction(&out, result);
    json_out_text(&out, "fingerprint", result->fingerprint);
    add_summary(&out, result);
    add_counts(&out, result);
    add_facts(&out, result);
    json_finding_list(&out, result, all);
    if (!all)
        add_not_applicable(&out, result);
    add_caution(&out, result);
    json_out_close(&out, '}');
    text_add(text, "\n");
}

/* A rule that fails in several places stands once. */
static void add_fails(struct json_out *out, const struct result *result)
{
    const char *last = "";
    json_out_open(out, "fail", '[');
    for (size_t i = 0; i < result->finding_count; i++) {
        const struct finding *finding = &result->findings[i];
        if (finding->outcome != OUTCOME_FAIL || strcmp(finding->rule, last) == 0)
            continue;
        json_out_text(out, NULL, finding->rule);
        last = finding->rule;
    }
    json_out_close(out, ']');
}

void report_brief(const struct result *result, struct text *text)
{
    struct json_out out = json_out_to(text, false);
    json_out_open(&out, NULL, '{');
    json_out_text(&out, "job", result->job);
    json_out_text(&out, "jurisdiction", result->jurisdiction);
    json_out_text(&out, "date", result->date);
    add_summary(&out, result);
    add_counts(&out, result);
    add_fails(&out, result);
    json_out_close(&out, '}');
    text_add(text, "\n");
}
