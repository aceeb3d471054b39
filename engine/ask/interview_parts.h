/* interview_parts.h - what the parts of an interview share; only they include this. */
#ifndef EAVEMARK_ASK_INTERVIEW_PARTS_H
#define EAVEMARK_ASK_INTERVIEW_PARTS_H

#include "ask/interview.h"
#include "base/strings.h"
#include "job/shop.h"
#include "job/stage.h"
#include "judge/judge.h"
#include "profile/place_list.h"

extern const char interview_place[], interview_day[], interview_form[], interview_sheet[],
    interview_more[];

/* What was done, last first. */
struct step {
    struct step *before;
    char *pointer; /* of each fact it was about, a line each */
    cJSON *job;    /* as it was before an answer; NULL for a skip */
};

/* Owns the job and everything asked so far. `now` points into `questions` or at `head`,
 * and is NULL when the next is to be found. */
struct interview {
    struct laws *laws;
    const char *file;
    cJSON *job;
    cJSON *laid;      /* the job as it is judged, with facts from everywhere; or NULL */
    struct shop shop; /* the job's sheet, or all zero */
    struct step *steps;
    char *again;          /* pointer to be asked next, or NULL */
    char *asked_back;     /* pointer and words of the answer last asked back, or NULL */
    struct result result; /* what the questions came from */
    struct questions questions;
    struct question head; /* a required fact; its texts live in questions.arena */
    const struct question *now;
    bool fresh;         /* it began from nothing: a sheet is to be confirmed */
    bool without_sheet; /* the sheet was turned down */
    bool habits;        /* of a shop: nothing else is asked, nor told */
    bool ahead;         /* for all stages, not only for what was reached */
    cJSON *others;      /* of a shop: materials told before the one asked for now, a list by part */
    const struct step *mark; /* the last before another was begun: no way back over it ... */
    char mark_place[64];     /* ... and what was told of this part before is asked anew; or "" */
    struct arena kept;       /* what is kept from question to question */
    struct strings told;     /* findings that fail, and were told: rule and place */
    struct place_list places;
    bool places_made;
};

/* The job so far (interview_job.c) ---------------------------------------------- */

const char *interview_text(const cJSON *job, const char *name);

/* null is not said. */
bool interview_states(const cJSON *job, const char *name);

/* A job that names no stage, or none there is, has reached the first. */
enum stage interview_reached(const cJSON *job);

/* The first required fact that the job does not say, or NULL: place and day before all else,
 * since they say what else is asked. */
const struct field *interview_head_of(const struct fields *fields, const cJSON *job);

/* The law of the job's place and day; the bare catalogue while it says neither.
 * NULL with problems. */
const struct law *interview_law(struct laws *laws, const cJSON *job, const char *file,
                                struct problems *problems);

/* A copy of the job with what its plan, its sheet and its place say, or NULL. The job
 * itself is written as it was answered. */
cJSON *interview_lay_out(const struct interview *interview, const cJSON *job, const struct law *law,
                         struct problems *problems);

/* Everything wrong with the job, required facts to come left out. */
void interview_validate(const struct interview *interview, const cJSON *job,
                        struct problems *problems);

/* Fills in what is certain and what was given beforehand. */
void interview_prepare(struct interview *interview, const struct overrides *preset,
                       struct problems *problems);

/* Steps (interview_steps.c) ----------------------------------------------------- */

/* Remembers what is about to be done; before: the job of then, taken over on
 * success. */
bool interview_push(struct interview *interview, cJSON *before);
void interview_drop(struct interview *interview);

/* Answered or left out in this sitting: a fact is asked once. */
bool interview_done(const struct interview *interview, const char *pointer);

/* The next question (interview_next.c): each sets interview->now. ---------------- */

void interview_ask_head(struct interview *interview, const struct fields *fields,
                        const struct field *field);

/* The question to be asked again, though no rule may wait for it now. */
void interview_ask_again(struct interview *interview, const struct fields *fields);

/* Is it asked for in this interview, and was it neither answered nor left out? */
bool interview_waits(const struct interview *interview, const struct question *question);

/* The best of what waits. */
void interview_ask_next(struct interview *interview, const struct fields *fields);

/* Changes of the job (interview_change.c) ---------------------------------------- */

/* Whether the job would hold with this value, which is taken over; with this line of several
 * answers; as it is. The job is the changed one then. False with why, empty when memory is
 * out. */
bool interview_try_value(struct interview *interview, cJSON *value, const char *words,
                         struct text *why);
bool interview_try_line(struct interview *interview, const char *words, struct text *why);
bool interview_unchanged(struct interview *interview);

/* Another material of a kind (interview_more.c): asked of a shop when nothing else is. False
 * when there is nothing to ask. Answered: a fresh one is begun, or none. The sheet gets those
 * told before; false when out of memory. */
bool interview_ask_more(struct interview *interview, const struct fields *fields);
bool interview_answer_more(struct interview *interview, const struct fields *fields,
                           const char *words, struct text *why);
bool interview_add_others(const struct interview *interview, const struct fields *fields,
                          cJSON *sheet);

/* The one place that has this id, or that the words fit. NULL with why. (interview_places.c) */
const char *interview_place_by(struct interview *interview, const char *words, struct text *why);

#endif
