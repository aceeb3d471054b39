/* Slips of the pen in a county's file: each with the line and the words in which it is told,
 * for somebody who is no programmer. The slips are those that people made when they wrote
 * their first county; the words are ours. */
#include "profile/profile.h"

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

/* What is said of the county's file; "" when nothing is. To be freed. */
static char *said_of(const char *text)
{
    struct problems problems = {0};
    struct text said = TEXT_EMPTY;
    home_write(&home, "jurisdictions/example/a.lua", text);
    struct profile *profile = profile_resolve(home.path, "example/a", 20260302, "job.json",
                                              &problems);
    problems_write(&problems, &said);
    assert_int_equal(profile == NULL, problems.count > 0);
    profile_free(profile);
    problems_free(&problems);
    char *copy = strdup(text_string(&said));
    assert_non_null(copy);
    text_free(&said);
    return copy;
}

static void assert_said(const char *name, const char *text, int line, const char *words)
{
    char wanted[512];
    char *said = said_of(text);
    snprintf(wanted, sizeof(wanted), "jurisdictions/example/a.lua:%d: %s\n", line, words);
    if (strcmp(said, wanted) != 0)
        fail_msg("%s\n  wanted %s  said   %s", name, wanted, said);
    free(said);
}

/* A county of line 1, figures from line 3 on. */
#define COUNTY                                                       \
    "jurisdiction \"example/a\" { title = \"A\", invented = true,\n" \
    "  follows = \"model/test\",\n"

struct slip {
    const char *name, *text;
    int line;
    const char *words;
};

static const struct slip NO_LUA[] = {
    {"a comma forgotten between figures",
     COUNTY "  figures = { [\"test.most\"] = { 1, cite = \"5\" }\n"
            "    [\"test.seen\"] = { 1, cite = \"6\" } },\n}\n",
     3, "a comma is missing at the end of line 3, before [\"test.seen\"]"},
    {"a comma forgotten after a text", COUNTY "  code = \"A Code\"\n  figures = { },\n}\n", 3,
     "a comma is missing at the end of line 3, before figures"},
    {"a comma forgotten in a set",
     COUNTY "  figures = { [\"test.kinds\"] = { { \"a\" \"b\" }, cite = \"5\" } },\n}\n", 3,
     "a comma is missing in line 3, before \"b\""},
    {"a curly quote",
     COUNTY "  code = \xE2\x80\x9C"
            "A Code\xE2\x80\x9D,\n}\n",
     3, "a curly quote (a word processor's): write the straight one, \""},
    {"a quote not closed", COUNTY "  code = \"A Code,\n  as_seen = \"2026-01-01\",\n}\n", 3,
     "a text begins with \" and its closing \" is missing on this line"},
    {"True", COUNTY "  figures = { [\"test.required\"] = { True, cite = \"5\" } },\n}\n", 3,
     "write true, not True"},
    {"yes", COUNTY "  figures = { [\"test.required\"] = { yes, cite = \"5\" } },\n}\n", 3,
     "write true, not yes"},
    {"No", COUNTY "  figures = { [\"test.required\"] = { No, cite = \"5\" } },\n}\n", 3,
     "write false, not No"},
    {"None", COUNTY "  draft = None,\n}\n", 3, "None is no word here: leave the entry out"},
    {"a text without quotes",
     COUNTY "  figures = { [\"test.kinds\"] = { { slate }, cite = \"5\" } },\n}\n", 3,
     "unknown name 'slate'; if a text is meant, write it in quotes: \"slate\""},
    {"a name without quotes and brackets",
     COUNTY "  figures = { test.most = { 1, cite = \"5\" } },\n}\n", 3,
     "write [\"test.most\"] = ...: such a name stands in quotes and brackets"},
    {"a name without brackets", COUNTY "  figures = { \"test.most\" = { 1, cite = \"5\" } },\n}\n",
     3, "write [\"test.most\"] = ...: such a name stands in quotes and brackets"},
    {"a name without quotes", COUNTY "  figures = { [test.most] = { 1, cite = \"5\" } },\n}\n", 3,
     "write [\"test.most\"] = ...: such a name stands in quotes and brackets"},
    {"a colon", COUNTY "  code: \"A Code\",\n}\n", 3,
     "code is followed by a colon: write = between a name and its value"},
    {"a section without quotes",
     COUNTY "  figures = { [\"test.most\"] = { 1, cite = 15.02.010 } },\n}\n", 3,
     "15.02.010 is no number; write it in quotes: \"15.02.010\""},
    {"a mixed number", COUNTY "  figures = { [\"test.most\"] = { 1 1/2, cite = \"5\" } },\n}\n", 3,
     "a figure that is no plain number stands in quotes: \"1 1/2\""},
    {"a unit", COUNTY "  figures = { [\"test.most\"] = { 3 ft, cite = \"5\" } },\n}\n", 3,
     "a figure that is no plain number stands in quotes: \"3 ft\""},
    {"a unit run on", COUNTY "  figures = { [\"test.most\"] = { 3ft, cite = \"5\" } },\n}\n", 3,
     "3ft is no number; write it in quotes: \"3ft\""},
    {"a slope", COUNTY "  figures = { [\"test.most\"] = { 4:12, cite = \"5\" } },\n}\n", 3,
     "a figure that is no plain number stands in quotes: \"4:12\""},
    {"a share", COUNTY "  figures = { [\"test.most\"] = { 25 %, cite = \"5\" } },\n}\n", 3,
     "a figure that is no plain number stands in quotes: \"25 %\""},
    {"another language's comment", COUNTY "  // our own code\n  code = \"A Code\",\n}\n", 3,
     "a comment begins with --, not with //"},
    {"a brace not closed", COUNTY "  figures = { [\"test.most\"] = { 1, cite = \"5\" },\n}\n", 1,
     "the { of line 1 is never closed"},
    {"a brace too many", COUNTY "  figures = { } },\n}\n", 4,
     "} closes nothing: one too many, or what opens it is missing"},
    {"a bracket closed by another", COUNTY "  figures = { [\"test.most\"} = { 1 } },\n}\n", 3,
     "} stands where the [ of line 3 is to be closed"},
};

