/* slip.h - what is wrong with a Lua file that does not load, in words for somebody who
 * writes data and is no programmer: a missing comma, a curly quote, True for true.
 */
#ifndef EAVEMARK_SANDBOX_SLIP_H
#define EAVEMARK_SANDBOX_SLIP_H

#include <stdbool.h>
#include <stddef.h>

enum { SLIP_WORDS = 256 };

/* Looks for the first slip of the pen that keeps the text from being Lua. lua_says is Lua's
 * own message. False when nothing known is found: then that message is all there is to say. */
bool slip_find(const char *text, size_t length, const char *lua_says, int *line,
               char words[SLIP_WORDS]);

#endif
