/* law.h - the law of a place on a day, loaded once and used for many jobs. */
#ifndef EAVEMARK_LAW_LAW_H
#define EAVEMARK_LAW_LAW_H

#include "base/problem.h"
#include "judge/rulebook.h"
#include "profile/profile.h"
#include "profile/place_cache.h"

struct law {
    struct profile *profile; /* NULL for the bare field catalogue */
    struct rulebook *book;
    char fingerprint[65]; /* of every file both were read from */
    struct law *next;
};

/* Every law loaded so far from one home folder. */
struct laws {
    const char *home;
    struct law *first;
    struct place_cache cache; /* the places they were made of */
    bool out_of_memory;       /* something passed over in silence was for want of memory */
};

/* Frees problems that do not count, such as those of places gone through in
 * search of something. Out of memory always counts: it is kept in laws, and
 * whoever asked first must look there before giving an answer. */
void laws_drop_problems(struct laws *laws, struct problems *problems);

/* The law of a jurisdiction on a date, loading it when needed. It belongs to
 * laws. NULL with problems when there is none (profile_resolve) or its files
 * are broken (rulebook_load). */
const struct law *laws_find(struct laws *laws, const char *id, long date, const char *job_file,
                            struct problems *problems);

/* Only the field catalogue, of every place and with no rules: for a job whose
 * place is not known. */
const struct law *laws_fields(struct laws *laws, struct problems *problems);

/* Steps that all laws' rules have taken so far. */
long long laws_steps(const struct laws *laws);

void laws_free(struct laws *laws);

#endif
