/* place_list_made.h - the places of the home inside the program, as the build listed them.
 *
 * The build lists the places of the home that it packs and writes the list down (made.h): a
 * start need not take up every figure of every place to name them. It stands for the home
 * inside, which nobody can change, and for no folder.
 */
#ifndef EAVEMARK_PROFILE_PLACE_LIST_MADE_H
#define EAVEMARK_PROFILE_PLACE_LIST_MADE_H

#include "profile/place_list.h"
#include "profile/place_shape.h"

#include <stdbool.h>

/* Of struct place_list, but for its arena. */
extern const struct shape PLACE_LIST_SHAPE;

/* Takes up the list that was made of this home, into an empty one. False when none was made: the
 * places are to be read. When out of memory list->arena.failed says so. */
bool place_list_made_take(const char *home, struct place_list *list);

#endif
