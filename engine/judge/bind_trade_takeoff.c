/* bind_trade_takeoff.c - loads, fasteners, ice barrier and purchases as rules
 * and quantities call them.
 *
 * Thin: reads named arguments, calls the pure function, and writes the
 * arithmetic it did into the record. */
#include "judge/bind_argument.h"
#include "judge/judging.h"

#include "base/number.h"
#include "trade/fastener.h"
#include "trade/geometry.h"
#include "trade/ice_barrier.h"
#include "trade/takeoff.h"
#include "trade/ventilation.h"
#include "trade/weight.h"

#include <lauxlib.h>
#include <lua.h>

#include <math.h>

/* No shop stocks as many lengths of one nail. */
enum { STOCKED_MOST = 64 };

/* Buying -------------------------------------------------------------------------- */

static int squares(lua_State *lua)
{
    const double area = argument(lua, "area_sqft"), result = trade_squares(area);
    give_number(lua, result);
    record_work(lua, "%s / 100 sq ft = %s", in_unit(area, "sqft").text,
                in_unit(result, "squares").text);
    return 1;
}

static int strips_per_square(lua_State *lua)
{
    const double length = argument(lua, "length_in"), exposure = argument(lua, "exposure_in");
    const double strips = trade_strips_per_square(length, exposure);
    give_number(lua, strips);
    /* A square is 100 sq ft of 144 sq in. */
    record_work(lua, "14,400 sq in / (%s x %s of exposure) = %.1f strips to the square",
                in_unit(length, "in").text, in_unit(exposure, "in").text, strips);
    return 1;
}

static int nails(lua_State *lua)
{
    const double area = argument(lua, "squares"), strips = argument(lua, "strips_per_square");
    const double each = argument(lua, "per_strip"), total = trade_nails(area, strips, each);
    give_number(lua, total);
    record_work(lua, "%s x %.1f strips x %s = %s", in_unit(area, "squares").text, strips,
                in_unit(each, "nails").text, in_unit(total, "nails").text);
    return 1;
}

/* What shows of a sheet is its width less the lap. */
static int lapped_sqft(lua_State *lua)
{
    const double net = argument(lua, "net_sqft"), width = argument(lua, "width_in");
    const double lap = argument(lua, "lap_in"), gross = trade_lapped_sqft(net, width, lap);
    give_number(lua, gross);
    record_work(lua, "%s x %s wide / %s showing (lap %s) = %s of sheet", in_unit(net, "sqft").text,
                in_unit(width, "in").text, in_unit(width - lap, "in").text, in_unit(lap, "in").text,
                in_unit(gross, "sqft").text);
    return 1;
}

static int lapped_piece_ft(lua_State *lua)
{
    const double length = argument(lua, "length_ft"), lap = argument(lua, "lap_in");
    const double covers = trade_lapped_piece_ft(length, lap);
    give_number(lua, covers);
    record_work(lua, "a piece of %s lapped %s covers %s", in_unit(length, "ft").text,
                in_unit(lap, "in").text, in_unit(covers, "ft").text);
    return 1;
}

static int panel_nails(lua_State *lua)
{
    const double length = argument(lua, "length_in"), width = argument(lua, "width_in");
    const double support = argument(lua, "support_in"), edge = argument(lua, "edge_in");
    const double field = argument(lua, "field_in");
    const double count = trade_panel_nails(length, width, support, edge, field);
    give_number(lua, count);
    record_work(lua, "panel %s x %s on supports %s apart, nails %s at edges and %s between: %s",
                in_unit(length, "in").text, in_unit(width, "in").text, in_unit(support, "in").text,
                in_unit(edge, "in").text, in_unit(field, "in").text, in_unit(count, "nails").text);
    return 1;
}

/* Vents ---------------------------------------------------------------------------- */

/* More of a vent, by the foot or by the unit, for what is short: the number. No
 * line of its own; the caller has a sentence for it. */
static int vent_more(lua_State *lua)
{
    const double short_sqin = argument(lua, "short_sqin");
    const double per_ft = argument_or(lua, "sqin_per_ft", 0);
    return give_number(lua, per_ft > 0
                                ? trade_vent_more_feet(short_sqin, per_ft)
                                : trade_vent_more_units(short_sqin, argument(lua, "each_sqin")));
}

