/* sitting_parts.h - what the parts of a sitting share; private.
 *
 * sitting.c begins and ends it, sitting_ask.c asks, sitting_write.c writes what came of it.
 */
#ifndef EAVEMARK_COMMAND_SITTING_PARTS_H
#define EAVEMARK_COMMAND_SITTING_PARTS_H

#include "command/draft.h"
#include "command/sitting.h"

#include <stdbool.h>
#include <stddef.h>

enum { SITTING_LINE_MOST = 4096, SITTING_JOB_MOST = 64 * 1024 * 1024 };

/* What is under way. */
struct sitting {
    const struct sitting_options *options;
    eavemark_interview *interview;
    char *original; /* the file that is filled in, as it was read; or NULL */
    bool begun;     /* no file: what a new job begins with */
    size_t length;
    struct draft draft;
    bool ended; /* by stop, or the end of the answers */
};

/* Where the job goes: NULL for standard output. */
const char *sitting_target(const struct sitting_options *options);

/* The command that sits: "new" or "shop". */
const char *sitting_command(const struct sitting_options *options);

/* The name of a sheet that lies beside the job, which the job then names; or NULL. */
const char *sitting_sheet(const struct sitting_options *options);

/* Keeps the job as it is now in the draft. */
void sitting_keep(struct sitting *sitting);

/* Asks until nothing is left to ask. Returns the exit status so far. */
int sitting_ask(struct sitting *sitting);

/* Writes what there is, and says so; no signal ends the program meanwhile. The exit status. */
int sitting_write(struct sitting *sitting);

#endif
