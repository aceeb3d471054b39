/* Materials, loads and days, as handbooks, trade pages and the trade's rules of
 * thumb have them; and what of vents, ice barrier and fans the purchase functions
 * add to the areas checked elsewhere. A rule of thumb says how many in round
 * numbers, so it has to come out whole. */
#include "published/published.h"

#include "trade/fastener.h"
#include "trade/geometry.h"
#include "trade/ice_barrier.h"
#include "trade/takeoff.h"
#include "trade/ventilation.h"
#include "trade/weight.h"

#define CHARITY "housing charity's material guide for a roof (MT-1)"
#define FELT_QUESTION "Navy builder manual NAVEDTRA 14044, assignment 3 (MT-2)"
#define NAVY "Navy builder manual NAVEDTRA 14044, asphalt shingles"
#define ARMY "Army engineer course EN5156, roof covering material"
#define HOW_TO "consumer how-to page on nails to the square"
#define FELT_PAGE "consumer page on what a roof weighs"
#define DEAD_LOADS "ASCE 7 table of dead loads, recalled"
#define COLUMN "builder's column, vent area of an attic (VE-2)"
#define FAN_ASSOCIATION "ventilation trade association, attic fans (VE-3)"
#define CONSUMER "consumer page on the 50 to 80 percent rule of the 2009 code (VE-4)"
#define FIELD_GUIDE "trade journal's ventilation field guide, screens and louvers"
#define FAR_ENOUGH "trade journal on how far up the slope (IE-1, IE-2)"
#define RED_TAG "builders' trade journal on eave membrane (IE-3)"
#define OVERLAYS "trade journal's engineer on reroofing over shingles"
#define NAIL_LENGTHS "trade practice for one layer on 1/2 in panel, recalled"
#define THUMB "common practice, no page: the trade's rule of thumb"

static struct counted counted;

static void takeoff(void **state)
{
    (void)state;
    const double area = trade_slope_area_sqft(46, 46, 28, 0); /* 28 ft on the slope */
    const struct check rows[] = {
        {KIND_HANDBOOK, "28 ft of slope x 46 ft, sq ft", CHARITY, area, 1288, 0, "exact"},
        {KIND_HANDBOOK, "1,288 sq ft in whole squares", CHARITY, trade_purchase(area, 0, 100), 13,
         0, "whole squares"},
        {KIND_HANDBOOK, "13 squares in bundles of 33.3 sq ft", CHARITY,
         trade_purchase(1300, 0, 100.0 / 3), 39, 0, "whole bundles"},
        {KIND_HANDBOOK, "1,300 sq ft in rolls of 300", CHARITY, trade_with_waste(1300, 0) / 300,
         4.33, 0.005, "printed to a hundredth"},
        {KIND_HANDBOOK, "the same, bought", CHARITY, trade_purchase(1300, 0, 300), 5, 0,
         "whole rolls"},
        {KIND_OURS, "No. 30 felt over 48,400 sq ft, 2 squares to the roll", FELT_QUESTION,
         trade_purchase(48400, 0, 200), 242, 0,
         "one of the question's four choices; which one is right was not seen"},
        {KIND_HANDBOOK, "100 sq ft are a square", ARMY, trade_squares(100), 1, 0, "definition"},
        {KIND_HANDBOOK, "36 in strips showing 5 in, three bundles of 27", NAVY,
         trade_strips_per_square(36, 5), 81, 1, "81 in whole bundles holds the 80 of a square"},
        {KIND_TRADE, "4 nails in each strip of 36 in showing 5 in, a square", HOW_TO,
         trade_nails_per_square(trade_strips_per_square(36, 5), 4), 320, 1e-9, "exact"},
    };
    published_hold(&counted, rows, sizeof(rows) / sizeof(rows[0]));
}

