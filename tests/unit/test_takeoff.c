/* From measures to purchases: edges, and what must hold whatever the numbers. */
#include "support/random_numbers.h"

#include "trade/fastener.h"
#include "trade/ice_barrier.h"
#include "trade/takeoff.h"

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

static void purchases_round_up_once(void **state)
{
    (void)state;
    near_to(trade_purchase(0, 10, 33), 0);
    near_to(trade_purchase(33, 0, 33), 1);
    near_to(trade_purchase(33.01, 0, 33), 2);
    near_to(trade_purchase(100, 10, 10), 11);
    /* 0.1 + 0.2 is a rounding error over 0.3: no fourth tenth is bought. */
    near_to(trade_purchase(0.1 + 0.2, 0, 0.1), 3);
    near_to(trade_purchase(1300, 0, 100.0 / 3), 39);
    near_to(trade_purchase(1e15, 0, 1), 1e15);
    assert_true(isnan(trade_purchase(1, 0, 0)));
    assert_true(isnan(trade_purchase(1e300, 0, 1e-300)));
}

static void more_waste_never_buys_less(void **state)
{
    (void)state;
    struct random_numbers numbers = {RANDOM_SEED};
    for (int i = 0; i < RANDOM_ROUNDS; i++) {
        const double exact = random_between(&numbers, 0, 1e5);
        const double waste = random_between(&numbers, 0, 60);
        const double more = random_between(&numbers, 0, 40);
        const double each = random_between(&numbers, 0.01, 500);
        const double bought = trade_purchase(exact, waste, each);
        assert_true(isfinite(bought) && bought == floor(bought));
        assert_true(trade_purchase(exact, waste + more, each) >= bought);
        assert_true(trade_purchase(exact + more, waste, each) >= bought);
        assert_true(trade_purchase(exact, waste, each + more) <= bought);
        const double needed = trade_with_waste(exact, waste);
        assert_true(needed >= exact);
        assert_true(bought * each >= needed * (1 - 1e-8));
        assert_true((bought - 1) * each < needed || bought == 0);
    }
}

static void sheets_lap(void **state)
{
    (void)state;
    near_to(trade_lapped_sqft(340, 36, 2), 360);
    near_to(trade_lapped_sqft(170, 36, 19), 360);
    near_to(trade_lapped_sqft(340, 36, 0), 340);
    assert_true(isnan(trade_lapped_sqft(340, 36, 36)));
    assert_true(isnan(trade_lapped_sqft(340, 0, 0)));
    near_to(trade_lapped_piece_ft(10, 2) * 12, 118);
    assert_true(isnan(trade_lapped_piece_ft(1, 12)));
    struct random_numbers numbers = {RANDOM_SEED};
    for (int i = 0; i < RANDOM_ROUNDS; i++) {
        const double net = random_between(&numbers, 0, 1e4);
        const double width = random_between(&numbers, 6, 144);
        const double lap = random_between(&numbers, 0, width * 0.9);
        const double gross = trade_lapped_sqft(net, width, lap);
        assert_true(gross >= net);
        assert_true(trade_lapped_sqft(net, width, lap / 2) <= gross);
        near_to(gross * (width - lap) / width, net);
    }
}

static void strips_and_squares(void **state)
{
    (void)state;
    near_to(trade_squares(1288), 12.88);
    near_to(trade_strips_per_square(36, 5), 80);
    assert_true(isnan(trade_strips_per_square(0, 5)));
    assert_true(isnan(trade_strips_per_square(36, 0)));
    near_to(trade_nails(13, 80, 4), 4160);
    near_to(trade_work_days(30, 6), 5);
    near_to(trade_work_days(30.1, 6), 6);
    near_to(trade_work_days(0, 6), 0);
}

static void panels_are_nailed_line_by_line(void **state)
{
    (void)state;
    /* 5 lines 24 in apart, 9 nails each at 6 in; at 12 in between, 5. */
    near_to(trade_panel_nails(96, 48, 24, 6, 6), 45);
    near_to(trade_panel_nails(96, 48, 24, 6, 12), 33);
    near_to(trade_panel_nails(96, 48, 16, 6, 12), 43);
    near_to(trade_panel_nails(96, 48, 96, 6, 12), 18);
    assert_true(isnan(trade_panel_nails(96, 48, 97, 6, 12)));
    assert_true(isnan(trade_panel_nails(96, 48, 24, 0, 12)));
    struct random_numbers numbers = {RANDOM_SEED};
    for (int i = 0; i < RANDOM_ROUNDS; i++) {
        const double support = random_between(&numbers, 8, 48);
        const double edge = random_between(&numbers, 1, 12);
        const double field = random_between(&numbers, 1, 24);
        const double nails = trade_panel_nails(96, 48, support, edge, field);
        assert_true(nails == floor(nails));
        assert_true(trade_panel_nails(96, 48, support, edge / 2, field) >= nails);
        assert_true(trade_panel_nails(96, 48, support, edge, field / 2) >= nails);
        assert_true(trade_panel_nails(96, 48, support / 2, edge, field) >= nails);
    }
}

