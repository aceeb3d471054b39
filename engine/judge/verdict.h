/* verdict.h - from what a rule returned to a finding. Internal to the room. */
#ifndef EAVEMARK_JUDGE_VERDICT_H
#define EAVEMARK_JUDGE_VERDICT_H

#include "judge/finding.h"
#include "judge/judging.h"

/* What came of judging again with each disputed figure as the other source has it. */
struct dispute {
    size_t looked;      /* figures that another source has otherwise */
    bool disputed;      /* under one of them it is not met, or cannot be told */
    struct value rival; /* what is demanded then, or VALUE_NONE */
    enum sense sense;
};

/* The rule compared. Two questions, kept apart: is it met, and how sure is the
 * figure. Only the figures that made the demanded value bear on how sure it is.
 *
 *   met      all of them read, practice or invented   pass
 *            one recalled or of a sister text         warn, unconfirmed
 *            not so under another source's value      warn, disputed
 *            called risky by the rule                 warn, advice
 *   not met  one read, or of a sister text            fail
 *            else one recalled                        fail, unconfirmed, said first
 *            practice, a draft, or advice             warn
 *
 * Open when one of the figures is borrowed: not the law of this place. */
void verdict_judged(struct finding *finding, struct judging *judging, const struct rule *rule,
                    const struct judgement *judgement, const struct dispute *dispute);

/* The job lacked a fact, or the rule could not tell. */
void verdict_open(struct finding *finding, struct judging *judging);

/* The rule has nothing to say; reason may be NULL. Open when it is so only by
 * a borrowed figure that demands or excuses something. */
void verdict_not_applicable(struct finding *finding, struct judging *judging, const char *reason);

/* The place dropped the rule. */
void verdict_dropped(struct finding *finding, struct judging *judging, const struct drop *drop);

/* A quantity was reckoned: nothing was compared. says may be NULL. */
void verdict_given(struct finding *finding, struct judging *judging, const char *says);

/* What is written there did not do what it should: `what` says so, message why. */
void verdict_broken(struct finding *finding, struct judging *judging, const char *what,
                    const char *file, int line, const char *message);

/* Parts of the above, for a finding that is recalled: the record's missing fact, and what an
 * open one asks for; the facts read, of the record; the fact that was found wanting, or
 * NULL. */
const struct lacking *verdict_lacking(struct judging *judging);
void verdict_asks(struct finding *finding, struct judging *judging);
void verdict_take_reads(struct finding *finding, struct judging *judging);
const char *verdict_wanting(const struct judging *judging, const struct finding *finding);

#endif
