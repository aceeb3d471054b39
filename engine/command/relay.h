/* relay.h - lines handed to several processes, and their answers in the order of the
 * lines. Each process works by itself: nothing is shared, and what comes out is the same
 * however many there are. Each writes its answers itself, when it is its turn.
 */
#ifndef EAVEMARK_COMMAND_RELAY_H
#define EAVEMARK_COMMAND_RELAY_H

#include "command/line.h"

#include <stdbool.h>
#include <stdio.h>

enum { RELAY_MOST = 64 };

/* Where the answer to a line goes; status is raised to the worst of any line. */
struct answer_to {
    FILE *out, *err;
    int status;
    int why;              /* errno of what could not be written to out, or 0 */
    struct answers *kept; /* of a worker: what was written to out so far; or NULL */
};

/* Writes a whole answer to out, and frees it: a worker keeps it as it is until its turn. */
void relay_answer(struct answer_to *to, char *answer);

/* What a worker does with a line; data as given to relay_start. */
typedef void relay_task(void *data, unsigned long number, enum line_kind kind,
                        const struct text *line, struct answer_to *to);

struct relay {
    struct worker {
        int socket;
        int process;
    } items[RELAY_MOST];
    size_t count;
    size_t next; /* to be given lines */
    struct text lines;
    bool broken; /* one ended before its work was done, or memory did */
};

/* Starts so many processes, which write to the two streams, of which the caller writes to
 * none until the end; false when they cannot be started: nothing is left then. */
bool relay_start(struct relay *relay, size_t count, relay_task *task, void *data,
                 const struct answer_to *to);

/* Hands over a line. */
void relay_give(struct relay *relay, unsigned long number, enum line_kind kind,
                const struct text *line);

/* Waits until all answers are written, and sets status and why. False when some are
 * lacking for another reason than why. */
bool relay_finish(struct relay *relay, struct answer_to *to);

#endif
