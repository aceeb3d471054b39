/* page_home.h - the home inside a page: the pack that came with it, and files laid over it. */
#ifndef EAVEMARK_PAGE_HOME_H
#define EAVEMARK_PAGE_HOME_H

#include <stdbool.h>
#include <stddef.h>

/* The home from now on: a pack (base/pack.h), which is taken over. */
void page_home_set(char *bytes, size_t length);

/* What the build made of that pack (profile/made.h); the bytes stay where they are. */
void page_home_set_made(const char *bytes, size_t length);

/* Puts a file in its place in the pack, instead of one of that path. False when out of
 * memory. What was read from the home points into it: no handle may be open. */
bool page_home_lay_over(const char *path, const char *text, size_t length);

#endif
