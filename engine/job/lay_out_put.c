/* What the plan shows, put into the job's tree beside what the job says of it. */
#include "job/lay_out_parts.h"

#include "base/nearest.h"
#include "base/number.h"
#include "base/text.h"
#include "job/json.h"
#include "job/origin.h"
#include "job/path.h"
#include "job/slope.h"

#include <math.h>
#include <stdio.h>
#include <string.h>

/* Tolerance between two measurements of one length. */
static const double AGREE_FT = 0.1, AGREE_IN = 1;

/* Facts --------------------------------------------------------------------- */

/* Marked as the plan's, so that reports can tell it from what the job says. */
void lay_out_set(struct laying *laying, cJSON *group, const char *key, cJSON *value)
{
    origin_mark(value, ORIGIN_PLAN);
    if (!json_set(group, key, value))
        problem_out_of_memory(laying->problems);
}

/* The same thing said twice, differently: which one is meant only the writer knows. */
static void disagree(struct laying *laying, const char *pointer, const char *key, const char *said,
                     const char *laid)
{
    struct text at = TEXT_EMPTY;
    text_add(&at, pointer);
    path_add(&at, key, strlen(key));
    problem_at(laying->problems, PROBLEM_JOB, laying->file, text_string(&at),
               "says %s, but the roof laid out from /roof/footprint has %s here; leave one of "
               "the two out",
               said, laid);
    if (at.failed)
        problem_out_of_memory(laying->problems);
    text_free(&at);
}

/* What the plan shows goes into the group, or must agree with what is there; where
 * it does not, once that is said, the plan holds, so that nothing else is said
 * of it. A value of the wrong type is left to validation. */
void lay_out_number(struct laying *laying, cJSON *group, const char *pointer, const char *key,
                    double value, const char *unit)
{
    const cJSON *there = cJSON_GetObjectItemCaseSensitive(group, key);
    const double slack = strcmp(unit, "in") == 0 ? AGREE_IN : AGREE_FT;
    if (json_is_absent(there)) {
        lay_out_set(laying, group, key, cJSON_CreateNumber(value));
    } else if (cJSON_IsNumber(there) && !(fabs(there->valuedouble - value) <= slack)) {
        char said[96], laid[96];
        number_write_unit(there->valuedouble, unit, said);
        number_write_unit(value, unit, laid);
        disagree(laying, pointer, key, said, laid);
        lay_out_set(laying, group, key, cJSON_CreateNumber(value));
    }
}

/* "6:12" and "6/12" are one slope. */
static bool same_words(const char *a, const char *b)
{
    double first = 0, second = 0;
    return strcmp(a, b) == 0
           || (slope_parse(a, &first) && slope_parse(b, &second)
               && number_equals(first, second, "rise_in_12"));
}

void lay_out_words(struct laying *laying, cJSON *group, const char *pointer, const char *key,
                   const char *words)
{
    const cJSON *there = cJSON_GetObjectItemCaseSensitive(group, key);
    if (json_is_absent(there)) {
        lay_out_set(laying, group, key, cJSON_CreateString(words));
    } else if (cJSON_IsString(there) && !same_words(there->valuestring, words)) {
        char said[64] = "", laid[64] = "";
        const char *text = there->valuestring;
        snprintf(said, sizeof(said), "\"%.*s\"", (int)path_quotable(text, strlen(text), 60), text);
        snprintf(laid, sizeof(laid), "\"%s\"", words);
        disagree(laying, pointer, key, said, laid);
        lay_out_set(laying, group, key, cJSON_CreateString(words));
    }
}

/* Lists --------------------------------------------------------------------- */

/* The list of this name in the roof, made when there is none; NULL for what is
 * no list (validation says so). */
cJSON *lay_out_list(struct laying *laying, const char *name)
{
    cJSON *list = cJSON_GetObjectItemCaseSensitive(laying->roof, name);
    if (json_is_absent(list)) {
        lay_out_set(laying, laying->roof, name, cJSON_CreateArray());
        list = cJSON_GetObjectItemCaseSensitive(laying->roof, name);
    }
    return cJSON_IsArray(list) ? list : NULL;
}

/* The item of this name, which is added when there is none. */
cJSON *lay_out_item(struct laying *laying, cJSON *list, const char *name, struct text *pointer)
{
    size_t index = 0;
    cJSON *item = NULL;
    cJSON_ArrayForEach(item, list) {
        if (json_name(item) != NULL && strcmp(json_name(item), name) == 0)
            break;
        index++;
    }
    if (item == NULL) {
        item = cJSON_CreateObject();
        if (item == NULL || cJSON_AddStringToObject(item, "name", name) == NULL
            || !cJSON_AddItemToArray(list, item)) {
            cJSON_Delete(item);
            problem_out_of_memory(laying->problems);
            return NULL;
        }
        origin_mark(item, ORIGIN_PLAN);
    }
    path_add_item(pointer, index);
    return item;
}

/* An item beside the footprint may only tell more of a plane, edge or valley that the
 * form has. */
static void report_name(struct laying *laying, const char *list, size_t index, const char *name,
                        const char *const names[], size_t count)
{
    struct text pointer = TEXT_EMPTY, known = TEXT_EMPTY;
    struct nearest nearest;
    nearest_start(&nearest, name == NULL ? "" : name);
    for (size_t i = 0; i < count; i++) {
        text_addf(&known, "%s\"%s\"", i == 0 ? "" : ", ", names[i]);
        nearest_offer(&nearest, names[i]);
    }
    text_addf(&pointer, "/roof/%s/%zu/name", list, index);
    if (name == NULL)
        problem_at(laying->problems, PROBLEM_JOB, laying->file, text_string(&pointer),
                   "is missing: beside /roof/footprint, an item of this list tells more of one of "
                   "%s",
                   count == 0 ? "none" : text_string(&known));
    else
        problem_at(laying->problems, PROBLEM_JOB, laying->file, text_string(&pointer),
                   "\"%.*s\" is none of those that the roof laid out from /roof/footprint has "
                   "(%s)%s%s%s",
                   (int)path_quotable(name, strlen(name), 60), name,
                   count == 0 ? "none" : text_string(&known),
                   nearest.name == NULL ? "" : "; did you mean \"",
                   nearest.name == NULL ? "" : nearest.name, nearest.name == NULL ? "" : "\"?");
    if (pointer.failed || known.failed)
        problem_out_of_memory(laying->problems);
    text_free(&pointer);
    text_free(&known);
}

/* Every item must be one of those that there are. */
void lay_out_check_names(struct laying *laying, const cJSON *list, const char *what,
                         const char *const names[], size_t count)
{
    const cJSON *item = NULL;
    size_t index = 0;
    cJSON_ArrayForEach(item, list) {
        const char *name = json_name(item);
        bool known = !cJSON_IsObject(item);
        for (size_t i = 0; i < count; i++)
            known = known || (name != NULL && strcmp(name, names[i]) == 0);
        if (!known)
            report_name(laying, what, index, name, names, count);
        index++;
    }
}
