/* The catalogue as JSON Schema and as a listing. That the schema means what
 * it says is shown by another's validator: see tests/schema. */
#include "job/schema.h"

#include "base/utf8.h"
#include "job/slope.h"

#include <cjson/cJSON.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

#include "sample_fields.h"

struct sample {
    struct fields fields;
    struct text text;
    cJSON *schema;
};

static int start(void **state)
{
    static struct sample sample;
    sample = (struct sample){.text = TEXT_EMPTY};
    sample_fields(&sample.fields);
    if (schema_of_fields(&sample.fields, &sample.text) != 0)
        return -1;
    sample.schema = cJSON_Parse(text_string(&sample.text));
    *state = &sample;
    return sample.schema == NULL ? -1 : 0;
}

static int stop(void **state)
{
    struct sample *sample = *state;
    cJSON_Delete(sample->schema);
    text_free(&sample->text);
    fields_free(&sample->fields);
    return 0;
}

/* The part at a slash-separated place below the root of the schema. */
static const cJSON *part(void **state, const char *place)
{
    const struct sample *sample = *state;
    const cJSON *at = sample->schema;
    char name[64];
    while (*place != '\0') {
        const size_t length = strcspn(place, "/");
        snprintf(name, sizeof(name), "%.*s", (int)length, place);
        at = cJSON_GetObjectItemCaseSensitive(at, name);
        if (at == NULL)
            fail_msg("the schema has no %s", place);
        place += length + (place[length] == '/');
    }
    return at;
}

static void assert_part(void **state, const char *place, const char *json)
{
    char *printed = cJSON_PrintUnformatted(part(state, place));
    assert_non_null(printed);
    assert_string_equal(printed, json);
    cJSON_free(printed);
}

static void the_schema_names_its_draft_and_itself(void **state)
{
    assert_part(state, "$schema", "\"https://json-schema.org/draft/2020-12/schema\"");
    assert_part(state, "$id", "\"urn:eavemark:job:1\"");
    assert_part(state, "type", "\"object\"");
    assert_part(state, "required", "[\"job\"]");
    assert_part(state, "additionalProperties", "false");
}

static void required_text_may_not_be_null(void **state)
{
    assert_part(state, "properties/job",
                "{\"title\":\"What do you call this job?\","
                "\"description\":\"Known at the permit stage.\",\"type\":\"string\","
                "\"minLength\":1,\"maxLength\":20}");
}

static void each_type_has_its_keywords(void **state)
{
    assert_part(state, "properties/existing/properties/layers",
                "{\"description\":\"In layers. Known at the permit stage.\","
                "\"type\":[\"integer\",\"string\",\"null\"],\"minimum\":0,\"maximum\":6,"
                "\"pattern\":\"^[^0-9A-Za-z]*[0-9]\"}");
    assert_part(state, "properties/roof/properties/ridge_ft/type",
                "[\"number\",\"string\",\"null\"]");
    assert_part(state, "properties/existing/properties/sound/type", "[\"boolean\",\"null\"]");
    assert_part(state, "properties/scope/properties/method/enum",
                "[\"tear-off\",\"overlay\",null]");
    assert_part(state, "properties/roof/properties/zones",
                "{\"description\":\"Known at the permit stage.\",\"type\":[\"array\",\"null\"],"
                "\"items\":{\"enum\":[\"A\",\"B\"]},\"minItems\":1,\"maxItems\":2}");
    assert_part(
        state, "properties/decks/items/properties/measured_spacing_in",
        "{\"description\":\"In in. Measured at the deck stage.\","
        "\"type\":[\"array\",\"null\"],\"items\":{\"type\":[\"number\",\"string\"],\"minimum\":0.1,"
        "\"maximum\":60,\"pattern\":\"^[^0-9A-Za-z]*[0-9]\"},\"minItems\":1}");
    assert_part(state, "properties/roof/properties/slopes/items/properties/deck",
                "{\"description\":\"The name of an item of decks. Known at the permit stage.\","
                "\"type\":[\"string\",\"null\"]}");
}

static void groups_and_items_are_closed(void **state)
{
    static const char *const PLACES[] = {
        "properties/roof/additionalProperties",
        "properties/scope/additionalProperties",
        "properties/roof/properties/slopes/items/additionalProperties",
        "properties/decks/items/additionalProperties",
    };
    for (size_t i = 0; i < sizeof(PLACES) / sizeof(PLACES[0]); i++)
        assert_part(state, PLACES[i], "false");
    assert_part(state, "properties/roof/properties/slopes/minItems", "1");
    assert_part(state, "properties/roof/properties/slopes/maxItems", "3");
    assert_part(state, "properties/roof/properties/slopes/items/type", "\"object\"");
}

