/* judge_rule.c - see judge_rule.h. */
#include "judge/judge_rule.h"

#include "judge/carry.h"
#include "judge/gap.h"
#include "judge/judge_once.h"
#include "judge/recall.h"
#include "judge/settle.h"
#include "judge/verdict.h"

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
    struct finding *finding = run_finding(run);
    if (finding == NULL)
        return;
    finding->where = where;
    finding->item = item;
    run->judging.record = (struct record){0};
    verdict_broken(finding, &run->judging, run_erred(run, "mend"), run->rule->file, run->rule->line,
                   message);
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
    return gap_holds(&run->judging, run->bearing->gap) ? JUDGED_OPEN : judged;
}

static void name_item(const struct run *run, const struct walk *walk, struct finding *finding)
{
    if (run->result->wanted == WANTED_OUTCOMES)
        return;
    finding->where = walk_where(walk);
    /* The innermost item: its pointer tells reports which of several porches it is. */
    finding->item = walk->depth > 0 ? walk->items[walk->depth - 1].pointer : NULL;
}

static void take_recalled(struct run *run, const struct walk *walk, const struct kept_finding *kept)
{
    if (carry_recalled(run, walk, kept))
        return;
    if (run_only_counts(run, kept->outcome)) {
        run_count(run, 1);
        return;
    }
    struct finding *finding = recall_tell(run, kept);
    if (finding == NULL)
        return;
    carry_keep_told(run, finding);
    name_item(run, walk, finding);
}

static void judge_anew(struct run *run, const struct walk *walk)
{
    struct call call = {
        .judging = &run->judging, .rule = run->rule, .items = walk->items, .depth = walk->depth};
    struct finding *finding = run_finding(run);
    if (finding == NULL)
        return;
    run->judging.record = (struct record){0};
    carry_note_finding(run, walk, NULL);
    name_item(run, walk, finding);
    const char *why, *broken_mend = NULL;
    switch (not_carried(run, judge_once(run, walk, &call, &why))) {
    case JUDGED_OPEN:
        verdict_open(finding, &run->judging);
        break;
    case JUDGED_BROKEN:
        verdict_broken(finding, &run->judging, run_erred(run, "rule"), run->rule->file,
                       run->rule->line, why);
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
        const struct dispute dispute = judge_once_dispute(run, walk, call.judgement);
        verdict_judged(finding, &run->judging, run->rule, call.judgement, &dispute);
        break;
    }
    }
    if (finding->met == MET_NO)
        finding->mend = mend_of(run, &call, &broken_mend);
    if (finding->outcome != OUTCOME_NOT_APPLICABLE && finding->outcome != OUTCOME_PASS)
        finding->caution = run->rule->caution;
    if (broken_mend == NULL) {
        recall_keep_finding(&run->judging, run->rule_number, finding);
        carry_keep_finding(run, finding);
    }
    run->judging.trail.on = false;
    run->judging.trail.touch = 0;
    /* Last, for it may move the finding. */
    if (run_keeps(run, finding) && broken_mend != NULL)
        mend_broken(run, finding, broken_mend);
}

static void visit_item(struct walk *walk, const struct node *missing)
{
    struct run *run = walk->data;
    if (missing != NULL) {
        if (carry_finding(run, walk, missing))
            return;
        struct finding *finding = run_finding(run);
        if (finding == NULL)
            return;
        run->judging.record = (struct record){0};
        carry_note_finding(run, walk, missing);
        record_missing(&run->judging, missing);
        verdict_open(finding, &run->judging);
        carry_keep_finding(run, finding);
        return;
    }
    if (run_spent(&run->judging)) {
        struct finding *finding = run_finding(run);
        run->judging.record = (struct record){0};
        if (finding != NULL)
            verdict_broken(finding, &run->judging, "The rule was not run", run->rule->file,
                           run->rule->line,
                           "those before it took all the steps, time or room there are");
        return;
    }
    if (carry_finding(run, walk, NULL))
        return;
    const struct kept_finding *kept = recall_finding(&run->judging, run->rule_number, walk);
    if (kept != NULL)
        take_recalled(run, walk, kept);
    else
        judge_anew(run, walk);
}

void judge_rule(struct run *run, size_t number)
{
    const struct rulebook *book = run->judging.book;
    const struct bearing *bearing = &book->bearings[number];
    run->rule = book->by_id[number];
    run->rule_number = number;
    run->bearing = bearing;
    run->judging.output_of_rule = 0;
    /* One that is dropped is never settled. */
    if (settle_take_rule(run))
        return;
    run->judging.record = (struct record){0};
    if (bearing->drop != NULL) {
        struct finding *finding = run_finding(run);
        if (finding == NULL)
            return;
        verdict_dropped(finding, &run->judging, bearing->drop);
        run_keeps(run, finding);
        return;
    }
    struct walk walk = {.judging = &run->judging,
                        .per = bearing->per,
                        .depth = bearing->per_depth,
                        .data = run,
                        .visit = visit_item};
    settle_begin(&run->judging, &walk, number);
    walk_per(&walk);
    settle(&run->judging, &walk, number, 0);
    if (walk.visited == 0 && run_only_counts(run, OUTCOME_NOT_APPLICABLE)) {
        run_count(run, 1);
    } else if (walk.visited == 0) {
        struct finding *finding = run_finding(run);
        if (finding == NULL)
            return;
        verdict_not_applicable(finding, &run->judging, "The job has none of these.");
        run_keeps(run, finding);
    }
}
