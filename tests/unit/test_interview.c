/* A job asked for question by question: what is asked, in which order, what is
 * taken and what is not, and the job that comes of it. */
#include "support/small_law.h"

#include <cjson/cJSON.h>

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
    "rule \"b.spacing\" { " SMALL_READS
    " title = \"Spacing\", stage = \"deck\", mend = \"x\", per = \"decks\",\n"
    "  judge = function(job, figure, deck)\n"
    "    if inspecting() then return spacings_at_most(deck.measured_spacing_in,\n"
    "      figure \"test.nails_most\", \"in\", { share = 0, over = 0 }) end\n"
    "    return at_most(deck.spacing_in, figure \"test.nails_most\", \"in\") end }\n"
    "rule \"a.pitch\" { " SMALL_READS
    " title = \"Pitch\", stage = \"permit\", mend = \"x\", per = \"roof.slopes\",\n"
    "  judge = function(job, figure, slope)\n"
    "    work(slope.deck.name)\n"
    "    return at_least(slope.pitch, figure \"test.pitch_least\", \"rise_in_12\") end }\n"
    "rule \"c.layers\" { " SMALL_READS
    " title = \"Layers\", stage = \"permit\", mend = \"x\", caution = \"Heavy.\",\n"
    "  applies = function(job) return job.existing.slippery end,\n"
    "  judge = function(job, figure)\n"
    "    return at_most(job.existing.layers, figure \"test.seen\", \"layers\") end }\n"
    "rule \"d.kinds\" { " SMALL_READS " title = \"Kinds\", stage = \"permit\", mend = \"x\",\n"
    "  judge = function(job, figure)\n"
    "    return none_of(job.existing.kinds, figure \"test.kinds\") end }\n";

static const char IMPOSSIBLE[] =
    "impossible \"slate over many layers\" { at = \"existing.kinds\", when = function(job)\n"
    "  if job.existing.layers > 2 and job.existing.kinds[1] == \"slate\" then\n"
    "    return \"no slate there\" end end }\n"
    "field \"as_meant\" { type = \"list\", range = { 0, 9 }, stage = \"permit\", ask = \"?\" }\n"
    "field \"as_meant[].at\" { type = \"text\", range = { 1, 200 }, stage = \"permit\","
    " ask = \"?\" }\n"
    "impossible \"many layers\" { at = \"existing.layers\", ask_back = true,\n"
    "  when = function(job) if job.existing.layers > 4 then return \"many layers\" end end }\n"
    "impossible \"many slippery layers\" { at = \"existing.slippery\", ask_back = true,\n"
    "  when = function(job) if job.existing.layers > 5 and job.existing.slippery then\n"
    "    return \"slippery\" end end }\n";

static int make_home(void **state)
{
    (void)state;
    home_make(&home);
    small_law_write(&home);
    home_write(&home, "rules/test.lua", RULES);
    char *fields = file_text(home_path(&home, "rules/fields.lua"), NULL);
    char *more = malloc(strlen(fields) + sizeof(IMPOSSIBLE));
    assert_non_null(more);
    memcpy(more, fields, strlen(fields));
    memcpy(more + strlen(fields), IMPOSSIBLE, sizeof(IMPOSSIBLE));
    home_write(&home, "rules/fields.lua", more);
    free(fields);
    free(more);
    return 0;
}

static int remove_home(void **state)
{
    (void)state;
    home_remove(&home);
    return 0;
}

struct talk {
    eavemark *handle;
    eavemark_interview *interview;
};

/* As of now, or ahead of the stages to come. */
static struct talk start_at(const char *job, bool ahead)
{
    struct talk talk = {.handle = eavemark_open(home.path)};
    const struct eavemark_request request = {.name = job == NULL ? NULL : "job.json",
                                             .text = job,
                                             .length = job == NULL ? 0 : strlen(job),
                                             .ahead = ahead};
    enum eavemark_status status = EAVEMARK_BROKEN;
    char *problems = NULL;
    talk.interview = eavemark_interview_open(talk.handle, &request, &status, &problems);
    assert_non_null(talk.interview);
    assert_string_equal(problems, "");
    free(problems);
    return talk;
}

