/* The takeoff as a user of the library gets it: the quantities of rules/takeoff.lua
 * for the job of the rule cases, and quantities that go wrong in a home made
 * for it. */
#include "include/eavemark.h"
#include "support/small_law.h"
#include "support/temporary_home.h"

#include <cjson/cJSON.h>

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

struct fixture {
    eavemark *handle;
    cJSON *job; /* with everything a takeoff asks for */
};

static cJSON *child(cJSON *parent, const char *key)
{
    cJSON *found = cJSON_GetObjectItemCaseSensitive(parent, key);
    if (found == NULL)
        fail_msg("no \"%s\"", key);
    return found;
}

static void put_number(cJSON *object, const char *key, double value)
{
    cJSON_DeleteItemFromObjectCaseSensitive(object, key);
    assert_non_null(cJSON_AddNumberToObject(object, key, value));
}

static void put_text(cJSON *object, const char *key, const char *value)
{
    cJSON_DeleteItemFromObjectCaseSensitive(object, key);
    assert_non_null(cJSON_AddStringToObject(object, key, value));
}

static cJSON *whole_job(void)
{
    char *text = file_text(EAVEMARK_HOME_DIR "/rules/cases/base.json", NULL);
    cJSON *job = cJSON_Parse(text);
    free(text);
    assert_non_null(job);
    put_number(child(job, "roof"), "hip_ft", 30);
    put_number(child(job, "roof"), "valley_ft", 12);
    cJSON *valley = cJSON_CreateObject();
    put_text(valley, "name", "valley");
    cJSON_AddItemToArray(child(child(job, "roof"), "valleys"), valley);
    put_number(child(job, "covering"), "weight_lb_per_square", 240);
    put_number(child(job, "covering"), "strip_length_in", 36);
    put_text(child(job, "covering"), "grade", "three_tab");
    cJSON *wall = NULL;
    cJSON_ArrayForEach(wall, child(child(job, "roof"), "walls"))
        put_number(wall, "length_ft", 12);
    put_number(child(job, "covering"), "exposure_printed_in", 5);
    put_number(cJSON_GetArrayItem(child(child(job, "existing"), "coverings"), 0),
               "weight_lb_per_square", 220);
    cJSON_DeleteItemFromObjectCaseSensitive(job, "takeoff");
    cJSON *takeoff = cJSON_AddObjectToObject(job, "takeoff");
    put_number(takeoff, "waste_percent", 10);
    put_number(takeoff, "bundles_per_stack", 4);
    put_number(takeoff, "stack_sqft", 16);
    return job;
}

static int start(void **state)
{
    static struct fixture fixture;
    fixture.handle = eavemark_open(EAVEMARK_HOME_DIR);
    fixture.job = whole_job();
    *state = &fixture;
    return fixture.handle == NULL ? -1 : 0;
}

static int stop(void **state)
{
    struct fixture *fixture = *state;
    eavemark_close(fixture->handle);
    cJSON_Delete(fixture->job);
    return 0;
}

static enum eavemark_status reckon(eavemark *handle, const cJSON *job, const char *place,
                                   enum eavemark_form form, char **report, char **problems)
{
    char *text = cJSON_PrintUnformatted(job);
    const struct eavemark_request request = {
        .name = "job.json", .text = text, .length = strlen(text), .jurisdiction = place};
    const enum eavemark_status status = eavemark_takeoff(handle, &request, form, report, problems);
    cJSON_free(text);
    return status;
}

/* The report as a tree; the job must be usable. */
static cJSON *reckoned(eavemark *handle, const cJSON *job, const char *place)
{
    char *report = NULL, *problems = NULL;
    const enum eavemark_status status = reckon(handle, job, place, EAVEMARK_JSON_LINE, &report,
                                               &problems);
    if (status != EAVEMARK_NOTHING_FAILED || problems[0] != '\0')
        fail_msg("status %d: %s", (int)status, problems);
    cJSON *tree = cJSON_Parse(report);
    assert_non_null(tree);
    free(report);
    free(problems);
    return tree;
}

static const cJSON *line_of(const cJSON *report, const char *name, const char *where)
{
    const cJSON *line = NULL;
    cJSON_ArrayForEach(line, cJSON_GetObjectItemCaseSensitive(report, "quantities")) {
        const cJSON *place = cJSON_GetObjectItemCaseSensitive(line, "where");
        if (strcmp(cJSON_GetObjectItemCaseSensitive(line, "name")->valuestring, name) == 0
            && (where == NULL || (cJSON_IsString(place) && strcmp(place->valuestring, where) == 0)))
            return line;
    }
    fail_msg("no quantity %s at %s", name, where == NULL ? "the house" : where);
    return NULL;
}

static const char *word_of(const cJSON *line, const char *key)
{
    const cJSON *item = cJSON_GetObjectItemCaseSensitive(line, key);
    return cJSON_IsString(item) ? item->valuestring : "";
}

static double part_of(const cJSON *line, const char *part)
{
    const cJSON *value = cJSON_GetObjectItemCaseSensitive(
        cJSON_GetObjectItemCaseSensitive(line, part), "value");
    return cJSON_IsNumber(value) ? value->valuedouble : (double)NAN;
}

static void holds_line(const cJSON *report, const char *name, const char *where, double exact,
                       double within, double bought)
{
    const cJSON *line = line_of(report, name, where);
    if (!(fabs(part_of(line, "exact") - exact) <= within))
        fail_msg("%s: exact %g, wanted %g: %s", name, part_of(line, "exact"), exact,
                 word_of(line, "says"));
    if (bought >= 0 && part_of(line, "buy") != bought)
        fail_msg("%s: buys %g, wanted %g", name, part_of(line, "buy"), bought);
    assert_string_equal(word_of(line, "outcome"), "given");
}

/* Two planes 40 x 14 ft of run at 5:12 (606.67 sq ft each) and a porch 12 x 6 at
 * 4:12 (75.89): 1,289.23 sq ft. Each answer below was worked out by hand. */
