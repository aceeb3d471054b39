/* Why a rule or a figure is as it is, and the figures of a topic side by side. */
#include "interface/inner.h"

#include "interface/handle.h"
#include "interface/reply.h"
#include "interface/request.h"
#include "prove/explain.h"
#include "prove/figure_table.h"
#include "report/explain_report.h"
#include "report/figure_table_report.h"

/* What is wrong in both lists. NULL when out of memory. */
static char *both_problems(const struct problems *first, const struct problems *second)
{
    struct text text = TEXT_EMPTY;
    problems_write(first, &text);
    problems_write(second, &text);
    return reply_text(&text);
}

static char *explain_report(const struct explanation *explanation, enum eavemark_form form)
{
    struct text text = TEXT_EMPTY;
    if (reply_is_text(form))
        report_explain_text(explanation, &text);
    else
        report_explain_json(explanation, form == EAVEMARK_JSON, &text);
    return reply_text(&text);
}

enum eavemark_status inner_explain(eavemark *handle, const char *name,
                                   const struct eavemark_request *request, enum eavemark_form form,
                                   char **report, char **problems)
{
    struct explanation explanation = {0};
    /* The place is given twice: for the rule as such, and for the job held against it. */
    struct explain_request asked = {.name = name,
                                    .jurisdiction = request->jurisdiction,
                                    .job_file = request->name,
                                    .overrides = request_overrides(request)};
    handle_make_room(handle);
    asked.date = request_day(request->date, &explanation.problems);
    /* With a job, its own place and day are meant unless the request names others. */
    if (explanation.problems.count == 0 && (request->name != NULL || request->text != NULL))
        asked.job = request_job(request, &explanation.problems);
    if (explanation.problems.count == 0)
        explain(&handle->laws, &asked, &explanation);
    handle_say_out_of_memory(handle, &explanation.problems);
    enum eavemark_status status = reply_worse(reply_status(&explanation.problems),
                                              reply_status(&explanation.checked.problems));
    *report = status == EAVEMARK_NOTHING_FAILED ? explain_report(&explanation, form) : NULL;
    *problems = both_problems(&explanation.problems, &explanation.checked.problems);
    if (*problems == NULL || (status == EAVEMARK_NOTHING_FAILED && *report == NULL))
        status = reply_drop(report, problems);
    explain_free(&explanation);
    /* What was held for the explanation may rest again. */
    laws_rest_any(&handle->laws);
    cJSON_Delete(asked.job);
    return status;
}

/* Tab-separated as text, an object a figure as JSON. */
static char *figures_report(const struct figure_table *table, enum eavemark_form form)
{
    struct text text = TEXT_EMPTY;
    if (reply_is_text(form))
        report_figure_table_text(table, &text);
    else
        report_figure_table_json(table, form == EAVEMARK_JSON, &text);
    return reply_text(&text);
}

enum eavemark_status inner_figures(eavemark *handle, const char *topic, const char *status,
                                   const struct eavemark_request *request, enum eavemark_form form,
                                   char **report, char **problems)
{
    /* No request is one that asks for nothing in particular. */
    const struct eavemark_request none = {0};
    struct figure_table table = {0};
    request = request == NULL ? &none : request;
    struct figure_table_request asked = {
        /* status_of gives none both for no word and for an unknown one: told apart below. */
        .topic = topic,
        .status = status_of(status),
        .jurisdiction = request->jurisdiction};
    handle_make_room(handle);
    asked.date = request_day(request->date, &table.problems);
    if (status != NULL && asked.status == STATUS_NONE)
        problem_at(&table.problems, PROBLEM_JOB, "--status", NULL,
                   "\"%s\" is not one of seen, parallel, memory, practice, invented", status);
    if (table.problems.count == 0)
        figure_table_make(&handle->laws, &asked, &table);
    handle_say_out_of_memory(handle, &table.problems);
    enum eavemark_status answer = reply_status(&table.problems);
    *report = answer == EAVEMARK_NOTHING_FAILED ? figures_report(&table, form) : NULL;
    *problems = reply_problems(&table.problems);
    if (*problems == NULL || (answer == EAVEMARK_NOTHING_FAILED && *report == NULL))
        answer = reply_drop(report, problems);
    figure_table_free(&table);
    return answer;
}
