#include "job/scan.h"

#include "base/text.h"
#include "job/path.h"

#include <stdlib.h>
#include <string.h>

/* The digits are known to be sound; they are not terminated. */
static unsigned long hex_value(const char *digits)
{
    char four[5] = "";
    memcpy(four, digits, 4);
    return strtoul(four, NULL, 16);
}

/* The bytes of a code point; the escapes were found sound before. */
static size_t put_utf8(char *to, unsigned long code)
{
    if (code < 0x80) {
        to[0] = (char)code;
        return 1;
    }
    const size_t tails = code < 0x800 ? 1 : code < 0x10000 ? 2 : 3;
    static const unsigned char LEAD[4] = {0, 0xC0, 0xE0, 0xF0};
    for (size_t i = tails; i > 0; i--, code >>= 6)
        to[i] = (char)(0x80 | (code & 0x3F));
    to[0] = (char)(LEAD[tails] | code);
    return tails + 1;
}

/* Decodes the sound escape at from; returns its length in the text. */
static size_t decode_escape(const char *from, char **to)
{
    static const char WRITTEN[] = "bfnrt", MEANT[] = "\b\f\n\r\t";
    if (from[1] != 'u') {
        const char *plain = strchr(WRITTEN, from[1]);
        *(*to)++ = plain == NULL ? from[1] : MEANT[plain - WRITTEN];
        return 2;
    }
    unsigned long code = hex_value(from + 2);
    const bool pair = code >= 0xD800 && code <= 0xDBFF;
    if (pair)
        code = 0x10000 + ((code - 0xD800) << 10) + (hex_value(from + 8) - 0xDC00);
    *to += put_utf8(*to, code);
    return pair ? 12 : 6;
}

/* Keys are the same when they are so after decoding: "\u0061" is "a". */
const char *scan_decode(struct scan *scan, const char *from, size_t *length)
{
    char *text = arena_alloc(&scan->arena, *length);
    if (text == NULL)
        return NULL;
    char *to = text;
    for (const char *end = from + *length; from < end;) {
        if (*from == '\\')
            from += decode_escape(from, &to);
        else
            *to++ = *from++;
    }
    *length = (size_t)(to - text);
    return text;
}

/* Doubling; the keys of a level are dropped when it closes, so the most there ever are is
 * what is open at once. */
static bool keys_grow(struct scan *scan)
{
    if (scan->key_count < scan->key_capacity)
        return true;
    const size_t capacity = scan->key_capacity == 0 ? 64 : scan->key_capacity * 2;
    struct scan_key *keys = realloc(scan->keys, capacity * sizeof(*keys));
    if (keys == NULL)
        return false;
    scan->keys = keys;
    scan->key_capacity = capacity;
    return true;
}

static bool same_key(const struct scan_key *a, const struct scan_key *b)
{
    return a->length == b->length && memcmp(a->text, b->text, a->length) == 0;
}

/* Of few keys, and any job's objects have few, comparing those that look alike is quicker
 * than sorting all. */
enum { FEW_KEYS = 48 };

/* Keys differ mostly in their length or an end. */
static unsigned likeness(const struct scan_key *key)
{
    const unsigned char *text = (const unsigned char *)key->text;
    return key->length == 0 ? 0
                            : (unsigned)key->length * 5 + text[0] * 3U + text[key->length / 2] * 7U
                                  + text[key->length - 1] * 11U;
}

/* Only a key that looks like one before it can be that one again. */
static void note_likeness(struct scan *scan, const struct scan_key *key)
{
    struct scan_level *level = &scan->levels[scan->depth - 1];
    const unsigned bit = likeness(key) & 0xFF;
    const uint64_t mask = UINT64_C(1) << (bit & 63);
    if ((level->seen[bit / 64] & mask) == 0)
        level->seen[bit / 64] |= mask;
    else if (scan->key_count - level->first_key < FEW_KEYS)
        for (size_t i = level->first_key; i < scan->key_count && !level->twice; i++)
            level->twice = same_key(&scan->keys[i], key);
}

