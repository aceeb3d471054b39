#include "profile/profile_making.h"

#include "base/date.h"
#include "base/nearest.h"
#include "base/place_id.h"
#include "profile/place_zone.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>

bool profile_exists(const char *home, const char *id)
{
    char path[256];
    if (!place_id_is_sound(id))
        return false;
    snprintf(path, sizeof(path), "jurisdictions/%s.lua", id);
    return home_has(home, path);
}

/* Near names ---------------------------------------------------------------- */

enum { NEAR_NAMES = 5, NEAR_BYTES = PROFILE_NEAR_BYTES / NEAR_NAMES };

struct near {
    const char *wanted;
    char names[NEAR_NAMES][NEAR_BYTES];
    size_t distances[NEAR_NAMES];
    size_t count;
};

/* Only the last part was typed, or is what was meant. */
static const char *last_part(const char *id)
{
    const char *slash = strrchr(id, '/');
    return slash == NULL ? id : slash + 1;
}

static void near_offer(void *data, const char *path)
{
    struct near *near = data;
    char id[NEAR_BYTES];
    size_t length;
    const char *from = home_place_id(path, &length);
    if (from == NULL || length >= sizeof(id))
        return;
    memcpy(id, from, length);
    id[length] = '\0';
    const size_t whole = nearest_distance(near->wanted, id);
    const size_t part = nearest_distance(last_part(near->wanted), last_part(id));
    const size_t distance = whole < part ? whole : part;
    if (near->count == NEAR_NAMES && distance >= near->distances[NEAR_NAMES - 1])
        return;
    /* Insertion into the few nearest so far. */
    size_t at = near->count < NEAR_NAMES ? near->count++ : NEAR_NAMES - 1;
    for (; at > 0 && near->distances[at - 1] > distance; at--) {
        memcpy(near->names[at], near->names[at - 1], NEAR_BYTES);
        near->distances[at] = near->distances[at - 1];
    }
    memcpy(near->names[at], id, length + 1);
    near->distances[at] = distance;
}

void profile_near_names(const char *home, const char *wanted, char *text, size_t size)
{
    struct near near = {.wanted = wanted};
    text[0] = '\0';
    home_each(home, "jurisdictions", ".lua", 6, near_offer, &near);
    for (size_t i = 0; i < near.count; i++) {
        const size_t used = strlen(text);
        snprintf(text + used, size - used, "%s%s", i == 0 ? "" : ", ", near.names[i]);
    }
}

static void say_unknown(struct resolving *r, const char *id)
{
    char names[PROFILE_NEAR_BYTES];
    profile_near_names(r->home, id, names, sizeof(names));
    problem_at(r->problems, PROBLEM_JOB, r->job_file, "/jurisdiction",
               "no jurisdiction is named \"%s\"; the nearest are: %s", id,
               names[0] == '\0' ? "(none found: is this the right --home?)" : names);
}

/* The chain ------------------------------------------------------------------ */

/* "example/a -> us-xx -> next" */
static void chain_text(const struct resolving *r, const char *next, char *text, size_t size)
{
    text[0] = '\0';
    for (size_t i = 0; i < r->depth; i++) {
        const size_t used = strlen(text);
        snprintf(text + used, size - used, "%s -> ", r->blocks[i]->id);
    }
    const size_t used = strlen(text);
    snprintf(text + used, size - used, "%s", next);
}

/* The block that binds on the date, or NULL. */
static const struct block *block_on(const struct place *place, long date)
{
    for (const struct block *b = place->blocks; b != NULL; b = b->next)
        if (b->from <= date && (b->to == 0 || date < b->to))
            return b;
    return NULL;
}

static void say_no_edition(struct resolving *r, const struct place *place)
{
    char day[16], dates[512] = "";
    for (const struct block *b = place->blocks; b != NULL; b = b->next) {
        char from[16] = "the beginning", to[16] = "no end";
        if (b->from != 0)
            date_write(b->from, from);
        if (b->to != 0)
            date_write(b->to, to);
        const size_t used = strlen(dates);
        snprintf(dates + used, sizeof(dates) - used, "%sfrom %s to %s", used == 0 ? "" : "; ", from,
                 to);
    }
    date_write(r->date, day);
    problem_at(r->problems, PROBLEM_JOB, r->job_file, "/date",
               "no edition of %s covers %s; it has: %s", place->blocks->id, day, dates);
}

/* Checks that a parent may be followed: it exists and is not already in the chain. */
static bool may_follow(struct resolving *r, const char *id)
{
    char chain[1024];
    const struct block *child = r->blocks[r->depth - 1];
    const struct place *place = r->places[r->depth - 1];
    chain_text(r, id, chain, sizeof(chain));
    for (size_t i = 0; i < r->depth; i++) {
        if (strcmp(r->blocks[i]->id, id) == 0) {
            problem_at_line(r->problems, PROBLEM_RULES, place->source->path, child->line, 0,
                            "follows itself in a circle: %s", chain);
            return false;
        }
    }
    if (r->depth == PROFILE_LONGEST_CHAIN) {
        problem_at_line(r->problems, PROBLEM_RULES, place->source->path, child->line, 0,
                        "follows too long a chain: %s", chain);
        return false;
    }
    if (!profile_exists(r->home, id)) {
        char names[PROFILE_NEAR_BYTES];
        profile_near_names(r->home, id, names, sizeof(names));
        problem_at_line(r->problems, PROBLEM_RULES, place->source->path, child->line, 0,
                        "follows \"%s\", which does not exist (%s); the nearest are: %s", id, chain,
                        names);
        return false;
    }
    return true;
}

