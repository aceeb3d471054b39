/* fields_spec.h - whether a declaration makes sense by itself; private to the
 * catalogue (fields.c). */
#ifndef EAVEMARK_JOB_FIELDS_SPEC_H
#define EAVEMARK_JOB_FIELDS_SPEC_H

#include "job/fields.h"

/* False, with *why set (static or arena text; NULL when out of memory), when
 * the field of this path and name may not be declared so. */
bool fields_spec_sound(struct fields *fields, const char *path, const char *name,
                       const struct field *spec, const char **why);

#endif
