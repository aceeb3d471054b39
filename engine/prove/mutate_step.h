/* mutate_step.h - the smallest steps that a figure can be moved by. Internal to the room. */
#ifndef EAVEMARK_PROVE_MUTATE_STEP_H
#define EAVEMARK_PROVE_MUTATE_STEP_H

#include "base/arena.h"
#include "base/strings.h"
#include "job/fields.h"
#include "profile/profile.h"

/* One step. A figure's steps are counted from 0 and the same for every law that has its
 * value: a number down and up, its other bound down and up; yes or no turned over; each member
 * of a set taken out. One more of a set is that a member is added, which has several ways. */
struct mutate_step {
    struct value value;
    bool other_bound; /* the value of the other bound */
    const char *says; /* "a step down" */
};

/* The most that there can be, the member added (the last of a set) included. */
size_t mutate_step_count(const struct figure *figure);

/* The step of this number, of a figure as a law has it; not the member added. False when there
 * is none such, and when out of memory. */
bool mutate_step_make(const struct figure *figure, size_t number, struct arena *arena,
                      struct mutate_step *step);

/* The words that a slip could add to a set: choices of the catalogue that stand beside members
 * of it. */
void mutate_step_others(const struct fields *fields, const struct value *set, struct arena *arena,
                        struct strings *others);

/* The set with the word added; false when out of memory. */
bool mutate_step_add(const struct value *set, const char *word, struct arena *arena,
                     struct mutate_step *step);

#endif
