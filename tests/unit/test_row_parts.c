/* What a row compares beside its one fact: as well, instead, or by choice; duties, what
 * leaves it open, what it says; and that a batch remembers nothing wrong of it. */
#include "support/row_law.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

/* All that is compared must be met; a missing fact of any makes the whole open. */
static void more_may_be_compared_as_well(void **state)
{
    (void)state;
    assert_row_found("fact = \"existing.layers\", meets = \"test.seen\",\n"
                     "also = { { fact = \"existing.condition\", meets = \"test.conditions\" } }",
                     "pass", "Found sound; demanded one of sound.");
    assert_row_found("fact = \"existing.layers\", meets = \"test.seen\",\n"
                     "also = { { fact = \"existing.kinds\", meets = \"test.kinds\" },\n"
                     "  { unit = \"in\", found = function() return 1 end, meets = \"r.least\" } }",
                     "fail", "Found 1 in; demanded at least 3 in.");
    assert_row_found(
        "fact = \"existing.layers\", meets = \"test.seen\",\n"
        "also = { { fact = \"existing.slippery\", shown = \"no slip\", wants = false } }",
        "open", "/existing/slippery");
    assert_row_found("fact = \"existing.layers\", meets = \"test.seen\",\n"
                     "also = { { when = is { \"existing.condition\", \"rotted\" },\n"
                     "  fact = \"existing.slippery\", shown = \"no slip\" } }",
                     "pass", "Found 1 layer");
    assert_row_found("fact = \"existing.layers\", meets = \"test.seen\",\n"
                     "also = { { when = is \"existing.slippery\",\n"
                     "  fact = \"existing.condition\", meets = \"test.conditions\" } }",
                     "open", "/existing/slippery");
    assert_row_found("fact = \"existing.layers\", meets = \"test.seen\",\n"
                     "also = { { when = function() return nil + 1 end,\n"
                     "  fact = \"existing.condition\", meets = \"test.conditions\" } }",
                     "broken", "arithmetic");
    assert_row_refused("fact = \"existing.layers\", meets = \"test.seen\",\n"
                       "also = { { fact = \"existing.layers\", meets = \"r.mph\" } }",
                       "in mph");
    assert_row_refused("fact = \"existing.layers\", meets = \"test.seen\",\n"
                       "also = { { fact = \"existing.slippery\" } }",
                       "shown: what must be shown");
    assert_row_refused(
        "fact = \"existing.layers\", meets = \"test.seen\",\n"
        "also = { { fact = \"existing.layers\", meets = \"test.seen\", mend = \"x\" } }",
        "mend");
    assert_row_refused("fact = \"existing.layers\", meets = \"test.seen\", also = { \"x\" }",
                       "also is a list");
}

#define LAYERS_TO_ONE "fact = \"existing.layers\", meets = \"test.layers_exact\""

/* What is not met may be made good: by the first that is met, in order. */
static void what_stands_instead_makes_good(void **state)
{
    (void)state;
    assert_row_found(LAYERS_TO_ONE, "fail", "demanded 3 layers");
    assert_row_found(LAYERS_TO_ONE ", instead = { { fact = \"existing.condition\",\n"
                                   "  meets = \"test.conditions\" } }",
                     "pass", "Found sound");
    assert_row_found(LAYERS_TO_ONE
                     ", instead = {\n"
                     "  { when = is { \"existing.condition\", \"rotted\" },\n"
                     "    fact = \"existing.condition\", meets = \"test.conditions\" } }",
                     "fail", "demanded 3 layers");
    assert_row_found(LAYERS_TO_ONE ", instead = { { fact = \"existing.slippery\",\n"
                                   "  meets = \"test.required\" } }",
                     "open", "/existing/slippery");
    assert_row_found(LAYERS_TO_ONE
                     ", instead = { { when = is { \"existing.condition\", \"sound\" },\n"
                     "  open = \"Whether it may stay is for others to say.\" } }",
                     "open", "Whether it may stay is for others to say.");
    assert_row_found("fact = \"existing.layers\", meets = \"test.seen\",\n"
                     "instead = { { open = \"Never looked at.\" } }",
                     "pass", "Found 1 layer");
    assert_row_found("when = { on \"r.on\" }, " LAYERS_TO_ONE ",\n"
                     "instead = { { fact = \"existing.condition\", meets = \"test.conditions\",\n"
                     "  also = { { fact = \"existing.kinds\", meets = \"test.kinds\" } } } }",
                     "pass", "none of slate, tile");
    assert_row_refused(LAYERS_TO_ONE ", instead = { { fact = \"existing.layers\" } }",
                       "meets which figure?");
    assert_row_refused(LAYERS_TO_ONE ", instead = { \"x\" }", "instead is a list");
    assert_row_refused(LAYERS_TO_ONE ", instead = { { instead = { { instead = { { instead = { {\n"
                                     " instead = { { open = \"x\" } } } } } } } } } }",
                       "has no fact");
}

