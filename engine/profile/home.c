#include "profile/home.h"

#include "base/home_files.h"
#include "profile/made.h"

#include <sha2.h>

#include <errno.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

enum { SOURCE_LARGEST = 1024 * 1024 };

bool home_has(const char *home, const char *path)
{
    return home_files_has(home, path);
}

/* errno must still be what reading left. */
static void say_unreadable(struct problems *problems, const char *path, enum file_result result)
{
    switch (result) {
    case FILE_READ:
        break;
    case FILE_MISSING:
        problem_at_line(problems, PROBLEM_RULES, path, 0, 0, "there is no such file");
        break;
    case FILE_NOT_A_FILE:
        problem_at_line(problems, PROBLEM_RULES, path, 0, 0, "is not a file");
        break;
    case FILE_TOO_LARGE:
        problem_at_line(problems, PROBLEM_RULES, path, 0, 0, "is larger than %d KB",
                        SOURCE_LARGEST / 1024);
        break;
    case FILE_UNREADABLE:
        problem_at_line(problems, PROBLEM_RULES, path, 0, 0, "cannot be read: %s", strerror(errno));
        break;
    case FILE_OUTSIDE:
        problem_at_line(problems, PROBLEM_RULES, path, 0, 0, "leads outside the home folder");
        break;
    case FILE_OUT_OF_MEMORY:
        problem_out_of_memory(problems);
        break;
    }
}

static struct source *sources_find(const struct sources *sources, const char *path)
{
    for (struct source *s = sources->first; s != NULL; s = s->next)
        if (strcmp(s->path, path) == 0)
            return s;
    return NULL;
}

/* What is packed stays where it stands: its bytes last as long as the program. */
static struct source *note_source(struct arena *arena, struct sources *sources, const char *path,
                                  const char *text, size_t length, bool packed)
{
    struct source *source = arena_alloc(arena, sizeof(*source));
    char *name = arena_copy(arena, path);
    if (source == NULL || name == NULL || text == NULL)
        return NULL;
    *source = (struct source){name, text, length, packed, sources->first};
    sources->first = source;
    sources->count++;
    return source;
}

static enum file_result read_inside(struct arena *arena, struct sources *sources, const char *path,
                                    const struct source **source)
{
    struct packed_file file;
    const enum file_result result = home_files_find_inside(path, &file);
    if (result != FILE_READ || file.length > SOURCE_LARGEST)
        return result == FILE_READ ? FILE_TOO_LARGE : result;
    /* One with ".." in it is not the path that things were made under. */
    const bool same = strncmp(file.path, path, file.path_length) == 0
                      && path[file.path_length] == '\0';
    *source = note_source(arena, sources, path, file.bytes, file.length, same);
    return FILE_READ;
}

static enum file_result read_folder(const char *home, struct arena *arena, struct sources *sources,
                                    const char *path, const struct source **source)
{
    const struct pack pack = home_files_packed();
    struct packed_file file;
    char *text = NULL;
    size_t length = 0;
    /* Mostly it is as packed, and then need not be kept. */
    if (pack_find(&pack, path, &file) && home_files_same(home, path, file.bytes, file.length)) {
        *source = note_source(arena, sources, path, file.bytes, file.length, true);
        return FILE_READ;
    }
    const enum file_result result = home_files_read(&text, &length, home, path, SOURCE_LARGEST);
    if (result != FILE_READ)
        return result;
    *source = note_source(arena, sources, path, arena_copy_n(arena, text, length), length, false);
    free(text);
    return FILE_READ;
}

const struct source *home_read(const char *home, const char *path, struct arena *arena,
                               struct sources *sources, struct problems *problems)
{
    /* A file is read once, however many name it: a check must not see it change on the
     * way. */
    const struct source *known = sources_find(sources, path);
    if (known != NULL)
        return known;
    const struct source *source = NULL;
    const enum file_result result = home_files_inside(home)
                                        ? read_inside(arena, sources, path, &source)
                                        : read_folder(home, arena, sources, path, &source);
    if (result != FILE_READ)
        say_unreadable(problems, path, result);
    else if (source == NULL)
        problem_out_of_memory(problems);
    return source;
}

