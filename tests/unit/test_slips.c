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

/* A new figure of line 3, in this unit. */
#define OWN(value, unit)                                                                          \
    COUNTY "  figures = { [\"own.a\"] = { " value ", unit = \"" unit                              \
           "\", sense = \"at_most\", cite = \"5\",\n    status = \"invented\", source = \"A\" } " \
           "},\n}\n"
#define MOST(value) COUNTY "  figures = { [\"test.most\"] = { " value ", cite = \"5\" } },\n}\n"
#define KINDS(value) COUNTY "  figures = { [\"test.kinds\"] = { " value ", cite = \"5\" } },\n}\n"

/* Lua takes all of these, and the place would have meant something else than was written. */
#define ZONES(inside) COUNTY "  zones = { " inside " },\n}\n"
static const struct slip ZONES_AMISS[] = {
    {"a zone that no rule can name", ZONES("[\"site.fog\"] = { \"a\", \"b\", ask = \"Which?\" }"),
     3,
     "zone \"site.fog\": a zone is called as the rule that asks for it calls it: "
     "site.local_wind_zone, site.local_fire_zone, site.local_ice_zone"},
    {"one part", ZONES("[\"site.local_wind_zone\"] = { \"a\", ask = \"Which?\" }"), 3,
     "zone \"site.local_wind_zone\" has fewer than two words: a map of one part divides nothing"},
    {"no question", ZONES("[\"site.local_wind_zone\"] = { \"a\", \"b\" }"), 3,
     "zone \"site.local_wind_zone\" lacks ask: the question that tells where each begins"},
    {"a word of two",
     ZONES("[\"site.local_wind_zone\"] = { \"north side\", \"b\", ask = \"Which?\" }"), 3,
     "zone \"site.local_wind_zone\": \"north side\" is no word: write letters, digits and _ for a "
     "space, no more than 60"},
    {"a word twice", ZONES("[\"site.local_wind_zone\"] = { \"a\", \"a\", ask = \"Which?\" }"), 3,
     "site.local_wind_zone: \"a\" stands there twice"},
    {"another key",
     ZONES("[\"site.local_wind_zone\"] = { \"a\", \"b\", ask = \"Which?\", from = 3 }"), 3,
     "zone \"site.local_wind_zone\": unknown key \"from\"; it has its words and ask"},
    {"no table", ZONES("[\"site.local_wind_zone\"] = \"a\""), 3,
     "zone \"site.local_wind_zone\" is written { \"word\", \"word\", ask = \"...\" }"},
};

