#include "profile/places.h"

#include "base/date.h"
#include "base/folder_walk.h"
#include "base/home_files.h"
#include "base/text.h"

#include <errno.h>
#include <stdbool.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* Past so many days the newest are what matters, and they are in. A place without a first
 * day stands on any; this is one. */
enum { DAYS_MOST = 512, ANY_DAY = 20000101, FOLDERS_DEEPEST = 6 };

/* Days on which some place of the home changes, newest first. */
struct days {
    long items[DAYS_MOST];
    size_t count;
};

struct listing {
    struct strings *ids;
    struct arena *arena;
};

static void note_id(void *data, const char *path)
{
    struct listing *listing = data;
    size_t length;
    const char *id = home_place_id(path, &length);
    if (id != NULL)
        strings_add(listing->ids, listing->arena, arena_copy_n(listing->arena, id, length));
}

void places_ids(const char *home, struct strings *ids, struct arena *arena)
{
    struct listing listing = {ids, arena};
    if (home_each(home, "jurisdictions", ".lua", FOLDERS_DEEPEST, note_id, &listing) != 0
        && errno == ENOMEM)
        arena->failed = true;
}

struct telling {
    void (*visit)(void *data, const char *path, const char *why);
    void *data;
    bool failed; /* out of memory */
};

static void tell_unread(void *data, const char *path, int why)
{
    struct telling *telling = data;
    char words[160];
    telling->failed = telling->failed || why == ENOMEM;
    /* A link that leads nowhere: of no account unless it is called like a place. */
    if (why == ENOMEM || (why == ENOENT && !text_ends_in(path, ".lua")))
        return;
    if (why == FOLDER_TOO_DEEP)
        snprintf(words, sizeof(words),
                 "lies more than %d folders below jurisdictions/: no place in it is listed or "
                 "proved; move it up",
                 FOLDERS_DEEPEST);
    else
        snprintf(words, sizeof(words), "cannot be read: %s", strerror(why));
    telling->visit(telling->data, path, words);
}

bool places_unread(const char *home, void (*visit)(void *data, const char *path, const char *why),
                   void *data)
{
    struct telling telling = {visit, data, false};
    home_files_unread(home, "jurisdictions", FOLDERS_DEEPEST, tell_unread, &telling);
    return !telling.failed;
}

/* Kept newest first, each once. */
static void add_day(struct days *days, long day)
{
    size_t at = days->count;
    for (size_t i = 0; i < days->count; i++)
        if (days->items[i] == day)
            return;
    if (days->count == DAYS_MOST)
        return;
    days->count++;
    for (; at > 0 && days->items[at - 1] < day; at--)
        days->items[at] = days->items[at - 1];
    days->items[at] = day;
}

/* The days on which the place itself, or one it follows, takes a new edition. */
static bool add_days_of(struct place_cache *cache, const char *home, const char *id,
                        struct days *days)
{
    struct arena arena = {0};
    struct sources sources = {0};
    struct strings chain = {0};
    struct problems problems = {0};
    strings_add(&chain, &arena, arena_copy(&arena, id));
    for (size_t i = 0; !arena.failed && i < chain.count && i < PROFILE_LONGEST_CHAIN; i++) {
        const struct place *place = place_cache_get(cache, home, chain.items[i], &arena, &sources,
                                                    &problems);
        for (const struct block *b = place == NULL ? NULL : place->blocks; b != NULL; b = b->next) {
            add_day(days, b->from == 0 ? ANY_DAY : b->from);
            if (b->follows != NULL)
                /* The chain grows while it is walked; each place once, so a circle ends. */
                strings_add_once(&chain, &arena, b->follows);
        }
    }
    const bool failed = arena.failed || problems.out_of_memory;
    problems_free(&problems);
    arena_free(&arena);
    return !failed;
}

/* NULL when the place does not stand then; *failed is set when that is only for
 * want of memory. */
static struct profile *stand_on(struct place_cache *cache, const char *home, const char *id,
                                long date, bool *failed)
{
    struct problems problems = {0};
    struct profile *profile = profile_resolve_from(cache, home, id, date, "", &problems);
    *failed = *failed || problems.out_of_memory;
    problems_free(&problems);
    return profile;
}

/* The newest day on which the whole chain stands: a place may have an edition ready
 * before what it follows has. */
static struct profile *stand_newest(struct place_cache *cache, const char *home, const char *id,
                                    long *date, bool *failed)
{
    struct days days = {.count = 0};
    if (!add_days_of(cache, home, id, &days))
        *failed = true;
    for (size_t i = 0; i < days.count; i++) {
        struct profile *profile = stand_on(cache, home, id, days.items[i], failed);
        *date = days.items[i];
        if (profile != NULL)
            return profile;
    }
    return NULL;
}

long places_newest(struct place_cache *cache, const char *home, const char *id,
                   struct problems *problems)
{
    long date = 0;
    bool failed = false;
    struct profile *profile = stand_newest(cache, home, id, &date, &failed);
    if (failed)
        problem_out_of_memory(problems);
    profile_free(profile);
    return profile == NULL ? 0 : date;
}

/* Model codes first, then by id. */
static int standing_order(const void *a, const void *b)
{
    const struct standing *left = a, *right = b;
    if (left->profile->model != right->profile->model)
        return left->profile->model ? -1 : 1;
    return strcmp(left->profile->id, right->profile->id);
}

static void note_skipped(void *data, const char *path, const char *why)
{
    struct places *places = data;
    strings_add(&places->skipped, &places->arena,
                arena_format(&places->arena, "%s (%s)", path, why));
}

int places_stand(struct place_cache *cache, const char *home, long date, struct places *places)
{
    struct strings ids = {0};
    places_ids(home, &ids, &places->arena);
    places->items = arena_array(&places->arena, ids.count + 1, sizeof(*places->items));
    for (size_t i = 0; !places->arena.failed && i < ids.count; i++) {
        struct standing standing = {.date = date};
        bool *failed = &places->arena.failed;
        standing.profile = date != 0
                               ? stand_on(cache, home, ids.items[i], date, failed)
                               : stand_newest(cache, home, ids.items[i], &standing.date, failed);
        if (standing.profile != NULL)
            places->items[places->count++] = standing;
        else
            strings_add(&places->skipped, &places->arena, ids.items[i]);
    }
    if (!places_unread(home, note_skipped, places))
        places->arena.failed = true;
    if (places->items == NULL || places->arena.failed)
        return -1;
    qsort(places->items, places->count, sizeof(*places->items), standing_order);
    return 0;
}

/* Of a model in editions, those that follow its base; of one without, all that are
 * models. */
bool places_is_edition(const struct places *places, const struct profile *profile)
{
    bool any = false;
    for (size_t i = 0; i < places->count; i++)
        any = any || (places->items[i].profile->model && places->items[i].profile->chain_count > 1);
    return profile->model && (!any || profile->chain_count > 1);
}

void places_free(struct places *places)
{
    for (size_t i = 0; i < places->count; i++)
        profile_free(places->items[i].profile);
    arena_free(&places->arena);
    *places = (struct places){0};
}
