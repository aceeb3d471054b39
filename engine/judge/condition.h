/* condition.h - of whom a row speaks: conditions, read and checked when the file is
 * loaded (declare_condition_lua.c), asked of one thing without entering Lua, but for
 * those that are functions. Internal to the judge room.
 */
#ifndef EAVEMARK_JUDGE_CONDITION_H
#define EAVEMARK_JUDGE_CONDITION_H

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
    const struct figure_slot *figure;
    const char *const *words;
    size_t word_count;
    bool wants_no;                 /* WHEN_IS of a yes-or-no fact: it must be no */
    const struct condition *parts; /* one after another */
    size_t part_count;
    int function;          /* registry reference */
    const char *otherwise; /* why the rule does not apply, or NULL */
};

enum holds { HOLDS, HOLDS_NOT, HOLDS_UNKNOWN, HOLDS_STOPPED };

/* What is to be said where it does not hold. */
struct condition_told {
    const char *reason;     /* of the innermost that did not hold, or NULL */
    enum sandbox_stop stop; /* HOLDS_STOPPED: what ended a condition that is a function */
    bool lacks_figure;      /* HOLDS_STOPPED: it names a figure that this place does not have */
};

/* Asks it of what the call judges; facts and figures read on the way are recorded.
 * HOLDS_UNKNOWN: a fact is lacking, which the record names. */
enum holds condition_holds(const struct call *call, const struct condition *condition,
                           struct condition_told *told);

/* Calls visit for a condition and every one in it, outer ones first. */
void condition_each(const struct condition *when,
                    void (*visit)(void *data, const struct condition *condition), void *data);

#endif
