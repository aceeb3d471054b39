/* What a row looks at, and what that must meet, where they are not one fact and one figure:
 * reckoned, named by a function, another fact, or free up to a figure. */
#include "support/row_law.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

/* A number that is reckoned says its unit, and is held against a figure as a fact is. */
static void a_reckoned_number_meets_a_figure(void **state)
{
    (void)state;
    assert_row_found("per = \"decks\", unit = \"ft\", meets = \"test.lap_least\",\n"
                     "found = function(job, figure, deck) return deck.spacing_in / 12 end",
                     "pass", "Found 6 in; demanded at least 6 in.");
    assert_row_found("unit = \"in\", meets = { \"r.least\", \"test.nails_most\" },\n"
                     "found = function() return 7 end",
                     "fail", "Found 7 in; demanded at most 6 in");
    assert_row_found("unit = \"in\", meets = \"r.least\",\n"
                     "found = function(job) return job.existing.slippery and 1 or 2 end",
                     "open", "/existing/slippery");
    assert_row_found("unit = \"in\", meets = \"r.least\", found = function() return \"7\" end",
                     "broken", "found must give a finite number");
    assert_row_found("unit = \"in\", meets = \"r.least\", found = function() return 0 / 0 end",
                     "broken", "found must give a finite number");
    assert_row_refused("unit = \"mph\", meets = \"r.least\", found = function() return 7 end",
                       "found is in mph, and figure \"r.least\" in in");
    assert_row_refused("meets = \"r.least\", found = function() return 7 end", "says its unit");
    assert_row_refused("unit = \"in\", fact = \"existing.layers\", meets = \"test.seen\"",
                       "unit is that of found");
    assert_row_refused("unit = \"in\", meets = \"r.kinds\", found = function() return 7 end",
                       "found is a number, and figure \"r.kinds\" is a set");
    assert_row_refused("unit = \"in\", found = function() return 7 end", "meets which figure?");
}

/* A function may choose among figures, of which each is looked up at loading. */
static void a_function_names_one_of_the_figures(void **state)
{
    (void)state;
    static const char BODY[] =
        "per = \"roof.slopes\", fact = \"existing.layers\",\n"
        "meets = { \"test.seen\", \"r.by.sound\", which = function(job, figure, slope)\n"
        "  return slope.pitch < 4 and \"r.by.sound\" or \"test.seen\" end }";
    char *problems, *json = row_report(BODY, SMALL_JOB, NULL, &problems);
    assert_string_equal(problems, "");
    assert_member_has(json, "test.it", 0, "says", "demanded at most 3 layers");
    assert_member_has(json, "test.it", 1, "says", "demanded at most 2 layers");
    assert_member(json, "test.it", 1, "figures", "[\"r.by.sound\"]");
    free(problems);
    free(json);
    assert_row_found(
        "fact = \"existing.layers\",\n"
        "meets = { \"test.seen\", \"r.by.sound\", which = function() return \"r.on\" end }",
        "broken", "which gives \"r.on\", which meets does not list");
    assert_row_found("fact = \"existing.layers\",\n"
                     "meets = { \"test.seen\", \"r.by.sound\", which = function() end }",
                     "broken", "which must give the name of a figure");
    assert_row_refused("fact = \"existing.layers\",\n"
                       "meets = { \"test.seen\", \"r.mph\", which = function() end }",
                       "existing.layers is in layers, and figure \"r.mph\" in mph");
    assert_row_refused("fact = \"existing.layers\",\n"
                       "meets = { \"test.seen\", \"r.nothing\", which = function() end }",
                       "no figure is named \"r.nothing\"");
    assert_row_refused(
        "fact = \"existing.layers\", meets = { \"test.seen\", which = function() end }",
        "chooses among");
}

