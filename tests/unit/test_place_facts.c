/* What is one all over a place: filled into jobs that are silent, held against those that
 * are not, and refused where the place's file says it wrong. All places are invented. */
#include "include/eavemark.h"
#include "support/small_law.h"
#include "support/temporary_home.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

static struct temporary_home home;

static const char FIELDS[] =
    "field \"as_meant\" { type = \"list\", stage = \"permit\", ask = \"Meant?\" }\n"
    "field \"as_meant[].at\" { type = \"text\", stage = \"permit\", ask = \"Where?\" }\n"
    "field \"site\" { type = \"group\", stage = \"permit\", ask = \"The site\" }\n"
    "field \"site.wind_mph\" { type = \"number\", unit = \"mph\", range = { 85, 220 },\n"
    "  of_place = true, stage = \"permit\", ask = \"How strong is the wind?\" }\n"
    "field \"site.icy\" { type = \"yes_no\", of_place = true, stage = \"permit\", ask = \"Ice?\" }\n"
    "field \"site.zone\" { type = \"choice\", choices = { \"3C\", \"5A\", \"6A\" },\n"
    "  of_place = true, stage = \"permit\", ask = \"Which zone?\" }\n"
    "field \"site.shore_ft\" { type = \"number\", unit = \"ft\", stage = \"permit\", ask = \"?\" }\n";

/* One that looks at the wind, one that a place without ice is let off. */
static const char RULES[] =
    "rule \"wind.most\" { reads = { facts = { \"site.wind_mph\" }, figures = { \"test.wind_most\" } }, title = \"Wind\", stage = \"permit\", mend = \"x\",\n"
    "  judge = function(job, figure)\n"
    "    return at_most(job.site.wind_mph, figure \"test.wind_most\", \"mph\") end }\n"
    "rule \"ice.layers\" { reads = { facts = { \"existing.layers\", \"site.icy\" }, figures = { \"test.seen\" } }, title = \"Ice\", stage = \"permit\", mend = \"x\",\n"
    "  applies = function(job) return job.site.icy, \"no ice here\" end,\n"
    "  judge = function(job, figure)\n"
    "    return at_most(job.existing.layers, figure \"test.seen\", \"layers\") end }\n";

static int make_home(void **state)
{
    (void)state;
    home_make(&home);
    small_law_write(&home);
    home_write(&home, "rules/a.lua", FIELDS);
    home_write(&home, "rules/b.lua", RULES);
    return 0;
}

static int remove_home(void **state)
{
    (void)state;
    home_remove(&home);
    return 0;
}

/* A state, and a county in it that states these facts. */
static void write_places(const char *state_says, const char *county_says)
{
    char text[2000];
    snprintf(text, sizeof(text),
             "jurisdiction \"example/state\" { title = \"Elmland\", invented = true,\n"
             "  follows = \"model/test\", %s\n"
             "  figures = { [\"test.wind_most\"] = { 120, unit = \"mph\", sense = \"at_most\",\n"
             "    cite = \"1\", status = \"invented\", source = \"Elmland\" } } }\n",
             state_says);
    home_write(&home, "jurisdictions/example/state.lua", text);
    snprintf(text, sizeof(text),
             "jurisdiction \"example/county\" { title = \"Oak County\", invented = true,\n"
             "  follows = \"example/state\", %s }\n",
             county_says);
    home_write(&home, "jurisdictions/example/county.lua", text);
}

#define JOB(site)                                                            \
    "{\"eavemark_job\":1,\"job\":\"j\",\"jurisdiction\":\"example/county\"," \
    "\"date\":\"2026-05-04\",\"stage\":\"permit\",\"existing\":{\"layers\":1}" site "}"

static struct outcome_of_check check(const char *job, const char *jurisdiction)
{
    eavemark *handle = eavemark_open(home.path);
    struct outcome_of_check outcome = home_check(handle, job, jurisdiction, NULL, NULL);
    eavemark_close(handle);
    return outcome;
}

/* The outcome of both rules: "pass" of wind.most, "not_applicable" of ice.layers. */
static struct outcome_of_check expect(const char *job, const char *wind, const char *ice)
{
    struct outcome_of_check outcome = check(job, NULL);
    if (outcome.json == NULL)
        fail_msg("%s", outcome.problems);
    assert_member(outcome.json, "wind.most", 0, "outcome", wind);
    assert_member(outcome.json, "ice.layers", 0, "outcome", ice);
    return outcome;
}

#define FACTS                                                                     \
    "facts = { [\"site.wind_mph\"] = { 115, unit = \"mph\", cite = \"s. 2\" },\n" \
    "  [\"site.icy\"] = { false, cite = \"s. 3\" } }"

