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

/* The lines of the index; of none without an index. */
static struct pack find_index(const struct pack *pack)
{
    const size_t ending = sizeof(INDEX_END) - 1, least = INDEX_DIGITS + ending;
    const char *end = pack->bytes + pack->length;
    if (pack->length < least || memcmp(end - ending, INDEX_END, ending) != 0)
        return (struct pack){pack->bytes, 0};
    const size_t length = read_digits(end - least);
    if (length > pack->length - least)
        return (struct pack){pack->bytes, 0};
    return (struct pack){end - least - length, length};
}

size_t pack_end(const struct pack *pack)
{
    const struct pack index = find_index(pack);
    return index.length == 0 ? pack->length : (size_t)(index.bytes - pack->bytes);
}

/* A line of the index. */
struct indexed {
    const char *path;
    size_t path_length;
    size_t at, length;   /* of the file's bytes in the pack */
    size_t begins, ends; /* where the line does in the index, its end included */
};

/* Before the path stand two numbers. */
static const size_t TO_PATH = 2 * (size_t)INDEX_DIGITS;

/* The line around that place of the index. False where it is none. */
static bool line_around(const struct pack *index, size_t at, struct indexed *line)
{
    while (at > 0 && index->bytes[at - 1] != '\n')
        at--;
    const char *begin = index->bytes + at, *end = memchr(begin, '\n', index->length - at);
    if (end == NULL || (size_t)(end - begin) < TO_PATH)
        return false;
    *line = (struct indexed){begin + TO_PATH,
                             (size_t)(end - begin) - TO_PATH,
                             read_digits(begin),
                             read_digits(begin + INDEX_DIGITS),
                             at,
                             (size_t)(end - index->bytes) + 1};
    return true;
}

static bool find_indexed(const struct pack *pack, const struct pack *index, const char *path,
                         size_t length, struct packed_file *file)
{
    struct indexed line;
    size_t low = 0, high = index->length;
    while (low < high && line_around(index, low + (high - low) / 2, &line)) {
        const int order = pack_order(line.path, line.path_length, path, length);
        if (order == 0) {
            *file = (struct packed_file){line.path, length, pack->bytes + line.at, line.length};
            return line.at < pack->length && line.length < pack->length - line.at;
        }
        if (order < 0)
            low = line.ends;
        else
            high = line.begins;
    }
    return false;
}

bool pack_next_path(const struct pack *pack, size_t *at, const char **path, size_t *length)
{
    const struct pack index = find_index(pack);
    struct packed_file file = {NULL, 0, NULL, 0};
    struct indexed line;
    bool found;
    if (index.length == 0) {
        found = pack_next(pack, at, &file);
    } else if ((found = *at < index.length && line_around(&index, *at, &line))) {
        file.path = line.path;
        file.path_length = line.path_length;
        *at = line.ends;
    }
    *path = file.path;
    *length = file.path_length;
    return found;
}

bool pack_find(const struct pack *pack, const char *path, struct packed_file *file)
{
    const struct pack index = find_index(pack);
    const size_t length = strlen(path);
    size_t at = 0;
    if (index.length > 0)
        return find_indexed(pack, &index, path, length, file);
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
    size_t i = 0;
    while (i < a_length && i < b_length && a[i] == b[i])
        i++;
    return rank(a, a_length, i) - rank(b, b_length, i);
}
