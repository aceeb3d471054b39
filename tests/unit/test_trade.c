/* What the trade's arithmetic must do whatever the figures: refuse what is no
 * length, never hand back NaN or infinity for what is, and move the right way
 * when an argument does. The values themselves are in tests/published. */
#include "trade/cladding.h"
#include "trade/fastener.h"
#include "trade/footprint.h"
#include "trade/geometry.h"
#include "trade/ice_barrier.h"
#include "trade/nail.h"
#include "trade/spacing.h"
#include "trade/takeoff.h"
#include "trade/ventilation.h"
#include "trade/weight.h"
#include "trade/wind.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <string.h>
#include <time.h>

#include <cmocka.h>

enum { ARGUMENTS_MOST = 4, ROUNDS = 300 };

/* A function of up to four numbers, as a table can hold it. moves[i] is +1 or
 * -1 when it may only rise or fall with argument i, 0 when it may do either;
 * least and most bound the arguments tried; bad_zero[i] when 0 is refused. */
struct sum {
    const char *name;
    double (*of)(const double *a);
    int count;
    int moves[ARGUMENTS_MOST];
    bool bad_zero[ARGUMENTS_MOST];
    double least, most;
};

#define ONE(f)                          \
    static double f##_(const double *a) \
    {                                   \
        return f(a[0]);                 \
    }
#define TWO(f)                          \
    static double f##_(const double *a) \
    {                                   \
        return f(a[0], a[1]);           \
    }
#define THREE(f)                        \
    static double f##_(const double *a) \
    {                                   \
        return f(a[0], a[1], a[2]);     \
    }
#define FOUR(f)                           \
    static double f##_(const double *a)   \
    {                                     \
        return f(a[0], a[1], a[2], a[3]); \
    }

ONE(trade_slope_factor)
ONE(trade_hip_factor)
ONE(trade_pitch_to_degrees)
TWO(trade_rise_ft)
TWO(trade_sloped_length_ft)
TWO(trade_hip_length_ft)
FOUR(trade_slope_area_sqft)
FOUR(trade_ice_barrier_reach_in)
TWO(trade_vent_area_needed_sqin)
TWO(trade_vent_strip_sqin)
TWO(trade_vent_units_sqin)
TWO(trade_share_percent)
THREE(trade_fan_cfm)
TWO(trade_fan_intake_sqin)
TWO(trade_nail_penetration_in)
FOUR(trade_nail_length_in)
TWO(trade_nails_per_square)
THREE(trade_nails)
ONE(trade_squares)
TWO(trade_with_waste)
THREE(trade_purchase)
TWO(trade_strips_per_square)
TWO(trade_work_days)
ONE(trade_psf)
ONE(trade_lb_per_square)
TWO(trade_deck_psf)
TWO(trade_plan_load_psf)
TWO(trade_layer_lb)
TWO(trade_heap_cuyd)
THREE(trade_bed_cuyd)
THREE(trade_stack_psf)
THREE(trade_stack_most)
ONE(trade_vult_to_vasd)
ONE(trade_vasd_to_vult)
THREE(trade_nail_spacing_in)

#define ROW(f, count, ...)           \
    {                                \
#f, f##_, count, __VA_ARGS__ \
    }

