/* The card of a stage: what it demands before anything is measured, in which
 * order, and what it asks. The law is small_law's, with rules of its own. */
#include "support/small_law.h"
#include "support/temporary_home.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>
#include <stdlib.h>
#include <string.h>

static const char FIELDS[] =
    "field \"gap_in\" { type = \"number\", unit = \"in\", range = { 0, 9 }, measured = true,\n"
    "  stage = \"deck\", ask = \"How wide is the gap?\" }\n"
    "field \"bent\" { type = \"yes_no\", measured = true, stage = \"deck\", ask = \"Any bent?\" }\n"
    "field \"wood\" { type = \"choice\", choices = { \"fir\", \"pine\" }, stage = \"permit\",\n"
    "  ask = \"Which wood?\" }\n"
    "field \"roof.slopes[].grain\" { type = \"choice\", choices = { \"fine\", \"coarse\" },\n"
    "  stage = \"permit\", ask = \"Which grain?\" }\n";

static const char RULES[] =
    "demand \"b.gap\" { title = \"Gap <b>\", stage = \"deck\", mend = \"m\",\n"
    "  fact = \"gap_in\", meets = \"test.most\" }\n"
    "demand \"a.bent\" { title = \"Straight\", stage = \"deck\", mend = \"m\",\n"
    "  when = { inspected { otherwise = \"later\" }, on \"test.straight\" },\n"
    "  fact = \"bent\", wants = false, shown = \"straight nails\" }\n"
    "demand \"a.wood\" { title = \"By wood\", stage = \"deck\", mend = \"m\", fact = \"gap_in\",\n"
    "  reads = { facts = { \"wood\" } }, meets = { \"test.most\", unit = \"in\",\n"
    "    limit = function(job, figure)\n"
    "      return (job.wood == \"fir\" and 1 or 2) * figure \"test.most\" end } }\n"
    "rule \"c.last\" { reads = { figures = { \"test.most\" } }, title = \"Unlisted\", stage = \"deck\", mend = \"m\",\n"
    "  judge = function(job, figure)\n"
    "    return at_most(1, figure \"test.most\", \"in\") end }\n"
    "rule \"c.notice\" { reads = { figures = { \"test.most\" } }, title = \"Notice\", stage = \"permit\", mend = \"m\",\n"
    "  judge = function(job, figure)\n"
    "    return at_most(1, figure \"test.most\", \"in\") end }\n";

/* Whose figure hangs on a fact of each plane. */
#define GRAIN_RULE(id, title)                                                                      \
    "demand \"" id "\" { title = \"" title "\", stage = \"deck\", mend = \"m\",\n"                 \
    "  per = \"roof.slopes\", fact = \"gap_in\",\n"                                                \
    "  reads = { facts = { \"roof.slopes[].grain\" } }, meets = { \"test.most\", unit = \"in\",\n" \
    "    limit = function(job, figure, slope)\n"                                                   \
    "      return (slope.grain == \"fine\" and 1 or 2) * figure \"test.most\" end } }\n"
static const char GRAIN_RULES[] = GRAIN_RULE("d.one", "One") GRAIN_RULE("d.two", "Two")
    GRAIN_RULE("d.three", "Three") GRAIN_RULE("d.four", "Four") GRAIN_RULE("d.five", "Five");

static const char TOLD_RULE[] =
    "rule \"e.told\" { reads = { facts = { \"wood\" }, figures = { \"test.most\" } }, title = \"Wood told\", stage = \"deck\", mend = \"m\", asks_only = true,\n"
    "  judge = function(job, figure) figure \"test.most\"\n"
    "    return shown(job.wood ~= \"none\", \"the wood\") end }\n";

/* Held against a fixed 5 in; the second is no more than advised. */
#define WRONG_RULE(id, title, mend, more)                                                         \
    "rule \"" id "\" { " SMALL_READS " title = \"" title "\",\n stage = \"deck\", mend = \"" mend \
    "\"," more "\n"                                                                               \
    "  judge = function(job, figure) return at_most(5, figure \"test.most\", \"in\") end }\n"
static const char WRONG_RULES[] = WRONG_RULE("f.better", "Better short", "Think.",
                                             " advice = true,")
    WRONG_RULE("f.long", "Too long", "Cut it.", "");

