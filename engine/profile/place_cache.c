#include "profile/place_cache.h"

#include <stdlib.h>
#include <string.h>

/* Kept as long as the cache: profiles point into it. */
struct cached_place {
    struct arena arena; /* its own: what fails to load goes whole */
    struct sources sources;
    const char *id;
    const struct place *place;
    struct cached_place *next;
};

static void cached_free(struct cached_place *cached)
{
    arena_free(&cached->arena);
    free(cached);
}

static struct cached_place *add_place(struct place_cache *cache, const char *home, const char *id,
                                      struct problems *problems)
{
    struct cached_place *cached = calloc(1, sizeof(*cached));
    if (cached == NULL) {
        problem_out_of_memory(problems);
        return NULL;
    }
    cached->sources.before = cache->parts;
    cached->id = arena_copy(&cached->arena, id); /* the place's blocks keep it */
    if (cached->id == NULL)
        problem_out_of_memory(problems);
    else
        cached->place = place_load(home, cached->id, &cached->arena, &cached->sources, problems);
    /* Not remembered as missing: the next who asks is told again what is wrong with it. */
    if (cached->place == NULL) {
        cached_free(cached);
        return NULL;
    }
    cached->next = cache->first;
    cache->first = cached;
    if (cached->sources.count > 1)
        cache->parts = &cached->sources;
    return cached;
}

/* A caller rests on these files too, even when another had them read: they count for its
 * fingerprint. */
static bool list_sources(const struct sources *from, struct arena *arena, struct sources *to)
{
    for (const struct source *s = from->first; s != NULL; s = s->next) {
        struct source *copy = arena_alloc(arena, sizeof(*copy));
        if (copy == NULL)
            return false;
        /* The text itself is shared, only the listing is the caller's. */
        *copy = *s;
        copy->next = to->first;
        to->first = copy;
        to->count++;
    }
    return true;
}

const struct place *place_cache_get(struct place_cache *cache, const char *home, const char *id,
                                    struct arena *arena, struct sources *sources,
                                    struct problems *problems)
{
    struct cached_place *cached = cache->first;
    /* A few dozen places at most: a list is quick enough. */
    while (cached != NULL && strcmp(cached->id, id) != 0)
        cached = cached->next;
    if (cached == NULL)
        cached = add_place(cache, home, id, problems);
    if (cached == NULL)
        return NULL;
    if (!list_sources(&cached->sources, arena, sources)) {
        problem_out_of_memory(problems);
        return NULL;
    }
    return cached->place;
}

void place_cache_free(struct place_cache *cache)
{
    while (cache->first != NULL) {
        struct cached_place *cached = cache->first;
        cache->first = cached->next;
        cached_free(cached);
    }
    cache->parts = NULL;
}
