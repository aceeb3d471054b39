/* The door of the library: looks at the arguments of each call, puts the host's locale
 * aside, and goes in (inner.h). A call that lacks what it needs is refused, in words where
 * it has a place for them. */
#include "include/eavemark.h"

#include "base/locale.h"
#include "include/inner.h"

#include <stdlib.h>
#include <string.h>

/* As inner_compare bounds it; more are refused there, in words. */
enum { TOGETHER_MOST = 64 }; /* jobs that are compared */

static const char NO_PLAIN_LOCALE[] = "out of memory";

/* A text of the caller's own: "eavemark: why". NULL when out of memory. */
static char *said_of(const char *why)
{
    static const char WHO[] = "eavemark: ";
    const size_t size = sizeof(WHO) + strlen(why) + 1;
    char *text = malloc(size);
    if (text == NULL)
        return NULL;
    memcpy(text, WHO, sizeof(WHO));
    strcat(text, why);
    return strcat(text, "\n");
}

/* Every place that there is for an answer is filled, so that a host may free what it
 * finds there. */
static enum eavemark_status refuse_call(const char *why, char **report, char **problems)
{
    if (report != NULL)
        *report = NULL;
    if (problems != NULL)
        *problems = said_of(why);
    return why == NO_PLAIN_LOCALE || (problems != NULL && *problems == NULL) ? EAVEMARK_BROKEN
                                                                             : EAVEMARK_UNUSABLE;
}

/* What a call lacks, in words; NULL: nothing ---------------------------------------- */

/* Each returns a text that is never freed. */
static const char *lacks_handle(const eavemark *handle)
{
    return handle == NULL ? "a call without a handle (NULL)" : NULL;
}

static const char *lacks_places(const void *report, const void *problems)
{
    return report == NULL || problems == NULL ? "a call without a place for its answer (NULL)"
                                              : NULL;
}

static const char *lacks_job(const struct eavemark_request *request)
{
    if (request == NULL)
        return "a call without a request (NULL)";
    return request->text == NULL && request->name == NULL
               ? "a request with neither a text nor the name of a file"
               : NULL;
}

/* Through a number: a host in another language may hand over any. */
static const char *lacks_form(enum eavemark_form form)
{
    const int number = (int)form;
    return number < EAVEMARK_TEXT || number > EAVEMARK_CSV ? "no such form of a report" : NULL;
}

/* What is lacking first is what is said. */
static const char *first_of(const char *a, const char *b)
{
    return a != NULL ? a : b;
}

/* Of the calls that take a request and give a report. */
static const char *lacks(const eavemark *handle, const struct eavemark_request *request,
                         enum eavemark_form form, char **report, char **problems)
{
    return first_of(first_of(lacks_places(report, problems), lacks_handle(handle)),
                    first_of(lacks_job(request), lacks_form(form)));
}

/* And of those that need no job. */
static const char *lacks_but_job(const eavemark *handle, enum eavemark_form form, char **report,
                                 char **problems)
{
    return first_of(first_of(lacks_places(report, problems), lacks_handle(handle)),
                    lacks_form(form));
}

/* A text given without a name goes by "job". */
static struct eavemark_request with_name(const struct eavemark_request *request)
{
    struct eavemark_request asked = *request;
    if (asked.name == NULL && asked.text != NULL)
        asked.name = "job";
    return asked;
}

/* Handles and checks ------------------------------------------------------------------ */

eavemark *eavemark_open(const char *home)
{
    return home == NULL ? NULL : inner_open(home);
}

void eavemark_close(eavemark *handle)
{
    if (handle != NULL)
        inner_close(handle);
}

eavemark_result *eavemark_check(eavemark *handle, const struct eavemark_request *request)
{
    const char *why = first_of(lacks_handle(handle), lacks_job(request));
    /* Within one call numbers are read and written with a dot, whatever the host's own
     * locale says; it is put back before the host goes on. */
    const locale_t host = locale_plain();
    if (host == (locale_t)0)
        return NULL;
    const struct eavemark_request asked = why != NULL ? (struct eavemark_request){0}
                                                      : with_name(request);
    eavemark_result *result = why != NULL ? inner_refused(why) : inner_check(handle, &asked);
    locale_back(host);
    return result;
}

enum eavemark_status eavemark_result_status(const eavemark_result *result, bool strict)
{
    return result == NULL ? EAVEMARK_UNUSABLE : inner_result_status(result, strict);
}

const char *eavemark_result_problems(const eavemark_result *result)
{
    return result == NULL ? "eavemark: there is no result (NULL)\n" : inner_result_problems(result);
}

