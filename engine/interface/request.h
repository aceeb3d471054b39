/* request.h - what a request asks for, in the words of the rooms that do it. */
#ifndef EAVEMARK_INTERFACE_REQUEST_H
#define EAVEMARK_INTERFACE_REQUEST_H

#include "base/arena.h"
#include "base/problem.h"
#include "include/eavemark.h"
#include "law/prepare.h"

#include <cjson/cJSON.h>

/* What a request says over the job's own words, and where its shop sheet is to be had.
 * Points into the request. */
struct overrides request_overrides(const struct eavemark_request *request);

/* The job as text or from its file, the caller's to delete; NULL with problems. */
cJSON *request_job(const struct eavemark_request *request, struct problems *problems);

/* The same, in that arena where it came as text, so that tree_free frees it (json_read_into);
 * likely: as of json_read_likely, to be there as long as the job. */
cJSON *request_job_into(const struct eavemark_request *request, const struct fields *likely,
                        struct arena *into, struct problems *problems);

/* The day that --date names; 0 for none (NULL), or for one that is no day (a problem). */
long request_day(const char *date, struct problems *problems);

#endif