static const struct slip TAKEN_IN_SILENCE[] = {
    {"a figure given twice",
     COUNTY "  figures = { [\"test.most\"] = { 1, cite = \"5\" },\n"
            "    [\"test.most\"] = { 2, cite = \"6\" } },\n}\n",
     4,
     "\"test.most\" is given twice in one table, on line 3 already; of two the last would "
     "count in silence: leave one out"},
    {"a table given twice",
     COUNTY "  figures = { [\"test.most\"] = { 1, cite = \"5\" } },\n"
            "  figures = { [\"test.seen\"] = { 1, cite = \"5\" } },\n}\n",
     4,
     "\"figures\" is given twice in one table, on line 3 already; of two the last would "
     "count in silence: leave one out"},
    {"a section given twice", MOST("1, cite = \"4\""), 3,
     "\"cite\" is given twice in one table, on line 3 already; of two the last would count in "
     "silence: leave one out"},
    {"a decimal comma", OWN("1,5", "in"), 3,
     "figure \"own.a\" has two bare values, 1 and 5: a comma parts values here. Write one value, "
     "with a point for a part of one (1.5) and thousands without a comma (15000)"},
    {"a comma for thousands", OWN("15,000", "usd"), 3,
     "figure \"own.a\" has two bare values, 15 and 0: a comma parts values here. Write one value, "
     "with a point for a part of one (1.5) and thousands without a comma (15000)"},
    {"a set without braces of its own", KINDS("\"slate\", \"tile\""), 3,
     "figure \"test.kinds\" has two bare values, \"slate\" and \"tile\"; a set stands in braces of "
     "its own: { { \"slate\", \"tile\" }, cite = ... }"},
    {"a set of one without braces", KINDS("\"slate\""), 3,
     "figure \"test.kinds\" is a set: write it in braces of its own, { { \"slate\" }, ... }"},
    {"a mixed number reckoned", OWN("1-1/2", "in"), 3,
     "1-1/2 would be reckoned, not read; write it in quotes with its unit, \"1-1/2 in\", or as one "
     "number"},
    {"a fraction reckoned", OWN("7/16", "in"), 3,
     "7/16 would be reckoned, not read; write it in quotes with its unit, \"7/16 in\", or as one "
     "number"},
    {"a part of a layer", MOST("1.5"), 3,
     "figure \"test.most\" is 1.5, but layers are whole: write the whole number that the section "
     "says"},
    {"less than nothing", OWN("-1", "usd"), 3,
     "figure \"own.a\" is -1, less than nothing: for no limit, drop the rule or turn its switch "
     "off"},
    {"a figure of another size", OWN("1150", "mph"), 3,
     "figure \"own.a\" is 1150, which in the unit mph cannot be meant: it goes from 0 to 400"},
    {"a day of the thirteenth month", OWN("20251345", "date"), 3,
     "figure \"own.a\" is no day: write 20260302, or \"2026-03-02\", for the second of March 2026"},
    {"a day in words", OWN("\"March 2, 2026\"", "date"), 3,
     "figure \"own.a\" is \"March 2, 2026\", no day: write \"2026-03-02\""},
    {"a day read that is none", COUNTY "  as_seen = \"2026-13-45\",\n}\n", 1,
     "as_seen: \"2026-13-45\" is not a date (YYYY-MM-DD)"},
    {"a doubt without words", COUNTY "  unsure = \"\",\n}\n", 1,
     "unsure is empty: say it in words, or leave it out"},
    {"a section without words", COUNTY "  figures = { [\"test.most\"] = { 1, cite = \"\" } },\n}\n",
     3, "cite is empty: say it in words, or leave it out"},
    {"a yes in quotes",
     COUNTY "  figures = { [\"test.required\"] = { \"yes\", cite = \"5\" } },\n}\n", 3,
     "figure \"test.required\" is yes or no: write true or false, without quotes"},
    {"a unit of another kind", OWN("\"3 ft\"", "usd"), 3,
     "figure \"own.a\" is \"3 ft\", \"ft\" after the number; it is asked for in USD"},
    {"a length that comes out uneven", OWN("\"4 in\"", "ft"), 3,
     "figure \"own.a\" is \"4 in\", which does not come out even in the unit ft: write it in that "
     "unit"},
    {"a slope without its run", OWN("\"4\"", "rise_in_12"), 3,
     "figure \"own.a\" is \"4\", no slope: write \"4:12\""},
    {"added though there", KINDS("adds = { \"slate\" }"), 3,
     "figure \"test.kinds\" adds \"slate\", which it holds already: slate, tile"},
    {"left out though not there", KINDS("without = { \"asphalt\" }"), 3,
     "figure \"test.kinds\" is to be without \"asphalt\", which it does not hold; it holds: slate, "
     "tile"},
    {"a set and what is added to it", KINDS("{ \"slate\" }, adds = { \"tile\" }"), 3,
     "figure \"test.kinds\" says adds or without, which go with a set that is followed, and in "
     "place of a value"},
    {"added to a number", MOST("adds = { \"tile\" }"), 3,
     "figure \"test.most\" says adds or without, which go with a set that is followed, and in place "
     "of a value"},
    {"added twice", KINDS("adds = { \"asphalt\", \"asphalt\" }"), 3,
     "test.kinds: \"asphalt\" stands there twice"},
    {"a section of blanks", COUNTY "  figures = { [\"test.most\"] = { 1, cite = \"  \" } },\n}\n",
     3, "cite is empty: say it in words, or leave it out"},
    {"a rule dropped without a word", COUNTY "  drop = { [\"test.rule\"] = \" \" },\n}\n", 3,
     "drop: \"test.rule\" does not say why"},
    {"a column of a county", COUNTY "  column = \"2018\",\n}\n", 1,
     "column is of model codes, which have their figures in columns: take it out"},
    {"one of a single word",
     COUNTY "  facts = { [\"site.exposure\"] = { one_of = { \"C\" }, cite = \"5\" } },\n}\n", 3,
     "fact \"site.exposure\": is one of a single word: say the one value"},
    {"two editions without a first day", COUNTY "}\n" COUNTY "}\n", 4,
     "jurisdiction \"example/a\": two editions both cover every day; give the earlier one a `to`, "
     "the first day it no longer binds"},
    {"added without a list", KINDS("adds = \"tile\""), 3,
     "figure \"test.kinds\": adds is a list of members, { \"...\" }"},
};

static void what_is_wrong_with_a_zone_is_told(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof(ZONES_AMISS) / sizeof(ZONES_AMISS[0]); i++)
        assert_said(ZONES_AMISS[i].name, ZONES_AMISS[i].text, ZONES_AMISS[i].line,
                    ZONES_AMISS[i].words);
}

