/* case_change.h - a whole job with some facts changed, each at its place.
 * Internal to the room.
 *
 * A place is a path ("roof.slopes[2].pitch", counting from 1) of at most JSON_DEEPEST steps.
 */
#ifndef EAVEMARK_PROVE_CASE_CHANGE_H
#define EAVEMARK_PROVE_CASE_CHANGE_H

#include <cjson/cJSON.h>
#include <stdbool.h>

/* What was changed, to be made again: a tenth of the room of the job itself. */
struct case_change {
    const char *path;
    const char *json; /* the value there; NULL: nothing is */
    struct case_change *next;
};

enum case_change_end { CHANGE_DONE, CHANGE_CANNOT, CHANGE_NO_MEMORY };

/* Why a change cannot be made, terminated. */
struct case_change_why {
    char text[700];
};

/* A place found in a job. */
struct case_place {
    cJSON *parent, *old; /* old: NULL if there is nothing */
    char name[80];       /* of a member; of an item of a list the index, from 0, or -1 */
    int index;
};

/* Finds it; groups on the way are made if asked. */
enum case_change_end case_change_find(cJSON *job, const char *path, bool make,
                                      struct case_place *place, struct case_change_why *why);

/* Puts a value there, which is taken over whatever comes of it. An item one past the end of a
 * list is appended. */
enum case_change_end case_change_put(const struct case_place *place, const char *path, cJSON *value,
                                     struct case_change_why *why);

/* Takes out the whole of it: a fact, a group, an item of a list. */
enum case_change_end case_change_remove(cJSON *job, const char *path, struct case_change_why *why);

/* A copy of base with changes that could be made before; to be freed. NULL when out of memory. */
cJSON *case_change_all(const cJSON *base, const struct case_change *first);

#endif
