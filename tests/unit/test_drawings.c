/* Drawings from a job and its findings: which numbers they take, when they are
 * left out, and what of rules/drawings.lua is refused. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "include/eavemark.h"
#include "support/temporary_home.h"

#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <unistd.h>

/* The page, in *report; under another place than the job's where one is given. */
static void read_page(char **report, const char *path, const char *stage, const char *place)
{
    char *problems = NULL;
    eavemark *handle = eavemark_open(EAVEMARK_HOME_DIR);
    const struct eavemark_request request = {.name = path, .stage = stage, .jurisdiction = place};
    assert_non_null(handle);
    if (stage != NULL) {
        assert_int_equal(eavemark_card(handle, &request, EAVEMARK_HTML, report, &problems), 0);
        free(problems);
    } else {
        eavemark_result *result = eavemark_check(handle, &request);
        *report = eavemark_result_report(result, EAVEMARK_HTML, EAVEMARK_ALL);
        eavemark_result_free(result);
    }
    eavemark_close(handle);
    assert_non_null(*report);
}

#define EXAMPLE(name) EAVEMARK_HOME_DIR "/tests/houses/" name "/job.json"

/* The part of the page that holds the drawings. */
static char *drawings_under(const char *path, const char *stage, const char *place)
{
    char *page = NULL;
    read_page(&page, path, stage, place);
    const char *start = strstr(page, "<section class=\"drawings\"");
    assert_non_null(start);
    const char *end = strstr(start, "</section>");
    assert_non_null(end);
    char *part = strndup(start, (size_t)(end - start));
    free(page);
    assert_non_null(part);
    return part;
}

static char *drawings_of(const char *path, const char *stage)
{
    return drawings_under(path, stage, NULL);
}

/* IRC R905.1.2: 24 in inside the wall's inner face; 16 in of overhang and 6 in
 * of wall at 6:12 come to 46 x sqrt(1.25) = 51.43 in up the slope. */
static void a_report_draws_all_from_the_findings(void **state)
{
    (void)state;
    char *drawings = drawings_of(EXAMPLE("porch-tear-off"), NULL);
    static const char *const TITLES[] = {"Roof plan from",
                                         "Nailing zones of the deck: main deck",
                                         "Nailing zones of the deck: porch",
                                         "A panel and its nails: main",
                                         "Cut through the eave: front eave",
                                         "Courses of shingles",
                                         "Air through the attic: attic"};
    for (size_t i = 0; i < sizeof(TITLES) / sizeof(TITLES[0]); i++)
        assert_has(drawings, TITLES[i]);
    assert_has(drawings, "ice barrier: at least 51.43 in; planned 60 in");
    assert_has(drawings, "Panel edges: at most 6 in; planned 6 in");
    assert_has(drawings, "inside 24 in");
    /* Two eaves that look alike share a drawing; the porch's has no barrier. */
    assert_has(drawings, "Cut through the eave: front eave, back eave</figcaption>");
    free(drawings);
}

/* Where a strip along the eave will do, nothing inside the wall is asked for. */
static void a_strip_has_no_reach_inside(void **state)
{
    (void)state;
    char *drawings = drawings_under(EXAMPLE("porch-tear-off"), NULL, "example/fernhollow");
    assert_has(drawings, "ice barrier: at least 36 in; planned 60 in");
    assert_has_not(drawings, "inside 24 in");
    free(drawings);
}

static void a_card_draws_what_its_stage_needs(void **state)
{
    (void)state;
    static const struct {
        const char *stage, *has, *lacks, *lacks_too;
    } CARDS[] = {
        {"permit", "Roof plan", "Nailing zones", "Cut through"},
        {"deck", "Nailing zones", "Roof plan", "Courses of"},
        {"dry-in", "Cut through", "Nailing zones", "Air through"},
        {"final", "Courses of", "Cut through", "Roof plan"},
    };
    for (size_t i = 0; i < sizeof(CARDS) / sizeof(CARDS[0]); i++) {
        char *drawings = drawings_of(EXAMPLE("cross-gable"), CARDS[i].stage);
        assert_has(drawings, CARDS[i].has);
        assert_has_not(drawings, CARDS[i].lacks);
        assert_has_not(drawings, CARDS[i].lacks_too);
        free(drawings);
    }
}

