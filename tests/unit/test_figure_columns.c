/* Figures written once, with a column for each edition that has them otherwise, and
 * tables of the code as one figure with rows. */
#include "profile/profile.h"

#include "base/date.h"
#include "include/eavemark.h"
#include "support/small_law.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static struct temporary_home home;

static const char PART[] =
    "figure \"t.flat\" { 2, \"R1\", unit = \"in\", sense = \"at_most\", seen = \"p\",\n"
    "  read_in = { \"M 2021\" },\n"
    "  [\"2018\"] = { 1.5, \"R9\", memory = \"recalled\" },\n"
    "  [\"2024\"] = { cite = \"R7\" } }\n"
    "\n"
    "figure \"t.none\" { unit = \"mph\", sense = \"over\",\n"
    "  [\"2018\"] = { 130, \"R2\", seen = \"p\", sense = \"from\" },\n"
    "  [\"2021\"] = { 110, \"R3\", seen = \"p\" } }\n"
    "figure \"t.on\" { true, \"R4\", sense = \"equals\", seen = \"p\", stricter = true }\n"
    "figure \"t.least\" { unit = \"in\", sense = \"at_least\", cite = \"R5\", seen = \"p\",\n"
    "  behind = \"t.on\", by = \"wood\",\n"
    "  [\"2018\"] = { cite = \"R5 of 2018\", seen = \"q\" },\n"
    "  rows = {\n"
    "    fir = { 3 },\n"
    "    pine = { 4, \"R6\", practice = \"r\",\n"
    "      [\"2018\"] = { 5, \"R8\", seen = \"q\" } },\n"
    "  } }\n";

static void place(const char *id, const char *text)
{
    char path[128];
    snprintf(path, sizeof(path), "jurisdictions/%s.lua", id);
    home_write(&home, path, text);
}

static int make_home(void **state)
{
    (void)state;
    static const char EDITION[] =
        "jurisdiction \"model/m-%s\" { title = \"M %s\", model = true, follows = \"model/m\",\n"
        "  edition = \"M %s\", parts = \"m\", column = \"%s\" }\n";
    static const char *const YEARS[] = {"2018", "2021", "2024"};
    home_make(&home);
    small_law_write(&home);
    home_write(&home, "rules/wood.lua",
               "field \"wood\" { type = \"choice\",\n"
               "  choices = { \"fir\", \"pine\" }, stage = \"permit\", ask = \"Which wood?\" }\n");
    home_write(&home, "jurisdictions/model/m/t.lua", PART);
    place("model/m",
          "jurisdiction \"model/m\" { title = \"M\", model = true, base_only = true,\n"
          "  edition = \"M\", parts = \"m\", columns = { \"2018\", \"2021\", \"2024\" } }\n");
    for (size_t i = 0; i < 3; i++) {
        char id[32], text[400];
        snprintf(id, sizeof(id), "model/m-%s", YEARS[i]);
        snprintf(text, sizeof(text), EDITION, YEARS[i], YEARS[i], YEARS[i], YEARS[i]);
        place(id, text);
    }
    return 0;
}

static int remove_home(void **state)
{
    (void)state;
    home_remove(&home);
    return 0;
}

static struct profile *edition(const char *id)
{
    struct problems problems = {0};
    struct text said = TEXT_EMPTY;
    struct profile *profile = profile_resolve(home.path, id, 20260302, "job.json", &problems);
    problems_write(&problems, &said);
    if (profile == NULL || problems.count > 0)
        fail_msg("%s: %s", id, text_string(&said));
    text_free(&said);
    problems_free(&problems);
    return profile;
}

static void assert_figure(const struct profile *profile, const char *name, double value,
                          const char *section, enum status status, int line)
{
    const struct figure *figure = profile_figure(profile, name);
    if (figure == NULL)
        fail_msg("there is no %s", name);
    assert_float_equal(figure->value.number, value, 0);
    assert_string_equal(figure->cite.section, section);
    assert_int_equal(figure->cite.status, status);
    assert_string_equal(figure->file, "jurisdictions/model/m/t.lua");
    assert_int_equal(figure->line, line);
}

