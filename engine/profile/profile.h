/* profile.h - the law of one place on one day: figures, citations, what is
 * dropped, which extra rules.
 *
 * A place follows another, and that one another, up to a model code. Each
 * says only what differs; a profile is all of them laid over one another, the
 * nearest on top, and remembers who moved what.
 *
 * Ownership: a profile owns everything in it (profile_free). It is immutable
 * once resolved.
 */
#ifndef EAVEMARK_PROFILE_PROFILE_H
#define EAVEMARK_PROFILE_PROFILE_H

#include "base/arena.h"
#include "base/problem.h"
#include "base/value.h"
#include "profile/home.h"

#include <stdbool.h>
#include <stddef.h>

enum { PROFILE_LONGEST_CHAIN = 12 };

/* Does what is exactly at a figure reach or meet it? */
enum at_counts { AT_AS_SENSE_SAYS, AT_COUNTS, AT_COUNTS_NOT };

/* Which of a figure's yes and no asks for more. */
enum stricter {
    STRICTER_UNSAID,
    STRICTER_YES,
    STRICTER_NO,
    STRICTER_NEITHER, /* each asks for something that the other does not */
};

struct figure {
    const char *name;   /* "layers.most" */
    struct value value; /* a number, yes/no or set */
    struct cite cite;
    enum sense sense;           /* at_least ... under */
    enum stricter stricter;     /* of a yes or no */
    const char *behind;         /* the yes-or-no figure without which this binds nobody; or NULL */
    const char *words;          /* of a set: the field whose choices its members are; or NULL */
    const char *disputed;       /* how sources disagree, or NULL */
    struct value rival;         /* what the other source says; VALUE_NONE: not stated */
    const char *borrowed;       /* why it is not this place's law: judges nothing; or NULL */
    const char *unsure;         /* why it may not be this place's law; or NULL */
    const char *draft;          /* only a draft asks it: nobody fails by it; or NULL */
    struct value also;          /* the other bound of a limit: a number, or VALUE_NONE */
    const char *by, *row;       /* of a row of a table: the field they go by, and which; or NULL */
    const char *at_figure;      /* the figure that says whether exactly this much counts; or NULL */
    enum sense also_sense;      /* at_least or at_most; with also */
    enum at_counts at;          /* where at_figure is NULL */
    const char *const *read_in; /* the read_count editions in whose text it was read; or NULL */
    size_t read_count;
    const char *pages; /* which pages of a place would tell it; or NULL */
    const char *file;  /* where it was last given or restated, below the home */
    int line;
    bool unread;                   /* the pages that would tell it were not read */
    const struct amended *amended; /* by whom, from what to what, where a place gave another value
                                      than what it follows; or NULL */
};

struct drop {
    const char *rule;
    const char *reason;
    const char *by;   /* title of the place */
    const char *file; /* and where it says so */
    int line;
};

/* What the place does not carry: where the fact is yes, these rules and quantities
 * are not for what stands here to judge. */
struct law_gap {
    const char *fact;                /* "site.high_velocity_hurricane_zone" */
    struct value rules, but, orders; /* sets: topics or rules, rules, quantities */
    const char *why;
    const char *file;
    int line;
};

/* What is one all over the place, so that no job need say it. */
struct place_fact {
    const char *name;   /* "site.wind_vult_mph" */
    struct value value; /* the one; VALUE_NONE: only bounds, or one of several */
    bool has_least, has_most;
    double least, most;
    struct value one_of; /* a set; of none where set_count is 0 */
    const char *unit;
    struct cite cite;
    const char *by; /* title of the place that says so */
    const char *file;
    int line;
};

/* A part of the place by its own map is a word of this field of its jobs. */
struct place_zone {
    const char *name, *ask;
    struct value words; /* a set */
    const char *file;
    int line;
};

struct profile {
    struct arena arena;
    const char *id, *title;
    const char *edition;  /* "IRC 2021" */
    const char *own_code; /* what the place's own figures cite; a model's is its edition */
    const char *as_seen;  /* or NULL */
    const char **doubts;  /* why what is followed may not bind here, nearest first */
    size_t doubt_count;
    bool invented;
    bool base_only;     /* there to be followed; no job is judged under it */
    bool model;         /* a model code itself, not a place */
    const char **chain; /* ids, nearest first */
    size_t chain_count;
    struct figure *figures; /* by name */
    size_t figure_count;
    struct drop *drops;
    size_t drop_count;
    struct law_gap *gaps; /* the nearest place's first; one for a fact */
    size_t gap_count;
    struct place_fact *facts; /* the nearest place's of each name */
    size_t fact_count;
    struct place_zone *zones; /* the nearest place's of each name */
    size_t zone_count;
    const char **rule_files; /* below the home; the farthest place's first */
    size_t rule_file_count;
    long from, to;          /* the dates on which this same profile holds: from <= d < to */
    struct sources sources; /* the files it was read from */
};

/* Resolves a jurisdiction on a date (date.h). Problems: an unknown id, a date
 * no edition covers (PROBLEM_JOB at pointer "/jurisdiction" or "/date" of
 * job_file, with near names or the dates there are); anything wrong with the
 * files (PROBLEM_RULES, with the chain followed so far). NULL on any. */
struct profile *profile_resolve(const char *home, const char *id, long date, const char *job_file,
                                struct problems *problems);

/* The same from what is on a cache (cache.h), which must outlive the profile. */
struct place_cache;
struct profile *profile_resolve_from(struct place_cache *cache, const char *home, const char *id,
                                     long date, const char *job_file, struct problems *problems);

/* The number as a threshold (from, over, under) is to be compared with: a little off the
 * figure where what is exactly at it is on the other side than the sense says. */
double profile_threshold(const struct figure *figure);

/* Is it a limit (at_least, at_most) that demands more than rules compare by themselves:
 * another bound, or that exactly at it is not enough? */
bool profile_is_held_further(const struct figure *figure);

/* The same value, other bound, and word on what is exactly at it. */
bool profile_same_demand(const struct figure *a, const struct figure *b);

/* Is the member in the set? */
bool profile_set_has(const struct value *set, const char *member);

/* Is there a file of this id? */
bool profile_exists(const char *home, const char *id);

/* "a, b, c" of the nearest ids, into text; "" when there is none at all. */
enum { PROFILE_NEAR_BYTES = 5 * 128 };
void profile_near_names(const char *home, const char *wanted, char *text, size_t size);

/* The same number, yes or no, text or set; units are not looked at. */
bool profile_same_value(const struct value *a, const struct value *b);

/* Does the set name the rule, or its topic? "deck" stands for "deck.solid". */
bool profile_set_names(const struct value *set, const char *rule);

/* What is not carried that bears on the rule, or on the quantity; or NULL. */
const struct law_gap *profile_gap(const struct profile *profile, const char *rule);
const struct law_gap *profile_gap_in_order(const struct profile *profile, const char *quantity);

/* What the place says of the fact of this name, or NULL. */
const struct place_fact *profile_fact(const struct profile *profile, const char *name);

/* By whom the rule is dropped, the nearest place last said; or NULL. */
const struct drop *profile_drop(const struct profile *profile, const char *rule);

/* False where the figure stands behind a switch that is off: then it binds nobody. */
bool profile_binds(const struct profile *profile, const struct figure *figure);

/* The figure of this name, or NULL. */
const struct figure *profile_figure(const struct profile *profile, const char *name);

/* The figures whose names begin with so many letters of this: the first of *count, which stand
 * together. */
const struct figure *profile_table(const struct profile *profile, const char *prefix, size_t length,
                                   size_t *count);

void profile_free(struct profile *profile);

#endif
