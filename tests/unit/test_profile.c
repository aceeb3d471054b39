/* Places laid over one another: chains, dates, figures moved, and everything
 * that is refused, with the words it is refused in. */
#include "profile/profile.h"

#include "base/date.h"
#include "support/small_law.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>
#include <unistd.h>

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

static void place(const char *id, const char *text)
{
    char path[128];
    snprintf(path, sizeof(path), "jurisdictions/%s.lua", id);
    home_write(&home, path, text);
}

/* The profile; a failure prints what was wrong. To be freed. */
static struct profile *resolved(const char *id, const char *day)
{
    struct problems problems = {0};
    struct text said = TEXT_EMPTY;
    struct profile *profile = profile_resolve(home.path, id, date_parse(day), "job.json",
                                              &problems);
    problems_write(&problems, &said);
    if (profile == NULL)
        fail_msg("%s on %s: %s", id, day, text_string(&said));
    assert_string_equal(text_string(&said), "");
    text_free(&said);
    problems_free(&problems);
    return profile;
}

/* What is said, all of it, when a place cannot be resolved; to be freed. */
static char *refused(const char *id, const char *day, enum problem_kind kind)
{
    struct problems problems = {0};
    struct text said = TEXT_EMPTY;
    struct profile *profile = profile_resolve(home.path, id, date_parse(day), "job.json",
                                              &problems);
    assert_null(profile);
    assert_true(problems.count > 0);
    for (const struct problem *p = problems.first; p != NULL; p = p->next)
        assert_int_equal(p->kind, kind);
    problems_write(&problems, &said);
    char *text = strdup(text_string(&said));
    text_free(&said);
    problems_free(&problems);
    return text;
}

static void assert_refused(const char *id, const char *words)
{
    char *said = refused(id, "2026-03-02", PROBLEM_RULES);
    assert_has(said, words);
    free(said);
}

/* A place whose one block follows the model and says this besides. */
static void assert_block_refused(const char *more, const char *words)
{
    char text[1024];
    snprintf(text, sizeof(text),
             "jurisdiction \"example/a\" { title = \"A\", invented = true,\n"
             "  follows = \"model/test\",\n  %s\n}\n",
             more);
    place("example/a", text);
    assert_refused("example/a", words);
    assert_refused("example/a", "jurisdictions/example/a.lua");
}

static double number_of(const struct profile *profile, const char *name)
{
    const struct figure *figure = profile_figure(profile, name);
    assert_non_null(figure);
    assert_int_equal(figure->value.kind, VALUE_NUMBER);
    return figure->value.number;
}

static void a_model_stands_alone(void **state)
{
    (void)state;
    struct profile *profile = resolved("model/test", "2026-03-02");
    assert_string_equal(profile->id, "model/test");
    assert_string_equal(profile->title, "Test code, 2020");
    assert_string_equal(profile->edition, "TEST 2020");
    assert_false(profile->invented);
    assert_int_equal(profile->chain_count, 1);
    const struct figure *figure = profile_figure(profile, "test.memory");
    assert_non_null(figure);
    assert_int_equal(figure->sense, SENSE_AT_MOST);
    assert_string_equal(figure->value.unit, "layers");
    assert_string_equal(figure->cite.code, "TEST 2020");
    assert_string_equal(figure->cite.section, "1.4");
    assert_int_equal(figure->cite.status, STATUS_MEMORY);
    assert_string_equal(figure->cite.source, "recalled");
    assert_null(figure->amended);
    assert_string_equal(profile_figure(profile, "test.disputed")->disputed, "another page says 4");
    assert_true(profile_figure(profile, "test.required")->value.yes);
    assert_int_equal(profile_figure(profile, "test.kinds")->value.set_count, 2);
    assert_null(profile_figure(profile, "test.mots"));
    profile_free(profile);
}

static void a_chain_is_followed_to_its_end(void **state)
{
    (void)state;
    place(
        "us-xx",
        "jurisdiction \"us-xx\" { title = \"State X\", follows = \"model/test\",\n"
        "  code = \"X Code\", as_seen = \"2026-01-01\", figures = {\n"
        "    [\"test.most\"] = { 2, cite = \"9.1\", status = \"seen\", source = \"state page\" },\n"
        "    [\"test.own\"] = { 5, unit = \"days\", sense = \"at_most\", cite = \"9.2\",\n"
        "      status = \"seen\", source = \"state page\" } } }\n");
    place("us-xx/county",
          "jurisdiction \"us-xx/county\" { title = \"County Y\", invented = true,\n"
          "  follows = \"us-xx\", figures = { [\"test.seen\"] = { 1, cite = \"7.7\" },\n"
          "    [\"test.own\"] = { cite = \"7.8\" } } }\n");
    struct profile *profile = resolved("us-xx/county", "2026-03-02");
    assert_int_equal(profile->chain_count, 3);
    assert_string_equal(profile->chain[0], "us-xx/county");
    assert_string_equal(profile->chain[1], "us-xx");
    assert_string_equal(profile->chain[2], "model/test");
    assert_true(profile->invented);
    assert_string_equal(profile->edition, "TEST 2020");
    assert_string_equal(profile->as_seen, "2026-01-01");
    assert_true(number_of(profile, "test.most") == 2);
    assert_true(number_of(profile, "test.seen") == 1);
    assert_true(number_of(profile, "test.memory") == 3);
    const struct figure *most = profile_figure(profile, "test.most");
    assert_non_null(most->amended);
    assert_string_equal(most->amended->by, "State X");
    assert_true(most->amended->from.number == 3 && most->amended->to.number == 2);
    assert_string_equal(most->amended->to.unit, "layers");
    assert_string_equal(most->cite.code, "X Code");
    const struct figure *seen = profile_figure(profile, "test.seen");
    assert_int_equal(seen->cite.status, STATUS_INVENTED);
    assert_string_equal(seen->cite.code, "County Y");
    assert_string_equal(seen->value.unit, "layers");
    /* Only the citation was restated: value and status stay. */
    const struct figure *own = profile_figure(profile, "test.own");
    assert_true(own->value.number == 5);
    assert_null(own->amended);
    assert_string_equal(own->cite.section, "7.8");
    assert_int_equal(own->cite.status, STATUS_SEEN);
    profile_free(profile);
}

