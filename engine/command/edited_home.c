#define _XOPEN_SOURCE 700

#include "command/edited_home.h"

#include "base/file.h"
#include "base/home_files.h"
#include "base/place_id.h"
#include "base/text.h"
#include "command/command.h"

#include <errno.h>
#include <ftw.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>

enum {
    FILE_LARGEST = 4 * 1024 * 1024,
    FOLDERS_DEEPEST = 8,
    OPEN_AT_ONCE = 16,
    FILLED_IN = 6, /* letters at the end of a folder's name that mkdtemp chooses */
};

/* The copy under way. */
struct copying {
    const char *from, *to;
    bool failed;
};

/* Every folder above the file; those that are there stay. */
static bool make_folders(char *path, size_t begin)
{
    for (size_t at = begin; path[at] != '\0'; at++)
        if (path[at] == '/') {
            path[at] = '\0';
            const bool made = mkdir(path, 0700) == 0 || errno == EEXIST;
            path[at] = '/';
            if (!made)
                return false;
        }
    return true;
}

/* Nobody else can have put anything there: the folder is our own (mkdtemp). */
static bool write_file(const char *folder, const char *path, const char *text, size_t length)
{
    struct text full = TEXT_EMPTY;
    text_addf(&full, "%s/%s", folder, path);
    FILE *out = full.failed || !make_folders(full.bytes, strlen(folder) + 1)
                    ? NULL
                    : fopen(full.bytes, "w");
    bool written = out != NULL && fwrite(text, 1, length, out) == length;
    if (out != NULL)
        written = fclose(out) == 0 && written;
    text_free(&full);
    return written;
}

/* For home_files_each, which cannot be stopped: after a failure the rest is passed over. */
static void copy_file(void *data, const char *path)
{
    struct copying *copying = data;
    char *text = NULL;
    size_t length = 0;
    if (copying->failed)
        return;
    copying->failed = home_files_read(&text, &length, copying->from, path, FILE_LARGEST)
                          != FILE_READ
                      || !write_file(copying->to, path, text, length);
    free(text);
}

/* All of it, since a place may follow any other; a home inside comes out as a folder. */
static bool copy_home(const char *home, const char *folder)
{
    static const char *const PARTS[] = {"rules", "jurisdictions"};
    struct copying copying = {.from = home, .to = folder};
    for (size_t i = 0; i < sizeof(PARTS) / sizeof(PARTS[0]); i++)
        if (home_files_each(home, PARTS[i], "", FOLDERS_DEEPEST, copy_file, &copying) != 0)
            return false;
    return !copying.failed;
}

/* In the place of the one that is there, or beside the others for a place that is new. */
static bool put_file(const char *folder, const char *id, const char *file)
{
    char *text = NULL;
    size_t length = 0;
    struct text path = TEXT_EMPTY;
    text_addf(&path, "jurisdictions/%s.lua", id);
    const bool read = file_read(&text, &length, file, FILE_LARGEST) == FILE_READ;
    if (!read)
        complain("%s: cannot be read", file);
    const bool put = read && !path.failed && write_file(folder, text_string(&path), text, length);
    if (read && !put)
        complain("%s: cannot be put in the place of %s", file, id);
    free(text);
    text_free(&path);
    return put;
}

char *edited_home_make(const char *home, const char *id, const char *file)
{
    /* The file says its id itself, and may be somebody else's: a path made of anything could
     * lead out of the copy. */
    if (!place_id_is_sound(id)) {
        complain("%s: \"%s\" is no id of a place", file, id);
        return NULL;
    }
    const char *temporary = getenv("TMPDIR");
    struct text name = TEXT_EMPTY;
    text_addf(&name, "%s/eavemark-",
              temporary == NULL || temporary[0] == '\0' ? "/tmp" : temporary);
    for (int i = 0; i < FILLED_IN; i++)
        text_add(&name, "X");
    char *folder = name.failed ? NULL : mkdtemp(name.bytes);
    if (folder == NULL) {
        complain("no folder for a copy of the home can be made: %s", strerror(errno));
        text_free(&name);
        return NULL;
    }
    const bool copied = copy_home(home, folder);
    if (!copied)
        complain("%s: cannot be copied", home);
    if (copied && put_file(folder, id, file))
        return folder;
    edited_home_remove(folder);
    return NULL;
}

/* Links are removed themselves (FTW_PHYS): what they lead to is not ours. */
static int remove_one(const char *path, const struct stat *about, int kind, struct FTW *walk)
{
    (void)about;
    (void)kind;
    (void)walk;
    return remove(path);
}

void edited_home_remove(char *folder)
{
    if (folder == NULL)
        return;
    if (nftw(folder, remove_one, OPEN_AT_ONCE, FTW_DEPTH | FTW_PHYS) != 0)
        complain("%s: cannot be removed", folder);
    free(folder);
}

/* The word in quotes after `jurisdiction` at the beginning of a line. */
static char *stated_place(const char *text)
{
    static const char WORD[] = "jurisdiction";
    for (const char *line = text; *line != '\0';) {
        const char *at = line + strspn(line, " \t");
        if (strncmp(at, WORD, sizeof(WORD) - 1) == 0) {
            at += sizeof(WORD) - 1;
            at += strspn(at, " \t(");
            /* Any other way of writing it is left to the loader, which says more. */
            const size_t length = *at == '"' ? strcspn(at + 1, "\"\n") : 0;
            if (length > 0 && at[1 + length] == '"')
                return strndup(at + 1, length);
        }
        line += strcspn(line, "\n");
        line += *line == '\n';
    }
    return NULL;
}

char *edited_home_place(const char *file)
{
    char *text = NULL, *place = NULL;
    size_t length = 0;
    if (file_read(&text, &length, file, FILE_LARGEST) != FILE_READ) {
        complain("%s: cannot be read", file);
        return NULL;
    }
    place = stated_place(text);
    if (place == NULL)
        complain("%s: states no jurisdiction; say whose file it is: PLACE=%s", file, file);
    free(text);
    return place;
}
