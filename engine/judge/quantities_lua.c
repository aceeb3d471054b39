/* quantities_lua.c - see quantities.h; and amount{}, with which a quantity ends. */
#include "judge/quantities.h"

#include "base/number.h"
#include "judge/gap.h"
#include "judge/judge.h"
#include "judge/judging.h"
#include "judge/rulebook.h"
#include "judge/verdict.h"
#include "judge/walk.h"
#include "trade/takeoff.h"

#include <lauxlib.h>
#include <lua.h>

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

static const char AMOUNT_KEY = 'a'; /* registry: the metatable of amounts */

/* amount { ... } --------------------------------------------------------------- */

static const char *const AMOUNT_NAMES[] = {"exact", "unit", "waste_percent", "each",   "buy",
                                           "one",   "note", "item",          "goes_on"};

/* No other names than these: a misspelled waste_percent would order too little. */
static void closed_names(lua_State *lua)
{
    for (lua_pushnil(lua); lua_next(lua, 1) != 0; lua_pop(lua, 1)) {
        bool known = false;
        const char *name = lua_type(lua, -2) == LUA_TSTRING ? lua_tostring(lua, -2) : "?";
        for (size_t i = 0; i < sizeof(AMOUNT_NAMES) / sizeof(AMOUNT_NAMES[0]); i++)
            known = known || strcmp(AMOUNT_NAMES[i], name) == 0;
        if (!known)
            luaL_error(lua, "amount has no part \"%s\"", name);
    }
}

/* The number under name, in out; false when there is none. A negative one is an error of
 * the rule: nobody buys less than nothing. */
static bool number_part(lua_State *lua, const char *name, double *out)
{
    const int type = lua_getfield(lua, 1, name);
    if (type != LUA_TNIL && type != LUA_TNUMBER)
        luaL_error(lua, "amount: %s must be a number", name);
    *out = lua_tonumber(lua, -1);
    if (!isfinite(*out) || *out < 0)
        luaL_error(lua, "amount: %s is out of range", name);
    lua_pop(lua, 1);
    return type == LUA_TNUMBER;
}

static const char *text_part(lua_State *lua, const char *name)
{
    const int type = lua_getfield(lua, 1, name);
    if (type != LUA_TNIL && type != LUA_TSTRING)
        luaL_error(lua, "amount: %s must be a text", name);
    bind_charge_output(lua, type == LUA_TNIL ? 0 : lua_rawlen(lua, -1));
    const char *text = NULL;
    if (type == LUA_TSTRING)
        text = arena_format(judging_of(lua)->arena, "%.1000s", lua_tostring(lua, -1));
    bind_check_arena(lua);
    lua_pop(lua, 1);
    return text;
}

enum { QUOTIENT_BYTES = 64, QUOTIENT_PLACES = 2, QUOTIENT_MOST_PLACES = 9 };

/* A quotient with as many places as it takes to come to the count bought when
 * rounded up: 5.005, not 5.00, where six are bought. */
static void write_quotient(double quotient, double count, char text[QUOTIENT_BYTES])
{
    for (int places = QUOTIENT_PLACES; places <= QUOTIENT_MOST_PLACES; places++) {
        snprintf(text, QUOTIENT_BYTES, "%.*f", places, quotient);
        if (ceil(strtod(text, NULL)) == count)
            return;
    }
    snprintf(text, QUOTIENT_BYTES, "%.*f", QUOTIENT_PLACES, quotient);
}

/* The arithmetic from exact to bought, as lines of the record; a line that would say
 * nothing, of no waste or of pieces that hold one each, is left out. */
static void show(lua_State *lua, const struct amount *amount)
{
    char exact[96], with[96], each[96], count[64], waste[96];
    const double more = trade_with_waste(amount->exact, amount->waste_percent);
    number_write_unit(amount->exact, amount->unit, exact);
    number_write_unit(more, amount->unit, with);
    number_write_unit(amount->waste_percent, "percent", waste);
    if (amount->has_waste)
        record_work(lua, "%s + %s waste = %s", exact, waste, with);
    if (!amount->bought)
        return;
    number_write_unit(amount->each, amount->unit, each);
    number_write(amount->count, "count", count);
    if (amount->each == 1)
        return;
    char quotient[QUOTIENT_BYTES];
    write_quotient(more / amount->each, amount->count, quotient);
    record_work(lua, "%s / %s each = %s, so %s %s", with, each, quotient, count,
                amount->count == 1 ? amount->one : amount->buy);
}

