/* From rules and a job to findings: outcomes by how well a figure is known,
 * what is open and why, lists, stages, drops. Rules here are the test's own. */
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

static struct temporary_home home;

static int make_home(void **state)
{
    (void)state;
    home_make(&home);
    small_law_write(&home);
    return 0;
}

static int remove_home(void **state)
{
    (void)state;
    home_remove(&home);
    return 0;
}

/* The report on a job under rules of the test's own; to be freed. */
static char *report(const char *rules, const char *job, const char *jurisdiction, const char *stage)
{
    home_write(&home, "rules/test.lua", rules);
    eavemark *handle = eavemark_open(home.path);
    struct outcome_of_check outcome = home_check(handle, job, jurisdiction, NULL, stage);
    assert_string_equal(outcome.problems, "");
    char *json = outcome.json;
    outcome.json = NULL;
    outcome_free(&outcome);
    eavemark_close(handle);
    return json;
}

/* A rule "test.it" that judges by one line of Lua, with more parts before. */
static char *report_of(const char *parts, const char *line, const char *job)
{
    char rules[2048];
    snprintf(rules, sizeof(rules),
             "rule \"test.it\" { " SMALL_READS
             " title = \"It\", stage = \"permit\", mend = \"Mend it.\",\n"
             "  caution = \"Mind it.\", %s\n"
             "  judge = function(job, figure, item, outer)\n %s\n end }\n",
             parts, line);
    return report(rules, job, NULL, NULL);
}

static void assert_outcome(const char *line, const char *outcome, const char *says)
{
    char *json = report_of("", line, SMALL_JOB);
    assert_member(json, "test.it", 0, "outcome", outcome);
    assert_member_has(json, "test.it", 0, "says", says);
    free(json);
}

/* rules/README.md, the table of outcomes. */
static void outcomes_follow_how_figures_are_known(void **state)
{
    (void)state;
    static const struct {
        const char *figure, *met, *met_says, *not_met, *not_says;
    } rows[] = {
        {"seen", "pass", "Found 1 layer; demanded at most 3 layers.", "fail", "Found 9 layers"},
        {"parallel", "warn", "Unconfirmed: test.parallel is read in a sister code", "fail",
         "Found 9 layers"},
        {"memory", "warn", "Unconfirmed: test.memory is recalled from memory", "fail",
         "Found 9 layers; demanded at most 3 layers. Unconfirmed: the figure is recalled"},
        {"practice", "pass", "common practice, not code", "warn", "common practice, not code"},
        {"disputed", "warn", "Sources disagree: another page says 4.", "fail", "Sources disagree"},
    };
    for (size_t i = 0; i < sizeof(rows) / sizeof(rows[0]); i++) {
        char line[160];
        snprintf(line, sizeof(line), "return at_most(1, figure \"test.%s\", \"layers\")",
                 rows[i].figure);
        assert_outcome(line, rows[i].met, rows[i].met_says);
        snprintf(line, sizeof(line), "return at_most(9, figure \"test.%s\", \"layers\")",
                 rows[i].figure);
        assert_outcome(line, rows[i].not_met, rows[i].not_says);
    }
}

static void an_invented_figure_is_as_good_as_seen(void **state)
{
    (void)state;
    home_write(
        &home, "jurisdictions/example/a.lua",
        "jurisdiction \"example/a\" { title = \"A\", invented = true, follows = \"model/test\",\n"
        "  figures = { [\"test.memory\"] = { 2, cite = \"9\" } } }\n");
    char *json = report("rule \"test.it\" { " SMALL_READS
                        " title = \"It\", stage = \"permit\", mend = \"x\",\n"
                        "  judge = function(job, figure)\n"
                        "    return at_most(2, figure \"test.memory\", \"layers\") end }\n",
                        SMALL_JOB, "example/a", NULL);
    assert_member(json, "test.it", 0, "outcome", "pass");
    assert_member(json, "test.it", 0, "amended", "{\"by\":\"A\",\"from\":3,\"to\":2}");
    assert_member(json, "test.it", 0, "cite",
                  "[{\"code\":\"A\",\"section\":\"9\",\"status\":\"invented\",\"source\":\"A\"}]");
    free(json);
}

/* What a place demands of a figure besides its value: { key, line, outcome, says }. */
static void a_limit_may_have_another_bound_and_an_open_end(void **state)
{
    (void)state;
    static const struct {
        const char *keys, *line, *outcome, *says;
    } rows[] = {
        /* Two bounds, of one number and of a list; the limit itself as before. */
        {"and_least = 4", "at_most(5, figure \"test.nails_most\", \"in\")", "pass",
         "Found 5 in; demanded at least 4 in and at most 6 in."},
        {"and_least = 4", "at_most(4, figure \"test.nails_most\", \"in\")", "pass",
         "at least 4 in"},
        {"and_least = 4", "at_most(3.999, figure \"test.nails_most\", \"in\")", "fail",
         "demanded at least 4 in and at most 6 in"},
        {"and_least = 4", "at_most(6.001, figure \"test.nails_most\", \"in\")", "fail",
         "demanded at most 6 in"},
        {"and_least = 4", "each_at_most({ 6, 4 }, figure \"test.nails_most\", \"in\")", "pass", ""},
        {"and_least = 4", "each_at_most({ 6, 3.9 }, figure \"test.nails_most\", \"in\")", "fail",
         "demanded at least 4 in"},
        {"and_least = 4",
         "spacings_at_most({ 3.9, 4, 4, 4, 4, 7 }, figure \"test.nails_most\", \"in\", "
         "{ share = 20, over = 2 })",
         "fail", "demanded at least 4 in"},
        /* Exactly so much is not enough. */
        {"at_counts = false", "at_most(5.999, figure \"test.nails_most\", \"in\")", "pass", "less"},
        {"at_counts = false", "at_most(6, figure \"test.nails_most\", \"in\")", "fail",
         "Exactly 6 in is not enough here: it must be less."},
        {"at_counts = true", "at_most(6, figure \"test.nails_most\", \"in\")", "pass",
         "Found 6 in"},
        /* A rule that compares something reckoned does not look at either. */
        {"and_least = 4", "at_most(5, 2 * figure \"test.nails_most\", \"in\")", "open",
         "test.nails_most demands more here than this rule looks at"},
        {"at_counts = false", "at_most(5, 2 * figure \"test.nails_most\", \"in\")", "open",
         "demands more here"},
        {"and_least = 4", "at_most(13, 2 * figure \"test.nails_most\", \"in\")", "fail",
         "Found 13"},
    };
    for (size_t i = 0; i < sizeof(rows) / sizeof(rows[0]); i++) {
        char text[3000];
        snprintf(text, sizeof(text),
                 "jurisdiction \"example/a\" { title = \"A\", invented = true,\n"
                 "  follows = \"model/test\", code = \"A Code\", figures = {\n"
                 "  [\"test.nails_most\"] = { 6, cite = \"9\", %s } } }\n",
                 rows[i].keys);
        home_write(&home, "jurisdictions/example/a.lua", text);
        snprintf(text, sizeof(text),
                 "rule \"test.it\" { " SMALL_READS " title = \"It\", stage = \"permit\",\n"
                 "  mend = \"x\", judge = function(job, figure) return %s end }\n",
                 rows[i].line);
        char *json = report(text, SMALL_JOB, "example/a", NULL);
        assert_member(json, "test.it", 0, "outcome", rows[i].outcome);
        assert_member_has(json, "test.it", 0, "says", rows[i].says);
        free(json);
    }
}

