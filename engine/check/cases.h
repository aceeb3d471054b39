/* cases.h - running the rule cases that stand beside rules and profiles. */
#ifndef EAVEMARK_CHECK_CASES_H
#define EAVEMARK_CHECK_CASES_H

#include "base/problem.h"
#include "base/text.h"
#include "check/law.h"

struct tally {
    size_t held, failed;
    size_t rules; /* rules that some case judged */
};

/* Runs rules/cases/TOPIC.lua (all of them, and every NAME.cases.lua under
 * jurisdictions/, when topic is NULL). A line per case that went wrong is
 * added to out, and one for each rule no case shows met, not met, or lacking
 * a fact. Files that do not run are problems. Returns 0, or -1 when anything
 * did not hold. */
int cases_run(struct laws *laws, const char *topic, struct tally *tally, struct text *out,
              struct problems *problems);

#endif
