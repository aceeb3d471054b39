/* law.h - the law of a place on a day, loaded once and used for many jobs. */
#ifndef EAVEMARK_LAW_LAW_H
#define EAVEMARK_LAW_LAW_H

#include "base/problem.h"
#include "judge/rulebook.h"
#include "profile/profile.h"
#include "profile/place_cache.h"

struct law {
    struct profile *profile; /* NULL for the bare field catalogue */
    struct rulebook *book;   /* its rules may be shared (rulebook_share.h); NULL: at rest
                                (laws_rest) */
    char fingerprint[65];    /* of every file both were read from */
    unsigned long long used; /* the later laws_find gave it, the more */
    bool held;               /* not put to rest: laws_rest_never */
    struct law *next;
};

/* A rule of some law, whether or not that law is at rest. */
struct rule_name {
    const char *id, *file;
    int line;
    bool asks_only;
};

/* Each rule once: by id, and the file it stands in. */
struct rule_names {
    struct arena arena;
    struct rule_name *items;
    size_t count;
};

/* Every law loaded so far from one home folder. */
struct laws {
    const char *home;
    struct law *first;
    struct place_cache cache; /* the places they were made of */
    struct rule_names rules;  /* of laws at rest */
    unsigned long long used;
    long long steps_rested; /* that laws at rest had taken */
    size_t holders;     /* results and interviews that name rules of them: none is put to rest */
    bool out_of_memory; /* something passed over in silence was for want of memory */
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

/* The same if it was loaded before, at rest or awake, and left so; else NULL. */
struct law *laws_known(const struct laws *laws, const char *id, long date);

/* The fields of the law that was found last, as the next job is often one of the same; NULL for
 * none. */
const struct fields *laws_likely(const struct laws *laws);

/* Only the field catalogue, of every place and with no rules: for a job whose
 * place is not known. */
const struct law *laws_fields(struct laws *laws, struct problems *problems);

/* Frees the rulebooks of all laws but the few used last, and of more when those take more
 * than LAWS_AWAKE_BYTES, for whoever goes through many places: a rulebook takes fifty times
 * the room of its profile, and a county's may take a hundred megabytes. laws_find loads them
 * again. Nothing of a rulebook may be held across a call, be it a rule, a field or a text,
 * but of laws that laws_rest_never was told of, until laws_rest_any. While there are holders it
 * does nothing. */
enum { LAWS_AWAKE_BYTES = 128 * 1024 * 1024 };
void laws_rest(struct laws *laws, size_t awake);
void laws_rest_never(struct laws *laws, const struct law *law);
void laws_rest_any(struct laws *laws);

/* Notes the rules of the laws awake too: laws->rules is then of all. False when out of
 * memory. */
bool laws_rest_rules(struct laws *laws);

/* Steps that all laws' rules have taken so far. */
long long laws_steps(const struct laws *laws);

/* Laws loaded now, and the bytes that their rulebooks take. */
size_t laws_count(const struct laws *laws, size_t *bytes);

void laws_free(struct laws *laws);

#endif