static struct talk start(const char *job)
{
    return start_at(job, true);
}

static void end(struct talk *talk)
{
    eavemark_interview_close(talk->interview);
    eavemark_close(talk->handle);
}

/* The next question holds these words; NULL: there is none. */
static void asks(struct talk *talk, const char *words)
{
    char *problems = NULL;
    char *asked = eavemark_interview_ask(talk->interview, false, &problems);
    assert_string_equal(problems, "");
    free(problems);
    if (words == NULL && asked != NULL)
        fail_msg("asks: %s", asked);
    if (words != NULL && (asked == NULL || strstr(asked, words) == NULL))
        fail_msg("does not ask \"%s\" but: %s", words, asked == NULL ? "nothing" : asked);
    free(asked);
}

static void helps(struct talk *talk, const char *words)
{
    char *problems = NULL;
    char *help = eavemark_interview_ask(talk->interview, true, &problems);
    assert_non_null(help);
    assert_has(help, words);
    free(help);
    free(problems);
}

static void answers(struct talk *talk, const char *words)
{
    char *why = NULL;
    if (!eavemark_interview_answer(talk->interview, words, &why))
        fail_msg("\"%s\" is not taken: %s", words, why);
    free(why);
}

static void refuses(struct talk *talk, const char *words, const char *reason)
{
    char *why = NULL;
    if (eavemark_interview_answer(talk->interview, words, &why))
        fail_msg("\"%s\" is taken", words);
    assert_non_null(why);
    assert_has(why, reason);
    free(why);
}

static void skips(struct talk *talk)
{
    char *why = NULL;
    assert_true(eavemark_interview_skip(talk->interview, &why));
    free(why);
}

static char *job_of(struct talk *talk, size_t answered, size_t skipped)
{
    char *problems = NULL;
    size_t count[2] = {0, 0};
    char *job = eavemark_interview_job(talk->interview, &count[0], &count[1], &problems);
    assert_string_equal(problems, "");
    assert_non_null(job);
    assert_int_equal(count[0], answered);
    assert_int_equal(count[1], skipped);
    free(problems);
    return job;
}

static void answer_head(struct talk *talk)
{
    asks(talk, "Which building department");
    answers(talk, "test");
    asks(talk, "When?");
    answers(talk, "2026-03-02");
    asks(talk, "What do you call this job?");
    answers(talk, "Invented house");
    asks(talk, "How far?");
    answers(talk, "permit");
}