/* A duty's words tell what was looked at before it, and which words of a choice do. */
static void a_duty_may_name_what_was_not_met(void **state)
{
    (void)state;
    static const char BODY[] =
        "when = { on \"r.on\" }, fact = \"existing.layers\", up_to = \"r.free\",\n"
        "instead = { { fact = \"existing.paper\", wants = { \"applied\", \"issued\" },\n"
        "  shown = \"a paper, because {found} is more than {limit}\" } }";
    static const char *const DONE[] = {"fail", "no", "pass", "yes", "pass", "yes"};
    static const char *const PAPERS[] = {"none", "applied", "issued"};
    for (size_t i = 0; i < 3; i++) {
        char with[80], says[120];
        snprintf(with, sizeof(with), "\"layers\": 3, \"paper\": \"%s\",", PAPERS[i]);
        snprintf(says, sizeof(says),
                 "Demanded: a paper, because 3 layers is more than 2 layers. Found: %s.",
                 DONE[2 * i + 1]);
        char *job = text_with(SMALL_JOB, "\"layers\": 1,", with);
        assert_row_of(BODY, job, DONE[2 * i], says);
        free(job);
    }
    assert_row_refused(
        "when = { on \"r.on\" }, fact = \"existing.paper\", wants = { \"aplied\" },\n"
        "shown = \"it\"",
        "existing.paper is never \"aplied\"; the nearest is \"applied\"");
    assert_row_refused(
        "when = { on \"r.on\" }, fact = \"existing.slippery\", wants = { \"yes\" },\n"
        "shown = \"it\"",
        "wants lists words of a fact that is a choice");
    assert_row_refused("when = { on \"r.on\" }, fact = \"existing.slippery\", wants = true,\n"
                       "shown = \"it\"",
                       "wants is false, or a list of words");
}

/* What decides who is meant asks for a duty where no switch does. */
static void who_is_meant_asks_for_a_duty(void **state)
{
    (void)state;
    char *job = text_with(SMALL_JOB, "\"layers\": 1,", "\"layers\": 1, \"slippery\": false,");
    char *problems,
        *json = row_report("per = \"roof.slopes\",\n"
                           "when = { meant { \"roof.slopes[].pitch\", \"r.steep\" } },\n"
                           "fact = \"existing.slippery\", shown = \"a slippery roof\"",
                           job, NULL, &problems);
    assert_string_equal(problems, "");
    assert_member(json, "test.it", 0, "outcome", "fail");
    assert_member(json, "test.it", 0, "figures", "[\"r.steep\"]");
    assert_member(json, "test.it", 1, "outcome", "not_applicable");
    free(json);
    free(problems);
    free(job);
}

/* The first whose condition holds is all that is compared. */
static void one_of_several_is_chosen(void **state)
{
    (void)state;
    static const char BODY[] =
        "choose = { { when = is { \"existing.condition\", \"rotted\" }, " LAYERS_TO_ONE " },\n"
        "  { when = is { \"existing.condition\", \"sound\" },\n"
        "    fact = \"existing.layers\", meets = \"test.seen\" } }";
    assert_row_found(BODY, "pass", "demanded at most 3 layers");
    char *job = text_with(SMALL_JOB, "\"condition\": \"sound\"", "\"condition\": \"rotted\"");
    assert_row_of(BODY, job, "fail", "demanded 3 layers");
    free(job);
    job = text_with(SMALL_JOB, "\"condition\": \"sound\", ", "");
    assert_row_of(BODY, job, "open", "/existing/condition");
    free(job);
    assert_row_found("choose = { { when = is { \"existing.condition\", \"rotted\" },\n"
                     "  " LAYERS_TO_ONE " } }",
                     "broken", "none of what choose lists holds");
    assert_row_refused("fact = \"existing.layers\", choose = { { " LAYERS_TO_ONE " } }",
                       "choose says what is compared: fact goes into each of it");
    assert_row_refused("choose = { { fact = \"existing.layers\", meets = \"r.mph\" } }", "in mph");
}

