#include "base/home_folder.h"

#include "base/folder_walk.h"
#include "base/text.h"

#include <errno.h>
#include <fcntl.h>
#include <limits.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <unistd.h>

#ifdef SYS_openat2
#include <linux/openat2.h>
#endif

/* Joins them to full. False when a part of the path is "." or "..", or hidden, or when it is too
 * long. */
static bool join_plainly(const char *home, const char *path, char full[PATH_MAX])
{
    const int length = snprintf(full, PATH_MAX, "%s/%s", home, path);
    if (length < 0 || length >= PATH_MAX || *path == '\0')
        return false;
    for (const char *part = full + strlen(home) + 1; part != NULL;) {
        const char *end = strchr(part, '/');
        if (*part == '.' || *part == '/' || *part == '\0')
            return false;
        part = end == NULL ? NULL : end + 1;
    }
    return true;
}

/* Opens home/path for reading when no part of it is a link, nor "." or "..": then it lies where
 * it seems to. -1 otherwise, and where the system cannot tell while it opens. */
static int open_plainly(const char *home, const char *path)
{
#ifdef SYS_openat2
    char full[PATH_MAX];
    struct open_how how = {.flags = O_RDONLY | O_CLOEXEC | O_NONBLOCK,
                           .resolve = RESOLVE_NO_SYMLINKS};
    if (join_plainly(home, path, full))
        return (int)syscall(SYS_openat2, AT_FDCWD, full, &how, sizeof(how));
#else
    (void)home, (void)path;
#endif
    return -1;
}

/* Sets full to home/path, when no part of the path is a link, or "." or "..": then it lies where
 * it seems to, and nothing need be followed. */
static bool lies_plainly(const char *home, const char *path, char full[PATH_MAX])
{
    char target[1];
    if (!join_plainly(home, path, full))
        return false;
    for (char *part = full + strlen(home) + 1; part != NULL;) {
        char *end = strchr(part, '/');
        if (end != NULL)
            *end = '\0';
        const bool link = readlink(full, target, sizeof(target)) >= 0 || errno != EINVAL;
        if (end != NULL)
            *end = '/';
        if (link)
            return false;
        part = end == NULL ? NULL : end + 1;
    }
    return true;
}

/* Sets full to the full path, when it lies inside the home; false otherwise
 * (errno set, or 0 when it leads outside). Takes no memory: being out of it
 * must not look like a file that is not there. */
static bool resolve(const char *home, const char *path, char full[PATH_MAX])
{
    char joined[PATH_MAX], root[PATH_MAX];
    if (lies_plainly(home, path, full))
        return true;
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
    /* Neither waits for who writes into a pipe, nor is fooled by one that takes the file's place
     * between a look and the opening. */
    return file_read_regular(text, length, full, limit);
}

bool home_folder_same(const char *home, const char *path, const char *bytes, size_t length)
{
    char full[PATH_MAX];
    int handle = open_plainly(home, path);
    if (handle < 0 && resolve(home, path, full))
        handle = open(full, O_RDONLY | O_CLOEXEC | O_NONBLOCK);
    const bool same = handle >= 0 && file_is(handle, bytes, length);
    if (handle >= 0)
        close(handle);
    return same;
}

/* Of a home: what is looked for, and what could not be looked at. */
struct looking {
    size_t prefix; /* of a path: the home and its "/" */
    const char *ending;
    void (*visit)(void *data, const char *path);
    void *data;
    int why;
};

/* Always goes on: every file of the home counts. */
static bool look_at_file(void *data, const char *path)
{
    const struct looking *look = data;
    if (text_ends_in(path, look->ending))
        look->visit(look->data, path + look->prefix);
    return true;
}

/* What lies beside it is visited all the same. A link that leads nowhere matters where it is
 * called like what is looked for. That some lies deeper than was asked for is no failure:
 * home_folder_unread tells it. */
static bool note_unread(void *data, const char *path, int why)
{
    struct looking *look = data;
    if (why != ENOENT || text_ends_in(path, look->ending))
        look->why = why == 0 ? look->why : why;
    return true;
}

int home_folder_each(const char *home, const char *folder, const char *ending, int depth,
                     void (*visit)(void *data, const char *path), void *data)
{
    char joined[PATH_MAX];
    struct stat about;
    struct looking look = {strlen(home) + 1, ending, visit, data, 0};
    const int length = snprintf(joined, sizeof(joined), "%s/%s", home, folder);
    if (length < 0 || (size_t)length >= sizeof(joined))
        look.why = ENAMETOOLONG;
    else if (stat(joined, &about) != 0)
        look.why = errno;
    else
        folder_walk(joined, depth, &(struct folder_visit){look_at_file, note_unread, &look, false});
    errno = look.why;
    return look.why == 0 ? 0 : -1;
}

/* Of a home: whom to tell of what cannot be looked at. */
struct telling {
    size_t prefix;
    void (*visit)(void *data, const char *path, int why);
    void *data;
};

static bool pass_file(void *data, const char *path)
{
    (void)data, (void)path;
    return true;
}

static bool tell_unread(void *data, const char *path, int why)
{
    const struct telling *telling = data;
    telling->visit(telling->data, path + telling->prefix, why);
    return true;
}

void home_folder_unread(const char *home, const char *folder, int depth,
                        void (*visit)(void *data, const char *path, int why), void *data)
{
    char joined[PATH_MAX];
    struct telling telling = {strlen(home) + 1, visit, data};
    const int length = snprintf(joined, sizeof(joined), "%s/%s", home, folder);
    if (length > 0 && (size_t)length < sizeof(joined))
        folder_walk(joined, depth, &(struct folder_visit){pass_file, tell_unread, &telling, false});
}
