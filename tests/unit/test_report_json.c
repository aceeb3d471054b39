/* The JSON contract: which keys, in which order, holding what.
 *
 * usage: test_report_json [--accept]   (writes tests/schema/report.json anew) */
#include "report/report.h"

#include "base/file.h"
#include "include/eavemark.h"
#include "sample_result.h"

#include <cjson/cJSON.h>

#include <setjmp.h>
#include <stdarg.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>

#include <cmocka.h>

static char *written(const struct result *result, bool pretty)
{
    struct text out = TEXT_EMPTY;
    report_json(result, pretty, true, &out);
    assert_false(out.failed);
    assert_non_null(out.bytes);
    return out.bytes;
}

static cJSON *parsed(const struct result *result)
{
    char *report = written(result, false);
    cJSON *root = cJSON_ParseWithOpts(report, NULL, true);
    free(report);
    assert_non_null(root);
    return root;
}

static const cJSON *at(const cJSON *object, const char *key)
{
    const cJSON *item = cJSON_GetObjectItemCaseSensitive(object, key);
    if (item == NULL)
        fail_msg("no key %s", key);
    return item;
}

/* The keys of an object, in order, with a space after each. */
static void assert_keys(const cJSON *object, const char *expected)
{
    struct text keys = TEXT_EMPTY;
    for (const cJSON *item = object->child; item != NULL; item = item->next)
        text_addf(&keys, "%s ", item->string);
    assert_string_equal(text_string(&keys), expected);
    text_free(&keys);
}

static void assert_text(const cJSON *object, const char *key, const char *expected)
{
    const cJSON *item = at(object, key);
    assert_true(cJSON_IsString(item));
    assert_string_equal(item->valuestring, expected);
}

/* Exactly this JSON, to the byte. */
static void assert_printed(const cJSON *item, const char *expected)
{
    char *printed = cJSON_PrintUnformatted(item);
    assert_non_null(printed);
    assert_string_equal(printed, expected);
    cJSON_free(printed);
}

static const cJSON *finding(const cJSON *root, int index)
{
    return cJSON_GetArrayItem(at(root, "findings"), index);
}

static void keys_and_their_order(void **state)
{
    (void)state;
    struct sample sample;
    sample_make(&sample);
    cJSON *root = parsed(&sample.result);
    assert_keys(
        root,
        "eavemark job date jurisdiction fingerprint summary counts facts differs findings caution ");
    assert_keys(at(root, "jurisdiction"), "id title invented chain doubts edition ");
    assert_keys(at(root, "summary"), "pass warn fail open not_applicable broken ");
    assert_int_equal(cJSON_GetArraySize(at(root, "findings")), SAMPLE_FINDINGS);
    for (int i = 0; i < SAMPLE_FINDINGS; i++)
        assert_keys(finding(root, i), "rule stage where outcome met why ask says required also "
                                      "rival found figures cite amended work mend caution reads ");
    const cJSON *fail = finding(root, 2);
    assert_keys(at(fail, "required"), "value unit sense ");
    assert_keys(at(fail, "found"), "value unit ");
    assert_keys(cJSON_GetArrayItem(at(fail, "cite"), 0), "code section status source ");
    assert_keys(at(fail, "amended"), "by from to ");
    cJSON_Delete(root);
}

static void the_top(void **state)
{
    (void)state;
    struct sample sample;
    sample_make(&sample);
    cJSON *root = parsed(&sample.result);
    assert_text(root, "eavemark", EAVEMARK_VERSION);
    assert_text(root, "job", "Blue house");
    assert_text(root, "date", "2026-03-01");
    assert_printed(at(root, "jurisdiction"),
                   "{\"id\":\"example/tamarack\",\"title\":\"Tamarack County\",\"invented\":true,"
                   "\"chain\":[\"example/tamarack\",\"model/irc-2021\"],"
                   "\"doubts\":[\"the page is old\"],"
                   "\"edition\":\"IRC 2021 as amended\"}");
    assert_int_equal(strlen(at(root, "fingerprint")->valuestring), 64);
    assert_printed(at(root, "summary"), "{\"pass\":1,\"warn\":2,\"fail\":1,\"open\":1,"
                                        "\"not_applicable\":2,\"broken\":1}");
    assert_printed(at(root, "counts"), "{\"met_unconfirmed\":1,\"disputed\":1,\"not_met\":1}");
    assert_text(root, "caution",
                "The building department decides.\n"
                "Tie off. (Code of Practice 4; common practice, not code)");
    cJSON_Delete(root);
}

