/* vouch.h - how far a figure is vouched for, and what a place's own reading of a book
 * changes in that. It lifts doubts and never a value.
 */
#ifndef EAVEMARK_PROFILE_VOUCH_H
#define EAVEMARK_PROFILE_VOUCH_H

#include "profile/profile.h"

/* Why nobody vouches for the figure here: it is borrowed, or the book is not sure to bind,
 * or it was recalled or read in a sister text only. NULL when somebody does; common practice
 * is no law and needs nobody. */
const char *vouch_lacks(const struct figure *figure);

/* Is the figure of this topic ("deck"), or this figure, or a row of it? */
bool vouch_names(const char *topic, const char *figure);

#endif