/* Planned too long, until it is measured. */
static const char MENDED_RULE[] =
    "rule \"f.plan\" { reads = { facts = { \"gap_in\" }, figures = { \"test.most\" } }, title = \"Planned too long\", stage = \"deck\", mend = \"Cut it.\",\n"
    "  judge = function(job, figure)\n"
    "    local long = 5\n"
    "    if inspecting() then long = job.gap_in end\n"
    "    return at_most(long, figure \"test.most\", \"in\") end }\n";

static const char BOTH_RULE[] =
    "demand \"f.both\" { title = \"Between\", stage = \"deck\", mend = \"m\", fact = \"gap_in\",\n"
    "  meets = { \"test.most\", unit = \"in\", sense = \"at_least\",\n"
    "    limit = function(job, figure) return figure \"test.most\" - 2 end },\n"
    "  also = { { fact = \"gap_in\", meets = \"test.most\" } } }\n";

/* Whether it is left open hangs on the fact that is looked at. */
static const char OPEN_BY_FACT[] =
    "demand \"f.open\" { title = \"Maybe open\", stage = \"deck\", mend = \"m\", fact = \"gap_in\",\n"
    "  reads = { facts = { \"gap_in\" } }, meets = \"test.most\",\n"
    "  open = { { says = function(job) return job.gap_in > 8 and \"too wide\" or nil end } } }\n";

/* Of two facts, and by a function: what is demanded of the first is not all, or not known. */
static const char NOT_TOLD[] =
    "demand \"f.two\" { title = \"Two\", stage = \"deck\", mend = \"m\", fact = \"gap_in\",\n"
    "  meets = \"test.most\", also = { { fact = \"bent\", wants = false,\n"
    "    shown = \"straight nails\", when = on \"test.straight\" } } }\n"
    "rule \"f.function\" { title = \"By function\", stage = \"deck\", mend = \"m\",\n"
    "  reads = { facts = { \"gap_in\" }, figures = { \"test.most\" } },\n"
    "  judge = function(job, figure)\n"
    "    return at_most(job.gap_in, figure \"test.most\", \"in\") end }\n";

#define PLANE_RULE(id, title, more)                                                \
    "demand \"" id "\" { title = \"" title "\", stage = \"deck\", mend = \"m\",\n" \
    "  per = \"roof.slopes\", fact = \"gap_in\"," more " }\n"
static const char PLANE_RULES[] = PLANE_RULE("f.alike", "Alike", " meets = \"test.most\"")
    PLANE_RULE("f.only", "Only",
               " meets = \"test.most\", reads = { facts = { 'roof.slopes[].name' } },\n"
               "when = { function(job, figure, slope)\n"
               "return slope.name == \"back\", \"not this one\" end }")
        PLANE_RULE("f.apart", "Apart",
                   " reads = { facts = { 'roof.slopes[].name' } },\n"
                   "meets = { \"test.most\", unit = \"in\", limit = function(job, figure, slope)\n"
                   "local more = 0 if slope.name == \"back\" then more = 1 end\n"
                   "return figure \"test.most\" + more end }");

static const char RECALLED_PLACE[] =
    "jurisdiction \"example/alder\" {\n"
    "  title = \"Alder County\", invented = true, follows = \"model/test\", from = \"2020-01-01\",\n"
    "  code = \"Alder Code\",\n"
    "  figures = { [\"test.most\"] = { 2, cite = \"9.9\", status = \"memory\",\n"
    "    source = \"Alder\" } },\n"
    "}\n";

static const char PLACE[] =
    "jurisdiction \"example/alder\" {\n"
    "  title = \"Alder County\", invented = true, follows = \"model/test\", from = \"2020-01-01\",\n"
    "  code = \"Alder Code\",\n"
    "  figures = { [\"test.most\"] = { 2, cite = \"9.9\", status = \"invented\",\n"
    "    source = \"Alder\" } },\n"
    "}\n";

static const char CARDS[] = "card \"deck\" {\n"
                            "  { title = \"Calls\", \"c.notice\" },\n"
                            "  { title = \"Gaps\", \"b\" },\n"
                            "  { title = \"Rest\", \"a\" },\n"
                            "}\n"
                            "about \"House\" { says = function(job) return \"one house\" end }\n"
                            "about \"Wood\" { says = function(job) return job.wood end }\n";

struct cards {
    struct temporary_home home;
    eavemark *handle;
};

