/* card.h - what a crew lead takes up the roof: for one stage, what will be
 * looked at, in the order it is looked at, and the figure to hit for each.
 *
 * Every rule is judged twice: as planned, and as if the stage had come, when
 * only what was measured counts. Where a measured fact is still lacking, the
 * figure it will be held against is found by supposing values for it: it is
 * given only when it does not depend on them.
 */
#ifndef EAVEMARK_CHECK_CARD_H
#define EAVEMARK_CHECK_CARD_H

#include "check/check.h"

/* One rule at one place. */
struct card_item {
    const struct finding *plan, *now; /* as planned; as if the stage had come */
    bool demanded;                    /* required is set */
    struct value required;
    const char *sense;                /* at_least ... or NULL */
    const char *duty;                 /* what is asked for in words, or NULL */
    const struct cite *cites;
    size_t cite_count;
    const struct amended *amended;    /* or NULL */
    size_t question; /* the open question it waits for, from 1; 0 when there is none but
                        what is measured or seen at the visit */
    const char *ask; /* the question of the fact that is lacking, or NULL */
    const char *of;  /* the name of the plane, deck ... it is asked of, or NULL */
    bool to_measure; /* nothing is lacking but what is measured or seen at the visit */
    bool measured;   /* now->found is what was measured or seen, not a plan */
};

struct card_section {
    const char *title;
    struct card_item *items;
    size_t count;
};

struct card {
    enum stage stage;
    struct result plan, now;       /* now holds the heading, cautions and the arena */
    struct card_section *sections; /* none is empty */
    size_t section_count;
    size_t question_count; /* that differ; of two planes the same question is one */
};

/* Either a card, or problems that say why there is none. */
struct checked_card {
    struct problems problems;
    struct card card;
    bool made;
};

/* The card of overrides->stage, which must be a stage. The tree is changed as
 * by check_job. */
void check_card(struct laws *laws, cJSON *job, const struct overrides *overrides,
                const char *file, struct checked_card *out);

/* Did a rule err of which the card tells? */
bool card_broken(const struct card *card);

void checked_card_free(struct checked_card *checked);

#endif