static void the_nearest_of_two_moves_is_told_from_the_one_before(void **state)
{
    (void)state;
    place(
        "us-xx",
        "jurisdiction \"us-xx\" { title = \"State X\", follows = \"model/test\",\n"
        "  figures = { [\"test.most\"] = { 2, cite = \"9.1\", status = \"seen\", source = \"p\" } } }\n");
    place("us-xx/county",
          "jurisdiction \"us-xx/county\" { title = \"County Y\", invented = true,\n"
          "  follows = \"us-xx\", figures = { [\"test.most\"] = { 1, cite = \"7.7\" } } }\n");
    struct profile *profile = resolved("us-xx/county", "2026-03-02");
    const struct figure *most = profile_figure(profile, "test.most");
    assert_string_equal(most->amended->by, "County Y");
    assert_true(most->amended->from.number == 2 && most->amended->to.number == 1);
    profile_free(profile);
}

/* An edition binds from its day on; the day before is another's, or nobody's. */
static void editions_change_on_their_day(void **state)
{
    (void)state;
    place(
        "example/a",
        "jurisdiction \"example/a\" { title = \"New\", invented = true, follows = \"model/test\",\n"
        "  from = \"2026-07-01\", figures = { [\"test.most\"] = { 1, cite = \"b\" } } }\n"
        "jurisdiction \"example/a\" { title = \"Old\", invented = true, follows = \"model/test\",\n"
        "  from = \"2024-01-01\", figures = { [\"test.most\"] = { 2, cite = \"a\" } } }\n");
    static const struct {
        const char *day, *title;
        double most;
    } days[] = {
        {"2024-01-01", "Old", 2},
        {"2026-06-30", "Old", 2},
        {"2026-07-01", "New", 1},
        {"2199-12-31", "New", 1},
    };
    for (size_t i = 0; i < sizeof(days) / sizeof(days[0]); i++) {
        struct profile *profile = resolved("example/a", days[i].day);
        assert_string_equal(profile->title, days[i].title);
        assert_true(number_of(profile, "test.most") == days[i].most);
        /* The span on which it holds takes the day in. */
        assert_true(profile->from <= date_parse(days[i].day));
        assert_true(profile->to == 0 || date_parse(days[i].day) < profile->to);
        profile_free(profile);
    }
    struct profile *old = resolved("example/a", "2025-01-01");
    assert_int_equal(old->from, 20240101);
    assert_int_equal(old->to, 20260701);
    profile_free(old);
    char *said = refused("example/a", "2023-12-31", PROBLEM_JOB);
    assert_string_equal(said, "job.json: /date: no edition of example/a covers 2023-12-31; it has: "
                              "from 2024-01-01 to 2026-07-01; from 2026-07-01 to no end\n");
    free(said);
}

static void a_gap_between_editions_is_told(void **state)
{
    (void)state;
    place(
        "example/a",
        "jurisdiction \"example/a\" { title = \"Old\", invented = true, follows = \"model/test\",\n"
        "  to = \"2025-01-01\" }\n"
        "jurisdiction \"example/a\" { title = \"New\", invented = true, follows = \"model/test\",\n"
        "  from = \"2025-02-01\" }\n");
    profile_free(resolved("example/a", "2024-12-31"));
    profile_free(resolved("example/a", "2025-02-01"));
    static const char *const days[] = {"2025-01-01", "2025-01-31"};
    for (size_t i = 0; i < 2; i++) {
        char *said = refused("example/a", days[i], PROBLEM_JOB);
        assert_has(said, "no edition of example/a covers 2025-01-");
        assert_has(said, "from the beginning to 2025-01-01; from 2025-02-01 to no end");
        free(said);
    }
}

static void editions_may_not_overlap(void **state)
{
    (void)state;
    static const char *const pairs[] = {
        "from = \"2024-01-01\", to = \"2025-06-01\"|from = \"2025-05-31\"",
        "from = \"2024-01-01\"|from = \"2024-01-01\"",
        "|",
    };
    for (size_t i = 0; i < sizeof(pairs) / sizeof(pairs[0]); i++) {
        char text[512];
        const char *bar = strchr(pairs[i], '|');
        snprintf(text, sizeof(text),
                 "jurisdiction \"example/a\" { title = \"Old\", follows = \"model/test\", %.*s }\n"
                 "jurisdiction \"example/a\" { title = \"New\", follows = \"model/test\", %s }\n",
                 (int)(bar - pairs[i]), pairs[i], bar + 1);
        place("example/a", text);
        assert_refused("example/a", "jurisdictions/example/a.lua:2: jurisdiction \"example/a\": "
                                    "two editions both cover");
    }
}

