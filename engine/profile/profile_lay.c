/* profile_lay.c - what else places say, laid over one another: gaps, facts, drops, rule files. */
#include "profile/profile_making.h"

#include <string.h>

static bool has_gap(const struct profile *profile, const char *fact)
{
    for (size_t i = 0; i < profile->gap_count; i++)
        if (strcmp(profile->gaps[i].fact, fact) == 0)
            return true;
    return false;
}

/* A nearer place that speaks of the fact knows better. */
void profile_lay_gaps(struct resolving *r)
{
    struct profile *profile = r->profile;
    size_t capacity = 0;
    for (size_t i = 0; i < r->depth; i++)
        for (const struct entry_gap *g = r->blocks[i]->gaps; g != NULL; g = g->next)
            capacity++;
    profile->gaps = arena_array(&profile->arena, capacity + 1, sizeof(struct law_gap));
    if (profile->gaps == NULL)
        return;
    for (size_t i = 0; i < r->depth; i++)
        for (const struct entry_gap *g = r->blocks[i]->gaps; g != NULL; g = g->next)
            if (!has_gap(profile, g->fact))
                profile->gaps[profile->gap_count++] = (struct law_gap){
                    .fact = g->fact,
                    .rules = g->rules,
                    .but = g->but,
                    .orders = g->orders,
                    .why = g->why,
                    .file = r->places[i]->source->path,
                    .line = g->line};
}

/* A nearer place that speaks of it knows better. What a block follows without being sure
 * that it binds here is no word on the place; a draft's word is none either. */
void profile_lay_facts(struct resolving *r)
{
    struct profile *profile = r->profile;
    size_t capacity = 0;
    for (size_t i = 0; i < r->depth; i++)
        for (const struct entry_fact *f = r->blocks[i]->facts; f != NULL; f = f->next)
            capacity++;
    profile->facts = arena_array(&profile->arena, capacity + 1, sizeof(struct place_fact));
    for (size_t i = 0; i < r->depth && profile->facts != NULL; i++) {
        const struct block *block = r->blocks[i];
        for (const struct entry_fact *f = block->facts; f != NULL; f = f->next)
            if (block->draft == NULL && profile_fact(profile, f->name) == NULL)
                profile->facts[profile->fact_count++] = (struct place_fact){
                    .name = f->name,
                    .value = f->value,
                    .has_least = f->has_least,
                    .has_most = f->has_most,
                    .least = f->least,
                    .most = f->most,
                    .one_of = f->one_of,
                    .unit = f->unit,
                    .cite = {f->book != NULL ? f->book : profile_code_name(r, i), f->cite,
                             f->status, f->source},
                    .by = block->title,
                    .file = r->places[i]->source->path,
                    .line = f->line};
        if (block->borrowed != NULL || block->unsure != NULL)
            break;
    }
}

/* Nearest last, as profile_drop looks for them. */
void profile_lay_drops(struct resolving *r)
{
    struct profile *profile = r->profile;
    size_t capacity = 0;
    for (size_t i = 0; i < r->depth; i++)
        for (const struct entry_drop *d = r->blocks[i]->drops; d != NULL; d = d->next)
            capacity++;
    profile->drops = arena_array(&profile->arena, capacity + 1, sizeof(struct drop));
    if (profile->drops == NULL)
        return;
    for (size_t i = r->depth; i-- > 0;)
        for (const struct entry_drop *d = r->blocks[i]->drops; d != NULL; d = d->next)
            profile->drops[profile->drop_count++] = (struct drop){
                d->rule, d->reason, r->blocks[i]->title, r->places[i]->source->path, d->line};
}

/* "tamarack.rules.lua" beside jurisdictions/example/tamarack.lua. */
static const char *path_beside(struct arena *arena, const char *file, const char *name)
{
    const char *slash = strrchr(file, '/');
    return arena_format(arena, "%.*s/%s", (int)(slash - file), file, name);
}

/* The farthest first: a nearer place's rules may rest on what those declare. */
void profile_lay_rule_files(struct resolving *r)
{
    struct profile *profile = r->profile;
    profile->rule_files = arena_array(&profile->arena, r->depth + 1, sizeof(char *));
    if (profile->rule_files == NULL)
        return;
    for (size_t i = r->depth; i-- > 0;)
        if (r->blocks[i]->rules != NULL)
            profile->rule_files[profile->rule_file_count++] = path_beside(
                &profile->arena, r->places[i]->source->path, r->blocks[i]->rules);
}