static int start(void **state)
{
    static struct cards cards;
    home_make(&cards.home);
    small_law_write(&cards.home);
    size_t length;
    char *model = file_text(home_path(&cards.home, "jurisdictions/model/test.lua"), &length);
    char *inches = text_with(
        model, "[\"test.most\"] = { 3, unit = \"layers\"",
        "[\"test.straight\"] = { true, sense = \"equals\", stricter = true, cite = \"1.1\",\n"
        "  status = \"seen\", source = \"a page\" },\n"
        "[\"test.most\"] = { 3, unit = \"in\"");
    home_write(&cards.home, "jurisdictions/model/test.lua", inches);
    free(model);
    free(inches);
    char *fields = file_text(home_path(&cards.home, "rules/fields.lua"), &length);
    char *all = malloc(length + sizeof(FIELDS));
    assert_non_null(all);
    memcpy(all, fields, length);
    memcpy(all + length, FIELDS, sizeof(FIELDS));
    home_write(&cards.home, "rules/fields.lua", all);
    free(fields);
    free(all);
    home_write(&cards.home, "rules/a.lua", RULES);
    home_write(&cards.home, "rules/cards.lua", CARDS);
    cards.handle = eavemark_open(cards.home.path);
    *state = &cards;
    return cards.handle == NULL ? -1 : 0;
}

static int stop(void **state)
{
    struct cards *cards = *state;
    eavemark_close(cards->handle);
    home_remove(&cards->home);
    return 0;
}

static char *card_of_stage(struct cards *cards, const char *job, const char *stage,
                           enum eavemark_form form)
{
    const struct eavemark_request request = {
        .name = "job.json", .text = job, .length = strlen(job), .stage = stage};
    char *report = NULL, *problems = NULL;
    assert_int_equal(eavemark_card(cards->handle, &request, form, &report, &problems),
                     EAVEMARK_NOTHING_FAILED);
    assert_string_equal(problems, "");
    free(problems);
    assert_non_null(report);
    return report;
}

static char *card_of(struct cards *cards, const char *job, enum eavemark_form form)
{
    return card_of_stage(cards, job, "deck", form);
}

static const char *at(const char *text, const char *words)
{
    const char *found = strstr(text, words);
    if (found == NULL)
        fail_msg("\"%s\" is not in: %s", words, text);
    return found;
}

/* Nothing is measured, and the figure is there all the same. */
static void demands_before_anything_is_measured(void **state)
{
    char *card = card_of(*state, SMALL_JOB, EAVEMARK_TEXT);
    const char *gap = at(card, "Gap <b> ");
    assert_true(at(gap, "3 in or less ") < at(gap, "____________"));
    assert_true(at(gap, "____________") < at(gap, "Straight"));
    free(card);
}

/* A duty that is looked at only on the roof has no plan, but its words. */
static void tells_a_duty_that_is_only_seen(void **state)
{
    char *card = card_of(*state, SMALL_JOB, EAVEMARK_TEXT);
    at(at(card, "Straight "), "straight nails\n");
    free(card);
}

/* The demand hangs on a fact nobody gave: no figure is printed, a question is. */
static void asks_where_the_demand_depends_on_a_fact(void **state)
{
    char *card = card_of(*state, SMALL_JOB, EAVEMARK_TEXT);
    assert_null(strstr(card, "]  4 By wood"));
    at(card, " 1. Which wood? ____________ (waiting: By wood)\n");
    free(card);
}

/* The same is asked of every plane at once, and not all that waits is named. */
static void asks_the_same_of_all_planes_once(void **state)
{
    struct cards *cards = *state;
    home_write(&cards->home, "rules/d.lua", GRAIN_RULES);
    char *card = card_of(cards, SMALL_JOB, EAVEMARK_TEXT);
    const char *question = at(card, " 2. front; back: Which grain? ____");
    at(question, "(waiting: Five; Four; One; 2 more)\n");
    assert_null(strstr(card, " 3. "));
    free(card);
    char *job = text_with(SMALL_JOB, "\"pitch\": \"5:12\"",
                          "\"pitch\": \"5:12\", \"grain\": \"fine\"");
    card = card_of(cards, job, EAVEMARK_TEXT);
    at(card, " 2. back: Which grain? ____");
    free(card);
    free(job);
}

