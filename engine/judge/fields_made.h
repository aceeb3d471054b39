/* fields_made.h - the fields that a rule file declares, as the build read them.
 *
 * The fields of rules/fields.lua are the same in every law: the build writes down what they
 * say (profile/made.h). Before a file is run that is to the byte the packed one, all of them are
 * declared, in their order; its code is that of the rest of it (packing/leave_out.h).
 */
#ifndef EAVEMARK_JUDGE_FIELDS_MADE_H
#define EAVEMARK_JUDGE_FIELDS_MADE_H

#include "judge/bind_declare.h"
#include "profile/home.h"

/* The fields that the file declares, in its order; as bytes for the caller to free. NULL for
 * none, and when out of memory. */
char *fields_made_write(const struct fields *fields, const char *file, size_t *length);

/* Declares all that was made of the file that is run next. False when out of memory. */
bool fields_made_begin(struct declaring *declaring, const struct source *source);

/* Inside a declaration: it is one of them. */
bool fields_made_has(lua_State *lua);

#endif
