/* check.c - one job, or with --lines many (lines.c). watch.c runs the same check again and
 * again, so that what it needs of this file stands in checking.h. */
#include "command/checking.h"

#include "command/command.h"
#include "command/workers.h"

#include <stdlib.h>
#include <string.h>
#include <unistd.h>

/* What the table cannot say: options that exclude one another. */
static int complete_options(struct check *check)
{
    size_t count;
    if (check->lines && check->form != NULL && strcmp(check->form, "json") != 0)
        return complain_of_usage(&command_check, "--lines gives JSON only");
    if (check->brief && (!check->lines || check->all))
        return complain_of_usage(&command_check,
                                 check->all ? "--brief tells less, --all tells more: give one"
                                            : "--brief goes with --lines");
    if (check->jobs != NULL && !check->lines)
        return complain_of_usage(&command_check, "--jobs goes with --lines");
    if (check->jobs != NULL && !workers_read(check->jobs, &count))
        return complain_of_usage(&command_check, "--jobs takes a number from 1 to 64");
    if (check->job == NULL && !check->lines)
        return complain_of_usage(&command_check, "which job? Name a file, or - for standard input");
    if (check->job == NULL)
        check->job = "-";
    if (check->output != NULL && arguments_same_file(check->job, check->output))
        return complain_of_usage(&command_check, "the report would overwrite the job itself");
    return COMMAND_GOES_ON;
}

/* Colour is for a terminal that can show it and a user who has not refused it
 * (NO_COLOR, a convention of many programs). */
static bool wants_colour(const struct check *check)
{
    const char *refused = getenv("NO_COLOR"), *terminal = getenv("TERM");
    return check->output == NULL && isatty(STDOUT_FILENO) == 1
           && (refused == NULL || refused[0] == '\0')
           && (terminal == NULL || strcmp(terminal, "dumb") != 0);
}

/* Only the three there are: arguments_read looked at the word. */
static enum eavemark_form check_form(const char *word)
{
    return word == NULL                ? EAVEMARK_TEXT
           : strcmp(word, "json") == 0 ? EAVEMARK_JSON
           : strcmp(word, "html") == 0 ? EAVEMARK_HTML
                                       : EAVEMARK_TEXT;
}

bool check_is_text(const struct check *check)
{
    return check_form(check->form) == EAVEMARK_TEXT;
}

unsigned check_options(const struct check *check)
{
    return (check_is_text(check) && wants_colour(check) ? EAVEMARK_COLOUR : 0u)
           | (check->all ? EAVEMARK_ALL : 0u) | (check->brief ? EAVEMARK_BRIEF : 0u);
}

/* Whatever happens, problems are not NULL afterwards unless even that took more memory
 * than there is. */
void check_run(const struct check *check, struct check_outcome *out)
{
    const struct eavemark_request request = {
        .name = check->job,
        .jurisdiction = check->jurisdiction,
        .date = check->date,
        .stage = check->stage,
        .shop_name = check->shop,
        .wanted = check_form(check->form) == EAVEMARK_HTML ? EAVEMARK_WANT_ANY
                                                           : EAVEMARK_WANT_NO_DRAWINGS,
    };
    *out = (struct check_outcome){.status = EAVEMARK_BROKEN};
    out->handle = eavemark_open(settings_home(check->home));
    out->result = out->handle == NULL ? NULL : eavemark_check(out->handle, &request);
    if (out->result != NULL) {
        out->status = (int)eavemark_result_status(out->result, check->strict);
        out->problems = strdup(eavemark_result_problems(out->result));
        out->report = eavemark_result_report(out->result, check_form(check->form),
                                             check_options(check));
    }
    /* No report and not a word why: only memory can be wanting. */
    if (out->problems == NULL || (out->report == NULL && out->problems[0] == '\0')) {
        check_outcome_free(out);
        out->status = EAVEMARK_BROKEN;
        out->problems = strdup("eavemark: out of memory\n");
    }
}