/* Thresholds: from, over and under, with what is exactly at them on either side. */
static void a_threshold_takes_what_is_exactly_at_it_or_not(void **state)
{
    (void)state;
    static const struct {
        const char *sense, *at, *compares;
        double at_it, past_it; /* found; both on the tape */
        bool at_is_in, past_is_in;
    } rows[] = {
        {"over", "", ">", 25, 25.1, false, true},
        {"over", ", at_counts = true", ">", 25, 24.9, true, false},
        {"from", "", ">=", 25, 24.9, true, false},
        {"from", ", at_counts = false", ">=", 25, 25.1, false, true},
        {"under", "", "<", 25, 24.9, false, true},
        {"under", ", at_counts = true", "<", 25, 25.1, true, false},
    };
    for (size_t i = 0; i < sizeof(rows) / sizeof(rows[0]); i++) {
        for (int past = 0; past < 2; past++) {
            char text[3000];
            snprintf(text, sizeof(text),
                     "jurisdiction \"example/a\" { title = \"A\", invented = true,\n"
                     "  follows = \"model/test\", figures = { [\"test.share\"] = { 25,\n"
                     "  unit = \"percent\", sense = \"%s\", cite = \"9\", status = \"invented\",\n"
                     "  source = \"A\" %s } } }\n",
                     rows[i].sense, rows[i].at);
            home_write(&home, "jurisdictions/example/a.lua", text);
            snprintf(
                text, sizeof(text),
                "rule \"test.it\" { " SMALL_READS " title = \"It\", stage = \"permit\",\n"
                "  mend = \"x\", judge = function(job, figure)\n"
                "  local is_in = as_printed(%g, \"percent\") %s figure \"test.share\"\n"
                "  return all_of(shown(is_in, \"it\"), at_most(1, figure \"test.seen\", \"layers\"))\n"
                "  end }\n",
                past ? rows[i].past_it : rows[i].at_it, rows[i].compares);
            char *json = report(text, SMALL_JOB, "example/a", NULL);
            const bool wanted = past ? rows[i].past_is_in : rows[i].at_is_in;
            assert_member(json, "test.it", 0, "outcome", wanted ? "pass" : "fail");
            free(json);
        }
    }
}

static void assert_in_a(const char *key, const char *line, const char *outcome, const char *says)
{
    char text[3000];
    snprintf(text, sizeof(text),
             "jurisdiction \"example/a\" { title = \"A\", follows = \"model/test\", %s,\n"
             "  figures = { [\"test.most\"] = { 3, cite = \"9\", status = \"seen\",\n"
             "    source = \"a page\" } } }\n",
             key);
    home_write(&home, "jurisdictions/example/a.lua", text);
    snprintf(text, sizeof(text),
             "rule \"test.it\" { " SMALL_READS " title = \"It\", stage = \"permit\",\n"
             "  mend = \"x\", %s }\n",
             line);
    char *json = report(text, SMALL_JOB, "example/a", NULL);
    assert_member(json, "test.it", 0, "outcome", outcome);
    assert_member_has(json, "test.it", 0, "says", says);
    free(json);
}

/* jurisdictions/README.md: neither met nor not met by what is not the place's law;
 * and let off by it only where it leaves a duty off. */
static void nothing_is_judged_by_a_borrowed_figure(void **state)
{
    (void)state;
    static const char KEY[] = "borrowed = \"A has no code\"";
    static const char NOT[] = "was not established: A has no code.";
    assert_in_a(KEY,
                "judge = function(job, figure)\n"
                "return at_most(1, figure \"test.seen\", \"layers\") end",
                "open", NOT);
    assert_in_a(KEY,
                "judge = function(job, figure)\n"
                "return at_most(9, figure \"test.seen\", \"layers\") end",
                "open", NOT);
    assert_in_a(KEY,
                "judge = function(job, figure)\n"
                "return at_most(1, figure \"test.most\", \"layers\") end",
                "pass", "Found 1");
    assert_in_a(KEY,
                "judge = function(job, figure)\n"
                "return at_most(9, figure \"test.practice\", \"layers\") end",
                "warn", "practice");
    assert_in_a(KEY,
                "applies = function(job, figure) return not figure \"test.required\" end,\n"
                "judge = function(job, figure) return at_most(1, #\"abc\", \"layers\") end",
                "open", NOT);
}

/* Whether the book binds is doubted once, in the head; but nobody fails by it unwarned. */
static void a_book_that_may_not_bind_is_doubted_in_the_head(void **state)
{
    (void)state;
    static const char KEY[] = "unsure = \"the base is recalled\"";
    assert_in_a(KEY,
                "judge = function(job, figure)\n"
                "return at_most(1, figure \"test.seen\", \"layers\") end",
                "pass", "Found 1");
    char *json = report("", SMALL_JOB, "example/a", NULL);
    assert_non_null(strstr(json, "\"doubts\":[\"the base is recalled\"]"));
    free(json);
    assert_in_a(KEY,
                "judge = function(job, figure)\n"
                "return at_most(9, figure \"test.seen\", \"layers\") end",
                "fail", "Not certain that this binds here");
    assert_in_a(KEY,
                "judge = function(job, figure)\n"
                "return at_most(1, figure \"test.most\", \"layers\") end",
                "pass", "Found 1");
}

/* A recalled figure may fail a job only with its status beside it. */
static void a_failure_prints_its_status(void **state)
{
    (void)state;
    char *json = report_of("", "return at_most(9, figure \"test.memory\", \"layers\")", SMALL_JOB);
    assert_member(json, "test.it", 0, "outcome", "fail");
    assert_member(json, "test.it", 0, "cite",
                  "[{\"code\":\"TEST 2020\",\"section\":\"1.4\",\"status\":\"memory\","
                  "\"source\":\"recalled\"}]");
    assert_member(json, "test.it", 0, "mend", "Mend it.");
    assert_member(json, "test.it", 0, "caution", "Mind it.");
    assert_member(json, "test.it", 0, "required",
                  "{\"value\":3,\"unit\":\"layers\",\"sense\":\"at_most\"}");
    assert_member(json, "test.it", 0, "found", "{\"value\":9,\"unit\":\"layers\"}");
    free(json);
}

static void the_weakest_of_several_figures_decides(void **state)
{
    (void)state;
    assert_outcome("local _ = figure \"test.memory\"\n"
                   "return at_most(1, figure \"test.seen\", \"layers\")",
                   "warn", "from memory");
    /* Practice alone cannot fail a job; with a code figure beside it, it can. */
    assert_outcome("local _ = figure \"test.practice\"\n"
                   "return at_most(9, figure \"test.seen\", \"layers\")",
                   "fail", "Found 9");
    /* A figure asked for twice is cited once. */
    char *json = report_of("",
                           "local _ = figure \"test.seen\"\n"
                           "return at_most(1, figure \"test.seen\", \"layers\")",
                           SMALL_JOB);
    assert_member(json, "test.it", 0, "cite",
                  "[{\"code\":\"TEST 2020\",\"section\":\"1.2\",\"status\":\"seen\","
                  "\"source\":\"a page\"}]");
    free(json);
}

