/* place_fact.h - what is one all over a place, filled into jobs and held against what they
 * say themselves.
 *
 * A job that is silent has the place's value. One that says otherwise is judged by its own
 * word, and both are told (judge.h); one outside the place's bounds is asked back.
 */
#ifndef EAVEMARK_JUDGE_PLACE_FACT_H
#define EAVEMARK_JUDGE_PLACE_FACT_H

#include "base/problem.h"
#include "base/text.h"
#include "judge/rulebook.h"

#include <cjson/cJSON.h>

/* Finds the field of each fact of the place (book->facts). Adds a problem, at file and line, for
 * each that the catalogue does not have or let a place state, and for each of another unit, type,
 * range or choice. */
void place_fact_check(struct rulebook *book, struct problems *problems);

/* Fills in what the job does not say, marked as the place's; marks what it says otherwise
 * and does not call meant (origin.h). */
void place_fact_fill(const struct rulebook *book, cJSON *job, struct problems *problems);

/* What stands in the job where the fact goes, or NULL. */
const cJSON *place_fact_said(const struct rulebook *book, const cJSON *job,
                             const struct place_fact *fact);

/* Asks back what is outside the place's bounds, unless it is meant. */
void place_fact_ask_back(const struct rulebook *book, const cJSON *job, const char *file,
                         struct problems *problems);

/* What the place says of this field, or NULL. */
const struct place_fact *place_fact_of(const struct rulebook *book, const struct field *field);

/* "115 mph", "one of B, C", "at least 110 mph": what the place says. */
void place_fact_add(struct text *out, const struct place_fact *fact);

/* "the job says 100 mph, Tamarack County 115 mph (Table R301.2, seen)"; NULL where the job
 * says the same or nothing, or was given it by the place. In the arena. */
const char *place_fact_told(const struct rulebook *book, const cJSON *job,
                            const struct place_fact *fact, struct arena *arena);

#endif
