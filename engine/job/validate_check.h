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

#include <string.h>

/* A name of a list that references point into. */
struct known_name {
    const char *name;
    size_t item; /* from 0 */
};

struct name_list {
    const char *refers;       /* "decks" */
    struct known_name *names; /* sorted by name, then item */
    size_t count;
};

/* A step of the way from the job to the value being judged, the innermost first. A pointer is
 * written of them only when there is something to say. */
struct validate_step {
    const struct validate_step *above; /* NULL: the job */
    const char *name;                  /* of a field, `length` bytes; NULL: an item of a list */
    size_t length, item;
};

struct validation {
    const struct fields *fields;
    const struct fields *elsewhere; /* the job's own place's, or NULL */
    enum stage reached;
    const char *file;
    struct problems *problems;
    size_t found;
    const struct validate_step *at; /* the value being judged; NULL: the job */
    const cJSON *node;              /* the same, where it is a value; or NULL */
    size_t followed; /* problems of what follows from other facts, which are not told */
    bool tell_followed;
    struct arena arena;
    struct name_list *lists; /* in the order of fields->referred */
};

/* A step to the field of this name from where the walk stands. */
static inline struct validate_step validate_step_to(const struct validation *check,
                                                    const char *name)
{
    return (struct validate_step){.above = check->at, .name = name, .length = strlen(name)};
}

/* The way to that step as a pointer; "" when out of memory. */
const char *validate_pointer(struct validation *check, const struct validate_step *step);

/* Adds a problem at the current place. */
void validate_report(struct validation *check, const char *format, ...)
    __attribute__((format(printf, 2, 3)));

/* True when no more problems are to be listed. Running out of memory ends it too: what is said
 * would be cut. */
static inline bool validate_full(const struct validation *check)
{
    return check->found >= VALIDATE_MOST_PROBLEMS || check->arena.failed;
}

/* Quotes a text for a message, cut to about 60 bytes. */
const char *validate_quoted(struct validation *check, const char *text);

/* `; did you mean "name"?`, or "" when name is NULL. */
const char *validate_hint(struct validation *check, const char *name);

/* Judges a value that is present; not what a group or the items of a list
 * hold. True when it is worth looking into those. */
bool validate_value(struct validation *check, const cJSON *node, const struct field *field);

/* Is there nothing to say of a value? True for most of those that are sound; of the rest
 * validate_value has to be asked. */
bool validate_value_plain(const cJSON *node, const struct field *field);

/* Gathers the names of every list that references point into, and reports
 * those given twice. */
void validate_names(struct validation *check, const cJSON *job);

/* Judges the name that a reference gives. */
void validate_reference(struct validation *check, const char *name, const struct field *field);

#endif
