/* Figures of the profiles, resolved by place and day, against what public pages
 * print. The pages restate codes; none of the code books was read. */
#include "published/published.h"

#include "base/date.h"
#include "profile/profile.h"

#include <stdbool.h>
#include <string.h>

#define NAILS "city reroof handouts citing IRC R905.2.5"
#define PAGE_2018 "page of the 2018 edition, R905.2.6"
#define SLOPES "city handouts citing IRC R905.2.2"
#define EDGE_2015 "commentary on IRC 2015 R905.2.8.5"
#define D7158 "trade association bulletin and trade journal on ASTM D7158"
#define OHIO_2018 "a state residential code on IRC 2018, Table R905.1.1(1)"
#define IBC_2018 "page of IBC 2018 Table 1507.1.1(3), the building code's like table"
#define VENTS "city handout on the 2015 Minnesota code, R806"
#define SPLIT "trade association page quoting R806.2 of 2012 and 2015"
#define ICE "city page citing IRC R905.1.2"
#define NAIL_SIZES "nailing table on a public engineering page, IRC Table R602.3(1)"
#define NAIL_SCAN "scan of IRC Table R602.3(1) in a city archive"
#define FL_2023 "Florida Building Code, Residential, 8th edition (2023)"
#define FL_2004 "officials' forum quoting the Florida text of 2004 and 2006, R905.2.8"
#define FL_SHEET "a Florida county's reroof procedure sheet"
#define CA_SUMMARY "summary of California's attic rules, CRC R806.2"

static struct counted counted;

static struct profile *resolve(const char *id, const char *day)
{
    struct problems problems = {0};
    struct profile *profile = profile_resolve(EAVEMARK_HOME_DIR, id, date_parse(day), "test",
                                              &problems);
    if (problems.count > 0) {
        struct text said = TEXT_EMPTY;
        problems_write(&problems, &said);
        print_error("%s", text_string(&said));
        text_free(&said);
    }
    problems_free(&problems);
    assert_non_null(profile);
    return profile;
}

/* What a page prints of one figure. */
struct printed {
    enum kind kind;
    const char *figure;
    double value;
    const char *unit;
    const char *source;
};

/* Figures are copied, not worked out: no tolerance. */
static void numbers_are(const char *id, const char *day, const struct printed *rows, size_t count)
{
    struct profile *profile = resolve(id, day);
    for (size_t i = 0; i < count; i++) {
        const struct figure *figure = profile_figure(profile, rows[i].figure);
        if (figure == NULL)
            print_error("%s has no %s\n", id, rows[i].figure);
        assert_non_null(figure);
        assert_int_equal(figure->value.kind, VALUE_NUMBER);
        assert_string_equal(figure->value.unit, rows[i].unit);
        const struct check check = {
            rows[i].kind, rows[i].figure, rows[i].source, figure->value.number, rows[i].value, 0,
            "copied"};
        published_hold(&counted, &check, 1);
    }
    profile_free(profile);
}

#define COUNT(rows) (sizeof(rows) / sizeof((rows)[0]))

static void model_code(void **state)
{
    (void)state;
    const struct printed rows[] = {
        {KIND_CODE, "slope.least.asphalt_shingle", 2, "rise_in_12", SLOPES},
        {KIND_CODE, "slope.double_below", 4, "rise_in_12", SLOPES},
        {KIND_CODE, "slope.least.wood_shingle", 3, "rise_in_12", "city handout, IRC R905.7.2"},
        {KIND_CODE, "slope.least.wood_shake", 3, "rise_in_12", "city handout, IRC R905.8.2"},
        {KIND_CODE, "layers.most", 2, "layers", "city reroof page on IRC 2018, R908.3.1.1"},
        {KIND_CODE, "fasteners.shank_least", 0.105, "in", NAILS},
        {KIND_CODE, "fasteners.head_least", 0.375, "in", NAILS},
        {KIND_CODE, "fasteners.penetration_least", 0.75, "in", NAILS},
        {KIND_CODE, "fasteners.per_shingle_least", 4, "nails", PAGE_2018},
        {KIND_CODE, "fasteners.steep_over", 21, "rise_in_12", PAGE_2018},
        {KIND_CODE, "drip_edge.lap_least", 2, "in", EDGE_2015},
        {KIND_CODE, "drip_edge.down_least", 0.25, "in", EDGE_2015},
        {KIND_CODE, "drip_edge.back_least", 2, "in", EDGE_2015},
        {KIND_CODE, "drip_edge.fastener_spacing_most", 12, "in", EDGE_2015},
        {KIND_TRADE, "shingle.D7158_vult_most.D", 116, "mph", D7158},
        {KIND_TRADE, "shingle.D7158_vult_most.G", 155, "mph", D7158},
        {KIND_TRADE, "shingle.D7158_vult_most.H", 194, "mph", D7158},
        {KIND_TRADE, "shingle.wind_height_most", 60, "ft", D7158},
        {KIND_CODE, "underlayment.wind_from", 140, "mph", OHIO_2018},
        {KIND_CODE, "underlayment.lap_spacing_wind_most", 6, "in", IBC_2018},
        {KIND_CODE, "underlayment.field_spacing_wind_most", 12, "in", IBC_2018},
        {KIND_CODE, "underlayment.cap_wind_least", 1, "in", IBC_2018},
        {KIND_CODE, "underlayment.end_lap_offset_least", 6, "ft", SLOPES},
    };
    numbers_are("model/irc-2018", "2024-06-03", rows, COUNT(rows));
}