/* amount { exact =, unit =, ... }: gives a userdata that only call_quantity takes. */
static int amount_call(lua_State *lua)
{
    struct amount amount = {.each = 1};
    luaL_checktype(lua, 1, LUA_TTABLE);
    closed_names(lua);
    amount.unit = text_part(lua, "unit");
    amount.buy = text_part(lua, "buy");
    amount.one = text_part(lua, "one");
    amount.note = text_part(lua, "note");
    amount.item = text_part(lua, "item");
    amount.goes_on = text_part(lua, "goes_on");
    if (amount.one == NULL)
        amount.one = amount.buy;
    amount.bought = amount.buy != NULL;
    amount.has_waste = number_part(lua, "waste_percent", &amount.waste_percent);
    if (!number_part(lua, "exact", &amount.exact) || amount.unit == NULL)
        return luaL_error(lua, "amount needs exact and unit");
    double each;
    if (number_part(lua, "each", &each))
        amount.each = each;
    if (amount.bought)
        amount.count = trade_purchase(amount.exact, amount.waste_percent, amount.each);
    if (!isfinite(amount.count))
        return luaL_error(lua, "amount: what one holds (each) is out of range");
    show(lua, &amount);
    struct amount *kept = lua_newuserdatauv(lua, sizeof(*kept), 0);
    *kept = amount;
    lua_rawgetp(lua, LUA_REGISTRYINDEX, &AMOUNT_KEY);
    lua_setmetatable(lua, -2);
    return 1;
}

static const struct amount *to_amount(lua_State *lua, int index)
{
    void *data = lua_touserdata(lua, index);
    if (data == NULL || lua_islightuserdata(lua, index) || !lua_getmetatable(lua, index))
        return NULL;
    lua_rawgetp(lua, LUA_REGISTRYINDEX, &AMOUNT_KEY);
    const bool same = lua_rawequal(lua, -1, -2);
    lua_pop(lua, 2);
    return same ? data : NULL;
}

void bind_amount(lua_State *lua)
{
    lua_createtable(lua, 0, 1);
    lua_pushboolean(lua, 0);
    lua_setfield(lua, -2, "__metatable");
    lua_rawsetp(lua, LUA_REGISTRYINDEX, &AMOUNT_KEY);
    lua_pushcfunction(lua, amount_call);
    sandbox_define(lua, "amount");
}

/* Lines -------------------------------------------------------------------------- */

struct run {
    struct judging judging;
    struct takeoff *takeoff;
    const struct quantity *quantity;
};

/* An entry for a quantity. */
struct quantity_call {
    struct call call; /* first: walk.h's functions see only this */
    const struct quantity *quantity;
};

static int call_quantity(lua_State *lua)
{
    struct quantity_call *entry = lua_touserdata(lua, 1);
    struct call *call = &entry->call;
    call_applies(lua, call, entry->quantity->applies);
    if (!call->applies)
        return 0;
    lua_call(lua, call_push(lua, call, entry->quantity->amount), 1);
    const struct amount *amount = to_amount(lua, -1);
    if (amount == NULL)
        return luaL_error(lua, "amount must return amount { ... }");
    /* The userdata goes with the heap. */
    struct amount *kept = arena_alloc(call->judging->arena, sizeof(*kept));
    bind_check_arena(lua);
    *kept = *amount;
    call->amount = kept;
    return 0;
}

/* The lines may move when one is added: keep no pointer to one over this. */
static struct quantity_line *line_new(struct run *run)
{
    struct takeoff *takeoff = run->takeoff;
    if (takeoff->line_count == takeoff->line_capacity) {
        const size_t capacity = takeoff->line_capacity == 0 ? 64 : takeoff->line_capacity * 2;
        struct quantity_line *lines = arena_array(&takeoff->head.arena, capacity, sizeof(*lines));
        if (lines == NULL)
            return NULL;
        if (takeoff->line_count > 0)
            memcpy(lines, takeoff->lines, takeoff->line_count * sizeof(*lines));
        takeoff->lines = lines;
        takeoff->line_capacity = capacity;
    }
    struct quantity_line *line = &takeoff->lines[takeoff->line_count++];
    *line = (struct quantity_line){0}; /* one that was there, reckoned again, leaves no trace */
    line->finding.rule = run->quantity->name;
    line->finding.title = run->quantity->title;
    line->heading = run->quantity->heading;
    line->serves = run->quantity->serves;
    line->by_habit = run->quantity->by_habit;
    return line;
}

