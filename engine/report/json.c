#include "report/report.h"

#include "base/number.h"
#include "base/utf8.h"
#include "include/eavemark.h"
#include "report/json_part.h"
#include "report/value_words.h"

#include <cjson/cJSON.h>
#include <stdio.h>
#include <string.h>

/* null for none, so that every key is always there. */
bool json_add_text(cJSON *object, const char *key, const char *text)
{
    if (text == NULL)
        return cJSON_AddNullToObject(object, key) != NULL;
    return cJSON_AddStringToObject(object, key, text) != NULL;
}

static bool add_count(cJSON *object, const char *key, size_t count)
{
    return cJSON_AddNumberToObject(object, key, (double)count) != NULL;
}

bool json_add_texts(cJSON *object, const char *key, const char *const *texts, size_t count)
{
    cJSON *array = cJSON_AddArrayToObject(object, key);
    if (array == NULL)
        return false;
    for (size_t i = 0; i < count; i++)
        if (!cJSON_AddItemToArray(array, cJSON_CreateString(texts[i])))
            return false;
    return true;
}

bool json_add_value(cJSON *object, const char *key, const struct value *value)
{
    switch (value->kind) {
    case VALUE_NONE:
        break;
    case VALUE_NUMBER: {
        /* As it is printed elsewhere: no reader shall find another number here. */
        const double rounded = number_rounded(value->number, value->unit);
        return cJSON_AddNumberToObject(object, key, rounded) != NULL;
    }
    case VALUE_YES_NO:
        return cJSON_AddBoolToObject(object, key, value->yes) != NULL;
    case VALUE_TEXT:
        return json_add_text(object, key, value->text);
    case VALUE_SET:
        return json_add_texts(object, key, value->set, value->set_count);
    }
    return cJSON_AddNullToObject(object, key) != NULL;
}

/* Which facts, and whether the job states them or they were laid out. */
bool json_add_reads(cJSON *object, const struct finding *finding)
{
    cJSON *array = cJSON_AddArrayToObject(object, "reads");
    bool added = array != NULL;
    for (size_t i = 0; added && i < finding->read_count; i++) {
        cJSON *read = cJSON_CreateObject();
        added = cJSON_AddItemToArray(array, read) && json_add_text(read, "at", finding->reads[i].at)
                && json_add_text(read, "from", origin_word(finding->reads[i].from));
    }
    return added;
}

/* null while it cannot be told. */
static bool add_met(cJSON *object, enum met met)
{
    return met == MET_UNKNOWN ? cJSON_AddNullToObject(object, "met") != NULL
                              : cJSON_AddBoolToObject(object, "met", met == MET_YES) != NULL;
}

/* Set bits as words. */
static bool add_why(cJSON *object, unsigned why)
{
    cJSON *array = cJSON_AddArrayToObject(object, "why");
    bool added = array != NULL;
    for (int i = 0; added && i < WHY_COUNT; i++)
        if (why & (1u << i))
            added = cJSON_AddItemToArray(array, cJSON_CreateString(finding_why_word(i)));
    return added;
}

/* The ids of the figures that made the demanded value. */
static bool add_makers(cJSON *object, const struct finding *finding)
{
    cJSON *array = cJSON_AddArrayToObject(object, "figures");
    bool added = array != NULL;
    for (size_t i = 0; added && i < finding->maker_count; i++)
        added = cJSON_AddItemToArray(array, cJSON_CreateString(finding->makers[i].figure));
    return added;
}

/* A value with its unit, and its sense when it has one; null when absent. */
static bool add_figure(cJSON *object, const char *key, bool present, const struct value *value,
                       enum sense sense)
{
    if (!present || value->kind == VALUE_NONE)
        return cJSON_AddNullToObject(object, key) != NULL;
    cJSON *figure = cJSON_AddObjectToObject(object, key);
    return figure != NULL && json_add_value(figure, "value", value)
           && json_add_text(figure, "unit", value->unit)
           && (sense == SENSE_NONE || json_add_text(figure, "sense", sense_word(sense)));
}

static bool add_cite(cJSON *array, const struct cite *cite)
{
    cJSON *object = cJSON_CreateObject();
    return cJSON_AddItemToArray(array, object) && json_add_text(object, "code", cite->code)
           && json_add_text(object, "section", cite->section)
           && json_add_text(object, "status", status_word(cite->status))
           && json_add_text(object, "source", cite->source);
}

