#include "judge/rulebook_share.h"

#include "base/strings.h"
#include "base/text.h"
#include "job/follows.h"
#include "judge/rulebook_check.h"

#include <stdlib.h>
#include <string.h>

/* Files ------------------------------------------------------------------------------------- */

static bool same_texts(const char *const *a, size_t a_count, const char *const *b, size_t b_count)
{
    bool same = a_count == b_count;
    for (size_t i = 0; same && i < a_count; i++)
        same = strcmp(a[i], b[i]) == 0;
    return same;
}

static const struct source *source_of(const struct sources *sources, const char *path)
{
    const struct source *source = sources->first;
    while (source != NULL && strcmp(source->path, path) != 0)
        source = source->next;
    return source;
}

struct listing {
    const struct sources *known;
    bool more;
};

static void look_for(void *data, const char *path)
{
    struct listing *listing = data;
    listing->more = listing->more || source_of(listing->known, path) == NULL;
}

/* They are read again: one may have been written since. */
static bool same_files(const char *home, const struct sources *known)
{
    struct arena arena = {0};
    struct sources read = {0};
    struct problems untold = {0};
    struct listing listing = {known, false};
    bool same = home_each(home, "rules", ".lua", 0, look_for, &listing) == 0 && !listing.more;
    for (const struct source *s = known->first; same && s != NULL; s = s->next) {
        const struct source *now = home_read(home, s->path, &arena, &read, &untold);
        same = now != NULL && now->length == s->length
               && (now->text == s->text || memcmp(now->text, s->text, s->length) == 0);
    }
    problems_free(&untold);
    arena_free(&arena);
    return same;
}

/* Profiles ---------------------------------------------------------------------------------- */

static bool same_zones(const struct profile *a, const struct profile *b)
{
    bool same = a->zone_count == b->zone_count;
    for (size_t i = 0; same && i < a->zone_count; i++) {
        const struct place_zone *one = &a->zones[i], *other = &b->zones[i];
        same = strcmp(one->name, other->name) == 0 && strcmp(one->ask, other->ask) == 0
               && strcmp(one->file, other->file) == 0 && one->line == other->line
               && same_texts(one->words.set, one->words.set_count, other->words.set,
                             other->words.set_count);
    }
    return same;
}

/* All of a profile but its figures that the files are loaded by. */
static bool loads_alike(const struct profile *a, const struct profile *b)
{
    return a->base_only == b->base_only
           && same_texts(a->rule_files, a->rule_file_count, b->rule_files, b->rule_file_count)
           && same_zones(a, b);
}

/* What is the law's own --------------------------------------------------------------------- */

static const struct figure *figure_now(const struct rulebook *book, const struct rulebook *other,
                                       size_t figure)
{
    return book->slots.figures[other->slots.numbers[figure] - 1];
}

/* The rows by which figures tell facts. */
static struct follows *follows_now(struct rulebook *book, const struct rulebook *other,
                                   const struct follows *follows)
{
    struct follows *now = arena_alloc(&book->arena, sizeof(*now));
    if (now == NULL)
        return NULL;
    *now = *follows;
    if (follows->told == NULL)
        return now;
    now->told = arena_array(&book->arena, follows->count + 1, sizeof(*now->told));
    now->figures = arena_array(&book->arena, follows->count + 1, sizeof(*now->figures));
    for (size_t i = 0; now->told != NULL && now->figures != NULL && i < follows->count; i++) {
        const struct figure *figure = figure_now(book, other, follows->figures[i]);
        now->told[i] = &figure->value;
        now->figures[i] = (size_t)(figure - book->profile->figures);
    }
    return now;
}

static void take_follows(struct rulebook *book, const struct rulebook *other)
{
    struct follows **at = &book->fields.follows;
    *at = NULL;
    for (const struct follows *f = other->fields.follows; f != NULL && !book->arena.failed;
         f = f->next)
        if ((*at = follows_now(book, other, f)) != NULL)
            at = &(*at)->next;
    if (*at != NULL)
        *at = NULL;
}

static bool is_sound(struct rulebook *book)
{
    struct problems problems = {0};
    rulebook_check(book, &problems);
    const bool sound = problems.count == 0 && !problems.out_of_memory && !book->arena.failed;
    problems_free(&problems);
    return sound;
}

struct rulebook *rulebook_share(const struct rulebook *other, const char *home,
                                const struct profile *profile)
{
    if (!loads_alike(other->profile, profile))
        return NULL;
    struct rulebook *book = malloc(sizeof(*book));
    if (book == NULL)
        return NULL;
    /* From here it is one of those that hold the rules, and freed as such. */
    *book = *other;
    book->whole->holders++;
    book->arena = (struct arena){0};
    book->profile = profile;
    book->memory = NULL;
    book->survey = NULL;
    book->judged = book->finding_count = 0;
    if (figure_slots_fit(book, other) && same_files(home, &other->sources)) {
        take_follows(book, other);
        if (!book->arena.failed && is_sound(book))
            return book;
    }
    rulebook_free(book);
    return NULL;
}
