/* trial.c - many jobs under two laws. What is proposed may be a file that is in no home yet:
 * it is put into a copy (edited_home.h). Several processes judge, each a share, and their
 * counts are added up (workers.h), as those of several machines are with --merge. */
#define _XOPEN_SOURCE 700

#include "base/file.h"
#include "base/text.h"
#include "command/command.h"
#include "command/edited_home.h"
#include "command/job_list.h"
#include "command/line.h"
#include "command/workers.h"
#include "include/eavemark.h"

#include <errno.h>
#include <stdlib.h>
#include <string.h>

struct trial_options {
    const char *home, *before, *after, *stage, *shop, *jobs, *form, *output;
    bool part, merge;
};

/* A law as asked for: "PLACE", "PLACE@DATE", "PLACE=FILE", "FILE", "FILE@DATE". */
struct trial_side {
    char *place, *date, *file;
    char *home; /* a copy with the file in it, or NULL */
    eavemark *handle;
    bool lent; /* the handle is the other side's */
};

/* A trial under way. */
struct running {
    const struct trial_options *options;
    eavemark_trial *trial;
    struct workers *workers; /* NULL: done here */
    bool any;
};

/* Laws -------------------------------------------------------------------------------- */

/* The day after the last "@", which a file's name may hold too. */
static char *cut_date(char *words)
{
    char *at = strrchr(words, '@');
    if (at == NULL || strspn(at + 1, "0123456789-") != strlen(at + 1) || at[1] == '\0')
        return NULL;
    *at = '\0';
    return at + 1;
}

/* What was asked for, in its pieces; false when out of memory, or for a file that states no
 * place, having complained. A piece that is lost would be another law. */
static bool part_side(const char *asked, struct trial_side *side)
{
    char *words = strdup(asked);
    const char *date = words == NULL ? NULL : cut_date(words);
    char *file = words == NULL ? NULL : strchr(words, '=');
    const bool by_itself = file == NULL && words != NULL && text_ends_in(words, ".lua");
    if (file != NULL)
        *file++ = '\0';
    else if (by_itself)
        file = words;
    side->date = date == NULL ? NULL : strdup(date);
    side->file = file == NULL ? NULL : strdup(file);
    bool whole = words != NULL && (date == NULL || side->date != NULL)
                 && (file == NULL || side->file != NULL);
    if (whole && !by_itself)
        whole = (side->place = strdup(words)) != NULL;
    if (!whole)
        complain("out of memory");
    else if (by_itself)
        side->place = edited_home_place(words);
    free(words);
    return whole && side->place != NULL;
}

/* Two sides of one home share what is loaded of it. */
static bool read_side(const char *asked, const char *home, const struct trial_side *other,
                      struct trial_side *side)
{
    if (!part_side(asked, side))
        return false;
    if (side->file != NULL) {
        side->home = edited_home_make(home, side->place, side->file);
        if (side->home == NULL)
            return false;
    }
    side->lent = other != NULL && side->home == NULL && other->home == NULL;
    side->handle = side->lent ? other->handle
                              : eavemark_open(side->home == NULL ? home : side->home);
    return side->handle != NULL;
}

/* After the trial is closed: it points into the handles. */
static void side_free(struct trial_side *side)
{
    if (side->handle != NULL && !side->lent)
        eavemark_close(side->handle);
    edited_home_remove(side->home);
    free(side->place);
    free(side->date);
    free(side->file);
}

/* Jobs -------------------------------------------------------------------------------- */

/* false ends the trial: out of memory, and no count of it would be right. */
static bool judge(void *data, const char *name, const char *text, size_t length)
{
    struct running *running = data;
    char *folder = file_folder(name); /* where a sheet lies that the job names */
    const struct eavemark_request request = {
        .name = name,
        .text = text,
        .length = length,
        .stage = running->options->stage,
        .shop_name = running->options->shop,
        .shop_folder = folder,
    };
    const bool judged = folder != NULL
                        && eavemark_trial_job(running->trial, &request) != EAVEMARK_BROKEN;
    free(folder);
    return judged;
}

/* A worker's counts go to the parent as a line of JSON, as --part writes them. */
static bool write_counts(void *data, FILE *out)
{
    struct running *running = data;
    char *counts = eavemark_trial_report(running->trial, EAVEMARK_JSON_LINE);
    const bool written = counts != NULL && fputs(counts, out) >= 0;
    free(counts);
    return written;
}

