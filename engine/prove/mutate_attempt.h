/* mutate_attempt.h - cases judged once, to be judged again under a figure that was moved.
 * Internal to the room.
 *
 * The attempts of one file of cases at a time: a job laid out takes a hundred thousand bytes.
 */
#ifndef EAVEMARK_PROVE_MUTATE_ATTEMPT_H
#define EAVEMARK_PROVE_MUTATE_ATTEMPT_H

#include "prove/case_list.h"

/* One case judged once: what it asked for and what came out. */
struct attempt {
    const struct rule_case *wanted;
    cJSON *job; /* its, laid out */
    const struct law *law;
    struct probe probe; /* its rule; one asked and decides per figure of the law */
    enum stage reached;
    int *outcomes; /* of each finding that the case looks at */
    double *found; /* and what it found, where the case says so of a number */
    size_t outcome_count;
    struct attempt *next;
};

struct attempts {
    struct laws *laws;
    struct arena arena;
    struct problems problems; /* only of memory */
    const char *place;        /* only cases under this place; or NULL */
    struct attempt *first, **last;
    size_t count;
};

/* Judges the cases that can be judged. What does not hold or is refused on purpose is the
 * proof's business. */
void attempts_make(struct attempts *attempts, const struct case_list *cases);

/* Does the case come out otherwise with this value in place of that of the law's figure (of
 * its other bound)? The figure is put back. */
bool attempt_changes(struct attempts *attempts, const struct attempt *attempt, size_t figure,
                     const struct value *value, bool other_bound);

void attempts_free(struct attempts *attempts);

#endif
