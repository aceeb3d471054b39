#include "base/home_files.h"

#include "base/home_folder.h"

#include <errno.h>
#include <limits.h>
#include <stdlib.h>
#include <string.h>

bool home_files_inside(const char *home)
{
    return strcmp(home, HOME_INSIDE) == 0;
}

/* Takes back the last name of a path that has so many bytes. */
static size_t drop_name(const char *path, size_t length)
{
    while (length > 0 && path[length - 1] != '/')
        length--;
    return length > 0 ? length - 1 : 0;
}

/* The path as it stands in a pack: without "." and "..", as a folder would have it
 * resolved. */
static enum file_result make_plain(const char *path, char plain[PATH_MAX])
{
    size_t length = 0;
    while (*path != '\0') {
        const size_t name = strcspn(path, "/");
        if (name == 2 && memcmp(path, "..", 2) == 0) {
            /* Above the home there is nothing, as a folder refuses what leads outside. */
            if (length == 0)
                return FILE_OUTSIDE;
            length = drop_name(plain, length);
        } else if (name > 0 && !(name == 1 && path[0] == '.')) {
            if (length + name + 2 > PATH_MAX) {
                errno = ENAMETOOLONG;
                return FILE_UNREADABLE;
            }
            if (length > 0)
                plain[length++] = '/';
            memcpy(plain + length, path, name);
            length += name;
        }
        path += name + strspn(path + name, "/");
    }
    plain[length] = '\0';
    return FILE_READ;
}

/* A folder of the pack is the beginning of some file's path. */
static bool is_folder(const struct pack *pack, const char *path)
{
    const size_t length = strlen(path);
    const char *file;
    size_t at = 0, file_length;
    while (pack_next_path(pack, &at, &file, &file_length))
        if (file_length > length && file[length] == '/' && memcmp(file, path, length) == 0)
            return true;
    return length == 0;
}

enum file_result home_files_find_inside(const char *path, struct packed_file *file)
{
    char plain[PATH_MAX];
    const struct pack pack = home_files_packed();
    const enum file_result result = make_plain(path, plain);
    if (result != FILE_READ || pack_find(&pack, plain, file))
        return result;
    return is_folder(&pack, plain) ? FILE_NOT_A_FILE : FILE_MISSING;
}

/* A copy, as from a folder: the caller frees it. */
static enum file_result read_inside(char **text, size_t *length, const char *path, size_t limit)
{
    struct packed_file file;
    const enum file_result result = home_files_find_inside(path, &file);
    if (result != FILE_READ)
        return result;
    if (file.length > limit)
        return FILE_TOO_LARGE;
    char *copy = malloc(file.length + 1);
    if (copy == NULL)
        return FILE_OUT_OF_MEMORY;
    memcpy(copy, file.bytes, file.length);
    copy[file.length] = '\0';
    *text = copy;
    *length = file.length;
    return FILE_READ;
}

/* text_ends_in for a name that is not terminated. */
static bool ends_in(const char *name, size_t length, const char *ending)
{
    const size_t n = strlen(ending);
    return length > n && memcmp(name + length - n, ending, n) == 0;
}

/* Neither deeper than asked nor in a hidden folder. `below` is a path below the folder. */
static bool is_near(const char *below, size_t length, int depth)
{
    int slashes = 0;
    for (size_t i = 0; i < length; i++) {
        if (below[i] == '.' && (i == 0 || below[i - 1] == '/'))
            return false;
        slashes += below[i] == '/';
    }
    return slashes <= depth;
}

/* Paths of a pack are in order already (pack_order). A folder is there only by the files in it:
 * an empty one is none. */
static int each_inside(const char *folder, const char *ending, int depth,
                       void (*visit)(void *data, const char *path), void *data)
{
    const struct pack pack = home_files_packed();
    const size_t n = strlen(folder);
    const char *file;
    size_t at = 0, seen = 0, length;
    while (pack_next_path(&pack, &at, &file, &length)) {
        if (length <= n + 1 || memcmp(file, folder, n) != 0 || file[n] != '/')
            continue;
        seen++;
        if (!ends_in(file, length, ending) || !is_near(file + n + 1, length - n - 1, depth)
            || length >= PATH_MAX)
            continue;
        char path[PATH_MAX];
        memcpy(path, file, length);
        path[length] = '\0';
        visit(data, path);
    }
    errno = seen == 0 ? ENOENT : 0;
    return seen == 0 ? -1 : 0;
}

bool home_files_has(const char *home, const char *path)
{
    struct packed_file file;
    return home_files_inside(home) ? home_files_find_inside(path, &file) == FILE_READ
                                   : home_folder_has(home, path);
}

enum file_result home_files_read(char **text, size_t *length, const char *home, const char *path,
                                 size_t limit)
{
    return home_files_inside(home) ? read_inside(text, length, path, limit)
                                   : home_folder_read(text, length, home, path, limit);
}

bool home_files_same(const char *home, const char *path, const char *bytes, size_t length)
{
    return !home_files_inside(home) && home_folder_same(home, path, bytes, length);
}

int home_files_each(const char *home, const char *folder, const char *ending, int depth,
                    void (*visit)(void *data, const char *path), void *data)
{
    return home_files_inside(home) ? each_inside(folder, ending, depth, visit, data)
                                   : home_folder_each(home, folder, ending, depth, visit, data);
}

void home_files_unread(const char *home, const char *folder, int depth,
                       void (*visit)(void *data, const char *path, int why), void *data)
{
    if (!home_files_inside(home))
        home_folder_unread(home, folder, depth, visit, data);
}