/* The nearer place's map counts; its words are the choices of the field. */
static void a_zone_is_a_field_of_the_place(void **state)
{
    (void)state;
    struct problems problems = {0};
    home_write(&home, "jurisdictions/example/a.lua",
               ZONES("[\"site.local_wind_zone\"] = { \"ridge\", \"valley\", ask = \"Which?\" }"));
    home_write(
        &home, "jurisdictions/example/b.lua",
        "jurisdiction \"example/b\" { title = \"B\", invented = true, follows = \"example/a\",\n"
        "  zones = { [\"site.local_wind_zone\"] = { \"north\", \"south\", \"east\",\n"
        "    ask = \"Where?\" } } }\n");
    struct profile *a = profile_resolve(home.path, "example/a", 20260302, "job.json", &problems);
    struct profile *b = profile_resolve(home.path, "example/b", 20260302, "job.json", &problems);
    assert_int_equal(problems.count, 0);
    assert_int_equal(a->zone_count, 1);
    assert_int_equal(a->zones[0].words.set_count, 2);
    assert_int_equal(b->zone_count, 1);
    assert_int_equal(b->zones[0].words.set_count, 3);
    assert_string_equal(b->zones[0].ask, "Where?");
    assert_string_equal(b->zones[0].file, "jurisdictions/example/b.lua");
    assert_int_equal(b->zones[0].line, 2);
    profile_free(a);
    profile_free(b);
    problems_free(&problems);
}

static void what_lua_would_take_in_silence_is_told(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof(TAKEN_IN_SILENCE) / sizeof(TAKEN_IN_SILENCE[0]); i++)
        assert_said(TAKEN_IN_SILENCE[i].name, TAKEN_IN_SILENCE[i].text, TAKEN_IN_SILENCE[i].line,
                    TAKEN_IN_SILENCE[i].words);
}

/* The figure own.a or other of a county that loads. To be freed with its profile. */
static const struct figure *figure_of(const char *text, const char *name, struct profile **profile)
{
    struct problems problems = {0};
    home_write(&home, "jurisdictions/example/a.lua", text);
    *profile = profile_resolve(home.path, "example/a", 20260302, "job.json", &problems);
    if (*profile == NULL)
        fail_msg("%s: %s", text, problems.first->message);
    problems_free(&problems);
    const struct figure *figure = profile_figure(*profile, name);
    assert_non_null(figure);
    return figure;
}

/* As the section prints it, where that is a number exactly. */
static void figures_may_be_written_as_words(void **state)
{
    (void)state;
    static const struct {
        const char *text;
        double number;
    } WORDS[] = {
        {OWN("\"1-1/2 in\"", "in"), 1.5},
        {OWN("\"1 1/2\"", "in"), 1.5},
        {OWN("\"3 ft\"", "ft"), 3},
        {OWN("\"3 ft\"", "in"), 36},
        {OWN("\"18 in\"", "ft"), 1.5},
        {OWN("\"4:12\"", "rise_in_12"), 4},
        {OWN("\"2-1/2:12\"", "rise_in_12"), 2.5},
        {OWN("\"4 in 12\"", "rise_in_12"), 4},
        {OWN("\"25 %\"", "percent"), 25},
        {OWN("\"$15,000\"", "usd"), 15000},
        {OWN("\"15,000\"", "usd"), 15000},
        {OWN("\"2 squares\"", "sqft"), 200},
        {OWN("\"2026-03-02\"", "date"), 20260302},
    };
    for (size_t i = 0; i < sizeof(WORDS) / sizeof(WORDS[0]); i++) {
        struct profile *profile;
        const struct figure *figure = figure_of(WORDS[i].text, "own.a", &profile);
        assert_int_equal(figure->value.kind, VALUE_NUMBER);
        if (figure->value.number != WORDS[i].number)
            fail_msg("%s: %f", WORDS[i].text, figure->value.number);
        profile_free(profile);
    }
}

static void assert_members(const struct figure *figure, const char *const *members, size_t count)
{
    assert_int_equal(figure->value.set_count, count);
    for (size_t i = 0; i < count; i++)
        assert_string_equal(figure->value.set[i], members[i]);
}

/* What is added stays added when the place is followed in its turn. */
static void sets_are_added_to_and_lessened(void **state)
{
    (void)state;
    struct profile *profile;
    const struct figure *figure = figure_of(KINDS("adds = { \"asphalt\" }"), "test.kinds",
                                            &profile);
    assert_members(figure, (const char *const[]){"slate", "tile", "asphalt"}, 3);
    assert_non_null(figure->amended);
    assert_int_equal(figure->amended->from.set_count, 2);
    profile_free(profile);
    figure = figure_of(KINDS("without = { \"slate\" }, adds = { \"asphalt\" }"), "test.kinds",
                       &profile);
    assert_members(figure, (const char *const[]){"tile", "asphalt"}, 2);
    profile_free(profile);
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
        cmocka_unit_test(what_is_wrong_with_a_zone_is_told),
        cmocka_unit_test(a_zone_is_a_field_of_the_place),
        cmocka_unit_test(what_lua_would_take_in_silence_is_told),
        cmocka_unit_test(figures_may_be_written_as_words),
        cmocka_unit_test(sets_are_added_to_and_lessened),
        cmocka_unit_test(what_is_no_slip_is_left_alone),
    };
    return cmocka_run_group_tests(tests, make_home, remove_home);
}
