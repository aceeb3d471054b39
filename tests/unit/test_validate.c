/* A job held against a small catalogue (sample_fields.h). */
#include "job/validate.h"

#include "job/json.h"
#include "job/origin.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdio.h>
#include <string.h>
#include <time.h>

#include <cmocka.h>

#include "sample_fields.h"

static int start(void **state)
{
    static struct fields fields;
    sample_fields(&fields);
    *state = &fields;
    return 0;
}

static int stop(void **state)
{
    fields_free(*state);
    return 0;
}

static void assert_says_at(const struct fields *fields, enum stage reached, const char *text,
                           const char *message)
{
    struct problems problems = {0};
    cJSON *job = NULL;
    assert_int_equal(json_read(&job, text, strlen(text), "j", &problems), 0);
    const int status = validate_job(job, fields, reached, "j", &problems);
    struct text said = problems_said(&problems);
    assert_string_equal(text_string(&said), message);
    assert_int_equal(status, message[0] == '\0' ? 0 : -1);
    text_free(&said);
    problems_free(&problems);
    cJSON_Delete(job);
}

static void assert_says(void **state, const char *text, const char *message)
{
    assert_says_at(*state, STAGE_FINAL, text, message);
}

static void a_sound_job_has_no_problem(void **state)
{
    assert_says(state,
                "{\"job\": \"Alder Lane\", \"date\": \"2026-03-01\","
                " \"scope\": {\"method\": \"overlay\"},"
                " \"existing\": {\"layers\": 6, \"sound\": true},"
                " \"roof\": {\"ridge_ft\": 0, \"zones\": [\"A\", \"B\"], \"slopes\": ["
                "  {\"name\": \"front\", \"pitch\": \"5:12\", \"deck\": \"main\","
                "   \"beside\": \"back\"},"
                "  {\"name\": \"back\", \"pitch\": \"24:12\"}, {}]},"
                " \"decks\": [{\"name\": \"main\", \"measured_spacing_in\": [0.1, 60]},"
                "  {}, {}, {}, {}]}",
                "");
    assert_says(state, "{\"job\": \"x\", \"decks\": []}", "");
}

/* One slip is told once, where it was written; but what follows is never taken as it is. */
static void what_follows_repeats_no_slip(void **state)
{
    static const char TEXT[] =
        "{\"job\": \"x\", \"existing\": {\"layers\": 99}, \"roof\": {\"ridge_ft\": -1}}";
    static const char *const TOLD[] = {
        "j: /existing/layers: 99 is out of range; 0 to 6 layers expected\n",
        "j: /roof/ridge_ft: -1 is out of range; 0 to 1,000 ft expected\n",
    };
    for (int followed = 0; followed < 2; followed++) {
        struct problems problems = {0};
        cJSON *job = NULL;
        assert_int_equal(json_read(&job, TEXT, strlen(TEXT), "j", &problems), 0);
        cJSON *existing = cJSON_GetObjectItem(job, "existing");
        cJSON *ridge = cJSON_GetObjectItem(cJSON_GetObjectItem(job, "roof"), "ridge_ft");
        origin_mark(ridge, ORIGIN_DERIVED);
        if (followed == 1)
            cJSON_SetNumberValue(cJSON_GetObjectItem(existing, "layers"), 2);
        assert_int_equal(validate_job(job, *state, STAGE_FINAL, "j", &problems), -1);
        struct text said = problems_said(&problems);
        assert_string_equal(text_string(&said), TOLD[followed]);
        text_free(&said);
        problems_free(&problems);
        cJSON_Delete(job);
    }
}

static void null_counts_as_absent(void **state)
{
    assert_says(state,
                "{\"job\": \"x\", \"date\": null, \"roof\": null, \"existing\": {\"layers\": null},"
                " \"decks\": [{\"name\": null}, {\"name\": null}]}",
                "");
    assert_says_at(*state, STAGE_PERMIT,
                   "{\"job\": \"x\", \"decks\": [{\"measured_spacing_in\": null}]}", "");
    assert_says(state, "{\"job\": null}",
                "j: /job: is required, but missing. What do you call this job?\n");
}

