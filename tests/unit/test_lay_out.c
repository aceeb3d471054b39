/* A job that states its roof by the plan of the house: the same findings and
 * quantities as by planes and edges, what is asked for when a fact lacks, and
 * what is refused. The houses are those of the examples, all invented. */
#include "include/eavemark.h"
#include "support/random_numbers.h"
#include "support/temporary_home.h"

#include <cjson/cJSON.h>

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

/* An example house, and its plan: what is left when the overhangs come off the
 * roof. Eaves overhang 16 in (12 in on the overlay's gable), rakes 6 in. */
struct house {
    const char *example, *plan;
    const char *slope, *edge; /* whose other facts differ from the first one's; or NULL */
};

static const struct house HOUSES[] = {
    {"overlay-gable",
     "{\"form\":\"gable\",\"length_ft\":35,\"width_ft\":24,\"pitch\":\"6:12\","
     "\"eave_overhang_in\":12,\"rake_overhang_in\":6}",
     NULL, NULL},
    {"coastal-hip",
     "{\"form\":\"hip\",\"length_ft\":47.3333333333,\"width_ft\":27.3333333333,"
     "\"pitch\":\"5:12\",\"eave_overhang_in\":16}",
     NULL, NULL},
    {"porch-tear-off",
     "{\"form\":\"gable_porch\",\"length_ft\":43,\"width_ft\":27.3333333333,"
     "\"pitch\":\"6:12\",\"eave_overhang_in\":16,\"rake_overhang_in\":6,"
     "\"porch\":{\"length_ft\":19,\"depth_ft\":6.6666666667,"
     "\"pitch\":\"2.5:12\"}}",
     "porch", "porch eave"},
    {"cross-gable",
     "{\"form\":\"cross_gable\",\"length_ft\":49,\"width_ft\":27.3333333333,"
     "\"pitch\":\"8:12\",\"eave_overhang_in\":16,\"rake_overhang_in\":6,"
     "\"wing\":{\"width_ft\":27.3333333333,\"out_ft\":12.8333333333,"
     "\"left_ft\":10.8333333333}}",
     "wing left", NULL},
};
enum { HOUSE_COUNT = sizeof(HOUSES) / sizeof(HOUSES[0]), PORCH = 2, CROSS = 3 };

static cJSON *child(const cJSON *parent, const char *key)
{
    cJSON *found = cJSON_GetObjectItemCaseSensitive(parent, key);
    if (found == NULL)
        fail_msg("no \"%s\"", key);
    return found;
}

static const char *word(const cJSON *parent, const char *key)
{
    const char *text = cJSON_GetStringValue(cJSON_GetObjectItemCaseSensitive(parent, key));
    return text == NULL ? "" : text;
}

static cJSON *by_planes(const struct house *house)
{
    char path[256];
    snprintf(path, sizeof(path), EAVEMARK_HOME_DIR "/tests/houses/%s/job.json", house->example);
    char *text = file_text(path, NULL);
    cJSON *job = cJSON_Parse(text);
    free(text);
    assert_non_null(job);
    return job;
}

static bool is_one_of(const char *name, const char *const names[], size_t count)
{
    for (size_t i = 0; i < count; i++)
        if (strcmp(name, names[i]) == 0)
            return true;
    return false;
}

/* A copy of the item without what the plan shows. */
static cJSON *unplanned(const cJSON *item, bool named)
{
    static const char *const PLANNED[] = {"pitch", "eave_ft", "ridge_ft", "run_ft",
                                          "kind",  "slope",   "length_ft"};
    cJSON *copy = cJSON_CreateObject();
    const cJSON *fact = NULL;
    cJSON_ArrayForEach(fact, item)
        if (!is_one_of(fact->string, PLANNED, sizeof(PLANNED) / sizeof(PLANNED[0]))
            && (named
                || (strcmp(fact->string, "name") != 0 && strcmp(fact->string, "overhang_in") != 0)))
            cJSON_AddItemToObject(copy, fact->string, cJSON_Duplicate(fact, true));
    return copy;
}

static const cJSON *first_of(const cJSON *list, const char *key, const char *value)
{
    const cJSON *item = NULL;
    cJSON_ArrayForEach(item, list)
        if (strcmp(word(item, key), value) == 0)
            return item;
    return NULL;
}

