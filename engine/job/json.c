#include "job/json.h"

#include "base/file.h"
#include "job/scan.h"
#include "job/tree.h"

#include <errno.h>
#include <stdlib.h>
#include <string.h>

int json_read(cJSON **out, const char *text, size_t length, const char *file,
              struct problems *problems)
{
    return json_read_into(out, NULL, text, length, file, problems);
}

int json_read_into(cJSON **out, struct arena *into, const char *text, size_t length,
                   const char *file, struct problems *problems)
{
    return json_read_likely(out, NULL, into, text, length, file, problems);
}

int json_read_likely(cJSON **out, const struct fields *likely, struct arena *into, const char *text,
                     size_t length, const char *file, struct problems *problems)
{
    *out = NULL;
    if (length > JSON_LARGEST) {
        problem_at_line(problems, PROBLEM_JOB, file, 0, 0,
                        "is larger than %d bytes; a job is about 5 KB", JSON_LARGEST);
        return -1;
    }
    *out = scan_text(text, length, file, into == NULL ? NULL : likely, into, problems);
    return *out == NULL ? -1 : 0;
}

/* Owns value from the start: it is in the tree, or freed. */
bool json_set(cJSON *object, const char *key, cJSON *value)
{
    if (value == NULL)
        return false;
    cJSON *old = cJSON_GetObjectItemCaseSensitive(object, key);
    /* cJSON, replacing, goes on without a name when it cannot copy it. */
    char *name = old == NULL ? NULL : cJSON_malloc(strlen(key) + 1);
    if (name != NULL) {
        memcpy(name, key, strlen(key) + 1);
        if (!(value->type & cJSON_StringIsConst))
            cJSON_free(value->string); /* a copy brings the name of what it was made of */
        value->string = name;
        /* The name now belongs to value, which takes the place of the old member and frees it. */
        value->type &= ~cJSON_StringIsConst;
        tree_replace(object, old, value);
        return true;
    } else if (old == NULL && cJSON_AddItemToObject(object, key, value)) {
        return true;
    }
    cJSON_Delete(value);
    return false;
}

const char *json_name(const cJSON *item)
{
    return cJSON_GetStringValue(cJSON_GetObjectItemCaseSensitive(item, "name"));
}

/* error: errno as it was after the reading. */
void json_say_unread(enum file_result result, int error, const char *path,
                     const struct json_file_words *words, struct problems *problems)
{
    char why[128] = "cannot be read";
    switch (result) {
    case FILE_READ:
        return;
    case FILE_OUT_OF_MEMORY:
        problem_out_of_memory(problems);
        return;
    case FILE_MISSING:
        problem_at_line(problems, PROBLEM_JOB, path, 0, 0, "there is no such %s", words->called);
        return;
    case FILE_NOT_A_FILE:
        problem_at_line(problems, PROBLEM_JOB, path, 0, 0, "is not a file; %s", words->is);
        return;
    case FILE_TOO_LARGE:
        problem_at_line(problems, PROBLEM_JOB, path, 0, 0, "is larger than %d bytes; %s",
                        JSON_LARGEST, words->size);
        return;
    case FILE_OUTSIDE:
    case FILE_UNREADABLE:
        strerror_r(error, why, sizeof(why));
        problem_at_line(problems, PROBLEM_JOB, path, 0, 0, "cannot be read: %s", why);
        return;
    }
}

static const struct json_file_words JOB_FILE = {"file", "a job is one JSON file",
                                                "a job is about 5 KB"};

int json_read_file(cJSON **out, const char *path, struct problems *problems)
{
    *out = NULL;
    char *text = NULL;
    size_t length = 0;
    const enum file_result result = file_read(&text, &length, path, JSON_LARGEST);
    if (result != FILE_READ) {
        json_say_unread(result, errno, path, &JOB_FILE, problems);
        return -1;
    }
    int status = -1;
    if (length == 0)
        problem_at_line(problems, PROBLEM_JOB, path, 0, 0,
                        "is empty; a job is a JSON object { ... }");
    else
        status = json_read(out, text, length, path, problems);
    free(text);
    return status;
}
