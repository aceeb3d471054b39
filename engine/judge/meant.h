/* meant.h - what a job says it means as it stands (/as_meant). */
#ifndef EAVEMARK_JUDGE_MEANT_H
#define EAVEMARK_JUDGE_MEANT_H

#include "base/problem.h"

#include <cjson/cJSON.h>
#include <stdbool.h>

/* Does the job call the value there meant? */
bool meant_is(const cJSON *job, const char *pointer);

/* Asks back what stands at the pointer of the job, in these words, unless it is meant. */
void meant_ask_back(const cJSON *job, const char *file, const char *pointer, const char *why,
                    struct problems *problems);

#endif