static void a_parent_changes_on_its_own_day(void **state)
{
    (void)state;
    place(
        "us-xx",
        "jurisdiction \"us-xx\" { title = \"Old\", follows = \"model/test\", to = \"2026-01-01\" }\n"
        "jurisdiction \"us-xx\" { title = \"New\", follows = \"model/test\", from = \"2026-01-01\",\n"
        "  figures = { [\"test.most\"] = { 1, cite = \"1\", status = \"seen\", source = \"p\" } } }\n");
    place("us-xx/a", "jurisdiction \"us-xx/a\" { title = \"A\", follows = \"us-xx\" }\n");
    struct profile *before = resolved("us-xx/a", "2025-12-31");
    struct profile *after = resolved("us-xx/a", "2026-01-01");
    assert_true(number_of(before, "test.most") == 3);
    assert_true(number_of(after, "test.most") == 1);
    /* The span is that of the whole chain. */
    assert_int_equal(before->to, 20260101);
    assert_int_equal(after->from, 20260101);
    profile_free(before);
    profile_free(after);
}

static void a_block_may_not_end_before_it_begins(void **state)
{
    (void)state;
    assert_block_refused("from = \"2026-01-02\", to = \"2026-01-02\"", "ends before it begins");
    assert_block_refused("from = \"2026-02-30\"", "\"2026-02-30\" is not a date (YYYY-MM-DD)");
}

static void circles_are_refused_with_the_chain(void **state)
{
    (void)state;
    place("example/a", "jurisdiction \"example/a\" { title = \"A\", follows = \"example/b\" }\n");
    place("example/b", "jurisdiction \"example/b\" { title = \"B\", follows = \"example/c\" }\n");
    place("example/c", "\njurisdiction \"example/c\" { title = \"C\", follows = \"example/a\" }\n");
    assert_refused("example/a", "jurisdictions/example/c.lua:2: follows itself in a circle: "
                                "example/a -> example/b -> example/c -> example/a");
    place("example/a", "jurisdiction \"example/a\" { title = \"A\", follows = \"example/a\" }\n");
    assert_refused("example/a", "follows itself in a circle: example/a -> example/a");
}

static void an_unknown_parent_is_refused_with_the_chain(void **state)
{
    (void)state;
    place("example/a", "jurisdiction \"example/a\" { title = \"A\", follows = \"example/b\" }\n");
    place("example/b", "jurisdiction \"example/b\" { title = \"B\", follows = \"model/tset\" }\n");
    assert_refused("example/a",
                   "jurisdictions/example/b.lua:1: follows \"model/tset\", which does not "
                   "exist (example/a -> example/b -> model/tset); the nearest are: "
                   "model/test");
}

static void a_chain_has_a_length(void **state)
{
    (void)state;
    /* PROFILE_LONGEST_CHAIN places and the model make one too many. */
    for (int i = 0; i < PROFILE_LONGEST_CHAIN; i++) {
        char id[32], text[128], next[32] = "model/test";
        snprintf(id, sizeof(id), "example/p%d", i);
        if (i + 1 < PROFILE_LONGEST_CHAIN)
            snprintf(next, sizeof(next), "example/p%d", i + 1);
        snprintf(text, sizeof(text), "jurisdiction \"%s\" { title = \"P\", follows = \"%s\" }\n",
                 id, next);
        place(id, text);
    }
    assert_refused("example/p0", "follows too long a chain: example/p0 -> example/p1 -> ");
    struct profile *profile = resolved("example/p1", "2026-03-02");
    assert_int_equal(profile->chain_count, PROFILE_LONGEST_CHAIN);
    profile_free(profile);
}

static void an_unknown_place_names_near_ones(void **state)
{
    (void)state;
    place("example/tamarack", "jurisdiction \"example/tamarack\" { title = \"T\" }\n");
    char *said = refused("exmaple/tamarak", "2026-03-02", PROBLEM_JOB);
    assert_has(said, "job.json: /jurisdiction: no jurisdiction is named \"exmaple/tamarak\"; "
                     "the nearest are: example/tamarack");
    free(said);
}

static void an_id_is_no_path(void **state)
{
    (void)state;
    /* What these would reach is there. */
    home_write(&home, "outside.lua", "jurisdiction \"../outside\" { title = \"O\" }\n");
    place("Upper", "jurisdiction \"Upper\" { title = \"U\" }\n");
    place("a.rules", "jurisdiction \"a.rules\" { title = \"R\" }\n");
    static const char *const ids[] = {
        "../outside",
        "model/../../outside",
        "/etc/passwd",
        "",
        ".",
        "..",
        "Upper",
        "MODEL/TEST",
        "model//test",
        "model/test.lua",
        "model/test ",
        "a.rules",
        "model\\test",
        "model/test\n",
        ("m\xc3\xb6"
         "del/test"),
    };
    for (size_t i = 0; i < sizeof(ids) / sizeof(ids[0]); i++) {
        char *said = refused(ids[i], "2026-03-02", PROBLEM_JOB);
        assert_has(said, "no jurisdiction is named");
        free(said);
    }
    char longest[400];
    memset(longest, 'a', sizeof(longest) - 1);
    longest[sizeof(longest) - 1] = '\0';
    free(refused(longest, "2026-03-02", PROBLEM_JOB));
    /* A parent is named by an id, too. */
    assert_block_refused("code = \"x\" }\njurisdiction \"example/a\" { title = \"B\", from = "
                         "\"2020-01-01\", follows = \"../outside\"",
                         "which does not exist");
}

