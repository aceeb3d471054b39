/* The shop sheet: what it fills, what the job says before it, which of several is picked,
 * and what is refused. Houses and shops are invented. */
#include "include/eavemark.h"
#include "support/temporary_home.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>

#include <cmocka.h>

static eavemark *handle;

static int open_handle(void **state)
{
    (void)state;
    handle = eavemark_open(EAVEMARK_HOME_DIR);
    return handle == NULL ? -1 : 0;
}

static int close_handle(void **state)
{
    (void)state;
    eavemark_close(handle);
    return 0;
}

#define HEAD                                                                                      \
    "{\"eavemark_job\":1,\"job\":\"One gable, invented\",\"jurisdiction\":\"example/dunmarrow\"," \
    "\"date\":\"2026-05-04\",\"stage\":\"permit\",\"scope\":{\"method\":\"tear-off\"},"           \
    "\"existing\":{\"layers\":1,\"layers_removed\":1},"
#define ROOF                                                                        \
    "\"roof\":{\"footprint\":{\"form\":\"gable\",\"length_ft\":40,\"width_ft\":26," \
    "\"pitch\":\"6:12\",\"eave_overhang_in\":12,\"rake_overhang_in\":6,"            \
    "\"planes\":{\"deck\":\"main\",\"underlayment\":\"felt\"}}},"                   \
    "\"decks\":[{\"name\":\"main\",\"kind\":\"panel\",\"work\":\"replaced\","       \
    "\"thickness_in\":0.5,\"support_spacing_in\":24}]"

/* One attic with a ridge vent; more: said of the vent. */
#define ATTIC(more)                                                                       \
    ",\"attics\":[{\"name\":\"attic\",\"area_sqft\":1000,\"area_basis\":\"attic_floor\"," \
    "\"vents\":[{\"name\":\"ridge vent\",\"kind\":\"ridge\",\"below_ridge_ft\":0,"        \
    "\"length_ft\":40" more "}]}]"

/* Two coverings, the rest one of each. */
#define SHEET                                                                                    \
    "{\"eavemark_shop\":1,\"covering\":[{\"name\":\"laminated\",\"kind\":\"asphalt_shingle\","   \
    "\"grade\":\"laminated\",\"made_to\":\"D3462\",\"D7158_class\":\"H\",\"fire_class\":\"A\"}," \
    "{\"name\":\"panels\",\"kind\":\"metal_panel\"}],"                                           \
    "\"fasteners\":{\"kind\":\"nail\",\"metal\":\"galvanized\",\"shank_in\":0.12,"               \
    "\"head_in\":\"3/8\",\"length_in\":\"1-1/4\",\"per_shingle\":4},"                            \
    "\"underlayments\":[{\"name\":\"felt\",\"kind\":\"D226_I\",\"plies\":1,\"head_lap_in\":2,"   \
    "\"end_lap_in\":6},{\"name\":\"peel-and-stick\",\"kind\":\"D1970\"}],"                       \
    "\"decks\":{\"nails\":{\"kind\":\"common_8d\",\"length_in\":2.5,\"edge_spacing_in\":6}},"    \
    "\"roof\":{\"footprint\":{\"eaves\":{\"drip_edge\":true,"                                    \
    "\"underlayment_lies\":\"over_metal\"}},\"valleys\":{\"kind\":\"open\"}},"                   \
    "\"drip_edge\":{\"lap_in\":2},\"inspection\":{\"called_by\":\"contractor\"}}"

struct answer {
    eavemark_result *result;
    char *json; /* NULL without findings */
};

static struct answer check(const char *job, const char *sheet)
{
    const struct eavemark_request request = {.name = "job.json",
                                             .text = job,
                                             .length = strlen(job),
                                             .shop = sheet,
                                             .shop_length = sheet == NULL ? 0 : strlen(sheet),
                                             .shop_name = sheet == NULL ? NULL : "shop.json"};
    struct answer answer = {.result = eavemark_check(handle, &request)};
    assert_non_null(answer.result);
    answer.json = eavemark_result_report(answer.result, EAVEMARK_JSON_LINE, EAVEMARK_ALL);
    return answer;
}

