/* declare_reads.h - reading the table `reads` of a declaration. All of this may raise: only
 * for use inside the sandbox. Internal to the judge room. */
#ifndef EAVEMARK_JUDGE_DECLARE_READS_H
#define EAVEMARK_JUDGE_DECLARE_READS_H

#include "judge/bind_declare.h"
#include "judge/reads.h"

/* reads({ ... }, function): gives the function, which from now on lends what it reads. */
int declare_reads_of_helper(lua_State *lua);

/* quantities_read { ... }: what the quantities of the file ask for. */
int declare_reads_of_quantities(lua_State *lua);

/* Reads the table on top of the stack, of a helper or of the declaration at hand: what it
 * names is looked up at once. levers: where one is off, figures may lack. line: where it is
 * written. */
struct reads_part *declare_reads_table(lua_State *lua, bool of_helper, const struct lever *levers,
                                       int line);

/* The function on top of the stack is of the declaration at hand: what it lends is. */
void declare_reads_note(lua_State *lua);

/* The row at hand names this figure, or table ("topic.table.*"), which this place has no need
 * of. */
void declare_reads_elsewhere(lua_State *lua, const char *name);

/* What the table at index 1 says under `reads`, with what its functions lend: to be called
 * when all of them are noted. levers: where one is off, figures may lack. */
struct reads *declare_reads(lua_State *lua, const struct lever *levers, struct reads_of of);

/* What the function at index declares that it reads, or NULL. Also while judging. */
struct reads_part *declare_reads_of(lua_State *lua, int index);

/* The same of a quantity, which may read any fact: its file says for all what they ask for. */
struct reads *declare_reads_of_quantity(lua_State *lua, struct reads_of of);

/* common.lua shares what is on top of the stack under this name. */
void declare_reads_shared(lua_State *lua, const char *name);

#endif
