/* Two questions, kept apart: is it met, and how sure is the figure. Each row of the
 * table in engine/judge/verdict.h, under a law and by rules of the test's own. */
#include "support/small_law.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

static struct temporary_home home;

/* Layers of which the job has one, and switches, of every status. */
static const char PLACE[] =
    "jurisdiction \"example/v\" { title = \"V\", follows = \"model/test\", %s figures = {\n"
    "  [\"v.from\"] = { 1, unit = \"layers\", sense = \"from\", cite = \"1\", status = \"memory\",\n"
    "    source = \"recalled\" },\n"
    "  [\"v.on\"] = { true, sense = \"equals\", cite = \"2\", status = \"memory\",\n"
    "    source = \"recalled\" },\n"
    "  [\"v.read_on\"] = { true, sense = \"equals\", cite = \"3\", status = \"seen\",\n"
    "    source = \"a page\" },\n"
    "  [\"v.practice\"] = { 5, unit = \"layers\", sense = \"at_most\", cite = \"4\",\n"
    "    status = \"practice\", source = \"common practice\" },\n"
    "  [\"v.wide\"] = { 4, unit = \"layers\", sense = \"at_most\", cite = \"5\", status = \"seen\",\n"
    "    source = \"a page\", disputed = \"a town says 2\", rival = 2 },\n"
    "  [\"v.closed\"] = { 4, unit = \"layers\", sense = \"at_most\", cite = \"6\", status = \"seen\",\n"
    "    source = \"a page\", disputed = \"a town says otherwise\" },\n"
    "  [\"v.counts\"] = { false, sense = \"equals\", cite = \"7\", status = \"seen\",\n"
    "    source = \"a page\", disputed = \"a town counts felt\", rival = true },\n"
    "  [\"v.least\"] = { 2, unit = \"layers\", sense = \"at_least\", cite = \"8\", status = \"memory\",\n"
    "    source = \"recalled\" },\n"
    "  [\"v.speed\"] = { 4.5, unit = \"mph\", sense = \"at_least\", cite = \"9\", status = \"seen\",\n"
    "    source = \"a page\" },\n"
    "} }\n";

static int make_home(void **state)
{
    char place[4096];
    (void)state;
    home_make(&home);
    small_law_write(&home);
    snprintf(place, sizeof(place), PLACE, "");
    home_write(&home, "jurisdictions/example/v.lua", place);
    return 0;
}

static int remove_home(void **state)
{
    (void)state;
    home_remove(&home);
    return 0;
}

/* The report on a job by one rule, in full. */
static char *report_of(const char *job, const char *keys, const char *lines)
{
    char rules[3000], reads[1000];
    snprintf(rules, sizeof(rules),
             "rule \"test.it\" { %s title = \"It\", stage = \"permit\", mend = \"Mend it.\", %s\n"
             "  judge = function(job, figure)\n %s\n end }\n",
             small_reads(keys, lines, reads), keys, lines);
    home_write(&home, "rules/test.lua", rules);
    eavemark *handle = eavemark_open(home.path);
    struct outcome_of_check outcome = home_check(handle, job, "example/v", NULL, NULL);
    assert_string_equal(outcome.problems, "");
    char *json = outcome.json;
    outcome.json = NULL;
    outcome_free(&outcome);
    eavemark_close(handle);
    return json;
}

static char *report(const char *keys, const char *lines)
{
    return report_of(SMALL_JOB, keys, lines);
}

static void assert_verdict(const char *keys, const char *lines, const char *outcome,
                           const char *met, const char *why, const char *says)
{
    char *json = report(keys, lines);
    assert_member_has(json, "test.it", 0, "says", says);
    assert_member(json, "test.it", 0, "outcome", outcome);
    assert_member(json, "test.it", 0, "met", met);
    assert_member(json, "test.it", 0, "why", why);
    free(json);
}

static void a_read_figure_passes_or_fails(void **state)
{
    (void)state;
    assert_verdict("", "return at_most(1, figure \"test.seen\", \"layers\")", "pass", "true", "[]",
                   "Found 1 layer");
    assert_verdict("", "return at_most(9, figure \"test.seen\", \"layers\")", "fail", "false", "[]",
                   "Found 9 layers");
    assert_verdict("", "return at_most(9, figure \"test.parallel\", \"layers\")", "fail", "false",
                   "[]", "Found 9 layers");
}