static void line_broken(struct run *run, struct quantity_line *line, const char *message)
{
    const char *says = arena_format(run->judging.arena, "The quantity itself erred (%s:%d): %s",
                                    run->quantity->file, run->quantity->line, message);
    verdict_given(&line->finding, &run->judging, says);
    line->finding.outcome = OUTCOME_BROKEN;
}

static void reckon_item(struct run *run, struct walk *walk, struct quantity_line *line)
{
    struct quantity_call entry = {
        .call = {.judging = &run->judging,
                 .reads = run->quantity->reads,
                 .items = walk->items,
                 .depth = walk->depth},
        .quantity = run->quantity,
    };
    line->finding.where = walk_where(walk);
    const enum sandbox_stop stop = call_enter(&run->judging, call_quantity, &entry.call);
    const struct law_gap *gap = profile_gap_in_order(run->judging.book->profile,
                                                     run->quantity->name);
    if (stop != SANDBOX_SIGNAL && stop != SANDBOX_DONE) {
        line_broken(run, line, sandbox_message(run->judging.book->sandbox, stop));
        /* What the place does not carry is left open though it came out; what erred is told
     * as such. */
    } else if (gap_holds(&run->judging, gap) || stop == SANDBOX_SIGNAL) {
        verdict_open(&line->finding, &run->judging);
    } else if (!entry.call.applies) {
        verdict_not_applicable(&line->finding, &run->judging, entry.call.reason);
    } else {
        verdict_given(&line->finding, &run->judging, entry.call.amount->note);
        line->amount = entry.call.amount;
    }
}

static void visit_item(struct walk *walk, const struct node *missing)
{
    struct run *run = walk->data;
    run->judging.record = (struct record){0};
    struct quantity_line *line = line_new(run);
    if (line == NULL)
        return;
    if (missing != NULL) {
        record_missing(&run->judging, missing);
        verdict_open(&line->finding, &run->judging);
    } else if (sandbox_spent(run->judging.book->sandbox)) {
        line_broken(run, line, "was not run: those before it took all the time there is");
    } else {
        reckon_item(run, walk, line);
    }
}

/* A list that the job has and that is empty still has a line: nobody should
 * have to wonder whether it was looked at. */
static void reckon(struct run *run, const struct quantity *quantity)
{
    struct walk walk = {.judging = &run->judging,
                        .per = quantity->per,
                        .depth = quantity->per_depth,
                        .data = run,
                        .visit = visit_item};
    run->quantity = quantity;
    run->judging.output_of_rule = 0;
    walk_per(&walk);
    if (walk.visited > 0)
        return;
    run->judging.record = (struct record){0};
    struct quantity_line *line = line_new(run);
    if (line != NULL)
        verdict_not_applicable(&line->finding, &run->judging, "the job lists none");
}

double takeoff_count(const struct amount *amount, double exact)
{
    return trade_purchase(exact, amount->waste_percent, amount->each);
}

const char *takeoff_word(enum outcome outcome)
{
    return outcome == OUTCOME_PASS ? "given" : outcome_word(outcome);
}

/* In the order of the files, which is the order of the list to buy from. */
static void reckon_all(struct run *run)
{
    call_begin_all(&run->judging);
    for (const struct quantity *q = run->judging.book->quantities; q != NULL; q = q->next)
        reckon(run, q);
}

int takeoff_reckon(struct rulebook *book, const cJSON *job, struct takeoff *out)
{
    struct arena *arena = &out->head.arena;
    struct run run = {.judging = {.arena = arena, .spots = arena, .book = book, .job = job},
                      .takeoff = out};
    reckon_all(&run);
    if (!call_end_all(&run.judging)) {
        out->line_count = 0;
        run.judging.output = 0;
        run.judging.apart = true;
        judge_begin(book);
        reckon_all(&run);
        call_end_all(&run.judging);
    }
    for (size_t i = 0; i < out->line_count; i++)
        out->head.counts[out->lines[i].finding.outcome]++;
    out->head.caution = "A takeoff is only as good as the measurements in it: measure the roof "
                        "again before ordering. What a label says of its bundle, roll or vent goes "
                        "before the common figures used here.";
    return arena->failed ? -1 : 0;
}

void takeoff_free(struct takeoff *takeoff)
{
    if (takeoff == NULL)
        return;
    result_free(&takeoff->head);
    *takeoff = (struct takeoff){0};
}