static void test_fills_what_a_job_leaves_out(void **state)
{
    (void)state;
    write_places("", FACTS);
    struct outcome_of_check outcome = expect(JOB(""), "pass", "not_applicable");
    assert_has(outcome.json, "{\"at\":\"/site/wind_mph\",\"from\":\"place\"}");
    assert_has(outcome.json, "\"place\":2");
    assert_has(outcome.json, "\"differs\":[]");
    outcome_free(&outcome);
    /* null is silence. */
    outcome = expect(JOB(",\"site\":{\"wind_mph\":null}"), "pass", "not_applicable");
    outcome_free(&outcome);
}

/* Along follows, the nearest place's word on each. */
static void test_are_inherited(void **state)
{
    (void)state;
    write_places(FACTS ",", "facts = { [\"site.wind_mph\"] = { 130, unit = \"mph\", "
                            "cite = \"s. 9\" } }");
    struct outcome_of_check outcome = expect(JOB(""), "fail", "not_applicable");
    outcome_free(&outcome);
    write_places(FACTS ",", "");
    outcome = expect(JOB(""), "pass", "not_applicable");
    outcome_free(&outcome);
    /* What may not bind here is no word on the place; nor is a draft's own. */
    write_places(FACTS ",", "unsure = \"nobody read it\"");
    outcome = expect(JOB(""), "open", "open");
    outcome_free(&outcome);
    write_places("", "draft = \"not law yet\", " FACTS);
    outcome = expect(JOB(""), "open", "open");
    outcome_free(&outcome);
}

/* Judged by the job's own word, and told: what passes by it is disputed, what it lets off is
 * open. */
static void test_a_job_that_says_otherwise_is_told(void **state)
{
    (void)state;
    write_places("", "facts = { [\"site.wind_mph\"] = { 125, unit = \"mph\", cite = \"s. 2\" },\n"
                     "  [\"site.icy\"] = { true, cite = \"s. 3\" } }");
    static const char OTHERWISE[] = JOB(",\"site\":{\"wind_mph\":110,\"icy\":false}");
    struct outcome_of_check outcome = expect(OTHERWISE, "warn", "open");
    assert_int_equal(outcome.status, EAVEMARK_NOTHING_FAILED);
    assert_member(outcome.json, "wind.most", 0, "met", "true");
    assert_member(outcome.json, "wind.most", 0, "why", "[\"disputed\"]");
    assert_member_has(outcome.json, "wind.most", 0, "says",
                      "/site/wind_mph: the job says 110 mph, Oak County 125 mph (s. 2, invented)");
    assert_member(outcome.json, "ice.layers", 0, "ask", "place");
    assert_has(outcome.json, "\"differs\":[\"/site/icy: the job says no, Oak County yes (s. 3, "
                             "invented)\",\"/site/wind_mph: ");
    outcome_free(&outcome);
    /* The same word is no other; one that fails by its own word fails. */
    outcome = expect(JOB(",\"site\":{\"wind_mph\":125,\"icy\":true}"), "fail", "pass");
    assert_has(outcome.json, "\"differs\":[]");
    outcome_free(&outcome);
    /* Meant as it stands: the job's word holds, and both are told all the same. */
    outcome = expect(JOB(",\"site\":{\"wind_mph\":110,\"icy\":false},\"as_meant\":["
                         "{\"at\":\"/site/wind_mph\"},{\"at\":\"/site/icy\"}]"),
                     "pass", "not_applicable");
    assert_has(outcome.json, "s. 2, invented); meant as it stands");
    outcome_free(&outcome);
}

static void test_strict_fails_on_what_the_place_states_otherwise(void **state)
{
    (void)state;
    write_places("", "facts = { [\"site.wind_mph\"] = { 125, unit = \"mph\", cite = \"s. 2\" } }");
    static const char OTHERWISE[] = JOB(",\"site\":{\"wind_mph\":110,\"icy\":false}");
    const struct eavemark_request request = {
        .name = "job.json", .text = OTHERWISE, .length = strlen(OTHERWISE)};
    eavemark *handle = eavemark_open(home.path);
    eavemark_result *result = eavemark_check(handle, &request);
    assert_int_equal(eavemark_result_status(result, false), EAVEMARK_NOTHING_FAILED);
    assert_int_equal(eavemark_result_status(result, true), EAVEMARK_FAILED);
    char *text = eavemark_result_report(result, EAVEMARK_TEXT, 0);
    assert_has(text, "Differs  /site/wind_mph: the job says 110 mph, Oak County 125 mph");
    free(text);
    eavemark_result_free(result);
    eavemark_close(handle);
}