static void an_unread_figure_is_unconfirmed(void **state)
{
    (void)state;
    assert_verdict("", "return at_most(1, figure \"test.memory\", \"layers\")", "warn", "true",
                   "[\"unconfirmed\"]", "Unconfirmed: test.memory");
    assert_verdict("", "return at_most(1, figure \"test.parallel\", \"layers\")", "warn", "true",
                   "[\"unconfirmed\"]", "Unconfirmed: test.parallel");
    char *json = report("", "return at_most(9, figure \"test.memory\", \"layers\")");
    assert_member(json, "test.it", 0, "outcome", "fail");
    assert_member(json, "test.it", 0, "why", "[\"unconfirmed\"]");
    assert_member_has(json, "test.it", 0, "says", "Unconfirmed: the figure is recalled");
    assert_member(json, "test.it", 0, "figures", "[\"test.memory\"]");
    free(json);
}

static void practice_that_is_met_passes(void **state)
{
    (void)state;
    assert_verdict("", "return at_most(1, figure \"v.practice\", \"layers\")", "pass", "true",
                   "[\"practice\"]", "common practice");
    assert_verdict("", "return at_most(9, figure \"v.practice\", \"layers\")", "warn", "false",
                   "[\"practice\"]", "common practice");
    /* The measure is practice, but a code has switched the duty on: it binds. */
    assert_verdict("",
                   "local _ = figure \"v.read_on\"\n"
                   "return at_most(9, figure \"v.practice\", \"layers\")",
                   "fail", "false", "[]", "Found 9");
}

/* Switches and thresholds say whether a rule speaks, not how sure its limit is. */
static void helpers_lend_no_status(void **state)
{
    (void)state;
    static const char LINES[] =
        "if not figure \"v.on\" or 1 < figure \"v.from\" then return nil end\n"
        "return at_most(%d, figure \"test.seen\", \"layers\")";
    char lines[256];
    snprintf(lines, sizeof(lines), LINES, 1);
    assert_verdict("", lines, "pass", "true", "[]", "Found 1");
    snprintf(lines, sizeof(lines), LINES, 9);
    assert_verdict("", lines, "fail", "false", "[]", "Found 9");
    /* A limit of another size is no maker; what is reckoned is made by all limits. */
    assert_verdict("",
                   "local _ = figure \"v.practice\"\n"
                   "return at_most(1, figure \"test.seen\", \"layers\")",
                   "pass", "true", "[]", "Found 1");
    assert_verdict("",
                   "local most = figure \"test.memory\" + figure \"test.seen\"\n"
                   "return at_most(1, most, \"layers\")",
                   "warn", "true", "[\"unconfirmed\"]", "Unconfirmed: test.memory is recalled");
    /* A duty is made by what switches it on. */
    assert_verdict("", "local _ = figure \"v.on\" return shown(true, \"a photo\")", "warn", "true",
                   "[\"unconfirmed\"]", "Unconfirmed: v.on");
}

static void a_dispute_carries_the_rivals_value(void **state)
{
    (void)state;
    assert_verdict("", "return at_most(1, figure \"v.wide\", \"layers\")", "pass", "true", "[]",
                   "Sources disagree: a town says 2. It is met either way.");
    char *json = report("", "return at_most(3, figure \"v.wide\", \"layers\")");
    assert_member(json, "test.it", 0, "outcome", "warn");
    assert_member(json, "test.it", 0, "why", "[\"disputed\"]");
    assert_member(json, "test.it", 0, "rival", "{\"value\":2,\"unit\":\"layers\"}");
    assert_member_has(json, "test.it", 0, "says", "demanded at most 4 layers");
    assert_member_has(json, "test.it", 0, "says", "The other reading demands at most 2 layers.");
    assert_non_null(strstr(json, "\"disputed\":1"));
    free(json);
    assert_verdict("", "return at_most(9, figure \"v.wide\", \"layers\")", "fail", "false", "[]",
                   "Sources disagree: a town says 2.");
    /* Nobody can say whether it is met on a reading whose value is not stated. */
    assert_verdict("", "return at_most(1, figure \"v.closed\", \"layers\")", "warn", "true",
                   "[\"disputed\"]", "Sources disagree");
    /* A disputed helper is tried both ways too. */
    static const char FELT[] =
        "local found = %d if figure \"v.counts\" then found = found + 1 end\n"
        "return at_most(found, figure \"test.seen\", \"layers\")";
    char lines[256];
    snprintf(lines, sizeof(lines), FELT, 2);
    assert_verdict("", lines, "pass", "true", "[]", "It is met either way.");
    snprintf(lines, sizeof(lines), FELT, 3);
    assert_verdict("", lines, "warn", "true", "[\"disputed\"]", "a town counts felt");
    /* On the other reading it cannot be told: that is no pass. */
    assert_verdict("",
                   "if figure \"v.counts\" then cannot_tell(\"how much felt\") end\n"
                   "return at_most(1, figure \"test.seen\", \"layers\")",
                   "warn", "true", "[\"disputed\"]", "a town counts felt");
}