/* The result before the handle: it was made by it. */
void check_outcome_free(struct check_outcome *outcome)
{
    free(outcome->problems);
    free(outcome->report);
    eavemark_result_free(outcome->result);
    eavemark_close(outcome->handle);
    *outcome = (struct check_outcome){0};
}

/* Problems go to standard error even beside a report: they may be warnings. */
static int check_one(const struct check *check)
{
    struct check_outcome outcome;
    check_run(check, &outcome);
    int status = outcome.status;
    /* check_run has words for want of memory, unless even these take more than there is. */
    fputs(outcome.problems == NULL ? "eavemark: out of memory\n" : outcome.problems, stderr);
    if (outcome.report != NULL && output_text(check->output, outcome.report) != 0)
        status = EAVEMARK_UNUSABLE;
    check_outcome_free(&outcome);
    return status;
}

/* One handle for all lines: laws are loaded once. */
static int check_many(const struct check *check)
{
    eavemark *handle = eavemark_open(settings_home(check->home));
    if (handle == NULL) {
        complain("out of memory");
        return EAVEMARK_BROKEN;
    }
    const int status = lines_check(check, handle);
    eavemark_close(handle);
    return status;
}

/* One job and many share the options, not the way. */
static int run_check(int argc, char **argv)
{
    struct check check = {0};
    struct several words = {.count = 0};
    int status = arguments_read(&command_check, &check, &words, argc, argv);
    if (status != COMMAND_GOES_ON)
        return status;
    check.job = words.items[0];
    status = complete_options(&check);
    if (status != COMMAND_GOES_ON)
        return status;
    return check.lines ? check_many(&check) : check_one(&check);
}

static const struct option_line OPTIONS[] = {
    {"jurisdiction", 0, "ID", "check under this place instead of the job's", KIND_JURISDICTION,
     offsetof(struct check, jurisdiction), false},
    {"date", 0, "YYYY-MM-DD", "as if applied for on this day", KIND_OTHER,
     offsetof(struct check, date), false},
    {"stage", 0, "STAGE",
     "what is looked at then, and what was left undone\nbefore: "
     "permit, deck, dry-in, final",
     KIND_STAGE, offsetof(struct check, stage), false},
    {"shop", 0, "FILE", "the shop sheet, in place of one that the job names", KIND_FILE,
     offsetof(struct check, shop), false},
    {"form", 0, "FORM", "text (to read), json (to pass on) or html (to print)", KIND_REPORT_FORM,
     offsetof(struct check, form), false},
    {"output", 'o', "FILE", "write the report there, once it is complete", KIND_FILE,
     offsetof(struct check, output), false},
    {"strict", 0, NULL, "what is open, not met or disputed counts as failed", KIND_NONE,
     offsetof(struct check, strict), false},
    {"all", 0, NULL, "every finding in full, and those that do not apply", KIND_NONE,
     offsetof(struct check, all), false},
    {"lines", 0, NULL,
     "JOB (or standard input) has a job per line; so has the\n"
     "answer, in JSON",
     KIND_NONE, offsetof(struct check, lines), false},
    {"brief", 0, NULL, "with --lines: only counts, and which rules failed", KIND_NONE,
     offsetof(struct check, brief), false},
    {"jobs", 0, "N", "with --lines: work with N processes (a file: one a core)", KIND_OTHER,
     offsetof(struct check, jobs), false},
    {"home", 0, "DIR", "the folder with rules/ and jurisdictions/", KIND_FOLDER,
     offsetof(struct check, home), false},
};

const struct command command_check = {
    .name = "check",
    .summary = "pre-check a job against the code of its place and date",
    .usage = "[options] JOB",
    .about = "Pre-checks a reroof against the building code of its place and date. JOB is a\n"
             "JSON file, or - for standard input.",
    .options = OPTIONS,
    .option_count = sizeof(OPTIONS) / sizeof(OPTIONS[0]),
    .words = {KIND_FILE, KIND_NONE},
    .words_most = 1,
    .status = "0 nothing failed; 1 something failed; 2 the job or the arguments\n"
              "cannot be used; 3 a rule or profile is broken. With --lines, the highest.",
    .example = "check --stage deck job.json",
    .run = run_check,
};