static void a_missing_field_is_asked_for(void **state)
{
    assert_says(state, "{}", "j: /job: is required, but missing. What do you call this job?\n");
    struct field *name = fields_find(*state, "roof.slopes[].name");
    name->required = true;
    assert_says(state, "{\"job\": \"x\", \"roof\": {\"slopes\": [{\"name\": \"a\"}, {}]}}",
                "j: /roof/slopes/1/name: is required, but missing\n");
    assert_says(state, "{\"job\": \"x\", \"roof\": {}}", "");
}

static void an_unknown_field_gets_the_nearest_name(void **state)
{
    assert_says(state, "{\"job\": \"x\", \"roof\": {\"slopes\": [{\"pich\": \"5:12\"}]}}",
                "j: /roof/slopes/0/pich: unknown field \"pich\"; did you mean \"pitch\"?\n");
    assert_says(state, "{\"job\": \"x\", \"pitch\": \"5:12\"}",
                "j: /pitch: unknown field \"pitch\"; did you mean /roof/slopes/N/pitch?\n");
    assert_says(state, "{\"job\": \"x\", \"layrs\": 1}",
                "j: /layrs: unknown field \"layrs\"; did you mean /existing/layers?\n");
    assert_says(state, "{\"job\": \"x\", \"name\": 1}",
                "j: /name: unknown field \"name\"; did you mean /roof/slopes/N/name or "
                "/decks/N/name?\n");
    assert_says(state, "{\"job\": \"x\", \"roof\": {\"slops\": [{\"anything\": 1}]}}",
                "j: /roof/slops: unknown field \"slops\"; did you mean \"slopes\"?\n");
    /* Near one of its own group, and the very name of another place. */
    assert_says(state, "{\"job\": \"x\", \"roof\": {\"slopes\": [{\"decks\": []}]}}",
                "j: /roof/slopes/0/decks: unknown field \"decks\"; did you mean \"deck\" or "
                "/decks?\n");
    assert_says(state, "{\"job\": \"x\", \"chimney\": {}}",
                "j: /chimney: unknown field \"chimney\"\n");
    assert_says(state, "{\"job\": \"x\", \"JOB\": \"x\"}",
                "j: /JOB: unknown field \"JOB\"; did you mean \"job\"?\n");
}

static void a_partial_catalogue_refuses_only_near_names(void **state)
{
    struct fields *fields = *state;
    fields->partial = true;
    assert_says(state, "{\"job\": \"x\", \"chimney\": {\"flue\": 1}, \"thickness_in\": 1}", "");
    assert_says(state, "{\"job\": \"x\", \"scop\": {}, \"existing\": {\"sond\": true}}",
                "j: /scop: unknown field \"scop\"; did you mean \"scope\"?\n"
                "j: /existing/sond: unknown field \"sond\"; did you mean \"sound\"?\n");
}

static void a_pointer_is_escaped(void **state)
{
    assert_says(state, "{\"job\": \"x\", \"roof\": {\"a/b~c\": 1}}",
                "j: /roof/a~1b~0c: unknown field \"a/b~c\"\n");
}

static void the_wrong_type_is_named(void **state)
{
    static const char *const CASES[][2] = {
        {"\"roof\": []", "/roof: found a list; an object { ... }"},
        {"\"decks\": {}", "/decks: found an object; a list of objects [ { ... } ]"},
        {"\"date\": 20260301", "/date: found the number 20,260,301; a date such as \"2026-03-01\""},
        {"\"scope\": {\"method\": true}", "/scope/method: found true; one of tear-off, overlay"},
        {"\"existing\": {\"layers\": \"2\"}",
         "/existing/layers: found the text \"2\"; a whole number, 0 to 6 layers"},
        {"\"existing\": {\"sound\": \"yes\"}",
         "/existing/sound: found the text \"yes\"; true or false"},
        {"\"roof\": {\"ridge_ft\": false}", "/roof/ridge_ft: found false; a number, 0 to 1,000 ft"},
        {"\"roof\": {\"zones\": \"A\"}",
         "/roof/zones: found the text \"A\"; a list of any of A, B"},
        {"\"roof\": {\"zones\": [1]}", "/roof/zones/0: found the number 1; one of the choices"
                                       " expected here"},
        {"\"roof\": {\"slopes\": [{\"pitch\": 5}]}",
         "/roof/slopes/0/pitch: found the number 5; a slope such as \"5:12\", \"22.6 deg\" or "
         "\"42 %\""},
        {"\"roof\": {\"slopes\": [{\"deck\": {}}]}",
         "/roof/slopes/0/deck: found an object; a name from /decks"},
        {"\"decks\": [{\"measured_spacing_in\": 6}]",
         "/decks/0/measured_spacing_in: found the number 6; a list of numbers, 0.1 to 60 in"},
        {"\"decks\": [{\"measured_spacing_in\": [6, null]}]",
         "/decks/0/measured_spacing_in/1: found null; a number expected here"},
        {"\"decks\": [{\"name\": 1}]",
         "/decks/0/name: found the number 1; a text in double quotes"},
        {"\"decks\": [[], null]", "/decks/0: each item of this list is an object { ... }\n"
                                  "j: /decks/1: each item of this list is an object { ... }"},
    };
    for (size_t i = 0; i < sizeof(CASES) / sizeof(CASES[0]); i++) {
        char text[200], message[400];
        const char *said = CASES[i][1];
        const size_t length = strlen(said);
        const bool whole = said[length - 1] == '}' && strstr(said, "each item") != NULL;
        snprintf(text, sizeof(text), "{\"job\": \"x\", %s}", CASES[i][0]);
        snprintf(message, sizeof(message), "j: %s%s\n", said,
                 whole || strstr(said, "here") != NULL ? "" : " expected");
        assert_says(state, text, message);
    }
}

