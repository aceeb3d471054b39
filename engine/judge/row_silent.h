/* row_silent.h - whether a place's figures keep a rule from ever speaking there. */
#ifndef EAVEMARK_JUDGE_ROW_SILENT_H
#define EAVEMARK_JUDGE_ROW_SILENT_H

#include "judge/rulebook.h"

/* Do the figures alone, whatever a job says, keep the rule from speaking? */
bool row_silent(const struct rulebook *book, const struct rule *rule);

#endif