/* The catalogue holds ids as JSON gives them: a zero byte cannot be in one. */
static void a_zero_byte_in_a_parents_id_is_refused(void **state)
{
    (void)state;
    place("example/a",
          "jurisdiction \"example/a\" { title = \"A\", follows = \"model/test\\0/../x\" }\n");
    assert_refused("example/a", "follows must not hold a zero byte");
}

static void a_link_out_of_the_home_is_no_place(void **state)
{
    (void)state;
    struct temporary_home other;
    home_make(&other);
    home_write(&other, "away.lua", "jurisdiction \"away\" { title = \"Away\" }\n");
    char target[128];
    snprintf(target, sizeof(target), "%s", home_path(&other, "away.lua"));
    assert_int_equal(symlink(target, home_path(&home, "jurisdictions/away.lua")), 0);
    char *said = refused("away", "2026-03-02", PROBLEM_JOB);
    assert_has(said, "no jurisdiction is named \"away\"");
    free(said);
    home_remove(&other);
}

static void figures_keep_unit_sense_and_kind(void **state)
{
    (void)state;
    assert_block_refused("figures = { [\"test.most\"] = { 2, unit = \"in\", cite = \"1\" } }",
                         "figure \"test.most\" changes the unit");
    assert_block_refused(
        "figures = { [\"test.required\"] = { true, unit = \"in\", cite = \"1\" } }",
        "figure \"test.required\" changes the unit");
    assert_block_refused(
        "figures = { [\"test.most\"] = { 2, sense = \"at_least\", cite = \"1\" } }",
        "figure \"test.most\" changes the sense");
    assert_block_refused("figures = { [\"test.most\"] = { true, cite = \"1\" } }",
                         "figure \"test.most\" changes its kind of value");
    assert_block_refused("figures = { [\"test.kinds\"] = { 2, cite = \"1\" } }",
                         "figure \"test.kinds\" changes its kind of value");
    assert_block_refused("figures = { [\"test.most\"] = { \"two\", cite = \"1\" } }",
                         "figure \"test.most\" is \"two\", no figure that can be read");
    assert_block_refused("figures = { [\"test.most\"] = { print, cite = \"1\" } }",
                         "unknown name 'print'");
}

static void a_moved_figure_is_cited(void **state)
{
    (void)state;
    assert_block_refused("figures = { [\"test.most\"] = { 2 } }",
                         "figure \"test.most\" has no citation: write cite = \"...\"");
    place("example/a", "jurisdiction \"example/a\" { title = \"A\", follows = \"model/test\",\n"
                       "  figures = { [\"test.most\"] = { 2, cite = \"1\", source = \"p\" } } }\n");
    assert_refused("example/a", "figure \"test.most\" has no status");
    place("example/a",
          "jurisdiction \"example/a\" { title = \"A\", follows = \"model/test\",\n"
          "  figures = { [\"test.most\"] = { 2, cite = \"1\", status = \"seen\" } } }\n");
    assert_refused("example/a", "figure \"test.most\" has no source");
}

/* A base of two editions: what was read in the text of one is a sister text's in the
 * other, until that other says what it read itself. */
static void a_reading_holds_for_its_editions(void **state)
{
    (void)state;
    place("model/base",
          "jurisdiction \"model/base\" { title = \"Base\", model = true,\n"
          "  base_only = true, edition = \"TEST\", figures = {\n"
          "  [\"test.read\"] = { 3, unit = \"in\", sense = \"at_most\", cite = \"1.1\",\n"
          "    status = \"seen\", source = \"a text\", read_in = { \"TEST 2020\" } },\n"
          "  [\"test.restated\"] = { 3, unit = \"in\", sense = \"at_most\", cite = \"1.2\",\n"
          "    status = \"seen\", source = \"a text\", read_in = { \"TEST 2020\" } },\n"
          "  [\"test.moved\"] = { 3, unit = \"in\", sense = \"at_most\", cite = \"1.3\",\n"
          "    status = \"seen\", source = \"a text\", read_in = { \"TEST 2020\" } },\n"
          "  [\"test.no_book\"] = { 3, unit = \"in\", sense = \"at_most\", cite = \"1.4\",\n"
          "    status = \"seen\", source = \"a page\" } } }\n");
    place("model/new", "jurisdiction \"model/new\" { title = \"New\", model = true,\n"
                       "  follows = \"model/base\", edition = \"TEST 2020\" }\n");
    place(
        "model/old",
        "jurisdiction \"model/old\" { title = \"Old\", model = true,\n"
        "  follows = \"model/base\", edition = \"TEST 2010\", figures = {\n"
        "  [\"test.restated\"] = { cite = \"9.2\", status = \"seen\", source = \"an old text\" },\n"
        "  [\"test.moved\"] = { 4, cite = \"9.3\", status = \"seen\", source = \"an old text\" } } }\n");
    place("us-xx",
          "jurisdiction \"us-xx\" { title = \"X\", follows = \"model/old\", edition = \"X 1\",\n"
          "  figures = { [\"test.read\"] = { cite = \"7\" } } }\n");
    struct profile *recent = resolved("model/new", "2026-03-02");
    struct profile *old = resolved("us-xx", "2026-03-02");
    static const struct {
        const char *name, *recent, *old;
    } figures[] = {
        {"test.read", "seen", "parallel"},
        {"test.restated", "seen", "seen"},
        {"test.moved", "seen", "seen"},
        {"test.no_book", "seen", "seen"},
    };
    for (size_t i = 0; i < sizeof(figures) / sizeof(figures[0]); i++) {
        const char *name = figures[i].name;
        assert_int_equal(profile_figure(recent, name)->cite.status, status_of(figures[i].recent));
        assert_int_equal(profile_figure(old, name)->cite.status, status_of(figures[i].old));
    }
    profile_free(recent);
    profile_free(old);
}

