/* survey.h - the places of the jobs of one law, gone over anew for each job: which facts
 * are otherwise than the job before had them. What was judged of facts that are not is
 * carried over (carry.h). Internal to the room.
 *
 * A round is one going over. A place is otherwise when the job has it no more or has it now,
 * when its value is another, its origin, or how its place stands to it; a list also when an
 * item came, went or is called otherwise. A place looked at for the first time counts as
 * changed in the round after: nothing was kept of it yet.
 *
 * Ownership: survey_free releases all. Bounded by SURVEY_MOST bytes, and lists by
 * SURVEY_ITEMS_MOST: what is larger is judged without.
 */
#ifndef EAVEMARK_JUDGE_SURVEY_H
#define EAVEMARK_JUDGE_SURVEY_H

#include "judge/spot.h"

enum { SURVEY_MOST = 8 * 1024 * 1024, SURVEY_ITEMS_MOST = 200 };

struct carried_list;
struct kept_piece;
struct whole;

/* Is carrying over worth its while? Of some rounds it is counted how much stood still; where
 * that is little nothing is carried over in the next ones, nor kept to be: for twice as many
 * each time that it turns out so again. */
struct worth {
    bool resting;
    size_t rounds;      /* since it began to rest, or to be counted */
    size_t rest;        /* so many are rested: this time, or the last; 0: it was worth it since */
    size_t stood, fell; /* things that were carried over, and that were not */
};

struct survey {
    struct arena arena;
    struct spot *root;
    const cJSON *job;   /* that the last round was of, while it is in hand; or NULL */
    size_t round;       /* the last one */
    size_t ask_changed; /* in which what a lacking fact is asked for by changed: the plan of
                           the house, or what an item is called or is */
    size_t touch;       /* things judged by it so far */
    size_t records;     /* and records begun */
    const struct field *footprint;
    struct carried_list *lists; /* carry.h */
    size_t list_count;
    struct whole *wholes; /* settle.h */
    size_t whole_count;
    struct worth worth;
    uint64_t *settled;         /* a bit for each; off as soon as a place that it rests on changes */
    struct kept_piece **cites; /* by figure, as a report writes where it stands (finding.h) */
    size_t borrowers;          /* results that go on by what is carried as written */
    struct text room;          /* for the value of a list */
    bool large;                /* a list of the job is too long for it */
    bool closed;
};

/* For so many wholes. NULL when out of memory; everything then goes on without one. */
struct survey *survey_open(const struct fields *fields, size_t wholes);
void survey_free(struct survey *survey);

/* Carries nothing over any more; what was handed out stays. */
void survey_close(struct survey *survey);

size_t survey_bytes(const struct survey *survey);

/* A round: from here on the survey's places are this job's, until the next. A job that is
 * in hand still is not gone over again. False when it cannot be gone over, or there is no
 * survey. */
bool survey_go_over(struct survey *survey, const cJSON *job);

/* From here on the whole rests on this place; false when out of memory. */
bool survey_rest_on(struct survey *survey, struct spot *spot, size_t whole);

/* The whole is settled as of this round, or not. */
void survey_settle(struct survey *survey, size_t whole, bool settled);

/* And no place that it rests on changed since. */
static inline bool survey_is_settled(const struct survey *survey, size_t whole)
{
    return (survey->settled[whole / 64] >> (whole % 64) & 1) != 0;
}

/* The job is out of hand: it may change, and another may stand where it did. */
void survey_let_go(struct survey *survey);

#endif
