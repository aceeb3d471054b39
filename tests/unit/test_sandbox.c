/* The sandbox by itself: limits, messages, what is read-only, what is the
 * same from run to run; and the list of all that a pack can see. */
#include "sandbox/sandbox.h"

#include "judge/rulebook.h"
#include "support/small_law.h"

#include <lauxlib.h>
#include <lua.h>

#include <setjmp.h>
#include <stdarg.h>
#include <stddef.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

#include <cmocka.h>

static enum sandbox_stop run(struct sandbox *sandbox, const char *source)
{
    return sandbox_run(sandbox, source, strlen(source), "rules/x.lua");
}

/* The message that a source ends with. */
static void assert_ends(const char *source, enum sandbox_stop stop, const char *message)
{
    struct sandbox *sandbox = sandbox_open();
    assert_non_null(sandbox);
    const enum sandbox_stop got = run(sandbox, source);
    if (got != stop || strcmp(sandbox_message(sandbox, got), message) != 0)
        fail_msg("%s: stop %d, \"%s\"", source, got, sandbox_message(sandbox, got));
    sandbox_close(sandbox);
}

static void what_is_there_works(void **state)
{
    (void)state;
    static const char *const sources[] = {
        "assert(math.max(1, 3, 2) == 3 and math.floor(2.5) == 2 and math.type(1) == 'integer')",
        "assert(('x'):upper() == 'X' and ('abc'):sub(2) == 'bc' and ('abc'):len() == 3)",
        "assert(string.format('%5.2f|%-4s|%d%%', 1.5, 'a', 3) == ' 1.50|a   |3%')",
        "assert(string.format('a\\0%d', 5) == 'a\\0' .. '5')",
        "assert(('%d'):format(7) == '7' and ('A'):byte() == 65)",
        "local t = { 3, 1, 2 } table.sort(t) assert(table.concat(t, ',') == '1,2,3')",
        "local t = { 'b', 'a' } table.sort(t, function(a, b) return a < b end) assert(t[1] == 'a')",
        "local t = { 1 } table.insert(t, 2) table.insert(t, 1, 0) assert(table.remove(t) == 2)",
        "assert(select('#', table.unpack({ 1, 2, 3 })) == 3)",
        "assert(select('#', table.unpack({ 1, 2, 3 }, 2)) == 2)",
        "assert(table.unpack({ 1, 2, 3 }, 3, 3) == 3 and table.unpack({}, 1, 0) == nil)",
        "assert(table.concat({ 1, 2, 3 }, '-', 2, 3) == '2-3')",
        "local t = {} for i = 1, 20000 do table.insert(t, i) end assert(#t == 20000)",
        "local t = { 1, 2 } table.insert(t, 3, 5) assert(table.remove(t, 1) == 1 and #t == 2)",
        ("local s = '' for k, v in pairs { b = 2, a = 1, [10] = 0, [2] = 9 } do s = s .. k .. v end\n"
         "assert(s == '29100a1b2', s)"),
        /* The step remembers nothing: else one rule could tell another how often it ran. */
        "local step, t = pairs { b = 2, a = 1 } assert(step(t) == 'a' and step(t) == 'a')\n"
        "assert(step(t, 'a') == 'b' and step(t, 'b') == nil and step(t, 'c') == nil)",
        "local k, v = next { b = 2, a = 1 } assert(k == 'a' and v == 1)",
        "local t = { b = 2, a = 1 } assert(next(t, 'a') == 'b' and next(t, 'b') == nil)",
        "assert(next {} == nil)",
        "local s = 0 for i, v in ipairs { 5, 6 } do s = s + i * v end assert(s == 17)",
        "assert(tonumber('12') == 12 and tonumber('x') == nil and tostring(5) == '5')",
        "assert(tostring(true) == 'true' and tostring(nil) == 'nil' and tostring(0.5) == '0.5')",
        "assert(type(math) == 'table' and math.huge > 1e308)",
        "assert('10' + 5 == 15)",
    };
    for (size_t i = 0; i < sizeof(sources) / sizeof(sources[0]); i++)
        assert_ends(sources[i], SANDBOX_DONE, "done");
}