static void a_reading_is_of_a_model_and_was_seen(void **state)
{
    (void)state;
    assert_block_refused("figures = { [\"test.most\"] = { 2, cite = \"1\", status = \"seen\",\n"
                         "  source = \"p\", read_in = { \"TEST 2020\" } } }",
                         "figure \"test.most\": read_in is for the figures of a model code");
    assert_block_refused("model = true, figures = { [\"test.most\"] = { 2, cite = \"1\",\n"
                         "  status = \"memory\", source = \"p\", read_in = { \"TEST 2020\" } } }",
                         "figure \"test.most\": read_in goes with status = \"seen\"");
    assert_block_refused("model = true, figures = { [\"test.most\"] = { 2, cite = \"1\",\n"
                         "  status = \"seen\", source = \"p\", read_in = \"TEST 2020\" } }",
                         "figure \"test.most\": read_in is a list of editions");
}

static void a_bound_fits_its_figure(void **state)
{
    (void)state;
    assert_block_refused("figures = { [\"test.most\"] = { 2, cite = \"1\", and_most = 3 } }",
                         "figure \"test.most\" has a bound that does not fit");
    assert_block_refused("figures = { [\"test.most\"] = { 2, cite = \"1\", and_least = 3 } }",
                         "figure \"test.most\" has a bound that does not fit");
    assert_block_refused("figures = { [\"test.kinds\"] = { cite = \"1\", and_least = 3 } }",
                         "figure \"test.kinds\" has a bound that does not fit");
    assert_block_refused("figures = { [\"test.most\"] = { 2, cite = \"1\", and_least = true } }",
                         "figure \"test.most\": and_least is one number, the other bound");
    assert_block_refused("figures = { [\"test.required\"] = { cite = \"1\", at_counts = true } }",
                         "figure \"test.required\" has at_counts, but nothing is exactly at it");
    assert_block_refused("figures = { [\"test.most\"] = { cite = \"1\", at_counts = \"no\" } }",
                         "figure \"test.most\": at_counts is true or false");
    place("example/a", "jurisdiction \"example/a\" { title = \"A\", follows = \"model/test\",\n"
                       "  figures = { [\"test.most\"] = { cite = \"1\", at_counts = false } } }\n");
    assert_refused("example/a", "figure \"test.most\" has no status");
    place("example/a",
          "jurisdiction \"example/a\" { title = \"A\", invented = true,\n"
          "  follows = \"model/test\", figures = {\n"
          "  [\"test.most\"] = { cite = \"1\", and_least = 1, at_counts = false } } }\n");
    struct profile *profile = resolved("example/a", "2026-03-02");
    const struct figure *most = profile_figure(profile, "test.most");
    assert_true(most->value.number == 3 && most->also.number == 1);
    assert_string_equal(most->also.unit, "layers");
    assert_int_equal(most->cite.status, STATUS_INVENTED);
    assert_int_equal(most->at, AT_COUNTS_NOT);
    profile_free(profile);
}

/* Said by itself, either leaves the other as it was; a new value stands alone. */
static void a_bound_outlives_what_does_not_speak_of_it(void **state)
{
    (void)state;
    static const struct {
        const char *says;
        double least; /* 0: no other bound */
        enum at_counts at;
    } towns[] = {
        {"cite = \"2\", at_counts = true", 1, AT_COUNTS},
        {"cite = \"2\", and_least = 2", 2, AT_COUNTS_NOT},
        {"cite = \"2\"", 1, AT_COUNTS_NOT},
        {"4, cite = \"2\"", 0, AT_AS_SENSE_SAYS},
    };
    place("example/a", "jurisdiction \"example/a\" { title = \"A\", invented = true,\n"
                       "  follows = \"model/test\", figures = { [\"test.most\"] = {\n"
                       "  cite = \"1\", and_least = 1, at_counts = false } } }\n");
    for (size_t i = 0; i < sizeof(towns) / sizeof(towns[0]); i++) {
        char text[300];
        snprintf(text, sizeof(text),
                 "jurisdiction \"example/b\" { title = \"B\", invented = true,\n"
                 "  follows = \"example/a\", figures = { [\"test.most\"] = { %s } } }\n",
                 towns[i].says);
        place("example/b", text);
        struct profile *profile = resolved("example/b", "2026-03-02");
        const struct figure *most = profile_figure(profile, "test.most");
        assert_int_equal(most->also.kind, towns[i].least == 0 ? VALUE_NONE : VALUE_NUMBER);
        assert_true(most->also.number == towns[i].least);
        assert_int_equal(most->at, towns[i].at);
        profile_free(profile);
    }
}

