/* bind_trade_wind.c - roof geometry, wind pressure and nail strength as rules
 * call them.
 *
 * Thin, like bind_trade.c: reads named arguments, calls the pure function,
 * and writes the arithmetic it did into the finding. */
#include "judge/bind_argument.h"
#include "judge/judging.h"

#include "base/number.h"
#include "trade/cladding.h"
#include "trade/footprint.h"
#include "trade/geometry.h"
#include "trade/nail.h"
#include "trade/wind.h"

#include <lauxlib.h>
#include <lua.h>

#include <math.h>
#include <string.h>

/* A coefficient: three decimals at most. */
static struct written plain(double value)
{
    return in_unit(value, NULL);
}

/* Geometry ----------------------------------------------------------------- */

static int hip_factor(lua_State *lua)
{
    return give_number(lua, trade_hip_factor(luaL_checknumber(lua, 1)));
}

static int hip_length_ft(lua_State *lua)
{
    const double run = argument(lua, "run_ft"), pitch = argument(lua, "pitch");
    const double length = trade_hip_length_ft(run, pitch);
    give_number(lua, length);
    record_work(lua, "%s of common run x %s (hip and valley factor at %s) = %s",
                in_unit(run, "ft").text, as_factor(trade_hip_factor(pitch)).text,
                in_unit(pitch, "rise_in_12").text, in_unit(length, "ft").text);
    return 1;
}

static int pitch_degrees(lua_State *lua)
{
    return give_number(lua, trade_pitch_to_degrees(luaL_checknumber(lua, 1)));
}

/* In the order of enum roof_form. */
static const char *const FORMS[] = {"gable", "hip", "gable_porch", "shed", "cross_gable", NULL};

static enum roof_form form_argument(lua_State *lua)
{
    luaL_checktype(lua, 1, LUA_TTABLE);
    lua_getfield(lua, 1, "form");
    const char *word = lua_tostring(lua, -1); /* held by the argument table */
    lua_pop(lua, 1);
    for (int i = 0; FORMS[i] != NULL; i++)
        if (word != NULL && strcmp(word, FORMS[i]) == 0)
            return (enum roof_form)i;
    luaL_error(lua, "form must be one of gable, hip, gable_porch, shed, cross_gable");
    return ROOF_GABLE;
}

static void set_number(lua_State *lua, const char *key, double value)
{
    lua_pushnumber(lua, value);
    lua_setfield(lua, -2, key);
}

/* Gives a table: areas and lengths of the whole roof. */
static int footprint(lua_State *lua)
{
    const struct footprint roof = {
        .form = form_argument(lua),
        .length_ft = argument(lua, "length_ft"),
        .width_ft = argument(lua, "width_ft"),
        .pitch = argument(lua, "pitch"),
        .eave_overhang_ft = argument_or(lua, "eave_overhang_ft", 0),
        .rake_overhang_ft = argument_or(lua, "rake_overhang_ft", 0),
        .porch_length_ft = argument_or(lua, "porch_length_ft", 0),
        .porch_depth_ft = argument_or(lua, "porch_depth_ft", 0),
        .porch_pitch = argument_or(lua, "porch_pitch", 0),
        .wing_width_ft = argument_or(lua, "wing_width_ft", 0),
        .wing_out_ft = argument_or(lua, "wing_out_ft", 0),
    };
    struct footprint_measure m;
    const char *why;
    if (trade_footprint(&m, &roof, &why) != 0)
        return luaL_error(lua, "no such roof: %s", why);
    lua_createtable(lua, 0, 9);
    set_number(lua, "plan_sqft", m.plan_sqft);
    set_number(lua, "area_sqft", m.area_sqft);
    set_number(lua, "eave_ft", m.eave_ft);
    set_number(lua, "rake_ft", m.rake_ft);
    set_number(lua, "ridge_ft", m.ridge_ft);
    set_number(lua, "hip_ft", m.hip_ft);
    set_number(lua, "valley_ft", m.valley_ft);
    set_number(lua, "top_ft", m.top_ft);
    set_number(lua, "planes", m.planes);
    record_work(lua, "%s x %s of walls at %s: %d planes, %s in plan, %s on the slope",
                in_unit(roof.length_ft, "ft").text, in_unit(roof.width_ft, "ft").text,
                in_unit(roof.pitch, "rise_in_12").text, m.planes, in_unit(m.plan_sqft, "sqft").text,
                in_unit(m.area_sqft, "sqft").text);
    return 1;
}

