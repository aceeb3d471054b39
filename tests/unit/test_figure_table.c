/* Figures by edition as a table, and what may be claimed of them: a figure that was read
 * has a source, the editions it was read in are there, few are only recalled, and no
 * place follows a book that is newer than the reading of the place's own pages. */
#include "prove/figure_table.h"

#include "base/date.h"
#include "include/eavemark.h"
#include "support/small_law.h"
#include "support/temporary_home.h"

#include <cjson/cJSON.h>

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

enum { RECALLED_MOST = 60 };

static struct temporary_home home;

static int make_home(void **state)
{
    (void)state;
    home_make(&home);
    small_law_write(&home);
    home_write(&home, "rules/test.lua", "");
    home_write(&home, "jurisdictions/example/a.lua",
               "jurisdiction \"example/a\" { title = \"A County\", invented = true,\n"
               "  follows = \"model/test\", code = \"A Code\",\n"
               "  figures = { [\"test.most\"] = { 2, cite = \"7.1\" } } }\n");
    return 0;
}

static int remove_home(void **state)
{
    (void)state;
    home_remove(&home);
    return 0;
}

/* The table, or what was wrong; to be freed. */
static char *table_of(const char *home_path, const char *topic, const char *status,
                      const char *place, enum eavemark_form form, enum eavemark_status wanted)
{
    char *report = NULL, *problems = NULL;
    eavemark *handle = eavemark_open(home_path);
    assert_non_null(handle);
    const struct eavemark_request request = {.jurisdiction = place};
    const enum eavemark_status got = eavemark_figures(handle, topic, status, &request, form,
                                                      &report, &problems);
    eavemark_close(handle);
    if (got != wanted)
        fail_msg("status %d: %s", (int)got, problems);
    if (wanted == EAVEMARK_NOTHING_FAILED) {
        assert_string_equal(problems, "");
        free(problems);
        return report;
    }
    assert_null(report);
    return problems;
}

/* A table is looked at in a terminal: what a place's file says must not steer it. */
static void no_line_steers_a_terminal(void **state)
{
    (void)state;
    home_write(&home, "jurisdictions/example/loud.lua",
               "jurisdiction \"example/loud\" { title = \"Loud\", invented = true,\n"
               "  follows = \"model/test\", code = \"L\\27[2J\",\n"
               "  figures = { [\"test.most\"] = { 2, cite = \"7\\n1\\r\", status = \"seen\",\n"
               "    source = \"a\\tpage\\27[31m\" } } }\n");
    char *table = table_of(home.path, "test.most", NULL, "example/loud", EAVEMARK_TEXT,
                           EAVEMARK_NOTHING_FAILED);
    assert_null(strchr(table, '\x1B'));
    assert_null(strchr(table, '\r'));
    assert_non_null(strstr(table, "\tL\\x1b[2J 7 1 \tseen\ta page\\x1b[31m\t\n"));
    free(table);
}

static void a_line_says_figure_value_section_and_standing(void **state)
{
    (void)state;
    char *table = table_of(home.path, "test.disputed", NULL, NULL, EAVEMARK_TEXT,
                           EAVEMARK_NOTHING_FAILED);
    assert_string_equal(table,
                        "figure\tedition\tdemanded\tsection\tstatus\tsource\tdisputed\n"
                        "test.disputed\tTEST 2020\tat most 3 layers\tTEST 2020 1.6\tseen\ta page\t"
                        "another page says 4\n");
    free(table);
}

static void a_place_shows_its_own(void **state)
{
    (void)state;
    char *table = table_of(home.path, "test.most", NULL, "example/a", EAVEMARK_TEXT,
                           EAVEMARK_NOTHING_FAILED);
    assert_has(table, "test.most\tA County\tat most 2 layers\tA Code 7.1\tinvented\tA County\t\n");
    assert_null(strstr(table, "TEST 2020"));
    free(table);
}