static void the_common_quantities(void **state)
{
    const struct fixture *fixture = *state;
    cJSON *report = reckoned(fixture->handle, fixture->job, "model/irc-2021");
    holds_line(report, "plane_area", "main front", 606.7, 0.05, -1);
    holds_line(report, "plane_area", "porch", 75.9, 0.05, -1);
    holds_line(report, "squares", NULL, 12.89, 0.005, -1);
    holds_line(report, "shingle_bundles", NULL, 1289.2, 0.05, 43);     /* 1,418.2 / 33.33 = 42.5 */
    holds_line(report, "starter", NULL, 92, 0, 2);                     /* 101.2 / 81 */
    holds_line(report, "ridge_cap", NULL, 70, 0, 3);                   /* 77 / 35 */
    holds_line(report, "shingle_nails", NULL, 4126, 1, 1);             /* 12.8923 x 80 x 4 */
    holds_line(report, "shingle_nail_weight", NULL, 19.6, 0.05, 22);   /* at 210 to the pound */
    holds_line(report, "underlayment_rolls", "felt", 1365.1, 0.05, 4); /* x 36/34; 1,501.6 / 432 */
    holds_line(report, "drip_edge_eave", NULL, 92, 0, 11);             /* 101.2 / 9.833 */
    holds_line(report, "drip_edge_rake", NULL, 68, 0, 8);
    holds_line(report, "valley_lining", NULL, 12, 0, 1);
    holds_line(report, "deck_panels", "panels", 96, 0, 4);   /* 105.6 / 32 */
    holds_line(report, "deck_nails", "panels", 1813, 1, -1); /* 40.29 panels x 45 */
    holds_line(report, "vents_short", "attic", 0, 0, -1);
    holds_line(report, "tear_off_weight", NULL, 2836.3, 0.1, -1); /* 12.8923 x 220 */
    holds_line(report, "tear_off_loads", NULL, 1, 0, -1);
    holds_line(report, "stack_load", NULL, 20, 0, -1); /* 4 x 80 / 16 */
    holds_line(report, "crew_days", NULL, 13, 0, 3);   /* 13 / 6 = 2.17 */
    assert_string_equal(word_of(line_of(report, "ice_barrier_rolls", NULL), "outcome"),
                        "not_applicable");
    assert_string_equal(word_of(line_of(report, "attic_fan", "attic"), "outcome"),
                        "not_applicable");
    cJSON_Delete(report);
}

static cJSON *slope_of(cJSON *job, int index)
{
    return cJSON_GetArrayItem(child(child(job, "roof"), "slopes"), index);
}

static void two_plies_only_where_the_slope_asks(void **state)
{
    const struct fixture *fixture = *state;
    cJSON *job = cJSON_Duplicate(fixture->job, true);
    put_text(slope_of(job, 2), "pitch", "3.9:12");
    cJSON *report = reckoned(fixture->handle, job, "model/irc-2021");
    /* Two planes as before; porch 72 x 1.05148 x 36/17, and 12 ft of strip 19 in wide. */
    const double porch = 72 * sqrt(1 + 3.9 * 3.9 / 144) * 36 / 17 + 12 * 19.0 / 12;
    const double planes = 2 * 606.6667 * 36 / 34;
    holds_line(report, "underlayment_rolls", "felt", planes + porch, 0.1, 4);
    cJSON_Delete(report);
    cJSON_Delete(job);
}

static void the_place_drives_the_figures(void **state)
{
    const struct fixture *fixture = *state;
    cJSON *job = cJSON_Duplicate(fixture->job, true);
    child(child(job, "site"), "high_velocity_hurricane_zone")->type = cJSON_True;
    cJSON *report = reckoned(fixture->handle, job, "example/gullhaven");
    holds_line(report, "shingle_nails", NULL, 12.8923 * 80 * 6, 1, 1);
    cJSON_Delete(report);
    cJSON_Delete(job);
    /* 42 in level at 5:12 is 45.5 in: two courses; the porch is 75.9 in long: three. */
    report = reckoned(fixture->handle, fixture->job, "example/frostmere");
    holds_line(report, "ice_barrier_courses", "front eave", 2, 0, -1);
    holds_line(report, "ice_barrier_courses", "porch eave", 3, 0, -1);
    holds_line(report, "ice_barrier_area", NULL, (80 + 80 + 36) * 3, 0.05, -1);
    holds_line(report, "ice_barrier_rolls", NULL, 196, 0, 4); /* 215.6 / 66.7 */
    cJSON_Delete(report);
    /* A strip of 36 in along every eave: one course each. */
    report = reckoned(fixture->handle, fixture->job, "example/fernhollow");
    holds_line(report, "ice_barrier_courses", "front eave", 1, 0, -1);
    holds_line(report, "ice_barrier_courses", "porch eave", 1, 0, -1);
    cJSON_Delete(report);
}

static void short_vents_say_what_to_buy(void **state)
{
    const struct fixture *fixture = *state;
    cJSON *job = cJSON_Duplicate(fixture->job, true);
    cJSON *attic = cJSON_GetArrayItem(child(job, "attics"), 0);
    put_number(cJSON_GetArrayItem(child(attic, "vents"), 0), "length_ft", 10);
    put_text(child(job, "takeoff"), "vent_cover", "wood_louver_eighth_inch_mesh");
    cJSON *report = reckoned(fixture->handle, job, "model/irc-2021");
    holds_line(report, "vents_short", "attic", 960 - 180 - 540, 0.05, -1);
    const cJSON *work = cJSON_GetObjectItemCaseSensitive(line_of(report, "vents_short", "attic"),
                                                         "work");
    assert_string_equal(cJSON_GetArrayItem(work, cJSON_GetArraySize(work) - 1)->valuestring,
                        "as one opening behind its cover: 240 sq in x 2.25 = 540 sq in");
    holds_line(report, "vents_more", "attic, ridge vent", 240, 0.05, 14);   /* 13.3 ft at 18 */
    holds_line(report, "vents_more", "attic, soffit strip", 240, 0.05, 27); /* 26.7 ft at 9 */
    cJSON_Delete(report);
    cJSON_Delete(job);
}

/* An opening of 225 sq in behind louvers and mesh gives 225 / 2.25 = 100. */
static void openings_without_a_label(void **state)
{
    const struct fixture *fixture = *state;
    cJSON *job = cJSON_Duplicate(fixture->job, true);
    cJSON *attic = cJSON_GetArrayItem(child(job, "attics"), 0);
    cJSON *vents = cJSON_Parse("[{\"name\":\"louver\",\"kind\":\"gable\",\"place\":\"high\","
                               "\"count\":2,\"gross_each_sqin\":225,"
                               "\"cover\":\"wood_louver_eighth_inch_mesh\"}]");
    cJSON_ReplaceItemInObject(attic, "vents", vents);
    cJSON *report = reckoned(fixture->handle, job, "model/irc-2021");
    holds_line(report, "vents_short", "attic", 960 - 200, 0.05, -1);
    holds_line(report, "vents_more", "attic, louver", 760, 0.05, 8); /* 7.6 at 100 */
    cJSON_Delete(report);
    cJSON_Delete(job);
}

