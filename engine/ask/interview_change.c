/* interview_change.c - the job changed by an answer, if it then holds. */
#include "ask/interview_parts.h"

#include "ask/one_line.h"
#include "job/json.h"
#include "job/path.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* What is wrong with the answer; where it is not said at the question's own
 * place, with that. */
static void say_why(const struct problems *problems, const char *pointer, struct text *why)
{
    for (const struct problem *p = problems->first; p != NULL; p = p->next) {
        text_add(why, why->length > 0 ? "; " : "");
        const bool own = p->pointer == NULL || path_is_within(p->pointer, pointer);
        text_addf(why, "%s%s%s", own ? "" : p->pointer, own ? "" : ": ", p->message);
    }
}

static bool add_named(cJSON *list, const char *name)
{
    cJSON *item = cJSON_CreateObject();
    const bool added = item != NULL && cJSON_AddStringToObject(item, "name", name) != NULL
                       && cJSON_AddItemToArray(list, item);
    if (!added)
        cJSON_Delete(item);
    return added;
}

/* The items that only the layout has, by name, after those that the job lists. */
static bool add_laid_out(cJSON *roof, const char *key, const cJSON *laid)
{
    cJSON *list = cJSON_GetObjectItemCaseSensitive(roof, key);
    if (!cJSON_IsArray(list) && json_set(roof, key, cJSON_CreateArray()))
        list = cJSON_GetObjectItemCaseSensitive(roof, key);
    /* The job's items keep their places, so pointers into the laid-out list hold in both. */
    const int listed = cJSON_GetArraySize(list);
    bool added = list != NULL;
    int index = 0;
    const cJSON *item = NULL;
    cJSON_ArrayForEach(item, laid) {
        const char *name = cJSON_GetStringValue(cJSON_GetObjectItemCaseSensitive(item, "name"));
        if (index++ >= listed && name != NULL)
            added = added && add_named(list, name);
    }
    return added;
}

/* Gives what is answered of a plane or edge that only the layout has an item to
 * go into. False when out of memory. */
static bool name_laid_out(const struct interview *interview, cJSON *job, const char *pointer)
{
    static const char *const LISTS[] = {"slopes", "edges", "valleys"};
    cJSON *roof = cJSON_GetObjectItemCaseSensitive(job, "roof");
    const cJSON *laid = cJSON_GetObjectItemCaseSensitive(interview->laid, "roof");
    for (size_t i = 0; roof != NULL && i < sizeof(LISTS) / sizeof(LISTS[0]); i++) {
        char start[24];
        snprintf(start, sizeof(start), "/roof/%s/", LISTS[i]);
        if (strncmp(pointer, start, strlen(start)) == 0)
            return add_laid_out(roof, LISTS[i], cJSON_GetObjectItemCaseSensitive(laid, LISTS[i]));
    }
    return true;
}

/* What an answer is remembered by: its place and its words. False when out of memory. */
static bool remember_answer(char **kept, const char *pointer, const char *words)
{
    struct text both = TEXT_EMPTY;
    text_addf(&both, "%s %s", pointer, words);
    free(*kept);
    *kept = both.failed ? NULL : strdup(text_string(&both));
    text_free(&both);
    return *kept != NULL;
}

static bool is_same_answer(const char *kept, const char *pointer, const char *words)
{
    const size_t length = strlen(pointer);
    return kept != NULL && strncmp(kept, pointer, length) == 0 && kept[length] == ' '
           && strcmp(kept + length + 1, words) == 0;
}

/* Nothing is wrong but what may be meant all the same. */
static bool only_asks_back(const struct problems *problems)
{
    for (const struct problem *p = problems->first; p != NULL; p = p->next)
        if (!p->asks_back)
            return false;
    return problems->count > 0;
}

