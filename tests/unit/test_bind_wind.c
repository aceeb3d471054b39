/* Roof geometry, wind and nails as rules call them: what comes back, the line
 * of arithmetic each leaves, and what a wrong argument does. */
#include "support/small_law.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>

#include <cmocka.h>

struct called {
    const char *call; /* gives a number */
    double value;
    const char *work;  /* what the finding's arithmetic must hold; NULL: it adds none */
    const char *error; /* or the rule is broken, saying this */
};

static const struct called CALLS[] = {
    {"trade.hip_factor(6)", 1.5, NULL, NULL},
    {"trade.hip_length_ft { run_ft = 15, pitch = 8 }", 23.452,
     "15 ft of common run x 1.5635 (hip and valley factor at 8:12) = 23.45 ft", NULL},
    {"trade.pitch_degrees(12)", 45, NULL, NULL},
    {"trade.vasd_to_vult(93)", 120.062, "Vasd 93 mph / square root of 0.6 = Vult 120 mph", NULL},
    {"trade.wind_ke(5280)", 0.826, "Ke = e ^ (-0.0000362 x 5,280 ft) = 0.826", NULL},
    {"trade.wind_kz { height_ft = 12, factor = 2.01, alpha = 7, zg_ft = 1200, least_ft = 15, "
     "floor = 0.7 }",
     0.7, "not under 0.7 = 0.7", NULL},
    {"trade.wind_q_psf { vult_mph = 150, kz = 0.7, kzt = 1, kd = 0.85, ke = 1 }", 34.272,
     "(150 mph) squared = 34.27 psf", NULL},
    {"trade.zone_width_ft { least_width_ft = 40, height_ft = 14, width_share = 0.1, "
     "height_share = 0.4, least_share = 0.04, least_ft = 3 }",
     4, "smaller of 0.1 x 40 ft and 0.4 x 14 ft, not under 0.04 x 40 ft or 3 ft = 4 ft", NULL},
    {"trade.cladding_psf { q_psf = 34.272, gcp = -2.6, gcpi = 0.18, load_factor = 0.6, "
     "least_psf = 10 }",
     -57.166, "34.27 psf x (2.6 + 0.18 inside) x 0.6 = 57.17 psf", NULL},
    {"trade.nail_capacity_lb { length_in = 2.5, shank_in = 0.131, head_in = 0.281, ring_in = 0, "
     "framing_gravity = 0.42, panel_gravity = 0.5, panel_in = 0.4375, duration = 1.6, "
     "wet_withdrawal = 1, wet_pull_through = 1 }",
     68.201, "the lesser is 68.2 lb", NULL},
    {"trade.nail_spacing_in { capacity_lb = 100, support_spacing_in = 24, psf = -50 }", 12,
     "a nail each 12 in", NULL},
    {"trade.slope_area_sqft { plan_sqft = 800, pitch = 9 }", 1000,
     "800 sq ft seen from above x 1.2500 (slope factor at 9:12) = 1,000 sq ft", NULL},
    {"trade.footprint { form = \"gable\", length_ft = 40, width_ft = 24, pitch = 5 }.area_sqft",
     1040, "2 planes, 960 sq ft in plan, 1,040 sq ft on the slope", NULL},
    {"trade.footprint { form = \"cross_gable\", length_ft = 60, width_ft = 30, pitch = 6, "
     "wing_width_ft = 20, wing_out_ft = 10 }.valley_ft",
     30, "4 planes", NULL},
    {"trade.footprint { form = \"gable_porch\", length_ft = 40, width_ft = 24, pitch = 5, "
     "porch_length_ft = 12, porch_depth_ft = 6, porch_pitch = 4 }.top_ft",
     12, "3 planes", NULL},
    {"trade.footprint { form = \"hip\", length_ft = 40, width_ft = 24, pitch = 5, "
     "eave_overhang_ft = 1 }.ridge_ft",
     16, "4 planes", NULL},

    {"trade.footprint { form = \"dome\", length_ft = 40, width_ft = 24, pitch = 5 }.area_sqft", 0,
     NULL, "form must be one of"},
    {"trade.footprint { form = \"cross_gable\", length_ft = 60, width_ft = 30, pitch = 6, "
     "wing_width_ft = 31, wing_out_ft = 10 }.area_sqft",
     0, NULL, "wider than the house"},
    {"trade.hip_length_ft { run_ft = -15, pitch = 8 }", 0, NULL, "out of range"},
    {"trade.hip_length_ft { run_ft = 15 }", 0, NULL, "pitch must be a number"},
    {"trade.hip_length_ft(15)", 0, NULL, "table expected"},
    {"trade.wind_ke(\"high\")", 0, NULL, "number expected"},
    {"trade.nail_spacing_in { capacity_lb = 100, support_spacing_in = 24, psf = 0 }", 0, NULL,
     "out of range"},
    {"trade.nail_capacity_lb { length_in = 0.4, shank_in = 0.131, head_in = 0.281, ring_in = 0, "
     "framing_gravity = 0.42, panel_gravity = 0.5, panel_in = 0.4375, duration = 1.6, "
     "wet_withdrawal = 1, wet_pull_through = 1 }",
     0, NULL, "does not reach through"},
};

static void check_call(const struct called *called)
{
    char rule[1600];
    struct temporary_home home;
    home_make(&home);
    small_law_write(&home);
    snprintf(
        rule, sizeof(rule),
        "rule \"try.call\" { reads = { figures = { \"test.seen\" } }, title = \"Call\", stage = \"permit\",\n"
        "  judge = function(job, figure)\n"
        "    return all_of(at_least(%s, %.6f - 0.0006 + 0 * figure \"test.seen\", \"x\"),\n"
        "      at_most(%s, %.6f + 0.0006, \"x\"))\n"
        "  end, mend = \"None.\" }\n",
        called->call, called->value, called->call, called->value);
    home_write(&home, "rules/try.lua", rule);
    eavemark *handle = eavemark_open(home.path);
    struct outcome_of_check checked = home_check(handle, SMALL_JOB, NULL, NULL, NULL);
    assert_string_equal(checked.problems, "");
    if (called->error != NULL) {
        assert_member(checked.json, "try.call", 0, "outcome", "broken");
        assert_member_has(checked.json, "try.call", 0, "says", called->error);
    } else {
        assert_member(checked.json, "try.call", 0, "outcome", "pass");
        if (called->work != NULL)
            assert_member_has(checked.json, "try.call", 0, "work", called->work);
        else
            assert_member(checked.json, "try.call", 0, "work", "[]");
    }
    outcome_free(&checked);
    eavemark_close(handle);
    home_remove(&home);
}

static void test_calls(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof(CALLS) / sizeof(CALLS[0]); i++) {
        print_message("%s\n", CALLS[i].call);
        check_call(&CALLS[i]);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(test_calls),
    };
    return cmocka_run_group_tests_name("bind wind", tests, NULL, NULL);
}
