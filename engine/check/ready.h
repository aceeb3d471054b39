/* ready.h - a job made ready to be judged: overrides written in, its law found,
 * everything wrong with it said. Internal to the check room. */
#ifndef EAVEMARK_CHECK_READY_H
#define EAVEMARK_CHECK_READY_H

#include "base/problem.h"
#include "check/check.h"
#include "check/law.h"
#include "job/stage.h"
#include "judge/finding.h"

#include <cjson/cJSON.h>

struct ready {
    const struct law *law; /* NULL: problems say why not */
    int stage;             /* asked for, or -1 */
    enum stage asked, own; /* the stage the work has come to: as asked, as the job says */
};

/* Changes the job's tree: overrides are written into it, and the roof that its
 * footprint describes (job/lay_out.h). */
struct ready ready_make(struct laws *laws, cJSON *job, const struct overrides *overrides,
                        const char *file, struct problems *problems);

/* Fills what stands at the head of every report; stage: a stage, or -1. */
void ready_heading(struct result *result, const cJSON *job, const struct law *law, int stage);

#endif
