/* quantities.h - the quantities of a rulebook, reckoned for one job.
 *
 * A struct takeoff owns everything in it through head.arena; takeoff_free
 * releases it.
 */
#ifndef EAVEMARK_JUDGE_QUANTITIES_H
#define EAVEMARK_JUDGE_QUANTITIES_H

#include "judge/finding.h"

#include <cjson/cJSON.h>

/* What a quantity came to. */
struct amount {
    double exact;     /* without waste, not rounded */
    const char *unit; /* as units of figures: "sqft" */
    bool has_waste;
    double waste_percent;
    bool bought;         /* in whole units: */
    double each;         /* what one holds, in `unit` */
    const char *buy;     /* what they are called: "rolls" */
    const char *one;     /* and one of them: "roll" */
    double count;        /* how many */
    const char *item;    /* what it is at the counter, or NULL: the title says it */
    const char *goes_on; /* planes or edges it is for, or NULL */
    const char *note;    /* a sentence of the quantity's own, or NULL */
};

/* One line of a takeoff. The finding is used for its name (rule), title,
 * where, says, work, cites, amended and reads; its outcome is pass (given), open, not
 * applicable or broken. */
struct quantity_line {
    struct finding finding;
    const struct amount *amount; /* set when given, else NULL */
    const char *heading;         /* on the order; NULL for what no supplier sells */
    const char *const *serves;   /* rules whose demands it meets, ended by NULL; may be empty */
    const char *by_habit;        /* why it is bought where no rule asks for it, or NULL */
};

struct rulebook; /* judge/rulebook.h */

struct takeoff {
    struct result head;          /* job, place, date, fingerprint, caution; counts by outcome */
    struct quantity_line *lines; /* in the order the quantities are declared */
    size_t line_count, line_capacity;
};

/* How many units hold exact, in place of the amount's own, with its waste. */
double takeoff_count(const struct amount *amount, double exact);

/* "given", "open", "not_applicable" or "broken". */
const char *takeoff_word(enum outcome outcome);

/* Reckons every quantity of the rulebook for a valid job. One that errs is a
 * line of its own (broken). Returns 0, or -1 when out of memory. */
int takeoff_reckon(struct rulebook *book, const cJSON *job, struct takeoff *out);

void takeoff_free(struct takeoff *takeoff);

#endif