/* The catalogue's order; lists by count and name; a list a reference needs first. */
static void a_job_comes_from_nothing(void **state)
{
    (void)state;
    struct talk talk = start(NULL);
    answer_head(&talk);
    asks(&talk, "Which kinds?");
    answers(&talk, "asphalt, 3");
    asks(&talk, "Slippery?");
    answers(&talk, "Y");
    asks(&talk, "How many layers?");
    helps(&talk, "/existing/layers");
    helps(&talk, "Layers [c.layers]");
    helps(&talk, "Heavy.");
    answers(&talk, "1");
    asks(&talk, "Each plane");
    answers(&talk, "2");
    asks(&talk, "slopes 1: Its name?");
    answers(&talk, "front");
    asks(&talk, "slopes 2: Its name?");
    answers(&talk, "\"back\"");
    asks(&talk, "Each deck");
    answers(&talk, "panels");
    asks(&talk, "front: On which deck?");
    answers(&talk, "1");
    asks(&talk, "front: How steep?");
    answers(&talk, "5/12");
    asks(&talk, "= for panels, as front");
    answers(&talk, "=");
    asks(&talk, "back: How steep?");
    answers(&talk, "22.6 deg");
    asks(&talk, "panels: How far apart will the nails be?");
    answers(&talk, "1/2 ft");
    asks(&talk, NULL);
    char *job = job_of(&talk, 16, 0);
    assert_string_equal(
        job,
        "{\n"
        "  \"eavemark_job\": 1,\n"
        "  \"jurisdiction\": \"model/test\",\n"
        "  \"date\": \"2026-03-02\",\n"
        "  \"job\": \"Invented house\",\n"
        "  \"stage\": \"permit\",\n"
        "  \"existing\": { \"kinds\": [\"asphalt\", \"tile\"], \"slippery\": true, \"layers\": 1 },\n"
        "  \"roof\": {\n"
        "    \"slopes\": [\n"
        "      { \"name\": \"front\", \"deck\": \"panels\", \"pitch\": \"5/12\" },\n"
        "      { \"name\": \"back\", \"deck\": \"panels\", \"pitch\": \"22.6 deg\" }\n"
        "    ]\n"
        "  },\n"
        "  \"decks\": [\n"
        "    { \"name\": \"panels\", \"spacing_in\": 6 }\n"
        "  ]\n"
        "}\n");
    struct outcome_of_check outcome = home_check(talk.handle, job, NULL, NULL, NULL);
    assert_string_equal(outcome.problems, "");
    assert_has(outcome.json, "\"open\":0");
    outcome_free(&outcome);
    free(job);
    end(&talk);
}

static void what_is_wrong_is_said_and_asked_again(void **state)
{
    (void)state;
    struct talk talk = start(NULL);
    asks(&talk, "Which building department");
    refuses(&talk, "model/tst", "did you mean model/test?");
    answers(&talk, "model/test");
    asks(&talk, "When?");
    refuses(&talk, "2026-02-30", "not a day");
    answers(&talk, "2026-03-02");
    asks(&talk, "What do you call this job?");
    answers(&talk, "x");
    asks(&talk, "How far?");
    refuses(&talk, "5", "a number from 1 to 4");
    refuses(&talk, "decks", "did you mean deck?");
    answers(&talk, "1");
    asks(&talk, "Which kinds?");
    refuses(&talk, "asphalt, wood", "\"wood\" is none of the choices");
    answers(&talk, "slate");
    asks(&talk, "Slippery?");
    refuses(&talk, "maybe", "not y or n");
    answers(&talk, "y");
    asks(&talk, "How many layers?");
    refuses(&talk, "7", "7 is out of range; 0 to 6 layers expected");
    refuses(&talk, "1 1/2", "is not a whole number");
    refuses(&talk, "3 in", "it is asked for in layers");
    /* A contradiction, with the other fact's place. */
    refuses(&talk, "3", "/existing/kinds: cannot be: no slate there");
    answers(&talk, "2");
    asks(&talk, "Each plane");
    refuses(&talk, "61", "too many; 60 at most");
    refuses(&talk, "1 1/2", "not how many there are");
    answers(&talk, "2");
    asks(&talk, "slopes 1: Its name?");
    refuses(&talk, "\xff", "UTF-8");
    refuses(&talk, "a\x1b[31m", "not readable");
    answers(&talk, "front");
    asks(&talk, "slopes 2: Its name?");
    answers(&talk, "rear");
    asks(&talk, "Each deck");
    answers(&talk, "2");
    asks(&talk, "decks 1: Its name?");
    answers(&talk, "panels");
    asks(&talk, "decks 2: Its name?");
    refuses(&talk, "panels", "is already the name of /decks/0");
    answers(&talk, "boards");
    asks(&talk, "front: On which deck?");
    refuses(&talk, "panel", "did you mean \"panels\"?");
    answers(&talk, "boards");
    asks(&talk, "front: How steep?");
    refuses(&talk, "5", "could be 5:12, 5 degrees or 5 percent");
    refuses(&talk, "25:12", "out of range");
    end(&talk);
}