/* Bounds and several: what is outside is asked back, unless it is meant. */
static void test_asks_back_what_is_outside(void **state)
{
    (void)state;
    write_places("", "facts = { [\"site.wind_mph\"] = { least = 110, most = 118, unit = \"mph\", "
                     "cite = \"s. 2\" },\n"
                     "  [\"site.zone\"] = { one_of = { \"5A\", \"6A\" }, cite = \"s. 4\" } }");
    struct outcome_of_check outcome = expect(JOB(",\"site\":{\"wind_mph\":118,\"zone\":\"6A\"}"),
                                             "pass", "open");
    outcome_free(&outcome);
    /* A job that is silent is given none. */
    outcome = expect(JOB(""), "open", "open");
    outcome_free(&outcome);
    outcome = check(JOB(",\"site\":{\"wind_mph\":100,\"zone\":\"3C\"}"), NULL);
    assert_int_equal(outcome.status, EAVEMARK_UNUSABLE);
    assert_has(outcome.problems, "/site/wind_mph: is asked back: 100 mph here, where Oak County "
                                 "has at least 110 mph, at most 118 mph (s. 2).");
    assert_has(outcome.problems, "/site/zone: is asked back: 3C here, where Oak County has one of "
                                 "5A, 6A (s. 4).");
    outcome_free(&outcome);
    outcome = expect(JOB(",\"site\":{\"wind_mph\":100},\"as_meant\":[{\"at\":\"/site/wind_mph\"}]"),
                     "pass", "open");
    assert_has(outcome.json, "Oak County at least 110 mph, at most 118 mph");
    outcome_free(&outcome);
    /* Tried in another place than its own, a job is not refused, but told. */
    static const char ELSEWHERE[] =
        "{\"eavemark_job\":1,\"job\":\"j\",\"jurisdiction\":\"example/state\","
        "\"date\":\"2026-05-04\",\"stage\":\"permit\",\"site\":{\"wind_mph\":100}}";
    outcome = check(ELSEWHERE, "example/county");
    assert_member(outcome.json, "wind.most", 0, "outcome", "warn");
    outcome_free(&outcome);
}

/* A pass is no surer than the place's fact, and a recalled one lets nothing off. */
static void test_an_unread_fact_is_unconfirmed(void **state)
{
    (void)state;
    write_places("", "facts = { [\"site.wind_mph\"] = { 115, unit = \"mph\", cite = \"s. 2\", "
                     "status = \"memory\", source = \"recalled\" },\n"
                     "  [\"site.icy\"] = { false, cite = \"s. 3\", status = \"memory\", source = "
                     "\"recalled\" } }");
    struct outcome_of_check outcome = expect(JOB(""), "warn", "open");
    assert_member(outcome.json, "wind.most", 0, "why", "[\"unconfirmed\"]");
    assert_member_has(outcome.json, "wind.most", 0, "says",
                      "Unconfirmed: the place's /site/wind_mph is recalled from memory");
    assert_member(outcome.json, "ice.layers", 0, "ask", "place");
    outcome_free(&outcome);
    write_places("", "facts = { [\"site.wind_mph\"] = { 115, unit = \"mph\", cite = \"s. 2\", "
                     "status = \"parallel\", source = \"a sister\" } }");
    outcome = expect(JOB(",\"site\":{\"icy\":false}"), "warn", "not_applicable");
    assert_member(outcome.json, "wind.most", 0, "why", "[\"unconfirmed\"]");
    outcome_free(&outcome);
}

/* Looks only whether the wind is said; what is said is told where the place denies it. */
static const char SAID[] =
    "rule \"wind.said\" { reads = { facts = { \"site.wind_mph\" }, figures = { \"test.seen\" } },\n"
    "  title = \"Said\", stage = \"permit\", mend = \"x\", judge = function(job, figure)\n"
    "    figure \"test.seen\"\n"
    "    return shown(known(job.site, \"wind_mph\"), \"the wind\") end }\n";

/* One handle for many jobs: what is remembered of one is not said of another that has the
 * same words from elsewhere, or that its place denies. */