static void equality_counts_as_met(void **state)
{
    (void)state;
    assert_outcome("return at_most(3, figure \"test.seen\", \"layers\")", "pass", "Found 3");
    assert_outcome("return at_least(6, figure \"test.lap_least\", \"in\")", "pass", "Found 6");
    assert_outcome("return equals(3, figure \"test.layers_exact\", \"layers\")", "pass", "Found 3");
    /* Half the last printed digit of inches is 0.0005. */
    assert_outcome("return at_most(6.0004, figure \"test.nails_most\", \"in\")", "pass", "6 in");
    assert_outcome("return at_most(6.001, figure \"test.nails_most\", \"in\")", "fail", "6.001 in");
    assert_outcome("return at_least(5.9996, figure \"test.lap_least\", \"in\")", "pass", "6 in");
    assert_outcome("return at_least(5.999, figure \"test.lap_least\", \"in\")", "fail", "5.999 in");
}

static void comparisons_decide(void **state)
{
    (void)state;
    assert_outcome("return one_of(job.existing.condition, figure \"test.conditions\")", "pass",
                   "Found sound; demanded one of sound.");
    assert_outcome("return one_of(\"rotted\", figure \"test.conditions\")", "fail", "Found rotted");
    assert_outcome("return one_of(\"rotted\", {})", "broken", "without asking for a figure");
    assert_outcome("return none_of(job.existing.kinds, figure \"test.kinds\")", "pass",
                   "Found asphalt; demanded none of slate, tile.");
    assert_outcome("return none_of({ \"asphalt\", \"tile\" }, figure \"test.kinds\")", "fail",
                   "Found asphalt, tile");
    assert_outcome("return none_of({}, figure \"test.kinds\")", "open", "The list is empty");
    assert_outcome("return none_of(\"slate\", figure \"test.kinds\")", "fail", "Found slate");
    assert_outcome("return none_of(5, figure \"test.kinds\")", "broken", "expected");
    assert_outcome("return equals(true, figure \"test.required\")", "pass", "yes");
    assert_outcome("return equals(false, figure \"test.required\")", "fail", "Found no");
    assert_outcome("return equals(1, figure \"test.required\")", "broken",
                   "a number cannot equal a boolean");
    assert_outcome("local _ = figure \"test.required\" return shown(true, \"a photo\")", "pass",
                   "Demanded: a photo. Found: yes.");
    assert_outcome("local _ = figure \"test.required\" return shown(false, \"a photo\")", "fail",
                   "Demanded: a photo. Found: no.");
    assert_outcome("local _ = figure \"test.required\" return shown(nil, \"a photo\")", "broken",
                   "boolean expected, got nil");
    assert_outcome("return each_at_most({ 5, 6, 7 }, figure \"test.nails_most\", \"in\")", "fail",
                   "Found 7 in");
    assert_outcome("return each_at_least({ 7, 6 }, figure \"test.lap_least\", \"in\")", "pass",
                   "Found 6 in");
    assert_outcome("return each_at_most({}, figure \"test.nails_most\", \"in\")", "open",
                   "Nothing was measured");
}

/* The share and the overrun are both bounds; each holds at its limit. */
static void stray_spacings_have_an_allowance(void **state)
{
    (void)state;
    static const struct {
        const char *list, *outcome;
    } rows[] = {
        {"6, 6, 6, 6, 6, 6, 6, 6, 6, 6", "pass"},
        {"6, 6, 6, 6, 6, 6, 6, 6, 6, 7", "warn"},    /* 10 %, by 1 in: at both limits */
        {"6, 6, 6, 6, 6, 6, 6, 6, 7, 7", "fail"},    /* 20 % */
        {"6, 6, 6, 6, 6, 6, 6, 6, 6, 7.01", "fail"}, /* over by more than 1 in */
    };
    for (size_t i = 0; i < sizeof(rows) / sizeof(rows[0]); i++) {
        char line[256];
        snprintf(line, sizeof(line),
                 "return spacings_at_most({ %s }, figure \"test.nails_most\", "
                 "\"in\", { share = 10, over = 1 })",
                 rows[i].list);
        assert_outcome(line, rows[i].outcome, "Found");
    }
    assert_outcome("return spacings_at_most({ 6, 7 }, figure \"test.nails_most\", \"in\")", "fail",
                   "Found 7 in");
}

static void judgements_combine(void **state)
{
    (void)state;
    static const char before[] =
        "local good = at_most(1, figure \"test.seen\", \"layers\")\n"
        "local bad = at_most(9, figure \"test.seen\", \"layers\")\n"
        "local worse = at_most(10, figure \"test.seen\", \"layers\")\nreturn ";
    static const struct {
        const char *line, *outcome, *says;
    } rows[] = {
        {"all_of(good, good)", "pass", "Found 1"},
        {"all_of(good, bad, worse)", "fail", "Found 9"},
        {"any_of(bad, good)", "pass", "Found 1"},
        {"any_of(bad, worse)", "fail", "Found 10"},
        {"all_of()", "broken", "a judgement expected"},
        {"any_of()", "broken", "a judgement expected"},
        {"all_of(good, true)", "broken", "a judgement expected"},
        {"all_of(good:warn(\"Risky.\"), at_most(2, figure \"test.seen\", \"layers\"))", "warn",
         "Risky."},
        {"good:warn(\"Risky.\")", "warn", "Risky."},
        {"bad:warn(\"Risky.\")", "fail", "Found 9"},
        {"good:say(\"In short.\"):say(\"Really.\")", "pass", "In short. Really."},
    };
    for (size_t i = 0; i < sizeof(rows) / sizeof(rows[0]); i++) {
        char line[512];
        snprintf(line, sizeof(line), "%s%s", before, rows[i].line);
        assert_outcome(line, rows[i].outcome, rows[i].says);
    }
}

static void a_lacking_fact_is_open_and_asked_for(void **state)
{
    (void)state;
    static const char line[] =
        "local _ = job.existing.condition\n"
        "return at_most(job.existing.layers, figure \"test.seen\", \"layers\")";
    static const char *const without[] = {"\"layers\": 1, ", "\"layers\": null, "};
    char *job = text_with(SMALL_JOB, "\"layers\": 1, ", "");
    char *with_null = text_with(SMALL_JOB, "\"layers\": 1, ", without[1]);
    const char *jobs[] = {job, with_null};
    for (size_t i = 0; i < 2; i++) {
        char *json = report_of("", line, jobs[i]);
        assert_member(json, "test.it", 0, "outcome", "open");
        assert_member(json, "test.it", 0, "says",
                      "The job does not say /existing/layers: How many layers?");
        assert_member(json, "test.it", 0, "reads",
                      "[{\"at\":\"/existing/condition\",\"from\":\"job\"},"
                      "{\"at\":\"/existing/layers\",\"from\":\"job\"}]");
        assert_member(json, "test.it", 0, "required", "null");
        free(json);
    }
    free(with_null);
    free(job);
    /* Below a group that is absent as a whole, too. */
    job = text_with(
        SMALL_JOB,
        "  \"existing\": { \"layers\": 1, \"condition\": \"sound\", \"kinds\": [\"asphalt\"] },\n",
        "");
    char *json = report_of("", line, job);
    assert_member(json, "test.it", 0, "outcome", "open");
    assert_member_has(json, "test.it", 0, "says", "/existing/condition: Is it sound?");
    free(json);
    free(job);
}