char *eavemark_result_report(const eavemark_result *result, enum eavemark_form form,
                             unsigned options)
{
    const locale_t host = result == NULL || lacks_form(form) != NULL ? (locale_t)0 : locale_plain();
    if (host == (locale_t)0)
        return NULL;
    char *report = inner_result_report(result, form, options);
    locale_back(host);
    return report;
}

char *eavemark_result_changes(const eavemark_result *before, const eavemark_result *after,
                              unsigned options)
{
    const locale_t host = before == NULL || after == NULL ? (locale_t)0 : locale_plain();
    if (host == (locale_t)0)
        return NULL;
    char *changes = inner_result_changes(before, after, options);
    locale_back(host);
    return changes;
}

void eavemark_result_free(eavemark_result *result)
{
    if (result != NULL)
        inner_result_free(result);
}

/* Calls that give a report --------------------------------------------------------- */

/* Puts the host's locale aside; with no plain one there is one more thing lacking. */
static const char *enter_plain_locale(const char *lacking, locale_t *host)
{
    *host = lacking == NULL ? locale_plain() : (locale_t)0;
    return lacking == NULL && *host == (locale_t)0 ? NO_PLAIN_LOCALE : lacking;
}

/* What takes one job and gives its report. */
typedef enum eavemark_status job_call(eavemark *handle, const struct eavemark_request *request,
                                      enum eavemark_form form, char **report, char **problems);

static enum eavemark_status report_of_job(job_call *inner, eavemark *handle,
                                          const struct eavemark_request *request,
                                          enum eavemark_form form, char **report, char **problems)
{
    locale_t host;
    const char *why = enter_plain_locale(lacks(handle, request, form, report, problems), &host);
    if (why != NULL)
        return refuse_call(why, report, problems);
    const struct eavemark_request asked = with_name(request);
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
    const char *why = enter_plain_locale(lacks(handle, request, EAVEMARK_TEXT, sheet, problems),
                                         &host);
    if (why != NULL)
        return refuse_call(why, sheet, problems);
    const struct eavemark_request asked = with_name(request);
    const enum eavemark_status status = inner_shop_lift(handle, &asked, sheet, problems);
    locale_back(host);
    return status;
}

enum eavemark_status eavemark_explain(eavemark *handle, const char *name,
                                      const struct eavemark_request *request,
                                      enum eavemark_form form, char **report, char **problems)
{
    locale_t host;
    const char *why = enter_plain_locale(lacks_but_job(handle, form, report, problems), &host);
    if (why != NULL)
        return refuse_call(why, report, problems);
    const struct eavemark_request asked = request == NULL ? (struct eavemark_request){0}
                                                          : with_name(request);
    const enum eavemark_status status = inner_explain(handle, name, &asked, form, report, problems);
    locale_back(host);
    return status;
}

enum eavemark_status eavemark_figures(eavemark *handle, const char *topic, const char *status,
                                      const struct eavemark_request *request,
                                      enum eavemark_form form, char **report, char **problems)
{
    locale_t host;
    const char *why = enter_plain_locale(lacks_but_job(handle, form, report, problems), &host);
    if (why != NULL)
        return refuse_call(why, report, problems);
    const enum eavemark_status answer = inner_figures(handle, topic, status, request, form, report,
                                                      problems);
    locale_back(host);
    return answer;
}

enum eavemark_status eavemark_compare(eavemark *handle, const struct eavemark_request *requests,
                                      size_t count, enum eavemark_form form, char **report,
                                      char **problems)
{
    struct eavemark_request asked[TOGETHER_MOST] = {{0}};
    locale_t host;
    const char *lacking = lacks_but_job(handle, form, report, problems);
    for (size_t i = 0; lacking == NULL && i < count && i < TOGETHER_MOST; i++) {
        lacking = lacks_job(requests == NULL ? NULL : &requests[i]);
        if (lacking == NULL)
            asked[i] = with_name(&requests[i]);
    }
    const char *why = enter_plain_locale(lacking, &host);
    if (why != NULL)
        return refuse_call(why, report, problems);
    const enum eavemark_status status = inner_compare(handle, asked, count, form, report, problems);
    locale_back(host);
    return status;
}

enum eavemark_status eavemark_proof(eavemark *handle, const char *name, const char *date,
                                    const char *beside, enum eavemark_form form, char **report,
                                    char **problems)
{
    locale_t host;
    const char *why = enter_plain_locale(lacks_but_job(handle, form, report, problems), &host);
    if (why != NULL)
        return refuse_call(why, report, problems);
    const enum eavemark_status status = inner_proof(handle, name, date, beside, form, report,
                                                    problems);
    locale_back(host);
    return status;
}

