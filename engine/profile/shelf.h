/* shelf.h - places as written, each read once however many profiles are made of it.
 *
 * Most places follow the same few models. What is on the shelf stays as it was first
 * read until shelf_free; profiles made from it point into it and must be freed before.
 * A place that could not be read is not kept.
 */
#ifndef EAVEMARK_PROFILE_SHELF_H
#define EAVEMARK_PROFILE_SHELF_H

#include "profile/place.h"

struct shelved;

/* All zero: empty. For one home folder. */
struct shelf {
    struct shelved *first;
};

/* The place, as place_load gives it. The files it was read from are added to sources,
 * in the caller's arena. NULL with problems as place_load. */
const struct place *shelf_place(struct shelf *shelf, const char *home, const char *id,
                                struct arena *arena, struct sources *sources,
                                struct problems *problems);

void shelf_free(struct shelf *shelf);

#endif
