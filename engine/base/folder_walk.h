/* folder_walk.h - every file below a folder, in the same order on every machine. */
#ifndef EAVEMARK_BASE_FOLDER_WALK_H
#define EAVEMARK_BASE_FOLDER_WALK_H

#include <stdbool.h>

/* Each returns false to end the walk. */
struct folder_visit {
    bool (*file)(void *data, const char *path);
    /* What could not be looked at: a folder or file, and its errno; 0 for a folder that lies
     * deeper than the walk goes. */
    bool (*unread)(void *data, const char *path, int why);
    void *data;
};

/* Visits the files of a folder and of those in it, at most `depth` folders deeper, sorted by
 * name; hidden ones are passed over, and what is neither file nor folder. Returns false when a
 * visit ended it. Takes no memory of its own. */
bool folder_walk(const char *path, int depth, const struct folder_visit *visit);

#endif