static void a_number_keeps_to_its_range(void **state)
{
    assert_says(state, "{\"job\": \"x\", \"existing\": {\"layers\": -1}}",
                "j: /existing/layers: -1 is out of range; 0 to 6 layers expected\n");
    assert_says(state, "{\"job\": \"x\", \"existing\": {\"layers\": 7}}",
                "j: /existing/layers: 7 is out of range; 0 to 6 layers expected\n");
    assert_says(state, "{\"job\": \"x\", \"existing\": {\"layers\": 1.5}}",
                "j: /existing/layers: 1.5 is not a whole number; 0 to 6 layers expected\n");
    assert_says(state, "{\"job\": \"x\", \"existing\": {\"layers\": 2.0}}", "");
    assert_says(state, "{\"job\": \"x\", \"roof\": {\"ridge_ft\": 12345.678}}",
                "j: /roof/ridge_ft: 12345.678 is out of range; 0 to 1,000 ft expected\n");
    /* Not rounded into its range: printed in full. */
    assert_says(state, "{\"job\": \"x\", \"decks\": [{\"thickness_in\": 4.00001}]}",
                "j: /decks/0/thickness_in: 4.00001 is out of range; 0.1 to 4 in expected\n");
    assert_says(state, "{\"job\": \"x\", \"decks\": [{\"measured_spacing_in\": [6, 0.05, 61]}]}",
                "j: /decks/0/measured_spacing_in/1: 0.05 is out of range; 0.1 to 60 in expected\n"
                "j: /decks/0/measured_spacing_in/2: 61 is out of range; 0.1 to 60 in expected\n");
}

static void half_open_ranges_are_said(void **state)
{
    struct field *ridge = fields_find(*state, "roof.ridge_ft");
    ridge->has_most = false;
    ridge->least = 2;
    assert_says(state, "{\"job\": \"x\", \"roof\": {\"ridge_ft\": 1}}",
                "j: /roof/ridge_ft: 1 is out of range; at least 2 ft expected\n");
    ridge->has_most = true;
    ridge->has_least = false;
    assert_says(state, "{\"job\": \"x\", \"roof\": {\"ridge_ft\": 1001}}",
                "j: /roof/ridge_ft: 1,001 is out of range; at most 1,000 ft expected\n");
    ridge->has_least = true;
    ridge->least = ridge->most = 1;
    assert_says(state, "{\"job\": \"x\", \"roof\": {\"ridge_ft\": 2}}",
                "j: /roof/ridge_ft: 2 is out of range; 1 ft expected\n");
}

static void a_slope_is_read_and_keeps_to_its_range(void **state)
{
    assert_says(state, "{\"job\": \"x\", \"roof\": {\"slopes\": [{\"pitch\": \"25:12\"}]}}",
                "j: /roof/slopes/0/pitch: 25:12 is out of range; 0:12 to 24:12 expected\n");
    assert_says(state, "{\"job\": \"x\", \"roof\": {\"slopes\": [{\"pitch\": \"5 to 12\"}]}}",
                "j: /roof/slopes/0/pitch: \"5 to 12\" is not a slope such as \"5:12\", "
                "\"22.6 deg\" or \"42 %\"\n");
}

