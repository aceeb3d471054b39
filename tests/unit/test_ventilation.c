/* Vent areas: edges, and what must hold whatever the numbers. */
#include "support/random_numbers.h"

#include "trade/ventilation.h"

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

static void areas(void **state)
{
    (void)state;
    near_to(trade_vent_area_needed_sqin(150, 150), 144);
    near_to(trade_vent_area_needed_sqin(0, 150), 0);
    assert_true(isnan(trade_vent_area_needed_sqin(150, 0)));
    near_to(trade_vent_strip_sqin(0, 18), 0);
    near_to(trade_share_percent(0, 10), 0);
    assert_true(isnan(trade_share_percent(1, 0)));
}

static void screens_take_area(void **state)
{
    (void)state;
    near_to(trade_vent_net_sqin(100, 1), 100);
    near_to(trade_vent_net_sqin(100, 2.25), 100 / 2.25);
    /* A screen never gives area. */
    assert_true(isnan(trade_vent_net_sqin(100, 0.99)));
    assert_true(isnan(trade_vent_gross_sqin(100, 0.5)));
    struct random_numbers numbers = {RANDOM_SEED};
    for (int i = 0; i < RANDOM_ROUNDS; i++) {
        const double gross = random_between(&numbers, 0, 5000);
        const double times = random_between(&numbers, 1, 4);
        const double net = trade_vent_net_sqin(gross, times);
        assert_true(net <= gross && net >= 0);
        assert_true(trade_vent_net_sqin(gross, times + 0.5) <= net);
        near_to(trade_vent_gross_sqin(net, times), gross);
    }
}

static void splits_keep_the_whole(void **state)
{
    (void)state;
    struct vent_split split;
    assert_int_equal(trade_vent_split(&split, 480, 0), 0);
    near_to(split.low_sqin, 480);
    assert_int_equal(trade_vent_split(&split, 480, 100), 0);
    near_to(split.low_sqin, 0);
    assert_int_equal(trade_vent_split(&split, 480, 100.1), -1);
    struct random_numbers numbers = {RANDOM_SEED};
    for (int i = 0; i < RANDOM_ROUNDS; i++) {
        const double needed = random_between(&numbers, 0.001, 1e5);
        const double percent = random_between(&numbers, 0, 100);
        assert_int_equal(trade_vent_split(&split, needed, percent), 0);
        near_to(split.high_sqin + split.low_sqin, needed);
        assert_true(split.high_sqin >= 0 && split.low_sqin >= -1e-9);
        near_to(trade_share_percent(split.high_sqin, needed), percent);
    }
}

static void the_smallest_purchase_mends(void **state)
{
    (void)state;
    near_to(trade_vent_more_feet(0, 18), 0);
    near_to(trade_vent_more_feet(-5, 18), 0);
    near_to(trade_vent_more_feet(18, 18), 1);
    near_to(trade_vent_more_feet(18.1, 18), 2);
    near_to(trade_vent_more_units(288, 50), 6);
    near_to(trade_vent_more_units(300, 50), 6);
    assert_true(isnan(trade_vent_more_units(300, 0)));
    assert_true(isnan(trade_vent_more_feet((double)NAN, 18)));
    struct random_numbers numbers = {RANDOM_SEED};
    for (int i = 0; i < RANDOM_ROUNDS; i++) {
        const double lacking = random_between(&numbers, 0.1, 3000);
        const double each = random_between(&numbers, 1, 200);
        const double feet = trade_vent_more_feet(lacking, each);
        assert_true(feet == floor(feet));
        assert_true(trade_vent_strip_sqin(feet, each) >= lacking * (1 - 1e-8));
        assert_true(trade_vent_strip_sqin(feet - 1, each) < lacking);
        assert_true(trade_vent_more_feet(lacking + 10, each) >= feet);
        assert_true(trade_vent_more_feet(lacking, each + 1) <= feet);
    }
}

static void fans(void **state)
{
    (void)state;
    near_to(trade_fan_cfm(1000, 0.7, 1.15), 805);
    assert_true(isnan(trade_fan_cfm(1000, 0.7, 0.9)));
    near_to(trade_fan_intake_sqin(300, 300), 144);
    assert_true(isnan(trade_fan_intake_sqin(300, 0)));
}

static void what_cannot_be_gives_nan(void **state)
{
    (void)state;
    struct vent_split split;
    for (size_t i = 0; i < IMPOSSIBLE_COUNT; i++) {
        const double bad = IMPOSSIBLE[i];
        assert_true(isnan(trade_vent_area_needed_sqin(bad, 150)));
        assert_true(isnan(trade_vent_area_needed_sqin(1000, bad)));
        assert_true(isnan(trade_vent_strip_sqin(bad, 18)));
        assert_true(isnan(trade_vent_units_sqin(1, bad)));
        assert_true(isnan(trade_vent_net_sqin(bad, 2)));
        assert_true(isnan(trade_vent_net_sqin(1, bad)));
        assert_true(isnan(trade_vent_gross_sqin(bad, 2)));
        assert_true(isnan(trade_vent_gross_sqin(1, bad)));
        assert_true(isnan(trade_share_percent(bad, 1)));
        assert_true(isnan(trade_share_percent(1, bad)));
        assert_true(isnan(trade_vent_more_units(1, bad)));
        assert_true(isnan(trade_fan_cfm(bad, 0.7, 1)));
        assert_true(isnan(trade_fan_cfm(1000, bad, 1)));
        assert_true(isnan(trade_fan_cfm(1000, 0.7, bad)));
        assert_true(isnan(trade_fan_intake_sqin(bad, 300)));
        assert_int_equal(trade_vent_split(&split, bad, 50), -1);
        assert_int_equal(trade_vent_split(&split, 480, bad), -1);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(areas),
        cmocka_unit_test(screens_take_area),
        cmocka_unit_test(splits_keep_the_whole),
        cmocka_unit_test(the_smallest_purchase_mends),
        cmocka_unit_test(fans),
        cmocka_unit_test(what_cannot_be_gives_nan),
    };
    return cmocka_run_group_tests_name("ventilation", tests, NULL, NULL);
}
