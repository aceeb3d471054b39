/* judge_about.h - the lines about the house, for whoever stands before it. Internal to the
 * judge room. */
#ifndef EAVEMARK_JUDGE_JUDGE_ABOUT_H
#define EAVEMARK_JUDGE_JUDGE_ABOUT_H

#include "judge/run.h"

/* A line of which a fact is missing is left out. */
void judge_abouts(struct run *run, enum stage stage);

#endif
