/* proof_report.h - a proof as something to read or to pass on. */
#ifndef EAVEMARK_REPORT_PROOF_REPORT_H
#define EAVEMARK_REPORT_PROOF_REPORT_H

#include "base/text.h"
#include "prove/proof.h"

/* For people, in 80 columns: one place with its differences, or all with what
 * is wrong with them; then the cases that went wrong. The last line is always
 * "N passed, N failed". Sets out->failed when out of memory. */
void report_proof_text(const struct proof *proof, struct text *out);

/* { "eavemark", "places": [ { "id", "title", "blocks", "cases" } ], "cases",
 * "messages" }; form and errors as of report_json. */
void report_proof_json(const struct proof *proof, bool pretty, struct text *out);

#endif
