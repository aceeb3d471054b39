#include "base/home_folder.h"

#include <dirent.h>
#include <errno.h>
#include <limits.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>

/* Sets full to the full path, when it lies inside the home; false otherwise
 * (errno set, or 0 when it leads outside). Takes no memory: being out of it
 * must not look like a file that is not there. */
static bool resolve(const char *home, const char *path, char full[PATH_MAX])
{
    char joined[PATH_MAX], root[PATH_MAX];
    const int length = snprintf(joined, sizeof(joined), "%s/%s", home, path);
    if (length < 0 || (size_t)length >= sizeof(joined)) {
        errno = ENAMETOOLONG;
        return false;
    }
    if (realpath(home, root) == NULL || realpath(joined, full) == NULL)
        return false;
    /* Both are real paths: a link that leads out was followed by now. */
    const size_t n = strlen(root);
    if (strncmp(full, root, n) == 0 && (full[n] == '/' || strcmp(root, "/") == 0))
        return true;
    errno = 0;
    return false;
}

bool home_folder_has(const char *home, const char *path)
{
    char full[PATH_MAX];
    struct stat about;
    return resolve(home, path, full) && stat(full, &about) == 0 && S_ISREG(about.st_mode);
}

enum file_result home_folder_read(char **text, size_t *length, const char *home, const char *path,
                                  size_t limit)
{
    char full[PATH_MAX];
    if (!resolve(home, path, full)) {
        switch (errno) {
        case 0:
            return FILE_OUTSIDE;
        case ENOMEM:
            return FILE_OUT_OF_MEMORY;
        case ENOENT:
            return FILE_MISSING;
        default:
            return FILE_UNREADABLE;
        }
    }
    /* Opening a pipe would wait for someone to write into it. */
    struct stat about;
    if (stat(full, &about) != 0 || !S_ISREG(about.st_mode))
        return FILE_NOT_A_FILE;
    return file_read(text, length, full, limit);
}

static bool ends_in(const char *name, const char *ending)
{
    const size_t n = strlen(name), m = strlen(ending);
    return n > m && strcmp(name + n - m, ending) == 0;
}

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

/* A subfolder that cannot be read is reported, after what is beside it was visited.
 * `depth` bounds the recursion. */
int home_folder_each(const char *home, const char *folder, const char *ending, int depth,
                     void (*visit)(void *data, const char *path), void *data)
{
    char joined[PATH_MAX];
    snprintf(joined, sizeof(joined), "%s/%s", home, folder);
    struct dirent **names = NULL;
    const int count = scandir(joined, &names, visible, by_bytes);
    if (count < 0)
        return -1;
    int why = 0;
    for (int i = 0; i < count; i++) {
        char path[PATH_MAX], full[PATH_MAX];
        struct stat about;
        const int n = snprintf(path, sizeof(path), "%s/%s", folder, names[i]->d_name);
        const int m = snprintf(full, sizeof(full), "%s/%s", joined, names[i]->d_name);
        free(names[i]);
        if (n < 0 || m < 0 || (size_t)n >= sizeof(path) || (size_t)m >= sizeof(full)
            || stat(full, &about) != 0)
            continue;
        if (S_ISDIR(about.st_mode) && depth > 0) {
            if (home_folder_each(home, path, ending, depth - 1, visit, data) != 0)
                why = errno;
        } else if (S_ISREG(about.st_mode) && ends_in(path, ending)) {
            visit(data, path);
        }
    }
    free(names);
    errno = why;
    return why == 0 ? 0 : -1;
}