/* Sections stand on the back, by the number of the row; the law at the head of them
 * need not be said in every one, nor the place's own code. */
static void cites_in_short_on_the_back(void **state)
{
    struct cards *cards = *state;
    char *card = card_of(cards, SMALL_JOB, EAVEMARK_TEXT);
    const char *back = at(card, "= the back =");
    assert_true(at(card, "1.1 (seen)") > back);
    at(back, "A section alone is of TEST 2020. ");
    at(back, "\n  1 to 4: 1.1 (seen)\n");
    assert_null(strstr(card, "the place's own figure"));
    free(card);
    home_write(&cards->home, "jurisdictions/example/alder.lua", PLACE);
    char *job = text_with(SMALL_JOB, "model/test", "example/alder");
    card = card_of(cards, job, EAVEMARK_TEXT);
    at(card, "A section alone is of TEST 2020; local: Alder Code (invented). ");
    at(at(card, "Gap <b> "), "2 in or less* ");
    at(card, "* the place's own figure. ");
    at(card, "\n  1, 2, 4: local 9.9\n");
    free(card);
    free(job);
}

/* A number to hit is the largest word of its row; where something is written down
 * there is a line for it. */
static void the_page_has_figures_and_lines(void **state)
{
    char *card = card_of(*state, SMALL_JOB, EAVEMARK_HTML);
    const char *gap = at(card, "Gap &lt;b&gt;");
    const char *hit = at(gap, "<span class=\"hit\">3 in or less</span>");
    assert_true(at(hit, "<span class=\"write\"></span>") < at(hit, "Straight"));
    const char *notice = at(card, "Notice");
    assert_true(at(notice, "</tr>") < at(notice, "class=\"write\""));
    free(card);
}

/* What is not met stands before the walk, the failed before what is only advised, with
 * what mends it; it is told nowhere else. */
static void what_is_wrong_comes_first(void **state)
{
    struct cards *cards = *state;
    home_write(&cards->home, "rules/f.lua", WRONG_RULES);
    char *card = card_of(cards, SMALL_JOB, EAVEMARK_TEXT);
    const char *first = at(card, "== Put right first\n[ ]  1 Too long");
    at(first, "3 in or less");
    at(first, "FAIL: Planned 5 in. Cut it.\n");
    const char *advised = at(first, "[ ]  2 Better short");
    at(advised, "WARN: Planned 5 in. Think.\n");
    assert_true(advised < at(card, "-- Gaps"));
    assert_null(strstr(at(card, "-- Gaps"), "Too long\n"));
    free(card);
}

/* A fail of an earlier stage is as wrong now; what was never measured then is asked
 * for on the back, with its figure, and counted in front. */
static void earlier_stages_are_not_forgotten(void **state)
{
    struct cards *cards = *state;
    home_write(&cards->home, "rules/f.lua", WRONG_RULES);
    char *card = card_of_stage(cards, SMALL_JOB, "dry-in", EAVEMARK_TEXT);
    const char *first = at(card, "== Put right first\n[ ]  1 Too long");
    assert_true(first < at(card, "= the back ="));
    at(card, "Left open at earlier stages: 2, on the back.");
    const char *left = at(at(card, "= the back ="), "-- Left open at an earlier stage");
    at(at(left, "Straight"), "straight nails\n");
    at(at(left, "Gap <b> "), "3 in or less ");
    free(card);
    card = card_of_stage(cards, SMALL_JOB, "permit", EAVEMARK_TEXT);
    assert_null(strstr(card, "Too long"));
    free(card);
}

/* What was measured goes before the plan: a bad plan that was mended is no fault. */
static void what_was_measured_mends_the_plan(void **state)
{
    struct cards *cards = *state;
    home_write(&cards->home, "rules/f.lua", MENDED_RULE);
    char *card = card_of(cards, SMALL_JOB, EAVEMARK_TEXT);
    at(card, "FAIL: Planned 5 in. Cut it.\n");
    free(card);
    char *job = text_with(SMALL_JOB, "\"stage\"", "\"gap_in\": 2, \"stage\"");
    card = card_of(cards, job, EAVEMARK_TEXT);
    assert_null(strstr(card, "Put right first"));
    at(at(card, "Planned too long"), "now 2 in\n");
    free(card);
    free(job);
}

