#include "interface/entry.h"

#include <stdlib.h>
#include <string.h>

/* Known by its address: the one refusal that is not the caller's fault. */
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
enum eavemark_status entry_refuse(const char *why, char **report, char **problems)
{
    if (report != NULL)
        *report = NULL;
    if (problems != NULL)
        *problems = said_of(why);
    return why == NO_PLAIN_LOCALE || (problems != NULL && *problems == NULL) ? EAVEMARK_BROKEN
                                                                             : EAVEMARK_UNUSABLE;
}

/* Each returns a text that is never freed. */
const char *entry_lacks_handle(const eavemark *handle)
{
    return handle == NULL ? "a call without a handle (NULL)" : NULL;
}

/* Without a place for the report a call could not even say what it lacks; one without a place
 * for problems would leak them. */
const char *entry_lacks_places(const void *report, const void *problems)
{
    return report == NULL || problems == NULL ? "a call without a place for its answer (NULL)"
                                              : NULL;
}

/* Neither says which job; both are a text with a name for its messages. */
const char *entry_lacks_job(const struct eavemark_request *request)
{
    if (request == NULL)
        return "a call without a request (NULL)";
    return request->text == NULL && request->name == NULL
               ? "a request with neither a text nor the name of a file"
               : NULL;
}

/* Through a number, as below: a host in another language may hand over any. */
const char *entry_lacks_wanted(const struct eavemark_request *request)
{
    const int wanted = request == NULL ? 0 : (int)request->wanted;
    return wanted < EAVEMARK_WANT_ANY || wanted > EAVEMARK_WANT_BRIEF
               ? "a request that wants what there is not"
               : NULL;
}

const char *entry_lacks_form(enum eavemark_form form)
{
    const int number = (int)form;
    return number < EAVEMARK_TEXT || number > EAVEMARK_CSV ? "no such form of a report" : NULL;
}

/* What is lacking first is what is said. */
const char *entry_first(const char *a, const char *b)
{
    return a != NULL ? a : b;
}

/* Of the calls that take a request and give a report. */
const char *entry_lacks(const eavemark *handle, const struct eavemark_request *request,
                        enum eavemark_form form, char **report, char **problems)
{
    return entry_first(
        entry_first(entry_lacks_places(report, problems), entry_lacks_handle(handle)),
        entry_first(entry_lacks_job(request), entry_lacks_form(form)));
}

/* And of those that need no job. */
const char *entry_lacks_but_job(const eavemark *handle, enum eavemark_form form, char **report,
                                char **problems)
{
    return entry_first(
        entry_first(entry_lacks_places(report, problems), entry_lacks_handle(handle)),
        entry_lacks_form(form));
}

/* A text given without a name goes by "job". A shallow copy: its texts stay the caller's. */
struct eavemark_request entry_request(const struct eavemark_request *request)
{
    struct eavemark_request asked = *request;
    if (asked.name == NULL && asked.text != NULL)
        asked.name = "job";
    return asked;
}

/* Puts the host's locale aside; with no plain one there is one more thing lacking. */
const char *entry_locale(const char *lacking, locale_t *host)
{
    *host = lacking == NULL ? locale_plain() : (locale_t)0;
    return lacking == NULL && *host == (locale_t)0 ? NO_PLAIN_LOCALE : lacking;
}
