/* question.h - what a job does not say and a rule waits for, as questions in the
 * order of the trade: that of the field catalogue. */
#ifndef EAVEMARK_ASK_QUESTION_H
#define EAVEMARK_ASK_QUESTION_H

#include "base/arena.h"
#include "law/prepare.h"
#include "job/fields.h"
#include "judge/finding.h"

#include <cjson/cJSON.h>
#include <stdbool.h>
#include <stddef.h>

/* One of several facts that are asked for in one line. */
struct line_part {
    const struct field *field;
    const char *pointer;
};

struct question {
    const struct field *field;
    const char *ask;          /* in other words than the field's own, or NULL */
    const char *pointer;      /* JSON pointer of the fact */
    const char *where;        /* the items it is in: "main front", or NULL */
    const char *const *names; /* a reference, a place: what may be named */
    size_t name_count;
    bool numbered;                  /* and by its number */
    const cJSON *same;              /* the same fact of the item before, or NULL */
    const char *same_where;         /* that item's name or number */
    const struct finding **waiting; /* open for want of it, by rule */
    size_t waiting_count;
    struct line_part *parts; /* asked for in one line (one_line.h) */
    size_t part_count;       /* 0: the field alone */
    bool those_waiting;      /* facts of their own, each to be asked in its own words */
};

struct questions {
    struct arena arena;
    struct question *items;
    size_t count;
};

/* The questions that a job's findings leave open, each fact once. Items of
 * lists that say nothing yet are asked for their names first; a reference into
 * a list that is not there asks for the list instead, and is no question while
 * the list is empty. What is measured later than `reached` is not asked.
 * job, fields and result must outlive *out; questions_free releases it. Returns
 * 0, or -1 when out of memory. */
int questions_of(const struct result *result, const cJSON *job, const struct fields *fields,
                 enum stage reached, struct questions *out);

/* One question about a field of the job, with what goes with it. */
struct question question_about(struct arena *arena, const cJSON *job, const struct fields *fields,
                               const char *pointer);

void questions_free(struct questions *questions);

/* Either questions, or problems that say why there are none. */
struct checked_questions {
    struct problems problems;
    struct result result;
    struct questions questions;
    bool judged; /* questions holds them all, be there none */
};

/* What a parsed job leaves open; the tree is changed as by check_job, and must
 * outlive *out. The stage of the overrides is of no account. */
void questions_of_job(struct laws *laws, cJSON *job, const struct overrides *overrides,
                      const char *file, struct checked_questions *out);

void questions_checked_free(struct checked_questions *checked);

#endif
