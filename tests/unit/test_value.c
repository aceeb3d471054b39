/* Slopes as a job writes them. */
#include "base/date.h"
#include "job/slope.h"

#include <math.h>
#include <regex.h>
#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdio.h>
#include <string.h>

#include <cmocka.h>

static const struct {
    const char *text;
    double rise;
} READ[] = {
    {"5:12", 5},        {"5/12", 5},          {"5 in 12", 5}, {"5.5:12", 5.5},
    {"2.5:6", 5},       {"0:12", 0},          {"12:12", 12},  {"1:1", 12},
    {"0.5/12", 0.5},    {"5:12.0", 5},        {"5 on 12", 5}, {"1/4:12", 0.25},
    {"4 1/2:12", 4.5},  {"4-1/2 in 12", 4.5}, {"3/4:6", 1.5}, {"22.6\xC2\xB0", 4.995117890},
    {"100 %", 12},      {"100%", 12},         {"50%", 6},     {"33.3333 %", 3.999996},
    {"0 %", 0},         {"45 deg", 12},       {"45deg", 12},  {"0 deg", 0},
    {"9999:1", 119988},
};

static const char *const NOT_A_SLOPE[] = {
    "",        "5",         "5:",           ":12",       "-5:12",       "5:-12",
    "+5:12",   "5:0",       "5:0.5",        "5:12 ",     " 5:12",       "5:12x",
    "5 : 12",  "5::12",     "5,5:12",       "5.:12",     ".5:12",       "05:12",
    "5:012",   "5e0:12",    "0x5:12",       "nan:12",    "inf:12",      "nan %",
    "inf deg", "90 deg",    "90.0 deg",     "100 deg",   "-1 deg",      "5  in 12",
    "5in12",   "5 in12",    "5  %",         "5 percent", "22.6 degree", "deg",
    "%",       "12345:12",  "5.1234567:12", "5:12:12",   "5:12%",       "5:12 deg",
    "1/4",     "0.5/1",     "5/10",         "2/4:12",    "1/3:12",      "5/12:12",
    "4 1/2",   "4  1/2:12", "1/4/12",       "1/4 %",     "1/16.0:12",   "17/16:12",
    "1/4:0",   "5 deg %",   "\xC2\xB2:12",  "5\n:12",    "5:12\n",      "1.0-1/4:12",
};

static void slopes_are_rise_in_12(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof(READ) / sizeof(READ[0]); i++) {
        double rise = -1;
        if (!slope_parse(READ[i].text, &rise))
            fail_msg("%s was refused", READ[i].text);
        assert_true(fabs(rise - READ[i].rise) < 1e-6);
    }
}

static void quotients_that_come_out_even_are_exact(void **state)
{
    (void)state;
    double rise = 0;
    assert_true(slope_parse("2.5:6", &rise) && rise == 5);
    assert_true(slope_parse("1.9:12", &rise) && rise == 1.9);
    assert_true(slope_parse("4:12", &rise) && rise == 4);
}

/* A rise of 5 in 12 is 22.62 degrees and 41.67 percent, 4 in 12 is 18.43 and
 * 33.33, 7 in 12 is 30.26 and 58.33: as rafter square tables print them
 * (arctangent, common practice). */
static void degrees_and_percent_agree_with_rafter_tables(void **state)
{
    (void)state;
    static const struct {
        const char *degrees, *percent;
        double rise;
    } TABLE[] = {
        {"18.43 deg", "33.33 %", 4},
        {"22.62 degrees", "41.67%", 5},
        {"30.26 deg", "58.33 %", 7},
    };
    for (size_t i = 0; i < sizeof(TABLE) / sizeof(TABLE[0]); i++) {
        double rise = 0;
        assert_true(slope_parse(TABLE[i].degrees, &rise));
        assert_true(fabs(rise - TABLE[i].rise) < 0.005);
        assert_true(slope_parse(TABLE[i].percent, &rise));
        assert_true(fabs(rise - TABLE[i].rise) < 0.005);
    }
}

static void what_is_no_slope_is_refused(void **state)
{
    (void)state;
    for (size_t i = 0; i < sizeof(NOT_A_SLOPE) / sizeof(NOT_A_SLOPE[0]); i++) {
        double rise = 0;
        if (slope_parse(NOT_A_SLOPE[i], &rise))
            fail_msg("\"%s\" was read as a slope", NOT_A_SLOPE[i]);
    }
    double rise = 0;
    assert_true(slope_parse("89.999999 deg", &rise) && isfinite(rise));
}

