/* case_job.h - building a case's job: a whole job with some facts changed.
 * Internal to the case runner. */
#ifndef EAVEMARK_PROVE_CASE_JOB_H
#define EAVEMARK_PROVE_CASE_JOB_H

#include "base/arena.h"
#include "prove/case_change.h"

#include <cjson/cJSON.h>
#include <lua.h>

/* A job as it is put together, so that its changes can be made and also be kept. What stands in
 * it is freed by whoever made it, whether or not something raised. */
struct case_building {
    cJSON *job;
    char *json; /* cJSON's, on its way into the arena; or NULL */
    struct arena *arena;
    struct case_change *first, **last;
    size_t bytes; /* of the texts of all changes */
};

/* Sets the place path of the job to the value on top of the stack, which is popped; groups on
 * the way are made. Raises on a path that cannot be. */
void case_job_set(lua_State *lua, struct case_building *building, const char *path);

/* Marks the list of cases as cut short and raises. */
int case_out_of_memory(lua_State *lua);

enum { CASE_CHANGES_MOST = 200 }; /* of one `with` */

/* Applies the `with` and `without` of the table at index. */
void case_job_with(lua_State *lua, struct case_building *building, int index);

#endif
