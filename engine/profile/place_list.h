/* place_list.h - the places of a home as their files say them, to be listed and searched
 * by words. */
#ifndef EAVEMARK_PROFILE_PLACE_LIST_H
#define EAVEMARK_PROFILE_PLACE_LIST_H

#include "base/strings.h"
#include "profile/place_cache.h"

#include <stdbool.h>

/* A place by its newest edition: of it only what a list says. Texts are those of the cache. */
struct listed_place {
    const char *id, *title;
    const char *code, *follows; /* or NULL */
    bool invented;
    long from, to;             /* days of this edition; 0: no beginning, no end */
    const char *const *covers; /* cities and towns it is the department of */
    size_t cover_count;
    const char *book;          /* the book it stands on, by the nearest that names one; or NULL */
    const char *upper;         /* title of what it follows, or NULL */
    const char *as_seen;       /* its own, or else that of the nearest it follows; or NULL */
    const char *seen_of;       /* title of that one when it is not its own; or NULL */
    const char *const *topics; /* of its own figures, by name, each once */
    size_t topic_count;
    int figures;                /* its own: with a value, or restated */
    const char *const *lacking; /* what of its law is not carried, in words */
    size_t lacking_count;
    struct listed_place *next;
};

struct place_list {
    struct arena arena;
    struct listed_place *first; /* places by id; what only others build on is left out */
    struct strings skipped;     /* ids of files that do not load */
};

/* All places of the home: of the home inside as the build listed them (place_list_made.h),
 * of a folder by its files. The cache must outlive the list. Returns 0, or -1 when out of
 * memory. */
int place_list_make(struct place_cache *cache, const char *home, struct place_list *list);

/* True when every one of the words begins a word of the place's title, of its id or of
 * what it covers; letters large or small. No words fit every place. */
bool place_list_fits(const struct listed_place *place, const char *words);

/* The word of any title, id or covered city that is nearest to what was asked for; or
 * NULL. */
const char *place_list_near(struct place_list *list, const char *words);

void place_list_free(struct place_list *list);

#endif
