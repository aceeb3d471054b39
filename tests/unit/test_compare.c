/* What differs between checks, and what moved it, over the public interface. */
#include "support/small_law.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#include <cjson/cJSON.h>
#include <cmocka.h>

static const char RULES[] =
    "rule \"test.layers\" { " SMALL_READS "\n"
    "  title = \"Layers\", stage = \"permit\",\n"
    "  judge = function(job, figure)\n"
    "    return at_most(job.existing.layers, figure \"test.most\", \"layers\")\n"
    "  end,\n"
    "  mend = \"Take one off.\",\n"
    "}\n"
    "rule \"test.pitch\" { " SMALL_READS "\n"
    "  title = \"Steep enough\", stage = \"permit\", per = \"roof.slopes\",\n"
    "  judge = function(job, figure, slope)\n"
    "    return at_least(slope.pitch, figure \"test.pitch_least\", \"rise_in_12\")\n"
    "  end,\n"
    "  mend = \"Build it steeper.\",\n"
    "}\n"
    "rule \"test.sound\" { " SMALL_READS "\n"
    "  title = \"Sound\", stage = \"permit\",\n"
    "  judge = function(job, figure)\n"
    "    return one_of(job.existing.condition, figure \"test.conditions\")\n"
    "  end,\n"
    "  mend = \"Replace it.\",\n"
    "}\n";

static const char COUNTY[] =
    "jurisdiction \"example/mill\" {\n"
    "  title = \"Mill County\", invented = true, follows = \"model/test\",\n"
    "  from = \"2025-01-01\", to = \"2026-01-01\", code = \"Mill County Code\",\n"
    "  figures = { [\"test.most\"] = { 2, cite = \"7-1\" } },\n"
    "}\n"
    "jurisdiction \"example/mill\" {\n"
    "  title = \"Mill County\", invented = true, follows = \"model/test\",\n"
    "  from = \"2026-01-01\", code = \"Mill County Code\", rules = \"mill.rules.lua\",\n"
    "  figures = { [\"test.most\"] = { 1, cite = \"8-1\" },\n"
    "    [\"test.pitch_least\"] = { cite = \"8-9\" } },\n"
    "}\n";

static const char COUNTY_RULES[] =
    "rule \"mill.own\" { " SMALL_READS "\n"
    "  title = \"Mill's own\", stage = \"permit\",\n"
    "  judge = function(job, figure)\n"
    "    return at_most(job.existing.layers, figure \"test.seen\", \"layers\")\n"
    "  end,\n"
    "  mend = \"Ask the miller.\",\n"
    "}\n";

struct fixture {
    struct temporary_home home;
    eavemark *handle;
};

static int set_up(void **state)
{
    struct fixture *fixture = calloc(1, sizeof(*fixture));
    assert_non_null(fixture);
    home_make(&fixture->home);
    small_law_write(&fixture->home);
    home_write(&fixture->home, "rules/test.lua", RULES);
    home_write(&fixture->home, "jurisdictions/example/mill.lua", COUNTY);
    home_write(&fixture->home, "jurisdictions/example/mill.rules.lua", COUNTY_RULES);
    fixture->handle = eavemark_open(fixture->home.path);
    assert_non_null(fixture->handle);
    *state = fixture;
    return 0;
}

static int tear_down(void **state)
{
    struct fixture *fixture = *state;
    eavemark_close(fixture->handle);
    home_remove(&fixture->home);
    free(fixture);
    return 0;
}

static struct eavemark_request side(const char *job, const char *place, const char *date)
{
    return (struct eavemark_request){.name = "job.json",
                                     .text = job,
                                     .length = strlen(job),
                                     .jurisdiction = place,
                                     .date = date};
}

struct said {
    enum eavemark_status status;
    char *report, *problems;
};

static struct said compare_with(void **state, const struct eavemark_request *requests, size_t count,
                                enum eavemark_form form)
{
    struct fixture *fixture = *state;
    struct said said = {0};
    said.status = eavemark_compare(fixture->handle, requests, count, form, &said.report,
                                   &said.problems);
    assert_non_null(said.problems);
    return said;
}

static void said_free(struct said *said)
{
    free(said->report);
    free(said->problems);
}

/* The report as a tree; to be deleted. */
static cJSON *compared(void **state, const struct eavemark_request *requests, size_t count,
                       enum eavemark_status status)
{
    struct said said = compare_with(state, requests, count, EAVEMARK_JSON);
    assert_string_equal(said.problems, "");
    assert_int_equal(said.status, status);
    cJSON *root = cJSON_Parse(said.report);
    assert_non_null(root);
    said_free(&said);
    return root;
}