static void answer_free(struct answer *answer)
{
    free(answer->json);
    eavemark_result_free(answer->result);
}

/* What the findings of a job read, and from where. */
static void expect_has(const char *job, const char *sheet, const char *words)
{
    struct answer answer = check(job, sheet);
    if (answer.json == NULL)
        fail_msg("%s", eavemark_result_problems(answer.result));
    assert_has(answer.json, words);
    answer_free(&answer);
}

static void expect_refused(const char *job, const char *sheet, const char *words)
{
    struct answer answer = check(job, sheet);
    assert_null(answer.json);
    assert_int_equal(eavemark_result_status(answer.result, false), EAVEMARK_UNUSABLE);
    assert_has(eavemark_result_problems(answer.result), words);
    answer_free(&answer);
}

/* The sheet's facts are read as the shop's; the plan's and the job's are theirs. */
static void test_fills_what_the_job_leaves_out(void **state)
{
    (void)state;
    static const char JOB[] = HEAD ROOF ",\"covering\":{\"name\":\"laminated\"}}";
    struct answer answer = check(JOB, SHEET);
    assert_string_equal(eavemark_result_problems(answer.result), "");
    static const char *const READ[] = {
        "{\"at\":\"/covering/kind\",\"from\":\"shop\"}",
        "{\"at\":\"/fasteners/length_in\",\"from\":\"shop\"}",
        "{\"at\":\"/underlayments/0/plies\",\"from\":\"shop\"}",
        "{\"at\":\"/decks/0/nails/kind\",\"from\":\"shop\"}",
        "{\"at\":\"/roof/edges/0/drip_edge\",\"from\":\"shop\"}",
        "{\"at\":\"/drip_edge/lap_in\",\"from\":\"shop\"}",
        "{\"at\":\"/roof/slopes/0/pitch\",\"from\":\"plan\"}",
        "{\"at\":\"/decks/0/kind\",\"from\":\"job\"}",
    };
    for (size_t i = 0; i < sizeof(READ) / sizeof(READ[0]); i++)
        assert_has(answer.json, READ[i]);
    /* Figures as spoken, in a sheet as in a job. */
    assert_has(answer.json, "\"found\":{\"value\":0.375,\"unit\":\"in\"}");
    answer_free(&answer);
}

static void test_the_job_goes_before_the_sheet(void **state)
{
    (void)state;
    static const char JOB[] = HEAD ROOF
        ",\"covering\":{\"name\":\"laminated\",\"made_to\":\"none\"},"
        "\"drip_edge\":{\"lap_in\":1.5},\"fasteners\":{\"per_shingle\":6}}";
    expect_has(JOB, SHEET, "{\"at\":\"/covering/made_to\",\"from\":\"job\"}");
    expect_has(JOB, SHEET, "{\"at\":\"/drip_edge/lap_in\",\"from\":\"job\"}");
    /* How many nails is the shop's way: six of them are not another nail. */
    expect_has(JOB, SHEET, "{\"at\":\"/fasteners/length_in\",\"from\":\"shop\"}");
}

/* Facts of one product are never laid under another. */
static void test_another_product_has_nothing_of_the_sheets(void **state)
{
    (void)state;
    static const char JOB[] = HEAD ROOF ",\"covering\":{\"name\":\"laminated\"},"
                                        "\"fasteners\":{\"kind\":\"staple\"}}";
    struct answer answer = check(JOB, SHEET);
    assert_non_null(answer.json);
    assert_has(answer.json, "\"/fasteners/kind\",\"from\":\"job\"");
    assert_null(strstr(answer.json, "\"/fasteners/length_in\",\"from\":\"shop\""));
    answer_free(&answer);
}