/* An overlay nails no deck: a sentence stands for the drawing. */
static void what_does_not_apply_is_left_out(void **state)
{
    (void)state;
    char *drawings = drawings_of(EXAMPLE("overlay-gable"), NULL);
    assert_has(drawings, "Nailing zones of panels: not drawn; this deck is not nailed");
    assert_has_not(drawings, "Nailing zones of the deck");
    free(drawings);
}

static char *read_whole(const char *path)
{
    enum { MOST = 64 * 1024 };
    FILE *file = fopen(path, "r");
    char *text = calloc(1, MOST);
    assert_non_null(file);
    assert_non_null(text);
    assert_in_range(fread(text, 1, MOST - 1, file), 1, MOST - 2);
    fclose(file);
    return text;
}

/* A job of the examples with some of its words replaced, as a page of a stage. */
static char *drawings_with(const char *path, const char *stage, const char *from, const char *to)
{
    char name[] = "/tmp/eavemark-drawings-XXXXXX";
    char *job = read_whole(path), *at = strstr(job, from);
    assert_non_null(at);
    const int file = mkstemp(name);
    assert_true(file >= 0);
    FILE *out = fdopen(file, "w");
    assert_non_null(out);
    fprintf(out, "%.*s%s%s", (int)(at - job), job, to, at + strlen(from));
    fclose(out);
    free(job);
    char *drawings = drawings_of(name, stage);
    remove(name);
    return drawings;
}

/* A spacing that the job does not say: what is demanded stands beside a question mark. */
static void a_fact_that_is_missing_is_not_planned(void **state)
{
    (void)state;
    char *drawings = drawings_with(EXAMPLE("porch-tear-off"), "deck", "\"edge_spacing_in\": 6",
                                   "\"edge_spacing_in\": null");
    assert_has(drawings, "Panel edges: at most 6 in; planned ?");
    free(drawings);
}

/* The lap is demanded of the plane over the eave. Where the eave does not say which that
 * is, no plane's demand is drawn, not the first one's. */
static void a_demand_is_found_through_the_reference(void **state)
{
    (void)state;
    char *drawings = drawings_of(EXAMPLE("porch-tear-off"), "dry-in");
    assert_has(drawings, "underlayment, lap: at least 2 in; planned 4 in");
    assert_has(drawings, "underlayment, lap: at least 19 in; planned 4 in");
    free(drawings);
    drawings = drawings_with(EXAMPLE("porch-tear-off"), "dry-in",
                             "\"name\": \"porch eave\", \"kind\": \"eave\", \"slope\": \"porch\"",
                             "\"name\": \"porch eave\", \"kind\": \"eave\", \"slope\": null");
    const char *porch = strstr(drawings, "Cut through the eave: porch eave</title>");
    assert_non_null(porch);
    assert_has(porch, "underlayment, lap: ");
    assert_has_not(porch, "underlayment, lap: at least");
    free(drawings);
}

/* A deck of boards; one of which the job does not say what is done to it. */
static void what_is_not_drawn_says_why(void **state)
{
    (void)state;
    char *drawings = drawings_with(EXAMPLE("porch-tear-off"), "deck", "\"kind\": \"panel\"",
                                   "\"kind\": \"board\"");
    assert_has(drawings, "not drawn; boards are nailed at each rafter.</p>");
    free(drawings);
    drawings = drawings_with(EXAMPLE("porch-tear-off"), "deck", "\"kind\": \"panel\"",
                             "\"kind\": null");
    assert_has(drawings, "not drawn; the job does not say /decks/0/kind.</p>");
    free(drawings);
}

#define FIELD(path, rest) \
    "field \"" path "\" { stage = \"permit\", ask = \"Which?\", type = " rest " }\n"
