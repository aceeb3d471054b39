/* expected_demand.h - what a rule will demand once a lacking fact is known.
 *
 * Internal to the room. Where the rule's row and the declared reads of its functions show
 * that the demand does not hang on the fact (row_reads.h), one judgement with any value of it
 * tells the demand, and nothing is guessed. Elsewhere the fact is expected to be each of what
 * it may be: yes and no, every choice; of a range the least and the most. Only when all lead
 * to a comparison with one and the same demand is that demand told.
 */
#ifndef EAVEMARK_ASK_EXPECTED_DEMAND_H
#define EAVEMARK_ASK_EXPECTED_DEMAND_H

#include "base/arena.h"
#include "judge/finding.h"
#include "judge/rulebook.h"

#include <cjson/cJSON.h>
#include <stdbool.h>

struct expected_demand {
    struct value required;
    enum sense sense;
    struct value also; /* the other bound, where there are two; else VALUE_NONE */
    enum sense also_sense;
    const char *duty; /* or NULL: also when it depends on what is expected */
    const struct cite *cites;
    size_t cite_count;
    const struct maker *makers; /* of the figures that made the demand */
    size_t maker_count;
    const struct amended *amended; /* or NULL */
};

/* finding: open, and lacking a fact. reached: as of judge. The job is not
 * changed; texts of *out live in arena. False when no one demand can be told. */
bool expected_demand(struct rulebook *book, const cJSON *job, enum stage reached,
                     const struct finding *finding, struct arena *arena,
                     struct expected_demand *out);

#endif