static void felt_laps(void **state)
{
    (void)state;
    const char *navy = "Navy guide specification 14045 on asphalt felt, and manual 14044";
    const struct printed rows[] = {
        {KIND_HANDBOOK, "underlayment.head_lap_least", 2, "in", navy},
        {KIND_HANDBOOK, "underlayment.end_lap_least", 4, "in", navy},
        {KIND_HANDBOOK, "underlayment.head_lap_double_least", 19, "in", navy},
        {KIND_HANDBOOK, "underlayment.starter_width_least", 19, "in", navy},
    };
    numbers_are("model/irc-2018", "2024-06-03", rows, COUNT(rows));
}

static void vents_and_ice(void **state)
{
    (void)state;
    const struct printed rows[] = {
        {KIND_CODE, "ventilation.ratio_default", 150, "ratio", VENTS},
        {KIND_CODE, "ventilation.ratio_reduced", 300, "ratio", VENTS},
        {KIND_CODE, "ventilation.opening_least", 0.0625, "in", VENTS},
        {KIND_CODE, "ventilation.opening_most", 0.25, "in", VENTS},
        {KIND_CODE, "ventilation.airspace_least", 1, "in", VENTS},
        {KIND_TRADE, "ventilation.high_share_least", 40, "percent", SPLIT},
        {KIND_TRADE, "ventilation.high_share_most", 50, "percent", SPLIT},
        {KIND_TRADE, "ventilation.upper_band_most", 3, "ft", SPLIT},
        {KIND_CODE, "ice_barrier.inside_wall_least", 24, "in", ICE},
        {KIND_CODE, "ice_barrier.steep_from", 8, "rise_in_12", ICE},
        {KIND_CODE, "ice_barrier.steep_reach_least", 36, "in", ICE},
    };
    numbers_are("model/irc-2021", "2024-06-03", rows, COUNT(rows));
}

static void decks(void **state)
{
    (void)state;
    const struct printed rows[] = {
        {KIND_CODE, "deck.board_thickness_least", 0.625, "in",
         "city page on IRC 2018 Table R803.1"},
        {KIND_CODE, "deck.panel_span_unsupported.24/16", 24, "in",
         "code officials' forum reading IRC Table R503.2.1.1(1)"},
        {KIND_CODE, "deck.nail_length.common_8d", 2.5, "in", NAIL_SIZES},
        {KIND_CODE, "deck.nail_shank.common_8d", 0.131, "in", NAIL_SIZES},
        {KIND_CODE, "deck.nail_length.common_10d", 3, "in", NAIL_SIZES},
        {KIND_CODE, "deck.nail_shank.common_10d", 0.148, "in", NAIL_SIZES},
        {KIND_CODE, "deck.nail_length.box_8d", 2.5, "in", NAIL_SCAN},
        {KIND_CODE, "deck.nail_shank.box_8d", 0.113, "in", NAIL_SCAN},
        {KIND_CODE, "deck.nail_length.common_6d", 2, "in", NAIL_SCAN},
        {KIND_CODE, "deck.nail_shank.common_6d", 0.113, "in", NAIL_SCAN},
        {KIND_RECALLED, "deck.nail_edge_most", 6, "in", "IRC 2021 Table R602.3(1)"},
        {KIND_RECALLED, "deck.nail_field_most.thin", 6, "in", "IRC 2021 Table R602.3(1)"},
    };
    numbers_are("model/irc-2021", "2024-06-03", rows, COUNT(rows));
}

