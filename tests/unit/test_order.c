/* The order for two houses, each line worked out by hand: plain geometry, a square of
 * 100 sq ft, and the package each line names. The order as CSV, and what it does with
 * names that a spreadsheet would take for formulas. */
#include "include/eavemark.h"
#include "support/small_law.h"

#include <cjson/cJSON.h>

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdlib.h>
#include <string.h>

#include <cmocka.h>

#define COMMON                                                                      \
    "\"eavemark_job\":1,\"date\":\"2026-03-02\",\"stage\":\"deck\","                \
    "\"jurisdiction\":\"model/irc-2021\",\"scope\":{\"method\":\"tear-off\","       \
    "\"extent\":\"reroof\"},\"existing\":{\"layers\":1,\"layers_removed\":1},"      \
    "\"drip_edge\":{\"lap_in\":2},\"takeoff\":{\"waste_percent\":10},"              \
    "\"fasteners\":{\"kind\":\"nail\",\"metal\":\"galvanized\",\"length_in\":1.25," \
    "\"per_shingle\":4}"

/* 40 by 26 ft, 6:12, eaves of 1 ft and rakes of 6 in: two planes of 41 by 14 ft level. */
static const char GABLE[] =
    "{" COMMON ",\"job\":\"Gable of three-tabs, invented\","
    "\"site\":{\"ice_barrier_in_table\":false,\"wind_vult_mph\":105,"
    "\"wind_design_required\":false,\"exposure\":\"B\"},"
    "\"covering\":{\"kind\":\"asphalt_shingle\",\"grade\":\"three_tab\",\"nails_printed\":4,"
    "\"strip_length_in\":36,\"exposure_printed_in\":5},"
    "\"roof\":{\"footprint\":{\"form\":\"gable\",\"length_ft\":40,\"width_ft\":26,"
    "\"pitch\":\"6:12\",\"eave_overhang_in\":12,\"rake_overhang_in\":6,"
    "\"planes\":{\"deck\":\"deck\",\"underlayment\":\"felt\"},"
    "\"eaves\":{\"drip_edge\":true},\"rakes\":{\"drip_edge\":true}},"
    "\"ridge_slot\":\"open\",\"chimneys\":[],"
    "\"walls\":[{\"name\":\"garage wall\",\"kind\":\"sidewall\",\"length_ft\":10,"
    "\"flashing_is\":\"new\",\"flashing\":\"step\",\"eave_ends_here\":false}],"
    "\"penetrations\":["
    "{\"name\":\"kitchen vent\",\"kind\":\"pipe\",\"width_in\":2,\"flashing_is\":\"new\"},"
    "{\"name\":\"bath vent\",\"kind\":\"pipe\",\"width_in\":2,\"flashing_is\":\"new\"},"
    "{\"name\":\"soil pipe\",\"kind\":\"pipe\",\"width_in\":4,\"flashing_is\":\"new\"},"
    "{\"name\":\"flue\",\"kind\":\"vent\",\"width_in\":6,\"flashing_is\":\"reused\"}]},"
    "\"decks\":[{\"name\":\"deck\",\"kind\":\"panel\",\"work\":\"kept\",\"renailed\":false,"
    "\"replaced_sqft\":0}],"
    "\"underlayments\":[{\"name\":\"felt\",\"kind\":\"D226_I\",\"plies\":1,\"head_lap_in\":2,"
    "\"fastener\":\"nail\"}],\"ice_barrier\":{\"kind\":\"none\"},"
    "\"rot\":["
    "{\"name\":\"tail 1\",\"member\":\"rafter_tail\",\"length_ft\":2,\"repair\":\"new_piece\","
    "\"stock\":\"2x6\"},"
    "{\"name\":\"tail 2\",\"member\":\"rafter_tail\",\"length_ft\":2,\"repair\":\"sistered\","
    "\"sister_past_ft\":4,\"stock\":\"2x6\"},"
    "{\"name\":\"front fascia\",\"member\":\"fascia\",\"length_ft\":22,"
    "\"repair\":\"new_piece\",\"stock\":\"1x8\"},"
    "{\"name\":\"knot\",\"member\":\"fascia\",\"length_ft\":1,\"repair\":\"filled\"}],"
    "\"attics\":[{\"name\":\"attic\",\"vented\":true,\"area_sqft\":1040,\"vents\":["
    "{\"name\":\"ridge vent\",\"kind\":\"ridge\",\"place\":\"high\",\"length_ft\":38,"
    "\"nfa_sqin_per_ft\":18}]}]}";

