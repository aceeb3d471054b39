#include "judge/judge.h"

#include "base/number.h"
#include "base/text.h"
#include "job/path.h"
#include "judge/drawn.h"
#include "judge/gap.h"
#include "judge/judging.h"
#include "judge/meant.h"
#include "judge/memory.h"
#include "judge/recall.h"
#include "judge/row.h"
#include "judge/verdict.h"
#include "judge/walk.h"

#include <lauxlib.h>
#include <lua.h>

#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

/* Inside the sandbox. Errors raised here are the rule's, and are told with its file and
 * line. */
static int call_rule(lua_State *lua)
{
    struct call *call = lua_touserdata(lua, 1);
    call_applies(lua, call, call->rule->applies);
    if (!call->applies)
        return 0;
    lua_call(lua, call_push(lua, call, call->rule->judge), 1);
    call->judgement = bind_to_judgement(lua, -1);
    if (call->judgement == NULL)
        return luaL_error(lua, "judge must return a comparison (at_least, one_of, shown ...)");
    /* Without a figure there is nothing to cite, and nobody could change it. */
    if (call->judging->record.figure_count == 0)
        return luaL_error(lua, "judge compared without asking for a figure");
    return 0;
}

static int call_for_text(lua_State *lua)
{
    struct call *call = lua_touserdata(lua, 1);
    lua_call(lua, call_push(lua, call, call->function), 1);
    call->text = call_kept_text(lua, call, -1);
    if (call->must_say && call->text == NULL)
        return luaL_error(lua, "this function must give a text");
    return 0;
}

static int call_for_flag(lua_State *lua)
{
    struct call *call = lua_touserdata(lua, 1);
    lua_call(lua, call_push(lua, call, call->function), 1);
    /* As Lua has it: anything but nil and false is a danger. */
    call->present = lua_toboolean(lua, -1);
    return 0;
}

/* Findings -------------------------------------------------------------------------- */

/* One job being judged. The findings live in the result's arena and may move as they
 * grow. */
struct run {
    struct judging judging;
    struct result *result;
    const struct rule *rule;
    const struct law_gap *gap; /* of the place's law, that bears on the rule; or NULL */
    size_t capacity;
};

/* A blank one. */
static struct finding *finding_add(struct run *run)
{
    struct result *result = run->result;
    if (result->finding_count == run->capacity) {
        /* As many as the job before had: batches are of houses much alike. */
        const size_t before = run->judging.book->finding_count;
        const size_t capacity = run->capacity > 0 ? run->capacity * 2 : before > 64 ? before : 64;
        struct finding *findings = arena_room(&result->arena, capacity, sizeof(*findings));
        if (findings == NULL)
            return NULL;
        if (result->finding_count > 0)
            memcpy(findings, result->findings, result->finding_count * sizeof(*findings));
        result->findings = findings;
        run->capacity = capacity;
    }
    struct finding *finding = &result->findings[result->finding_count++];
    *finding = (struct finding){0}; /* one that was there, judged again, leaves no trace */
    return finding;
}

static struct finding *finding_new(struct run *run)
{
    struct finding *finding = finding_add(run);
    if (finding == NULL)
        return NULL;
    finding->rule = run->rule->id;
    finding->title = run->rule->title;
    finding->stage = run->rule->stage;
    return finding;
}

/* What else of a rulebook may err while a job is judged. */
struct part {
    const char *kind; /* "caution" */
    const char *name, *title, *file;
    int line;
    enum stage stage;
};

/* What is said of a rule or part that stopped: one that others left nothing did not err. */
static const char *erred(struct run *run, const char *kind)
{
    const bool spent = sandbox_spent(run->judging.book->sandbox);
    const char *what = arena_format(run->judging.arena, "The %s %s", kind,
                                    spent ? "was not run to its end" : "itself erred");
    return what == NULL ? kind : what;
}

/* A finding of its own, so that nobody takes the report for whole. */
static void part_broken(struct run *run, const struct part *part, const char *message)
{
    struct finding *finding = finding_add(run);
    if (finding == NULL)
        return;
    /* "caution.lead": no rule has such a name, so it cannot be taken for one. */
    finding->rule = arena_format(run->judging.arena, "%s.%s", part->kind, part->name);
    finding->title = part->title;
    finding->stage = part->stage;
    if (finding->rule == NULL)
        finding->rule = part->kind;
    run->judging.record = (struct record){0};
    verdict_broken(finding, &run->judging, erred(run, part->kind), part->file, part->line, message);
}

