/* Laws that share one loading of the rule files: where that is certain to be the same, and then
 * each judges by its own figures; not where the files would have seen anything otherwise. */
#include "law/law.h"
#include "support/house_job.h"
#include "support/small_law.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

enum { DAY = 20260504 };

static const struct law *find(struct laws *laws, const char *id, long day)
{
    struct problems problems = {0};
    const struct law *law = laws_find(laws, id, day, "", &problems);
    if (problems.count > 0)
        fail_msg("%s: %s", id, problems.first->message);
    assert_non_null(law);
    return law;
}

static bool share(const struct law *a, const struct law *b)
{
    return a->book->whole == b->book->whole;
}

/* Small laws ------------------------------------------------------------------------------- */

/* A limit of everybody; and a demand behind a switch, whose figure only places have that turn it
 * on. */
static const char RULES[] =
    "demand 'test.it' { title = 'Layers', stage = 'permit', mend = 'Take one off.',\n"
    "  when = { on 'test.required' }, fact = 'existing.layers', meets = 'test.most' }\n"
    "demand 'test.more' { title = 'More', stage = 'permit', mend = 'Take one off.',\n"
    "  when = { on 'test.switch' }, fact = 'existing.layers', meets = 'test.switched_most' }\n"
    "rule 'test.said' { title = 'Said', stage = 'permit', mend = 'Say it.',\n"
    "  reads = { facts = { 'existing.layers' }, figures = { 'test.seen', 'rows.*' },\n"
    "    behind = { { 'test.switch', 'test.beyond' } } },\n"
    "  judge = function(job, figure)\n"
    "    return at_most(job.existing.layers, figure 'test.seen', 'layers')\n"
    "  end }\n";

#define MOST(name, unit)                                                             \
    "[\"" name "\"] = { 2, unit = \"" unit "\", sense = \"at_most\", cite = \"1\", " \
    "status = \"seen\", source = \"a page\" }, "
/* The switch, and a table of one row. */
#define SWITCH(value)                                                                        \
    "[\"test.switch\"] = { " value ", sense = \"equals\", cite = \"1\", status = \"seen\", " \
    "source = \"a page\" }, " MOST("rows.one", "in")

static void write_place(const struct temporary_home *home, const char *name, const char *more,
                        const char *figures)
{
    char path[100], text[2000];
    snprintf(path, sizeof(path), "jurisdictions/example/%s.lua", name);
    snprintf(text, sizeof(text),
             "jurisdiction \"example/%s\" { title = \"P\", invented = true,\n"
             "  follows = \"model/test\", from = \"2020-01-01\", %s\n  figures = { %s } }\n",
             name, more, figures);
    home_write(home, path, text);
}

static void make_home(struct temporary_home *home)
{
    home_make(home);
    small_law_write(home);
    home_write(home, "rules/common.lua",
               "field 'site' { type = 'group', stage = 'permit', ask = 'The site' }\n");
    home_write(home, "rules/test.lua", RULES);
    write_place(home, "first", "", SWITCH("false"));
}

/* Does a place of these words share with the first? */
static bool shares(const char *more, const char *figures)
{
    struct temporary_home home;
    make_home(&home);
    write_place(&home, "second", more, figures);
    struct laws laws = {.home = home.path};
    const struct law *first = find(&laws, "example/first", DAY);
    const bool shared = share(first, find(&laws, "example/second", DAY));
    laws_free(&laws);
    home_remove(&home);
    return shared;
}

static void other_values_share(void **state)
{
    (void)state;
    assert_true(shares("", SWITCH("false")));
    assert_true(shares("", SWITCH("false") "[\"test.most\"] = { 5, cite = \"2\" }, "));
    /* Off or on: it is looked at only when a job is judged. */
    assert_true(shares("", SWITCH("false") "[\"test.required\"] = { false, cite = \"2\" }, "));
    /* No file names it. */
    assert_true(shares("", SWITCH("false") MOST("test.other", "in")));
    assert_true(shares("drop = { [\"test.it\"] = \"waived by 2\" },", SWITCH("false")));
}

