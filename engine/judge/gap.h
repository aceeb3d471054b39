/* gap.h - what a place does not carry of its law: where a fact of the job is yes,
 * other sections bind than those whose figures stand here, so what they bear on
 * cannot be judged. Internal to the judge room. */
#ifndef EAVEMARK_JUDGE_GAP_H
#define EAVEMARK_JUDGE_GAP_H

#include "judge/judging.h"

/* Is the job in the gap? Then the record says so: open, and the building department
 * to be asked. So too while the job does not say; then the fact is lacking, unless
 * another is already. The gap may be NULL: then no. */
bool gap_holds(struct judging *judging, const struct law_gap *gap);

/* Refuses a gap of which the fact is no yes-or-no of the catalogue, or the rules and
 * quantities are none. */
void gap_check(const struct rulebook *book, struct problems *problems);

#endif