static void test_a_batch_says_of_each_what_a_check_of_it_says(void **state)
{
    (void)state;
    static const char *const SITES[] = {
        JOB(""),
        JOB(",\"site\":{\"wind_mph\":115,\"icy\":false}"),
        JOB(",\"site\":{\"wind_mph\":110,\"icy\":true}"),
        JOB(",\"site\":{\"wind_mph\":112,\"icy\":true}"),
        JOB(",\"site\":{\"wind_mph\":110,\"icy\":true},\"as_meant\":["
            "{\"at\":\"/site/wind_mph\"},{\"at\":\"/site/icy\"}]"),
    };
    enum { COUNT = sizeof(SITES) / sizeof(SITES[0]) };
    write_places("", "facts = { [\"site.wind_mph\"] = { 115, unit = \"mph\", cite = \"s. 2\", "
                     "status = \"memory\", source = \"recalled\" },\n"
                     "  [\"site.icy\"] = { false, cite = \"s. 3\" } }");
    home_write(&home, "rules/said.lua", SAID);
    eavemark *handle = eavemark_open(home.path);
    for (size_t i = 0; i < 6 * COUNT; i++) {
        struct outcome_of_check one = check(SITES[i * 2 % COUNT], NULL);
        assert_non_null(strstr(one.json, "\"wind.said\""));
        struct outcome_of_check other = home_check(handle, SITES[i * 2 % COUNT], NULL, NULL, NULL);
        assert_string_equal(one.json, other.json);
        outcome_free(&one);
        outcome_free(&other);
    }
    eavemark_close(handle);
    home_write(&home, "rules/said.lua", "");
}

/* By file and line, with what was meant where that can be told. */
static void test_refuses_what_is_no_fact(void **state)
{
    (void)state;
    static const char *const BAD[][2] = {
        {"facts = 1", "county.lua:1: facts must be a table"},
        {"facts = { [\"site.wind_mph\"] = 115 }",
         "county.lua:2: fact \"site.wind_mph\": is written { value, cite = ... }"},
        {"facts = { [\"site.wind_mph\"] = { 115, cites = \"2\" } }",
         "unknown key \"cites\"; did you mean \"cite\"?"},
        {"facts = { [\"site.wind_mph\"] = { 115, unit = \"mph\" } }", "lacks a cite"},
        {"facts = { [\"site.wind_mph\"] = { unit = \"mph\", cite = \"2\" } }",
         "says either one value, or least and most, or one_of"},
        {"facts = { [\"site.wind_mph\"] = { 115, least = 110, unit = \"mph\", cite = \"2\" } }",
         "says either one value, or least and most, or one_of"},
        {"facts = { [\"site.wind_mph\"] = { least = 120, most = 110, unit = \"mph\", "
         "cite = \"2\" } }",
         "least is not less than most"},
        {"facts = { [\"site.wnd_mph\"] = { 115, unit = \"mph\", cite = \"2\" } }",
         "county.lua:2: fact \"site.wnd_mph\" is no field of a job; did you mean "
         "\"site.wind_mph\"?"},
        {"facts = { [\"site.shore_ft\"] = { 90, unit = \"ft\", cite = \"2\" } }",
         "is not one all over a place"},
        {"facts = { [\"site.wind_mph\"] = { 115, unit = \"ft\", cite = \"2\" } }",
         "is in another unit; did you mean \"mph\"?"},
        {"facts = { [\"site.wind_mph\"] = { 115, cite = \"2\" } }", "says no unit"},
        {"facts = { [\"site.wind_mph\"] = { 15, unit = \"mph\", cite = \"2\" } }",
         "county.lua:2: fact \"site.wind_mph\" says 15 mph, which no job can: the field takes "
         "85 to 220 mph"},
        {"facts = { [\"site.wind_mph\"] = { least = 15, unit = \"mph\", cite = \"2\" } }",
         "says 15 mph, which no job can"},
        {"facts = { [\"site.wind_mph\"] = { true, cite = \"2\" } }", "is another kind of value"},
        {"facts = { [\"site.icy\"] = { 1, cite = \"2\" } }", "is another kind of value"},
        {"facts = { [\"site.zone\"] = { \"5a\", cite = \"2\" } }",
         "is none of the choices that there are; did you mean \"5A\"?"},
        {"facts = { [\"site.zone\"] = { one_of = { \"5A\", \"7\" }, cite = \"2\" } }",
         "is none of the choices that there are"},
    };
    for (size_t i = 0; i < sizeof(BAD) / sizeof(BAD[0]); i++) {
        write_places("", BAD[i][0]);
        struct outcome_of_check outcome = check(JOB(""), NULL);
        assert_int_equal(outcome.status, EAVEMARK_BROKEN);
        assert_has(outcome.problems, BAD[i][1]);
        outcome_free(&outcome);
    }
    /* A real place says how it knows; a model code is no place. */
    home_write(&home, "jurisdictions/example/county.lua",
               "jurisdiction \"example/county\" { title = \"Oak\", follows = \"model/test\",\n"
               "  facts = { [\"site.icy\"] = { true, cite = \"2\" } } }\n");
    struct outcome_of_check outcome = check(JOB(""), NULL);
    assert_has(outcome.problems, "county.lua:2: fact \"site.icy\": lacks a status");
    outcome_free(&outcome);
}

