/* sitting_write.c - what came of a sitting, written and said, see sitting_parts.h. */
#include "command/sitting_parts.h"

#include "command/command.h"

#include "base/file.h"
#include "include/eavemark.h"

#include <stdlib.h>
#include <string.h>

/* Nothing when there is no draft: then there is nothing to go on with. */
static void say_kept(const struct sitting *sitting)
{
    const char *path = sitting_target(sitting->options);
    if (!sitting->draft.begun || sitting->draft.handle < 0)
        return;
    complain("what was answered is kept in %s", sitting->draft.path);
    complain("go on with: eavemark %s %s %s", sitting_command(sitting->options),
             sitting->options->fill == path ? "--fill" : "-o", path);
}

/* The file that is filled in must still be what it was when it was read. */
static bool is_unchanged(const struct sitting *sitting)
{
    const char *path = sitting_target(sitting->options);
    char *now = NULL;
    size_t length = 0;
    if (sitting->original == NULL || sitting->begun || path == NULL
        || !arguments_same_file(path, sitting->options->fill))
        return true;
    const bool same = file_read(&now, &length, path, SITTING_JOB_MOST) == FILE_READ
                      && length == sitting->length && memcmp(now, sitting->original, length) == 0;
    free(now);
    return same;
}

/* How it stands and how to go on, since nobody reads the job that was written. */
static void say_written(const struct sitting *sitting, size_t answered, size_t skipped)
{
    const char *path = sitting_target(sitting->options);
    const bool file = path != NULL && strcmp(path, "-") != 0;
    fprintf(stderr, "\n%zu answered, %zu left open", answered, skipped);
    fputs(sitting->ended ? "; stopped before the end.\n" : "; nothing else is asked here.\n",
          stderr);
    if (sitting->options->habits) {
        if (file)
            complain("written: %s; a job beside it goes by it with \"shop\": \"%s\"", path,
                     strrchr(path, '/') == NULL ? path : strrchr(path, '/') + 1);
        return;
    }
    char *standing = eavemark_interview_standing(sitting->interview);
    if (standing != NULL)
        fprintf(stderr, "So far: %s.\n", standing);
    free(standing);
    if (!file)
        return;
    complain("written: %s", path);
    if (sitting->ended || skipped > 0)
        complain("go on with: eavemark new --fill %s", path);
    const bool apart = sitting->options->shop != NULL && sitting_sheet(sitting->options) == NULL;
    complain("check it with: eavemark check %s%s%s%s", apart ? "--shop " : "",
             apart ? sitting->options->shop : "", apart ? " " : "", path);
}

/* Over nothing that is there, but the file filled in, if it is as it was. Looked at again
 * before writing: the file may have come meanwhile. */
static bool write_over(const struct sitting *sitting, const char *job)
{
    if (sitting_refuse_overwriting(sitting->options) != COMMAND_GOES_ON)
        return false;
    if (is_unchanged(sitting))
        return output_text(sitting_target(sitting->options), job) == 0;
    complain("%s changed since it was read, and is left as it is now", sitting->options->fill);
    if (sitting->draft.handle >= 0 && sitting->draft.begun) {
        complain("the job as it was answered is the last line of %s", sitting->draft.path);
    } else {
        complain("the job as it was answered:");
        output_text(NULL, job);
    }
    return false;
}

int sitting_write(struct sitting *sitting)
{
    size_t answered = 0, skipped = 0;
    char *problems = NULL;
    bool written = false;
    /* From the job being put together to the draft being put away: a signal between would leave
     * a draft of what is already written, or neither. */
    draft_hold_signals();
    char *job = eavemark_interview_job(sitting->interview, &answered, &skipped, &problems);
    if (job == NULL) {
        complain("nothing is written: it is no %s yet", sitting->options->habits ? "sheet" : "job");
        fputs(problems == NULL ? "eavemark: out of memory\n" : problems, stderr);
        say_kept(sitting);
    } else {
        written = write_over(sitting, job);
    }
    draft_close(&sitting->draft, written);
    draft_let_signals();
    if (written)
        say_written(sitting, answered, skipped);
    free(job);
    free(problems);
    return written ? EAVEMARK_NOTHING_FAILED : EAVEMARK_UNUSABLE;
}