/* Where a figure of its own says whether exactly so much counts, at_counts sets it. */
static void at_counts_means_the_figure_that_says_so(void **state)
{
    (void)state;
    place(
        "model/at",
        "jurisdiction \"model/at\" { title = \"M\", model = true, edition = \"M 1\",\n"
        "  figures = { [\"test.limit\"] = { 25, unit = \"percent\", sense = \"over\", cite = \"1\",\n"
        "    status = \"seen\", source = \"p\", at_figure = \"test.at\" },\n"
        "  [\"test.at\"] = { false, sense = \"equals\", cite = \"1\", status = \"seen\",\n"
        "    source = \"p\" } } }\n");
    place("example/a", "jurisdiction \"example/a\" { title = \"A\", invented = true,\n"
                       "  follows = \"model/at\", figures = {\n"
                       "  [\"test.limit\"] = { 50, cite = \"7\", at_counts = true } } }\n");
    struct profile *profile = resolved("example/a", "2026-03-02");
    const struct figure *at = profile_figure(profile, "test.at");
    assert_true(at->value.yes);
    assert_string_equal(at->cite.section, "7");
    assert_true(profile_threshold(profile_figure(profile, "test.limit")) == 50);
    profile_free(profile);
    place(
        "model/at",
        "jurisdiction \"model/at\" { title = \"M\", model = true, edition = \"M 1\",\n"
        "  figures = { [\"test.limit\"] = { 25, unit = \"percent\", sense = \"over\", cite = \"1\",\n"
        "    status = \"seen\", source = \"p\", at_figure = \"test.ta\" } } }\n");
    assert_refused("example/a", "at_figure \"test.ta\" is no yes or no of this place");
}

/* Which way a yes or no goes, and behind which switch a limit stands, is inherited. */
static void says_which_way_a_figure_goes(void **state)
{
    (void)state;
    static const char MODEL[] =
        "jurisdiction \"model/way\" { title = \"M\", model = true, edition = \"M 1\", figures = {\n"
        "  [\"test.on\"] = { true, sense = \"equals\", stricter = true, cite = \"1\",\n"
        "    status = \"seen\", source = \"p\" },\n"
        "  [\"test.off\"] = { true, sense = \"equals\", cite = \"1\", status = \"seen\",\n"
        "    source = \"p\", stricter = false },\n"
        "  [\"test.limit\"] = { 25, unit = \"percent\", sense = \"over\", cite = \"1\",\n"
        "    status = \"seen\", source = \"p\", behind = \"test.on\" } } }\n";
    place("model/way", MODEL);
    place("example/a",
          "jurisdiction \"example/a\" { title = \"A\", invented = true,\n"
          "  follows = \"model/way\", figures = { [\"test.on\"] = { false, cite = \"7\" },\n"
          "  [\"test.limit\"] = { 50, cite = \"7\" } } }\n");
    struct profile *profile = resolved("example/a", "2026-03-02");
    assert_int_equal(profile_figure(profile, "test.on")->stricter, STRICTER_YES);
    assert_int_equal(profile_figure(profile, "test.off")->stricter, STRICTER_NO);
    assert_string_equal(profile_figure(profile, "test.limit")->behind, "test.on");
    profile_free(profile);
    static const struct {
        const char *figure, *says;
    } wrong[] = {
        {"[\"test.on\"] = { false, cite = \"7\", stricter = false }",
         "figure \"test.on\" changes which of yes and no is stricter"},
        {"[\"test.limit\"] = { 30, cite = \"7\", stricter = true }",
         "figure \"test.limit\" is no yes or no"},
        {"[\"test.on\"] = { false, cite = \"7\", behind = \"test.limit\" }",
         "stands behind what is no switch"},
        {"[\"test.limit\"] = { 30, cite = \"7\", behind = \"test.onn\" }",
         "no figure is named \"test.onn\""},
    };
    for (size_t i = 0; i < sizeof(wrong) / sizeof(wrong[0]); i++) {
        char text[400];
        snprintf(text, sizeof(text),
                 "jurisdiction \"example/a\" { title = \"A\", invented = true,\n"
                 "  follows = \"model/way\", figures = { %s } }\n",
                 wrong[i].figure);
        place("example/a", text);
        assert_refused("example/a", wrong[i].says);
    }
    assert_block_refused("figures = { [\"test.required\"] = { cite = \"1\", stricter = \"yes\" } }",
                         "figure \"test.required\": stricter is true, false or \"neither\"");
}

