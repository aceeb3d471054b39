/* What a function holds against what: units and verbs that disagree are errors of the
 * rule, with the line of the comparison; numbers that only happen to be alike are not.
 * The arithmetic here is the test's own; no published figure bears on it. */
#include "support/small_law.h"

#include "judge/bare_number.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

static struct temporary_home home;

/* The deck's nails are 6 in apart, the roof has 1 layer (small_law.c). */
static const char PLACE[] =
    "jurisdiction \"example/r\" { title = \"R\", follows = \"model/test\", figures = {\n"
    "  [\"r.six_ft\"] = { 6, unit = \"ft\", sense = \"at_least\", cite = \"1\", status = \"seen\",\n"
    "    source = \"p\" },\n"
    "  [\"r.half_ft\"] = { 0.5, unit = \"ft\", sense = \"at_most\", cite = \"2\", status = \"seen\",\n"
    "    source = \"p\" },\n"
    "  [\"r.six_mph\"] = { 6, unit = \"mph\", sense = \"from\", cite = \"3\", status = \"seen\",\n"
    "    source = \"p\" },\n"
    "  [\"r.three_in\"] = { 3, unit = \"in\", sense = \"at_least\", cite = \"4\", status = \"seen\",\n"
    "    source = \"p\" },\n"
    "  [\"r.all\"] = { { \"asphalt\" }, sense = \"all_of\", cite = \"5\", status = \"seen\",\n"
    "    source = \"p\" },\n"
    "} }\n";

static int make_home(void **state)
{
    (void)state;
    home_make(&home);
    small_law_write(&home);
    home_write(&home, "jurisdictions/example/r.lua", PLACE);
    return 0;
}

static int remove_home(void **state)
{
    (void)state;
    home_remove(&home);
    return 0;
}

/* The report; *problems is what was said beside it. Both to be freed. */
static char *report(const char *judge, char **problems)
{
    char rules[2000];
    snprintf(
        rules, sizeof(rules),
        "rule \"test.it\" { reads = { facts = { \"decks[].spacing_in\", \"existing.layers\" }, figures = { \"r.all\", \"r.half_ft\", \"r.six_ft\", \"r.six_mph\", \"r.three_in\", \"test.conditions\", \"test.kinds\", \"test.nails_most\" } }, title = \"It\", stage = \"deck\", mend = \"Mend it.\",\n"
        "  per = \"decks\",\n"
        "  judge = function(job, figure, deck)\n    %s\n  end }\n",
        judge);
    home_write(&home, "rules/test.lua", rules);
    eavemark *handle = eavemark_open(home.path);
    struct outcome_of_check outcome = home_check(handle, SMALL_JOB, "example/r", NULL, NULL);
    char *json = outcome.json;
    outcome.json = NULL;
    *problems = strdup(outcome.problems);
    outcome_free(&outcome);
    eavemark_close(handle);
    return json;
}

static void assert_outcome(const char *judge, const char *outcome, const char *says)
{
    char *problems, *json = report(judge, &problems);
    assert_string_equal(problems, "");
    assert_member(json, "test.it", 0, "outcome", outcome);
    assert_member_has(json, "test.it", 0, "says", says);
    free(problems);
    free(json);
}

static void assert_refused(const char *judge, const char *says)
{
    assert_outcome(judge, "broken", says);
    assert_outcome(judge, "broken", "rules/test.lua:4: ");
}

static void units_must_be_those_compared(void **state)
{
    (void)state;
    assert_refused("return at_most(deck.spacing_in, figure \"test.nails_most\", \"mph\")",
                   "decks[].spacing_in is in in, and is compared in mph");
    assert_refused("return at_most(deck.spacing_in, figure \"test.nails_most\", \"mph\")",
                   "figure \"test.nails_most\" is in in, and is compared in mph");
    assert_refused("return at_most(deck.spacing_in, figure \"test.nails_most\")",
                   "is compared in no unit");
    assert_refused("return at_least(deck.spacing_in, figure \"r.six_ft\", \"in\")",
                   "figure \"r.six_ft\" is in ft, and is compared in in");
    assert_refused("return at_least(deck.spacing_in, figure \"r.six_ft\", \"ft\")",
                   "decks[].spacing_in is in in, and is compared in ft");
    /* A threshold binds from neither side, but has its unit. */
    assert_refused("return at_least(deck.spacing_in, figure \"r.six_mph\", \"in\")",
                   "figure \"r.six_mph\" is in mph, and is compared in in");
    /* Chosen among figures, it still is one of them. */
    assert_refused("return at_least(deck.spacing_in, math.max(figure \"r.six_mph\",\n"
                   "figure \"r.three_in\"), \"in\")",
                   "r.six_mph");
}

