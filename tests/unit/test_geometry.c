/* Roof planes and footprints: what must hold at any size, and what cannot be. */
#include "support/random_numbers.h"
#include "trade/footprint.h"
#include "trade/geometry.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <string.h>

#include <cmocka.h>

static struct random_numbers numbers = {RANDOM_SEED};

static double between(double least, double most)
{
    return random_between(&numbers, least, most);
}

static void close_to(double found, double wanted)
{
    const double slack = 1e-9 * (1 + fabs(wanted));
    if (!(fabs(found - wanted) <= slack))
        fail_msg("found %.12g, wanted %.12g", found, wanted);
}

static struct footprint_measure measured(const struct footprint *roof)
{
    struct footprint_measure m;
    const char *why = NULL;
    if (trade_footprint(&m, roof, &why) != 0)
        fail_msg("refused: %s", why);
    assert_null(why);
    return m;
}

static void refused(const struct footprint *roof, const char *part)
{
    struct footprint_measure m;
    const char *why = NULL;
    assert_int_equal(trade_footprint(&m, roof, &why), -1);
    assert_non_null(why);
    if (strstr(why, part) == NULL)
        fail_msg("refused because \"%s\", not \"%s\"", why, part);
}

/* A possible house of any form but the wing's, with no overhang. */
static struct footprint any_house(enum roof_form form)
{
    return (struct footprint){.form = form,
                              .length_ft = between(8, 120),
                              .width_ft = between(8, 120),
                              .pitch = between(0, 24)};
}

static void test_factors(void **state)
{
    (void)state;
    close_to(trade_slope_factor(0), 1);
    close_to(trade_hip_factor(0), sqrt(2));
    close_to(trade_pitch_to_degrees(12), 45);
    close_to(trade_degrees_to_pitch(0), 0);
    for (int i = 0; i < RANDOM_ROUNDS; i++) {
        const double pitch = between(0, 60), more = pitch + between(0.001, 5);
        assert_true(trade_slope_factor(more) > trade_slope_factor(pitch));
        assert_true(trade_hip_factor(more) > trade_hip_factor(pitch));
        close_to(trade_degrees_to_pitch(trade_pitch_to_degrees(pitch)), pitch);
        /* Rafter, rise and run; hip, rise and the diagonal of two runs. */
        const double run = between(0.1, 60), rise = trade_rise_ft(run, pitch);
        close_to(trade_sloped_length_ft(run, pitch), hypot(run, rise));
        close_to(trade_hip_length_ft(run, pitch), hypot(run * sqrt(2), rise));
    }
}

static void test_refused_numbers(void **state)
{
    (void)state;
    for (size_t i = 0; i < IMPOSSIBLE_COUNT; i++) {
        assert_true(isnan(trade_slope_factor(IMPOSSIBLE[i])));
        assert_true(isnan(trade_hip_factor(IMPOSSIBLE[i])));
        assert_true(isnan(trade_pitch_to_degrees(IMPOSSIBLE[i])));
        assert_true(isnan(trade_degrees_to_pitch(IMPOSSIBLE[i])));
        assert_true(isnan(trade_rise_ft(IMPOSSIBLE[i], 4)));
        assert_true(isnan(trade_rise_ft(4, IMPOSSIBLE[i])));
        assert_true(isnan(trade_sloped_length_ft(IMPOSSIBLE[i], 4)));
        assert_true(isnan(trade_hip_length_ft(IMPOSSIBLE[i], 4)));
        assert_true(isnan(trade_hip_length_ft(4, IMPOSSIBLE[i])));
        assert_true(isnan(trade_slope_area_sqft(IMPOSSIBLE[i], 4, 4, 4)));
        assert_true(isnan(trade_slope_area_sqft(4, IMPOSSIBLE[i], 4, 4)));
        assert_true(isnan(trade_slope_area_sqft(4, 4, IMPOSSIBLE[i], 4)));
        assert_true(isnan(trade_slope_area_sqft(4, 4, 4, IMPOSSIBLE[i])));
    }
    assert_true(isnan(trade_degrees_to_pitch(90)));
}

