/* judge_rule.h - the findings of one rule, one for each thing that it judges. Internal to the
 * judge room. */
#ifndef EAVEMARK_JUDGE_JUDGE_RULE_H
#define EAVEMARK_JUDGE_JUDGE_RULE_H

#include "judge/run.h"

/* The rule of this number, by id. One that an ordinance drops has one finding, for the whole
 * house. */
void judge_rule(struct run *run, size_t number);

#endif
