/* write.h - a job as a JSON file that people read and edit. */
#ifndef EAVEMARK_JOB_WRITE_H
#define EAVEMARK_JOB_WRITE_H

#include "base/text.h"

#include <cjson/cJSON.h>

/* Writes the tree in the order it has, two spaces a level. A group or list that
 * fits in a line stands in one; a group of plain facts that does not has as many
 * to a line as fit. Ends with a newline. Sets out->failed when out of memory. */
void write_job_text(const cJSON *job, struct text *out);

#endif