/* 48 by 30 ft, 4:12, eaves of 18 in: 51 by 33 ft level, a ridge of 18 ft. */
static const char HIP[] =
    "{" COMMON ",\"job\":\"Hip of laminated shingles, invented\","
    "\"site\":{\"ice_barrier_in_table\":true,\"wind_vult_mph\":105,"
    "\"wind_design_required\":false,\"exposure\":\"B\"},"
    "\"covering\":{\"kind\":\"asphalt_shingle\",\"grade\":\"laminated\",\"nails_printed\":4,"
    "\"strip_length_in\":39.375,\"exposure_printed_in\":5.625},"
    "\"roof\":{\"footprint\":{\"form\":\"hip\",\"length_ft\":48,\"width_ft\":30,"
    "\"pitch\":\"4:12\",\"eave_overhang_in\":18,"
    "\"planes\":{\"deck\":\"deck\",\"underlayment\":\"sheet\"},"
    "\"eaves\":{\"drip_edge\":true,\"wall_thickness_in\":6,\"over_heated_space\":true}},"
    "\"walls\":[],\"chimneys\":[],\"penetrations\":[]},"
    "\"decks\":[{\"name\":\"deck\",\"kind\":\"panel\",\"work\":\"partly_replaced\","
    "\"renailed\":false,\"replaced_sqft\":100,\"thickness_in\":0.46875,\"panel_wood\":\"osb\","
    "\"span_rating\":\"32/16\",\"support_spacing_in\":24,\"seen_from_below\":true,"
    "\"nails\":{\"kind\":\"common_8d\",\"edge_spacing_in\":6,\"field_spacing_in\":12}}],"
    "\"underlayments\":[{\"name\":\"sheet\",\"kind\":\"D8257\",\"plies\":1,\"head_lap_in\":4,"
    "\"fastener\":\"cap_nail\",\"lap_spacing_in\":12,\"field_spacing_in\":12}],"
    "\"ice_barrier\":{\"kind\":\"self_adhered\"},\"rot\":[],"
    "\"attics\":[{\"name\":\"attic\",\"vented\":true,\"area_sqft\":1440,\"vents\":["
    "{\"name\":\"roof vents\",\"kind\":\"box\",\"place\":\"high\",\"left_as_is\":false,"
    "\"count\":8,\"nfa_each_sqin\":50},"
    "{\"name\":\"soffit vents\",\"kind\":\"soffit_unit\",\"place\":\"low\",\"count\":20,"
    "\"nfa_each_sqin\":50}]}]}";

struct wanted {
    double count;
    const char *unit, *item, *goes_on;
};

static int start(void **state)
{
    *state = eavemark_open(EAVEMARK_HOME_DIR);
    return *state == NULL ? -1 : 0;
}

static int stop(void **state)
{
    eavemark_close(*state);
    return 0;
}

static char *order_of(eavemark *handle, const char *job, enum eavemark_form form)
{
    char *report = NULL, *problems = NULL;
    const struct eavemark_request request = {
        .name = "job.json", .text = job, .length = strlen(job)};
    if (eavemark_order(handle, &request, form, &report, &problems) != EAVEMARK_NOTHING_FAILED)
        fail_msg("no order: %s", problems);
    free(problems);
    return report;
}

static const char *word_of(const cJSON *line, const char *key)
{
    const cJSON *word = cJSON_GetObjectItemCaseSensitive(line, key);
    return cJSON_IsString(word) ? word->valuestring : "";
}

static void holds_line(const cJSON *line, const struct wanted *wanted)
{
    if (strcmp(word_of(line, "item"), wanted->item) != 0)
        fail_msg("found %s, wanted %s", word_of(line, "item"), wanted->item);
    const double count = cJSON_GetObjectItemCaseSensitive(line, "count")->valuedouble;
    if (count != wanted->count)
        fail_msg("%s: found %g, wanted %g", wanted->item, count, wanted->count);
    assert_string_equal(word_of(line, "unit"), wanted->unit);
    assert_string_equal(word_of(line, "for"), wanted->goes_on);
}