static void what_files_see_otherwise_does_not(void **state)
{
    (void)state;
    /* One more figure, and the switch past which it may lack. */
    assert_false(
        shares("", SWITCH("true") MOST("test.switched_most", "layers") MOST("test.beyond", "in")));
    assert_false(shares("", SWITCH("false") MOST("test.switched_most", "layers")));
    assert_false(shares("", SWITCH("false") MOST("test.beyond", "in")));
    /* One more row of a table of which all are named. */
    assert_false(shares("", SWITCH("false") MOST("rows.two", "in")));
    assert_false(shares("zones = { [\"site.local_wind_zone\"] = { \"wet\", \"dry\", "
                        "ask = \"Which?\" } },",
                        SWITCH("false")));
}

/* A place may not have the unit or sense of a figure otherwise; another edition may. It matters
 * where rows are held against it, not where a function does, which looks when it judges. */
static void editions_that_measure_otherwise_do_not(void **state)
{
    (void)state;
#define FIGURE(sense, unit, section) \
    "3, unit = \"" unit "\", sense = \"" sense "\", cite = \"" section "\""
    static const struct {
        const char *was, *is;
        bool shares;
    } rows[] = {
        /* test.most, of a row */
        {FIGURE("at_most", "layers", "1.1"), FIGURE("equals", "layers", "1.1"), false},
        {FIGURE("at_most", "layers", "1.1"), FIGURE("at_most", "layers", "1.9"), true},
        /* test.seen, which a function reads */
        {FIGURE("at_most", "layers", "1.2"), FIGURE("at_least", "layers", "1.2"), true},
        {FIGURE("at_most", "layers", "1.2"), FIGURE("at_most", "in", "1.2"), true},
        {FIGURE("at_most", "layers", "1.2"), "true, sense = \"equals\", cite = \"1.2\"", false},
    };
    for (size_t i = 0; i < sizeof(rows) / sizeof(rows[0]); i++) {
        struct temporary_home home;
        make_home(&home);
        char *model = file_text(home_path(&home, "jurisdictions/model/test.lua"), NULL);
        char *named = text_with(model, "model/test", "model/other");
        char *other = text_with(named, rows[i].was, rows[i].is);
        home_write(&home, "jurisdictions/model/other.lua", other);
        home_write(&home, "jurisdictions/example/second.lua",
                   "jurisdiction \"example/second\" { title = \"P\", invented = true,\n"
                   "  follows = \"model/other\", from = \"2020-01-01\",\n"
                   "  figures = { " SWITCH("false") " } }\n");
        struct laws laws = {.home = home.path};
        const struct law *first = find(&laws, "example/first", DAY);
        assert_int_equal(share(first, find(&laws, "example/second", DAY)), rows[i].shares);
        laws_free(&laws);
        home_remove(&home);
        free(model);
        free(named);
        free(other);
    }
}

/* Once the switch is on, what lacks past it is the place's error, shared or not. */
static void a_switch_turned_on_lets_nothing_lack(void **state)
{
    (void)state;
    struct temporary_home home;
    make_home(&home);
    write_place(&home, "second", "", SWITCH("true"));
    struct laws laws = {.home = home.path};
    struct problems problems = {0};
    find(&laws, "example/first", DAY);
    assert_null(laws_find(&laws, "example/second", DAY, "", &problems));
    assert_int_equal(problems.count, 1);
    assert_non_null(strstr(problems.first->message, "test.switched_most"));
    problems_free(&problems);
    laws_free(&laws);
    home_remove(&home);
}

