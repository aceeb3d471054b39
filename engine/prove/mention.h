/* mention.h - where a figure's name stands in the text of rule files. */
#ifndef EAVEMARK_PROVE_MENTION_H
#define EAVEMARK_PROVE_MENTION_H

#include "profile/home.h"

#include <stdbool.h>

/* Does the file name the figure: as "slope.least.wood_shake", or by a
 * beginning that it adds to, as in "slope.least." .. kind? */
bool mention_in(const struct source *source, const char *name);

#endif
