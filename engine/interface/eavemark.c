/* The library from outside: handles, checks and their results. */
#include "include/eavemark.h"

#include "interface/entry.h"
#include "interface/inner.h"

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
    const char *why = entry_first(entry_first(entry_lacks_handle(handle), entry_lacks_job(request)),
                                  entry_lacks_wanted(request));
    /* Within one call numbers are read and written with a dot, whatever the host's own
     * locale says; it is put back before the host goes on. */
    const locale_t host = locale_plain();
    if (host == (locale_t)0)
        return NULL;
    const struct eavemark_request asked = why != NULL ? (struct eavemark_request){0}
                                                      : entry_request(request);
    eavemark_result *result = why != NULL ? inner_refused(why) : inner_check(handle, &asked);
    locale_back(host);
    return result;
}

/* Reads numbers only: no locale matters. */
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
    const locale_t host = result == NULL || entry_lacks_form(form) != NULL ? (locale_t)0
                                                                           : locale_plain();
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

/* NULL is nothing, as free() has it. */
void eavemark_result_free(eavemark_result *result)
{
    if (result != NULL)
        inner_result_free(result);
}