/* Zero, false and an empty text are facts. */
static void nothing_is_not_lacking(void **state)
{
    (void)state;
    char *job = text_with(SMALL_JOB, "\"layers\": 1", "\"layers\": 0, \"slippery\": false");
    char *json = report_of("",
                           "local layers, slippery = job.existing.layers, job.existing.slippery\n"
                           "assert(layers == 0 and slippery == false)\n"
                           "return at_most(layers, figure \"test.seen\", \"layers\")",
                           job);
    assert_member(json, "test.it", 0, "outcome", "pass");
    free(json);
    free(job);
}

static void reads_are_recorded_once_in_order(void **state)
{
    (void)state;
    char *json = report_of("",
                           "local _ = job.roof.slopes[2].deck.spacing_in, job.existing.layers\n"
                           "local _ = job.existing.layers, known(job.existing, \"slippery\")\n"
                           "return at_most(1, figure \"test.seen\", \"layers\")",
                           SMALL_JOB);
    assert_member(json, "test.it", 0, "reads",
                  "[{\"at\":\"/roof/slopes\",\"from\":\"job\"},"
                  "{\"at\":\"/roof/slopes/1/deck\",\"from\":\"job\"},"
                  "{\"at\":\"/decks/0/spacing_in\",\"from\":\"job\"},"
                  "{\"at\":\"/existing/layers\",\"from\":\"job\"},"
                  "{\"at\":\"/existing/slippery\",\"from\":\"job\"}]");
    free(json);
}

static void the_job_reads_as_declared(void **state)
{
    (void)state;
    assert_outcome(
        "assert(job.job == 'Invented house' and #job.roof.slopes == 2 and #job.attics == 2)\n"
        "assert(job.roof.slopes[1].pitch == 5 and job.roof.slopes[2].pitch == 3)\n"
        "assert(job.roof.slopes[1].deck.name == 'panels' and job.roof.slopes[3] == nil)\n"
        "assert(job.roof.slopes[0] == nil and job.roof.slopes[-1] == nil)\n"
        "assert(math.type(job.existing.layers) == 'integer' and job.existing.kinds[1] == 'asphalt')\n"
        "local names = '' for i, slope in ipairs(job.roof.slopes) do\n"
        "  names = names .. i .. slope.name end assert(names == '1front2back')\n"
        "assert(known(job.existing, 'layers') and not known(job.existing, 'slippery'))\n"
        "return at_most(1, figure \"test.seen\", \"layers\")",
        "pass", "Found 1");
    assert_outcome("return known(job, 'nothing')", "broken", "the job has no field \"nothing\"");
}

/* rules/README.md: has and as_printed. A list of the job counts as read. */
static void plain_helpers_help(void **state)
{
    (void)state;
    static const struct {
        const char *asked, *outcome;
    } rows[] = {
        {"has({ 'a', 'b' }, 'b')", "pass"},
        {"has({ 'a', 'b' }, 'c')", "fail"},
        {"has({}, 'a')", "fail"},
        {"has({ 1, 2 }, 2) and not has({ '1' }, 1)", "pass"},
        {"has(job.existing.kinds, 'asphalt')", "pass"},
        {"has(job.existing.kinds, 'tile')", "fail"},
        {"as_printed(1.0004, 'in') == 1 and as_printed(1.0006, 'in') == 1.001", "pass"},
        {"as_printed(3.995, 'rise_in_12') == 4 and as_printed(3.994, 'rise_in_12') == 3.99",
         "pass"},
        {"as_printed(139.504, 'mph') == 140 and as_printed(139.5, 'mph') == 139.5 and as_printed(50.04, 'percent') == 50",
         "pass"},
        {"as_printed(0.12345, 'coefficient') == 0.123", "pass"},
    };
    for (size_t i = 0; i < sizeof(rows) / sizeof(rows[0]); i++) {
        char line[300];
        snprintf(line, sizeof(line), "figure 'test.seen' return shown(%s, 'it')", rows[i].asked);
        char *json = report_of("", line, SMALL_JOB);
        assert_member(json, "test.it", 0, "outcome", rows[i].outcome);
        free(json);
    }
    static const char *const broken[] = {"has(nil, 'a')", "has({ 'a' })", "as_printed('x', 'in')",
                                         "as_printed(1)"};
    for (size_t i = 0; i < sizeof(broken) / sizeof(broken[0]); i++) {
        char line[300];
        snprintf(line, sizeof(line), "figure 'test.seen' return shown(%s, 'it')", broken[i]);
        char *json = report_of("", line, SMALL_JOB);
        assert_member(json, "test.it", 0, "outcome", "broken");
        free(json);
    }
}

static void a_rule_may_be_unable_to_tell(void **state)
{
    (void)state;
    char *json = report_of(
        "", "local _ = figure \"test.seen\"\ncannot_tell(\"The maps disagree.\")", SMALL_JOB);
    assert_member(json, "test.it", 0, "outcome", "open");
    assert_member(json, "test.it", 0, "says", "The maps disagree.");
    free(json);
}

static void applies_may_say_no(void **state)
{
    (void)state;
    char *json = report_of("applies = function() return false, \"Only for slate.\" end,",
                           "error('never run')", SMALL_JOB);
    assert_member(json, "test.it", 0, "outcome", "not_applicable");
    assert_member(json, "test.it", 0, "says", "Only for slate.");
    assert_member(json, "test.it", 0, "caution", "null");
    free(json);
    json = report_of("applies = function(job) return job.existing.slippery end,",
                     "error('never run')", SMALL_JOB);
    assert_member(json, "test.it", 0, "outcome", "open");
    free(json);
}

static void per_judges_each_item(void **state)
{
    (void)state;
    static const char line[] =
        "return at_least(item.pitch, figure \"test.pitch_least\", \"rise_in_12\")";
    char *json = report_of("per = \"roof.slopes\",", line, SMALL_JOB);
    assert_member(json, "test.it", 0, "where", "front");
    assert_member(json, "test.it", 0, "outcome", "pass");
    assert_member(json, "test.it", 1, "where", "back");
    assert_member(json, "test.it", 1, "outcome", "fail");
    assert_member(json, "test.it", 1, "reads",
                  "[{\"at\":\"/roof/slopes/1/pitch\",\"from\":\"job\"}]");
    assert_null(finding_member(json, "test.it", 2, "where"));
    free(json);
    /* An absent list is a lacking fact; an empty one has nothing to judge. */
    char *absent = text_with(
        SMALL_JOB,
        "\"attics\": [\n"
        "    { \"name\": \"main\", \"vents\": [ { \"name\": \"ridge\", \"count\": 1 },\n"
        "                                 { \"name\": \"soffit\", \"count\": 4 } ] },\n"
        "    { \"name\": \"porch\", \"vents\": [] } ]",
        "\"attics\": null");
    static const char count[] = "return at_most(item.count, figure \"test.seen\", \"layers\")";
    json = report_of("per = \"attics\",", count, absent);
    assert_member(json, "test.it", 0, "outcome", "open");
    assert_member(json, "test.it", 0, "says", "The job does not say /attics: Each attic");
    free(json);
    char *empty = text_with(absent, "null", "[]");
    json = report_of("per = \"attics\",", count, empty);
    assert_member(json, "test.it", 0, "outcome", "not_applicable");
    assert_member(json, "test.it", 0, "says", "The job has none of these.");
    free(json);
    free(empty);
    free(absent);
}