static const cJSON *member(const cJSON *object, const char *key)
{
    const cJSON *found = cJSON_GetObjectItemCaseSensitive(object, key);
    if (found == NULL)
        fail_msg("there is no %s", key);
    return found;
}

static const cJSON *item(const cJSON *object, const char *key, int index)
{
    const cJSON *found = cJSON_GetArrayItem(member(object, key), index);
    if (found == NULL)
        fail_msg("there is no %s %d", key, index);
    return found;
}

static void assert_text(const cJSON *object, const char *key, const char *wanted)
{
    assert_true(cJSON_IsString(member(object, key)));
    assert_string_equal(member(object, key)->valuestring, wanted);
}

static void assert_count(const cJSON *object, const char *key, int wanted)
{
    assert_int_equal(cJSON_GetArraySize(member(object, key)), wanted);
}

static void assert_item(const cJSON *object, const char *key, int index, const char *wanted)
{
    assert_string_equal(item(object, key, index)->valuestring, wanted);
}

static void the_same_is_only_counted(void **state)
{
    const struct eavemark_request sides[] = {side(SMALL_JOB, NULL, NULL),
                                             side(SMALL_JOB, NULL, NULL)};
    cJSON *root = compared(state, sides, 2, EAVEMARK_NOTHING_FAILED);
    assert_count(root, "changes", 0);
    assert_int_equal(member(root, "differ")->valueint, 0);
    assert_int_equal(member(root, "same")->valueint, 4); /* two planes are two findings */
    cJSON_Delete(root);
}

/* A flatter front plane: that finding, and the fact that moved it, no other. */
static void a_fact_moves_a_finding(void **state)
{
    char *flat = text_with(SMALL_JOB, "5:12", "2:12");
    const struct eavemark_request sides[] = {side(SMALL_JOB, NULL, NULL), side(flat, NULL, NULL)};
    cJSON *root = compared(state, sides, 2, EAVEMARK_FAILED);
    assert_count(root, "changes", 1);
    const cJSON *change = item(root, "changes", 0);
    assert_text(change, "rule", "test.pitch");
    assert_text(change, "where", "front");
    assert_item(change, "outcomes", 0, "pass");
    assert_item(change, "outcomes", 1, "fail");
    assert_count(change, "figures", 0);
    assert_count(change, "facts", 1);
    assert_text(item(change, "facts", 0), "fact", "roof.slopes[front].pitch");
    assert_item(item(change, "facts", 0), "values", 0, "5:12");
    assert_item(item(change, "facts", 0), "values", 1, "2:12");
    assert_int_equal(member(root, "same")->valueint, 3);
    cJSON_Delete(root);
    struct said said = compare_with(state, sides, 2, EAVEMARK_TEXT);
    assert_has(said.report, "pass -> FAIL");
    assert_has(said.report, "roof.slopes[front].pitch: 5:12 -> 2:12");
    assert_has(said.report, "1 differ, 3 are the same");
    said_free(&said);
    free(flat);
}

/* The same planes listed the other way round are the same job. */
static void the_order_of_a_list_does_not_count(void **state)
{
    char *half = text_with(SMALL_JOB, "\"name\": \"front\", \"pitch\": \"5:12\"",
                           "\"name\": \"back\", \"pitch\": \"3:12\", \"x\": 0");
    char *turned = text_with(half, "\"name\": \"back\", \"pitch\": \"3:12\", \"deck\"",
                             "\"name\": \"front\", \"pitch\": \"5:12\", \"deck\"");
    char *clean = text_with(turned, ", \"x\": 0", "");
    const struct eavemark_request sides[] = {side(SMALL_JOB, NULL, NULL), side(clean, NULL, NULL)};
    cJSON *root = compared(state, sides, 2, EAVEMARK_NOTHING_FAILED);
    assert_int_equal(member(root, "same")->valueint, 4);
    assert_int_equal(member(root, "same_otherwise")->valueint, 0);
    cJSON_Delete(root);
    free(half);
    free(turned);
    free(clean);
}

