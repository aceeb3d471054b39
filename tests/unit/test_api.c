/* The public interface: handles used many times and from two threads, exit
 * statuses, overrides, and the fingerprint. */
#include "interface/inner.h"
#include "support/small_law.h"

#include <pthread.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#include <cmocka.h>

static struct temporary_home home;

static const char RULES[] =
    "rule \"a.layers\" { " SMALL_READS " title = \"Layers\", stage = \"permit\", mend = \"x\",\n"
    "  judge = function(job, figure)\n"
    "    return at_most(job.existing.layers, figure \"test.seen\", \"layers\") end }\n"
    "rule \"b.pitch\" { " SMALL_READS
    " title = \"Pitch\", stage = \"permit\", mend = \"x\", per = \"roof.slopes\",\n"
    "  judge = function(job, figure, slope)\n"
    "    return at_least(slope.pitch, figure \"test.pitch_least\", \"rise_in_12\") end }\n";

/* Two that count their calls in a local of the file, and one that does not. */
static const char COUNTING[] =
    "local calls = 0\n"
    "rule \"a.layers\" { " SMALL_READS " title = \"Layers\", stage = \"permit\", mend = \"x\",\n"
    "  judge = function(job, figure)\n"
    "    calls = calls + 1\n"
    "    work(\"call \" .. calls)\n"
    "    return at_most(job.existing.layers, figure \"test.seen\", \"layers\") end }\n"
    "rule \"b.pitch\" { " SMALL_READS
    " title = \"Pitch\", stage = \"permit\", mend = \"x\", per = \"roof.slopes\",\n"
    "  judge = function(job, figure, slope)\n"
    "    calls = calls + 1\n"
    "    work(\"call \" .. calls)\n"
    "    return at_least(slope.pitch, figure \"test.pitch_least\", \"rise_in_12\") end }\n"
    "rule \"c.layers\" { " SMALL_READS " title = \"Layers\", stage = \"permit\", mend = \"x\",\n"
    "  judge = function(job, figure)\n"
    "    return at_most(job.existing.layers, figure \"test.seen\", \"layers\") end }\n";

static int make_home(void **state)
{
    (void)state;
    home_make(&home);
    small_law_write(&home);
    home_write(&home, "rules/test.lua", RULES);
    home_write(
        &home, "jurisdictions/example/a.lua",
        "jurisdiction \"example/a\" { title = \"A\", invented = true, follows = \"model/test\",\n"
        "  from = \"2026-01-01\", figures = { [\"test.seen\"] = { 0, cite = \"1\" } } }\n");
    return 0;
}

static int remove_home(void **state)
{
    (void)state;
    home_remove(&home);
    return 0;
}

/* An invented place "FOLDER/pNUMBER" that follows the small law, with more beside. */
static void write_place(const char *folder, int number, const char *more, char place[32])
{
    char path[64], text[192];
    snprintf(place, 32, "%s/p%d", folder, number);
    snprintf(path, sizeof(path), "jurisdictions/%s.lua", place);
    snprintf(text, sizeof(text),
             "jurisdiction \"%s\" { title = \"P\", invented = true,\n"
             "  follows = \"model/test\"%s }\n",
             place, more);
    home_write(&home, path, text);
}

static char *report(eavemark *handle, const char *job, const char *jurisdiction)
{
    struct outcome_of_check outcome = home_check(handle, job, jurisdiction, NULL, NULL);
    assert_string_equal(outcome.problems, "");
    free(outcome.problems);
    assert_non_null(outcome.json);
    return outcome.json;
}

static char *report_in(const char *path)
{
    eavemark *handle = eavemark_open(path);
    char *json = report(handle, SMALL_JOB, NULL);
    eavemark_close(handle);
    return json;
}

static void serves_alike(void)
{
    eavemark *handle = eavemark_open(home.path);
    char *other = text_with(SMALL_JOB, "\"layers\": 1", "\"layers\": 5");
    char *first = report(handle, SMALL_JOB, NULL);
    char *second = report(handle, other, NULL);
    assert_string_not_equal(first, second);
    for (int i = 0; i < 50; i++) {
        char *again = report(handle, i % 2 == 0 ? SMALL_JOB : other, NULL);
        assert_string_equal(again, i % 2 == 0 ? first : second);
        free(again);
    }
    free(first);
    free(second);
    free(other);
    eavemark_close(handle);
}

