#include "packing/pack_write.h"

#include <stdlib.h>
#include <string.h>

struct pack_written {
    char *path;
    long at;
};

static bool note(struct pack_write *pack, const char *path)
{
    if (pack->count == pack->room) {
        const size_t room = 2 * pack->room + 64;
        struct pack_written *files = realloc(pack->files, room * sizeof(*files));
        if (files == NULL)
            return false;
        pack->files = files;
        pack->room = room;
    }
    const struct pack_written written = {strdup(path), ftell(pack->file)};
    pack->files[pack->count++] = written;
    return written.path != NULL && written.at >= 0;
}

void pack_write_file(struct pack_write *pack, const char *path, const char *bytes, size_t length)
{
    pack->failed = !note(pack, path) || pack->failed;
    fprintf(pack->file, "%zu %s\n", length, path);
    fwrite(bytes, 1, length, pack->file);
    fputc('\0', pack->file);
}

static int by_path(const void *a, const void *b)
{
    return strcmp(((const struct pack_written *)a)->path, ((const struct pack_written *)b)->path);
}

bool pack_write_end(struct pack_write *pack)
{
    const bool any = pack->count > 0;
    if (any && !pack->failed)
        qsort(pack->files, pack->count, sizeof(*pack->files), by_path);
    for (size_t i = 0; i < pack->count; i++) {
        fprintf(pack->file, "%08lx", (unsigned long)pack->files[i].at);
        free(pack->files[i].path);
    }
    fprintf(pack->file, "%08zxpack", pack->count);
    free(pack->files);
    const bool written = ferror(pack->file) == 0;
    return fclose(pack->file) == 0 && written && any && !pack->failed;
}
