/* trial_report.h - what a trial counted, for people and for programs.
 *
 * Out of memory sets out->failed.
 */
#ifndef EAVEMARK_REPORT_TRIAL_REPORT_H
#define EAVEMARK_REPORT_TRIAL_REPORT_H

#include "base/text.h"
#include "prove/trial.h"

#include <stdbool.h>

void report_trial_text(const struct trial *trial, struct text *out);
void report_trial_html(const struct trial *trial, struct text *out);

/* All of it; trial_part_merge (prove/trial.h) adds it to another. */
void report_trial_json(const struct trial *trial, bool indented, struct text *out);

/* Internal to the room. "12 jobs", "1 job". */
void trial_text_add_jobs(struct text *out, size_t count);

/* How a finding stands, in a reader's words. */
const char *trial_text_outcome(enum trial_outcome outcome);

/* The moves, those of most jobs first; of alike many in their own order. To be freed with
 * free(); NULL when there are none, or out of memory (*failed). */
const struct trial_move **trial_text_by_jobs(const struct trial *trial, bool *failed);

#endif
