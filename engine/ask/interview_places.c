/* interview_places.c - a place found by the words of an answer. */
#include "ask/interview_parts.h"

#include <string.h>

/* More names than a screen shows help nobody. */
enum { PLACES_SHOWN = 20 };

/* Read once; their words are what a place is found by. */
static struct place_list *places_of(struct interview *interview)
{
    if (!interview->places_made
        && place_list_make(&interview->laws->cache, interview->laws->home, &interview->places) != 0)
        interview->kept.failed = true;
    interview->places_made = true;
    return &interview->places;
}

/* Those that fit, so that the next words may tell one of them. */
static void say_places(const struct place_list *places, const char *words, struct text *why)
{
    size_t found = 0;
    for (const struct listed_place *place = places->first; place != NULL; place = place->next)
        if (place_list_fits(place, words) && ++found <= PLACES_SHOWN)
            text_addf(why, "%s%s (%s)", found == 1 ? "" : ", ", place->title, place->id);
    if (found > PLACES_SHOWN)
        text_addf(why, " and %zu more", found - PLACES_SHOWN);
}

/* An id is taken to the letter before words are looked for: "example/a" is no search. */
const char *interview_place_by(struct interview *interview, const char *words, struct text *why)
{
    struct place_list *places = places_of(interview);
    const char *only = NULL;
    size_t found = 0;
    for (const struct listed_place *place = places->first; place != NULL; place = place->next) {
        if (strcmp(place->id, words) == 0)
            return place->id;
        if (words[0] != '\0' && place_list_fits(place, words))
            only = found++ == 0 ? place->id : only;
    }
    if (found == 1)
        return only;
    if (found > 1) {
        text_addf(why, "\"%s\" fits several: ", words);
        say_places(places, words, why);
        return NULL;
    }
    const char *near = place_list_near(places, words);
    text_addf(why, "no place is named \"%s\"", words);
    if (near != NULL)
        text_addf(why, " (did you mean %s?)", near);
    return NULL;
}
