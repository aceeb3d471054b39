#include "jobs.h"

#include <cjson/cJSON.h>
#include <stdbool.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

static const char *const HOUSES[] = {"cross-gable", "coastal-hip", "overlay-gable",
                                     "porch-tear-off"};
static const char *const STAGES[] = {"job", "job-deck", "job-dry-in", "job-final"};
static const char *const PLACES[] = {
    "us-ca",         "us-fl", "us-mn/minneapolis", "us-co/denver",
    "us-tx/garland", "us-or", "us-nj/montville",   "example/frostmere"};
static const char *const DAYS[] = {"2025-06-02", "2026-03-16", "2026-09-01"};
/* Facts that only the place of their example asks for. */
static const char *const LOCAL[] = {"pictures_before_cover", "hail_class", "hail_wrapper_kept"};
/* What a job cannot be without, and what others refer to. */
static const char *const KEPT[] = {"eavemark_job", "job", "jurisdiction", "date", "stage", "name"};

/* What other facts of the house hang on: moved alone, it could not be. */
static const char *const FIXED[] = {"eavemark_job", "replaced_percent", "roof_share_percent",
                                    "length_ft",    "eave_ft",          "ridge_ft",
                                    "run_ft",       "valley_ft",        "removed"};

#define LENGTH(array) (sizeof(array) / sizeof((array)[0]))

/* Marsaglia's xorshift of 32 bits (Journal of Statistical Software 8, 14): the same on every
 * machine, and its low bits as good as its high ones. Every file of jobs begins it anew. */
#define FIRST_DRAWN UINT32_C(2463534242)
static uint32_t drawn;

static size_t draw(size_t below)
{
    drawn ^= drawn << 13;
    drawn ^= drawn >> 17;
    drawn ^= drawn << 5;
    return drawn % below;
}

static bool is_one_of(const char *name, const char *const *list, size_t count)
{
    for (size_t i = 0; i < count; i++)
        if (strcmp(list[i], name) == 0)
            return true;
    return false;
}

static cJSON *read_example(const char *source, const char *house, const char *stage)
{
    static char text[1 << 20];
    char path[1024];
    snprintf(path, sizeof(path), "%s/tests/houses/%s/%s.json", source, house, stage);
    FILE *file = fopen(path, "r");
    const size_t length = file == NULL ? 0 : fread(text, 1, sizeof(text), file);
    cJSON *job = cJSON_ParseWithLength(text, length);
    if (job == NULL) {
        fprintf(stderr, "benchmark: %s: cannot be read\n", path);
        exit(2);
    }
    fclose(file);
    return job;
}

/* Takes out the local facts, and this share of the others. */
static void thin_out(cJSON *node, size_t percent)
{
    for (cJSON *child = node->child, *next; child != NULL; child = next) {
        next = child->next;
        const bool leaf = !cJSON_IsObject(child)
                          && (!cJSON_IsArray(child) || !cJSON_IsObject(child->child));
        const bool named = cJSON_IsObject(node);
        if (named
            && (is_one_of(child->string, LOCAL, LENGTH(LOCAL))
                || (leaf && !is_one_of(child->string, KEPT, LENGTH(KEPT)) && draw(100) < percent)))
            cJSON_Delete(cJSON_DetachItemViaPointer(node, child));
        else
            thin_out(child, percent);
    }
}

static void set_text(cJSON *job, const char *key, const char *text)
{
    cJSON_ReplaceItemInObjectCaseSensitive(job, key, cJSON_CreateString(text));
}

static cJSON *varied(const char *source, size_t number)
{
    static const size_t SHARES[] = {0, 0, 10, 30, 60};
    char title[64];
    cJSON *job = read_example(source, HOUSES[draw(LENGTH(HOUSES))], STAGES[draw(LENGTH(STAGES))]);
    snprintf(title, sizeof(title), "House %zu, invented", number);
    set_text(job, "job", title);
    set_text(job, "jurisdiction", PLACES[draw(LENGTH(PLACES))]);
    set_text(job, "date", DAYS[draw(LENGTH(DAYS))]);
    thin_out(job, SHARES[draw(LENGTH(SHARES))]);
    return job;
}

/* Measured on another house: whole numbers one more or less, others some hundredths. What is
 * smaller and whole is mostly a count. */
static void measure_again(cJSON *number)
{
    const double was = number->valuedouble;
    const bool whole = was == (double)(long)was;
    if (whole && was >= 4)
        cJSON_SetNumberValue(number, draw(2) == 0 ? was + 1 : was - 1);
    else if (!whole)
        cJSON_SetNumberValue(number, (double)(long)(was * (97 + (double)draw(7)) + 0.5) / 100);
}

/* One fact in ten is otherwise: every third number, and one in ten of yes and no. */
static void differ(cJSON *node)
{
    cJSON *child;
    cJSON_ArrayForEach(child, node) {
        const bool fixed = child->string != NULL && is_one_of(child->string, FIXED, LENGTH(FIXED));
        if (!fixed && cJSON_IsNumber(child) && draw(3) == 0)
            measure_again(child);
        else if (!fixed && cJSON_IsBool(child) && draw(10) == 0)
            child->type ^= cJSON_True | cJSON_False;
        differ(child);
    }
}

/* The next house of a tract. */
static cJSON *alike(const char *source, size_t number)
{
    char title[64];
    cJSON *job = read_example(source, "cross-gable", "job");
    snprintf(title, sizeof(title), "House %zu of the tract, invented", number);
    set_text(job, "job", title);
    differ(job);
    return job;
}

/* A list of the roof until it is that long: its items again under new names. */
static void lengthen(cJSON *job, const char *name, size_t count)
{
    cJSON *list = cJSON_GetObjectItemCaseSensitive(cJSON_GetObjectItemCaseSensitive(job, "roof"),
                                                   name);
    const int own = cJSON_GetArraySize(list);
    while ((size_t)cJSON_GetArraySize(list) > count)
        cJSON_DeleteItemFromArray(list, cJSON_GetArraySize(list) - 1);
    cJSON *last = list->child->prev;
    for (size_t i = (size_t)own; i < count; i++) {
        char title[64];
        cJSON *copy = cJSON_Duplicate(list->child, true);
        snprintf(title, sizeof(title), "number %zu", i);
        if (cJSON_HasObjectItem(copy, "name"))
            set_text(copy, "name", title);
        /* cJSON counts through a list to its end; this does not. */
        last->next = copy;
        copy->prev = last;
        last = copy;
    }
    list->child->prev = last;
}

void jobs_write(FILE *out, const char *source, enum jobs_kind kind, size_t count)
{
    const bool one = kind == JOBS_PLANES || kind == JOBS_EDGES;
    drawn = FIRST_DRAWN;
    for (size_t i = 0; i < (one ? 1 : count); i++) {
        cJSON *job = kind == JOBS_VARIED  ? varied(source, i)
                     : kind == JOBS_ALIKE ? alike(source, i)
                                          : read_example(source, "cross-gable", "job");
        if (one)
            lengthen(job, kind == JOBS_PLANES ? "slopes" : "edges", count);
        if (kind == JOBS_PLACES)
            set_text(job, "jurisdiction", PLACES[i % LENGTH(PLACES)]);
        char *line = cJSON_PrintUnformatted(job);
        fprintf(out, "%s\n", line);
        free(line);
        cJSON_Delete(job);
    }
}
