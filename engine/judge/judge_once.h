/* judge_once.h - how judging one thing by one rule ends. Internal to the judge room. */
#ifndef EAVEMARK_JUDGE_JUDGE_ONCE_H
#define EAVEMARK_JUDGE_JUDGE_ONCE_H

#include "judge/run.h"
#include "judge/verdict.h"

enum judged { JUDGED_COMPARED, JUDGED_NOT_APPLICABLE, JUDGED_OPEN, JUDGED_BROKEN };

/* By the rule's row or functions; *why says what broke. What came of a comparison counts
 * only if the units and verbs of all comparisons agree with what they compare. */
enum judged judge_once(struct run *run, const struct walk *walk, struct call *call,
                       const char **why);

/* Is what is met met on every reading? Judges again for each that is disputed. Where another
 * source is known to differ and its value is not, a demand made of it cannot be. */
struct dispute judge_once_dispute(struct run *run, const struct walk *walk,
                                  const struct judgement *judgement);

#endif
