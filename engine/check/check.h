/* check.h - one job through the whole flow: job, profile, rules, findings. */
#ifndef EAVEMARK_CHECK_CHECK_H
#define EAVEMARK_CHECK_CHECK_H

#include "base/problem.h"
#include "law/prepare.h"
#include "judge/finding.h"
#include "judge/judge.h"
#include "judge/quantities.h"

#include <cjson/cJSON.h>

/* Either findings, or problems that say why there are none. */
struct checked {
    struct problems problems;
    struct result result;
    bool judged;                 /* result holds findings */
    const struct fields *fields; /* it was judged by: the law's */
};

/* Checks a parsed job. The tree is changed: overrides are written into it. */
void check_job(struct laws *laws, cJSON *job, const struct overrides *overrides, const char *file,
               struct checked *out);

/* The same for whoever tries the rules. probe_of gives what is wanted of the run by the
 * law that the job turns out to have; it may give NULL. */
struct prober {
    const struct probe *(*probe_of)(void *data, const struct law *law);
    void *data;
};
void check_job_probed(struct laws *laws, cJSON *job, const struct overrides *overrides,
                      const char *file, const struct prober *prober, struct checked *out);

void checked_free(struct checked *checked);

/* Either a takeoff, or problems that say why there is none. */
struct checked_takeoff {
    struct problems problems;
    struct takeoff takeoff;
    bool reckoned; /* takeoff holds lines */
};

/* The quantities of a parsed job; the tree is changed as by check_job. The
 * stage of the overrides is of no account. */
void check_takeoff(struct laws *laws, cJSON *job, const struct overrides *overrides,
                   const char *file, struct checked_takeoff *out);

void checked_takeoff_free(struct checked_takeoff *checked);

#endif