static void what_a_label_says_goes_first(void **state)
{
    const struct fixture *fixture = *state;
    cJSON *job = cJSON_Duplicate(fixture->job, true);
    put_number(child(job, "covering"), "bundles_per_square", 4);
    put_number(child(job, "fasteners"), "nails_to_the_pound", 140);
    cJSON *felt = cJSON_GetArrayItem(child(job, "underlayments"), 0);
    put_number(felt, "roll_width_in", 36);
    put_number(felt, "roll_length_ft", 72);
    put_number(child(job, "takeoff"), "trailer_cuyd", 1);
    put_number(child(job, "takeoff"), "sheet_waste_percent", 0);
    cJSON *report = reckoned(fixture->handle, job, "model/irc-2021");
    holds_line(report, "shingle_bundles", NULL, 1289.2, 0.05, 57);     /* 1,418.2 / 25 */
    holds_line(report, "shingle_nail_weight", NULL, 29.5, 0.05, 33);   /* 32.4 */
    holds_line(report, "underlayment_rolls", "felt", 1365.1, 0.05, 7); /* 1,365.1 / 216 */
    holds_line(report, "tear_off_loads", NULL, 4, 0, -1);              /* 3.88 cu yd */
    cJSON_Delete(report);
    cJSON_Delete(job);
}

/* The same arithmetic in the mends of a check. */
static void mends_name_what_to_buy(void **state)
{
    const struct fixture *fixture = *state;
    cJSON *job = cJSON_Duplicate(fixture->job, true);
    /* 0.25 of shingle and 0.03 of felt, then through 7/16 of deck: 0.7175. */
    put_number(child(job, "fasteners"), "length_in", 0.7);
    cJSON *attic = cJSON_GetArrayItem(child(job, "attics"), 0);
    put_number(cJSON_GetArrayItem(child(attic, "vents"), 0), "length_ft", 10);
    put_number(attic, "area_sqft", 1400);
    char *text = cJSON_PrintUnformatted(job);
    struct outcome_of_check check = home_check(fixture->handle, text, NULL, NULL, NULL);
    assert_member_has(check.json, "fasteners.penetration", 0, "mend", "1 in is the next");
    assert_member_has(check.json, "fasteners.past_thin_deck", 0, "mend", "1 in is the next");
    /* 1,400 / 150 x 144 = 1,344, less 180 + 540: 624, which is 69.3 ft at 9. */
    assert_member_has(check.json, "ventilation.net_free_area", 0, "mend",
                      "70 ft more of soffit strip");
    outcome_free(&check);
    cJSON_free(text);
    cJSON_Delete(job);
}

/* 10 percent is common practice, and no code's. */
static void waste_that_is_not_stated_is_the_usual(void **state)
{
    const struct fixture *fixture = *state;
    cJSON *job = cJSON_Duplicate(fixture->job, true);
    cJSON_DeleteItemFromObjectCaseSensitive(child(job, "takeoff"), "waste_percent");
    cJSON *report = reckoned(fixture->handle, job, "model/irc-2021");
    const cJSON *line = line_of(report, "shingle_bundles", NULL);
    assert_string_equal(word_of(line, "outcome"), "given");
    assert_true(cJSON_GetObjectItemCaseSensitive(line, "waste_percent")->valuedouble == 10);
    cJSON_Delete(report);
    cJSON_Delete(job);
}

/* By hand: exposure B, 115 mph, 14 ft taken as 15. Kz is 2.01 x (15 / 1,200) to the
 * power 2/7, or at least 0.70 in the older edition; 5:12 is 22.6 degrees. */
static void wind_by_zone(void **state)
{
    const struct fixture *fixture = *state;
    cJSON *report = reckoned(fixture->handle, fixture->job, "model/irc-2021");
    const double kz = 2.01 * pow(15.0 / 1200, 2.0 / 7);
    const double q = 0.00256 * kz * 0.85 * 115 * 115;
    holds_line(report, "wind_suction", "main front", 0.6 * q * (3.0 + 0.18), 0.006, -1);
    const char *says = word_of(line_of(report, "wind_suction", "main front"), "says");
    assert_non_null(strstr(says, "zone 1 16.67 psf")); /* 0.6 q (1.5 + 0.18) */
    assert_non_null(strstr(says, "zones along edges are 4 ft wide"));
    cJSON_Delete(report);
    report = reckoned(fixture->handle, fixture->job, "model/irc-2018");
    const double older = 0.00256 * 0.70 * 0.85 * 115 * 115;
    holds_line(report, "wind_suction", "main front", 0.6 * older * (2.6 + 0.18), 0.006, -1);
    cJSON_Delete(report);
}

static void more_wind_never_pulls_less(void **state)
{
    const struct fixture *fixture = *state;
    cJSON *job = cJSON_Duplicate(fixture->job, true);
    double before = 0;
    for (double speed = 85; speed <= 220; speed += 27) {
        put_number(child(job, "site"), "wind_vult_mph", speed);
        cJSON *report = reckoned(fixture->handle, job, "model/irc-2021");
        const double psf = part_of(line_of(report, "wind_suction", "porch"), "exact");
        assert_true(psf > before);
        before = psf;
        cJSON_Delete(report);
    }
    cJSON_Delete(job);
}

/* The line is open, has no number, and says this. */
static void leaves_open(const cJSON *report, const char *name, const char *where, const char *words)
{
    const cJSON *line = line_of(report, name, where);
    assert_string_equal(word_of(line, "outcome"), "open");
    if (strstr(word_of(line, "says"), words) == NULL)
        fail_msg("%s says: %s", name, word_of(line, "says"));
    assert_true(cJSON_IsNull(cJSON_GetObjectItemCaseSensitive(line, "exact")));
    assert_true(cJSON_IsNull(cJSON_GetObjectItemCaseSensitive(line, "buy")));
}

static enum eavemark_status small_takeoff(const char *quantities, char **report, char **problems)
{
    struct temporary_home home;
    home_make(&home);
    small_law_write(&home);
    home_write(&home, "rules/takeoff.lua", quantities);
    eavemark *handle = eavemark_open(home.path);
    const struct eavemark_request request = {
        .name = "job.json", .text = SMALL_JOB, .length = strlen(SMALL_JOB)};
    const enum eavemark_status status = eavemark_takeoff(handle, &request, EAVEMARK_TEXT, report,
                                                         problems);
    eavemark_close(handle);
    home_remove(&home);
    return status;
}

