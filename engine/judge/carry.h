/* carry.h - what was found of the job before, carried over as long as no place of the job
 * that it rests on has changed since (survey.h).
 *
 * Only what memory.h could remember is carried: what follows from the answers to what was
 * asked. All places that were asked are noted while it is judged or recalled. Findings are
 * carried as the JSON they were written as, for results of which nothing else is wanted.
 * Internal to the room.
 */
#ifndef EAVEMARK_JUDGE_CARRY_H
#define EAVEMARK_JUDGE_CARRY_H

#include "judge/recall.h"
#include "judge/run.h"

/* Goes over the job, so that findings can be carried; does nothing where they may not be.
 * carry_end belongs to it. */
void carry_begin(struct judging *judging);
void carry_end(struct judging *judging);

/* Adds the finding of the run's rule for what the walk has come to (missing: for want of
 * this list), or counts it; false when it is not to be carried over. */
bool carry_finding(struct run *run, const struct walk *walk, const struct node *missing);

/* The same of one that was recalled instead (recall.h), if nothing of it has to be written;
 * false when it is to be told, and then kept. */
bool carry_recalled(struct run *run, const struct walk *walk, const struct kept_finding *kept);
void carry_keep_told(struct run *run, struct finding *finding);

/* When neither was so: what is judged from here on is noted, for carry_keep_finding. */
void carry_note_finding(struct run *run, const struct walk *walk, const struct node *missing);
void carry_keep_finding(struct run *run, struct finding *finding);

/* The same for a function of which nothing but its text is looked at, said at the visit-th
 * item. */
bool carry_call(struct judging *judging, struct call *call, size_t visit, enum sandbox_stop *stop);
void carry_keep_call(struct judging *judging, const struct call *call, enum sandbox_stop stop);

#endif