/* Two layers, two editions of one county: the figure moved from 2 to 1. */
static void a_figure_moves_a_finding(void **state)
{
    char *two = text_with(SMALL_JOB, "\"layers\": 1", "\"layers\": 2");
    const struct eavemark_request sides[] = {side(two, "example/mill", "2025-12-31"),
                                             side(two, "example/mill", "2026-01-01")};
    cJSON *root = compared(state, sides, 2, EAVEMARK_FAILED);
    const cJSON *change = item(root, "changes", 1);
    assert_text(change, "rule", "test.layers");
    assert_count(change, "facts", 0);
    assert_count(change, "figures", 1);
    const cJSON *figure = item(change, "figures", 0);
    assert_text(figure, "figure", "test.most");
    assert_int_equal(member(item(figure, "values", 0), "value")->valueint, 2);
    assert_int_equal(member(item(figure, "values", 1), "value")->valueint, 1);
    assert_text(item(figure, "values", 1), "section", "8-1");
    /* What is cited otherwise but judged alike is the same. */
    assert_int_equal(member(root, "same")->valueint, 3);
    assert_int_equal(member(root, "same_otherwise")->valueint, 2);
    cJSON_Delete(root);
    struct said said = compare_with(state, sides, 2, EAVEMARK_TEXT);
    assert_has(said.report, "test.most: 2 layers (Mill County Code 7-1, invented) -> 1 layer");
    assert_has(said.report, "at most 2 layers -> at most 1 layer");
    said_free(&said);
    free(two);
}

/* A demand that moves is a difference even where the outcome stays. */
static void a_moved_demand_counts_though_met(void **state)
{
    const struct eavemark_request sides[] = {side(SMALL_JOB, "model/test", NULL),
                                             side(SMALL_JOB, "example/mill", "2025-06-01")};
    cJSON *root = compared(state, sides, 2, EAVEMARK_FAILED);
    assert_count(root, "changes", 1);
    assert_item(item(root, "changes", 0), "outcomes", 0, "pass");
    assert_item(item(root, "changes", 0), "outcomes", 1, "pass");
    cJSON_Delete(root);
}

static void a_rule_of_one_law_stands_alone(void **state)
{
    const struct eavemark_request sides[] = {side(SMALL_JOB, "model/test", NULL),
                                             side(SMALL_JOB, "example/mill", NULL)};
    struct said said = compare_with(state, sides, 2, EAVEMARK_TEXT);
    assert_has(said.report, "[mill.own]");
    assert_has(said.report, "no such finding -> pass");
    assert_has(said.report, "the rule is only in the law of B");
    said_free(&said);
}

static void a_plane_of_one_job_stands_alone(void **state)
{
    char *renamed = text_with(SMALL_JOB, "\"name\": \"front\"", "\"name\": \"street\"");
    const struct eavemark_request sides[] = {side(SMALL_JOB, NULL, NULL),
                                             side(renamed, NULL, NULL)};
    struct said said = compare_with(state, sides, 2, EAVEMARK_TEXT);
    assert_int_equal(said.status, EAVEMARK_FAILED);
    assert_has(said.report, "Steep enough: front [test.pitch]");
    assert_has(said.report, "only the job of A has this");
    assert_has(said.report, "only the job of B has this");
    said_free(&said);
    free(renamed);
}

/* A fact left out makes the finding open, and is named as what moved it. */
static void a_missing_fact_moves_a_finding(void **state)
{
    char *silent = text_with(SMALL_JOB, "\"condition\": \"sound\", ", "");
    const struct eavemark_request sides[] = {side(SMALL_JOB, NULL, NULL), side(silent, NULL, NULL)};
    struct said said = compare_with(state, sides, 2, EAVEMARK_TEXT);
    assert_has(said.report, "pass -> OPEN");
    assert_has(said.report, "existing.condition: sound -> not said");
    said_free(&said);
    free(silent);
}

static void three_make_a_table(void **state)
{
    char *two = text_with(SMALL_JOB, "\"layers\": 1", "\"layers\": 2");
    const struct eavemark_request sides[] = {side(two, "model/test", NULL),
                                             side(two, "example/mill", "2025-06-01"),
                                             side(two, "example/mill", "2026-06-01")};
    cJSON *root = compared(state, sides, 3, EAVEMARK_FAILED);
    assert_count(root, "sides", 3);
    assert_count(root, "rows", 2);
    const cJSON *own = item(root, "rows", 0), *layers = item(root, "rows", 1);
    assert_text(own, "rule", "mill.own");
    assert_true(cJSON_IsNull(item(own, "outcomes", 0)));
    assert_item(own, "outcomes", 2, "pass");
    assert_text(layers, "rule", "test.layers");
    assert_item(layers, "outcomes", 0, "pass");
    assert_item(layers, "outcomes", 1, "pass");
    assert_item(layers, "outcomes", 2, "fail");
    cJSON_Delete(root);
    struct said said = compare_with(state, sides, 3, EAVEMARK_TEXT);
    assert_has(said.report, "test.layers  pass");
    assert_null(strstr(said.report, "test.sound"));
    assert_has(said.report, "2 differ in outcome, 3 come out the same");
    said_free(&said);
    free(two);
}