bool json_add_cites(cJSON *object, const struct finding *finding)
{
    cJSON *array = cJSON_AddArrayToObject(object, "cite");
    if (array == NULL)
        return false;
    for (size_t i = 0; i < finding->cite_count; i++)
        if (!add_cite(array, &finding->cites[i]))
            return false;
    return true;
}

bool json_add_amended(cJSON *object, const struct amended *amended)
{
    if (amended == NULL)
        return cJSON_AddNullToObject(object, "amended") != NULL;
    cJSON *inner = cJSON_AddObjectToObject(object, "amended");
    return inner != NULL && json_add_text(inner, "by", amended->by)
           && json_add_value(inner, "from", &amended->from)
           && json_add_value(inner, "to", &amended->to);
}

/* The keys are a promise to whoever reads reports by program: always all of them, in this
 * order, null where there is nothing. */
static bool add_finding(cJSON *array, const struct finding *finding)
{
    cJSON *object = cJSON_CreateObject();
    return cJSON_AddItemToArray(array, object) && json_add_text(object, "rule", finding->rule)
           && json_add_text(object, "stage", stage_word(finding->stage))
           && json_add_text(object, "where", finding->where)
           && json_add_text(object, "outcome", outcome_word(finding->outcome))
           && add_met(object, finding->met) && add_why(object, finding->why)
           && json_add_text(object, "ask", ask_word(finding->ask))
           && json_add_text(object, "says", finding->says)
           && add_figure(object, "required", finding->compared, &finding->required, finding->sense)
           && add_figure(object, "also", finding->compared, &finding->also, finding->also_sense)
           && add_figure(object, "rival", finding->compared, &finding->rival, SENSE_NONE)
           && add_figure(object, "found", finding->compared, &finding->found, SENSE_NONE)
           && add_makers(object, finding) && json_add_cites(object, finding)
           && json_add_amended(object, finding->amended)
           && json_add_texts(object, "work", finding->work, finding->work_count)
           && json_add_text(object, "mend", finding->mend)
           && json_add_text(object, "caution", finding->caution) && json_add_reads(object, finding);
}

static bool add_findings(cJSON *root, const struct result *result, bool all)
{
    cJSON *array = cJSON_AddArrayToObject(root, "findings");
    if (array == NULL)
        return false;
    for (size_t i = 0; i < result->finding_count; i++)
        if ((all || result->findings[i].outcome != OUTCOME_NOT_APPLICABLE)
            && !add_finding(array, &result->findings[i]))
            return false;
    return true;
}

/* "deck": 4 ... findings that do not apply, counted by topic. */
static bool add_not_applicable(cJSON *root, const struct result *result)
{
    cJSON *object = cJSON_AddObjectToObject(root, "not_applicable");
    char topic[80] = "";
    size_t count = 0;
    /* Findings stand by topic; one past the end closes the last. */
    for (size_t i = 0; object != NULL && i <= result->finding_count; i++) {
        const struct finding *finding = i < result->finding_count ? &result->findings[i] : NULL;
        if (finding != NULL && finding->outcome != OUTCOME_NOT_APPLICABLE)
            continue;
        const size_t length = finding == NULL ? 0 : strcspn(finding->rule, ".");
        if (finding == NULL || strlen(topic) != length
            || strncmp(topic, finding->rule, length) != 0) {
            if (count > 0 && !add_count(object, topic, count))
                return false;
            count = 0;
            snprintf(topic, sizeof(topic), "%.*s", (int)length,
                     finding == NULL ? "" : finding->rule);
        }
        count++;
    }
    return object != NULL;
}

static bool add_counts(cJSON *root, const struct result *result)
{
    cJSON *object = cJSON_AddObjectToObject(root, "counts");
    return object != NULL && add_count(object, "met_unconfirmed", result->met_unconfirmed)
           && add_count(object, "disputed", result->disputed)
           && add_count(object, "not_met", result->not_met);
}

bool json_add_jurisdiction(cJSON *root, const struct result *result)
{
    cJSON *object = cJSON_AddObjectToObject(root, "jurisdiction");
    return object != NULL && json_add_text(object, "id", result->jurisdiction)
           && json_add_text(object, "title", result->jurisdiction_title)
           && cJSON_AddBoolToObject(object, "invented", result->invented) != NULL
           && json_add_texts(object, "chain", result->chain, result->chain_count)
           && json_add_texts(object, "doubts", result->doubts, result->doubt_count)
           && json_add_text(object, "edition", result->edition);
}