/* What stays was not bought by the shop, though the house names it as the sheet does. */
static void test_says_nothing_of_what_stays(void **state)
{
    (void)state;
    static const char VENTS[] =
        "{\"eavemark_shop\":1,\"underlayments\":[{\"name\":\"felt\",\"kind\":\"D226_I\"}],\"attics\":{\"vents\":[{\"name\":\"ridge vent\","
        "\"nfa_sqin_per_ft\":18,\"opening_in\":0.125}]}}";
    static const char FROM_SHOP[] = "\"/attics/0/vents/0/nfa_sqin_per_ft\",\"from\":\"shop\"";
    static const char NEW[] = HEAD ROOF ATTIC("") "}",
                      OLD[] = HEAD ROOF ATTIC(",\"left_as_is\":true") "}";
    expect_has(NEW, VENTS, FROM_SHOP);
    struct answer answer = check(OLD, VENTS);
    assert_non_null(answer.json);
    assert_null(strstr(answer.json, FROM_SHOP));
    assert_has(answer.json, "\"ventilation.net_free_area\",");
    answer_free(&answer);
}

/* Of several coverings none is taken for a job that names none: it is asked for. */
static void test_asks_which_of_several(void **state)
{
    (void)state;
    static const char JOB[] = HEAD ROOF "}";
    struct answer answer = check(JOB, SHEET);
    assert_non_null(answer.json);
    assert_has(answer.json, "The job does not say /covering/name: ");
    assert_null(strstr(answer.json, "\"/covering/kind\",\"from\":\"shop\""));
    answer_free(&answer);
}

/* By plane and edge the same sheet says the same of an eave. */
static void test_fills_a_roof_by_its_edges(void **state)
{
    (void)state;
    static const char JOB[] = HEAD
        "\"roof\":{\"valley_ft\":12,\"slopes\":[{\"name\":\"a\",\"pitch\":\"6:12\","
        "\"eave_ft\":40,\"ridge_ft\":40,\"run_ft\":14}],\"edges\":[{\"name\":\"e\","
        "\"kind\":\"eave\",\"slope\":\"a\",\"length_ft\":40},{\"name\":\"r\",\"kind\":\"rake\","
        "\"slope\":\"a\",\"length_ft\":15}],\"valleys\":[{\"name\":\"v\"}]},"
        "\"covering\":{\"name\":\"laminated\"}}";
    expect_has(JOB, SHEET, "{\"at\":\"/roof/edges/0/drip_edge\",\"from\":\"shop\"}");
    expect_has(JOB, SHEET, "{\"at\":\"/roof/valleys/0/kind\",\"from\":\"shop\"}");
    struct answer answer = check(JOB, SHEET);
    assert_null(strstr(answer.json, "\"/roof/edges/1/drip_edge\",\"from\":\"shop\""));
    answer_free(&answer);
}

/* A planned spacing of the sheet is no measurement, whatever the stage. */
static void test_is_never_measured(void **state)
{
    (void)state;
    static const char JOB[] = "{\"eavemark_job\":1,\"job\":\"j\",\"date\":\"2026-05-04\","
                              "\"jurisdiction\":\"example/dunmarrow\",\"stage\":\"deck\","
                              "\"scope\":{\"method\":\"tear-off\"}," ROOF "}";
    struct answer answer = check(JOB, SHEET);
    assert_non_null(answer.json);
    assert_null(strstr(answer.json, "/measured_edge_spacing_in\",\"from\":\"shop\""));
    assert_has(answer.json, "The job does not say /decks/0/nails/measured_edge_spacing_in");
    answer_free(&answer);
}

