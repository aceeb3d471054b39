/* Rules as rows: what a demand says is looked up when it is loaded, and a mistake in it
 * is an error of the file with its line; what it then finds is what a rule made of
 * functions finds. */
#include "support/row_law.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

static void a_fact_meets_a_figure(void **state)
{
    (void)state;
    assert_row_found("fact = \"existing.layers\", meets = \"test.seen\"", "pass",
                     "Found 1 layer; demanded at most 3 layers.");
    assert_row_found("fact = \"existing.condition\", meets = \"test.conditions\"", "pass",
                     "Found sound; demanded one of sound.");
    assert_row_found("fact = \"existing.kinds\", meets = \"test.kinds\"", "pass",
                     "none of slate, tile");
    assert_row_found("fact = \"existing.layers\", meets = \"test.seen\", say = \"Count again.\"",
                     "pass", "Count again.");
    assert_row_found("fact = \"existing.slippery\", meets = \"test.required\"", "open",
                     "/existing/slippery");
}

/* Only the figure met says how sure the demand is; nothing is guessed. */
static void the_figure_met_is_the_maker(void **state)
{
    (void)state;
    char *problems,
        *json = row_report(
            "per = \"roof.slopes\", when = { meant { \"roof.slopes[].pitch\", \"r.steep\" } },\n"
            "fact = \"existing.layers\", meets = \"test.seen\"",
            SMALL_JOB, NULL, &problems);
    assert_string_equal(problems, "");
    assert_member(json, "test.it", 0, "outcome", "pass");
    assert_member(json, "test.it", 0, "figures", "[\"test.seen\"]");
    assert_member_has(json, "test.it", 0, "cite", "\"status\":\"memory\"");
    assert_member(json, "test.it", 0, "where", "front");
    assert_member(json, "test.it", 1, "outcome", "not_applicable");
    free(problems);
    free(json);
}

static void conditions_say_of_whom_it_speaks(void **state)
{
    (void)state;
    static const struct {
        const char *when, *outcome, *says;
    } rows[] = {
        {"on \"r.on\"", "pass", "Found"},
        {"on { \"r.off\", otherwise = \"not here\" }", "not_applicable", "not here"},
        {"off \"r.off\"", "pass", "Found"},
        {"asks \"r.kinds\"", "pass", "Found"},
        {"asks { \"r.none\", otherwise = \"asks nothing\" }", "not_applicable", "asks nothing"},
        {"is { \"existing.condition\", \"sound\" }", "pass", "Found"},
        {"is { \"existing.condition\", \"rotted\", otherwise = \"it is sound\" }", "not_applicable",
         "it is sound"},
        {"is { \"existing.kinds\", \"tile\", otherwise = \"no tile\" }", "not_applicable",
         "no tile"},
        {"is { \"existing.kinds\", \"tile\", \"asphalt\" }", "pass", "Found"},
        {"is \"existing.slippery\"", "open", "/existing/slippery"},
        {"is { \"existing.condition\", \"sound\" },\n"
         " said { \"existing.slippery\", otherwise = \"nobody said\" }",
         "not_applicable", "nobody said"},
        {"said { \"existing.slippery\", otherwise = \"nobody said\" }", "open", /* nor else */
         "/existing/slippery"},
        {"no { said \"existing.slippery\" }", "pass", "Found"},
        {"no(is { \"existing.condition\", \"sound\" })", "not_applicable", "Does not apply"},
        {"either { on \"r.off\", on \"r.on\" }", "pass", "Found"},
        {"either { on \"r.off\", is \"existing.slippery\" }", "open", "slippery"},
        {"either { on \"r.on\", is \"existing.slippery\" }", "pass", "Found"},
        {"all { on \"r.on\", on \"r.off\", otherwise = \"not both\" }", "not_applicable",
         "not both"},
        {"some { \"roof.slopes\", meant { \"roof.slopes[].pitch\", \"r.low\" } }", "pass", "Found"},
        {"some { \"roof.slopes\", is { \"roof.slopes[].deck.name\", \"x\" } }", "broken", ""},
        {"inspected { otherwise = \"told later\" }", "not_applicable", "told later"},
        {"{ on \"r.on\", { off \"r.off\" } }", "pass", "Found"},
        {"function(job, figure) return false, \"so says a function\" end", "not_applicable",
         "so says a function"},
        {"function(job, figure) return job.existing.slippery end", "open", "slippery"},
        {"function(job, figure) return nil + 1 end", "broken", "arithmetic"},
    };
    for (size_t i = 0; i < sizeof(rows) / sizeof(rows[0]); i++) {
        char body[400];
        snprintf(body, sizeof(body),
                 "when = { %s },\n"
                 " fact = \"existing.layers\", meets = \"test.seen\"",
                 rows[i].when);
        if (strstr(rows[i].when, ".deck.name") != NULL)
            assert_row_refused(body, "has no choices");
        else
            assert_row_found(body, rows[i].outcome, rows[i].says);
    }
}

