/* The library in a program not made for it: whose locale writes numbers with a comma and
 * orders texts its own way, and that calls without what a call needs. */
#include "support/small_law.h"

#include <locale.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

static const char JOB[] = EAVEMARK_HOME_DIR "/tests/houses/porch-tear-off/job.json";

/* A locale of our own, so that none needs to be installed: 1.234,5, and B before A. */
static const char LOCALE[] =
    "LC_NUMERIC\ndecimal_point \",\"\nthousands_sep \".\"\ngrouping 3;3\nEND LC_NUMERIC\n"
    "LC_COLLATE\norder_start forward\n<U0042>\n<U0041>\norder_end\nEND LC_COLLATE\n";

/* Sets it. Its makers warn of the categories that it leaves out, and return 1. */
static void set_foreign(const struct temporary_home *home)
{
    char command[512];
    home_write(home, "foreign.src", LOCALE);
    snprintf(command, sizeof(command),
             "localedef --no-archive -c -i %s/foreign.src %s/foreign >%s/log 2>&1", home->path,
             home->path, home->path);
    const int ended = system(command);
    (void)ended;
    setenv("LOCPATH", home->path, 1);
    if (setlocale(LC_ALL, "foreign") == NULL)
        fail_msg("localedef (of the C library's own tools) made no locale");
    assert_string_equal(localeconv()->decimal_point, ",");
}

enum { TEXTS = 16 };

/* What the library says of a job, in each way it has. */
struct said {
    char *texts[TEXTS];
    size_t count;
};

static void keep(struct said *said, char *text)
{
    assert_in_range(said->count, 0, TEXTS - 1);
    said->texts[said->count++] = text;
}

static void say_of_job(eavemark *handle, const struct eavemark_request *request, struct said *said)
{
    eavemark_result *result = eavemark_check(handle, request);
    for (int form = EAVEMARK_TEXT; form <= EAVEMARK_HTML; form++)
        keep(said, eavemark_result_report(result, (enum eavemark_form)form, EAVEMARK_ALL));
    eavemark_result_free(result);
}

static void say_all(struct said *said)
{
    char *report, *problems;
    size_t answered, skipped;
    eavemark *handle = eavemark_open(EAVEMARK_HOME_DIR);
    const struct eavemark_request request = {.name = JOB, .stage = "dry-in"};
    say_of_job(handle, &request, said);
    assert_int_equal(eavemark_takeoff(handle, &request, EAVEMARK_TEXT, &report, &problems), 0);
    keep(said, report);
    keep(said, problems);
    assert_int_equal(eavemark_card(handle, &request, EAVEMARK_TEXT, &report, &problems), 0);
    keep(said, report);
    keep(said, problems);
    assert_int_equal(eavemark_fields(handle, NULL, true, NULL, NULL, &report), 0);
    keep(said, report);
    enum eavemark_status status;
    eavemark_interview *interview = eavemark_interview_open(handle, &request, &status, &problems);
    keep(said, problems);
    keep(said, eavemark_interview_job(interview, &answered, &skipped, &problems));
    keep(said, problems);
    eavemark_interview_close(interview);
    eavemark_close(handle);
}

static void the_hosts_locale_changes_nothing(void **state)
{
    (void)state;
    struct temporary_home home;
    struct said plain = {.count = 0}, foreign = {.count = 0};
    home_make(&home);
    say_all(&plain);
    set_foreign(&home);
    say_all(&foreign);
    char point[8];
    snprintf(point, sizeof(point), "%.1f", 0.5);
    setlocale(LC_ALL, "C");
    assert_string_equal(point, "0,5"); /* the host has it still */
    assert_int_equal(plain.count, foreign.count);
    for (size_t i = 0; i < plain.count; i++) {
        assert_non_null(plain.texts[i]);
        assert_non_null(foreign.texts[i]);
        assert_string_equal(plain.texts[i], foreign.texts[i]);
        free(plain.texts[i]);
        free(foreign.texts[i]);
    }
    home_remove(&home);
}

/* Texts in a rule are ordered by their bytes. */
static void nor_the_order_of_texts(void **state)
{
    (void)state;
    struct temporary_home home;
    home_make(&home);
    small_law_write(&home);
    home_write(
        &home, "rules/a.lua",
        "rule \"a.order\" { reads = { figures = { \"test.seen\" } }, title = \"x\", stage = \"permit\", mend = \"x\",\n"
        "  judge = function(job, figure)\n"
        "    return at_most('A' < 'B' and 1 or 9, figure \"test.seen\", \"layers\") end }\n");
    set_foreign(&home);
    eavemark *handle = eavemark_open(home.path);
    struct outcome_of_check outcome = home_check(handle, SMALL_JOB, NULL, NULL, NULL);
    eavemark_close(handle);
    setlocale(LC_ALL, "C");
    assert_member(outcome.json, "a.order", 0, "outcome", "pass");
    outcome_free(&outcome);
    home_remove(&home);
}