/* Under the bare model code the place's climate table asks for the barrier, and the
 * job quotes it; as ice_barrier.reach demands it. */
static void the_climate_table_orders_too(void **state)
{
    const struct fixture *fixture = *state;
    cJSON *job = cJSON_Duplicate(fixture->job, true);
    cJSON *in_table = child(child(job, "site"), "ice_barrier_in_table");
    in_table->type = cJSON_True;
    cJSON *report = reckoned(fixture->handle, job, "model/irc-2021");
    holds_line(report, "ice_barrier_courses", "front eave", 2, 0, -1);
    holds_line(report, "ice_barrier_area", NULL, (80 + 80 + 36) * 3, 0.05, -1);
    holds_line(report, "ice_barrier_rolls", NULL, 196, 0, 4);
    cJSON_Delete(report);
    report = reckoned(fixture->handle, job, "us-co/denver"); /* lets one-family houses off */
    assert_string_equal(word_of(line_of(report, "ice_barrier_rolls", NULL), "outcome"),
                        "not_applicable");
    cJSON_Delete(report);
    cJSON_DeleteItemFromObjectCaseSensitive(child(job, "site"), "ice_barrier_in_table");
    report = reckoned(fixture->handle, job, "model/irc-2021");
    leaves_open(report, "ice_barrier_rolls", NULL, "/site/ice_barrier_in_table");
    cJSON_Delete(report);
    cJSON_Delete(job);
}

/* Panels go over boards, and over all of them; 1,289.23 sq ft, 1,418.2 with waste. */
static void boards_paneled_over_take_panels(void **state)
{
    const struct fixture *fixture = *state;
    cJSON *job = cJSON_Duplicate(fixture->job, true);
    cJSON *deck = cJSON_GetArrayItem(child(job, "decks"), 0);
    put_text(deck, "work", "paneled_over");
    put_number(deck, "over_panel_thickness_in", 0.5);
    cJSON_DeleteItemFromObjectCaseSensitive(deck, "replaced_sqft");
    cJSON *report = reckoned(fixture->handle, job, NULL);
    holds_line(report, "deck_panels", "panels", 1289.2, 0.05, 45); /* 44.3 */
    cJSON_Delete(report);
    put_text(deck, "kind", "spaced_board");
    put_number(deck, "board_width_in", 3.5);
    put_number(deck, "board_gap_in", 8.5); /* one board to the foot */
    report = reckoned(fixture->handle, job, NULL);
    holds_line(report, "deck_panels", "panels", 1289.2, 0.05, 45);
    /* 9 lines of nails, 9 each, on 40.29 panels. */
    holds_line(report, "deck_nails", "panels", 1289.23 / 32 * 81, 1, -1);
    cJSON_Delete(report);
    put_text(deck, "kind", "panel");
    put_text(deck, "work", "replaced");
    report = reckoned(fixture->handle, job, NULL);
    holds_line(report, "deck_panels", "panels", 1289.2, 0.05, 45);
    cJSON_Delete(report);
    put_number(child(job, "scope"), "roof_share_percent", 30);
    report = reckoned(fixture->handle, job, NULL);
    leaves_open(report, "deck_panels", "panels", "only a part of the roof is renewed");
    cJSON_Delete(report);
    cJSON_Delete(job);
}

static eavemark *county_that_drops(struct temporary_home *home, const char *drops)
{
    char text[1024];
    home_make(home);
    home_copy_all(home, "rules");
    home_copy_all(home, "jurisdictions/model");
    snprintf(text, sizeof(text),
             "jurisdiction 'drop' { title = 'Drop County', invented = true,"
             " follows = 'model/irc-2021', code = 'Drop Code', figures = {"
             " ['ice_barrier.required'] = { true, cite = '1' } }, drop = { %s } }\n",
             drops);
    home_write(home, "jurisdictions/drop.lua", text);
    eavemark *handle = eavemark_open(home->path);
    assert_non_null(handle);
    return handle;
}

/* What a place has dropped is not bought for its sake. */
static void a_dropped_rule_orders_nothing(void **state)
{
    const struct fixture *fixture = *state;
    struct temporary_home home;
    cJSON *job = cJSON_Duplicate(fixture->job, true);
    eavemark *handle = county_that_drops(
        &home,
        "['ice_barrier.kind'] = 'waived by 1', ['ice_barrier.reach'] = 'waived by 2',"
        " ['drip_edge.rake'] = 'waived by 3', ['fasteners.count'] = 'waived by 4',"
        " ['ventilation.net_free_area'] = 'waived by 5',"
        " ['slope.double_underlayment'] = 'waived by 6', ['underlayment.plies'] = 'waived by 7',"
        " ['underlayment.head_lap'] = 'waived by 8', ['valley.lining'] = 'waived by 9'");
    put_number(cJSON_GetArrayItem(child(job, "underlayments"), 0), "head_lap_in", 0);
    put_text(cJSON_GetArrayItem(child(child(job, "roof"), "valleys"), 0), "lining", "none");
    put_text(slope_of(job, 2), "pitch", "3:12");
    put_number(child(job, "covering"), "nails_printed", 3);
    put_number(child(job, "fasteners"), "per_shingle", 3);
    for (int i = 3; i < 9; i++) /* the rakes */
        child(cJSON_GetArrayItem(child(child(job, "roof"), "edges"), i), "drip_edge")->type =
            cJSON_False;
    cJSON *report = reckoned(handle, job, "drop");
    static const char *const GONE[][2] = {{"ice_barrier_courses", "front eave"},
                                          {"ice_barrier_area", NULL},
                                          {"ice_barrier_rolls", NULL},
                                          {"vents_short", "attic"},
                                          {"valley_lining", NULL}};
    for (size_t i = 0; i < sizeof(GONE) / sizeof(GONE[0]); i++) {
        const cJSON *line = line_of(report, GONE[i][0], GONE[i][1]);
        assert_string_equal(word_of(line, "outcome"), "not_applicable");
        assert_has(word_of(line, "says"), "is dropped by Drop County: waived by");
    }
    holds_line(report, "drip_edge_rake", NULL, 0, 0, 0);
    holds_line(report, "drip_edge_eave", NULL, 92, 0, 11);
    const double area = 1213.33 + 72 * sqrt(1 + 9.0 / 144);
    holds_line(report, "shingle_nails", NULL, area / 100 * 80 * 3, 1, -1);
    holds_line(report, "underlayment_rolls", "felt", area, 0.1, 4);
    cJSON_Delete(report);
    eavemark_close(handle);
    home_remove(&home);
    /* Where only how far is dropped, nobody knows here how much to buy. */
    handle = county_that_drops(&home, "['ice_barrier.reach'] = 'told in another way'");
    report = reckoned(handle, job, "drop");
    leaves_open(report, "ice_barrier_courses", "front eave", "told in another way");
    leaves_open(report, "ice_barrier_rolls", NULL, "told in another way");
    cJSON_Delete(report);
    eavemark_close(handle);
    home_remove(&home);
    cJSON_Delete(job);
}

