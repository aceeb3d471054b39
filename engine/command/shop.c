#include "command/command.h"

#include "include/eavemark.h"

struct shop_options {
    const char *home, *output, *job;
};

static int run_shop(int argc, char **argv)
{
    struct shop_options options = {0};
    struct several words = {.count = 0};
    const int read = arguments_read(&command_shop, &options, &words, argc, argv);
    if (read != COMMAND_GOES_ON)
        return read;
    if (words.count == 0)
        return complain_of_usage(&command_shop,
                                 "of which job? Name a file, or - for standard input");
    options.job = words.items[0];
    if (options.output != NULL && arguments_same_file(options.job, options.output))
        return complain_of_usage(&command_shop, "the sheet would overwrite the job itself");
    eavemark *handle = eavemark_open(settings_home(options.home));
    const struct eavemark_request request = {.name = options.job};
    char *sheet = NULL, *problems = NULL;
    const int status = handle == NULL
                           ? EAVEMARK_BROKEN
                           : (int)eavemark_shop_lift(handle, &request, &sheet, &problems);
    eavemark_close(handle);
    return output_answer(status, options.output, sheet, problems);
}

static const struct option_line OPTIONS[] = {
    {"output", 'o', "FILE", "write the sheet there, once it is complete", KIND_FILE,
     offsetof(struct shop_options, output), false},
    {"home", 0, "DIR", "the folder with rules/ and jurisdictions/", KIND_FOLDER,
     offsetof(struct shop_options, home), false},
};

const struct command command_shop = {
    .name = "shop",
    .summary = "lift a shop sheet out of a job: its habits, nothing of the house",
    .usage = "[options] JOB",
    .about = "Writes a shop sheet with the habits that JOB states: materials, nails, laps, who\n"
             "calls, waste. Look it through: what was special on that house is in it too.",
    .options = OPTIONS,
    .option_count = sizeof(OPTIONS) / sizeof(OPTIONS[0]),
    .words = {KIND_FILE, KIND_NONE},
    .words_most = 1,
    .status = "0 written; 2 the job or the arguments cannot be used; 3 the rules\n"
              "are broken",
    .example = "shop job.json -o shop.json",
    .run = run_shop,
};