static void verbs_must_be_the_senses_of_figures(void **state)
{
    (void)state;
    assert_refused("return at_least(deck.spacing_in, figure \"test.nails_most\", \"in\")",
                   "figure \"test.nails_most\" is at_most, and is compared by at_least");
    assert_refused("return equals(deck.spacing_in, figure \"r.three_in\", \"in\")",
                   "is at_least, and is compared by equals");
    assert_refused("return each_at_most({ deck.spacing_in }, figure \"r.three_in\", \"in\")",
                   "is at_least, and is compared by at_most");
    assert_refused("return spacings_at_most({ 6 }, figure \"r.three_in\", \"in\")",
                   "is at_least, and is compared by at_most");
    assert_refused("return one_of(\"asphalt\", figure \"test.kinds\")",
                   "figure \"test.kinds\" is none_of, and is compared by one_of");
    assert_refused("return none_of(\"asphalt\", figure \"test.conditions\")", "is one_of");
    assert_refused("return has_all({ \"asphalt\" }, figure \"test.kinds\", \"them\")",
                   "is none_of, and is compared by has_all");
}

static void what_agrees_or_was_reckoned_is_left_alone(void **state)
{
    (void)state;
    assert_outcome("return at_most(deck.spacing_in, figure \"test.nails_most\", \"in\")", "pass",
                   "Found 6 in; demanded at most 6 in.");
    assert_outcome("return at_most(deck.spacing_in / 12, figure \"r.half_ft\", \"ft\")", "pass",
                   "Found 0.5 ft");
    assert_outcome("return at_most(deck.spacing_in, figure \"r.half_ft\" * 12, \"in\")", "pass",
                   "Found 6 in");
    /* 6 in all the same, but reckoned: not the 6 feet, nor the 6 miles an hour. */
    assert_outcome("local _ = figure \"r.six_ft\" + figure \"r.six_mph\"\n"
                   "return at_most(deck.spacing_in, 2 * figure \"r.three_in\", \"in\")",
                   "pass", "demanded at most 6 in");
    assert_outcome("return at_least(deck.spacing_in + 0 * job.existing.layers,\n"
                   "figure \"r.three_in\", \"in\")",
                   "pass", "Found 6 in");
    assert_outcome("return has_all({ \"asphalt\" }, figure \"r.all\", \"them\")", "pass", "them");
    assert_outcome("return none_of(\"asphalt\", figure \"test.kinds\")", "pass", "none of slate");
}

/* The second judgement leaves no trace of its own. */
static void a_doubt_that_proves_nothing_changes_nothing(void **state)
{
    (void)state;
    char *problems,
        *json = report(
            "local _ = figure \"r.six_mph\"\n    work(\"once\")\n"
            "    return at_most(deck.spacing_in, 12 * figure \"r.half_ft\", \"in\"):say(\"Said.\")",
            &problems);
    assert_string_equal(problems, "");
    assert_member(json, "test.it", 0, "outcome", "pass");
    assert_member(json, "test.it", 0, "work", "[\"once\"]");
    assert_member(json, "test.it", 0, "figures", "[\"r.half_ft\"]");
    free(problems);
    free(json);
}

static void a_bare_limit_is_an_error_of_the_file(void **state)
{
    (void)state;
    char *problems, *json = report("local most = figure \"test.nails_most\"\n"
                                   "    return at_most(deck.spacing_in, 6, \"in\")",
                                   &problems);
    assert_null(json);
    assert_non_null(strstr(problems, "rules/test.lua:5: at_most compares with the bare number 6"));
    free(problems);
}

static void only_numbers_that_stand_alone_are_bare(void **state)
{
    (void)state;
    static const struct {
        const char *text, *number; /* NULL: none is */
        int line;
    } rows[] = {
        {"at_most(x, 5, \"in\")", "5", 1},
        {"\n\nreturn at_least( f(a, b) , -0.5 )", "-0.5", 3},
        {"each_at_least({ 1, 2 }, 0x10)", "0x10", 1},
        {"spacings_at_most (list, --[[ why, ]] 6 --so\n , \"in\")", "6", 1},
        {"equals(\"a,b)\", 3)", "3", 1},
        {"at_most(x, 5 * y, \"in\")", NULL, 0},
        {"at_most(5, y, \"in\")", NULL, 0},
        {"at_most(x, five)", NULL, 0},
        {"my_at_most(x, 5)", NULL, 0},
        {"-- at_most(x, 5)\n--[==[ at_most(x, 5) ]==]", NULL, 0},
        {"'at_most(x, 5)' [[ at_most(x, 5) ]]", NULL, 0},
        {"at_most(x", NULL, 0},
        {"at_most(", NULL, 0},
        {"at_most(x, at_least(y, 7))", "7", 1},
        {"one_of(x, 5)", NULL, 0},
    };
    for (size_t i = 0; i < sizeof(rows) / sizeof(rows[0]); i++) {
        struct bare_number bare;
        assert_int_equal(bare_number_find(rows[i].text, &bare), rows[i].number != NULL);
        if (rows[i].number == NULL)
            continue;
        assert_string_equal(bare.number, rows[i].number);
        assert_int_equal(bare.line, rows[i].line);
    }
}

int main(void)
{
#define in_home(test) cmocka_unit_test_setup_teardown(test, make_home, remove_home)
    const struct CMUnitTest tests[] = {
        in_home(units_must_be_those_compared),
        in_home(verbs_must_be_the_senses_of_figures),
        in_home(what_agrees_or_was_reckoned_is_left_alone),
        in_home(a_doubt_that_proves_nothing_changes_nothing),
        in_home(a_bare_limit_is_an_error_of_the_file),
        cmocka_unit_test(only_numbers_that_stand_alone_are_bare),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
