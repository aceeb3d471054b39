#include "prove/mention.h"

#include <string.h>

/* "slope.least." before ".." is the beginning of a figure's name. */
static bool begins_name(const char *quoted, size_t length, const char *name)
{
    const char *after = quoted + length + 1;
    after += strspn(after, " \t\n");
    return length > 0 && memchr(quoted, '.', length) != NULL && strncmp(quoted, name, length) == 0
           && after[0] == '.' && after[1] == '.';
}

/* Looks at every quoted text of a rule file; comments are not told apart, so a name in
 * one counts. */
bool mention_in(const struct source *source, const char *name)
{
    const size_t whole = strlen(name);
    for (const char *at = strpbrk(source->text, "\"'"); at != NULL; at = strpbrk(at + 1, "\"'")) {
        const char ends[] = {*at, '\n', '\0'};
        const size_t length = strcspn(at + 1, ends);
        if (at[length + 1] != *at)
            continue;
        if ((length == whole && strncmp(at + 1, name, whole) == 0)
            || begins_name(at + 1, length, name))
            return true;
    }
    return false;
}
