/* Rule files and places held to account: their proof, and figures moved. */
#include "interface/inner.h"

#include "interface/handle.h"
#include "interface/reply.h"
#include "interface/request.h"
#include "prove/mutate.h"
#include "prove/proof.h"
#include "report/mutate_report.h"
#include "report/proof_report.h"

/* Over all places: a broken file is worse than an error in one, and that than none. */
static enum eavemark_status proof_status(const struct proof *proof)
{
    enum eavemark_status status = reply_status(&proof->problems);
    if (proof->cases.failed > 0)
        status = reply_worse(status, EAVEMARK_FAILED);
    for (const struct place_proof *place = proof->places; place != NULL; place = place->next)
        status = reply_worse(status, place->broken       ? EAVEMARK_BROKEN
                                     : place->errors > 0 ? EAVEMARK_FAILED
                                                         : EAVEMARK_NOTHING_FAILED);
    return status;
}

enum eavemark_status inner_proof(eavemark *handle, const char *name, const char *date,
                                 const char *beside, enum eavemark_form form, char **report,
                                 char **problems)
{
    struct proof proof = {.beside = beside};
    struct text out = TEXT_EMPTY;
    /* Of --date; 0: every day on which a place says something else. */
    const long day = request_day(date, &proof.problems);
    if (proof.problems.count == 0)
        proof_run(&handle->laws, name, day, &proof);
    handle_say_out_of_memory(handle, &proof.problems);
    enum eavemark_status status = proof_status(&proof);
    *report = NULL;
    /* What failed has a report, which says what failed; only a request that makes no
     * sense has none. */
    if (status != EAVEMARK_UNUSABLE && reply_is_text(form))
        report_proof_text(&proof, &out);
    else if (status != EAVEMARK_UNUSABLE)
        report_proof_json(&proof, form == EAVEMARK_JSON, &out);
    if (status != EAVEMARK_UNUSABLE)
        *report = reply_text(&out);
    *problems = reply_problems(&proof.problems);
    if (*problems == NULL || (status != EAVEMARK_UNUSABLE && *report == NULL))
        status = reply_drop(report, problems);
    proof_free(&proof);
    return status;
}

enum eavemark_status inner_mutate(eavemark *handle, const char *topic, char **report,
                                  char **problems)
{
    struct mutation mutation = {0};
    struct text out = TEXT_EMPTY;
    mutate_run(&handle->laws, topic, &mutation);
    handle_say_out_of_memory(handle, &mutation.problems);
    enum eavemark_status status = reply_status(&mutation.problems);
    *report = NULL;
    /* Nothing but the report can still go wrong. */
    if (status == EAVEMARK_NOTHING_FAILED) {
        if (report_mutate_text(&mutation, &out) > 0)
            status = EAVEMARK_FAILED;
        *report = reply_text(&out);
    }
    *problems = reply_problems(&mutation.problems);
    if (*problems == NULL || (status <= EAVEMARK_FAILED && *report == NULL))
        status = reply_drop(report, problems);
    mutate_free(&mutation);
    return status;
}
