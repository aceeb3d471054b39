/* verdict.h - from what a rule returned to a finding. Internal to the room. */
#ifndef EAVEMARK_JUDGE_VERDICT_H
#define EAVEMARK_JUDGE_VERDICT_H

#include "judge/finding.h"
#include "judge/judging.h"

/* The rule compared: pass, warn or fail, by what was met and by how well the
 * figures it asked for are known. Open when one of them is borrowed: not the
 * law of this place. */
void verdict_judged(struct finding *finding, struct judging *judging,
                    const struct judgement *judgement);

/* The job lacked a fact, or the rule could not tell. */
void verdict_open(struct finding *finding, struct judging *judging);

/* The rule has nothing to say; reason may be NULL. Open when it is so only by
 * a borrowed figure that demands or excuses something. */
void verdict_not_applicable(struct finding *finding, struct judging *judging, const char *reason);

/* The place dropped the rule. */
void verdict_dropped(struct finding *finding, struct judging *judging, const struct drop *drop);

/* A quantity was reckoned: nothing was compared. says may be NULL. */
void verdict_given(struct finding *finding, struct judging *judging, const char *says);

/* The rule erred. */
void verdict_broken(struct finding *finding, struct judging *judging, const struct rule *rule,
                    const char *message);

#endif