static void a_full_finding(void **state)
{
    (void)state;
    struct sample sample;
    sample_make(&sample);
    cJSON *root = parsed(&sample.result);
    assert_printed(finding(root, 2),
                   "{\"rule\":\"layers.total\",\"stage\":\"permit\",\"where\":null,"
                   "\"outcome\":\"fail\",\"met\":false,\"why\":[\"unconfirmed\"],\"ask\":null,"
                   "\"says\":\"Found 3 layers. 2 layers stay under the new one.\","
                   "\"required\":{\"value\":1,\"unit\":\"layers\",\"sense\":\"at_most\"},"
                   "\"also\":{\"value\":0,\"unit\":\"layers\",\"sense\":\"at_least\"},"
                   "\"rival\":{\"value\":2,\"unit\":\"layers\"},"
                   "\"found\":{\"value\":3,\"unit\":\"layers\"},"
                   "\"figures\":[\"layers.most\"],"
                   "\"cite\":[{\"code\":\"IRC 2021\",\"section\":\"R908.3.1.1\","
                   "\"status\":\"seen\",\"source\":\"city handouts\"}],"
                   "\"amended\":{\"by\":\"Tamarack County\",\"from\":2,\"to\":1},"
                   "\"work\":[\"2 kept + 1 new = 3 layers\",\"3 is over 1\"],"
                   "\"mend\":\"Tear off to the deck.\","
                   "\"caution\":\"Old layers hide soft decks.\","
                   "\"reads\":[{\"at\":\"/existing/layers\",\"from\":\"job\"},"
                   "{\"at\":\"/scope/method\",\"from\":\"plan\"}]}");
    cJSON_Delete(root);
}

static void a_bare_finding(void **state)
{
    (void)state;
    struct sample sample;
    sample_make(&sample);
    cJSON *root = parsed(&sample.result);
    assert_printed(finding(root, 3),
                   "{\"rule\":\"slope.least\",\"stage\":\"permit\",\"where\":\"front\","
                   "\"outcome\":\"open\",\"met\":null,\"why\":[],\"ask\":\"later\","
                   "\"says\":\"Not known: roof.slopes[1].pitch.\","
                   "\"required\":null,\"also\":null,\"rival\":null,\"found\":null,"
                   "\"figures\":[],\"cite\":[],\"amended\":null,\"work\":[],"
                   "\"mend\":null,\"caution\":null,\"reads\":[]}");
    assert_text(finding(root, 0), "outcome", "broken");
    assert_text(finding(root, 4), "outcome", "not_applicable");
    assert_text(finding(root, 7), "stage", "dry-in");
    cJSON_Delete(root);
}

/* What does not apply fills most of a report: told as numbers, unless all is wanted. */
static void what_does_not_apply_is_counted(void **state)
{
    (void)state;
    struct sample sample;
    struct text out = TEXT_EMPTY;
    sample_make(&sample);
    sample.findings[0].outcome = OUTCOME_NOT_APPLICABLE;
    report_json(&sample.result, false, false, &out);
    cJSON *root = cJSON_Parse(text_string(&out));
    assert_keys(root,
                "eavemark job date jurisdiction fingerprint summary counts facts differs findings "
                "not_applicable caution ");
    assert_printed(at(root, "not_applicable"), "{\"deck\":1,\"valley\":2}");
    assert_int_equal(cJSON_GetArraySize(at(root, "findings")), SAMPLE_FINDINGS - 3);
    assert_text(finding(root, 0), "rule", "drip_edge.eave");
    cJSON_Delete(root);
    text_free(&out);
}

