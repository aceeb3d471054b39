#include "base/file.h"

#include <errno.h>
#include <fcntl.h>
#include <stdbool.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <unistd.h>

/* Reads to the end of the file, whatever size it is expected to have: a pipe has none, and a
 * file may grow while it is read. On success the caller owns *text, which is terminated. */
static enum file_result read_all(int handle, char **text, size_t *length, size_t expected,
                                 size_t limit)
{
    /* One byte for the terminator, and one to see the end by. */
    size_t capacity = expected + 2, used = 0;
    char *bytes = malloc(capacity);
    if (bytes == NULL)
        return FILE_OUT_OF_MEMORY;
    for (;;) {
        /* One byte is kept for the terminator. */
        if (used + 1 == capacity) {
            char *more = realloc(bytes, capacity * 2);
            if (more == NULL) {
                free(bytes);
                return FILE_OUT_OF_MEMORY;
            }
            bytes = more;
            capacity *= 2;
        }
        const ssize_t got = read(handle, bytes + used, capacity - used - 1);
        if (got < 0 && errno == EINTR)
            continue;
        if (got < 0) {
            free(bytes);
            return FILE_UNREADABLE;
        }
        if (got == 0)
            break;
        used += (size_t)got;
        /* Looked at after each read: no more than one buffer past the limit is ever held. */
        if (used > limit) {
            free(bytes);
            return FILE_TOO_LARGE;
        }
    }
    bytes[used] = '\0';
    *text = bytes;
    *length = used;
    return FILE_READ;
}

/* Refuses what cannot be a job or rule file before a byte of it is read. A pipe or
 * terminal passes: read_all watches its size. */
static enum file_result check_kind(int handle, size_t limit, bool regular, size_t *expected)
{
    struct stat about;
    if (fstat(handle, &about) != 0)
        return FILE_UNREADABLE;
    if (S_ISDIR(about.st_mode) || S_ISBLK(about.st_mode) || (regular && !S_ISREG(about.st_mode)))
        return FILE_NOT_A_FILE;
    if (S_ISREG(about.st_mode) && (unsigned long long)about.st_size > limit)
        return FILE_TOO_LARGE;
    /* Some systems tell no size of what can be read all the same. */
    *expected = S_ISREG(about.st_mode) && about.st_size > 0 ? (size_t)about.st_size
                                                            : (size_t)64 * 1024;
    return FILE_READ;
}

/* Of what was opened, or could not be. */
static enum file_result read_opened(int handle, char **text, size_t *length, size_t limit,
                                    bool regular)
{
    if (handle < 0)
        return errno == ENOENT || errno == ENOTDIR ? FILE_MISSING : FILE_UNREADABLE;
    size_t expected = 0;
    enum file_result result = check_kind(handle, limit, regular, &expected);
    if (result == FILE_READ)
        result = read_all(handle, text, length, expected, limit);
    return result;
}

/* "-" is standard input, which is not ours to close. */
enum file_result file_read(char **text, size_t *length, const char *path, size_t limit)
{
    const bool standard_input = strcmp(path, "-") == 0;
    const int handle = standard_input ? STDIN_FILENO : open(path, O_RDONLY | O_CLOEXEC);
    const enum file_result result = read_opened(handle, text, length, limit, false);
    if (handle >= 0 && !standard_input)
        close(handle);
    return result;
}

enum file_result file_read_regular(char **text, size_t *length, const char *path, size_t limit)
{
    /* O_NONBLOCK: opening a pipe would wait for who writes into it. */
    const int handle = open(path, O_RDONLY | O_CLOEXEC | O_NONBLOCK);
    const enum file_result result = read_opened(handle, text, length, limit, true);
    if (handle >= 0)
        close(handle);
    return result;
}

/* Does what is left to be read begin with these bytes? */
static bool reads_as(int handle, const char *bytes, size_t length)
{
    char piece[16 * 1024];
    for (size_t at = 0; at < length;) {
        const size_t left = length - at;
        const ssize_t got = read(handle, piece, left < sizeof(piece) ? left : sizeof(piece));
        if (got < 0 && errno == EINTR)
            continue;
        if (got <= 0 || memcmp(piece, bytes + at, (size_t)got) != 0)
            return false;
        at += (size_t)got;
    }
    return true;
}

bool file_is(int handle, const char *bytes, size_t length)
{
    struct stat about;
    return fstat(handle, &about) == 0 && S_ISREG(about.st_mode) && about.st_size >= 0
           && (unsigned long long)about.st_size == length && reads_as(handle, bytes, length);
}

/* The caller's to free; NULL for NULL or when out of memory. */
char *file_folder(const char *path)
{
    const char *slash = path == NULL ? NULL : strrchr(path, '/');
    return path == NULL    ? NULL
           : slash == NULL ? strdup(".")
                           : strndup(path, (size_t)(slash - path));
}