static void advice_never_fails(void **state)
{
    (void)state;
    assert_verdict("advice = true,", "return at_most(9, figure \"test.seen\", \"layers\")", "warn",
                   "false", "[\"advice\"]", "Found 9");
    assert_verdict("advice = true,", "return at_most(1, figure \"test.seen\", \"layers\")", "pass",
                   "true", "[]", "Found 1");
    assert_verdict("", "return at_most(1, figure \"test.seen\", \"layers\"):warn(\"Risky.\")",
                   "warn", "true", "[\"advice\"]", "Risky.");
}

/* The law stays what the draft would change; its own new figures fail nobody. */
static void a_draft_is_another_reading(void **state)
{
    (void)state;
    char place[4096];
    snprintf(place, sizeof(place), PLACE, "draft = \"a draft of 1993\",");
    char *with = text_with(place, "[\"v.from\"]",
                           "[\"test.seen\"] = { 1, cite = \"9\", status = \"seen\",\n"
                           "  source = \"the draft\" }, [\"v.from\"]");
    home_write(&home, "jurisdictions/example/v.lua", with);
    free(with);
    assert_verdict("", "return at_most(1, figure \"test.seen\", \"layers\")", "pass", "true", "[]",
                   "a draft of 1993. It is met either way.");
    assert_verdict("", "return at_most(2, figure \"test.seen\", \"layers\")", "warn", "true",
                   "[\"disputed\"]", "The other reading demands at most 1 layer.");
    assert_verdict("", "return at_most(9, figure \"test.seen\", \"layers\")", "fail", "false", "[]",
                   "demanded at most 3 layers");
    assert_verdict("", "return at_least(1, figure \"v.least\", \"layers\")", "warn", "false",
                   "[\"advice\"]", "Found 1");
    char *json = report("", "return at_most(1, figure \"test.most\", \"layers\")");
    assert_non_null(strstr(json, "\"doubts\":[\"a draft of 1993\"]"));
    free(json);
}

static void two_bounds_are_both_shown(void **state)
{
    (void)state;
    static const char LINES[] = "return all_of(at_least(%d, figure \"v.least\", \"layers\"),\n"
                                " at_most(%d, figure \"test.seen\", \"layers\"))";
    char lines[256];
    snprintf(lines, sizeof(lines), LINES, 9, 9);
    char *json = report("", lines);
    assert_member(json, "test.it", 0, "required",
                  "{\"value\":3,\"unit\":\"layers\",\"sense\":\"at_most\"}");
    assert_member(json, "test.it", 0, "also",
                  "{\"value\":2,\"unit\":\"layers\",\"sense\":\"at_least\"}");
    assert_member_has(json, "test.it", 0, "says", "at most 3 layers and at least 2 layers");
    free(json);
    /* Met by both: the recalled one makes it unconfirmed, whichever stands last. */
    snprintf(lines, sizeof(lines), LINES, 2, 2);
    assert_verdict("", lines, "warn", "true", "[\"unconfirmed\"]", "Unconfirmed: v.least");
    /* Two numbers are not two bounds of one. */
    snprintf(lines, sizeof(lines), LINES, 2, 3);
    json = report("", lines);
    assert_member(json, "test.it", 0, "also", "null");
    free(json);
}

static void a_ban_has_a_sense_of_its_own(void **state)
{
    (void)state;
    char *json = report("", "return none_of(\"slate\", figure \"test.kinds\")");
    assert_member(json, "test.it", 0, "required",
                  "{\"value\":[\"slate\",\"tile\"],\"unit\":null,\"sense\":\"none_of\"}");
    assert_member(json, "test.it", 0, "outcome", "fail");
    free(json);
}