enum eavemark_status eavemark_mutate(eavemark *handle, const char *topic, char **report,
                                     char **problems)
{
    locale_t host;
    const char *why = enter_plain_locale(lacks_but_job(handle, EAVEMARK_TEXT, report, problems),
                                         &host);
    if (why != NULL)
        return refuse_call(why, report, problems);
    const enum eavemark_status status = inner_mutate(handle, topic, report, problems);
    locale_back(host);
    return status;
}

/* Trials ----------------------------------------------------------------------------- */

static const char *lacks_law(const struct eavemark_law *law)
{
    return law == NULL
               ? NULL
               : first_of(lacks_handle(law->handle),
                          law->jurisdiction == NULL ? "a law without a place (NULL)" : NULL);
}

eavemark_trial *eavemark_trial_open(const struct eavemark_law *before,
                                    const struct eavemark_law *after, char **problems)
{
    locale_t host;
    const char *lacking = first_of(
        first_of(lacks_places(problems, problems),
                 (before == NULL) != (after == NULL) ? "a trial of one law (NULL)" : NULL),
        first_of(lacks_law(before), lacks_law(after)));
    const char *why = enter_plain_locale(lacking, &host);
    if (why != NULL) {
        refuse_call(why, NULL, problems);
        return NULL;
    }
    eavemark_trial *trial = inner_trial_open(before, after, problems);
    locale_back(host);
    return trial;
}

enum eavemark_status eavemark_trial_job(eavemark_trial *trial,
                                        const struct eavemark_request *request)
{
    locale_t host;
    if (trial == NULL || lacks_job(request) != NULL)
        return EAVEMARK_UNUSABLE;
    if (enter_plain_locale(NULL, &host) != NULL)
        return EAVEMARK_BROKEN;
    const struct eavemark_request asked = with_name(request);
    const enum eavemark_status status = inner_trial_job(trial, &asked);
    locale_back(host);
    return status;
}

bool eavemark_trial_merge(eavemark_trial *trial, const char *text, size_t length, const char *name,
                          char **problems)
{
    locale_t host;
    const char *lacking = first_of(lacks_places(problems, problems), trial == NULL || text == NULL
                                                                         ? "nothing to merge (NULL)"
                                                                         : NULL);
    const char *why = enter_plain_locale(lacking, &host);
    if (why != NULL) {
        refuse_call(why, NULL, problems);
        return false;
    }
    const bool merged = inner_trial_merge(trial, text, length, name == NULL ? "part" : name,
                                          problems);
    locale_back(host);
    return merged;
}

bool eavemark_trial_refuse(eavemark_trial *trial, const char *name, const char *why)
{
    return trial != NULL && name != NULL && why != NULL && inner_trial_refuse(trial, name, why);
}

bool eavemark_trial_moved(const eavemark_trial *trial)
{
    return trial != NULL && inner_trial_moved(trial);
}

char *eavemark_trial_report(const eavemark_trial *trial, enum eavemark_form form)
{
    locale_t host;
    if (trial == NULL || lacks_form(form) != NULL || enter_plain_locale(NULL, &host) != NULL)
        return NULL;
    char *report = inner_trial_report(trial, form);
    locale_back(host);
    return report;
}

void eavemark_trial_close(eavemark_trial *trial)
{
    inner_trial_close(trial);
}

/* Calls that give one text ----------------------------------------------------------- */

enum eavemark_status eavemark_fields(eavemark *handle, const char *topic, bool schema,
                                     const char *jurisdiction, const char *date, char **text)
{
    locale_t host;
    const char *why = enter_plain_locale(first_of(lacks_places(text, text), lacks_handle(handle)),
                                         &host);
    if (why != NULL)
        return refuse_call(why, NULL, text);
    const enum eavemark_status status = inner_fields(handle, topic, schema, jurisdiction, date,
                                                     text);
    locale_back(host);
    return status;
}

enum eavemark_status eavemark_places(eavemark *handle, const char *words, enum eavemark_form form,
                                     char **report, char **problems)
{
    locale_t host;
    const char *why = enter_plain_locale(lacks_but_job(handle, form, report, problems), &host);
    if (why != NULL)
        return refuse_call(why, report, problems);
    const enum eavemark_status answer = inner_places(handle, words, form, report, problems);
    locale_back(host);
    return answer;
}

enum eavemark_status eavemark_list(eavemark *handle, enum eavemark_names names, char **text)
{
    locale_t host;
    const int number = (int)names;
    const char *unknown = number < EAVEMARK_RULES || number > EAVEMARK_PARTS
                              ? "no such kind of names"
                              : NULL;
    const char *why = enter_plain_locale(
        first_of(first_of(lacks_places(text, text), lacks_handle(handle)), unknown), &host);
    if (why != NULL)
        return refuse_call(why, NULL, text);
    const enum eavemark_status status = inner_list(handle, names, text);
    locale_back(host);
    return status;
}

