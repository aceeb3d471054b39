/* trial.h - what a change of law does to jobs: each judged under two laws, and what came
 * out otherwise counted.
 *
 * Counts add up: those of parts of the jobs, merged in any order, are those of all of
 * them. Nothing is kept of a job but its name, and of names the first five by their bytes,
 * so that a trial takes no more room for more jobs.
 */
#ifndef EAVEMARK_PROVE_TRIAL_H
#define EAVEMARK_PROVE_TRIAL_H

#include "base/arena.h"
#include "base/problem.h"
#include "base/text.h"
#include "check/check.h"

#include <stdbool.h>
#include <stddef.h>

/* How a finding stands; a warning is told apart by whether it is met. */
enum trial_outcome {
    TRIAL_OUT_PASS,
    TRIAL_OUT_UNCONFIRMED,
    TRIAL_OUT_NOT_MET,
    TRIAL_OUT_FAIL,
    TRIAL_OUT_OPEN,
    TRIAL_OUT_IDLE, /* does not apply, or there is no such rule */
    TRIAL_OUT_BROKEN,
    TRIAL_OUT_COUNT
};

/* "pass", "met_unconfirmed" ... as the JSON has it. */
const char *trial_outcome_word(enum trial_outcome outcome);

enum { TRIAL_NAMED = 5, TRIAL_NAME_BYTES = 160 };

/* The names that come first by their bytes, in that order, each once. */
struct trial_named {
    char names[TRIAL_NAMED][TRIAL_NAME_BYTES];
    size_t count;
};

/* A figure that is not the same under both laws, and how many findings asked for it. */
struct trial_cause {
    const char *figure;
    size_t findings;
};

/* One rule going from one standing to another. */
struct trial_move {
    const char *rule;
    enum trial_outcome from, to;
    size_t jobs, findings;
    struct trial_named named;
    struct trial_cause *causes; /* by name */
    size_t cause_count;
    size_t last_job; /* number of the job last counted */
};

/* A book that jobs were judged by: "example/walk, IRC 2021, from sha256 ...". */
struct trial_book {
    const char *place, *edition, *fingerprint;
};

struct trial_side {
    const char *law; /* as it was asked for: "example/walk@2026-01-01" */
    struct trial_book *books;
    size_t book_count;
};

struct trial {
    struct arena arena;
    struct trial_side sides[2];
    size_t jobs, not_judged;         /* judged under both laws; refused under either ... */
    size_t broken;                   /* ... for what a law's own files say */
    size_t changed;                  /* in any finding */
    size_t newly_fail, fail_no_more; /* had no fail and have one; and the other way */
    struct trial_named changed_jobs, newly_failing, failing_no_more, refused;
    struct trial_move *moves; /* by rule, from, to */
    size_t move_count;
};

/* The laws as they are asked for, which all parts of a trial must share. */
void trial_begin(struct trial *trial, const char *before, const char *after);

/* One side of one job, judged: and its law. */
struct trial_judged {
    const struct checked *checked;
    const struct law *law;
};

/* Counts a job, whose name is cut at TRIAL_NAME_BYTES. Either side may hold problems
 * instead of findings: the job then counts as not judged. */
void trial_count(struct trial *trial, const char *name, const struct trial_judged sides[2]);

/* The same for a job that cannot even be read. */
void trial_refuse(struct trial *trial, const char *name, const char *why);

/* What report_trial_json wrote (report/trial_report.h), added. Problems say what is no part
 * of this trial; nothing is added then. A trial that was not begun takes the laws of its
 * first part. */
#define TRIAL_FORMAT "trial 1"
bool trial_part_merge(struct trial *trial, const char *text, size_t length, const char *name,
                      struct problems *problems);

/* For trial_part.c. */
struct trial_move *trial_move_of(struct trial *trial, const char *rule, enum trial_outcome from,
                                 enum trial_outcome to);
void trial_add_cause(struct trial *trial, struct trial_move *move, const char *figure,
                     size_t findings);
void trial_add_book(struct trial *trial, int side, const char *place, const char *edition,
                    const char *fingerprint);
void trial_add_name(struct trial_named *named, const char *name);

void trial_free(struct trial *trial);

#endif