static const struct sum SUMS[] = {
    ROW(trade_slope_factor, 1, {1}, {false}, 0, 60),
    ROW(trade_hip_factor, 1, {1}, {false}, 0, 60),
    ROW(trade_pitch_to_degrees, 1, {1}, {false}, 0, 60),
    ROW(trade_rise_ft, 2, {1, 1}, {false}, 0, 200),
    ROW(trade_sloped_length_ft, 2, {1, 1}, {false}, 0, 200),
    ROW(trade_hip_length_ft, 2, {1, 1}, {false}, 0, 200),
    ROW(trade_slope_area_sqft, 4, {1, 1, 1, 1}, {false}, 0, 200),
    ROW(trade_ice_barrier_reach_in, 4, {1, 1, 1, 1}, {false}, 0, 60),
    ROW(trade_vent_area_needed_sqin, 2, {1, -1}, {false, true}, 1, 5000),
    ROW(trade_vent_strip_sqin, 2, {1, 1}, {false}, 0, 2000),
    ROW(trade_vent_units_sqin, 2, {1, 1}, {false}, 0, 2000),
    ROW(trade_share_percent, 2, {1, -1}, {false, true}, 1, 5000),
    ROW(trade_fan_cfm, 3, {1, 1, 1}, {false, false, true}, 1, 5000),
    ROW(trade_fan_intake_sqin, 2, {1, -1}, {false, true}, 1, 5000),
    ROW(trade_nail_penetration_in, 2, {1, -1}, {false}, 0, 6),
    ROW(trade_nail_length_in, 4, {1, 0, 0, 1}, {false}, 0.1, 6),
    ROW(trade_nails_per_square, 2, {1, 1}, {false}, 0, 200),
    ROW(trade_nails, 3, {1, 1, 1}, {false}, 0, 200),
    ROW(trade_squares, 1, {1}, {false}, 0, 50000),
    ROW(trade_with_waste, 2, {1, 1}, {false}, 0, 200),
    ROW(trade_purchase, 3, {1, 1, -1}, {false, false, true}, 1, 200),
    ROW(trade_strips_per_square, 2, {-1, -1}, {true, true}, 1, 60),
    ROW(trade_work_days, 2, {1, -1}, {false, true}, 1, 60),
    ROW(trade_psf, 1, {1}, {false}, 0, 5000),
    ROW(trade_lb_per_square, 1, {1}, {false}, 0, 100),
    ROW(trade_deck_psf, 2, {1, 1}, {false}, 0, 6),
    ROW(trade_plan_load_psf, 2, {1, 1}, {false}, 0, 60),
    ROW(trade_layer_lb, 2, {1, 1}, {false}, 0, 5000),
    ROW(trade_heap_cuyd, 2, {1, -1}, {false, true}, 1, 5000),
    ROW(trade_bed_cuyd, 3, {1, 1, 1}, {false}, 0, 60),
    ROW(trade_stack_psf, 3, {1, 1, -1}, {false, false, true}, 1, 100),
    ROW(trade_stack_most, 3, {-1, 1, 1}, {true, false, false}, 1, 100),
    ROW(trade_vult_to_vasd, 1, {1}, {false}, 0, 250),
    ROW(trade_vasd_to_vult, 1, {1}, {false}, 0, 250),
    ROW(trade_nail_spacing_in, 3, {1, -1, -1}, {true, true, true}, 1, 200),
};
enum { SUM_COUNT = sizeof(SUMS) / sizeof(SUMS[0]) };

/* The same numbers each run. */
static double between(double least, double most)
{
    static uint64_t seed = 20260302;
    seed = seed * 6364136223846793005u + 1442695040888963407u;
    return least + (most - least) * (double)(seed >> 11) / 9007199254740992.0;
}

static void draw(const struct sum *sum, double a[ARGUMENTS_MOST])
{
    for (int i = 0; i < sum->count; i++)
        a[i] = between(sum->least, sum->most);
}

static void what_is_no_number_is_refused(void **state)
{
    (void)state;
    const double bad[] = {NAN, INFINITY, -INFINITY, -1, -1e-9, -1e300};
    for (size_t s = 0; s < SUM_COUNT; s++) {
        for (int i = 0; i < SUMS[s].count; i++) {
            for (size_t b = 0; b < sizeof(bad) / sizeof(bad[0]); b++) {
                double a[ARGUMENTS_MOST];
                draw(&SUMS[s], a);
                a[i] = bad[b];
                const double result = SUMS[s].of(a);
                if (!isnan(result))
                    fail_msg("%s: argument %d of %g gives %g", SUMS[s].name, i + 1, bad[b], result);
            }
        }
    }
}

static void nothing_is_divided_by_zero(void **state)
{
    (void)state;
    for (size_t s = 0; s < SUM_COUNT; s++) {
        for (int i = 0; i < SUMS[s].count; i++) {
            double a[ARGUMENTS_MOST];
            draw(&SUMS[s], a);
            a[i] = 0;
            const double result = SUMS[s].of(a);
            if (SUMS[s].bad_zero[i] ? !isnan(result) : !isfinite(result))
                fail_msg("%s: argument %d of 0 gives %g", SUMS[s].name, i + 1, result);
        }
    }
}

static void usable_arguments_give_usable_results(void **state)
{
    (void)state;
    for (size_t s = 0; s < SUM_COUNT; s++) {
        for (int round = 0; round < ROUNDS; round++) {
            double a[ARGUMENTS_MOST];
            draw(&SUMS[s], a);
            const double result = SUMS[s].of(a);
            const bool may_be_negative = strcmp(SUMS[s].name, "trade_nail_penetration_in") == 0;
            if (!isfinite(result) || (result < 0 && !may_be_negative))
                fail_msg("%s(%g, ...) gives %g", SUMS[s].name, a[0], result);
        }
    }
}

