/* settle.h - a whole rule whose things, one and all, were carried over or kept (carry.h) is
 * settled: until a place of the job changes that any of them rests on, or a list it goes
 * through, it is not gone through again. So are the checks for what cannot be.
 *
 * Each place of the survey knows which wholes rest on it, and unsettles them when it changes:
 * of a batch of jobs much alike most rules are passed by at once. Internal to the room.
 */
#ifndef EAVEMARK_JUDGE_SETTLE_H
#define EAVEMARK_JUDGE_SETTLE_H

#include "judge/run.h"
#include "judge/walk.h"

/* How many wholes a rulebook has: its rules, and after these its checks. */
size_t settle_count(const struct rulebook *book);

/* The walk that is about to begin goes through this whole. */
void settle_begin(struct judging *judging, struct walk *walk, size_t number);

/* And is done: missing of its visits were for want of a list, and kept nothing. list: whose
 * things they are (survey.lists). */
void settle(struct judging *judging, const struct walk *walk, size_t list, size_t missing);

/* Takes all findings of the run's rule as the job before had them, charging what they cost;
 * false when the rule is to be gone through. */
bool settle_take_rule(struct run *run);

/* The same of a check, of which nothing came. */
bool settle_take_check(struct judging *judging, size_t number);

#endif
