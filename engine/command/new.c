#include "command/command.h"

#include "include/eavemark.h"

#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <sys/types.h>

enum { LINE_MOST = 4096 };

struct new_options {
    const char *home, *jurisdiction, *date, *fill, *output, *form;
    bool list;
};

/* What is under way. */
struct sitting {
    const struct new_options *options;
    eavemark_interview *interview;
    bool ended; /* by stop, or the end of the answers */
};

/* Where the job goes: NULL for standard output. */
static const char *target(const struct new_options *options)
{
    return options->output != NULL ? options->output : options->fill;
}

/* A file is written over only when it is the one that is filled in. */
static int refuse_overwriting(const struct new_options *options)
{
    const char *path = target(options);
    struct stat about;
    if (path == NULL || strcmp(path, "-") == 0 || stat(path, &about) != 0
        || !S_ISREG(about.st_mode)
        || (options->fill != NULL && arguments_same_file(path, options->fill)))
        return COMMAND_GOES_ON;
    complain("new: %s is there already; to fill in what it leaves open: --fill %s", path, path);
    return EAVEMARK_UNUSABLE;
}

/* What the table cannot say. */
static int complete_options(const struct new_options *options)
{
    if (options->list && options->fill == NULL)
        return complain_of_usage(&command_new, "--list needs --fill JOB");
    if (options->form != NULL && !options->list)
        return complain_of_usage(&command_new, "--form goes with --list");
    if (options->fill != NULL && strcmp(options->fill, "-") == 0)
        return complain_of_usage(&command_new,
                                 "the answers come from standard input: name a file to fill");
    if (options->list)
        return COMMAND_GOES_ON;
    return refuse_overwriting(options);
}

/* Listing ------------------------------------------------------------------ */