static void results_move_the_right_way(void **state)
{
    (void)state;
    for (size_t s = 0; s < SUM_COUNT; s++) {
        for (int i = 0; i < SUMS[s].count; i++) {
            for (int round = 0; SUMS[s].moves[i] != 0 && round < ROUNDS; round++) {
                double a[ARGUMENTS_MOST];
                draw(&SUMS[s], a);
                const double before = SUMS[s].of(a);
                a[i] += between(0, SUMS[s].most);
                const double change = (SUMS[s].of(a) - before) * SUMS[s].moves[i];
                if (!(change >= -1e-9 * fabs(before)))
                    fail_msg("%s: %g moves by %g when argument %d grows", SUMS[s].name, before,
                             change, i + 1);
            }
        }
    }
}

static void assert_near(double found, double wanted)
{
    if (!(fabs(found - wanted) <= 1e-9 * fmax(1, fabs(wanted))))
        fail_msg("%.17g is not %.17g", found, wanted);
}

static void there_and_back_is_where_it_was(void **state)
{
    (void)state;
    for (int round = 0; round < ROUNDS; round++) {
        const double x = between(0, 60);
        assert_near(trade_degrees_to_pitch(trade_pitch_to_degrees(x)), x);
        assert_near(trade_vasd_to_vult(trade_vult_to_vasd(x)), x);
        assert_near(trade_lb_per_square(trade_psf(x)), x);
        assert_near(trade_vent_net_sqin(trade_vent_gross_sqin(x, 1.25), 1.25), x);
        assert_near(trade_share_percent(trade_with_waste(100, x) - 100, 100), x);
    }
    assert_true(isnan(trade_degrees_to_pitch(90)));
    assert_true(isnan(trade_degrees_to_pitch(-1)));
}

/* Pythagoras: rise, run and slope; and a hip is longer than a common rafter. */
static void triangles_close(void **state)
{
    (void)state;
    for (int round = 0; round < ROUNDS; round++) {
        const double run = between(0, 100), pitch = between(0, 24);
        const double rise = trade_rise_ft(run, pitch), length = trade_sloped_length_ft(run, pitch);
        assert_near(length * length, run * run + rise * rise);
        assert_true(length >= run && trade_hip_length_ft(run, pitch) >= length);
    }
    assert_near(trade_slope_factor(0), 1);
}

static void a_split_adds_up(void **state)
{
    (void)state;
    for (int round = 0; round < ROUNDS; round++) {
        const double needed = between(0, 5000), percent = between(0, 100);
        struct vent_split split;
        assert_int_equal(trade_vent_split(&split, needed, percent), 0);
        assert_near(split.high_sqin + split.low_sqin, needed);
        assert_true(split.high_sqin >= 0 && split.low_sqin >= 0);
    }
    struct vent_split split;
    const double bad[] = {-1, 101, NAN, INFINITY};
    for (size_t i = 0; i < 4; i++)
        assert_int_equal(trade_vent_split(&split, 100, bad[i]), -1);
    assert_int_equal(trade_vent_split(&split, NAN, 50), -1);
}

static void what_is_short_is_made_up(void **state)
{
    (void)state;
    for (int round = 0; round < ROUNDS; round++) {
        const double missing = between(0.01, 2000), each = between(1, 100);
        const double more = trade_vent_more_units(missing, each);
        assert_true(more == floor(more) && more * each >= missing - 1e-6);
        assert_true((more - 1) * each < missing);
        assert_near(trade_vent_more_feet(missing, each), more);
    }
    assert_near(trade_vent_more_units(0, 5), 0);
    assert_near(trade_vent_more_feet(-20, 5), 0);
    assert_true(isnan(trade_vent_more_units(10, 0)));
    assert_true(isnan(trade_vent_more_feet(10, NAN)));
    assert_true(isnan(trade_vent_more_feet(NAN, 5)));
}

static void what_is_bought_covers_what_is_needed(void **state)
{
    (void)state;
    for (int round = 0; round < ROUNDS; round++) {
        const double exact = between(0, 500), waste = between(0, 20), each = between(0.5, 50);
        const double bought = trade_purchase(exact, waste, each);
        assert_true(bought == floor(bought));
        assert_true(bought * each >= trade_with_waste(exact, waste) * (1 - 1e-8));
        assert_true((bought - 1) * each < trade_with_waste(exact, waste));
    }
    /* A rounding error buys nothing. */
    assert_near(trade_purchase(0.1 + 0.2, 0, 0.1), 3);
    assert_near(trade_purchase(0, 10, 5), 0);
}

