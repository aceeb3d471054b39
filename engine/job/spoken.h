/* spoken.h - figures that a job writes as people say them, turned into numbers. */
#ifndef EAVEMARK_JOB_SPOKEN_H
#define EAVEMARK_JOB_SPOKEN_H

#include "base/text.h"
#include "job/fields.h"

#include <cjson/cJSON.h>

/* Each text that stands where the catalogue has a number, and reads as one in the
 * field's unit (base/measure.h), becomes that number. What does not read stays a
 * text, for validate.h to refuse with why. Takes no memory. */
void spoken_settle(cJSON *job, const struct fields *fields);

/* Does the catalogue have a number there, or numbers? */
static inline bool spoken_may_stand(const struct field *field)
{
    return field->type == FIELD_NUMBER || field->type == FIELD_INTEGER
           || field->type == FIELD_NUMBERS;
}

/* Examples of what is read how, and of what is refused: words of it, the unit they
 * are read in ("rise_in_12": a slope), what they say. Ends with NULL words. */
struct spoken_example {
    const char *words, *unit, *says;
};
extern const struct spoken_example SPOKEN_READ[], SPOKEN_REFUSED[];

/* Adds the table of both to out. */
void spoken_add_table(struct text *out);

#endif
