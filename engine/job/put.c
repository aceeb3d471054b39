#include "job/put.h"

#include "job/json.h"

#include <stdlib.h>

/* One step of a pointer, unescaped; true when it fits. *at moves past it. */
static bool read_step(const char **at, char *step, size_t size)
{
    size_t length = 0;
    const char *from = *at + 1;
    for (; *from != '\0' && *from != '/'; from++) {
        char letter = *from;
        if (letter == '~' && (from[1] == '0' || from[1] == '1'))
            letter = *++from == '0' ? '~' : '/';
        if (length + 1 >= size)
            return false;
        step[length++] = letter;
    }
    step[length] = '\0';
    *at = from;
    return true;
}

/* A group made where none, or null, was. NULL when out of memory. */
static cJSON *make_group(cJSON *parent, const char *step, const cJSON *old)
{
    if (old == NULL)
        return cJSON_AddObjectToObject(parent, step);
    cJSON *group = cJSON_CreateObject();
    return json_set(parent, step, group) ? group : NULL;
}

static cJSON *step_into(cJSON *from, const char *step)
{
    if (cJSON_IsArray(from)) {
        char *end = NULL;
        const long index = strtol(step, &end, 10);
        return end == step || *end != '\0' || index < 0 || index > 1000000
            ? NULL
            : cJSON_GetArrayItem(from, (int)index);
    }
    if (!cJSON_IsObject(from))
        return NULL;
    cJSON *child = cJSON_GetObjectItemCaseSensitive(from, step);
    return child != NULL && !cJSON_IsNull(child) ? child : make_group(from, step, child);
}

static bool put_last(cJSON *group, const char *step, cJSON *value)
{
    if (!cJSON_IsObject(group))
        return false;
    return cJSON_GetObjectItemCaseSensitive(group, step) != NULL
        ? cJSON_ReplaceItemInObjectCaseSensitive(group, step, value)
        : cJSON_AddItemToObject(group, step, value);
}

bool job_put(cJSON *job, const char *pointer, cJSON *value)
{
    char step[160];
    cJSON *at = job;
    bool done = false;
    while (value != NULL && at != NULL && *pointer == '/' && !done) {
        if (!read_step(&pointer, step, sizeof(step)))
            break;
        if (*pointer != '\0') {
            at = step_into(at, step);
            continue;
        }
        done = put_last(at, step, value);
        break;
    }
    if (!done)
        cJSON_Delete(value);
    return done;
}