static void a_handle_serves_many_jobs_alike(void **state)
{
    (void)state;
    serves_alike();
}

/* A counter at the top of the rule file starts afresh for each job, and for each plane. */
static void a_counter_never_gets_past_one(void **state)
{
    (void)state;
    home_write(&home, "rules/test.lua", COUNTING);
    serves_alike();
    char *counted = report_in(home.path);
    assert_member(counted, "a.layers", 0, "work", "[\"call 1\"]");
    assert_member(counted, "b.pitch", 0, "work", "[\"call 1\"]");
    assert_member(counted, "b.pitch", 1, "work", "[\"call 1\"]");
    free(counted);
}

/* A batch under many places keeps a bounded number of laws; a result that is held stays
 * good, and so does what it is made of. */
static void a_batch_keeps_some_laws_only(void **state)
{
    (void)state;
    eavemark *handle = eavemark_open(home.path);
    for (int i = 0; i < 150; i++) {
        char place[32];
        write_place("many", i, "", place);
    }
    char *alone = report(handle, SMALL_JOB, "many/p0");
    const struct eavemark_request request = {
        .name = "j", .text = SMALL_JOB, .jurisdiction = "many/p0", .length = strlen(SMALL_JOB)};
    for (int round = 0; round < 2; round++) {
        eavemark_result *held = round == 0 ? NULL : eavemark_check(handle, &request);
        for (int i = 0; i < 150; i++) {
            char place[32];
            snprintf(place, sizeof(place), "many/p%d", i);
            free(report(handle, SMALL_JOB, place));
            if (held == NULL)
                assert_in_range(inner_law_count(handle), 1, 64);
        }
        if (held != NULL) {
            char *still = eavemark_result_report(held, EAVEMARK_JSON_LINE, EAVEMARK_ALL);
            assert_string_equal(still, alone);
            free(still);
            eavemark_result_free(held);
        }
    }
    free(report(handle, SMALL_JOB, NULL));
    assert_in_range(inner_law_count(handle), 1, 64);
    free(alone);
    eavemark_close(handle);
}

/* Nothing but the law is left behind by calls that give a report: they keep as few. */
static void reports_under_many_places_keep_some_laws_only(void **state)
{
    (void)state;
    eavemark *handle = eavemark_open(home.path);
    for (int i = 0; i < 70; i++) {
        char place[32], *report = NULL, *problems = NULL;
        write_place("many", i, "", place);
        const struct eavemark_request request = {
            .name = "j", .text = SMALL_JOB, .jurisdiction = place, .length = strlen(SMALL_JOB)};
        if (i % 2 == 0)
            eavemark_takeoff(handle, &request, EAVEMARK_TEXT, &report, &problems);
        else
            eavemark_questions(handle, &request, EAVEMARK_TEXT, &report, &problems);
        assert_string_equal(problems, "");
        free(report);
        free(problems);
        assert_in_range(inner_law_count(handle), 1, 64);
    }
    eavemark_close(handle);
}

/* eavemark.h: "what knows no such form gives text". */
static char *report_in_form(eavemark *handle, int call, enum eavemark_form form)
{
    const struct eavemark_request one = {
        .name = "j", .text = SMALL_JOB, .jurisdiction = "example/a", .length = strlen(SMALL_JOB)};
    const struct eavemark_request two[2] = {one, one}, none = {0};
    char *report = NULL, *problems = NULL;
    switch (call) {
    case 0:
        eavemark_explain(handle, "a.layers", &one, form, &report, &problems);
        break;
    case 1:
        eavemark_figures(handle, "test", NULL, &none, form, &report, &problems);
        break;
    case 2:
        eavemark_compare(handle, two, 2, form, &report, &problems);
        break;
    case 3:
        eavemark_proof(handle, "example/a", NULL, NULL, form, &report, &problems);
        break;
    case 4:
        eavemark_questions(handle, &one, form, &report, &problems);
        break;
    case 5:
        eavemark_places(handle, NULL, form, &report, &problems);
        break;
    default:
        eavemark_takeoff(handle, &one, form, &report, &problems);
        break;
    }
    free(problems);
    return report;
}

