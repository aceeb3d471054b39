/* part.h - a file while it is being written: "TARGET.PID-N.part" beside what it becomes.
 *
 * Its writer holds a lock on it for as long as the handle is open, so that what a killed
 * program left can be told from what is being written now.
 */
#ifndef EAVEMARK_BASE_PART_H
#define EAVEMARK_BASE_PART_H

#include <stdbool.h>

/* Removes what dead programs left beside target, then makes a new, empty part of it; its
 * name goes to *name, to be freed. Returns a handle to write to, or -1 with errno set. */
int part_create(const char *target, char **name);

/* True if target is there, and is the same file as the part of a program that died: it
 * had been given its name, but not all that belongs to it was done. */
bool part_was_left(const char *target);

/* Removes the parts of target that dead programs left. */
void part_clean(const char *target);

#endif