/* Calls without what they need ---------------------------------------------------------- */

/* report and text: where the call was to put its answer; report NULL: it has but one. */
static void assert_refused(enum eavemark_status status, char **report, char **text,
                           const char *words)
{
    assert_int_equal(status, EAVEMARK_UNUSABLE);
    assert_true(report == NULL || *report == NULL);
    assert_has(*text, words);
    free(*text);
}

static void assert_check_refused(eavemark *handle, const struct eavemark_request *request,
                                 const char *words)
{
    eavemark_result *result = eavemark_check(handle, request);
    assert_non_null(result);
    assert_int_equal(eavemark_result_status(result, false), EAVEMARK_UNUSABLE);
    assert_has(eavemark_result_problems(result), words);
    assert_null(eavemark_result_report(result, EAVEMARK_TEXT, 0));
    eavemark_result_free(result);
}

static const char NO_HANDLE[] = "without a handle", NO_REQUEST[] = "without a request",
                  NO_JOB[] = "neither a text nor the name", NO_FORM[] = "no such form";

static void checks_without_what_they_need(void **state)
{
    (void)state;
    const struct eavemark_request request = {.name = JOB}, empty = {.stage = "deck"};
    assert_null(eavemark_open(NULL));
    eavemark_close(NULL);
    eavemark *handle = eavemark_open(EAVEMARK_HOME_DIR);
    assert_check_refused(NULL, &request, NO_HANDLE);
    assert_check_refused(handle, NULL, NO_REQUEST);
    assert_check_refused(handle, &empty, NO_JOB);
    assert_int_equal(eavemark_result_status(NULL, true), EAVEMARK_UNUSABLE);
    assert_has(eavemark_result_problems(NULL), "no result");
    assert_null(eavemark_result_report(NULL, EAVEMARK_TEXT, 0));
    eavemark_result *result = eavemark_check(handle, &request);
    assert_null(eavemark_result_report(result, (enum eavemark_form)5, 0));
    assert_null(eavemark_result_report(result, (enum eavemark_form) - 1, 0));
    assert_null(eavemark_result_changes(result, NULL, 0));
    assert_null(eavemark_result_changes(NULL, result, 0));
    eavemark_result_free(result);
    eavemark_result_free(NULL);
    eavemark_close(handle);
}

typedef enum eavemark_status call(eavemark *handle, const struct eavemark_request *request,
                                  enum eavemark_form form, char **report, char **problems);

static enum eavemark_status compare_two(eavemark *handle, const struct eavemark_request *request,
                                        enum eavemark_form form, char **report, char **problems)
{
    struct eavemark_request both[2];
    for (size_t i = 0; i < 2 && request != NULL; i++)
        both[i] = *request;
    return eavemark_compare(handle, request == NULL ? NULL : both, 2, form, report, problems);
}

static void reports_without_what_they_need(void **state)
{
    (void)state;
    static call *const CALLS[] = {eavemark_takeoff, eavemark_card, eavemark_questions, compare_two};
    const struct eavemark_request request = {.name = JOB, .stage = "deck"},
                                  empty = {.stage = "deck"};
    const enum eavemark_form none = (enum eavemark_form)9;
    eavemark *handle = eavemark_open(EAVEMARK_HOME_DIR);
    for (size_t i = 0; i < sizeof(CALLS) / sizeof(CALLS[0]); i++) {
        char *report = NULL, *problems = NULL;
        assert_refused(CALLS[i](NULL, &request, EAVEMARK_TEXT, &report, &problems), &report,
                       &problems, NO_HANDLE);
        assert_refused(CALLS[i](handle, NULL, EAVEMARK_TEXT, &report, &problems), &report,
                       &problems, NO_REQUEST);
        assert_refused(CALLS[i](handle, &empty, EAVEMARK_TEXT, &report, &problems), &report,
                       &problems, NO_JOB);
        assert_refused(CALLS[i](handle, &request, none, &report, &problems), &report, &problems,
                       NO_FORM);
        assert_refused(CALLS[i](handle, &request, EAVEMARK_TEXT, NULL, &problems), NULL, &problems,
                       "without a place");
        assert_int_equal(CALLS[i](handle, &request, EAVEMARK_TEXT, &report, NULL),
                         EAVEMARK_UNUSABLE);
        assert_null(report);
    }
    eavemark_close(handle);
}

