/* Roofs laid out from a footprint: what must hold at any size, by hand where
 * that is short, and what cannot be. */
#include "support/random_numbers.h"
#include "trade/geometry.h"
#include "trade/layout.h"

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

static struct layout laid_out(const struct footprint *roof, double wing_left_ft)
{
    struct layout layout;
    const char *why = NULL;
    if (trade_layout(&layout, roof, wing_left_ft, &why) != 0)
        fail_msg("refused: %s", why);
    assert_null(why);
    return layout;
}

static const struct layout_plane *plane_of(const struct layout *layout, const char *name)
{
    for (size_t i = 0; i < layout->plane_count; i++)
        if (strcmp(layout->planes[i].name, name) == 0)
            return &layout->planes[i];
    fail_msg("no plane is named %s", name);
    return NULL;
}

static double edge_ft(const struct layout *layout, const char *name)
{
    for (size_t i = 0; i < layout->edge_count; i++)
        if (strcmp(layout->edges[i].name, name) == 0)
            return layout->edges[i].length_ft;
    fail_msg("no edge is named %s", name);
    return NAN;
}

static double kind_ft(const struct layout *layout, enum layout_kind kind)
{
    double sum = 0;
    for (size_t i = 0; i < layout->edge_count; i++)
        if (layout->edges[i].kind == kind)
            sum += layout->edges[i].length_ft;
    return sum;
}

/* A house of any form and size that can be; wing_left is where its wing stands. */
static struct footprint any_house(enum roof_form form, double *wing_left)
{
    struct footprint roof = {.form = form,
                             .length_ft = between(20, 120),
                             .width_ft = between(20, 120),
                             .pitch = between(0, 24),
                             .eave_overhang_ft = between(0, 3)};
    roof.rake_overhang_ft = form == ROOF_HIP ? 0 : between(roof.eave_overhang_ft, 4);
    roof.porch_length_ft = between(4, roof.length_ft);
    roof.porch_depth_ft = between(4, 12);
    roof.porch_pitch = between(0, 12);
    roof.wing_width_ft = between(4, fmin(roof.length_ft, roof.width_ft));
    roof.wing_out_ft = between(4, 40);
    *wing_left = between(0, roof.length_ft - roof.wing_width_ft);
    return roof;
}

static const enum roof_form FORMS[] = {ROOF_GABLE, ROOF_HIP, ROOF_GABLE_PORCH, ROOF_SHED,
                                       ROOF_CROSS_GABLE};
enum { FORM_COUNT = sizeof(FORMS) / sizeof(FORMS[0]) };

/* Summed, planes and edges are the whole roof as trade_footprint measures it. */
static void test_parts_make_the_whole(void **state)
{
    (void)state;
    for (int i = 0; i < RANDOM_ROUNDS; i++) {
        double left = 0, plan = 0, area = 0;
        const struct footprint roof = any_house(FORMS[i % FORM_COUNT], &left);
        const struct layout layout = laid_out(&roof, left);
        struct footprint_measure whole;
        const char *why;
        assert_int_equal(trade_footprint(&whole, &roof, &why), 0);
        for (size_t p = 0; p < layout.plane_count; p++) {
            plan += layout.planes[p].plan_sqft;
            area += trade_plan_area_sqft(layout.planes[p].plan_sqft, layout.planes[p].pitch);
        }
        assert_int_equal(layout.plane_count, whole.planes);
        close_to(plan, whole.plan_sqft);
        close_to(area, whole.area_sqft);
        /* A piece of eave shorter than 0.1 ft is left out, at most two of them. */
        assert_true(fabs(kind_ft(&layout, LAYOUT_EAVE) - whole.eave_ft) < 0.2 + 1e-9);
        close_to(kind_ft(&layout, LAYOUT_RAKE), whole.rake_ft);
        close_to(kind_ft(&layout, LAYOUT_HIP) / 2, whole.hip_ft);
        close_to(kind_ft(&layout, LAYOUT_VALLEY) / 2, whole.valley_ft);
        close_to(layout.ridge_ft, whole.ridge_ft);
    }
}

/* The plan is covered once: walls and overhangs, and a porch by itself. */
static void test_planes_project_back_to_the_footprint(void **state)
{
    (void)state;
    for (int i = 0; i < RANDOM_ROUNDS; i++) {
        double left = 0, plan = 0;
        const enum roof_form form = FORMS[i % FORM_COUNT];
        const struct footprint roof = any_house(form, &left);
        const struct layout layout = laid_out(&roof, left);
        for (size_t p = 0; p < layout.plane_count; p++)
            plan += layout.planes[p].plan_sqft;
        const double ends = form == ROOF_HIP ? roof.eave_overhang_ft : roof.rake_overhang_ft;
        double covered = (roof.length_ft + 2 * ends) * (roof.width_ft + 2 * roof.eave_overhang_ft);
        if (form == ROOF_GABLE_PORCH)
            covered += (roof.porch_length_ft + 2 * ends)
                       * (roof.porch_depth_ft + roof.eave_overhang_ft);
        if (form == ROOF_CROSS_GABLE)
            covered += (roof.wing_width_ft + 2 * roof.eave_overhang_ft)
                       * (roof.wing_out_ft + roof.rake_overhang_ft - roof.eave_overhang_ft);
        close_to(plan, covered);
    }
}

