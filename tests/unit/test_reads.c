/* What functions declare that they read: looked up when the file is loaded, lent by helpers,
 * and nothing else may be read. */
#include "support/report_words.h"
#include "support/small_law.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#include <cmocka.h>

/* What came of a job under one rule of this `reads`, and what its judge returns; shared goes
 * into common.lua. */
static struct outcome_of_check judged(const char *shared, const char *reads, const char *line)
{
    struct temporary_home home;
    char text[1000];
    home_make(&home);
    small_law_write(&home);
    home_write(&home, "rules/common.lua", shared);
    snprintf(text, sizeof(text),
             "rule 'test.it' { title = 'It', stage = 'permit', mend = 'Mend it.', %s\n"
             "  judge = function(job, figure)\n"
             "    return %s\n"
             "  end }\n",
             reads, line);
    home_write(&home, "rules/test.lua", text);
    eavemark *handle = eavemark_open(home.path);
    struct outcome_of_check outcome = home_check(handle, SMALL_JOB, NULL, NULL, NULL);
    eavemark_close(handle);
    home_remove(&home);
    return outcome;
}

#define LAYERS "at_most(job.existing.layers, figure 'test.most', 'layers')"

static void assert_judged(const char *shared, const char *reads, const char *line,
                          const char *outcome, const char *says)
{
    struct outcome_of_check came = judged(shared, reads, line);
    assert_string_equal(came.problems, "");
    assert_member(came.json, "test.it", 0, "outcome", outcome);
    assert_member_has(came.json, "test.it", 0, "says", says);
    outcome_free(&came);
}

static void what_is_declared_may_be_read(void **state)
{
    (void)state;
    assert_judged("", "reads = { facts = { 'existing.layers' }, figures = { 'test.most' } },",
                  LAYERS, "pass", "Found 1 layer");
    assert_judged("", "reads = { facts = { 'existing.layers' }, figures = { 'test.*' } },", LAYERS,
                  "pass", "Found 1 layer");
    /* The list and the reference on the way need not be named. */
    assert_judged(
        "", "reads = { facts = { 'roof.slopes[].deck.name' }, figures = { 'test.most' } },",
        "at_most(#job.roof.slopes[1].deck.name, figure 'test.most', 'layers')", "fail", "Found 6");
}

/* Broken, never passed: with the line that reads it, what to add, and to which rule. */
static void what_is_not_declared_breaks_the_rule(void **state)
{
    (void)state;
    static const struct {
        const char *reads, *line, *says;
    } rows[] = {
        {"", LAYERS,
         "rules/test.lua:3: reads the fact \"existing.layers\", which rule \"test.it\" "
         "(rules/test.lua:1) does not declare: add it, reads = { facts = { \"existing.layers\" } }"},
        {"reads = { facts = { 'existing.layers' } },", LAYERS,
         "reads the figure \"test.most\", which rule \"test.it\" (rules/test.lua:1) does not "
         "declare: add it, reads = { figures = { \"test.most\" } }"},
        {"reads = { figures = { 'test.most' } },",
         "at_most(known(job.existing, 'layers') and 1 or 2, figure 'test.most', 'layers')",
         "reads the fact \"existing.layers\""},
        {"reads = { figures = { 'test.most' } },",
         "at_most(#job.roof.slopes, figure 'test.most', 'layers')",
         "reads the fact \"roof.slopes\""},
        {"reads = { facts = { 'roof.slopes' } },", "as_written(job.roof.slopes[1], 'pitch')",
         "reads the fact \"roof.slopes[].pitch\""},
    };
    for (size_t i = 0; i < sizeof(rows) / sizeof(rows[0]); i++)
        assert_judged("", rows[i].reads, rows[i].line, "broken", rows[i].says);
}

/* A function among the conditions, and what says of whom the rule speaks. */
static void every_function_is_held_to_it(void **state)
{
    (void)state;
    assert_judged("",
                  "reads = { facts = { 'existing.layers' }, figures = { 'test.most' } },\n"
                  "  when = { function(job) return job.existing.condition == 'sound' end },",
                  LAYERS, "broken", "reads the fact \"existing.condition\"");
    assert_judged("",
                  "reads = { facts = { 'existing.layers' }, figures = { 'test.most' } },\n"
                  "  applies = function(job) return job.existing.condition == 'sound' end,",
                  LAYERS, "broken", "reads the fact \"existing.condition\"");
}

