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
    "rule \"b.gap\" { title = \"Gap <b>\", stage = \"deck\", mend = \"m\",\n"
    "  judge = function(job, figure)\n"
    "    return at_most(job.gap_in, figure \"test.most\", \"in\") end }\n"
    "rule \"a.bent\" { title = \"Straight\", stage = \"deck\", mend = \"m\",\n"
    "  applies = function() return inspecting(), \"later\" end,\n"
    "  judge = function(job, figure)\n"
    "    local most = figure \"test.most\"\n"
    "    return shown(not job.bent, \"straight nails\") end }\n"
    "rule \"a.wood\" { title = \"By wood\", stage = \"deck\", mend = \"m\",\n"
    "  judge = function(job, figure)\n"
    "    local share = job.wood == \"fir\" and 1 or 2\n"
    "    return at_most(job.gap_in, share * figure \"test.most\", \"in\") end }\n"
    "rule \"c.last\" { title = \"Unlisted\", stage = \"deck\", mend = \"m\",\n"
    "  judge = function(job, figure)\n"
    "    return at_most(1, figure \"test.most\", \"layers\") end }\n"
    "rule \"c.notice\" { title = \"Notice\", stage = \"permit\", mend = \"m\",\n"
    "  judge = function(job, figure)\n"
    "    return at_most(1, figure \"test.most\", \"layers\") end }\n";

/* Whose figure hangs on a fact of each plane. */
#define GRAIN_RULE(id, title) \
    "rule \"" id "\" { title = \"" title "\", stage = \"deck\", mend = \"m\",\n" \
    "  per = \"roof.slopes\",\n" \
    "  judge = function(job, figure, slope)\n" \
    "    local share = slope.grain == \"fine\" and 1 or 2\n" \
    "    return at_most(job.gap_in, share * figure \"test.most\", \"in\") end }\n"
static const char GRAIN_RULES[] =
    GRAIN_RULE("d.one", "One") GRAIN_RULE("d.two", "Two") GRAIN_RULE("d.three", "Three")
    GRAIN_RULE("d.four", "Four") GRAIN_RULE("d.five", "Five");

static const char TOLD_RULE[] =
    "rule \"e.told\" { title = \"Wood told\", stage = \"deck\", mend = \"m\", asks_only = true,\n"
    "  judge = function(job, figure) figure \"test.most\"\n"
    "    return shown(job.wood ~= \"none\", \"the wood\") end }\n";

static const char PLACE[] =
    "jurisdiction \"example/alder\" {\n"
    "  title = \"Alder County\", invented = true, follows = \"model/test\", from = \"2020-01-01\",\n"
    "  code = \"Alder Code\",\n"
    "  figures = { [\"test.most\"] = { 2, cite = \"9.9\", status = \"invented\",\n"
    "    source = \"Alder\" } },\n"
    "}\n";

static const char CARDS[] =
    "card \"deck\" {\n"
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

static char *card_of(struct cards *cards, const char *job, enum eavemark_form form)
{
    const struct eavemark_request request = {
        .name = "job.json", .text = job, .length = strlen(job), .stage = "deck"};
    char *report = NULL, *problems = NULL;
    assert_int_equal(eavemark_card(cards->handle, &request, form, &report, &problems),
                     EAVEMARK_NOTHING_FAILED);
    assert_string_equal(problems, "");
    free(problems);
    assert_non_null(report);
    return report;
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
    const char *gap = at(card, "[ ] Gap <b> [b.gap]");
    const char *hit = at(gap, "to hit    at most 3 in");
    assert_true(hit < at(gap, "[ ] Straight"));
    at(gap, "measured  ____________");
    free(card);
}

/* A duty that is looked at only on the roof has no plan, but its words. */
static void tells_a_duty_that_is_only_seen(void **state)
{
    char *card = card_of(*state, SMALL_JOB, EAVEMARK_TEXT);
    at(at(card, "[ ] Straight [a.bent]"), "to hit    straight nails");
    free(card);
}

/* The demand hangs on a fact nobody gave: no figure is printed, a question is. */
static void asks_where_the_demand_depends_on_a_fact(void **state)
{
    char *card = card_of(*state, SMALL_JOB, EAVEMARK_TEXT);
    assert_null(strstr(card, "[a.wood]"));
    const char *question = at(card, " 1. Which wood? ____");
    at(question, "waiting   By wood");
    free(card);
}