static void test_changes_the_fingerprint(void **state)
{
    (void)state;
    static const char JOB[] = HEAD "\"house\":{}}";
    static const char OTHER[] = "{\"eavemark_shop\":1,\"drip_edge\":{\"lap_in\":2}}";
    static const char LIKE[] = "{\"eavemark_shop\":1,\"drip_edge\":{\"lap_in\":3}}";
    const char *const sheets[] = {NULL, SHEET, OTHER, LIKE, OTHER};
    char prints[5][65];
    for (size_t i = 0; i < 5; i++) {
        struct answer answer = check(JOB, sheets[i]);
        const char *at = strstr(answer.json, "\"fingerprint\":\"");
        assert_non_null(at);
        snprintf(prints[i], sizeof(prints[i]), "%s", at + strlen("\"fingerprint\":\""));
        answer_free(&answer);
    }
    for (size_t i = 0; i < 4; i++)
        for (size_t j = 0; j < i; j++)
            assert_string_not_equal(prints[i], prints[j]);
    assert_string_equal(prints[2], prints[4]);
}

/* Each in its place, with what was meant where that can be told. */
static void test_refuses_what_is_no_habit(void **state)
{
    (void)state;
    static const char JOB[] = HEAD ROOF "}";
    static const char *const BAD[][2] = {
        {"", "shop.json: is empty; a shop sheet is a JSON object"},
        {"[]", "shop.json:1:1:"},
        {"{}", "shop.json: is no shop sheet: that begins with \"eavemark_shop\": 1"},
        {"{\"eavemark_job\":1}", "is a job, not a shop sheet"},
        {"{\"eavemark_shop\":2}", "is no shop sheet"},
        {"{\"eavemark_shop\":1,\"coverings\":{}}",
         "shop.json: /coverings: unknown field \"coverings\"; did you mean \"covering\"?"},
        {"{\"eavemark_shop\":1,\"covering\":{\"knid\":\"slate\"}}",
         "/covering/knid: unknown field \"knid\"; did you mean \"kind\"?"},
        {"{\"eavemark_shop\":1,\"covering\":{\"kind\":\"slat\"}}", "/covering/kind:"},
        {"{\"eavemark_shop\":1,\"fasteners\":{\"length_in\":60}}", "/fasteners/length_in:"},
        {"{\"eavemark_shop\":1,\"house\":{\"stories\":2}}",
         "/house: is of one house or place: a shop sheet says habits only"},
        {"{\"eavemark_shop\":1,\"roof\":{\"ridge_ft\":40}}",
         "/roof/ridge_ft: is of one house or place"},
        {"{\"eavemark_shop\":1,\"site\":{\"wind_vult_mph\":115}}",
         "/site: is of one house or place"},
        {"{\"eavemark_shop\":1,\"date\":\"2026-05-04\"}", "/date: is of one day"},
        {"{\"eavemark_shop\":1,\"drip_edge\":{\"measured_lap_in\":[2]}}",
         "/drip_edge/measured_lap_in: is measured on the roof"},
        {"{\"eavemark_shop\":1,\"shop\":\"shop.json\"}", "/shop: is of one house or place"},
        {"{\"eavemark_shop\":1,\"underlayments\":{\"kind\":\"D1970\"}}",
         "/underlayments: is a list"},
        {"{\"eavemark_shop\":1,\"underlayments\":[{\"kind\":\"D1970\"}]}",
         "/underlayments/0: has no name"},
        {"{\"eavemark_shop\":1,\"covering\":[{\"name\":\"a\"},{\"name\":\"a\"}]}",
         "/covering/1: has the same name \"a\""},
        {"{\"eavemark_shop\":1,\"decks\":[{\"nails\":{}}]}", "/decks: is one object"},
    };
    for (size_t i = 0; i < sizeof(BAD) / sizeof(BAD[0]); i++)
        expect_refused(JOB, BAD[i][0], BAD[i][1]);
}