static void a_duty_is_asked_for_by_its_switch(void **state)
{
    (void)state;
    char *job = text_with(SMALL_JOB, "\"layers\": 1,", "\"layers\": 1, \"slippery\": false,");
    char *problems, *json = row_report("when = { on \"r.on\" }, fact = \"existing.slippery\",\n"
                                       "shown = \"a slippery roof\"",
                                       job, NULL, &problems);
    assert_string_equal(problems, "");
    assert_member(json, "test.it", 0, "outcome", "fail");
    assert_member(json, "test.it", 0, "says", "Demanded: a slippery roof. Found: no.");
    assert_member(json, "test.it", 0, "figures", "[\"r.on\"]");
    free(json);
    free(problems);
    json = row_report("when = { on \"r.on\" }, fact = \"existing.slippery\", wants = false,\n"
                      "shown = \"a roof that holds the foot\"",
                      job, NULL, &problems);
    assert_member(json, "test.it", 0, "outcome", "pass");
    free(json);
    free(problems);
    free(job);
    assert_row_found(
        "when = { asks \"r.kinds\" }, fact = \"existing.kinds\", meets = \"r.kinds\",\n"
        "shown = \"the kinds\"",
        "fail", "Demanded: the kinds, also: slate. Found: no.");
}

static void one_figure_for_each_word(void **state)
{
    (void)state;
    assert_row_found("fact = \"existing.layers\", meets = \"r.by\", by = \"existing.condition\"",
                     "pass", "demanded at most 2 layers");
    char *job = text_with(SMALL_JOB, "\"condition\": \"sound\"", "\"condition\": \"rotted\"");
    char *problems, *json = row_report(
                        "fact = \"existing.layers\", meets = \"r.by\", by = \"existing.condition\"",
                        job, NULL, &problems);
    assert_member(json, "test.it", 0, "outcome", "broken");
    assert_member_has(json, "test.it", 0, "says", "no figure is named \"r.by.rotted\"");
    free(json);
    free(problems);
    free(job);
}

static void two_bounds_hold_one_fact(void **state)
{
    (void)state;
    assert_row_found("per = \"decks\", fact = \"decks[].spacing_in\",\n"
                     "meets = { \"r.least\", \"test.nails_most\" }",
                     "pass", "Found 6 in; demanded at most 6 in and at least 3 in.");
}

static void what_is_measured_counts_from_its_stage_on(void **state)
{
    (void)state;
    static const char BODY[] =
        "per = \"decks\", fact = \"decks[].spacing_in\",\n"
        "measured = \"decks[].measured_spacing_in\", meets = \"test.nails_most\",\n"
        "share = \"r.share\", over = \"r.over\"";
    assert_row_found(BODY, "pass", "Found 6 in");
    char *job = text_with(SMALL_JOB, "\"spacing_in\": 6",
                          "\"spacing_in\": 6, \"measured_spacing_in\": [6, 6, 6.5]");
    char *problems, *json = row_report(BODY, job, "deck", &problems);
    assert_string_equal(problems, "");
    assert_member(json, "test.it", 0, "outcome", "warn");
    assert_member_has(json, "test.it", 0, "work", "3 measured: widest 6 1/2 in; 1 over 6 in");
    free(json);
    free(problems);
    free(job);
    json = row_report(BODY, SMALL_JOB, "deck", &problems);
    assert_member(json, "test.it", 0, "outcome", "open");
    assert_member_has(json, "test.it", 0, "cite", "\"section\":\"2.1\""); /* who asks */
    free(json);
    free(problems);
}

/* Exact is the change between inches and feet; it is said. */
static void feet_may_be_held_against_inches(void **state)
{
    (void)state;
    char *problems,
        *json = row_report("per = \"decks\", fact = \"decks[].spacing_in\", meets = \"r.least_ft\"",
                           SMALL_JOB, NULL, &problems);
    assert_string_equal(problems, "");
    assert_member(json, "test.it", 0, "outcome", "pass");
    assert_member(json, "test.it", 0, "work", "[\"6 in = 0.5 ft\"]");
    assert_member(json, "test.it", 0, "found", "{\"value\":0.5,\"unit\":\"ft\"}");
    free(json);
    free(problems);
}