static void values_of_every_kind(void **state)
{
    (void)state;
    struct sample sample;
    sample_make(&sample);
    cJSON *root = parsed(&sample.result);
    assert_printed(at(finding(root, 1), "required"),
                   "{\"value\":true,\"unit\":null,\"sense\":\"equals\"}");
    /* 0.1 + 0.2 is not 0.3; inches have three decimals, square inches one. */
    assert_printed(at(finding(root, 6), "found"), "{\"value\":0.3,\"unit\":\"in\"}");
    assert_printed(at(finding(root, 6), "required"),
                   "{\"value\":1152,\"unit\":\"sqin\",\"sense\":\"at_least\"}");
    assert_printed(at(finding(root, 7), "required"),
                   "{\"value\":[\"D226_II\",\"D1970\"],\"unit\":null,\"sense\":\"one_of\"}");
    assert_printed(at(finding(root, 7), "found"), "{\"value\":\"D226_II\",\"unit\":null}");
    cJSON_Delete(root);
    sample.findings[6].found.kind = VALUE_NONE;
    root = parsed(&sample.result);
    assert_true(cJSON_IsNull(at(finding(root, 6), "found")));
    assert_true(cJSON_IsObject(at(finding(root, 6), "required")));
    cJSON_Delete(root);
}

/* With all their digits, and none that is not theirs. */
static void numbers_are_written_as_printf_has_them(void **state)
{
    (void)state;
    struct sample sample;
    sample_make(&sample);
    static const double TO[] = {0, 1, 999999999, -3, -1e9, 123456789012};
    for (size_t i = 0; i < sizeof(TO) / sizeof(TO[0]); i++)
        for (int parts = 0; parts < 1000; parts += parts % 100 == 0 ? 1 : 9) {
            const double number = (TO[i] * 1000 + parts) / 1000;
            char expected[100];
            snprintf(expected, sizeof(expected), "\"found\":{\"value\":%1.15g,\"unit\":\"in\"}",
                     number);
            sample.findings[6].found = (struct value){VALUE_NUMBER, .number = number, .unit = "in"};
            char *report = written(&sample.result, false);
            assert_non_null(strstr(report, expected));
            free(report);
        }
}

/* What a job says comes back as it was, yet nothing in the bytes can steer a
 * terminal; broken bytes give U+FFFD, so that the report stays JSON. */
static void nasty_texts(void **state)
{
    (void)state;
    const char *const NASTY[] = {
        "\033[31m\" \\ / \b \f \n \r \t \001 \x7F",
        "\xC2\x9B \xE2\x80\xAE \xE5\xB1\x8B \xF0\x9F\x8F\xA0 \xC3\xA9",
        "</script><!-- & ' %s",
    };
    struct sample sample;
    for (size_t i = 0; i < sizeof(NASTY) / sizeof(NASTY[0]); i++) {
        sample_make(&sample);
        sample.result.job = NASTY[i];
        char *report = written(&sample.result, false);
        for (const char *byte = report; byte[1] != '\0'; byte++)
            assert_true(*byte >= 0x20 && *byte < 0x7F);
        free(report);
        cJSON *root = parsed(&sample.result);
        assert_text(root, "job", NASTY[i]);
        cJSON_Delete(root);
    }
    sample.result.job = "a\xFF"
                        "b\xED\xA0\x80";
    cJSON *root = parsed(&sample.result);
    assert_text(root, "job",
                "a\xEF\xBF\xBD"
                "b\xEF\xBF\xBD\xEF\xBF\xBD\xEF\xBF\xBD");
    cJSON_Delete(root);
}

/* Wherever in a text of whatever length: texts are looked through eight bytes at a time. */
static void every_sign_is_escaped_wherever_it_stands(void **state)
{
    (void)state;
    enum { LONG = 18 };
    struct sample sample;
    sample_make(&sample);
    for (int sign = 1; sign < 256; sign++)
        for (size_t at = 0; at < LONG * LONG; at++) {
            const size_t length = 1 + at / LONG, place = at % LONG;
            char words[] = "eighteen bytes are";
            if (place >= length)
                continue;
            words[length] = '\0';
            words[place] = (char)sign;
            sample.result.job = words;
            char *report = written(&sample.result, false);
            for (const char *byte = report; byte[1] != '\0'; byte++)
                assert_true(*byte >= 0x20 && *byte < 0x7F);
            cJSON *root = cJSON_Parse(report);
            assert_non_null(root);
            if (sign < 0x80)
                assert_text(root, "job", words);
            cJSON_Delete(root);
            free(report);
        }
}