static void test_refuses_a_material_that_is_not_there(void **state)
{
    (void)state;
    expect_refused(HEAD ROOF ",\"covering\":{\"name\":\"laminatd\"}}", SHEET,
                   "job.json: /covering/name: \"laminatd\" is none of those that the job and its "
                   "shop sheet shop.json have (\"laminated\", \"panels\"); did you mean "
                   "\"laminated\"?");
    expect_refused(HEAD "\"roof\":{\"slopes\":[{\"name\":\"a\",\"underlayment\":\"felts\"}]}}",
                   SHEET, "job.json: /roof/slopes/0/underlayment: \"felts\" is none of those");
    expect_refused(HEAD "\"underlayments\":[{\"name\":\"fel\"}]}", SHEET,
                   "job.json: /underlayments/0/name: \"fel\" is none of those");
    expect_refused(HEAD "\"fasteners\":{\"name\":\"coil\"}}", SHEET,
                   "job.json: /fasteners/name: \"coil\" is none of those that the job and its shop "
                   "sheet shop.json have (none)");
}

/* Each name is looked for among all: a sheet of a hundred thousand would take minutes. */
static void test_refuses_a_list_without_end(void **state)
{
    (void)state;
    enum { MATERIALS = 20000 };
    static const char START[] = "{\"eavemark_shop\":1,\"underlayments\":[";
    char *sheet = malloc(sizeof(START) + (size_t)MATERIALS * 32 + 4);
    assert_non_null(sheet);
    size_t length = (size_t)sprintf(sheet, "%s", START);
    for (int i = 0; i < MATERIALS; i++)
        length += (size_t)sprintf(sheet + length, "%s{\"name\":\"n%d\"}", i == 0 ? "" : ",", i);
    strcpy(sheet + length, "]}");
    expect_refused(HEAD ROOF "}", sheet, "/underlayments: has 20000 materials; 200 at most");
    free(sheet);
}

/* Beside the job, never elsewhere. */
static void test_reads_the_sheet_beside_the_job(void **state)
{
    (void)state;
    struct temporary_home folder;
    static const char *const BAD[][2] = {
        {"/etc/shop.json", "a shop sheet is named by its path beside the job"},
        {"../shop.json", "a shop sheet is named by its path beside the job"},
        {"sheets/../../shop.json", "a shop sheet is named by its path beside the job"},
        {"-", "a shop sheet is named by its path beside the job"},
        {"none.json", "none.json: there is no such shop sheet"},
        {"job.json", "job.json: is a job, not a shop sheet"},
        {"rules", "is not a file; a shop sheet is one JSON file"},
        {"pipe", "is not a file; a shop sheet is one JSON file"},
    };
    home_make(&folder);
    assert_int_equal(mkfifo(home_path(&folder, "pipe"), 0600), 0); /* nobody writes to it */
    home_write(&folder, "sheets/shop.json", SHEET);
    for (size_t i = 0; i <= sizeof(BAD) / sizeof(BAD[0]); i++) {
        const bool good = i == sizeof(BAD) / sizeof(BAD[0]);
        char job[2000];
        snprintf(job, sizeof(job), HEAD ROOF ",\"shop\":\"%s\"}",
                 good ? "sheets/shop.json" : BAD[i][0]);
        home_write(&folder, "job.json", job);
        const struct eavemark_request request = {.name = home_path(&folder, "job.json")};
        eavemark_result *result = eavemark_check(handle, &request);
        if (good)
            assert_string_equal(eavemark_result_problems(result), "");
        else
            assert_has(eavemark_result_problems(result), BAD[i][1]);
        assert_int_equal(eavemark_result_status(result, false) == EAVEMARK_UNUSABLE, !good);
        eavemark_result_free(result);
    }
    home_remove(&folder);
    /* A job that is a text has nothing beside it. */
    expect_refused(HEAD ROOF ",\"shop\":\"shop.json\"}", NULL,
                   "job.json: /shop: names a shop sheet, but the job was not read from a file");
    expect_has(HEAD ROOF ",\"shop\":\"shop.json\"}", SHEET, "\"from\":\"shop\"");
}

