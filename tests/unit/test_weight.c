/* Loads on rafters, in trailers and under stacks. */
#include "support/random_numbers.h"

#include "trade/geometry.h"
#include "trade/weight.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

#include <cmocka.h>

static void near_to(double got, double wanted)
{
    if (!(fabs(got - wanted) <= 1e-9 * fmax(1, fabs(wanted))))
        fail_msg("got %.12g, wanted %.12g", got, wanted);
}

static void layers_add_up(void **state)
{
    (void)state;
    const double layers[] = {trade_psf(240), trade_psf(220), 0.3, trade_deck_psf(0.4375, 3.2)};
    near_to(trade_dead_load_psf(layers, 4), 2.4 + 2.2 + 0.3 + 1.4);
    near_to(trade_dead_load_psf(layers, 0), 0);
    near_to(trade_lb_per_square(trade_psf(305)), 305);
    near_to(trade_layer_lb(3000, 240), 7200);
    const double bad[] = {1, NAN};
    assert_true(isnan(trade_dead_load_psf(bad, 2)));
    near_to(trade_plan_load_psf(4, 0), 4);
    near_to(trade_plan_load_psf(4, 9), 5); /* 9:12 is the 3-4-5 triangle */
}

static void more_of_anything_weighs_no_less(void **state)
{
    (void)state;
    struct random_numbers numbers = {RANDOM_SEED};
    for (int i = 0; i < RANDOM_ROUNDS; i++) {
        double layers[4], total;
        for (size_t k = 0; k < 4; k++)
            layers[k] = random_between(&numbers, 0, 12);
        total = trade_dead_load_psf(layers, 4);
        assert_true(trade_dead_load_psf(layers, 3) <= total);
        const double pitch = random_between(&numbers, 0, 24);
        const double plan = trade_plan_load_psf(total, pitch);
        assert_true(plan >= total - 1e-12);
        assert_true(trade_plan_load_psf(total, pitch + 1) >= plan);
        near_to(plan / trade_slope_factor(pitch), total);
        near_to(trade_psf(trade_lb_per_square(total)), total);
    }
}

static void loads_go_by_what_fills_first(void **state)
{
    (void)state;
    struct trade_loads loads = {0};
    near_to(trade_bed_cuyd(12, 6, 2), 144.0 / 27);
    assert_int_equal(trade_haul(&loads, 10, 5000, 5, 7000), 0);
    near_to(loads.by_volume, 2);
    near_to(loads.by_weight, 1);
    near_to(loads.loads, 2);
    assert_int_equal(trade_haul(&loads, 4, 15000, 5, 7000), 0);
    near_to(loads.loads, 3);
    assert_int_equal(trade_haul(&loads, 0, 0, 5, 7000), 0);
    near_to(loads.loads, 0);
    assert_int_equal(trade_haul(&loads, 1, 1, 0, 7000), -1);
    assert_int_equal(trade_haul(&loads, 1, 1, 5, 0), -1);
    assert_int_equal(trade_haul(&loads, NAN, 1, 5, 7000), -1);
}

static void loads_hold_what_is_hauled(void **state)
{
    (void)state;
    struct random_numbers numbers = {RANDOM_SEED};
    for (int i = 0; i < RANDOM_ROUNDS; i++) {
        const double weight = random_between(&numbers, 0, 40000);
        const double density = random_between(&numbers, 200, 1500);
        const double bed = random_between(&numbers, 1, 40);
        const double payload = random_between(&numbers, 500, 20000);
        const double heap = trade_heap_cuyd(weight, density);
        struct trade_loads loads, more;
        assert_int_equal(trade_haul(&loads, heap, weight, bed, payload), 0);
        assert_true(loads.loads * bed >= heap * (1 - 1e-8));
        assert_true(loads.loads * payload >= weight * (1 - 1e-8));
        assert_true(loads.loads == loads.by_volume || loads.loads == loads.by_weight);
        assert_int_equal(trade_haul(&more, heap, weight, bed * 2, payload * 2), 0);
        assert_true(more.loads <= loads.loads);
    }
}

static void stacks(void **state)
{
    (void)state;
    near_to(trade_stack_psf(4, 80, 16), 20);
    near_to(trade_stack_most(80, 16, 20), 4);
    near_to(trade_stack_most(81, 16, 20), 3);
    near_to(trade_stack_most(80, 1, 20), 0);
    assert_true(isnan(trade_stack_psf(4, 80, 0)));
    assert_true(isnan(trade_stack_most(0, 16, 20)));
    struct random_numbers numbers = {RANDOM_SEED};
    for (int i = 0; i < RANDOM_ROUNDS; i++) {
        const double each = random_between(&numbers, 20, 120);
        const double area = random_between(&numbers, 1, 60);
        const double limit = random_between(&numbers, 10, 40);
        const double most = trade_stack_most(each, area, limit);
        assert_true(trade_stack_psf(most, each, area) <= limit * (1 + 1e-8));
        assert_true(trade_stack_psf(most + 1, each, area) > limit);
    }
}

static void what_cannot_be_gives_nan(void **state)
{
    (void)state;
    struct trade_loads loads;
    for (size_t i = 0; i < IMPOSSIBLE_COUNT; i++) {
        const double bad = IMPOSSIBLE[i];
        assert_true(isnan(trade_psf(bad)));
        assert_true(isnan(trade_lb_per_square(bad)));
        assert_true(isnan(trade_deck_psf(bad, 3)));
        assert_true(isnan(trade_deck_psf(1, bad)));
        assert_true(isnan(trade_dead_load_psf(&bad, 1)));
        assert_true(isnan(trade_plan_load_psf(bad, 4)));
        assert_true(isnan(trade_plan_load_psf(4, bad)));
        assert_true(isnan(trade_layer_lb(bad, 240)));
        assert_true(isnan(trade_layer_lb(100, bad)));
        assert_true(isnan(trade_heap_cuyd(bad, 731)));
        assert_true(isnan(trade_heap_cuyd(100, bad)));
        assert_true(isnan(trade_bed_cuyd(bad, 6, 2)));
        assert_true(isnan(trade_stack_psf(bad, 80, 16)));
        assert_true(isnan(trade_stack_most(80, bad, 20)));
        assert_int_equal(trade_haul(&loads, bad, 1, 5, 7000), -1);
        assert_int_equal(trade_haul(&loads, 1, bad, 5, 7000), -1);
        assert_int_equal(trade_haul(&loads, 1, 1, bad, 7000), -1);
        assert_int_equal(trade_haul(&loads, 1, 1, 5, bad), -1);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(layers_add_up),
        cmocka_unit_test(more_of_anything_weighs_no_less),
        cmocka_unit_test(loads_go_by_what_fills_first),
        cmocka_unit_test(loads_hold_what_is_hauled),
        cmocka_unit_test(stacks),
        cmocka_unit_test(what_cannot_be_gives_nan),
    };
    return cmocka_run_group_tests_name("weight", tests, NULL, NULL);
}
