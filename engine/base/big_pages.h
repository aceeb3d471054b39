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

/* For a program, before its first malloc: what malloc hands out comes in big pages too, and stays
 * with the program until it ends. */
void big_pages_for_malloc(void);

#endif
