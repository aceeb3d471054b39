/* Many jobs under two laws each: which would come out otherwise. */
#include "interface/inner.h"

#include "base/date.h"
#include "check/check.h"
#include "interface/handle.h"
#include "interface/reply.h"
#include "interface/request.h"
#include "job/tree.h"
#include "prove/trial.h"
#include "report/trial_report.h"

#include <stdlib.h>
#include <string.h>

struct eavemark_trial {
    struct trial counts;
    struct eavemark_law laws[2]; /* handle NULL: only merging */
    char *words[6];              /* what the laws point to */
};

/* A copy of words that the trial keeps as number `at`; NULL of NULL. */
static const char *keep_words(eavemark_trial *trial, int at, const char *words, bool *failed)
{
    if (words == NULL)
        return NULL;
    trial->words[at] = strdup(words);
    *failed = *failed || trial->words[at] == NULL;
    return trial->words[at];
}

static void say_no_place(const char *home, const char *id, struct problems *problems)
{
    char near[PROFILE_NEAR_BYTES];
    profile_near_names(home, id, near, sizeof(near));
    problem_at_line(problems, PROBLEM_JOB, "trial", 0, 0,
                    "no jurisdiction is named \"%s\"; the nearest are: %s", id, near);
}

/* Is there such a place, and on this day if one is given? */
static void look_for_law(const struct eavemark_law *asked, struct problems *problems)
{
    struct laws *laws = &asked->handle->laws;
    struct arena arena = {0};
    struct sources sources = {0};
    long date = 0;
    if (!profile_exists(laws->home, asked->jurisdiction))
        say_no_place(laws->home, asked->jurisdiction, problems);
    else if (asked->date == NULL)
        place_cache_get(&laws->cache, laws->home, asked->jurisdiction, &arena, &sources, problems);
    else if ((date = date_parse(asked->date)) == 0)
        problem_at_line(problems, PROBLEM_JOB, "trial", 0, 0, "\"%s\" is no day (YYYY-MM-DD)",
                        asked->date);
    else
        laws_find(laws, asked->jurisdiction, date, "trial", problems);
    arena_free(&arena);
}

/* The laws are asked for anew for each job: the host's words may be gone by then. */
static bool take_law(eavemark_trial *trial, int side, const struct eavemark_law *asked)
{
    bool failed = false;
    trial->laws[side] = (struct eavemark_law){
        .handle = asked->handle,
        .jurisdiction = keep_words(trial, side * 3, asked->jurisdiction, &failed),
        .date = keep_words(trial, side * 3 + 1, asked->date, &failed),
        .called = keep_words(trial, side * 3 + 2,
                             asked->called == NULL ? asked->jurisdiction : asked->called, &failed),
    };
    return !failed;
}

eavemark_trial *inner_trial_open(const struct eavemark_law *before,
                                 const struct eavemark_law *after, enum eavemark_status *status,
                                 char **problems)
{
    struct problems said = {0};
    eavemark_trial *trial = calloc(1, sizeof(*trial));
    const bool both = before != NULL && after != NULL;
    bool whole = trial != NULL;
    if (whole && both) {
        look_for_law(before, &said);
        look_for_law(after, &said);
        /* Told before the first job: a slip in a place's name would refuse them all. */
        whole = said.count == 0 && take_law(trial, 0, before) && take_law(trial, 1, after);
    }
    if (whole)
        trial_begin(&trial->counts, both ? trial->laws[0].called : NULL,
                    both ? trial->laws[1].called : NULL);
    whole = whole && !trial->counts.arena.failed && !said.out_of_memory;
    *problems = whole || said.count > 0 ? reply_problems(&said) : NULL;
    *status = reply_status(&said);
    problems_free(&said);
    if (whole && *problems != NULL)
        return trial;
    if (*status == EAVEMARK_NOTHING_FAILED || *problems == NULL)
        *status = EAVEMARK_BROKEN; /* out of memory */
    inner_trial_close(trial);
    return NULL;
}

