/* The list of places that the build made of the packed home is the one that reading gives, and
 * stands for no folder. */
#include "base/home_files.h"
#include "profile/place_list_made.h"
#include "profile/place_made.h"
#include "support/all_listed.h"
#include "support/temporary_home.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

/* What a list says, written down; the caller frees it. */
static char *written(const struct place_list *list, size_t *length)
{
    char *bytes = place_made_write_as(list, &PLACE_LIST_SHAPE, length);
    assert_non_null(bytes);
    return bytes;
}

static void assert_same_list(const struct place_list *a, const struct place_list *b)
{
    size_t n, m;
    char *left = written(a, &n), *right = written(b, &m);
    assert_int_equal(n, m);
    assert_memory_equal(left, right, n);
    free(left);
    free(right);
}

/* The one of that id; NULL when it is not listed. */
static const struct listed_place *listed(const struct place_list *list, const char *id)
{
    const struct listed_place *place = list->first;
    while (place != NULL && strcmp(place->id, id) != 0)
        place = place->next;
    return place;
}

static void the_home_inside_is_listed_as_its_files_say(void **state)
{
    (void)state;
    struct place_cache cache = {0}, unused = {0};
    struct place_list read, taken;
    assert_int_equal(place_list_make(&cache, EAVEMARK_HOME_DIR, &read), 0);
    assert_int_equal(place_list_make(&unused, HOME_INSIDE, &taken), 0);
    assert_null(unused.first); /* no place was read */
    assert_same_list(&read, &taken);
    const struct listed_place *place = listed(&taken, "example/dunmarrow");
    assert_non_null(place);
    assert_string_equal(place->title, "Dunmarrow County, Harrow");
    assert_string_equal(place->covers[0], "Ashgrove");
    assert_true(place->invented && place->cover_count == 2 && place->figures > 0);
    place_list_free(&read);
    place_list_free(&taken);
    place_cache_free(&cache);
}

static void every_member_is_listed(void **state)
{
    (void)state;
    assert_int_equal(PLACE_LIST_SHAPE.parts[0].at, offsetof(struct place_list, first));
    assert_all_listed(PLACE_LIST_SHAPE.parts[0].shape);
}

/* Nothing made is taken for a folder, though all but a few of its files are as packed. */
static void a_folder_is_listed_by_its_files(void **state)
{
    (void)state;
    struct temporary_home home;
    struct place_cache cache = {0};
    struct place_list list, again = {.first = NULL};
    home_make(&home);
    home_copy_all(&home, "jurisdictions");
    home_write(&home, "jurisdictions/example/dunmarrow.lua",
               "jurisdiction \"example/dunmarrow\" { title = \"Other\", invented = true,\n"
               "  follows = \"model/irc-2021\" }\n");
    home_write(&home, "jurisdictions/example/attic.lua",
               "jurisdiction \"example/attic\" { title = \"Attic\", invented = true,\n"
               "  follows = \"example/dunmarrow\" }\n");
    home_write(&home, "jurisdictions/example/broken.lua", "this is no Lua\n");
    home_delete(&home, "jurisdictions/us-ca/daly-city.lua");
    assert_int_equal(place_list_make(&cache, home.path, &list), 0);
    const struct listed_place *changed = listed(&list, "example/dunmarrow");
    assert_non_null(changed);
    assert_string_equal(changed->title, "Other");
    assert_int_equal(changed->cover_count, 0);
    assert_int_equal(changed->figures, 0);
    const struct listed_place *added = listed(&list, "example/attic");
    assert_non_null(added);
    assert_string_equal(added->upper, "Other");
    assert_null(listed(&list, "us-ca/daly-city"));
    assert_int_equal(list.skipped.count, 1);
    assert_string_equal(list.skipped.items[0], "example/broken");
    home_remove(&home);
    /* With the one that is left out, written down and taken up again. */
    size_t length;
    char *bytes = written(&list, &length);
    assert_true(place_made_take_as(bytes, &again.arena, &again, &PLACE_LIST_SHAPE));
    assert_int_equal(again.skipped.count, 1);
    assert_same_list(&list, &again);
    place_list_free(&again);
    free(bytes);
    place_list_free(&list);
    place_cache_free(&cache);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(the_home_inside_is_listed_as_its_files_say),
        cmocka_unit_test(every_member_is_listed),
        cmocka_unit_test(a_folder_is_listed_by_its_files),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