const struct source *home_read_part(const char *home, const char *path, struct arena *arena,
                                    struct sources *sources, struct problems *problems)
{
    const struct source *known = NULL;
    if (sources_find(sources, path) == NULL)
        for (const struct sources *b = sources->before; b != NULL && known == NULL; b = b->before)
            known = sources_find(b, path);
    if (known == NULL)
        return home_read(home, path, arena, sources, problems);
    const struct source *source = note_source(arena, sources, path, known->text, known->length,
                                              known->packed);
    if (source == NULL)
        problem_out_of_memory(problems);
    return source;
}

int home_each(const char *home, const char *folder, const char *ending, int depth,
              void (*visit)(void *data, const char *path), void *data)
{
    return home_files_each(home, folder, ending, depth, visit, data);
}

const char *home_place_id(const char *path, size_t *length)
{
    static const char MODELS[] = "model/";
    const char *id = path + strlen("jurisdictions/");
    *length = strlen(id) - strlen(".lua");
    const bool part = strncmp(id, MODELS, strlen(MODELS)) == 0
                      && strchr(id + strlen(MODELS), '/') != NULL;
    return part || memchr(id, '.', *length) != NULL ? NULL : id;
}

/* Sorts the list by path: insertion, for a few dozen files. */
static void sources_sort(struct sources *sources)
{
    struct source *sorted = NULL;
    while (sources->first != NULL) {
        struct source *source = sources->first;
        sources->first = source->next;
        struct source **at = &sorted;
        while (*at != NULL && strcmp((*at)->path, source->path) < 0)
            at = &(*at)->next;
        source->next = *at;
        *at = source;
    }
    sources->first = sorted;
}

bool home_sources_add(struct sources *to, const struct source *from, struct arena *arena)
{
    for (; from != NULL; from = from->next) {
        struct source *copy = arena_alloc(arena, sizeof(*copy));
        if (copy == NULL)
            return false;
        *copy = *from;
        copy->next = to->first;
        to->first = copy;
        to->count++;
    }
    return true;
}

void home_fingerprint(struct sources *sources, char out[65])
{
    SHA2_CTX context;
    sources_sort(sources);
    if (made_fingerprint(sources, out))
        return;
    SHA256Init(&context);
    for (const struct source *s = sources->first; s != NULL; s = s->next) {
        char head[64];
        /* The length goes between path and bytes, so that no two lists of files give one
         * stream. */
        const int n = snprintf(head, sizeof(head), "\n%zu\n", s->length);
        SHA256Update(&context, (const uint8_t *)s->path, strlen(s->path));
        SHA256Update(&context, (const uint8_t *)head, (size_t)n);
        SHA256Update(&context, (const uint8_t *)s->text, s->length);
    }
    uint8_t digest[SHA256_DIGEST_LENGTH];
    SHA256Final(digest, &context);
    for (size_t i = 0; i < sizeof(digest); i++)
        snprintf(out + 2 * i, 3, "%02x", digest[i]);
}

/* Each line is looked through once: a file may be one line of half a megabyte that holds
 * the needle a hundred thousand times, all of it a comment. */
int home_source_line(const struct source *source, const char *needle, int from)
{
    const char *at = source->text, *found = strstr(at, needle);
    for (int line = 1; found != NULL; line++) {
        const char *end = strchr(at, '\n');
        const bool comment = strncmp(at + strspn(at, " \t"), "--", 2) == 0;
        if (line >= from && !comment && (end == NULL || found < end) && found >= at)
            return line;
        if (end == NULL)
            return 0;
        at = end + 1;
        if (found < at)
            found = strstr(at, needle);
    }
    return 0;
}