static bool merge_counts(void *data, const char *text, size_t length)
{
    struct running *running = data;
    char *problems = NULL;
    const bool merged = eavemark_trial_merge(running->trial, text, length, "a worker's part",
                                             &problems);
    if (!merged)
        fputs(problems == NULL ? "eavemark: out of memory\n" : problems, stderr);
    free(problems);
    return merged;
}

/* Judged here or by the next worker; `any` tells an empty list from one without news. */
static bool hand_on(void *data, const char *name, const char *text, size_t length)
{
    struct running *running = data;
    running->any = true;
    return running->workers == NULL ? judge(data, name, text, length)
                                    : workers_give(running->workers, name, text, length);
}

/* What holds no job is counted, with its reason: a trial over a thousand files goes on. */
static bool refuse(void *data, const char *name, const char *why)
{
    struct running *running = data;
    running->any = true;
    return eavemark_trial_refuse(running->trial, name, why);
}

static int run_jobs(struct running *running, const struct several *words, size_t count)
{
    const struct work work = {judge, write_counts, running};
    const struct job_visit visit = {hand_on, refuse, running};
    bool unusable = false;
    /* With one, no process is started: an error of a rule is then easier to look into. */
    if (count > 1) {
        running->workers = workers_start(count, &work);
        if (running->workers == NULL) {
            complain("no workers can be started: %s", strerror(errno));
            return EAVEMARK_UNUSABLE;
        }
    }
    /* Workers are waited for even when the list was not gone through to its end. */
    bool whole = job_list_each(words->items, words->count, &visit, &unusable);
    if (running->workers != NULL)
        whole = workers_end(running->workers, merge_counts, running) && whole;
    if (!whole)
        complain("the trial did not come to its end");
    else if (!running->any && !unusable)
        complain("there is no job in what was given");
    if (!whole)
        return EAVEMARK_BROKEN;
    return unusable || !running->any ? EAVEMARK_UNUSABLE : EAVEMARK_NOTHING_FAILED;
}

/* Merging ----------------------------------------------------------------------------- */

static bool merge_part(void *data, const char *name, const char *text, size_t length)
{
    struct running *running = data;
    char *problems = NULL;
    running->any = true;
    const bool merged = eavemark_trial_merge(running->trial, text, length, name, &problems);
    if (!merged)
        fputs(problems == NULL ? "eavemark: out of memory\n" : problems, stderr);
    free(problems);
    return merged;
}

/* A part that is lost would leave the sum too small: the merge ends. */
static bool refuse_part(void *data, const char *name, const char *why)
{
    (void)data;
    complain("%s: %s", name, why);
    return false;
}

static int run_merge(struct running *running, const struct several *words)
{
    /* A part is a line of JSON: lists of jobs are read the same way. */
    const struct job_visit visit = {merge_part, refuse_part, running};
    bool unusable = false;
    const bool whole = job_list_each(words->items, words->count, &visit, &unusable);
    if (whole && !running->any && !unusable)
        complain("there is no part of a trial in what was given");
    return whole && running->any && !unusable ? EAVEMARK_NOTHING_FAILED : EAVEMARK_UNUSABLE;
}

/* The command ------------------------------------------------------------------------- */

/* A part is to be merged, so it has the one form that can be. */
static enum eavemark_form form_of(const struct trial_options *options)
{
    if (options->part)
        return EAVEMARK_JSON_LINE;
    if (options->form == NULL || strcmp(options->form, "text") == 0)
        return EAVEMARK_TEXT;
    return strcmp(options->form, "html") == 0 ? EAVEMARK_HTML : EAVEMARK_JSON;
}

static int report(const struct running *running, int status)
{
    char *text = eavemark_trial_report(running->trial, form_of(running->options));
    return output_answer(text == NULL ? EAVEMARK_BROKEN : status, running->options->output, text,
                         text == NULL ? NULL : strdup(""));
}

/* Only a trial that came to its end has a report: half of it would look like a small one. */
static int finish(const struct running *running, int status)
{
    if (status != EAVEMARK_NOTHING_FAILED)
        return status;
    return report(running, (int)eavemark_trial_status(running->trial));
}

