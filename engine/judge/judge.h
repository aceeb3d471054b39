/* judge.h - running the rules of a rulebook over a job. */
#ifndef EAVEMARK_JUDGE_JUDGE_H
#define EAVEMARK_JUDGE_JUDGE_H

#include "base/problem.h"
#include "judge/finding.h"
#include "judge/rulebook.h"

#include <cjson/cJSON.h>

/* What whoever tries the rules wants of a run; what is not wanted is NULL. */
struct probe {
    const char *only_rule; /* judge this rule alone, and no cautions */
    bool demands;          /* an open finding says what is demanded, where its rule is a row
                              that only holds against it the fact that is lacking */
    bool *asked;           /* one per figure of the profile: set when a rule asks for it */
    bool *decides;         /* the same, but not when only its mend does */
    bool *facts;           /* one per field (field.number): set when it is read */
};

/* Begins the steps and processor time that all of one check has: judge_impossible, judge
 * and takeoff_reckon share them, as often as they are called until the next beginning. From
 * judge_impossible to the judge that follows it the job stays as it is: it is gone over once
 * for both. */
void judge_begin(struct rulebook *book);

/* Adds a problem for every combination of facts that the catalogue calls
 * impossible, and for each that it asks back and the job does not call meant
 * (/as_meant). A check that lacks a fact is silent; one that errs is a problem
 * of PROBLEM_RULES. */
void judge_impossible(struct rulebook *book, const cJSON *job, const char *file,
                      struct problems *problems);

/* Judges a valid job by every rule; or with only_stage (not -1) by those of that
 * stage and before, of which what is met of earlier stages is left out. reached is
 * the stage the work has come to: rules of that stage and before go by what
 * was measured. Fills result's findings, counts, safety cautions and closing
 * caution, all in result->arena. probe: NULL in a check. A rule that errs is a finding of its own
 * (broken) and does not disturb the others. Returns 0, or -1 when out of
 * memory. */
int judge(struct rulebook *book, const cJSON *job, int only_stage, enum stage reached,
          const struct probe *probe, struct result *result);

#endif
