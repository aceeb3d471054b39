/* Wind pressure: what must hold at any speed and height, and what is refused. */
#include "support/random_numbers.h"
#include "trade/cladding.h"
#include "trade/wind.h"

#include <math.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>

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

/* Exposures B, C, D as ASCE 7-16 has them (recalled). */
static const struct wind_profile GROUNDS[] = {
    {2.01, 7, 1200, 15, 0}, {2.01, 9.5, 900, 15, 0}, {2.01, 11.5, 700, 15, 0}};

static const struct cladding_load ASD = {0.18, 0.6, 10}, STRENGTH = {0.18, 1, 16};

static void test_speeds_both_ways(void **state)
{
    (void)state;
    assert_true(trade_vult_to_vasd(0) == 0);
    for (int i = 0; i < RANDOM_ROUNDS; i++) {
        const double v = between(0, 300);
        close_to(trade_vasd_to_vult(trade_vult_to_vasd(v)), v);
        assert_true(trade_vult_to_vasd(v) <= v);
    }
    assert_true(isnan(trade_vult_to_vasd(-1)));
    assert_true(isnan(trade_vasd_to_vult(-1)));
    assert_true(isnan(trade_vasd_to_vult(INFINITY)));
    assert_true(isnan(trade_vasd_to_vult(NAN)));
}

static void test_kz_grows_with_height_and_openness(void **state)
{
    (void)state;
    for (int i = 0; i < RANDOM_ROUNDS; i++) {
        const double h = between(0, 60), more = h + between(0, 20);
        for (size_t g = 0; g < 3; g++) {
            assert_true(trade_wind_kz(more, &GROUNDS[g]) >= trade_wind_kz(h, &GROUNDS[g]));
            if (g > 0)
                assert_true(trade_wind_kz(h, &GROUNDS[g]) > trade_wind_kz(h, &GROUNDS[g - 1]));
        }
    }
    /* Flat up to 15 ft; 2.01 at the gradient height; floored where asked. */
    close_to(trade_wind_kz(3, &GROUNDS[0]), trade_wind_kz(15, &GROUNDS[0]));
    close_to(trade_wind_kz(1200, &GROUNDS[0]), 2.01);
    struct wind_profile floored = GROUNDS[0];
    floored.floor = 0.7;
    close_to(trade_wind_kz(15, &floored), 0.7);
    close_to(trade_wind_kz(60, &floored), trade_wind_kz(60, &GROUNDS[0]));
}

static void test_kz_refused(void **state)
{
    (void)state;
    assert_true(isnan(trade_wind_kz(-1, &GROUNDS[0])));
    assert_true(isnan(trade_wind_kz(NAN, &GROUNDS[0])));
    assert_true(isnan(trade_wind_kz(1201, &GROUNDS[0])));
    for (int i = 0; i < 5; i++) {
        struct wind_profile bad = GROUNDS[0];
        double *const part[] = {&bad.factor, &bad.alpha, &bad.zg_ft, &bad.least_ft, &bad.floor};
        *part[i] = -1;
        assert_true(isnan(trade_wind_kz(20, &bad)));
        *part[i] = NAN;
        assert_true(isnan(trade_wind_kz(20, &bad)));
    }
}

static void test_ke(void **state)
{
    (void)state;
    close_to(trade_wind_ke(0), 1);
    assert_true(trade_wind_ke(-200) > 1);
    /* Denver, a mile up: 0.826 (ASCE 7-16 Table 26.9-1 has 0.83 at 5,000 ft, recalled). */
    assert_true(fabs(trade_wind_ke(5280) - 0.826) < 0.001);
    for (int i = 0; i < RANDOM_ROUNDS; i++) {
        const double z = between(-1500, 29000);
        assert_true(trade_wind_ke(z + 1) < trade_wind_ke(z));
    }
    assert_true(isnan(trade_wind_ke(30001)));
    assert_true(isnan(trade_wind_ke(-1501)));
    assert_true(isnan(trade_wind_ke(NAN)));
}

static void test_q_goes_with_the_square(void **state)
{
    (void)state;
    for (int i = 0; i < RANDOM_ROUNDS; i++) {
        struct wind_site site = {between(85, 220), between(0.5, 2), between(1, 2), 0.85,
                                 between(0.7, 1)};
        const double q = trade_wind_q_psf(&site);
        assert_true(isfinite(q) && q > 0);
        site.vult_mph *= 2;
        close_to(trade_wind_q_psf(&site), 4 * q);
        site.vult_mph /= 2;
        site.kzt *= 1.5;
        close_to(trade_wind_q_psf(&site), 1.5 * q);
    }
    const struct wind_site good = {115, 0.7, 1, 0.85, 1};
    for (int i = 0; i < 5; i++) {
        struct wind_site bad = good;
        double *const part[] = {&bad.vult_mph, &bad.kz, &bad.kzt, &bad.kd, &bad.ke};
        *part[i] = -1;
        assert_true(isnan(trade_wind_q_psf(&bad)));
        *part[i] = INFINITY;
        assert_true(isnan(trade_wind_q_psf(&bad)));
    }
}