static void an_edition_has_its_column_or_the_common_value(void **state)
{
    (void)state;
    struct profile *p2018 = edition("model/m-2018"), *p2021 = edition("model/m-2021"),
                   *p2024 = edition("model/m-2024");
    assert_figure(p2018, "t.flat", 1.5, "R9", STATUS_MEMORY, 3);
    assert_string_equal(profile_figure(p2018, "t.flat")->value.unit, "in");
    assert_string_equal(profile_figure(p2018, "t.flat")->cite.source, "recalled");
    assert_figure(p2021, "t.flat", 2, "R1", STATUS_SEEN, 1);
    assert_figure(p2024, "t.flat", 2, "R7", STATUS_PARALLEL, 4); /* read in 2021 alone */
    profile_free(p2018);
    profile_free(p2021);
    profile_free(p2024);
}

/* What no edition shares is whole in each column, and not there where there is none. */
static void editions_may_share_nothing(void **state)
{
    (void)state;
    struct profile *p2018 = edition("model/m-2018"), *p2021 = edition("model/m-2021"),
                   *p2024 = edition("model/m-2024");
    assert_figure(p2018, "t.none", 130, "R2", STATUS_SEEN, 7);
    assert_int_equal(profile_figure(p2018, "t.none")->sense, SENSE_FROM);
    assert_figure(p2021, "t.none", 110, "R3", STATUS_SEEN, 8);
    assert_int_equal(profile_figure(p2021, "t.none")->sense, SENSE_OVER);
    assert_string_equal(profile_figure(p2021, "t.none")->value.unit, "mph");
    assert_null(profile_figure(p2024, "t.none"));
    profile_free(p2018);
    profile_free(p2021);
    profile_free(p2024);
}

static void rows_have_what_the_table_says_of_all(void **state)
{
    (void)state;
    struct profile *p2021 = edition("model/m-2021"), *p2018 = edition("model/m-2018");
    assert_figure(p2021, "t.least.fir", 3, "R5", STATUS_SEEN, 14);
    assert_figure(p2021, "t.least.pine", 4, "R6", STATUS_PRACTICE, 15);
    assert_string_equal(profile_figure(p2021, "t.least.pine")->cite.source, "r");
    assert_string_equal(profile_figure(p2021, "t.least.pine")->behind, "t.on");
    assert_figure(p2018, "t.least.fir", 3, "R5 of 2018", STATUS_SEEN, 12);
    assert_string_equal(profile_figure(p2018, "t.least.fir")->cite.source, "q");
    assert_figure(p2018, "t.least.pine", 5, "R8", STATUS_SEEN, 16);
    profile_free(p2021);
    profile_free(p2018);
}

/* A county restates a row like any figure. */
static void a_place_restates_a_row(void **state)
{
    (void)state;
    place(
        "example/a",
        "jurisdiction \"example/a\" { title = \"A\", invented = true,\n"
        "  follows = \"model/m-2021\", figures = { [\"t.least.fir\"] = { 6, cite = \"7\" } } }\n");
    struct profile *profile = edition("example/a");
    assert_float_equal(profile_figure(profile, "t.least.fir")->value.number, 6, 0);
    assert_non_null(profile_figure(profile, "t.least.fir")->amended);
    profile_free(profile);
}