/* In the high-velocity zone Florida lays other sheets than those that are carried. */
static void what_is_not_carried_is_not_ordered(void **state)
{
    const struct fixture *fixture = *state;
    cJSON *job = cJSON_Duplicate(fixture->job, true);
    put_text(cJSON_GetArrayItem(child(job, "underlayments"), 0), "kind", "D226_II");
    cJSON *report = reckoned(fixture->handle, job, "us-fl");
    assert_string_equal(word_of(line_of(report, "underlayment_rolls", "felt"), "outcome"), "given");
    cJSON_Delete(report);
    child(child(job, "site"), "high_velocity_hurricane_zone")->type = cJSON_True;
    report = reckoned(fixture->handle, job, "us-fl");
    leaves_open(report, "underlayment_rolls", "felt",
                "Not carried here: in the high-velocity zone");
    leaves_open(report, "drip_edge_eave", NULL, "Not carried here");
    holds_line(report, "shingle_nails", NULL, 12.8923 * 80 * 6, 1, 1);
    cJSON_Delete(report);
    cJSON_Delete(job);
}

/* What is printed of a division must come to what is bought. */
static void printed_quotients_round_as_bought(void **state)
{
    (void)state;
    static const struct {
        const char *exact, *says;
    } AMOUNTS[] = {
        {"30.03", "30.03 squares / 6 squares each = 5.005, so 6 rolls"},
        {"30.6", "= 5.10, so 6 rolls"},
        {"29.97", "so 5 rolls"},
        {"30.000006", "= 5.000001, so 6 rolls"},
        {"30", "= 5.00, so 5 rolls"},
    };
    for (size_t i = 0; i < sizeof(AMOUNTS) / sizeof(AMOUNTS[0]); i++) {
        char quantity[256], *report = NULL, *problems = NULL;
        snprintf(quantity, sizeof(quantity),
                 "quantity 'a' { title = 'A', amount = function()"
                 " return amount { exact = %s, unit = 'squares', each = 6, buy = 'rolls' } end }\n",
                 AMOUNTS[i].exact);
        assert_int_equal(small_takeoff(quantity, &report, &problems), EAVEMARK_NOTHING_FAILED);
        assert_has(report, AMOUNTS[i].says);
        free(report);
        free(problems);
    }
}

/* Crews count whole squares: a hundredth of one is no day's work. */
static void days_go_by_whole_squares(void **state)
{
    const struct fixture *fixture = *state;
    cJSON *job = cJSON_Duplicate(fixture->job, true);
    put_number(slope_of(job, 0), "eave_ft", 153.068); /* 30.04 squares in all */
    put_number(slope_of(job, 0), "ridge_ft", 153.068);
    put_number(cJSON_GetArrayItem(child(job, "attics"), 0), "area_sqft", 2000);
    cJSON *report = reckoned(fixture->handle, job, NULL);
    holds_line(report, "squares", NULL, 30.04, 0.005, -1);
    holds_line(report, "crew_days", NULL, 30, 0, 5);
    cJSON_Delete(report);
    cJSON_Delete(job);
}

/* A village that wants it 36 in inside the wall along all edges and in valleys.
 * Eaves: (12 + 6 + 36) x 1.0833 = 58.5 in, two courses of 40 ft twice; the porch's
 * 75.9 in, three of 12 ft. Rakes: 6 + 6 + 36 = 48 in level, two courses of 68 ft.
 * And 12 ft of valley. */
static void ice_barrier_at_all_edges(void **state)
{
    const struct fixture *fixture = *state;
    cJSON *job = cJSON_Duplicate(fixture->job, true), *edge = NULL;
    cJSON_ArrayForEach(edge, child(child(job, "roof"), "edges")) {
        if (strcmp(child(edge, "kind")->valuestring, "rake") != 0)
            continue;
        put_number(edge, "overhang_in", 6);
        put_number(edge, "wall_thickness_in", 6);
    }
    cJSON *report = reckoned(fixture->handle, job, "us-il/kildeer");
    holds_line(report, "ice_barrier_area", NULL, (80 + 80 + 36 + 2 * 68 + 12) * 3.0, 0.05, -1);
    holds_line(report, "ice_barrier_rolls", NULL, 344, 0, 6); /* 378.4 / 66.7 */
    cJSON_Delete(report);
    cJSON_Delete(job);
    /* Not known what stands under the rakes: open, not the eaves alone. */
    report = reckoned(fixture->handle, fixture->job, "us-il/kildeer");
    leaves_open(report, "ice_barrier_rolls", NULL, "/roof/edges/3/wall_thickness_in");
    cJSON_Delete(report);
}

/* An eave or rake that is not listed would be missing from what is bought. */
static void edges_not_listed_are_no_edges_of_no_length(void **state)
{
    const struct fixture *fixture = *state;
    cJSON *job = cJSON_Duplicate(fixture->job, true);
    cJSON *edges = child(child(job, "roof"), "edges");
    cJSON_DeleteItemFromArray(edges, 8); /* porch right rake */
    cJSON_DeleteItemFromArray(edges, 1); /* back eave */
    cJSON *report = reckoned(fixture->handle, job, "example/frostmere");
    const char *eaves = "the eaves listed for main back come to 0 ft of 40 ft";
    leaves_open(report, "starter", NULL, eaves);
    leaves_open(report, "drip_edge_eave", NULL, eaves);
    leaves_open(report, "ice_barrier_area", NULL, eaves);
    leaves_open(report, "ice_barrier_rolls", NULL, eaves);
    leaves_open(report, "drip_edge_rake", NULL, "only 1 of the sides of porch is listed");
    holds_line(report, "shingle_bundles", NULL, 1289.2, 0.05, 43);
    cJSON_Delete(report);
    cJSON_Delete(job);
}

