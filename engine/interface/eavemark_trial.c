/* The library from outside: trials of one law beside another. */
#include "include/eavemark.h"

#include "interface/entry.h"
#include "interface/inner.h"

/* NULL laws are for merging only; one of two is a mistake. */
static const char *lacks_law(const struct eavemark_law *law)
{
    return law == NULL
               ? NULL
               : entry_first(entry_lacks_handle(law->handle),
                             law->jurisdiction == NULL ? "a law without a place (NULL)" : NULL);
}

eavemark_trial *eavemark_trial_open(const struct eavemark_law *before,
                                    const struct eavemark_law *after, enum eavemark_status *status,
                                    char **problems)
{
    locale_t host;
    const char *lacking = entry_first(
        entry_first(entry_lacks_places(status, problems),
                    (before == NULL) != (after == NULL) ? "a trial of one law (NULL)" : NULL),
        entry_first(lacks_law(before), lacks_law(after)));
    const char *why = entry_locale(lacking, &host);
    if (why != NULL) {
        const enum eavemark_status refused = entry_refuse(why, NULL, problems);
        if (status != NULL)
            *status = refused;
        return NULL;
    }
    eavemark_trial *trial = inner_trial_open(before, after, status, problems);
    locale_back(host);
    return trial;
}

enum eavemark_status eavemark_trial_job(eavemark_trial *trial,
                                        const struct eavemark_request *request)
{
    locale_t host;
    if (trial == NULL || entry_lacks_job(request) != NULL)
        return EAVEMARK_UNUSABLE;
    if (entry_locale(NULL, &host) != NULL)
        return EAVEMARK_BROKEN;
    const struct eavemark_request asked = entry_request(request);
    const enum eavemark_status status = inner_trial_job(trial, &asked);
    locale_back(host);
    return status;
}

bool eavemark_trial_merge(eavemark_trial *trial, const char *text, size_t length, const char *name,
                          char **problems)
{
    locale_t host;
    const char *lacking = entry_first(entry_lacks_places(problems, problems),
                                      trial == NULL || text == NULL ? "nothing to merge (NULL)"
                                                                    : NULL);
    const char *why = entry_locale(lacking, &host);
    if (why != NULL) {
        entry_refuse(why, NULL, problems);
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

enum eavemark_status eavemark_trial_status(const eavemark_trial *trial)
{
    return trial == NULL ? EAVEMARK_UNUSABLE : inner_trial_status(trial);
}

char *eavemark_trial_report(const eavemark_trial *trial, enum eavemark_form form)
{
    locale_t host;
    if (trial == NULL || entry_lacks_form(form) != NULL || entry_locale(NULL, &host) != NULL)
        return NULL;
    char *report = inner_trial_report(trial, form);
    locale_back(host);
    return report;
}

void eavemark_trial_close(eavemark_trial *trial)
{
    inner_trial_close(trial);
}
