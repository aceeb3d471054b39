/* What the table of `eavemark fields` says is read how, is read so: in a job and in an
 * answer alike, by the same reader. */
#include "base/measure.h"
#include "job/answer.h"
#include "job/slope.h"
#include "job/spoken.h"
#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

#include "sample_fields.h"

static bool is_slope(const struct spoken_example *example)
{
    return strcmp(example->unit, "rise_in_12") == 0;
}

static void the_table_says_what_is_read(void **state)
{
    (void)state;
    size_t rows = 0;
    for (const struct spoken_example *e = SPOKEN_READ; e->words != NULL; e++, rows++) {
        char why[MEASURE_WHY] = "";
        double value = -1;
        if (!(is_slope(e) ? slope_parse(e->words, &value)
                          : measure_read(e->words, e->unit, &value, why)))
            fail_msg("%s: %s", e->words, why);
        if (fabs(value - strtod(e->says, NULL)) > 5e-5)
            fail_msg("%s: %g, not %s", e->words, value, e->says);
    }
    assert_true(rows > 15);
}

/* Each thing the table says it could be stands in the refusal too. */
static void the_table_says_what_is_refused(void **state)
{
    (void)state;
    static const char *const FIRST[] = {"1.5",        "1 1/4", "slope", "12 ft 6 in",
                                        "30 squares", "wire",  "5:12",  "1/4:12"};
    static const char *const SECOND[] = {"1 and 5",  "2.75",  "ft",        "12 and 6",
                                         "30 sq ft", "sheet", "5 percent", "3:12"};
    size_t row = 0;
    for (const struct spoken_example *e = SPOKEN_REFUSED; e->words != NULL; e++, row++) {
        char why[MEASURE_WHY] = "", readings[SLOPE_WHY] = "";
        double value = -1;
        assert_true(row < sizeof(FIRST) / sizeof(FIRST[0]));
        assert_false(is_slope(e) ? slope_parse(e->words, &value)
                                 : measure_read(e->words, e->unit, &value, why));
        if (is_slope(e))
            assert_true(slope_has_two_readings(e->words, readings));
        const char *said = is_slope(e) ? readings : why;
        if (strstr(said, FIRST[row]) == NULL || strstr(said, SECOND[row]) == NULL)
            fail_msg("%s: %s", e->words, said);
    }
    assert_int_equal(row, sizeof(FIRST) / sizeof(FIRST[0]));
}

static const struct field INCHES = {.name = "in", .path = "in", .type = FIELD_NUMBER, .unit = "in"};
static const struct field SPACINGS = {
    .name = "s_in", .path = "s_in", .type = FIELD_NUMBERS, .unit = "in"};

static void answers_are_read_by_the_same_reader(void **state)
{
    (void)state;
    for (const struct spoken_example *e = SPOKEN_READ; e->words != NULL; e++) {
        struct text why = TEXT_EMPTY;
        struct field field = {.name = "f", .path = "f", .unit = e->unit};
        cJSON *value = NULL;
        field.type = is_slope(e) ? FIELD_SLOPE : FIELD_NUMBER;
        assert_true(answer_read(&value, &field, NULL, e->words, &why));
        if (!is_slope(e))
            assert_true(fabs(value->valuedouble - strtod(e->says, NULL)) < 5e-5);
        cJSON_Delete(value);
        text_free(&why);
    }
}

static void a_comma_in_a_list_is_one_thing_or_the_other(void **state)
{
    (void)state;
    struct text why = TEXT_EMPTY;
    cJSON *value = NULL;
    assert_false(answer_read(&value, &SPACINGS, NULL, "4,125", &why));
    assert_non_null(strstr(text_string(&why), "a comma in a number, or between two"));
    text_free(&why);
    why = TEXT_EMPTY;
    assert_true(answer_read(&value, &SPACINGS, NULL, "4, 125", &why));
    assert_int_equal(cJSON_GetArraySize(value), 2);
    cJSON_Delete(value);
    assert_true(answer_read(&value, &SPACINGS, NULL, "5 5/8, 5-1/2", &why));
    assert_true(cJSON_GetArrayItem(value, 1)->valuedouble == 5.5);
    cJSON_Delete(value);
    assert_false(answer_read(&value, &INCHES, NULL, "1,5", &why));
    text_free(&why);
}

static void a_job_is_settled_in_place(void **state)
{
    (void)state;
    struct fields fields;
    sample_fields(&fields);
    cJSON *job = cJSON_Parse("{\"existing\":{\"layers\":\"2 layers\",\"sound\":\"2\"},"
                             "\"roof\":{\"ridge_ft\":\"59'6\\\"\"},"
                             "\"decks\":[{\"thickness_in\":\"15/32\",\"name\":\"15/32\","
                             "\"measured_spacing_in\":[\"5 1/2\",6,\"many\"]},"
                             "{\"thickness_in\":\"thick\"}]}");
    assert_non_null(job);
    spoken_settle(job, &fields);
    char *printed = cJSON_PrintUnformatted(job);
    assert_string_equal(printed, "{\"existing\":{\"layers\":2,\"sound\":\"2\"},"
                                 "\"roof\":{\"ridge_ft\":59.5},"
                                 "\"decks\":[{\"thickness_in\":0.46875,\"name\":\"15/32\","
                                 "\"measured_spacing_in\":[5.5,6,\"many\"]},"
                                 "{\"thickness_in\":\"thick\"}]}");
    cJSON_free(printed);
    cJSON_Delete(job);
    fields_free(&fields);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(the_table_says_what_is_read),
        cmocka_unit_test(the_table_says_what_is_refused),
        cmocka_unit_test(answers_are_read_by_the_same_reader),
        cmocka_unit_test(a_comma_in_a_list_is_one_thing_or_the_other),
        cmocka_unit_test(a_job_is_settled_in_place),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
