/* The card of a stage. */
#include "interface/inner.h"

#include "ask/card.h"
#include "interface/handle.h"
#include "interface/reply.h"
#include "interface/request.h"
#include "report/card_report.h"

/* The names of stages are checked here: a card of no stage makes no sense. */
static cJSON *read_card_job(const struct eavemark_request *request, struct problems *problems)
{
    if (request->stage == NULL) {
        problem_at(problems, PROBLEM_JOB, "--stage", NULL,
                   "a card needs one of permit, deck, dry-in, final");
        return NULL;
    }
    return request_job(request, problems);
}

/* A card for a terminal or for paper; there is none in JSON. */
static char *card_report(const struct card *card, enum eavemark_form form)
{
    struct text text = TEXT_EMPTY;
    if (form == EAVEMARK_HTML)
        report_card_html(card, &text);
    else
        report_card_text(card, &text);
    return reply_text(&text);
}

/* A card is made whatever fails: it is there to find that out on the roof. */
enum eavemark_status inner_card(eavemark *handle, const struct eavemark_request *request,
                                enum eavemark_form form, char **report, char **problems)
{
    struct checked_card checked = {0};
    const struct overrides overrides = request_overrides(request);
    handle_make_room(handle);
    cJSON *job = read_card_job(request, &checked.problems);
    if (job != NULL)
        card_of_job(&handle->laws, job, &overrides, request->name, &checked);
    enum eavemark_status status = reply_status(&checked.problems);
    *report = checked.made ? card_report(&checked.card, form) : NULL;
    *problems = reply_problems(&checked.problems);
    if (card_broken(&checked.card) || *problems == NULL || (checked.made && *report == NULL))
        status = EAVEMARK_BROKEN;
    card_checked_free(&checked);
    cJSON_Delete(job);
    return status;
}
