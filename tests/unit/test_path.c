/* JSON pointers: RFC 6901, sections 3 to 5, whose own examples are among them. */
#include "job/path.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>
#include <stdio.h>
#include <string.h>

static const char JOB[] =
    "{ \"foo\": [\"bar\", \"baz\"], \"\": 0, \"a/b\": 1, \"m~n\": 8, \"gone\": null,\n"
    "  \"roof\": { \"slopes\": [ { \"name\": \"front\", \"deck\": 1 }, { \"deck\": 2 } ] } }";

static cJSON *job(void)
{
    cJSON *tree = cJSON_Parse(JOB);
    assert_non_null(tree);
    return tree;
}

static void a_pointer_is_followed(void **state)
{
    (void)state;
    cJSON *tree = job();
    assert_ptr_equal(path_find(tree, ""), tree);
    assert_string_equal(path_find(tree, "/foo/0")->valuestring, "bar");
    assert_int_equal(path_find(tree, "/a~1b")->valueint, 1);
    assert_int_equal(path_find(tree, "/m~0n")->valueint, 8);
    assert_int_equal(path_find(tree, "/roof/slopes/1/deck")->valueint, 2);
    assert_null(path_find(tree, "/roof/slopes/2/deck"));
    assert_null(path_find(tree, "/roof/ridge"));
    cJSON_Delete(tree);
}

/* RFC 6901, section 4: digits without a leading zero; "-" is past the last. */
static void only_a_number_names_an_item(void **state)
{
    (void)state;
    static const char *const NONE[] = {"/foo/bar", "/foo/-", "/foo/01",        "/foo/1 ",
                                       "/foo/+1",  "/foo/",  "/foo/4294967296"};
    cJSON *tree = job();
    for (size_t i = 0; i < sizeof(NONE) / sizeof(NONE[0]); i++)
        assert_null(path_find(tree, NONE[i]));
    cJSON_Delete(tree);
}

static void a_place_is_told_from_what_is_beside_it(void **state)
{
    (void)state;
    assert_string_equal(path_last("/roof/slopes/1/pitch"), "/pitch");
    assert_string_equal(path_last("/job"), "/job");
    assert_string_equal(path_last(""), "");
    assert_true(path_is_within("/roof/slopes/1/pitch", "/roof/slopes/1"));
    assert_true(path_is_within("/roof/slopes/1", "/roof/slopes/1"));
    assert_true(path_is_within("/roof", ""));
    assert_false(path_is_within("/roof/slopes/10/pitch", "/roof/slopes/1"));
    assert_false(path_is_within("/roof", "/roof/slopes/1"));
}

/* No name is so long: it is not cut to another's. */
static void a_step_too_long_names_nothing(void **state)
{
    (void)state;
    char name[PATH_LONGEST_STEP + 8], pointer[PATH_LONGEST_STEP + 9];
    memset(name, 'x', sizeof(name) - 1);
    name[PATH_LONGEST_STEP - 1] = '\0'; /* as much as is read */
    cJSON *tree = job();
    cJSON_AddNumberToObject(tree, name, 1);
    snprintf(pointer, sizeof(pointer), "/%s", name);
    assert_non_null(path_find(tree, pointer));
    strcat(pointer, "y");
    assert_null(path_find(tree, pointer)); /* "" is there, but is not meant */
    assert_false(path_set(tree, pointer, cJSON_CreateNumber(2)));
    cJSON_Delete(tree);
}

static void the_item_on_the_way_is_named(void **state)
{
    (void)state;
    cJSON *tree = job();
    assert_string_equal(path_item_name(tree, "/roof/slopes/0/deck"), "front");
    assert_null(path_item_name(tree, "/roof/slopes/1/deck"));
    cJSON_Delete(tree);
}

