/* recall.h - findings, and what functions said, taken from the memory of the law instead
 * of being judged. Internal to the room.
 *
 * Each recall_ either finds it, or begins to note what is asked; the recall_keep_ that
 * belongs to it ends that, and remembers what came of it if it follows from the answers.
 */
#ifndef EAVEMARK_JUDGE_RECALL_H
#define EAVEMARK_JUDGE_RECALL_H

#include "judge/walk.h"

/* Other than the facts, what a finding hangs on: how far the work has come. */
unsigned recall_stage(const struct judging *judging);

/* Charges what judging it cost. False when that does not fit in what is left: it is then
 * judged, and stopped. */
bool recall_charge(struct judging *judging, const struct charge *charge);

/* The finding of the rule for what is being judged: all but rule, title, stage, where and
 * item, which are set already. */
bool recall_finding(struct judging *judging, const struct rule *rule, struct walk *walk,
                    struct finding *finding);
void recall_keep_finding(struct judging *judging, const struct rule *rule,
                         const struct finding *finding);

/* What call->function says: its text, whether it is present, and how it ended; for calls
 * whose record nobody looks at. */
bool recall_call(struct judging *judging, struct call *call, enum sandbox_stop *stop);
void recall_keep_call(struct judging *judging, const struct call *call, enum sandbox_stop stop);

#endif