static void a_spread_sums_up_its_list(void **state)
{
    (void)state;
    static const double values[] = {6, 5.5, 7, 6.0004, 6.0006};
    struct spread spread;
    assert_int_equal(trade_spread(&spread, values, 5, 6, "in"), 0);
    assert_near(spread.least, 5.5);
    assert_near(spread.most, 7);
    assert_int_equal(spread.count, 5);
    assert_int_equal(spread.over, 2); /* 6.0004 prints as 6 */
    assert_near(spread.over_percent, 40);
    assert_int_equal(trade_spread(&spread, values, 0, 6, "in"), -1);
    static const double bad[] = {6, NAN, 5};
    assert_int_equal(trade_spread(&spread, bad, 3, 6, "in"), -1);
    const double endless[] = {INFINITY};
    assert_int_equal(trade_spread(&spread, endless, 1, 6, "in"), -1);
}

static void zones_add_up_to_the_plan(void **state)
{
    (void)state;
    for (int round = 0; round < ROUNDS; round++) {
        const double width = between(10, 60), length = width + between(0, 60);
        const double strip = between(1, 12);
        struct cladding_zones z;
        assert_int_equal(trade_gable_zones_sqft(&z, length, width, strip), 0);
        assert_near(z.field + z.eave + z.rake + z.ridge + z.eave_corner + z.ridge_corner,
                    length * width);
        assert_true(fmin(fmin(z.field, z.eave), fmin(z.rake, z.ridge)) >= 0);
        assert_int_equal(trade_hip_zones_sqft(&z, length, width, strip), 0);
        assert_near(z.field + z.eave + z.rake + z.ridge + z.eave_corner + z.ridge_corner,
                    length * width);
        assert_true(fmin(fmin(z.field, z.eave), fmin(z.rake, z.ridge)) >= -1e-9);
    }
    struct cladding_zones z;
    assert_int_equal(trade_gable_zones_sqft(&z, NAN, 10, 3), -1);
    assert_int_equal(trade_hip_zones_sqft(&z, 10, -1, 3), -1);
}

/* Scaled by k, lengths grow by k and areas by its square. */
static void a_roof_grows_with_its_plan(void **state)
{
    (void)state;
    static const enum roof_form forms[] = {ROOF_GABLE, ROOF_HIP, ROOF_SHED};
    for (int round = 0; round < ROUNDS; round++) {
        struct footprint small = {.form = forms[round % 3], .pitch = between(1, 18)};
        small.width_ft = between(10, 40);
        small.length_ft = small.width_ft + between(0, 30);
        small.eave_overhang_ft = between(0, 2);
        if (small.form != ROOF_HIP)
            small.rake_overhang_ft = between(0, 2);
        struct footprint large = small;
        const double k = between(1.1, 3);
        large.width_ft *= k;
        large.length_ft *= k;
        large.eave_overhang_ft *= k;
        large.rake_overhang_ft *= k;
        struct footprint_measure a, b;
        const char *why = NULL;
        assert_int_equal(trade_footprint(&a, &small, &why), 0);
        assert_int_equal(trade_footprint(&b, &large, &why), 0);
        assert_near(b.area_sqft, a.area_sqft * k * k);
        assert_near(b.plan_sqft, a.plan_sqft * k * k);
        assert_near(b.eave_ft, a.eave_ft * k);
        assert_near(b.ridge_ft + b.hip_ft + b.rake_ft, (a.ridge_ft + a.hip_ft + a.rake_ft) * k);
        assert_near(a.area_sqft, a.plan_sqft * trade_slope_factor(small.pitch));
    }
}

static void what_cannot_stand_is_refused_with_a_reason(void **state)
{
    (void)state;
    const struct footprint roofs[] = {
        {.form = ROOF_GABLE, .length_ft = NAN, .width_ft = 20, .pitch = 5},
        {.form = ROOF_GABLE, .length_ft = 30, .width_ft = -20, .pitch = 5},
        {.form = ROOF_HIP, .length_ft = 30, .width_ft = 20, .pitch = INFINITY},
        {.form = ROOF_CROSS_GABLE,
         .length_ft = 30,
         .width_ft = 20,
         .pitch = 5,
         .wing_width_ft = 25,
         .wing_out_ft = 5},
    };
    for (size_t i = 0; i < sizeof(roofs) / sizeof(roofs[0]); i++) {
        struct footprint_measure measure;
        const char *why = NULL;
        assert_int_equal(trade_footprint(&measure, &roofs[i], &why), -1);
        assert_non_null(why);
    }
    const struct roof_plane planes[] = {
        {.eave_ft = 0, .ridge_ft = 0, .run_ft = 10, .pitch = 5},
        {.eave_ft = 10, .ridge_ft = 10, .run_ft = 0, .pitch = 5},
        {.eave_ft = 10, .ridge_ft = 10, .run_ft = 10, .pitch = NAN},
    };
    for (size_t i = 0; i < sizeof(planes) / sizeof(planes[0]); i++) {
        struct plane_measure measure;
        const char *why = NULL;
        assert_int_equal(trade_plane(&measure, &planes[i], &why), -1);
        assert_non_null(why);
    }
}

