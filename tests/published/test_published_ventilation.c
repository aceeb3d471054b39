/* Vent areas, as trade journals, associations and agencies work them out. The
 * ratio is the example's own; which ratio binds is the profile's to say. */
#include "published/published.h"

#include "trade/ventilation.h"

#define VENTING_BASICS "builders' trade journal, roof venting basics (VE-1)"
#define COLUMN "builder's column, vent area of an attic (VE-2)"
#define FAN_ASSOCIATION "ventilation trade association, attic fans (VE-3)"
#define CONSUMER "consumer page on the 50 to 80 percent rule of the 2009 code (VE-4)"
#define BUILDERS_2009 "builders' association on the 2009 code, plan check practice (VE-5)"
#define OFFICIALS "code officials' forum on insulated ceiling area (VE-6)"

static struct counted counted;

static double sqft(double sqin)
{
    return sqin / 144;
}

static void examples(void **state)
{
    (void)state;
    const struct check rows[] = {
        {KIND_TRADE, "24 x 30 ft attic at 1/300, sq in", VENTING_BASICS,
         trade_vent_area_needed_sqin(24.0 * 30, 300), 346, 0.5, "printed whole"},
        {KIND_TRADE, "30 ft of ridge at 12 sq in per ft", VENTING_BASICS,
         trade_vent_strip_sqin(30, 12), 360, 0, "exact"},
        {KIND_TRADE, "30 ft of ridge at 17 sq in per ft", VENTING_BASICS,
         trade_vent_strip_sqin(30, 17), 510, 0, "exact"},
        {KIND_TRADE, "every other eave block, 22 of 4 sq in", VENTING_BASICS,
         trade_vent_units_sqin(22, 4), 88, 0, "the count follows from the printed answer"},
        {KIND_TRADE, "every eave block, 44 of 4 sq in", VENTING_BASICS,
         trade_vent_units_sqin(44, 4), 176, 0, "the count follows from the printed answer"},
        {KIND_TRADE, "half the need, in percent", VENTING_BASICS,
         trade_share_percent(176, trade_vent_area_needed_sqin(24.0 * 30, 300)), 50, 1,
         "the journal says about half"},
        {KIND_TRADE, "30 x 50 ft house at 1/300, sq ft", COLUMN,
         sqft(trade_vent_area_needed_sqin(30.0 * 50, 300)), 5, 0, "exact"},
        {KIND_TRADE, "50 ft of ridge at 18 sq in per ft", COLUMN, trade_vent_strip_sqin(50, 18),
         900, 0, "exact"},
        {KIND_TRADE, "the same in sq ft", COLUMN, sqft(trade_vent_strip_sqin(50, 18)), 6.25, 0,
         "exact"},
        {KIND_TRADE, "ridge share of 2 sq ft in 5, in percent", COLUMN, trade_share_percent(2, 5),
         40, 1e-9, "exact"},
        {KIND_TRADE, "pot vents of 50 sq in for 288: six do", COLUMN,
         ceil(288 / trade_vent_units_sqin(1, 50)), 6, 0, "whole vents"},
        {KIND_TRADE, "intake for an 805 cfm fan, 1 sq ft per 300 cfm, sq in", FAN_ASSOCIATION,
         trade_vent_area_needed_sqin(805, 300), 386, 0.5, "printed whole"},
        {KIND_TRADE, "900 sq ft at 1/300, sq in", CONSUMER, trade_vent_area_needed_sqin(900, 300),
         432, 0, "exact"},
        {KIND_TRADE, "50 percent of it at the ridge: 216 sq in", CONSUMER,
         trade_share_percent(216, trade_vent_area_needed_sqin(900, 300)), 50, 1e-9, "exact"},
        {KIND_TRADE, "80 percent of it: 346 sq in", CONSUMER,
         trade_share_percent(346, trade_vent_area_needed_sqin(900, 300)), 80, 0.12,
         "346 is printed whole"},
        {KIND_TRADE, "vented soffit of 10 sq in per ft, in sq ft", BUILDERS_2009,
         sqft(trade_vent_strip_sqin(1, 10)), 0.069, 0.0005, "printed to a thousandth"},
        {KIND_TRADE, "1,500 sq ft at 1/300, sq ft", OFFICIALS,
         sqft(trade_vent_area_needed_sqin(1500, 300)), 5, 0, "exact"},
        {KIND_TRADE, "1,500 sq ft at 1/150, sq ft", OFFICIALS,
         sqft(trade_vent_area_needed_sqin(1500, 150)), 10, 0, "exact"},
        {KIND_TRADE, "96 sq ft of soffit, 1/24 of it open, sq ft", OFFICIALS,
         sqft(trade_vent_units_sqin(96, 144.0 / 24)), 4, 1e-9, "exact"},
    };
    published_hold(&counted, rows, sizeof(rows) / sizeof(rows[0]));
}

/* The rest of VE-5's answer was not read; these are our own sums from its inputs. */
static void ours(void **state)
{
    (void)state;
    const struct check rows[] = {
        {KIND_OURS, "3,930 sq ft at 1/300, sq in", "ours", trade_vent_area_needed_sqin(3930, 300),
         1886.4, 1e-9, "exact"},
        {KIND_OURS, "3,930 sq ft at 1/150, sq ft", "ours",
         sqft(trade_vent_area_needed_sqin(3930, 150)), 26.2, 1e-9, "exact"},
    };
    published_hold(&counted, rows, sizeof(rows) / sizeof(rows[0]));
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(examples),
        cmocka_unit_test(ours),
    };
    const int failed = cmocka_run_group_tests_name("published ventilation", tests, NULL, NULL);
    return published_summary("published ventilation", &counted, failed);
}
