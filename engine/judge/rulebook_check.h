/* rulebook_check.h - a law's own words held against the rules and fields that it is laid over.
 * Internal to the judge room. */
#ifndef EAVEMARK_JUDGE_RULEBOOK_CHECK_H
#define EAVEMARK_JUDGE_RULEBOOK_CHECK_H

#include "judge/rulebook.h"

/* Looks up what of the book's profile bears on its rules and fields (book->bearings and facts;
 * its arena tells when out of memory). Reports (PROBLEM_RULES) what the profile names and is not
 * there: rules dropped, what is not carried, facts of the place, rows of figures. */
void rulebook_check(struct rulebook *book, struct problems *problems);

#endif