static void a_date_is_a_day(void **state)
{
    assert_says(state, "{\"job\": \"x\", \"date\": \"2026-02-29\"}",
                "j: /date: \"2026-02-29\" is not a date such as \"2026-03-01\"\n");
}

static void lengths_count_characters_and_items(void **state)
{
    assert_says(state, "{\"job\": \"\"}", "j: /job: has 0 characters; 1 to 20 expected\n");
    assert_says(state,
                "{\"job\": \"\xC3\xA9\xC3\xA9\xC3\xA9\xC3\xA9\xC3\xA9\xC3\xA9\xC3\xA9"
                "\xC3\xA9\xC3\xA9\xC3\xA9\xC3\xA9\xC3\xA9\xC3\xA9\xC3\xA9\xC3\xA9\xC3\xA9"
                "\xC3\xA9\xC3\xA9\xC3\xA9\xC3\xA9\"}",
                "");
    assert_says(state, "{\"job\": \"123456789012345678901\"}",
                "j: /job: has 21 characters; 1 to 20 expected\n");
    assert_says(state, "{\"job\": \"x\", \"roof\": {\"slopes\": []}}",
                "j: /roof/slopes: has 0 items; 1 to 3 expected\n");
    assert_says(state, "{\"job\": \"x\", \"roof\": {\"slopes\": [{}, {}, {\"a\": 1}, {\"b\": 1}]}}",
                "j: /roof/slopes: has 4 items; 1 to 3 expected\n"
                "j: /roof/slopes/2/a: unknown field \"a\"\n");
    assert_says(state, "{\"job\": \"x\", \"roof\": {\"zones\": [\"A\", \"C\", \"A\"]}}",
                "j: /roof/zones: has 3 items; 1 to 2 expected\n"
                "j: /roof/zones/1: \"C\" is not one of A, B\n");
}

static void an_empty_list_of_numbers_measures_nothing(void **state)
{
    assert_says(state, "{\"job\": \"x\", \"decks\": [{\"measured_spacing_in\": []}]}",
                "j: /decks/0/measured_spacing_in: is an empty list; give what was measured, or "
                "leave the field out\n");
}

static void a_choice_is_one_of_its_choices(void **state)
{
    assert_says(state, "{\"job\": \"x\", \"scope\": {\"method\": \"overlayy\"}}",
                "j: /scope/method: \"overlayy\" is not one of tear-off, overlay; did you mean "
                "\"overlay\"?\n");
    assert_says(state, "{\"job\": \"x\", \"scope\": {\"method\": \"Tear Off\"}}",
                "j: /scope/method: \"Tear Off\" is not one of tear-off, overlay; did you mean "
                "\"tear-off\"?\n");
    assert_says(state, "{\"job\": \"x\", \"scope\": {\"method\": \"patch\"}}",
                "j: /scope/method: \"patch\" is not one of tear-off, overlay\n");
}

static void a_reference_names_an_item(void **state)
{
    assert_says(state,
                "{\"job\": \"x\", \"decks\": [{\"name\": \"main\"}, {\"name\": \"porch\"}],"
                " \"roof\": {\"slopes\": [{\"deck\": \"main\"}, {\"deck\": \"mian\"},"
                " {\"deck\": \"garage\"}]}}",
                "j: /roof/slopes/1/deck: no deck is named \"mian\"; did you mean \"main\"?\n"
                "j: /roof/slopes/2/deck: no deck is named \"garage\"\n");
    assert_says(state, "{\"job\": \"x\", \"roof\": {\"slopes\": [{\"deck\": \"main\"}]}}",
                "j: /roof/slopes/0/deck: no deck is named \"main\": the job names no deck\n");
    assert_says(state,
                "{\"job\": \"x\", \"roof\": {\"slopes\": [{\"name\": \"a\","
                " \"beside\": \"A\"}]}}",
                "j: /roof/slopes/0/beside: no slope is named \"A\"; did you mean \"a\"?\n");
}