static void what_is_written_wrong_is_refused(void **state)
{
    (void)state;
    static const struct {
        const char *part, *says;
    } wrong[] = {
        {"figure \"t.x\" { 1, \"R1\", unit = \"in\", sense = \"at_most\", seen = \"p\", seeen = \"q\" }",
         "t.lua:1: figure \"t.x\": unknown key \"seeen\"; did you mean \"seen\"?"},
        {"\nfigure \"t.x\" { 1, \"R1\", unit = \"in\", sense = \"at_most\", seen = \"p\",\n"
         "  [\"2081\"] = { 2, \"R1\", seen = \"p\" } }",
         "t.lua:2: figure \"t.x\": 2081 is no edition of this place"},
        {"figure \"t.x\" { 1, \"R1\", unit = \"in\", sense = \"at_most\", seen = \"p\",\n"
         "  [\"2021\"] = { 2, \"R1\", seen = \"p\", unit = \"ft\" } }",
         "t.lua:2: figure \"t.x\": unknown key \"unit\""},
        {"figure \"t.x\" { 1, \"R1\", unit = \"in\", sense = \"at_most\", seen = \"p\", memory = \"q\" }",
         "figure \"t.x\" says twice how it is known"},
        {"figure \"t.x\" { 1, \"R1\", unit = \"in\", sense = \"at_most\", seen = \"p\", [\"2021\"] = 2 }",
         "figure \"t.x\": a column is written { value, \"section\", seen = \"...\" }"},
        {"figure \"t.x\" { unit = \"in\", sense = \"at_most\", rows = { a = 3 } }",
         "figure \"t.x.a\": a row is written { value, \"section\" }"},
        {"figure \"t.x\" { unit = \"in\", sense = \"at_most\", rows = { { 3, \"R1\", seen = \"p\" } } }",
         "figure \"t.x\": every row needs a name"},
        {"figure \"t.x\" { 1, \"R1\", unit = \"in\", sense = \"at_most\" }", "lacks a status"},
        {"figure \"t.x\" { 1, \"R1\", unit = \"in\", sense = \"at_most\", seen = \"p\", by = \"wood\" }",
         "figure \"t.x\": by goes with rows"},
        {"figure \"t.flat\" { 1, \"R1\", unit = \"in\", sense = \"at_most\", seen = \"p\" }\n"
         "figure \"t.flat\" { 2, \"R1\", unit = \"in\", sense = \"at_most\", seen = \"p\" }",
         "figure \"t.flat\" is given twice"},
    };
    for (size_t i = 0; i < sizeof(wrong) / sizeof(wrong[0]); i++) {
        struct problems problems = {0};
        struct text said = TEXT_EMPTY;
        home_write(&home, "jurisdictions/model/m/t.lua", wrong[i].part);
        assert_null(profile_resolve(home.path, "model/m-2021", 20260302, "job.json", &problems));
        problems_write(&problems, &said);
        if (strstr(text_string(&said), wrong[i].says) == NULL)
            fail_msg("\"%s\" is not in: %s", wrong[i].says, text_string(&said));
        text_free(&said);
        problems_free(&problems);
    }
}

static void a_folder_of_parts_is_there_and_no_place(void **state)
{
    (void)state;
    struct problems problems = {0};
    struct text said = TEXT_EMPTY;
    char near[200];
    place("model/m", "jurisdiction \"model/m\" { title = \"M\", model = true, parts = \"n\" }\n");
    assert_null(profile_resolve(home.path, "model/m", 20260302, "job.json", &problems));
    problems_write(&problems, &said);
    assert_non_null(strstr(text_string(&said), "parts: \"n\" is no folder beside this file"));
    text_free(&said);
    problems_free(&problems);
    profile_near_names(home.path, "model/m/t", near, sizeof(near));
    assert_null(strstr(near, "model/m/t"));
}

/* The rows of a table go by what a job can say. */
static void rows_are_choices_of_their_field(void **state)
{
    (void)state;
    static const struct {
        const char *by, *row, *says;
    } wrong[] = {
        {"wood", "firr",
         "figure \"t.x.firr\": \"firr\" is no choice of wood; did you mean \"fir\"?"},
        {"wooood", "fir",
         "figure \"t.x.fir\": its rows go by \"wooood\", which is no field of choices"},
    };
    for (size_t i = 0; i < sizeof(wrong) / sizeof(wrong[0]); i++) {
        char part[300];
        char *report = NULL, *problems = NULL;
        snprintf(part, sizeof(part),
                 "figure \"t.x\" { unit = \"in\", sense = \"at_most\", by = \"%s\",\n"
                 "  seen = \"p\", rows = {\n    %s = { 3, \"R1\" } } }\n",
                 wrong[i].by, wrong[i].row);
        home_write(&home, "jurisdictions/model/m/t.lua", part);
        eavemark *handle = eavemark_open(home.path);
        const struct eavemark_request request = {.jurisdiction = "model/m-2021"};
        assert_int_equal(
            eavemark_explain(handle, "t.x", &request, EAVEMARK_TEXT, &report, &problems),
            EAVEMARK_BROKEN);
        if (strstr(problems, wrong[i].says) == NULL || strstr(problems, "t.lua:3:") == NULL)
            fail_msg("\"%s\" is not in: %s", wrong[i].says, problems);
        free(report);
        free(problems);
        eavemark_close(handle);
    }
}

int main(void)
{
#define CASE(test) cmocka_unit_test_setup_teardown(test, make_home, remove_home)
    const struct CMUnitTest tests[] = {
        CASE(an_edition_has_its_column_or_the_common_value),
        CASE(editions_may_share_nothing),
        CASE(rows_have_what_the_table_says_of_all),
        CASE(a_place_restates_a_row),
        CASE(what_is_written_wrong_is_refused),
        CASE(a_folder_of_parts_is_there_and_no_place),
        CASE(rows_are_choices_of_their_field),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