/* Habits only, and what all decks have alike; the sheet is one that checks take. */
static void test_lifts_a_sheet_out_of_a_job(void **state)
{
    (void)state;
    static const char JOB[] = HEAD
        "\"roof\":{\"ridge_ft\":40,\"valleys\":[{\"name\":\"v\",\"kind\":\"open\"}]},"
        "\"covering\":{\"kind\":\"slate\",\"on_local_list\":true},"
        "\"underlayments\":[{\"name\":\"felt\",\"kind\":\"D226_I\",\"measured_head_lap_in\":"
        "[2]},{\"kind\":\"D1970\"}],"
        "\"decks\":[{\"name\":\"a\",\"kind\":\"panel\",\"nails\":{\"kind\":\"common_8d\","
        "\"edge_spacing_in\":6}},{\"name\":\"b\",\"nails\":{\"kind\":\"common_8d\","
        "\"edge_spacing_in\":4}}]}";
    const struct eavemark_request request = {
        .name = "job.json", .text = JOB, .length = strlen(JOB)};
    char *sheet = NULL, *problems = NULL;
    assert_int_equal(eavemark_shop_lift(handle, &request, &sheet, &problems),
                     EAVEMARK_NOTHING_FAILED);
    assert_string_equal(problems, "");
    assert_has(sheet, "\"eavemark_shop\": 1");
    assert_has(sheet, "\"kind\": \"slate\"");
    assert_has(sheet, "\"name\": \"felt\"");
    assert_has(sheet, "\"kind\": \"common_8d\"");
    assert_has(sheet, "\"kind\": \"open\"");
    static const char *const NOT[] = {"ridge_ft", "on_local_list", "measured",        "D1970",
                                      "panel",    "edge_spacing",  "\"name\": \"v\"", "method"};
    for (size_t i = 0; i < sizeof(NOT) / sizeof(NOT[0]); i++)
        assert_null(strstr(sheet, NOT[i]));
    struct answer answer = check(HEAD "\"house\":{}}", sheet);
    assert_string_equal(eavemark_result_problems(answer.result), "");
    answer_free(&answer);
    free(sheet);
    free(problems);
}

/* Said wherever the job is reported. */
static void test_is_told_in_reports(void **state)
{
    (void)state;
    static const char JOB[] = HEAD ROOF ",\"covering\":{\"name\":\"laminated\"}}";
    struct answer answer = check(JOB, SHEET);
    static const enum eavemark_form FORMS[] = {EAVEMARK_TEXT, EAVEMARK_HTML};
    for (size_t i = 0; i < 4; i++) {
        char *report = eavemark_result_report(answer.result, FORMS[i % 2],
                                              i < 2 ? 0 : EAVEMARK_ALL);
        assert_has(report, "from the shop sheet (shop.json)");
        free(report);
    }
    char *all = eavemark_result_report(answer.result, EAVEMARK_TEXT, EAVEMARK_ALL);
    assert_has(all, "facts       from the shop sheet: nails kind");
    free(all);
    answer_free(&answer);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_fills_what_the_job_leaves_out),
        cmocka_unit_test(test_the_job_goes_before_the_sheet),
        cmocka_unit_test(test_another_product_has_nothing_of_the_sheets),
        cmocka_unit_test(test_says_nothing_of_what_stays),
        cmocka_unit_test(test_asks_which_of_several),
        cmocka_unit_test(test_fills_a_roof_by_its_edges),
        cmocka_unit_test(test_is_never_measured),
        cmocka_unit_test(test_changes_the_fingerprint),
        cmocka_unit_test(test_refuses_what_is_no_habit),
        cmocka_unit_test(test_refuses_a_material_that_is_not_there),
        cmocka_unit_test(test_refuses_a_list_without_end),
        cmocka_unit_test(test_reads_the_sheet_beside_the_job),
        cmocka_unit_test(test_lifts_a_sheet_out_of_a_job),
        cmocka_unit_test(test_is_told_in_reports),
    };
    return cmocka_run_group_tests(tests, open_handle, close_handle);
}