/* Left out is not asked again, nor is what only it would lead to. */
/* What is asked back is meant when the same answer comes again, in the same words. */
static void an_answer_given_twice_is_meant(void **state)
{
    (void)state;
    struct talk talk = start(NULL);
    answer_head(&talk);
    asks(&talk, "Which kinds?");
    answers(&talk, "asphalt");
    asks(&talk, "Slippery?");
    answers(&talk, "y");
    asks(&talk, "How many layers?");
    refuses(&talk, "5", "] (here: answer the same again)");
    refuses(&talk, "6", "/existing/slippery: is asked back: slippery");
    refuses(&talk, "5", "is asked back: many"); /* not the same as the last */
    refuses(&talk, "7", "out of range");
    answers(&talk, "5");
    asks(&talk, "Each plane");
    char *job = job_of(&talk, 7, 0);
    assert_has(job, "\"as_meant\": [\n    { \"at\": \"/existing/layers\" }\n  ]");
    free(job);
    assert_true(eavemark_interview_back(talk.interview));
    asks(&talk, "How many layers?");
    refuses(&talk, "6", "is asked back: many");
    answers(&talk, "6");
    job = job_of(&talk, 7, 0);
    assert_has(job, "{ \"at\": \"/existing/layers\" },\n    { \"at\": \"/existing/slippery\" }");
    free(job);
    end(&talk);
}

/* What decides only at the deck is not asked for before the permit, unless it is asked for
 * ahead; how many wait is told, and how the job stands. */
static void what_later_stages_decide_is_not_asked_before(void **state)
{
    (void)state;
    char *job = text_with(SMALL_JOB, "\"spacing_in\": 6", "\"spacing_in\": null");
    struct talk talk = start_at(job, true);
    asks(&talk, "fails Pitch, back: Found 3:12");
    answers(&talk, "y");
    asks(&talk, "How far apart will the nails be?");
    assert_int_equal(eavemark_interview_left(talk.interview), 1);
    end(&talk);
    talk = start_at(job, false);
    asks(&talk, "Slippery?");
    answers(&talk, "y");
    asks(&talk, NULL);
    char *standing = eavemark_interview_standing(talk.interview);
    assert_has(standing, "1 fail");
    assert_has(standing, "0 to answer");
    free(standing);
    end(&talk);
    free(job);
}

/* Items told by their kinds or names, by how many, or by none. */
static void items_are_told_by_words_or_number(void **state)
{
    (void)state;
    struct talk talk = start(NULL);
    answer_head(&talk);
    for (const char *const *said = (const char *const[]){"asphalt", "y", "1", NULL}; *said;
         said++) {
        asks(&talk, "?");
        answers(&talk, *said);
    }
    asks(&talk, "Each plane");
    answers(&talk, "front, \"back\"");
    asks(&talk, "Each deck");
    answers(&talk, "1");
    char *job = job_of(&talk, 9, 0);
    assert_has(job, "{ \"name\": \"front\" }");
    assert_has(job, "{ \"name\": \"back\" }");
    assert_has(job, "\"decks\": [\n    { \"name\": \"deck\" }");
    free(job);
    end(&talk);
}

static void a_skipped_fact_stays_open(void **state)
{
    (void)state;
    struct talk talk = start(NULL);
    char *why = NULL;
    asks(&talk, "Which building department");
    assert_false(eavemark_interview_skip(talk.interview, &why));
    assert_has(why, "cannot do without");
    free(why);
    answer_head(&talk);
    asks(&talk, "Which kinds?");
    skips(&talk);
    asks(&talk, "Slippery?");
    answers(&talk, "n");
    asks(&talk, "Each plane");
    answers(&talk, "0");
    asks(&talk, "Each deck");
    skips(&talk);
    asks(&talk, NULL);
    char *job = job_of(&talk, 6, 2);
    assert_null(strstr(job, "kinds"));
    free(job);
    end(&talk);
}