/* A list that parts badly, and whose items mostly come equal: as in Lua's own sort, its
 * order would depend on the clock. */
static void what_comes_equal_stays_in_order(void **state)
{
    (void)state;
    assert_ends("local t = {} for i = 1, 5000 do t[i] = { i, (i * i) % 7 } end\n"
                "table.sort(t, function(a, b) return a[2] < b[2] end)\n"
                "for i = 2, #t do\n"
                "  local a, b = t[i - 1], t[i]\n"
                "  assert(a[2] < b[2] or (a[2] == b[2] and a[1] < b[1]))\n"
                "end",
                SANDBOX_DONE, "done");
}

static void a_list_of_any_length_is_sorted(void **state)
{
    (void)state;
    assert_ends(
        "for n = 0, 70 do\n"
        "  local t, sum = {}, 0 for i = 1, n do t[i] = (i * 37) % 101 sum = sum + t[i] end\n"
        "  table.sort(t)\n"
        "  for i = 2, n do assert(t[i - 1] <= t[i]) end\n"
        "  for i = 1, n do sum = sum - t[i] end\n"
        "  assert(#t == n and sum == 0)\n"
        "  table.sort(t, function(a, b) return a > b end)\n"
        "  for i = 2, n do assert(t[i - 1] >= t[i]) end\n"
        "end",
        SANDBOX_DONE, "done");
    assert_ends("local t = { 'b', 'B', 'a\\0b', 'a', 2, '10', 1.5 } table.sort(t)\n"
                "assert(table.concat(t, ' ') == '1.5 2 10 B a a\\0b b')",
                SANDBOX_DONE, "done");
}

static void each_limit_has_its_name(void **state)
{
    (void)state;
    assert_ends("while true do end", SANDBOX_STEPS, "took too many steps and was stopped");
    assert_ends("local s = 'x' while true do s = s .. s end", SANDBOX_MEMORY,
                "took too much memory and was stopped");
    assert_ends("error('mine')", SANDBOX_ERROR, "rules/x.lua:1: mine");
    assert_ends("local x = ", SANDBOX_ERROR, "rules/x.lua:1: unexpected symbol near <eof>");
    assert_ends("error({})", SANDBOX_ERROR, "an error that is a table, not a text");
}

static int charge_all(lua_State *lua)
{
    (void)lua;
    sandbox_charge(lua, SANDBOX_CALL_STEPS);
    return 0;
}

static int charge_nearly_all(lua_State *lua)
{
    sandbox_charge(lua, SANDBOX_CALL_STEPS - 1);
    return 0;
}

static int charge_without_end(lua_State *lua)
{
    sandbox_charge(lua, SIZE_MAX);
    return 0;
}

/* Waits far longer than a call may take, but takes no processor time to speak of: as
 * when the machine is busy with something else, or the lid was closed. */
static int wait_long(lua_State *lua)
{
    const struct timespec moment = {.tv_nsec = 100 * 1000 * 1000};
    for (int i = 0; i * 100 < 2 * SANDBOX_CALL_MS; i++) {
        nanosleep(&moment, NULL);
        sandbox_charge(lua, 1000);
    }
    return 0;
}

/* Takes few steps, but goes on until it is stopped. */
static int work_on(lua_State *lua)
{
    for (volatile unsigned long i = 0;; i++)
        if (i % 20000000 == 0)
            sandbox_charge(lua, 500);
    return 0;
}

static int give_signal(lua_State *lua)
{
    return sandbox_signal(lua);
}

static int do_nothing(lua_State *lua)
{
    (void)lua;
    return 0;
}

