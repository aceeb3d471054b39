#define _XOPEN_SOURCE 700

#include "base/folder_walk.h"

#include <dirent.h>
#include <errno.h>
#include <limits.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>

/* Hidden files are an editor's business. */
static int visible(const struct dirent *entry)
{
    return entry->d_name[0] != '.';
}

/* Not by the locale: the order must be the same on every machine. */
static int by_bytes(const struct dirent **a, const struct dirent **b)
{
    return strcmp((*a)->d_name, (*b)->d_name);
}

static bool is_link(const char *path)
{
    struct stat itself;
    return lstat(path, &itself) == 0 && S_ISLNK(itself.st_mode);
}

/* The folder itself may say so, so that each file need not be asked. */
static bool is_told_a_file(const struct dirent *entry)
{
#ifdef DT_REG
    return entry->d_type == DT_REG;
#else
    (void)entry;
    return false;
#endif
}

/* stat follows links. A linked folder is walked in a home, but refused where the folder is
 * a stranger's, who could lead the walk anywhere. Where one thing could be looked at, all in the
 * folder can: *looked. */
static bool walk_entry(const char *folder, const struct dirent *entry, int depth,
                       const struct folder_visit *visit, bool *looked)
{
    char path[PATH_MAX];
    struct stat about;
    const int length = snprintf(path, sizeof(path), "%s/%s", folder, entry->d_name);
    if (length < 0 || (size_t)length >= sizeof(path))
        return visit->unread(visit->data, folder, ENAMETOOLONG);
    if (*looked && is_told_a_file(entry))
        return visit->file(visit->data, path);
    if (stat(path, &about) != 0)
        return visit->unread(visit->data, path, errno);
    *looked = true;
    const bool file = S_ISREG(about.st_mode);
    if (S_ISDIR(about.st_mode) && visit->of_strangers && is_link(path))
        return visit->unread(visit->data, path, FOLDER_A_LINK);
    if (S_ISDIR(about.st_mode))
        return depth > 0 ? folder_walk(path, depth - 1, visit)
                         : visit->unread(visit->data, path, FOLDER_TOO_DEEP);
    if (!file && visit->of_strangers)
        return visit->unread(visit->data, path, FOLDER_NO_FILE);
    return !file || visit->file(visit->data, path);
}

/* `depth` bounds the recursion. */
bool folder_walk(const char *path, int depth, const struct folder_visit *visit)
{
    struct dirent **names = NULL;
    const int count = scandir(path, &names, visible, by_bytes);
    /* Every name is freed even when the visitor has had enough. */
    bool goes_on = count >= 0 || visit->unread(visit->data, path, errno), looked = false;
    for (int i = 0; i < count; i++) {
        goes_on = goes_on && walk_entry(path, names[i], depth, visit, &looked);
        free(names[i]);
    }
    free(names);
    return goes_on;
}
