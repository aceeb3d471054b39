/* like.h - what one job may take over from another. */
#ifndef EAVEMARK_JOB_LIKE_H
#define EAVEMARK_JOB_LIKE_H

#include "job/fields.h"

#include <cjson/cJSON.h>

/* Puts the habits of another job into this one, where it is silent: what the catalogue marks
 * as such (fields.h), materials by their names, and the shop sheet that it names. Nothing that
 * was measured or dated, nothing of the house or the place. False when out of memory. */
bool like_take(cJSON *job, const cJSON *other, const struct fields *fields);

#endif
