#include "command/sitting.h"

#include "command/command.h"

#include "base/file.h"
#include "command/draft.h"
#include "include/eavemark.h"

#include <stdlib.h>
#include <string.h>
#include <strings.h>
#include <sys/stat.h>
#include <sys/types.h>

enum { LINE_MOST = 4096, JOB_MOST = 64 * 1024 * 1024 };

/* What is under way. */
struct sitting {
    const struct sitting_options *options;
    eavemark_interview *interview;
    char *original; /* the file that is filled in, as it was read; or NULL */
    bool begun;     /* no file: what a new job begins with */
    size_t length;
    struct draft draft;
    bool ended; /* by stop, or the end of the answers */
};

/* Where the job goes: NULL for standard output. */
static const char *target(const struct sitting_options *options)
{
    return options->output != NULL ? options->output : options->fill;
}

static const char *name_of(const struct sitting_options *options)
{
    return options->habits ? "shop" : "new";
}

/* A file is written over only when it is the one that is filled in. */
int sitting_refuse_overwriting(const struct sitting_options *options)
{
    const char *path = target(options);
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
    const char *path = target(options);
    struct stat about;
    return path != NULL && strcmp(path, "-") != 0
           && (stat(path, &about) != 0 || S_ISREG(about.st_mode));
}

static void prepare_for_signals(const struct sitting *sitting)
{
    char go_on[LINE_MOST] = "";
    const char *path = target(sitting->options);
    if (path != NULL)
        snprintf(go_on, sizeof(go_on), "eavemark %s %s %s", name_of(sitting->options),
                 sitting->options->fill == path ? "--fill" : "-o", path);
    draft_say_when_ended(&sitting->draft, go_on);
}

static void keep(struct sitting *sitting)
{
    const bool begun = sitting->draft.begun;
    char *job = eavemark_interview_draft(sitting->interview);
    draft_keep(&sitting->draft, job);
    free(job);
    if (begun != sitting->draft.begun)
        prepare_for_signals(sitting);
}

static void say_kept(const struct sitting *sitting)
{
    const char *path = target(sitting->options);
    if (!sitting->draft.begun || sitting->draft.handle < 0)
        return;
    complain("what was answered is kept in %s", sitting->draft.path);
    complain("go on with: eavemark %s %s %s", name_of(sitting->options),
             sitting->options->fill == path ? "--fill" : "-o", path);
}

/* The file that is filled in must still be what it was when it was read. */
static bool is_unchanged(const struct sitting *sitting)
{
    const char *path = target(sitting->options);
    char *now = NULL;
    size_t length = 0;
    if (sitting->original == NULL || sitting->begun || path == NULL
        || !arguments_same_file(path, sitting->options->fill))
        return true;
    const bool same = file_read(&now, &length, path, JOB_MOST) == FILE_READ
                      && length == sitting->length && memcmp(now, sitting->original, length) == 0;
    free(now);
    return same;
}

/* Asking ------------------------------------------------------------------- */

/* Reads a line without its end into line. False at the end of the answers; a
 * line that is too long or holds a zero byte reads as one no answer can be. */
static bool read_line(char line[LINE_MOST])
{
    size_t length = 0;
    int letter = getchar();
    if (letter == EOF)
        return false;
    for (; letter != EOF && letter != '\n'; letter = getchar()) {
        if (letter == '\0')
            letter = '\x01';
        if (length < LINE_MOST - 1)
            line[length++] = (char)letter;
    }
    while (length > 0 && strchr(" \t\r", line[length - 1]) != NULL)
        length--;
    line[length] = '\0';
    return true;
}

/* Owns the words. */
static void say_refused(char *why)
{
    fprintf(stderr, "    not taken: %s\n", why == NULL ? "out of memory" : why);
    free(why);
}

/* What is printed before an answer is read: the question, why it is asked, or
 * nothing once more. */
enum ask { ASK, ASK_HELP, ASK_AGAIN };

/* False when there is no question; *problems then says whether that is well. */
static bool print_question(const struct sitting *sitting, enum ask ask, char **problems)
{
    char *words = eavemark_interview_ask(sitting->interview, ask == ASK_HELP, problems);
    if (words == NULL)
        return false;
    fputs(ask == ASK_AGAIN ? "" : words, stderr);
    const size_t left = eavemark_interview_left(sitting->interview);
    if (left > 0)
        fprintf(stderr, "%zu left> ", left);
    else
        fputs("> ", stderr);
    fflush(stderr);
    free(words);
    free(*problems);
    *problems = NULL;
    return true;
}

/* Front and back are good names for planes: then the word alone is not enough. */
static bool is_either(const struct sitting *sitting, const char *line)
{
    const bool back = strcmp(line, "back") == 0;
    if ((!back && strcmp(line, "stop") != 0) || !eavemark_interview_wants_name(sitting->interview))
        return false;
    fprintf(stderr, "    not taken: for the name write \"%s\" in quotes, to %s write %s\n", line,
            back ? "go back" : "stop", back ? "<" : ".");
    return true;
}

