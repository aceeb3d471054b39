/* folder_walk.h - every file below a folder, in the same order on every machine. */
#ifndef EAVEMARK_BASE_FOLDER_WALK_H
#define EAVEMARK_BASE_FOLDER_WALK_H

#include <stdbool.h>

/* Why something was not looked at, besides an errno. */
enum { FOLDER_TOO_DEEP = 0, FOLDER_A_LINK = -1, FOLDER_NO_FILE = -2 };

/* Each returns false to end the walk. */
struct folder_visit {
    bool (*file)(void *data, const char *path);
    /* What could not be looked at: a folder or file, and its errno; or FOLDER_TOO_DEEP for a
     * folder that lies deeper than the walk goes. */
    bool (*unread)(void *data, const char *path, int why);
    void *data;
    /* What lies there may be anybody's. A link to a folder may lead in a circle, a pipe would
     * be waited for without end: both are unread. Otherwise such links are followed, and what
     * is neither file nor folder is passed over. */
    bool of_strangers;
};

/* Visits the files of a folder and of those in it, at most `depth` folders deeper, sorted by
 * name; hidden ones are passed over. Returns false when a visit ended it. Takes no memory of
 * its own. */
bool folder_walk(const char *path, int depth, const struct folder_visit *visit);

#endif
