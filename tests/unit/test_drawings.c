/* Drawings from a job and its findings: which numbers they take, when they are
 * left out, and what of rules/drawings.lua is refused. */
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

#include "include/eavemark.h"
#include "support/temporary_home.h"

#include <stdlib.h>
#include <string.h>

/* The page, in *report; under another place than the job's where one is given. */
static void read_page(char **report, const char *path, const char *stage, const char *place)
{
    char *problems = NULL;
    eavemark *handle = eavemark_open(EAVEMARK_HOME_DIR);
    const struct eavemark_request request = {.name = path, .stage = stage,
                                              .jurisdiction = place};
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

#define EXAMPLE(name) EAVEMARK_HOME_DIR "/examples/" name "/job.json"

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

static void assert_lacks(const char *text, const char *words)
{
    if (strstr(text, words) != NULL)
        fail_msg("there is \"%s\"", words);
}

/* IRC R905.1.2: 24 in inside the wall's inner face; 16 in of overhang and 6 in
 * of wall at 6:12 come to 46 x sqrt(1.25) = 51.43 in up the slope. */
static void a_report_draws_all_from_the_findings(void **state)
{
    (void)state;
    char *drawings = drawings_of(EXAMPLE("porch-tear-off"), NULL);
    static const char *const TITLES[] = {
        "Roof plan from", "Nailing zones of the deck: main deck", "Nailing zones of the deck: porch",
        "A panel and its nails: main", "Cut through the eave: front eave", "Courses of shingles",
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
    assert_lacks(drawings, "inside 24 in");
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
        assert_lacks(drawings, CARDS[i].lacks);
        assert_lacks(drawings, CARDS[i].lacks_too);
        free(drawings);
    }
}

/* An overlay nails no deck: a sentence stands for the drawing. */
static void what_does_not_apply_is_left_out(void **state)
{
    (void)state;
    char *drawings = drawings_of(EXAMPLE("overlay-gable"), NULL);
    assert_has(drawings, "Nailing zones of panels: not drawn; this deck is not nailed");
    assert_lacks(drawings, "Nailing zones of the deck");
    free(drawings);
}

/* What is wrong with a line of rules/drawings.lua. */
static void assert_refused(const char *line, const char *says)
{
    struct temporary_home home;
    home_make(&home);
    home_write(&home, "rules/fields.lua", "");
    home_write(&home, "jurisdictions/model/small.lua",
               "jurisdiction \"model/small\" { title = \"Small\", model = true, "
               "edition = \"Small\", from = \"2020-01-01\", figures = { [\"a.most\"] = { 1, "
               "unit = \"in\", sense = \"at_most\", cite = \"1\", status = \"practice\", "
               "source = \"none\" } } }");
    home_write(&home, "rules/drawings.lua", line);
    eavemark *handle = eavemark_open(home.path);
    struct outcome_of_check outcome =
        home_check(handle, "{}", "model/small", "2021-01-01", NULL);
    assert_int_equal(outcome.status, EAVEMARK_BROKEN);
    assert_has(outcome.problems, says);
    assert_has(outcome.problems, "rules/drawings.lua");
    outcome_free(&outcome);
    eavemark_close(handle);
    home_remove(&home);
}

static void slips_in_the_declarations_are_refused(void **state)
{
    (void)state;
    assert_refused("drawing \"floor\" { stages = {} }", "there is no such drawing");
    assert_refused("drawing \"plan\" { stages = {}, rule = {} }", "did you mean \"rules\"?");
    assert_refused("drawing \"panel\" { stages = {}, rules = { egde = \"a.b\" } }",
                   "it has no dimension \"egde\"; the nearest is edge");
    assert_refused("drawing \"panel\" { stages = {}, rules = { edge = 3 } }", "must be a name");
    assert_refused("drawing \"panel\" { stages = {}, rules = 3 }", "rules is a table");
    assert_refused("drawing \"courses\" { stages = {}, numbers = { few = \"4\" } }",
                   "must be a number");
    assert_refused("drawing \"panel\" { stages = {}, rules = { edge = \"a.b\" } }",
                   "takes \"edge\" from \"a.b\", which is no rule");
    assert_refused("drawing \"panel\" { stages = {}, figures = { length = \"a.least\" } }",
                   "takes \"length\" from \"a.least\", which is no figure");
    assert_refused("drawing \"plan\" { stages = { \"roof\" } }", "stage \"roof\" is not one of");
    assert_refused("drawing \"plan\" { stages = {} }\ndrawing \"plan\" { stages = {} }",
                   "is already a drawing");
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(a_report_draws_all_from_the_findings),
        cmocka_unit_test(a_strip_has_no_reach_inside),
        cmocka_unit_test(a_card_draws_what_its_stage_needs),
        cmocka_unit_test(what_does_not_apply_is_left_out),
        cmocka_unit_test(slips_in_the_declarations_are_refused),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