/* An administrator reads what jobs are given, inherited or not. */
static void test_the_proof_shows_them(void **state)
{
    (void)state;
    write_places(FACTS ",", "facts = { [\"site.zone\"] = { one_of = { \"5A\", \"6A\" }, "
                            "cite = \"s. 4\" } }");
    eavemark *handle = eavemark_open(home.path);
    char *report = NULL, *problems = NULL;
    eavemark_proof(handle, "example/county", NULL, NULL, EAVEMARK_TEXT, &report, &problems);
    assert_has(report, "  states    site.wind_mph: 115 mph (Elmland s. 2; invented)");
    assert_has(report, "  states    site.icy: no (Elmland s. 3; invented)");
    assert_has(report, "  states    site.zone: one of 5A, 6A (Oak County s. 4; invented)");
    free(report);
    free(problems);
    eavemark_proof(handle, "example/county", NULL, NULL, EAVEMARK_JSON_LINE, &report, &problems);
    assert_has(report, "{\"name\":\"site.wind_mph\",\"says\":\"115 mph\",\"status\":"
                       "\"invented\",\"cite\":\"Elmland s. 2\"}");
    free(report);
    free(problems);
    eavemark_close(handle);
}

/* Which fields a place may state is the catalogue's to say. */
static void test_a_field_of_a_place_is_one_of_the_job(void **state)
{
    (void)state;
    static const char *const BAD[][2] = {
        {"field \"decks[].wet\" { type = \"yes_no\", of_place = true, stage = \"permit\", ask = "
         "\"?\" }\n",
         "one fact of the job as a whole"},
        {"field \"site.seen\" { type = \"yes_no\", of_place = true, measured = true, stage = "
         "\"deck\", ask = \"?\" }\n",
         "neither measured"},
        {"field \"site.day\" { type = \"date\", of_place = true, stage = \"permit\", ask = "
         "\"?\" }\n",
         "what a place states is a number"},
        {"field \"site.seen\" { type = \"yes_no\", habit = true, measured = true, stage = \"deck\", "
         "ask = \"?\" }\n",
         "what is measured is no habit"},
        {"field \"site.day\" { type = \"date\", habit = true, stage = \"permit\", ask = \"?\" }\n",
         "a day is no habit"},
        {"field \"site.deck\" { type = \"reference\", refers = \"decks\", habit = true, stage = "
         "\"permit\", ask = \"?\" }\n",
         "which item of the job's is meant is no habit"},
        {"field \"site.x\" { type = \"yes_no\", habit = \"prodct\", stage = \"permit\", ask = "
         "\"?\" }\n",
         "habit is true or \"product\""},
    };
    write_places("", "");
    for (size_t i = 0; i < sizeof(BAD) / sizeof(BAD[0]); i++) {
        home_write(&home, "rules/c.lua", BAD[i][0]);
        struct outcome_of_check outcome = check(JOB(""), NULL);
        assert_int_equal(outcome.status, EAVEMARK_BROKEN);
        assert_has(outcome.problems, BAD[i][1]);
        outcome_free(&outcome);
    }
    home_delete(&home, "rules/c.lua");
    home_write(
        &home, "jurisdictions/example/county.rules.lua",
        "field \"tin\" { type = \"yes_no\", habit = true, stage = \"permit\", ask = \"?\" }\n");
    write_places("", "rules = \"county.rules.lua\"");
    struct outcome_of_check outcome = check(JOB(""), NULL);
    assert_has(outcome.problems, "only fields of rules/ are habits");
    outcome_free(&outcome);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_fills_what_a_job_leaves_out),
        cmocka_unit_test(test_are_inherited),
        cmocka_unit_test(test_a_job_that_says_otherwise_is_told),
        cmocka_unit_test(test_strict_fails_on_what_the_place_states_otherwise),
        cmocka_unit_test(test_asks_back_what_is_outside),
        cmocka_unit_test(test_an_unread_fact_is_unconfirmed),
        cmocka_unit_test(test_a_batch_says_of_each_what_a_check_of_it_says),
        cmocka_unit_test(test_the_proof_shows_them),
        cmocka_unit_test(test_refuses_what_is_no_fact),
        cmocka_unit_test(test_a_field_of_a_place_is_one_of_the_job),
    };
    return cmocka_run_group_tests(tests, make_home, remove_home);
}
