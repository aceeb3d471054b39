/* row_demand.h - what a fact that the job does not say will have to meet. Internal to the
 * judge room.
 *
 * A row names its limit apart from the fact that it looks at: the limit is known, or reckoned
 * from what the job does say, while the fact is not. Nothing is supposed of the fact.
 */
#ifndef EAVEMARK_JUDGE_ROW_DEMAND_H
#define EAVEMARK_JUDGE_ROW_DEMAND_H

#include "judge/judgement.h"
#include "judge/row.h"
#include "judge/row_limit.h"

/* Does whoever judges want demands at all? */
bool row_demand_wanted(const struct judging *judging);

/* Called where a row came to its fact and the record has it missing: sets the record's
 * demand, if the probe wants demands and the limit can be told. limits: the count that were
 * found before, or 0. before: as of row_compare; what stands instead of something is one way
 * of several, and demanded of nobody. What else the record holds stays, but for figures:
 * those of the demand are added. */
void row_demand(struct call *call, const struct row *row, const struct judgement *before,
                const struct row_limit *limits, size_t count);

/* Narrows a demand to what may be said where other is demanded as well, which may be NULL:
 * not known. Two bounds of one fact are told together, two duties without words. NULL where
 * they are two things. */
struct judgement *row_demand_both(struct judgement *demand, const struct judgement *other,
                                  bool of_one_fact);

#endif
