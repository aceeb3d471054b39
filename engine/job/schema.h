/* schema.h - the field catalogue as a JSON Schema and as a listing. */
#ifndef EAVEMARK_JOB_SCHEMA_H
#define EAVEMARK_JOB_SCHEMA_H

#include "base/text.h"
#include "job/fields.h"

/* Adds the catalogue as one JSON Schema (draft 2020-12) document. What the
 * schema language cannot say (references, impossible combinations, measured
 * facts of a later stage) is left to validate_job. Returns 0, or -1 when out
 * of memory. */
int schema_of_fields(const struct fields *fields, struct text *out);

/* Adds a listing for people, 80 columns: per top-level topic (or only the one
 * named) each field with its type, unit, range or choices, stage, question.
 * Returns 0, -1 when out of memory, 1 when there is no such topic. */
int listing_of_fields(const struct fields *fields, const char *topic, struct text *out);

#endif