static void back_takes_an_answer_back(void **state)
{
    (void)state;
    struct talk talk = start(NULL);
    asks(&talk, "Which building department");
    assert_false(eavemark_interview_back(talk.interview));
    answer_head(&talk);
    asks(&talk, "Which kinds?");
    assert_true(eavemark_interview_back(talk.interview));
    asks(&talk, "How far?");
    answers(&talk, "deck");
    asks(&talk, "Which kinds?");
    skips(&talk);
    asks(&talk, "Slippery?");
    answers(&talk, "y");
    asks(&talk, "How many layers?");
    assert_true(eavemark_interview_back(talk.interview));
    asks(&talk, "Slippery?");
    assert_true(eavemark_interview_back(talk.interview));
    asks(&talk, "Which kinds?");
    answers(&talk, "tile");
    asks(&talk, "Slippery?");
    answers(&talk, "n");
    asks(&talk, "Each plane");
    char *job = job_of(&talk, 6, 0);
    assert_has(job, "\"stage\": \"deck\"");
    assert_has(job, "{ \"kinds\": [\"tile\"], \"slippery\": false }");
    free(job);
    end(&talk);
}

/* What was measured is asked for once its stage has come, several at a time. */
static void a_job_is_filled_in(void **state)
{
    (void)state;
    char *job = text_with(SMALL_JOB, "\"stage\": \"permit\"", "\"stage\": \"deck\"");
    char *with_null = text_with(job, "\"condition\": \"sound\"", "\"slippery\": null");
    struct talk talk = start(with_null);
    asks(&talk, "Slippery?");
    answers(&talk, "no");
    asks(&talk, "panels: What spacings were measured?");
    refuses(&talk, "6, 5 3/4, much", "\"much\" has no figure");
    answers(&talk, "6, 5 3/4, 0'6\"");
    asks(&talk, NULL);
    char *filled = job_of(&talk, 2, 0);
    assert_has(filled,
               "\"existing\": { \"layers\": 1, \"slippery\": false, \"kinds\": [\"asphalt\"] }");
    assert_has(filled, "\"spacing_in\": 6, \"measured_spacing_in\": [6, 5.75, 6]");
    free(filled);
    end(&talk);
    free(with_null);
    free(job);
}

static void open_questions_are_listed(void **state)
{
    (void)state;
    eavemark *handle = eavemark_open(home.path);
    static const char job[] =
        "{ \"eavemark_job\": 1, \"job\": \"x\", \"jurisdiction\": \"model/test\",\n"
        "  \"date\": \"2026-03-02\", \"stage\": \"permit\", \"decks\": [ {} ],\n"
        "  \"roof\": { \"slopes\": [ { \"name\": \"front\" } ] } }";
    const struct eavemark_request request = {
        .name = "job.json", .text = job, .length = sizeof(job) - 1};
    char *report = NULL, *problems = NULL;
    assert_int_equal(eavemark_questions(handle, &request, EAVEMARK_JSON, &report, &problems), 0);
    assert_string_equal(problems, "");
    cJSON *tree = cJSON_Parse(report);
    const cJSON *list = cJSON_GetObjectItem(tree, "questions"), *one = NULL;
    static const char *const POINTERS[] = {"/decks/0/name", "/existing/kinds", "/existing/slippery",
                                           "/roof/slopes/0/deck", "/decks/0/spacing_in"};
    assert_int_equal(cJSON_GetArraySize(list), 5);
    for (int i = 0; i < 5; i++) {
        one = cJSON_GetArrayItem(list, i);
        assert_string_equal(cJSON_GetObjectItem(one, "pointer")->valuestring, POINTERS[i]);
    }
    assert_string_equal(cJSON_GetObjectItem(one, "unit")->valuestring, "in");
    assert_true(cJSON_GetObjectItem(one, "least")->valuedouble == 0.5);
    assert_true(cJSON_GetObjectItem(one, "most")->valuedouble == 48);
    assert_string_equal(cJSON_GetObjectItem(one, "type")->valuestring, "number");
    const cJSON *rule = cJSON_GetArrayItem(cJSON_GetObjectItem(one, "rules"), 0);
    assert_string_equal(cJSON_GetObjectItem(rule, "rule")->valuestring, "b.spacing");
    cJSON_Delete(tree);
    free(report);
    free(problems);
    assert_int_equal(eavemark_questions(handle, &request, EAVEMARK_TEXT, &report, &problems), 0);
    assert_has(report, "5 questions are open");
    assert_has(report, "1:asphalt, 2:slate");
    free(report);
    free(problems);
    eavemark_close(handle);
}

