/* written.h - what a report has written of a finding, kept for the next job (carry.h). */
#ifndef EAVEMARK_JUDGE_WRITTEN_H
#define EAVEMARK_JUDGE_WRITTEN_H

#include "judge/finding.h"

/* The result's finding as JSON on one line. Does nothing where it is not to be carried over. */
void carry_written(const struct result *result, const struct finding *finding, const char *json,
                   size_t length);

#endif