static void work_done_in_c_is_charged(void **state)
{
    (void)state;
    struct sandbox *sandbox = sandbox_open();
    assert_int_equal(sandbox_call(sandbox, charge_nearly_all, NULL), SANDBOX_DONE);
    assert_int_equal(sandbox_call(sandbox, charge_all, NULL), SANDBOX_STEPS);
    assert_int_equal(sandbox_call(sandbox, charge_without_end, NULL), SANDBOX_STEPS);
    assert_int_equal(sandbox_call(sandbox, give_signal, NULL), SANDBOX_SIGNAL);
    assert_string_equal(sandbox_message(sandbox, SANDBOX_SIGNAL), "stopped");
    /* Each call has its own limits, and forgets how the one before it ended. */
    assert_int_equal(sandbox_call(sandbox, do_nothing, NULL), SANDBOX_DONE);
    sandbox_close(sandbox);
}

static void processor_time_ends_what_steps_do_not(void **state)
{
    (void)state;
    struct sandbox *sandbox = sandbox_open();
    assert_int_equal(sandbox_call(sandbox, work_on, NULL), SANDBOX_TIME);
    assert_string_equal(sandbox_message(sandbox, SANDBOX_TIME), "took too long and was stopped");
    assert_int_equal(sandbox_call(sandbox, do_nothing, NULL), SANDBOX_DONE);
    sandbox_close(sandbox);
}

/* A long text read as a number is one step, and a millisecond. */
static int read_a_long_number(lua_State *lua)
{
    enum { DIGITS = 1000 * 1000 };
    char *digits = lua_newuserdatauv(lua, DIGITS, 0);
    memset(digits, '1', DIGITS);
    lua_pushlstring(lua, digits, DIGITS);
    while (lua_tonumber(lua, -1) > 0)
        sandbox_charge(lua, 4);
    return 0;
}

/* The clock is looked at more often where texts are long: steps alone would let some
 * seconds go by. */
static void steps_that_take_long_are_ended_in_time(void **state)
{
    (void)state;
    struct sandbox *sandbox = sandbox_open();
    const clock_t start = clock();
    assert_int_equal(sandbox_call(sandbox, read_a_long_number, NULL), SANDBOX_TIME);
    const long took_ms = (long)((clock() - start) * 1000 / CLOCKS_PER_SEC);
    if (took_ms > SANDBOX_CALL_MS * 3 / 2)
        fail_msg("ended after %ld ms", took_ms);
    sandbox_close(sandbox);
}

static void waiting_is_not_working(void **state)
{
    (void)state;
    struct sandbox *sandbox = sandbox_open();
    assert_int_equal(sandbox_call(sandbox, wait_long, NULL), SANDBOX_DONE);
    sandbox_close(sandbox);
}

static int charge_a_tenth(lua_State *lua)
{
    sandbox_charge(lua, SANDBOX_CALL_STEPS / 10);
    return 0;
}

/* Ten calls that each stay within their limit, and a total for seven and a half. */
static void all_calls_together_have_a_total(void **state)
{
    (void)state;
    struct sandbox *sandbox = sandbox_open();
    for (int round = 0; round < 2; round++) {
        sandbox_begin(sandbox, SANDBOX_CALL_STEPS * 3 / 4, SANDBOX_CHECK_MS);
        for (int i = 0; i < 7; i++) {
            assert_false(sandbox_spent(sandbox));
            assert_int_equal(sandbox_call(sandbox, charge_a_tenth, NULL), SANDBOX_DONE);
        }
        assert_int_equal(sandbox_call(sandbox, charge_a_tenth, NULL), SANDBOX_SPENT);
        assert_true(sandbox_spent(sandbox));
        assert_int_equal(sandbox_call(sandbox, charge_a_tenth, NULL), SANDBOX_SPENT);
    }
    sandbox_begin(sandbox, SANDBOX_CHECK_STEPS, 1);
    assert_int_equal(sandbox_call(sandbox, work_on, NULL), SANDBOX_SPENT);
    assert_true(sandbox_spent(sandbox));
    assert_has(sandbox_message(sandbox, SANDBOX_SPENT), "took all the steps or time there are");
    sandbox_begin(sandbox, SANDBOX_CHECK_STEPS, SANDBOX_CHECK_MS);
    assert_int_equal(sandbox_call(sandbox, charge_a_tenth, NULL), SANDBOX_DONE);
    sandbox_close(sandbox);
}