#define INCHES "\"number\", unit = \"in\", range = { 0, 9 }"
#define FEET "\"number\", unit = \"ft\", range = { 0, 9 }"
#define LIST "\"list\", range = { 1, 9 }"

static const char FIELDS[] = FIELD("house_ft", FEET) FIELD("sheets", LIST)
    FIELD("sheets[].name", "\"text\", range = { 1, 9 }") FIELD("decks", LIST)
        FIELD("decks[].name", "\"text\", range = { 1, 9 }")
            FIELD("decks[].kind", "\"choice\", choices = { \"panel\", \"board\" }")
                FIELD("decks[].nailed", "\"yes_no\"") FIELD("decks[].gap_in", INCHES)
                    FIELD("decks[].gap_ft", FEET) FIELD("decks[].boards", LIST)
                        FIELD("decks[].boards[].gap_in", INCHES);

/* A rule of the decks, one of the sheets, and a row in feet. */
static const char RULES[] =
    "rule \"deck.gap\" { title = \"t\", stage = \"permit\", per = \"decks\", mend = \"m\",\n"
    "  judge = function(job, figure, deck) return at_most(deck.gap_in, figure \"a.most\", \"in\") end }\n"
    "rule \"sheet.gap\" { title = \"t\", stage = \"permit\", per = \"sheets\", mend = \"m\",\n"
    "  judge = function(job, figure) return at_most(job.house_ft, figure \"a.most\", \"in\") end }\n"
    "demand \"deck.feet\" { title = \"t\", stage = \"permit\", per = \"decks\", mend = \"m\",\n"
    "  fact = \"decks[].gap_ft\", meets = \"a.most_ft\" }\n";

static const char PLACE[] =
    "jurisdiction \"model/small\" { title = \"Small\", model = true, edition = \"Small\", "
    "from = \"2020-01-01\", figures = {\n"
    "[\"a.most\"] = { 1, unit = \"in\", sense = \"at_most\", cite = \"1\", status = \"practice\", "
    "source = \"none\" },\n"
    "[\"a.most_ft\"] = { 1, unit = \"ft\", sense = \"at_most\", cite = \"1\", "
    "status = \"practice\", source = \"none\" },\n"
    "[\"a.on\"] = { true, sense = \"equals\", cite = \"1\", status = \"practice\", "
    "source = \"none\" } } }";

/* What is wrong with rules/drawings.lua: said with the file and the drawing's line. */
static void assert_refused_at(const char *text, const char *says, int line)
{
    struct temporary_home home;
    char place[40];
    home_make(&home);
    home_write(&home, "rules/fields.lua", FIELDS);
    home_write(&home, "rules/gap.lua", RULES);
    home_write(&home, "jurisdictions/model/small.lua", PLACE);
    home_write(&home, "rules/drawings.lua", text);
    eavemark *handle = eavemark_open(home.path);
    struct outcome_of_check outcome = home_check(handle, "{}", "model/small", "2021-01-01", NULL);
    if (says == NULL) {
        assert_int_not_equal(outcome.status, EAVEMARK_BROKEN);
    } else {
        snprintf(place, sizeof(place), "rules/drawings.lua:%d", line);
        assert_int_equal(outcome.status, EAVEMARK_BROKEN);
        assert_has(outcome.problems, says);
        assert_has(outcome.problems, place);
    }
    outcome_free(&outcome);
    eavemark_close(handle);
    home_remove(&home);
}

static void assert_refused(const char *text, const char *says)
{
    assert_refused_at(text, says, 1);
}

#define PANEL(rest) "drawing \"panel\" { stages = {}, of = \"decks\", " rest " }"