static void a_name_is_given_once(void **state)
{
    assert_says(state,
                "{\"job\": \"x\", \"decks\": [{\"name\": \"b\"}, {\"name\": \"a\"},"
                " {\"name\": \"b\"}, {\"name\": \"a\"}, {\"name\": \"b\"}]}",
                "j: /decks/2/name: \"b\" is already the name of /decks/0\n"
                "j: /decks/3/name: \"a\" is already the name of /decks/1\n"
                "j: /decks/4/name: \"b\" is already the name of /decks/0\n");
    assert_says(state,
                "{\"job\": \"x\", \"roof\": {\"slopes\": [{\"name\": \"a\"},"
                " {\"name\": \"a\"}]}}",
                "j: /roof/slopes/1/name: \"a\" is already the name of /roof/slopes/0\n");
}

static void a_measured_fact_waits_for_its_stage(void **state)
{
    static const char JOB[] = "{\"job\": \"x\", \"decks\": [{\"measured_spacing_in\": [6]}]}";
    assert_says_at(*state, STAGE_PERMIT, JOB,
                   "j: /decks/0/measured_spacing_in: is measured at the deck stage, but the job is "
                   "only at the permit stage\n");
    assert_says_at(*state, STAGE_DECK, JOB, "");
    assert_says_at(*state, STAGE_FINAL, JOB, "");
}

static void everything_is_said_in_one_go(void **state)
{
    assert_says(state,
                "{\"job\": 1, \"existing\": {\"layers\": -1, \"sound\": 0}, \"pich\": 1,"
                " \"roof\": {\"slopes\": [{\"deck\": \"main\"}]}}",
                "j: /job: found the number 1; a text in double quotes expected\n"
                "j: /existing/layers: -1 is out of range; 0 to 6 layers expected\n"
                "j: /existing/sound: found the number 0; true or false expected\n"
                "j: /pich: unknown field \"pich\"; did you mean /roof/slopes/N/pitch?\n"
                "j: /roof/slopes/0/deck: no deck is named \"main\": the job names no deck\n");
}

static void long_texts_are_cut_between_characters(void **state)
{
    assert_says(state,
                "{\"job\": \"x\", \"scope\": {\"method\": \"-12345678901234567890123456789012345678"
                "90123456789012345678\xE2\x82\xAC and more\"}}",
                "j: /scope/method: \"-1234567890123456789012345678901234567890123456789012345678"
                "...\" is not one of tear-off, overlay\n");
}

/* As many unknown fields as fit into the largest job: not all are listed, and
 * no nearest name is sought for those that are not. */
static void unknown_fields_without_end_come_to_one(void **state)
{
    struct text text = TEXT_EMPTY;
    struct problems problems = {0};
    cJSON *job = NULL;
    text_add(&text, "{\"job\":\"x\"");
    for (int i = 0; text.length + 40 < JSON_LARGEST; i++)
        text_addf(&text, ",\"thicknes_i%d\":1", i);
    text_add(&text, "}");
    assert_false(text.failed);
    assert_int_equal(json_read(&job, text.bytes, text.length, "j", &problems), 0);
    const clock_t before = clock();
    assert_int_equal(validate_job(job, *state, STAGE_FINAL, "j", &problems), -1);
    assert_true((double)(clock() - before) / CLOCKS_PER_SEC < 10);
    assert_int_equal(problems.count, VALIDATE_MOST_PROBLEMS);
    assert_string_equal(problems.last->message,
                        "more problems follow; only the first 199 are listed");
    cJSON_Delete(job);
    problems_free(&problems);
    text_free(&text);
}

static void many_references_are_quick(void **state)
{
    struct text text = TEXT_EMPTY;
    fields_find(*state, "roof.slopes")->has_most = false;
    text_add(&text, "{\"job\":\"x\",\"decks\":[{}");
    for (int i = 0; i < 60000; i++)
        text_addf(&text, ",{\"name\":\"d%d\"}", i);
    text_add(&text, "],\"roof\":{\"slopes\":[{}");
    for (int i = 0; i < 60000; i++)
        text_addf(&text, ",{\"deck\":\"d%d\"}", i);
    text_add(&text, "]}}");
    const clock_t before = clock();
    assert_says(state, text_string(&text), "");
    /* Name by name it takes 1,800,000,000 comparisons of texts. */
    assert_true((double)(clock() - before) / CLOCKS_PER_SEC < 10);
    text_free(&text);
}

