#include "check/check.h"

#include "law/prepare.h"
#include "judge/judge.h"

void check_job(struct laws *laws, cJSON *job, const struct overrides *overrides, const char *file,
               struct checked *out)
{
    check_job_probed(laws, job, overrides, file, NULL, out);
}

void check_job_probed(struct laws *laws, cJSON *job, const struct overrides *overrides,
                      const char *file, const struct prober *prober, struct checked *out)
{
    const struct prepared ready = prepare_job(laws, job, overrides, file, &out->problems);
    if (ready.law == NULL)
        return;
    prepare_heading(&out->result, job, &ready, ready.stage);
    /* With --stage, the job is looked at as if that stage had come. */
    const enum stage reached = ready.stage >= 0 ? ready.asked : ready.own;
    const struct probe *probe = prober == NULL ? NULL : prober->probe_of(prober->data, ready.law);
    out->fields = &ready.law->book->fields;
    /* Only memory makes it fail: a rule that errs is a finding. */
    if (judge(ready.law->book, job, ready.stage, reached, probe, &out->result) != 0)
        problem_out_of_memory(&out->problems);
    else
        out->judged = true;
}

void checked_free(struct checked *checked)
{
    problems_free(&checked->problems);
    result_free(&checked->result);
}

/* All stages: what has been looked at by now does not change what is bought. */
void check_takeoff(struct laws *laws, cJSON *job, const struct overrides *overrides,
                   const char *file, struct checked_takeoff *out)
{
    const struct prepared ready = prepare_job(laws, job, overrides, file, &out->problems);
    if (ready.law == NULL)
        return;
    prepare_heading(&out->takeoff.head, job, &ready, -1);
    if (takeoff_reckon(ready.law->book, job, &out->takeoff) != 0)
        problem_out_of_memory(&out->problems);
    else
        out->reckoned = true;
}

void checked_takeoff_free(struct checked_takeoff *checked)
{
    problems_free(&checked->problems);
    takeoff_free(&checked->takeoff);
}