/* One item of the list, as the job names it beside the plan. */
static void keep_one(cJSON *roof, const cJSON *old, const char *list, const char *name)
{
    cJSON *kept = cJSON_AddArrayToObject(roof, list);
    const cJSON *item = first_of(child(old, list), "name", name);
    assert_non_null(item);
    cJSON_AddItemToArray(kept, unplanned(item, true));
}

/* The same house by its plan; what all planes, eaves and rakes have alike is
 * taken from the first of each. */
static cJSON *by_plan(const struct house *house)
{
    static const char *const LAID[] = {"slopes", "edges",     "ridge_ft",
                                       "hip_ft", "valley_ft", "form"};
    cJSON *job = by_planes(house);
    cJSON *old = cJSON_Duplicate(child(job, "roof"), true), *roof = child(job, "roof");
    for (size_t i = 0; i < sizeof(LAID) / sizeof(LAID[0]); i++)
        cJSON_DeleteItemFromObjectCaseSensitive(roof, LAID[i]);
    cJSON *plan = cJSON_Parse(house->plan);
    assert_non_null(plan);
    cJSON_AddItemToObject(roof, "footprint", plan);
    cJSON_AddItemToObject(plan, "planes", unplanned(child(old, "slopes")->child, false));
    cJSON_AddItemToObject(plan, "eaves",
                          unplanned(first_of(child(old, "edges"), "kind", "eave"), false));
    const cJSON *rake = first_of(child(old, "edges"), "kind", "rake");
    if (rake != NULL)
        cJSON_AddItemToObject(plan, "rakes", unplanned(rake, false));
    if (house->slope != NULL)
        keep_one(roof, old, "slopes", house->slope);
    if (house->edge != NULL)
        keep_one(roof, old, "edges", house->edge);
    /* The wing's other side. */
    if (house->slope != NULL && strcmp(house->slope, "wing left") == 0)
        cJSON_AddItemToArray(child(roof, "slopes"),
                             unplanned(first_of(child(old, "slopes"), "name", "wing right"), true));
    cJSON_Delete(old);
    return job;
}

/* Asking the library ------------------------------------------------------------ */

static int start(void **state)
{
    *state = eavemark_open(EAVEMARK_HOME_DIR);
    return *state == NULL ? -1 : 0;
}

static int stop(void **state)
{
    eavemark_close(*state);
    return 0;
}

/* The report as a tree, or NULL with what was wrong in *problems (to be freed). */
static cJSON *checked(eavemark *handle, const cJSON *job, char **problems)
{
    char *text = cJSON_PrintUnformatted(job);
    const struct eavemark_request request = {
        .name = "job.json", .text = text, .length = strlen(text)};
    eavemark_result *result = eavemark_check(handle, &request);
    char *report = eavemark_result_report(result, EAVEMARK_JSON_LINE, EAVEMARK_ALL);
    cJSON *tree = report == NULL ? NULL : cJSON_Parse(report);
    *problems = strdup(eavemark_result_problems(result));
    if (report == NULL)
        assert_int_equal(eavemark_result_status(result, false), EAVEMARK_UNUSABLE);
    eavemark_result_free(result);
    cJSON_free(text);
    free(report);
    return tree;
}

static cJSON *findings(eavemark *handle, const cJSON *job)
{
    char *problems = NULL;
    cJSON *tree = checked(handle, job, &problems);
    if (tree == NULL)
        fail_msg("refused: %s", problems);
    free(problems);
    return tree;
}

static cJSON *quantities(eavemark *handle, const cJSON *job)
{
    char *text = cJSON_PrintUnformatted(job), *report = NULL, *problems = NULL;
    const struct eavemark_request request = {
        .name = "job.json", .text = text, .length = strlen(text)};
    if (eavemark_takeoff(handle, &request, EAVEMARK_JSON_LINE, &report, &problems)
        != EAVEMARK_NOTHING_FAILED)
        fail_msg("refused: %s", problems);
    cJSON *tree = cJSON_Parse(report);
    assert_non_null(tree);
    cJSON_free(text);
    free(report);
    free(problems);
    return tree;
}

