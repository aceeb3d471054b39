/* run.c - see run.h. */
#include "judge/run.h"

#include "judge/recall.h"
#include "judge/verdict.h"

#include <string.h>

struct finding *run_blank_finding(struct run *run)
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

struct finding *run_finding(struct run *run)
{
    struct finding *finding = run_blank_finding(run);
    if (finding == NULL)
        return NULL;
    finding->rule = run->rule->id;
    finding->title = run->rule->title;
    finding->stage = run->rule->stage;
    return finding;
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
    if (recall_call(&run->judging, call, &stop))
        return stop;
    stop = call_enter(&run->judging, function, call);
    recall_keep_call(&run->judging, call, stop);
    return stop;
}
