/* figure_rows.h - do the rows of the profile's tables go by what a job can say? */
#ifndef EAVEMARK_JUDGE_FIGURE_ROWS_H
#define EAVEMARK_JUDGE_FIGURE_ROWS_H

#include "base/problem.h"
#include "judge/rulebook.h"

/* Adds a problem (PROBLEM_RULES) for each row whose field there is not, is no choice,
 * or has no such choice. The fields must be declared. */
void figure_rows_check(const struct rulebook *book, struct problems *problems);

#endif