static void an_unknown_form_gives_text(void **state)
{
    (void)state;
    eavemark *handle = eavemark_open(home.path);
    for (int call = 0; call <= 6; call++) {
        char *text = report_in_form(handle, call, EAVEMARK_TEXT);
        char *page = report_in_form(handle, call, EAVEMARK_HTML);
        char *table = report_in_form(handle, call, call == 6 ? EAVEMARK_TEXT : EAVEMARK_CSV);
        char *json = report_in_form(handle, call, EAVEMARK_JSON_LINE);
        assert_non_null(text);
        assert_string_equal(page, text);
        assert_string_equal(table, text);
        assert_int_equal(json[0], '{');
        free(text);
        free(page);
        free(table);
        free(json);
    }
    eavemark_close(handle);
}

/* A proof goes through more places than it keeps loaded; the rules that a result names
 * stay all the same. */
static void a_result_outlives_a_proof(void **state)
{
    (void)state;
    eavemark *handle = eavemark_open(home.path);
    char *proof = NULL, *problems = NULL;
    for (int i = 0; i < 20; i++) {
        char place[32];
        write_place("many", i, "", place);
    }
    const struct eavemark_request request = {
        .name = "j", .text = SMALL_JOB, .jurisdiction = "many/p0", .length = strlen(SMALL_JOB)};
    eavemark_result *held = eavemark_check(handle, &request);
    char *before = eavemark_result_report(held, EAVEMARK_TEXT, EAVEMARK_ALL);
    eavemark_proof(handle, NULL, NULL, NULL, EAVEMARK_TEXT, &proof, &problems);
    char *after = eavemark_result_report(held, EAVEMARK_TEXT, EAVEMARK_ALL);
    assert_string_equal(after, before);
    free(proof);
    free(problems);
    free(before);
    free(after);
    eavemark_result_free(held);
    eavemark_close(handle);
}

/* What a county's rules keep counts, not only how many laws there are. */
static void large_laws_are_fewer(void **state)
{
    (void)state;
    enum { KEPT_MB = 15, PLACES = 30, ALL_MB = 256 };
    eavemark *handle = eavemark_open(home.path);
    size_t most = 0;
    static const char LARGE[] =
        "local kept = {}\n"
        "for i = 1, 60000 do kept[i] = { i, i, i, i } end\n"
        "rule \"large.one\" { reads = { facts = { \"existing.layers\" } }, title = \"x\", stage = \"permit\", mend = \"x\",\n"
        "  judge = function(job) if kept[1] then return job.existing.layers end end }\n";
    for (int i = 0; i < PLACES; i++) {
        char place[32], path[64], rules[64];
        /* Each a file of its own: laws of one file would share what it keeps. */
        snprintf(path, sizeof(path), "jurisdictions/large/own%d.rules.lua", i);
        snprintf(rules, sizeof(rules), ", rules = \"own%d.rules.lua\"", i);
        home_write(&home, path, LARGE);
        write_place("large", i, rules, place);
        free(report(handle, SMALL_JOB, place));
        most = inner_law_count(handle) > most ? inner_law_count(handle) : most;
    }
    assert_in_range(most, 2, ALL_MB / KEPT_MB + 1);
    eavemark_close(handle);
}

/* Another place, a broken job and back: nothing of them stays. */
static void jobs_between_leave_no_trace(void **state)
{
    (void)state;
    eavemark *handle = eavemark_open(home.path);
    char *first = report(handle, SMALL_JOB, NULL);
    static const char *const between[] = {"{", "[]", "{}", "{ \"job\": 5 }", ""};
    for (size_t i = 0; i < sizeof(between) / sizeof(between[0]); i++) {
        struct outcome_of_check bad = home_check(handle, between[i], NULL, NULL, NULL);
        assert_int_equal(bad.status, EAVEMARK_UNUSABLE);
        assert_string_not_equal(bad.problems, "");
        assert_null(bad.json);
        outcome_free(&bad);
        char *there = report(handle, SMALL_JOB, "example/a");
        assert_member(there, "a.layers", 0, "outcome", "fail");
        free(there);
        char *again = report(handle, SMALL_JOB, NULL);
        assert_string_equal(again, first);
        free(again);
    }
    free(first);
    eavemark_close(handle);
}