static void test_plane_shapes(void **state)
{
    (void)state;
    static const struct {
        double eave, ridge;
        enum plane_shape shape;
    } SHAPES[] = {{30, 30, PLANE_RECTANGLE}, {30, 30.005, PLANE_RECTANGLE},
                  {30, 0, PLANE_TRIANGLE},   {0, 30, PLANE_TRIANGLE},
                  {40, 20, PLANE_TRAPEZOID}, {20, 40, PLANE_TRAPEZOID}};
    for (size_t i = 0; i < sizeof(SHAPES) / sizeof(SHAPES[0]); i++) {
        const struct roof_plane plane = {SHAPES[i].eave, SHAPES[i].ridge, 12, 5};
        struct plane_measure m;
        const char *why;
        assert_int_equal(trade_plane(&m, &plane, &why), 0);
        assert_int_equal(m.shape, SHAPES[i].shape);
        close_to(m.rise_ft, 5);
        close_to(m.length_ft, 13);
    }
}

static void test_planes_project_back(void **state)
{
    (void)state;
    for (int i = 0; i < RANDOM_ROUNDS; i++) {
        const struct roof_plane plane = {between(0.1, 90), between(0, 90), between(0.5, 60),
                                         between(0, 24)};
        struct plane_measure m;
        const char *why;
        assert_int_equal(trade_plane(&m, &plane, &why), 0);
        close_to(m.area_sqft * cos(trade_pitch_to_degrees(plane.pitch) / 57.295779513082321),
                 m.plan_sqft);
        assert_true(m.side_ft >= m.length_ft && m.length_ft >= m.rise_ft);
    }
}

static void test_planes_refused(void **state)
{
    (void)state;
    static const struct {
        struct roof_plane plane;
        const char *part;
    } BAD[] = {{{-1, 10, 10, 4}, "lengths"},   {{10, NAN, 10, 4}, "lengths"},
               {{0, 0, 10, 4}, "no area"},     {{10, 10, 0, 4}, "run"},
               {{10, 10, INFINITY, 4}, "run"}, {{10, 10, 10, -4}, "pitch"}};
    for (size_t i = 0; i < sizeof(BAD) / sizeof(BAD[0]); i++) {
        struct plane_measure m;
        const char *why = NULL;
        assert_int_equal(trade_plane(&m, &BAD[i].plane, &why), -1);
        assert_non_null(strstr(why, BAD[i].part));
    }
}

/* 40 x 28 ft, 5:12, overhangs 1 ft at eaves and 6 in at rakes: by hand. */
static void test_gable_by_hand(void **state)
{
    (void)state;
    const struct footprint roof = {.form = ROOF_GABLE,
                                   .length_ft = 40,
                                   .width_ft = 28,
                                   .pitch = 5,
                                   .eave_overhang_ft = 1,
                                   .rake_overhang_ft = 0.5};
    const struct footprint_measure m = measured(&roof);
    close_to(m.plan_sqft, 41 * 30);
    close_to(m.area_sqft, 41 * 30 * 13.0 / 12);
    close_to(m.eave_ft, 82);
    close_to(m.rake_ft, 4 * 15 * 13.0 / 12);
    close_to(m.ridge_ft, 41);
    close_to(m.hip_ft + m.valley_ft + m.top_ft, 0);
    assert_int_equal(m.planes, 2);
}

static void test_every_roof_covers_its_plan(void **state)
{
    (void)state;
    static const enum roof_form FORMS[] = {ROOF_GABLE, ROOF_HIP, ROOF_SHED};
    for (int i = 0; i < RANDOM_ROUNDS; i++) {
        const struct footprint roof = any_house(FORMS[i % 3]);
        const struct footprint_measure m = measured(&roof);
        close_to(m.plan_sqft, roof.length_ft * roof.width_ft);
        close_to(m.area_sqft, m.plan_sqft * trade_slope_factor(roof.pitch));
    }
}

/* On plan a hip runs half the width in from each end, and there meets the ridge. */
static void test_hips_meet_the_ridge(void **state)
{
    (void)state;
    for (int i = 0; i < RANDOM_ROUNDS; i++) {
        const struct footprint roof = any_house(ROOF_HIP);
        const struct footprint_measure m = measured(&roof);
        const double run = fmin(roof.length_ft, roof.width_ft) / 2;
        close_to(m.ridge_ft + 2 * run, fmax(roof.length_ft, roof.width_ft));
        close_to(m.hip_ft / 4, hypot(hypot(run, run), trade_rise_ft(run, roof.pitch)));
        /* Its four planes, each by itself. */
        const double longer = fmax(roof.length_ft, roof.width_ft);
        close_to(m.area_sqft, 2 * trade_slope_area_sqft(longer, m.ridge_ft, run, roof.pitch)
                                  + 2 * trade_slope_area_sqft(2 * run, 0, run, roof.pitch));
        assert_int_equal(m.planes, 4);
    }
}

