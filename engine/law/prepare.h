/* prepare.h - a job made ready to be judged: overrides written in, its law found,
 * everything wrong with it said. */
#ifndef EAVEMARK_LAW_PREPARE_H
#define EAVEMARK_LAW_PREPARE_H

#include "base/problem.h"
#include "law/law.h"
#include "job/shop.h"
#include "job/stage.h"
#include "judge/finding.h"

#include <cjson/cJSON.h>

/* What the command line says over the job's own words; NULL where it is
 * silent. */
struct overrides {
    const char *jurisdiction, *date, *stage;
    struct shop_source shop;
    bool alone; /* the job says all there is: its place's facts are left aside */
};

enum { SHOP_NAME_BYTES = 100 };

struct prepared {
    const struct law *law;      /* NULL: problems say why not */
    int stage;                  /* asked for, or -1 */
    enum stage asked, own;      /* the stage the work has come to: as asked, as the job says */
    char fingerprint[65];       /* of the law, and of the shop sheet if there is one */
    char shop[SHOP_NAME_BYTES]; /* what that is called, cut; "" without one */
};

/* Fills in what the job itself does not say: the roof that its footprint describes
 * (job/lay_out.h), what its shop sheet says (job/shop.h) and, unless it stands alone, its
 * place (judge/place_fact.h). False where the sheet has
 * something wrong in it: what the job lacks is then no fault of the job's. */
bool prepare_facts(cJSON *job, const struct law *law, const struct shop *shop, bool alone,
                   const char *file, struct problems *problems);

/* Changes the job's tree: overrides are written into it, and facts filled in. */
struct prepared prepare_job(struct laws *laws, cJSON *job, const struct overrides *overrides,
                            const char *file, struct problems *problems);

/* Fills what stands at the head of every report; stage: a stage, or -1. */
void prepare_heading(struct result *result, const cJSON *job, const struct prepared *ready,
                     int stage);

#endif