/* An answer like any other: it leaves the fact open. */
static bool is_not_known(const struct sitting *sitting, const char *line)
{
    static const char *const WORDS[] = {"don't know", "dont know", "do not know", "not known",
                                        "unknown"};
    for (size_t i = 0; i < sizeof(WORDS) / sizeof(WORDS[0]); i++)
        if (strcasecmp(line, WORDS[i]) == 0)
            return !eavemark_interview_wants_name(sitting->interview);
    return line[0] == '\0';
}

/* What the user typed; says what to print next. */
static enum ask take_answer(struct sitting *sitting, const char *line)
{
    char *why = NULL;
    bool taken = true;
    if (strcmp(line, "?") == 0)
        return ASK_HELP;
    if (is_either(sitting, line))
        return ASK_AGAIN;
    if (strcmp(line, "stop") == 0 || strcmp(line, ".") == 0)
        sitting->ended = true;
    else if (strcmp(line, "back") != 0 && strcmp(line, "<") != 0)
        taken = is_not_known(sitting, line)
                    ? eavemark_interview_skip(sitting->interview, &why)
                    : eavemark_interview_answer(sitting->interview, line, &why);
    else if (!eavemark_interview_back(sitting->interview))
        fputs("    there is nothing to go back to\n", stderr);
    if (!taken) {
        say_refused(why);
        return ASK_AGAIN;
    }
    free(why);
    if (line[0] != '\0' && !sitting->ended)
        keep(sitting);
    return ASK;
}

/* Asks until nothing is left to ask. Returns the exit status so far. */
static int ask_all(struct sitting *sitting)
{
    char line[LINE_MOST];
    char *problems = NULL;
    enum ask ask = ASK;
    while (!sitting->ended && print_question(sitting, ask, &problems)) {
        if (!read_line(line)) {
            sitting->ended = true;
            fputs("\n", stderr);
            break;
        }
        ask = take_answer(sitting, line);
    }
    /* Stopped by the user: what there is gets written. */
    if (sitting->ended)
        return EAVEMARK_NOTHING_FAILED;
    const bool well = problems != NULL && problems[0] == '\0';
    if (!well)
        fputs(problems == NULL ? "eavemark: out of memory\n" : problems, stderr);
    free(problems);
    return well ? EAVEMARK_NOTHING_FAILED : EAVEMARK_BROKEN;
}

/* A sheet beside the job -------------------------------------------------- */

/* The name of a sheet that lies beside the job, which the job then names; or NULL. */
static const char *sheet_beside(const struct sitting_options *options)
{
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
    const char *sheet = sheet_beside(options);
    char begun[LINE_MOST];
    if (snprintf(begun, sizeof(begun), "{\"stage\": \"permit\"%s%s%s}",
                 sheet == NULL ? "" : ", \"shop\": \"", sheet == NULL ? "" : sheet,
                 sheet == NULL ? "" : "\"")
        >= (int)sizeof(begun))
        return NULL;
    return strdup(begun);
}

/* Writing -------------------------------------------------------------------- */

static void say_written(const struct sitting *sitting, size_t answered, size_t skipped)
{
    const char *path = target(sitting->options);
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
    const bool apart = sitting->options->shop != NULL && sheet_beside(sitting->options) == NULL;
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
        return output_text(target(sitting->options), job) == 0;
    complain("%s changed since it was read, and is left as it is now", sitting->options->fill);
    if (sitting->draft.handle >= 0 && sitting->draft.begun) {
        complain("the job as it was answered is the last line of %s", sitting->draft.path);
    } else {
        complain("the job as it was answered:");
        output_text(NULL, job);
    }
    return false;
}

/* No signal ends the program while it writes. */
static int write_job(struct sitting *sitting)
{
    size_t answered = 0, skipped = 0;
    char *problems = NULL;
    bool written = false;
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

/* Reads what there is to go on from. The exit status when it may not go on. */
static int prepare(struct sitting *sitting)
{
    const struct sitting_options *options = sitting->options;
    sitting->draft.handle = -1;
    /* What cannot be read is told when the interview opens it. */
    if (options->fill != NULL
        && file_read(&sitting->original, &sitting->length, options->fill, JOB_MOST) != FILE_READ)
        return COMMAND_GOES_ON;
    if (is_kept(options)
        && draft_open(&sitting->draft, target(options), sitting->original, sitting->length) != 0)
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
    char *folder = file_folder(options->fill != NULL ? options->fill : target(options));
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
    status = ask_all(&sitting);
    const int written = write_job(&sitting);
    eavemark_interview_close(sitting.interview);
    free(sitting.original);
    return status > written ? status : written;
}