static void one_line_or_many(void **state)
{
    (void)state;
    struct sample sample;
    sample_make(&sample);
    char *line = written(&sample.result, false), *many = written(&sample.result, true);
    assert_int_equal(strcspn(line, "\n"), strlen(line) - 1);
    assert_ptr_equal(strstr(many, "{\n  \"eavemark\": \""), many);
    assert_null(strchr(many, '\t'));
    assert_int_equal(many[strlen(many) - 1], '\n');
    cJSON *a = cJSON_Parse(line), *b = cJSON_Parse(many);
    assert_true(cJSON_Compare(a, b, true));
    cJSON_Delete(a);
    cJSON_Delete(b);
    free(line);
    free(many);
}

#define GOLDEN EAVEMARK_HOME_DIR "/tests/schema/report.json"

/* The sample's report to the byte, as it is kept for whoever reads such reports. */
static void the_whole_as_kept(void **state)
{
    (void)state;
    struct sample sample;
    sample_make(&sample);
    char *report = written(&sample.result, true);
    char *kept;
    size_t length;
    assert_int_equal(file_read(&kept, &length, GOLDEN, 1 << 20), FILE_READ);
    if (strcmp(report, kept) != 0)
        fail_msg("the report is not " GOLDEN " (if that is meant: test_report_json --accept):\n%s",
                 report);
    free(kept);
    free(report);
}

static int accept_the_whole(void)
{
    struct sample sample;
    sample_make(&sample);
    struct text report = TEXT_EMPTY;
    report_json(&sample.result, true, true, &report);
    FILE *file = report.failed ? NULL : fopen(GOLDEN, "w");
    const bool written_out = file != NULL && fputs(text_string(&report), file) >= 0;
    text_free(&report);
    return file != NULL && fclose(file) == 0 && written_out ? 0 : 1;
}

static void the_same_twice(void **state)
{
    (void)state;
    struct sample first, second;
    sample_make(&first);
    sample_make(&second);
    char *a = written(&first.result, true), *b = written(&second.result, true);
    assert_string_equal(a, b);
    free(a);
    free(b);
}

/* Refused once none are left (linked with --wrap=realloc). */
static size_t allocations_left = SIZE_MAX;

void *__real_realloc(void *block, size_t size);
void *__wrap_realloc(void *block, size_t size);

void *__wrap_realloc(void *block, size_t size)
{
    if (allocations_left == 0)
        return NULL;
    allocations_left--;
    return __real_realloc(block, size);
}

/* The text grows seldom, but each time it may be refused: it is then failed, never taken
 * for whole. */
static void every_allocation_may_fail(void **state)
{
    (void)state;
    struct sample sample;
    sample_make(&sample);
    char *whole = written(&sample.result, false);
    size_t refused = 0;
    for (;; refused++) {
        struct text out = TEXT_EMPTY;
        allocations_left = refused;
        report_json(&sample.result, false, true, &out);
        allocations_left = SIZE_MAX;
        const bool done = !out.failed;
        assert_true(done == (strcmp(text_string(&out), whole) == 0));
        text_free(&out);
        if (done)
            break;
    }
    assert_true(refused > 2);
    free(whole);
}

static void a_failed_text_stays_failed(void **state)
{
    (void)state;
    struct sample sample;
    sample_make(&sample);
    char byte = '\0';
    struct text full = {.bytes = &byte, .length = SIZE_MAX / 2 - 1, .capacity = SIZE_MAX / 2};
    report_json(&sample.result, false, true, &full);
    assert_true(full.failed);
}

int main(int argc, char **argv)
{
    if (argc == 2 && strcmp(argv[1], "--accept") == 0)
        return accept_the_whole();
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(keys_and_their_order),
        cmocka_unit_test(the_top),
        cmocka_unit_test(a_full_finding),
        cmocka_unit_test(a_bare_finding),
        cmocka_unit_test(what_does_not_apply_is_counted),
        cmocka_unit_test(values_of_every_kind),
        cmocka_unit_test(numbers_are_written_as_printf_has_them),
        cmocka_unit_test(nasty_texts),
        cmocka_unit_test(every_sign_is_escaped_wherever_it_stands),
        cmocka_unit_test(one_line_or_many),
        cmocka_unit_test(the_whole_as_kept),
        cmocka_unit_test(the_same_twice),
        cmocka_unit_test(every_allocation_may_fail),
        cmocka_unit_test(a_failed_text_stays_failed),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