/* The whole order; of it this quantity alone is left uncounted (NULL: none). */
static void orders_but(eavemark *handle, const char *job, const struct wanted *wanted, int count,
                       const char *uncounted)
{
    char *report = order_of(handle, job, EAVEMARK_JSON_LINE);
    cJSON *tree = cJSON_Parse(report);
    const cJSON *order = cJSON_GetObjectItemCaseSensitive(tree, "order");
    assert_non_null(order);
    for (int i = 0; i < count && i < cJSON_GetArraySize(order); i++)
        holds_line(cJSON_GetArrayItem(order, i), &wanted[i]);
    assert_int_equal(cJSON_GetArraySize(order), count);
    const cJSON *line = NULL;
    cJSON_ArrayForEach(line, cJSON_GetObjectItemCaseSensitive(tree, "quantities"))
        if (word_of(line, "heading")[0] != '\0' && strcmp(word_of(line, "outcome"), "open") == 0
            && (uncounted == NULL || strcmp(word_of(line, "name"), uncounted) != 0))
            fail_msg("%s is open: %s", word_of(line, "name"), word_of(line, "says"));
    cJSON_Delete(tree);
    free(report);
}

static void orders(eavemark *handle, const char *job, const struct wanted *wanted, int count)
{
    orders_but(handle, job, wanted, count, NULL);
}

static void a_gable_of_three_tabs(void **state)
{
    static const struct wanted ORDER[] = {
        /* 2 x 41 x 14 x 1.1180 = 1,283.5 sq ft; + 10 % = 1,411.9; / 33.3 = 42.4 */
        {43, "bundles", "Three-tab shingles, 3 bundles to the square", "all planes"},
        /* eaves 2 x 41 = 82 ft, + 10 % = 90.2; a bundle of 27 strips of 3 ft makes 81 */
        {2, "bundles", "Three-tab shingles, to cut for starter", "eaves"},
        /* ridge 41 ft, + 10 % = 45.1; 35 ft to the bundle */
        {2, "bundles", "Three-tab shingles, to cut for caps", "ridge"},
        /* 12.835 squares x 80 strips x 4 = 4,107; + 10 % = 4,518 of a box of 7,200 */
        {1, "box", "Coil roofing nails, 1 1/4 in galvanized", "shingles"},
        /* 1,283.5 x 36 / 34 = 1,359.0 sq ft; + 10 % = 1,494.9; / 432 = 3.46 */
        {4, "rolls", "No. 15 felt, ASTM D226 type I, 36 in by 144 ft", "all planes"},
        /* eaves 82 ft, rakes 4 x 14 x 1.1180 = 62.6; 144.6 + 10 % = 159.1; / 9 ft 10 in */
        {17, "pieces", "Drip edge, 10 ft pieces", "eaves, rakes"},
        /* 10 ft x 12 / 5 in = 24 courses, and one: 25; + 10 % = 27.5 */
        {28, "pieces", "Step flashing", "garage wall"},
        {2, "pieces", "Pipe flashing, for a pipe of 2 in", "kitchen vent, bath vent"},
        {1, "piece", "Pipe flashing, for a pipe of 4 in", "soil pipe"},
        /* tails of 2 ft and of 2 + 4 ft: one of 6 ft out of each 8 ft */
        {2, "pieces", "2x6 for rafter tails, 8 ft long", "tail 1, tail 2"},
        /* 22 ft + 10 % = 24.2 out of 20 ft boards */
        {2, "pieces", "1x8 for fascia, 20 ft long", "front fascia"},
        /* 38 / 4 = 9.5 */
        {10, "pieces", "Ridge vent, 4 ft pieces, 18 sq in per ft free or more", "ridge"},
    };
    orders(*state, GABLE, ORDER, sizeof(ORDER) / sizeof(ORDER[0]));
}