static void what_is_no_lua_is_told_in_plain_words(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof(NO_LUA) / sizeof(NO_LUA[0]); i++)
        assert_said(NO_LUA[i].name, NO_LUA[i].text, NO_LUA[i].line, NO_LUA[i].words);
}

/* A file that is whole but for one thing Lua itself names keeps Lua's words, and what only
 * looks like a slip is none. */
static void what_is_no_slip_is_left_alone(void **state)
{
    (void)state;
    static const char *const FINE[] = {
        COUNTY "  code = \"A, B and C: 1 1/2, 3 ft, True\", -- yes, 4:12 // \xE2\x80\x9C\n}\n",
        "--[[ [\"a\"] = 1\n \"b\" ]]\n" COUNTY "  code = [[A\nCode]],\n}\n",
        "local seen = function(value) local it = { value, cite = \"5\" } return it end\n" COUNTY
        "  figures = { [\"test.most\"] = seen(1) },\n}\n",
        "\xEF\xBB\xBF" COUNTY "}\n",
    };
    for (size_t i = 0; i < sizeof(FINE) / sizeof(FINE[0]); i++) {
        char *said = said_of(FINE[i]);
        assert_string_equal(said, "");
        free(said);
    }
    char *said = said_of(COUNTY "  follows = jurisdictoin,\n}\n");
    assert_has(said, "unknown name 'jurisdictoin' (did you mean 'jurisdiction'?)");
    free(said);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(what_is_no_lua_is_told_in_plain_words),
        cmocka_unit_test(what_is_no_slip_is_left_alone),
    };
    return cmocka_run_group_tests(tests, make_home, remove_home);
}
