/* validate.h - holding a parsed job against the field catalogue. */
#ifndef EAVEMARK_JOB_VALIDATE_H
#define EAVEMARK_JOB_VALIDATE_H

#include "base/problem.h"
#include "job/fields.h"
#include "job/stage.h"

#include <cjson/cJSON.h>
#include <stdbool.h>

/* The last problem listed then says that more follow. */
enum { VALIDATE_MOST_PROBLEMS = 200 };

/* Adds a problem, with its JSON pointer, for every unknown field (with the
 * nearest real name), wrong type, value outside its range or choices, missing
 * required field, reference to a name that is not there (with the nearest),
 * name given twice within a list that references point into, and measured
 * fact of a stage the job has not reached (`reached`). null counts as absent;
 * a list of numbers that is there must hold one, since nothing measured would
 * meet any limit. When fields->partial, an unknown field is a problem only if a
 * real one of the same group is near. Returns 0, or -1 when anything was added. */
int validate_job(const cJSON *job, const struct fields *fields, enum stage reached,
                 const char *file, struct problems *problems);

/* The same for a job held against another place's law than its own: a field
 * that only its own place declares (elsewhere; or NULL) is passed over. */
int validate_job_moved(const cJSON *job, const struct fields *fields,
                       const struct fields *elsewhere, enum stage reached, const char *file,
                       struct problems *problems);

/* True when node is present and of the field's type (not whether in range):
 * what a rule may read. A choice that is not one of the choices, a text that
 * is no slope or day, and an empty list of numbers are not of the type. */
bool validate_value_fits(const cJSON *node, const struct field *field);

#endif
