/* What is said of a rule and of a figure, over the public interface, in a home
 * small enough that everything to be said is known. */
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

/* Reads pitch always, layers only on a steep plane, which no case has. */
static const char RULES[] =
    "rule \"test.pitch\" {\n"
    "  reads = { facts = { \"roof.slopes[].pitch\", \"existing.layers\" },\n"
    "    figures = { \"test.most\", \"test.pitch_least\" } },\n"
    "  title = \"Steep enough\", stage = \"deck\", per = \"roof.slopes\",\n"
    "  judge = function(job, figure, slope)\n"
    "    if slope.pitch > 8 then\n"
    "      return at_most(job.existing.layers, figure \"test.most\", \"layers\")\n"
    "    end\n"
    "    work(\"taken as it is\")\n"
    "    return at_least(slope.pitch, figure \"test.pitch_least\", \"rise_in_12\")\n"
    "  end,\n"
    "  mend = \"Build it steeper.\", caution = \"Mind the drop.\",\n"
    "}\n"
    "rule \"test.alone\" {\n"
    "  reads = { facts = { \"existing.layers\" }, figures = { \"test.seen\" } },\n"
    "  title = \"Judged by no case\", stage = \"permit\",\n"
    "  judge = function(job, figure)\n"
    "    return at_most(job.existing.layers, figure \"test.seen\", \"layers\")\n"
    "  end,\n"
    "  mend = \"Take one off.\",\n"
    "}\n";

static const char CASES[] = "cases \"test.pitch\" {\n"
                            "  { \"as it is\", expect = \"pass\", where = \"front\" },\n"
                            "}\n";

static const char EDITIONS[] =
    "jurisdiction \"model/test-2024\" {\n"
    "  title = \"Test code, 2024\", model = true, follows = \"model/test\",\n"
    "  edition = \"TEST 2024\",\n"
    "  figures = { [\"test.pitch_least\"] = { 5, cite = \"3.9\", status = \"memory\",\n"
    "    source = \"recalled\" } },\n"
    "}\n";

static const char COUNTY[] =
    "jurisdiction \"example/mill\" {\n"
    "  title = \"Mill County\", invented = true, follows = \"model/test-2024\",\n"
    "  from = \"2025-01-01\", code = \"Mill County Code\", rules = \"mill.rules.lua\",\n"
    "  figures = { [\"test.most\"] = { 1, cite = \"7-1\" } },\n"
    "  drop = { [\"test.alone\"] = \"waived by 7-2\" },\n"
    "}\n";

static const char COUNTY_RULES[] =
    "rule \"mill.own\" {\n"
    "  title = \"Mill's own\", stage = \"permit\",\n"
    "  reads = { facts = { \"existing.layers\" }, figures = { \"test.most\" } },\n"
    "  judge = function(job, figure)\n"
    "    return at_most(job.existing.layers, figure \"test.most\", \"layers\")\n"
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
    home_write(&fixture->home, "rules/cases/base.json", SMALL_JOB);
    home_write(&fixture->home, "rules/cases/test.lua", CASES);
    home_write(&fixture->home, "jurisdictions/model/test-2024.lua", EDITIONS);
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

struct said {
    enum eavemark_status status;
    char *report, *problems;
};