/* Steps decide before the clock does, and come out the same each time. */
static int count_steps(lua_State *lua)
{
    long *left = lua_touserdata(lua, 1);
    lua_settop(lua, 0);
    if (luaL_loadstring(lua, "local n = 0 for i = 1, 5000 do n = n + i end") != LUA_OK)
        return lua_error(lua);
    lua_call(lua, 0, 0);
    *left = sandbox_of(lua)->steps_left;
    return 0;
}

static void steps_are_the_same_each_time(void **state)
{
    (void)state;
    long first = 0, again = 0;
    struct sandbox *sandbox = sandbox_open();
    assert_int_equal(sandbox_call(sandbox, count_steps, &first), SANDBOX_DONE);
    sandbox_close(sandbox);
    sandbox = sandbox_open();
    assert_int_equal(sandbox_call(sandbox, count_steps, &again), SANDBOX_DONE);
    sandbox_close(sandbox);
    assert_true(first < SANDBOX_CALL_STEPS - 5000 && first > 0);
    assert_int_equal(first, again);
}

static void a_source_has_a_size(void **state)
{
    (void)state;
    char *source = malloc(SANDBOX_SOURCE_BYTES + 1);
    assert_non_null(source);
    memset(source, ' ', SANDBOX_SOURCE_BYTES + 1);
    struct sandbox *sandbox = sandbox_open();
    assert_int_equal(sandbox_run(sandbox, source, SANDBOX_SOURCE_BYTES, "a"), SANDBOX_DONE);
    assert_int_equal(sandbox_run(sandbox, source, SANDBOX_SOURCE_BYTES + 1, "a"), SANDBOX_ERROR);
    assert_string_equal(sandbox_message(sandbox, SANDBOX_ERROR), "a: larger than 512 KB");
    sandbox_close(sandbox);
    free(source);
}

static void the_place_is_told_once(void **state)
{
    (void)state;
    struct sandbox *sandbox = sandbox_open();
    assert_int_equal(run(sandbox, "error('x')"), SANDBOX_ERROR);
    assert_null(sandbox_place(sandbox, SANDBOX_ERROR, "rules/x.lua"));
    assert_int_equal(run(sandbox, "error('x', 0)"), SANDBOX_ERROR);
    assert_string_equal(sandbox_place(sandbox, SANDBOX_ERROR, "rules/x.lua"), "rules/x.lua");
    assert_string_equal(sandbox_place(sandbox, SANDBOX_STEPS, "rules/x.lua"), "rules/x.lua");
    sandbox_close(sandbox);
}

/* A shared table of the test's own, for packs to write into. */
static int define_box(lua_State *lua)
{
    lua_newtable(lua);
    sandbox_define(lua, "box");
    lua_newtable(lua);
    lua_pushinteger(lua, 5);
    lua_setfield(lua, -2, "five");
    sandbox_protect(lua);
    sandbox_define(lua, "sealed");
    return 0;
}

static void the_heap_returns_to_what_was_kept(void **state)
{
    (void)state;
    struct sandbox *sandbox = sandbox_open();
    assert_int_equal(sandbox_setup(sandbox, define_box, NULL), SANDBOX_DONE);
    assert_int_equal(run(sandbox, "box.kept = 1"), SANDBOX_DONE);
    assert_int_equal(sandbox_keep(sandbox), 0);
    for (int i = 0; i < 3; i++) {
        assert_int_equal(run(sandbox, "assert(box.kept == 1 and box.lost == nil) box.lost = 1\n"
                                      "box.kept = 2"),
                         SANDBOX_DONE);
        sandbox_reset(sandbox);
    }
    assert_int_equal(run(sandbox, "while true do box[#box + 1] = {} end"), SANDBOX_MEMORY);
    sandbox_reset(sandbox);
    assert_int_equal(run(sandbox, "assert(#box == 0 and box.kept == 1)"), SANDBOX_DONE);
    sandbox_close(sandbox);
}