static void minnesota(void **state)
{
    (void)state;
    const struct printed rows[] = {
        {KIND_CODE, "ice_barrier.inside_wall_least", 24, "in", "a Minnesota city's roofing page"},
        {KIND_CODE, "ventilation.high_share_least", 40, "percent", VENTS},
        {KIND_CODE, "ventilation.high_share_most", 50, "percent", VENTS},
        {KIND_CODE, "ventilation.upper_band_most", 3, "ft", VENTS},
    };
    numbers_are("us-mn", "2024-06-03", rows, COUNT(rows));
}

static void florida(void **state)
{
    (void)state;
    const struct printed rows[] = {
        {KIND_CODE, "slope.least.asphalt_shingle", 2, "rise_in_12", "a Florida city's handout"},
        {KIND_CODE, "drip_edge.lap_least", 3, "in", FL_2004},
        {KIND_CODE, "drip_edge.lap_least", 3, "in", FL_SHEET},
        {KIND_CODE, "drip_edge.down_least", 0.5, "in", FL_2004},
        {KIND_CODE, "drip_edge.back_least", 2, "in", FL_2004},
        {KIND_CODE, "drip_edge.fastener_spacing_most", 12, "in", FL_2004},
        {KIND_CODE, "drip_edge.close_spacing_most", 4, "in", FL_SHEET},
        {KIND_CODE, "drip_edge.close_wind_from", 110, "mph", FL_2004},
        {KIND_CODE, "drip_edge.close_height_over", 33, "ft", FL_2004},
        {KIND_CODE, "underlayment.lap_spacing_wind_most", 6, "in", FL_SHEET},
        {KIND_CODE, "underlayment.field_spacing_wind_most", 12, "in", FL_SHEET},
        {KIND_CODE, "deck.board_nails_least.narrow", 2, "nails", FL_SHEET},
        /* Built in 2002 or before: under 2003. */
        {KIND_CODE, "deck.renail_built_before", 2003, "year", "a Florida county's page"},
    };
    numbers_are("us-fl", "2024-06-03", rows, COUNT(rows));
}

