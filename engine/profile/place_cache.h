/* place_cache.h - places as written, each read once however many profiles are made of it.
 *
 * Most places follow the same few models. What is in the cache stays as it was first
 * read until place_cache_free; profiles made from it point into it and must be freed before.
 * A place that could not be read is not kept.
 */
#ifndef EAVEMARK_PROFILE_PLACE_CACHE_H
#define EAVEMARK_PROFILE_PLACE_CACHE_H

#include "profile/place.h"

struct cached_place;

/* All zero: empty. For one home folder. */
struct place_cache {
    struct cached_place *first;
    const struct sources *parts; /* of the newest place that is made of parts, and those before */
};

/* The place, as place_load gives it. The files it was read from are added to sources,
 * in the caller's arena. NULL with problems as place_load. */
const struct place *place_cache_get(struct place_cache *cache, const char *home, const char *id,
                                    struct arena *arena, struct sources *sources,
                                    struct problems *problems);

void place_cache_free(struct place_cache *cache);

#endif
