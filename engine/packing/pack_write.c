#include "packing/pack_write.h"

#include "base/pack.h"

#include <stdlib.h>
#include <string.h>

struct pack_written {
    char *path;
    long at; /* of its bytes */
    size_t length;
};

static bool note(struct pack_write *pack, const char *path, size_t length)
{
    if (pack->count == pack->room) {
        const size_t room = 2 * pack->room + 64;
        struct pack_written *files = realloc(pack->files, room * sizeof(*files));
        if (files == NULL)
            return false;
        pack->files = files;
        pack->room = room;
    }
    const struct pack_written written = {strdup(path), ftell(pack->file), length};
    pack->files[pack->count++] = written;
    return written.path != NULL && written.at >= 0;
}

void pack_write_file(struct pack_write *pack, const char *path, const char *bytes, size_t length)
{
    fprintf(pack->file, "%zu %s\n", length, path);
    pack->failed = !note(pack, path, length) || pack->failed;
    fwrite(bytes, 1, length, pack->file);
    fputc('\0', pack->file);
}

static int by_path(const void *a, const void *b)
{
    const char *left = ((const struct pack_written *)a)->path,
               *right = ((const struct pack_written *)b)->path;
    return pack_order(left, strlen(left), right, strlen(right));
}

bool pack_write_end(struct pack_write *pack)
{
    const bool any = pack->count > 0;
    int length = 0;
    if (any && !pack->failed)
        qsort(pack->files, pack->count, sizeof(*pack->files), by_path);
    for (size_t i = 0; i < pack->count; i++) {
        length += fprintf(pack->file, "%08lx%08zx%s\n", (unsigned long)pack->files[i].at,
                          pack->files[i].length, pack->files[i].path);
        free(pack->files[i].path);
    }
    fprintf(pack->file, "%08xpack", (unsigned)length);
    free(pack->files);
    const bool written = ferror(pack->file) == 0;
    return fclose(pack->file) == 0 && written && any && !pack->failed;
}