/* Wind ---------------------------------------------------------------------- */

static int vasd_to_vult(lua_State *lua)
{
    const double vasd = luaL_checknumber(lua, 1);
    const double vult = trade_vasd_to_vult(vasd);
    give_number(lua, vult);
    record_work(lua, "Vasd %s / square root of 0.6 = Vult %s", in_unit(vasd, "mph").text,
                in_unit(vult, "mph").text);
    return 1;
}

/* ASCE 7, table 26.10-1: Kz = factor x (z / zg) ^ (2 / alpha). The numbers are figures of
 * the place, as editions differ in them. */
static int wind_kz(lua_State *lua)
{
    const double height = argument(lua, "height_ft");
    const struct wind_profile profile = {
        .factor = argument(lua, "factor"),
        .alpha = argument(lua, "alpha"),
        .zg_ft = argument(lua, "zg_ft"),
        .least_ft = argument(lua, "least_ft"),
        .floor = argument(lua, "floor"),
    };
    const double kz = trade_wind_kz(height, &profile);
    give_number(lua, kz);
    record_work(lua, "Kz = %s x (%s / %s) ^ (2 / %s), not under %s = %s",
                plain(profile.factor).text, in_unit(fmax(height, profile.least_ft), "ft").text,
                in_unit(profile.zg_ft, "ft").text, plain(profile.alpha).text,
                plain(profile.floor).text, plain(kz).text);
    return 1;
}

static int wind_ke(lua_State *lua)
{
    const double elevation = luaL_checknumber(lua, 1);
    const double ke = trade_wind_ke(elevation);
    give_number(lua, ke);
    record_work(lua, "Ke = e ^ (-0.0000362 x %s) = %s", in_unit(elevation, "ft").text,
                plain(ke).text);
    return 1;
}

/* ASCE 7-16, equation 26.10-1; 0.00256 is half the density of air, with miles an hour in and
 * pounds per square foot out. */
static int wind_q_psf(lua_State *lua)
{
    const struct wind_site site = {
        .vult_mph = argument(lua, "vult_mph"),
        .kz = argument(lua, "kz"),
        .kzt = argument(lua, "kzt"),
        .kd = argument(lua, "kd"),
        .ke = argument(lua, "ke"),
    };
    const double q = trade_wind_q_psf(&site);
    give_number(lua, q);
    record_work(lua, "q = 0.00256 x Kz %s x Kzt %s x Kd %s x Ke %s x (%s) squared = %s",
                plain(site.kz).text, plain(site.kzt).text, plain(site.kd).text, plain(site.ke).text,
                in_unit(site.vult_mph, "mph").text, in_unit(q, "psf").text);
    return 1;
}

/* The strip along edges where wind pulls hardest: "a" of the ASCE 7 figures. */
static int zone_width_ft(lua_State *lua)
{
    const double width = argument(lua, "least_width_ft"), height = argument(lua, "height_ft");
    const struct zone_rule rule = {
        .width_share = argument(lua, "width_share"),
        .height_share = argument(lua, "height_share"),
        .least_share = argument(lua, "least_share"),
        .least_ft = argument(lua, "least_ft"),
    };
    const double a = trade_zone_width_ft(width, height, &rule);
    give_number(lua, a);
    record_work(lua, "zone width: smaller of %s x %s and %s x %s, not under %s x %s or %s = %s",
                plain(rule.width_share).text, in_unit(width, "ft").text,
                plain(rule.height_share).text, in_unit(height, "ft").text,
                plain(rule.least_share).text, in_unit(width, "ft").text,
                in_unit(rule.least_ft, "ft").text, in_unit(a, "ft").text);
    return 1;
}