#define SHARED                                                                          \
    "local layers = reads({ facts = { 'existing.layers' } }, function(job)\n"           \
    "  return job.existing.layers\n"                                                    \
    "end)\n"                                                                            \
    "local sound = reads({ layers, facts = { 'existing.condition' } }, function(job)\n" \
    "  return job.existing.condition == 'sound' and layers(job) > 0\n"                  \
    "end)\n"                                                                            \
    "local careless = reads({ facts = { 'existing.condition' } }, function(job)\n"      \
    "  return job.existing.kinds\n"                                                     \
    "end)\n"                                                                            \
    "common { layers = layers, sound = sound, careless = careless, of = { layers = layers } }\n"

/* A helper says once what it reads; whoever lists it, or is made of it, need not. */
static void helpers_lend_what_they_read(void **state)
{
    (void)state;
    assert_judged(SHARED, "reads = { layers, figures = { 'test.most' } },",
                  "at_most(layers(job), figure 'test.most', 'layers')", "pass", "Found 1 layer");
    assert_judged(SHARED, "reads = { of.layers, figures = { 'test.most' } },",
                  "at_most(of.layers(job), figure 'test.most', 'layers')", "pass", "Found 1 layer");
    assert_judged(SHARED, "when = { sound }, reads = { figures = { 'test.most' } },",
                  "at_most(layers(job), figure 'test.most', 'layers')", "pass", "Found 1 layer");
}

static void says_which_helper_to_list(void **state)
{
    (void)state;
    assert_judged(SHARED, "reads = { figures = { 'test.most' } },",
                  "at_most(layers(job), figure 'test.most', 'layers')", "broken",
                  "does not declare: add the helper to it, reads = { layers }");
    /* The one that the rule calls, not the one within. */
    assert_judged(SHARED, "reads = { facts = { 'existing.condition' } },",
                  "shown(sound(job), 'it')", "broken", "reads = { sound }");
    /* What the helper itself forgot is its own to declare. */
    assert_judged(SHARED, "reads = { careless },", "shown(#careless(job) > 0, 'it')", "broken",
                  "add it to the helper's at rules/common.lua:7, reads({ facts = { "
                  "\"existing.kinds\" } }, ...)");
}

static void a_slip_is_an_error_of_the_file(void **state)
{
    (void)state;
    static const struct {
        const char *reads, *says;
    } rows[] = {
        {"reads = { facts = { 'existing.layer' } },",
         "rules/test.lua:1: \"test.it\": reads: there is no field \"existing.layer\" (did you mean "
         "\"existing.layers\"?)"},
        {"reads = { facts = { 'roof.slopes.pitch' } },", "there is no field \"roof.slopes.pitch\""},
        {"reads = { figures = { 'test.mots' } },",
         "no figure is named \"test.mots\" (did you mean \"test.most\"?)"},
        {"reads = { figures = { 'tset.*' } },", "no figure's name begins as \"tset.*\" does"},
        {"reads = { fact = { 'existing.layers' } },", "unknown key \"fact\""},
        {"reads = { facts = 'existing.layers' },", "facts and figures are lists of names"},
        {"reads = { facts = { 7 } },", "facts and figures are lists of names"},
        {"reads = 'existing.layers',", "reads is written { helper, facts = { }, figures = { } }"},
        {"reads = { 'existing.layers' },", "is a helper that declares what it reads"},
        {"reads = { function(job) end },", "is a helper that declares what it reads"},
        {"reads = { behind = { { 'test.required', 'test.mots' } } },", "did you mean"},
        {"reads = { behind = 'test.required' },", "behind is a list"},
        {"reads = { facts_of_some_places = { 'site.zone' } },", "there is no field \"site.zone\""},
    };
    for (size_t i = 0; i < sizeof(rows) / sizeof(rows[0]); i++) {
        struct outcome_of_check came = judged("", rows[i].reads, LAYERS);
        assert_int_equal(came.status, EAVEMARK_BROKEN);
        assert_has(came.problems, rows[i].says);
        outcome_free(&came);
    }
    struct outcome_of_check came = judged("local f = reads({ facts = { 'existing.layer' } }, "
                                          "function() end)\n",
                                          "", LAYERS);
    assert_has(came.problems, "rules/common.lua:1: reads: there is no field \"existing.layer\"");
    outcome_free(&came);
}