static void mistakes_are_errors_of_the_file(void **state)
{
    (void)state;
    static const struct {
        const char *body, *says;
    } rows[] = {
        {"fact = \"existing.layer\", meets = \"test.seen\"",
         "there is no field \"existing.layer\" (did you mean \"existing.layers\"?)"},
        {"fact = \"existing.layers\", meets = \"test.sen\"",
         "no figure is named \"test.sen\" (did you mean \"test.seen\"?)"},
        {"fact = \"decks[].spacing_in\", meets = \"test.nails_most\"",
         "is in the list \"decks\": say per = \"decks\""},
        {"per = \"decks\", fact = \"decks[].spacing_in\", meets = \"r.mph\"",
         "decks[].spacing_in is in in, and figure \"r.mph\" in mph"},
        {"fact = \"existing.layers\", meets = \"r.steep\"",
         "figure \"r.steep\" has the sense \"from\": it decides who is meant"},
        {"fact = \"existing.condition\", meets = \"test.seen\"", "they cannot be compared"},
        {"fact = \"existing.layers\", meets = \"test.kinds\"", "they cannot be compared"},
        {"fact = \"existing.layers\"", "meets which figure? existing.layers is not yes or no"},
        {"fact = \"existing.slippery\"", "shown: what must be shown"},
        {"fact = \"existing.slippery\", shown = \"it\"", "no figure asks for this duty"},
        {"meets = \"test.seen\"", "has no fact"},
        {"fact = \"existing.layers\", meets = \"test.seen\", when = { on \"test.seen\" }",
         "figure \"test.seen\" is a number; here one that is true or false is wanted"},
        {"fact = \"existing.layers\", meets = \"test.seen\",\n"
         "when = { is { \"existing.condition\", \"sond\" } }",
         "existing.condition is never \"sond\"; the nearest is \"sound\""},
        {"fact = \"existing.layers\", meets = \"test.seen\",\n"
         "when = { is { \"existing.layers\", 1 } }",
         "has no choices"},
        {"fact = \"existing.layers\", meets = \"test.seen\",\n"
         "when = { meant { \"existing.layers\", \"r.steep\" } }",
         "and figure \"r.steep\" in"},
        {"fact = \"existing.layers\", meets = \"test.seen\", when = { 5 }", "not number"},
        {"fact = \"existing.layers\", meets = \"test.seen\", when = { either { } }",
         "holds no condition"},
        {"fact = \"existing.layers\", meets = \"test.seen\", share = \"r.share\"",
         "share and over are of measured spacings"},
        {"fact = \"existing.layers\", meets = \"test.seen\", measured = \"existing.layers\"",
         "existing.layers is not a measured fact"},
        {"fact = \"existing.layers\", meats = \"test.seen\"",
         "unknown key \"meats\"; did you mean \"meets\"?"},
    };
    for (size_t i = 0; i < sizeof(rows) / sizeof(rows[0]); i++)
        assert_row_refused(rows[i].body, rows[i].says);
}

/* The figures past a switch stand with the places that turn it on. */
static void past_a_switch_that_is_off_figures_may_lack(void **state)
{
    (void)state;
    assert_row_found("when = { on { \"r.off\", otherwise = \"not here\" } },\n"
                     "fact = \"existing.layers\", meets = \"r.elsewhere\"",
                     "not_applicable", "not here");
    assert_row_refused(
        "when = { on \"r.on\" }, fact = \"existing.layers\", meets = \"r.elsewhere\"",
        "no figure is named \"r.elsewhere\"");
    assert_row_refused("when = { either { on \"r.off\", on \"r.on\" } },\n"
                       "fact = \"existing.layers\", meets = \"r.elsewhere\"",
                       "no figure is named \"r.elsewhere\"");
}

