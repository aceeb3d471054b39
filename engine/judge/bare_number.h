/* bare_number.h - a number written into a comparison, in the text of a rule file.
 *
 * at_most(job.x, 5, "in") demands what nobody cites, and no place could move it:
 * figures stand in jurisdictions/. Read from the text, so that also what no job and no
 * case reaches is found. Only a limit that is a number and nothing else is: what is
 * reckoned, and a number kept under a name, is not seen. Internal to the judge room, and to the
 * build, which compiles only what was looked through.
 */
#ifndef EAVEMARK_JUDGE_BARE_NUMBER_H
#define EAVEMARK_JUDGE_BARE_NUMBER_H

#include <stdbool.h>
#include <stddef.h>

struct bare_number {
    int line;
    char verb[24];   /* "at_most" */
    char number[24]; /* "5" */
};

/* The first in a text that ends with a zero byte. False when there is none. */
bool bare_number_find(const char *text, struct bare_number *out);

#endif
