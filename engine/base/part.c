#include "base/part.h"

#include "base/text.h"

#include <ctype.h>
#include <dirent.h>
#include <errno.h>
#include <fcntl.h>
#include <signal.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

/* The process in a name such as "BASE.123-0.part"; 0 when it is no part of base. */
static long writer_of(const char *name, const char *base)
{
    const size_t length = strlen(base);
    if (strncmp(name, base, length) != 0 || name[length] != '.'
        || !isdigit((unsigned char)name[length + 1]))
        return 0;
    char *end;
    errno = 0;
    const long writer = strtol(name + length + 1, &end, 10);
    if (errno != 0 || writer <= 0 || *end != '-')
        return 0;
    const size_t digits = strspn(end + 1, "0123456789");
    return digits > 0 && strcmp(end + 1 + digits, ".part") == 0 ? writer : 0;
}

/* Nobody holds it: neither a process of this machine, nor, by the lock, of another. */
static bool is_dead(const char *path, long writer)
{
    /* EPERM says that it lives and is somebody else's. */
    if (kill((pid_t)writer, 0) == 0 || errno != ESRCH)
        return false;
    struct stat about;
    const int handle = open(path, O_RDONLY | O_CLOEXEC | O_NOFOLLOW | O_NONBLOCK);
    if (handle < 0)
        return false;
    const bool dead = fstat(handle, &about) == 0 && S_ISREG(about.st_mode)
                      && flock(handle, LOCK_EX | LOCK_NB) == 0;
    close(handle);
    return dead;
}

/* Hands over each part of target whose program died, until visit has enough. */
static bool each_dead(const char *target, bool (*visit)(const char *path, void *data), void *data)
{
    const char *slash = strrchr(target, '/');
    const char *base = slash == NULL ? target : slash + 1;
    struct text folder = TEXT_EMPTY;
    text_add_n(&folder, target, (size_t)(base - target));
    text_add(&folder, ".");
    DIR *listing = folder.failed ? NULL : opendir(text_string(&folder));
    bool enough = false;
    for (const struct dirent *entry;
         !enough && listing != NULL && (entry = readdir(listing)) != NULL;) {
        const long writer = writer_of(entry->d_name, base);
        struct text path = TEXT_EMPTY;
        if (writer != 0)
            text_addf(&path, "%s/%s", text_string(&folder), entry->d_name);
        if (writer != 0 && !path.failed && is_dead(text_string(&path), writer))
            enough = visit(text_string(&path), data);
        text_free(&path);
    }
    if (listing != NULL)
        closedir(listing);
    text_free(&folder);
    return enough;
}

static bool remove_it(const char *path, void *data)
{
    (void)data;
    unlink(path);
    return false;
}

/* errno is the caller's: a failure to tidy up is no failure of what it does. */
void part_clean(const char *target)
{
    const int why = errno;
    each_dead(target, remove_it, NULL);
    errno = why;
}

/* Both names on one file: its program died after the link, before the part's name went. */
static bool is_same(const char *path, void *data)
{
    const struct stat *whole = data;
    struct stat part;
    return lstat(path, &part) == 0 && part.st_dev == whole->st_dev && part.st_ino == whole->st_ino;
}

bool part_was_left(const char *target)
{
    struct stat whole;
    return lstat(target, &whole) == 0 && each_dead(target, is_same, &whole);
}

int part_create(const char *target, char **name)
{
    int handle = -1;
    part_clean(target);
    /* Each attempt is another name. A file that is there, or a link somebody laid for us, is
     * never written through (O_EXCL). */
    errno = EEXIST;
    for (int attempt = 0; attempt < 100 && handle < 0 && errno == EEXIST; attempt++) {
        struct text path = TEXT_EMPTY;
        text_addf(&path, "%s.%ld-%d.part", target, (long)getpid(), attempt);
        if (path.failed) {
            errno = ENOMEM;
            return -1;
        }
        handle = open(path.bytes, O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
        if (handle < 0)
            free(path.bytes);
        else
            *name = path.bytes;
    }
    if (handle >= 0)
        (void)flock(handle, LOCK_EX | LOCK_NB); /* where there are no locks, the process tells */
    return handle;
}
