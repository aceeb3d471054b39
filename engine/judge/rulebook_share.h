/* rulebook_share.h - one loading of the rule files for several laws.
 *
 * The days of a place mostly differ in figures' values and citations, and most places have no
 * rule files of their own. What the files made of the one profile is then what they would make
 * of the other: the sandbox with its functions, the rules, the fields. A law of its own are the
 * figures that stand behind all slots, and what is remembered of its jobs.
 */
#ifndef EAVEMARK_JUDGE_RULEBOOK_SHARE_H
#define EAVEMARK_JUDGE_RULEBOOK_SHARE_H

#include "judge/rulebook.h"

/* A rulebook for the profile with the rules of another, whose profile must outlive it too; to be
 * freed like any. NULL unless it is certain to be as one loaded: the files are the same, and all
 * that they looked at in the one profile is so in the other; and nothing is wrong with it. Also
 * NULL when out of memory. */
struct rulebook *rulebook_share(const struct rulebook *other, const char *home,
                                const struct profile *profile);

#endif
