/* big_pages.h - large blocks straight from the system, in big pages where it has them.
 *
 * Memory comes in pages of 4 KB, and the first touch of each is a trap into the system: that
 * costs ten times what is then done in it. Where the system can give 2 MB at a time it is
 * asked to; where it cannot, everything works the same, slower.
 */
#ifndef EAVEMARK_BASE_BIG_PAGES_H
#define EAVEMARK_BASE_BIG_PAGES_H

#include <stddef.h>

/* Zeroed, and taken from the system only where it is touched. NULL when refused. */
void *big_pages_take(size_t size);

/* With the size it was taken with. NULL is nothing. */
void big_pages_give_back(void *block, size_t size);

/* For a program that answers once and ends: what malloc hands out from now on comes in big pages
 * too. Not for one that goes on: what it has freed and takes again costs nothing anyway, and a
 * batch was slower by half with its memory in big pages, on the one machine where it was tried. */
void big_pages_for_malloc(void);

#endif