/* What is wrong with a place alone is said of it. */
static void a_place_that_errs_is_told(void **state)
{
    (void)state;
    struct temporary_home home;
    make_home(&home);
    write_place(&home, "second", "drop = { [\"test.its\"] = \"waived by 2\" },", SWITCH("false"));
    struct laws laws = {.home = home.path};
    struct problems problems = {0};
    const struct law *first = find(&laws, "example/first", DAY);
    assert_null(laws_find(&laws, "example/second", DAY, "", &problems));
    assert_int_equal(problems.count, 1);
    assert_non_null(strstr(problems.first->message, "drops \"test.its\", which is no rule"));
    assert_int_equal(first->book->holders, 1);
    problems_free(&problems);
    laws_free(&laws);
    home_remove(&home);
}

/* A file written, added or taken away since the first law was loaded. */
static void files_written_since_are_loaded(void **state)
{
    (void)state;
    static const struct {
        const char *path, *text;
    } rows[] = {
        {"rules/test.lua", "demand 'test.it' { title = 'Tiers', stage = 'permit', mend = 'x',\n"
                           "  when = { on 'test.required' }, fact = 'existing.layers',\n"
                           "  meets = 'test.most' }\n"},
        {"rules/more.lua", "-- nothing"},
        {"rules/test.lua", NULL},
    };
    for (size_t i = 0; i < sizeof(rows) / sizeof(rows[0]); i++) {
        struct temporary_home home;
        make_home(&home);
        write_place(&home, "second", "", SWITCH("false"));
        struct laws laws = {.home = home.path};
        const struct law *first = find(&laws, "example/first", DAY);
        if (rows[i].text == NULL)
            home_delete(&home, rows[i].path);
        else
            home_write(&home, rows[i].path, rows[i].text);
        assert_false(share(first, find(&laws, "example/second", DAY)));
        laws_free(&laws);
        home_remove(&home);
    }
}

static void each_judges_by_its_own_figures_and_drops(void **state)
{
    (void)state;
    struct temporary_home home;
    make_home(&home);
    write_place(&home, "second", "",
                SWITCH("false") "[\"test.most\"] = { 5, cite = \"2.2\" }, "
                                "[\"test.seen\"] = { 4, cite = \"2.3\" }, ");
    write_place(&home, "third", "",
                SWITCH("false") "[\"test.required\"] = { false, cite = \"3\" }, ");
    write_place(&home, "fourth", "drop = { [\"test.it\"] = \"waived by 4\" },", SWITCH("false"));
    char *job = text_with(SMALL_JOB, "\"layers\": 1", "\"layers\": 4");
    eavemark *handle = eavemark_open(home.path);
    for (int time = 0; time < 3; time++) {
        struct outcome_of_check first = home_check(handle, job, "example/first", NULL, NULL);
        struct outcome_of_check second = home_check(handle, job, "example/second", NULL, NULL);
        struct outcome_of_check third = home_check(handle, job, "example/third", NULL, NULL);
        struct outcome_of_check fourth = home_check(handle, job, "example/fourth", NULL, NULL);
        assert_member(first.json, "test.it", 0, "outcome", "fail");
        assert_member_has(first.json, "test.it", 0, "says", "at most 3 layers");
        assert_member(first.json, "test.said", 0, "outcome", "fail");
        assert_member(second.json, "test.it", 0, "outcome", "pass");
        assert_member_has(second.json, "test.it", 0, "says", "at most 5 layers");
        assert_member(second.json, "test.said", 0, "outcome", "pass");
        assert_member_has(second.json, "test.it", 0, "cite", "2.2");
        assert_member(third.json, "test.it", 0, "outcome", "not_applicable");
        assert_member(third.json, "test.said", 0, "outcome", "fail");
        assert_member(fourth.json, "test.it", 0, "outcome", "not_applicable");
        assert_member(fourth.json, "test.said", 0, "outcome", "fail");
        outcome_free(&first);
        outcome_free(&second);
        outcome_free(&third);
        outcome_free(&fourth);
    }
    eavemark_close(handle);
    free(job);
    home_remove(&home);
}