/* A limit may be reckoned from figures; the one that has its value made it, or all. */
static void a_limit_may_be_reckoned(void **state)
{
    (void)state;
    static const char BODY[] =
        "per = \"decks\", fact = \"decks[].spacing_in\",\n"
        "meets = { \"r.table.*\", unit = \"in\", limit = function(job, figure)\n"
        "  return math.min(figure \"r.table.a\", figure \"r.table.b\") end }";
    char *problems, *json = row_report(BODY, SMALL_JOB, NULL, &problems);
    assert_string_equal(problems, "");
    assert_member(json, "test.it", 0, "outcome", "pass");
    assert_member_has(json, "test.it", 0, "says", "Found 6 in; demanded at most 6 in.");
    assert_member(json, "test.it", 0, "figures", "[\"r.table.a\"]");
    free(json);
    free(problems);
    json = row_report("per = \"decks\", fact = \"decks[].spacing_in\",\n"
                      "meets = { \"r.table.a\", \"r.table.b\", unit = \"in\",\n"
                      "  limit = function(job, figure)\n"
                      "    return (figure \"r.table.a\" + figure \"r.table.b\") / 2 end }",
                      SMALL_JOB, NULL, &problems);
    assert_member(json, "test.it", 0, "outcome", "warn"); /* one of them is from memory */
    assert_member(json, "test.it", 0, "figures", "[\"r.table.a\",\"r.table.b\"]");
    free(json);
    free(problems);
    /* One that is not listed makes its own value, and lends its doubt. */
    json = row_report("per = \"decks\", fact = \"decks[].spacing_in\",\n"
                      "meets = { \"r.table.a\", unit = \"in\", limit = function(job, figure)\n"
                      "  return math.max(figure \"r.table.a\", figure \"r.table.b\") end }",
                      SMALL_JOB, NULL, &problems);
    assert_member(json, "test.it", 0, "outcome", "warn");
    assert_member(json, "test.it", 0, "figures", "[\"r.table.b\"]");
    free(json);
    free(problems);
}

/* Figures of a limit may stand only with the places that have a switch on. */
static void a_limit_may_have_figures_behind_a_switch(void **state)
{
    (void)state;
#define BEHIND(behind)                                                                          \
    "per = \"decks\", fact = \"decks[].spacing_in\", meets = { \"r.table.a\", unit = \"in\",\n" \
    " limit = function(job, figure) return figure \"r.table.b\" end, behind = " behind " }"
    char *problems,
        *json = row_report(BEHIND("{ { \"r.on\", \"r.table.b\" } }"), SMALL_JOB, NULL, &problems);
    assert_string_equal(problems, "");
    assert_member(json, "test.it", 0, "figures", "[\"r.table.b\"]");
    free(json);
    free(problems);
    assert_row_found(BEHIND("{ { \"r.off\", \"r.table.c\", \"r.tables.*\" } }"), "warn",
                     "demanded at most 8 in");
    assert_row_refused(BEHIND("{ { \"r.on\", \"r.table.c\" } }"),
                       "no figure is named \"r.table.c\"");
    assert_row_refused(BEHIND("{ { \"r.on\", \"r.tables.*\" } }"),
                       "no figure's name begins with \"r.tables.\"");
    assert_row_refused(BEHIND("{ { \"r.of\", \"r.table.c\" } }"), "no figure is named \"r.of\"");
    assert_row_refused(BEHIND("{ { \"r.share\", \"r.table.b\" } }"),
                       "here one that is true or false is wanted");
    assert_row_refused(BEHIND("{ \"r.on\", \"r.table.b\" }"), "behind is a list");
#undef BEHIND
}

static void what_is_reckoned_must_be_comparable(void **state)
{
    (void)state;
#define OF_SPACING(limit) "per = \"decks\", fact = \"decks[].spacing_in\", meets = { " limit " }"
    assert_row_found(
        OF_SPACING("\"r.table.a\", unit = \"in\", limit = function() return 1 / 0 end"), "broken",
        "limit must give a finite number");
    assert_row_found(
        OF_SPACING("\"r.table.a\", unit = \"in\", limit = function() return \"6\" end"), "broken",
        "cannot be compared");
    assert_row_found(OF_SPACING("\"r.table.a\", unit = \"in\", limit = function() end"), "broken",
                     "what is reckoned is");
    assert_row_found(OF_SPACING("\"r.table.a\", unit = \"in\", sense = \"one_of\",\n"
                                "limit = function() return 6 end"),
                     "broken", "in the way that sense says");
    assert_row_found(
        OF_SPACING("\"r.table.a\", unit = \"in\",\n"
                   "limit = function(job) return job.existing.slippery and 1 or 2 end"),
        "open", "/existing/slippery");
    assert_row_refused(OF_SPACING("\"r.table.a\", unit = \"ft\", limit = function() return 6 end"),
                       "what is looked at is in in, and what it must meet in ft");
    assert_row_refused(OF_SPACING("\"r.table.c\", unit = \"in\", limit = function() return 6 end"),
                       "no figure is named \"r.table.c\"");
    assert_row_refused(OF_SPACING("\"r.tables.*\", unit = \"in\", limit = function() return 6 end"),
                       "no figure's name begins with \"r.tables.\"");
    assert_row_refused(OF_SPACING("unit = \"in\", limit = function() return 6 end"),
                       "how must it be met?");
    assert_row_refused(OF_SPACING("\"r.table.a\", \"r.least\", unit = \"in\",\n"
                                  "limit = function() return 6 end"),
                       "its figures bind in two ways, and figure \"r.least\" is at_least");
    assert_row_refused(OF_SPACING("\"r.table.a\", unit = \"in\", sense = \"over\",\n"
                                  "limit = function() return 6 end"),
                       "binds nothing");
    assert_row_refused(OF_SPACING("\"r.table.a\", unit = \"in\", sense = 5,\n"
                                  "limit = function() return 6 end"),
                       "sense is a word");
    assert_row_refused(OF_SPACING("\"r.table.a\", units = \"in\", limit = function() return 6 end"),
                       "has no other keys");
#undef OF_SPACING
}

