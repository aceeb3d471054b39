/* A place's own reading of a book: what it lifts, and that it lifts no more than that. */
#include "profile/profile.h"
#include "profile/vouch.h"

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

static const char RULES[] =
    "rule \"v.memory\" { " SMALL_READS
    " title = \"Recalled\", stage = \"permit\", mend = \"Mend.\",\n"
    "  judge = function(job, figure)\n"
    "    return at_most(job.existing.layers, figure \"test.memory\", \"layers\") end }\n"
    "rule \"v.parallel\" { " SMALL_READS
    " title = \"Sister\", stage = \"permit\", mend = \"Mend.\",\n"
    "  judge = function(job, figure)\n"
    "    return at_most(job.existing.layers, figure \"test.parallel\", \"layers\") end }\n"
    "rule \"v.disputed\" { " SMALL_READS
    " title = \"Disputed\", stage = \"permit\", mend = \"Mend.\",\n"
    "  judge = function(job, figure)\n"
    "    return at_most(job.existing.layers, figure \"test.disputed\", \"layers\") end }\n";

static int make_home(void **state)
{
    (void)state;
    home_make(&home);
    small_law_write(&home);
    home_write(&home, "rules/v.lua", RULES);
    return 0;
}

static int remove_home(void **state)
{
    (void)state;
    home_remove(&home);
    return 0;
}

/* A county that says this beside following the model, or `follows`. */
static void county(const char *follows, const char *more)
{
    char text[2048];
    snprintf(text, sizeof(text),
             "jurisdiction \"example/a\" { title = \"Alder County\", follows = \"%s\",\n  %s\n}\n",
             follows, more);
    home_write(&home, "jurisdictions/example/a.lua", text);
}

static struct profile *resolved(void)
{
    struct problems problems = {0};
    struct profile *profile = profile_resolve(home.path, "example/a", 20260302, "job.json",
                                              &problems);
    if (profile == NULL)
        fail_msg("%s", problems.first->message);
    problems_free(&problems);
    return profile;
}

static void assert_refused(const char *more, const char *words)
{
    struct problems problems = {0};
    struct text said = TEXT_EMPTY;
    county("model/test", more);
    assert_null(profile_resolve(home.path, "example/a", 20260302, "job.json", &problems));
    problems_write(&problems, &said);
    assert_has(text_string(&said), words);
    text_free(&said);
    problems_free(&problems);
}

static char *checked(void)
{
    eavemark *handle = eavemark_open(home.path);
    struct outcome_of_check outcome = home_check(handle, SMALL_JOB, "example/a", NULL, NULL);
    assert_string_equal(outcome.problems, "");
    free(outcome.problems);
    eavemark_close(handle);
    return outcome.json;
}

#define ADOPTS(topics) \
    "adopts = { \"TEST 2020\", " topics " cite = \"Ord. 4\", as_seen = \"2026-02-01\" },"

/* What is met passes where it only warned; the report says by whose reading. */
static void lifts_memory_and_sister_text(void **state)
{
    (void)state;
    county("model/test", "");
    char *json = checked();
    assert_member(json, "v.memory", 0, "outcome", "warn");
    assert_member(json, "v.parallel", 0, "outcome", "warn");
    free(json);
    county("model/test", ADOPTS(""));
    json = checked();
    assert_member(json, "v.memory", 0, "outcome", "pass");
    assert_member(json, "v.parallel", 0, "outcome", "pass");
    assert_member_has(json, "v.memory", 0, "cite",
                      "Alder County's own reading of TEST 2020, Ord. 4, 2026-02-01");
    assert_member_has(json, "v.memory", 0, "cite", "\"code\":\"TEST 2020\",\"section\":\"1.4\"");
    free(json);
}

