/* cases.h - running the rule cases that stand beside rules and profiles. */
#ifndef EAVEMARK_PROVE_CASES_H
#define EAVEMARK_PROVE_CASES_H

#include "base/problem.h"
#include "base/strings.h"
#include "base/text.h"
#include "check/check.h"
#include "law/law.h"

/* Laws kept loaded at a time (laws_rest): a place's stretches and those it follows go in
 * turn. */
enum { PROOF_LAWS_AWAKE = 8 };

/* Which cases; all of them when neither a topic nor a place is named. */
struct cases_wanted {
    const char *topic;               /* rules/cases/TOPIC.lua, and what places have of it */
    const char *rule;                /* of these only the cases of one rule */
    const char *place;               /* jurisdictions/PLACE.cases.lua, if there is one, and what
                                        other files have under it */
    const struct strings *own_rules; /* with a place: the rule files it has to show cases for */
    /* Cases of one law are run together: which place's come first, the lesser (or NULL: by
     * name). */
    size_t (*rank)(void *data, const char *under);
    /* Told of the place of the cases that are run next (or NULL). */
    void (*comes_to)(void *data, const char *under);
    /* Told of every case run, and every rule that lacks one (or NULL): the file
     * it stands in, and the line about it, "" if there is nothing to say. */
    void (*note)(void *data, const char *file, bool held, const char *line);
    /* Told of every finding of a case whose rule broke (or NULL). */
    void (*broke)(void *data, const struct finding *finding);
    /* Told of every case that was judged, what its probe noted, and under which law (or NULL). */
    void (*judged)(void *data, const struct law *law, const char *rule, const struct probe *probe);
    void *data;
    const struct prober *prober; /* of each run, or NULL */
};

struct tally {
    size_t held, failed;
    size_t rules; /* rules that some case judged */
};

/* Runs the cases wanted. A line per case that went wrong is added to out, and
 * one for each rule no case shows met, not met, or lacking a fact. Files that
 * do not run are problems, and keep none but their own cases from being run; which
 * rules lack a case is then not known, and not said. Returns 0, or -1 when anything did
 * not hold. */
int cases_run(struct laws *laws, const struct cases_wanted *wanted, struct tally *tally,
              struct text *out, struct problems *problems);

#endif