/* A rule with a judge of its own may say of whom it speaks as a row does. */
static void a_judge_may_have_conditions(void **state)
{
    (void)state;
    static const struct {
        const char *when, *outcome, *says;
    } rows[] = {
        {"when = { on \"r.on\" }", "pass", "Found 1"},
        {"when = { on { \"r.off\", otherwise = \"not here\" } }", "not_applicable", "not here"},
        {"when = { is \"existing.slippery\" }", "open", "slippery"},
        {"when = { function() return nil + 1 end }", "broken", "arithmetic"},
    };
    for (size_t i = 0; i < sizeof(rows) / sizeof(rows[0]) + 1; i++) {
        char rules[600];
        const bool both = i == sizeof(rows) / sizeof(rows[0]);
        snprintf(
            rules, sizeof(rules),
            "rule \"test.it\" { " SMALL_READS
            " title = \"It\", stage = \"deck\", mend = \"m\", %s,\n"
            "  judge = function(job, figure)\n"
            "    return at_most(job.existing.layers, figure \"test.seen\", \"layers\") end }\n",
            both ? "when = { on \"r.on\" }, applies = function() return true end" : rows[i].when);
        home_write(row_law_home(), "rules/test.lua", rules);
        eavemark *handle = eavemark_open(row_law_home()->path);
        struct outcome_of_check outcome = home_check(handle, SMALL_JOB, "example/r", NULL, NULL);
        if (both) {
            assert_non_null(strstr(outcome.problems, "says both when and applies"));
        } else {
            assert_member(outcome.json, "test.it", 0, "outcome", rows[i].outcome);
            assert_member_has(outcome.json, "test.it", 0, "says", rows[i].says);
        }
        outcome_free(&outcome);
        eavemark_close(handle);
    }
}

/* rules/common.lua is run first; what it shares nobody can change. */
static void rule_files_share_names(void **state)
{
    (void)state;
    home_write(
        row_law_home(), "rules/common.lua",
        "common { is_sound = is { \"existing.condition\", \"sound\" }, LIST = { \"a\", { \"b\" } },\n"
        "  twice = function(n) return 2 * n end }\n");
    assert_row_found("when = { is_sound }, fact = \"existing.layers\", meets = \"test.seen\"",
                     "pass", "Found 1");
    assert_row_found("when = { function() return twice(#LIST) == 4 and LIST[2][1] == \"b\" end },\n"
                     "fact = \"existing.layers\", meets = \"test.seen\"",
                     "pass", "Found 1");
    static const char *const WRITES[] = {"is_sound[2] = \"rotted\"", "LIST[1] = \"c\"",
                                         "LIST[2][1] = \"c\"", "twice = nil"};
    for (size_t i = 0; i < sizeof(WRITES) / sizeof(WRITES[0]); i++) {
        char rules[200];
        home_write(row_law_home(), "rules/other.lua", WRITES[i]);
        char *problems, *json = row_report("fact = \"existing.layers\", meets = \"test.seen\"",
                                           SMALL_JOB, NULL, &problems);
        assert_null(json);
        assert_non_null(strstr(problems, "rules/other.lua:1:"));
        free(problems);
        snprintf(rules, sizeof(rules), "-- nothing\n");
        home_write(row_law_home(), "rules/other.lua", rules);
    }
    home_write(row_law_home(), "rules/other.lua", "common { more = 1 }\n");
    char *problems, *json = row_report("fact = \"existing.layers\", meets = \"test.seen\"",
                                       SMALL_JOB, NULL, &problems);
    assert_null(json);
    assert_non_null(strstr(problems, "common { } belongs in rules/common.lua"));
    free(problems);
    home_write(row_law_home(), "rules/other.lua", "-- nothing\n");
    home_write(row_law_home(), "rules/common.lua", "common { at_most = 1 }\n");
    json = row_report("fact = \"existing.layers\", meets = \"test.seen\"", SMALL_JOB, NULL,
                      &problems);
    assert_null(json);
    assert_non_null(strstr(problems, "there is a \"at_most\" already"));
    free(problems);
}

int main(void)
{
#define in_home(test) cmocka_unit_test_setup_teardown(test, row_law_make, row_law_remove)
    const struct CMUnitTest tests[] = {
        in_home(a_fact_meets_a_figure),
        in_home(the_figure_met_is_the_maker),
        in_home(conditions_say_of_whom_it_speaks),
        in_home(a_duty_is_asked_for_by_its_switch),
        in_home(one_figure_for_each_word),
        in_home(two_bounds_hold_one_fact),
        in_home(what_is_measured_counts_from_its_stage_on),
        in_home(feet_may_be_held_against_inches),
        in_home(mistakes_are_errors_of_the_file),
        in_home(past_a_switch_that_is_off_figures_may_lack),
        in_home(a_judge_may_have_conditions),
        in_home(rule_files_share_names),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