static void three_alike_are_no_difference(void **state)
{
    const struct eavemark_request sides[] = {side(SMALL_JOB, NULL, NULL),
                                             side(SMALL_JOB, NULL, NULL),
                                             side(SMALL_JOB, NULL, "2027-01-01")};
    cJSON *root = compared(state, sides, 3, EAVEMARK_NOTHING_FAILED);
    assert_count(root, "rows", 0);
    cJSON_Delete(root);
}

/* One job that cannot be used spoils the comparison; nothing half is shown. */
static void says_what_cannot_be_used(void **state)
{
    const struct eavemark_request bad[] = {side(SMALL_JOB, NULL, NULL), side("{", NULL, NULL)};
    const struct eavemark_request day[] = {side(SMALL_JOB, "example/mill", "2024-01-01"),
                                           side(SMALL_JOB, "example/mill", "2026-01-01")};
    struct said said = compare_with(state, bad, 2, EAVEMARK_TEXT);
    assert_int_equal(said.status, EAVEMARK_UNUSABLE);
    assert_null(said.report);
    assert_has(said.problems, "job.json:1:");
    said_free(&said);
    said = compare_with(state, day, 2, EAVEMARK_TEXT);
    assert_int_equal(said.status, EAVEMARK_UNUSABLE);
    assert_null(said.report);
    assert_has(said.problems, "no edition of example/mill covers 2024-01-01");
    said_free(&said);
    said = compare_with(state, bad, 1, EAVEMARK_TEXT);
    assert_int_equal(said.status, EAVEMARK_UNUSABLE);
    assert_null(said.report);
    said_free(&said);
}

static void a_broken_rule_is_no_mere_difference(void **state)
{
    struct fixture *fixture = *state;
    home_write(&fixture->home, "rules/bad.lua",
               "rule \"bad.rule\" { title = \"Bad\", stage = \"permit\",\n"
               "  judge = function(job, figure) return job.nothing end, mend = \"Mend it.\" }\n");
    const struct eavemark_request sides[] = {side(SMALL_JOB, NULL, NULL),
                                             side(SMALL_JOB, NULL, NULL)};
    struct said said = compare_with(state, sides, 2, EAVEMARK_TEXT);
    assert_int_equal(said.status, EAVEMARK_BROKEN);
    assert_non_null(said.report);
    said_free(&said);
}

static void makes_names_harmless(void **state)
{
    char *odd = text_with(SMALL_JOB, "\"name\": \"front\"", "\"name\": \"\\u202efront\"");
    char *flat = text_with(odd, "5:12", "2:12");
    const struct eavemark_request sides[] = {side(odd, NULL, NULL), side(flat, NULL, NULL)};
    struct said said = compare_with(state, sides, 2, EAVEMARK_TEXT);
    assert_null(strstr(said.report, "\u202e"));
    assert_has(said.report, "roof.slopes[\\u{202e}front].pitch");
    said_free(&said);
    free(odd);
    free(flat);
}

int main(void)
{
#define HERE(test) cmocka_unit_test_setup_teardown(test, set_up, tear_down)
    const struct CMUnitTest tests[] = {
        HERE(the_same_is_only_counted),
        HERE(a_fact_moves_a_finding),
        HERE(the_order_of_a_list_does_not_count),
        HERE(a_figure_moves_a_finding),
        HERE(a_moved_demand_counts_though_met),
        HERE(a_rule_of_one_law_stands_alone),
        HERE(a_plane_of_one_job_stands_alone),
        HERE(a_missing_fact_moves_a_finding),
        HERE(three_make_a_table),
        HERE(three_alike_are_no_difference),
        HERE(says_what_cannot_be_used),
        HERE(a_broken_rule_is_no_mere_difference),
        HERE(makes_names_harmless),
    };
#undef HERE
    return cmocka_run_group_tests(tests, NULL, NULL);
}