/* What only some places have need not be here. */
static void what_other_places_have_may_lack(void **state)
{
    (void)state;
    assert_judged("",
                  "reads = { facts = { 'existing.layers' }, figures = { 'test.most' },\n"
                  "  facts_of_some_places = { 'existing.zone' } },",
                  LAYERS, "pass", "Found 1 layer");
    assert_judged("",
                  "reads = { facts = { 'existing.layers' }, figures = { 'test.most' },\n"
                  "  facts_of_some_places = { 'existing.condition' } },",
                  "at_most(job.existing.condition == 'sound' and 1 or 9, figure 'test.most', "
                  "'layers')",
                  "pass", "Found 1 layer");
}

/* A duty is made by what turns it on, also where a function looks at the switch. */
static void a_switch_in_a_function_makes_the_duty(void **state)
{
    (void)state;
    struct temporary_home home;
    home_make(&home);
    small_law_write(&home);
    home_write(&home, "rules/test.lua",
               "demand 'test.it' { title = 'It', stage = 'permit', mend = 'Mend it.',\n"
               "  reads = { figures = { 'test.required', 'test.most' } },\n"
               "  when = { function(job, figure)\n"
               "    return figure 'test.required' and figure 'test.most' > 0 end },\n"
               "  fact = 'existing.condition', wants = { 'sound' }, shown = 'a sound deck' }\n");
    eavemark *handle = eavemark_open(home.path);
    struct outcome_of_check came = home_check(handle, SMALL_JOB, NULL, NULL, NULL);
    assert_string_equal(came.problems, "");
    assert_member(came.json, "test.it", 0, "outcome", "pass");
    assert_member(came.json, "test.it", 0, "figures", "[\"test.required\"]");
    outcome_free(&came);
    eavemark_close(handle);
    home_remove(&home);
}

/* A quantity may read any fact, and figures that its file names for all. */
static void quantities_ask_for_what_their_file_names(void **state)
{
    (void)state;
    static const char QUANTITY[] =
        "quantity 'sheets' { title = 'Sheets', amount = function(job, figure)\n"
        "  return amount { exact = job.existing.layers * figure 'test.most', unit = 'sheets' }\n"
        "end }\n";
    for (int named = 0; named < 2; named++) {
        struct temporary_home home;
        char text[500], *report, *problems;
        const struct eavemark_request request = {
            .name = "job.json", .text = SMALL_JOB, .length = strlen(SMALL_JOB)};
        home_make(&home);
        small_law_write(&home);
        snprintf(text, sizeof(text), "%s%s",
                 named ? "quantities_read { figures = { 'test.most' } }\n" : "", QUANTITY);
        home_write(&home, "rules/test.lua", text);
        eavemark *handle = eavemark_open(home.path);
        eavemark_takeoff(handle, &request, EAVEMARK_JSON, &report, &problems);
        if (named)
            assert_null(strstr(report, "erred"));
        else
            assert_has(report, "does not declare: add it to those of the file, quantities_read");
        free(report);
        free(problems);
        eavemark_close(handle);
        home_remove(&home);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(what_is_declared_may_be_read),
        cmocka_unit_test(what_is_not_declared_breaks_the_rule),
        cmocka_unit_test(every_function_is_held_to_it),
        cmocka_unit_test(helpers_lend_what_they_read),
        cmocka_unit_test(says_which_helper_to_list),
        cmocka_unit_test(a_slip_is_an_error_of_the_file),
        cmocka_unit_test(what_other_places_have_may_lack),
        cmocka_unit_test(a_switch_in_a_function_makes_the_duty),
        cmocka_unit_test(quantities_ask_for_what_their_file_names),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
