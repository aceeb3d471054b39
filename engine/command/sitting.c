#include "command/sitting_parts.h"

#include "command/command.h"

#include "base/file.h"
#include "include/eavemark.h"

#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <sys/types.h>

/* NULL or "-" is standard output; a job that is filled in is written where it was. */
const char *sitting_target(const struct sitting_options *options)
{
    return options->output != NULL ? options->output : options->fill;
}

const char *sitting_command(const struct sitting_options *options)
{
    return options->habits ? "shop" : "new";
}

/* A file is written over only when it is the one that is filled in. */
int sitting_refuse_overwriting(const struct sitting_options *options)
{
    const char *path = sitting_target(options);
    struct stat about;
    if (path == NULL || strcmp(path, "-") == 0 || stat(path, &about) != 0 || !S_ISREG(about.st_mode)
        || (options->fill != NULL && arguments_same_file(path, options->fill)))
        return COMMAND_GOES_ON;
    if (options->habits)
        complain("shop: %s is there already; change it by hand, or name another", path);
    else
        complain("new: %s is there already; to fill in what it leaves open: --fill %s", path, path);
    return EAVEMARK_UNUSABLE;
}

/* Keeping ------------------------------------------------------------------ */

/* The draft stands beside a file only, or what will become one. */
static bool is_kept(const struct sitting_options *options)
{
    const char *path = sitting_target(options);
    struct stat about;
    return path != NULL && strcmp(path, "-") != 0
           && (stat(path, &about) != 0 || S_ISREG(about.st_mode));
}

/* Anew whenever there is more to be said: a handler cannot put words together. */
static void prepare_for_signals(const struct sitting *sitting)
{
    char go_on[SITTING_LINE_MOST] = "";
    const char *path = sitting_target(sitting->options);
    if (path != NULL)
        snprintf(go_on, sizeof(go_on), "eavemark %s %s %s", sitting_command(sitting->options),
                 sitting->options->fill == path ? "--fill" : "-o", path);
    draft_say_when_ended(&sitting->draft, go_on);
}

void sitting_keep(struct sitting *sitting)
{
    const bool begun = sitting->draft.begun;
    char *job = eavemark_interview_draft(sitting->interview);
    draft_keep(&sitting->draft, job);
    free(job);
    if (begun != sitting->draft.begun)
        prepare_for_signals(sitting);
}

/* A sheet beside the job ------------------------------------------------- */

const char *sitting_sheet(const struct sitting_options *options)
{
    /* NULL for NULL: without a file to write, or without a sheet, none lies beside it. */
    char *own = file_folder(options->output), *its = file_folder(options->shop);
    const bool beside = own != NULL && its != NULL && strcmp(own, its) == 0
                        && strpbrk(options->shop, "\"\\") == NULL;
    const char *slash = beside ? strrchr(options->shop, '/') : NULL;
    free(own);
    free(its);
    return !beside ? NULL : slash == NULL ? options->shop : slash + 1;
}

/* What a new job begins with: before the permit, and the sheet beside it. To be freed. */
static char *beginning_of(const struct sitting_options *options)
{
    const char *sheet = sitting_sheet(options);
    char begun[SITTING_LINE_MOST];
    if (snprintf(begun, sizeof(begun), "{\"stage\": \"permit\"%s%s%s}",
                 sheet == NULL ? "" : ", \"shop\": \"", sheet == NULL ? "" : sheet,
                 sheet == NULL ? "" : "\"")
        >= (int)sizeof(begun))
        return NULL;
    return strdup(begun);
}

/* Reads what there is to go on from. The exit status when it may not go on. */
static int prepare(struct sitting *sitting)
{
    const struct sitting_options *options = sitting->options;
    sitting->draft.handle = -1;
    /* What cannot be read is told when the interview opens it. */
    if (options->fill != NULL
        && file_read(&sitting->original, &sitting->length, options->fill, SITTING_JOB_MOST)
               != FILE_READ)
        return COMMAND_GOES_ON;
    if (is_kept(options)
        && draft_open(&sitting->draft, sitting_target(options), sitting->original, sitting->length)
               != 0)
        return EAVEMARK_UNUSABLE;
    /* A new job begins before the permit. */
    if (options->fill == NULL && sitting->draft.job == NULL && !options->habits) {
        sitting->original = beginning_of(options);
        sitting->length = sitting->original == NULL ? 0 : strlen(sitting->original);
        sitting->begun = true;
    }
    if (sitting->draft.job != NULL)
        complain("going on from %s; to begin anew, delete it", sitting->draft.path);
    return COMMAND_GOES_ON;
}

static int open_interview(struct sitting *sitting, eavemark *handle)
{
    const struct sitting_options *options = sitting->options;
    const char *draft = sitting->draft.job;
    /* Where a sheet lies that the job names: beside the job. */
    char *folder = file_folder(options->fill != NULL ? options->fill : sitting_target(options));
    struct eavemark_request request = {
        .name = options->fill != NULL || draft == NULL ? options->fill : sitting->draft.path,
        .text = draft != NULL ? draft : sitting->original,
        .length = draft != NULL ? strlen(draft) : sitting->length,
        .jurisdiction = options->jurisdiction,
        .date = options->date,
        .shop_name = options->shop,
        .shop_folder = folder,
        .ahead = options->ahead,
        .stage = options->stage,
        .habits = options->habits,
        .like_name = draft == NULL ? options->like : NULL};
    enum eavemark_status opened = EAVEMARK_BROKEN;
    char *problems = NULL;
    sitting->interview = eavemark_interview_open(handle, &request, &opened, &problems);
    fputs(problems == NULL ? "eavemark: out of memory\n" : problems, stderr);
    free(problems);
    free(folder);
    return sitting->interview == NULL ? (int)opened : COMMAND_GOES_ON;
}

/* Questions go to standard error: standard output may be the job. */
int sitting_run(const struct sitting_options *options, eavemark *handle)
{
    struct sitting sitting = {.options = options};
    int status = prepare(&sitting);
    if (status == COMMAND_GOES_ON)
        status = open_interview(&sitting, handle);
    if (status != COMMAND_GOES_ON) {
        draft_close(&sitting.draft, false);
        free(sitting.original);
        return status;
    }
    prepare_for_signals(&sitting);
    if (options->habits)
        fputs("What the shop does alike on every house; place and day say whose rules ask.\n",
              stderr);
    fputs("Answer each question; Enter alone or \"don't know\": not known yet; ? why it is\n"
          "asked; back or <: the one before; stop or .: write what there is. Left is what\n"
          "waits now; more may follow from an answer.\n",
          stderr);
    status = sitting_ask(&sitting);
    const int written = sitting_write(&sitting);
    eavemark_interview_close(sitting.interview);
    free(sitting.original);
    return status > written ? status : written;
}