/* The model code itself, as it stands in jurisdictions/. */
static void every_yes_or_no_of_the_model_says_it(void **state)
{
    (void)state;
    static const char *const EDITIONS[] = {"model/irc-2012", "model/irc-2015", "model/irc-2018",
                                           "model/irc-2021", "model/irc-2024"};
    for (size_t i = 0; i < sizeof(EDITIONS) / sizeof(EDITIONS[0]); i++) {
        struct problems problems = {0};
        struct profile *profile = profile_resolve(EAVEMARK_HOME_DIR, EDITIONS[i], 20260302, "test",
                                                  &problems);
        assert_non_null(profile);
        for (size_t f = 0; f < profile->figure_count; f++)
            if (profile->figures[f].value.kind == VALUE_YES_NO
                && profile->figures[f].stricter == STRICTER_UNSAID)
                fail_msg("%s does not say whether yes or no is stricter", profile->figures[f].name);
        profile_free(profile);
        problems_free(&problems);
    }
}

static void a_new_figure_says_everything(void **state)
{
    (void)state;
    static const char *const parts[] = {"5, ",
                                        "unit = \"in\", ",
                                        "sense = \"at_most\", ",
                                        "cite = \"1\", ",
                                        "status = \"seen\", ",
                                        "source = \"p\""};
    static const char *const lacks[] = {"a value", "a unit",   "a sense",
                                        "a cite",  "a status", "a source"};
    for (size_t left_out = 0; left_out < 6; left_out++) {
        char more[256] = "figures = { [\"test.mots\"] = { ", words[128];
        for (size_t i = 0; i < 6; i++)
            strcat(more, i == left_out ? "" : parts[i]);
        strcat(more, " } }");
        snprintf(words, sizeof(words), "to be a new one lacks %s; did you mean \"test.most\"?",
                 lacks[left_out]);
        assert_block_refused(more, words);
    }
}

/* A block and its parts are one list: none of them wins over another. */
static void a_figure_is_given_once_in_a_block_and_its_parts(void **state)
{
    (void)state;
    place("elm",
          "jurisdiction \"elm\" { title = \"Elm\", invented = true, follows = \"model/test\",\n"
          "  parts = { \"elm.more.lua\" },\n"
          "  figures = { [\"test.most\"] = { 1, cite = \"1\" } } }\n");
    place("elm.more", "figures {\n  [\"test.nails_most\"] = { 4, cite = \"2\" },\n}\n");
    struct profile *profile = resolved("elm", "2026-03-02");
    assert_float_equal(profile_figure(profile, "test.most")->value.number, 1, 0);
    assert_float_equal(profile_figure(profile, "test.nails_most")->value.number, 4, 0);
    profile_free(profile);
    place("elm.more", "figures {\n  [\"test.most\"] = { 4, cite = \"2\" },\n}\n");
    assert_refused("elm", "jurisdictions/elm.more.lua:2: figure \"test.most\" is given twice; the "
                          "other is in jurisdictions/elm.lua");
}

static void unknown_keys_name_the_nearest(void **state)
{
    (void)state;
    assert_block_refused("folows = \"model/test\"",
                         "unknown key \"folows\"; did you mean \"follows\"?");
    assert_block_refused("figures = { [\"test.most\"] = { 2, cit = \"1\" } }",
                         "unknown key \"cit\"; did you mean \"cite\"?");
    assert_block_refused("zzzzzzzz = 1", "unknown key \"zzzzzzzz\"");
    assert_block_refused("figures = { [\"test.most\"] = { 2, cite = \"1\", status = \"sene\" } }",
                         "\"sene\" is not one of the known words");
    assert_block_refused("figures = { [\"test.most\"] = { 2, cite = \"1\", sense = \"most\" } }",
                         "\"most\" is not one of the known words");
}

/* Everything wrong is said in one go, in the same order each time: Lua's own
 * order of keys is another in each state. */
static void all_that_is_wrong_is_said_in_order(void **state)
{
    (void)state;
    place("example/a",
          "jurisdiction \"example/a\" { title = \"A\", invented = true,\n"
          "  follows = \"model/test\", zz = 1, yy = 2, xx = 3, figures = {\n"
          "    [\"test.e\"] = { 1 }, [\"test.d\"] = { 1 }, [\"test.c\"] = { 1, unti = \"in\" },\n"
          "    [\"test.b\"] = 5, [\"test.a\"] = { {} , 1 } } }\n");
    char *first = refused("example/a", "2026-03-02", PROBLEM_RULES);
    for (int i = 0; i < 5; i++) {
        char *again = refused("example/a", "2026-03-02", PROBLEM_RULES);
        assert_string_equal(again, first);
        free(again);
    }
    const char *xx = strstr(first, "\"xx\""), *yy = strstr(first, "\"yy\"");
    const char *zz = strstr(first, "\"zz\"");
    assert_true(xx != NULL && xx < yy && yy < zz);
    assert_has(first, "figure \"test.b\" must be written");
    assert_has(first, "unknown key \"unti\"; did you mean \"unit\"?");
    free(first);
}

/* jurisdictions/README.md: what is borrowed, or not vouched for, stays so for those
 * who follow, until one of them gives it as its own. Practice is no code. */
