/* bind_reads.h - what a function reads must be declared. Internal to the judge room. */
#ifndef EAVEMARK_JUDGE_BIND_READS_H
#define EAVEMARK_JUDGE_BIND_READS_H

#include "judge/judging.h"
#include "judge/reads.h"

/* Raise unless the running function may read it; reads may be NULL: then it may. */
void bind_check_fact(lua_State *lua, const struct reads *reads, const struct field *field);
void bind_check_figure(lua_State *lua, const struct reads *reads, const struct figure *figure);

/* Defines reads, by which a helper says what it reads. */
void bind_reads(lua_State *lua);

#endif
