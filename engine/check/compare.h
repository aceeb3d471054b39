/* compare.h - what differs between checks, and what moved it.
 *
 * Findings are matched by rule and by where they look; a fact is matched by
 * the name of the item it belongs to, so that the order of a job's lists does
 * not count.
 */
#ifndef EAVEMARK_CHECK_COMPARE_H
#define EAVEMARK_CHECK_COMPARE_H

#include "check/check.h"

/* One of the checks compared. The job is owned. */
struct side {
    const char *file;
    cJSON *job;
    struct overrides overrides;
    struct checked checked;
    const struct law *law;
};

enum { COMPARE_SIDES_MOST = 64 };

/* A figure that is not the same on both sides, in value or citation; NULL where the law has none of
 * that name. */
struct moved_figure {
    const char *name;
    const struct figure *values[2];
};

/* A fact that is not the same: both values in words, in the arena. */
struct moved_fact {
    const char *path;
    const char *values[2];
};

/* A finding that differs between two sides; either is NULL when that side has
 * none there, because its law lacks the rule or its job lacks the place. */
struct change {
    const struct finding *findings[2];
    bool no_such_rule;
    struct moved_figure *figures;
    size_t figure_count;
    struct moved_fact *facts;
    size_t fact_count;
};

/* A rule in one place, over all sides. */
struct compare_row {
    const char *rule, *where;
    const struct finding **findings; /* one for each side, or NULL */
    bool differs;
    bool rests_otherwise; /* of two sides: on another figure, citation or fact */
};

struct comparison {
    struct arena arena;
    struct problems problems;
    struct side *sides;
    size_t side_count;
    bool compared;            /* all sides were judged */
    struct compare_row *rows; /* everything, by rule */
    size_t row_count, differing;
    size_t otherwise;       /* of two sides: the same, but resting on something else */
    struct change *changes; /* for two sides: the rows that differ */
    size_t change_count;
};

/* Checks every side (file, job and overrides are set) and compares. Problems
 * of any side are in its checked.problems. */
void compare(struct laws *laws, struct comparison *comparison);

void compare_free(struct comparison *comparison);

/* Neither value, section, status nor dispute is another. */
bool compare_same_figure(const struct figure *a, const struct figure *b);

#endif