static void nails_and_rolls(void **state)
{
    (void)state;
    const double strip = trade_strips_per_square(36, 5);
    const double metric = trade_strips_per_square(39.375, 5.625);
    const struct check rows[] = {
        {KIND_OURS, "strips of 36 in showing 5 in, a square", "ours", strip, 80, 1e-9, "exact"},
        {KIND_OURS, "metric strips showing 5 5/8 in, a square", "ours", metric, 65, 0.5,
         "whole strips"},
        {KIND_OURS, "6 nails a strip, a square", "ours", trade_nails_per_square(strip, 6), 480,
         1e-9, "exact"},
        {KIND_OURS, "4 nails a metric strip, a square", "ours", trade_nails_per_square(metric, 4),
         260, 0.5, "of 65 whole strips"},
        {KIND_OURS, "6 nails a metric strip, a square", "ours", trade_nails_per_square(metric, 6),
         390, 0.5, "of 65 whole strips"},
        /* Rolls of 36 in: the lap of 2 in and some ends come off the gross. */
        {KIND_TRADE, "No. 15 felt, 144 ft of 36 in lapped 2: about 4 squares", FELT_PAGE,
         432 / trade_lapped_sqft(100, 36, 2), 4, 0.1, "printed as about 4"},
        {KIND_TRADE, "No. 30 felt, 72 ft of 36 in lapped 2: about 2 squares", FELT_PAGE,
         216 / trade_lapped_sqft(100, 36, 2), 2, 0.05, "printed as about 2"},
        {KIND_HANDBOOK, "double coverage: 19 in lap leaves 17 in, in percent of the roll", NAVY,
         100 * 100 / trade_lapped_sqft(100, 36, 19), 100 * 17 / 36.0, 1e-9, "exact"},
        {KIND_TRADE, "2-1/4 lb to the square of 1-1/2 in nails, 320 at 140 to the pound",
         "reroofing contractor's page on nails", trade_nails_per_square(strip, 4) / 140, 2.25, 0.05,
         "printed to a quarter, about"},
        {KIND_TRADE, "3-1/2 lb at 480", "reroofing contractor's page on nails",
         trade_nails_per_square(strip, 6) / 140, 3.5, 0.1, "printed to a half, about"},
    };
    published_hold(&counted, rows, sizeof(rows) / sizeof(rows[0]));
}

static void vents(void **state)
{
    (void)state;
    struct vent_split column = {0}, least = {0};
    assert_int_equal(trade_vent_split(&column, trade_vent_area_needed_sqin(1500, 300), 40), 0);
    assert_int_equal(trade_vent_split(&least, trade_vent_area_needed_sqin(900, 300), 80), 0);
    const struct check rows[] = {
        {KIND_TRADE, "40 percent of 5 sq ft at the ridge, sq ft", COLUMN, column.high_sqin / 144, 2,
         1e-9, "exact"},
        {KIND_TRADE, "the rest at the soffit, sq ft", COLUMN, column.low_sqin / 144, 3, 1e-9,
         "exact"},
        {KIND_TRADE, "pot vents of 50 sq in for 288", COLUMN, trade_vent_more_units(288, 50), 6, 0,
         "whole vents"},
        {KIND_TRADE, "ridge share at 80 percent of 432 sq in", CONSUMER, least.high_sqin, 346, 0.5,
         "printed whole"},
        {KIND_TRADE, "fan for 1,000 sq ft, cfm", FAN_ASSOCIATION, trade_fan_cfm(1000, 0.7, 1), 700,
         1e-9, "exact"},
        {KIND_TRADE, "the same under a dark or steep roof", FAN_ASSOCIATION,
         trade_fan_cfm(1000, 0.7, 1.15), 805, 1e-9, "exact"},
        {KIND_TRADE, "intake for 805 cfm, sq in", FAN_ASSOCIATION, trade_fan_intake_sqin(805, 300),
         386, 0.5, "printed whole"},
        {KIND_OURS, "soffit of 10 sq in per ft for half of 1,886.4 sq in (VE-5), ft", "ours",
         trade_vent_more_feet(943.2, 10), 95, 0, "94.3 ft bought whole"},
        {KIND_OURS, "roof vents of 50 sq in for the other half (VE-5)", "ours",
         trade_vent_more_units(943.2, 50), 19, 0, "whole vents"},
        {KIND_TRADE, "1/8 in mesh: 100 net takes this gross", FIELD_GUIDE,
         trade_vent_gross_sqin(100, 1.25), 125, 0, "exact"},
        {KIND_TRADE, "no. 16 mesh", FIELD_GUIDE, trade_vent_gross_sqin(100, 2), 200, 0, "exact"},
        {KIND_TRADE, "wood louvers and no. 16 mesh", FIELD_GUIDE, trade_vent_gross_sqin(100, 3),
         300, 0, "exact"},
    };
    published_hold(&counted, rows, sizeof(rows) / sizeof(rows[0]));
}

