/* made.h - what the build made of the packed files, so that a start need not make it anew.
 *
 * The build lets the engine read the home that it packs (engine/packing/make_home.c), and
 * packs with it: each place as it was read, the list of all places, each rule file as Lua compiled
 * it, and the fingerprint of the files under each law. All of it stands for bytes: it serves files
 * that are to the byte the packed ones (source.packed), in whatever home they lie. What is
 * changed, added or taken away is read, looked through and hashed as before.
 *
 * Lua does not look compiled chunks over. These come from no file, folder or job: they
 * stand in the program, compiled by its own build from the sources beside them. A Lua
 * library of another release than the one that compiled them is handed none.
 */
#ifndef EAVEMARK_PROFILE_MADE_H
#define EAVEMARK_PROFILE_MADE_H

#include "base/home_files.h"
#include "profile/home.h"

#include <stdbool.h>
#include <stdint.h>

/* The folders of what was made; the paths below them are those of the sources. */
#define MADE_CODE "code"     /* compiled rule files */
#define MADE_PLACE "place"   /* place_made.h */
#define MADE_FIELDS "fields" /* judge/fields_made.h */
/* Lines of made_key in 16 hex digits, a space, and the fingerprint. */
#define MADE_FINGERPRINTS "fingerprints"
#define MADE_PLACES "places" /* the list of all, place_list_made.h */
#define MADE_BY "lua"        /* which release of Lua compiled */

/* What was made of the source in that folder. False when it is not as packed, or nothing
 * was made of it. */
bool made_find(const struct source *source, const char *folder, struct packed_file *made);

/* What was made of the home as a whole. False when it is another than the home inside, or nothing
 * was made. */
bool made_of_home(const char *home, const char *name, struct packed_file *made);

/* The fingerprint of these sources, sorted by path, into out. False when it was not made. */
bool made_fingerprint(const struct sources *sources, char out[65]);

/* Tells lists of paths apart. */
uint64_t made_key(const struct sources *sources);

#endif
