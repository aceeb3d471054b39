#include "command/command.h"

#include "include/eavemark.h"

#include <string.h>

struct takeoff_options {
    const char *home, *jurisdiction, *date, *form, *output, *shop, *job;
};

/* What the table cannot say: that a job is needed and not overwritten. */
static int complete_options(const struct takeoff_options *options)
{
    if (options->job == NULL)
        return complain_of_usage(&command_takeoff,
                                 "which job? Name a file, or - for standard input");
    if (options->output != NULL && arguments_same_file(options->job, options->output))
        return complain_of_usage(&command_takeoff, "the report would overwrite the job itself");
    return COMMAND_GOES_ON;
}

/* Two forms only: a takeoff has no page. */
static int make_takeoff(const struct takeoff_options *options, eavemark *handle)
{
    const struct eavemark_request request = {.name = options->job,
                                             .jurisdiction = options->jurisdiction,
                                             .date = options->date,
                                             .shop_name = options->shop};
    const bool json = options->form != NULL && strcmp(options->form, "json") == 0;
    char *report = NULL, *problems = NULL;
    const int status = (int)eavemark_takeoff(handle, &request, json ? EAVEMARK_JSON : EAVEMARK_TEXT,
                                             &report, &problems);
    return output_answer(status, options->output, report, problems);
}

static int run_takeoff(int argc, char **argv)
{
    struct takeoff_options options = {0};
    struct several words = {.count = 0};
    int status = arguments_read(&command_takeoff, &options, &words, argc, argv);
    if (status != COMMAND_GOES_ON)
        return status;
    options.job = words.items[0];
    status = complete_options(&options);
    if (status != COMMAND_GOES_ON)
        return status;
    eavemark *handle = eavemark_open(settings_home(options.home));
    if (handle == NULL) {
        complain("out of memory");
        return EAVEMARK_BROKEN;
    }
    status = make_takeoff(&options, handle);
    eavemark_close(handle);
    return status;
}

static const struct option_line OPTIONS[] = {
    {"jurisdiction", 0, "ID", "reckon under this place instead of the job's", KIND_JURISDICTION,
     offsetof(struct takeoff_options, jurisdiction), false},
    {"date", 0, "YYYY-MM-DD", "as if applied for on this day", KIND_OTHER,
     offsetof(struct takeoff_options, date), false},
    {"shop", 0, "FILE", "the shop sheet, in place of one that the job names", KIND_FILE,
     offsetof(struct takeoff_options, shop), false},
    {"form", 0, "FORM", "text (to read) or json (to pass on)", KIND_FORM,
     offsetof(struct takeoff_options, form), false},
    {"output", 'o', "FILE", "write the report there, once it is complete", KIND_FILE,
     offsetof(struct takeoff_options, output), false},
    {"home", 0, "DIR", "the folder with rules/ and jurisdictions/", KIND_FOLDER,
     offsetof(struct takeoff_options, home), false},
};

const struct command command_takeoff = {
    .name = "takeoff",
    .summary = "reckon areas, materials, loads and days for a job",
    .usage = "[options] JOB",
    .about = "Reckons what a reroof takes: areas, squares, bundles, nails, underlayment, ice\n"
             "barrier, drip edge, vents, deck, loads and days, each with its arithmetic and\n"
             "the figure of the place that drives it. What the job does not say stays an open\n"
             "question; nothing is guessed. JOB is a JSON file, or - for standard input.",
    .options = OPTIONS,
    .option_count = sizeof(OPTIONS) / sizeof(OPTIONS[0]),
    .words = {KIND_FILE, KIND_NONE},
    .words_most = 1,
    .status = "0 reckoned, open questions included; 2 the job or the arguments\n"
              "cannot be used; 3 a quantity or profile is broken",
    .example = "takeoff job.json",
    .run = run_takeoff,
};
