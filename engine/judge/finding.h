/* finding.h - what a check found: data only, no behaviour.
 *
 * A struct result owns everything in it through its arena, but for what belongs to the
 * rulebook and what was written of findings for jobs before, which it borrows; result_free
 * releases it. Texts are UTF-8 and may hold anything a job or rule said:
 * reports escape them.
 */
#ifndef EAVEMARK_JUDGE_FINDING_H
#define EAVEMARK_JUDGE_FINDING_H

#include "base/arena.h"
#include "base/value.h"
#include "job/origin.h"
#include "job/stage.h"

#include <stdbool.h>
#include <stddef.h>

enum outcome {
    OUTCOME_PASS,           /* shown to meet the figure */
    OUTCOME_WARN,           /* met, but unconfirmed or disputed; or practice not met */
    OUTCOME_FAIL,           /* shown not to meet it */
    OUTCOME_OPEN,           /* the job lacks a fact */
    OUTCOME_NOT_APPLICABLE, /* the rule has nothing to say about this job */
    OUTCOME_BROKEN,         /* the rule itself erred, or was not run; or a caution did */
    OUTCOME_COUNT
};

/* "pass", "not_applicable" ... as in the JSON contract. */
const char *outcome_word(enum outcome outcome);

/* Is it met, whatever the outcome makes of how sure the figure is? */
enum met { MET_UNKNOWN, MET_YES, MET_NO };

/* Why an outcome is no plain pass or fail: flags. */
enum why {
    WHY_PRACTICE = 1,    /* a figure is common practice, not code */
    WHY_UNCONFIRMED = 2, /* a figure was recalled, or read in a sister text only */
    WHY_DISPUTED = 4,    /* it is met on one reading of the sources, not on another */
    WHY_ADVICE = 8,      /* what the rule says need not be done, or is risky though met */
    WHY_PLACE = 16,      /* open: what the place asks was never read */
};
enum { WHY_COUNT = 5 };

/* "practice" ... of the flag 1 << index. */
const char *finding_why_word(int index);

/* Who can answer what is open. */
enum ask {
    ASK_NOBODY, /* it is not open */
    ASK_JOB,    /* whoever wrote the job: a fact is missing */
    ASK_LATER,  /* the same, but it can be known at a later stage only */
    ASK_PLACE,  /* the building department: what it asks was never read */
};
const char *ask_word(enum ask ask);

struct figure;
struct drawn;
struct carried;

/* Written forms of a finding that is met again in job after job: a report writes them
 * once (report/json_finding.c), into memory of the law's. */
enum finding_part { PART_WHOLE, PART_HEAD, PART_OUTCOME, PART_GROUNDS, FINDING_PARTS };
struct kept_json {
    struct arena *arena;
    size_t *used; /* of its bytes */
    size_t most;
    bool said_anew; /* what is said of it names places of the job: it is not kept */
    bool complete;  /* all the parts are there that a report writes of it */
    const char *parts[FINDING_PARTS]; /* NULL: not written yet */
    unsigned lengths[FINDING_PARTS];
};

/* A figure that made a demanded value; all are the profile's. */
struct maker {
    const char *figure; /* "layers.most" */
    const struct cite *cite;
    const struct value *value; /* what it says, and how it binds */
    enum sense sense;
};

/* The same of what many findings tell: a fact that was read, at a place of the job that others
 * of a batch have too, or a place of the code. */
struct kept_piece {
    struct arena *arena; /* of the law's */
    char *bytes;         /* NULL: not written yet */
    size_t length, room;
    enum origin from; /* of a fact: as which it was written */
};

/* A fact that was read: its JSON pointer, and where the job has it from. */
struct read {
    const char *at;
    enum origin from;
    enum status known;       /* of the place's, and of one that a figure told: how well */
    const char *figure;      /* the figure of the law that told it, by name; or NULL */
    const char *denied;      /* the place states it otherwise: both in words; or NULL */
    struct kept_piece *kept; /* or NULL */
};

