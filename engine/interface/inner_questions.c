/* What a job leaves open, as a list of questions. */
#include "interface/inner.h"

#include "ask/question.h"
#include "interface/handle.h"
#include "interface/reply.h"
#include "interface/request.h"
#include "report/question_report.h"

/* There is no page of questions: for paper there is the card. */
static char *questions_report(const struct questions *questions, enum eavemark_form form)
{
    struct text text = TEXT_EMPTY;
    if (reply_is_text(form))
        report_questions_text(questions, &text);
    else
        report_questions_json(questions, form == EAVEMARK_JSON, &text);
    return reply_text(&text);
}

/* The questions point into result and job: both are freed after them. */
enum eavemark_status inner_questions(eavemark *handle, const struct eavemark_request *request,
                                     enum eavemark_form form, char **report, char **problems)
{
    struct checked_questions checked = {0};
    const struct overrides overrides = request_overrides(request);
    handle_make_room(handle);
    cJSON *job = request_job(request, &checked.problems);
    if (job != NULL)
        questions_of_job(&handle->laws, job, &overrides, request->name, &checked);
    enum eavemark_status status = reply_status(&checked.problems);
    *report = checked.judged ? questions_report(&checked.questions, form) : NULL;
    *problems = reply_problems(&checked.problems);
    if (*problems == NULL
        || (checked.judged && *report == NULL)
        /* A rule that erred may have had a question of its own. */
        || checked.result.counts[OUTCOME_BROKEN] > 0)
        status = EAVEMARK_BROKEN;
    questions_checked_free(&checked);
    cJSON_Delete(job);
    return status;
}