static const cJSON *same_place(const cJSON *list, const char *key, const cJSON *wanted)
{
    const cJSON *item = NULL;
    cJSON_ArrayForEach(item, list)
        if (strcmp(word(item, key), word(wanted, key)) == 0
            && strcmp(word(item, "where"), word(wanted, "where")) == 0)
            return item;
    fail_msg("%s at \"%s\" is not there", word(wanted, key), word(wanted, "where"));
    return NULL;
}

/* The tests ---------------------------------------------------------------------- */

static void test_same_findings_either_way(void **state)
{
    for (int i = 0; i < HOUSE_COUNT; i++) {
        cJSON *planes = by_planes(&HOUSES[i]), *plan = by_plan(&HOUSES[i]);
        cJSON *one = findings(*state, planes), *other = findings(*state, plan);
        const cJSON *list = child(one, "findings"), *found = NULL;
        assert_int_equal(cJSON_GetArraySize(list), cJSON_GetArraySize(child(other, "findings")));
        cJSON_ArrayForEach(found, list) {
            const cJSON *same = same_place(child(other, "findings"), "rule", found);
            assert_string_equal(word(found, "outcome"), word(same, "outcome"));
            assert_true(cJSON_Compare(child(found, "required"), child(same, "required"), true));
            assert_true(cJSON_Compare(child(found, "found"), child(same, "found"), true));
        }
        cJSON_Delete(planes);
        cJSON_Delete(plan);
        cJSON_Delete(one);
        cJSON_Delete(other);
    }
}

/* The examples give rakes to a tape's half inch, and other lengths along the slope
 * to a hundredth of a foot. */
static void test_same_quantities_either_way(void **state)
{
    for (int i = 0; i < HOUSE_COUNT; i++) {
        cJSON *planes = by_planes(&HOUSES[i]), *plan = by_plan(&HOUSES[i]);
        cJSON *one = quantities(*state, planes), *other = quantities(*state, plan);
        const cJSON *list = child(one, "quantities"), *line = NULL;
        assert_int_equal(cJSON_GetArraySize(list), cJSON_GetArraySize(child(other, "quantities")));
        cJSON_ArrayForEach(line, list) {
            const cJSON *same = same_place(child(other, "quantities"), "name", line);
            if (strcmp(word(line, "name"), "by_plan") == 0)
                continue; /* only a plan has it */
            assert_string_equal(word(line, "outcome"), word(same, "outcome"));
            const cJSON *exact = child(line, "exact"), *also = child(same, "exact");
            if (cJSON_IsNull(exact))
                continue;
            const double value = child(exact, "value")->valuedouble;
            assert_true(fabs(value - child(also, "value")->valuedouble) <= 0.05 + value * 0.003);
        }
        cJSON_Delete(planes);
        cJSON_Delete(plan);
        cJSON_Delete(one);
        cJSON_Delete(other);
    }
}

static void test_card_and_comparison(void **state)
{
    cJSON *planes = by_planes(&HOUSES[PORCH]), *plan = by_plan(&HOUSES[PORCH]);
    char *first = cJSON_PrintUnformatted(planes), *second = cJSON_PrintUnformatted(plan);
    struct eavemark_request both[] = {
        {.name = "planes.json", .text = first, .length = strlen(first)},
        {.name = "plan.json", .text = second, .length = strlen(second)}};
    char *report = NULL, *problems = NULL;
    assert_int_equal(eavemark_compare(*state, both, 2, EAVEMARK_TEXT, &report, &problems),
                     EAVEMARK_NOTHING_FAILED);
    free(report);
    free(problems);
    both[1].stage = "dry-in";
    assert_int_equal(eavemark_card(*state, &both[1], EAVEMARK_HTML, &report, &problems),
                     EAVEMARK_NOTHING_FAILED);
    assert_non_null(strstr(report, "porch eave"));
    free(report);
    free(problems);
    both[1].stage = NULL;
    eavemark_result *result = eavemark_check(*state, &both[1]);
    report = eavemark_result_report(result, EAVEMARK_HTML, EAVEMARK_ALL);
    assert_non_null(strstr(report, "Roof plan"));
    assert_non_null(strstr(report, "porch: 2.5:12, eave 20 ft, top 20 ft, run 8 ft"));
    eavemark_result_free(result);
    free(report);
    cJSON_free(first);
    cJSON_free(second);
    cJSON_Delete(planes);
    cJSON_Delete(plan);
}

