#include "profile/place_made.h"

#include <stdint.h>
#include <stdlib.h>
#include <string.h>

struct bytes {
    char *at;
    size_t length, room;
};

/* Where texts were put lately, by their first letters and lengths: most come again soon. */
enum { LATELY = 4096 };

struct writing {
    struct bytes parts, texts;
    size_t lately[LATELY]; /* text's place in texts, plus one */
    bool failed;
};

static void put(struct writing *out, struct bytes *to, const void *bytes, size_t length)
{
    if (to->room - to->length < length) {
        const size_t room = 2 * to->room + length + 1024;
        char *larger = realloc(to->at, room);
        if (larger == NULL) {
            out->failed = true;
            return;
        }
        to->at = larger;
        to->room = room;
    }
    memcpy(to->at + to->length, bytes, length);
    to->length += length;
}

/* Seven bits a byte, the lowest first; the eighth says that more come. */
static void put_count(struct writing *out, struct bytes *to, uint64_t count)
{
    unsigned char digits[10];
    size_t n = 0;
    for (; count >= 128; count >>= 7)
        digits[n++] = (unsigned char)(count | 128);
    digits[n++] = (unsigned char)count;
    put(out, to, digits, n);
}

static void put_text(struct writing *out, const char *text)
{
    size_t hash = 5381;
    for (const char *c = text; *c != '\0'; c++)
        hash = hash * 33 + (unsigned char)*c;
    size_t *known = &out->lately[hash % LATELY];
    if (*known == 0 || strcmp(out->texts.at + *known - 1, text) != 0) {
        *known = out->texts.length + 1;
        put(out, &out->texts, text, strlen(text) + 1);
    }
    put_count(out, &out->parts, *known - 1);
}

/* The member's own pointer; the next of a list's element. */
static const void *pointer_at(const void *base, size_t at)
{
    const void *pointer;
    memcpy(&pointer, (const char *)base + at, sizeof(pointer));
    return pointer;
}

static uint64_t parts_said(const void *base, const struct shape *shape);

/* Is it other than zero? */
static bool is_said(const void *base, const struct part *part)
{
    static const char ZEROS[sizeof(double)] = {0};
    const char *at = (const char *)base + part->at;
    switch (part->kind) {
    case FLAG:
        return memcmp(at, ZEROS, sizeof(bool)) != 0;
    case WORD:
        return memcmp(at, ZEROS, sizeof(int)) != 0;
    case DAY:
        return memcmp(at, ZEROS, sizeof(long)) != 0;
    case NUMBER:
        return memcmp(at, ZEROS, sizeof(double)) != 0;
    case INSIDE:
        return parts_said(at, part->shape) != 0;
    case TEXT:
    case TEXTS:
    case LIST:
        break;
    }
    return pointer_at(base, part->at) != NULL;
}

/* A bit for each part that is said. */
static uint64_t parts_said(const void *base, const struct shape *shape)
{
    uint64_t said = 0;
    for (size_t i = 0; i < shape->part_count; i++)
        if (is_said(base, &shape->parts[i]))
            said |= UINT64_C(1) << i;
    return said;
}

static void put_struct(struct writing *out, const void *base, const struct shape *shape);

static void put_texts(struct writing *out, const void *base, const struct part *part)
{
    const char *const *texts = pointer_at(base, part->at);
    size_t count;
    memcpy(&count, (const char *)base + part->count_at, sizeof(count));
    put_count(out, &out->parts, count);
    for (size_t i = 0; i < count; i++)
        put_text(out, texts[i]);
}

static void put_list(struct writing *out, const void *first, const struct shape *shape)
{
    uint64_t count = 0;
    for (const void *e = first; e != NULL; e = pointer_at(e, shape->next))
        count++;
    put_count(out, &out->parts, count);
    for (const void *e = first; e != NULL; e = pointer_at(e, shape->next))
        put_struct(out, e, shape);
}

static void put_part(struct writing *out, const void *base, const struct part *part)
{
    const char *at = (const char *)base + part->at;
    int word;
    long day;
    switch (part->kind) {
    case FLAG:
        break; /* that it is said says all */
    case WORD:
        memcpy(&word, at, sizeof(word));
        out->failed = out->failed || word < 0;
        put_count(out, &out->parts, (uint64_t)word);
        break;
    case DAY:
        memcpy(&day, at, sizeof(day));
        out->failed = out->failed || day < 0;
        put_count(out, &out->parts, (uint64_t)day);
        break;
    case NUMBER:
        put(out, &out->parts, at, sizeof(double));
        break;
    case TEXT:
        put_text(out, pointer_at(base, part->at));
        break;
    case TEXTS:
        put_texts(out, base, part);
        break;
    case INSIDE:
        put_struct(out, at, part->shape);
        break;
    case LIST:
        put_list(out, pointer_at(base, part->at), part->shape);
        break;
    }
}

static void put_struct(struct writing *out, const void *base, const struct shape *shape)
{
    const uint64_t said = parts_said(base, shape);
    put_count(out, &out->parts, said);
    for (size_t i = 0; i < shape->part_count; i++)
        if ((said >> i & 1) != 0)
            put_part(out, base, &shape->parts[i]);
}

/* The length of the texts, the texts, the parts. */
char *place_made_write_as(const void *base, const struct shape *shape, size_t *length)
{
    struct writing *out = calloc(1, sizeof(*out));
    struct bytes all = {0};
    if (out == NULL)
        return NULL;
    put_struct(out, base, shape);
    put_count(out, &all, out->texts.length);
    put(out, &all, out->texts.at, out->texts.length);
    put(out, &all, out->parts.at, out->parts.length);
    free(out->texts.at);
    free(out->parts.at);
    if (out->failed) {
        free(all.at);
        all.at = NULL;
    }
    *length = all.length;
    free(out);
    return all.at;
}

char *place_made_write(const struct place *place, size_t *length)
{
    return place_made_write_as(place, &PLACE_SHAPE, length);
}