/* What files leave lying is let go of between them; what they keep stays. */
static void a_heap_is_tidied(void **state)
{
    (void)state;
    static const char leaves[] = "for i = 1, 20000 do local t = { i, i + 1, i + 2, i + 3 } end";
    struct sandbox *sandbox = sandbox_open();
    assert_non_null(sandbox);
    assert_int_equal(run(sandbox, leaves), SANDBOX_DONE);
    const size_t used = heap_used(&sandbox->heap);
    assert_true(used > 1024 * 1024);
    sandbox_tidy(sandbox);
    assert_int_equal(run(sandbox, leaves), SANDBOX_DONE);
    assert_true(heap_used(&sandbox->heap) < used + used / 10);
    assert_int_equal(run(sandbox, "assert(math.max(1, 3) == 3)"), SANDBOX_DONE);
    sandbox_close(sandbox);
}

static void a_view_reads_but_does_not_write(void **state)
{
    (void)state;
    struct sandbox *sandbox = sandbox_open();
    assert_int_equal(sandbox_setup(sandbox, define_box, NULL), SANDBOX_DONE);
    assert_int_equal(run(sandbox, "assert(sealed.five == 5 and sealed.six == nil)"), SANDBOX_DONE);
    assert_int_equal(run(sandbox, "sealed.five = 6"), SANDBOX_ERROR);
    assert_has(sandbox_message(sandbox, SANDBOX_ERROR), "'five' may not be set here");
    assert_int_equal(run(sandbox, "sealed[1] = 6"), SANDBOX_ERROR);
    assert_has(sandbox_message(sandbox, SANDBOX_ERROR), "this table may not be changed");
    assert_int_equal(run(sandbox, "assert(sealed.five == 5)"), SANDBOX_DONE);
    sandbox_close(sandbox);
}

static void two_files_share_no_surroundings(void **state)
{
    (void)state;
    struct sandbox *sandbox = sandbox_open();
    assert_int_equal(run(sandbox, "_ENV = { mine = 1 } mine = 2"), SANDBOX_DONE);
    assert_int_equal(run(sandbox, "return mine"), SANDBOX_ERROR);
    assert_has(sandbox_message(sandbox, SANDBOX_ERROR), "unknown name 'mine'");
    assert_int_equal(run(sandbox, "assert(math.max(1, 2) == 2)"), SANDBOX_DONE);
    sandbox_close(sandbox);
}

/* All that a pack can see ------------------------------------------------------ */

enum { SEEN_BYTES = 8192 };

/* Appends "name\n" for each member of the table at the top, sorted; members
 * that are views are entered: "math.abs". */
static void list_table(lua_State *lua, const char *prefix, char *seen)
{
    const char *names[128];
    size_t count = 0;
    const int table = lua_gettop(lua);
    for (lua_pushnil(lua); lua_next(lua, table) != 0; lua_pop(lua, 1)) {
        assert_int_equal(lua_type(lua, -2), LUA_TSTRING);
        assert_true(count < sizeof(names) / sizeof(names[0]));
        size_t at = count++;
        for (; at > 0 && strcmp(names[at - 1], lua_tostring(lua, -2)) > 0; at--)
            names[at] = names[at - 1];
        names[at] = lua_tostring(lua, -2);
    }
    for (size_t i = 0; i < count; i++) {
        char name[128];
        snprintf(name, sizeof(name), "%s%s", prefix, names[i]);
        lua_getfield(lua, table, names[i]);
        if (lua_istable(lua, -1)) {
            /* A view: itself empty, with nothing but its source behind it. */
            lua_pushnil(lua);
            assert_int_equal(lua_next(lua, -2), 0);
            assert_true(lua_getmetatable(lua, -1));
            lua_getfield(lua, -1, "__metatable");
            assert_true(lua_isboolean(lua, -1) && !lua_toboolean(lua, -1));
            lua_pop(lua, 1);
            lua_getfield(lua, -1, "__index");
            assert_true(lua_istable(lua, -1));
            strncat(name, ".", sizeof(name) - strlen(name) - 1);
            list_table(lua, name, seen);
            lua_pop(lua, 2);
        } else {
            assert_true(strlen(seen) + strlen(name) + 2 < SEEN_BYTES);
            strcat(seen, name);
            strcat(seen, "\n");
        }
        lua_pop(lua, 1);
    }
}

