/* The file of a place that may follow the small model code. */
#include "fuzz/target.h"
#include "profile/profile.h"
#include "support/small_law.h"

#include <string.h>

static void *start(void)
{
    struct temporary_home *home = malloc(sizeof(*home));
    FUZZ_REQUIRE(home != NULL);
    home_make(home);
    small_law_write(home);
    return home;
}

/* What rules count on. */
static void look_at(const struct profile *profile)
{
    FUZZ_REQUIRE(strcmp(profile->id, "fuzz") == 0 && profile->title != NULL);
    FUZZ_REQUIRE(profile->chain_count >= 1);
    FUZZ_REQUIRE(profile->from <= 20260302 && (profile->to == 0 || profile->to > 20260302));
    for (size_t i = 0; i < profile->figure_count; i++) {
        const struct figure *figure = &profile->figures[i];
        FUZZ_REQUIRE(i == 0 || strcmp(profile->figures[i - 1].name, figure->name) < 0);
        FUZZ_REQUIRE(figure->cite.section != NULL && figure->cite.status != STATUS_NONE);
        FUZZ_REQUIRE(profile_figure(profile, figure->name) == figure);
    }
    for (size_t i = 0; i < profile->zone_count; i++) {
        const struct place_zone *zone = &profile->zones[i];
        FUZZ_REQUIRE(strncmp(zone->name, "site.local_", 11) == 0 && zone->ask != NULL);
        FUZZ_REQUIRE(zone->words.set_count > 1 && zone->line > 0);
    }
}

static void run(void *state, const char *bytes, size_t length)
{
    const struct temporary_home *home = state;
    struct problems problems = {0};
    home_write_n(home, "jurisdictions/fuzz.lua", bytes, length);
    struct profile *profile = profile_resolve(home->path, "fuzz", 20260302, "fuzz.json", &problems);
    FUZZ_REQUIRE((profile == NULL) == (problems.count > 0));
    if (profile != NULL)
        look_at(profile);
    profile_free(profile);
    problems_free(&problems);
}

static void end(void *state)
{
    home_remove(state);
    free(state);
}

const struct fuzz_target fuzz_profile = {"profile", start, run, end};
