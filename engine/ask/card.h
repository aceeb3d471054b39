/* card.h - what a crew lead takes up the roof: for one stage, what is wrong
 * already, then what will be looked at, in the order it is looked at, and the
 * figure to hit for each; then what earlier stages left undone.
 *
 * Every rule is judged twice: as planned, and as if the stage had come, when
 * only what was measured counts. Where a fact is still lacking, the figure it will be held
 * against is told by its rule's row (judge/row_demand.h), or by the plan; nothing is
 * supposed of the fact. A rule made of functions tells none without it.
 */
#ifndef EAVEMARK_ASK_CARD_H
#define EAVEMARK_ASK_CARD_H

#include "law/prepare.h"

/* One rule at one place. */
struct card_item {
    const struct finding *plan, *now; /* as planned; as if the stage had come */
    const struct finding *wrong;      /* that of them which is broken or not met, or NULL */
    bool demanded;                    /* required is set */
    struct value required;
    enum sense sense;  /* at_least ... or NULL */
    struct value also; /* the other bound, where there are two; else VALUE_NONE */
    enum sense also_sense;
    bool unconfirmed; /* a figure that makes the demand was not read in this book */
    const char *duty; /* what is asked for in words, or NULL */
    const struct cite *cites;
    size_t cite_count;
    const struct amended *amended; /* or NULL */
    size_t question;  /* the open question it waits for, from 1; 0 when there is none but
                        what is measured or seen at the visit */
    bool asks_number; /* that question asks for a number, which is written down at it */
    const char *ask;  /* the question of the fact that is lacking, or NULL */
    const char *of;   /* the name of the plane, deck ... it is asked of, or NULL */
    bool to_measure;  /* nothing is lacking but what is measured or seen at the visit */
    bool measured;    /* now->found is what was measured or seen, not a plan */
};

enum card_kind {
    CARD_WRONG, /* of this stage and before, not met; what is worst first */
    CARD_WALK,  /* of this stage, as the walk goes */
    CARD_PLACE, /* of this stage and before, open: the building department has to be asked */
    CARD_LEFT,  /* of earlier stages, open for want of a fact */
};

struct card_section {
    enum card_kind kind;
    const char *title;
    struct card_item *items;
    size_t count;
};

struct card {
    enum stage stage;
    struct result plan, now;       /* now holds the heading, cautions and the arena */
    struct result first;           /* before any visit; judged when something is left open */
    struct card_section *sections; /* by kind; none is empty, only CARD_WALK are several */
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
void card_of_job(struct laws *laws, cJSON *job, const struct overrides *overrides, const char *file,
                 struct checked_card *out);

/* Did a rule err of which the card tells? */
bool card_broken(const struct card *card);

void card_checked_free(struct checked_card *checked);

#endif