static int list_questions(const struct new_options *options, eavemark *handle)
{
    const struct eavemark_request request = {
        .name = options->fill, .jurisdiction = options->jurisdiction, .date = options->date};
    const bool json = options->form != NULL && strcmp(options->form, "json") == 0;
    char *report = NULL, *problems = NULL;
    int status = (int)eavemark_questions(handle, &request, json ? EAVEMARK_JSON : EAVEMARK_TEXT,
                                         &report, &problems);
    fputs(problems == NULL ? "eavemark: out of memory\n" : problems, stderr);
    if (report != NULL && output_text(options->output, report) != 0)
        status = EAVEMARK_UNUSABLE;
    free(report);
    free(problems);
    return status;
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
    fprintf(stderr, "%s> ", ask == ASK_AGAIN ? "" : words);
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
        taken = line[0] == '\0' ? eavemark_interview_skip(sitting->interview, &why)
                                : eavemark_interview_answer(sitting->interview, line, &why);
    else if (!eavemark_interview_back(sitting->interview))
        fputs("    there is nothing to go back to\n", stderr);
    if (taken)
        free(why);
    else
        say_refused(why);
    return taken ? ASK : ASK_AGAIN;
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

/* Writing -------------------------------------------------------------------- */

static void say_written(const struct sitting *sitting, size_t answered, size_t skipped)
{
    const char *path = target(sitting->options);
    const bool file = path != NULL && strcmp(path, "-") != 0;
    fprintf(stderr, "\n%zu answered, %zu left open", answered, skipped);
    fputs(sitting->ended ? "; stopped before the end.\n" : "; nothing else is asked here.\n",
          stderr);
    if (!file)
        return;
    complain("written: %s", path);
    if (sitting->ended || skipped > 0)
        complain("go on with: eavemark new --fill %s", path);
    complain("check it with: eavemark check %s", path);
}

/* Looked at again before writing: the file may have come meanwhile. */
static int write_job(const struct sitting *sitting)
{
    size_t answered = 0, skipped = 0;
    char *problems = NULL;
    char *job = eavemark_interview_job(sitting->interview, &answered, &skipped, &problems);
    int status = EAVEMARK_NOTHING_FAILED;
    if (job == NULL) {
        complain("nothing is written: it is no job yet");
        fputs(problems == NULL ? "eavemark: out of memory\n" : problems, stderr);
        status = EAVEMARK_UNUSABLE;
    } else if (refuse_overwriting(sitting->options) != COMMAND_GOES_ON
               || output_text(target(sitting->options), job) != 0) {
        status = EAVEMARK_UNUSABLE;
    } else {
        say_written(sitting, answered, skipped);
    }
    free(job);
    free(problems);
    return status;
}

/* Questions go to standard error: standard output may be the job. */
static int interview_user(const struct new_options *options, eavemark *handle)
{
    const struct eavemark_request request = {
        .name = options->fill, .jurisdiction = options->jurisdiction, .date = options->date};
    enum eavemark_status opened = EAVEMARK_BROKEN;
    char *problems = NULL;
    struct sitting sitting = {.options = options};
    sitting.interview = eavemark_interview_open(handle, &request, &opened, &problems);
    fputs(problems == NULL ? "eavemark: out of memory\n" : problems, stderr);
    free(problems);
    if (sitting.interview == NULL)
        return (int)opened;
    fputs("Answer each question; Enter alone: not known yet; ? why it is asked;\n"
          "back or <: the one before; stop or .: write what there is.\n", stderr);
    int status = ask_all(&sitting);
    const int written = write_job(&sitting);
    eavemark_interview_close(sitting.interview);
    return status > written ? status : written;
}

static int run_new(int argc, char **argv)
{
    struct new_options options = {0};
    struct several words = {.count = 0};
    int status = arguments_read(&command_new, &options, &words, argc, argv);
    if (status == COMMAND_GOES_ON)
        status = complete_options(&options);
    if (status != COMMAND_GOES_ON)
        return status;
    eavemark *handle = eavemark_open(settings_home(options.home));
    if (handle == NULL) {
        complain("out of memory");
        return EAVEMARK_BROKEN;
    }
    status = options.list ? list_questions(&options, handle) : interview_user(&options, handle);
    eavemark_close(handle);
    return status;
}

static const struct option_line OPTIONS[] = {
    {"jurisdiction", 0, "ID", "the place, such as example/tamarack", KIND_JURISDICTION,
     offsetof(struct new_options, jurisdiction), false},
    {"date", 0, "YYYY-MM-DD", "the day of application", KIND_OTHER,
     offsetof(struct new_options, date), false},
    {"fill", 0, "JOB", "ask only for what this job leaves open, and write it\n"
     "back with its facts in the order they have", KIND_FILE,
     offsetof(struct new_options, fill), false},
    {"list", 0, NULL, "with --fill: print the open questions, ask none", KIND_NONE,
     offsetof(struct new_options, list), false},
    {"form", 0, "FORM", "of --list: text (to read) or json (to pass on)", KIND_FORM,
     offsetof(struct new_options, form), false},
    {"output", 'o', "FILE", "write the job there instead of standard output", KIND_FILE,
     offsetof(struct new_options, output), false},
    {"home", 0, "DIR", "the folder with rules/ and jurisdictions/", KIND_FOLDER,
     offsetof(struct new_options, home), false},
};

const struct command command_new = {
    .name = "new",
    .summary = "start a job, or fill one in, by answering questions",
    .usage = "[options]",
    .about = "Asks what the rules of the job's place still need to know, and nothing else.\n"
             "Answers come from standard input, a line each; a file is written only over the\n"
             "job that is filled in.",
    .options = OPTIONS,
    .option_count = sizeof(OPTIONS) / sizeof(OPTIONS[0]),
    .status = "0 written, open questions included; 2 nothing could be written; 3 a\n"
              "rule or profile is broken",
    .example = "new --jurisdiction example/tamarack -o job.json",
    .run = run_new,
};
