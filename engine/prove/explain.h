/* explain.h - what there is to say about a rule or a figure, gathered.
 *
 * Which figures and fields a rule reads is told by its row and by what its functions
 * declare (judge/reads.h): nothing is judged to find out.
 */
#ifndef EAVEMARK_PROVE_EXPLAIN_H
#define EAVEMARK_PROVE_EXPLAIN_H

#include "base/strings.h"
#include "check/check.h"
#include "profile/places.h"

struct explain_request {
    const char *name;         /* of a rule or a figure, or a word to look for; NULL: all rules */
    const char *jurisdiction; /* or NULL */
    long date;                /* or 0: the newest edition of each place */
    cJSON *job;               /* or NULL; is changed as by check_job */
    const char *job_file;
    struct overrides overrides;
};

/* A rule as listed: of the common rules, or of one place's own. */
struct listed_rule {
    const char *id, *title;
    const char *place; /* title of the place whose own rule it is, or NULL */
    bool by_fact;      /* the word looked for stands only in the facts that it reads */
};

struct explanation {
    struct arena arena;
    struct problems problems;
    struct places places;           /* every place that stands */
    const struct profile **columns; /* the model editions, then the place asked for */
    size_t column_count;
    const struct law *law;       /* the one in which the rule was found */
    const struct rule *rule;     /* NULL: a figure is explained, or the rules listed */
    const char *only_in;         /* title of the place, when the one asked for lacks the rule */
    struct strings figures;      /* names, by name */
    const struct field **fields; /* that the rule reads, by path */
    size_t field_count;
    struct listed_rule *rules; /* when all are listed, or those with a word */
    size_t rule_count;
    struct listed_rule *askers; /* of the one figure explained: rules that ask for it */
    size_t asker_count;
    const char *word;       /* the word looked for: figures are listed too; or NULL */
    struct checked checked; /* with a job: how it was judged */
    cJSON *job;             /* not owned */
};

/* Fills out; its problems say why there is nothing to show. The explanation
 * is valid as long as laws is. */
void explain(struct laws *laws, const struct explain_request *request, struct explanation *out);

/* The names of rules, figures and topics of every place in its newest edition;
 * ids of places; parts of a job. Sorted. */
enum names_kind { NAMES_RULES, NAMES_FIGURES, NAMES_TOPICS, NAMES_PLACES, NAMES_PARTS };
void explain_names(struct laws *laws, enum names_kind kind, struct strings *names,
                   struct arena *arena, struct problems *problems);

/* The figure as the first that has it says it, a column or else a place: sense and unit are the
 * same wherever it stands. NULL: nobody has it. */
const struct figure *explain_figure(const struct explanation *x, const char *name);

void explain_free(struct explanation *explanation);

#endif
