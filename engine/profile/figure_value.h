/* figure_value.h - the value of a figure as a place writes it, made into what the figure
 * holds: a number from words ("1-1/2 in", "4:12", "25 %"), a set from what is added to the
 * one followed and left out of it. Internal to the room.
 */
#ifndef EAVEMARK_PROFILE_FIGURE_VALUE_H
#define EAVEMARK_PROFILE_FIGURE_VALUE_H

#include "base/arena.h"
#include "profile/place.h"
#include "profile/profile.h"

#include <stdbool.h>

enum { FIGURE_WHY = 320 };

/* Settles value, rival and bounds of the entry; followed is the figure that the entry
 * restates, or NULL for a new one. False when that cannot be: why then goes on after
 * "figure "...": a value below nothing, part of a whole, no day, words that are no figure
 * of that unit, a member that is there already. */
bool figure_value_settle(struct entry *entry, const struct figure *followed, struct arena *arena,
                         char why[FIGURE_WHY]);

#endif
