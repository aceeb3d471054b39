/* profile_making.h - what the files that make a profile share. Internal to the room. */
#ifndef EAVEMARK_PROFILE_PROFILE_MAKING_H
#define EAVEMARK_PROFILE_PROFILE_MAKING_H

#include "profile/place.h"
#include "profile/place_cache.h"
#include "profile/profile.h"

/* One profile being made; blocks[i] is what binds of places[i] on the date. */
struct resolving {
    struct place_cache *cache; /* or NULL: places are read for this profile alone */
    const char *home;
    const char *job_file;
    long date;
    struct problems *problems;
    struct profile *profile;
    const struct place *places[PROFILE_LONGEST_CHAIN]; /* nearest first */
    const struct block *blocks[PROFILE_LONGEST_CHAIN];
    size_t depth;
};

/* Of a profile's figures: their order by name, for qsort; the one of this name among the first
 * `sorted`; is it a limit, at least or at most? */
bool profile_is_limit(const struct figure *figure);
int profile_figure_order(const void *a, const void *b);
struct figure *profile_figure_among(const struct profile *profile, size_t sorted, const char *name);

/* The edition of the model at the chain's end, or that the place says it follows; how the
 * citations of the place at this level begin. */
const char *profile_edition_of_model(const struct resolving *r);
const char *profile_edition_followed(const struct resolving *r);
const char *profile_code_name(const struct resolving *r, size_t level);

/* Lays the figures of the chain over one another, the farthest first; then settles what hangs
 * on all of them. */
void profile_mark_unverified(struct resolving *r, const struct block *block);
void profile_lay_adopts(struct resolving *r, size_t level);
void profile_settle_doubts(struct resolving *r);
void profile_figures_lay(struct resolving *r);
void profile_settle_ways(struct resolving *r);
void profile_settle_pages(struct resolving *r);
void profile_settle_at(struct resolving *r);
void profile_settle_readings(struct resolving *r);

/* Lays what else the places of the chain say over one another. */
void profile_lay_gaps(struct resolving *r);
void profile_lay_facts(struct resolving *r);
void profile_lay_drops(struct resolving *r);
void profile_lay_rule_files(struct resolving *r);

#endif