/* A second of each, so that no plane's is the only one. */
static void add_another(cJSON *job, const char *list)
{
    cJSON *other = cJSON_Duplicate(child(job, list)->child, true);
    cJSON_ReplaceItemInObjectCaseSensitive(other, "name", cJSON_CreateString("another"));
    /* No plane has it, so that none of it can be replaced. */
    cJSON_ReplaceItemInObjectCaseSensitive(other, "replaced_sqft", cJSON_CreateNumber(0));
    cJSON_ReplaceItemInObjectCaseSensitive(other, "unsound_sqft", cJSON_CreateNumber(0));
    cJSON_AddItemToArray(child(job, list), other);
}

/* A fact of the plan that is not known leaves open what needs it, and is itself
 * what is asked for; nothing passes that did not pass before. */
static void test_a_fact_that_lacks_is_asked_for(void **state)
{
    static const char *const FACTS[][2] = {
        {NULL, "form"},         {NULL, "length_ft"},        {NULL, "width_ft"},
        {NULL, "pitch"},        {NULL, "eave_overhang_in"}, {NULL, "rake_overhang_in"},
        {"wing", "width_ft"},   {"wing", "out_ft"},         {"wing", "left_ft"},
        {"eaves", "drip_edge"}, {"rakes", "drip_edge"}};
    cJSON *whole = by_plan(&HOUSES[CROSS]);
    cJSON *before = findings(*state, whole);
    for (size_t i = 0; i < sizeof(FACTS) / sizeof(FACTS[0]); i++) {
        cJSON *job = cJSON_Duplicate(whole, true);
        cJSON *plan = child(child(job, "roof"), "footprint");
        char place[128];
        snprintf(place, sizeof(place), "/roof/footprint/%s%s%s",
                 FACTS[i][0] == NULL ? "" : FACTS[i][0], FACTS[i][0] == NULL ? "" : "/",
                 FACTS[i][1]);
        cJSON_DeleteItemFromObjectCaseSensitive(
            FACTS[i][0] == NULL ? plan : child(plan, FACTS[i][0]), FACTS[i][1]);
        cJSON *after = findings(*state, job);
        const cJSON *found = NULL;
        int asked = 0;
        cJSON_ArrayForEach(found, child(after, "findings")) {
            const char *outcome = word(found, "outcome"), *says = word(found, "says");
            assert_string_not_equal(outcome, "broken");
            if (strcmp(outcome, "open") == 0 && strstr(says, place) != NULL)
                asked++;
            else if (strcmp(outcome, "open") == 0)
                fail_msg("%s asks for something else: %s", word(found, "rule"), says);
            if (strcmp(outcome, "pass") == 0)
                assert_string_equal(
                    word(same_place(child(before, "findings"), "rule", found), "outcome"), "pass");
        }
        if (asked == 0)
            fail_msg("nothing asks for %s", place);
        cJSON_Delete(after);
        cJSON_Delete(job);
    }
    cJSON_Delete(before);
    cJSON_Delete(whole);
}

/* Of what is said once for all, one that is named says otherwise. */
static void test_one_that_differs(void **state)
{
    cJSON *job = by_plan(&HOUSES[0]);
    cJSON *edges = cJSON_Parse("[{\"name\":\"back eave\",\"drip_edge\":false}]");
    cJSON_AddItemToObject(child(job, "roof"), "edges", edges);
    /* An overlay keeps its edges: as a tear-off they are judged. */
    cJSON_ReplaceItemInObject(child(job, "scope"), "method", cJSON_CreateString("tear-off"));
    cJSON *report = findings(*state, job);
    const cJSON *front = cJSON_Parse("{\"rule\":\"drip_edge.eave\",\"where\":\"front eave\"}");
    const cJSON *back = cJSON_Parse("{\"rule\":\"drip_edge.eave\",\"where\":\"back eave\"}");
    const cJSON *one = same_place(child(report, "findings"), "rule", front);
    const cJSON *other = same_place(child(report, "findings"), "rule", back);
    assert_string_not_equal(word(one, "outcome"), "fail");
    assert_string_equal(word(other, "outcome"), "fail");
    cJSON_Delete((cJSON *)(uintptr_t)front);
    cJSON_Delete((cJSON *)(uintptr_t)back);
    cJSON_Delete(report);
    cJSON_Delete(job);
}

