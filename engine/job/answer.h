/* answer.h - from what a person writes to a fact of the job. */
#ifndef EAVEMARK_JOB_ANSWER_H
#define EAVEMARK_JOB_ANSWER_H

#include "base/text.h"
#include "job/fields.h"

#include <cjson/cJSON.h>
#include <stdbool.h>
#include <stddef.h>

/* Names that may be given by their number: what a reference may refer to. */
struct answer_names {
    const char *const *items;
    size_t count;
};

/* Reads the words as a value of this field: y and n; a choice by its words or
 * its number (from 1), several with commas; a figure as measure_read takes it,
 * turned into the field's unit; several with commas; for a list how many items
 * it has, each of them empty; a name as it is, quotes around it left out. names
 * may hold the names a text or a reference is chosen from by number. On true
 * *out is a new value; it may still be out of range, or no name there is. On
 * false why says what was wrong; it is empty when memory was. */
bool answer_read(cJSON **out, const struct field *field, const struct answer_names *names,
                 const char *words, struct text *why);

#endif
