/* Slope factors, rafters and areas, as carpentry manuals print them. */
#include "published/published.h"

#include "trade/geometry.h"

#define NAVY_ROOF "Navy Builder manual NAVEDTRA 14044, p. 3-7"
#define NAVY_RAFTER "Navy Builder manual NAVEDTRA 14044, roof framing, rafter length"
#define NAVY_HIP "Navy Builder manual NAVEDTRA 14044, roof framing, hip rafter"
#define ARMY_TABLE "Army engineer course EN0069, rafter layout, scale method"
#define COLUMN "builder's column on the roof slope multiplying factor"

static struct counted counted;

static void manuals(void **state)
{
    (void)state;
    const struct check rows[] = {
        {KIND_HANDBOOK, "factor at 5-1/2 in 12", NAVY_ROOF, trade_slope_factor(5.5), 1.100, 0.0005,
         "printed to a thousandth"},
        {KIND_HANDBOOK, "area of 70 x 30 ft in plan at 5-1/2 in 12", NAVY_ROOF,
         trade_slope_area_sqft(70, 70, 30, 5.5), 2310, 0.1, "from the rounded factor, 1.100"},
        {KIND_HANDBOOK, "common rafter per foot of run, rise 7", NAVY_RAFTER,
         12 * trade_slope_factor(7), 13.89, 0.005, "printed to a hundredth"},
        {KIND_HANDBOOK, "common rafter over a run of 8 ft, rise 7, in inches", NAVY_RAFTER,
         12 * trade_sloped_length_ft(8, 7), 111.12, 0.04, "8 times the rounded 13.89"},
        {KIND_HANDBOOK, "the same on the tape: 9 ft 3-1/8 in", NAVY_RAFTER,
         trade_sloped_length_ft(8, 7), 9 + 3.125 / 12, 0.0625 / 12, "to the nearest 1/8 in"},
        /* Only the common part: the rise of a hip's 15 ft common run is 10 ft, and the hip's
         * level run 15 ft by 15 ft, 21.21 ft; so its slope is 10 ft over 21.21 ft. */
        {KIND_HANDBOOK, "hip of a 15 ft common run, rise 8", NAVY_HIP,
         trade_sloped_length_ft(15 * sqrt(2), 8 / sqrt(2)), 23.45, 0.005, "printed to a hundredth"},
        {KIND_HANDBOOK, "hip per foot of common run, rise 8, in inches", NAVY_HIP,
         12 * trade_sloped_length_ft(sqrt(2), 8 / sqrt(2)), 18.76, 0.005, "printed to a hundredth"},
        {KIND_HANDBOOK, "rafter per foot of run, rise 13", ARMY_TABLE, 12 * trade_slope_factor(13),
         17.69, 0.005, "printed to a hundredth"},
        {KIND_HANDBOOK, "rafter per foot of run, rise 16", ARMY_TABLE, 12 * trade_slope_factor(16),
         20.00, 0.005, "printed to a hundredth"},
        {KIND_TRADE, "factor at 6 in 12", COLUMN, trade_slope_factor(6), 1.118, 0.0005,
         "printed to a thousandth"},
        {KIND_TRADE, "factor at 4 in 12", COLUMN, trade_slope_factor(4), 1.0541, 0.00005,
         "printed to four digits"},
        {KIND_TRADE, "half of a house 28 ft wide at 4 in 12", COLUMN, trade_sloped_length_ft(14, 4),
         14.75, 0.01, "from the rounded factor, cut short"},
    };
    published_hold(&counted, rows, sizeof(rows) / sizeof(rows[0]));
}

/* Rafter-table lengths per foot of run: the steps between the manuals' points. */
static void rafter_table(void **state)
{
    (void)state;
    static const struct {
        double rise, inches;
    } TABLE[] = {{2, 12.17}, {3, 12.37},  {4, 12.65},  {5, 13.00},  {6, 13.42}, {8, 14.42},
                 {9, 15.00}, {10, 15.62}, {12, 16.97}, {14, 18.44}, {18, 21.63}};
    for (size_t i = 0; i < sizeof(TABLE) / sizeof(TABLE[0]); i++) {
        const struct check row = {KIND_TRADE,
                                  "rafter per foot of run",
                                  "how-to page with a rafter table, rises 2 to 18",
                                  12 * trade_slope_factor(TABLE[i].rise),
                                  TABLE[i].inches,
                                  0.0051,
                                  "printed to a hundredth"};
        published_hold(&counted, &row, 1);
    }
}

static void ours(void **state)
{
    (void)state;
    const struct check rows[] = {
        {KIND_OURS, "hip end, a triangle of 30 ft eave, 15 ft run, 12:12", "ours",
         trade_slope_area_sqft(30, 0, 15, 12), 318.198, 0.001, "30 x 15 / 2 x 1.41421"},
        {KIND_OURS, "a level plane", "ours", trade_slope_factor(0), 1, 0, "exact"},
    };
    published_hold(&counted, rows, sizeof(rows) / sizeof(rows[0]));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(manuals),
        cmocka_unit_test(rafter_table),
        cmocka_unit_test(ours),
    };
    const int failed = cmocka_run_group_tests_name("published geometry", tests, NULL, NULL);
    return published_summary("published geometry", &counted, failed);
}