static void slips_in_the_declarations_are_refused(void **state)
{
    (void)state;
    assert_refused(PANEL("facts = { name = \"decks[].name\", gap = \"decks[].gap_in\" }, "
                         "rules = { gap = \"deck.gap\", edge = \"deck.gap\" }, "
                         "figures = { length = \"a.most\" }"),
                   NULL);
    assert_refused("drawing \"floor\" { stages = {} }", "there is no such drawing");
    assert_refused("drawing \"plan\" { stages = {}, rule = {} }", "did you mean \"rules\"?");
    assert_refused(PANEL("rules = { egde = \"a.b\" }"),
                   "it has no dimension \"egde\"; the nearest is edge");
    assert_refused(PANEL("rules = { edge = 3 }"), "must be a name");
    assert_refused(PANEL("rules = 3"), "rules is a table");
    assert_refused("drawing \"courses\" { stages = {}, numbers = { few = \"4\" } }",
                   "must be a number");
    assert_refused(PANEL("rules = { edge = \"a.b\" }"),
                   "takes \"edge\" from \"a.b\", which is no rule");
    assert_refused("drawing \"plan\" { stages = { \"roof\" } }", "stage \"roof\" is not one of");
    assert_refused_at("drawing \"plan\" { stages = {} }\ndrawing \"plan\" { stages = {} }",
                      "is already a drawing", 2);
}

/* The facts are those of the catalogue, of the kind and unit that the dimension takes. */
static void a_fact_is_held_against_the_fields(void **state)
{
    (void)state;
    assert_refused_at("\n" PANEL("facts = { gap = \"decks[].gpa_in\" }"),
                      "there is no field \"decks[].gpa_in\" (did you mean \"decks[].gap_in\"?)", 2);
    assert_refused(PANEL("facts = { gpa = \"decks[].gap_in\" }"),
                   "it has no dimension \"gpa\"; the nearest is gap");
    assert_refused(PANEL("facts = { gap = \"decks[].gap_ft\" }"),
                   "gap is in in, and decks[].gap_ft in ft");
    assert_refused(PANEL("facts = { gap = \"decks[].kind\" }"),
                   "gap is a number, and decks[].kind is ");
    assert_refused(PANEL("facts = { name = \"decks[].gap_in\" }"),
                   "name is a text, and decks[].gap_in is ");
    assert_refused(PANEL("facts = { gap = \"sheets[].name\" }"), "say per = \"sheets\"");
    assert_refused(PANEL("facts = { gap = 3 }"), "facts: gap must be a name");
    assert_refused(PANEL("facts = { gap = \"decks[].gap_in\" }, numbers = { gap = 1 }"),
                   "gap comes from two places");
    assert_refused("drawing \"eave\" { stages = {}, of = \"decks\", "
                   "facts = { metal = \"decks[].nailed\" } }",
                   "metal is yes or no");
}

static void a_condition_is_held_against_the_choices(void **state)
{
    (void)state;
    assert_refused(PANEL("when = is { \"decks[].kind\", \"pannel\" }"),
                   "decks[].kind is never \"pannel\"; the nearest is \"panel\"");
    assert_refused(PANEL("when = function() return true end"), "no function");
    assert_refused(PANEL("when = inspected {}"), "no inspected");
    assert_refused(PANEL("conditions = { gap = is \"decks[].nailed\" }"), "gap is a number");
    assert_refused("drawing \"eave\" { stages = {}, of = \"decks\", "
                   "conditions = { metal = is \"decks[].naild\" } }",
                   "did you mean \"decks[].nailed\"?");
}

static void a_figure_is_of_the_dimension(void **state)
{
    (void)state;
    assert_refused(PANEL("figures = { length = \"a.least\" }"), "length: \"a.least\" is no figure");
    assert_refused(PANEL("figures = { length = \"a.most_ft\" }"),
                   "length is in in, and figure \"a.most_ft\" in ft");
    assert_refused(PANEL("figures = { length = \"a.on\" }"),
                   "length is a number, and figure \"a.on\" is not");
    assert_refused("drawing \"eave\" { stages = {}, of = \"decks\", "
                   "figures = { wall_counts = \"a.most\" } }",
                   "wall_counts is yes or no, and figure \"a.most\" is not");
}