/* A number held from both sides shows both, before it is measured too. */
static void both_bounds_are_told(void **state)
{
    struct cards *cards = *state;
    home_write(&cards->home, "rules/f.lua", BOTH_RULE);
    char *card = card_of(cards, SMALL_JOB, EAVEMARK_TEXT);
    at(at(card, "Between"), " 1 in to 3 in ");
    free(card);
    char *job = text_with(SMALL_JOB, "\"stage\"", "\"gap_in\": 4, \"stage\"");
    card = card_of(cards, job, EAVEMARK_TEXT);
    at(at(card, "Between"), " 1 in to 3 in\n");
    free(card);
    free(job);
}

static void tells_a_demand_that_may_be_left_open(void **state)
{
    struct cards *cards = *state;
    home_write(&cards->home, "rules/f.lua", OPEN_BY_FACT);
    char *card = card_of(cards, SMALL_JOB, EAVEMARK_TEXT);
    at(card, " Maybe open                             3 in or less        ____________\n");
    free(card);
}

/* A figure that is not all that is demanded, or that nobody can tell, would be taken for
 * what there is to hit: there is only room for what is measured. */
static void tells_no_demand_that_it_does_not_know(void **state)
{
    struct cards *cards = *state;
    home_write(&cards->home, "rules/f.lua", NOT_TOLD);
    char *card = card_of(cards, SMALL_JOB, EAVEMARK_TEXT);
    at(card, " Two                                                        ____________\n");
    at(card, " By function                                                ____________\n");
    free(card);
}

/* Planes of which the same is asked are one row; they are named where another plane
 * has another figure, or none. */
static void places_are_named_where_they_differ(void **state)
{
    struct cards *cards = *state;
    home_write(&cards->home, "rules/f.lua", PLANE_RULES);
    char *card = card_of(cards, SMALL_JOB, EAVEMARK_TEXT);
    at(card, " Alike                                  3 in or less\n"
             "       front _______ back _______\n");
    at(card, " Only: back                             3 in or less        ____________\n");
    const char *apart = at(card, " Apart: front                           3 in or less");
    at(apart, "\n[ ]    - back                                 4 in or less");
    free(card);
}

/* A figure nobody read is named by its row, once. */
static void unconfirmed_figures_are_named(void **state)
{
    struct cards *cards = *state;
    char *card = card_of(cards, SMALL_JOB, EAVEMARK_TEXT);
    assert_null(strstr(card, "not confirmed"));
    free(card);
    home_write(&cards->home, "jurisdictions/example/alder.lua", RECALLED_PLACE);
    char *job = text_with(SMALL_JOB, "model/test", "example/alder");
    card = card_of(cards, job, EAVEMARK_TEXT);
    at(card, "Figures not confirmed: 1, 2, 4. ");
    free(card);
    free(job);
}

/* What the job has told already is nothing to look at. */
static void leaves_out_what_was_only_asked(void **state)
{
    struct cards *cards = *state;
    home_write(&cards->home, "rules/e.lua", TOLD_RULE);
    char *card = card_of(cards, SMALL_JOB, EAVEMARK_TEXT);
    at(card, " 1. Which wood? ____");
    at(card, "(waiting: By wood; Wood told)\n");
    free(card);
    char *job = text_with(SMALL_JOB, "\"stage\"", "\"wood\": \"fir\", \"stage\"");
    card = card_of(cards, job, EAVEMARK_TEXT);
    assert_null(strstr(card, "Wood told"));
    at(card, "]  4 By wood ");
    free(card);
    free(job);
}

static void follows_the_order_of_the_place(void **state)
{
    char *card = card_of(*state, SMALL_JOB, EAVEMARK_TEXT);
    const char *calls = at(card, "-- Calls"), *gaps = at(card, "-- Gaps");
    const char *rest = at(card, "-- Rest"), *last = at(card, "-- Also looked at");
    assert_true(calls < at(card, "Notice") && at(card, "Notice") < gaps);
    assert_true(gaps < rest && rest < last && last < at(card, "Unlisted"));
    free(card);
}

/* A line of which the fact is missing is left out, the other stays. */
static void says_what_is_known_of_the_house(void **state)
{
    char *card = card_of(*state, SMALL_JOB, EAVEMARK_TEXT);
    at(card, "\nHouse    one house\n");
    assert_null(strstr(card, "\nWood "));
    free(card);
}