static void nails_reach(void **state)
{
    (void)state;
    static const double STOCK[] = {1.75, 1, 1.25, 1.5};
    near_to(trade_nail_length_in(0.28, 0.4375, 0.75, 0.125), 0.28 + 0.4375 + 0.125);
    near_to(trade_nail_length_in(0.28, 0.75, 0.75, 0.125), 1.03);
    near_to(trade_nail_length_in(0.28, 1.5, 0.75, 0.125), 1.03);
    near_to(trade_stocked_length_in(1.03, STOCK, 4), 1.25);
    near_to(trade_stocked_length_in(1.25, STOCK, 4), 1.25);
    near_to(trade_stocked_length_in(1.2504, STOCK, 4), 1.25);
    near_to(trade_stocked_length_in(1.251, STOCK, 4), 1.5);
    near_to(trade_stocked_length_in(0, STOCK, 4), 1);
    assert_true(isnan(trade_stocked_length_in(1.76, STOCK, 4)));
    assert_true(isnan(trade_stocked_length_in(1, STOCK, 0)));
    assert_true(isnan(trade_stocked_length_in(1, (const double[]){1, NAN}, 2)));
    struct random_numbers numbers = {RANDOM_SEED};
    for (int i = 0; i < RANDOM_ROUNDS; i++) {
        const double through = random_between(&numbers, 0, 2);
        const double deck = random_between(&numbers, 0, 2);
        const double length = trade_nail_length_in(through, deck, 0.75, 0.125);
        const double left = trade_nail_penetration_in(length, through);
        assert_true(left >= fmin(0.75, deck) - 1e-12);
        const double stocked = trade_stocked_length_in(length, STOCK, 4);
        assert_true(isnan(stocked) ? length > 1.75 : stocked >= length - 0.00051);
    }
}

static void courses_reach(void **state)
{
    (void)state;
    near_to(trade_ice_barrier_courses(0, 36, 6), 0);
    near_to(trade_ice_barrier_courses(0.01, 36, 6), 1);
    near_to(trade_ice_barrier_courses(36, 36, 6), 1);
    near_to(trade_ice_barrier_courses(36.05, 36, 6), 1); /* less than a 16th short */
    near_to(trade_ice_barrier_courses(36.25, 36, 6), 2);
    near_to(trade_ice_barrier_courses(66, 36, 6), 2);
    near_to(trade_ice_barrier_courses(66.25, 36, 6), 3);
    assert_true(isnan(trade_ice_barrier_courses(40, 36, 36)));
    assert_true(isnan(trade_ice_barrier_courses(40, 0, 0)));
    near_to(trade_ice_barrier_covers_in(0, 36, 6), 0);
    near_to(trade_ice_barrier_roll_ft(2, 40), 80);
    struct random_numbers numbers = {RANDOM_SEED};
    for (int i = 0; i < RANDOM_ROUNDS; i++) {
        const double reach = random_between(&numbers, 0.1, 400);
        const double width = random_between(&numbers, 12, 72);
        const double lap = random_between(&numbers, 0, 10);
        const double courses = trade_ice_barrier_courses(reach, width, lap);
        assert_true(courses == floor(courses) && courses >= 1);
        assert_true(trade_ice_barrier_covers_in(courses, width, lap) >= reach - 0.0626);
        assert_true(trade_ice_barrier_covers_in(courses - 1, width, lap) < reach);
        assert_true(trade_ice_barrier_courses(reach + 5, width, lap) >= courses);
        assert_true(trade_ice_barrier_courses(reach, width, lap + 1) >= courses);
    }
}

static void what_cannot_be_gives_nan(void **state)
{
    (void)state;
    for (size_t i = 0; i < IMPOSSIBLE_COUNT; i++) {
        const double bad = IMPOSSIBLE[i];
        assert_true(isnan(trade_squares(bad)));
        assert_true(isnan(trade_with_waste(bad, 1)));
        assert_true(isnan(trade_with_waste(1, bad)));
        assert_true(isnan(trade_purchase(bad, 1, 1)));
        assert_true(isnan(trade_purchase(1, bad, 1)));
        assert_true(isnan(trade_purchase(1, 1, bad)));
        assert_true(isnan(trade_strips_per_square(bad, 5)));
        assert_true(isnan(trade_lapped_sqft(bad, 36, 2)));
        assert_true(isnan(trade_lapped_sqft(1, bad, 2)));
        assert_true(isnan(trade_lapped_sqft(1, 36, bad)));
        assert_true(isnan(trade_lapped_piece_ft(bad, 2)));
        assert_true(isnan(trade_panel_nails(96, bad, 24, 6, 12)));
        assert_true(isnan(trade_panel_nails(96, 48, bad, 6, 12)));
        assert_true(isnan(trade_work_days(bad, 6)));
        assert_true(isnan(trade_nails(1, bad, 4)));
        assert_true(isnan(trade_nail_length_in(bad, 1, 0.75, 0)));
        assert_true(isnan(trade_stocked_length_in(bad, (const double[]){1}, 1)));
        assert_true(isnan(trade_ice_barrier_courses(bad, 36, 6)));
        assert_true(isnan(trade_ice_barrier_courses(1, bad, 6)));
        assert_true(isnan(trade_ice_barrier_roll_ft(1, bad)));
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(purchases_round_up_once),
        cmocka_unit_test(more_waste_never_buys_less),
        cmocka_unit_test(sheets_lap),
        cmocka_unit_test(strips_and_squares),
        cmocka_unit_test(panels_are_nailed_line_by_line),
        cmocka_unit_test(nails_reach),
        cmocka_unit_test(courses_reach),
        cmocka_unit_test(what_cannot_be_gives_nan),
    };
    return cmocka_run_group_tests_name("takeoff", tests, NULL, NULL);
}