static void only_those_known_so_well(void **state)
{
    (void)state;
    char *table = table_of(home.path, NULL, "memory", NULL, EAVEMARK_TEXT, EAVEMARK_NOTHING_FAILED);
    assert_has(table, "\ntest.memory\t");
    assert_null(strstr(table, "\ntest.most\t"));
    free(table);
    table = table_of(home.path, "test.most", "memory", NULL, EAVEMARK_TEXT,
                     EAVEMARK_NOTHING_FAILED);
    assert_string_equal(table, "figure\tedition\tdemanded\tsection\tstatus\tsource\tdisputed\n");
    free(table);
}

static void json_says_the_same(void **state)
{
    (void)state;
    char *table = table_of(home.path, "test.kinds", NULL, NULL, EAVEMARK_JSON_LINE,
                           EAVEMARK_NOTHING_FAILED);
    cJSON *tree = cJSON_Parse(table);
    assert_non_null(tree);
    const cJSON *row = cJSON_GetArrayItem(cJSON_GetObjectItem(tree, "figures"), 0);
    assert_string_equal(cJSON_GetObjectItem(row, "figure")->valuestring, "test.kinds");
    assert_string_equal(cJSON_GetObjectItem(row, "demanded")->valuestring, "none of slate, tile");
    assert_string_equal(cJSON_GetObjectItem(row, "edition")->valuestring, "TEST 2020");
    assert_null(cJSON_GetObjectItem(row, "disputed"));
    cJSON_Delete(tree);
    free(table);
}

static void what_there_is_not_is_said(void **state)
{
    (void)state;
    char *said = table_of(home.path, "tset", NULL, NULL, EAVEMARK_TEXT, EAVEMARK_UNUSABLE);
    assert_has(said, "no figure's name begins with \"tset\"");
    free(said);
    said = table_of(home.path, NULL, "read", NULL, EAVEMARK_TEXT, EAVEMARK_UNUSABLE);
    assert_has(said, "\"read\" is not one of seen, parallel, memory, practice, invented");
    free(said);
    said = table_of(home.path, NULL, NULL, "example/b", EAVEMARK_TEXT, EAVEMARK_UNUSABLE);
    assert_has(said, "no jurisdiction is named \"example/b\"");
    free(said);
    struct temporary_home empty;
    home_make(&empty);
    said = table_of(empty.path, NULL, NULL, NULL, EAVEMARK_TEXT, EAVEMARK_BROKEN);
    assert_has(said, "is this the right --home?");
    free(said);
    home_remove(&empty);
}

/* The tree's own figures ---------------------------------------------------------- */

static void stand(struct place_cache *cache, struct places *places)
{
    assert_int_equal(places_stand(cache, EAVEMARK_HOME_DIR, 0, places), 0);
    assert_int_equal(places->skipped.count, 0);
}

static bool is_edition_of(const struct places *places, const char *name)
{
    bool found = false;
    for (size_t i = 0; i < places->count; i++) {
        const struct profile *profile = places->items[i].profile;
        found = found
                || (places_is_edition(places, profile) && strcmp(profile->edition, name) == 0);
    }
    return found;
}

/* What was read has a source, and says of which editions there are. */
static size_t unfounded(const struct places *places, const struct profile *profile)
{
    size_t bad = 0;
    for (size_t i = 0; i < profile->figure_count; i++) {
        const struct figure *figure = &profile->figures[i];
        const char *source = figure->cite.source;
        if (figure->cite.status == STATUS_SEEN && (source == NULL || source[0] == '\0')) {
            print_error("%s: %s was seen, but nobody says where\n", profile->id, figure->name);
            bad++;
        }
        for (size_t r = 0; r < figure->read_count; r++) {
            if (is_edition_of(places, figure->read_in[r]))
                continue;
            print_error("%s: %s was read in %s, which is no edition here\n", profile->id,
                        figure->name, figure->read_in[r]);
            bad++;
        }
    }
    return bad;
}

