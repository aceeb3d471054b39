/* Figures as people write them. The conversions are those of NIST Handbook 44,
 * appendix C: 12 inches to the foot, 144 square inches to the square foot. */
#include "base/measure.h"

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <string.h>

#include <cmocka.h>

/* clang-format off */
static const struct {
    const char *words, *unit;
    double value;
} READ[] = {
    {"5", "in", 5},           {"5.5", "in", 5.5},        {".5", "in", 0.5},
    {"0", "ft", 0},           {" 6 ", "in", 6},          {"6.", "in", 6},
    {"1,250", "sqft", 1250},  {"14,500,000", "usd", 14500000}, {"$14,500", "usd", 14500},
    {"7/16", "in", 0.4375},   {"1 1/4", "in", 1.25},     {"1-1/4", "in", 1.25},
    {"1 1/4 in", "in", 1.25}, {"1 1/4\"", "in", 1.25},   {"3/8 inches", "in", 0.375},
    {"5/4", "in", 1.25},      {"15/32", "in", 0.46875},  {"59'6\"", "ft", 59.5},
    {"5/12 in", "in", 0.416667}, {"1-1/2 in", "in", 1.5},  {"3\xC2\xBD in", "in", 3.5},
    {"12 ga", "gage", 12},    {"30 squares", "sqft", 3000}, {"1 square", "sqft", 100},
    {"250 sq ft", "squares", 2.5}, {"60 mil", "in", 0.06}, {"2 yd", "ft", 6},
    {"5/12", "percent", 0.416667}, {"12/16", "in", 0.75},  {"1/3", "in", 0.333333},
    {"12'6\"", "ft", 12.5},   {"12'6\"", "in", 150},     {"12' 6 1/2\"", "in", 150.5},
    {"12'6", "ft", 12.5},     {"12 ft 6 in", "ft", 12.5}, {"12 feet 6 inches", "ft", 12.5},
    {"12ft6in", "ft", 12.5},  {"40'", "ft", 40},         {"2 ft", "in", 24},
    {"18 in", "ft", 1.5},     {"12'5\"", "ft", 12.416667}, {"0'6\"", "ft", 0.5},
    {"144 sq in", "sqft", 1}, {"2 sq ft", "sqin", 288},  {"30 %", "percent", 30},
    {"115 mph", "mph", 115},  {"115 MPH", "mph", 115},   {"4 nails", "nails", 4},
    {"1 nail", "nails", 1},   {"240 lb", "lb", 240},     {"240 lbs", "lb", 240},
    {"26 gauge", "gage", 26}, {"-10", "F", -10},         {"14 F", "F", 14},
    {"3", NULL, 3},           {"0.120", "in", 0.12},     {"-0", "F", 0},
};
/* clang-format on */

static void reads_what_people_write(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof(READ) / sizeof(READ[0]); i++) {
        char why[MEASURE_WHY] = "";
        double value = -99;
        if (!measure_read(READ[i].words, READ[i].unit, &value, why))
            fail_msg("%s: %s", READ[i].words, why);
        if (value != READ[i].value)
            fail_msg("%s in %s: %.17g, not %.17g", READ[i].words, READ[i].unit, value,
                     READ[i].value);
    }
}

/* clang-format off */
static const struct {
    const char *words, *unit, *why;
} REFUSED[] = {
    {"", "in", "no figure"},          {"fast", "mph", "no figure"},
    {"5/0", "in", "no figure"},       {"5,5", "in", "5.5 or 5 and 5"},
    {"1,25", "in", "1.25 or 1 and 25"},
    {"11/4", "in", "1 1/4 or 2.75"},  {"115/32", "in", "1 15/32 or 3.59375"},
    {"23/8 in", "in", "2 3/8 or 2.875"}, {"5/12", "ft", "a slope of 5:12 or 0.416667 ft"},
    {"30 sq", "sqft", "30 squares or 30 sq ft"}, {"12 ga", "in", "one thickness of wire"},      {"1.2.3", "in", "no figure"},
    {"12-6", "ft", "12 ft 6 in or 12 and 6"}, {"5 6", "in", "5 ft 6 in or 5 and 6"},
    {"12-6", "mph", "no figure"},
    {"12'14\"", "ft", "no figure"}, {"6\"12'", "ft", "no figure"},
    {"1 2 3", "in", "no figure"},     {"1 7/4", "in", "no figure"},
    {"12 ft", "mph", "asked for in mph"}, {"3 lb", "in", "asked for in in"},
    {"10 sq ft", "ft", "\"sqft\" after the number; it is asked for in ft"},
    {"3 in", NULL, "a plain number is asked for"},
    {"1234567890123456", "in", "no figure"}, {"0x10", "in", "no figure"},
    {"1e3", "in", "no figure"},     {"nan", "in", "no figure"},
    {"inf", "in", "no figure"},       {"--5", "F", "no figure"}, {"-", "F", "no figure"},
};
/* clang-format on */

static void refuses_the_rest_and_says_why(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof(REFUSED) / sizeof(REFUSED[0]); i++) {
        char why[MEASURE_WHY] = "";
        double value = 0;
        if (measure_read(REFUSED[i].words, REFUSED[i].unit, &value, why))
            fail_msg("\"%s\" was read as %g", REFUSED[i].words, value);
        if (strstr(why, REFUSED[i].why) == NULL)
            fail_msg("\"%s\": %s", REFUSED[i].words, why);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(reads_what_people_write),
        cmocka_unit_test(refuses_the_rest_and_says_why),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