/* Each with what the message must say. */
static void test_refused(void **state)
{
    static const struct {
        int house;
        const char *at; /* below /roof: "footprint/wing" ... */
        const char *key, *value, *place, *why;
    } BAD[] = {
        {CROSS, "footprint/wing", "width_ft", "30", "/roof/footprint:", "wider than the house"},
        {CROSS, "footprint/wing", "out_ft", "0.5", "/roof/footprint:", "under the main eave"},
        {CROSS, "footprint/wing", "left_ft", "40", "/roof/footprint:", "the right end"},
        {CROSS, "footprint/wing", "left_ft", "0", "/roof/footprint:", "the left end"},
        {PORCH, "footprint/porch", "length_ft", "50", "/roof/footprint:", "longer than the eave"},
        {1, "footprint", "rake_overhang_in", "6", "/roof/footprint:", "no rakes to overhang"},
        {0, "footprint", "porch", "{\"length_ft\":9,\"depth_ft\":6,\"pitch\":\"1:12\"}",
         "/roof/footprint/porch:", "\"gable\" has no porch; the form that has is \"gable_porch\""},
        {1, "footprint", "wing", "{}",
         "/roof/footprint/wing:", "\"hip\" has no wing; the form that has is \"cross_gable\""},
        {PORCH, "footprint", "wing", "{\"width_ft\":9}", "/roof/footprint/wing:", "has no wing"},
        {0, "footprint", "length_ft", "4", "/roof/footprint/length_ft:", "out of range"},
        {0, "footprint", "form", "\"dome\"", "/roof/footprint/form:", "not one of"},
        {0, "footprint", "lenght_ft", "4", "/roof/footprint/lenght_ft:", "did you mean"},
        {0, "", "ridge_ft", "40", "/roof/ridge_ft:", "says 40 ft"},
        {0, "", "hip_ft", "12", "/roof/hip_ft:", "says 12 ft"},
        {0, "", "form", "\"hip\"", "/roof/form:", "says \"hip\""},
        {0, "", "slopes", "[{\"name\":\"front\",\"run_ft\":12}]", "/roof/slopes/0/run_ft:",
         "says 12 ft, but the roof laid out from /roof/footprint has 13 ft here"},
        {0, "", "slopes", "[{\"name\":\"front\",\"pitch\":\"7:12\"}]",
         "/roof/slopes/0/pitch:", "has \"6:12\" here"},
        {0, "", "slopes", "[{\"name\":\"frnt\"}]",
         "/roof/slopes/0/name:", "did you mean \"front\""},
        {0, "", "slopes", "[{\"name\":\"porch\",\"run_ft\":6}]",
         "/roof/slopes/0/name:", "(\"front\", \"back\")"},
        {0, "", "slopes", "[{\"deck\":\"panels\"}]", "/roof/slopes/0/name:", "is missing"},
        {0, "", "edges", "[{\"name\":\"back eave\",\"overhang_in\":24}]",
         "/roof/edges/0/overhang_in:", "says 24 in"},
        {0, "", "edges", "[{\"name\":\"back eave\",\"kind\":\"rake\"}]",
         "/roof/edges/0/kind:", "has \"eave\" here"},
        {0, "", "valleys", "[{\"name\":\"left valley\"}]", "/roof/valleys/0/name:", "(none)"},
        {0, "footprint/planes", "deck", "\"pannels\"",
         "/roof/footprint/planes/deck:", "did you mean \"panels\""},
    };
    for (size_t i = 0; i < sizeof(BAD) / sizeof(BAD[0]); i++) {
        cJSON *job = by_plan(&HOUSES[BAD[i].house]), *at = child(job, "roof");
        for (const char *step = BAD[i].at; *step != '\0';) {
            char name[32];
            snprintf(name, sizeof(name), "%.*s", (int)strcspn(step, "/"), step);
            at = child(at, name);
            step += strlen(name) + (step[strlen(name)] == '/');
        }
        cJSON_DeleteItemFromObjectCaseSensitive(at, BAD[i].key);
        cJSON_AddItemToObject(at, BAD[i].key, cJSON_Parse(BAD[i].value));
        char *problems = NULL;
        cJSON *report = checked(*state, job, &problems);
        if (report != NULL || strstr(problems, BAD[i].place) == NULL
            || strstr(problems, BAD[i].why) == NULL)
            fail_msg("row %zu: wanted %s %s, got: %s", i, BAD[i].place, BAD[i].why, problems);
        /* A valley too many contradicts the feet of valley, too. */
        if (strcmp(BAD[i].key, "valleys") != 0
            && strchr(problems, '\n') != problems + strlen(problems) - 1)
            fail_msg("row %zu: more than one thing is said: %s", i, problems);
        free(problems);
        cJSON_Delete(job);
    }
}

