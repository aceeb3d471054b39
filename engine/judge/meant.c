#include "judge/meant.h"

#include <stddef.h>
#include <string.h>

/* The lists and items of /as_meant are the catalogue's; without it nothing is meant. */
bool meant_is(const cJSON *job, const char *pointer)
{
    const cJSON *meant = NULL;
    cJSON_ArrayForEach(meant, cJSON_GetObjectItemCaseSensitive(job, "as_meant")) {
        const char *at = cJSON_GetStringValue(cJSON_GetObjectItemCaseSensitive(meant, "at"));
        if (at != NULL && strcmp(at, pointer) == 0)
            return true;
    }
    return false;
}

static bool ends_sentence(const char *words)
{
    const size_t length = strlen(words);
    return length > 0 && strchr(".?", words[length - 1]) != NULL;
}

void meant_ask_back(const cJSON *job, const char *file, const char *pointer, const char *why,
                    struct problems *problems)
{
    const size_t before = problems->count;
    if (meant_is(job, pointer))
        return;
    problem_at(problems, PROBLEM_JOB, file, pointer,
               "is asked back: %s%s If it is meant, say so: \"as_meant\": [ { \"at\": \"%s\" } ]",
               why, ends_sentence(why) ? "" : ".", pointer);
    if (problems->count > before) /* it was not added if memory ran out */
        problems->last->asks_back = true;
}
