/* reply.h - how the calls of the interface answer: texts handed over to the caller, and
 * one status for all that went wrong. */
#ifndef EAVEMARK_INTERFACE_REPLY_H
#define EAVEMARK_INTERFACE_REPLY_H

#include "base/problem.h"
#include "base/text.h"
#include "include/eavemark.h"

/* Hands over the text's memory, for free(); NULL when it could not be built. */
char *reply_text(struct text *text);

/* The problems written out, a line each; "" for none. NULL when out of memory. */
char *reply_problems(const struct problems *problems);

/* The status that problems come to: broken files before an unusable job. */
enum eavemark_status reply_status(const struct problems *problems);

enum eavemark_status reply_worse(enum eavemark_status a, enum eavemark_status b);

/* For a call that ran out of memory halfway: neither text is given. */
enum eavemark_status reply_drop(char **report, char **problems);

/* Is a report without pages or tables of its own written as text in this form? */
bool reply_is_text(enum eavemark_form form);

#endif