static void per_goes_two_lists_deep(void **state)
{
    (void)state;
    static const char line[] = "assert(outer.name == \"main\" or outer.name == \"porch\")\n"
                               "return at_most(item.count, figure \"test.seen\", \"layers\")";
    char *json = report_of("per = \"attics[].vents\",", line, SMALL_JOB);
    assert_member(json, "test.it", 0, "where", "main, ridge");
    assert_member(json, "test.it", 0, "outcome", "pass");
    assert_member(json, "test.it", 1, "where", "main, soffit");
    assert_member(json, "test.it", 1, "outcome", "fail");
    assert_member(json, "test.it", 1, "reads",
                  "[{\"at\":\"/attics/0/name\",\"from\":\"job\"},"
                  "{\"at\":\"/attics/0/vents/1/count\",\"from\":\"job\"}]");
    assert_null(finding_member(json, "test.it", 2, "where"));
    free(json);
    /* One attic that does not say: its vents are open, the others' judged. */
    char *job = text_with(SMALL_JOB, "\"porch\", \"vents\": []", "\"porch\"");
    json = report_of("per = \"attics[].vents\",", line, job);
    assert_member(json, "test.it", 0, "outcome", "pass");
    assert_member(json, "test.it", 2, "outcome", "open");
    assert_member_has(json, "test.it", 2, "says", "/attics/1/vents");
    free(json);
    free(job);
}

static void an_item_without_a_name_is_numbered(void **state)
{
    (void)state;
    char *job = text_with(SMALL_JOB, "\"name\": \"back\", ", "");
    char *json = report_of(
        "per = \"roof.slopes\",",
        "return at_least(item.pitch, figure \"test.pitch_least\", \"rise_in_12\")", job);
    assert_member(json, "test.it", 1, "where", "slopes 2");
    free(json);
    free(job);
}

static const char NAILS[] =
    "rule \"deck.nails\" { " SMALL_READS
    " title = \"Nails\", stage = \"deck\", per = \"decks\", mend = \"Nail.\",\n"
    "  judge = function(job, figure, deck)\n"
    "    local most = figure \"test.nails_most\"\n"
    "    if inspecting() then return each_at_most(deck.measured_spacing_in, most, \"in\") end\n"
    "    return at_most(deck.spacing_in, most, \"in\")\n"
    "  end }\n"
    "rule \"permit.layers\" { " SMALL_READS
    " title = \"Layers\", stage = \"permit\", mend = \"x\",\n"
    "  judge = function(job, figure)\n"
    "    assert(not inspecting())\n"
    "    return at_most(job.existing.layers, figure \"test.seen\", \"layers\") end }\n";

/* Once its stage is reached, what was planned no longer shows anything. */
static void measured_facts_take_the_place_of_planned(void **state)
{
    (void)state;
    char *measured = text_with(SMALL_JOB, "\"spacing_in\": 6",
                               "\"spacing_in\": 6, \"measured_spacing_in\": [6, 7.5]");
    char *json = report(NAILS, SMALL_JOB, NULL, NULL);
    assert_member(json, "deck.nails", 0, "outcome", "pass");
    free(json);
    char *at_deck = text_with(measured, "\"permit\"", "\"deck\"");
    json = report(NAILS, at_deck, NULL, NULL);
    assert_member(json, "deck.nails", 0, "outcome", "fail");
    assert_member(json, "deck.nails", 0, "found", "{\"value\":7.5,\"unit\":\"in\"}");
    free(json);
    char *planned = text_with(SMALL_JOB, "\"permit\"", "\"deck\"");
    json = report(NAILS, planned, NULL, NULL);
    assert_member(json, "deck.nails", 0, "outcome", "open");
    assert_member_has(json, "deck.nails", 0, "says", "/decks/0/measured_spacing_in");
    assert_member(json, "permit.layers", 0, "outcome", "pass");
    free(json);
    char *later = text_with(SMALL_JOB, "\"permit\"", "\"final\"");
    json = report(NAILS, later, NULL, NULL);
    assert_member(json, "deck.nails", 0, "outcome", "open");
    free(json);
    free(later);
    free(planned);
    free(at_deck);
    free(measured);
}

/* The report as people read it, or as a page; to be freed. */
static char *told(const char *job, enum eavemark_form form)
{
    eavemark *handle = eavemark_open(home.path);
    assert_non_null(handle);
    const struct eavemark_request request = {
        .name = "job.json", .text = job, .length = strlen(job)};
    eavemark_result *result = eavemark_check(handle, &request);
    char *text = eavemark_result_report(result, form, EAVEMARK_ALL);
    eavemark_result_free(result);
    eavemark_close(handle);
    assert_non_null(text);
    return text;
}

/* Once a visit has come, a pass for which nothing was measured is told apart. */
static void passes_by_the_jobs_word_are_counted(void **state)
{
    (void)state;
    home_write(&home, "rules/test.lua",
               "rule \"test.a\" { " SMALL_READS " title = \"A\", stage = \"deck\", mend = \"m\",\n"
               "  judge = function(job, figure)\n"
               "    return at_most(job.existing.layers, figure \"test.seen\", \"layers\") end }\n"
               "rule \"test.b\" { " SMALL_READS
               " title = \"B\", stage = \"deck\", mend = \"m\", per = \"decks\",\n"
               "  judge = function(job, figure, deck)\n"
               "    if not inspecting() then return at_most(deck.spacing_in,\n"
               "      figure \"test.nails_most\", \"in\") end\n"
               "    return each_at_most(deck.measured_spacing_in, figure \"test.nails_most\",\n"
               "      \"in\") end }\n"
               "rule \"test.c\" { " SMALL_READS
               " title = \"C\", stage = \"permit\", mend = \"m\",\n"
               "  judge = function(job, figure)\n"
               "    return at_most(job.existing.layers, figure \"test.seen\", \"layers\") end }\n");
    char *text = told(SMALL_JOB, EAVEMARK_TEXT);
    assert_has(text, "-- 3 pass: shown to meet the figure\n\n"); /* nothing to be seen yet */
    free(text);
    char *job = text_with(SMALL_JOB, "\"stage\": \"permit\"", "\"stage\": \"deck\"");
    char *seen = text_with(job, "\"spacing_in\": 6", "\"measured_spacing_in\": [5, 6]");
    text = told(seen, EAVEMARK_TEXT);
    assert_has(text, "-- 3 pass: shown to meet the figure\n   1 of these by what the job says "
                     "alone: nothing was measured for it.");
    free(text);
    text = told(seen, EAVEMARK_HTML);
    assert_has(text, "<p class=\"gloss\">1 of these by what the job says alone:");
    free(text);
    free(seen);
    free(job);
}