struct finding {
    const char *rule;  /* "layers.total" */
    const char *title; /* "Layers of covering, old and new" */
    enum stage stage;
    enum outcome outcome;
    enum met met;
    unsigned why;             /* flags of enum why */
    enum ask ask;             /* of an open finding */
    bool measured;            /* it rests on a fact that was measured or seen on the roof */
    bool written;             /* the parts of kept are all there is: see below */
    const char *where;        /* "porch slope", or NULL: the whole house */
    const char *item;         /* its JSON pointer, or NULL */
    const char *says;         /* all of it in words */
    const char *lacks;        /* open for want of this fact: its JSON pointer, or NULL */
    const struct read *reads; /* in the order first read */
    size_t read_count;
    struct kept_json *kept; /* of one that is recalled; or NULL */
    const char *json;       /* carried over: written as JSON already */
    size_t json_length;
    struct carried *carried; /* where it is to be kept when it is written (carry.h); or NULL */
    size_t carried_round;
    /* Of one that is written already only what stands before this is set; of one that is
     * carried over, or of which only the outcome is wanted, of that only rule, title, stage,
     * outcome, met, why and measured. */
    const char *note;     /* the part of says beyond required and found, or NULL */
    const char *remark;   /* of note, what the rule itself adds, or NULL */
    const char *disagree; /* how the sources of a figure disagree, or NULL */
    const char *unsure;   /* why the book that it fails by may not bind here, or NULL */
    const char *cause;    /* rules of one cause are told together in one place; or NULL */
    const char *wanting;  /* not met: the fact found wanting, by pointer; NULL: not told apart */
    const char *duty;     /* what a duty asks for, in the rule's words, or NULL */
    const char *file;     /* broken: what erred is written there */
    int line;
    bool asked;            /* a question of the result stands for it */
    bool compared;         /* required and found are set */
    struct value required; /* of an open finding only where demands are wanted (judge.h) and
                              it can be told; else VALUE_NONE */
    enum sense sense;      /* at_least, at_most, one_of, none_of, all_of, equals */
    struct value also;     /* the other bound, where there are two; else VALUE_NONE */
    enum sense also_sense;
    struct value rival; /* disputed: what another source demands; else VALUE_NONE */
    enum sense rival_sense;
    struct value found; /* kind VALUE_NONE when there is none */
    const struct cite *cites;
    size_t cite_count;
    struct kept_piece *const *kept_cites; /* of each, or NULL; or NULL at all */
    const struct figure *const *figures;  /* asked for, in that order; the profile's (profile.h) */
    size_t figure_count;
    const struct maker *makers; /* those of them that made the demanded value */
    size_t maker_count;
    const struct amended *amended; /* or NULL */
    const char *const *work;       /* the arithmetic, a line each */
    size_t work_count;
    const char *mend;    /* or NULL */
    const char *caution; /* or NULL */
};

/* Makes it blank as far as is set of one that is written already. */
void finding_blank_brief(struct finding *finding);

/* A safety caution that a stage brings. */
struct safety {
    const char *name;  /* "falls" */
    const char *brief; /* in one line; NULL: says is no longer */
    const char *says;
    struct cite cite;
};

/* A question that the job leaves open. One fact in several places of the job is asked
 * once. */
struct asked {
    const char *ask;          /* in words */
    const char *const *where; /* the items it is asked of: "main front"; none: of the house */
    size_t where_count;
    const char *answer; /* where its answer is found: "desk" ... (job/fields.h) */
    size_t decides;     /* how many findings wait for it */
};

/* A line about the house, for whoever stands before it. */
struct about_line {
    const char *label, *says;
};

/* What will be asked of a result: the rest is not made. Each is less than the one before. */
enum wanted {
    WANTED_WHOLE,
    WANTED_FINDINGS, /* no drawings */
    WANTED_APPLYING, /* of findings that do not apply only how many, by topic */
    WANTED_OUTCOMES, /* and of the others which rule, the outcome, and what counts go by */
};

/* How many findings of a topic do not apply; rule: the id of one of them. */
struct left_out {
    const char *rule;
    unsigned topic; /* the rulebook's number for it */
    size_t count;
};

struct result {
    struct arena arena;
    enum wanted wanted;
    const char *job; /* the job's own title */
    const struct about_line *about;
    size_t about_count;
    char date[16];
    const char *jurisdiction; /* id */
    const char *jurisdiction_title;
    bool invented;
    const char *const *chain; /* ids, nearest first */
    size_t chain_count;
    const char *edition;
    const char *own_code;      /* whose sections are the place's own */
    const char *as_seen;       /* "as published on ...", or NULL */
    const char *const *doubts; /* why the whole book may not be this place's law */
    size_t doubt_count;
    char fingerprint[65];       /* sha256, lower-case hex */
    const char *shop;           /* what the shop sheet is called, or NULL */
    size_t facts[ORIGIN_COUNT]; /* how many the job has from where */
    size_t unconfirmed_facts; /* those of the place that were recalled, or read in a sister text */
    const char *const *differs; /* where job and place say otherwise, in words */
    size_t differ_count;
    int only_stage;           /* a stage, with what earlier ones left undone; -1: all */
    struct finding *findings; /* by rule id, then by place in the job */
    size_t finding_count;
    struct left_out *left_out; /* WANTED_APPLYING: those that do not apply, in that order */
    size_t left_out_count;
    size_t counts[OUTCOME_COUNT];
    size_t met_unconfirmed;    /* warnings that are met, only the figure is unconfirmed */
    size_t disputed;           /* met on one reading, not on another */
    size_t not_met;            /* fails, and warnings not met */
    size_t unmeasured_passes;  /* of a visit that has come, met by what the job says alone */
    enum stage reached;        /* the stage the work has come to */
    const struct asked *asked; /* what can be answered now, in the trade's order */
    size_t asked_count;
    const struct safety *safety;
    size_t safety_count;
    const char *caution;          /* the closing one */
    const struct drawn *drawings; /* what they are made of (drawn.h) */
    size_t *borrowers;            /* how many results, this one too, borrow what was written of
                                     findings from whom this one does; or NULL */
};

void result_free(struct result *result);

#endif