/* The place asks for one ply even where the job plans none. */
static void plies_are_those_asked_for_or_more(void **state)
{
    const struct fixture *fixture = *state;
    cJSON *job = cJSON_Duplicate(fixture->job, true);
    cJSON *felt = cJSON_GetArrayItem(child(job, "underlayments"), 0);
    put_number(felt, "plies", 0);
    cJSON *report = reckoned(fixture->handle, job, "model/irc-2021");
    holds_line(report, "underlayment_rolls", "felt", 1365.1, 0.05, 4);
    cJSON_Delete(report);
    put_number(felt, "plies", 3);
    report = reckoned(fixture->handle, job, "model/irc-2021");
    holds_line(report, "underlayment_rolls", "felt", 3 * 1365.07, 0.1, 11);
    cJSON_Delete(report);
    /* Lapped 19 in, each sheet of 36 shows 17: that is two plies, and not to be doubled. */
    put_number(felt, "plies", 2);
    put_number(felt, "head_lap_in", 19);
    report = reckoned(fixture->handle, job, "model/irc-2021");
    holds_line(report, "underlayment_rolls", "felt", 1289.2 * 36 / 17, 0.5, 7);
    cJSON_Delete(report);
    cJSON_DeleteItemFromObjectCaseSensitive(felt, "plies");
    report = reckoned(fixture->handle, job, "model/irc-2021");
    leaves_open(report, "underlayment_rolls", "felt", "/underlayments/0/plies");
    cJSON_Delete(report);
    cJSON_Delete(job);
}

/* Where the wind asks for a wider lap, sheets of the usual one would not reach. Lapped
 * 2 in the sheet is 1,365.07: x 34/36 net, x 36/32 lapped 4 in. */
static void sheets_lap_as_the_wind_asks(void **state)
{
    const struct fixture *fixture = *state;
    cJSON *job = cJSON_Duplicate(fixture->job, true);
    put_number(child(job, "site"), "wind_vult_mph", 140);
    cJSON *report = reckoned(fixture->handle, job, "model/irc-2018");
    holds_line(report, "underlayment_rolls", "felt", 1365.07 * 34 / 32, 0.1, 4);
    cJSON_Delete(report);
    put_number(cJSON_GetArrayItem(child(job, "underlayments"), 0), "head_lap_in", 6);
    report = reckoned(fixture->handle, job, "model/irc-2018"); /* wide enough for any wind */
    holds_line(report, "underlayment_rolls", "felt", 1365.07 * 34 / 30, 0.1, 4);
    cJSON_Delete(report);
    cJSON_Delete(job);
}

/* From 2021 on the wind asks for two plies: lapped 19 in, or half the sheet and 2 in,
 * over a strip along 92 ft of eaves; over taped joints one does. */
static void sheets_are_doubled_for_the_wind(void **state)
{
    const struct fixture *fixture = *state;
    cJSON *job = cJSON_Duplicate(fixture->job, true);
    cJSON *site = child(job, "site");
    const double net = 1365.07 * 34 / 36;
    cJSON_DeleteItemFromObjectCaseSensitive(site, "wind_design_required");
    cJSON *report = reckoned(fixture->handle, job, "model/irc-2021");
    leaves_open(report, "underlayment_rolls", "felt", "/site/wind_design_required");
    cJSON_Delete(report);
    assert_non_null(cJSON_AddTrueToObject(site, "wind_design_required"));
    report = reckoned(fixture->handle, job, "model/irc-2021");
    holds_line(report, "underlayment_rolls", "felt", net * 36 / 17 + 92 * 19.0 / 12, 0.1, 8);
    cJSON_Delete(report);
    report = reckoned(fixture->handle, job, "model/irc-2024");
    holds_line(report, "underlayment_rolls", "felt", net * 36 / 16 + 92 * 18.0 / 12, 0.1, 8);
    cJSON_Delete(report);
    cJSON *felt = cJSON_GetArrayItem(child(job, "underlayments"), 0);
    cJSON_DeleteItemFromObjectCaseSensitive(felt, "deck_joints_taped");
    report = reckoned(fixture->handle, job, "model/irc-2021");
    leaves_open(report, "underlayment_rolls", "felt", "/underlayments/0/deck_joints_taped");
    cJSON_Delete(report);
    assert_non_null(cJSON_AddTrueToObject(felt, "deck_joints_taped"));
    cJSON_DeleteItemFromObjectCaseSensitive(felt, "tape_width_in");
    put_number(felt, "tape_width_in", 4);
    report = reckoned(fixture->handle, job, "model/irc-2021");
    holds_line(report, "underlayment_rolls", "felt", 1365.07, 0.1, 4);
    cJSON_Delete(report);
    cJSON_Delete(job);
}

/* Of a sheet that is all lap nothing shows: no number of rolls would do. */
static void sheets_that_are_all_lap(void **state)
{
    const struct fixture *fixture = *state;
    cJSON *job = cJSON_Duplicate(fixture->job, true);
    cJSON *felt = cJSON_GetArrayItem(child(job, "underlayments"), 0);
    put_number(felt, "head_lap_in", 36); /* of a roll as wide as rolls commonly are */
    put_number(child(job, "ice_barrier"), "lap_in", 24);
    cJSON *report = reckoned(fixture->handle, job, "example/frostmere");
    leaves_open(report, "underlayment_rolls", "felt", "lapped 36 in");
    cJSON_Delete(report);
    char *text = NULL, *problems = NULL;
    put_number(felt, "roll_width_in", 36.5);
    put_number(child(job, "ice_barrier"), "roll_width_in", 24);
    assert_int_equal(reckon(fixture->handle, job, NULL, EAVEMARK_TEXT, &text, &problems),
                     EAVEMARK_UNUSABLE);
    assert_has(problems, "/underlayments/0/head_lap_in: cannot be: a lap of 36 in leaves");
    assert_has(problems, "/ice_barrier/lap_in: cannot be: a lap of 24 in leaves");
    free(text);
    free(problems);
    cJSON_Delete(job);
}