/* The one that was loaded goes on as long as another judges by its rules. */
static void rules_outlive_the_law_they_were_loaded_for(void **state)
{
    (void)state;
    struct temporary_home home;
    make_home(&home);
    write_place(&home, "second", "", SWITCH("false"));
    struct laws laws = {.home = home.path};
    const struct law *first = find(&laws, "example/first", DAY);
    const struct law *second = find(&laws, "example/second", DAY);
    const long long steps = laws_steps(&laws);
    size_t bytes_of_two, bytes_of_one;
    laws_count(&laws, &bytes_of_two);
    laws_rest(&laws, 1);
    laws_count(&laws, &bytes_of_one);
    assert_null(first->book);
    assert_int_equal(second->book->holders + second->book->whole->holders, 1 + 1);
    assert_non_null(rulebook_rule(second->book, "test.it"));
    /* Each of two counts half of it. */
    assert_true(bytes_of_one - bytes_of_two <= 1);
    assert_int_equal(laws_steps(&laws), steps);
    /* Asked for again it takes part again. */
    assert_ptr_equal(find(&laws, "example/first", DAY), first);
    assert_true(share(first, second));
    laws_rest(&laws, 0);
    assert_int_equal(laws_steps(&laws), steps);
    laws_free(&laws);
    home_remove(&home);
}

/* The project's own laws -------------------------------------------------------------------- */

static const char *const PLACES[] = {
    "us-ca", "us-fl",         "us-mn/minneapolis", "us-co/denver",
    "us-or", "us-tx/garland", "us-nj/montville",   "example/frostmere"};
static const char *const DAYS[] = {"2025-06-02", "2026-03-16", "2026-09-01"};

enum {
    PLACE_COUNT = sizeof(PLACES) / sizeof(PLACES[0]),
    DAY_COUNT = sizeof(DAYS) / sizeof(DAYS[0]),
};

static void most_days_of_a_place_share(void **state)
{
    (void)state;
    struct laws laws = {.home = EAVEMARK_HOME_DIR};
    /* The wind of a coast and the ice of a cold place move with the days; one of the new edition
     * has figures that the old one lacks. */
    assert_true(share(find(&laws, "us-fl", 20250602), find(&laws, "us-fl", 20260901)));
    assert_true(share(find(&laws, "example/frostmere", 20250602),
                      find(&laws, "example/frostmere", 20260901)));
    assert_false(share(find(&laws, "us-ca", 20250602), find(&laws, "us-ca", 20260316)));
    /* Neither has rule files of its own; one has those of its state. */
    assert_true(
        share(find(&laws, "us-co/denver", 20250602), find(&laws, "example/frostmere", 20250602)));
    assert_false(
        share(find(&laws, "us-co/denver", 20250602), find(&laws, "us-tx/garland", 20250602)));
    laws_free(&laws);
}

/* A figure by which facts follow is looked at whole. */
static void figures_that_tell_facts_must_be_the_same(void **state)
{
    (void)state;
    static const struct {
        const char *figure;
        bool shares;
    } rows[] = {{"layers.most\"] = { 1", true},
                {"deck.nail_made_length.common_8d\"] = { 2.4", false}};
    for (size_t i = 0; i < sizeof(rows) / sizeof(rows[0]); i++) {
        struct temporary_home home;
        char text[500];
        home_make(&home);
        home_copy_all(&home, "rules");
        home_copy_all(&home, "jurisdictions/model");
        home_write(&home, "jurisdictions/example/first.lua",
                   "jurisdiction \"example/first\" { title = \"P\", invented = true,\n"
                   "  follows = \"model/irc-2021\" }\n");
        snprintf(text, sizeof(text),
                 "jurisdiction \"example/second\" { title = \"P\", invented = true,\n"
                 "  follows = \"model/irc-2021\", figures = {\n"
                 "  [\"%s, cite = \"1\" } } }\n",
                 rows[i].figure);
        home_write(&home, "jurisdictions/example/second.lua", text);
        struct laws laws = {.home = home.path};
        const struct law *first = find(&laws, "example/first", DAY);
        assert_int_equal(share(first, find(&laws, "example/second", DAY)), rows[i].shares);
        laws_free(&laws);
        home_remove(&home);
    }
}

