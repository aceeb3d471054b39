#include "command/command.h"

#include "command/sitting.h"
#include "include/eavemark.h"

#include <string.h>

/* What the table cannot say. */
static int complete_options(const struct sitting_options *options)
{
    if (options->list && options->fill == NULL)
        return complain_of_usage(&command_new, "--list needs --fill JOB");
    if (options->like != NULL && options->fill != NULL)
        return complain_of_usage(&command_new, "--like begins a new job, --fill goes on with one");
    if (options->stage != NULL && options->fill == NULL)
        return complain_of_usage(&command_new, "--stage goes with --fill");
    if (options->form != NULL && !options->list)
        return complain_of_usage(&command_new, "--form goes with --list");
    if (options->fill != NULL && strcmp(options->fill, "-") == 0)
        return complain_of_usage(&command_new,
                                 "the answers come from standard input: name a file to fill");
    if (options->list)
        return COMMAND_GOES_ON;
    return sitting_refuse_overwriting(options);
}

/* Listing ------------------------------------------------------------------ */

/* What --fill would ask, without asking it: for a form, or to send to the owner. */
static int list_questions(const struct sitting_options *options, eavemark *handle)
{
    const struct eavemark_request request = {.name = options->fill,
                                             .jurisdiction = options->jurisdiction,
                                             .date = options->date,
                                             .shop_name = options->shop};
    const bool json = options->form != NULL && strcmp(options->form, "json") == 0;
    char *report = NULL, *problems = NULL;
    const int status = (int)eavemark_questions(
        handle, &request, json ? EAVEMARK_JSON : EAVEMARK_TEXT, &report, &problems);
    return output_answer(status, options->output, report, problems);
}

static int run_new(int argc, char **argv)
{
    struct sitting_options options = {0};
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
    status = options.list ? list_questions(&options, handle) : sitting_run(&options, handle);
    eavemark_close(handle);
    return status;
}

static const struct option_line OPTIONS[] = {
    {"jurisdiction", 0, "ID", "the place, such as example/tamarack", KIND_JURISDICTION,
     offsetof(struct sitting_options, jurisdiction), false},
    {"date", 0, "YYYY-MM-DD", "the day of application", KIND_OTHER,
     offsetof(struct sitting_options, date), false},
    {"fill", 0, "JOB", "ask for what this job leaves open, and write it back", KIND_FILE,
     offsetof(struct sitting_options, fill), false},
    {"like", 0, "JOB", "begin with the habits of another job: nothing of its house", KIND_FILE,
     offsetof(struct sitting_options, like), false},
    {"stage", 0, "STAGE", "with --fill: the work has come to this stage", KIND_STAGE,
     offsetof(struct sitting_options, stage), false},
    {"ahead", 0, NULL, "ask for what later stages decide as well, as it is planned", KIND_NONE,
     offsetof(struct sitting_options, ahead), false},
    {"list", 0, NULL, "with --fill: print the open questions, ask none", KIND_NONE,
     offsetof(struct sitting_options, list), false},
    {"form", 0, "FORM", "of --list: text (to read) or json (to pass on)", KIND_FORM,
     offsetof(struct sitting_options, form), false},
    {"shop", 0, "FILE", "the shop sheet, in place of one that the job names", KIND_FILE,
     offsetof(struct sitting_options, shop), false},
    {"output", 'o', "FILE", "write the job there instead of standard output", KIND_FILE,
     offsetof(struct sitting_options, output), false},
    {"home", 0, "DIR", "the folder with rules/ and jurisdictions/", KIND_FOLDER,
     offsetof(struct sitting_options, home), false},
};

const struct command command_new = {
    .name = "new",
    .summary = "start a job, or fill one in, by answering questions",
    .usage = "[options]",
    .about = "Asks for the place (by words of its name), the day and the plan of the house,\n"
             "then for what still decides something at the job's stage. What fails is told at\n"
             "once. Answers come from standard input, a line each, and are kept in FILE.draft\n"
             "as they are given: the same command goes on from there.",
    .options = OPTIONS,
    .option_count = sizeof(OPTIONS) / sizeof(OPTIONS[0]),
    .status = "0 written, open questions included; 2 nothing could be written; 3 a\n"
              "rule or profile is broken",
    .example = "new --jurisdiction example/tamarack -o job.json",
    .run = run_new,
};
