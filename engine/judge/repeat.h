/* repeat.h - a function of a row that ran before, and was answered the same, is not run
 * again: what it came to, and all that it recorded, is taken from the memory of the law.
 *
 * recall.h does so for whole findings. A finding that has to be judged anew, because one
 * fact of it is otherwise, mostly calls functions that ask for others. Internal to the room.
 */
#ifndef EAVEMARK_JUDGE_REPEAT_H
#define EAVEMARK_JUDGE_REPEAT_H

#include "judge/walk.h"

/* As call_enter, for entries of a function of its own (call->function) whose call is over
 * when it has been told: for a condition, a value, a name or words. */
enum sandbox_stop repeat_enter(struct judging *judging, lua_CFunction function, struct call *call);

/* Enters so another function for what a call judges. False when it did not come to its end:
 * *stop says how. */
bool repeat_run(const struct call *of, int function, lua_CFunction entry, struct call *out,
                enum sandbox_stop *stop);

#endif