/* The profile holds as long as all of its blocks do. */
static void intersect_dates(struct profile *profile, const struct block *block)
{
    if (block->from > profile->from)
        profile->from = block->from;
    if (block->to != 0 && (profile->to == 0 || block->to < profile->to))
        profile->to = block->to;
}

/* Follows the chain from id to its end. */
static bool resolve_chain(struct resolving *r, const char *id)
{
    while (id != NULL) {
        if (r->depth > 0 && !may_follow(r, id))
            return false;
        struct profile *profile = r->profile;
        const struct place *place = r->cache == NULL
                                        ? place_load(r->home, id, &profile->arena,
                                                     &profile->sources, r->problems)
                                        : place_cache_get(r->cache, r->home, id, &profile->arena,
                                                          &profile->sources, r->problems);
        if (place == NULL)
            return false;
        const struct block *block = block_on(place, r->date);
        if (block == NULL) {
            say_no_edition(r, place);
            return false;
        }
        r->places[r->depth] = place;
        r->blocks[r->depth] = block;
        r->depth++;
        intersect_dates(profile, block);
        id = block->follows;
    }
    return true;
}

/* Each reason once: a city often repeats its state's. */
static void add_doubt(struct profile *profile, const char *doubt)
{
    for (size_t i = 0; i < profile->doubt_count && doubt != NULL; i++)
        if (strcmp(profile->doubts[i], doubt) == 0)
            return;
    if (doubt != NULL)
        profile->doubts[profile->doubt_count++] = doubt;
}

static void lay_doubts(struct resolving *r)
{
    struct profile *profile = r->profile;
    /* Three reasons a block at most. */
    profile->doubts = arena_array(&profile->arena, 3 * r->depth + 1, sizeof(char *));
    if (profile->doubts == NULL)
        return;
    for (size_t i = 0; i < r->depth; i++) {
        add_doubt(profile, r->blocks[i]->draft);
        add_doubt(profile, r->blocks[i]->unsure);
        add_doubt(profile, r->blocks[i]->borrowed);
    }
}

/* The nearest place names the profile; edition and wording come from the nearest that has
 * one. */
static void lay_heading(struct resolving *r)
{
    struct profile *profile = r->profile;
    const struct block *nearest = r->blocks[0];
    profile->id = nearest->id;
    profile->title = nearest->title;
    profile->invented = nearest->invented;
    profile->base_only = nearest->base_only;
    profile->model = nearest->model;
    profile->chain = arena_array(&profile->arena, r->depth, sizeof(char *));
    if (profile->chain == NULL)
        return;
    for (size_t i = 0; i < r->depth; i++) {
        profile->chain[i] = r->blocks[i]->id;
        if (profile->edition == NULL)
            profile->edition = r->blocks[i]->edition;
        if (profile->as_seen == NULL)
            profile->as_seen = r->blocks[i]->as_seen;
    }
    profile->chain_count = r->depth;
    lay_doubts(r);
    if (profile->edition == NULL)
        profile->edition = nearest->title;
    profile->own_code = profile_code_name(r, 0);
}

struct profile *profile_resolve(const char *home, const char *id, long date, const char *job_file,
                                struct problems *problems)
{
    return profile_resolve_from(NULL, home, id, date, job_file, problems);
}

struct profile *profile_resolve_from(struct place_cache *cache, const char *home, const char *id,
                                     long date, const char *job_file, struct problems *problems)
{
    struct resolving r = {
        .cache = cache, .home = home, .job_file = job_file, .date = date, .problems = problems};
    if (!profile_exists(home, id)) {
        say_unknown(&r, id);
        return NULL;
    }
    const size_t before = problems->count;
    r.profile = calloc(1, sizeof(*r.profile));
    if (r.profile == NULL) {
        problem_out_of_memory(problems);
        return NULL;
    }
    /* Everything below ends up in the profile's arena, so that it stands alone; or, with
     * a cache, in the cache's. */
    char *own_id = arena_copy(&r.profile->arena, id);
    if (own_id != NULL && resolve_chain(&r, own_id)) {
        lay_heading(&r);
        profile_figures_lay(&r);
        profile_settle_readings(&r);
        profile_settle_doubts(&r);
        profile_settle_pages(&r);
        profile_settle_at(&r);
        profile_settle_ways(&r);
        profile_lay_drops(&r);
        profile_lay_gaps(&r);
        profile_lay_facts(&r);
        place_zones_lay(r.profile, r.blocks, r.places, r.depth);
        profile_lay_rule_files(&r);
    }
    if (r.profile->arena.failed)
        problem_out_of_memory(problems);
    if (problems->count != before || problems->out_of_memory) {
        profile_free(r.profile);
        return NULL;
    }
    return r.profile;
}

void profile_free(struct profile *profile)
{
    if (profile == NULL)
        return;
    arena_free(&profile->arena);
    free(profile);
}
