/* frozen_parts.h - what the files of frozen.h share: the objects that packs keep, by their
 * places in the list in Lua's registry, and which of them belong together. */
#ifndef EAVEMARK_SANDBOX_FROZEN_PARTS_H
#define EAVEMARK_SANDBOX_FROZEN_PARTS_H

#include "sandbox/frozen.h"

/* Registry: the list of objects, from 1. */
extern const char FROZEN_LIST_KEY;

/* The place that stands for the part which every function reaches. */
enum { FROZEN_COMMON = 0 };

/* Of each place. Objects that lead to one another, or share a variable, are of one part,
 * but for what is common. */
struct frozen_part {
    size_t up; /* a place of the same part, nearer to the one that stands for it, or that one */
    size_t first, last; /* of that one: the part's objects, counted from 1; 0: none */
    bool entered;       /* and a function of it was called */
};

/* Room for one more of what list holds; NULL when out of memory. */
void *frozen_list_room(void *list, size_t count, size_t *capacity, size_t size);

/* The place at which it was seen before; or 0, and from now on it is seen at this one. 0
 * also when out of memory: frozen->failed. */
size_t frozen_list_seen(struct frozen *frozen, const void *pointer, size_t place);

/* The place that stands for the part of this one. */
size_t frozen_list_part(struct frozen *frozen, size_t place);

/* From now on both are of one part, if neither is common. */
void frozen_list_join(struct frozen *frozen, size_t a, size_t b);

#endif