static void a_fact_is_set_in_its_place(void **state)
{
    (void)state;
    cJSON *tree = job();
    assert_true(path_set(tree, "/roof/slopes/1/deck", cJSON_CreateNumber(3)));
    assert_int_equal(path_find(tree, "/roof/slopes/1/deck")->valueint, 3);
    assert_true(path_set(tree, "/site/wind/mph", cJSON_CreateNumber(115))); /* groups are made */
    assert_int_equal(path_find(tree, "/site/wind/mph")->valueint, 115);
    assert_true(path_set(tree, "/gone/now", cJSON_CreateTrue())); /* null is no group yet */
    assert_true(cJSON_IsTrue(path_find(tree, "/gone/now")));
    assert_false(path_set(tree, "/roof/slopes/2/deck", cJSON_CreateNumber(3))); /* items are not */
    assert_false(path_set(tree, "/foo/bar/x", cJSON_CreateNumber(3)));
    assert_false(path_set(tree, "", cJSON_CreateNumber(3)));
    assert_false(path_set(tree, "/new", NULL));
    cJSON_Delete(tree);
}

static void the_same_place_of_two_jobs(void **state)
{
    (void)state;
    cJSON *a = job(), *b = cJSON_Parse("{ \"roof\": { \"slopes\": [ { \"deck\": 7 }, "
                                       "{ \"name\": \"front\", \"deck\": 9 } ] } }");
    struct text words = TEXT_EMPTY;
    struct path_pair pair = path_pair(a, b, "/roof/slopes/0/deck", &words);
    assert_int_equal(pair.a->valueint, 1);
    assert_int_equal(pair.b->valueint, 9);
    assert_string_equal(text_string(&words), "roof.slopes[front].deck");
    text_free(&words);
    pair = path_pair(a, b, "/roof/slopes/1/deck", &words);
    assert_int_equal(pair.b->valueint, 9);
    assert_string_equal(text_string(&words), "roof.slopes[2].deck");
    text_free(&words);
    cJSON_Delete(a);
    cJSON_Delete(b);
}

static void a_pointer_is_written(void **state)
{
    (void)state;
    struct arena arena = {0};
    struct text text = TEXT_EMPTY;
    path_add(&text, "m~n/o", 5);
    const size_t length = text.length;
    path_add_item(&text, 12);
    assert_string_equal(text_string(&text), "/m~0n~1o/12");
    path_cut(&text, length);
    assert_string_equal(text_string(&text), "/m~0n~1o");
    text_free(&text);
    assert_string_equal(path_key(&arena, "/a", "m~n/o"), "/a/m~0n~1o");
    assert_string_equal(path_item(&arena, "/a", 3), "/a/3");
    assert_string_equal(path_below(&arena, "/a", "existing.layers"), "/a/existing/layers");
    assert_string_equal(path_below(&arena, "/a", ""), "/a");
    arena_free(&arena);
}

static void a_long_name_is_cut_between_letters(void **state)
{
    (void)state;
    char name[400];
    struct text text = TEXT_EMPTY;
    for (size_t i = 0; i + 2 < sizeof(name); i += 2)
        memcpy(&name[i], "\xC3\xA4", 3);
    path_add(&text, name, strlen(name));
    assert_int_equal(text.length, 1 + PATH_LONGEST_NAME + 3);
    assert_string_equal(text_string(&text) + 1 + PATH_LONGEST_NAME, "...");
    text_free(&text);
    assert_int_equal(path_quotable(name, strlen(name), 61), 60);
}

static void steps_are_read(void **state)
{
    (void)state;
    char step[PATH_LONGEST_STEP];
    const char *at = "/a~1b/12/x";
    assert_int_equal(path_step_length(at), 5);
    assert_false(path_step_is_item(at));
    assert_true(path_step_is_item("/12/x"));
    assert_false(path_step_is_item("/12a"));
    assert_false(path_step_is_item("/"));
    assert_true(path_step(&at, step));
    assert_string_equal(step, "a/b");
    assert_true(path_step(&at, step) && path_step(&at, step));
    assert_string_equal(step, "x");
    assert_false(path_step(&at, step));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(a_pointer_is_followed),
        cmocka_unit_test(only_a_number_names_an_item),
        cmocka_unit_test(a_place_is_told_from_what_is_beside_it),
        cmocka_unit_test(a_step_too_long_names_nothing),
        cmocka_unit_test(the_item_on_the_way_is_named),
        cmocka_unit_test(a_fact_is_set_in_its_place),
        cmocka_unit_test(the_same_place_of_two_jobs),
        cmocka_unit_test(a_pointer_is_written),
        cmocka_unit_test(a_long_name_is_cut_between_letters),
        cmocka_unit_test(steps_are_read),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
