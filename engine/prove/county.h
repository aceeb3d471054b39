/* county.h - a new county begins: what its first files need to know, and
 * writing them.
 */
#ifndef EAVEMARK_PROVE_COUNTY_H
#define EAVEMARK_PROVE_COUNTY_H

#include "base/arena.h"
#include "base/problem.h"
#include "law/law.h"

/* Examples are real names of the law that is followed; NULL where it has none. */
struct county_start {
    struct arena arena;
    const char *id, *title, *follows;
    const struct law *parent;
    long from;            /* 0: what is followed has no beginning */
    const char *borrowed; /* why most of what is followed judges nothing; or NULL */
    const struct figure *number, *flag, *set;
    const struct rule *dropped;         /* a rule that could be dropped */
    const char *case_rule, *case_where; /* a rule that a base job meets, and where */
    char *profile_path, *cases_path;    /* below the home */
};

/* Checks what is asked for and gathers the examples. Returns 0, or -1 with
 * problems: a bad id or title, a parent that is unknown or broken, a file that
 * exists. Nothing is written. */
int county_prepare(struct county_start *start, struct laws *laws, const char *id,
                   const char *follows, const char *title, struct problems *problems);

/* Writes both files, making folders as needed, and loads the result. Returns
 * 0, or -1 with problems; then neither file nor folder is left behind. */
int county_write(const struct county_start *start, struct laws *laws, const char *profile,
                 const char *cases, struct problems *problems);

void county_free(struct county_start *start);

#endif
