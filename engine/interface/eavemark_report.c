/* The library from outside: calls that give a report. */
#include "include/eavemark.h"

#include "interface/entry.h"
#include "interface/inner.h"

/* As inner_compare bounds it; more are refused there, in words. */
enum { TOGETHER_MOST = 64 }; /* jobs that are compared */

/* What takes one job and gives its report. */
typedef enum eavemark_status job_call(eavemark *handle, const struct eavemark_request *request,
                                      enum eavemark_form form, char **report, char **problems);

static enum eavemark_status report_of_job(job_call *inner, eavemark *handle,
                                          const struct eavemark_request *request,
                                          enum eavemark_form form, char **report, char **problems)
{
    locale_t host;
    const char *why = entry_locale(entry_lacks(handle, request, form, report, problems), &host);
    if (why != NULL)
        return entry_refuse(why, report, problems);
    const struct eavemark_request asked = entry_request(request);
    const enum eavemark_status status = inner(handle, &asked, form, report, problems);
    locale_back(host);
    return status;
}

enum eavemark_status eavemark_takeoff(eavemark *handle, const struct eavemark_request *request,
                                      enum eavemark_form form, char **report, char **problems)
{
    return report_of_job(inner_takeoff, handle, request, form, report, problems);
}

enum eavemark_status eavemark_order(eavemark *handle, const struct eavemark_request *request,
                                    enum eavemark_form form, char **report, char **problems)
{
    return report_of_job(inner_order, handle, request, form, report, problems);
}

enum eavemark_status eavemark_card(eavemark *handle, const struct eavemark_request *request,
                                   enum eavemark_form form, char **report, char **problems)
{
    return report_of_job(inner_card, handle, request, form, report, problems);
}

enum eavemark_status eavemark_questions(eavemark *handle, const struct eavemark_request *request,
                                        enum eavemark_form form, char **report, char **problems)
{
    return report_of_job(inner_questions, handle, request, form, report, problems);
}

enum eavemark_status eavemark_shop_lift(eavemark *handle, const struct eavemark_request *request,
                                        char **sheet, char **problems)
{
    locale_t host;
    const char *why = entry_locale(entry_lacks(handle, request, EAVEMARK_TEXT, sheet, problems),
                                   &host);
    if (why != NULL)
        return entry_refuse(why, sheet, problems);
    const struct eavemark_request asked = entry_request(request);
    const enum eavemark_status status = inner_shop_lift(handle, &asked, sheet, problems);
    locale_back(host);
    return status;
}

enum eavemark_status eavemark_explain(eavemark *handle, const char *name,
                                      const struct eavemark_request *request,
                                      enum eavemark_form form, char **report, char **problems)
{
    locale_t host;
    const char *why = entry_locale(entry_lacks_but_job(handle, form, report, problems), &host);
    if (why != NULL)
        return entry_refuse(why, report, problems);
    const struct eavemark_request asked = request == NULL ? (struct eavemark_request){0}
                                                          : entry_request(request);
    const enum eavemark_status status = inner_explain(handle, name, &asked, form, report, problems);
    locale_back(host);
    return status;
}

enum eavemark_status eavemark_figures(eavemark *handle, const char *topic, const char *status,
                                      const struct eavemark_request *request,
                                      enum eavemark_form form, char **report, char **problems)
{
    locale_t host;
    const char *why = entry_locale(entry_lacks_but_job(handle, form, report, problems), &host);
    if (why != NULL)
        return entry_refuse(why, report, problems);
    const enum eavemark_status answer = inner_figures(handle, topic, status, request, form, report,
                                                      problems);
    locale_back(host);
    return answer;
}

enum eavemark_status eavemark_compare(eavemark *handle, const struct eavemark_request *requests,
                                      size_t count, enum eavemark_form form, char **report,
                                      char **problems)
{
    /* Copies with names; more than fit are only counted, and refused within. */
    struct eavemark_request asked[TOGETHER_MOST] = {{0}};
    locale_t host;
    const char *lacking = entry_lacks_but_job(handle, form, report, problems);
    for (size_t i = 0; lacking == NULL && i < count && i < TOGETHER_MOST; i++) {
        lacking = entry_lacks_job(requests == NULL ? NULL : &requests[i]);
        if (lacking == NULL)
            asked[i] = entry_request(&requests[i]);
    }
    const char *why = entry_locale(lacking, &host);
    if (why != NULL)
        return entry_refuse(why, report, problems);
    const enum eavemark_status status = inner_compare(handle, asked, count, form, report, problems);
    locale_back(host);
    return status;
}

enum eavemark_status eavemark_proof(eavemark *handle, const char *name, const char *date,
                                    const char *beside, enum eavemark_form form, char **report,
                                    char **problems)
{
    locale_t host;
    const char *why = entry_locale(entry_lacks_but_job(handle, form, report, problems), &host);
    if (why != NULL)
        return entry_refuse(why, report, problems);
    const enum eavemark_status status = inner_proof(handle, name, date, beside, form, report,
                                                    problems);
    locale_back(host);
    return status;
}

enum eavemark_status eavemark_mutate(eavemark *handle, const char *topic, char **report,
                                     char **problems)
{
    locale_t host;
    const char *why = entry_locale(entry_lacks_but_job(handle, EAVEMARK_TEXT, report, problems),
                                   &host);
    if (why != NULL)
        return entry_refuse(why, report, problems);
    const enum eavemark_status status = inner_mutate(handle, topic, report, problems);
    locale_back(host);
    return status;
}

enum eavemark_status eavemark_places(eavemark *handle, const char *words, enum eavemark_form form,
                                     char **report, char **problems)
{
    locale_t host;
    const char *why = entry_locale(entry_lacks_but_job(handle, form, report, problems), &host);
    if (why != NULL)
        return entry_refuse(why, report, problems);
    const enum eavemark_status answer = inner_places(handle, words, form, report, problems);
    locale_back(host);
    return answer;
}
