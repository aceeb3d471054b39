/* explain_parts.h - what the files of explain.c share. Internal to them. */
#ifndef EAVEMARK_PROVE_EXPLAIN_PARTS_H
#define EAVEMARK_PROVE_EXPLAIN_PARTS_H

#include "prove/explain.h"

/* What explaining one name needs; all that is found goes into `out`. */
struct explaining {
    struct laws *laws;
    const struct explain_request *request;
    struct explanation *out;
    long date; /* on which out->law binds */
};

/* The law of a place that stands; NULL when its rules do not load: the place is then one of
 * those skipped. explain_let_go: its rules are done with, but for what was copied of them. */
const struct law *explain_law_of(struct laws *laws, struct places *places, size_t index);
void explain_let_go(struct laws *laws);

/* Only places with rule files of their own can have other rules than the rest. */
bool explain_may_add_rules(const struct places *places, size_t index);

/* Adds the name to out->figures, data being the explanation; each once. */
void explain_note_figure(void *data, const char *name);
void explain_sort(struct strings *texts);

/* What out->rule can read: its row's names, and what its functions declare. */
void explain_reads(struct explanation *out);

/* Is the name asked for that of a topic? */
bool explain_is_topic(struct explaining *e);

/* It names neither a rule nor a figure: a problem, with what comes nearest. */
void explain_say_unknown(struct explaining *e);

/* Lists the rules of the law asked for, and without a place named those of all places. */
void explain_list(struct explaining *e, const struct law *asked);

/* Lists the rules and figures in whose words the name asked for stands. False when there are
 * none: it may be a name misspelled. */
bool explain_list_word(struct explaining *e, const struct law *asked);

/* Sets out->askers: the rules of the law that may ask for the figure. */
void explain_list_askers(struct explanation *out, const struct law *law, const char *name);

#endif