void scan_key_add(struct scan *scan, size_t from, size_t to, bool sound)
{
    struct scan_key key = {
        .text = scan->text + from, .length = to - from, .at = from, .line = scan->line};
    const bool escaped = memchr(key.text, '\\', key.length) != NULL;
    /* Decoded it may be the name of a field, which only those without escapes are held
     * against. */
    if (escaped && scan->likely != NULL) {
        scan_again(scan);
        return;
    }
    /* Most keys hold no escape: they are taken as they stand in the job's text. An unsound one
     * is compared as it is written. */
    if (sound && escaped)
        key.text = scan_decode(scan, key.text, &key.length);
    if (key.text == NULL || !keys_grow(scan)) {
        scan_out_of_memory(scan);
        return;
    }
    note_likeness(scan, &key);
    scan->keys[scan->key_count++] = key;
}

/* Any order that brings equal keys together, the first given first. */
static int by_text(const void *a, const void *b)
{
    const struct scan_key *left = a, *right = b;
    if (left->length != right->length)
        return left->length < right->length ? -1 : 1;
    const int order = memcmp(left->text, right->text, left->length);
    return order != 0 ? order : (left->at > right->at) - (left->at < right->at);
}

/* For the report: repeated keys in the order they were written. */
static int by_place(const void *a, const void *b)
{
    const struct scan_key *left = a, *right = b;
    return (left->at > right->at) - (left->at < right->at);
}

/* Where the scan stands: the pointer to the innermost object. */
static void add_pointer(const struct scan *scan, struct text *out)
{
    for (size_t i = 0; i + 1 < scan->depth; i++) {
        const struct scan_level *level = &scan->levels[i];
        /* The last key before the inner level began is the one it belongs to. */
        const struct scan_key *keys_end = scan->keys + scan->levels[i + 1].first_key;
        if (level->object)
            path_add(out, keys_end[-1].text, keys_end[-1].length);
        else
            path_add_item(out, level->item);
    }
}

/* JSON parsers differ in which of two equal names they keep (RFC 8259, section 4): a job that
 * says a thing twice could be read in two ways. */
static void report_repeated(struct scan *scan, const struct scan_key *key)
{
    if (!scan_counts(scan))
        return;
    struct text pointer = TEXT_EMPTY;
    add_pointer(scan, &pointer);
    path_add(&pointer, key->text, key->length);
    if (pointer.failed)
        scan_out_of_memory(scan);
    else
        problem_at(scan->problems, PROBLEM_JOB, scan->file, text_string(&pointer),
                   "given twice, on line %d and again on line %d; keep one", key->first_line,
                   key->line);
    text_free(&pointer);
}

/* Marks each repeated key with the line of the first; true when there is one.
 * Sorting keeps this quick however many keys an object has. */
static bool mark_repeated(struct scan_key *keys, size_t count)
{
    bool repeated = false;
    qsort(keys, count, sizeof(*keys), by_text);
    for (size_t i = 1; i < count; i++) {
        if (!same_key(&keys[i - 1], &keys[i]))
            continue;
        keys[i].first_line = keys[i - 1].first_line > 0 ? keys[i - 1].first_line : keys[i - 1].line;
        repeated = true;
    }
    if (repeated)
        qsort(keys, count, sizeof(*keys), by_place);
    return repeated;
}

/* Called at an object's closing brace: all its keys are in, those of inner objects
 * dropped. */
void scan_keys_close(struct scan *scan)
{
    const size_t first = scan->levels[scan->depth - 1].first_key;
    const size_t end = scan->key_count;
    if ((scan->levels[scan->depth - 1].twice || end - first > FEW_KEYS)
        && mark_repeated(scan->keys + first, end - first))
        for (size_t i = first; i < end && !scan->stopped; i++)
            if (scan->keys[i].first_line > 0)
                report_repeated(scan, &scan->keys[i]);
    scan->key_count = first;
}
