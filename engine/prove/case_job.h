/* case_job.h - building a case's job: a whole job with some facts changed.
 * Internal to the case runner. */
#ifndef EAVEMARK_PROVE_CASE_JOB_H
#define EAVEMARK_PROVE_CASE_JOB_H

#include <cjson/cJSON.h>
#include <lua.h>

/* Sets the place path ("roof.slopes[2].pitch", counting from 1) of the job to
 * the value on top of the stack, which is popped; groups on the way are made.
 * An item one past the end of a list is appended. Raises on a path that
 * cannot be. */
void case_job_set(lua_State *lua, cJSON *job, const char *path);

/* Marks the list of cases as cut short and raises. */
int case_out_of_memory(lua_State *lua);

enum { CASE_CHANGES_MOST = 200 }; /* of one `with` */

/* Applies the `with` and `without` of the table at index. */
void case_job_with(lua_State *lua, cJSON *job, int index);

#endif