/* A demand made of something else would never be found, one in feet drawn as inches. */
static void a_rule_judges_what_is_drawn(void **state)
{
    (void)state;
    assert_refused(PANEL("rules = { gap = \"sheet.gap\" }"),
                   "which judges what is not drawn: sheets");
    assert_refused(PANEL("rules = { gap = \"deck.feet\" }"), "which demands it in ft");
    assert_refused("drawing \"panel\" { stages = {}, rules = { gap = \"deck.gap\" } }",
                   "which judges what is not drawn: decks");
}

static void lists_are_of_the_job(void **state)
{
    (void)state;
    assert_refused("drawing \"panel\" { stages = {}, of = \"deck\" }",
                   "of: \"deck\" is not a list of the job (the nearest field: decks)");
    assert_refused("drawing \"panel\" { stages = {}, of = \"decks[].boards\" }",
                   "lies in another list");
    assert_refused(PANEL("lists = { planes = { of = \"sheets\" } }"), "unknown key \"planes\"");
#define NAILING(rest) "drawing \"nailing\" { stages = {}, of = \"decks\", lists = { " rest " } }"
    assert_refused(NAILING("planes = 1"), "planes: a list is a table");
    assert_refused(NAILING("planes = {}"), "planes: has no of");
    assert_refused(NAILING("planes = { off = \"decks\" }"), "did you mean \"of\"?");
    assert_refused(NAILING("planes = { of = \"sheets\" }"),
                   "planes: of: no one field of \"sheets\" says which of \"decks\" it belongs to");
    assert_refused(NAILING("sides = { of = \"decks[].boards\" }"),
                   "sides: what they belong to is not declared");
    assert_refused(NAILING("planes = { of = \"decks[].boards\", "
                           "facts = { run = \"decks[].boards[].gap_in\" } }"),
                   "planes: run is in ft, and decks[].boards[].gap_in in in");
    assert_refused(NAILING("planes = { of = \"decks[].boards\", facts = { runs = \"house_ft\" } }"),
                   "planes: it has no dimension \"runs\"; the nearest is run");
    assert_refused(NAILING("planes = { of = \"decks[].boards\", facts = { run = \"house_ft\" } }"),
                   NULL);
}

/* A host that shows a roof while it is typed asks for no more than that. */
static void drawings_come_alone_and_named(void **state)
{
    (void)state;
    char *whole = drawings_of(EXAMPLE("porch-tear-off"), NULL);
    eavemark *handle = eavemark_open(EAVEMARK_HOME_DIR);
    const struct eavemark_request request = {.name = EXAMPLE("porch-tear-off")};
    eavemark_result *result = eavemark_check(handle, &request);
    char *alone = eavemark_result_report(result, EAVEMARK_HTML, EAVEMARK_DRAWINGS);
    assert_non_null(alone);
    assert_int_equal(strncmp(alone, whole, strlen(whole)), 0);
    assert_string_equal(alone + strlen(whole), "</section>\n");
    assert_non_null(strstr(alone, "<figure data-drawing=\"plan\">\n<svg"));
    assert_non_null(strstr(alone, "<figure data-drawing=\"eave\">\n<svg"));
    free(alone);
    free(whole);
    eavemark_result_free(result);
    eavemark_close(handle);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(a_report_draws_all_from_the_findings),
        cmocka_unit_test(drawings_come_alone_and_named),
        cmocka_unit_test(a_strip_has_no_reach_inside),
        cmocka_unit_test(a_card_draws_what_its_stage_needs),
        cmocka_unit_test(what_does_not_apply_is_left_out),
        cmocka_unit_test(a_fact_that_is_missing_is_not_planned),
        cmocka_unit_test(a_demand_is_found_through_the_reference),
        cmocka_unit_test(what_is_not_drawn_says_why),
        cmocka_unit_test(slips_in_the_declarations_are_refused),
        cmocka_unit_test(a_fact_is_held_against_the_fields),
        cmocka_unit_test(a_condition_is_held_against_the_choices),
        cmocka_unit_test(a_figure_is_of_the_dimension),
        cmocka_unit_test(a_rule_judges_what_is_drawn),
        cmocka_unit_test(lists_are_of_the_job),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