static void ice_barrier(void **state)
{
    (void)state;
    const struct check rows[] = {
        {KIND_TRADE, "47 in up the slope: one course of 36 in will not do, lapped 6", FAR_ENOUGH,
         trade_ice_barrier_courses(trade_ice_barrier_reach_in(12, 6, 24, 6), 36, 6), 2, 0,
         "whole courses"},
        {KIND_TRADE, "59-3/8 in: two courses", FAR_ENOUGH,
         trade_ice_barrier_courses(trade_ice_barrier_reach_in(12, 6, 24, 12), 36, 6), 2, 0,
         "whole courses"},
        {KIND_TRADE, "the inspector's 4-1/2 ft: one course was red-tagged", RED_TAG,
         trade_ice_barrier_courses(54, 36, 3), 2, 0, "whole courses"},
        {KIND_OURS, "4:12, 24 in overhang, inner face (IE-4): courses", "ours",
         trade_ice_barrier_courses(trade_ice_barrier_reach_in(24, 6, 24, 4), 36, 6), 2, 0,
         "whole courses"},
        {KIND_OURS, "two courses lapped 6 in", "ours", trade_ice_barrier_covers_in(2, 36, 6), 66, 0,
         "exact"},
        {KIND_OURS, "two courses lapped 3 in", "ours", trade_ice_barrier_covers_in(2, 36, 3), 69, 0,
         "exact"},
    };
    published_hold(&counted, rows, sizeof(rows) / sizeof(rows[0]));
}

static void loads(void **state)
{
    (void)state;
    const struct check rows[] = {
        {KIND_TRADE, "300 lb to the square, psf", OVERLAYS, trade_psf(300), 3, 1e-9, "exact"},
        {KIND_RECALLED, "1/2 in panel at 0.4 psf for 1/8 in", DEAD_LOADS, trade_deck_psf(0.5, 3.2),
         1.6, 1e-9, "exact"},
        {KIND_RECALLED, "15/32 in panel", DEAD_LOADS, trade_deck_psf(0.46875, 3.2), 1.5, 0.05,
         "the table prints tenths"},
        {KIND_RECALLED, "23/32 in panel, as 3/4", DEAD_LOADS, trade_deck_psf(0.75, 3.2), 2.4, 0.05,
         "the table prints tenths"},
        {KIND_RECALLED, "one layer on 1/2 in panel, 1/8 in past it: a nail of 1 in", NAIL_LENGTHS,
         trade_stocked_length_in(trade_nail_length_in(0.28, 0.5, 0.75, 0.125),
                                 (const double[]){1, 1.25, 1.5, 1.75}, 4),
         1, 0, "the shortest of 1 to 1-1/4 in"},
    };
    published_hold(&counted, rows, sizeof(rows) / sizeof(rows[0]));
}

/* Said by roofers, printed nowhere that was read: common practice. */
static void rules_of_thumb(void **state)
{
    (void)state;
    struct trade_loads loads = {0};
    /* A dump trailer of 6 by 12 ft with sides of 2 ft holds 5.33 cu yd and may
     * carry 7,000 lb; strip shingles weigh 240 lb to the square, and 731 lb of
     * them loose fill a cubic yard (recalled federal factor). */
    const double weight = trade_layer_lb(3000, 240);
    const double bed = trade_bed_cuyd(12, 6, 2);
    assert_int_equal(trade_haul(&loads, trade_heap_cuyd(weight, 731), weight, bed, 7000), 0);
    const struct check rows[] = {
        {KIND_RECALLED, "30 squares of one layer: loads of a trailer with 2 ft sides, 5.33 cu yd",
         THUMB, loads.loads, 2, 0, "whole loads"},
        {KIND_RECALLED, "the same by volume alone", THUMB, loads.by_volume, 2, 0, "whole loads"},
        {KIND_RECALLED, "the same by weight alone", THUMB, loads.by_weight, 2, 0, "whole loads"},
        {KIND_RECALLED, "a bed of 7 by 14 ft, 7.26 cu yd: loads by volume", THUMB,
         trade_purchase(trade_heap_cuyd(weight, 731), 0, trade_bed_cuyd(14, 7, 2)), 2, 0,
         "whole loads"},
        {KIND_RECALLED, "30 squares torn off, mended and shingled, 6 a day: working days", THUMB,
         trade_work_days(trade_squares(3000), 6), 5, 0, "whole days"},
        {KIND_RECALLED, "100 sq ft to the square", THUMB, trade_squares(3000), 30, 0, "exact"},
    };
    published_hold(&counted, rows, sizeof(rows) / sizeof(rows[0]));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(takeoff), cmocka_unit_test(nails_and_rolls),
        cmocka_unit_test(vents),   cmocka_unit_test(ice_barrier),
        cmocka_unit_test(loads),   cmocka_unit_test(rules_of_thumb),
    };
    return published_summary("takeoff", &counted,
                             cmocka_run_group_tests_name("takeoff", tests, NULL, NULL));
}
