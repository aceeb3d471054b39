/* lay_out_parts.h - what the files of lay_out.h share. */
#ifndef EAVEMARK_JOB_LAY_OUT_PARTS_H
#define EAVEMARK_JOB_LAY_OUT_PARTS_H

#include "base/problem.h"
#include "base/text.h"
#include "job/footprint_facts.h"
#include "trade/layout.h"

#include <cjson/cJSON.h>
#include <stdbool.h>
#include <stddef.h>

struct laying {
    cJSON *job, *roof;
    const struct footprint_facts *facts;
    const struct layout *layout;
    bool whole; /* lengths are known, not names only */
    const char *file;
    struct problems *problems;
};

/* Puts a value into the group, marked as the plan's, so that reports can tell it from what
 * the job says. The value is taken over; NULL is out of memory. */
void lay_out_set(struct laying *laying, cJSON *group, const char *key, cJSON *value);

/* What the plan shows goes into the group, or must agree with what is there; where
 * it does not, once that is said, the plan holds, so that nothing else is said
 * of it. A value of the wrong type is left to validation. */
void lay_out_number(struct laying *laying, cJSON *group, const char *pointer, const char *key,
                    double value, const char *unit);
void lay_out_words(struct laying *laying, cJSON *group, const char *pointer, const char *key,
                   const char *words);

/* The list of this name in the roof, made when there is none; NULL for what is
 * no list (validation says so). */
cJSON *lay_out_list(struct laying *laying, const char *name);

/* The item of this name, which is added when there is none; its index goes onto the
 * pointer. NULL when out of memory (a problem). */
cJSON *lay_out_item(struct laying *laying, cJSON *list, const char *name, struct text *pointer);

/* Every item of the list `what` must be one of those that there are. */
void lay_out_check_names(struct laying *laying, const cJSON *list, const char *what,
                         const char *const names[], size_t count);

/* Writes the whole roof: its planes, edges, valleys and totals. */
void lay_out_roof(struct laying *laying);

#endif