static void a_job_that_is_no_object_is_refused(void **state)
{
    struct problems problems = {0};
    cJSON *list = cJSON_CreateArray();
    assert_int_equal(validate_job(list, *state, STAGE_FINAL, "j", &problems), -1);
    assert_int_equal(validate_job(NULL, *state, STAGE_FINAL, "j", &problems), -1);
    assert_int_equal(problems.count, 2);
    cJSON_Delete(list);
    problems_free(&problems);
}

static bool fits(const struct fields *fields, const char *path, cJSON *node)
{
    const bool answer = validate_value_fits(node, fields_find(fields, path));
    cJSON_Delete(node);
    return answer;
}

static void only_values_of_their_type_may_be_read(void **state)
{
    const struct fields *f = *state;
    assert_true(fits(f, "job", cJSON_CreateString("")));
    assert_true(fits(f, "existing.layers", cJSON_CreateNumber(99)));
    assert_false(fits(f, "existing.layers", cJSON_CreateNumber(1.5)));
    assert_false(fits(f, "existing.layers", cJSON_CreateString("1")));
    assert_false(fits(f, "existing.layers", cJSON_CreateNull()));
    assert_false(fits(f, "existing.layers", NULL));
    assert_false(fits(f, "roof.ridge_ft", cJSON_CreateNumber((double)INFINITY)));
    assert_true(fits(f, "existing.sound", cJSON_CreateFalse()));
    assert_false(fits(f, "existing.sound", cJSON_CreateNumber(0)));
    assert_true(fits(f, "scope.method", cJSON_CreateString("overlay")));
    assert_false(fits(f, "scope.method", cJSON_CreateString("Overlay")));
    assert_true(fits(f, "date", cJSON_CreateString("2026-03-01")));
    assert_false(fits(f, "date", cJSON_CreateString("2026-02-30")));
    assert_true(fits(f, "roof.slopes[].pitch", cJSON_CreateString("99:12")));
    assert_false(fits(f, "roof.slopes[].pitch", cJSON_CreateString("steep")));
    assert_true(fits(f, "roof.slopes[].deck", cJSON_CreateString("main")));
    assert_true(fits(f, "roof", cJSON_CreateObject()));
    assert_false(fits(f, "roof", cJSON_CreateArray()));
    assert_true(fits(f, "decks", cJSON_CreateArray()));
    assert_true(fits(f, "decks", cJSON_Parse("[{}, {}]")));
    assert_false(fits(f, "decks", cJSON_Parse("[{}, null]")));
    assert_true(fits(f, "decks[].measured_spacing_in", cJSON_Parse("[1, 99]")));
    assert_false(fits(f, "decks[].measured_spacing_in", cJSON_Parse("[1, \"6\"]")));
    assert_false(fits(f, "decks[].measured_spacing_in", cJSON_CreateArray()));
    assert_true(fits(f, "roof.zones", cJSON_Parse("[\"B\"]")));
    assert_false(fits(f, "roof.zones", cJSON_Parse("[\"Z\"]")));
}

#define CASE(function) cmocka_unit_test_setup_teardown(function, start, stop)

int main(void)
{
    const struct CMUnitTest tests[] = {
        CASE(a_sound_job_has_no_problem),
        CASE(what_follows_repeats_no_slip),
        CASE(null_counts_as_absent),
        CASE(a_missing_field_is_asked_for),
        CASE(an_unknown_field_gets_the_nearest_name),
        CASE(a_partial_catalogue_refuses_only_near_names),
        CASE(a_pointer_is_escaped),
        CASE(the_wrong_type_is_named),
        CASE(a_number_keeps_to_its_range),
        CASE(half_open_ranges_are_said),
        CASE(a_slope_is_read_and_keeps_to_its_range),
        CASE(a_date_is_a_day),
        CASE(lengths_count_characters_and_items),
        CASE(an_empty_list_of_numbers_measures_nothing),
        CASE(a_choice_is_one_of_its_choices),
        CASE(a_reference_names_an_item),
        CASE(a_name_is_given_once),
        CASE(a_measured_fact_waits_for_its_stage),
        CASE(everything_is_said_in_one_go),
        CASE(long_texts_are_cut_between_characters),
        CASE(unknown_fields_without_end_come_to_one),
        CASE(many_references_are_quick),
        CASE(a_job_that_is_no_object_is_refused),
        CASE(only_values_of_their_type_may_be_read),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
