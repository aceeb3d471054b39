/* asked.h - the questions that a report puts: those of question.h that can be answered
 * now, one fact in several places once. */
#ifndef EAVEMARK_ASK_ASKED_H
#define EAVEMARK_ASK_ASKED_H

#include "job/fields.h"
#include "judge/finding.h"

#include <cjson/cJSON.h>

/* Fills result->asked, in its arena, and marks the findings that wait for one of them.
 * job and fields are those it was judged by. Returns 0, or -1 when out of memory. */
int asked_fill(struct result *result, const cJSON *job, const struct fields *fields);

#endif
