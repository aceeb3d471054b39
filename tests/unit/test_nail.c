/* Nails against suction: what must hold for any nail, and what cannot be. */
#include "support/random_numbers.h"
#include "trade/nail.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#include <cmocka.h>

static struct random_numbers numbers = {RANDOM_SEED};

static double between(double least, double most)
{
    return random_between(&numbers, least, most);
}

static void close_to(double found, double wanted)
{
    if (!(fabs(found - wanted) <= 1e-9 * (1 + fabs(wanted))))
        fail_msg("found %.12g, wanted %.12g", found, wanted);
}

static const struct nail COMMON_8D = {2.5, 0.131, 0.281, 0};
static const struct nailing THROUGH_OSB = {0.42, 0.5, 0.4375, 1.6, 1, 1};

static struct nail_capacity can(const struct nail *nail, const struct nailing *nailing)
{
    struct nail_capacity out;
    const char *why = NULL;
    if (trade_nail_capacity(&out, nail, nailing, &why) != 0)
        fail_msg("refused: %s", why);
    assert_null(why);
    return out;
}

static void test_withdrawal_grows(void **state)
{
    (void)state;
    double (*const kinds[])(double, double) = {trade_withdrawal_smooth, trade_withdrawal_stainless,
                                               trade_withdrawal_ring};
    for (int i = 0; i < RANDOM_ROUNDS; i++) {
        const double g = between(0.2, 0.9), d = between(0.08, 0.25);
        for (size_t k = 0; k < 3; k++) {
            const double w = kinds[k](g, d);
            assert_true(isfinite(w) && w > 0);
            close_to(kinds[k](g, 2 * d), 2 * w);
            assert_true(kinds[k](g + 0.01, d) > w);
        }
        assert_true(trade_withdrawal_ring(g, d) > trade_withdrawal_smooth(g, d));
    }
    for (size_t k = 0; k < 3; k++) {
        assert_true(isnan(kinds[k](0, 0.131)));
        assert_true(isnan(kinds[k](1.01, 0.131)));
        assert_true(isnan(kinds[k](NAN, 0.131)));
        assert_true(isnan(kinds[k](0.42, 0)));
        assert_true(isnan(kinds[k](0.42, INFINITY)));
    }
}

/* The two forms of the formula meet at 2.5 head widths, and end there. */
static void test_pull_through_levels_off(void **state)
{
    (void)state;
    for (int i = 0; i < RANDOM_ROUNDS; i++) {
        const double g = between(0.2, 0.9), head = between(0.2, 0.6), t = between(0.1, 2);
        const double lb = trade_pull_through_lb(g, head, t);
        const double pi = 3.14159265358979324;
        close_to(lb,
                 t <= 2.5 * head ? 690 * pi * head * g * g * t : 1725 * pi * head * head * g * g);
        assert_true(trade_pull_through_lb(g, head, t + 0.1) >= lb);
        assert_true(trade_pull_through_lb(g, head + 0.01, t) > lb);
    }
    assert_true(isnan(trade_pull_through_lb(0.5, 0, 0.5)));
    assert_true(isnan(trade_pull_through_lb(0.5, 0.281, -1)));
    assert_true(isnan(trade_pull_through_lb(-0.5, 0.281, 0.5)));
}

static void test_capacity_by_hand(void **state)
{
    (void)state;
    const struct nail_capacity c = can(&COMMON_8D, &THROUGH_OSB);
    close_to(c.penetration_in, 2.0625);
    close_to(c.withdrawal_lb, 1380 * pow(0.42, 2.5) * 0.131 * 2.0625 * 1.6);
    assert_true(fabs(c.pull_through_lb - 106.6) < 0.05);
    close_to(c.lb, c.withdrawal_lb);
    assert_false(c.head_governs);
}

static void test_lesser_governs(void **state)
{
    (void)state;
    for (int i = 0; i < RANDOM_ROUNDS; i++) {
        const struct nail nail = {between(1.5, 4), between(0.1, 0.2), between(0.21, 0.5),
                                  i % 2 == 0 ? 0 : between(0.5, 1.5)};
        const struct nailing into = {between(0.3, 0.7), between(0.3, 0.7), between(0.3, 1.4),
                                     between(0.9, 2),   between(0.2, 1),   between(0.2, 1)};
        const struct nail_capacity c = can(&nail, &into);
        assert_true(isfinite(c.lb) && c.lb > 0);
        assert_true(c.lb == fmin(c.withdrawal_lb, c.pull_through_lb));
        assert_true(c.head_governs == (c.pull_through_lb < c.withdrawal_lb));
        assert_true(c.penetration_in <= nail.length_in - into.panel_in);
        if (nail.ring_in > 0)
            assert_true(c.penetration_in <= nail.ring_in);
    }
}

