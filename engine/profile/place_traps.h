/* place_traps.h - what Lua takes in silence in another sense than was meant, found in the
 * text of a place's file: a name given twice in one table, of which the last would count,
 * and figures written as arithmetic, 1-1/2, which would be reckoned.
 */
#ifndef EAVEMARK_PROFILE_PLACE_TRAPS_H
#define EAVEMARK_PROFILE_PLACE_TRAPS_H

#include "base/problem.h"
#include "profile/home.h"

/* Adds a problem for each. */
void place_traps(const struct source *source, struct problems *problems);

#endif
