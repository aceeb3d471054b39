/* row.h - a rule that is one comparison: of whom it speaks, which fact it looks at,
 * which figure that must meet. Read and checked when it is loaded (row_lua.c),
 * judged without entering Lua, but for conditions that are functions. Internal to
 * the judge room; whoever wants to know what a rule reads walks through it.
 */
#ifndef EAVEMARK_JUDGE_ROW_H
#define EAVEMARK_JUDGE_ROW_H

#include "judge/fact.h"
#include "judge/walk.h"

enum condition_kind {
    WHEN_ON,        /* a yes-or-no figure is yes */
    WHEN_OFF,       /* it is no */
    WHEN_ASKS,      /* a set figure holds anything at all */
    WHEN_IS,        /* the fact is one of the words, or yes (no: words_no) */
    WHEN_MEANT,     /* the fact is on the side, or among the words, that the figure means */
    WHEN_SAID,      /* the job says the fact */
    WHEN_SOME,      /* an item of the list has all the parts */
    WHEN_ALL,       /* all parts hold */
    WHEN_EITHER,    /* one part holds */
    WHEN_NO,        /* the one part does not hold */
    WHEN_INSPECTED, /* the stage of the rule has come */
    WHEN_FUNCTION,  /* function(job, figure, item ...) says so */
};

struct condition {
    enum condition_kind kind;
    const struct fact *fact;
    const struct figure *figure;
    const char *const *words;
    size_t word_count;
    bool wants_no;                 /* WHEN_IS of a yes-or-no fact: it must be no */
    const struct condition *parts; /* one after another */
    size_t part_count;
    int function;          /* registry reference */
    const char *otherwise; /* why the rule does not apply, or NULL */
};

struct row {
    struct condition when; /* of the kind WHEN_ALL */
    const struct fact *fact;
    const struct fact *measured;   /* what counts instead once the stage has come; or NULL */
    const struct figure *meets[2]; /* one, or two bounds; none for a duty */
    size_t meets_count;
    const char *by_prefix; /* or one for each word of a fact: "slope.least." */
    const struct fact *by;
    int found; /* function that reckons what is looked at, in place of a
                                       fact; or RULE_NO_FUNCTION */
    const char *found_unit;
    int which; /* function that names one of these; or RULE_NO_FUNCTION */
    const struct figure *const *among;
    size_t among_count;
    const struct figure *share, *over; /* of measured spacings: how many may stray, how far */
    double factor;                     /* fact to figure: 12 for feet held against inches, or 1 */
    const char *shown;                 /* a duty: what must be shown; the fact says whether */
    bool wants_no;                     /* the duty is met when the fact is no */
    const char *say;                   /* a sentence added; or NULL */
    const struct row *also;            /* compared as well, each where its own `when` holds */
    size_t also_count;
};

/* What came of a row for one thing. */
enum row_end { ROW_JUDGED, ROW_OPEN, ROW_NOT_APPLICABLE, ROW_STOPPED };

/* Does the rule speak? ROW_JUDGED when all conditions hold; the rest as of row_judge. */
enum row_end row_applies(struct call *call, const struct condition *when, enum sandbox_stop *stop,
                         const char **why);

/* Judges call->rule's row. ROW_JUDGED sets call->judgement; ROW_NOT_APPLICABLE sets
 * call->reason, which may be NULL; ROW_STOPPED sets *stop to what ended a condition
 * that is a function, or *why to what is wrong with the row for this job. */
enum row_end row_judge(struct call *call, enum sandbox_stop *stop, const char **why);

/* Calls visit for a condition and every one in it, outer ones first. */
void row_each_condition(const struct condition *when,
                        void (*visit)(void *data, const struct condition *condition), void *data);

#endif
