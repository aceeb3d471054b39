/* A job's habits as a shop sheet. */
#include "interface/inner.h"

#include "interface/handle.h"
#include "interface/reply.h"
#include "interface/request.h"
#include "job/shop.h"
#include "job/write.h"

/* The fields of all places: habits are the common ones. */
enum eavemark_status inner_shop_lift(eavemark *handle, const struct eavemark_request *request,
                                     char **sheet, char **problems)
{
    struct problems found = {0};
    struct text text = TEXT_EMPTY;
    cJSON *job = request_job(request, &found);
    const struct law *law = job == NULL ? NULL : laws_fields(&handle->laws, &found);
    cJSON *lifted = law == NULL ? NULL : shop_lift(job, &law->book->fields);
    /* A job without habits gives an empty sheet, not NULL. */
    if (law != NULL && lifted == NULL)
        problem_out_of_memory(&found);
    if (lifted != NULL)
        write_job_text(lifted, &text);
    cJSON_Delete(lifted);
    cJSON_Delete(job);
    enum eavemark_status status = reply_status(&found);
    *sheet = status == EAVEMARK_NOTHING_FAILED ? reply_text(&text) : NULL;
    *problems = reply_problems(&found);
    problems_free(&found);
    if (*problems == NULL || (status == EAVEMARK_NOTHING_FAILED && *sheet == NULL))
        status = reply_drop(sheet, problems);
    return status;
}