/* A list of measurements is no one value that a word or an exact number could be met by. */
static void a_measured_list_meets_a_bound(void **state)
{
    (void)state;
    static const struct {
        const char *limit, *outcome, *says;
    } rows[] = {
        {"\"r.table.a\", unit = \"in\", limit = function(job, figure) return figure \"r.table.a\" end",
         "pass", "6 in"},
        {"\"r.table.a\", unit = \"in\", limit = function(job, figure) return figure \"r.table.a\" - 1 end",
         "fail", "5 in"},
        {"\"r.table.a\", unit = \"in\", limit = function() return \"x\" end", "broken", "compared"},
        {"\"r.table.a\", unit = \"in\", limit = function() return true end", "broken", "compared"},
        {"\"r.table.a\", unit = \"in\", sense = \"equals\", limit = function() return 6 end",
         "broken", "sense"},
    };
    char *at_deck = text_with(SMALL_JOB, "\"stage\": \"permit\"", "\"stage\": \"deck\"");
    char *job = text_with(at_deck, "\"spacing_in\": 6", "\"measured_spacing_in\": [5, 6]");
    for (size_t i = 0; i < sizeof(rows) / sizeof(rows[0]); i++) {
        char body[400];
        snprintf(body, sizeof(body),
                 "per = \"decks\", fact = \"decks[].measured_spacing_in\",\n meets = { %s }",
                 rows[i].limit);
        assert_row_of(body, job, rows[i].outcome, rows[i].says);
    }
    free(job);
    free(at_deck);
    assert_row_refused("per = \"decks\", fact = \"decks[].spacing_in\",\n"
                       "measured = \"decks[].measured_spacing_in\", meets = \"r.least\",\n"
                       "share = \"r.share\", over = \"r.over\"",
                       "share is of spacings that are held at_most");
}

static void a_fact_may_meet_another(void **state)
{
    (void)state;
    static const char BODY[] =
        "fact = \"existing.layers\",\n"
        "meets = { \"r.on\", fact = \"existing.allowed\", sense = \"at_most\" }";
    assert_row_found(BODY, "open", "/existing/allowed");
    char *job = text_with(SMALL_JOB, "\"layers\": 1,", "\"layers\": 1, \"allowed\": 0,");
    assert_row_of(BODY, job, "broken", "compared without asking for a figure");
    free(job);
    static const char ASKED[] = "when = { on \"r.on\" }, fact = \"existing.layers\",\n"
                                "meets = { fact = \"existing.allowed\", sense = \"at_most\" }";
    job = text_with(SMALL_JOB, "\"layers\": 1,", "\"layers\": 1, \"allowed\": 0,");
    assert_row_of(ASKED, job, "fail", "Found 1 layer; demanded at most 0 layers");
    free(job);
    job = text_with(SMALL_JOB, "\"layers\": 1,", "\"layers\": 1, \"allowed\": 1,");
    assert_row_of(ASKED, job, "pass", "Found 1 layer; demanded at most 1 layer");
    free(job);
    assert_row_refused("fact = \"existing.layers\", meets = { fact = \"existing.allowed\" }",
                       "how must it be met?");
    assert_row_refused("per = \"decks\", fact = \"decks[].spacing_in\",\n"
                       "meets = { fact = \"existing.allowed\", sense = \"at_most\" }",
                       "in in, and what it must meet in layers");
    assert_row_refused("fact = \"existing.layers\",\n"
                       "meets = { fact = \"existing.alowed\", sense = \"at_most\" }",
                       "did you mean \"existing.allowed\"?");
}

