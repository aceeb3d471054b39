#include "prove/case_change.h"

#include "base/nearest.h"
#include "job/json.h"

#include <stdarg.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* More digits than a list has items; longer than any path. */
enum { DIGITS_MOST = 5, PATH_LONGEST = 500 };

__attribute__((format(printf, 2, 3))) static enum case_change_end cannot(
    struct case_change_why *why, const char *format, ...)
{
    va_list arguments;
    va_start(arguments, format);
    vsnprintf(why->text, sizeof(why->text), format, arguments);
    va_end(arguments);
    return CHANGE_CANNOT;
}

/* Reads a step off the path, a name or [number]; NULL where there is none such. */
static const char *next_step(const char *path, struct case_place *step)
{
    step->index = -1;
    if (*path == '[') {
        const size_t digits = strspn(path + 1, "0123456789");
        step->index = digits > DIGITS_MOST ? -1 : (int)strtol(path + 1, NULL, 10) - 1;
        return path[1 + digits] != ']' || step->index < 0 ? NULL : path + digits + 2;
    }
    path += *path == '.';
    const size_t length = strcspn(path, ".[");
    if (length == 0 || length >= sizeof(step->name))
        return NULL;
    memcpy(step->name, path, length);
    step->name[length] = '\0';
    return path + length;
}

static cJSON *child_of(const cJSON *parent, const struct case_place *step)
{
    if (step->index >= 0)
        return cJSON_IsArray(parent) ? cJSON_GetArrayItem(parent, step->index) : NULL;
    return cJSON_GetObjectItemCaseSensitive(parent, step->name);
}

/* A path is no deeper than a job: what walks down jobs goes as deep as they are. */
enum case_change_end case_change_find(cJSON *job, const char *path, bool make,
                                      struct case_place *place, struct case_change_why *why)
{
    *place = (struct case_place){.parent = job};
    if (*path == '\0')
        return cannot(why, "no such place in a job: an empty path");
    if (strlen(path) > PATH_LONGEST)
        return cannot(why, "no such place in a job: a path of more than %d bytes", PATH_LONGEST);
    for (int steps = 0;; steps++) {
        if (steps == JSON_DEEPEST)
            return cannot(why, "no such place in a job: more than %d steps", JSON_DEEPEST);
        const char *rest = next_step(path, place);
        if (rest == NULL)
            return cannot(why, "no such place in a job: %s", path);
        place->old = child_of(place->parent, place);
        if (*rest == '\0')
            return CHANGE_DONE;
        if (place->old == NULL && make && place->index < 0 && cJSON_IsObject(place->parent)) {
            place->old = cJSON_AddObjectToObject(place->parent, place->name);
            if (place->old == NULL)
                return CHANGE_NO_MEMORY;
        }
        if (place->old == NULL)
            return cannot(why, "the base job has no such place: %s", place->name);
        place->parent = place->old;
        path = rest;
    }
}

enum case_change_end case_change_put(const struct case_place *place, const char *path, cJSON *value,
                                     struct case_change_why *why)
{
    if (place->index < 0 && cJSON_IsObject(place->parent))
        return json_set(place->parent, place->name, value) ? CHANGE_DONE : CHANGE_NO_MEMORY;
    bool done = false;
    if (place->index >= 0)
        done = place->old != NULL ? cJSON_ReplaceItemViaPointer(place->parent, place->old, value)
                                  : place->index == cJSON_GetArraySize(place->parent)
                                        && cJSON_AddItemToArray(place->parent, value);
    if (done)
        return CHANGE_DONE;
    cJSON_Delete(value);
    return cannot(why, "%s: cannot be set", path);
}

/* Taking out what is not there would test nothing. */
static enum case_change_end say_lacking(const struct case_place *place, const char *path,
                                        struct case_change_why *why)
{
    struct nearest nearest;
    const cJSON *child = NULL;
    nearest_start(&nearest, place->index < 0 ? place->name : "");
    cJSON_ArrayForEach(child, place->parent)
        if (place->index < 0 && child->string != NULL)
            nearest_offer(&nearest, child->string);
    if (nearest.name != NULL)
        return cannot(why,
                      "without \"%s\": the base job does not have it; did you mean "
                      "\"%s\"?",
                      path, nearest.name);
    return cannot(why, "without \"%s\": the base job does not have it", path);
}

enum case_change_end case_change_remove(cJSON *job, const char *path, struct case_change_why *why)
{
    struct case_place place;
    const enum case_change_end end = case_change_find(job, path, false, &place, why);
    if (end != CHANGE_DONE)
        return end;
    if (place.old == NULL)
        return say_lacking(&place, path, why);
    cJSON_Delete(cJSON_DetachItemViaPointer(place.parent, place.old));
    return CHANGE_DONE;
}

static bool change_again(cJSON *job, const struct case_change *change)
{
    struct case_change_why why;
    struct case_place place;
    if (change->json == NULL)
        return case_change_remove(job, change->path, &why) == CHANGE_DONE;
    cJSON *value = cJSON_Parse(change->json);
    if (value == NULL || case_change_find(job, change->path, true, &place, &why) != CHANGE_DONE) {
        cJSON_Delete(value);
        return false;
    }
    return case_change_put(&place, change->path, value, &why) == CHANGE_DONE;
}

cJSON *case_change_all(const cJSON *base, const struct case_change *first)
{
    cJSON *job = cJSON_Duplicate(base, true);
    bool changed = job != NULL;
    for (const struct case_change *c = first; changed && c != NULL; c = c->next)
        changed = change_again(job, c);
    if (changed)
        return job;
    cJSON_Delete(job);
    return NULL;
}
