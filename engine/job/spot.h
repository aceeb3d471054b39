/* spot.h - the spot in a job, or in the field catalogue, that a JSON pointer
 * (RFC 6901) names. */
#ifndef EAVEMARK_JOB_SPOT_H
#define EAVEMARK_JOB_SPOT_H

#include "base/text.h"
#include "job/fields.h"

#include <cjson/cJSON.h>

/* What stands there, or NULL. */
const cJSON *spot_find(const cJSON *job, const char *pointer);

/* The field of that spot, whichever item of a list it is in; or NULL. */
const struct field *spot_field(const struct fields *fields, const char *pointer);

/* The name of the innermost item on the way there that has one: "porch" for
 * /roof/slopes/2/deck; or NULL. It is the job's. */
const char *spot_name(const cJSON *job, const char *pointer);

/* The same spot in two jobs. An item of a list is the same when it has the
 * same name, or, having none, the same place in the list. pointer is one of
 * job a. What is not there is NULL. path is given the spot's name in words:
 * "roof.slopes[porch].pitch". */
struct spots {
    const cJSON *a, *b;
};
struct spots spot_pair(const cJSON *a, const cJSON *b, const char *pointer, struct text *path);

/* The value as people write it: "5 in", yes, a text as it is, "3 items" for a
 * list of groups, "not said" for NULL. field gives the unit; it may be NULL. */
void spot_add_value(struct text *out, const cJSON *value, const struct field *field);

#endif
