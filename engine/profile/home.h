/* home.h - the folder that holds rules/ and jurisdictions/, and what was read
 * from it.
 *
 * Every source read is kept, by its path below the home, so that a result can
 * name by one fingerprint exactly the files it rests on.
 */
#ifndef EAVEMARK_PROFILE_HOME_H
#define EAVEMARK_PROFILE_HOME_H

#include "base/arena.h"
#include "base/problem.h"

#include <stdbool.h>
#include <stddef.h>

struct source {
    const char *path; /* below the home: "rules/deck.lua" */
    const char *text; /* terminated */
    size_t length;
    bool packed; /* to the byte the file of this path packed into the program (made.h) */
    struct source *next;
};

/* The sources one check rests on; sorted by path when fingerprinted. */
struct sources {
    struct source *first;
    size_t count;
    const struct sources *before; /* for home_read_part; outlives these. May be NULL */
};

/* Reads home/path into the arena and adds it to sources (once). A path that
 * leads outside the home, through a link or "..", is refused. NULL, with a
 * problem of PROBLEM_RULES, when it cannot be read. */
const struct source *home_read(const char *home, const char *path, struct arena *arena,
                               struct sources *sources, struct problems *problems);

/* The same, but takes over what was read for those before: the editions of a model code are
 * columns of the same files. */
const struct source *home_read_part(const char *home, const char *path, struct arena *arena,
                                    struct sources *sources, struct problems *problems);

/* True if home/path is a regular file. */
bool home_has(const char *home, const char *path);

/* Calls visit(data, path) for each file in home/folder whose name ends in
 * ending, sorted by path, going at most `depth` folders deeper. Returns -1, with errno
 * set, when out of memory (ENOMEM) or when the folder cannot be read, and adds
 * no problem. */
int home_each(const char *home, const char *folder, const char *ending, int depth,
              void (*visit)(void *data, const char *path), void *data);

/* The id of a place that a file below jurisdictions/ is of: "us-ca/daly-city"; its length
 * in *length. NULL for what is no place: NAME.rules.lua, NAME.cases.lua and parts, which
 * for a model code lie in a folder of its own: model/irc/deck.lua. */
const char *home_place_id(const char *path, size_t *length);

/* Adds copies of a list's sources, not of what they hold, to another list. False when out of
 * memory. */
bool home_sources_add(struct sources *to, const struct source *from, struct arena *arena);

/* sha256 over path, length and bytes of every source, in path order: the
 * same files give the same text on every machine. out holds 64 hex digits. */
void home_fingerprint(struct sources *sources, char out[65]);

/* Line (from 1) on which needle first stands within the text, or 0: at line
 * `from` or below, not counting lines that are Lua comments. */
int home_source_line(const struct source *source, const char *needle, int from);

#endif
