#include "command/command.h"

#include "command/sitting.h"
#include "include/eavemark.h"

struct shop_options {
    const char *home, *output, *job, *jurisdiction, *date;
};

/* All habits of the job, or none: half a sheet would pass for a whole one. */
static int lift(const struct shop_options *options, eavemark *handle)
{
    const struct eavemark_request request = {.name = options->job};
    char *sheet = NULL, *problems = NULL;
    const int status = (int)eavemark_shop_lift(handle, &request, &sheet, &problems);
    return output_answer(status, options->output, sheet, problems);
}

/* The same sitting as for a job, about the house of rules/shop_house.json. */
static int ask(const struct shop_options *options, eavemark *handle)
{
    const struct sitting_options sitting = {.home = options->home,
                                            .jurisdiction = options->jurisdiction,
                                            .date = options->date,
                                            .output = options->output,
                                            .habits = true};
    const int refused = sitting_refuse_overwriting(&sitting);
    return refused == COMMAND_GOES_ON ? sitting_run(&sitting, handle) : refused;
}

static int run_shop(int argc, char **argv)
{
    struct shop_options options = {0};
    struct several words = {.count = 0};
    const int read = arguments_read(&command_shop, &options, &words, argc, argv);
    if (read != COMMAND_GOES_ON)
        return read;
    options.job = words.count == 0 ? NULL : words.items[0];
    if (options.job != NULL && (options.jurisdiction != NULL || options.date != NULL))
        return complain_of_usage(&command_shop, "a place and a day go with the questions, which "
                                                "a job to lift from leaves out");
    if (options.output != NULL && options.job != NULL
        && arguments_same_file(options.job, options.output))
        return complain_of_usage(&command_shop, "the sheet would overwrite the job itself");
    eavemark *handle = eavemark_open(settings_home(options.home));
    if (handle == NULL) {
        complain("out of memory");
        return EAVEMARK_BROKEN;
    }
    const int status = options.job == NULL ? ask(&options, handle) : lift(&options, handle);
    eavemark_close(handle);
    return status;
}

static const struct option_line OPTIONS[] = {
    {"jurisdiction", 0, "ID", "of the questions: the place whose rules ask for the habits",
     KIND_JURISDICTION, offsetof(struct shop_options, jurisdiction), false},
    {"date", 0, "YYYY-MM-DD", "of the questions: the day of its law", KIND_OTHER,
     offsetof(struct shop_options, date), false},
    {"output", 'o', "FILE", "write the sheet there, once it is complete", KIND_FILE,
     offsetof(struct shop_options, output), false},
    {"home", 0, "DIR", "the folder with rules/ and jurisdictions/", KIND_FOLDER,
     offsetof(struct shop_options, home), false},
};

const struct command command_shop = {
    .name = "shop",
    .summary = "start a shop sheet by questions, or lift one out of a job",
    .usage = "[options] [JOB]",
    .about = "Without JOB asks for the habits that the rules of a place want to know:\n"
             "materials, nails, laps, who calls; then whether there is another of a kind.\n"
             "Answers are given and kept as with `new`; what is left open stays off the\n"
             "sheet. With JOB writes a sheet of the habits that it states; what was special\n"
             "on that house is in it too: look it through.",
    .options = OPTIONS,
    .option_count = sizeof(OPTIONS) / sizeof(OPTIONS[0]),
    .words = {KIND_FILE, KIND_NONE},
    .words_most = 1,
    .status = "0 written; 2 the job or the arguments cannot be used; 3 the rules\n"
              "are broken",
    .example = "shop job.json -o shop.json",
    .run = run_shop,
};