static void a_stage_narrows_the_rules(void **state)
{
    (void)state;
    char *json = report(NAILS, SMALL_JOB, NULL, "permit");
    assert_null(finding_member(json, "deck.nails", 0, "outcome"));
    assert_member(json, "permit.layers", 0, "outcome", "pass");
    free(json);
    /* Asked for the deck, the deck is inspected. */
    json = report(NAILS, SMALL_JOB, NULL, "deck");
    assert_null(finding_member(json, "permit.layers", 0, "outcome"));
    assert_member(json, "deck.nails", 0, "outcome", "open");
    free(json);
}

/* What earlier stages left undone is still on the roof. */
static void a_stage_keeps_what_earlier_ones_left_undone(void **state)
{
    (void)state;
    static const char RULES[] =
        "rule \"permit.met\" { reads = { figures = { \"test.memory\" } }, title = \"M\", stage = \"permit\", mend = \"m\",\n"
        "  judge = function(job, figure)\n"
        "    return at_most(1, figure \"test.memory\", \"layers\") end }\n"
        "rule \"permit.fails\" { reads = { figures = { \"test.seen\" } }, title = \"F\", stage = \"permit\", mend = \"m\",\n"
        "  judge = function(job, figure)\n"
        "    return at_most(9, figure \"test.seen\", \"layers\") end }\n"
        "rule \"permit.unmet\" { reads = { figures = { \"test.practice\" } }, title = \"U\", stage = \"permit\", mend = \"m\",\n"
        "  judge = function(job, figure)\n"
        "    return at_most(9, figure \"test.practice\", \"layers\") end }\n"
        "rule \"permit.open\" { " SMALL_READS " title = \"O\", stage = \"permit\", mend = \"m\",\n"
        "  judge = function(job, figure) local _ = figure \"test.seen\"\n"
        "    return shown(job.existing.slippery, \"it\") end }\n"
        "rule \"permit.never\" { title = \"N\", stage = \"permit\", mend = \"m\",\n"
        "  applies = function() return false end, judge = function() end }\n"
        "rule \"late.fails\" { title = \"L\", stage = \"final\", mend = \"m\",\n"
        "  judge = function(job, figure)\n"
        "    return at_most(9, figure \"test.seen\", \"layers\") end }\n";
    char *json = report(RULES, SMALL_JOB, NULL, "deck");
    assert_member(json, "permit.fails", 0, "outcome", "fail");
    assert_member(json, "permit.unmet", 0, "outcome", "warn");
    assert_member(json, "permit.open", 0, "outcome", "open");
    assert_null(finding_member(json, "permit.met", 0, "outcome"));
    assert_null(finding_member(json, "permit.never", 0, "outcome"));
    assert_null(finding_member(json, "late.fails", 0, "outcome"));
    assert_non_null(strstr(json, "\"fail\":1,\"open\":1"));
    assert_non_null(strstr(json, "\"not_met\":2"));
    free(json);
}

static void a_dropped_rule_says_who_and_why(void **state)
{
    (void)state;
    home_write(&home, "jurisdictions/example/a.lua",
               "jurisdiction \"example/a\" { title = \"A County\", follows = \"model/test\",\n"
               "  drop = { [\"deck.nails\"] = \"waived by 15.04\" } }\n");
    char *json = report(NAILS, SMALL_JOB, "example/a", NULL);
    assert_member(json, "deck.nails", 0, "outcome", "not_applicable");
    assert_member(json, "deck.nails", 0, "says", "Dropped by A County: waived by 15.04.");
    assert_member(json, "deck.nails", 0, "amended",
                  "{\"by\":\"A County\",\"from\":\"demanded\",\"to\":\"not demanded\"}");
    assert_null(finding_member(json, "deck.nails", 1, "outcome"));
    assert_member(json, "permit.layers", 0, "outcome", "pass");
    free(json);
}

static void dropping_what_is_not_there_is_refused(void **state)
{
    (void)state;
    home_write(&home, "rules/test.lua", NAILS);
    home_write(&home, "jurisdictions/example/a.lua",
               "jurisdiction \"example/a\" { title = \"A\", follows = \"model/test\",\n"
               "  drop = { [\"deck.nail\"] = \"waived\" } }\n");
    eavemark *handle = eavemark_open(home.path);
    struct outcome_of_check outcome = home_check(handle, SMALL_JOB, "example/a", NULL, NULL);
    assert_int_equal(outcome.status, EAVEMARK_BROKEN);
    assert_string_equal(outcome.problems,
                        "jurisdictions/example/a.lua:2: drops \"deck.nail\", which "
                        "is no rule; the nearest is deck.nails\n");
    outcome_free(&outcome);
    eavemark_close(handle);
}

/* A place may bring fields and rules of its own. */
static void a_place_brings_its_own_rules(void **state)
{
    (void)state;
    home_write(
        &home, "jurisdictions/example/a.lua",
        "jurisdiction \"example/a\" { title = \"A\", invented = true, follows = \"model/test\",\n"
        "  rules = \"a.rules.lua\", figures = { [\"a.trees_most\"] = { 2, unit = \"count\",\n"
        "    sense = \"at_most\", cite = \"1\", status = \"invented\", source = \"A\" } } }\n");
    home_write(
        &home, "jurisdictions/example/a.rules.lua",
        "field \"trees_count\" { type = \"integer\", range = { 0, 9 }, stage = \"permit\",\n"
        "  ask = \"How many trees?\" }\n"
        "rule \"wood.trees\" { reads = { facts = { \"trees_count\" }, figures = { \"a.trees_most\" } }, title = \"Trees\", stage = \"permit\", mend = \"Fell one.\",\n"
        "  judge = function(job, figure)\n"
        "    return at_most(job.trees_count, figure \"a.trees_most\", \"count\") end }\n");
    char *json = report(NAILS, SMALL_JOB, "example/a", NULL);
    assert_member(json, "wood.trees", 0, "outcome", "open");
    assert_member_has(json, "wood.trees", 0, "says", "/trees_count: How many trees?");
    free(json);
    char *job = text_with(SMALL_JOB, "\"decks\"", "\"trees_count\": 3, \"decks\"");
    json = report(NAILS, job, "example/a", NULL);
    assert_member(json, "wood.trees", 0, "outcome", "fail");
    assert_member(json, "permit.layers", 0, "outcome", "pass");
    free(json);
    free(job);
}

static void a_broken_rule_leaves_the_others(void **state)
{
    (void)state;
    char *json = report(
        "rule \"a.first\" { title = \"x\", stage = \"permit\", mend = \"x\",\n"
        "  judge = function() error(\"mine\") end }\n"
        "rule \"b.second\" { " SMALL_READS " title = \"x\", stage = \"permit\", mend = \"x\",\n"
        "  per = \"roof.slopes\", judge = function(job, figure, slope)\n"
        "    if slope.name == \"front\" then error(\"here\") end\n"
        "    return at_least(slope.pitch, figure \"test.pitch_least\", \"rise_in_12\")\n"
        "  end }\n"
        "rule \"c.third\" { reads = { figures = { \"test.seen\" } }, title = \"x\", stage = \"permit\", mend = \"x\",\n"
        "  judge = function(job, figure)\n"
        "    return at_most(1, figure \"test.seen\", \"layers\") end }\n",
        SMALL_JOB, NULL, NULL);
    assert_member(json, "a.first", 0, "outcome", "broken");
    assert_member_has(json, "a.first", 0, "says", "rules/test.lua:2: mine");
    assert_member(json, "b.second", 0, "outcome", "broken");
    assert_member(json, "b.second", 1, "outcome", "fail");
    assert_member(json, "c.third", 0, "outcome", "pass");
    free(json);
}