/* Quantities are those of a whole roof; of a part they would be too much. */
static void a_part_of_the_roof_is_not_the_whole(void **state)
{
    const struct fixture *fixture = *state;
    cJSON *job = cJSON_Duplicate(fixture->job, true);
    put_number(child(job, "scope"), "roof_share_percent", 30);
    cJSON *report = reckoned(fixture->handle, job, "example/frostmere");
    static const char *const LINES[] = {"shingle_bundles",
                                        "starter",
                                        "ridge_cap",
                                        "shingle_nails",
                                        "shingle_nail_weight",
                                        "ice_barrier_area",
                                        "ice_barrier_rolls",
                                        "drip_edge_eave",
                                        "drip_edge_rake",
                                        "valley_lining",
                                        "tear_off_weight",
                                        "tear_off_loads",
                                        "crew_days"};
    for (size_t i = 0; i < sizeof(LINES) / sizeof(LINES[0]); i++)
        leaves_open(report, LINES[i], NULL, "only a part of the roof is renewed");
    leaves_open(report, "underlayment_rolls", "felt", "only a part of the roof is renewed");
    holds_line(report, "squares", NULL, 12.89, 0.005, -1);
    holds_line(report, "deck_panels", "panels", 96, 0, 4);
    cJSON_Delete(report);
    cJSON_DeleteItemFromObjectCaseSensitive(child(job, "scope"), "roof_share_percent");
    put_text(child(job, "scope"), "extent", "repair");
    report = reckoned(fixture->handle, job, "example/frostmere");
    leaves_open(report, "shingle_bundles", NULL, "only a part of the roof is renewed");
    cJSON_Delete(report);
    put_text(child(job, "scope"), "extent", "reroof");
    put_text(cJSON_GetArrayItem(child(child(job, "roof"), "slopes"), 0), "gets",
             "modified_bitumen");
    report = reckoned(fixture->handle, job, "example/frostmere");
    leaves_open(report, "other_covering", "main front", "how much of modified bitumen");
    /* 606.67 + 75.89 = 682.56; + 10 % = 750.8; / 33.3 = 22.5 */
    holds_line(report, "shingle_bundles", NULL, 682.56, 0.05, 23);
    holds_line(report, "tear_off_weight", NULL, 1501.6, 0.1, -1); /* 6.8256 x 220 */
    cJSON_Delete(report);
    cJSON_Delete(job);
}

/* Lengths that the job says twice, in sum and by edge, and not alike. */
static void lengths_that_contradict_edges(void **state)
{
    static const struct {
        const char *key, *edges, *says;
        double value;
    } BAD[] = {
        {"hip_ft", "hip", "/roof/hip_ft: cannot be: 9 ft, but the hips listed", 9},
        {"valley_ft", "valley", "/roof/valley_ft: cannot be: 9 ft, but the valleys listed", 9},
        {"valley_ft", NULL, "/roof/valleys: cannot be: lists 1 valley, but /roof/valley_ft", 0},
    };
    const struct fixture *fixture = *state;
    for (size_t i = 0; i < sizeof(BAD) / sizeof(BAD[0]); i++) {
        cJSON *job = cJSON_Duplicate(fixture->job, true);
        put_number(child(job, "roof"), BAD[i].key, BAD[i].value);
        for (int side = 0; BAD[i].edges != NULL && side < 2; side++) {
            cJSON *edge = cJSON_CreateObject();
            put_text(edge, "kind", BAD[i].edges);
            put_number(edge, "length_ft", 20);
            cJSON_AddItemToArray(child(child(job, "roof"), "edges"), edge);
        }
        char *text = NULL, *problems = NULL;
        assert_int_equal(reckon(fixture->handle, job, NULL, EAVEMARK_TEXT, &text, &problems),
                         EAVEMARK_UNUSABLE);
        assert_has(problems, BAD[i].says);
        free(text);
        free(problems);
        cJSON_Delete(job);
    }
    cJSON *job = cJSON_Duplicate(fixture->job, true);
    cJSON_ReplaceItemInObject(child(job, "roof"), "valleys", cJSON_CreateArray());
    char *text = NULL, *problems = NULL;
    assert_int_equal(reckon(fixture->handle, job, NULL, EAVEMARK_TEXT, &text, &problems),
                     EAVEMARK_UNUSABLE);
    assert_has(problems, "/roof/valleys: cannot be: lists none, but /roof/valley_ft says 12 ft");
    free(text);
    free(problems);
    cJSON_Delete(job);
}

static void more_waste_never_buys_less(void **state)
{
    const struct fixture *fixture = *state;
    cJSON *job = cJSON_Duplicate(fixture->job, true), *before = NULL;
    for (double waste = 0; waste <= 60; waste += 7.5) {
        put_number(child(job, "takeoff"), "waste_percent", waste);
        cJSON *report = reckoned(fixture->handle, job, "example/frostmere");
        const cJSON *line = NULL;
        int index = 0;
        cJSON_ArrayForEach(line, child(report, "quantities")) {
            const double exact = part_of(line, "exact"), bought = part_of(line, "buy");
            const cJSON *was = cJSON_GetArrayItem(
                before == NULL ? NULL : child(before, "quantities"), index++);
            const cJSON *each = cJSON_GetObjectItemCaseSensitive(
                cJSON_GetObjectItemCaseSensitive(line, "buy"), "each");
            if (!isnan(bought) && cJSON_IsNumber(each))
                assert_true(bought * each->valuedouble >= exact - 0.06); /* as rounded */
            if (was != NULL && !isnan(bought))
                assert_true(bought >= part_of(was, "buy"));
        }
        cJSON_Delete(before);
        before = report;
    }
    cJSON_Delete(before);
    cJSON_Delete(job);
}

/* Whatever a job leaves out, nothing breaks and nothing is printed that is no
 * number. */
static void try_without(const struct fixture *fixture, const cJSON *job, cJSON *fact, size_t *tried)
{
    const int type = fact->type;
    fact->type = cJSON_NULL; /* null counts as absent */
    char *report = NULL, *problems = NULL;
    const enum eavemark_status status = reckon(fixture->handle, job, "example/frostmere",
                                               EAVEMARK_TEXT, &report, &problems);
    if (status == EAVEMARK_BROKEN)
        fail_msg("without %s: broken: %s\n%s", fact->string, problems,
                 report == NULL ? "" : strstr(report, "-- broken"));
    if (report != NULL) {
        assert_null(strstr(report, "nan"));
        assert_null(strstr(report, " inf"));
        (*tried)++;
    }
    free(report);
    free(problems);
    fact->type = type;
}

static void walk(const struct fixture *fixture, const cJSON *job, const cJSON *node, size_t *tried)
{
    for (cJSON *fact = node->child; fact != NULL; fact = fact->next) {
        if (cJSON_IsObject(node))
            try_without(fixture, job, fact, tried);
        walk(fixture, job, fact, tried);
    }
}