static void test_pressures(void **state)
{
    (void)state;
    for (int i = 0; i < RANDOM_ROUNDS; i++) {
        const double q = between(0, 120), gcp = -between(0, 4);
        const double p = trade_cladding_psf(q, gcp, &ASD);
        assert_true(p <= -10 && isfinite(p));
        /* More wind, or a worse place, never pulls less. */
        assert_true(trade_cladding_psf(q + 1, gcp, &ASD) <= p);
        assert_true(trade_cladding_psf(q, gcp - 0.1, &ASD) <= p);
        /* Inward by the mirrored coefficient. */
        if (gcp < 0)
            close_to(trade_cladding_psf(q, -gcp, &ASD), -p);
        const double strength = trade_cladding_psf(q, gcp, &STRENGTH);
        if (strength < -17)
            close_to(trade_cladding_psf(q, gcp, &ASD), fmin(0.6 * strength, -10));
        else
            assert_true(strength <= -16);
    }
    assert_true(trade_cladding_psf(0, -1, &ASD) == -10);
    assert_true(trade_cladding_psf(0, 0, &ASD) == -10);
    assert_true(trade_cladding_psf(0, 0.3, &STRENGTH) == 16);
}

static void test_pressures_refused(void **state)
{
    (void)state;
    assert_true(isnan(trade_cladding_psf(-1, -1, &ASD)));
    assert_true(isnan(trade_cladding_psf(20, NAN, &ASD)));
    assert_true(isnan(trade_cladding_psf(20, -INFINITY, &ASD)));
    const struct cladding_load bad[] = {
        {-0.18, 0.6, 10}, {0.18, 0, 10}, {0.18, 0.6, -10}, {NAN, 0.6, 10}};
    for (size_t i = 0; i < sizeof(bad) / sizeof(bad[0]); i++)
        assert_true(isnan(trade_cladding_psf(20, -1, &bad[i])));
}

static void test_all_places_at_once(void **state)
{
    (void)state;
    const struct cladding_zones gcp = {-1.5, -1.6, -2.5, -2.4, -2.6, -3.0};
    struct cladding_zones out;
    assert_int_equal(trade_cladding_pressures(&out, 30, &gcp, &ASD), 0);
    close_to(out.field, -30 * 1.68 * 0.6);
    close_to(out.eave, -30 * 1.78 * 0.6);
    close_to(out.rake, -30 * 2.68 * 0.6);
    close_to(out.ridge, -30 * 2.58 * 0.6);
    close_to(out.eave_corner, -30 * 2.78 * 0.6);
    close_to(out.ridge_corner, -30 * 3.18 * 0.6);
    struct cladding_zones bad = gcp;
    bad.ridge = NAN;
    assert_int_equal(trade_cladding_pressures(&out, 30, &bad, &ASD), -1);
    assert_int_equal(trade_cladding_pressures(&out, NAN, &gcp, &ASD), -1);
}

static const struct zone_rule RULE = {0.1, 0.4, 0.04, 3};

static void test_zone_width(void **state)
{
    (void)state;
    close_to(trade_zone_width_ft(28, 14, &RULE), 3);    /* a tenth is 2.8: the least counts */
    close_to(trade_zone_width_ft(40, 14, &RULE), 4);    /* a tenth of the width */
    close_to(trade_zone_width_ft(100, 14, &RULE), 5.6); /* 0.4 of the height */
    close_to(trade_zone_width_ft(200, 14, &RULE), 8);   /* 0.04 of the width */
    for (int i = 0; i < RANDOM_ROUNDS; i++) {
        const double w = between(6, 400), h = between(6, 60), a = trade_zone_width_ft(w, h, &RULE);
        assert_true(a >= 3 && a >= 0.04 * w);
        assert_true(trade_zone_width_ft(w, h + 1, &RULE) >= a);
        assert_true(trade_zone_width_ft(w + 1, h, &RULE) >= a);
    }
    assert_true(isnan(trade_zone_width_ft(0, 14, &RULE)));
    assert_true(isnan(trade_zone_width_ft(28, -1, &RULE)));
    assert_true(isnan(trade_zone_width_ft(NAN, 14, &RULE)));
    const struct zone_rule bad = {0.1, 0.4, -0.04, 3};
    assert_true(isnan(trade_zone_width_ft(28, 14, &bad)));
}

