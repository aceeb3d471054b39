/* row.h - a rule that is one comparison: of whom it speaks, which fact it looks at,
 * which figure that must meet. Read and checked when it is loaded (declare_row_lua.c),
 * judged without entering Lua, but for conditions that are functions. Internal to
 * the judge room; whoever wants to know what a rule reads walks through it.
 */
#ifndef EAVEMARK_JUDGE_ROW_H
#define EAVEMARK_JUDGE_ROW_H

#include "judge/condition.h"

struct row {
    struct condition when; /* of the kind WHEN_ALL */
    const struct fact *fact;
    const struct fact *measured;        /* what counts instead once the stage has come; or NULL */
    const struct figure_slot *meets[2]; /* one, or two bounds; none for a duty */
    size_t meets_count;
    bool up_to; /* the one figure is of the sense `over`: that much is still free */
    const struct figure_slot *at_counts; /* whether exactly that much is free no longer; or NULL */
    const char *by_prefix;               /* or one for each word of a fact: "slope.least." */
    const struct fact *by;
    int found;              /* function that reckons what is looked at, in place of a
                                       fact; or RULE_NO_FUNCTION */
    const char *found_unit; /* NULL: it gives a word, or yes or no */
    int which;              /* function that names one of these; or RULE_NO_FUNCTION */
    int limit;              /* or one that reckons what is met from them */
    const struct figure_slot *const *among;
    size_t among_count;
    const struct fact *limit_fact; /* or another fact of the job is met */
    enum sense limit_sense;        /* of both */
    const char *limit_unit;
    const struct figure_slot *share, *over; /* of measured spacings: how many may stray, how far */
    double factor;            /* fact to figure: 12 for feet held against inches, or 1 */
    const char *shown;        /* a duty: what must be shown; the fact says whether. It
                                          may hold {found} and {limit}: of what was not met */
    bool wants_no;            /* the duty is met when the fact is no */
    const char *const *wants; /* or when it is one of these words */
    size_t wants_count;
    const char *say, *warn;          /* a sentence added; or NULL */
    int say_function, warn_function; /* that gives it, or nil */
    const char *open;                /* among instead: cannot be told, in these words */
    const struct row *choose; /* the first of which `when` holds is compared in place of all this */
    size_t choose_count;
    const struct row *also; /* compared as well, each where its own `when` holds */
    size_t also_count;
    const struct row *instead; /* not met, these do: the first that is met, where `when` holds */
    size_t instead_count;
    const struct row_open *opens; /* what leaves it open before anything is compared */
    size_t open_count;
};

/* The finding is open where this holds. */
struct row_open {
    struct condition when;
    const char *says;  /* in these words */
    int says_function; /* or in those of function(job, figure, item ...), where it gives any */
    bool asks_place;   /* it is for the building department to say */
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

/* What a row says of a figure that stands only with places that turn it on, where this one
 * has been turned on without it. */
#define ROW_LACKS_FIGURE "names a figure that this place does not have"

/* Is it a duty: what must be shown, which no figure measures? */
bool row_is_duty(const struct row *row);

/* Calls visit for the row and for each that it compares as well, instead, or by choice. */
void row_each_part(const struct row *row, void (*visit)(void *data, const struct row *part),
                   void *data);

#endif
