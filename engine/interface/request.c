#include "interface/request.h"

#include "base/date.h"
#include "job/json.h"

/* A job given as a text lies nowhere: a sheet that it names is then looked for in shop_folder
 * only. */
struct overrides request_overrides(const struct eavemark_request *request)
{
    return (struct overrides){
        .jurisdiction = request->jurisdiction,
        .date = request->date,
        .stage = request->stage,
        .shop = {request->shop_name, request->shop, request->shop_length, request->shop_folder,
                 request->text == NULL ? request->name : NULL},
    };
}

cJSON *request_job(const struct eavemark_request *request, struct problems *problems)
{
    return request_job_into(request, NULL, NULL, problems);
}

cJSON *request_job_into(const struct eavemark_request *request, const struct fields *likely,
                        struct arena *into, struct problems *problems)
{
    cJSON *job = NULL;
    if (request->text != NULL)
        json_read_likely(&job, likely, into, request->text, request->length, request->name,
                         problems);
    else
        json_read_file(&job, request->name, problems);
    return job;
}

/* date_parse gives 0 for what is no day; no day at all is fine. */
long request_day(const char *date, struct problems *problems)
{
    const long day = date == NULL ? 0 : date_parse(date);
    if (date != NULL && day == 0)
        problem_at(problems, PROBLEM_JOB, "--date", NULL, "\"%s\" is not a date (YYYY-MM-DD)",
                   date);
    return day;
}