static void assert_status(const char *job, const char *jurisdiction, const char *date,
                          const char *stage, enum eavemark_status status, const char *words)
{
    eavemark *handle = eavemark_open(home.path);
    struct outcome_of_check outcome = home_check(handle, job, jurisdiction, date, stage);
    if (outcome.status != status)
        fail_msg("status %d, not %d: %s", outcome.status, status, outcome.problems);
    assert_has(outcome.problems, words);
    outcome_free(&outcome);
    eavemark_close(handle);
}

static void statuses_say_what_it_came_to(void **state)
{
    (void)state;
    char *steep = text_with(SMALL_JOB, "3:12", "4:12");
    assert_status(steep, NULL, NULL, NULL, EAVEMARK_NOTHING_FAILED, "");
    assert_status(SMALL_JOB, NULL, NULL, NULL, EAVEMARK_FAILED, "");
    assert_status(SMALL_JOB, "example/b", NULL, NULL, EAVEMARK_UNUSABLE,
                  "no jurisdiction is named \"example/b\"; the nearest are: example/a");
    assert_status(SMALL_JOB, "example/a", "2025-12-31", NULL, EAVEMARK_UNUSABLE,
                  "no edition of example/a covers 2025-12-31");
    assert_status(SMALL_JOB, NULL, "2025-13-01", NULL, EAVEMARK_UNUSABLE, "is not a date");
    assert_status(SMALL_JOB, NULL, NULL, "roof", EAVEMARK_UNUSABLE, "\"roof\" is not one of");
    home_write(&home, "rules/bad.lua", "rule 5");
    assert_status(SMALL_JOB, NULL, NULL, NULL, EAVEMARK_BROKEN, "rules/bad.lua:1:");
    free(steep);
}

/* Everything wrong with a job in one go, and its place with it. */
static void all_problems_come_in_one_go(void **state)
{
    (void)state;
    eavemark *handle = eavemark_open(home.path);
    char *job = text_with(SMALL_JOB, "\"layers\": 1", "\"layers\": 99, \"colour\": \"red\"");
    struct outcome_of_check outcome = home_check(handle, job, "example/nowhere", NULL, NULL);
    assert_int_equal(outcome.status, EAVEMARK_UNUSABLE);
    assert_has(outcome.problems, "/jurisdiction: no jurisdiction is named");
    assert_has(outcome.problems, "job.json: /existing/layers: ");
    outcome_free(&outcome);
    free(job);
    eavemark_close(handle);
}

/* The same job, next county: a fact that only the job's own place asks for is
 * passed over there, a typo is not. */
static void a_job_may_be_tried_in_the_next_county(void **state)
{
    (void)state;
    home_write(&home, "jurisdictions/example/own.lua",
               "jurisdiction \"example/own\" { title = \"Own\", invented = true,\n"
               "follows = \"example/a\", rules = \"own.rules.lua\" }\n");
    home_write(
        &home, "jurisdictions/example/own.rules.lua",
        "field \"existing.moss\" { type = \"yes_no\", stage = \"permit\", ask = \"Moss?\" }\n");
    char *job = text_with(SMALL_JOB, "\"layers\": 1", "\"layers\": 1, \"moss\": true");
    assert_status(job, "example/a", NULL, NULL, EAVEMARK_UNUSABLE, "/existing/moss: unknown field");
    char *own = text_with(job, "\"jurisdiction\": \"model/test\"",
                          "\"jurisdiction\": \"example/own\"");
    assert_status(own, NULL, NULL, NULL, EAVEMARK_FAILED, "");
    assert_status(own, "example/a", NULL, NULL, EAVEMARK_FAILED, "");
    char *typo = text_with(own, "\"moss\"", "\"mosss\"");
    assert_status(typo, "example/a", NULL, NULL, EAVEMARK_UNUSABLE,
                  "/existing/mosss: unknown field");
    free(typo);
    free(own);
    free(job);
}

