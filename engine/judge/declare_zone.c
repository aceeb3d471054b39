/* declare_zone.c - the zones of a place's own map, declared as fields of its jobs. */
#include "judge/bind_declare.h"

#include "job/stage.h"
#include "profile/places.h"

#include <string.h>

/* Adds what the field lacks of the choices. False when out of memory. */
static bool widen(struct arena *arena, struct field *field, const struct field *other)
{
    const size_t room = field->choice_count + other->choice_count;
    const char **choices = arena_array(arena, room + 1, sizeof(*choices));
    size_t count = field->choice_count;
    if (choices == NULL)
        return false;
    if (count > 0)
        memcpy(choices, field->choices, count * sizeof(*choices));
    for (size_t i = 0; i < other->choice_count && count < CHOICES_MOST; i++) {
        bool known = false;
        for (size_t k = 0; k < field->choice_count; k++)
            known = known || strcmp(field->choices[k], other->choices[i]) == 0;
        if (!known)
            choices[count++] = other->choices[i];
    }
    if (count > field->choice_count)
        /* Several places ask in words of their own, and none of them is right for all. */
        field->ask = "What is so here, in the words of the place itself? (those of all places "
                     "that ask it are listed; fields --jurisdiction tells which are whose)";
    /* Where the first place's words end, for whoever lists them apart. */
    if (field->choices_of_first == 0)
        field->choices_of_first = field->choice_count;
    field->choices = choices;
    field->choice_count = count;
    return true;
}

bool declare_beside(struct declaring *reading, const char *name, const struct field *spec)
{
    /* Under one law the same name twice is an error; where the fields of all places are listed it
     * is one field. */
    struct field *known = reading->fields_only ? fields_find(&reading->book->fields, name) : NULL;
    if (known == NULL)
        return false;
    if (known->choice_count > 0 && known->type == spec->type
        && !widen(&reading->book->arena, known, spec))
        problem_out_of_memory(reading->problems);
    return true;
}

/* A choice of the place's words, in the part of the job that is about the site. */
static void declare(struct declaring *reading, const char *name, const char *ask,
                    const struct value *words, const char *file, int line)
{
    const char *why = NULL; /* stays so where memory lacks */
    const char **choices = arena_array(&reading->book->arena, words->set_count + 1,
                                       sizeof(*choices));
    if (choices == NULL)
        return;
    memcpy(choices, words->set, words->set_count * sizeof(*choices));
    struct field spec = {.type = FIELD_CHOICE,
                         .ask = ask,
                         .stage = STAGE_PERMIT,
                         .file = file,
                         .choices = choices,
                         .choice_count = words->set_count};
    if (declare_beside(reading, name, &spec))
        return;
    if (fields_add(&reading->book->fields, name, &spec, &why) != NULL)
        return;
    if (why == NULL)
        problem_out_of_memory(reading->problems);
    else
        problem_at_line(reading->problems, PROBLEM_RULES, file, line, 0, "zone \"%s\": %s", name,
                        why);
}

void declare_zones(struct declaring *reading)
{
    const struct profile *profile = reading->book->profile;
    for (size_t i = 0; i < profile->zone_count; i++) {
        const struct place_zone *zone = &profile->zones[i];
        declare(reading, zone->name, zone->ask, &zone->words, zone->file, zone->line);
    }
}

/* Only files that hold the word are read as a place's. */
static bool speaks_of_zones(struct declaring *reading, const char *id, struct arena *arena,
                            struct sources *sources, struct problems *untold)
{
    const char *path = arena_format(arena, "jurisdictions/%s.lua", id);
    const struct source *source = path == NULL
                                      ? NULL
                                      : home_read(reading->home, path, arena, sources, untold);
    return source != NULL && strstr(source->text, "zones = {") != NULL;
}

void declare_every_zone(struct declaring *reading)
{
    struct arena *arena = &reading->book->arena;
    struct sources sources = {0};
    struct problems untold = {0};
    struct strings ids = {0};
    places_ids(reading->home, &ids, arena);
    for (size_t i = 0; i < ids.count && !arena->failed; i++) {
        const struct place *place = speaks_of_zones(reading, ids.items[i], arena, &sources, &untold)
                                        ? place_load(reading->home, ids.items[i], arena, &sources,
                                                     &untold)
                                        : NULL;
        for (const struct block *b = place == NULL ? NULL : place->blocks; b != NULL; b = b->next)
            for (const struct entry_zone *z = b->zones; z != NULL; z = z->next)
                declare(reading, z->name, z->ask, &z->words, place->source->path, z->line);
    }
    /* A place that does not load leaves its words out: whoever lists fields says so. */
    if (untold.count > 0)
        reading->book->fields.partial = true;
    if (untold.out_of_memory)
        problem_out_of_memory(reading->problems);
    problems_free(&untold);
}