/* Not what it does not name, nor that sources differ, nor common practice; and no value. */
static void lifts_no_more_than_it_names(void **state)
{
    (void)state;
    county("model/test", ADOPTS("topics = { \"test.memory\" },"));
    char *json = checked();
    assert_member(json, "v.memory", 0, "outcome", "pass");
    assert_member(json, "v.parallel", 0, "outcome", "warn");
    free(json);
    county("model/test", "");
    struct profile *before = resolved();
    county("model/test", ADOPTS(""));
    struct profile *after = resolved();
    assert_int_equal(before->figure_count, after->figure_count);
    for (size_t i = 0; i < after->figure_count; i++) {
        const struct figure *was = &before->figures[i], *is = &after->figures[i];
        assert_true(profile_same_demand(was, is));
        assert_int_equal(is->sense, was->sense);
        assert_string_equal(is->cite.code, was->cite.code);
        assert_string_equal(is->cite.section, was->cite.section);
        assert_null(is->amended);
        assert_int_equal(was->disputed == NULL, is->disputed == NULL);
        if (was->cite.status == STATUS_PRACTICE || was->cite.status == STATUS_SEEN)
            assert_int_equal(is->cite.status, was->cite.status);
        else
            assert_int_equal(is->cite.status, STATUS_SEEN);
    }
    profile_free(before);
    profile_free(after);
}

/* Whether the book binds at all, where a place it follows could not tell. */
static void lifts_the_doubt_of_the_book(void **state)
{
    (void)state;
    home_write(&home, "jurisdictions/us-xx.lua",
               "jurisdiction \"us-xx\" { title = \"X\", follows = \"model/test\",\n"
               "  borrowed = \"X has a code of its own\" }\n");
    county("us-xx", "");
    char *json = checked();
    assert_member(json, "v.memory", 0, "outcome", "open");
    assert_has(json, "X has a code of its own");
    free(json);
    county("us-xx", ADOPTS("topics = { \"test.memory\" },"));
    json = checked();
    assert_member(json, "v.memory", 0, "outcome", "pass");
    assert_member(json, "v.parallel", 0, "outcome", "open");
    assert_has(json, "X has a code of its own");
    free(json);
    county("us-xx", ADOPTS(""));
    json = checked();
    assert_member(json, "v.parallel", 0, "outcome", "pass");
    struct profile *profile = resolved();
    assert_int_equal(profile->doubt_count, 0);
    profile_free(profile);
    free(json);
    /* A block's own doubt comes before its own reading, and a nearer one's after. */
    home_write(&home, "jurisdictions/us-xx.lua",
               "jurisdiction \"us-xx\" { title = \"X\", follows = \"model/test\",\n"
               "  " ADOPTS("") " }\n");
    county("us-xx", "unsure = \"nobody knows\",");
    profile = resolved();
    assert_string_equal(profile_figure(profile, "test.memory")->unsure, "nobody knows");
    assert_string_equal(vouch_lacks(profile_figure(profile, "test.memory")),
                        "book not sure to bind");
    assert_int_equal(profile->doubt_count, 1);
    profile_free(profile);
}

/* An invented place's reading is as invented as the place. */
static void an_invented_reading_stays_invented(void **state)
{
    (void)state;
    county("model/test", "invented = true, " ADOPTS(""));
    struct profile *profile = resolved();
    assert_int_equal(profile_figure(profile, "test.memory")->cite.status, STATUS_INVENTED);
    profile_free(profile);
}

static void says_what_is_wrong_with_it(void **state)
{
    (void)state;
    assert_refused("adopts = \"TEST 2020\",", "adopts is written { \"IRC 2021\", cite = ...");
    assert_refused("adopts = { \"TEST 2020\", as_seen = \"2026-02-01\" },",
                   "adopts: write cite = \"...\"");
    assert_refused("adopts = { \"TEST 2020\", cite = \"4\", as_seen = \"2026-02-31\" },",
                   "adopts: write as_seen = \"YYYY-MM-DD\"");
    assert_refused(
        "adopts = { \"TEST 2020\", topic = { \"test\" }, cite = \"4\", as_seen = \"2026-02-01\" },",
        "and nothing else");
    assert_refused(
        "adopts = { \"TEST 2020\", topics = \"test\", cite = \"4\", as_seen = \"2026-02-01\" },",
        "topics is a list");
    assert_refused("adopts = { \"TEST 2012\", cite = \"4\", as_seen = \"2026-02-01\" },",
                   "nothing that is followed stands in \"TEST 2012\" under \"any topic\"");
    assert_refused(ADOPTS("topics = { \"tset\" },"),
                   "nothing that is followed stands in \"TEST 2020\" under \"tset\"");
}

