/* home_files.h - the door to the files of a home: in a folder, or inside the program.
 *
 * A home holds rules/ and jurisdictions/. HOME_INSIDE names the one that was packed into
 * the program when it was built: the same files under the same paths, so that everything
 * read from it is to the byte what the folder would have given. Any other home is a folder.
 */
#ifndef EAVEMARK_BASE_HOME_FILES_H
#define EAVEMARK_BASE_HOME_FILES_H

#include "base/file.h"
#include "base/pack.h"

#include <stdbool.h>
#include <stddef.h>

#define HOME_INSIDE ":inside:"

/* True for a home that nothing can be written to. */
bool home_files_inside(const char *home);

/* True if home/path is a regular file inside the home. */
bool home_files_has(const char *home, const char *path);

/* As file_read; FILE_OUTSIDE for a path that leads out of the home, by a link or "..". */
enum file_result home_files_read(char **text, size_t *length, const char *home, const char *path,
                                 size_t limit);

/* True if home/path is a file inside the home, which is a folder, of exactly these bytes: read
 * without being kept. */
bool home_files_same(const char *home, const char *path, const char *bytes, size_t length);

/* A file of the home inside, where it stands in the program. */
enum file_result home_files_find_inside(const char *path, struct packed_file *file);

/* Calls visit(data, path) for each file in home/folder whose name ends in ending, in
 * pack_order, going at most `depth` folders deeper; hidden ones are passed over. Returns
 * -1, with errno set, when out of memory (ENOMEM) or when the folder cannot be read. */
int home_files_each(const char *home, const char *folder, const char *ending, int depth,
                    void (*visit)(void *data, const char *path), void *data);

/* Calls visit(data, path, why) for each folder or file below home/folder that home_files_each
 * passes over because it cannot be looked at: why is an errno, or FOLDER_TOO_DEEP
 * (folder_walk.h) for a folder deeper than `depth`. */
void home_files_unread(const char *home, const char *folder, int depth,
                       void (*visit)(void *data, const char *path, int why), void *data);

/* The files packed into the program: made by the build (engine/packing/pack_home.c). */
struct pack home_files_packed(void);

/* What the build made of them (profile/made.h); no files where it made nothing. */
struct pack home_files_made(void);

#endif