static int vent_net_sqin(lua_State *lua)
{
    const double gross = argument(lua, "gross_sqin"), multiplier = argument(lua, "multiplier");
    const double net = trade_vent_net_sqin(gross, multiplier);
    give_number(lua, net);
    record_work(lua, "%s of opening / %s for its cover = %s net", in_unit(gross, "sqin").text,
                in_unit(multiplier, "times").text, in_unit(net, "sqin").text);
    return 1;
}

static int vent_gross_sqin(lua_State *lua)
{
    const double net = argument(lua, "net_sqin"), multiplier = argument(lua, "multiplier");
    return give_number(lua, trade_vent_gross_sqin(net, multiplier));
}

/* boost: what a steep or dark roof adds, as a factor. */
static int fan_cfm(lua_State *lua)
{
    const double area = argument(lua, "area_sqft"), rate = argument(lua, "cfm_per_sqft");
    const double boost = argument_or(lua, "boost", 1), cfm = trade_fan_cfm(area, rate, boost);
    give_number(lua, cfm);
    record_work(lua, "%s x %.2f cfm per sq ft x %.2f = %.0f cfm", in_unit(area, "sqft").text, rate,
                boost, cfm);
    return 1;
}

static int fan_intake_sqin(lua_State *lua)
{
    const double cfm = argument(lua, "cfm"), rate = argument(lua, "cfm_per_intake_sqft");
    const double intake = trade_fan_intake_sqin(cfm, rate);
    give_number(lua, intake);
    record_work(lua, "%.0f cfm / %.0f cfm per sq ft of intake x 144 = %s of intake", cfm, rate,
                in_unit(intake, "sqin").text);
    return 1;
}

/* Ice barrier ---------------------------------------------------------------------- */

static int ice_barrier_courses(lua_State *lua)
{
    const double reach = argument(lua, "reach_in"), width = argument(lua, "width_in");
    const double lap = argument(lua, "lap_in");
    const double courses = trade_ice_barrier_courses(reach, width, lap);
    give_number(lua, courses);
    record_work(lua, "%.0f course%s of %s lapped %s reach%s %s, for %s", courses,
                courses == 1 ? "" : "s", in_unit(width, "in").text, in_unit(lap, "in").text,
                courses == 1 ? "es" : "",
                in_unit(trade_ice_barrier_covers_in(courses, width, lap), "in").text,
                in_unit(reach, "in").text);
    return 1;
}

/* Fasteners ------------------------------------------------------------------------ */

static int nail_length_in(lua_State *lua)
{
    const double through = argument(lua, "through_in"), deck = argument(lua, "deck_in");
    const double into = argument(lua, "into_in"), past = argument_or(lua, "past_in", 0);
    return give_number(lua, trade_nail_length_in(through, deck, into, past));
}

/* trade.stocked_length_in(length, { 1, 1.25 }): the next that will do, or nil. */
static int stocked_length_in(lua_State *lua)
{
    double stocked[STOCKED_MOST];
    const double length = luaL_checknumber(lua, 1);
    luaL_checktype(lua, 2, LUA_TTABLE);
    const size_t count = (size_t)lua_rawlen(lua, 2);
    if (count > STOCKED_MOST)
        return luaL_error(lua, "a list of stocked lengths holds at most %d", (int)STOCKED_MOST);
    for (size_t i = 0; i < count; i++) {
        lua_rawgeti(lua, 2, (lua_Integer)i + 1);
        stocked[i] = luaL_checknumber(lua, -1);
        lua_pop(lua, 1);
    }
    const double found = trade_stocked_length_in(length, stocked, count);
    if (isnan(found))
        lua_pushnil(lua);
    else
        lua_pushnumber(lua, found);
    return 1;
}

/* Weight --------------------------------------------------------------------------- */

static int deck_psf(lua_State *lua)
{
    const double thickness = argument(lua, "thickness_in"), each = argument(lua, "psf_per_in");
    const double load = trade_deck_psf(thickness, each);
    give_number(lua, load);
    record_work(lua, "deck %s x %s for an inch = %s", in_unit(thickness, "in").text,
                in_unit(each, "psf").text, in_unit(load, "psf").text);
    return 1;
}