/* Four miles an hour are not four and a half, and no report says five. */
static void parts_of_whole_units_are_kept(void **state)
{
    (void)state;
    assert_verdict("", "return at_least(4, figure \"v.speed\", \"mph\")", "fail", "false", "[]",
                   "Found 4 mph; demanded at least 4.5 mph.");
    assert_verdict("", "return at_least(5, figure \"v.speed\", \"mph\")", "pass", "true", "[]",
                   "demanded at least 4.5 mph");
}

static void what_is_open_says_whom_to_ask(void **state)
{
    (void)state;
    char *json = report("", "local _ = figure \"test.seen\" return job.existing.slippery");
    assert_member(json, "test.it", 0, "ask", "job");
    assert_member(json, "test.it", 0, "met", "null");
    free(json);
    json = report("", "local _ = figure \"test.seen\" return job.decks[1].measured_spacing_in");
    assert_member(json, "test.it", 0, "ask", "later");
    free(json);
    json = report("", "not_known(\"whether it looks at the deck\")");
    assert_member(json, "test.it", 0, "outcome", "open");
    assert_member(json, "test.it", 0, "ask", "place");
    assert_member_has(json, "test.it", 0, "says", "was not read: whether it looks at the deck");
    free(json);
    json = report("", "return at_most(1, figure \"test.seen\", \"layers\")");
    assert_member(json, "test.it", 0, "ask", "null");
    free(json);
}

/* What a model leaves to a place's own pages is not known until somebody read them,
 * and never "not applicable". */
static void pages_not_read_are_for_the_place_to_tell(void **state)
{
    (void)state;
    static const char OWN[] =
        "figures = { [\"v.paper\"] = { %s cite = \"1\", status = \"seen\", source = \"a page\" } }";
    static const struct {
        const char *parent, *keys, *outcome, *ask;
    } places[] = {
        {"model/paper", "", "open", "place"},
        {"model/paper", "read = { \"visits\" },", "open", "place"},
        {"model/paper", "read = { \"papers\" },", "not_applicable", "null"},
        {"model/paper", "invented = true,", "not_applicable", "null"},
        {"model/paper", "figures = 0 false,", "not_applicable", "null"}, /* says that it is off */
        {"model/paper", "figures = 0", "not_applicable", "null"},        /* restates the model's */
        {"model/paper", "figures = 0 true,", "pass", "null"},
        {"state", "", "open", "place"}, /* what the state's own pages say is theirs */
        {"state_figure", "", "not_applicable", "null"}, /* what its law says binds here */
    };
    home_write(&home, "jurisdictions/model/paper.lua",
               "jurisdiction \"model/paper\" { title = \"Paper\", model = true, edition = \"P\",\n"
               "  figures = { [\"v.paper\"] = { false, sense = \"equals\", cite = \"1\",\n"
               "    status = \"seen\", source = \"x\", pages = \"papers\" },\n"
               "  [\"v.visit\"] = { {}, sense = \"all_of\", cite = \"1\",\n"
               "    status = \"seen\", source = \"x\", pages = \"visits\" } } }\n");
    home_write(&home, "jurisdictions/state.lua",
               "jurisdiction \"state\" { title = \"S\", follows = \"model/paper\","
               " read = { \"papers\" } }\n");
    char own[256], place[512];
    snprintf(own, sizeof(own), OWN, "false,");
    snprintf(place, sizeof(place),
             "jurisdiction \"state_figure\" { title = \"S\","
             " follows = \"model/paper\", %s }\n",
             own);
    home_write(&home, "jurisdictions/state_figure.lua", place);
    for (size_t i = 0; i < sizeof(places) / sizeof(places[0]); i++) {
        const char *keys = places[i].keys;
        if (strncmp(keys, "figures = 0", 11) == 0) {
            snprintf(own, sizeof(own), OWN, keys + 11);
            keys = own;
        }
        snprintf(place, sizeof(place),
                 "jurisdiction \"example/v\" { title = \"V\","
                 " follows = \"%s\", %s }\n",
                 places[i].parent, keys);
        home_write(&home, "jurisdictions/example/v.lua", place);
        char *json = report(
            "applies = function(job, figure) return figure \"v.paper\", \"off\" end,",
            "return equals(true, figure \"v.paper\")");
        assert_member(json, "test.it", 0, "outcome", places[i].outcome);
        assert_member(json, "test.it", 0, "ask", places[i].ask);
        if (strcmp(places[i].outcome, "open") == 0) {
            assert_member(json, "test.it", 0, "why", "[\"place\"]");
            assert_member_has(json, "test.it", 0, "says", "its pages on papers");
        }
        free(json);
    }
    home_write(&home, "jurisdictions/example/v.lua",
               "jurisdiction \"example/v\" { title = \"V\","
               " follows = \"model/paper\", read = { \"vistis\" } }\n");
    eavemark *handle = eavemark_open(home.path);
    struct outcome_of_check outcome = home_check(handle, SMALL_JOB, "example/v", NULL, NULL);
    assert_int_equal(outcome.status, EAVEMARK_BROKEN);
    assert_has(outcome.problems,
               "jurisdictions/example/v.lua:1: read: no figure is told by pages on "
               "\"vistis\"");
    outcome_free(&outcome);
    eavemark_close(handle);
}