static void measured_values_stand_in_their_place(void **state)
{
    char *job = text_with(SMALL_JOB, "\"stage\"", "\"gap_in\": 4, \"bent\": false, \"stage\"");
    char *card = card_of(*state, job, EAVEMARK_TEXT);
    const char *gap = at(card, "== Put right first\n[ ]  1 Gap <b> ");
    at(gap, "3 in or less\n");
    at(gap, "FAIL: Found 4 in. m\n");
    at(at(card, "Straight "), "straight nails      now so\n");
    free(card);
    free(job);
}

static void the_page_escapes_what_rules_say(void **state)
{
    char *card = card_of(*state, SMALL_JOB, EAVEMARK_HTML);
    at(card, "Gap &lt;b&gt;");
    assert_null(strstr(card, "Gap <b>"));
    at(card, "<span class=\"hit\">3 in or less</span>");
    free(card);
}

static void a_card_needs_a_stage(void **state)
{
    struct cards *cards = *state;
    const struct eavemark_request request = {
        .name = "job.json", .text = SMALL_JOB, .length = strlen(SMALL_JOB)};
    char *report = NULL, *problems = NULL;
    assert_int_equal(eavemark_card(cards->handle, &request, EAVEMARK_TEXT, &report, &problems),
                     EAVEMARK_UNUSABLE);
    assert_null(report);
    assert_has(problems, "a card needs one of permit, deck, dry-in, final");
    free(problems);
}

/* A card that names what is no rule would lose that rule its place unseen. */
static void refuses_a_card_of_what_is_no_rule(void **state)
{
    struct cards *cards = *state;
    home_write(&cards->home, "rules/cards.lua",
               "card \"deck\" {\n  { title = \"Gaps\", \"b.gapp\" },\n}\n");
    const struct eavemark_request request = {
        .name = "job.json", .text = SMALL_JOB, .length = strlen(SMALL_JOB), .stage = "deck"};
    char *report = NULL, *problems = NULL;
    assert_int_equal(eavemark_card(cards->handle, &request, EAVEMARK_TEXT, &report, &problems),
                     EAVEMARK_BROKEN);
    assert_null(report);
    assert_has(problems, "rules/cards.lua:1: the card \"deck\" lists \"b.gapp\"");
    free(problems);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test_setup_teardown(demands_before_anything_is_measured, start, stop),
        cmocka_unit_test_setup_teardown(tells_a_duty_that_is_only_seen, start, stop),
        cmocka_unit_test_setup_teardown(asks_where_the_demand_depends_on_a_fact, start, stop),
        cmocka_unit_test_setup_teardown(asks_the_same_of_all_planes_once, start, stop),
        cmocka_unit_test_setup_teardown(cites_in_short_on_the_back, start, stop),
        cmocka_unit_test_setup_teardown(the_page_has_figures_and_lines, start, stop),
        cmocka_unit_test_setup_teardown(what_is_wrong_comes_first, start, stop),
        cmocka_unit_test_setup_teardown(earlier_stages_are_not_forgotten, start, stop),
        cmocka_unit_test_setup_teardown(what_was_measured_mends_the_plan, start, stop),
        cmocka_unit_test_setup_teardown(both_bounds_are_told, start, stop),
        cmocka_unit_test_setup_teardown(tells_a_demand_that_may_be_left_open, start, stop),
        cmocka_unit_test_setup_teardown(tells_no_demand_that_it_does_not_know, start, stop),
        cmocka_unit_test_setup_teardown(places_are_named_where_they_differ, start, stop),
        cmocka_unit_test_setup_teardown(unconfirmed_figures_are_named, start, stop),
        cmocka_unit_test_setup_teardown(leaves_out_what_was_only_asked, start, stop),
        cmocka_unit_test_setup_teardown(follows_the_order_of_the_place, start, stop),
        cmocka_unit_test_setup_teardown(says_what_is_known_of_the_house, start, stop),
        cmocka_unit_test_setup_teardown(measured_values_stand_in_their_place, start, stop),
        cmocka_unit_test_setup_teardown(the_page_escapes_what_rules_say, start, stop),
        cmocka_unit_test_setup_teardown(a_card_needs_a_stage, start, stop),
        cmocka_unit_test_setup_teardown(refuses_a_card_of_what_is_no_rule, start, stop),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