/* The sides are freed in any case: copies of homes must not stay behind. */
static int try_laws(const struct trial_options *options, const struct several *words, size_t count)
{
    struct trial_side sides[2] = {{0}};
    struct running running = {.options = options};
    int status = EAVEMARK_UNUSABLE;
    const char *home = settings_home(options->home);
    if (read_side(options->before, home, NULL, &sides[0])
        && read_side(options->after, home, &sides[0], &sides[1])) {
        const struct eavemark_law before = {sides[0].handle, sides[0].place, sides[0].date,
                                            options->before};
        const struct eavemark_law after = {sides[1].handle, sides[1].place, sides[1].date,
                                           options->after};
        enum eavemark_status opened = EAVEMARK_UNUSABLE;
        char *problems = NULL;
        running.trial = eavemark_trial_open(&before, &after, &opened, &problems);
        status = (int)opened;
        if (running.trial == NULL)
            fputs(problems == NULL ? "eavemark: out of memory\n" : problems, stderr);
        else
            status = finish(&running, run_jobs(&running, words, count));
        free(problems);
        eavemark_trial_close(running.trial);
    }
    side_free(&sides[0]);
    side_free(&sides[1]);
    return status;
}

/* No laws are loaded: the first part says which they were. */
static int merge_parts(const struct trial_options *options, const struct several *words)
{
    struct running running = {.options = options};
    enum eavemark_status opened = EAVEMARK_UNUSABLE;
    char *problems = NULL;
    running.trial = eavemark_trial_open(NULL, NULL, &opened, &problems);
    free(problems);
    if (running.trial == NULL) {
        complain("out of memory");
        return EAVEMARK_BROKEN;
    }
    const int status = finish(&running, run_merge(&running, words));
    eavemark_trial_close(running.trial);
    return status;
}

static int run_trial(int argc, char **argv)
{
    struct trial_options options = {0};
    struct several words = {.count = 0};
    size_t count = workers_usual();
    const int status = arguments_read(&command_trial, &options, &words, argc, argv);
    if (status != COMMAND_GOES_ON)
        return status;
    if (options.part && options.form != NULL)
        return complain_of_usage(&command_trial, "--part has a form of its own");
    if (words.count == 0)
        return complain_of_usage(&command_trial, options.merge ? "which parts?" : "which jobs?");
    if (options.merge)
        return merge_parts(&options, &words);
    if (options.before == NULL || options.after == NULL)
        return complain_of_usage(&command_trial, "which laws? Give --before and --after");
    if (options.jobs != NULL && !workers_read(options.jobs, &count))
        return complain_of_usage(&command_trial, "--jobs takes a number from 1 to 64");
    return try_laws(&options, &words, count);
}

static const struct option_line OPTIONS[] = {
    {"before", 0, "LAW", "PLACE, or PLACE@YYYY-MM-DD", KIND_JURISDICTION,
     offsetof(struct trial_options, before), false},
    {"after", 0, "LAW", "the same, or a place's edited file: FILE, PLACE=FILE", KIND_JURISDICTION,
     offsetof(struct trial_options, after), false},
    {"stage", 0, "STAGE", "what is looked at then: permit, deck, dry-in, final", KIND_STAGE,
     offsetof(struct trial_options, stage), false},
    {"shop", 0, "FILE", "the shop sheet, in place of those that jobs name", KIND_FILE,
     offsetof(struct trial_options, shop), false},
    {"jobs", 0, "N", "processes that judge; as many as there are processors", KIND_OTHER,
     offsetof(struct trial_options, jobs), false},
    {"part", 0, NULL, "write the counts as a line that --merge adds up", KIND_NONE,
     offsetof(struct trial_options, part), false},
    {"merge", 0, NULL, "JOBS are such lines, of parts of the jobs", KIND_NONE,
     offsetof(struct trial_options, merge), false},
    {"form", 0, "FORM", "text (to read), json (to pass on) or html (to print)", KIND_REPORT_FORM,
     offsetof(struct trial_options, form), false},
    {"output", 'o', "FILE", "write the report there, once it is complete", KIND_FILE,
     offsetof(struct trial_options, output), false},
    {"home", 0, "DIR", "the folder with rules/ and jurisdictions/", KIND_FOLDER,
     offsetof(struct trial_options, home), false},
};

const struct command command_trial = {
    .name = "trial",
    .summary = "say which of many jobs a change of law would move",
    .usage = "--before LAW --after LAW [options] JOBS ...",
    .about = "Judges every job under both laws: which findings move, from what to what, in how\n"
             "many jobs and by which figure; which jobs newly fail. JOBS are files, folders or\n"
             "- for standard input: .json holds one job, anything else a job a line.",
    .options = OPTIONS,
    .option_count = sizeof(OPTIONS) / sizeof(OPTIONS[0]),
    .words = {KIND_FILE, KIND_FILE},
    .words_most = SEVERAL_MOST,
    .status = "0 nothing moves; 1 something does; 2 the jobs or the arguments\n"
              "cannot be used; 3 a rule or profile is broken, or the trial did not end",
    .example = "trial --before example/walk --after walk-draft.lua permits/",
    .run = run_trial,
};