static void a_hip_of_laminated_shingles(void **state)
{
    static const struct wanted ORDER[] = {
        /* 51 x 33 x 1.0541 = 1,774.0 sq ft; + 10 % = 1,951.4; / 33.3 = 58.5 */
        {59, "bundles", "Laminated shingles, 3 bundles to the square", "all planes"},
        /* 2 x (51 + 33) = 168 ft, + 10 % = 184.8; / 100 */
        {2, "bundles", "Starter strip", "eaves"},
        /* ridge 18 ft; a hip is 17.44 in to the foot of run on the framing square's table at
         * 4 in 12 (builders' manuals): 16.5 x 17.44 / 12 = 23.97, four of them 95.9.
         * 113.9 + 10 % = 125.3; / 25 = 5.01 */
        {6, "bundles", "Hip and ridge caps", "ridge and hips"},
        /* 17.740 squares x 65.02 strips x 4 = 4,614; + 10 % = 5,075 of 7,200 */
        {1, "box", "Coil roofing nails, 1 1/4 in galvanized", "shingles"},
        /* 1,774.0 x 48 / 44 = 1,935.3 sq ft; + 10 % = 2,128.8; / 1,000 */
        {3, "rolls", "Synthetic underlayment, ASTM D8257, 48 in by 250 ft", "all planes"},
        /* 483.8 ft of sheet, caps 12 in apart along the lap and on 3 lines between:
         * 483.8 x 4 = 1,935; + 10 % = 2,129; / 2,000 */
        {2, "boxes", "Cap nails, for the underlayment", "all planes"},
        /* 18 + 6 + 24 = 48 in level, x 1.0541 = 50.6 along the slope: two courses (66 in).
         * 2 x 168 = 336 ft; + 10 % = 369.6; / 66.7 = 5.5 */
        {6, "rolls", "Ice barrier, self-adhered, ASTM D1970, 36 in by 66.7 ft", "eaves"},
        /* 184.8 / 9 ft 10 in = 18.8 */
        {19, "pieces", "Drip edge, 10 ft pieces", "eaves"},
        /* 100 + 10 % = 110; / 32 = 3.4 */
        {4, "panels",
         "Deck panels, 4 by 8 ft, 15/32 in OSB, 32/16, Exposure 1 or Exterior where seen from below",
         "deck"},
        /* 3.125 panels; each 2 outer lines of 9 and 3 inner of 5 nails = 33: 103.1;
         * + 10 % = 113.4; / 100 to the pound */
        {2, "pounds", "8d common nails", "deck"},
        {8, "pieces", "Roof vents, 50 sq in free or more each", "roof vents"},
    };
    orders(*state, HIP, ORDER, sizeof(ORDER) / sizeof(ORDER[0]));
}

/* The same gable with metal panels behind: shingles, felt and edges of the front alone. */
static void a_gable_of_two_coverings(void **state)
{
    static const struct wanted ORDER[] = {
        /* 41 x 14 x 1.1180 = 641.7 sq ft; + 10 % = 705.9; / 33.3 = 21.2 */
        {22, "bundles", "Three-tab shingles, 3 bundles to the square", "front"},
        /* 41 ft, + 10 % = 45.1 of 81 */
        {1, "bundle", "Three-tab shingles, to cut for starter", "eaves of front"},
        /* the ridge is capped whole: 41 ft, + 10 % = 45.1; / 35 */
        {2, "bundles", "Three-tab shingles, to cut for caps", "ridge"},
        /* 6.417 squares x 80 x 4 = 2,054; + 10 % = 2,259 of 7,200 */
        {1, "box", "Coil roofing nails, 1 1/4 in galvanized", "shingles"},
        /* 641.7 sq ft; + 10 % = 705.9; / 100 = 7.06 */
        {8, "squares", "Metal panels, laid at the exposure that the maker prints", "back"},
        /* 641.7 x 36 / 34 = 679.5 sq ft; + 10 % = 747.4; / 432 = 1.73 */
        {2, "rolls", "No. 15 felt, ASTM D226 type I, 36 in by 144 ft", "front"},
        /* eave 41 ft, rakes 2 x 14 x 1.1180 = 31.3; 72.3 + 10 % = 79.5; / 9 ft 10 in = 8.1 */
        {9, "pieces", "Drip edge, 10 ft pieces", "eaves of front, rakes of front"},
        {28, "pieces", "Step flashing", "garage wall"},
        {2, "pieces", "Pipe flashing, for a pipe of 2 in", "kitchen vent, bath vent"},
        {1, "piece", "Pipe flashing, for a pipe of 4 in", "soil pipe"},
        {2, "pieces", "2x6 for rafter tails, 8 ft long", "tail 1, tail 2"},
        {2, "pieces", "1x8 for fascia, 20 ft long", "front fascia"},
        {10, "pieces", "Ridge vent, 4 ft pieces, 18 sq in per ft free or more", "ridge"},
    };
    char *job = text_with(GABLE, "\"roof\":{",
                          "\"roof\":{\"slopes\":[{\"name\":\"back\",\"gets\":\"metal_panel\"}],");
    orders_but(*state, job, ORDER, sizeof(ORDER) / sizeof(ORDER[0]), "other_trim");
    free(job);
}