static void other_calls_without_what_they_need(void **state)
{
    (void)state;
    char *report = NULL, *text = NULL;
    const enum eavemark_form none = (enum eavemark_form)9;
    eavemark *handle = eavemark_open(EAVEMARK_HOME_DIR);
    assert_refused(eavemark_explain(NULL, NULL, NULL, 0, &report, &text), &report, &text,
                   NO_HANDLE);
    assert_refused(eavemark_explain(handle, NULL, NULL, none, &report, &text), &report, &text,
                   NO_FORM);
    assert_refused(eavemark_figures(NULL, NULL, NULL, NULL, 0, &report, &text), &report, &text,
                   NO_HANDLE);
    assert_refused(eavemark_figures(handle, NULL, NULL, NULL, none, &report, &text), &report, &text,
                   NO_FORM);
    assert_refused(eavemark_proof(NULL, NULL, NULL, NULL, 0, &report, &text), &report, &text,
                   NO_HANDLE);
    assert_refused(eavemark_proof(handle, "deck", NULL, NULL, none, &report, &text), &report, &text,
                   NO_FORM);
    assert_refused(eavemark_mutate(NULL, NULL, &report, &text), &report, &text, NO_HANDLE);
    assert_refused(eavemark_compare(handle, NULL, 65, 0, &report, &text), &report, &text,
                   NO_REQUEST);
    assert_refused(eavemark_fields(NULL, NULL, false, NULL, NULL, &text), NULL, &text, NO_HANDLE);
    assert_int_equal(eavemark_fields(handle, NULL, false, NULL, NULL, NULL), EAVEMARK_UNUSABLE);
    assert_refused(eavemark_list(NULL, EAVEMARK_RULES, &text), NULL, &text, NO_HANDLE);
    assert_refused(eavemark_list(handle, (enum eavemark_names)99, &text), NULL, &text,
                   "no such kind");
    assert_int_equal(eavemark_list(handle, EAVEMARK_RULES, NULL), EAVEMARK_UNUSABLE);
    static const char *const WORDS[3] = {"zz-x", "model/irc-2021", "X"};
    for (int i = 0; i < 3; i++)
        assert_refused(eavemark_county_new(handle, i == 0 ? NULL : WORDS[0],
                                           i == 1 ? NULL : WORDS[1], i == 2 ? NULL : WORDS[2],
                                           &text),
                       NULL, &text, "needs an id");
    assert_refused(eavemark_county_new(NULL, WORDS[0], WORDS[1], WORDS[2], &text), NULL, &text,
                   NO_HANDLE);
    eavemark_close(handle);
}

static void interviews_without_what_they_need(void **state)
{
    (void)state;
    enum eavemark_status status = EAVEMARK_NOTHING_FAILED;
    char *text = NULL;
    size_t answered, skipped;
    eavemark *handle = eavemark_open(EAVEMARK_HOME_DIR);
    assert_null(eavemark_interview_open(NULL, NULL, &status, &text));
    assert_refused(status, NULL, &text, NO_HANDLE);
    assert_null(eavemark_interview_open(handle, NULL, NULL, &text));
    free(text);
    assert_null(eavemark_interview_open(handle, NULL, &status, NULL));
    assert_null(eavemark_interview_ask(NULL, false, &text));
    assert_refused(EAVEMARK_UNUSABLE, NULL, &text, "without an interview");
    assert_false(eavemark_interview_answer(NULL, "y", &text));
    free(text);
    assert_false(eavemark_interview_skip(NULL, &text));
    free(text);
    assert_false(eavemark_interview_back(NULL));
    assert_false(eavemark_interview_wants_name(NULL));
    assert_null(eavemark_interview_job(NULL, &answered, &skipped, &text));
    free(text);
    eavemark_interview_close(NULL);

    eavemark_interview *interview = eavemark_interview_open(handle, NULL, &status, &text);
    assert_non_null(interview);
    free(text);
    assert_false(eavemark_interview_answer(interview, "y", &text));
    assert_string_equal(text, "nothing was asked");
    free(text);
    assert_false(eavemark_interview_skip(interview, &text));
    assert_string_equal(text, "nothing was asked");
    free(text);
    assert_false(eavemark_interview_back(interview));
    assert_false(eavemark_interview_wants_name(interview));
    free(eavemark_interview_ask(interview, false, &text));
    free(text);
    assert_false(eavemark_interview_answer(interview, NULL, &text));
    assert_has(text, "without words");
    free(text);
    assert_null(eavemark_interview_job(interview, NULL, &skipped, &text));
    free(text);
    eavemark_interview_close(interview);
    eavemark_close(handle);
}

/* A text without a name is read all the same. */
static void a_text_needs_no_name(void **state)
{
    (void)state;
    eavemark *handle = eavemark_open(EAVEMARK_HOME_DIR);
    const struct eavemark_request request = {.text = "{", .length = 1};
    assert_check_refused(handle, &request, "job:1:");
    eavemark_close(handle);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(the_hosts_locale_changes_nothing),
        cmocka_unit_test(nor_the_order_of_texts),
        cmocka_unit_test(checks_without_what_they_need),
        cmocka_unit_test(reports_without_what_they_need),
        cmocka_unit_test(other_calls_without_what_they_need),
        cmocka_unit_test(interviews_without_what_they_need),
        cmocka_unit_test(a_text_needs_no_name),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
