/* judge_once_lua.c - see judge_once.h. */
#include "judge/judge_once.h"

#include "judge/repeat.h"
#include "judge/row.h"

#include <lauxlib.h>
#include <lua.h>

#include <string.h>

/* Inside the sandbox. Errors raised here are the rule's, and are told with its file and
 * line. */
static int call_judge(lua_State *lua)
{
    struct call *call = lua_touserdata(lua, 1);
    lua_call(lua, call_push(lua, call, call->rule->judge), 1);
    call->judgement = bind_to_judgement(lua, -1);
    if (call->judgement == NULL)
        return luaL_error(lua, "judge must return a comparison (at_least, one_of, shown ...)");
    /* Without a figure there is nothing to cite, and nobody could change it. */
    if (call->judging->record.figure_count == 0)
        return luaL_error(lua, "judge compared without asking for a figure");
    return 0;
}

static int call_rule(lua_State *lua)
{
    struct call *call = lua_touserdata(lua, 1);
    call_applies(lua, call, call->rule->applies);
    return call->applies ? call_judge(lua) : 0;
}

/* Whether it applies may have been told before; what it judges mostly not, or the finding
 * would have been recalled. */
static enum sandbox_stop enter_functions(struct judging *judging, struct call *call)
{
    struct call asked = {.judging = judging,
                         .rule = call->rule,
                         .items = call->items,
                         .depth = call->depth,
                         .function = call->rule->applies};
    call->applies = true;
    if (asked.function != RULE_NO_FUNCTION) {
        const enum sandbox_stop stop = repeat_enter(judging, call_for_condition, &asked);
        call->applies = asked.applies;
        call->reason = asked.reason;
        if (stop != SANDBOX_DONE || !call->applies)
            return stop;
    }
    return call_enter(judging, call_judge, call);
}

/* By its row or its functions, whatever the units are. */
static enum judged judge_any_units(struct run *run, struct call *call, const char **why)
{
    enum sandbox_stop stop = SANDBOX_DONE;
    enum row_end end = ROW_JUDGED;
    *why = NULL;
    if (run->rule->row != NULL)
        end = row_judge(call, &stop, why);
    else if (run->rule->when != NULL)
        end = row_applies(call, run->rule->when, &stop, why);
    if (end == ROW_NOT_APPLICABLE)
        return JUDGED_NOT_APPLICABLE;
    if (end == ROW_OPEN)
        return JUDGED_OPEN;
    /* A rule with functions whose `when` held goes on to them. */
    if (end == ROW_JUDGED && run->rule->row != NULL)
        return JUDGED_COMPARED;
    if (end == ROW_JUDGED)
        stop = enter_functions(&run->judging, call);
    if (stop == SANDBOX_SIGNAL)
        return JUDGED_OPEN;
    if (stop == SANDBOX_DONE && *why == NULL)
        return call->applies ? JUDGED_COMPARED : JUDGED_NOT_APPLICABLE;
    if (*why == NULL)
        *why = sandbox_message(run->judging.book->sandbox, stop);
    return JUDGED_BROKEN;
}

/* Judges a second time with numbers marked (bind_marks.h). NULL, or what is wrong. */
static const char *marks_refuse(struct run *run, const struct walk *walk)
{
    struct judging *judging = &run->judging;
    const struct record record = judging->record;
    const size_t said = judging->output, output_of_rule = judging->output_of_rule;
    struct marks marks = {.count = 0};
    struct call again = {
        .judging = judging, .rule = run->rule, .items = walk->items, .depth = walk->depth};
    judging->record = (struct record){0};
    judging->marks = &marks;
    const enum sandbox_stop stop = call_enter(judging, call_rule, &again);
    const char *why = !marks.refused ? NULL
                                     : arena_copy(judging->arena,
                                                  sandbox_message(judging->book->sandbox, stop));
    judging->marks = NULL;
    judging->record = record;
    judging->output = said;
    judging->output_of_rule = output_of_rule;
    return why;
}

enum judged judge_once(struct run *run, const struct walk *walk, struct call *call,
                       const char **why)
{
    const enum judged judged = judge_any_units(run, call, why);
    /* Rows were checked when they were loaded. */
    if (judged != JUDGED_COMPARED || !run->judging.given.doubtful || run->rule->row != NULL)
        return judged;
    *why = marks_refuse(run, walk);
    return *why == NULL ? judged : JUDGED_BROKEN;
}

/* Judges once more with all that is disputed in these words as the rival has it: one
 * source may differ in several figures, which then go together. */
static void read_otherwise(struct run *run, const struct walk *walk, const char *disputed,
                           struct dispute *dispute)
{
    struct call call = {
        .judging = &run->judging, .rule = run->rule, .items = walk->items, .depth = walk->depth};
    run->judging.record = (struct record){0};
    run->judging.reading = disputed;
    const char *why;
    const enum judged judged = judge_any_units(run, &call, &why);
    run->judging.reading = NULL;
    /* A reading on which nothing is compared proves nothing, but was looked at. */
    dispute->looked++;
    if (judged == JUDGED_NOT_APPLICABLE || (judged == JUDGED_COMPARED && call.judgement->met))
        return;
    /* The first rival that would have it otherwise is the one that reports show. */
    if (judged == JUDGED_COMPARED && dispute->rival.kind == VALUE_NONE) {
        dispute->rival = call.judgement->required;
        dispute->sense = call.judgement->sense;
    }
    dispute->disputed = true;
}

static bool is_maker(const struct judgement *judgement, const struct figure *figure)
{
    for (size_t i = 0; i < judgement->maker_count; i++)
        if (judgement->makers[i] == figure)
            return true;
    return false;
}

/* Has a figure asked for before this one, with a rival, been disputed in the same words? */
static bool said_before(const struct record *record, size_t index)
{
    for (size_t i = 0; i < index; i++)
        if (record->figures[i]->disputed != NULL && record->figures[i]->rival.kind != VALUE_NONE
            && strcmp(record->figures[i]->disputed, record->figures[index]->disputed) == 0)
            return true;
    return false;
}

struct dispute judge_once_dispute(struct run *run, const struct walk *walk,
                                  const struct judgement *judgement)
{
    struct dispute dispute = {0};
    const struct record record = run->judging.record;
    for (size_t i = 0; judgement->met && i < record.figure_count; i++) {
        const struct figure *figure = record.figures[i];
        if (figure->disputed == NULL || said_before(&record, i))
            continue;
        if (figure->rival.kind != VALUE_NONE)
            read_otherwise(run, walk, figure->disputed, &dispute);
        else if (is_maker(judgement, figure))
            dispute.disputed = true;
    }
    run->judging.record = record;
    return dispute;
}