struct look {
    char seen[SEEN_BYTES], methods[SEEN_BYTES];
};

/* Called with a function of the pack's: its surroundings are its upvalue. */
static int look_around(lua_State *lua)
{
    struct look *look = sandbox_of(lua)->user;
    assert_string_equal(lua_getupvalue(lua, 1, 1), "_ENV");
    assert_true(lua_getmetatable(lua, -1));
    lua_getfield(lua, -1, "__index");
    assert_true(lua_istable(lua, -1));
    /* The test's own name does not count. */
    lua_pushnil(lua);
    lua_setfield(lua, -2, "look_around");
    list_table(lua, "", look->seen);
    lua_pop(lua, 3);
    lua_pushliteral(lua, "");
    assert_true(lua_getmetatable(lua, -1));
    lua_getfield(lua, -1, "__index");
    list_table(lua, "", look->methods);
    lua_settop(lua, 0);
    /* Nothing of Lua's own libraries is left to be found. */
    lua_getfield(lua, LUA_REGISTRYINDEX, LUA_LOADED_TABLE);
    assert_true(lua_isnil(lua, -1));
    lua_pushglobaltable(lua);
    lua_pushnil(lua);
    assert_int_equal(lua_next(lua, -2), 0);
    return 0;
}

static int define_look(lua_State *lua)
{
    lua_pushcfunction(lua, look_around);
    sandbox_define(lua, "look_around");
    return 0;
}

static void look_from(struct sandbox *sandbox, struct look *look)
{
    static const char source[] = "look_around(function() return math end)";
    *look = (struct look){0};
    assert_int_equal(sandbox_setup(sandbox, define_look, NULL), SANDBOX_DONE);
    sandbox->user = look;
    const enum sandbox_stop stop = run(sandbox, source);
    if (stop != SANDBOX_DONE)
        fail_msg("%s", sandbox_message(sandbox, stop));
    sandbox->user = NULL;
}

static const char EVERY_PACK[] =
    "assert\nerror\nipairs\n"
    "math.abs\nmath.atan\nmath.ceil\nmath.cos\nmath.exp\nmath.floor\nmath.fmod\nmath.huge\n"
    "math.log\nmath.max\nmath.maxinteger\nmath.min\nmath.mininteger\nmath.modf\nmath.pi\n"
    "math.sin\nmath.sqrt\nmath.tan\nmath.tointeger\nmath.type\n"
    "next\npairs\nselect\n"
    "string.byte\nstring.format\nstring.len\nstring.lower\nstring.sub\nstring.upper\n"
    "table.concat\ntable.insert\ntable.remove\ntable.sort\ntable.unpack\n"
    "tonumber\ntostring\ntype\n";

static void a_pack_sees_this_and_no_more(void **state)
{
    (void)state;
    struct look *look = malloc(sizeof(*look));
    assert_non_null(look);
    struct sandbox *sandbox = sandbox_open();
    look_from(sandbox, look);
    assert_string_equal(look->seen, EVERY_PACK);
    assert_string_equal(look->methods, "byte\nformat\nlen\nlower\nsub\nupper\n");
    sandbox_close(sandbox);
    free(look);
}

