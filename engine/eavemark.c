#include "include/eavemark.h"

#include "base/date.h"
#include "base/text.h"
#include "check/cases.h"
#include "check/check.h"
#include "job/json.h"
#include "job/schema.h"
#include "report/report.h"

#include <stdlib.h>
#include <string.h>

struct eavemark {
    char *home;
    struct laws laws;
};

struct eavemark_result {
    struct checked checked;
    char *problems; /* written out */
};

eavemark *eavemark_open(const char *home)
{
    eavemark *handle = calloc(1, sizeof(*handle));
    if (handle == NULL)
        return NULL;
    const size_t size = strlen(home) + 1;
    handle->home = malloc(size);
    if (handle->home == NULL) {
        free(handle);
        return NULL;
    }
    memcpy(handle->home, home, size);
    handle->laws.home = handle->home;
    return handle;
}

void eavemark_close(eavemark *handle)
{
    if (handle == NULL)
        return;
    laws_free(&handle->laws);
    free(handle->home);
    free(handle);
}

/* Hands over the text's memory; NULL when it could not be built. */
static char *text_release(struct text *text)
{
    if (text->bytes == NULL)
        text_add(text, "");
    char *bytes = text->failed ? NULL : text->bytes;
    if (bytes == NULL)
        text_free(text);
    return bytes;
}

static char *problems_text(const struct problems *problems)
{
    struct text text = TEXT_EMPTY;
    problems_write(problems, &text);
    return text_release(&text);
}

eavemark_result *eavemark_check(eavemark *handle, const struct eavemark_request *request)
{
    eavemark_result *result = calloc(1, sizeof(*result));
    if (result == NULL)
        return NULL;
    struct checked *checked = &result->checked;
    const struct overrides overrides = {request->jurisdiction, request->date, request->stage};
    cJSON *job = NULL;
    if (request->text == NULL)
        json_read_file(&job, request->name, &checked->problems);
    else
        json_read(&job, request->text, request->length, request->name, &checked->problems);
    if (job != NULL)
        check_job(&handle->laws, job, &overrides, request->name, checked);
    cJSON_Delete(job);
    result->problems = problems_text(&checked->problems);
    if (result->problems == NULL) {
        eavemark_result_free(result);
        return NULL;
    }
    return result;
}

enum eavemark_status eavemark_result_status(const eavemark_result *result, bool strict)
{
    const struct checked *checked = &result->checked;
    if (!checked->judged) {
        const bool broken = checked->problems.out_of_memory
            || problems_any(&checked->problems, PROBLEM_RULES);
        return broken ? EAVEMARK_BROKEN : EAVEMARK_UNUSABLE;
    }
    const size_t *counts = checked->result.counts;
    if (counts[OUTCOME_BROKEN] > 0)
        return EAVEMARK_BROKEN;
    if (counts[OUTCOME_FAIL] > 0
        || (strict && (counts[OUTCOME_WARN] > 0 || counts[OUTCOME_OPEN] > 0)))
        return EAVEMARK_FAILED;
    return EAVEMARK_NOTHING_FAILED;
}

const char *eavemark_result_problems(const eavemark_result *result)
{
    return result->problems;
}

char *eavemark_result_report(const eavemark_result *result, enum eavemark_form form, bool colour)
{
    if (!result->checked.judged)
        return NULL;
    struct text text = TEXT_EMPTY;
    switch (form) {
    case EAVEMARK_TEXT:
        report_text(&result->checked.result, colour, &text);
        break;
    case EAVEMARK_JSON:
    case EAVEMARK_JSON_LINE:
        report_json(&result->checked.result, form == EAVEMARK_JSON, &text);
        break;
    }
    return text_release(&text);
}

void eavemark_result_free(eavemark_result *result)
{
    if (result == NULL)
        return;
    checked_free(&result->checked);
    free(result->problems);
    free(result);
}

static enum eavemark_status problems_status(const struct problems *problems)
{
    if (problems->out_of_memory || problems_any(problems, PROBLEM_RULES))
        return EAVEMARK_BROKEN;
    return problems->count > 0 ? EAVEMARK_UNUSABLE : EAVEMARK_NOTHING_FAILED;
}

static const struct law *catalogue(eavemark *handle, const char *jurisdiction, const char *day,
                                   struct problems *problems)
{
    if (jurisdiction == NULL)
        return laws_fields(&handle->laws, problems);
    const long date = day == NULL ? 0 : date_parse(day);
    if (date == 0) {
        problem_at(problems, PROBLEM_JOB, "--date", NULL,
                   "a date (YYYY-MM-DD) is needed with --jurisdiction");
        return NULL;
    }
    return laws_find(&handle->laws, jurisdiction, date, "--jurisdiction", problems);
}

enum eavemark_status eavemark_fields(eavemark *handle, const char *topic, bool schema,
                                     const char *jurisdiction, const char *date, char **text)
{
    struct problems problems = {0};
    struct text out = TEXT_EMPTY;
    const struct law *law = catalogue(handle, jurisdiction, date, &problems);
    int done = 0;
    if (law != NULL)
        done = schema ? fields_schema(&law->book->fields, &out)
                      : fields_listing(&law->book->fields, topic, &out);
    if (done < 0)
        problem_out_of_memory(&problems);
    if (done > 0)
        problem_at(&problems, PROBLEM_JOB, "fields", NULL, "there is no topic \"%s\"", topic);
    const enum eavemark_status status = problems_status(&problems);
    if (status != EAVEMARK_NOTHING_FAILED) {
        text_free(&out);
        problems_write(&problems, &out);
    }
    problems_free(&problems);
    *text = text_release(&out);
    return status;
}

enum eavemark_status eavemark_proof(eavemark *handle, const char *topic, char **text)
{
    struct problems problems = {0};
    struct text out = TEXT_EMPTY;
    struct tally tally = {0};
    const int held = cases_run(&handle->laws, topic, &tally, &out, &problems);
    enum eavemark_status status = problems_status(&problems);
    if (status == EAVEMARK_NOTHING_FAILED && held != 0)
        status = EAVEMARK_FAILED;
    problems_write(&problems, &out);
    text_addf(&out, "%zu rules judged by cases\n%zu passed, %zu failed\n", tally.rules, tally.held,
              tally.failed);
    problems_free(&problems);
    *text = text_release(&out);
    return status;
}