/* What each plane's edges and run say is its area, but for one a wing cuts into. */
static void test_each_plane_is_possible(void **state)
{
    (void)state;
    for (int i = 0; i < RANDOM_ROUNDS; i++) {
        double left = 0;
        const struct footprint roof = any_house(FORMS[i % FORM_COUNT], &left);
        const struct layout layout = laid_out(&roof, left);
        for (size_t p = 0; p < layout.plane_count; p++) {
            const struct layout_plane *plane = &layout.planes[p];
            const struct roof_plane edges = {plane->eave_ft, plane->ridge_ft, plane->run_ft,
                                             plane->pitch};
            struct plane_measure measure;
            const char *why;
            assert_int_equal(trade_plane(&measure, &edges, &why), 0);
            assert_true(
                plane->odd
                == (strcmp(plane->name, "main front") == 0 && roof.form == ROOF_CROSS_GABLE));
            if (plane->odd)
                assert_true(plane->plan_sqft >= measure.plan_sqft - 1e-6
                            && plane->plan_sqft <= plane->ridge_ft * plane->run_ft);
            else
                close_to(plane->plan_sqft, measure.plan_sqft);
        }
        for (size_t e = 0; e < layout.edge_count; e++)
            assert_true(layout.edges[e].plane < layout.plane_count
                        && layout.edges[e].length_ft >= 0.1);
    }
}

static void test_names_are_each_one_s_own(void **state)
{
    (void)state;
    for (int i = 0; i < FORM_COUNT; i++) {
        double left = 0;
        const struct footprint roof = any_house(FORMS[i], &left);
        const struct layout layout = laid_out(&roof, left);
        for (size_t a = 0; a < layout.edge_count; a++)
            for (size_t b = a + 1; b < layout.edge_count; b++)
                assert_string_not_equal(layout.edges[a].name, layout.edges[b].name);
        for (size_t a = 0; a < layout.plane_count; a++)
            for (size_t b = a + 1; b < layout.plane_count; b++)
                assert_string_not_equal(layout.planes[a].name, layout.planes[b].name);
    }
}

/* 40 x 28 ft of walls, 5:12, eaves 12 in, rakes 6 in: 41 x 30 ft of roof, rafters
 * of 15 x 13/12 ft. */
static void test_gable_by_hand(void **state)
{
    (void)state;
    const struct footprint roof = {.form = ROOF_GABLE,
                                   .length_ft = 40,
                                   .width_ft = 28,
                                   .pitch = 5,
                                   .eave_overhang_ft = 1,
                                   .rake_overhang_ft = 0.5};
    const struct layout layout = laid_out(&roof, 0);
    const struct layout_plane *front = plane_of(&layout, "front");
    close_to(front->eave_ft, 41);
    close_to(front->ridge_ft, 41);
    close_to(front->run_ft, 15);
    close_to(front->plan_sqft, 615);
    close_to(edge_ft(&layout, "back left rake"), 16.25);
    close_to(layout.ridge_ft, 41);
    close_to(layout.least_width_ft, 30);
    assert_int_equal(layout.edge_count, 6);
}

/* 50 x 30 ft of roof, hipped: the ridge is what the length has over the width. */
static void test_hip_by_hand(void **state)
{
    (void)state;
    struct footprint roof = {
        .form = ROOF_HIP, .length_ft = 48, .width_ft = 28, .pitch = 12, .eave_overhang_ft = 1};
    struct layout layout = laid_out(&roof, 0);
    close_to(plane_of(&layout, "front")->ridge_ft, 20);
    close_to(plane_of(&layout, "left end")->eave_ft, 30);
    assert_true(plane_of(&layout, "left end")->ridge_ft == 0);
    close_to(edge_ft(&layout, "left end, back hip"), 15 * sqrt(3));
    close_to(layout.hip_ft, 60 * sqrt(3));
    close_to(layout.ridge_ft, 20);
    /* Turned by a quarter the ends have the ridge. */
    roof.length_ft = 28;
    roof.width_ft = 48;
    layout = laid_out(&roof, 0);
    assert_true(plane_of(&layout, "front")->ridge_ft == 0);
    close_to(plane_of(&layout, "left end")->ridge_ft, 20);
}

/* Each hip climbs from its corner to the end of the ridge: over the same level
 * square from both planes it bounds. */