/* Where a fact of the job takes it out of what the place's figures speak of. */
static void what_is_not_carried_is_not_judged(void **state)
{
    (void)state;
    static const char PLACED[] = "jurisdiction \"%s\" { title = \"V\", follows = \"%s\",\n"
                                 "  not_carried = { [\"existing.slippery\"] = { %s } } }\n";
    static const struct {
        const char *keys, *slippery, *outcome, *ask, *says;
    } rows[] = {
        {"rules = { \"test\" }, why = \"on ice other law binds\"", "true", "open", "place",
         "Not carried here: on ice other law binds. Ask the building department."},
        {"rules = { \"test.it\" }, why = \"x\"", "true", "open", "place", "Not carried here: x."},
        {"rules = { \"test\" }, why = \"x\"", "false", "pass", "null", "Found 1"},
        {"rules = { \"test\" }, why = \"x\"", NULL, "open", "job", "/existing/slippery"},
        {"rules = { \"test\" }, but = { \"test.it\" }, why = \"x\"", "true", "pass", "null",
         "Found 1"},
        {"rules = {}, why = \"x\"", "true", "pass", "null", "Found 1"},
    };
    char place[512], job[1024];
    for (size_t i = 0; i < sizeof(rows) / sizeof(rows[0]); i++) {
        snprintf(place, sizeof(place), PLACED, "example/v", "model/test", rows[i].keys);
        home_write(&home, "jurisdictions/example/v.lua", place);
        snprintf(job, sizeof(job), "\"condition\": \"sound\"%s%s",
                 rows[i].slippery == NULL ? "" : ", \"slippery\": ",
                 rows[i].slippery == NULL ? "" : rows[i].slippery);
        char *text = text_with(SMALL_JOB, "\"condition\": \"sound\"", job);
        char *json = report_of(text, "", "return at_most(1, figure \"test.seen\", \"layers\")");
        assert_member(json, "test.it", 0, "outcome", rows[i].outcome);
        assert_member(json, "test.it", 0, "ask", rows[i].ask);
        assert_member_has(json, "test.it", 0, "says", rows[i].says);
        free(json);
        free(text);
    }
    /* A nearer place that speaks of the fact knows better. */
    snprintf(place, sizeof(place), PLACED, "state", "model/test", rows[0].keys);
    home_write(&home, "jurisdictions/state.lua", place);
    snprintf(place, sizeof(place), PLACED, "example/v", "state", "rules = {}, why = \"read here\"");
    home_write(&home, "jurisdictions/example/v.lua", place);
    char *text = text_with(SMALL_JOB, "\"condition\"", "\"slippery\": true, \"condition\"");
    char *json = report_of(text, "", "return at_most(1, figure \"test.seen\", \"layers\")");
    assert_member(json, "test.it", 0, "outcome", "pass");
    free(json);
    free(text);
}