/* Advice stands beside the law: it warns who meets the law alone, and lets nobody off. */
static void advice_warns_and_never_fails(void **state)
{
    (void)state;
    static const struct {
        const char *layers, *outcome;
    } ROWS[] = {{"1", "pass"}, {"2", "warn"}, {"3", "warn"}, {"4", "fail"}};
    home_write(&home, "rules/advice.lua",
               "rule \"v.advice\" { " SMALL_READS
               " title = \"Advised\", stage = \"permit\", mend = \"Mend.\",\n"
               "  judge = function(job, figure)\n"
               "    return at_most(job.existing.layers, figure \"test.seen\", \"layers\") end }\n");
    county("model/test", "figures = { [\"test.seen\"] = { 1, advice = true, cite = \"4\", status = "
                         "\"seen\", source = \"page\" } },");
    for (size_t i = 0; i < sizeof(ROWS) / sizeof(ROWS[0]); i++) {
        char layers[32];
        snprintf(layers, sizeof(layers), "\"layers\": %s", ROWS[i].layers);
        char *job = text_with(SMALL_JOB, "\"layers\": 1", layers);
        eavemark *handle = eavemark_open(home.path);
        struct outcome_of_check outcome = home_check(handle, job, "example/a", NULL, NULL);
        assert_string_equal(outcome.problems, "");
        assert_member(outcome.json, "v.advice", 0, "outcome", ROWS[i].outcome);
        outcome_free(&outcome);
        eavemark_close(handle);
        free(job);
    }
    assert_refused("figures = { [\"test.seen\"] = { 4, advice = true, cite = \"4\", status = "
                   "\"seen\", source = \"page\" } },",
                   "is no advice");
    assert_refused(
        "figures = { [\"test.required\"] = { false, advice = true, cite = \"4\", status = "
        "\"seen\", source = \"page\" } },",
        "is no advice");
}

/* Without its spaces, so that how it is laid out is no matter. */
static void close_up(char *text)
{
    char *to = text;
    for (; *text != '\0'; text++)
        if (*text != ' ' && *text != '\n')
            *to++ = *text;
    *to = '\0';
}

/* The proof lists, figure by figure, what nobody vouches for. */
static void the_proof_lists_what_is_left(void **state)
{
    (void)state;
    char *report = NULL, *problems = NULL;
    county("model/test", ADOPTS("topics = { \"test.memory\" },"));
    eavemark *handle = eavemark_open(home.path);
    eavemark_proof(handle, "example/a", NULL, NULL, EAVEMARK_JSON, &report, &problems);
    close_up(report);
    assert_has(report, "\"unvouched\":[");
    assert_has(report,
               "{\"figure\":\"test.parallel\",\"book\":\"TEST2020\",\"why\":\"sistertext\"}");
    assert_null(strstr(report, "{\"figure\":\"test.memory\",\"book\""));
    assert_null(strstr(report, "{\"figure\":\"test.seen\",\"book\""));
    free(report);
    free(problems);
    eavemark_proof(handle, "example/a", NULL, NULL, EAVEMARK_TEXT, &report, &problems);
    assert_has(report, "TEST 2020, sister text, ");
    assert_has(report, "test.parallel");
    free(report);
    free(problems);
    eavemark_close(handle);
}

/* Who starts from law that was only borrowed is told so at once. */
static void a_start_from_borrowed_law_is_told(void **state)
{
    (void)state;
    char *text = NULL;
    home_write(&home, "jurisdictions/us-xx.lua",
               "jurisdiction \"us-xx\" { title = \"X\", follows = \"model/test\",\n"
               "  borrowed = \"X has a code of its own\" }\n");
    eavemark *handle = eavemark_open(home.path);
    assert_int_equal(eavemark_county_new(handle, "example/b", "us-xx", "B County", &text), 0);
    assert_has(text,
               "caution: what us-xx says was only borrowed there, and judges nothing: X has a "
               "code of its own.");
    free(text);
    assert_int_equal(eavemark_county_new(handle, "example/c", "model/test", "C County", &text), 0);
    assert_null(strstr(text, "caution"));
    free(text);
    eavemark_close(handle);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(lifts_memory_and_sister_text),
        cmocka_unit_test(lifts_no_more_than_it_names),
        cmocka_unit_test(lifts_the_doubt_of_the_book),
        cmocka_unit_test(an_invented_reading_stays_invented),
        cmocka_unit_test(says_what_is_wrong_with_it),
        cmocka_unit_test(advice_warns_and_never_fails),
        cmocka_unit_test(the_proof_lists_what_is_left),
        cmocka_unit_test(a_start_from_borrowed_law_is_told),
    };
    return cmocka_run_group_tests(tests, make_home, remove_home);
}
