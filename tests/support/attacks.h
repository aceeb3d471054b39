/* attacks.h - hostile files of tests/attacks, and what must stop each.
 *
 * A file NAME.lua is one attack; one_line.attacks holds many of one line.
 * The first line of a file says it: `-- stops: steps`, time or memory for a
 * limit, `-- stops: error "words"` or another word with words for what is said.
 * A second line `-- when: load` means: while the file loads. */
#ifndef EAVEMARK_TESTS_ATTACKS_H
#define EAVEMARK_TESTS_ATTACKS_H

#include <stdarg.h>
#include <setjmp.h>
#include <stdbool.h>
#include <stddef.h>
#include <stdint.h>
#include <time.h>

#include <cmocka.h>

struct attack {
    const char *folder; /* below tests/attacks, or "" */
    char name[64];      /* "endless_loop" */
    char *one_line;     /* the file to be, when it is of one_line.attacks; else NULL */
    char stops[16];     /* "steps" ... "error" */
    char words[160];    /* expected in the message */
    bool load;
    char *text; /* the file */
};

/* A rule that every attack must leave as it is: "harmless.layers". */
extern const char HARMLESS_RULE[];

/* Reads the file and its head; fails the running test when it cannot. */
void attack_read(struct attack *attack);
void attack_free(struct attack *attack);

/* The one of this name, in a file of its own or in the table; not read yet. */
void attack_find(struct attack *attack, const char *name);

/* Runs `run` for every attack of the folder ("" for tests/attacks itself), its
 * state a struct attack with folder and name, and the other tests after them.
 * At least `least` there must be. What cmocka returns. */
int attacks_run(const char *folder, size_t least, CMUnitTestFunction run,
                const struct CMUnitTest *others, size_t other_count);

#endif
