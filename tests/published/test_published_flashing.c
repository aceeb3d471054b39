/* Height of a cricket behind a chimney, as tabled. */
#include "published/published.h"

#include "trade/flashing.h"

/* The table is recalled; that at 12:12 a cricket is half the width high is also
 * repeated on public pages. */
#define TABLE "IRC Table R1003.20, recalled"

static struct counted counted;

static void crickets(void **state)
{
    (void)state;
    const double width = 48; /* every row is a share of the width */
    const struct check rows[] = {
        {KIND_RECALLED, "12:12, half the width", TABLE, trade_cricket_height_in(width, 12), 24,
         1e-9, "a share of the width"},
        {KIND_RECALLED, "8:12, a third", TABLE, trade_cricket_height_in(width, 8), 16, 1e-9,
         "a share of the width"},
        {KIND_RECALLED, "6:12, a quarter", TABLE, trade_cricket_height_in(width, 6), 12, 1e-9,
         "a share of the width"},
        {KIND_RECALLED, "4:12, a sixth", TABLE, trade_cricket_height_in(width, 4), 8, 1e-9,
         "a share of the width"},
        {KIND_RECALLED, "3:12, an eighth", TABLE, trade_cricket_height_in(width, 3), 6, 1e-9,
         "a share of the width"},
    };
    published_hold(&counted, rows, sizeof(rows) / sizeof(rows[0]));
}

static void nonsense_gives_no_height(void **state)
{
    (void)state;
    assert_true(isnan(trade_cricket_height_in(0, 5)));
    assert_true(isnan(trade_cricket_height_in(36, 0)));
    assert_true(isnan(trade_cricket_height_in(-36, 5)));
    assert_true(isnan(trade_cricket_height_in(36, INFINITY)));
    assert_true(isnan(trade_cricket_height_in(NAN, 5)));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(crickets),
        cmocka_unit_test(nonsense_gives_no_height),
    };
    const int failed = cmocka_run_group_tests_name("published flashing", tests, NULL, NULL);
    return published_summary("published flashing", &counted, failed);
}
