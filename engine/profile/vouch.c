#include "profile/vouch.h"

#include <string.h>

const char *vouch_lacks(const struct figure *figure)
{
    if (figure->cite.status == STATUS_PRACTICE)
        return NULL;
    if (figure->borrowed != NULL)
        return "borrowed";
    if (figure->cite.status == STATUS_MEMORY || figure->cite.status == STATUS_NONE)
        return "recalled";
    if (figure->cite.status == STATUS_PARALLEL)
        return "sister text";
    return figure->unsure != NULL ? "book not sure to bind" : NULL;
}

bool vouch_names(const char *topic, const char *figure)
{
    const size_t length = strlen(topic);
    return strncmp(topic, figure, length) == 0 && (figure[length] == '\0' || figure[length] == '.');
}
