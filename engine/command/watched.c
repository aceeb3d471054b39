#include "command/watched.h"

#include "base/file.h"
#include "base/text.h"

#include <dirent.h>
#include <errno.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/inotify.h>
#include <sys/stat.h>
#include <unistd.h>

enum { DEEPEST = 6, JOB_MOST = 64 * 1024 * 1024 };

/* What is of interest in a folder; one folder may serve several purposes. */
enum purpose {
    HAS_JOB = 1,      /* the file job_name */
    HAS_TARGET = 2,   /* what the job, a symbolic link, leads to */
    HAS_RULES = 4,    /* rule and profile files */
    HAS_PLACES = 8,   /* folders of more of them */
    HAS_SHEET = 32,   /* the shop sheet, sheet_name */
    HAS_FOLDERS = 16, /* the home itself: rules/ and jurisdictions/ */
};

enum {
    EVENTS = IN_CLOSE_WRITE | IN_MOVED_TO | IN_MOVED_FROM | IN_CREATE | IN_DELETE | IN_ONLYDIR,
};

/* A folder that cannot be watched is passed over: it may not be there yet. inotify gives
 * one handle for one folder, by whatever path. */
static void add_folder(struct watched *watched, const char *path, int purpose)
{
    const int handle = inotify_add_watch(watched->handle, path, EVENTS);
    if (handle < 0)
        return;
    for (size_t i = 0; i < watched->count; i++) {
        if (watched->folders[i].handle == handle) {
            watched->folders[i].purpose |= purpose;
            return;
        }
    }
    if (watched->count < WATCHED_MOST)
        watched->folders[watched->count++] = (struct watched_folder){handle, purpose};
}

static bool join(char out[PATH_MAX], const char *folder, const char *name)
{
    const int length = snprintf(out, PATH_MAX, "%s/%s", folder, name);
    return length > 0 && length < PATH_MAX;
}

/* A folder and those in it. */
static void add_tree(struct watched *watched, const char *path, int depth)
{
    struct dirent *entry;
    add_folder(watched, path, HAS_RULES | HAS_PLACES);
    DIR *folder = depth > 0 ? opendir(path) : NULL;
    while (folder != NULL && (entry = readdir(folder)) != NULL) {
        char below[PATH_MAX];
        struct stat about;
        if (entry->d_name[0] != '.' && join(below, path, entry->d_name) && stat(below, &about) == 0
            && S_ISDIR(about.st_mode))
            add_tree(watched, below, depth - 1);
    }
    if (folder != NULL)
        closedir(folder);
}

/* The folder that a linked job really is in: it is saved there. */
static void add_target(struct watched *watched)
{
    char path[PATH_MAX];
    char *real = join(path, watched->job_folder, watched->job_name) ? realpath(path, NULL) : NULL;
    char *slash = real == NULL ? NULL : strrchr(real, '/');
    if (slash != NULL && strcmp(slash + 1, watched->job_name) == 0) {
        *slash = '\0';
        add_folder(watched, slash == real ? "/" : real, HAS_JOB);
    } else if (slash != NULL) {
        *slash = '\0';
        add_folder(watched, slash == real ? "/" : real, HAS_TARGET);
    }
    free(real);
}

/* The folder of a file that is saved under the sheet's name. */
static void add_folder_of_sheet(struct watched *watched, const char *path)
{
    char folder[PATH_MAX];
    const char *slash = strrchr(path, '/');
    if (strcmp(slash == NULL ? path : slash + 1, watched->sheet_name) != 0
        || snprintf(folder, sizeof(folder), "%.*s", slash == NULL ? 1 : (int)(slash - path),
                    slash == NULL ? "." : path)
               >= (int)sizeof(folder))
        return;
    add_folder(watched, folder[0] == '\0' ? "/" : folder, HAS_SHEET);
}

static void watch_sheet(struct watched *watched, const char *path)
{
    const char *slash = strrchr(path, '/');
    const char *name = slash == NULL ? path : slash + 1;
    const size_t length = strlen(name);
    watched->sheet_name[0] = '\0';
    if (length >= sizeof(watched->sheet_name))
        return; /* no file has such a name */
    memcpy(watched->sheet_name, name, length + 1);
    char *real = realpath(path, NULL); /* a link to a sheet of the same name elsewhere */
    add_folder_of_sheet(watched, path);
    if (real != NULL)
        add_folder_of_sheet(watched, real);
    free(real);
}

/* What stands behind "shop" in a job. Where that is not what the job means, a folder is
 * watched for nothing. */
static bool name_of_sheet(const char *text, char name[NAME_MAX + 1])
{
    static const char KEY[] = "\"shop\"";
    const char *at = strstr(text, KEY);
    at = at == NULL ? NULL : at + strlen(KEY);
    at = at == NULL ? NULL : at + strspn(at, " \t\r\n:");
    const size_t length = at == NULL || *at != '"' ? 0 : strcspn(at + 1, "\"");
    if (length == 0 || length > NAME_MAX)
        return false;
    memcpy(name, at + 1, length);
    name[length] = '\0';
    return true;
}

