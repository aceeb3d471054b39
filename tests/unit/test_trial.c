/* Trials through the library: what is named, what adds up, what is refused, and that
 * nothing is kept of a job. The counts themselves are held against batches by
 * checks/trial.sh. */
#include "include/eavemark.h"
#include "prove/trial.h"

#include <malloc.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

static void test_names_first_by_bytes(void **state)
{
    (void)state;
    struct trial_named named = {0};
    static const char *const GIVEN[] = {"g", "b", "f", "b", "a", "c", "e", "d", "a"};
    for (size_t i = 0; i < sizeof(GIVEN) / sizeof(GIVEN[0]); i++)
        trial_add_name(&named, GIVEN[i]);
    assert_int_equal(named.count, TRIAL_NAMED);
    for (int i = 0; i < TRIAL_NAMED; i++) {
        const char expected[] = {(char)('a' + i), '\0'};
        assert_string_equal(named.names[i], expected);
    }
}

/* Cut where a character ends. */
static void test_long_names_are_cut(void **state)
{
    (void)state;
    struct trial_named named = {0};
    char name[400] = "";
    for (int i = 0; i < 120; i++)
        strcat(name, "\xe2\x82\xac"); /* the euro sign, three bytes */
    trial_add_name(&named, name);
    assert_int_equal(strlen(named.names[0]), 159);
}

static const char JOB[] =
    "{\"eavemark_job\":1,\"job\":\"%s\",\"stage\":\"permit\",\"scope\":{\"method\":\"tear-off\"}}";

static eavemark_trial *begun(eavemark *handle)
{
    const struct eavemark_law before = {handle, "model/irc-2012", "2026-03-02", NULL};
    const struct eavemark_law after = {handle, "model/irc-2021", "2026-03-02", NULL};
    char *problems = NULL;
    enum eavemark_status status;
    eavemark_trial *trial = eavemark_trial_open(&before, &after, &status, &problems);
    if (trial == NULL)
        fail_msg("%s", problems);
    free(problems);
    return trial;
}

static void add(eavemark_trial *trial, const char *title)
{
    char text[256];
    snprintf(text, sizeof(text), JOB, title);
    const struct eavemark_request request = {
        .name = "jobs:1", .text = text, .length = strlen(text)};
    assert_int_equal(eavemark_trial_job(trial, &request), EAVEMARK_NOTHING_FAILED);
}

static char *counts(const eavemark_trial *trial)
{
    char *text = eavemark_trial_report(trial, EAVEMARK_JSON_LINE);
    assert_non_null(text);
    return text;
}

static void merge(eavemark_trial *into, const eavemark_trial *from)
{
    char *text = counts(from), *problems = NULL;
    assert_true(eavemark_trial_merge(into, text, strlen(text), "part", &problems));
    assert_string_equal(problems, "");
    free(problems);
    free(text);
}

static void test_parts_add_up_in_any_order(void **state)
{
    (void)state;
    eavemark *handle = eavemark_open(EAVEMARK_HOME_DIR);
    eavemark_trial *whole = begun(handle), *one = begun(handle), *other = begun(handle);
    char *none = NULL;
    enum eavemark_status status;
    eavemark_trial *forth = begun(handle), *back = eavemark_trial_open(NULL, NULL, &status, &none);
    free(none);
    for (int i = 0; i < 12; i++) {
        char title[16];
        snprintf(title, sizeof(title), "house %02d", i);
        add(whole, title);
        add(i % 3 == 0 ? one : other, title);
    }
    assert_true(eavemark_trial_refuse(other, "jobs:9", "is torn"));
    assert_true(eavemark_trial_refuse(whole, "jobs:9", "is torn"));
    merge(forth, one);
    merge(forth, other);
    merge(back, other);
    merge(back, one);
    char *texts[] = {counts(whole), counts(forth), counts(back)};
    assert_string_equal(texts[0], texts[1]);
    assert_string_equal(texts[0], texts[2]);
    assert_non_null(strstr(texts[0], "\"jobs\":12,\"not_judged\":1,\"broken\":0"));
    assert_non_null(strstr(texts[0], "jobs:9: is torn"));
    for (size_t i = 0; i < 3; i++)
        free(texts[i]);
    eavemark_trial *const all[] = {whole, one, other, forth, back};
    for (size_t i = 0; i < 5; i++)
        eavemark_trial_close(all[i]);
    eavemark_close(handle);
}

