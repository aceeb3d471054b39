/* problem.h - everything that is wrong with what the user gave, in one list.
 *
 * Readers and validators add to the list and go on, so that a user sees all
 * of it in one go. A problem names its place either as line and column
 * (syntax) or as a JSON pointer (content).
 *
 * Ownership: the list owns its texts (in its arena); problems_free releases
 * them. Running out of memory is itself recorded (problems.out_of_memory).
 */
#ifndef EAVEMARK_BASE_PROBLEM_H
#define EAVEMARK_BASE_PROBLEM_H

#include "base/arena.h"
#include "base/text.h"

#include <stdbool.h>
#include <stddef.h>

/* Whose fault it is; each has one exit status (eavemark.h). */
enum problem_kind {
    PROBLEM_JOB,   /* the job or the arguments: exit 2 */
    PROBLEM_RULES, /* a rule or profile file: exit 3 */
};

struct problem {
    enum problem_kind kind;
    const char *file;    /* as the user named it */
    int line, column;    /* from 1; 0 when not known */
    const char *pointer; /* JSON pointer, or NULL; "" is the whole job */
    const char *message;
    bool asks_back; /* about a value that may be meant all the same */
    struct problem *next;
};

struct problems {
    struct arena arena;
    struct problem *first, *last;
    size_t count;
    bool out_of_memory;
};

/* A problem at a line and column of a file (0 for unknown). */
void problem_at_line(struct problems *list, enum problem_kind kind, const char *file, int line,
                     int column, const char *format, ...) __attribute__((format(printf, 6, 7)));

/* A problem at a JSON pointer of a file. */
void problem_at(struct problems *list, enum problem_kind kind, const char *file,
                const char *pointer, const char *format, ...) __attribute__((format(printf, 5, 6)));

/* Out of memory is a problem too; it needs no memory to record. */
void problem_out_of_memory(struct problems *list);

/* Takes off what was added since the list was as before (a copy of the struct). Being out
 * of memory stays. */
void problems_cut(struct problems *list, const struct problems *before);

/* True if any problem of this kind is in the list. */
bool problems_any(const struct problems *list, enum problem_kind kind);

/* Writes FILE:LINE:COL: message or FILE: /pointer: message, a line each.
 * Control characters in messages are written as \xNN, so that a job cannot
 * steer the reader's terminal. */
void problems_write(const struct problems *list, struct text *out);

void problems_free(struct problems *list);

#endif
