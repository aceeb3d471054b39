/* judge.c - see judge.h. */
#include "judge/judge.h"

#include "judge/carry.h"
#include "judge/drawn.h"
#include "judge/judge_about.h"
#include "judge/judge_caution.h"
#include "judge/judge_rule.h"
#include "judge/memory.h"
#include "judge/settle.h"
#include "judge/survey.h"

#include <string.h>

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
    survey_let_go(book->survey);
}

static void judge_all(struct run *run, int only_stage, enum stage reached)
{
    const struct rulebook *book = run->judging.book;
    const char *only_rule = run->judging.probe == NULL ? NULL : run->judging.probe->only_rule;
    const enum stage stage = only_stage >= 0 ? (enum stage)only_stage : reached;
    for (size_t i = 0; i < book->rule_count; i++) {
        const struct bearing *rule = &book->bearings[i];
        /* What comes after the stage asked for is not looked at yet. */
        if ((only_stage >= 0 && (int)rule->stage > only_stage)
            || (only_rule != NULL && strcmp(only_rule, rule->id) != 0))
            continue;
        /* Nothing is built at the permit stage: there is only what is planned. */
        run->judging.inspecting = reached >= rule->stage && rule->stage != STAGE_PERMIT;
        judge_rule(run, i);
    }
    if (only_rule != NULL)
        return;
    judge_cautions(run, stage);
    judge_abouts(run, stage);
    if (run->result->wanted == WANTED_WHOLE)
        run->result->drawings = drawn_of_job(&run->judging);
}

/* From the beginning, each call apart from the others. */
static void start_again(struct run *run, struct rulebook *book)
{
    struct result *result = run->result;
    result->finding_count = result->safety_count = result->about_count = 0;
    result->left_out_count = 0;
    result->counts[OUTCOME_NOT_APPLICABLE] = 0;
    result->drawings = NULL;
    run->judging.output = 0;
    run->judging.apart = true;
    judge_begin(book);
}

/* As many in the next job, and in one much smaller fewer by and by: what is moved to a larger
 * room costs more than room that is not used. */
static void expect_findings(struct rulebook *book, size_t count)
{
    const size_t before = book->finding_count;
    book->finding_count = count >= before ? count : before - (before - count) / 8;
}

/* The fast way first: all rules on one heap, looked at once at the end. */
int judge(struct rulebook *book, const cJSON *job, int only_stage, enum stage reached,
          const struct probe *probe, struct result *result)
{
    struct run run = {.judging = {.arena = &result->arena,
                                  .spots = &result->arena,
                                  .book = book,
                                  .job = job,
                                  .wanted = result->wanted,
                                  .reached = reached,
                                  .probe = probe},
                      .result = result,
                      .only_stage = only_stage};
    /* Not for one job alone: it would cost and gain nothing. */
    if (book->judged++ == 1) {
        book->memory = memory_open();
        book->survey = survey_open(&book->fields, settle_count(book));
    }
    carry_begin(&run.judging);
    call_begin_all(&run.judging);
    judge_all(&run, only_stage, reached);
    if (!call_end_all(&run.judging)) {
        start_again(&run, book);
        call_begin_all(&run.judging);
        judge_all(&run, only_stage, reached);
        call_end_all(&run.judging);
    }
    carry_end(&run.judging);
    survey_let_go(book->survey);
    expect_findings(book, result->finding_count);
    if (only_stage >= 0)
        keep_unfinished(result, (enum stage)only_stage);
    count_findings(result, reached);
    result->reached = reached;
    result->caution = "This is a pre-check, not a permit or an inspection. Codes are amended "
                      "locally and figures may be out of date: confirm every item with the "
                      "local building department before relying on it.";
    return result->arena.failed ? -1 : 0;
}