static void test_square_hip_is_a_pyramid(void **state)
{
    (void)state;
    const struct footprint roof = {.form = ROOF_HIP, .length_ft = 24, .width_ft = 24, .pitch = 12};
    const struct footprint_measure m = measured(&roof);
    assert_true(m.ridge_ft == 0);
    close_to(m.area_sqft, 4 * trade_slope_area_sqft(24, 0, 12, 12));
    close_to(m.hip_ft, 4 * 12 * sqrt(3));
    close_to(m.eave_ft, 96);
}

/* Turned by a quarter, a hip roof is the same roof. */
static void test_hip_turned(void **state)
{
    (void)state;
    const struct footprint one = {
        .form = ROOF_HIP, .length_ft = 50, .width_ft = 30, .pitch = 6, .eave_overhang_ft = 1.5};
    struct footprint other = one;
    other.length_ft = 30;
    other.width_ft = 50;
    const struct footprint_measure a = measured(&one), b = measured(&other);
    close_to(a.area_sqft, b.area_sqft);
    close_to(a.ridge_ft, b.ridge_ft);
    close_to(a.hip_ft, b.hip_ft);
    close_to(a.eave_ft, b.eave_ft);
    close_to(a.eave_ft, 2 * (53 + 33));
}

static void test_lengths_and_areas_scale(void **state)
{
    (void)state;
    for (int i = 0; i < RANDOM_ROUNDS; i++) {
        struct footprint roof = any_house(i % 2 == 0 ? ROOF_GABLE : ROOF_HIP);
        const double k = between(0.2, 5);
        const struct footprint_measure small = measured(&roof);
        roof.length_ft *= k;
        roof.width_ft *= k;
        const struct footprint_measure large = measured(&roof);
        close_to(large.area_sqft, k * k * small.area_sqft);
        close_to(large.eave_ft, k * small.eave_ft);
        close_to(large.rake_ft, k * small.rake_ft);
        close_to(large.hip_ft, k * small.hip_ft);
    }
}

static void test_porch_adds_a_shed(void **state)
{
    (void)state;
    struct footprint roof = {.form = ROOF_GABLE_PORCH,
                             .length_ft = 40,
                             .width_ft = 28,
                             .pitch = 5,
                             .porch_length_ft = 12,
                             .porch_depth_ft = 6,
                             .porch_pitch = 4};
    const struct footprint_measure both = measured(&roof);
    roof.form = ROOF_GABLE;
    const struct footprint_measure gable = measured(&roof);
    const struct footprint porch = {.form = ROOF_SHED, .length_ft = 12, .width_ft = 6, .pitch = 4};
    const struct footprint_measure shed = measured(&porch);
    close_to(both.area_sqft, gable.area_sqft + shed.area_sqft);
    close_to(both.eave_ft, gable.eave_ft + 12);
    close_to(both.top_ft, 12);
    close_to(both.rake_ft, gable.rake_ft + 2 * trade_sloped_length_ft(6, 4));
    assert_int_equal(both.planes, 3);
}

/* A wing 20 ft wide stands 10 ft out from a 60 x 30 ft house at 6:12. */
static void test_cross_gable_by_hand(void **state)
{
    (void)state;
    const struct footprint roof = {.form = ROOF_CROSS_GABLE,
                                   .length_ft = 60,
                                   .width_ft = 30,
                                   .pitch = 6,
                                   .wing_width_ft = 20,
                                   .wing_out_ft = 10};
    const struct footprint_measure m = measured(&roof);
    close_to(m.plan_sqft, 60 * 30 + 20 * 10);
    close_to(m.area_sqft, m.plan_sqft * trade_slope_factor(6));
    close_to(m.ridge_ft, 60 + 10 + 10);
    close_to(m.valley_ft, 2 * 10 * 1.5); /* the hip factor at 6:12 is 1.5 */
    close_to(m.eave_ft, 2 * 60 - 20 + 2 * 10);
    close_to(m.rake_ft, (4 * 15 + 2 * 10) * trade_slope_factor(6));
    assert_int_equal(m.planes, 4);
}