enum eavemark_status eavemark_county_new(eavemark *handle, const char *id, const char *follows,
                                         const char *title, char **text)
{
    locale_t host;
    const char *unsaid = id == NULL || follows == NULL || title == NULL
                             ? "a county needs an id, a place to follow and a title (NULL)"
                             : NULL;
    const char *why = enter_plain_locale(
        first_of(first_of(lacks_places(text, text), lacks_handle(handle)), unsaid), &host);
    if (why != NULL)
        return refuse_call(why, NULL, text);
    const enum eavemark_status status = inner_county_new(handle, id, follows, title, text);
    locale_back(host);
    return status;
}

/* Interviews --------------------------------------------------------------------------- */

/* Without a request, or with one that names no job, a new job is begun. */
eavemark_interview *eavemark_interview_open(eavemark *handle,
                                            const struct eavemark_request *request,
                                            enum eavemark_status *status, char **problems)
{
    locale_t host;
    const char *why = enter_plain_locale(
        first_of(lacks_places(status, problems), lacks_handle(handle)), &host);
    if (why != NULL) {
        const enum eavemark_status refused = refuse_call(why, NULL, problems);
        if (status != NULL)
            *status = refused;
        return NULL;
    }
    const struct eavemark_request asked = request == NULL ? (struct eavemark_request){0}
                                                          : with_name(request);
    eavemark_interview *opened = inner_interview_open(handle, &asked, status, problems);
    locale_back(host);
    return opened;
}

static const char *lacks_interview(const eavemark_interview *interview, const void *place)
{
    return first_of(lacks_places(place, place),
                    interview == NULL ? "a call without an interview (NULL)" : NULL);
}

char *eavemark_interview_ask(eavemark_interview *interview, bool help, char **problems)
{
    locale_t host;
    const char *why = enter_plain_locale(lacks_interview(interview, problems), &host);
    if (why != NULL) {
        refuse_call(why, NULL, problems);
        return NULL;
    }
    char *words = inner_interview_ask(interview, help, problems);
    locale_back(host);
    return words;
}

bool eavemark_interview_answer(eavemark_interview *interview, const char *words, char **why)
{
    locale_t host;
    const char *lacking = enter_plain_locale(
        first_of(lacks_interview(interview, why),
                 words == NULL ? "an answer without words (NULL)" : NULL),
        &host);
    if (lacking != NULL) {
        refuse_call(lacking, NULL, why);
        return false;
    }
    const bool taken = inner_interview_answer(interview, words, why);
    locale_back(host);
    return taken;
}

bool eavemark_interview_wants_name(const eavemark_interview *interview)
{
    return interview != NULL && inner_interview_wants_name(interview);
}

bool eavemark_interview_skip(eavemark_interview *interview, char **why)
{
    locale_t host;
    const char *lacking = enter_plain_locale(lacks_interview(interview, why), &host);
    if (lacking != NULL) {
        refuse_call(lacking, NULL, why);
        return false;
    }
    const bool skipped = inner_interview_skip(interview, why);
    locale_back(host);
    return skipped;
}

size_t eavemark_interview_left(const eavemark_interview *interview)
{
    return interview == NULL ? 0 : inner_interview_left(interview);
}

char *eavemark_interview_standing(eavemark_interview *interview)
{
    locale_t host;
    if (enter_plain_locale(interview == NULL ? "no interview" : NULL, &host) != NULL)
        return NULL;
    char *standing = inner_interview_standing(interview);
    locale_back(host);
    return standing;
}

/* Nothing is read or written in these two: the locale does not matter. */
bool eavemark_interview_back(eavemark_interview *interview)
{
    return interview != NULL && inner_interview_back(interview);
}

char *eavemark_interview_job(eavemark_interview *interview, size_t *answered, size_t *skipped,
                             char **problems)
{
    locale_t host;
    const char *why = enter_plain_locale(
        first_of(lacks_places(answered, skipped), lacks_interview(interview, problems)), &host);
    if (why != NULL) {
        refuse_call(why, NULL, problems);
        return NULL;
    }
    char *job = inner_interview_job(interview, answered, skipped, problems);
    locale_back(host);
    return job;
}

char *eavemark_interview_draft(const eavemark_interview *interview)
{
    const locale_t host = interview == NULL ? (locale_t)0 : locale_plain();
    if (host == (locale_t)0)
        return NULL;
    char *draft = inner_interview_draft(interview);
    locale_back(host);
    return draft;
}

void eavemark_interview_close(eavemark_interview *interview)
{
    if (interview != NULL)
        inner_interview_close(interview);
}
