/* What a job needs of material: the order, with or without its sums. */
#include "interface/inner.h"

#include "check/check.h"
#include "interface/handle.h"
#include "interface/reply.h"
#include "interface/request.h"
#include "report/report.h"

/* The order alone, or with the sums under it. */
static char *takeoff_report(const struct takeoff *takeoff, enum eavemark_form form, bool sums)
{
    struct text text = TEXT_EMPTY;
    switch (form) {
    case EAVEMARK_TEXT:
    case EAVEMARK_HTML:
        if (sums)
            report_takeoff_text(takeoff, &text);
        else
            report_order_text(takeoff, &text);
        break;
    case EAVEMARK_CSV:
        report_order_csv(takeoff, &text);
        break;
    case EAVEMARK_JSON:
    case EAVEMARK_JSON_LINE:
        report_takeoff_json(takeoff, form == EAVEMARK_JSON, &text);
        break;
    }
    return reply_text(&text);
}

/* Nothing that the takeoff gives points into the job, which need not outlive it. */
static enum eavemark_status reckon_request(eavemark *handle, const struct eavemark_request *request,
                                           enum eavemark_form form, bool sums, char **report,
                                           char **problems)
{
    struct checked_takeoff checked = {0};
    struct overrides overrides = request_overrides(request);
    overrides.stage = NULL; /* all is reckoned, whatever has been looked at */
    handle_make_room(handle);
    cJSON *job = request_job(request, &checked.problems);
    if (job != NULL)
        check_takeoff(&handle->laws, job, &overrides, request->name, &checked);
    cJSON_Delete(job);
    enum eavemark_status status = reply_status(&checked.problems);
    *report = checked.reckoned ? takeoff_report(&checked.takeoff, form, sums) : NULL;
    *problems = reply_problems(&checked.problems);
    /* There is a report all the same: the other quantities hold. */
    if (checked.takeoff.head.counts[OUTCOME_BROKEN] > 0)
        status = EAVEMARK_BROKEN;
    /* A report without its problems, or the other way round, would be half an answer. */
    if (*problems == NULL || (checked.reckoned && *report == NULL))
        status = reply_drop(report, problems);
    checked_takeoff_free(&checked);
    return status;
}

enum eavemark_status inner_takeoff(eavemark *handle, const struct eavemark_request *request,
                                   enum eavemark_form form, char **report, char **problems)
{
    return reckon_request(handle, request, form, true, report, problems);
}

enum eavemark_status inner_order(eavemark *handle, const struct eavemark_request *request,
                                 enum eavemark_form form, char **report, char **problems)
{
    return reckon_request(handle, request, form, false, report, problems);
}
