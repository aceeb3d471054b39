#include "profile/shelf.h"

#include <stdlib.h>
#include <string.h>

struct shelved {
    struct arena arena; /* its own: what fails to load goes whole */
    struct sources sources;
    const char *id;
    const struct place *place;
    struct shelved *next;
};

static void shelved_free(struct shelved *shelved)
{
    arena_free(&shelved->arena);
    free(shelved);
}

static struct shelved *take_in(struct shelf *shelf, const char *home, const char *id,
                               struct problems *problems)
{
    struct shelved *shelved = calloc(1, sizeof(*shelved));
    if (shelved == NULL) {
        problem_out_of_memory(problems);
        return NULL;
    }
    shelved->id = arena_copy(&shelved->arena, id); /* the place's blocks keep it */
    if (shelved->id == NULL)
        problem_out_of_memory(problems);
    else
        shelved->place = place_load(home, shelved->id, &shelved->arena, &shelved->sources,
                                    problems);
    if (shelved->place == NULL) {
        shelved_free(shelved);
        return NULL;
    }
    shelved->next = shelf->first;
    shelf->first = shelved;
    return shelved;
}

static bool list_sources(const struct sources *from, struct arena *arena, struct sources *to)
{
    for (const struct source *s = from->first; s != NULL; s = s->next) {
        struct source *copy = arena_alloc(arena, sizeof(*copy));
        if (copy == NULL)
            return false;
        *copy = *s;
        copy->next = to->first;
        to->first = copy;
        to->count++;
    }
    return true;
}

const struct place *shelf_place(struct shelf *shelf, const char *home, const char *id,
                                struct arena *arena, struct sources *sources,
                                struct problems *problems)
{
    struct shelved *shelved = shelf->first;
    while (shelved != NULL && strcmp(shelved->id, id) != 0)
        shelved = shelved->next;
    if (shelved == NULL)
        shelved = take_in(shelf, home, id, problems);
    if (shelved == NULL)
        return NULL;
    if (!list_sources(&shelved->sources, arena, sources)) {
        problem_out_of_memory(problems);
        return NULL;
    }
    return shelved->place;
}

void shelf_free(struct shelf *shelf)
{
    while (shelf->first != NULL) {
        struct shelved *shelved = shelf->first;
        shelf->first = shelved->next;
        shelved_free(shelved);
    }
}