/* Notes in the job that what was asked back is meant. */
static bool add_meant(cJSON *job, const struct problems *problems)
{
    cJSON *list = cJSON_GetObjectItemCaseSensitive(job, "as_meant");
    if (!cJSON_IsArray(list) && json_set(job, "as_meant", cJSON_CreateArray()))
        list = cJSON_GetObjectItemCaseSensitive(job, "as_meant");
    bool added = list != NULL;
    for (const struct problem *p = problems->first; added && p != NULL; p = p->next) {
        cJSON *item = cJSON_CreateObject();
        added = item != NULL && cJSON_AddStringToObject(item, "at", p->pointer) != NULL
                && cJSON_AddItemToArray(list, item);
        if (!added)
            cJSON_Delete(item);
    }
    return added;
}

/* Whether the job holds. An answer that is asked back does when it comes again, in
 * the same words: then it is meant. */
static bool holds(struct interview *interview, cJSON *job, const char *words, struct text *why)
{
    struct problems problems = {0};
    const char *pointer = interview->now->pointer;
    interview_validate(interview, job, &problems);
    bool held = problems.count == 0 && !problems.out_of_memory;
    const bool asks = only_asks_back(&problems);
    if (asks && is_same_answer(interview->asked_back, pointer, words))
        held = add_meant(job, &problems);
    if (!held)
        say_why(&problems, pointer, why);
    if (!held && asks && remember_answer(&interview->asked_back, pointer, words))
        text_add(why, " (here: answer the same again)");
    problems_free(&problems);
    return held;
}

/* Items that follow from other facts have a place in the job once something is said of one. */
static bool carry_list(const struct interview *interview, cJSON *job, const char *pointer)
{
    static const char LIST[] = "/existing/coverings/";
    cJSON *group = cJSON_GetObjectItemCaseSensitive(job, "existing");
    const cJSON *laid = path_find(interview->laid, "/existing/coverings");
    if (strncmp(pointer, LIST, strlen(LIST)) != 0 || group == NULL
        || interview_states(group, "coverings"))
        return true;
    cJSON *list = cJSON_CreateArray();
    for (int i = 0; list != NULL && i < cJSON_GetArraySize(laid); i++)
        if (!cJSON_AddItemToArray(list, cJSON_CreateObject()))
            break;
    return json_set(group, "coverings", list);
}

/* A copy of the job with room for what is answered, or NULL: the job holds at all times. */
static cJSON *begin_change(const struct interview *interview)
{
    const struct question *question = interview->now;
    cJSON *job = cJSON_Duplicate(interview->job, true);
    if (job != NULL && name_laid_out(interview, job, question->pointer)
        && carry_list(interview, job, question->pointer))
        return job;
    cJSON_Delete(job);
    return NULL;
}

/* Takes the changed job over if it holds. */
static bool end_change(struct interview *interview, cJSON *job, const char *words, struct text *why)
{
    bool held = job != NULL && holds(interview, job, words, why);
    if (held)
        /* From here the step owns the old job. */
        held = interview_push(interview, interview->job);
    if (held)
        interview->job = job;
    else
        cJSON_Delete(job);
    return held;
}

/* Whether the job would hold with this value; it is taken over. */
bool interview_try_value(struct interview *interview, cJSON *value, const char *words,
                         struct text *why)
{
    cJSON *job = begin_change(interview);
    if (job == NULL) {
        cJSON_Delete(value);
        return false;
    }
    if (!path_set(job, interview->now->pointer, value)) {
        cJSON_Delete(job);
        return false;
    }
    return end_change(interview, job, words, why);
}

bool interview_try_line(struct interview *interview, const char *words, struct text *why)
{
    cJSON *job = begin_change(interview);
    if (job == NULL)
        return false;
    if (one_line_read(job, interview->now, words, why))
        return end_change(interview, job, words, why);
    cJSON_Delete(job);
    return false;
}

/* An answer that leaves the job as it is. */
bool interview_unchanged(struct interview *interview)
{
    cJSON *job = cJSON_Duplicate(interview->job, true);
    if (job == NULL || !interview_push(interview, interview->job)) {
        cJSON_Delete(job);
        return false;
    }
    interview->job = job;
    return true;
}