/* What both say, and agree on, does no harm. */
static void test_said_twice_alike(void **state)
{
    cJSON *job = by_plan(&HOUSES[0]);
    cJSON_AddNumberToObject(child(job, "roof"), "ridge_ft", 36.05);
    cJSON_AddItemToObject(child(job, "roof"), "slopes",
                          cJSON_Parse("[{\"name\":\"front\",\"pitch\":\"50 %\",\"run_ft\":13}]"));
    cJSON_Delete(findings(*state, job));
    cJSON_Delete(job);
}

/* A wing lower than the main ridge: by hand, 20 ft of wing on a 60 x 30 ft house
 * without overhangs takes a triangle of 20 x 10 / 2 ft off the main front. */
static void test_lower_wing_takes_a_triangle(void **state)
{
    cJSON *job = by_plan(&HOUSES[CROSS]);
    cJSON *plan = child(child(job, "roof"), "footprint");
    cJSON *new_plan = cJSON_Parse(
        "{\"form\":\"cross_gable\",\"length_ft\":60,\"width_ft\":30,\"pitch\":\"6:12\","
        "\"eave_overhang_in\":0,\"rake_overhang_in\":0,"
        "\"wing\":{\"width_ft\":20,\"out_ft\":12,\"left_ft\":10}}");
    static const char *const ALIKE[] = {"planes", "eaves", "rakes"};
    for (size_t i = 0; i < 3; i++)
        cJSON_AddItemToObject(new_plan, ALIKE[i], cJSON_Duplicate(child(plan, ALIKE[i]), true));
    cJSON_ReplaceItemInObject(child(job, "roof"), "footprint", new_plan);
    cJSON *report = quantities(*state, job),
          *wanted = cJSON_Parse("{\"name\":\"plane_area\",\"where\":\"main front\"}");
    const cJSON *line = same_place(child(report, "quantities"), "name", wanted);
    const double area = (60 * 15 - 20 * 10 / 2.0) * sqrt(1.25);
    assert_true(fabs(child(child(line, "exact"), "value")->valuedouble - area) < 0.06);
    char *text = cJSON_PrintUnformatted(job);
    const struct eavemark_request request = {
        .name = "job.json", .text = text, .length = strlen(text)};
    eavemark_result *result = eavemark_check(*state, &request);
    char *page = eavemark_result_report(result, EAVEMARK_HTML, EAVEMARK_ALL);
    assert_non_null(
        strstr(page, "main front: 6:12, eave 40 ft, top 60 ft, run 15 ft, 894.4 sq ft"));
    eavemark_result_free(result);
    cJSON_free(text);
    free(page);
    cJSON_Delete(report);
    cJSON_Delete(wanted);
    cJSON_Delete(job);
}

/* The only deck and the only underlayment go for all planes: nothing changes without a word
 * of which it is. */
static void test_the_only_one_is_under_all_planes(void **state)
{
    cJSON *job = by_plan(&HOUSES[1]), *before = findings(*state, job);
    cJSON *planes = child(child(child(job, "roof"), "footprint"), "planes");
    cJSON_DeleteItemFromObjectCaseSensitive(planes, "underlayment");
    cJSON_DeleteItemFromObjectCaseSensitive(planes, "deck");
    cJSON *after = findings(*state, job);
    const cJSON *found = NULL, *was = child(before, "findings")->child;
    size_t derived = 0;
    cJSON_ArrayForEach(found, child(after, "findings")) {
        const cJSON *read = NULL;
        if (strcmp(word(was, "outcome"), word(found, "outcome")) != 0)
            fail_msg("%s: %s", word(found, "rule"), word(found, "says"));
        was = was->next;
        cJSON_ArrayForEach(read, child(found, "reads"))
            derived += strcmp(word(read, "from"), "derived") == 0;
    }
    assert_true(derived > 8);
    cJSON_Delete(after);
    cJSON_Delete(before);
    cJSON_Delete(job);
}