/* More wind, more pressure; higher, more wind; never less than the floor. */
static void wind_presses_harder_with_speed_and_height(void **state)
{
    (void)state;
    const struct wind_profile open = {.factor = 2.01, .alpha = 9.5, .zg_ft = 900, .least_ft = 15};
    for (int round = 0; round < ROUNDS; round++) {
        const double low = between(0, 50), high = low + between(0, 100);
        assert_true(trade_wind_kz(high, &open) >= trade_wind_kz(low, &open));
        struct wind_site site = {
            .vult_mph = between(80, 200), .kz = 0.8, .kzt = 1, .kd = 0.85, .ke = 1};
        const double q = trade_wind_q_psf(&site);
        site.vult_mph *= 2;
        assert_near(trade_wind_q_psf(&site), 4 * q);
        const struct cladding_load load = {.gcpi = 0.18, .load_factor = 1, .least_psf = 16};
        assert_true(fabs(trade_cladding_psf(q, -between(0, 3), &load)) >= 16);
    }
    assert_true(isnan(trade_wind_kz(901, &open)));
    assert_true(isnan(trade_wind_kz(NAN, &open)));
    assert_true(isnan(trade_wind_ke(40000)));
    assert_near(trade_wind_ke(0), 1);
}

/* A nail holds no less when it is thicker or longer, and never more than the
 * weaker of its two ends. */
static void a_nail_holds_by_its_weaker_end(void **state)
{
    (void)state;
    for (int round = 0; round < ROUNDS; round++) {
        struct nail nail = {.length_in = between(1.5, 4),
                            .shank_in = between(0.08, 0.2),
                            .head_in = between(0.22, 0.5)};
        const struct nailing nailing = {.framing_gravity = between(0.35, 0.55),
                                        .panel_gravity = 0.5,
                                        .panel_in = between(0.3, 0.75),
                                        .duration = 1.6,
                                        .wet_withdrawal = 1,
                                        .wet_pull_through = 1};
        struct nail_capacity before, after;
        const char *why = NULL;
        assert_int_equal(trade_nail_capacity(&before, &nail, &nailing, &why), 0);
        assert_near(before.lb, fmin(before.withdrawal_lb, before.pull_through_lb));
        assert_true(before.head_governs == (before.pull_through_lb < before.withdrawal_lb));
        nail.length_in += 0.5;
        assert_int_equal(trade_nail_capacity(&after, &nail, &nailing, &why), 0);
        assert_true(after.withdrawal_lb > before.withdrawal_lb && after.lb >= before.lb);
    }
    const struct nail stub = {.length_in = 0.25, .shank_in = 0.1, .head_in = 0.3};
    const struct nailing deck = {.framing_gravity = 0.42,
                                 .panel_gravity = 0.5,
                                 .panel_in = 0.5,
                                 .duration = 1.6,
                                 .wet_withdrawal = 1,
                                 .wet_pull_through = 1};
    struct nail_capacity capacity;
    const char *why = NULL;
    assert_int_equal(trade_nail_capacity(&capacity, &stub, &deck, &why), -1);
    assert_non_null(why);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(what_is_no_number_is_refused),
        cmocka_unit_test(nothing_is_divided_by_zero),
        cmocka_unit_test(usable_arguments_give_usable_results),
        cmocka_unit_test(results_move_the_right_way),
        cmocka_unit_test(there_and_back_is_where_it_was),
        cmocka_unit_test(triangles_close),
        cmocka_unit_test(a_split_adds_up),
        cmocka_unit_test(what_is_short_is_made_up),
        cmocka_unit_test(what_is_bought_covers_what_is_needed),
        cmocka_unit_test(a_spread_sums_up_its_list),
        cmocka_unit_test(zones_add_up_to_the_plan),
        cmocka_unit_test(a_roof_grows_with_its_plan),
        cmocka_unit_test(what_cannot_stand_is_refused_with_a_reason),
        cmocka_unit_test(wind_presses_harder_with_speed_and_height),
        cmocka_unit_test(a_nail_holds_by_its_weaker_end),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