static void test_ridge_and_hips_meet(void **state)
{
    (void)state;
    for (int i = 0; i < RANDOM_ROUNDS; i++) {
        double left = 0;
        const struct footprint roof = any_house(ROOF_HIP, &left);
        const struct layout layout = laid_out(&roof, 0);
        const struct layout_plane *front = plane_of(&layout, "front");
        const struct layout_plane *end = plane_of(&layout, "left end");
        close_to(front->run_ft, end->run_ft);
        close_to(fmax(front->ridge_ft, end->ridge_ft), layout.ridge_ft);
        assert_true(fmin(front->ridge_ft, end->ridge_ft) == 0);
        close_to((front->eave_ft - front->ridge_ft) / 2, front->run_ft);
        close_to(
            edge_ft(&layout, "front left hip"),
            hypot(hypot(front->run_ft, front->run_ft), trade_rise_ft(front->run_ft, front->pitch)));
    }
}

/* 60 x 30 ft, no overhangs, 6:12; a wing of 20 ft, 12 ft out, 10 ft from the left.
 * Its ridge runs 10 ft into the main plane, 5 ft below the main ridge. */
static void test_cross_gable_by_hand(void **state)
{
    (void)state;
    const struct footprint roof = {.form = ROOF_CROSS_GABLE,
                                   .length_ft = 60,
                                   .width_ft = 30,
                                   .pitch = 6,
                                   .wing_width_ft = 20,
                                   .wing_out_ft = 12};
    const struct layout layout = laid_out(&roof, 10);
    const struct layout_plane *front = plane_of(&layout, "main front");
    close_to(front->eave_ft, 40);
    close_to(front->ridge_ft, 60);
    close_to(front->plan_sqft, 60 * 15 - 20 * 10 / 2);
    close_to(edge_ft(&layout, "front left eave"), 10);
    close_to(edge_ft(&layout, "front right eave"), 30);
    close_to(plane_of(&layout, "wing left")->eave_ft, 12);
    close_to(plane_of(&layout, "wing left")->ridge_ft, 22);
    close_to(edge_ft(&layout, "left valley, wing side"), 10 * sqrt(2.25));
    close_to(layout.ridge_ft, 60 + 22);
    close_to(layout.valley_ft, 2 * 10 * sqrt(2.25));
    assert_int_equal(layout.valley_count, 2);
    assert_true(isnan(layout.least_width_ft));
}

/* A wing flush with the end of the house leaves no eave there. */
static void test_wing_at_the_end(void **state)
{
    (void)state;
    const struct footprint roof = {.form = ROOF_CROSS_GABLE,
                                   .length_ft = 60,
                                   .width_ft = 30,
                                   .pitch = 6,
                                   .wing_width_ft = 20,
                                   .wing_out_ft = 12};
    const struct layout layout = laid_out(&roof, 0);
    assert_int_equal(layout.edge_count, LAYOUT_EDGES_MOST - 1);
    close_to(edge_ft(&layout, "front right eave"), 40);
}

static void test_refused(void **state)
{
    (void)state;
    const struct footprint good = {.form = ROOF_CROSS_GABLE,
                                   .length_ft = 60,
                                   .width_ft = 30,
                                   .pitch = 6,
                                   .eave_overhang_ft = 1,
                                   .rake_overhang_ft = 1,
                                   .wing_width_ft = 20,
                                   .wing_out_ft = 12};
    struct footprint short_rakes = good, wide = good;
    short_rakes.rake_overhang_ft = 0.5;
    wide.wing_width_ft = 31;
    const struct {
        const struct footprint *roof;
        double left;
        const char *part;
    } BAD[] = {{&good, -1, "0 ft or more"},       {&good, NAN, "0 ft or more"},
               {&short_rakes, 0, "the left end"}, {&good, 40.5, "the right end"},
               {&good, INFINITY, "0 ft or more"}, {&wide, 5, "wider than the house"}};
    for (size_t i = 0; i < sizeof(BAD) / sizeof(BAD[0]); i++) {
        struct layout layout;
        const char *why = NULL;
        assert_int_equal(trade_layout(&layout, BAD[i].roof, BAD[i].left, &why), -1);
        assert_non_null(why);
        if (strstr(why, BAD[i].part) == NULL)
            fail_msg("refused because \"%s\", not \"%s\"", why, BAD[i].part);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_parts_make_the_whole),
        cmocka_unit_test(test_planes_project_back_to_the_footprint),
        cmocka_unit_test(test_each_plane_is_possible),
        cmocka_unit_test(test_names_are_each_one_s_own),
        cmocka_unit_test(test_gable_by_hand),
        cmocka_unit_test(test_hip_by_hand),
        cmocka_unit_test(test_ridge_and_hips_meet),
        cmocka_unit_test(test_cross_gable_by_hand),
        cmocka_unit_test(test_wing_at_the_end),
        cmocka_unit_test(test_refused),
    };
    return cmocka_run_group_tests_name("layout", tests, NULL, NULL);
}