/* *broken says why there is none. */
static const char *mend_of(struct run *run, struct call *call, const char **broken)
{
    if (run->rule->mend_function == RULE_NO_FUNCTION)
        return run->rule->mend;
    /* What the mend reads says nothing about the judgement. */
    const struct record record = run->judging.record;
    run->judging.record = (struct record){0};
    run->judging.mending = true;
    call->function = run->rule->mend_function;
    call->must_say = true;
    call->text = NULL;
    const enum sandbox_stop stop = call_enter(&run->judging, call_for_text, call);
    const char *missing = run->judging.record.missing_pointer;
    run->judging.record = record;
    run->judging.mending = false;
    if (stop == SANDBOX_DONE)
        return call->text;
    /* The place that it names is this job's. */
    run->judging.trail.unfit |= missing != NULL;
    if (stop == SANDBOX_SIGNAL)
        return missing == NULL ? "The job does not say enough to tell what would mend it."
                               : arena_format(run->judging.arena,
                                              "What would mend it depends on "
                                              "%s, which the job does not say.",
                                              missing);
    /* The sandbox's message lasts until the next call only. */
    *broken = arena_copy(run->judging.arena, sandbox_message(run->judging.book->sandbox, stop));
    return arena_format(run->judging.arena, "The rule could not say what would mend it: %s",
                        *broken);
}

static void mend_broken(struct run *run, const struct finding *of, const char *message)
{
    const char *where = of->where, *item = of->item; /* findings may move */
    struct finding *finding = finding_new(run);
    if (finding == NULL)
        return;
    finding->where = where;
    finding->item = item;
    run->judging.record = (struct record){0};
    verdict_broken(finding, &run->judging, erred(run, "mend"), run->rule->file, run->rule->line,
                   message);
}

/* How judging one thing once ended. */
enum judged { JUDGED_COMPARED, JUDGED_NOT_APPLICABLE, JUDGED_OPEN, JUDGED_BROKEN };

/* By its row or its functions; *why says what broke. */
static enum judged judge_once(struct run *run, struct call *call, const char **why)
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
        stop = call_enter(&run->judging, call_rule, call);
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

/* The judgement, of which the units and verbs of all comparisons agree with what they
 * compare. */
