/* judge_rule.h - the findings of one rule, one for each thing that it judges. Internal to the
 * judge room. */
#ifndef EAVEMARK_JUDGE_JUDGE_RULE_H
#define EAVEMARK_JUDGE_JUDGE_RULE_H

#include "judge/run.h"

/* A rule that an ordinance drops has one finding, for the whole house. */
void judge_rule(struct run *run, const struct rule *rule);

#endif