static void test_refusals(void **state)
{
    (void)state;
    eavemark *handle = eavemark_open(EAVEMARK_HOME_DIR);
    const struct eavemark_law good = {handle, "model/irc-2021", NULL, NULL};
    const struct eavemark_law bad[] = {{handle, "model/irc-1066", NULL, NULL},
                                       {handle, "model/irc-2021", "20251345", NULL},
                                       {handle, NULL, NULL, NULL},
                                       {NULL, "model/irc-2021", NULL, NULL}};
    char *problems = NULL;
    enum eavemark_status status = EAVEMARK_NOTHING_FAILED;
    for (size_t i = 0; i < sizeof(bad) / sizeof(bad[0]); i++) {
        assert_null(eavemark_trial_open(&good, &bad[i], &status, &problems));
        assert_int_equal(status, EAVEMARK_UNUSABLE);
        assert_true(strlen(problems) > 0);
        free(problems);
    }
    assert_null(eavemark_trial_open(&good, NULL, &status, &problems));
    free(problems);
    assert_int_equal(eavemark_trial_job(NULL, NULL), EAVEMARK_UNUSABLE);
    assert_null(eavemark_trial_report(NULL, EAVEMARK_TEXT));
    assert_int_equal(eavemark_trial_status(NULL), EAVEMARK_UNUSABLE);
    eavemark_trial_close(NULL);

    eavemark_trial *trial = begun(handle);
    const struct eavemark_request torn = {.name = "jobs:7", .text = "{\"job\":", .length = 7};
    assert_int_equal(eavemark_trial_job(trial, &torn), EAVEMARK_UNUSABLE);
    static const char *const PARTS[] = {"[]", "{}", "{\"format\":\"trial 1\"}",
                                        "{\"format\":\"trial 1\",\"before\":{\"law\":1}}"};
    for (size_t i = 0; i < sizeof(PARTS) / sizeof(PARTS[0]); i++) {
        assert_false(eavemark_trial_merge(trial, PARTS[i], strlen(PARTS[i]), "p", &problems));
        assert_true(strlen(problems) > 0);
        free(problems);
    }
    eavemark_trial_close(trial);
    eavemark_close(handle);
}

/* A part with one value spoilt adds nothing at all. */
static void test_spoilt_parts_add_nothing(void **state)
{
    (void)state;
    eavemark *handle = eavemark_open(EAVEMARK_HOME_DIR);
    eavemark_trial *part = begun(handle), *into = begun(handle);
    add(part, "a house");
    char *text = counts(part), *before = counts(into), *problems = NULL;
    static const char *const SPOILS[][2] = {
        {"\"jobs\":1", "\"jobs\":-"},
        {"\"changed\":", "\"changeD\":"},
        {"\"to\":\"", "\"to\":\"x"},
        {"\"law\":\"model/irc-2021\"", "\"law\":\"model/irc-2024\""}};
    for (size_t i = 0; i < sizeof(SPOILS) / sizeof(SPOILS[0]); i++) {
        struct text spoilt = TEXT_EMPTY;
        const char *at = strstr(text, SPOILS[i][0]);
        assert_non_null(at);
        text_add_n(&spoilt, text, (size_t)(at - text));
        text_add(&spoilt, SPOILS[i][1]);
        text_add(&spoilt, at + strlen(SPOILS[i][0]));
        assert_false(
            eavemark_trial_merge(into, text_string(&spoilt), spoilt.length, "p", &problems));
        assert_true(strlen(problems) > 0);
        free(problems);
        text_free(&spoilt);
        char *after = counts(into);
        assert_string_equal(before, after);
        free(after);
    }
    free(text);
    free(before);
    eavemark_trial_close(part);
    eavemark_trial_close(into);
    eavemark_close(handle);
}

#ifdef __SANITIZE_ADDRESS__
size_t __sanitizer_get_current_allocated_bytes(void);
static size_t bytes_in_use(void)
{
    return __sanitizer_get_current_allocated_bytes();
}
#else
static size_t bytes_in_use(void)
{
    return mallinfo2().uordblks;
}
#endif

/* Bytes handed out, counted, not measured by the clock or the machine. Names fall as they
 * come, so that each is a new first one. */
static void test_memory_does_not_grow_with_jobs(void **state)
{
    (void)state;
    eavemark *handle = eavemark_open(EAVEMARK_HOME_DIR);
    eavemark_trial *trial = begun(handle);
    size_t used[2] = {0};
    for (int i = 0; i < 600; i++) {
        char title[16];
        snprintf(title, sizeof(title), "house %04d", 9999 - i);
        add(trial, title);
        if (i == 199 || i == 599)
            used[i / 400] = bytes_in_use();
    }
    assert_true(used[1] < used[0] + 64 * 1024);
    eavemark_trial_close(trial);
    eavemark_close(handle);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_names_first_by_bytes),
        cmocka_unit_test(test_long_names_are_cut),
        cmocka_unit_test(test_parts_add_up_in_any_order),
        cmocka_unit_test(test_refusals),
        cmocka_unit_test(test_spoilt_parts_add_nothing),
        cmocka_unit_test(test_memory_does_not_grow_with_jobs),
    };
    return cmocka_run_group_tests_name("trial", tests, NULL, NULL);
}
