/* json_finding.h - findings as JSON. Internal to the room. */
#ifndef EAVEMARK_REPORT_JSON_FINDING_H
#define EAVEMARK_REPORT_JSON_FINDING_H

#include "judge/finding.h"
#include "report/json_out.h"

/* The list of them, as "findings"; without those that do not apply, unless all. On a line,
 * what can be the same in the next job of the law is kept, and copied from there. */
void json_finding_list(struct json_out *out, const struct result *result, bool all);

#endif
