/* file.h - reading whole files within a size limit, and where they lie. */
#ifndef EAVEMARK_BASE_FILE_H
#define EAVEMARK_BASE_FILE_H

#include <stdbool.h>
#include <stddef.h>

enum file_result {
    FILE_READ,
    FILE_MISSING,    /* does not exist */
    FILE_NOT_A_FILE, /* a directory or another non-file */
    FILE_TOO_LARGE,  /* over the limit; nothing of it was kept */
    FILE_UNREADABLE, /* errno says why */
    FILE_OUTSIDE,    /* leads out of the home it was looked for in; only of a home (home_files.h) */
    FILE_OUT_OF_MEMORY,
};

/* Reads path ("-" is standard input) into *text, terminated, to be freed by
 * the caller. A regular file over the limit is refused by its size, before
 * any of it is read; a stream as soon as it passes the limit. */
enum file_result file_read(char **text, size_t *length, const char *path, size_t limit);

/* The folder in which a path lies, "." where it names none. To be freed; NULL when out of
 * memory, or of NULL. */
char *file_folder(const char *path);

/* The same of a name that a stranger gave: only a regular file is read, and "-" is one
 * called so. A pipe that nobody writes to would be waited for without end. */
enum file_result file_read_regular(char **text, size_t *length, const char *path, size_t limit);

/* Is what was opened, and not read from yet, a regular file of exactly these bytes? Nothing of it
 * is kept. False also where it cannot be read: reading it tells why. */
bool file_is(int handle, const char *bytes, size_t length);

#endif
