/* validate_check.h - the parts of validate_job among themselves; private.
 *
 * validate.c walks the job beside the catalogue, validate_value.c judges one
 * value, validate_names.c knows which names references may give.
 */
#ifndef EAVEMARK_JOB_VALIDATE_CHECK_H
#define EAVEMARK_JOB_VALIDATE_CHECK_H

#include "base/arena.h"
#include "base/text.h"
#include "job/validate.h"

/* A name of a list that references point into. */
struct known_name {
    const char *name;
    size_t item; /* from 0 */
};

struct name_list {
    const char *refers;       /* "decks" */
    struct known_name *names; /* sorted by name, then item */
    size_t count;
    struct name_list *next;
};

struct validation {
    const struct fields *fields;
    const struct fields *elsewhere; /* the job's own place's, or NULL */
    enum stage reached;
    const char *file;
    struct problems *problems;
    size_t found;
    struct text pointer; /* of the value being judged */
    const cJSON *node;   /* the same, where it is a value; or NULL */
    size_t followed;     /* problems of what follows from other facts, which are not told */
    bool tell_followed;
    struct arena arena;
    struct name_list *lists;
};

/* Adds a problem at the current pointer. */
void validate_report(struct validation *check, const char *format, ...)
    __attribute__((format(printf, 2, 3)));

/* True when no more problems are to be listed. */
bool validate_full(const struct validation *check);

/* Quotes a text for a message, cut to about 60 bytes. */
const char *validate_quoted(struct validation *check, const char *text);

/* `; did you mean "name"?`, or "" when name is NULL. */
const char *validate_hint(struct validation *check, const char *name);

/* Judges a value that is present; not what a group or the items of a list
 * hold. True when it is worth looking into those. */
bool validate_value(struct validation *check, const cJSON *node, const struct field *field);

/* Gathers the names of every list that references point into, and reports
 * those given twice. */
void validate_names(struct validation *check, const cJSON *job);

/* Judges the name that a reference gives. */
void validate_reference(struct validation *check, const char *name, const struct field *field);

#endif
