/* places.h - every place of a home folder, and its figures on one day. */
#ifndef EAVEMARK_PROFILE_PLACES_H
#define EAVEMARK_PROFILE_PLACES_H

#include "base/strings.h"
#include "profile/profile.h"
#include "profile/place_cache.h"

/* One place, as it stands on the day asked for. */
struct standing {
    struct profile *profile;
    long date; /* the day it was resolved on */
};

struct places {
    struct arena arena;
    struct standing *items; /* model codes first, each kind by id */
    size_t count;
    struct strings skipped; /* ids that do not load, or have no edition then */
};

/* The ids of all places of a home, by name, whether they load or not. */
void places_ids(const char *home, struct strings *ids, struct arena *arena);

/* Calls visit(data, path, why) for what below jurisdictions/ can hold no place that is listed:
 * a folder too deep, or that cannot be read. False when out of memory. */
bool places_unread(const char *home, void (*visit)(void *data, const char *path, const char *why),
                   void *data);

/* The last day that is sure to show the newest edition of a place: the
 * beginning of its last block that its parents reach. 0 when there is none.
 * What is wrong with its files is not said here; being out of memory is. */
long places_newest(struct place_cache *cache, const char *home, const char *id,
                   struct problems *problems);

/* Every place that resolves on the date, or for 0 in its newest edition. The cache must
 * outlive them.
 * Returns 0, or -1 when out of memory. */
int places_stand(struct place_cache *cache, const char *home, long date, struct places *places);

/* An edition changes what it follows; a model that none of them follows is only their
 * stock. Where no model follows another, each is an edition. */
bool places_is_edition(const struct places *places, const struct profile *profile);

void places_free(struct places *places);

#endif
