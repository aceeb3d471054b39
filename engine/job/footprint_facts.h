/* footprint_facts.h - what a job says under /roof/footprint; internal to the
 * job room. */
#ifndef EAVEMARK_JOB_FOOTPRINT_FACTS_H
#define EAVEMARK_JOB_FOOTPRINT_FACTS_H

#include "job/fields.h"
#include "trade/footprint.h"

#include <cjson/cJSON.h>
#include <stdbool.h>

struct footprint_facts {
    const cJSON *group;        /* NULL: the job states no footprint */
    const struct field *field; /* of the group */
    bool wrong;                /* a fact is not what its field takes; validation says which */
    const char *lacking;       /* pointer of the first fact that lacks, or NULL */
    bool form_known;
    struct footprint roof; /* what is not known is 0 */
    double wing_left_ft;
    const char *pitch, *porch_pitch; /* as the job writes them, or NULL */
};

/* The texts are those of the job. */
void footprint_facts_read(const cJSON *job, const struct fields *fields,
                          struct footprint_facts *out);

/* "gable_porch": as jobs write it. */
const char *footprint_form_word(enum roof_form form);

/* What the house covers between its walls, a porch left out. False while the plan lacks a
 * fact that it takes. */
bool footprint_floor_sqft(const struct footprint_facts *facts, double *area);

/* True when there is a value, and it is what the field takes: type and range. */
bool footprint_value_holds(const cJSON *node, const struct field *field);

#endif
