#include "profile/place_list.h"

#include "base/nearest.h"
#include "profile/place_list_made.h"
#include "profile/places.h"

#include <ctype.h>
#include <stdlib.h>
#include <string.h>
#include <strings.h>

/* What stands between words of titles and ids. */
static const char BETWEEN[] = " -/_,().'";

/* Gathering -------------------------------------------------------------------- */

/* The last block: editions stand in the order of their days. */
static const struct block *newest(const struct place *place)
{
    const struct block *last = place == NULL ? NULL : place->blocks;
    while (last != NULL && last->next != NULL)
        last = last->next;
    return last;
}

/* Problems are left aside: a place that does not load is listed among those skipped, and
 * proof says what is wrong with it. */
static const struct block *block_of(struct place_cache *cache, const char *home, const char *id,
                                    struct place_list *list)
{
    struct sources sources = {0};
    struct problems problems = {0};
    const struct place *place = place_cache_get(cache, home, id, &list->arena, &sources, &problems);
    list->arena.failed |= problems.out_of_memory;
    problems_free(&problems);
    return newest(place);
}

/* What is said by the nearest of those it follows. A chain is short, and a circle ends. */
static void look_up_the_chain(struct place_cache *cache, const char *home, struct place_list *list,
                              const struct block *block, struct listed_place *place)
{
    for (int i = 0; block != NULL && i < PROFILE_LONGEST_CHAIN; i++) {
        if (place->book == NULL)
            place->book = block->edition;
        if (place->upper == NULL && i > 0)
            place->upper = block->title;
        /* How old the reading is counts also where only the book above was read: seen_of tells
         * whose page it was. */
        if (place->as_seen == NULL && block->as_seen != NULL) {
            place->as_seen = block->as_seen;
            place->seen_of = i > 0 ? block->title : NULL;
        }
        block = block->follows == NULL ? NULL : block_of(cache, home, block->follows, list);
    }
}

static int by_text(const void *a, const void *b)
{
    return strcmp(*(const char *const *)a, *(const char *const *)b);
}

static void note_figures(struct arena *arena, const struct block *block, struct listed_place *place)
{
    struct strings topics = {0};
    for (const struct entry *e = block->entries; e != NULL; e = e->next) {
        place->figures++;
        strings_add_once(&topics, arena, arena_copy_n(arena, e->name, strcspn(e->name, ".")));
    }
    if (topics.count > 1)
        qsort(topics.items, topics.count, sizeof(*topics.items), by_text);
    place->topics = topics.items;
    place->topic_count = topics.count;
}

static void note_lacking(struct arena *arena, const struct block *block, struct listed_place *place)
{
    struct strings lacking = {0};
    if (block->draft != NULL)
        strings_add(&lacking, arena, arena_format(arena, "only a draft: %s", block->draft));
    if (block->borrowed != NULL)
        strings_add(&lacking, arena, arena_format(arena, "its own book: %s", block->borrowed));
    if (block->unsure != NULL)
        strings_add(&lacking, arena, block->unsure);
    for (const struct entry_gap *gap = block->gaps; gap != NULL; gap = gap->next)
        strings_add(&lacking, arena,
                    arena_format(arena, "where %s is yes: %s", gap->fact, gap->why));
    for (const struct entry *e = block->entries; e != NULL; e = e->next)
        if (e->pages != NULL && !profile_set_has(&block->read, e->pages))
            strings_add_once(&lacking, arena,
                             arena_format(arena, "its pages on %s were not read", e->pages));
    place->lacking = lacking.items;
    place->lacking_count = lacking.count;
}

static struct listed_place *list_place(struct place_cache *cache, const char *home,
                                       struct place_list *list, const struct block *block)
{
    struct listed_place *place = arena_alloc(&list->arena, sizeof(*place));
    if (place == NULL)
        return NULL;
    /* A place that covers a county as a whole lists no cities. */
    const bool cities = block->covers.kind == VALUE_SET;
    *place = (struct listed_place){
        .id = block->id,
        .title = block->title,
        .code = block->code,
        .follows = block->follows,
        .invented = block->invented,
        .from = block->from,
        .to = block->to,
        .covers = cities ? block->covers.set : NULL,
        .cover_count = cities ? block->covers.set_count : 0,
    };
    look_up_the_chain(cache, home, list, block, place);
    note_figures(&list->arena, block, place);
    note_lacking(&list->arena, block, place);
    return place;
}

int place_list_make(struct place_cache *cache, const char *home, struct place_list *list)
{
    struct strings ids = {0};
    *list = (struct place_list){0};
    if (place_list_made_take(home, list))
        return list->arena.failed ? -1 : 0;
    struct listed_place **at = &list->first;
    places_ids(home, &ids, &list->arena);
    for (size_t i = 0; i < ids.count && !list->arena.failed; i++) {
        const struct block *block = block_of(cache, home, ids.items[i], list);
        if (block == NULL)
            strings_add(&list->skipped, &list->arena, ids.items[i]);
        /* What is only followed by others is no place that a job can name. */
        if (block == NULL || block->base_only)
            continue;
        *at = list_place(cache, home, list, block);
        if (*at != NULL)
            at = &(*at)->next;
    }
    return list->arena.failed ? -1 : 0;
}

/* Searching -------------------------------------------------------------------- */

/* Some word of the text begins with these letters. */
static bool begins_a_word(const char *text, const char *word, size_t length)
{
    while (text != NULL && *text != '\0') {
        text += strspn(text, BETWEEN);
        if (strncasecmp(text, word, length) == 0)
            return true;
        text += strcspn(text, BETWEEN);
    }
    return false;
}

/* Also by the cities it is the department of: people look for where they live. */
static bool has_word(const struct listed_place *place, const char *word, size_t length)
{
    if (begins_a_word(place->title, word, length) || begins_a_word(place->id, word, length))
        return true;
    for (size_t i = 0; i < place->cover_count; i++)
        if (begins_a_word(place->covers[i], word, length))
            return true;
    return false;
}

bool place_list_fits(const struct listed_place *place, const char *words)
{
    /* All words must be found, each anywhere: "elm county" and "county elm" are one search. */
    for (words += strspn(words, BETWEEN); *words != '\0'; words += strspn(words, BETWEEN)) {
        const size_t length = strcspn(words, BETWEEN);
        if (!has_word(place, words, length))
            return false;
        words += length;
    }
    return true;
}

/* By single words: a slip in one of several is nearer to that word than to a whole title. */
static void offer_words(struct place_list *list, struct nearest *nearest, const char *text)
{
    while (text != NULL && *text != '\0') {
        text += strspn(text, BETWEEN);
        const char *word = arena_copy_n(&list->arena, text, strcspn(text, BETWEEN));
        if (word != NULL && word[0] != '\0')
            nearest_offer(nearest, word);
        text += strcspn(text, BETWEEN);
    }
}

const char *place_list_near(struct place_list *list, const char *words)
{
    struct nearest nearest;
    nearest_start(&nearest, words);
    for (const struct listed_place *place = list->first; place != NULL; place = place->next) {
        nearest_offer(&nearest, place->id);
        offer_words(list, &nearest, place->title);
        for (size_t c = 0; c < place->cover_count; c++)
            nearest_offer(&nearest, place->covers[c]);
    }
    return nearest.name;
}

void place_list_free(struct place_list *list)
{
    arena_free(&list->arena);
    *list = (struct place_list){0};
}