static bool add_summary(cJSON *root, const struct result *result)
{
    static const enum outcome ORDER[OUTCOME_COUNT] = {
        OUTCOME_PASS, OUTCOME_WARN,           OUTCOME_FAIL,
        OUTCOME_OPEN, OUTCOME_NOT_APPLICABLE, OUTCOME_BROKEN,
    };
    cJSON *object = cJSON_AddObjectToObject(root, "summary");
    if (object == NULL)
        return false;
    for (size_t i = 0; i < OUTCOME_COUNT; i++)
        if (!add_count(object, outcome_word(ORDER[i]), result->counts[ORDER[i]]))
            return false;
    return true;
}

/* The closing caution, then a line for each safety caution of the stage. */
static bool add_caution(cJSON *root, const struct result *result)
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
    const bool added = !lines.failed && json_add_text(root, "caution", text_string(&lines));
    text_free(&lines);
    return added;
}

static bool add_everything(cJSON *root, const struct result *result, bool all)
{
    return json_add_text(root, "eavemark", EAVEMARK_VERSION)
           && json_add_text(root, "job", result->job) && json_add_text(root, "date", result->date)
           && json_add_jurisdiction(root, result)
           && json_add_text(root, "fingerprint", result->fingerprint) && add_summary(root, result)
           && add_counts(root, result) && add_findings(root, result, all)
           && (all || add_not_applicable(root, result)) && add_caution(root, result);
}

static unsigned long code_point(const unsigned char *s, size_t length)
{
    static const unsigned char lead_mask[5] = {0, 0x7F, 0x1F, 0x0F, 0x07};
    unsigned long code = s[0] & lead_mask[length];
    for (size_t i = 1; i < length; i++)
        code = code << 6 | (s[i] & 0x3F);
    return code;
}

/* Past U+FFFF as two halves (RFC 8259 section 7). */
static void add_escape(struct text *out, unsigned long code)
{
    if (code > 0xFFFF)
        text_addf(out, "\\u%04lx\\u%04lx", 0xD800 + ((code - 0x10000) >> 10),
                  0xDC00 + ((code - 0x10000) & 0x3FF));
    else
        text_addf(out, "\\u%04lx", code);
}

/* cJSON writes everything past 0x7E as it is, broken bytes included. Such
 * characters stand only inside strings, so each may become an escape of the
 * same meaning: the report is then always valid JSON, and no mark in a job's
 * text can steer the terminal it is read on. Tabs, on the other hand, stand
 * only between strings: they are cJSON's indentation, and become spaces. */
static void add_as_ascii(struct text *out, const char *json)
{
    const unsigned char *s = (const unsigned char *)json;
    size_t left = strlen(json);
    while (left > 0) {
        size_t plain = 0; /* by far the most */
        while (plain < left && s[plain] >= ' ' && s[plain] < 0x7F)
            plain++;
        text_add_n(out, (const char *)s, plain);
        s += plain, left -= plain;
        if (left == 0)
            break;
        size_t length = utf8_length(s, left);
        if (s[0] == '\t')
            text_add(out, s != (const unsigned char *)json && s[-1] == ':' ? " " : "  ");
        else if (s[0] == '\n')
            text_add(out, "\n");
        else
            add_escape(out, length == 0 ? 0xFFFD : code_point(s, length));
        length = length == 0 ? 1 : length;
        s += length, left -= length;
    }
}

/* Deletes the tree in any case. */
void json_finish(cJSON *root, bool complete, bool pretty, struct text *out)
{
    char *printed = NULL;
    if (complete)
        printed = pretty ? cJSON_Print(root) : cJSON_PrintUnformatted(root);
    cJSON_Delete(root);
    if (printed == NULL) {
        out->failed = true;
        return;
    }
    add_as_ascii(out, printed);
    text_add(out, "\n");
    cJSON_free(printed);
}

void report_json(const struct result *result, bool pretty, bool all, struct text *out)
{
    cJSON *root = cJSON_CreateObject();
    json_finish(root, root != NULL && add_everything(root, result, all), pretty, out);
}