/* Going on with a job by questions: the plan is asked for, then what is alike of
 * all edges, and the job keeps its plan. */
static void test_asked_question_by_question(void **state)
{
    cJSON *job = by_plan(&HOUSES[0]);
    cJSON *plan = child(child(job, "roof"), "footprint");
    cJSON_DeleteItemFromObjectCaseSensitive(plan, "width_ft");
    cJSON_DeleteItemFromObjectCaseSensitive(child(plan, "planes"), "deck");
    add_another(job, "decks");
    char *text = cJSON_PrintUnformatted(job), *problems = NULL, *why = NULL;
    const struct eavemark_request request = {
        .name = "job.json", .text = text, .length = strlen(text)};
    enum eavemark_status status;
    eavemark_interview *interview = eavemark_interview_open(*state, &request, &status, &problems);
    if (interview == NULL)
        fail_msg("refused: %s", problems);
    free(problems);
    static const struct {
        const char *part, *answer;
    } ASKED[] = {{"from front to back", "24"}, {"under all planes", "panels"}};
    for (size_t i = 0; i < 2; i++) {
        char *question = eavemark_interview_ask(interview, false, &problems);
        assert_non_null(question);
        if (strstr(question, ASKED[i].part) == NULL)
            fail_msg("asked: %s", question);
        if (!eavemark_interview_answer(interview, ASKED[i].answer, &why))
            fail_msg("not taken: %s", why);
        free(question);
        free(problems);
        free(why);
    }
    char *question = eavemark_interview_ask(interview, false, &problems);
    if (question != NULL)
        fail_msg("asked: %s", question);
    free(problems);
    size_t answered = 0, skipped = 0;
    char *written = eavemark_interview_job(interview, &answered, &skipped, &problems);
    assert_non_null(written);
    assert_non_null(strstr(written, "\"width_ft\": 24"));
    assert_null(strstr(written, "\"slopes\""));
    assert_int_equal(answered, 2);
    free(written);
    free(problems);
    eavemark_interview_close(interview);
    cJSON_free(text);
    cJSON_Delete(job);
}

/* What only one of them has is asked of it, and written by its name. */
static void test_asked_of_one(void **state)
{
    cJSON *job = by_plan(&HOUSES[CROSS]);
    cJSON_DeleteItemFromObjectCaseSensitive(child(job, "roof"), "valleys");
    char *text = cJSON_PrintUnformatted(job), *problems = NULL, *why = NULL;
    const struct eavemark_request request = {
        .name = "job.json", .text = text, .length = strlen(text), .ahead = true};
    enum eavemark_status status;
    eavemark_interview *interview = eavemark_interview_open(*state, &request, &status, &problems);
    if (interview == NULL)
        fail_msg("refused: %s", problems);
    free(problems);
    char *question = eavemark_interview_ask(interview, false, &problems);
    assert_non_null(question);
    assert_non_null(strstr(question, "left valley"));
    free(question);
    free(problems);
    assert_true(eavemark_interview_answer(interview, "open", &why));
    free(why);
    size_t answered = 0, skipped = 0;
    char *written = eavemark_interview_job(interview, &answered, &skipped, &problems);
    assert_non_null(written);
    cJSON *after = cJSON_Parse(written);
    const cJSON *valleys = child(child(after, "roof"), "valleys");
    assert_int_equal(cJSON_GetArraySize(valleys), 2);
    assert_string_equal(word(valleys->child, "name"), "left valley");
    assert_string_equal(word(valleys->child, "kind"), "open");
    cJSON_Delete(after);
    free(written);
    free(problems);
    eavemark_interview_close(interview);
    cJSON_free(text);
    cJSON_Delete(job);
}

