/* What is in the cache of places stays as it was first read: also the files that several places
 * are made of. */
#include "profile/place_cache.h"

#include "support/temporary_home.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <string.h>

#include <cmocka.h>

static const char PART[] = "jurisdictions/model/irc/deck.lua";

static void append(const struct temporary_home *home, const char *more)
{
    FILE *file = fopen(home_path(home, PART), "a");
    assert_non_null(file);
    fputs(more, file);
    assert_int_equal(fclose(file), 0);
}

/* How many files the place rests on; 0 where it cannot be had. */
static size_t files_of(struct place_cache *cache, const struct temporary_home *home, const char *id)
{
    struct arena arena = {0};
    struct sources sources = {0};
    struct problems problems = {0};
    const struct place *place = place_cache_get(cache, home->path, id, &arena, &sources, &problems);
    const size_t files = place == NULL ? 0 : sources.count;
    assert_true((place == NULL) == (problems.count > 0));
    problems_free(&problems);
    arena_free(&arena);
    return files;
}

/* A part that is no Lua any more is noticed by whoever reads it. */
static void assert_parts_are_read_once(const struct temporary_home *home)
{
    struct place_cache cache = {0}, later = {0};
    const size_t files = files_of(&cache, home, "model/irc-2018");
    assert_true(files > 10);
    append(home, "this is no Lua\n");
    assert_int_equal(files_of(&cache, home, "model/irc-2021"), files);
    assert_int_equal(files_of(&cache, home, "model/irc-2018"), files);
    assert_int_equal(files_of(&later, home, "model/irc-2021"), 0);
    place_cache_free(&cache);
    assert_int_equal(files_of(&cache, home, "model/irc-2021"), 0);
    place_cache_free(&cache);
    place_cache_free(&later);
}

static void editions_of_a_model_share_its_packed_parts(void **state)
{
    (void)state;
    struct temporary_home home;
    home_make(&home);
    home_copy_all(&home, "jurisdictions");
    assert_parts_are_read_once(&home);
    home_remove(&home);
}

/* Other than the build had them, they are kept in the memory of the place that had them read. */
static void editions_of_a_model_share_its_changed_parts(void **state)
{
    (void)state;
    struct temporary_home home;
    home_make(&home);
    home_copy_all(&home, "jurisdictions");
    append(&home, "-- changed\n");
    assert_parts_are_read_once(&home);
    home_remove(&home);
}

/* What was read for a place that did not load is gone with it. */
static void parts_of_what_did_not_load_are_read_again(void **state)
{
    (void)state;
    struct temporary_home home;
    struct place_cache cache = {0};
    home_make(&home);
    home_copy_all(&home, "jurisdictions");
    append(&home, "this is no Lua\n");
    assert_int_equal(files_of(&cache, &home, "model/irc-2018"), 0);
    assert_true(remove(home_path(&home, PART)) == 0);
    home_write(&home, PART, "-- nothing\n");
    assert_true(files_of(&cache, &home, "model/irc-2021") > 0);
    place_cache_free(&cache);
    home_remove(&home);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(editions_of_a_model_share_its_packed_parts),
        cmocka_unit_test(editions_of_a_model_share_its_changed_parts),
        cmocka_unit_test(parts_of_what_did_not_load_are_read_again),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
