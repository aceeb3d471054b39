#include "check/mention.h"

#include <string.h>

/* "slope.least." before ".." is the beginning of a figure's name. */
static bool begins_name(const char *quote, const char *name)
{
    const size_t length = strcspn(quote + 1, "\"\n");
    const char *after = quote + 1 + length;
    if (*after != '"' || length == 0 || strncmp(quote + 1, name, length) != 0)
        return false;
    after++;
    after += strspn(after, " \t\n");
    return after[0] == '.' && after[1] == '.' && memchr(quote + 1, '.', length) != NULL;
}

bool mention_in(const struct source *source, const char *name)
{
    const size_t length = strlen(name);
    for (const char *at = strchr(source->text, '"'); at != NULL; at = strchr(at + 1, '"'))
        if ((strncmp(at + 1, name, length) == 0 && at[length + 1] == '"') || begins_name(at, name))
            return true;
    return false;
}