/* Up to so much a job is free; whether exactly so much is free no longer, the place says. */
static void a_job_may_be_free_up_to_a_figure(void **state)
{
    (void)state;
    static const struct {
        const char *layers, *at, *outcome;
    } rows[] = {
        {"1", "", "warn"}, /* the figure is from memory */
        {"2", "", "warn"},
        {"2", ", at_counts = \"r.off\"", "warn"},
        {"2", ", at_counts = \"r.at\"", "fail"},
        {"3", "", "fail"},
    };
    for (size_t i = 0; i < sizeof(rows) / sizeof(rows[0]); i++) {
        char body[200], layers[40];
        snprintf(layers, sizeof(layers), "\"layers\": %s,", rows[i].layers);
        snprintf(body, sizeof(body), "fact = \"existing.layers\", up_to = \"r.free\"%s",
                 rows[i].at);
        char *job = text_with(SMALL_JOB, "\"layers\": 1,", layers);
        assert_row_of(body, job, rows[i].outcome, "demanded at most 2 layers");
        free(job);
    }
    assert_row_refused("fact = \"existing.layers\", up_to = \"test.seen\"",
                       "up_to: figure \"test.seen\" is at_most; one that says over how much");
    assert_row_refused("fact = \"existing.layers\", up_to = \"r.free\", meets = \"test.seen\"",
                       "meets, or up_to: not both");
    assert_row_refused("fact = \"existing.layers\", meets = \"test.seen\", at_counts = \"r.at\"",
                       "at_counts is of up_to");
    assert_row_refused("fact = \"existing.layers\", up_to = \"r.free\", at_counts = \"r.share\"",
                       "here one that is true or false is wanted");
}

/* Whether a duty is done may be reckoned; only yes or no says it. */
static void a_reckoned_duty_is_yes_or_no(void **state)
{
    (void)state;
#define DUTY(found) "when = { on \"r.on\" }, shown = \"it\", found = function(job) " found " end"
    assert_row_found(DUTY("return job.existing.layers == 1"), "pass", "Found: yes");
    assert_row_found(DUTY("return job.existing.layers == 2"), "fail", "Found: no");
    assert_row_found(DUTY("return job.existing.slippery"), "open", "/existing/slippery");
    assert_row_found(DUTY("return 1") ", wants = false", "broken", "found must give yes or no");
    assert_row_found(DUTY("return \"no\"") ", wants = false", "broken",
                     "found must give yes or no");
    assert_row_found(DUTY("") ", wants = false", "broken", "what is reckoned is");
#undef DUTY
}

/* Without a unit what is reckoned is a word, or a set of them. */
static void a_reckoned_word_meets_a_set(void **state)
{
    (void)state;
#define WORD(found) "meets = \"test.conditions\", found = function(job) " found " end"
    assert_row_found(WORD("return \"sound\""), "pass", "Found sound");
    assert_row_found(WORD("return \"rotted\""), "fail", "Found rotted");
    assert_row_found(WORD("return { \"sound\", \"rotted\" }"), "fail", "Found sound, rotted");
    assert_row_found(WORD("return true"), "broken", "cannot be compared");
    assert_row_found(WORD("return 4"), "broken", "cannot be compared");
    assert_row_found(WORD("return { {} }"), "broken", "a set holds texts only");
#undef WORD
}

int main(void)
{
#define in_home(test) cmocka_unit_test_setup_teardown(test, row_law_make, row_law_remove)
    const struct CMUnitTest tests[] = {
        in_home(a_reckoned_number_meets_a_figure),
        in_home(a_function_names_one_of_the_figures),
        in_home(a_limit_may_be_reckoned),
        in_home(a_limit_may_have_figures_behind_a_switch),
        in_home(what_is_reckoned_must_be_comparable),
        in_home(a_measured_list_meets_a_bound),
        in_home(a_fact_may_meet_another),
        in_home(a_job_may_be_free_up_to_a_figure),
        in_home(a_reckoned_duty_is_yes_or_no),
        in_home(a_reckoned_word_meets_a_set),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
