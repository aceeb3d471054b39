#include "profile/place_zone.h"

#include <string.h>

static bool has_zone(const struct profile *profile, const char *name)
{
    for (size_t i = 0; i < profile->zone_count; i++)
        if (strcmp(profile->zones[i].name, name) == 0)
            return true;
    return false;
}

void place_zones_lay(struct profile *profile, const struct block *const *blocks,
                     const struct place *const *places, size_t depth)
{
    size_t capacity = 0;
    for (size_t i = 0; i < depth; i++)
        for (const struct entry_zone *z = blocks[i]->zones; z != NULL; z = z->next)
            capacity++;
    profile->zones = arena_array(&profile->arena, capacity + 1, sizeof(*profile->zones));
    for (size_t i = 0; profile->zones != NULL && i < depth; i++)
        for (const struct entry_zone *z = blocks[i]->zones; z != NULL; z = z->next)
            if (!has_zone(profile, z->name))
                profile->zones[profile->zone_count++] = (struct place_zone){
                    .name = z->name,
                    .ask = z->ask,
                    .words = z->words,
                    .file = places[i]->source->path,
                    .line = z->line};
}
