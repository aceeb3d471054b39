/* lay_out.h - a roof that a job states by the plan of the house
 * (/roof/footprint) is written out as planes, edges and valleys, so that all
 * that follows sees a roof like any other.
 *
 * Of a plane, edge or valley the job may name, it may say the facts that no
 * plan shows; what is said once for all of them (/roof/footprint/planes, /eaves,
 * /rakes) goes into those that do not say it. What the plan shows may be said
 * twice only if both agree: within a tenth of a foot, as a tape does.
 */
#ifndef EAVEMARK_JOB_LAY_OUT_H
#define EAVEMARK_JOB_LAY_OUT_H

#include "base/arena.h"
#include "base/problem.h"
#include "job/fields.h"

#include <cjson/cJSON.h>

/* Writes the roof out in the job's tree. What the job lists keeps its place in
 * its list; the rest comes after. While a fact lacks, or does not hold, planes
 * and edges get their names only; while the form does, nothing is said of them.
 * Does nothing without a footprint; a second time changes nothing. Adds a
 * problem for a roof that cannot be, for what disagrees with it, and for names
 * it does not have. */
void lay_out(cJSON *job, const struct fields *fields, const char *file, struct problems *problems);

/* What to ask for in place of a fact that a laid-out roof lacks: the first fact
 * its footprint lacks, or what may be said once for all eaves, say. The pointer
 * itself when neither holds. Copied into the arena; NULL when out of memory. */
const char *lay_out_asks(const cJSON *job, const struct fields *fields, const char *pointer,
                         struct arena *arena);

#endif
