/* pack.h - many files in one run of bytes.
 *
 * Each file is a line "LENGTH PATH\n", LENGTH bytes, and a zero byte, so that it can be read
 * where it stands; the files stand in pack_order. An index may follow, so that a path is found
 * without touching the files: for each file, in pack_order, a line of where its bytes begin and how
 * many they are, in 8 hex digits each, and its path; then how long all that is, likewise, and
 * "pack". A pack is only looked at, never changed: what it holds belongs to whoever made it.
 */
#ifndef EAVEMARK_BASE_PACK_H
#define EAVEMARK_BASE_PACK_H

#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>

struct pack {
    const char *bytes;
    size_t length;
};

struct packed_file {
    const char *path; /* not terminated */
    size_t path_length;
    const char *bytes; /* terminated */
    size_t length;
};

/* The file that begins at *at, which then lies behind it; begin with 0. False at the end,
 * and where the bytes are no pack. */
bool pack_next(const struct pack *pack, size_t *at, struct packed_file *file);

/* The path alone, not terminated, of the file there; *at is no place among the files. */
bool pack_next_path(const struct pack *pack, size_t *at, const char **path, size_t *length);

/* The file of that path. False when there is none. */
bool pack_find(const struct pack *pack, const char *path, struct packed_file *file);

/* Where the files end: the index, or the end of the pack. */
size_t pack_end(const struct pack *pack);

/* A number that another pack has hardly ever (FNV-1a of 64 bits, as its authors published
 * it): whether two programs hold the same files. No guard against ill will. */
uint64_t pack_mark(const struct pack *pack);

/* Orders paths as folders are gone through by name: what lies in "a" comes before "a.lua". */
int pack_order(const char *a, size_t a_length, const char *b, size_t b_length);

#endif