/* What only holds the figures common to editions is not a law by itself. */
static void no_job_is_judged_under_a_mere_base(void **state)
{
    (void)state;
    home_write(
        &home, "jurisdictions/example/base.lua",
        "jurisdiction \"example/base\" { title = \"Base\", invented = true, base_only = true,\n"
        "follows = \"model/test\" }\n");
    home_write(&home, "jurisdictions/example/on.lua",
               "jurisdiction \"example/on\" { title = \"On\", invented = true,\n"
               "follows = \"example/base\" }\n");
    assert_status(SMALL_JOB, "example/base", NULL, NULL, EAVEMARK_UNUSABLE,
                  "/jurisdiction: \"example/base\" only holds what others build on");
    assert_status(SMALL_JOB, "example/on", NULL, NULL, EAVEMARK_FAILED, "");
}

/* Strict: what is open, not met or disputed; not what is met on an unread figure. */
static void strict_counts_what_is_open_not_met_or_disputed(void **state)
{
    (void)state;
    static const struct {
        const char *judge;
        enum eavemark_status strict;
    } rows[] = {
        {"at_most(1, figure \"test.memory\", \"layers\")", EAVEMARK_NOTHING_FAILED},
        {"at_most(1, figure \"test.disputed\", \"layers\")", EAVEMARK_FAILED},
        {"at_most(9, figure \"test.practice\", \"layers\")", EAVEMARK_FAILED},
        {"shown(job.existing.slippery, figure \"test.required\" and \"x\" or \"y\")",
         EAVEMARK_FAILED},
    };
    for (size_t i = 0; i < sizeof(rows) / sizeof(rows[0]); i++) {
        char rules[512];
        snprintf(rules, sizeof(rules),
                 "rule \"a.x\" { " SMALL_READS " title = \"x\", stage = \"permit\", mend = \"x\",\n"
                 " judge = function(job, figure) return %s end }\n",
                 rows[i].judge);
        home_write(&home, "rules/test.lua", rules);
        eavemark *handle = eavemark_open(home.path);
        const struct eavemark_request request = {
            .name = "j", .text = SMALL_JOB, .length = strlen(SMALL_JOB)};
        eavemark_result *result = eavemark_check(handle, &request);
        assert_int_equal(eavemark_result_status(result, false), EAVEMARK_NOTHING_FAILED);
        assert_int_equal(eavemark_result_status(result, true), rows[i].strict);
        eavemark_result_free(result);
        eavemark_close(handle);
    }
}

static void a_home_without_rules_is_told(void **state)
{
    (void)state;
    eavemark *handle = eavemark_open("/nonexistent/home");
    struct outcome_of_check outcome = home_check(handle, SMALL_JOB, NULL, NULL, NULL);
    assert_int_equal(outcome.status, EAVEMARK_BROKEN);
    assert_has(outcome.problems, "rules/fields.lua: there is no such file");
    outcome_free(&outcome);
    eavemark_close(handle);
    eavemark_close(NULL);
    eavemark_result_free(NULL);
}

static void a_job_is_read_from_its_file(void **state)
{
    (void)state;
    home_write(&home, "job.json", SMALL_JOB);
    eavemark *handle = eavemark_open(home.path);
    char name[128];
    snprintf(name, sizeof(name), "%s", home_path(&home, "job.json"));
    const struct eavemark_request request = {.name = name};
    eavemark_result *result = eavemark_check(handle, &request);
    assert_string_equal(eavemark_result_problems(result), "");
    char *from_file = eavemark_result_report(result, EAVEMARK_JSON_LINE, EAVEMARK_ALL);
    char *from_text = report(handle, SMALL_JOB, NULL);
    assert_string_equal(from_file, from_text);
    free(from_file);
    free(from_text);
    eavemark_result_free(result);
    eavemark_close(handle);
}

/* Threads -------------------------------------------------------------------- */

enum { ROUNDS = 15 };

struct worker {
    const char *home, *jurisdiction;
    char *reports[ROUNDS];
};

/* No cmocka in here: an assertion may not leave its thread. */
static eavemark_result *check_wanting(eavemark *handle, enum eavemark_wanted wanted,
                                      const char *stage)
{
    const struct eavemark_request request = {.name = "j",
                                             .text = SMALL_JOB,
                                             .length = strlen(SMALL_JOB),
                                             .stage = stage,
                                             .wanted = wanted};
    eavemark_result *result = eavemark_check(handle, &request);
    assert_non_null(result);
    assert_string_equal(eavemark_result_problems(result), "");
    return result;
}

