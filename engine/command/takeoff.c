#include "command/command.h"

#include "include/eavemark.h"

#include <string.h>

struct takeoff_options {
    const char *home, *jurisdiction, *date, *form, *output, *shop, *job;
    bool work;
};

/* arguments_read let only these three through. */
static enum eavemark_form form_of(const char *word)
{
    if (word == NULL || strcmp(word, "text") == 0)
        return EAVEMARK_TEXT;
    return strcmp(word, "json") == 0 ? EAVEMARK_JSON : EAVEMARK_CSV;
}

/* What the table cannot say: that a job is needed and not overwritten. */
static int complete_options(const struct takeoff_options *options)
{
    if (options->job == NULL)
        return complain_of_usage(&command_takeoff,
                                 "which job? Name a file, or - for standard input");
    if (options->work && form_of(options->form) == EAVEMARK_CSV)
        return complain_of_usage(&command_takeoff, "--work is for text; json has the sums anyway");
    if (options->output != NULL && arguments_same_file(options->job, options->output))
        return complain_of_usage(&command_takeoff, "the report would overwrite the job itself");
    return COMMAND_GOES_ON;
}

/* The order is what a supplier is handed; the sums are for whoever doubts it. */
static int make_takeoff(const struct takeoff_options *options, eavemark *handle)
{
    const struct eavemark_request request = {.name = options->job,
                                             .jurisdiction = options->jurisdiction,
                                             .date = options->date,
                                             .shop_name = options->shop};
    char *report = NULL, *problems = NULL;
    const int status = (int)(options->work ? eavemark_takeoff : eavemark_order)(
        handle, &request, form_of(options->form), &report, &problems);
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
    {"work", 0, NULL, "the sums: each quantity with its arithmetic", KIND_NONE,
     offsetof(struct takeoff_options, work), false},
    {"form", 0, "FORM", "text (to read), json (to pass on) or csv (a table)", KIND_LIST_FORM,
     offsetof(struct takeoff_options, form), false},
    {"output", 'o', "FILE", "write the report there, once it is complete", KIND_FILE,
     offsetof(struct takeoff_options, output), false},
    {"home", 0, "DIR", "the folder with rules/ and jurisdictions/", KIND_FOLDER,
     offsetof(struct takeoff_options, home), false},
};

const struct command command_takeoff = {
    .name = "takeoff",
    .summary = "order the material of a job; --work shows areas, loads, days and the sums",
    .usage = "[options] JOB",
    .about = "Prints what a reroof takes as an order to hand to the supplier: how many, in\n"
             "which unit, of what, and for which planes. --work shows the sums instead, with\n"
             "areas, loads and days: each quantity with its arithmetic and the figure of the\n"
             "place that drives it. What the job does not say stays an open question; nothing\n"
             "is guessed. JOB is a JSON file, or - for standard input.",
    .options = OPTIONS,
    .option_count = sizeof(OPTIONS) / sizeof(OPTIONS[0]),
    .words = {KIND_FILE, KIND_NONE},
    .words_most = 1,
    .status = "0 reckoned, open questions included; 2 the job or the arguments\n"
              "cannot be used; 3 a quantity or profile is broken",
    .example = "takeoff job.json",
    .run = run_takeoff,
};