/* Tables R803.2.2, R803.2.3.1 and R908.7.1.2 of the code of 2023, each by its last speeds. */
static void florida_by_wind(void **state)
{
    (void)state;
    const struct printed rows[] = {
        {KIND_CODE, "deck.panel_vult_most.B.24/16", 140, "mph", FL_2023},
        {KIND_CODE, "deck.panel_vult_most.B.32/16", 150, "mph", FL_2023},
        {KIND_CODE, "deck.panel_vult_most.B.40/20", 180, "mph", FL_2023},
        {KIND_CODE, "deck.panel_vult_most.C.24/16", 120, "mph", FL_2023},
        {KIND_CODE, "deck.panel_vult_most.C.32/16", 130, "mph", FL_2023},
        {KIND_CODE, "deck.panel_vult_most.C.40/20", 170, "mph", FL_2023},
        {KIND_CODE, "deck.panel_vult_most.C.48/24", 180, "mph", FL_2023},
        {KIND_CODE, "deck.panel_vult_most.D.32/16", 115, "mph", FL_2023},
        {KIND_CODE, "deck.panel_vult_most.D.40/20", 160, "mph", FL_2023},
        {KIND_CODE, "deck.panel_vult_most.D.48/24", 180, "mph", FL_2023},
        {KIND_CODE, "deck.wind_pattern_vult_most.B.light.even", 150, "mph", FL_2023},
        {KIND_CODE, "deck.wind_pattern_vult_most.B.light.close", 180, "mph", FL_2023},
        {KIND_CODE, "deck.wind_pattern_vult_most.B.dense.wide", 120, "mph", FL_2023},
        {KIND_CODE, "deck.wind_pattern_vult_most.B.dense.even", 180, "mph", FL_2023},
        {KIND_CODE, "deck.wind_pattern_vult_most.C.light.even", 130, "mph", FL_2023},
        {KIND_CODE, "deck.wind_pattern_vult_most.C.light.close", 160, "mph", FL_2023},
        {KIND_CODE, "deck.wind_pattern_vult_most.C.light.closest", 180, "mph", FL_2023},
        {KIND_CODE, "deck.wind_pattern_vult_most.C.dense.even", 160, "mph", FL_2023},
        {KIND_CODE, "deck.wind_pattern_vult_most.C.dense.close", 180, "mph", FL_2023},
        {KIND_CODE, "deck.wind_pattern_vult_most.D.light.even", 120, "mph", FL_2023},
        {KIND_CODE, "deck.wind_pattern_vult_most.D.light.close", 150, "mph", FL_2023},
        {KIND_CODE, "deck.wind_pattern_vult_most.D.light.closest", 180, "mph", FL_2023},
        {KIND_CODE, "deck.wind_pattern_vult_most.D.dense.even", 140, "mph", FL_2023},
        {KIND_CODE, "deck.wind_pattern_vult_most.D.dense.close", 180, "mph", FL_2023},
        {KIND_CODE, "deck.wind_pattern_edge_most.wide", 6, "in", FL_2023},
        {KIND_CODE, "deck.wind_pattern_field_most.wide", 12, "in", FL_2023},
        {KIND_CODE, "deck.wind_pattern_edge_most.even", 6, "in", FL_2023},
        {KIND_CODE, "deck.wind_pattern_field_most.even", 6, "in", FL_2023},
        {KIND_CODE, "deck.wind_pattern_edge_most.close", 4, "in", FL_2023},
        {KIND_CODE, "deck.wind_pattern_field_most.close", 4, "in", FL_2023},
        {KIND_CODE, "deck.wind_pattern_edge_most.closest", 3, "in", FL_2023},
        {KIND_CODE, "deck.wind_pattern_field_most.closest", 3, "in", FL_2023},
        {KIND_CODE, "deck.panel_thickness_least.24/16", 0.4375, "in", FL_2023},
        {KIND_CODE, "deck.panel_thickness_least.32/16", 0.46875, "in", FL_2023},
        {KIND_CODE, "deck.panel_thickness_least.40/20", 0.59375, "in", FL_2023},
        {KIND_CODE, "deck.panel_thickness_least.48/24", 0.71875, "in", FL_2023},
        {KIND_CODE, "deck.old_nail_length_least", 2.25, "in", FL_2023},
        {KIND_CODE, "deck.renail_spacing_most", 6, "in", FL_2023},
        {KIND_CODE, "papers.wall_tie_strap_least", 500, "lb", FL_2023},
        {KIND_CODE, "papers.wall_tie_nails_least", 4, "nails", FL_2023},
        {KIND_CODE, "papers.wall_ties_share_over", 15, "percent", FL_2023},
        {KIND_CODE, "papers.wall_ties_value_from", 300000, "usd", FL_2023},
        {KIND_CODE, "flashing.metal_mils_least.galvanized", 17.9, "mil", FL_2023},
        {KIND_CODE, "flashing.metal_mils_least.aluminum", 24, "mil", FL_2023},
        {KIND_CODE, "flashing.metal_mils_least.copper", 24, "mil", FL_2023},
        {KIND_CODE, "flashing.metal_mils_least.zinc", 27, "mil", FL_2023},
        {KIND_CODE, "drip_edge.cement_width_least", 4, "in", FL_2023},
        {KIND_CODE, "underlayment.tape_width_least", 3.75, "in", FL_2023},
        {KIND_CODE, "underlayment.starter_width_least", 18, "in", FL_2023},
    };
    numbers_are("us-fl", "2024-06-03", rows, COUNT(rows));
}

/* The tape over deck joints: 4 in (trade magazine on the rule of 2007), and
 * 3-3/4 in, 95 mm, from the 8th edition on (trade page). */
static void florida_tape_by_edition(void **state)
{
    (void)state;
    const struct printed seventh[] = {{KIND_TRADE, "underlayment.tape_width_least", 4, "in",
                                       "trade magazine on the Florida rule of 2007"}};
    const struct printed eighth[] = {{KIND_TRADE, "underlayment.tape_width_least", 3.75, "in",
                                      "trade page on the Florida 8th edition, R905.1.1"}};
    numbers_are("us-fl", "2023-12-30", seventh, 1);
    numbers_are("us-fl", "2023-12-31", eighth, 1);
}

