/* put.h - setting one fact of a job by its JSON pointer (RFC 6901). */
#ifndef EAVEMARK_JOB_PUT_H
#define EAVEMARK_JOB_PUT_H

#include <cjson/cJSON.h>
#include <stdbool.h>

/* Sets what the pointer names and takes value over, whatever comes of it. What
 * was there is replaced in its place; what was not comes last in its group.
 * Groups on the way that are missing are made; items of lists are not. False
 * when there is no such place, value is NULL, or memory is out. */
bool job_put(cJSON *job, const char *pointer, cJSON *value);

#endif