static int layer_psf(lua_State *lua)
{
    return give_number(lua, trade_psf(argument(lua, "lb_per_square")));
}

static int plan_load_psf(lua_State *lua)
{
    const double slope = argument(lua, "slope_psf"), pitch = argument(lua, "pitch");
    const double plan = trade_plan_load_psf(slope, pitch);
    give_number(lua, plan);
    record_work(lua, "%s x %s (slope factor at %s) = %s over the level", in_unit(slope, "psf").text,
                as_factor(trade_slope_factor(pitch)).text, in_unit(pitch, "rise_in_12").text,
                in_unit(plan, "psf").text);
    return 1;
}

static int layer_lb(lua_State *lua)
{
    const double area = argument(lua, "area_sqft"), weight = argument(lua, "lb_per_square");
    const double pounds = trade_layer_lb(area, weight);
    give_number(lua, pounds);
    record_work(lua, "%s x %s = %s", in_unit(trade_squares(area), "squares").text,
                in_unit(weight, "lb_per_square").text, in_unit(pounds, "lb").text);
    return 1;
}

/* Trips of a trailer or bin, by what it holds and by what it may carry: the greater number
 * counts, and the lines tell both. */
static int haul(lua_State *lua)
{
    const double weight = argument(lua, "weight_lb"), density = argument(lua, "lb_per_cuyd");
    const double bed = argument(lua, "bed_cuyd"), payload = argument(lua, "payload_lb");
    const double heap = trade_heap_cuyd(weight, density);
    struct trade_loads loads;
    if (trade_haul(&loads, heap, weight, bed, payload) != 0)
        /* give_number raises what is not finite. */
        return give_number(lua, NAN);
    record_work(lua, "by volume: %s / %s per cu yd = %.1f cu yd, in a bed of %.1f: %.0f",
                in_unit(weight, "lb").text, in_unit(density, "lb").text, heap, bed,
                loads.by_volume);
    record_work(lua, "by weight: %s / %s of payload: %.0f", in_unit(weight, "lb").text,
                in_unit(payload, "lb").text, loads.by_weight);
    return give_number(lua, loads.loads);
}

/* What stacked bundles weigh on the area that they stand on. */
static int stack_psf(lua_State *lua)
{
    const double bundles = argument(lua, "bundles"), each = argument(lua, "bundle_lb");
    const double area = argument(lua, "area_sqft"), load = trade_stack_psf(bundles, each, area);
    give_number(lua, load);
    record_work(lua, "%.0f bundles x %s / %s = %s", bundles, in_unit(each, "lb").text,
                in_unit(area, "sqft").text, in_unit(load, "psf").text);
    return 1;
}

static int stack_most(lua_State *lua)
{
    return give_number(lua, trade_stack_most(argument(lua, "bundle_lb"), argument(lua, "area_sqft"),
                                             argument(lua, "limit_psf")));
}

static const struct luaL_Reg NAMES[] = {
    {"squares", squares},
    {"strips_per_square", strips_per_square},
    {"nails", nails},
    {"lapped_sqft", lapped_sqft},
    {"lapped_piece_ft", lapped_piece_ft},
    {"panel_nails", panel_nails},
    {"vent_more", vent_more},
    {"vent_net_sqin", vent_net_sqin},
    {"vent_gross_sqin", vent_gross_sqin},
    {"fan_cfm", fan_cfm},
    {"fan_intake_sqin", fan_intake_sqin},
    {"ice_barrier_courses", ice_barrier_courses},
    {"nail_length_in", nail_length_in},
    {"stocked_length_in", stocked_length_in},
    {"deck_psf", deck_psf},
    {"layer_psf", layer_psf},
    {"plan_load_psf", plan_load_psf},
    {"layer_lb", layer_lb},
    {"haul", haul},
    {"stack_psf", stack_psf},
    {"stack_most", stack_most},
    {NULL, NULL},
};

void bind_trade_takeoff(lua_State *lua)
{
    luaL_setfuncs(lua, NAMES, 0);
}