/* Some things leave a row open before anything is compared. */
static void a_row_may_stay_open(void **state)
{
    (void)state;
#define OPEN(open) LAYERS_TO_ONE ", open = { " open " }"
    assert_row_found(OPEN("{ when = is { \"existing.condition\", \"sound\" }, says = \"Look.\" }"),
                     "open", "Look.");
    assert_row_found(OPEN("{ when = is { \"existing.condition\", \"rotted\" }, says = \"Look.\" }"),
                     "fail", "demanded 3 layers");
    assert_row_found(OPEN("{ says = function(job)\n"
                          "  return job.existing.layers == 1 and \"One only.\" or nil end }"),
                     "open", "One only.");
    assert_row_found(OPEN("{ says = function() end }"), "fail", "demanded 3 layers");
    assert_row_found(OPEN("{ says = \"ask them.\", asks_place = true }"), "open",
                     "What this place asks was not read: ask them.");
    assert_row_found(OPEN("{ when = is \"existing.slippery\", says = \"Look.\" }"), "open",
                     "/existing/slippery");
    assert_row_found(OPEN("{ says = function() return 5 + {} end }"), "broken", "arithmetic");
    assert_row_found(
        "when = { on { \"r.off\", otherwise = \"not here\" } },\n" OPEN("{ says = \"Look.\" }"),
        "not_applicable", "not here");
    assert_row_refused(OPEN("{ when = on \"r.on\" }"), "open: says what?");
    assert_row_refused(OPEN("{ say = \"Look.\" }"), "unknown key \"say\"");
    assert_row_refused(OPEN("\"Look.\""), "open is a list");
#undef OPEN
}

static void a_sentence_may_be_worked_out(void **state)
{
    (void)state;
#define SAYS(key, body) \
    "fact = \"existing.layers\", meets = \"test.seen\", " key " = function(job) " body " end"
    assert_row_found(SAYS("say", "return \"It is \" .. job.existing.condition .. \".\""), "pass",
                     "It is sound.");
    assert_row_found(SAYS("say", ""), "pass", "Found 1 layer");
    assert_row_found(SAYS("say", "return 5"), "broken", "a text must be given, or nothing");
    assert_row_found(SAYS("say", "return job.existing.slippery and \"x\" or nil"), "open",
                     "/existing/slippery");
    assert_row_found(SAYS("warn", "return \"Mind the edge.\""), "warn", "Mind the edge.");
    assert_row_found(SAYS("warn", ""), "pass", "Found 1 layer");
    assert_row_found("fact = \"existing.layers\", meets = \"test.seen\", warn = \"Mind it.\"",
                     "warn", "Mind it.");
#undef SAYS
}

/* Batches --------------------------------------------------------------------------------- */

/* A row of every key, that reads facts which the jobs below move. */
static const char *const ALL_KEYS[] = {
    "fact = \"existing.layers\", meets = { \"r.by.sound\", unit = \"layers\",\n"
    "  limit = function(job, figure)\n"
    "    return figure \"r.by.sound\" + (job.existing.slippery and 1 or 0) end }",
    "when = { on \"r.on\" }, fact = \"existing.layers\",\n"
    "meets = { fact = \"existing.allowed\", sense = \"at_most\" }",
    "when = { on \"r.on\" }, fact = \"existing.layers\", up_to = \"r.free\", at_counts = \"r.at\",\n"
    "instead = { { when = is { \"existing.condition\", \"rotted\" }, open = \"Ask.\" },\n"
    "  { fact = \"existing.paper\", wants = { \"issued\" }, shown = \"it, for {found}\" } }",
    "choose = { { when = is { \"existing.condition\", \"rotted\" }, " LAYERS_TO_ONE " },\n"
    "  { fact = \"existing.layers\", meets = \"test.seen\",\n"
    "    also = { { when = is \"existing.slippery\", fact = \"existing.kinds\",\n"
    "      meets = \"test.kinds\" } } } }",
    LAYERS_TO_ONE ", open = { { says = function(job)\n"
                  "  return job.existing.slippery and job.existing.condition or nil end } }",
    "fact = \"existing.layers\", meets = \"test.seen\",\n"
    "say = function(job) return job.existing.condition end,\n"
    "warn = function(job) return job.existing.slippery and \"Mind it.\" or nil end",
    "meets = \"test.conditions\", found = function(job)\n"
    "  return job.existing.layers > 1 and job.existing.condition or \"sound\" end",
    "per = \"decks\", fact = \"decks[].spacing_in\",\n"
    "measured = \"decks[].measured_spacing_in\", meets = { \"r.table.a\", \"r.table.b\",\n"
    "  which = function(job) return job.existing.slippery and \"r.table.a\" or \"r.table.b\" end }",
};

