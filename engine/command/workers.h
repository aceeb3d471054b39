/* workers.h - jobs spread over several processes, each of which gives one text at its end.
 *
 * For what adds up in any order. The jobs go round: a worker takes as many as come.
 */
#ifndef EAVEMARK_COMMAND_WORKERS_H
#define EAVEMARK_COMMAND_WORKERS_H

#include <stdbool.h>
#include <stddef.h>
#include <stdio.h>

enum { WORKERS_MOST = 64 };

/* What a worker does. Each of them begins with data as it was when workers_start was
 * called. false from either ends the worker as failed. */
struct work {
    bool (*take)(void *data, const char *name, const char *text, size_t length);
    bool (*finish)(void *data, FILE *out); /* writes what the worker came to */
    void *data;
};

struct workers;

/* Starts count workers (1 to WORKERS_MOST); NULL when the system refuses. */
struct workers *workers_start(size_t count, const struct work *work);

/* Hands a job to the next worker. text NULL: of it there is only why not, in name. False
 * when that worker is gone. */
bool workers_give(struct workers *workers, const char *name, const char *text, size_t length);

/* Ends the input, waits, and calls each(data, text, length) with what every worker came
 * to, in their order. False when any failed. Frees. */
bool workers_end(struct workers *workers, bool (*each)(void *data, const char *text, size_t length),
                 void *data);

/* The number, 1 to WORKERS_MOST; false for any other words. */
bool workers_read(const char *words, size_t *count);

/* How many processors there are, 1 to WORKERS_MOST. */
size_t workers_usual(void);

#endif
