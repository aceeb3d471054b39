/* run.h - one job being judged, and the findings that come of it. Internal to the judge
 * room. */
#ifndef EAVEMARK_JUDGE_RUN_H
#define EAVEMARK_JUDGE_RUN_H

#include "judge/judging.h"
#include "judge/walk.h"

/* The findings live in the result's arena and may move as they grow. */
struct run {
    struct judging judging;
    struct result *result;
    const struct rule *rule;
    size_t rule_number; /* by id */
    const struct bearing *bearing;
    int only_stage; /* findings of others that are met or do not apply are left out; or -1 */
    size_t capacity, left_out_capacity;
};

/* A new finding: to be filled whole; blank; or of the rule being judged, or so but for what
 * nobody looks at (finding_blank_brief). NULL when out of memory. */
struct finding *run_room_for_finding(struct run *run);
struct finding *run_blank_finding(struct run *run);
struct finding *run_finding(struct run *run);
struct finding *run_brief_finding(struct run *run);

/* What else of a rulebook may err while a job is judged. */
struct part {
    const char *kind; /* "caution" */
    const char *name, *title, *file;
    int line;
    enum stage stage;
};

/* Of what does not apply no more may be wanted than how many. */
static inline bool run_only_counts(const struct run *run, enum outcome outcome)
{
    return outcome == OUTCOME_NOT_APPLICABLE && run->result->wanted >= WANTED_APPLYING;
}

/* The rule being judged does not apply to so many things, which are counted. */
void run_count(struct run *run, size_t count);

/* The last finding added, of the rule being judged, is all there is to be of it: one that is
 * only counted is taken away. False when it was. */
bool run_keeps(struct run *run, const struct finding *finding);

/* What is said of a rule or part that stopped: one that others left nothing did not err. */
const char *run_erred(struct run *run, const char *kind);

/* A finding of its own, so that nobody takes the report for whole. */
void run_part_broken(struct run *run, const struct part *part, const char *message);

/* The rules before this one took all the time, or said all there is room for. */
bool run_spent(const struct judging *judging);

/* Enters a function of the house as a whole, or knows from the jobs before what it says. */
enum sandbox_stop run_enter_or_recall(struct run *run, lua_CFunction function, struct call *call);

#endif
