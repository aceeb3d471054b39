/* house_job.h - jobs of the project's own houses, as trees. */
#ifndef EAVEMARK_TESTS_HOUSE_JOB_H
#define EAVEMARK_TESTS_HOUSE_JOB_H

#include <cjson/cJSON.h>

/* NAME.json below the project's own folder, to be freed with cJSON_Delete. Fails the test when
 * it cannot be read. */
cJSON *house_job(const char *name);

#endif