static void what_is_not_carried_must_be_something(void **state)
{
    (void)state;
    static const struct {
        const char *keys, *says;
    } rows[] = {
        {"[\"existing.slipery\"] = { why = \"x\" }", "\"existing.slipery\" is no yes-or-no fact"},
        {"[\"existing.layers\"] = { why = \"x\" }", "\"existing.layers\" is no yes-or-no fact"},
        {"[\"existing.slippery\"] = { rules = { \"tset\" }, why = \"x\" }", "\"tset\" is no rule"},
        {"[\"existing.slippery\"] = { orders = { \"rolls\" }, why = \"x\" }",
         "\"rolls\" is no quantity"},
        {"[\"existing.slippery\"] = { rules = { \"test\" } }", "does not say why"},
        {"[\"existing.slippery\"] = { rule = {}, why = \"x\" }", "did you mean \"rules\"?"},
        {"[\"existing.slippery\"] = { rules = \"test\", why = \"x\" }", "rules is a list"},
        {"[\"existing.slippery\"] = true", "not_carried is written"},
    };
    home_write(&home, "rules/test.lua",
               "rule \"test.it\" { " SMALL_READS
               " title = \"It\", stage = \"permit\", mend = \"x\",\n"
               "  judge = function(job, figure) return shown(true, figure \"test.seen\") end }\n");
    for (size_t i = 0; i < sizeof(rows) / sizeof(rows[0]); i++) {
        char place[512];
        snprintf(place, sizeof(place),
                 "jurisdiction \"example/v\" { title = \"V\",\n"
                 "  follows = \"model/test\", not_carried = { %s } }\n",
                 rows[i].keys);
        home_write(&home, "jurisdictions/example/v.lua", place);
        eavemark *handle = eavemark_open(home.path);
        struct outcome_of_check outcome = home_check(handle, SMALL_JOB, "example/v", NULL, NULL);
        assert_int_equal(outcome.status, EAVEMARK_BROKEN);
        assert_has(outcome.problems, rows[i].says);
        outcome_free(&outcome);
        eavemark_close(handle);
    }
}

/* A section is cited under the book it stands in. */
static void a_section_keeps_its_book(void **state)
{
    (void)state;
    home_write(&home, "jurisdictions/example/v.lua",
               "jurisdiction \"example/v\" { title = \"V\", follows = \"model/test\",\n"
               "  figures = { [\"test.seen\"] = { 2, cite = \"1.2\", book = \"TEST 2020\",\n"
               "    status = \"seen\", source = \"a page\" } } }\n");
    char *json = report("", "return at_most(1, figure \"test.seen\", \"layers\")");
    assert_member_has(json, "test.it", 0, "cite", "\"code\":\"TEST 2020\",\"section\":\"1.2\"");
    free(json);
}

static void a_rival_must_make_sense(void **state)
{
    (void)state;
    static const struct {
        const char *keys, *says;
    } rows[] = {
        {"rival = 4", "has a rival value, but no disputed"},
        {"disputed = \"a town\", rival = true", "rival is another kind of value"},
        {"disputed = \"a town\", rival = \"four\"", "no figure that can be read"},
    };
    for (size_t i = 0; i < sizeof(rows) / sizeof(rows[0]); i++) {
        char place[512];
        snprintf(place, sizeof(place),
                 "jurisdiction \"example/v\" { title = \"V\", follows = \"model/test\",\n"
                 "  figures = { [\"test.seen\"] = { 2, cite = \"1\", status = \"seen\",\n"
                 "    source = \"a page\", %s } } }\n",
                 rows[i].keys);
        home_write(&home, "jurisdictions/example/v.lua", place);
        eavemark *handle = eavemark_open(home.path);
        struct outcome_of_check outcome = home_check(handle, SMALL_JOB, "example/v", NULL, NULL);
        assert_non_null(strstr(outcome.problems, rows[i].says));
        outcome_free(&outcome);
        eavemark_close(handle);
    }
}

int main(void)
{
#define in_home(test) cmocka_unit_test_setup_teardown(test, make_home, remove_home)
    const struct CMUnitTest tests[] = {
        in_home(a_read_figure_passes_or_fails),
        in_home(an_unread_figure_is_unconfirmed),
        in_home(practice_that_is_met_passes),
        in_home(helpers_lend_no_status),
        in_home(a_dispute_carries_the_rivals_value),
        in_home(advice_never_fails),
        in_home(a_draft_is_another_reading),
        in_home(two_bounds_are_both_shown),
        in_home(a_ban_has_a_sense_of_its_own),
        in_home(parts_of_whole_units_are_kept),
        in_home(what_is_open_says_whom_to_ask),
        in_home(pages_not_read_are_for_the_place_to_tell),
        in_home(what_is_not_carried_is_not_judged),
        in_home(what_is_not_carried_must_be_something),
        in_home(a_section_keeps_its_book),
        in_home(a_rival_must_make_sense),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