/* Less being wanted, a report is either as ever or not given: never a part of one. A few
 * rounds, for most of a batch is recalled. */
static void what_was_not_wanted_is_not_shown(void **state)
{
    (void)state;
    static const struct {
        enum eavemark_form form;
        unsigned options;
        enum eavemark_wanted most;
    } REPORTS[] = {
        {EAVEMARK_HTML, EAVEMARK_ALL, EAVEMARK_WANT_ANY},
        {EAVEMARK_HTML, EAVEMARK_DRAWINGS, EAVEMARK_WANT_ANY},
        {EAVEMARK_HTML, 0, EAVEMARK_WANT_NO_DRAWINGS},
        {EAVEMARK_TEXT, EAVEMARK_ALL, EAVEMARK_WANT_NO_DRAWINGS},
        {EAVEMARK_JSON_LINE, EAVEMARK_ALL, EAVEMARK_WANT_NO_DRAWINGS},
        {EAVEMARK_JSON_LINE, 0, EAVEMARK_WANT_JSON},
        {EAVEMARK_JSON, EAVEMARK_BRIEF, EAVEMARK_WANT_BRIEF},
    };
    home_write(&home, "rules/more.lua",
               "for _, name in ipairs{ \"c.one\", \"c.two\", \"d.three\" } do\n"
               "  rule(name) { title = \"Never\", stage = \"permit\", mend = \"x\",\n"
               "    applies = function(job) return job.existing.layers > 9 end,\n"
               "    judge = function(job, figure)\n"
               "      return at_most(job.existing.layers, figure \"test.seen\", \"layers\") end }\n"
               "end\n");
    eavemark *handle = eavemark_open(home.path);
    for (int round = 0; round < 12; round++) {
        const enum eavemark_wanted wanted = (enum eavemark_wanted)(round % 4);
        const char *stage = round % 3 == 0 ? "deck" : NULL;
        eavemark_result *any = check_wanting(handle, EAVEMARK_WANT_ANY, stage);
        eavemark_result *less = check_wanting(handle, wanted, stage);
        assert_int_equal(eavemark_result_status(any, true), eavemark_result_status(less, true));
        for (size_t i = 0; i < sizeof(REPORTS) / sizeof(REPORTS[0]); i++) {
            char *expected = eavemark_result_report(any, REPORTS[i].form, REPORTS[i].options);
            char *given = eavemark_result_report(less, REPORTS[i].form, REPORTS[i].options);
            assert_non_null(expected);
            if (wanted > REPORTS[i].most)
                assert_null(given);
            else
                assert_string_equal(given, expected);
            free(expected);
            free(given);
        }
        char *changes = eavemark_result_changes(any, less, 0);
        assert_int_equal(changes == NULL, wanted > EAVEMARK_WANT_NO_DRAWINGS);
        free(changes);
        eavemark_result_free(any);
        eavemark_result_free(less);
    }
    eavemark_close(handle);
}

static void *work(void *data)
{
    struct worker *worker = data;
    eavemark *handle = eavemark_open(worker->home);
    for (int i = 0; handle != NULL && i < ROUNDS; i++) {
        const struct eavemark_request request = {.name = "j",
                                                 .text = SMALL_JOB,
                                                 .length = strlen(SMALL_JOB),
                                                 .jurisdiction = worker->jurisdiction};
        eavemark_result *result = eavemark_check(handle, &request);
        if (result != NULL)
            worker->reports[i] = eavemark_result_report(result, EAVEMARK_JSON_LINE, EAVEMARK_ALL);
        eavemark_result_free(result);
    }
    eavemark_close(handle);
    return NULL;
}