/* The sheet handed over, or the one that the job names now, below its own folder. */
static void add_sheet(struct watched *watched)
{
    char job[PATH_MAX], sheet[PATH_MAX], name[NAME_MAX + 1];
    char *text = NULL;
    size_t length = 0;
    if (watched->shop != NULL) {
        watch_sheet(watched, watched->shop);
        return;
    }
    if (!join(job, watched->job_folder, watched->job_name)
        || file_read(&text, &length, job, JOB_MOST) != FILE_READ)
        return;
    if (name_of_sheet(text, name) && join(sheet, watched->job_folder, name))
        watch_sheet(watched, sheet);
    free(text);
}

void watched_renew(struct watched *watched)
{
    char path[PATH_MAX];
    add_folder(watched, watched->job_folder, HAS_JOB);
    add_target(watched);
    add_sheet(watched);
    add_folder(watched, watched->home, HAS_FOLDERS);
    if (join(path, watched->home, "rules"))
        add_folder(watched, path, HAS_RULES);
    if (join(path, watched->home, "jurisdictions"))
        add_tree(watched, path, DEEPEST);
}

/* Folder and name of the job; a bare name lies in ".". */
static int split_path(struct watched *watched, const char *job)
{
    const char *slash = strrchr(job, '/');
    const char *name = slash == NULL ? job : slash + 1;
    const size_t length = slash == NULL ? 0 : slash == job ? 1 : (size_t)(slash - job);
    if (strlen(name) > NAME_MAX || length >= PATH_MAX) {
        errno = ENAMETOOLONG;
        return -1;
    }
    snprintf(watched->job_folder, PATH_MAX, "%.*s", slash == NULL ? 1 : (int)length,
             slash == NULL ? "." : job);
    snprintf(watched->job_name, sizeof(watched->job_name), "%s", name);
    return 0;
}

int watched_open(struct watched *watched, const char *job, const char *shop, const char *home)
{
    *watched = (struct watched){.handle = -1, .shop = shop, .home = home};
    if (split_path(watched, job) != 0)
        return -1;
    watched->handle = inotify_init1(IN_NONBLOCK | IN_CLOEXEC);
    if (watched->handle < 0)
        return -1;
    watched_renew(watched);
    if (watched->count > 0)
        return 0;
    const int why = errno;
    watched_close(watched);
    errno = why;
    return -1;
}

/* Cases do not bear on a check; hidden files are an editor's own. */
static bool is_rule_file(const char *name)
{
    return name[0] != '.' && text_ends_in(name, ".lua") && !text_ends_in(name, ".cases.lua");
}

static bool is_of_interest(const struct watched *watched, const struct inotify_event *event,
                           int purpose)
{
    const bool folder = (event->mask & IN_ISDIR) != 0;
    const char *name = event->len > 0 ? event->name : "";
    if ((purpose & HAS_JOB) != 0 && !folder && strcmp(name, watched->job_name) == 0)
        return true;
    if ((purpose & HAS_SHEET) != 0 && !folder && strcmp(name, watched->sheet_name) == 0)
        return true;
    if ((purpose & HAS_TARGET) != 0 && !folder)
        return true;
    if ((purpose & HAS_RULES) != 0 && !folder && is_rule_file(name))
        return true;
    if ((purpose & HAS_PLACES) != 0 && folder && name[0] != '.')
        return true;
    return (purpose & HAS_FOLDERS) != 0 && folder
           && (strcmp(name, "rules") == 0 || strcmp(name, "jurisdictions") == 0);
}

/* One event; true if it is of interest. */
static bool note_event(struct watched *watched, const struct inotify_event *event)
{
    int purpose = 0;
    if ((event->mask & IN_Q_OVERFLOW) != 0) /* something was missed */
        return true;
    for (size_t i = 0; i < watched->count; i++) {
        if (watched->folders[i].handle != event->wd)
            continue;
        purpose = watched->folders[i].purpose;
        if ((event->mask & IN_IGNORED) != 0) /* the folder is gone, and its watch */
            watched->folders[i] = watched->folders[--watched->count];
        break;
    }
    /* A folder that went away may have held the job. */
    if ((event->mask & IN_IGNORED) != 0 || !is_of_interest(watched, event, purpose))
        return (event->mask & IN_IGNORED) != 0 && purpose != 0;
    snprintf(watched->changed, sizeof(watched->changed), "%s", event->len > 0 ? event->name : "");
    return true;
}

bool watched_read(struct watched *watched)
{
    /* Room for many events at once; each begins as an event does. */
    union {
        struct inotify_event event;
        char bytes[16384];
    } buffer;
    bool any = false;
    for (ssize_t length; (length = read(watched->handle, &buffer, sizeof(buffer))) > 0;) {
        for (ssize_t at = 0; at < length;) {
            const struct inotify_event *event = (const void *)(buffer.bytes + at);
            any = note_event(watched, event) || any;
            at += (ssize_t)(sizeof(*event) + event->len);
        }
    }
    return any;
}

void watched_close(struct watched *watched)
{
    if (watched->handle >= 0)
        close(watched->handle);
    watched->handle = -1;
}