static void write_all_keys(void)
{
    char rules[6000];
    size_t length = 0;
    for (size_t i = 0; i < sizeof(ALL_KEYS) / sizeof(ALL_KEYS[0]); i++)
        length += (size_t)snprintf(rules + length, sizeof(rules) - length,
                                   "demand \"test.it%zu\" { " ROW_READS
                                   " title = \"It\", stage = \"deck\",\n"
                                   " mend = \"Mend it.\", %s }\n",
                                   i, ALL_KEYS[i]);
    assert_true(length < sizeof(rules));
    home_write(row_law_home(), "rules/test.lua", rules);
}

/* The facts in one of their many states; each is left out in one of them. */
static void write_job(char *job, size_t size, size_t number)
{
    static const char *const CONDITIONS[] = {"", "\"condition\": \"sound\",",
                                             "\"condition\": \"rotted\","};
    static const char *const SLIPPERY[] = {"", "\"slippery\": true,", "\"slippery\": false,"};
    static const char *const ALLOWED[] = {"", "\"allowed\": 1,", "\"allowed\": 3,"};
    static const char *const PAPERS[] = {"", "\"paper\": \"issued\",", "\"paper\": \"none\","};
    static const char *const DECKS[] = {"\"spacing_in\": 7", "\"measured_spacing_in\": [6, 9]",
                                        "\"measured_spacing_in\": [6]"};
    const size_t deck = number / 81 % 3;
    snprintf(job, size,
             "{ \"eavemark_job\": 1, \"job\": \"Invented house\", \"date\": \"2026-03-02\",\n"
             " \"jurisdiction\": \"example/r\", \"stage\": \"%s\",\n"
             " \"existing\": { %s %s %s %s \"layers\": %zu, \"kinds\": [\"asphalt\"] },\n"
             " \"decks\": [ { \"name\": \"panels\", %s } ] }\n",
             deck == 0 ? "permit" : "deck", CONDITIONS[number % 3], SLIPPERY[number / 3 % 3],
             ALLOWED[number / 9 % 3], PAPERS[number / 27 % 3], number / 7 % 4, DECKS[deck]);
}

static char *line_of(eavemark *handle, const char *job)
{
    const struct eavemark_request request = {.name = "job", .text = job, .length = strlen(job)};
    eavemark_result *result = eavemark_check(handle, &request);
    assert_non_null(result);
    assert_string_equal(eavemark_result_problems(result), "");
    char *line = eavemark_result_report(result, EAVEMARK_JSON_LINE, EAVEMARK_ALL);
    assert_non_null(line);
    eavemark_result_free(result);
    return line;
}

/* What a row reads is noted with all that it compares: recalled for another job, it would
 * else say of that job what was found of this one. */
static void each_job_of_a_batch_is_judged_as_if_alone(void **state)
{
    (void)state;
    write_all_keys();
    eavemark *batch = eavemark_open(row_law_home()->path);
    for (size_t i = 0; i < 2 * 243; i++) {
        char job[600];
        write_job(job, sizeof(job), i * 100 % 243); /* 100 and 243 share no factor */
        eavemark *alone = eavemark_open(row_law_home()->path);
        char *there = line_of(batch, job), *here = line_of(alone, job);
        assert_string_equal(there, here);
        assert_has(here, "\"broken\":0"); /* nothing of this is a mistake */
        free(there);
        free(here);
        eavemark_close(alone);
    }
    eavemark_close(batch);
}

int main(void)
{
#define in_home(test) cmocka_unit_test_setup_teardown(test, row_law_make, row_law_remove)
    const struct CMUnitTest tests[] = {
        in_home(more_may_be_compared_as_well),
        in_home(what_stands_instead_makes_good),
        in_home(a_duty_may_name_what_was_not_met),
        in_home(who_is_meant_asks_for_a_duty),
        in_home(one_of_several_is_chosen),
        in_home(a_row_may_stay_open),
        in_home(a_sentence_may_be_worked_out),
        in_home(each_job_of_a_batch_is_judged_as_if_alone),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
