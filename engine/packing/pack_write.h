/* pack_write.h - writing a pack (base/pack.h), with its index. Of the build's own programs. */
#ifndef EAVEMARK_PACKING_PACK_WRITE_H
#define EAVEMARK_PACKING_PACK_WRITE_H

#include <stdbool.h>
#include <stddef.h>
#include <stdio.h>

/* Begin with the file, which pack_write_end closes, and zeros. */
struct pack_write {
    FILE *file;
    struct pack_written *files;
    size_t count, room;
    bool failed;
};

void pack_write_file(struct pack_write *pack, const char *path, const char *bytes, size_t length);

/* False when it could not be written whole, or holds nothing. */
bool pack_write_end(struct pack_write *pack);

#endif
