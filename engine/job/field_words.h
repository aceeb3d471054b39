/* field_words.h - what a job says of a fact, as people write it. */
#ifndef EAVEMARK_JOB_FIELD_WORDS_H
#define EAVEMARK_JOB_FIELD_WORDS_H

#include "base/text.h"
#include "job/fields.h"

#include <cjson/cJSON.h>

/* "5 in", yes, a text as it is, "3 items" for a list of groups, "not said" for
 * NULL. field gives the unit; it may be NULL. */
void field_words_add(struct text *out, const cJSON *value, const struct field *field);

/* "0 to 6 layers", "at least 3 in", "at most 2:12"; "" without a range. */
void field_words_range(const struct field *field, const char *unit, char out[200]);

#endif
