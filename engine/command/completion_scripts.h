/* completion_scripts.h - completion for shells other than bash (completion.c), from the
 * tables that help is made of. Each adds a whole script; names of rules and places are
 * asked of the program when they are wanted. Sets out->failed when out of memory. */
#ifndef EAVEMARK_COMMAND_COMPLETION_SCRIPTS_H
#define EAVEMARK_COMMAND_COMPLETION_SCRIPTS_H

#include "base/text.h"
#include "command/command.h"

void completion_zsh(struct text *out);
void completion_fish(struct text *out);

/* The lists that `completion` prints the names of for that kind, with blanks between:
 * "rules figures"; NULL for a kind that is no list. */
const char *completion_lists(enum kind kind);

/* What `completion` itself may be asked for, with blanks between. */
extern const char completion_wanted[];

#endif