static void california(void **state)
{
    (void)state;
    const struct printed rows[] = {
        {KIND_TRADE, "ventilation.ratio_default", 150, "ratio", CA_SUMMARY},
        {KIND_TRADE, "ventilation.ratio_reduced", 300, "ratio", CA_SUMMARY},
        {KIND_TRADE, "ventilation.high_share_least", 40, "percent", CA_SUMMARY},
        {KIND_TRADE, "ventilation.high_share_most", 50, "percent", CA_SUMMARY},
        {KIND_RECALLED, "layers.most", 2, "layers", "CRC R908.3.1.1"},
    };
    const char *const days[] = {"2020-01-01", "2022-12-31", "2023-01-01", "2026-01-01"};
    for (size_t i = 0; i < COUNT(days); i++) {
        /* Four days, but one page: counted once. */
        const struct counted before = counted;
        numbers_are("us-ca", days[i], rows, COUNT(rows));
        if (i > 0)
            counted = before;
    }
}

/* Which book binds on the day of application: California's city pages and
 * county notices; Florida's roofing association; Minnesota's rule. */
static void editions_by_day(void **state)
{
    (void)state;
    static const struct {
        const char *id, *day, *edition;
    } DAYS[] = {
        {"us-ca", "2020-01-01", "CRC 2019"},
        {"us-ca", "2022-12-31", "CRC 2019"},
        {"us-ca", "2023-01-01", "CRC 2022"},
        {"us-ca", "2025-12-31", "CRC 2022"},
        {"us-ca", "2026-01-01", "CRC 2025"},
        {"us-fl", "2020-12-31", "Florida 7th"},
        {"us-fl", "2023-12-30", "Florida 7th"},
        {"us-fl", "2023-12-31", "Florida 8th"},
        {"us-mn", "2020-03-31", "Minnesota Residential Code 2020"},
    };
    for (size_t i = 0; i < COUNT(DAYS); i++) {
        struct profile *profile = resolve(DAYS[i].id, DAYS[i].day);
        const int differs = strncmp(profile->edition, DAYS[i].edition, strlen(DAYS[i].edition));
        if (differs != 0)
            print_error("%s on %s is %s\n", DAYS[i].id, DAYS[i].day, profile->edition);
        profile_free(profile);
        assert_int_equal(differs, 0);
        counted.of[KIND_CODE]++;
    }
}

/* A yes-or-no figure, or a set, as pages print it. A set is written "a b c". */
struct said {
    enum kind kind;
    const char *id, *figure;
    bool yes;
    const char *set; /* or NULL */
    const char *source;
};

static bool set_is(const struct value *value, const char *wanted)
{
    size_t words = 1, found = 0;
    for (const char *at = wanted; *at != '\0'; at++)
        words += *at == ' ';
    for (size_t i = 0; i < value->set_count; i++) {
        const size_t length = strlen(value->set[i]);
        for (const char *at = strstr(wanted, value->set[i]); at != NULL;
             at = strstr(at + 1, value->set[i])) {
            if ((at == wanted || at[-1] == ' ') && (at[length] == ' ' || at[length] == '\0')) {
                found++;
                break;
            }
        }
    }
    return found == words && value->set_count == words;
}

