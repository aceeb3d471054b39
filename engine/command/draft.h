/* draft.h - answers kept as they are given, in "TARGET.draft" beside what they will become.
 *
 * A first line that says from what it was begun, then a line for each answer: the whole
 * job so far. A line is added at once or not at all; a program that is killed leaves all
 * answers but the one being written, and the next goes on from the last whole line.
 */
#ifndef EAVEMARK_COMMAND_DRAFT_H
#define EAVEMARK_COMMAND_DRAFT_H

#include <stdbool.h>
#include <stddef.h>
#include <sys/types.h>

struct draft {
    char *path;
    int handle;   /* -1: nothing is kept */
    off_t length; /* of whole lines */
    char *job;    /* the job that a program before this got to, or NULL */
    bool begun;   /* it holds answers */
    bool broken;  /* nothing more can be added */
};

/* Finds or makes the draft of a target. original: the file that is filled in, or NULL.
 * Where none can be made that is told, and the answers are only kept in memory. -1, told,
 * when there is one that this program may not go on with. */
int draft_open(struct draft *draft, const char *target, const char *original, size_t length);

/* Adds the job as it is now, a line of JSON. When that cannot be written it is told; the
 * answers before it are kept still, and the next is tried again. */
void draft_keep(struct draft *draft, const char *job);

/* What to say when a signal ends the program: from now on, until draft_close, SIGINT,
 * SIGTERM and SIGHUP say where the answers are. go_on: the command to go on with. */
void draft_say_when_ended(const struct draft *draft, const char *go_on);

/* Signals that would end the program wait until draft_let_end. */
void draft_hold_signals(void);
void draft_let_signals(void);

/* Puts it away; done: what it held has been written elsewhere, and it goes. */
void draft_close(struct draft *draft, bool done);

#endif
