/* run.c - see run.h. */
#include "judge/run.h"

#include "judge/carry.h"
#include "judge/recall.h"
#include "judge/verdict.h"

#include <string.h>

struct finding *run_room_for_finding(struct run *run)
{
    struct result *result = run->result;
    if (result->finding_count == run->capacity) {
        /* Of the first job, more than most houses have: what is not used is never touched. */
        const struct rulebook *book = run->judging.book;
        const size_t before = book->finding_count > 0 ? book->finding_count + 1
                                                      : 4 * book->rule_count;
        const size_t capacity = run->capacity > 0 ? run->capacity * 2 : before > 64 ? before : 64;
        struct finding *findings = arena_room(&result->arena, capacity, sizeof(*findings));
        if (findings == NULL)
            return NULL;
        if (result->finding_count > 0)
            memcpy(findings, result->findings, result->finding_count * sizeof(*findings));
        result->findings = findings;
        run->capacity = capacity;
    }
    return &result->findings[result->finding_count++];
}

struct finding *run_blank_finding(struct run *run)
{
    struct finding *finding = run_room_for_finding(run);
    if (finding != NULL)
        *finding = (struct finding){0};
    return finding;
}

static struct finding *of_rule(const struct run *run, struct finding *finding)
{
    if (finding == NULL)
        return NULL;
    finding->rule = run->bearing->id;
    finding->title = run->bearing->title;
    finding->stage = run->bearing->stage;
    return finding;
}

struct finding *run_finding(struct run *run)
{
    return of_rule(run, run_blank_finding(run));
}

struct finding *run_brief_finding(struct run *run)
{
    struct finding *finding = run_room_for_finding(run);
    if (finding != NULL)
        finding_blank_brief(finding);
    return of_rule(run, finding);
}

static void count_left_out(struct run *run, const struct bearing *rule, size_t count)
{
    struct result *result = run->result;
    struct left_out *last = result->left_out + result->left_out_count;
    if (result->left_out_count > 0 && last[-1].topic == rule->topic) {
        last[-1].count += count;
        return;
    }
    if (result->left_out_count == run->left_out_capacity) {
        const size_t capacity = run->left_out_capacity == 0 ? 32 : 2 * run->left_out_capacity;
        struct left_out *more = arena_array(&result->arena, capacity, sizeof(*more));
        if (more == NULL)
            return;
        if (result->left_out_count > 0)
            memcpy(more, result->left_out, result->left_out_count * sizeof(*more));
        result->left_out = more;
        run->left_out_capacity = capacity;
    }
    result->left_out[result->left_out_count++] = (struct left_out){
        .rule = rule->id, .topic = rule->topic, .count = count};
}

void run_count(struct run *run, size_t count)
{
    const struct bearing *rule = run->bearing;
    if (count == 0 || (run->only_stage >= 0 && run->only_stage != (int)rule->stage))
        return;
    run->result->counts[OUTCOME_NOT_APPLICABLE] += count;
    count_left_out(run, rule, count);
}

bool run_keeps(struct run *run, const struct finding *finding)
{
    if (!run_only_counts(run, finding->outcome))
        return true;
    run->result->finding_count--;
    run_count(run, 1);
    return false;
}

const char *run_erred(struct run *run, const char *kind)
{
    const bool spent = sandbox_spent(run->judging.book->sandbox);
    const char *what = arena_format(run->judging.arena, "The %s %s", kind,
                                    spent ? "was not run to its end" : "itself erred");
    return what == NULL ? kind : what;
}

void run_part_broken(struct run *run, const struct part *part, const char *message)
{
    struct finding *finding = run_blank_finding(run);
    if (finding == NULL)
        return;
    /* "caution.lead": no rule has such a name, so it cannot be taken for one. */
    finding->rule = arena_format(run->judging.arena, "%s.%s", part->kind, part->name);
    finding->title = part->title;
    finding->stage = part->stage;
    if (finding->rule == NULL)
        finding->rule = part->kind;
    run->judging.record = (struct record){0};
    verdict_broken(finding, &run->judging, run_erred(run, part->kind), part->file, part->line,
                   message);
}

bool run_spent(const struct judging *judging)
{
    return sandbox_spent(judging->book->sandbox) || judging->output > OUTPUT_MOST;
}

enum sandbox_stop run_enter_or_recall(struct run *run, lua_CFunction function, struct call *call)
{
    enum sandbox_stop stop;
    run->judging.record = (struct record){0};
    run->judging.output_of_rule = 0;
    if (carry_call(&run->judging, call, 0, &stop))
        return stop;
    if (!recall_call(&run->judging, call, &stop)) {
        stop = call_enter(&run->judging, function, call);
        recall_keep_call(&run->judging, call, stop);
    }
    carry_keep_call(&run->judging, call, stop);
    return stop;
}
