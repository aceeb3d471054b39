/* edited_home.h - a home with one place's file replaced: the law as somebody is about to
 * write it, without touching what is in force.
 */
#ifndef EAVEMARK_COMMAND_EDITED_HOME_H
#define EAVEMARK_COMMAND_EDITED_HOME_H

#include <stdbool.h>

/* Copies the home into a folder of its own and puts file in the place of id's. The
 * folder's name, to be given to edited_home_remove; NULL, having complained. */
char *edited_home_make(const char *home, const char *id, const char *file);

/* Removes the folder and frees its name; NULL is nothing. */
void edited_home_remove(char *folder);

/* The place that a file states first: jurisdiction "ID". To be freed; NULL, having
 * complained, when it states none or cannot be read. */
char *edited_home_place(const char *file);

#endif