static char *report_of(eavemark *handle, const char *job, const char *place, const char *day)
{
    struct outcome_of_check outcome = home_check(handle, job, place, day, NULL);
    char *json = outcome.json;
    assert_string_equal(outcome.problems, "");
    assert_non_null(json);
    outcome.json = NULL;
    outcome_free(&outcome);
    return json;
}

/* Takes out the facts that only the place of an example asks for. */
static void drop_local(cJSON *node)
{
    static const char *const LOCAL[] = {"pictures_before_cover", "hail_class", "hail_wrapper_kept"};
    for (size_t i = 0; i < sizeof(LOCAL) / sizeof(LOCAL[0]); i++)
        cJSON_DeleteItemFromObjectCaseSensitive(node, LOCAL[i]);
    cJSON *child = NULL;
    cJSON_ArrayForEach(child, node)
        drop_local(child);
}

static const char *const HOUSES[] = {"cross-gable/job", "coastal-hip/job-deck",
                                     "overlay-gable/job-dry-in", "porch-tear-off/job-final"};

enum { HOUSE_COUNT = sizeof(HOUSES) / sizeof(HOUSES[0]) };

static void read_houses(char *jobs[HOUSE_COUNT])
{
    for (size_t h = 0; h < HOUSE_COUNT; h++) {
        char path[200];
        snprintf(path, sizeof(path), "tests/houses/%s", HOUSES[h]);
        cJSON *job = house_job(path);
        drop_local(job);
        jobs[h] = cJSON_PrintUnformatted(job);
        assert_non_null(jobs[h]);
        cJSON_Delete(job);
    }
}

/* All laws from one handle, one after the other and then so that each job is met again; each
 * also from a handle of its own. */
static void laws_that_share_judge_as_alone(void **state)
{
    (void)state;
    char *jobs[HOUSE_COUNT];
    eavemark *together = eavemark_open(EAVEMARK_HOME_DIR);
    read_houses(jobs);
    for (size_t p = 0; p < PLACE_COUNT; p++)
        for (size_t d = 0; d < DAY_COUNT; d++)
            for (size_t h = 0; h < HOUSE_COUNT; h++)
                free(report_of(together, jobs[h], PLACES[p], DAYS[d]));
    for (size_t d = 0; d < DAY_COUNT; d++)
        for (size_t p = 0; p < PLACE_COUNT; p++) {
            eavemark *alone = eavemark_open(EAVEMARK_HOME_DIR);
            for (size_t h = 0; h < HOUSE_COUNT; h++) {
                char *one = report_of(together, jobs[h], PLACES[p], DAYS[d]);
                char *other = report_of(alone, jobs[h], PLACES[p], DAYS[d]);
                assert_string_equal(one, other);
                free(one);
                free(other);
            }
            eavemark_close(alone);
        }
    for (size_t h = 0; h < HOUSE_COUNT; h++)
        free(jobs[h]);
    eavemark_close(together);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(other_values_share),
        cmocka_unit_test(what_files_see_otherwise_does_not),
        cmocka_unit_test(editions_that_measure_otherwise_do_not),
        cmocka_unit_test(a_switch_turned_on_lets_nothing_lack),
        cmocka_unit_test(a_place_that_errs_is_told),
        cmocka_unit_test(files_written_since_are_loaded),
        cmocka_unit_test(each_judges_by_its_own_figures_and_drops),
        cmocka_unit_test(rules_outlive_the_law_they_were_loaded_for),
        cmocka_unit_test(most_days_of_a_place_share),
        cmocka_unit_test(figures_that_tell_facts_must_be_the_same),
        cmocka_unit_test(laws_that_share_judge_as_alone),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