/* Any plan within the ranges of its facts is judged, or refused for one reason;
 * no rule or quantity breaks on it, and nothing is printed that is no number. */
static void test_any_plan(void **state)
{
    static const char *const FORMS[] = {"gable", "hip", "gable_porch", "shed", "cross_gable"};
    static const char *const PITCHES[] = {"0:12", "3:12", "30 deg", "24:12",
                                          "60:12"}; /* the last is meant */
    struct random_numbers numbers = {RANDOM_SEED};
    int judged = 0;
    for (int i = 0; i < 100; i++) {
        char plan[512];
        snprintf(plan, sizeof(plan),
                 "{\"form\":\"%s\",\"length_ft\":%.2f,\"width_ft\":%.1f,\"pitch\":\"%s\","
                 "\"eave_overhang_in\":%.0f,%s\"porch\":{\"length_ft\":%.1f,\"depth_ft\":%.1f,"
                 "\"pitch\":\"3:12\"},\"wing\":{\"width_ft\":%.1f,\"out_ft\":%.1f,"
                 "\"left_ft\":%.2f}}",
                 FORMS[i % 5], random_between(&numbers, 6, 300), random_between(&numbers, 6, 180),
                 PITCHES[i / 5 % 5], random_between(&numbers, 5, 96),
                 i % 5 == 1 ? "" : "\"rake_overhang_in\":16,", random_between(&numbers, 2, 60),
                 random_between(&numbers, 2, 12), random_between(&numbers, 4, 60),
                 random_between(&numbers, 0.5, 60), random_between(&numbers, 0, 60));
        const struct house house = {"overlay-gable", plan, NULL, NULL};
        cJSON *job = by_plan(&house);
        /* Its ridge vent may be longer than this ridge. */
        cJSON_DeleteItemFromObjectCaseSensitive(job, "attics");
        cJSON_DeleteItemFromObjectCaseSensitive(child(job, "scope"), "area_sqft");
        cJSON_DeleteItemFromObjectCaseSensitive(child(job, "roof"), "walls");
        cJSON *meant = cJSON_Parse("[{\"at\":\"/roof/footprint/pitch\"}]");
        assert_true(cJSON_AddItemToObject(job, "as_meant", meant));
        cJSON *stated = child(child(job, "roof"), "footprint");
        if (i % 5 != 2)
            cJSON_DeleteItemFromObjectCaseSensitive(stated, "porch");
        if (i % 5 != 4)
            cJSON_DeleteItemFromObjectCaseSensitive(stated, "wing");
        char *text = cJSON_PrintUnformatted(job), *report = NULL, *problems = NULL;
        const struct eavemark_request request = {
            .name = "job.json", .text = text, .length = strlen(text)};
        const enum eavemark_status status = eavemark_takeoff(*state, &request, EAVEMARK_TEXT,
                                                             &report, &problems);
        if (status == EAVEMARK_UNUSABLE) {
            if (strstr(problems, "/roof/footprint: there is no such roof") == NULL)
                fail_msg("%s refused: %s", plan, problems);
        } else if (status != EAVEMARK_NOTHING_FAILED)
            fail_msg("status %d for %s: %s", (int)status, plan, problems);
        if (report != NULL && (strstr(report, " nan") != NULL || strstr(report, " inf ") != NULL))
            fail_msg("no number in the takeoff of %s", plan);
        judged += report != NULL;
        cJSON_free(text);
        free(report);
        free(problems);
        cJSON_Delete(job);
    }
    assert_true(judged > 50);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_same_findings_either_way),
        cmocka_unit_test(test_same_quantities_either_way),
        cmocka_unit_test(test_card_and_comparison),
        cmocka_unit_test(test_a_fact_that_lacks_is_asked_for),
        cmocka_unit_test(test_the_only_one_is_under_all_planes),
        cmocka_unit_test(test_one_that_differs),
        cmocka_unit_test(test_refused),
        cmocka_unit_test(test_said_twice_alike),
        cmocka_unit_test(test_lower_wing_takes_a_triangle),
        cmocka_unit_test(test_asked_question_by_question),
        cmocka_unit_test(test_asked_of_one),
        cmocka_unit_test(test_any_plan),
    };
    return cmocka_run_group_tests_name("roofs by their plan", tests, start, stop);
}