/* Names that only rule files see. */
static const char *const RULES_SEE[] = {
    "about",
    "all",
    "all_of",
    "amount",
    "any_of",
    "as_printed",
    "as_written",
    "asks",
    "at_least",
    "at_most",
    "cannot_tell",
    "card",
    "caution",
    "common",
    "demand",
    "drawing",
    "dropped",
    "each_at_least",
    "each_at_most",
    "either",
    "equals",
    "field",
    "follows",
    "has",
    "has_all",
    "impossible",
    "inspected",
    "inspecting",
    "is",
    "known",
    "meant",
    "no",
    "none_of",
    "not_known",
    "number",
    "off",
    "on",
    "one_of",
    "order",
    "quantities_read",
    "quantity",
    "reads",
    "rule",
    "said",
    "shown",
    "some",
    "spacings_at_most",
    "together",
    "trade.cladding_psf",
    "trade.cricket_height_in",
    "trade.deck_psf",
    "trade.fan_cfm",
    "trade.fan_intake_sqin",
    "trade.footprint",
    "trade.haul",
    "trade.hip_factor",
    "trade.hip_length_ft",
    "trade.ice_barrier_courses",
    "trade.ice_barrier_reach_in",
    "trade.lapped_piece_ft",
    "trade.lapped_sqft",
    "trade.layer_lb",
    "trade.layer_psf",
    "trade.nail_capacity_lb",
    "trade.nail_length_in",
    "trade.nail_spacing_in",
    "trade.nails",
    "trade.nails_penetration_in",
    "trade.panel_nails",
    "trade.pitch_degrees",
    "trade.plan_load_psf",
    "trade.share_percent",
    "trade.slope_area_sqft",
    "trade.slope_factor",
    "trade.sloped_length_ft",
    "trade.squares",
    "trade.stack_most",
    "trade.stack_psf",
    "trade.stocked_length_in",
    "trade.strips_per_square",
    "trade.sum",
    "trade.vasd_to_vult",
    "trade.vent_area_needed_sqin",
    "trade.vent_area_sqin",
    "trade.vent_gross_sqin",
    "trade.vent_more",
    "trade.vent_net_sqin",
    "trade.vult_to_vasd",
    "trade.wind_ke",
    "trade.wind_kz",
    "trade.wind_q_psf",
    "trade.zone_width_ft",
    "work",
};

static void a_rule_sees_this_and_no_more(void **state)
{
    (void)state;
    struct temporary_home home;
    struct problems problems = {0};
    struct look *look = malloc(sizeof(*look));
    assert_non_null(look);
    home_make(&home);
    small_law_write(&home);
    struct rulebook *book = rulebook_load(home.path, NULL, &problems);
    assert_non_null(book);
    look_from(book->sandbox, look);
    char *rest = look->seen;
    size_t rules = 0, common = 0;
    for (char *line = strtok_r(NULL, "\n", &rest); line != NULL;
         line = strtok_r(NULL, "\n", &rest)) {
        char ended[130];
        snprintf(ended, sizeof(ended), "%s\n", line);
        if (rules < sizeof(RULES_SEE) / sizeof(RULES_SEE[0]) && strcmp(line, RULES_SEE[rules]) == 0)
            rules++;
        else if (strncmp(EVERY_PACK + common, ended, strlen(ended)) == 0)
            common += strlen(ended);
        else
            fail_msg("a rule can see %s, which is not on the list", line);
    }
    assert_int_equal(rules, sizeof(RULES_SEE) / sizeof(RULES_SEE[0]));
    assert_int_equal(common, strlen(EVERY_PACK));
    rulebook_free(book);
    problems_free(&problems);
    home_remove(&home);
    free(look);
}

int main(void)
{
    const struct CMUnitTest tests[] = {
        cmocka_unit_test(what_is_there_works),
        cmocka_unit_test(what_comes_equal_stays_in_order),
        cmocka_unit_test(a_list_of_any_length_is_sorted),
        cmocka_unit_test(each_limit_has_its_name),
        cmocka_unit_test(work_done_in_c_is_charged),
        cmocka_unit_test(processor_time_ends_what_steps_do_not),
        cmocka_unit_test(steps_that_take_long_are_ended_in_time),
        cmocka_unit_test(waiting_is_not_working),
        cmocka_unit_test(all_calls_together_have_a_total),
        cmocka_unit_test(steps_are_the_same_each_time),
        cmocka_unit_test(a_source_has_a_size),
        cmocka_unit_test(the_place_is_told_once),
        cmocka_unit_test(the_heap_returns_to_what_was_kept),
        cmocka_unit_test(a_heap_is_tidied),
        cmocka_unit_test(a_view_reads_but_does_not_write),
        cmocka_unit_test(two_files_share_no_surroundings),
        cmocka_unit_test(a_pack_sees_this_and_no_more),
        cmocka_unit_test(a_rule_sees_this_and_no_more),
    };
    return cmocka_run_group_tests(tests, NULL, NULL);
}
