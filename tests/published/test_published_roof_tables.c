/* The table of slope, hip and valley factors, whole; hips and areas as
 * manuals work them. Rafter lengths are in test_published_geometry.c. */
#include "published/published.h"

#include "trade/footprint.h"
#include "trade/geometry.h"

#include <stdbool.h>

#define NAVY_ROOF "Navy Builder manual NAVEDTRA 14044, p. 3-7"
#define NAVY_HIP "Navy Builder manual NAVEDTRA 14044, roof framing, hip rafter"
#define RAFTER_PAGE "how-to page with a rafter table, rises 2 to 18"
#define HANDBOOK "carpentry handbook of the 1910s, stepping off hips"

static struct counted counted;

/* Rise; degrees; slope factor; common rafter and hip or valley, inches per foot
 * of common run; hip factor. Common rafters of rises 2 to 18 were read; the rest
 * is worked out from the triangles. */
static const struct {
    double rise, degrees, slope, common_in, hip_in, hip;
} TABLE[] = {
    {1, 4.76, 1.0035, 12.04, 17.00, 1.4167},   {2, 9.46, 1.0138, 12.17, 17.09, 1.4240},
    {3, 14.04, 1.0308, 12.37, 17.23, 1.4361},  {4, 18.43, 1.0541, 12.65, 17.44, 1.4530},
    {5, 22.62, 1.0833, 13.00, 17.69, 1.4743},  {6, 26.57, 1.1180, 13.42, 18.00, 1.5000},
    {7, 30.26, 1.1577, 13.89, 18.36, 1.5298},  {8, 33.69, 1.2019, 14.42, 18.76, 1.5635},
    {9, 36.87, 1.2500, 15.00, 19.21, 1.6008},  {10, 39.81, 1.3017, 15.62, 19.70, 1.6415},
    {11, 42.51, 1.3566, 16.28, 20.22, 1.6853}, {12, 45.00, 1.4142, 16.97, 20.78, 1.7321},
    {13, 47.29, 1.4743, 17.69, 21.38, 1.7815}, {14, 49.40, 1.5366, 18.44, 22.00, 1.8333},
    {15, 51.34, 1.6008, 19.21, 22.65, 1.8875}, {16, 53.13, 1.6667, 20.00, 23.32, 1.9437},
    {17, 54.78, 1.7341, 20.81, 24.02, 2.0017}, {18, 56.31, 1.8028, 21.63, 24.74, 2.0616},
    {19, 57.72, 1.8727, 22.47, 25.48, 2.1230}, {20, 59.04, 1.9437, 23.32, 26.23, 2.1858},
    {21, 60.26, 2.0156, 24.19, 27.00, 2.2500}, {22, 61.39, 2.0883, 25.06, 27.78, 2.3154},
    {23, 62.45, 2.1619, 25.94, 28.58, 2.3819}, {24, 63.43, 2.2361, 26.83, 29.39, 2.4495},
};

enum { ROWS = sizeof(TABLE) / sizeof(TABLE[0]) };

static void factors(void **state)
{
    (void)state;
    for (size_t i = 0; i < ROWS; i++) {
        const double rise = TABLE[i].rise;
        const struct check rows[] = {
            {KIND_OURS, "degrees of a rise", "ours", trade_pitch_to_degrees(rise), TABLE[i].degrees,
             0.005001, "worked out to a hundredth"},
            {KIND_OURS, "slope factor", "ours", trade_slope_factor(rise), TABLE[i].slope,
             0.00005001, "worked out to four digits"},
            {KIND_OURS, "hip and valley factor", "ours", trade_hip_factor(rise), TABLE[i].hip,
             0.00005001, "worked out to four digits"},
            {KIND_OURS, "pitch of that many degrees", "ours",
             trade_degrees_to_pitch(TABLE[i].degrees), rise, 0.006, "degrees to a hundredth"},
        };
        published_hold(&counted, rows, sizeof(rows) / sizeof(rows[0]));
    }
}

/* Rises whose common rafter is checked elsewhere against a page or manual. */
static bool is_checked_elsewhere(double rise)
{
    static const double DONE[] = {2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 13, 14, 16, 18};
    for (size_t i = 0; i < sizeof(DONE) / sizeof(DONE[0]); i++)
        if (DONE[i] == rise)
            return true;
    return false;
}