static void what_was_read_has_a_source(void **state)
{
    (void)state;
    struct place_cache cache = {0};
    struct places places = {0};
    size_t bad = 0;
    stand(&cache, &places);
    for (size_t i = 0; i < places.count; i++)
        bad += unfounded(&places, places.items[i].profile);
    places_free(&places);
    place_cache_free(&cache);
    assert_int_equal(bad, 0);
}

/* A model edition claims as seen only what it read itself or what was read in it. */
static void few_figures_of_the_model_are_recalled(void **state)
{
    (void)state;
    struct place_cache cache = {0};
    struct places places = {0};
    size_t recalled = 0, editions = 0;
    stand(&cache, &places);
    for (size_t i = 0; i < places.count; i++) {
        const struct profile *profile = places.items[i].profile;
        if (!places_is_edition(&places, profile))
            continue;
        editions++;
        for (size_t f = 0; f < profile->figure_count; f++) {
            const struct figure *figure = &profile->figures[f];
            bool told = figure->cite.status != STATUS_MEMORY;
            /* Once, however many editions share it. */
            for (size_t j = 0; j < i && !told; j++) {
                const struct profile *other = places.items[j].profile;
                const struct figure *same = profile_figure(other, figure->name);
                told = places_is_edition(&places, other) && same != NULL
                       && same->cite.status == STATUS_MEMORY
                       && profile_same_value(&same->value, &figure->value);
            }
            recalled += !told;
        }
    }
    places_free(&places);
    place_cache_free(&cache);
    assert_int_equal(editions, 5);
    printf("%zu recalled figures in the model code's editions\n", recalled);
    assert_in_range(recalled, 1, RECALLED_MOST);
}

/* The year a model edition is named for: 2021 of "IRC 2021". */
static long year_of(const char *edition)
{
    const char *space = strrchr(edition, ' ');
    return space == NULL ? 0 : strtol(space + 1, NULL, 10);
}

/* The edition that a place follows itself: one that follows its state leaves the book to
 * the state. */
static const struct profile *model_of(const struct places *places, const struct profile *place)
{
    for (size_t i = 0; place->chain_count > 1 && i < places->count; i++) {
        const struct profile *profile = places->items[i].profile;
        if (strcmp(profile->id, place->chain[1]) == 0 && places_is_edition(places, profile))
            return profile;
    }
    return NULL;
}

/* Pages read before a book came out say nothing of it. */
static void no_place_claims_a_book_newer_than_its_reading(void **state)
{
    (void)state;
    struct place_cache cache = {0};
    struct places places = {0};
    size_t looked_at = 0, bad = 0;
    stand(&cache, &places);
    for (size_t i = 0; i < places.count; i++) {
        const struct profile *place = places.items[i].profile;
        const struct profile *model = model_of(&places, place);
        if (place->as_seen == NULL || model == NULL)
            continue;
        looked_at++;
        const long read = date_parse(place->as_seen) / 10000;
        if (read >= year_of(model->edition))
            continue;
        print_error("%s was read in %ld and follows %s\n", place->id, read, model->edition);
        bad++;
    }
    places_free(&places);
    place_cache_free(&cache);
    assert_true(looked_at > 20);
    assert_int_equal(bad, 0);
}

#define in_home(test) cmocka_unit_test_setup_teardown(test, make_home, remove_home)

int main(void)
{
    const struct CMUnitTest tests[] = {
        in_home(a_line_says_figure_value_section_and_standing),
        in_home(no_line_steers_a_terminal),
        in_home(a_place_shows_its_own),
        in_home(only_those_known_so_well),
        in_home(json_says_the_same),
        in_home(what_there_is_not_is_said),
        cmocka_unit_test(what_was_read_has_a_source),
        cmocka_unit_test(few_figures_of_the_model_are_recalled),
        cmocka_unit_test(no_place_claims_a_book_newer_than_its_reading),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