static void a_job_that_cannot_be_used_is_not_started_from(void **state)
{
    (void)state;
    static const char *const BAD[][2] = {
        {"{", "job.json:1:"},
        {"{ \"job\": 5 }", "/job: found the number 5"},
        {"{ \"date\": \"2026-03-02\", \"jurisdiction\": \"model/none\" }", "model/none"},
        {"{ \"roofs\": {}, \"date\": \"2026-03-02\", \"jurisdiction\": \"model/test\" }", "/roofs"},
    };
    eavemark *handle = eavemark_open(home.path);
    for (size_t i = 0; i < sizeof(BAD) / sizeof(BAD[0]); i++) {
        const struct eavemark_request request = {
            .name = "job.json", .text = BAD[i][0], .length = strlen(BAD[i][0])};
        enum eavemark_status status = EAVEMARK_NOTHING_FAILED;
        char *problems = NULL;
        assert_null(eavemark_interview_open(handle, &request, &status, &problems));
        assert_int_equal(status, EAVEMARK_UNUSABLE);
        assert_has(problems, BAD[i][1]);
        free(problems);
    }
    eavemark_close(handle);
}

/* A draft that somebody wrote in: what is put aside would be lost, or told as want of memory. */
static void a_draft_keeps_what_it_put_aside_as_lists(void **state)
{
    (void)state;
    static const char *const BAD[] = {"null", "[1]", "{ \"covering\": 5 }",
                                      "{ \"covering\": [5] }"};
    eavemark *handle = eavemark_open(home.path);
    for (size_t i = 0; i < sizeof(BAD) / sizeof(BAD[0]); i++) {
        char text[100];
        snprintf(text, sizeof(text), "{ \"eavemark_others\": %s }", BAD[i]);
        const struct eavemark_request request = {
            .name = "draft", .text = text, .length = strlen(text), .habits = true};
        enum eavemark_status status = EAVEMARK_NOTHING_FAILED;
        char *problems = NULL;
        assert_null(eavemark_interview_open(handle, &request, &status, &problems));
        assert_int_equal(status, EAVEMARK_UNUSABLE);
        assert_has(problems, "draft: /eavemark_others: holds lists of objects");
        free(problems);
    }
    eavemark_close(handle);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(a_job_comes_from_nothing),
        cmocka_unit_test(what_is_wrong_is_said_and_asked_again),
        cmocka_unit_test(an_answer_given_twice_is_meant),
        cmocka_unit_test(what_later_stages_decide_is_not_asked_before),
        cmocka_unit_test(items_are_told_by_words_or_number),
        cmocka_unit_test(a_skipped_fact_stays_open),
        cmocka_unit_test(back_takes_an_answer_back),
        cmocka_unit_test(a_job_is_filled_in),
        cmocka_unit_test(open_questions_are_listed),
        cmocka_unit_test(a_draft_keeps_what_it_put_aside_as_lists),
        cmocka_unit_test(a_job_that_cannot_be_used_is_not_started_from),
    };
    return cmocka_run_group_tests(tests, make_home, remove_home);
}
