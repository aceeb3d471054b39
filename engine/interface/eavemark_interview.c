/* The library from outside: interviews. */
#include "include/eavemark.h"

#include "interface/entry.h"
#include "interface/inner.h"

/* Without a request, or with one that names no job, a new job is begun. */
eavemark_interview *eavemark_interview_open(eavemark *handle,
                                            const struct eavemark_request *request,
                                            enum eavemark_status *status, char **problems)
{
    locale_t host;
    const char *why = entry_locale(
        entry_first(entry_lacks_places(status, problems), entry_lacks_handle(handle)), &host);
    if (why != NULL) {
        /* The status is told where there is a place for it, which may be what is lacking. */
        const enum eavemark_status refused = entry_refuse(why, NULL, problems);
        if (status != NULL)
            *status = refused;
        return NULL;
    }
    const struct eavemark_request asked = request == NULL ? (struct eavemark_request){0}
                                                          : entry_request(request);
    eavemark_interview *opened = inner_interview_open(handle, &asked, status, problems);
    locale_back(host);
    return opened;
}

static const char *lacks_interview(const eavemark_interview *interview, const void *place)
{
    return entry_first(entry_lacks_places(place, place),
                       interview == NULL ? "a call without an interview (NULL)" : NULL);
}

char *eavemark_interview_ask(eavemark_interview *interview, bool help, char **problems)
{
    locale_t host;
    const char *why = entry_locale(lacks_interview(interview, problems), &host);
    if (why != NULL) {
        entry_refuse(why, NULL, problems);
        return NULL;
    }
    char *words = inner_interview_ask(interview, help, problems);
    locale_back(host);
    return words;
}

bool eavemark_interview_answer(eavemark_interview *interview, const char *words, char **why)
{
    locale_t host;
    const char *lacking = entry_locale(
        entry_first(lacks_interview(interview, why),
                    words == NULL ? "an answer without words (NULL)" : NULL),
        &host);
    if (lacking != NULL) {
        entry_refuse(lacking, NULL, why);
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
    const char *lacking = entry_locale(lacks_interview(interview, why), &host);
    if (lacking != NULL) {
        entry_refuse(lacking, NULL, why);
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
    if (entry_locale(interview == NULL ? "no interview" : NULL, &host) != NULL)
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
    const char *why = entry_locale(
        entry_first(entry_lacks_places(answered, skipped), lacks_interview(interview, problems)),
        &host);
    if (why != NULL) {
        entry_refuse(why, NULL, problems);
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