/* A slope with nothing but a number, and a fraction that is no rise over 12, are said to be
 * either. A third of a pitch was once a third of the span: no reading of it is safe. */
static void what_could_be_two_slopes_is_said(void **state)
{
    (void)state;
    static const struct {
        const char *text, *first, *second;
    } TWO[] = {
        {"5", "5:12", "5 degrees"},
        {"22.6", "22.6:12", "22.6 percent"},
        {"1/4", "1/4:12", "1 in 4 (3:12)"},
        {"1/3", "1/3:12", "1 in 3 (4:12)"},
    };
    char why[SLOPE_WHY];
    for (size_t i = 0; i < sizeof(TWO) / sizeof(TWO[0]); i++) {
        double rise = 0;
        assert_false(slope_parse(TWO[i].text, &rise));
        assert_true(slope_has_two_readings(TWO[i].text, why));
        if (strstr(why, TWO[i].first) == NULL || strstr(why, TWO[i].second) == NULL)
            fail_msg("%s: %s", TWO[i].text, why);
    }
    assert_false(slope_has_two_readings("5:12", why));
    assert_false(slope_has_two_readings("steep", why));
    assert_false(slope_has_two_readings("1/0", why));
    assert_false(slope_has_two_readings("12/4", why)); /* 4:12 the wrong way round */
}

/* The patterns of the schema are held against the C readers with POSIX regular
 * expressions, which read these two as ECMA-262 does. */
static void the_slope_pattern_says_the_same(void **state)
{
    (void)state;
    regex_t pattern;
    assert_int_equal(regcomp(&pattern, SLOPE_PATTERN, REG_EXTENDED | REG_NOSUB), 0);
    for (size_t i = 0; i < sizeof(READ) / sizeof(READ[0]); i++)
        if (regexec(&pattern, READ[i].text, 0, NULL, 0) != 0)
            fail_msg("the pattern refuses \"%s\"", READ[i].text);
    for (size_t i = 0; i < sizeof(NOT_A_SLOPE) / sizeof(NOT_A_SLOPE[0]); i++)
        if (regexec(&pattern, NOT_A_SLOPE[i], 0, NULL, 0) == 0)
            fail_msg("the pattern takes \"%s\"", NOT_A_SLOPE[i]);
    regfree(&pattern);
}

/* Every text of up to five characters from this alphabet. */
static void the_slope_pattern_says_the_same_of_all_short_texts(void **state)
{
    (void)state;
    static const char ALPHABET[] = "0159.:/ %-";
    const size_t letters = sizeof(ALPHABET) - 1;
    regex_t pattern;
    assert_int_equal(regcomp(&pattern, SLOPE_PATTERN, REG_EXTENDED | REG_NOSUB), 0);
    size_t taken = 0;
    for (size_t n = 0; n < 100000; n++) {
        char text[6] = "";
        size_t rest = n;
        for (size_t i = 0; i < 5; i++, rest /= letters)
            text[i] = ALPHABET[rest % letters];
        for (size_t length = 1; length <= 5; length++) {
            char part[6] = "";
            memcpy(part, text, length);
            double rise = 0;
            const bool read = slope_parse(part, &rise);
            if (read != (regexec(&pattern, part, 0, NULL, 0) == 0))
                fail_msg("the pattern and slope_parse differ on \"%s\"", part);
            taken += read;
        }
    }
    assert_true(taken > 1000);
    regfree(&pattern);
}

static void the_date_pattern_says_the_same_of_every_day(void **state)
{
    (void)state;
    regex_t pattern;
    assert_int_equal(regcomp(&pattern, DATE_PATTERN, REG_EXTENDED | REG_NOSUB), 0);
    for (int year = 1895; year <= 2204; year++)
        for (int day = 0; day < 14 * 34; day++) {
            char text[32];
            snprintf(text, sizeof(text), "%04d-%02d-%02d", year, day / 34, day % 34);
            if ((date_parse(text) != 0) != (regexec(&pattern, text, 0, NULL, 0) == 0))
                fail_msg("the pattern and date_parse differ on %s", text);
        }
    regfree(&pattern);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(slopes_are_rise_in_12),
        cmocka_unit_test(quotients_that_come_out_even_are_exact),
        cmocka_unit_test(degrees_and_percent_agree_with_rafter_tables),
        cmocka_unit_test(what_is_no_slope_is_refused),
        cmocka_unit_test(what_could_be_two_slopes_is_said),
        cmocka_unit_test(the_slope_pattern_says_the_same),
        cmocka_unit_test(the_slope_pattern_says_the_same_of_all_short_texts),
        cmocka_unit_test(the_date_pattern_says_the_same_of_every_day),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