static void mend_may_be_computed(void **state)
{
    (void)state;
    char *json = report(
        "rule \"test.it\" { " SMALL_READS " title = \"It\", stage = \"permit\",\n"
        "  judge = function(job, figure) return at_most(9, figure \"test.seen\", \"layers\") end,\n"
        "  mend = function(job, figure)\n"
        "    local _ = job.existing.condition\n"
        "    return \"Take off \" .. tostring(9 - figure \"test.seen\") .. \".\" end }\n",
        SMALL_JOB, NULL, NULL);
    assert_member(json, "test.it", 0, "mend", "Take off 6.");
    /* What the mend reads says nothing about the judgement. */
    assert_member(json, "test.it", 0, "reads", "[]");
    free(json);
}

static void cautions_follow_the_stage_and_the_danger(void **state)
{
    (void)state;
    static const char rules[] =
        "caution \"falls\" { stages = { \"permit\", \"deck\" }, says = \"Mind the edge.\",\n"
        "  cite = { code = \"C\", section = \"1\", status = \"seen\", source = \"p\" } }\n"
        "caution \"slips\" { " SMALL_READS " stages = { \"permit\" }, says = \"Mind the frost.\",\n"
        "  when = function(job) return job.existing.slippery end,\n"
        "  cite = { code = \"C\", section = \"2\", status = \"seen\", source = \"p\" } }\n"
        "caution \"later\" { stages = { \"final\" }, says = \"Mind the ladder.\",\n"
        "  cite = { code = \"C\", section = \"3\", status = \"seen\", source = \"p\" } }\n";
    home_write(&home, "rules/test.lua", rules);
    eavemark *handle = eavemark_open(home.path);
    char *dry = text_with(SMALL_JOB, "\"layers\": 1", "\"layers\": 1, \"slippery\": false");
    const char *jobs[] = {SMALL_JOB, dry};
    for (size_t i = 0; i < 2; i++) {
        const struct eavemark_request request = {
            .name = "j", .text = jobs[i], .length = strlen(jobs[i])};
        eavemark_result *result = eavemark_check(handle, &request);
        char *text = eavemark_result_report(result, EAVEMARK_TEXT, 0);
        assert_has(text, "Mind the edge.");
        assert_null(strstr(text, "Mind the ladder."));
        /* Not known to be dry: the danger is not ruled out. */
        if (i == 0)
            assert_has(text, "Mind the frost.");
        else
            assert_null(strstr(text, "Mind the frost."));
        free(text);
        eavemark_result_free(result);
    }
    free(dry);
    eavemark_close(handle);
}

/* The report of SMALL_JOB under these rules, as people read it. */
static char *read_report(const char *rules, unsigned options)
{
    home_write(&home, "rules/test.lua", rules);
    eavemark *handle = eavemark_open(home.path);
    const struct eavemark_request request = {
        .name = "j", .text = SMALL_JOB, .length = strlen(SMALL_JOB)};
    eavemark_result *result = eavemark_check(handle, &request);
    assert_string_equal(eavemark_result_problems(result), "");
    char *text = eavemark_result_report(result, EAVEMARK_TEXT, options);
    eavemark_result_free(result);
    eavemark_close(handle);
    return text;
}

/* In one line on the screen, written out or worked out; in full where all is. */
static void a_caution_is_brief_on_the_screen(void **state)
{
    (void)state;
    static const char rules[] =
        "caution \"falls\" { stages = { \"permit\" }, says = \"Mind the edge, and tie off.\",\n"
        "  brief = \"Mind the edge.\",\n"
        "  cite = { code = \"C\", section = \"1\", status = \"seen\", source = \"p\" } }\n"
        "caution \"slips\" { " SMALL_READS
        " stages = { \"permit\" }, says = \"Mind the frost, and wait.\",\n"
        "  brief = function(job, figure) return number(figure \"test.seen\") .. \" slips.\" end,\n"
        "  cite = { code = \"C\", section = \"2\", status = \"seen\", source = \"p\" } }\n";
    char *screen = read_report(rules, 0), *full = read_report(rules, EAVEMARK_ALL);
    assert_has(screen, "\n  Mind the edge.\n  3 slips.\n");
    assert_null(strstr(screen, "tie off"));
    assert_has(full, "Mind the edge, and tie off.");
    assert_has(full, "Mind the frost, and wait.");
    free(screen);
    free(full);
}

#define FAILS(name, keys, fact)                                                              \
    "rule \"t." name "\" { " SMALL_READS " title = \"" name                                  \
    "\", stage = \"permit\", mend = \"Mend.\", " keys                                        \
    "\n  judge = function(job, figure) return at_least(" fact ", 2 * figure \"test.seen\", " \
    "\"layers\") end }\n"

/* Rules that name one cause, and rules that find one fact wanting, are told together. */
static void one_cause_is_told_once(void **state)
{
    (void)state;
    char *screen = read_report(FAILS("a", "cause = \"both\",", "job.existing.layers")
                                   FAILS("b", "", "job.existing.layers + 0")
                                       FAILS("c", "cause = \"both\",", "#job.roof.slopes")
                                           FAILS("d", "", "#job.roof.slopes"),
                               0);
    assert_has(screen, "FIX  4 fail, 2 to mend\n  1 a [t.a]\n");
    assert_has(screen, "    b [t.b]\n");
    assert_has(screen, "    c [t.c]\n");
    assert_has(screen, "  2 d [t.d]\n");
    free(screen);
}

/* What a job does not say is asked with what waits for it: one fact of several items
 * once. */
static void what_is_lacking_is_asked(void **state)
{
    (void)state;
    char *screen = read_report(
        "field \"roof.slopes[].extra_in\" { type = \"number\", unit = \"in\", stage = \"permit\",\n"
        "  answer = \"attic\", ask = \"How much more?\" }\n"
        "rule \"t.a\" { reads = { facts = { \"existing.layers\", \"roof.slopes[].extra_in\" }, figures = { \"test.seen\" } }, title = \"a\", stage = \"permit\", mend = \"x\", per = \"roof.slopes\",\n"
        "  judge = function(job, figure, slope)\n"
        "    return at_least(slope.extra_in, figure \"test.seen\", \"in\") end }\n"
        "rule \"t.b\" { " SMALL_READS " title = \"b\", stage = \"permit\", mend = \"x\",\n"
        "  judge = function(job, figure)\n"
        "    if job.existing.slippery then return not_known(\"what then\") end\n"
        "    return at_least(1, figure \"test.seen\", \"layers\") end }\n"
        "rule \"t.c\" { " SMALL_READS " title = \"c\", stage = \"permit\", mend = \"x\",\n"
        "  judge = function(job, figure) figure \"test.seen\" return cannot_tell(\"It is odd.\") end }\n",
        0);
    assert_has(screen, "ANSWER  2 questions decide 3 findings");
    assert_has(screen, "  In the attic\n    How much more? front; back (2)\n");
    assert_has(screen, "  Cannot be told from the job\n  c: It is odd.\n");
    assert_has(screen, ", 4 to answer, ");
    free(screen);
}

