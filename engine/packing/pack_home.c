/* pack_home.c - the build's own program: writes a home's files as one pack (base/pack.h).
 *
 *     pack_home HOME OUT
 */
#include "base/home_folder.h"
#include "base/pack.h"
#include "packing/pack_write.h"

#include <inttypes.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* As no file of a home may be larger (profile/home.c). */
enum { LARGEST = 1024 * 1024, DEEPEST = 6, PACK_LARGEST = 64 * 1024 * 1024 };

struct packing {
    const char *home;
    struct pack_write out;
    bool failed;
};

static void add_file(void *data, const char *path)
{
    struct packing *packing = data;
    char *text = NULL;
    size_t length = 0;
    if (packing->failed
        || home_folder_read(&text, &length, packing->home, path, LARGEST) != FILE_READ) {
        fprintf(stderr, "pack_home: %s: cannot be read\n", path);
        packing->failed = true;
        return;
    }
    pack_write_file(&packing->out, path, text, length);
    free(text);
}

/* Rules, places, and the jobs that cases start from: guides stay outside. */
static void add_kind(void *data, const char *path)
{
    const char *dot = strrchr(path, '.');
    if (dot != NULL && (strcmp(dot, ".lua") == 0 || strcmp(dot, ".json") == 0))
        add_file(data, path);
}

/* Its mark (base/pack.h), for the page to say which files it holds. */
static bool write_mark(const char *path)
{
    char *bytes = NULL, name[4096];
    size_t length = 0;
    snprintf(name, sizeof(name), "%s.mark", path);
    FILE *out = file_read(&bytes, &length, path, PACK_LARGEST) == FILE_READ ? fopen(name, "w")
                                                                            : NULL;
    const bool written = out != NULL
                         && fprintf(out, "%016" PRIx64, pack_mark(&(struct pack){bytes, length}))
                                > 0;
    free(bytes);
    return (out == NULL || fclose(out) == 0) && written;
}

int main(int argc, char **argv)
{
    if (argc != 3) {
        fputs("usage: pack_home HOME OUT\n", stderr);
        return 2;
    }
    struct packing packing = {.home = argv[1], .out = {.file = fopen(argv[2], "wb")}};
    if (packing.out.file == NULL) {
        perror(argv[2]);
        return 1;
    }
    static const char *const FOLDERS[] = {"jurisdictions", "rules"};
    for (size_t i = 0; i < sizeof(FOLDERS) / sizeof(FOLDERS[0]); i++)
        if (home_folder_each(argv[1], FOLDERS[i], "", DEEPEST, add_kind, &packing) != 0) {
            perror(FOLDERS[i]);
            packing.failed = true;
        }
    if (!pack_write_end(&packing.out) || packing.failed || !write_mark(argv[2])) {
        remove(argv[2]);
        return 1;
    }
    return 0;
}