static double sum_of(const struct cladding_zones *z)
{
    return z->field + z->eave + z->rake + z->ridge + z->eave_corner + z->ridge_corner;
}

static void none_negative(const struct cladding_zones *z)
{
    const double least = fmin(fmin(fmin(z->field, z->eave), fmin(z->rake, z->ridge)),
                              fmin(z->eave_corner, z->ridge_corner));
    assert_true(least >= -1e-9);
}

/* 60 x 30 ft, strips of 3 ft. Each slope, 15 ft: 3 + 9 + 3. */
static void test_gable_zones_by_hand(void **state)
{
    (void)state;
    struct cladding_zones z;
    assert_int_equal(trade_gable_zones_sqft(&z, 60, 30, 3), 0);
    close_to(z.field, 2 * 9 * 54);
    close_to(z.eave, 2 * 3 * 54);
    close_to(z.ridge, 2 * 3 * 54);
    close_to(z.rake, 4 * 9 * 3);
    close_to(z.eave_corner, 36);
    close_to(z.ridge_corner, 36);
}

static void test_zones_cover_the_plan(void **state)
{
    (void)state;
    for (int i = 0; i < RANDOM_ROUNDS; i++) {
        const double length = between(6, 150), width = between(6, 150), a = between(0.5, 30);
        struct cladding_zones gable, hip;
        assert_int_equal(trade_gable_zones_sqft(&gable, length, width, a), 0);
        assert_int_equal(trade_hip_zones_sqft(&hip, length, width, a), 0);
        close_to(sum_of(&gable), length * width);
        close_to(sum_of(&hip), length * width);
        none_negative(&gable);
        none_negative(&hip);
        /* Wider strips leave less field. */
        struct cladding_zones wider;
        trade_hip_zones_sqft(&wider, length, width, a + 0.5);
        assert_true(wider.field <= hip.field + 1e-9);
    }
}

/* The hip's field, counted point by point on a fine grid. */
static double hip_field_counted(double length, double width, double a)
{
    const double step = 0.05, run = width / 2;
    size_t inside = 0;
    for (double x = step / 2; x < length; x += step)
        for (double y = step / 2; y < width; y += step) {
            const double u = fmin(x, length - x), v = fmin(y, width - y);
            /* Distances in plan to eave, to the nearest hip, to the ridge. */
            const double hip = fabs(u - v) / sqrt(2);
            const double ridge = u < v ? INFINITY : run - v;
            inside += fmin(u, v) > a && hip > a && ridge > a;
        }
    return (double)inside * step * step;
}

static void test_hip_field_counted(void **state)
{
    (void)state;
    static const double HOUSES[][3] = {
        {60, 30, 3}, {40, 40, 3}, {34, 30, 3}, {80, 24, 4}, {30, 12, 3}};
    for (size_t i = 0; i < sizeof(HOUSES) / sizeof(HOUSES[0]); i++) {
        const double *h = HOUSES[i];
        struct cladding_zones z;
        assert_int_equal(trade_hip_zones_sqft(&z, h[0], h[1], h[2]), 0);
        const double counted = hip_field_counted(h[0], h[1], h[2]);
        if (fabs(z.field - counted) > 0.01 * h[0] * h[1])
            fail_msg("%g x %g: %g, counted %g", h[0], h[1], z.field, counted);
    }
}

static void test_zones_refused(void **state)
{
    (void)state;
    struct cladding_zones z;
    assert_int_equal(trade_gable_zones_sqft(&z, 0, 30, 3), -1);
    assert_int_equal(trade_gable_zones_sqft(&z, 60, NAN, 3), -1);
    assert_int_equal(trade_hip_zones_sqft(&z, 60, 30, 0), -1);
    assert_int_equal(trade_hip_zones_sqft(&z, INFINITY, 30, 3), -1);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_speeds_both_ways),
        cmocka_unit_test(test_kz_grows_with_height_and_openness),
        cmocka_unit_test(test_kz_refused),
        cmocka_unit_test(test_ke),
        cmocka_unit_test(test_q_goes_with_the_square),
        cmocka_unit_test(test_pressures),
        cmocka_unit_test(test_pressures_refused),
        cmocka_unit_test(test_all_places_at_once),
        cmocka_unit_test(test_zone_width),
        cmocka_unit_test(test_gable_zones_by_hand),
        cmocka_unit_test(test_zones_cover_the_plan),
        cmocka_unit_test(test_hip_field_counted),
        cmocka_unit_test(test_zones_refused),
    };
    return cmocka_run_group_tests_name("wind", tests, NULL, NULL);
}