/* The same is asked of every plane at once, and not all that waits is named. */
static void asks_the_same_of_all_planes_once(void **state)
{
    struct cards *cards = *state;
    home_write(&cards->home, "rules/d.lua", GRAIN_RULES);
    char *card = card_of(cards, SMALL_JOB, EAVEMARK_TEXT);
    const char *question = at(card, " 2. front; back: Which grain? ____");
    at(question, "waiting   Five; Four; One; 2 more\n");
    assert_null(strstr(card, " 3. "));
    free(card);
    char *job = text_with(SMALL_JOB, "\"pitch\": \"5:12\"", "\"pitch\": \"5:12\", \"grain\": \"fine\"");
    card = card_of(cards, job, EAVEMARK_TEXT);
    at(card, " 2. back: Which grain? ____");
    free(card);
    free(job);
}

/* The law at the head need not be said in every row, nor the place's own code. */
static void cites_in_short_what_the_head_says(void **state)
{
    struct cards *cards = *state;
    char *card = card_of(cards, SMALL_JOB, EAVEMARK_TEXT);
    at(card, "* moved by the place. A section alone is of TEST 2020.\n");
    at(at(card, "[b.gap]"), "at most 3 in - 1.1 (seen)\n");
    free(card);
    home_write(&cards->home, "jurisdictions/example/alder.lua", PLACE);
    char *job = text_with(SMALL_JOB, "model/test", "example/alder");
    card = card_of(cards, job, EAVEMARK_TEXT);
    at(card, "A section alone is of TEST 2020; local: Alder Code\n(invented).\n");
    at(at(card, "[b.gap]"), "at most 2 in* - local 9.9\n");
    free(card);
    free(job);
}

/* Rows to tick and no more stand two abreast on paper, those with a figure to
 * be measured do not. */
static void tells_short_rows_from_those_to_measure(void **state)
{
    char *card = card_of(*state, SMALL_JOB, EAVEMARK_HTML);
    const char *gap = at(card, "<tr role=\"row\" class=\"row\">");
    const char *notice = at(card, "<tr role=\"row\" class=\"row short alone\">");
    assert_true(notice < at(card, "Notice") && at(card, "Notice") < gap);
    assert_true(gap < at(card, "Gap &lt;b&gt;"));
    free(card);
}

/* What the job has told already is nothing to look at. */
static void leaves_out_what_was_only_asked(void **state)
{
    struct cards *cards = *state;
    home_write(&cards->home, "rules/e.lua", TOLD_RULE);
    char *card = card_of(cards, SMALL_JOB, EAVEMARK_TEXT);
    at(card, " 1. Which wood? ____");
    at(card, "waiting   By wood; Wood told\n");
    free(card);
    char *job = text_with(SMALL_JOB, "\"stage\"", "\"wood\": \"fir\", \"stage\"");
    card = card_of(cards, job, EAVEMARK_TEXT);
    assert_null(strstr(card, "Wood told"));
    at(card, "[ ] By wood [a.wood]");
    free(card);
    free(job);
}

static void follows_the_order_of_the_place(void **state)
{
    char *card = card_of(*state, SMALL_JOB, EAVEMARK_TEXT);
    const char *calls = at(card, "-- Calls"), *gaps = at(card, "-- Gaps");
    const char *rest = at(card, "-- Rest"), *last = at(card, "-- Also looked at");
    assert_true(calls < at(card, "[c.notice]") && at(card, "[c.notice]") < gaps);
    assert_true(gaps < rest && rest < last && last < at(card, "[c.last]"));
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
    const char *gap = at(card, "[b.gap]");
    at(gap, "measured  4 in");
    at(gap, "FAIL      found 4 in. Mend: m");
    at(at(card, "[a.bent]"), "measured  so");
    free(card);
    free(job);
}

static void the_page_escapes_what_rules_say(void **state)
{
    char *card = card_of(*state, SMALL_JOB, EAVEMARK_HTML);
    at(card, "Gap &lt;b&gt;");
    assert_null(strstr(card, "Gap <b>"));
    at(card, "<span class=\"hit\">at most 3 in</span>");
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
    const struct eavemark_request request = {.name = "job.json", .text = SMALL_JOB,
                                             .length = strlen(SMALL_JOB), .stage = "deck"};
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
        cmocka_unit_test_setup_teardown(cites_in_short_what_the_head_says, start, stop),
        cmocka_unit_test_setup_teardown(tells_short_rows_from_those_to_measure, start, stop),
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