static void two_handles_serve_two_threads(void **state)
{
    (void)state;
    struct worker workers[2] = {{.home = home.path, .jurisdiction = NULL},
                                {.home = home.path, .jurisdiction = "example/a"}};
    pthread_t threads[2];
    for (size_t i = 0; i < 2; i++)
        assert_int_equal(pthread_create(&threads[i], NULL, work, &workers[i]), 0);
    for (size_t i = 0; i < 2; i++)
        assert_int_equal(pthread_join(threads[i], NULL), 0);
    eavemark *handle = eavemark_open(home.path);
    for (size_t i = 0; i < 2; i++) {
        char *alone = report(handle, SMALL_JOB, workers[i].jurisdiction);
        for (int round = 0; round < ROUNDS; round++) {
            assert_non_null(workers[i].reports[round]);
            assert_string_equal(workers[i].reports[round], alone);
            free(workers[i].reports[round]);
        }
        free(alone);
    }
    eavemark_close(handle);
}

/* Fingerprint ------------------------------------------------------------------ */

static void fingerprint_of(const char *path, char out[65])
{
    char *json = report_in(path);
    const char *at = strstr(json, "\"fingerprint\":\"");
    assert_non_null(at);
    snprintf(out, 65, "%.64s", at + strlen("\"fingerprint\":\""));
    assert_int_equal(strspn(out, "0123456789abcdef"), 64);
    free(json);
}

static void the_fingerprint_is_that_of_the_files(void **state)
{
    (void)state;
    char first[65], now[65];
    fingerprint_of(home.path, first);
    fingerprint_of(home.path, now);
    assert_string_equal(now, first);
    /* The same files elsewhere. */
    struct temporary_home other;
    home_make(&other);
    small_law_write(&other);
    home_write(&other, "rules/test.lua", RULES);
    fingerprint_of(other.path, now);
    assert_string_equal(now, first);
    home_remove(&other);
    /* A place that the job's does not follow, and what is no rule file. */
    home_write(&home, "jurisdictions/example/b.lua", "not read\n");
    home_write(&home, "rules/README.md", "not read\n");
    fingerprint_of(home.path, now);
    assert_string_equal(now, first);
}

static void the_fingerprint_changes_with_any_file(void **state)
{
    (void)state;
    static const char *const files[] = {"rules/test.lua", "rules/fields.lua",
                                        "jurisdictions/model/test.lua"};
    char before[65], now[65];
    fingerprint_of(home.path, before);
    for (size_t i = 0; i < sizeof(files) / sizeof(files[0]); i++) {
        size_t length;
        char *text = file_text(home_path(&home, files[i]), &length);
        char *longer = malloc(length + 2);
        memcpy(longer, text, length);
        memcpy(longer + length, "\n", 2);
        home_write(&home, files[i], longer);
        fingerprint_of(home.path, now);
        assert_string_not_equal(now, before);
        home_write_n(&home, files[i], text, length);
        fingerprint_of(home.path, now);
        assert_string_equal(now, before);
        free(longer);
        free(text);
    }
    home_write(&home, "rules/more.lua", "-- one file more\n");
    fingerprint_of(home.path, now);
    assert_string_not_equal(now, before);
    /* Another name for the same text is another rule book. */
    char moved[65];
    home_delete(&home, "rules/more.lua");
    home_write(&home, "rules/other.lua", "-- one file more\n");
    fingerprint_of(home.path, moved);
    assert_string_not_equal(moved, now);
}

#define in_home(test) cmocka_unit_test_setup_teardown(test, make_home, remove_home)

int main(void)
{
    const struct CMUnitTest tests[] = {
        in_home(a_handle_serves_many_jobs_alike),
        in_home(a_counter_never_gets_past_one),
        in_home(a_batch_keeps_some_laws_only),
        in_home(large_laws_are_fewer),
        in_home(reports_under_many_places_keep_some_laws_only),
        in_home(an_unknown_form_gives_text),
        in_home(a_result_outlives_a_proof),
        in_home(jobs_between_leave_no_trace),
        in_home(statuses_say_what_it_came_to),
        in_home(all_problems_come_in_one_go),
        in_home(a_job_may_be_tried_in_the_next_county),
        in_home(no_job_is_judged_under_a_mere_base),
        in_home(strict_counts_what_is_open_not_met_or_disputed),
        in_home(a_home_without_rules_is_told),
        in_home(a_job_is_read_from_its_file),
        in_home(what_was_not_wanted_is_not_shown),
        in_home(two_handles_serve_two_threads),
        in_home(the_fingerprint_is_that_of_the_files),
        in_home(the_fingerprint_changes_with_any_file),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