static enum judged judge_checked(struct run *run, const struct walk *walk, struct call *call,
                                 const char **why)
{
    const enum judged judged = judge_once(run, call, why);
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
    const enum judged judged = judge_once(run, &call, &why);
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

/* Is what is met met on every reading? Where another source is known to differ and
 * its value is not, a demand made of it cannot be. */
static struct dispute dispute_of(struct run *run, const struct walk *walk,
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

/* Nothing that the job says was read: only that it does not say something. What is
 * left out is then what is lacking. */
static bool rests_on_nothing(struct record *record)
{
    if (record->said || record->unsaid == NULL)
        return false;
    record->missing = record->unsaid;
    record->missing_pointer = record->unsaid_pointer;
    return true;
}

/* What the place does not carry is not for it to judge, whatever came out; but what a
 * fact of the job alone lets off is let off by any law. */
static enum judged not_carried(struct run *run, enum judged judged)
{
    const bool by_fact = judged == JUDGED_NOT_APPLICABLE && run->judging.record.figure_count == 0;
    if (judged == JUDGED_BROKEN || by_fact)
        return judged;
    return gap_holds(&run->judging, run->gap) ? JUDGED_OPEN : judged;
}

static void judge_item(struct run *run, struct walk *walk)
{
    struct call call = {
        .judging = &run->judging, .rule = run->rule, .items = walk->items, .depth = walk->depth};
    struct finding *finding = finding_new(run);
    if (finding == NULL)
        return;
    finding->where = walk_where(walk);
    /* The innermost item: its pointer tells reports which of several porches it is. */
    finding->item = walk->depth > 0 ? walk->items[walk->depth - 1].pointer : NULL;
    if (recall_finding(&run->judging, run->rule, walk, finding))
        return;
    const char *why, *broken_mend = NULL;
    switch (not_carried(run, judge_checked(run, walk, &call, &why))) {
    case JUDGED_OPEN:
        verdict_open(finding, &run->judging);
        break;
    case JUDGED_BROKEN:
        verdict_broken(finding, &run->judging, erred(run, "rule"), run->rule->file, run->rule->line,
                       why);
        break;
    case JUDGED_NOT_APPLICABLE:
        if (rests_on_nothing(&run->judging.record))
            verdict_open(finding, &run->judging);
        else
            verdict_not_applicable(finding, &run->judging, call.reason);
        break;
    case JUDGED_COMPARED: {
        /* What is not met stands, whatever was left out: nobody would be told to mend
         * nothing. */
        if (call.judgement->met && rests_on_nothing(&run->judging.record)) {
            verdict_open(finding, &run->judging);
            break;
        }
        const struct dispute dispute = dispute_of(run, walk, call.judgement);
        verdict_judged(finding, &run->judging, run->rule, call.judgement, &dispute);
        break;
    }
    }
    if (finding->met == MET_NO)
        finding->mend = mend_of(run, &call, &broken_mend);
    if (finding->outcome != OUTCOME_NOT_APPLICABLE && finding->outcome != OUTCOME_PASS)
        finding->caution = run->rule->caution;
    if (broken_mend == NULL)
        recall_keep_finding(&run->judging, run->rule, finding);
    run->judging.trail.on = false;
    /* Last, for it may move the finding. */
    if (broken_mend != NULL)
        mend_broken(run, finding, broken_mend);
}

/* The rules before this one took all the time, or said all there is room for. */
static bool spent(const struct judging *judging)
{
    return sandbox_spent(judging->book->sandbox) || judging->output > OUTPUT_MOST;
}

static void visit_item(struct walk *walk, const struct node *missing)
{
    struct run *run = walk->data;
    run->judging.record = (struct record){0};
    if (missing != NULL) {
        struct finding *finding = finding_new(run);
        if (finding == NULL)
            return;
        record_missing(&run->judging, missing);
        verdict_open(finding, &run->judging);
        return;
    }
    if (spent(&run->judging)) {
        struct finding *finding = finding_new(run);
        if (finding != NULL)
            verdict_broken(finding, &run->judging, "The rule was not run", run->rule->file,
                           run->rule->line,
                           "those before it took all the steps, time or room there are");
        return;
    }
    judge_item(run, walk);
}

/* A rule that an ordinance drops has one finding, for the whole house. */
static void judge_rule(struct run *run, const struct rule *rule)
{
    run->rule = rule;
    run->gap = profile_gap(run->judging.book->profile, rule->id);
    run->judging.output_of_rule = 0;
    run->judging.record = (struct record){0};
    const struct drop *drop = profile_drop(run->judging.book->profile, rule->id);
    if (drop != NULL) {
        struct finding *finding = finding_new(run);
        if (finding != NULL)
            verdict_dropped(finding, &run->judging, drop);
        return;
    }
    struct walk walk = {.judging = &run->judging,
                        .per = rule->per,
                        .depth = rule->per_depth,
                        .data = run,
                        .visit = visit_item};
    walk_per(&walk);
    if (walk.visited == 0) {
        struct finding *finding = finding_new(run);
        if (finding != NULL)
            verdict_not_applicable(finding, &run->judging, "The job has none of these.");
    }
}

/* Safety cautions --------------------------------------------------------------------- */

static void caution_broken(struct run *run, const struct caution *caution, enum stage stage,
                           enum sandbox_stop stop)
{
    const struct part part = {.kind = "caution",
                              .name = caution->name,
                              .title = "A caution for people's safety",
                              .file = caution->file,
                              .line = caution->line,
                              .stage = stage};
    part_broken(run, &part, sandbox_message(run->judging.book->sandbox, stop));
}

static enum sandbox_stop enter_or_recall(struct run *run, lua_CFunction function, struct call *call)
{
    enum sandbox_stop stop;
    run->judging.record = (struct record){0};
    run->judging.output_of_rule = 0;
    if (recall_call(&run->judging, call, &stop))
        return stop;
    stop = call_enter(&run->judging, function, call);
    recall_keep_call(&run->judging, call, stop);
    return stop;
}

/* What a function says, or the text where there is none; NULL where it fails, and *stop
 * then says how, unless something failed before. */
static const char *caution_words(struct run *run, int function, const char *text,
                                 enum sandbox_stop *stop)
{
    if (function == RULE_NO_FUNCTION)
        return text;
    if (*stop != SANDBOX_DONE && *stop != SANDBOX_SIGNAL)
        return NULL;
    struct call call = {.judging = &run->judging, .function = function, .must_say = true};
    *stop = enter_or_recall(run, call_for_text, &call);
    return call.text;
}

/* A danger that a missing fact or a broken caution cannot rule out is present; its name
 * then stands for the words. */
static void judge_caution(struct run *run, const struct caution *caution, enum stage stage,
                          struct safety *safety)
{
    /* What stops before it could answer leaves the danger standing. */
    struct call call = {.judging = &run->judging, .function = caution->when, .present = true};
    enum sandbox_stop stop = SANDBOX_DONE;
    if (caution->when != RULE_NO_FUNCTION)
        stop = enter_or_recall(run, call_for_flag, &call);
    if (stop == SANDBOX_DONE && !call.present)
        return;
    const char *says = caution_words(run, caution->says_function, caution->says, &stop);
    const char *brief = caution_words(run, caution->brief_function, caution->brief, &stop);
    /* There is room: the cautions were counted before. */
    safety[run->result->safety_count++] = (struct safety){.name = caution->name,
                                                          .cite = caution->cite,
                                                          .says = says == NULL ? caution->name
                                                                               : says,
                                                          .brief = brief};
    if (stop != SANDBOX_DONE && stop != SANDBOX_SIGNAL)
        caution_broken(run, caution, stage, stop);
}

static void judge_cautions(struct run *run, enum stage stage)
{
    size_t count = 0;
    for (const struct caution *c = run->judging.book->cautions; c != NULL; c = c->next)
        count++;
    struct safety *safety = arena_array(&run->result->arena, count + 1, sizeof(*safety));
    if (safety == NULL)
        return;
    run->result->safety = safety;
    for (const struct caution *c = run->judging.book->cautions; c != NULL; c = c->next)
        if (c->stages[stage])
            judge_caution(run, c, stage, safety);
}

/* About the house: a line of which a fact is missing is left out. */
static void judge_abouts(struct run *run, enum stage stage)
{
    struct result *result = run->result;
    size_t count = 0;
    for (const struct about *a = run->judging.book->abouts; a != NULL; a = a->next)
        count++;
    struct about_line *lines = arena_array(&result->arena, count + 1, sizeof(*lines));
    if (lines == NULL)
        return;
    result->about = lines;
    for (const struct about *a = run->judging.book->abouts; a != NULL; a = a->next) {
        struct call call = {.judging = &run->judging, .function = a->says, .facts_only = true};
        const enum sandbox_stop stop = enter_or_recall(run, call_for_text, &call);
        const struct part part = {.kind = "about",
                                  .name = a->label,
                                  .title = "A line about the house",
                                  .file = a->file,
                                  .line = a->line,
                                  .stage = stage};
        if (stop == SANDBOX_DONE && call.text != NULL)
            lines[result->about_count++] = (struct about_line){a->label, call.text};
        else if (stop != SANDBOX_DONE && stop != SANDBOX_SIGNAL)
            part_broken(run, &part, sandbox_message(run->judging.book->sandbox, stop));
    }
}

/* Of earlier stages, what is met is behind the crew; what fails, is open or is not
 * met is still on the roof, and the inspector of this stage sees it. */
static void keep_unfinished(struct result *result, enum stage stage)
{
    size_t kept = 0;
    for (size_t i = 0; i < result->finding_count; i++) {
        const struct finding *finding = &result->findings[i];
        if (finding->stage == stage || finding->met == MET_NO || finding->outcome == OUTCOME_OPEN
            || finding->outcome == OUTCOME_BROKEN)
            result->findings[kept++] = *finding;
    }
    result->finding_count = kept;
}

static void count_findings(struct result *result, enum stage reached)
{
    for (size_t i = 0; i < result->finding_count; i++) {
        const struct finding *finding = &result->findings[i];
        result->counts[finding->outcome]++;
        result->unmeasured_passes += finding->met == MET_YES && finding->outcome == OUTCOME_PASS
                                     && !finding->measured && reached >= finding->stage
                                     && finding->stage != STAGE_PERMIT;
        result->not_met += finding->met == MET_NO;
        result->disputed += (finding->why & WHY_DISPUTED) != 0;
        result->met_unconfirmed += finding->met == MET_YES && (finding->why & WHY_UNCONFIRMED) != 0;
    }
}

void judge_begin(struct rulebook *book)
{
    sandbox_begin(book->sandbox, SANDBOX_CHECK_STEPS, SANDBOX_CHECK_MS);
}

static void judge_all(struct run *run, int only_stage, enum stage reached)
{
    const struct rulebook *book = run->judging.book;
    const char *only_rule = run->judging.probe == NULL ? NULL : run->judging.probe->only_rule;
    const enum stage stage = only_stage >= 0 ? (enum stage)only_stage : reached;
    for (const struct rule *r = book->rules; r != NULL; r = r->next) {
        /* What comes after the stage asked for is not looked at yet. */
        if ((only_stage >= 0 && (int)r->stage > only_stage)
            || (only_rule != NULL && strcmp(only_rule, r->id) != 0))
            continue;
        /* Nothing is built at the permit stage: there is only what is planned. */
        run->judging.inspecting = reached >= r->stage && r->stage != STAGE_PERMIT;
        judge_rule(run, r);
    }
    if (only_rule != NULL)
        return;
    judge_cautions(run, stage);
    judge_abouts(run, stage);
    run->result->drawings = drawn_of_job(&run->judging);
}

/* From the beginning, each call apart from the others. */
static void start_again(struct run *run, struct rulebook *book)
{
    struct result *result = run->result;
    result->finding_count = result->safety_count = result->about_count = 0;
    result->drawings = NULL;
    run->judging.output = 0;
    run->judging.apart = true;
    judge_begin(book);
}

/* The fast way first: all rules on one heap, looked at once at the end. */
int judge(struct rulebook *book, const cJSON *job, int only_stage, enum stage reached,
          const struct probe *probe, struct result *result)
{
    struct run run = {.judging = {.arena = &result->arena,
                                  .book = book,
                                  .job = job,
                                  .reached = reached,
                                  .probe = probe},
                      .result = result};
    /* Not for one job alone: it would cost and gain nothing. */
    if (book->judged++ == 1)
        book->memory = memory_open();
    call_begin_all(&run.judging);
    judge_all(&run, only_stage, reached);
    if (!call_end_all(&run.judging)) {
        start_again(&run, book);
        call_begin_all(&run.judging);
        judge_all(&run, only_stage, reached);
        call_end_all(&run.judging);
    }
    book->finding_count = result->finding_count;
    if (only_stage >= 0)
        keep_unfinished(result, (enum stage)only_stage);
    count_findings(result, reached);
    result->reached = reached;
    result->caution = "This is a pre-check, not a permit or an inspection. Codes are amended "
                      "locally and figures may be out of date: confirm every item with the "
                      "local building department before relying on it.";
    return result->arena.failed ? -1 : 0;
}

/* Impossible facts ---------------------------------------------------------------------- */

struct impossible_run {
    const struct impossible *check;
    const char *file;
    struct problems *problems;
    bool broken;
};

static void impossible_broken(struct impossible_run *run, const char *message)
{
    run->broken = true;
    problem_at_line(run->problems, PROBLEM_RULES, run->check->file, run->check->line, 0,
                    "impossible \"%s\": %s", run->check->name, message);
}

static void say_impossible(struct impossible_run *run, const struct walk *walk, const char *why)
{
    const char *base = walk->depth > 0 ? walk->items[walk->depth - 1].pointer : "";
    const char *pointer = path_below(walk->judging->arena, base, run->check->at);
    /* Who says so, if it is not what everybody goes by. */
    char who[160] = "";
    if (strncmp(run->check->file, "rules/", strlen("rules/")) != 0)
        snprintf(who, sizeof(who), " (%.100s:%d)", run->check->file, run->check->line);
    if (!run->check->asks_back) {
        problem_at(run->problems, PROBLEM_JOB, run->file, pointer, "cannot be: %s%s", why, who);
        return;
    }
    struct text words = TEXT_EMPTY;
    text_addf(&words, "%s%s", why, who);
    if (words.failed)
        problem_out_of_memory(run->problems);
    meant_ask_back(walk->judging->job, run->file, pointer, text_string(&words), run->problems);
    text_free(&words);
}

static void visit_impossible(struct walk *walk, const struct node *missing)
{
    struct impossible_run *run = walk->data;
    if (missing != NULL || run->broken)
        return;
    if (spent(walk->judging)) {
        impossible_broken(run, "was not run: those before it took all the time there is");
        return;
    }
    struct call call = {.judging = walk->judging,
                        .items = walk->items,
                        .depth = walk->depth,
                        .function = run->check->when,
                        .facts_only = true};
    walk->judging->record = (struct record){0};
    enum sandbox_stop stop;
    if (!recall_call(walk->judging, &call, &stop)) {
        stop = call_enter(walk->judging, call_for_text, &call);
        recall_keep_call(walk->judging, &call, stop);
    }
    if (stop == SANDBOX_SIGNAL)
        return;
    if (stop != SANDBOX_DONE) {
        impossible_broken(run, sandbox_message(walk->judging->book->sandbox, stop));
    } else if (call.text != NULL) {
        say_impossible(run, walk, call.text);
    }
}

/* Is it a place at which something may be asked back? A place may ask back what another
 * does not: the job goes to both. */
static bool is_asked_back(const struct rulebook *book, const struct field *field)
{
    char path[256];
    if (field->of_place)
        return true;
    for (const struct impossible *c = book->impossibles; c != NULL; c = c->next) {
        snprintf(path, sizeof(path), "%s%s%s",
                 c->per_depth > 0 ? c->per[c->per_depth - 1]->path : "",
                 c->per_depth > 0 ? "[]." : "", c->at);
        if (c->asks_back && fields_find(&book->fields, path) == field)
            return true;
    }
    return false;
}

/* A slip in /as_meant would leave the question standing, and nobody know why. */
static void check_meant(const struct rulebook *book, const cJSON *job, const char *file,
                        struct problems *problems)
{
    const cJSON *meant = NULL;
    size_t index = 0;
    cJSON_ArrayForEach(meant, cJSON_GetObjectItemCaseSensitive(job, "as_meant")) {
        const char *at = cJSON_GetStringValue(cJSON_GetObjectItemCaseSensitive(meant, "at"));
        const struct field *field = at == NULL ? NULL : path_field(&book->fields, at);
        char pointer[64];
        snprintf(pointer, sizeof(pointer), "/as_meant/%zu/at", index++);
        if (at != NULL && (field == NULL || !is_asked_back(book, field)))
            problem_at(problems, PROBLEM_JOB, file, pointer,
                       "\"%.*s\" is no place at which anything is asked back: copy it from the "
                       "question",
                       (int)path_quotable(at, strlen(at), 80), at);
    }
}

static void look_for_impossible(struct judging *judging, const char *file,
                                struct problems *problems)
{
    for (const struct impossible *c = judging->book->impossibles; c != NULL; c = c->next) {
        struct impossible_run run = {.check = c, .file = file, .problems = problems};
        judging->output_of_rule = 0;
        struct walk walk = {.judging = judging,
                            .per = c->per,
                            .depth = c->per_depth,
                            .data = &run,
                            .visit = visit_impossible};
        walk_per(&walk);
    }
}

void judge_impossible(struct rulebook *book, const cJSON *job, const char *file,
                      struct problems *problems)
{
    struct judging judging = {.arena = &problems->arena, .book = book, .job = job};
    /* To cut off what is said twice, should it have to be looked for again. */
    const struct problems before = *problems;
    call_begin_all(&judging);
    look_for_impossible(&judging, file, problems);
    if (!call_end_all(&judging)) {
        problems_cut(problems, &before);
        judging.apart = true;
        judge_begin(book);
        call_begin_all(&judging);
        look_for_impossible(&judging, file, problems);
        call_end_all(&judging);
    }
    if (book->profile != NULL) /* without one only the catalogue's own checks are loaded */
        check_meant(book, job, file, problems);
    if (problems->arena.failed)
        problem_out_of_memory(problems);
}
