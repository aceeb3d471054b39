/* proof_vouch.h - the figures of a place that nobody vouches for there. Internal to the room.
 */
#ifndef EAVEMARK_REPORT_PROOF_VOUCH_H
#define EAVEMARK_REPORT_PROOF_VOUCH_H

#include "base/text.h"
#include "profile/profile.h"

#include <cjson/cJSON.h>
#include <stdbool.h>

/* A paragraph for each book and reason, with the names; nothing where all are vouched for.
 * Sets out->failed when out of memory. */
void report_add_unvouched(struct text *out, const struct profile *profile);

/* "unvouched": [ { "figure", "book", "why" } ]. False when out of memory. */
bool report_unvouched_json(cJSON *object, const struct profile *profile);

#endif