static void lengths_per_foot(void **state)
{
    (void)state;
    for (size_t i = 0; i < ROWS; i++) {
        const double rise = TABLE[i].rise;
        const bool read = rise >= 2 && rise <= 18, navy = rise == 8;
        const struct check rows[] = {
            {navy ? KIND_HANDBOOK : KIND_OURS, "hip or valley per foot of common run, inches",
             navy ? NAVY_HIP : "ours", 12 * trade_hip_length_ft(1, rise), TABLE[i].hip_in, 0.005001,
             "to a hundredth"},
            {read ? KIND_TRADE : KIND_OURS, "common rafter per foot of run, inches",
             read ? RAFTER_PAGE : "ours", 12 * trade_sloped_length_ft(1, rise), TABLE[i].common_in,
             0.005001, "to a hundredth"},
        };
        published_hold(&counted, rows, is_checked_elsewhere(rise) ? 1 : 2);
    }
}

/* The manual's hip (rise 8, common run 15 ft) by the hip's own formula, not by
 * a common rafter turned 45 degrees. */
static void hips(void **state)
{
    (void)state;
    const struct check rows[] = {
        {KIND_HANDBOOK, "hip over a 15 ft common run, rise 8", NAVY_HIP, trade_hip_length_ft(15, 8),
         23.45, 0.005, "printed to a hundredth"},
        {KIND_HANDBOOK, "rise over that run", NAVY_HIP, trade_rise_ft(15, 8), 10, 0, "exact"},
        {KIND_HANDBOOK, "level run of the hip per foot of common run, inches", NAVY_HIP,
         12 * trade_hip_length_ft(1, 0), 16.97, 0.005, "printed to a hundredth"},
        {KIND_HANDBOOK, "the same as carpenters step it off", HANDBOOK,
         12 * trade_hip_length_ft(1, 0), 17, 0.05, "the nearest mark of the square"},
    };
    published_hold(&counted, rows, sizeof(rows) / sizeof(rows[0]));
}

/* The manual multiplies the plan, overhang included, by the factor: so do the
 * footprint's gable and hip, whatever the split into planes. */
static void area_from_plan(void **state)
{
    (void)state;
    struct footprint roof = {.form = ROOF_GABLE,
                             .length_ft = 66,
                             .width_ft = 26,
                             .pitch = 5.5,
                             .eave_overhang_ft = 2,
                             .rake_overhang_ft = 2};
    struct footprint_measure gable, hip;
    const char *why;
    assert_int_equal(trade_footprint(&gable, &roof, &why), 0);
    roof.form = ROOF_HIP;
    roof.rake_overhang_ft = 0;
    assert_int_equal(trade_footprint(&hip, &roof, &why), 0);
    const struct check rows[] = {
        {KIND_HANDBOOK, "gable, 70 x 30 ft with overhangs, 5-1/2 in 12", NAVY_ROOF, gable.area_sqft,
         2310, 0.1, "from the rounded factor, 1.100"},
        {KIND_HANDBOOK, "hip over the same plan", NAVY_ROOF, hip.area_sqft, 2310, 0.1,
         "from the rounded factor, 1.100"},
    };
    published_hold(&counted, rows, sizeof(rows) / sizeof(rows[0]));
}

/* Bounds of the wind tables' slope bands as rises. */
static void bands(void **state)
{
    (void)state;
    static const double BANDS[][2] = {{7, 1.47}, {20, 4.37}, {27, 6.11}, {45, 12}};
    for (size_t i = 0; i < sizeof(BANDS) / sizeof(BANDS[0]); i++) {
        const struct check row = {KIND_OURS,
                                  "rise of a band's bound",
                                  "ours",
                                  trade_degrees_to_pitch(BANDS[i][0]),
                                  BANDS[i][1],
                                  0.005,
                                  "worked out to a hundredth"};
        published_hold(&counted, &row, 1);
    }
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(factors), cmocka_unit_test(lengths_per_foot),
        cmocka_unit_test(hips),    cmocka_unit_test(area_from_plan),
        cmocka_unit_test(bands),
    };
    const int failed = cmocka_run_group_tests_name("published roof tables", tests, NULL, NULL);
    return published_summary("published roof tables", &counted, failed);
}
