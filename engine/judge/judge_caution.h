/* judge_caution.h - the safety cautions that a stage brings. Internal to the judge room. */
#ifndef EAVEMARK_JUDGE_JUDGE_CAUTION_H
#define EAVEMARK_JUDGE_JUDGE_CAUTION_H

#include "judge/run.h"

void judge_cautions(struct run *run, enum stage stage);

#endif