static struct said explain_with(void **state, const char *name,
                                const struct eavemark_request *request, enum eavemark_form form)
{
    struct fixture *fixture = *state;
    struct said said = {0};
    said.status = eavemark_explain(fixture->handle, name, request, form, &said.report,
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
static cJSON *explained(void **state, const char *name, const struct eavemark_request *request)
{
    struct said said = explain_with(state, name, request, EAVEMARK_JSON);
    assert_string_equal(said.problems, "");
    assert_int_equal(said.status, EAVEMARK_NOTHING_FAILED);
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
    const cJSON *text = member(object, key);
    assert_true(cJSON_IsString(text));
    assert_string_equal(text->valuestring, wanted);
}

static void assert_count(const cJSON *object, const char *key, int wanted)
{
    assert_int_equal(cJSON_GetArraySize(member(object, key)), wanted);
}

static void says_the_rule_in_words(void **state)
{
    cJSON *root = explained(state, "test.pitch", NULL);
    assert_text(root, "title", "Steep enough");
    assert_text(root, "stage", "deck");
    assert_text(root, "per", "roof.slopes");
    assert_text(root, "mend", "Build it steeper.");
    assert_text(root, "caution", "Mind the drop.");
    assert_text(root, "file", "rules/test.lua");
    cJSON_Delete(root);
}

/* All that the rule declares, though no case leads to it; and the list that it goes through. */
static void tells_the_figures_and_facts_that_are_declared(void **state)
{
    cJSON *root = explained(state, "test.pitch", NULL);
    assert_count(root, "figures", 2);
    assert_text(item(root, "figures", 0), "figure", "test.most");
    assert_text(item(root, "figures", 1), "figure", "test.pitch_least");
    assert_count(root, "facts", 3);
    assert_text(item(root, "facts", 0), "field", "existing.layers");
    assert_text(item(root, "facts", 0), "ask", "How many layers?");
    assert_text(item(root, "facts", 1), "field", "roof.slopes");
    assert_text(item(root, "facts", 2), "field", "roof.slopes[].pitch");
    cJSON_Delete(root);
}

static void shows_each_edition_and_the_place(void **state)
{
    const struct eavemark_request place = {.jurisdiction = "example/mill"};
    cJSON *root = explained(state, "test.pitch", &place);
    const cJSON *pitch = item(root, "figures", 1), *most = item(root, "figures", 0);
    /* The stock that editions follow is no edition. */
    assert_count(pitch, "by_edition", 2);
    const cJSON *edition = item(pitch, "by_edition", 0);
    assert_text(edition, "place", "model/test-2024");
    assert_int_equal(member(edition, "value")->valueint, 5);
    assert_text(member(edition, "cite"), "section", "3.9");
    assert_text(member(edition, "cite"), "status", "memory");
    assert_text(item(most, "by_edition", 1), "place", "example/mill");
    assert_int_equal(member(item(most, "by_edition", 1), "value")->valueint, 1);
    assert_int_equal(member(item(most, "by_edition", 0), "value")->valueint, 3);
    cJSON_Delete(root);
}

static void names_who_moves_a_figure(void **state)
{
    cJSON *root = explained(state, "test.pitch", NULL);
    const cJSON *most = item(root, "figures", 0);
    assert_count(most, "moved", 1);
    assert_text(item(most, "moved", 0), "title", "Mill County");
    assert_int_equal(member(item(most, "moved", 0), "value")->valueint, 1);
    assert_count(item(root, "figures", 1), "moved", 0);
    cJSON_Delete(root);
    struct said said = explain_with(state, "test.pitch", NULL, EAVEMARK_TEXT);
    assert_has(said.report, "moved by Mill County to 1 layer (Mill County Code 7-1; invented");
    said_free(&said);
}

/* Of a real place: read or recalled, where, and who disagrees. */
static void says_how_a_place_knows_its_figure(void **state)
{
    struct fixture *fixture = *state;
    home_write(&fixture->home, "jurisdictions/us-xx.lua",
               "jurisdiction \"us-xx\" { title = \"State X\", follows = \"model/test-2024\",\n"
               "  code = \"X Code\", figures = { [\"test.most\"] = { 4, cite = \"9\",\n"
               "    status = \"seen\", source = \"page\", disputed = \"a town says 2\" } } }\n");
    struct said said = explain_with(state, "test.most", NULL, EAVEMARK_TEXT);
    assert_has(said.report,
               "moved by State X to 4 layers (X Code 9; read in a public source: page;");
    assert_has(said.report, "disagree: a town says 2)");
    said_free(&said);
}

static void goes_by_the_day_asked_for(void **state)
{
    const struct eavemark_request before = {.date = "2024-12-31"};
    cJSON *root = explained(state, "test.pitch", &before);
    assert_count(item(root, "figures", 0), "moved", 0);
    assert_count(root, "not_looked_at", 1);
    cJSON_Delete(root);
}

static void needs_no_case_of_a_rule(void **state)
{
    struct said said = explain_with(state, "test.alone", NULL, EAVEMARK_TEXT);
    assert_has(said.report, "all there are");
    assert_has(said.report, "test.seen");
    assert_has(said.report, "The rule is dropped in Mill County: waived by 7-2.");
    said_free(&said);
}

static void finds_a_rule_of_one_place(void **state)
{
    cJSON *root = explained(state, "mill.own", NULL);
    assert_text(root, "only_in", "Mill County");
    assert_text(root, "file", "jurisdictions/example/mill.rules.lua");
    cJSON_Delete(root);
}

static void explains_a_figure(void **state)
{
    cJSON *root = explained(state, "test.pitch_least", NULL);
    const cJSON *figure = item(root, "figures", 0);
    assert_text(figure, "sense", "at_least");
    assert_text(figure, "unit", "rise_in_12");
    assert_int_equal(member(item(figure, "by_edition", 0), "value")->valueint, 5);
    assert_null(cJSON_GetObjectItemCaseSensitive(root, "rule"));
    assert_string_equal(item(root, "asked_by", 0)->valuestring, "test.pitch");
    cJSON_Delete(root);
}

/* Editions that say the same of all figures shown are one column. */
static void joins_editions_that_say_the_same(void **state)
{
    struct fixture *fixture = *state;
    home_write(&fixture->home, "jurisdictions/model/test-2027.lua",
               "jurisdiction \"model/test-2027\" {\n"
               "  title = \"Test code, 2027\", model = true, follows = \"model/test-2024\",\n"
               "  edition = \"TEST 2027\",\n"
               "  figures = { [\"test.pitch_least\"] = { 6, cite = \"3.9\", status = \"memory\",\n"
               "    source = \"recalled\" } },\n"
               "}\n");
    struct said said = explain_with(state, "test.most", NULL, EAVEMARK_TEXT);
    assert_has(said.report, "TEST 2024 to 2027\n  test.most  3 layers\n");
    assert_has(said.report, "-- the rules that ask for it\n\n  test.pitch ");
    said_free(&said);
    said = explain_with(state, "test.pitch_least", NULL, EAVEMARK_TEXT);
    assert_has(said.report, "TEST 2024               TEST 2027\n");
    said_free(&said);
}

/* What has the word itself comes before what only reads a fact with it. */
static void finds_by_a_word(void **state)
{
    struct said said = explain_with(state, "Steep", NULL, EAVEMARK_TEXT);
    assert_has(said.report, "1 rules and 0 figures with \"Steep\"");
    assert_has(said.report, "\ntest\n  test.pitch ");
    assert_has_not(said.report, "only read a fact");
    said_free(&said);
    said = explain_with(state, "layers", NULL, EAVEMARK_TEXT);
    assert_has(said.report, "-- rules that only read a fact with this word\n\ntest\n  test.alone ");
    said_free(&said);
    said = explain_with(state, "most", NULL, EAVEMARK_TEXT);
    assert_has(said.report, "\n  test.most: at most 3 layers\n");
    said_free(&said);
}

/* The steps are those of the job, not of the cases: what was read, asked for,
 * reckoned and compared. */
static void shows_how_a_job_was_judged(void **state)
{
    const struct eavemark_request job = {
        .name = "job.json", .text = SMALL_JOB, .length = strlen(SMALL_JOB)};
    cJSON *root = explained(state, "test.pitch", &job);
    const cJSON *judged = member(root, "judged");
    assert_count(judged, "findings", 2);
    const cJSON *front = item(judged, "findings", 0), *back = item(judged, "findings", 1);
    assert_text(front, "where", "front");
    assert_text(front, "outcome", "pass");
    assert_count(front, "facts", 1);
    assert_text(item(front, "facts", 0), "at", "/roof/slopes/0/pitch");
    assert_text(item(front, "facts", 0), "value", "5:12");
    assert_count(front, "figures", 1);
    assert_text(item(front, "figures", 0), "figure", "test.pitch_least");
    assert_int_equal(member(item(front, "figures", 0), "value")->valueint, 4);
    assert_string_equal(item(front, "work", 0)->valuestring, "taken as it is");
    assert_text(front, "sense", "at_least");
    assert_text(back, "outcome", "fail");
    assert_int_equal(member(back, "found")->valueint, 3);
    assert_text(back, "mend", "Build it steeper.");
    cJSON_Delete(root);
    struct said said = explain_with(state, "test.pitch", &job, EAVEMARK_TEXT);
    assert_has(said.report, "/roof/slopes/1/pitch = 3:12");
    assert_has(said.report, "found 3:12, demanded at least 4:12");
    assert_has(said.report, "FAIL. ");
    assert_has(said.report, "This is a pre-check");
    said_free(&said);
}

static void lists_all_rules(void **state)
{
    cJSON *root = explained(state, NULL, NULL);
    assert_count(root, "rules", 3);
    assert_text(item(root, "rules", 0), "rule", "mill.own");
    assert_text(item(root, "rules", 0), "only_in", "Mill County");
    assert_text(item(root, "rules", 2), "rule", "test.pitch");
    assert_true(cJSON_IsNull(member(item(root, "rules", 2), "only_in")));
    cJSON_Delete(root);
}

static void names_the_nearest(void **state)
{
    struct said said = explain_with(state, "test.pich", NULL, EAVEMARK_TEXT);
    assert_int_equal(said.status, EAVEMARK_UNUSABLE);
    assert_null(said.report);
    assert_has(said.problems, "rule test.pitch");
    said_free(&said);
    said = explain_with(state, "test.mosst", NULL, EAVEMARK_TEXT);
    assert_int_equal(said.status, EAVEMARK_UNUSABLE);
    assert_has(said.problems, "figure test.most");
    said_free(&said);
}

static void refuses_what_cannot_be_used(void **state)
{
    const struct eavemark_request day = {.date = "yesterday"}, place = {.jurisdiction = "no/where"};
    const struct eavemark_request job = {.name = "job.json", .text = "{}", .length = 2};
    const struct eavemark_request *const bad[] = {&day, &place, &job};
    for (size_t i = 0; i < 3; i++) {
        struct said said = explain_with(state, "test.pitch", bad[i], EAVEMARK_TEXT);
        assert_int_equal(said.status, EAVEMARK_UNUSABLE);
        assert_null(said.report);
        assert_true(said.problems[0] != '\0');
        said_free(&said);
    }
}

static void breaks_on_broken_rules(void **state)
{
    struct fixture *fixture = *state;
    home_write(&fixture->home, "rules/test.lua", "rule \"test.pitch\" { " SMALL_READS "");
    struct said said = explain_with(state, "test.pitch", NULL, EAVEMARK_TEXT);
    assert_int_equal(said.status, EAVEMARK_BROKEN);
    assert_null(said.report);
    assert_has(said.problems, "rules/test.lua");
    said_free(&said);
}

/* It reads none of them. */
static void does_not_mind_cases_that_are_broken(void **state)
{
    struct fixture *fixture = *state;
    home_write(&fixture->home, "rules/cases/other.lua", "cases {");
    struct said said = explain_with(state, "test.pitch", NULL, EAVEMARK_TEXT);
    assert_int_equal(said.status, EAVEMARK_NOTHING_FAILED);
    assert_has(said.report, "test.pitch_least");
    said_free(&said);
}

static void is_at_most_80_columns_wide(void **state)
{
    const struct eavemark_request job = {
        .name = "job.json", .text = SMALL_JOB, .length = strlen(SMALL_JOB)};
    struct said said = explain_with(state, "test.pitch", &job, EAVEMARK_TEXT);
    for (const char *at = said.report; *at != '\0';) {
        const size_t length = strcspn(at, "\n");
        assert_true(length <= 80);
        at += length + (at[length] == '\n');
    }
    said_free(&said);
}

/* What a place calls itself cannot steer the terminal. */
static void makes_names_harmless(void **state)
{
    char *job = text_with(SMALL_JOB, "\"name\": \"front\"", "\"name\": \"\\u202efront\"");
    const struct eavemark_request request = {
        .name = "job.json", .text = job, .length = strlen(job)};
    struct said said = explain_with(state, "test.pitch", &request, EAVEMARK_TEXT);
    assert_int_equal(said.status, EAVEMARK_NOTHING_FAILED);
    assert_null(strstr(said.report, "\u202e"));
    assert_has(said.report, "\\u{202e}front");
    said_free(&said);
    free(job);
}

/* A yes or no says which asks for more, a limit the switch it stands behind. */
static void says_which_way_a_yes_goes(void **state)
{
    struct fixture *fixture = *state;
    home_write(&fixture->home, "jurisdictions/example/mill.lua",
               "jurisdiction \"example/mill\" { title = \"Mill\", invented = true,\n"
               "  follows = \"model/test-2024\", figures = {\n"
               "  [\"mill.free\"] = { true, sense = \"equals\", stricter = false, cite = \"1\",\n"
               "    status = \"invented\", source = \"Mill\" },\n"
               "  [\"mill.most\"] = { 3, unit = \"in\", sense = \"at_most\", cite = \"2\",\n"
               "    behind = \"mill.free\", status = \"invented\", source = \"Mill\" } } }\n");
    struct eavemark_request there = {.jurisdiction = "example/mill", .date = "2026-03-02"};
    struct said said = explain_with(state, "mill.free", &there, EAVEMARK_TEXT);
    assert_has(said.report, "mill.free (found must be this; no asks for more)");
    said_free(&said);
    said = explain_with(state, "mill.most", &there, EAVEMARK_TEXT);
    assert_has(said.report, "mill.most (found must be at most this; behind mill.free)");
    said_free(&said);
}

static void check_list(void **state, enum eavemark_names names, const char *wanted)
{
    struct fixture *fixture = *state;
    char *text = NULL;
    assert_int_equal(eavemark_list(fixture->handle, names, &text), EAVEMARK_NOTHING_FAILED);
    assert_string_equal(text, wanted);
    free(text);
}

static void lists_names(void **state)
{
    check_list(state, EAVEMARK_RULES, "mill.own\ntest.alone\ntest.pitch\n");
    check_list(state, EAVEMARK_TOPICS, "mill\ntest\n");
    check_list(state, EAVEMARK_JURISDICTIONS, "example/mill\nmodel/test\nmodel/test-2024\n");
    check_list(state, EAVEMARK_PARTS, "attics\ndecks\nexisting\nroof\n");
    check_list(state, EAVEMARK_FIGURES,
               "test.conditions\ntest.disputed\ntest.kinds\ntest.lap_least\n"
               "test.layers_exact\ntest.memory\ntest.most\n"
               "test.nails_most\ntest.parallel\ntest.pitch_least\ntest.practice\ntest.required\n"
               "test.seen\n");
}

int main(void)
{
#define HERE(test) cmocka_unit_test_setup_teardown(test, set_up, tear_down)
    const struct CMUnitTest tests[] = {
        HERE(says_the_rule_in_words),
        HERE(tells_the_figures_and_facts_that_are_declared),
        HERE(says_which_way_a_yes_goes),
        HERE(shows_each_edition_and_the_place),
        HERE(names_who_moves_a_figure),
        HERE(says_how_a_place_knows_its_figure),
        HERE(goes_by_the_day_asked_for),
        HERE(needs_no_case_of_a_rule),
        HERE(finds_a_rule_of_one_place),
        HERE(explains_a_figure),
        HERE(joins_editions_that_say_the_same),
        HERE(finds_by_a_word),
        HERE(shows_how_a_job_was_judged),
        HERE(lists_all_rules),
        HERE(names_the_nearest),
        HERE(refuses_what_cannot_be_used),
        HERE(breaks_on_broken_rules),
        HERE(does_not_mind_cases_that_are_broken),
        HERE(is_at_most_80_columns_wide),
        HERE(makes_names_harmless),
        HERE(lists_names),
    };
#undef HERE
    return cmocka_run_group_tests(tests, NULL, NULL);
}