static void test_cross_gable_planes_add_up(void **state)
{
    (void)state;
    for (int i = 0; i < RANDOM_ROUNDS; i++) {
        struct footprint roof = any_house(ROOF_CROSS_GABLE);
        roof.eave_overhang_ft = between(0, 2);
        roof.rake_overhang_ft = roof.eave_overhang_ft;
        roof.wing_width_ft = between(4, fmin(roof.length_ft, roof.width_ft));
        roof.wing_out_ft = between(2, 30);
        const struct footprint_measure m = measured(&roof);
        /* The wing's planes are trapezoids, longer at the ridge; they hide a
         * triangle of the main slope. */
        const double half = roof.wing_width_ft / 2 + roof.eave_overhang_ft, out = roof.wing_out_ft;
        const double main_ft = roof.width_ft + 2 * roof.eave_overhang_ft;
        const double whole = trade_slope_area_sqft(roof.length_ft + 2 * roof.rake_overhang_ft,
                                                   roof.length_ft + 2 * roof.rake_overhang_ft,
                                                   main_ft, roof.pitch);
        const double wing = 2 * trade_slope_area_sqft(out, out + half, half, roof.pitch);
        const double hidden = trade_slope_area_sqft(2 * half, 0, half, roof.pitch);
        close_to(m.area_sqft, whole + wing - hidden);
        assert_true(m.valley_ft > 0 && m.eave_ft > 0);
    }
}

static void test_impossible_roofs(void **state)
{
    (void)state;
    const struct footprint good = {.form = ROOF_CROSS_GABLE,
                                   .length_ft = 40,
                                   .width_ft = 28,
                                   .pitch = 5,
                                   .wing_width_ft = 20,
                                   .wing_out_ft = 8};
    measured(&good);
    struct footprint bad = good;
    bad.length_ft = 0;
    refused(&bad, "length and a width");
    bad = good, bad.width_ft = NAN;
    refused(&bad, "length and a width");
    bad = good, bad.pitch = -1;
    refused(&bad, "pitch");
    bad = good, bad.eave_overhang_ft = -0.5;
    refused(&bad, "overhang");
    bad = good, bad.wing_width_ft = 29;
    refused(&bad, "wider than the house");
    bad = good, bad.wing_width_ft = 20, bad.length_ft = 18;
    refused(&bad, "wider than the wall");
    bad = good, bad.length_ft = 21, bad.eave_overhang_ft = 2;
    refused(&bad, "past both ends");
    bad = good, bad.wing_out_ft = 1, bad.eave_overhang_ft = 2;
    refused(&bad, "under the main eave");
    bad = good, bad.wing_out_ft = 0;
    refused(&bad, "stand out");
    bad = good, bad.form = ROOF_HIP, bad.rake_overhang_ft = 1;
    refused(&bad, "no rakes");
    bad = good, bad.form = ROOF_GABLE_PORCH;
    refused(&bad, "porch needs");
    bad.porch_length_ft = 41, bad.porch_depth_ft = 6;
    refused(&bad, "longer than the eave wall");
    bad.porch_length_ft = 12, bad.porch_pitch = -1;
    refused(&bad, "porch's pitch");
}

/* A wing as wide as the house: the two ridges meet, one height. */
static void test_wing_as_wide_as_the_house(void **state)
{
    (void)state;
    const struct footprint roof = {.form = ROOF_CROSS_GABLE,
                                   .length_ft = 40,
                                   .width_ft = 28,
                                   .pitch = 5,
                                   .wing_width_ft = 28,
                                   .wing_out_ft = 12};
    const struct footprint_measure m = measured(&roof);
    close_to(m.plan_sqft, 40 * 28 + 28 * 12);
    close_to(m.ridge_ft, 40 + 12 + 14);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_factors),
        cmocka_unit_test(test_refused_numbers),
        cmocka_unit_test(test_plane_shapes),
        cmocka_unit_test(test_planes_project_back),
        cmocka_unit_test(test_planes_refused),
        cmocka_unit_test(test_gable_by_hand),
        cmocka_unit_test(test_every_roof_covers_its_plan),
        cmocka_unit_test(test_hips_meet_the_ridge),
        cmocka_unit_test(test_square_hip_is_a_pyramid),
        cmocka_unit_test(test_hip_turned),
        cmocka_unit_test(test_lengths_and_areas_scale),
        cmocka_unit_test(test_porch_adds_a_shed),
        cmocka_unit_test(test_cross_gable_by_hand),
        cmocka_unit_test(test_cross_gable_planes_add_up),
        cmocka_unit_test(test_impossible_roofs),
        cmocka_unit_test(test_wing_as_wide_as_the_house),
    };
    return cmocka_run_group_tests_name("geometry", tests, NULL, NULL);
}
