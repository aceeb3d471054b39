#include "profile/place_made.h"

#include "profile/made.h"

#include <stdint.h>
#include <string.h>

/* Taking up ---------------------------------------------------------------------------- */

struct taking {
    const unsigned char *at;
    const char *texts;
    struct arena *arena;
};

static uint64_t take_count(struct taking *in)
{
    uint64_t count = 0;
    for (int shift = 0;; shift += 7) {
        const unsigned char digits = *in->at++;
        count |= (uint64_t)(digits & 127) << shift;
        if (digits < 128)
            return count;
    }
}

static const char *take_text(struct taking *in)
{
    return in->texts + take_count(in);
}

static void take_struct(struct taking *in, char *base, const struct shape *shape);

static void take_texts(struct taking *in, char *base, const struct part *part)
{
    const size_t count = (size_t)take_count(in);
    const char **texts = arena_array(in->arena, count + 1, sizeof(*texts));
    for (size_t i = 0; i < count; i++) {
        const char *text = take_text(in);
        if (texts != NULL)
            texts[i] = text;
    }
    memcpy(base + part->at, &texts, sizeof(texts));
    memcpy(base + part->count_at, &count, sizeof(count));
}

/* One piece of memory for the whole list: nobody frees an element of it. */
static void take_list(struct taking *in, char *at, const struct shape *shape)
{
    const size_t count = (size_t)take_count(in);
    char *items = arena_array(in->arena, count, shape->size);
    if (items == NULL)
        return;
    for (size_t i = 0; i < count; i++) {
        char *item = items + i * shape->size;
        memcpy(at, &item, sizeof(item));
        at = item + shape->next;
        take_struct(in, item, shape);
        if (in->arena->failed)
            return;
    }
}

static void take_part(struct taking *in, char *base, const struct part *part)
{
    char *at = base + part->at;
    const bool yes = true;
    const char *text;
    int word;
    long day;
    switch (part->kind) {
    case FLAG:
        memcpy(at, &yes, sizeof(yes));
        break;
    case WORD:
        word = (int)take_count(in);
        memcpy(at, &word, sizeof(word));
        break;
    case DAY:
        day = (long)take_count(in);
        memcpy(at, &day, sizeof(day));
        break;
    case NUMBER:
        memcpy(at, in->at, sizeof(double));
        in->at += sizeof(double);
        break;
    case TEXT:
        text = take_text(in);
        memcpy(at, &text, sizeof(text));
        break;
    case TEXTS:
        take_texts(in, base, part);
        break;
    case INSIDE:
        take_struct(in, at, part->shape);
        break;
    case LIST:
        take_list(in, at, part->shape);
        break;
    }
}

static void take_struct(struct taking *in, char *base, const struct shape *shape)
{
    uint64_t said = take_count(in);
    for (const struct part *part = shape->parts; said != 0; part++, said >>= 1)
        if ((said & 1) != 0 && !in->arena->failed)
            take_part(in, base, part);
}

bool place_made_take_as(const char *bytes, struct arena *arena, void *base,
                        const struct shape *shape)
{
    struct taking in = {(const unsigned char *)bytes, NULL, arena};
    const size_t texts = (size_t)take_count(&in);
    in.texts = (const char *)in.at;
    in.at += texts;
    take_struct(&in, base, shape);
    return !arena->failed;
}

bool place_made_take(const char *bytes, struct arena *arena, struct place *place)
{
    return place_made_take_as(bytes, arena, place, &PLACE_SHAPE);
}

/* Is it still the place that was written down? ----------------------------------------- */

struct listed {
    const struct block *block;
    size_t beside; /* bytes of the path up to the name */
    size_t count;
    bool same;
};

static void compare_part(void *data, const char *path)
{
    struct listed *listed = data;
    const struct block *block = listed->block;
    listed->same = listed->same && listed->count < block->part_count
                   && strcmp(block->parts[listed->count], path + listed->beside) == 0;
    listed->count++;
}

/* Does a folder of parts hold the files that it held? */
static bool lists_the_same(const struct block *block, const char *home, const char *own,
                           struct arena *arena)
{
    struct listed listed = {block, (size_t)(strrchr(own, '/') - own) + 1, 0, true};
    const char *folder = arena_format(arena, "%.*s%s", (int)listed.beside, own, block->part_folder);
    return folder != NULL && home_each(home, folder, ".lua", 0, compare_part, &listed) == 0
           && listed.same && listed.count == block->part_count;
}

/* What is wrong with a part is said when the place is read from its files. */
static bool parts_are_packed(const struct block *block, const char *home, const char *own,
                             struct arena *arena, struct sources *sources)
{
    const int beside = (int)(strrchr(own, '/') - own) + 1;
    bool packed = true;
    for (size_t i = 0; packed && i < block->part_count; i++) {
        struct problems untold = {0};
        const char *path = arena_format(arena, "%.*s%s", beside, own, block->parts[i]);
        const struct source *source = path == NULL
                                          ? NULL
                                          : home_read_part(home, path, arena, sources, &untold);
        packed = source != NULL && source->packed;
        problems_free(&untold);
    }
    return packed;
}

bool place_made_read(struct place *place, const char *home, struct arena *arena,
                     struct sources *sources)
{
    struct packed_file made;
    struct place taken = {place->source, NULL};
    if (!made_find(place->source, MADE_PLACE, &made) || !place_made_take(made.bytes, arena, &taken))
        return false;
    const char *own = place->source->path;
    for (const struct block *b = taken.blocks; b != NULL; b = b->next)
        if ((b->part_folder != NULL && !lists_the_same(b, home, own, arena))
            || !parts_are_packed(b, home, own, arena, sources))
            return false;
    *place = taken;
    return true;
}
