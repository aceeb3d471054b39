/* case_list.h - rule cases as written: what job, and what must come out.
 * Internal to the room. */
#ifndef EAVEMARK_PROVE_CASE_LIST_H
#define EAVEMARK_PROVE_CASE_LIST_H

#include "base/strings.h"
#include "prove/case_base.h"
#include "prove/case_change.h"
#include "prove/cases.h"
#include "profile/home.h"

#include <cjson/cJSON.h>

struct rule_case {
    const char *file, *rule, *title;
    int line;          /* where its group begins */
    const cJSON *base; /* the job that it starts from, of the files; NULL: its own could not be
                          built, and fault says why unless its file was stopped there */
    const struct case_change *changes;
    const char *under, *date; /* as the job says them, "" for nothing */
    const char *fault;        /* or NULL */
    bool by_place; /* what the job does not say its place does; else it says all there is */
    const char *expect, *where, *says;
    struct value required, found; /* VALUE_NONE: not looked at */
    bool held;                    /* what came of it */
    const char *said;             /* lines about that, or NULL */
    struct rule_case *next;
};

/* Of one file: how many, and the steps that judging them may take; a check takes about a
 * hundred thousand. */
enum { CASES_MOST = 2000, CASES_STEPS = 400 * 1000 * 1000 };

struct case_list {
    struct arena arena;
    struct sources sources;
    struct rule_case *first, **last;
    size_t bytes; /* about what the cases take */
};

/* A file of cases to be read. */
struct case_file {
    const char *home, *path;
    struct case_bases *bases;
    const char *rule, *topic, *under; /* of these alone; NULL: of all */
};

/* Adds its cases to the list. What is wrong with the file is added to problems; what is wrong
 * with one case's changes stays with it. */
void case_file_read(const struct case_file *file, struct case_list *list,
                    struct problems *problems);

/* The files of the cases wanted. They are read one after another: each may keep
 * SANDBOX_KEPT_BYTES. */
struct case_files {
    struct arena arena;
    const char *home;
    const struct cases_wanted *wanted;
    struct strings paths;
    size_t next;
    size_t own; /* of one place: the first so many are its own; of the rest only cases under it */
    struct case_bases bases;
};

void case_files_open(struct case_files *files, const char *home, const struct cases_wanted *wanted,
                     struct problems *problems);

/* Adds the cases of the next file to a list, which begins as all zero. False when there is none
 * left. The list must be freed before the files are closed. */
bool case_files_next(struct case_files *files, struct case_list *list, struct problems *problems);

void case_files_close(struct case_files *files);

/* The job of a case that has one, afresh; to be freed. NULL when out of memory. */
cJSON *case_job(const struct rule_case *c);

/* The cases in the order in which they are run: those of one law together. An array of the
 * list's arena; NULL when out of memory, which that remembers. */
struct rule_case **case_list_sorted(struct case_list *list, const struct cases_wanted *wanted,
                                    size_t *count);

void case_list_free(struct case_list *list);

#endif
