#include "base/pack.h"

#include <string.h>

/* An entry is "LENGTH PATH\n", its bytes, and a zero byte. A pack that is cut short ends the
 * walk: nothing past its end is read. */
bool pack_next(const struct pack *pack, size_t *at, struct packed_file *file)
{
    const char *p = pack->bytes + *at, *end = pack->bytes + pack->length;
    size_t length = 0;
    /* Stopped once it is longer than the pack could be, so that no number overflows. */
    for (; p < end && *p >= '0' && *p <= '9' && length <= pack->length; p++)
        length = length * 10 + (size_t)(*p - '0');
    if (p == end || *p != ' ')
        return false;
    const char *path = p + 1, *line_end = memchr(path, '\n', (size_t)(end - path));
    if (line_end == NULL || (size_t)(end - line_end) < length + 2 || line_end[1 + length] != '\0')
        return false;
    *file = (struct packed_file){path, (size_t)(line_end - path), line_end + 1, length};
    *at = (size_t)(line_end + 1 - pack->bytes) + length + 1;
    return true;
}

enum { INDEX_DIGITS = 8 };

static const char INDEX_END[] = "pack";

static size_t read_digits(const char *digits)
{
    size_t value = 0;
    for (size_t i = 0; i < INDEX_DIGITS; i++)
        value = value * 16 + (size_t)(digits[i] <= '9' ? digits[i] - '0' : digits[i] - 'a' + 10);
    return value;
}

/* How many files the index lists, *index being the first of them; 0 without an index. */
static size_t find_index(const struct pack *pack, const char **index)
{
    const size_t ending = sizeof(INDEX_END) - 1, least = INDEX_DIGITS + ending;
    const char *end = pack->bytes + pack->length;
    if (pack->length < least || memcmp(end - ending, INDEX_END, ending) != 0)
        return 0;
    const size_t count = read_digits(end - least);
    if (count > (pack->length - least) / INDEX_DIGITS)
        return 0;
    *index = end - least - count * INDEX_DIGITS;
    return count;
}

size_t pack_end(const struct pack *pack)
{
    const char *index;
    return find_index(pack, &index) == 0 ? pack->length : (size_t)(index - pack->bytes);
}

static int compare_path(const struct packed_file *file, const char *path, size_t length)
{
    const size_t shorter = file->path_length < length ? file->path_length : length;
    const int order = memcmp(file->path, path, shorter);
    return order != 0 ? order : (file->path_length > length) - (file->path_length < length);
}

static bool find_indexed(const struct pack *pack, const char *index, size_t count, const char *path,
                         struct packed_file *file)
{
    const size_t length = strlen(path);
    size_t low = 0, high = count;
    while (low < high) {
        const size_t middle = low + (high - low) / 2;
        size_t at = read_digits(index + middle * INDEX_DIGITS);
        if (at >= pack->length || !pack_next(pack, &at, file))
            return false;
        const int order = compare_path(file, path, length);
        if (order == 0)
            return true;
        if (order < 0)
            low = middle + 1;
        else
            high = middle;
    }
    return false;
}

bool pack_find(const struct pack *pack, const char *path, struct packed_file *file)
{
    const char *index;
    const size_t length = strlen(path), indexed = find_index(pack, &index);
    size_t at = 0;
    if (indexed > 0)
        return find_indexed(pack, index, indexed, path, file);
    while (pack_next(pack, &at, file))
        if (file->path_length == length && memcmp(file->path, path, length) == 0)
            return true;
    return false;
}

uint64_t pack_mark(const struct pack *pack)
{
    /* FNV-1a, 64 bits: tells builds apart, and is no safeguard against a forger. */
    uint64_t mark = 0xcbf29ce484222325u;
    for (size_t i = 0; i < pack->length; i++)
        mark = (mark ^ (unsigned char)pack->bytes[i]) * 0x100000001b3u;
    return mark;
}

/* A slash ends a name, so that it comes before every letter. */
static int rank(const char *path, size_t length, size_t i)
{
    if (i == length)
        return 0;
    return path[i] == '/' ? 1 : 2 + (unsigned char)path[i];
}

/* As a walk through folders goes, names by bytes and each folder whole, so that both kinds of
 * home give files in one order. */
int pack_order(const char *a, size_t a_length, const char *b, size_t b_length)
{
    for (size_t i = 0;; i++) {
        const int order = rank(a, a_length, i) - rank(b, b_length, i);
        if (order != 0 || i == a_length)
            return order;
    }
}
