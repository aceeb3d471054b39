/* carried.h - what is carried over of one thing judged, for carry.c and settle.c. Internal to
 * the room. */
#ifndef EAVEMARK_JUDGE_CARRIED_H
#define EAVEMARK_JUDGE_CARRIED_H

#include "judge/carry.h"
#include "judge/survey.h"

struct carried {
    struct survey *survey;
    size_t round;            /* it was judged in; 0: nothing is kept */
    size_t stood;            /* the last in which it was seen to stand still; 0: none */
    const struct spot *item; /* it is of */
    struct spot **rests_on;
    size_t count, room;
    size_t told; /* to how many of the places, that a whole rests on them (settle.h) */
    bool asks;   /* it asks for a fact that is lacking: see survey.ask_changed */
    unsigned stage;
    struct charge charge;
    enum outcome outcome;
    enum met met;
    unsigned why;
    bool measured;
    char *json;                    /* as written; */
    size_t json_length, json_room; /* 0: not yet */
    enum sandbox_stop stop;        /* of a call: how it ended, and what it said */
    bool present;
};

/* Of one rule or function, by the order in which its items are visited. */
struct carried_list {
    struct carried **items;
    size_t count;
};

/* Is anything carried over in this round? */
static inline bool carries(const struct judging *judging)
{
    return judging->survey != NULL && !judging->survey->worth.resting && !judging->apart;
}

static inline bool carried_is_written(const struct judging *judging, const struct carried *carried)
{
    return carried->json_length > 0 || !judging_tells(judging, carried->outcome);
}

/* Adds it to the findings of the run's rule, or counts it. */
void carry_take(struct run *run, const struct carried *carried);

#endif
