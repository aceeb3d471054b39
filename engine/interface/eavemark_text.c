/* The library from outside: calls that give one text. */
#include "include/eavemark.h"

#include "interface/entry.h"
#include "interface/inner.h"

enum eavemark_status eavemark_fields(eavemark *handle, const char *topic, bool schema,
                                     const char *jurisdiction, const char *date, char **text)
{
    locale_t host;
    const char *why = entry_locale(
        entry_first(entry_lacks_places(text, text), entry_lacks_handle(handle)), &host);
    if (why != NULL)
        return entry_refuse(why, NULL, text);
    const enum eavemark_status status = inner_fields(handle, topic, schema, jurisdiction, date,
                                                     text);
    locale_back(host);
    return status;
}

enum eavemark_status eavemark_list(eavemark *handle, enum eavemark_names names, char **text)
{
    locale_t host;
    /* A host in another language may hand over any number. */
    const int number = (int)names;
    const char *unknown = number < EAVEMARK_RULES || number > EAVEMARK_PARTS
                              ? "no such kind of names"
                              : NULL;
    const char *why = entry_locale(
        entry_first(entry_first(entry_lacks_places(text, text), entry_lacks_handle(handle)),
                    unknown),
        &host);
    if (why != NULL)
        return entry_refuse(why, NULL, text);
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
    const char *why = entry_locale(
        entry_first(entry_first(entry_lacks_places(text, text), entry_lacks_handle(handle)),
                    unsaid),
        &host);
    if (why != NULL)
        return entry_refuse(why, NULL, text);
    const enum eavemark_status status = inner_county_new(handle, id, follows, title, text);
    locale_back(host);
    return status;
}