static void duties_and_lists(void **state)
{
    (void)state;
    const struct said rows[] = {
        {KIND_CODE, "us-mn", "ice_barrier.required", true, NULL, "a Minnesota city's roofing page"},
        {KIND_CODE, "us-mn", "ventilation.reduced_needs_both", true, NULL, VENTS},
        {KIND_CODE, "us-mn", "ice_barrier.kinds", false, "self_adhered two_cemented_plies",
         "a Minnesota city's roofing page"},
        {KIND_CODE, "model/irc-2018", "fasteners.metals", false,
         "galvanized stainless aluminum copper", NAILS},
        {KIND_CODE, "model/irc-2018", "ice_barrier.coverings", false,
         "asphalt_shingle metal_shingle roll_roofing slate wood_shingle wood_shake", ICE},
        {KIND_CODE, "model/irc-2018", "underlayment.kinds_high_wind", false,
         "D226_II D4869_III D4869_IV D6757", OHIO_2018},
        {KIND_CODE, "model/irc-2018", "drip_edge.orders_eave", false, "over_metal", EDGE_2015},
        {KIND_CODE, "model/irc-2018", "drip_edge.orders_rake", false, "under_metal", EDGE_2015},
        {KIND_CODE, "model/irc-2018", "drip_edge.eave_required", true, NULL, EDGE_2015},
        {KIND_CODE, "model/irc-2018", "drip_edge.rake_required", true, NULL, EDGE_2015},
        {KIND_CODE, "us-fl", "underlayment.sealed_deck_required", true, NULL,
         "fact sheet of Florida's code program, June 2020"},
        {KIND_CODE, "us-fl", "deck.renail_required", true, NULL,
         "Florida's notice to building departments on the 2007 mitigation rule"},
        {KIND_CODE, "us-fl", "deck.renail_house_kinds", false, "one_family two_family townhouse",
         FL_2023},
        {KIND_CODE, "us-fl", "drip_edge.orders_eave", false, "under_metal", FL_2023},
        {KIND_CODE, "us-fl", "drip_edge.cement_required", true, NULL, FL_2023},
        {KIND_CODE, "us-fl", "ice_barrier.by_table", false, NULL, FL_2023},
        {KIND_CODE, "us-fl", "underlayment.tapes", false, "D1970 AAMA_711_3", FL_2023},
        {KIND_CODE, "us-fl", "deck.renail_kinds", false, "RSRS_01", FL_2023},
        {KIND_CODE, "us-fl", "layers.blisters_ways", false, "none cut_and_fastened", FL_2023},
        {KIND_CODE, "us-fl", "layers.not_over", false,
         "wood_shingle wood_shake slate clay_tile concrete_tile asbestos_cement", FL_2023},
        {KIND_CODE, "us-fl", "papers.approval_uplift_coverings", false, "metal_shingle slate",
         FL_2023},
        {KIND_CODE, "us-fl", "permit.early_start_counts", true, NULL,
         "Florida Building Code, Building, 8th edition (2023), 105.12"},
        {KIND_CODE, "model/irc-2018", "ice_barrier.required", false, NULL,
         "a town's climate table that says no: the place decides, IRC R905.1.2"},
    };
    for (size_t i = 0; i < COUNT(rows); i++) {
        struct profile *profile = resolve(rows[i].id, "2024-06-03");
        const struct figure *figure = profile_figure(profile, rows[i].figure);
        const bool held = figure != NULL
                          && (rows[i].set != NULL ? figure->value.kind == VALUE_SET
                                                        && set_is(&figure->value, rows[i].set)
                                                  : figure->value.kind == VALUE_YES_NO
                                                        && figure->value.yes == rows[i].yes);
        if (!held)
            print_error("%s of %s is not what %s prints\n", rows[i].figure, rows[i].id,
                        rows[i].source);
        profile_free(profile);
        assert_true(held);
        counted.of[rows[i].kind]++;
    }
}

/* Ours: an invented county's change remembers who moved what. */
static void amended_from_and_to(void **state)
{
    (void)state;
    struct profile *profile = resolve("example/tamarack", "2026-03-02");
    const struct figure *figure = profile_figure(profile, "layers.most");
    assert_non_null(figure);
    assert_non_null(figure->amended);
    assert_string_equal(figure->amended->by, "Tamarack County, Harrow");
    assert_true(figure->amended->from.number == 2 && figure->amended->to.number == 1);
    assert_string_equal(figure->cite.code, "Tamarack County Code");
    assert_string_equal(figure->cite.section, "15.04.020");
    assert_int_equal(figure->cite.status, STATUS_INVENTED);
    profile_free(profile);
    counted.of[KIND_OURS]++;
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(model_code),       cmocka_unit_test(felt_laps),
        cmocka_unit_test(vents_and_ice),    cmocka_unit_test(decks),
        cmocka_unit_test(minnesota),        cmocka_unit_test(florida),
        cmocka_unit_test(florida_by_wind),  cmocka_unit_test(florida_tape_by_edition),
        cmocka_unit_test(california),       cmocka_unit_test(editions_by_day),
        cmocka_unit_test(duties_and_lists), cmocka_unit_test(amended_from_and_to),
    };
    const int failed = cmocka_run_group_tests_name("published figures", tests, NULL, NULL);
    return published_summary("published figures", &counted, failed);
}
