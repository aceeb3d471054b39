/* place_zone.h - the parts of a place by its own map, as its profile has them. Internal to
 * the room. */
#ifndef EAVEMARK_PROFILE_PLACE_ZONE_H
#define EAVEMARK_PROFILE_PLACE_ZONE_H

#include "profile/place.h"
#include "profile/profile.h"

/* Lays the zones of the blocks, the nearest first, into the profile: a nearer place's of one
 * name counts. */
void place_zones_lay(struct profile *profile, const struct block *const *blocks,
                     const struct place *const *places, size_t depth);

#endif
