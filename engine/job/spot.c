#include "job/spot.h"

#include "base/number.h"

#include <stdlib.h>
#include <string.h>

enum { STEP_LONGEST = 200 };

/* Reads one step off the pointer, unescaped; NULL at its end. */
static const char *next_step(const char *pointer, char step[STEP_LONGEST])
{
    size_t length = 0;
    if (*pointer != '/')
        return NULL;
    for (pointer++; *pointer != '\0' && *pointer != '/'; pointer++) {
        char byte = *pointer;
        if (byte == '~' && (pointer[1] == '0' || pointer[1] == '1'))
            byte = *++pointer == '0' ? '~' : '/';
        if (length + 1 < STEP_LONGEST)
            step[length++] = byte;
    }
    step[length] = '\0';
    return pointer;
}

static const cJSON *child_of(const cJSON *parent, const char *step)
{
    if (cJSON_IsArray(parent))
        return cJSON_GetArrayItem(parent, (int)strtol(step, NULL, 10));
    return cJSON_GetObjectItemCaseSensitive(parent, step);
}

const cJSON *spot_find(const cJSON *job, const char *pointer)
{
    char step[STEP_LONGEST];
    while (job != NULL && (pointer = next_step(pointer, step)) != NULL)
        job = child_of(job, step);
    return job;
}

const struct field *spot_field(const struct fields *fields, const char *pointer)
{
    char step[STEP_LONGEST];
    const struct field *field = fields->root;
    while (field != NULL && (pointer = next_step(pointer, step)) != NULL) {
        /* Names of fields are never numbers. */
        if (step[strspn(step, "0123456789")] != '\0')
            field = fields_child(field, step);
    }
    return field;
}

static const char *name_of(const cJSON *item)
{
    const cJSON *name = cJSON_GetObjectItemCaseSensitive(item, "name");
    return cJSON_IsString(name) && name->valuestring[0] != '\0' ? name->valuestring : NULL;
}

const char *spot_name(const cJSON *job, const char *pointer)
{
    char step[STEP_LONGEST];
    const char *name = NULL;
    while (job != NULL && (pointer = next_step(pointer, step)) != NULL) {
        const bool in_list = cJSON_IsArray(job);
        job = child_of(job, step);
        if (in_list && name_of(job) != NULL)
            name = name_of(job);
    }
    return name;
}

static const cJSON *item_named(const cJSON *list, const char *name)
{
    const cJSON *item = NULL;
    if (!cJSON_IsArray(list))
        return NULL;
    cJSON_ArrayForEach(item, list) {
        const char *own = name_of(item);
        if (own != NULL && strcmp(own, name) == 0)
            return item;
    }
    return NULL;
}

struct spots spot_pair(const cJSON *a, const cJSON *b, const char *pointer, struct text *path)
{
    char step[STEP_LONGEST];
    while ((pointer = next_step(pointer, step)) != NULL) {
        const bool in_list = cJSON_IsArray(a);
        a = child_of(a, step);
        const char *name = in_list ? name_of(a) : NULL;
        b = name != NULL ? item_named(b, name) : child_of(b, step);
        if (name != NULL)
            text_addf(path, "[%s]", name);
        else if (in_list)
            text_addf(path, "[%ld]", strtol(step, NULL, 10) + 1);
        else
            text_addf(path, "%s%s", path->length > 0 ? "." : "", step);
    }
    return (struct spots){a, b};
}

/* A list of plain values is written out; one of groups is only counted. */
static void add_list(struct text *out, const cJSON *list, const struct field *field)
{
    const int count = cJSON_GetArraySize(list);
    const cJSON *item = cJSON_GetArrayItem(list, 0);
    if (count == 0 || cJSON_IsObject(item)) {
        text_addf(out, "%d item%s", count, count == 1 ? "" : "s");
        return;
    }
    cJSON_ArrayForEach(item, list) {
        spot_add_value(out, item, field);
        text_add(out, item->next == NULL ? "" : ", ");
    }
}

void spot_add_value(struct text *out, const cJSON *value, const struct field *field)
{
    char number[96];
    if (value == NULL || cJSON_IsNull(value)) {
        text_add(out, "not said");
    } else if (cJSON_IsNumber(value)) {
        number_write_unit(value->valuedouble, field == NULL ? NULL : field->unit, number);
        text_add(out, number);
    } else if (cJSON_IsBool(value)) {
        text_add(out, cJSON_IsTrue(value) ? "yes" : "no");
    } else if (cJSON_IsString(value)) {
        text_add(out, value->valuestring);
    } else if (cJSON_IsArray(value)) {
        add_list(out, value, field);
    } else {
        text_add(out, "given");
    }
}