static void test_factors_scale(void **state)
{
    (void)state;
    struct nailing wet = THROUGH_OSB;
    wet.wet_withdrawal = 0.25;
    close_to(can(&COMMON_8D, &wet).withdrawal_lb, can(&COMMON_8D, &THROUGH_OSB).withdrawal_lb / 4);
    close_to(can(&COMMON_8D, &wet).pull_through_lb, can(&COMMON_8D, &THROUGH_OSB).pull_through_lb);
    struct nailing lasting = THROUGH_OSB;
    lasting.duration = 0.8;
    close_to(can(&COMMON_8D, &lasting).lb, can(&COMMON_8D, &THROUGH_OSB).lb / 2);
}

/* Rings count only where they are in the framing. */
static void test_rings(void **state)
{
    (void)state;
    const struct nail ringed = {2.375, 0.113, 0.281, 1.5}, stub = {1.5, 0.113, 0.281, 1.5};
    close_to(can(&ringed, &THROUGH_OSB).penetration_in, 1.5);
    close_to(can(&stub, &THROUGH_OSB).penetration_in, 1.5 - 0.4375);
}

static void refused(const struct nail *nail, const struct nailing *nailing, const char *part)
{
    struct nail_capacity out;
    const char *why = NULL;
    assert_int_equal(trade_nail_capacity(&out, nail, nailing, &why), -1);
    if (strstr(why, part) == NULL)
        fail_msg("refused because \"%s\", not \"%s\"", why, part);
}

static void test_impossible_nails(void **state)
{
    (void)state;
    struct nail nail = COMMON_8D;
    nail.length_in = 0.4375;
    refused(&nail, &THROUGH_OSB, "reach through");
    nail = COMMON_8D, nail.head_in = 0.131;
    refused(&nail, &THROUGH_OSB, "wider than its shank");
    nail = COMMON_8D, nail.shank_in = -1;
    refused(&nail, &THROUGH_OSB, "length, a shank and a head");
    nail = COMMON_8D, nail.ring_in = 2.6;
    refused(&nail, &THROUGH_OSB, "no longer than the nail");
    nail = COMMON_8D, nail.ring_in = NAN;
    refused(&nail, &THROUGH_OSB, "no longer than the nail");
    struct nailing into = THROUGH_OSB;
    into.framing_gravity = 1.2;
    refused(&COMMON_8D, &into, "specific gravity");
    into = THROUGH_OSB, into.panel_gravity = 0;
    refused(&COMMON_8D, &into, "specific gravity");
    into = THROUGH_OSB, into.panel_in = NAN;
    refused(&COMMON_8D, &into, "thickness");
    into = THROUGH_OSB, into.duration = 0;
    refused(&COMMON_8D, &into, "duration");
    into = THROUGH_OSB, into.wet_pull_through = INFINITY;
    refused(&COMMON_8D, &into, "duration");
}

static void test_spacing(void **state)
{
    (void)state;
    close_to(trade_nail_spacing_in(100, 24, 50), 12);
    for (int i = 0; i < RANDOM_ROUNDS; i++) {
        const double lb = between(10, 300), support = between(8, 72), psf = between(5, 200);
        const double s = trade_nail_spacing_in(lb, support, psf);
        assert_true(isfinite(s) && s > 0);
        assert_true(trade_nail_spacing_in(lb, support, psf + 1) < s);
        assert_true(trade_nail_spacing_in(lb, support + 1, psf) < s);
        assert_true(trade_nail_spacing_in(lb + 1, support, psf) > s);
        /* Back: the load on one nail at that spacing is its capacity. */
        close_to(s / 12 * support / 12 * psf, lb);
    }
    assert_true(isnan(trade_nail_spacing_in(0, 24, 50)));
    assert_true(isnan(trade_nail_spacing_in(68, 0, 50)));
    assert_true(isnan(trade_nail_spacing_in(68, 24, 0)));
    assert_true(isnan(trade_nail_spacing_in(68, 24, -50)));
    assert_true(isnan(trade_nail_spacing_in(NAN, 24, 50)));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_withdrawal_grows), cmocka_unit_test(test_pull_through_levels_off),
        cmocka_unit_test(test_capacity_by_hand), cmocka_unit_test(test_lesser_governs),
        cmocka_unit_test(test_factors_scale),    cmocka_unit_test(test_rings),
        cmocka_unit_test(test_impossible_nails), cmocka_unit_test(test_spacing),
    };
    return cmocka_run_group_tests_name("nail", tests, NULL, NULL);
}