static void what_a_place_does_not_vouch_for_is_marked(void **state)
{
    (void)state;
    place("us-xx",
          "jurisdiction \"us-xx\" { title = \"X\", follows = \"model/test\",\n"
          "  borrowed = \"X has no code\", figures = {\n"
          "    [\"test.most\"] = { 2, cite = \"9\", status = \"seen\", source = \"page\" } } }\n");
    place("us-xx/a",
          "jurisdiction \"us-xx/a\" { title = \"A\", follows = \"us-xx\",\n"
          "  unsure = \"A is old\", figures = { [\"test.seen\"] = { cite = \"7\" } } }\n");
    struct profile *profile = resolved("us-xx", "2026-03-02");
    assert_string_equal(profile_figure(profile, "test.seen")->borrowed, "X has no code");
    assert_null(profile_figure(profile, "test.seen")->unsure);
    assert_null(profile_figure(profile, "test.most")->borrowed);
    assert_null(profile_figure(profile, "test.practice")->borrowed);
    profile_free(profile);
    profile = resolved("us-xx/a", "2026-03-02");
    assert_null(profile_figure(profile, "test.seen")->borrowed);
    assert_null(profile_figure(profile, "test.seen")->unsure);
    assert_string_equal(profile_figure(profile, "test.most")->unsure, "A is old");
    assert_null(profile_figure(profile, "test.most")->borrowed);
    assert_string_equal(profile_figure(profile, "test.memory")->borrowed, "X has no code");
    profile_free(profile);
    /* The law named is the place's own; what it borrows keeps the model's name. */
    place("us-yy", "jurisdiction \"us-yy\" { title = \"Y\", follows = \"model/test\",\n"
                   "  edition = \"Y's own code\", borrowed = \"Y has a code of its own\" }\n");
    profile = resolved("us-yy", "2026-03-02");
    assert_string_equal(profile->edition, "Y's own code");
    assert_string_equal(profile_figure(profile, "test.seen")->cite.code, "TEST 2020");
    profile_free(profile);
    assert_block_refused("borrowed = true", "borrowed must be a text");
    assert_block_refused("unsure = 3", "unsure must be a text");
}

static void drops_keep_their_reason_and_place(void **state)
{
    (void)state;
    place("us-xx", "jurisdiction \"us-xx\" { title = \"State X\", follows = \"model/test\",\n"
                   "  drop = { [\"test.far\"] = \"far away\" } }\n");
    place("example/a", "jurisdiction \"example/a\" { title = \"A\", follows = \"us-xx\",\n"
                       "  drop = { [\"test.near\"] = \"waived\" } }\n");
    struct profile *profile = resolved("example/a", "2026-03-02");
    assert_int_equal(profile->drop_count, 2);
    assert_string_equal(profile->drops[0].rule, "test.far");
    assert_string_equal(profile->drops[0].by, "State X");
    assert_string_equal(profile->drops[1].rule, "test.near");
    assert_string_equal(profile->drops[1].reason, "waived");
    assert_string_equal(profile->drops[1].file, "jurisdictions/example/a.lua");
    assert_int_equal(profile->drops[1].line, 2);
    profile_free(profile);
}

static void rule_files_lie_beside_their_place(void **state)
{
    (void)state;
    place("us-xx", "jurisdiction \"us-xx\" { title = \"X\", follows = \"model/test\",\n"
                   "  rules = \"us-xx.rules.lua\" }\n");
    place("us-xx/a", "jurisdiction \"us-xx/a\" { title = \"A\", follows = \"us-xx\",\n"
                     "  rules = \"a.rules.lua\" }\n");
    struct profile *profile = resolved("us-xx/a", "2026-03-02");
    assert_int_equal(profile->rule_file_count, 2);
    assert_string_equal(profile->rule_files[0], "jurisdictions/us-xx.rules.lua");
    assert_string_equal(profile->rule_files[1], "jurisdictions/us-xx/a.rules.lua");
    profile_free(profile);
}

#define in_home(test) cmocka_unit_test_setup_teardown(test, make_home, remove_home)

int main(void)
{
    const struct CMUnitTest tests[] = {
        in_home(a_model_stands_alone),
        in_home(a_chain_is_followed_to_its_end),
        in_home(the_nearest_of_two_moves_is_told_from_the_one_before),
        in_home(editions_change_on_their_day),
        in_home(a_gap_between_editions_is_told),
        in_home(editions_may_not_overlap),
        in_home(a_parent_changes_on_its_own_day),
        in_home(a_block_may_not_end_before_it_begins),
        in_home(circles_are_refused_with_the_chain),
        in_home(an_unknown_parent_is_refused_with_the_chain),
        in_home(a_chain_has_a_length),
        in_home(an_unknown_place_names_near_ones),
        in_home(an_id_is_no_path),
        in_home(a_zero_byte_in_a_parents_id_is_refused),
        in_home(a_link_out_of_the_home_is_no_place),
        in_home(figures_keep_unit_sense_and_kind),
        in_home(a_moved_figure_is_cited),
        in_home(a_bound_fits_its_figure),
        in_home(a_bound_outlives_what_does_not_speak_of_it),
        in_home(at_counts_means_the_figure_that_says_so),
        in_home(says_which_way_a_figure_goes),
        in_home(every_yes_or_no_of_the_model_says_it),
        in_home(a_reading_holds_for_its_editions),
        in_home(a_reading_is_of_a_model_and_was_seen),
        in_home(a_new_figure_says_everything),
        in_home(a_figure_is_given_once_in_a_block_and_its_parts),
        in_home(unknown_keys_name_the_nearest),
        in_home(all_that_is_wrong_is_said_in_order),
        in_home(what_a_place_does_not_vouch_for_is_marked),
        in_home(drops_keep_their_reason_and_place),
        in_home(rule_files_lie_beside_their_place),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