/* GCp is negative where wind pulls; the lines show its size. */
static int cladding_psf(lua_State *lua)
{
    const double q = argument(lua, "q_psf"), gcp = argument(lua, "gcp");
    const struct cladding_load load = {
        .gcpi = argument(lua, "gcpi"),
        .load_factor = argument(lua, "load_factor"),
        .least_psf = argument(lua, "least_psf"),
    };
    const double psf = trade_cladding_psf(q, gcp, &load);
    give_number(lua, psf);
    record_work(lua, "%s x (%s + %s inside) x %s = %s, at least %s", in_unit(q, "psf").text,
                plain(fabs(gcp)).text, plain(load.gcpi).text, plain(load.load_factor).text,
                in_unit(fabs(psf), "psf").text, in_unit(load.least_psf, "psf").text);
    return 1;
}

/* Nails --------------------------------------------------------------------- */

static int nail_capacity_lb(lua_State *lua)
{
    const struct nail nail = {
        .length_in = argument(lua, "length_in"),
        .shank_in = argument(lua, "shank_in"),
        .head_in = argument(lua, "head_in"),
        .ring_in = argument(lua, "ring_in"),
    };
    const struct nailing nailing = {
        .framing_gravity = argument(lua, "framing_gravity"),
        .panel_gravity = argument(lua, "panel_gravity"),
        .panel_in = argument(lua, "panel_in"),
        .duration = argument(lua, "duration"),
        .wet_withdrawal = argument(lua, "wet_withdrawal"),
        .wet_pull_through = argument(lua, "wet_pull_through"),
    };
    struct nail_capacity can;
    const char *why;
    if (trade_nail_capacity(&can, &nail, &nailing, &why) != 0)
        return luaL_error(lua, "no such nailing: %s", why);
    give_number(lua, can.lb);
    record_work(lua,
                "%s shank of %s, %s in wood of gravity %s: withdrawal %s; head of %s "
                "through %s panel of gravity %s: %s; the lesser is %s",
                nail.ring_in > 0 ? "ringed" : "smooth", in_unit(nail.shank_in, "in").text,
                in_unit(can.penetration_in, "in").text, plain(nailing.framing_gravity).text,
                in_unit(can.withdrawal_lb, "lb").text, in_unit(nail.head_in, "in").text,
                in_unit(nailing.panel_in, "in").text, plain(nailing.panel_gravity).text,
                in_unit(can.pull_through_lb, "lb").text, in_unit(can.lb, "lb").text);
    return 1;
}

static int nail_spacing_in(lua_State *lua)
{
    const double capacity = argument(lua, "capacity_lb");
    const double support = argument(lua, "support_spacing_in");
    /* Uplift is given as a negative pressure. */
    const double psf = fabs(argument(lua, "psf"));
    const double spacing = trade_nail_spacing_in(capacity, support, psf);
    give_number(lua, spacing);
    record_work(lua, "%s / (%s between supports x %s) = a nail each %s",
                in_unit(capacity, "lb").text, in_unit(support, "in").text, in_unit(psf, "psf").text,
                in_unit(spacing, "in").text);
    return 1;
}

static const struct luaL_Reg NAMES[] = {
    {"hip_factor", hip_factor},
    {"hip_length_ft", hip_length_ft},
    {"pitch_degrees", pitch_degrees},
    {"footprint", footprint},
    {"vasd_to_vult", vasd_to_vult},
    {"wind_kz", wind_kz},
    {"wind_ke", wind_ke},
    {"wind_q_psf", wind_q_psf},
    {"zone_width_ft", zone_width_ft},
    {"cladding_psf", cladding_psf},
    {"nail_capacity_lb", nail_capacity_lb},
    {"nail_spacing_in", nail_spacing_in},
    {NULL, NULL},
};

void bind_trade_wind(lua_State *lua)
{
    luaL_setfuncs(lua, NAMES, 0);
}
