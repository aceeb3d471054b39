/* place_made.h - a place as it was read, written down as bytes and taken up again.
 *
 * The bytes hold the blocks of a place and all that hangs on them, but not its sources.
 * Texts are not copied when they are taken up: they point into the bytes, which therefore
 * outlast the place. The bytes are the build's own (made.h), and are not mistrusted.
 */
#ifndef EAVEMARK_PROFILE_PLACE_MADE_H
#define EAVEMARK_PROFILE_PLACE_MADE_H

#include "profile/place.h"
#include "profile/place_shape.h"

#include <stdbool.h>
#include <stddef.h>

/* The bytes of the place, for the caller to free; NULL when out of memory, or for a place
 * that cannot be written down. */
char *place_made_write(const struct place *place, size_t *length);

/* Takes up the blocks as they stand in the bytes. False when out of memory. */
bool place_made_take(const char *bytes, struct arena *arena, struct place *place);

/* The same of any struct, by its shape; what the bytes do not say is zero. */
char *place_made_write_as(const void *base, const struct shape *shape, size_t *length);
bool place_made_take_as(const char *bytes, struct arena *arena, void *base,
                        const struct shape *shape);

/* Takes up the place whose source was read, if it and every part of it are to the byte as
 * the build had them, and lists the parts as sources. False when they are not, when nothing
 * was made, or when out of memory: then the place is to be read from its files. */
bool place_made_read(struct place *place, const char *home, struct arena *arena,
                     struct sources *sources);

#endif