/* A hip roof of which the left end keeps its covering: the front alone has hips on both
 * sides, so how much is capped is asked, and then taken as it is said. */
static void hips_between_two_coverings(void **state)
{
    char *job = text_with(HIP, "\"roof\":{",
                          "\"roof\":{\"slopes\":[{\"name\":\"left end\",\"gets\":\"old_stays\"}],");
    char *list = order_of(*state, job, EAVEMARK_TEXT);
    assert_non_null(strstr(list, "The job does not say /takeoff/cap_ft"));
    assert_non_null(strstr(list, "Waste is counted in, as the job states it"));
    assert_null(strstr(list, "left end"));
    free(list);
    char *said = text_with(job, "\"waste_percent\":10", "\"cap_ft\":113.9");
    list = order_of(*state, said, EAVEMARK_TEXT);
    assert_null(strstr(list, "cap_ft"));
    assert_non_null(strstr(list, "Waste is counted in, as is usual where a job states none"));
    /* 113.9 ft, + 10 % that are usual = 125.3; / 25 = 5.01 */
    assert_non_null(strstr(list, "      6  bundles   Hip and ridge caps: ridge and hips"));
    free(list);
    free(said);
    free(job);
}

/* RFC 4180: a heading first, lines end in CRLF, a quote is doubled. */
static void as_a_table(void **state)
{
    char *job = strdup(GABLE);
    assert_non_null(job);
    char *name = strstr(job, "garage wall");
    memcpy(name, "=a, \\\"b\\\"\\\"", 11);
    char *table = order_of(*state, job, EAVEMARK_CSV);
    assert_memory_equal(table, "heading,item,count,unit,for,", 28);
    assert_non_null(strstr(table, "\"Covering\",\"Three-tab shingles, 3 bundles to the square\",43,"
                                  "\"bundles\",\"all planes\",1283.5,\"sqft\",10,"
                                  "\"shingle_bundles\"\r\n"));
    assert_non_null(strstr(table, ",\"'=a, \"\"b\"\"\"\"\","));
    free(table);
    free(job);
}

/* A job is often somebody else's: its names must not steer the terminal the table is read in. */
static void no_cell_steers_a_terminal(void **state)
{
    char *job = strdup(GABLE);
    assert_non_null(job);
    memcpy(strstr(job, "garage wall"), "g\\u001b[2Jl", 11);
    char *table = order_of(*state, job, EAVEMARK_CSV);
    assert_null(strchr(table, '\x1B'));
    assert_non_null(strstr(table, ",\"g\\x1b[2Jl\","));
    free(table);
    free(job);
}

/* What is not counted is said, and stands in the table without a number. */
static void what_is_not_counted(void **state)
{
    char *job = strdup(GABLE);
    assert_non_null(job);
    memcpy(strstr(job, "\"length_ft\":10,"), "               ", 15);
    memcpy(strstr(job, "\"grade\":\"three_tab\","), "                    ", 20);
    char *list = order_of(*state, job, EAVEMARK_TEXT);
    assert_non_null(strstr(list, "Not counted yet, and nothing is guessed\n"));
    assert_non_null(strstr(list, "Step flashing, garage wall: The job does not say"));
    free(list);
    char *table = order_of(*state, job, EAVEMARK_CSV);
    assert_non_null(
        strstr(table, "\"Step flashing\",,\"open\",\"garage wall\",,,,\"step_flashing\""));
    free(table);
    free(job);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(a_gable_of_three_tabs),
        cmocka_unit_test(a_hip_of_laminated_shingles),
        cmocka_unit_test(a_gable_of_two_coverings),
        cmocka_unit_test(hips_between_two_coverings),
        cmocka_unit_test(as_a_table),
        cmocka_unit_test(no_cell_steers_a_terminal),
        cmocka_unit_test(what_is_not_counted),
    };
    return cmocka_run_group_tests(tests, start, stop);
}