static void slopes_and_dates_have_the_patterns_of_their_readers(void **state)
{
    const cJSON *slope = part(state,
                              "properties/roof/properties/slopes/items/properties/pitch/pattern");
    assert_string_equal(slope->valuestring, SLOPE_PATTERN);
    assert_string_equal(part(state, "properties/date/pattern")->valuestring, DATE_PATTERN);
}

static void a_partial_catalogue_leaves_room(void **state)
{
    struct sample *sample = *state;
    struct text text = TEXT_EMPTY;
    sample->fields.partial = true;
    assert_int_equal(schema_of_fields(&sample->fields, &text), 0);
    assert_null(strstr(text_string(&text), "additionalProperties"));
    text_free(&text);
}

/* Allocation fails at the n-th call, for every n until none does. */
static size_t allocations_left;

static void *sparing_malloc(size_t size)
{
    if (allocations_left == 0)
        return NULL;
    allocations_left--;
    return malloc(size);
}

static void running_out_of_memory_is_said(void **state)
{
    const struct sample *sample = *state;
    cJSON_Hooks sparing = {.malloc_fn = sparing_malloc, .free_fn = free};
    cJSON_InitHooks(&sparing);
    size_t refused = 0;
    int status = -1;
    for (size_t n = 0; status != 0 && n < 10000; n++) {
        struct text text = TEXT_EMPTY;
        allocations_left = n;
        status = schema_of_fields(&sample->fields, &text);
        if (status != 0) {
            assert_int_equal(text.length, 0);
            refused++;
        } else {
            assert_string_equal(text_string(&text), text_string(&sample->text));
        }
        text_free(&text);
    }
    cJSON_InitHooks(NULL);
    assert_int_equal(status, 0);
    assert_true(refused > 100);
}

static void the_listing_fits_a_terminal(void **state)
{
    struct sample *sample = *state;
    struct text text = TEXT_EMPTY;
    fields_find(&sample->fields, "roof.slopes[].pitch")->ask =
        "How far does this plane rise over each foot of its level run, as measured with a level "
        "and a rule on the rake or read from the drawings of the house?";
    assert_int_equal(listing_of_fields(&sample->fields, NULL, &text), 0);
    size_t lines = 0;
    for (char *line = text.bytes; line != NULL && *line != '\0'; lines++) {
        char *end = strchr(line, '\n');
        assert_non_null(end);
        *end = '\0';
        assert_true(utf8_columns(line) <= 80);
        line = end + 1;
    }
    assert_true(lines > 30);
    text_free(&text);
}

static void a_topic_is_listed_alone(void **state)
{
    const struct sample *sample = *state;
    struct text text = TEXT_EMPTY;
    assert_int_equal(listing_of_fields(&sample->fields, "decks", &text), 0);
    assert_string_equal(text_string(&text),
                        "decks\n"
                        "  decks[]\n"
                        "      list; known at permit\n"
                        "  decks[].name\n"
                        "      text, 1 to 60 characters; known at permit\n"
                        "  decks[].thickness_in\n"
                        "      number, 0.1 in to 4 in; known at permit\n"
                        "  decks[].measured_spacing_in\n"
                        "      list of numbers, 0.1 in to 60 in; measured at deck\n");
    text_free(&text);
    assert_int_equal(listing_of_fields(&sample->fields, "scope", &text), 0);
    assert_string_equal(text_string(&text), "scope\n"
                                            "  scope.method\n"
                                            "      choice: tear-off, overlay; known at permit\n");
    text_free(&text);
    assert_int_equal(listing_of_fields(&sample->fields, "job", &text), 0);
    assert_string_equal(text_string(&text),
                        "  job\n"
                        "      text, 1 to 20 characters; known at permit; required\n"
                        "      What do you call this job?\n");
    text_free(&text);
}

static void a_topic_that_is_none_is_said(void **state)
{
    const struct sample *sample = *state;
    struct text text = TEXT_EMPTY;
    assert_int_equal(listing_of_fields(&sample->fields, "chimney", &text), 1);
    assert_int_equal(text.length, 0);
    text_free(&text);
}

#define CASE(function) cmocka_unit_test_setup_teardown(function, start, stop)

int main(void)
{
    const struct CMUnitTest tests[] = {
        CASE(the_schema_names_its_draft_and_itself),
        CASE(required_text_may_not_be_null),
        CASE(each_type_has_its_keywords),
        CASE(groups_and_items_are_closed),
        CASE(slopes_and_dates_have_the_patterns_of_their_readers),
        CASE(a_partial_catalogue_leaves_room),
        CASE(running_out_of_memory_is_said),
        CASE(the_listing_fits_a_terminal),
        CASE(a_topic_is_listed_alone),
        CASE(a_topic_that_is_none_is_said),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