static void a_fact_left_out_breaks_nothing(void **state)
{
    const struct fixture *fixture = *state;
    cJSON *job = cJSON_Duplicate(fixture->job, true);
    size_t tried = 0;
    walk(fixture, job, job, &tried);
    printf("%zu facts left out, one at a time\n", tried);
    assert_true(tried > 150);
    cJSON_Delete(job);
}

static void the_text_fits_a_terminal(void **state)
{
    const struct fixture *fixture = *state;
    char *report = NULL, *problems = NULL;
    assert_int_equal(reckon(fixture->handle, fixture->job, "example/frostmere", EAVEMARK_TEXT,
                            &report, &problems),
                     EAVEMARK_NOTHING_FAILED);
    for (const char *line = report; *line != '\0'; line += strcspn(line, "\n") + 1)
        assert_true(strcspn(line, "\n") <= 80);
    assert_has(report, "takeoff of a reroof");
    assert_has(report, "INVENTED PLACE");
    assert_has(report, "buy         43 bundles of 33.3 sq ft");
    assert_has(report, "exact       1,289.2 sq ft, and 10 % for waste");
    assert_has(report, "42.54, so 43 bundles");
    assert_null(strstr(report, "-- open"));
    free(report);
    free(problems);
}

static void a_job_that_cannot_be_used(void **state)
{
    const struct fixture *fixture = *state;
    char *report = NULL, *problems = NULL;
    cJSON *job = cJSON_Duplicate(fixture->job, true);
    put_number(child(job, "takeoff"), "waste_percent", 61);
    put_number(child(job, "takeoff"), "wast", 1);
    assert_int_equal(reckon(fixture->handle, job, NULL, EAVEMARK_TEXT, &report, &problems),
                     EAVEMARK_UNUSABLE);
    assert_null(report);
    assert_has(problems, "/takeoff/waste_percent");
    assert_has(problems, "/takeoff/wast");
    free(problems);
    cJSON_Delete(job);
}

/* Quantities that go wrong --------------------------------------------------------- */

static void one_broken_quantity_spares_the_others(void **state)
{
    (void)state;
    char *report = NULL, *problems = NULL;
    const char *quantities =
        "quantity 'a' { title = 'A', amount = function() return 7 end }\n"
        "quantity 'b' { title = 'B', amount = function() return amount { exact = 0/0,"
        " unit = 'ft' } end }\n"
        "quantity 'c' { title = 'C', amount = function() return amount { exact = 1, unit = 'ft',"
        " each = 0, buy = 'rolls' } end }\n"
        "quantity 'd' { title = 'D', amount = function() return amount { exact = 1, unit = 'ft',"
        " wast_percent = 1 } end }\n"
        "quantity 'e' { title = 'E', amount = function() while true do end end }\n"
        "quantity 'f' { title = 'F', amount = function() return amount { exact = 10, unit = 'ft',"
        " waste_percent = 10, each = 4, buy = 'rolls' } end }\n"
        "quantity 'g' { title = 'G', applies = function() return false, 'no reason' end,"
        " amount = function() return nil end }\n";
    assert_int_equal(small_takeoff(quantities, &report, &problems), EAVEMARK_BROKEN);
    assert_string_equal(problems, "");
    assert_has(report, "5 broken, 1 given, 0 open, 1 not applicable");
    assert_has(report, "amount must return");
    assert_has(report, "exact is out of range");
    assert_has(report, "what one holds");
    assert_has(report, "wast_percent");
    assert_has(report, "buy         3 rolls of 4 ft");
    assert_has(report, "no reason");
    free(report);
    free(problems);
}

static void declarations_that_make_no_sense(void **state)
{
    (void)state;
    static const struct {
        const char *quantities, *message;
    } BAD[] = {
        {"quantity 'a' { title = 'A' }", "has no amount function"},
        {"quantity 'a' { amount = function() end }", "has no title"},
        {"quantity 'a' { title = 'A', amont = 1 }", "did you mean \"amount\"?"},
        {"quantity 'a' { title = 'A', per = 'nowhere', amount = function() end }", "is not a list"},
        {"quantity 'a' { title = 'A', amount = function() end }\n"
         "quantity 'a' { title = 'A', amount = function() end }",
         "is already a quantity"},
    };
    for (size_t i = 0; i < sizeof(BAD) / sizeof(BAD[0]); i++) {
        char *report = NULL, *problems = NULL;
        assert_int_equal(small_takeoff(BAD[i].quantities, &report, &problems), EAVEMARK_BROKEN);
        assert_null(report);
        assert_has(problems, "rules/takeoff.lua:");
        assert_has(problems, BAD[i].message);
        free(problems);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(the_common_quantities),
        cmocka_unit_test(two_plies_only_where_the_slope_asks),
        cmocka_unit_test(the_place_drives_the_figures),
        cmocka_unit_test(short_vents_say_what_to_buy),
        cmocka_unit_test(openings_without_a_label),
        cmocka_unit_test(what_a_label_says_goes_first),
        cmocka_unit_test(mends_name_what_to_buy),
        cmocka_unit_test(waste_that_is_not_stated_is_the_usual),
        cmocka_unit_test(the_climate_table_orders_too),
        cmocka_unit_test(boards_paneled_over_take_panels),
        cmocka_unit_test(a_dropped_rule_orders_nothing),
        cmocka_unit_test(what_is_not_carried_is_not_ordered),
        cmocka_unit_test(printed_quotients_round_as_bought),
        cmocka_unit_test(days_go_by_whole_squares),
        cmocka_unit_test(ice_barrier_at_all_edges),
        cmocka_unit_test(wind_by_zone),
        cmocka_unit_test(more_wind_never_pulls_less),
        cmocka_unit_test(edges_not_listed_are_no_edges_of_no_length),
        cmocka_unit_test(plies_are_those_asked_for_or_more),
        cmocka_unit_test(sheets_lap_as_the_wind_asks),
        cmocka_unit_test(sheets_are_doubled_for_the_wind),
        cmocka_unit_test(sheets_that_are_all_lap),
        cmocka_unit_test(a_part_of_the_roof_is_not_the_whole),
        cmocka_unit_test(lengths_that_contradict_edges),
        cmocka_unit_test(more_waste_never_buys_less),
        cmocka_unit_test(a_fact_left_out_breaks_nothing),
        cmocka_unit_test(the_text_fits_a_terminal),
        cmocka_unit_test(a_job_that_cannot_be_used),
        cmocka_unit_test(one_broken_quantity_spares_the_others),
        cmocka_unit_test(declarations_that_make_no_sense),
    };
    return cmocka_run_group_tests_name("takeoff through the library", tests, start, stop);
}