static void impossible_facts_make_a_job_unusable(void **state)
{
    (void)state;
    static const char rules[] =
        "impossible \"a steep front\" { at = \"pitch\", per = \"roof.slopes\",\n"
        "  when = function(job, slope) if slope.pitch > 4 then return \"too steep to be\" end end }\n"
        "impossible \"slippery\" { at = \"existing.slippery\",\n"
        "  when = function(job) if job.existing.slippery then return \"never\" end end }\n";
    home_write(&home, "rules/test.lua", rules);
    eavemark *handle = eavemark_open(home.path);
    struct outcome_of_check outcome = home_check(handle, SMALL_JOB, NULL, NULL, NULL);
    assert_int_equal(outcome.status, EAVEMARK_UNUSABLE);
    assert_string_equal(outcome.problems,
                        "job.json: /roof/slopes/0/pitch: cannot be: too steep to be\n");
    outcome_free(&outcome);
    eavemark_close(handle);
}

/* What is asked back stands until the job says that it is meant, there and nowhere else. */
static void what_is_asked_back_may_be_meant(void **state)
{
    (void)state;
    static const char rules[] =
        "field \"as_meant\" { type = \"list\", range = { 0, 9 }, stage = \"permit\", ask = \"?\" }\n"
        "field \"as_meant[].at\" { type = \"text\", range = { 1, 200 }, stage = \"permit\","
        " ask = \"?\" }\n"
        "impossible \"a steep front\" { at = \"pitch\", per = \"roof.slopes\", ask_back = true,\n"
        "  when = function(job, slope) if slope.pitch > 4 then\n"
        "    return as_written(slope, \"pitch\") .. \" is steep\" end end }\n";
    static const struct {
        const char *meant, *says;
    } TOLD[] = {
        {"[]", "job.json: /roof/slopes/0/pitch: is asked back: 5:12 is steep. If it is meant, say "
               "so: \"as_meant\": [ { \"at\": \"/roof/slopes/0/pitch\" } ]\n"},
        {"[{\"at\":\"/roof/slopes/0/pitch\"}]", ""},
        {"[{\"at\":\"/roof/slopes/1/pitch\"}]", "/roof/slopes/0/pitch: is asked back"},
        {"[{\"at\":\"/roof/slopes/0/pitch\"},{\"at\":\"/existing/layers\"}]",
         "job.json: /as_meant/1/at: \"/existing/layers\" is no place at which anything is asked "
         "back"},
        {"[{\"at\":\"roof.slopes\"}]", "/as_meant/0/at: \"roof.slopes\" is no place"},
    };
    home_write(&home, "rules/test.lua", rules);
    eavemark *handle = eavemark_open(home.path);
    for (size_t i = 0; i < sizeof(TOLD) / sizeof(TOLD[0]); i++) {
        char more[256];
        snprintf(more, sizeof(more), "\"as_meant\":%s,\"job\"", TOLD[i].meant);
        char *job = text_with(SMALL_JOB, "\"job\"", more);
        struct outcome_of_check outcome = home_check(handle, job, NULL, NULL, NULL);
        if (TOLD[i].says[0] == '\0')
            assert_string_equal(outcome.problems, "");
        else
            assert_has(outcome.problems, TOLD[i].says);
        assert_int_equal(outcome.status,
                         TOLD[i].says[0] == '\0' ? EAVEMARK_NOTHING_FAILED : EAVEMARK_UNUSABLE);
        outcome_free(&outcome);
        free(job);
    }
    eavemark_close(handle);
    home_write(&home, "rules/test.lua",
               "impossible \"it\" { at = \"existing.slippery\","
               " ask_back = true, when = function() end }\n");
    handle = eavemark_open(home.path);
    struct outcome_of_check outcome = home_check(handle, SMALL_JOB, NULL, NULL, NULL);
    assert_int_equal(outcome.status, EAVEMARK_BROKEN);
    assert_has(outcome.problems, "ask_back needs a field as_meant[].at");
    outcome_free(&outcome);
    eavemark_close(handle);
}

static void a_broken_impossibility_breaks_the_check(void **state)
{
    (void)state;
    home_write(&home, "rules/test.lua",
               "impossible \"it\" { at = \"existing.slippery\",\n"
               "  when = function(job) error(\"mine\") end }\n");
    eavemark *handle = eavemark_open(home.path);
    struct outcome_of_check outcome = home_check(handle, SMALL_JOB, NULL, NULL, NULL);
    assert_int_equal(outcome.status, EAVEMARK_BROKEN);
    assert_has(outcome.problems, "rules/test.lua:1: impossible \"it\": rules/test.lua:2: mine");
    outcome_free(&outcome);
    eavemark_close(handle);
}

#define in_home(test) cmocka_unit_test_setup_teardown(test, make_home, remove_home)

int main(void)
{
    const struct CMUnitTest tests[] = {
        in_home(outcomes_follow_how_figures_are_known),
        in_home(an_invented_figure_is_as_good_as_seen),
        in_home(a_limit_may_have_another_bound_and_an_open_end),
        in_home(a_threshold_takes_what_is_exactly_at_it_or_not),
        in_home(nothing_is_judged_by_a_borrowed_figure),
        in_home(a_book_that_may_not_bind_is_doubted_in_the_head),
        in_home(a_failure_prints_its_status),
        in_home(the_weakest_of_several_figures_decides),
        in_home(equality_counts_as_met),
        in_home(comparisons_decide),
        in_home(stray_spacings_have_an_allowance),
        in_home(judgements_combine),
        in_home(a_lacking_fact_is_open_and_asked_for),
        in_home(nothing_is_not_lacking),
        in_home(reads_are_recorded_once_in_order),
        in_home(the_job_reads_as_declared),
        in_home(plain_helpers_help),
        in_home(a_rule_may_be_unable_to_tell),
        in_home(applies_may_say_no),
        in_home(per_judges_each_item),
        in_home(per_goes_two_lists_deep),
        in_home(an_item_without_a_name_is_numbered),
        in_home(measured_facts_take_the_place_of_planned),
        in_home(passes_by_the_jobs_word_are_counted),
        in_home(a_stage_narrows_the_rules),
        in_home(a_stage_keeps_what_earlier_ones_left_undone),
        in_home(a_dropped_rule_says_who_and_why),
        in_home(dropping_what_is_not_there_is_refused),
        in_home(a_place_brings_its_own_rules),
        in_home(a_broken_rule_leaves_the_others),
        in_home(mend_may_be_computed),
        in_home(cautions_follow_the_stage_and_the_danger),
        in_home(a_caution_is_brief_on_the_screen),
        in_home(one_cause_is_told_once),
        in_home(what_is_lacking_is_asked),
        in_home(impossible_facts_make_a_job_unusable),
        in_home(what_is_asked_back_may_be_meant),
        in_home(a_broken_impossibility_breaks_the_check),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
