/* What to ask for in place of a fact that a laid-out roof lacks, see lay_out.h. */
#include "job/lay_out.h"

#include "job/footprint_facts.h"
#include "job/path.h"

#include <string.h>

static bool starts(const char *text, const char *start)
{
    return strncmp(text, start, strlen(start)) == 0;
}

/* Whether the plan shows it, wherever the job does not say it. */
static bool is_laid_out(const char *pointer)
{
    static const char *const WHOLE[] = {"/roof/slopes",    "/roof/edges",          "/roof/valleys",
                                        "/roof/form",      "/roof/ridge_ft",       "/roof/hip_ft",
                                        "/roof/valley_ft", "/house/least_width_ft"};
    static const char *const LAST[] = {"name", "pitch", "eave_ft",   "ridge_ft",   "run_ft",
                                       "kind", "slope", "length_ft", "overhang_in"};
    for (size_t i = 0; i < sizeof(WHOLE) / sizeof(WHOLE[0]); i++)
        if (strcmp(pointer, WHOLE[i]) == 0)
            return true;
    if (!starts(pointer, "/roof/slopes/") && !starts(pointer, "/roof/edges/"))
        return false;
    const char *last = path_last(pointer) + 1;
    for (size_t i = 0; i < sizeof(LAST) / sizeof(LAST[0]); i++)
        if (strcmp(last, LAST[i]) == 0)
            return true;
    return false;
}

/* The plane or edge that a fact of /roof/slopes/N or /roof/edges/N is of, or NULL. */
static const cJSON *item_of(const cJSON *job, const char *pointer)
{
    char step[PATH_LONGEST_STEP];
    for (int depth = 0; job != NULL && depth < 3 && path_step(&pointer, step); depth++)
        job = path_child(job, step);
    return job;
}

/* The group of the footprint that speaks for this item, or NULL. */
static const char *speaks_for(const cJSON *job, const char *pointer)
{
    static const struct {
        const char *kind, *group;
    } SHARED[] = {{"eave", "eaves"}, {"rake", "rakes"}};
    if (starts(pointer, "/roof/slopes/"))
        return "planes";
    if (!starts(pointer, "/roof/edges/"))
        return NULL;
    const cJSON *edge = item_of(job, pointer);
    const char *kind = cJSON_GetStringValue(cJSON_GetObjectItemCaseSensitive(edge, "kind"));
    for (size_t i = 0; kind != NULL && i < sizeof(SHARED) / sizeof(SHARED[0]); i++)
        if (strcmp(kind, SHARED[i].kind) == 0)
            return SHARED[i].group;
    return NULL;
}

const char *lay_out_asks(const cJSON *job, const struct fields *fields, const char *pointer,
                         struct arena *arena)
{
    struct footprint_facts facts;
    footprint_facts_read(job, fields, &facts);
    if (facts.group == NULL)
        return pointer;
    /* One dimension of the plan stands for every plane and edge that follows from it. */
    if (facts.lacking != NULL && is_laid_out(pointer))
        return arena_copy(arena, facts.lacking);
    const char *group = speaks_for(job, pointer), *last = path_last(pointer);
    const struct field *field = group == NULL ? NULL : fields_child(facts.field, group);
    /* Only what can be said once for all is asked for once. */
    if (field == NULL || fields_child(field, last + 1) == NULL)
        return pointer;
    return arena_format(arena, "/roof/footprint/%s%s", group, last);
}
