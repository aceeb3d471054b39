/* watched.h - telling when a job, its shop sheet, a rule or a profile is saved (inotify).
 *
 * Folders are watched, not files: an editor that writes a new file and renames
 * it into place, or deletes and recreates it, leaves a watch on the old one
 * blind.
 */
#ifndef EAVEMARK_COMMAND_WATCHED_H
#define EAVEMARK_COMMAND_WATCHED_H

#include <limits.h>
#include <stdbool.h>
#include <stddef.h>

enum { WATCHED_MOST = 512 };

struct watched_folder {
    int handle;  /* inotify's */
    int purpose; /* what in it is of interest */
};

struct watched {
    int handle;
    char job_folder[PATH_MAX], job_name[NAME_MAX + 1];
    const char *shop;              /* the sheet handed over, or NULL */
    char sheet_name[NAME_MAX + 1]; /* the sheet that is gone by; "": none */
    const char *home;
    struct watched_folder folders[WATCHED_MOST];
    size_t count;
    char changed[NAME_MAX + 1]; /* the last file of interest that changed */
};

/* Starts watching the job's folder, that of the shop sheet (the one handed over, or with NULL
 * the one that the job names), and rules/ and jurisdictions/ of the home.
 * -1 with errno set when it cannot. */
int watched_open(struct watched *watched, const char *job, const char *shop, const char *home);

/* Looks again which folders there are: new ones are watched from now on. */
void watched_renew(struct watched *watched);

/* Reads all that has happened; true if something of interest changed. */
bool watched_read(struct watched *watched);

void watched_close(struct watched *watched);

#endif