/* The tree is changed by judging: each law gets one of its own. */
static void judge_under(const struct eavemark_law *law, const struct eavemark_request *request,
                        cJSON *job, struct checked *checked, struct trial_judged *judged)
{
    struct eavemark_request asked = *request;
    asked.jurisdiction = law->jurisdiction;
    asked.date = law->date;
    const struct overrides overrides = request_overrides(&asked);
    checked->result.wanted = WANTED_FINDINGS;
    check_job(&law->handle->laws, job, &overrides, request->name, checked);
    judged->checked = checked;
    if (checked->judged) /* this only finds it again */
        judged->law = laws_find(&law->handle->laws, checked->result.jurisdiction,
                                date_parse(checked->result.date), request->name,
                                &checked->problems);
}

/* A trial names jobs by their own words, which an office knows them by. */
static const char *title_of(const cJSON *job, const char *otherwise)
{
    const char *title = cJSON_GetStringValue(cJSON_GetObjectItemCaseSensitive(job, "job"));
    return title == NULL ? otherwise : title;
}

enum eavemark_status inner_trial_job(eavemark_trial *trial, const struct eavemark_request *request)
{
    struct problems said = {0};
    struct checked checked[2] = {0};
    struct trial_judged judged[2] = {0};
    struct arena arena = {0};
    cJSON *job = NULL, *copy = NULL;
    const size_t refused = trial->counts.not_judged;
    if (trial->laws[0].handle == NULL)
        return EAVEMARK_UNUSABLE;
    for (int side = 0; side < 2; side++)
        handle_make_room(trial->laws[side].handle);
    job = request_job_into(request, NULL, &arena, &said);
    /* Judging fills in what follows from the law: the other law must not read it. */
    copy = job == NULL ? NULL : tree_copy(&arena, job);
    if (copy != NULL) {
        judge_under(&trial->laws[0], request, job, &checked[0], &judged[0]);
        judge_under(&trial->laws[1], request, copy, &checked[1], &judged[1]);
        trial_count(&trial->counts, title_of(copy, request->name), judged);
    } else if (job == NULL && said.first != NULL) {
        trial_refuse(&trial->counts, request->name, said.first->message);
    }
    /* A job that was not counted for want of memory makes all counts wrong. */
    const bool failed = trial->counts.arena.failed || said.out_of_memory
                        || checked[0].problems.out_of_memory || checked[1].problems.out_of_memory
                        || (job != NULL && copy == NULL);
    problems_free(&said);
    checked_free(&checked[0]);
    checked_free(&checked[1]);
    tree_free(job);
    tree_free(copy);
    arena_free(&arena);
    if (failed)
        return EAVEMARK_BROKEN;
    return trial->counts.not_judged > refused ? EAVEMARK_UNUSABLE : EAVEMARK_NOTHING_FAILED;
}

bool inner_trial_merge(eavemark_trial *trial, const char *text, size_t length, const char *name,
                       char **problems)
{
    struct problems said = {0};
    const bool merged = trial_part_merge(&trial->counts, text, length, name, &said);
    if (trial->counts.arena.failed)
        problem_out_of_memory(&said);
    *problems = reply_problems(&said);
    problems_free(&said);
    return merged && !trial->counts.arena.failed && *problems != NULL;
}

bool inner_trial_refuse(eavemark_trial *trial, const char *name, const char *why)
{
    trial_refuse(&trial->counts, name, why);
    return !trial->counts.arena.failed;
}

enum eavemark_status inner_trial_status(const eavemark_trial *trial)
{
    return trial->counts.broken > 0       ? EAVEMARK_BROKEN
           : trial->counts.move_count > 0 ? EAVEMARK_FAILED
                                          : EAVEMARK_NOTHING_FAILED;
}

char *inner_trial_report(const eavemark_trial *trial, enum eavemark_form form)
{
    struct text out = TEXT_EMPTY;
    switch (form) {
    case EAVEMARK_TEXT:
    case EAVEMARK_CSV:
        report_trial_text(&trial->counts, &out);
        break;
    case EAVEMARK_JSON:
    case EAVEMARK_JSON_LINE:
        report_trial_json(&trial->counts, form == EAVEMARK_JSON, &out);
        break;
    case EAVEMARK_HTML:
        report_trial_html(&trial->counts, &out);
        break;
    }
    return reply_text(&out);
}

void inner_trial_close(eavemark_trial *trial)
{
    if (trial == NULL)
        return;
    trial_free(&trial->counts);
    for (size_t i = 0; i < sizeof(trial->words) / sizeof(trial->words[0]); i++)
        free(trial->words[i]);
    free(trial);
}
