#include "law/law.h"

#include "judge/rulebook_share.h"

#include <stdlib.h>
#include <string.h>

/* Takes a half-made one: what is not there yet is NULL. */
static void law_free(struct law *law)
{
    if (law == NULL)
        return;
    rulebook_free(law->book);
    profile_free(law->profile);
    free(law);
}

/* A law is good for every day of its stretch [from, to); to 0 is open. The bare catalogue
 * has no profile. */
struct law *laws_known(const struct laws *laws, const char *id, long date)
{
    for (struct law *law = laws->first; law != NULL; law = law->next)
        if (law->profile != NULL && strcmp(law->profile->id, id) == 0 && law->profile->from <= date
            && (law->profile->to == 0 || date < law->profile->to))
            return law;
    return NULL;
}

/* The two lists of files, copied into one for the fingerprint. */
static int law_fingerprint(struct law *law)
{
    struct arena arena = {0};
    struct sources all = {0};
    const bool listed = home_sources_add(&all, law->profile->sources.first, &arena)
                        && home_sources_add(&all, law->book->sources.first, &arena);
    if (listed)
        home_fingerprint(&all, law->fingerprint);
    arena_free(&arena);
    return listed ? 0 : -1;
}

/* Out of memory is the one problem that may not be lost with the rest. */
void laws_drop_problems(struct laws *laws, struct problems *problems)
{
    laws->out_of_memory = laws->out_of_memory || problems->out_of_memory;
    problems_free(problems);
}

/* Was one with the same rules before it in the list? */
static bool is_again(const struct laws *laws, const struct law *law)
{
    for (const struct law *l = laws->first; l != law; l = l->next)
        if (l->book != NULL && l->book->whole == law->book->whole)
            return true;
    return false;
}

/* One of its own only where no other law's does. */
static struct rulebook *book_for(const struct laws *laws, const struct profile *profile,
                                 struct problems *problems)
{
    for (const struct law *law = laws->first; law != NULL; law = law->next) {
        struct rulebook *shared = law->book == NULL || law->profile == NULL || is_again(laws, law)
                                      ? NULL
                                      : rulebook_share(law->book, laws->home, profile);
        if (shared != NULL)
            return shared;
    }
    return rulebook_load(laws->home, profile, problems);
}

/* NULL with problems when its files are no longer what they were. */
static const struct law *law_wake(struct laws *laws, struct law *law, struct problems *problems)
{
    law->used = ++laws->used;
    if (law->book == NULL)
        law->book = book_for(laws, law->profile, problems);
    return law->book == NULL ? NULL : law;
}

const struct law *laws_find(struct laws *laws, const char *id, long date, const char *job_file,
                            struct problems *problems)
{
    struct law *known = laws_known(laws, id, date);
    if (known != NULL)
        return law_wake(laws, known, problems);
    struct law *law = calloc(1, sizeof(*law));
    if (law == NULL) {
        problem_out_of_memory(problems);
        return NULL;
    }
    /* From here the law owns profile and rulebook, whether or not it becomes one:
     * law_free takes a half-made one. */
    law->profile = profile_resolve_from(&laws->cache, laws->home, id, date, job_file, problems);
    if (law->profile != NULL)
        law->book = book_for(laws, law->profile, problems);
    if (law->book == NULL) {
        law_free(law);
        return NULL;
    }
    if (law_fingerprint(law) != 0) {
        problem_out_of_memory(problems);
        law_free(law);
        return NULL;
    }
    law->used = ++laws->used;
    law->next = laws->first;
    laws->first = law;
    return law;
}

const struct fields *laws_likely(const struct laws *laws)
{
    for (const struct law *law = laws->first; law != NULL; law = law->next)
        if (law->used == laws->used && law->book != NULL)
            return &law->book->fields;
    return NULL;
}

/* No fingerprint: nothing is judged under it. */
const struct law *laws_fields(struct laws *laws, struct problems *problems)
{
    for (const struct law *law = laws->first; law != NULL; law = law->next)
        if (law->profile == NULL)
            return law;
    struct law *law = calloc(1, sizeof(*law));
    if (law == NULL) {
        problem_out_of_memory(problems);
        return NULL;
    }
    law->book = rulebook_load(laws->home, NULL, problems);
    if (law->book == NULL) {
        law_free(law);
        return NULL;
    }
    law->next = laws->first;
    laws->first = law;
    return law;
}

/* Those that rested since are counted too, so that a proof's steps do not hang on memory. */
long long laws_steps(const struct laws *laws)
{
    long long steps = laws->steps_rested;
    for (const struct law *law = laws->first; law != NULL; law = law->next)
        steps += law->book == NULL || is_again(laws, law) ? 0 : law->book->sandbox->taken;
    return steps;
}

size_t laws_count(const struct laws *laws, size_t *bytes)
{
    size_t count = 0;
    *bytes = 0;
    for (const struct law *law = laws->first; law != NULL; law = law->next, count++)
        *bytes += law->book == NULL ? 0 : rulebook_bytes(law->book);
    return count;
}

void laws_free(struct laws *laws)
{
    while (laws->first != NULL) {
        struct law *law = laws->first;
        laws->first = law->next;
        law_free(law);
    }
    /* After the laws: their profiles point into places of the cache. */
    place_cache_free(&laws->cache);
    arena_free(&laws->rules.arena);
    laws->rules = (struct rule_names){.items = NULL};
}
