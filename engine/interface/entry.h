/* entry.h - what every call of the library does first: looks at its arguments and puts the
 * host's locale aside.
 *
 * A call that lacks what it needs is refused, in words where it has a place for them. The
 * words are texts that are never freed; NULL: nothing is lacking.
 */
#ifndef EAVEMARK_INTERFACE_ENTRY_H
#define EAVEMARK_INTERFACE_ENTRY_H

#include "base/locale.h"
#include "include/eavemark.h"

const char *entry_lacks_handle(const eavemark *handle);
const char *entry_lacks_places(const void *report, const void *problems);
const char *entry_lacks_job(const struct eavemark_request *request);
const char *entry_lacks_wanted(const struct eavemark_request *request);
const char *entry_lacks_form(enum eavemark_form form);

/* The first of two that is lacking. */
const char *entry_first(const char *a, const char *b);

/* What a call lacks that takes a request and gives a report; and one that needs no job. */
const char *entry_lacks(const eavemark *handle, const struct eavemark_request *request,
                        enum eavemark_form form, char **report, char **problems);
const char *entry_lacks_but_job(const eavemark *handle, enum eavemark_form form, char **report,
                                char **problems);

/* Puts the host's locale aside when nothing is lacking; *host is for locale_back(). With no
 * plain locale to be had there is one more thing lacking. */
const char *entry_locale(const char *lacking, locale_t *host);

/* Answers a call that lacks something: no report, and why as the problem. Each place may be
 * NULL. */
enum eavemark_status entry_refuse(const char *why, char **report, char **problems);

/* The request, with a name for its text: "job" where it has none. */
struct eavemark_request entry_request(const struct eavemark_request *request);

#endif
